using System.Text;
using Markdig.Extensions.Tables;
using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Pawl.Reports.Html;

/// <summary>
/// Tables that a screen reader can walk (caption, scope) and that scroll in a box of their own when they are wider than the page.
/// Alignment by class: the page's security policy forbids style attributes.
/// </summary>
internal sealed class TableRenderer : HtmlObjectRenderer<Table>
{
    private int _number;

    protected override void Write(HtmlRenderer renderer, Table table)
    {
        _number++;
        var caption = $"table-{Phrase.Whole(_number)}";
        renderer.EnsureLine();
        renderer.Write($"<section class=\"scroll\" tabindex=\"0\" aria-labelledby=\"{caption}\">\n<table>\n<caption id=\"{caption}\">");
        renderer.Write($"Table {Phrase.Whole(_number)}");
        if (Heading(table) is { Inline: { } heading })
        {
            renderer.Write(": ");
            renderer.WriteEscape(PlainText(heading));
        }

        renderer.Write("</caption>\n");
        var inBody = false;
        foreach (var block in table)
        {
            if (block is not TableRow row)
                continue;
            if (row.IsHeader)
                renderer.Write("<thead>\n");
            else if (!inBody)
                renderer.Write("<tbody>\n");
            inBody |= !row.IsHeader;
            Row(renderer, table, row);
            if (row.IsHeader)
                renderer.Write("</thead>\n");
        }

        renderer.Write(inBody ? "</tbody>\n" : "").Write("</table>\n</section>\n");
    }

    private static void Row(HtmlRenderer renderer, Table table, TableRow row)
    {
        renderer.Write("<tr>");
        for (var i = 0; i < row.Count; i++)
        {
            var cell = (TableCell)row[i];
            var text = cell.Descendants<Inline>() is var inlines ? PlainText(inlines) : "";
            var (tag, scope) = row.IsHeader ? ("th", " scope=\"col\"") : i == 0 ? ("th", " scope=\"row\"") : ("td", "");
            var css = Classes(table, row, i, text, SignOf(cell));
            renderer.Write($"<{tag}{scope}{(css.Length > 0 ? $" class=\"{css}\"" : "")}>");
            var paragraphs = renderer.ImplicitParagraph;
            renderer.ImplicitParagraph = true;
            renderer.Write(cell);
            renderer.ImplicitParagraph = paragraphs;
            renderer.Write($"</{tag}>");
        }

        renderer.Write("</tr>\n");
    }

    /// <summary>The text of a cell that is strong as a whole: a sign and what it stands for. No text of a spec is strong.</summary>
    private static string SignOf(TableCell cell) =>
        cell.Descendants<EmphasisInline>().FirstOrDefault() is { DelimiterCount: 2 } strong && PlainText(strong) is var text && text == PlainText(cell.Descendants<Inline>()).Trim()
            ? text
            : "";

    private static string Classes(Table table, TableRow row, int column, string text, string sign)
    {
        var right = column < table.ColumnDefinitions.Count && table.ColumnDefinitions[column].Alignment == TableColumnAlign.Right;
        var outcome = row.IsHeader ? ""
            : sign.Length > 0 ? OutcomeClass.OfSign(sign)
            : HoldsOutcomes(table, column) ? OutcomeClass.Of(text)
            : "";
        return (right, outcome) switch
        {
            (false, _) => outcome,
            (true, "") => "number",
            (true, _) => $"number {outcome}",
        };
    }

    // A text of a spec may read as a verdict; only a column of ours that holds verdicts gets their colours.
    private static bool HoldsOutcomes(Table table, int column) =>
        table is [TableRow { IsHeader: true } head, ..] && column < head.Count
        && PlainText(((TableCell)head[column]).Descendants<Inline>()) is "Outcome" or "Verdict";

    private static HeadingBlock? Heading(Table table)
    {
        HeadingBlock? nearest = null;
        if (table.Parent is not { } parent)
            return null;
        foreach (var block in parent)
        {
            if (ReferenceEquals(block, table))
                break;
            nearest = block as HeadingBlock ?? nearest;
        }

        return nearest;
    }

    private static string PlainText(IEnumerable<MarkdownObject> inlines)
    {
        var text = new StringBuilder();
        foreach (var inline in inlines)
            Append(text, inline);
        return text.ToString();
    }

    private static string PlainText(ContainerInline container) => PlainText(container.Descendants());

    private static void Append(StringBuilder text, MarkdownObject inline)
    {
        switch (inline)
        {
            case LiteralInline literal:
                text.Append(literal.Content.AsSpan());
                break;
            case CodeInline code:
                text.Append(code.ContentSpan);
                break;
            case HtmlEntityInline entity:
                text.Append(entity.Transcoded.AsSpan());
                break;
        }
    }
}
