using Markdig.Extensions.Tables;
using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Pawl.Reports.Sheets;

/// <summary>Tables of a sheet: heads that repeat on each page, and columns to write in.</summary>
internal sealed class SheetTableRenderer : HtmlObjectRenderer<Table>
{
    /// <summary>Heads of the columns that are filled in by hand.</summary>
    private static readonly ImmutableArray<string> Entries = ["Reading", "Instrument", "Done", "Name", "Date", "Signature", "Initials"];

    protected override void Write(HtmlRenderer renderer, Table table)
    {
        renderer.EnsureLine();
        var heads = table is [TableRow { IsHeader: true } first, ..] ? first.Select(static cell => TextOf((TableCell)cell)).ToArray() : [];
        renderer.Write(heads.All(static head => head.Length == 0) ? "<table class=\"facts\">\n" : "<table>\n");
        var inBody = false;
        foreach (var block in table)
        {
            if (block is not TableRow row)
                continue;
            if (row.IsHeader && heads.All(static head => head.Length == 0))
                continue;
            renderer.Write(row.IsHeader ? "<thead>\n" : inBody ? "" : "<tbody>\n");
            inBody |= !row.IsHeader;
            Row(renderer, table, row, heads);
            renderer.Write(row.IsHeader ? "</thead>\n" : "");
        }

        renderer.Write(inBody ? "</tbody>\n" : "").Write("</table>\n");
    }

    private static void Row(HtmlRenderer renderer, Table table, TableRow row, string[] heads)
    {
        renderer.Write("<tr>");
        for (var i = 0; i < row.Count; i++)
        {
            var isEntry = i < heads.Length && Entries.Contains(heads[i]);
            var isNumber = i < table.ColumnDefinitions.Count && table.ColumnDefinitions[i].Alignment == TableColumnAlign.Right;
            var (tag, scope) = row.IsHeader ? ("th", " scope=\"col\"") : i == 0 ? ("th", " scope=\"row\"") : ("td", "");
            renderer.Write($"<{tag}{scope}{(isEntry ? " class=\"entry\"" : isNumber ? " class=\"number\"" : "")}>");
            var paragraphs = renderer.ImplicitParagraph;
            renderer.ImplicitParagraph = true;
            renderer.Write((TableCell)row[i]);
            renderer.ImplicitParagraph = paragraphs;
            renderer.Write($"</{tag}>");
        }

        renderer.Write("</tr>\n");
    }

    private static string TextOf(TableCell cell) => string.Concat(cell.Descendants<LiteralInline>().Select(static literal => literal.Content.ToString())).Trim();
}
