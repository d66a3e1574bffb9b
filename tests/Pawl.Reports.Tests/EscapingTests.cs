using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using CsCheck;
using Pawl.Reports.Html;
using Pawl.Reports.Markdown;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Tests;

public sealed class EscapingTests
{
    public static readonly TheoryData<string> Attacks =
    [
        "<script>alert(1)</script>",
        "<img src=x onerror=alert(1)>",
        "a | b | c",
        "x](javascript:alert(1))",
        "![x](https://example.org/x.png)",
        "<https://example.org>",
        "https://example.org/ www.example.org",
        "`code` ``more`` `",
        "**bold** __bold__ *em* _em_ ~~gone~~",
        "# heading",
        "line\n# heading\n\n| a |\n|--|\n",
        "\r\n::error file=x::gotcha",
        "::error::gotcha",
        "##[error]gotcha",
        "\u001B[2J\u001B]0;title\u0007",
        "\u202Egnp.exe\u2066\u200B\uFEFF",
        "<a id=\"quantity.train.ratio\"></a>",
        "&lt;b&gt; &amp; &#60;script&#62; &copy;",
        "{{ 1 + 1 }} {{ include 'x' }}",
        "</title></style><script>",
        "[ref]: https://example.org",
        "--- === +++",
        "1. list",
        "\\",
        "trailing\\",
        "a\0b",
        "\uD800 half a pair",
        "$$x$$ @someone",
    ];

    [Theory]
    [MemberData(nameof(Attacks))]
    public void A_hostile_text_shows_as_itself_and_changes_no_structure(string attack) => AssertHarmless(attack);

    [Fact]
    public void Random_texts_change_no_structure() => Gen.String[Gen.Char[" <>&|`*_[]()!#\\~\"'=-+.:/\n\r\t\u001B\u202Eaé0"], 0, 24]
        .Sample(AssertHarmless, iter: 60);

    [Theory]
    [MemberData(nameof(Attacks))]
    public void A_log_holds_no_command_and_no_control_character(string attack)
    {
        var record = new Sample { Text = text => attack + text, File = attack + ".yaml" }.ToRecord();
        using var text = new StringWriter();
        foreach (var level in Enum.GetValues<TextLevel>())
            new TextReport(level).Write(record, text);

        foreach (var line in text.ToString().Split('\n'))
        {
            Assert.False(line.TrimStart().StartsWith("::", StringComparison.Ordinal), line);
            Assert.DoesNotContain("##[", line, StringComparison.Ordinal);
            Assert.DoesNotContain(line, c => char.IsControl(c) || c is '\u202E' or '\u2066' or '\u200B' or '\uFEFF');
        }
    }

    [Fact]
    public void The_names_of_a_spec_cannot_name_a_report_file()
    {
        var record = new Sample { Text = _ => "../../etc/passwd" }.ToRecord();

        Assert.Equal(["tarn-180/r180"], Output.ReportNames.Of([record.Identity.File]));
    }

    private static void AssertHarmless(string attack)
    {
        var plain = Skeleton(Html(new Sample().ToRecord()));
        var hostile = Html(new Sample { Text = text => attack + text }.ToRecord());

        Assert.Equal(plain, Skeleton(hostile));
        Assert.EndsWith(SafeText.Line(attack + "R180").Trim(), hostile.QuerySelector("h1")!.TextContent, StringComparison.Ordinal);
        Assert.All(hostile.QuerySelectorAll("code"), code => Assert.Empty(code.Children));
        Assert.Equal(Templates.Read("page.js"), Assert.Single(hostile.QuerySelectorAll("script")).TextContent);
        Assert.Empty(hostile.QuerySelectorAll("img, iframe, object, embed, form, base, link, style ~ style"));
        Assert.All(hostile.QuerySelectorAll("svg *"), drawn => Assert.Contains(drawn.LocalName, Drawn));
        foreach (var link in hostile.QuerySelectorAll("a[href]"))
            Assert.StartsWith("#", link.GetAttribute("href"), StringComparison.Ordinal);
        foreach (var element in hostile.All)
            Assert.DoesNotContain(element.Attributes, a => a.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase) || a.Name == "style");
    }

    private static readonly string[] Drawn = ["title", "desc", "g", "line", "rect", "circle", "path", "text", "defs", "use", "clipPath"];

    /// <summary>Elements and their nesting, without text, without identifiers, and without the code that a plain name is set in; drawings make room for long names.</summary>
    private static string Skeleton(IDocument page) =>
        string.Join('\n', page.All.Where(e => e.LocalName != "code" && e.ParentElement?.Closest("svg") is null).Select(e => $"{new string(' ', Depth(e))}{e.LocalName}.{e.ClassName}"));

    private static int Depth(IElement element)
    {
        var depth = 0;
        for (var at = element.ParentElement; at is not null; at = at.ParentElement)
            depth++;
        return depth;
    }

    private static IDocument Html(ConformanceRecord record)
    {
        var markdown = MarkdownReport.Render(record);
        Assert.DoesNotContain(markdown, c => char.IsControl(c) && c != '\n');
        return new HtmlParser(new() { IsStrictMode = false }).ParseDocument(HtmlReport.Render(record));
    }
}
