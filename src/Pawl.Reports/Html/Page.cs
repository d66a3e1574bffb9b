using System.Net;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Markdig;
using Markdig.Extensions.AutoIdentifiers;
using Markdig.Renderers;
using Pawl.Reports.Markdown;
using Scriban.Runtime;

namespace Pawl.Reports.Html;

/// <summary>Content of ours as a self-contained page: style and script inline, nothing fetched.</summary>
internal static partial class Page
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder()
        .UsePipeTables()
        .UseAutoIdentifiers(AutoIdentifierOptions.GitHub)
        .DisableHtml()
        .Use<AnchorExtension>()
        .Build();

    /// <summary>A page of Markdown.</summary>
    /// <param name="title">Title of the window, in plain text.</param>
    /// <param name="verdict">Style class of the verdict.</param>
    /// <param name="footer">Printed at the foot of every page; letters, digits and spaces.</param>
    /// <param name="markdown">The content.</param>
    public static string Of(string title, string verdict, string footer, string markdown) =>
        Filled(title, verdict, footer, Body(markdown), hasScript: false);

    /// <summary>A page of HTML. Its policy permits its own style and, where it has one, its own script, by their hashes; nothing is fetched.</summary>
    /// <param name="title">Title of the window, in plain text.</param>
    /// <param name="verdict">Style class of the verdict.</param>
    /// <param name="footer">Printed at the foot of every page; letters, digits and spaces.</param>
    /// <param name="body">The content, without scripts.</param>
    /// <param name="hasScript">Whether it has a list of contents, and lists to filter.</param>
    public static string Filled(string title, string verdict, string footer, string body, bool hasScript)
    {
        var style = (Templates.Read("report.css") + Templates.Read("figure.css")).Replace("{footer}", Plain(footer), StringComparison.Ordinal);
        var script = hasScript ? Templates.Read("page.js") : "";
        var contents = new ScriptArray();
        if (hasScript)
        {
            foreach (Match heading in Heading().Matches(body))
                contents.Add(new ScriptObject { ["anchor"] = heading.Groups[1].Value, ["title"] = heading.Groups[2].Value });
        }

        return Templates.Render("page.html", new()
        {
            ["title"] = WebUtility.HtmlEncode(Short(title)),
            ["policy"] = $"default-src 'none'; style-src '{Hash(style)}'; {(hasScript ? $"script-src '{Hash(script)}'; " : "")}img-src data:; base-uri 'none'; form-action 'none'",
            ["style"] = style,
            ["script"] = script,
            ["verdict"] = verdict,
            ["contents"] = contents,
            ["body"] = body,
        });
    }

    /// <summary>A title as a window has room for it.</summary>
    private static string Short(string title)
    {
        const int Most = 70;
        if (title.Length <= Most)
            return title;
        return title[..(char.IsHighSurrogate(title[Most - 2]) ? Most - 2 : Most - 1)] + "…";
    }

    private static string Hash(string text) => "sha256-" + Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    [GeneratedRegex("<h2 id=\"([^\"]+)\">([^<]*)</h2>", RegexOptions.CultureInvariant)]
    private static partial Regex Heading();

    private static string Body(string markdown)
    {
        using var writer = new StringWriter { NewLine = "\n" };
        var renderer = new HtmlRenderer(writer);
        Pipeline.Setup(renderer);
        renderer.ObjectRenderers.RemoveAll(r => r is Markdig.Extensions.Tables.HtmlTableRenderer);
        renderer.ObjectRenderers.Insert(0, new TableRenderer());
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
