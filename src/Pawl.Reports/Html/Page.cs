using System.Net;
using System.Security.Cryptography;
using System.Text;
using Markdig;
using Markdig.Extensions.AutoIdentifiers;
using Markdig.Renderers;
using Pawl.Reports.Drawing;
using Pawl.Reports.Markdown;

namespace Pawl.Reports.Html;

/// <summary>Markdown of ours as a self-contained page: style inline, no script, nothing fetched.</summary>
internal static class Page
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder()
        .UsePipeTables()
        .UseAutoIdentifiers(AutoIdentifierOptions.GitHub)
        .DisableHtml()
        .Use<AnchorExtension>()
        .Build();

    /// <param name="title">Title of the window, in plain text.</param>
    /// <param name="verdict">Style class of the verdict.</param>
    /// <param name="footer">Printed at the foot of every page; letters, digits and spaces.</param>
    /// <param name="markdown">The content.</param>
    /// <param name="figures">Figures that images of the content stand for, by the name of their file.</param>
    public static string Of(string title, string verdict, string footer, string markdown, ImmutableArray<Figure> figures = default)
    {
        var style = (Templates.Read("report.css") + Templates.Read("figure.css")).Replace("{footer}", Plain(footer), StringComparison.Ordinal);
        var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style)));
        return $"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'sha256-{hash}'; img-src data:; base-uri 'none'; form-action 'none'">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta name="referrer" content="no-referrer">
            <title>{WebUtility.HtmlEncode(title)}</title>
            <style>{style}</style>
            </head>
            <body>
            <a class="skip" href="#content">Skip to the content</a>
            <main id="content" class="{verdict}">
            {Body(markdown, figures.IsDefault ? [] : figures)}</main>
            </body>
            </html>

            """.ReplaceLineEndings("\n");
    }

    private static string Body(string markdown, ImmutableArray<Figure> figures)
    {
        using var writer = new StringWriter { NewLine = "\n" };
        var renderer = new HtmlRenderer(writer);
        Pipeline.Setup(renderer);
        renderer.ObjectRenderers.RemoveAll(r => r is Markdig.Extensions.Tables.HtmlTableRenderer);
        renderer.ObjectRenderers.Insert(0, new TableRenderer());
        renderer.ObjectRenderers.RemoveAll(r => r is Markdig.Renderers.Html.ParagraphRenderer);
        renderer.ObjectRenderers.Insert(0, new FigureRenderer(figures));
        renderer.Render(Markdig.Markdown.Parse(markdown, Pipeline));
        writer.Flush();
        return writer.ToString();
    }

    // The footer stands inside a string of the style sheet.
    private static string Plain(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            if (char.IsAsciiLetterOrDigit(c) || c is ' ' or '.')
                plain.Append(c);
        }

        return plain.ToString();
    }
}
