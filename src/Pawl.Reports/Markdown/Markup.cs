using System.Net;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Markdown;

/// <summary>How the texts of a report are written down: escaped for where they land, names set apart, values linked.</summary>
internal abstract class Markup
{
    /// <summary>Markdown, one document.</summary>
    public static Markup Markdown { get; } = new MarkdownMarkup();

    /// <summary>HTML, in two pages or one.</summary>
    /// <param name="main">Address of the page of results, as the page at hand sees it; empty: itself.</param>
    /// <param name="derivations">Likewise of the page of derivations.</param>
    /// <param name="inMain">Whether an anchor is in the page of results.</param>
    public static Markup Html(string main, string derivations, Func<string, bool> inMain) => new HtmlMarkup(main, derivations, inMain);

    /// <summary>Whether the checks of a rule stand together under its anchor, apart from what it demands.</summary>
    public abstract bool HasChecks { get; }

    /// <summary>Address of the page of results; empty: this one.</summary>
    public virtual string Main => "";

    /// <summary>Address of the page of derivations; empty: this one.</summary>
    public virtual string Derivations => "";

    /// <summary>Text of others as markup that shows just that text.</summary>
    public abstract string Escape(string text);

    /// <summary>A name of ours or of the spec, set apart.</summary>
    public abstract string Code(string name);

    /// <summary>A link to an anchor. The text must be markup already.</summary>
    public abstract string Link(string text, string anchor);

    /// <summary>A link to another file. Text and address must be markup already.</summary>
    public abstract string LinkTo(string text, string address);

    private sealed class MarkdownMarkup : Markup
    {
        public override string LinkTo(string text, string address) => $"[{text}]({address})";

        public override bool HasChecks => false;

        public override string Escape(string text) => MarkdownText.Escape(text);

        public override string Code(string name) => MarkdownText.Code(name);

        public override string Link(string text, string anchor) => MarkdownText.Link(text, anchor);
    }

    private sealed class HtmlMarkup(string main, string derivations, Func<string, bool> inMain) : Markup
    {
        public override string LinkTo(string text, string address) => $"<a href=\"{Escape(address)}\">{text}</a>";

        public override bool HasChecks => true;

        public override string Main => main;

        public override string Derivations => derivations;

        public override string Escape(string text) => WebUtility.HtmlEncode(SafeText.Line(text).Trim());

        public override string Code(string name) => $"<code>{Escape(name)}</code>";

        public override string Link(string text, string anchor) => $"<a href=\"{(inMain(anchor) ? main : derivations)}#{anchor}\">{text}</a>";
    }
}
