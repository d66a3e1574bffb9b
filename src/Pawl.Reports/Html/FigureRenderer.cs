using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using Pawl.Reports.Drawing;

namespace Pawl.Reports.Html;

/// <summary>Paragraphs, and figures: a paragraph of one image alone, whose drawing is in the page, becomes that drawing with its caption.</summary>
internal sealed class FigureRenderer(ImmutableArray<Figure> figures) : HtmlObjectRenderer<ParagraphBlock>
{
    private const string Ending = ".svg";
    private readonly Dictionary<string, Figure> _figures = figures.ToDictionary(f => f.Id, StringComparer.Ordinal);
    private readonly ParagraphRenderer _plain = new();

    protected override void Write(HtmlRenderer renderer, ParagraphBlock paragraph)
    {
        if (DrawingOf(paragraph) is not { } figure)
        {
            _plain.Write(renderer, paragraph);
            return;
        }

        renderer.EnsureLine();
        renderer.Write($"<figure id=\"figure.{figure.Id}\">").Write(figure.Inline()).Write("<figcaption>");
        renderer.WriteEscape(figure.Title).Write("</figcaption></figure>\n");
    }

    private Figure? DrawingOf(ParagraphBlock paragraph) =>
        paragraph.Inline is { FirstChild: LinkInline { IsImage: true, Url: { } url } image } && image == paragraph.Inline.LastChild
        && url.EndsWith(Ending, StringComparison.Ordinal)
            ? _figures.GetValueOrDefault(url[(url.LastIndexOf('/') + 1)..^Ending.Length])
            : null;
}
