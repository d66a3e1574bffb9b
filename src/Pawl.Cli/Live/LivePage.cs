using System.Globalization;
using System.Net;
using System.Security.Cryptography;
using System.Text;
using Pawl.Cli.Output;
using Pawl.Reports.Records;
using Pawl.Specs.Text;

namespace Pawl.Cli.Live;

/// <summary>The page around the reports: what is wrong now above, a report below.</summary>
internal static class LivePage
{
    /// <summary>Complaints that are shown of one spec; a half-typed line may raise many.</summary>
    private const int Most = 12;

    private static readonly string Style = Asset("live.css");
    private static readonly string Script = Asset("live.js");

    /// <summary>What browsers hold the page to.</summary>
    public static readonly string Policy =
        $"default-src 'none'; style-src '{Hash(Style)}'; script-src '{Hash(Script)}'; connect-src 'self'; frame-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    /// <summary>The whole page. Without script it comes again every few seconds.</summary>
    /// <param name="state">What it shows.</param>
    /// <param name="first">The report that it begins with, from the root of the reports.</param>
    public static string Of(LiveState state, string first) => $"""
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        <meta name="viewport" content="width=device-width, initial-scale=1">
        <title>{Encode(Title(state))}</title>
        <noscript><meta http-equiv="refresh" content="3"></noscript>
        <style>{Style}</style>
        </head>
        <body>
        <header id="now" aria-live="polite" data-version="{Whole(state.Version)}">{Panel(state)}</header>
        <main><iframe class="report" name="report" title="Report" src="/report/{Address(first)}"></iframe></main>
        <script>{Script}</script>
        </body>
        </html>

        """.ReplaceLineEndings("\n");

    /// <summary>The window's title: the sign of the worst first, so that it is seen in the row of tabs.</summary>
    public static string Title(LiveState state) => $"{Signs(state)} Pawl live";

    /// <summary>What stands above the report.</summary>
    public static string Panel(LiveState state)
    {
        var html = new StringBuilder("<nav aria-label=\"Reports\"><a target=\"report\" href=\"/report/index.html\">All</a>");
        foreach (var spec in state.Specs)
        {
            var (sign, word, css) = SignOf(spec);
            html.Append(CultureInfo.InvariantCulture, $" <a class=\"{css}\" target=\"report\" href=\"/report/{Address(spec.Page)}\" title=\"{Encode($"{spec.Input.Display}: {word}")}\">{sign} <bdi>{Encode(NameOf(spec))}</bdi><span class=\"hidden\">: {word}</span></a>");
        }

        html.Append("</nav>\n");
        Complaints(html, state.Complaints, "The project", isBehind: false);
        foreach (var spec in state.Specs)
        {
            if (spec.Defect is { } defect)
                html.Append(CultureInfo.InvariantCulture, $"<section class=\"fails\"><h2>✗ {Encode(spec.Input.Display)}</h2><pre>{Encode(defect)}</pre></section>\n");
            Complaints(html, spec.Complaints, spec.Input.Display, spec is { IsCurrent: false, Record: not null });
        }

        return html.ToString();
    }

    /// <summary>The page in place of a report that there is not.</summary>
    public static string Nothing(string text) =>
        $"<!DOCTYPE html>\n<html lang=\"en\">\n<head><meta charset=\"utf-8\"><title>No report</title></head>\n<body><p>{Encode(text)}</p></body>\n</html>\n";

    private static void Complaints(StringBuilder html, ImmutableArray<LiveComplaint> complaints, string of, bool isBehind)
    {
        var errors = complaints.Where(static c => c.Diagnostic.Severity == Severity.Error).ToImmutableArray();
        var others = complaints.Where(static c => c.Diagnostic.Severity != Severity.Error).ToImmutableArray();
        if (!errors.IsEmpty)
        {
            html.Append(CultureInfo.InvariantCulture, $"<section class=\"fails\"><h2>✗ <bdi>{Encode(of)}</bdi> cannot be judged as it stands</h2>");
            if (isBehind)
                html.Append("<p>Its report is of the last state that could be judged.</p>");
            List(html, errors);
            html.Append("</section>\n");
        }

        if (others.IsEmpty)
            return;
        html.Append(CultureInfo.InvariantCulture, $"<details id=\"{Encode("remarks." + of)}\"><summary>{Whole(others.Length)} {(others.Length == 1 ? "remark" : "remarks")} on <bdi>{Encode(of)}</bdi></summary>");
        List(html, others);
        html.Append("</details>\n");
    }

    private static void List(StringBuilder html, ImmutableArray<LiveComplaint> complaints)
    {
        html.Append("<ol>");
        foreach (var (diagnostic, line) in complaints.Take(Most))
        {
            var at = diagnostic.Span.Start;
            var place = at.Line > 0 ? $"{diagnostic.Span.File}:{Whole(at.Line)}:{Whole(at.Column)}" : diagnostic.Span.File;
            html.Append(CultureInfo.InvariantCulture, $"<li><code>{Encode(place)}</code> {DiagnosticWriter.Word(diagnostic.Severity)} <code>{Encode(diagnostic.Code)}</code><br><bdi>{Encode(diagnostic.Message)}</bdi>");
            if (line is not null)
                html.Append(CultureInfo.InvariantCulture, $"<pre>{Marked(line, diagnostic.Span)}</pre>");
            if (diagnostic.Hint is { Length: > 0 } hint)
                html.Append(CultureInfo.InvariantCulture, $"<p class=\"hint\">Hint: <bdi>{Encode(hint)}</bdi></p>");
            html.Append("</li>");
        }

        html.Append("</ol>");
        if (complaints.Length > Most)
            html.Append(CultureInfo.InvariantCulture, $"<p>and {Whole(complaints.Length - Most)} more</p>");
    }

    /// <summary>The line with the text that is meant in a mark.</summary>
    private static string Marked(string line, SourceSpan span)
    {
        var from = Math.Clamp(span.Start.Column - 1, 0, line.Length);
        var to = span.End.Line == span.Start.Line ? Math.Clamp(span.End.Column - 1, from, line.Length) : line.Length;
        return from == to ? Encode(line) : $"{Encode(line[..from])}<mark>{Encode(line[from..to])}</mark>{Encode(line[to..])}";
    }

    private static string NameOf(LiveSpec spec) => spec.Record?.Identity.Variant ?? Path.GetFileNameWithoutExtension(spec.Input.Display);

    private static string Signs(LiveState state) =>
        state.Complaints.Any(static c => c.Diagnostic.Severity == Severity.Error) ? "✗"
        : state.Specs.IsEmpty ? "?"
        : state.Specs.Select(SignOf).MinBy(static s => Array.IndexOf(WorstFirst, s.Sign)).Sign;

    private static readonly string[] WorstFirst = ["✗", "?", "◐", "✓"];

    private static (string Sign, string Word, string Css) SignOf(LiveSpec spec) => spec switch
    {
        { IsRefused: true } => ("✗", "cannot be judged as it stands", "fails"),
        { Record.Verdict.Word: VerdictWord.Conforms } => ("✓", "conforms", "conforms"),
        { Record.Verdict.Word: VerdictWord.ConformsUnderConcession } => ("◐", "conforms under concession", "conceded"),
        { Record.Verdict.Word: VerdictWord.Incomplete } => ("?", "incomplete", "open"),
        { Record: not null } => ("✗", "does not conform", "fails"),
        _ => ("?", "not judged", "open"),
    };

    private static string Address(string path) => string.Join('/', path.Split('/').Select(Uri.EscapeDataString));

    private static string Encode(string text) => WebUtility.HtmlEncode(Plain.Line(text));

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Hash(string text) => $"sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)))}";

    private static string Asset(string name)
    {
        using var stream = typeof(LivePage).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"{name} is not in the assembly.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
