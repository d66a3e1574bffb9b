using System.Globalization;
using System.Net;
using System.Security.Cryptography;
using System.Text;
using Markdig;
using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using Pawl.Reports.Drawing;
using Pawl.Reports.Markdown;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Sheets;

/// <summary>A sheet as a self-contained page that prints on A4 and on Letter: style inline, no script, nothing fetched.</summary>
internal static class SheetPage
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePipeTables().DisableHtml().Build();

    /// <param name="title">Title of the window and head of each printed page, in plain text.</param>
    /// <param name="css">Classes of the sheet: its role and its verdict.</param>
    /// <param name="foot">Foot of each printed page, in plain text.</param>
    /// <param name="state">Whether it is released, on each printed page, in plain text.</param>
    /// <param name="markdown">The content.</param>
    /// <param name="figures">Figures that images of the content stand for, by the name of their file.</param>
    public static string Of(string title, string css, string foot, string state, string markdown, ImmutableArray<Figure> figures)
    {
        var style = (Templates.Read("sheet.css") + Templates.Read("figure.css"))
            .Replace("{head}", InString(title), StringComparison.Ordinal)
            .Replace("{foot}", InString(foot), StringComparison.Ordinal)
            .Replace("{state}", InString(state), StringComparison.Ordinal);
        var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style)));
        return $"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'sha256-{hash}'; img-src data:; base-uri 'none'; form-action 'none'">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta name="referrer" content="no-referrer">
            <title>{WebUtility.HtmlEncode(SafeText.Line(title))}</title>
            <style>{style}</style>
            </head>
            <body>
            <main class="{css}">
            {Body(markdown, figures)}</main>
            </body>
            </html>

            """.ReplaceLineEndings("\n");
    }

    private static string Body(string markdown, ImmutableArray<Figure> figures)
    {
        using var writer = new StringWriter { NewLine = "\n" };
        var renderer = new HtmlRenderer(writer);
        Pipeline.Setup(renderer);
        renderer.ObjectRenderers.RemoveAll(static r => r is Markdig.Extensions.Tables.HtmlTableRenderer or ParagraphRenderer);
        renderer.ObjectRenderers.Insert(0, new SheetTableRenderer());
        renderer.ObjectRenderers.Insert(0, new Drawings(figures));
        renderer.Render(Markdig.Markdown.Parse(markdown, Pipeline));
        writer.Flush();
        return writer.ToString();
    }

    /// <summary>A text inside a string of the style sheet: letters, digits, spaces and harmless marks as they are, all else by its code.</summary>
    private static string InString(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var rune in SafeText.Line(text).EnumerateRunes())
        {
            if (Rune.IsLetterOrDigit(rune) && rune.IsAscii || rune.Value is ' ' or '.' or '-' or ',' or ':' or ';')
                plain.Append(rune);
            else
                plain.Append(CultureInfo.InvariantCulture, $"\\{rune.Value:x6} ");
        }

        return plain.ToString();
    }

    /// <summary>Paragraphs; one that is an image alone becomes the drawing that it stands for.</summary>
    private sealed class Drawings(ImmutableArray<Figure> figures) : HtmlObjectRenderer<ParagraphBlock>
    {
        private const string Ending = ".svg";
        private readonly Dictionary<string, Figure> _figures = figures.ToDictionary(f => f.Id, StringComparer.Ordinal);
        private readonly ParagraphRenderer _plain = new();

        protected override void Write(HtmlRenderer renderer, ParagraphBlock paragraph)
        {
            if (paragraph.Inline is { FirstChild: LinkInline { IsImage: true, Url: { } url } image } && image == paragraph.Inline.LastChild
                && url.EndsWith(Ending, StringComparison.Ordinal) && _figures.TryGetValue(url[(url.LastIndexOf('/') + 1)..^Ending.Length], out var figure))
            {
                renderer.EnsureLine();
                renderer.Write("<figure>").Write(figure.Inline()).Write("<figcaption>");
                renderer.WriteEscape(figure.Title).Write("</figcaption></figure>\n");
            }
            else
                _plain.Write(renderer, paragraph);
        }
    }
}
