using Markdig;
using Markdig.Helpers;
using Markdig.Parsers;
using Markdig.Parsers.Inlines;
using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Syntax.Inlines;

namespace Pawl.Reports.Html;

/// <summary>The one piece of HTML that our Markdown holds: an empty element that links lead to, <c>&lt;a id="…"&gt;&lt;/a&gt;</c>.</summary>
/// <remarks>All other HTML is off, so that text of a spec could not become an element even if it were not escaped.</remarks>
internal sealed class AnchorExtension : IMarkdownExtension
{
    public void Setup(MarkdownPipelineBuilder pipeline) => pipeline.InlineParsers.InsertBefore<AutolinkInlineParser>(new Parser());

    public void Setup(MarkdownPipeline pipeline, IMarkdownRenderer renderer)
    {
        if (renderer is HtmlRenderer html)
            html.ObjectRenderers.Add(new Renderer());
    }

    private sealed class Anchor(string id) : LeafInline
    {
        public string Id { get; } = id;
    }

    private sealed class Parser : InlineParser
    {
        private const string Start = "<a id=\"";
        private const string End = "\"></a>";

        public Parser() => OpeningCharacters = ['<'];

        public override bool Match(InlineProcessor processor, ref StringSlice slice)
        {
            var text = slice.AsSpan();
            if (!text.StartsWith(Start, StringComparison.Ordinal))
                return false;
            var id = text[Start.Length..];
            var length = id.IndexOfAnyExcept(IdCharacters);
            if (length <= 0 || !id[length..].StartsWith(End, StringComparison.Ordinal))
                return false;

            processor.Inline = new Anchor(id[..length].ToString());
            slice.Start += Start.Length + length + End.Length;
            return true;
        }

        private static readonly System.Buffers.SearchValues<char> IdCharacters =
            System.Buffers.SearchValues.Create("abcdefghijklmnopqrstuvwxyz0123456789._-");
    }

    private sealed class Renderer : HtmlObjectRenderer<Anchor>
    {
        protected override void Write(HtmlRenderer renderer, Anchor anchor)
        {
            if (renderer.EnableHtmlForInline)
                renderer.Write("<a id=\"").Write(anchor.Id).Write("\"></a>");
        }
    }
}
