using System.Text.Json;
using AngleSharp.Html.Parser;
using CsCheck;
using Pawl.Reports.Html;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Tests;

public sealed class LogTextTests
{
    [Theory]
    [InlineData("::error::x", ": :error::x")]
    [InlineData("  ::set-output name=a::b", "  : :set-output name=a::b")]
    [InlineData("a::b", "a::b")]
    [InlineData("##[group]x", "## [group]x")]
    [InlineData("see ##vso[task.complete result=Succeeded;]", "see ## vso[task.complete result=Succeeded;]")]
    [InlineData("##teamcity[buildStop]", "## teamcity[buildStop]")]
    [InlineData("###vso[x]", "### vso[x]")]
    [InlineData("## heading [link]", "## heading [link]")]
    [InlineData("#[a]", "#[a]")]
    public void What_a_log_would_obey_is_parted(string line, string harmless)
    {
        Assert.Equal(harmless, LogText.Line(line));
        Assert.Equal($"a\n{harmless}\nb", LogText.Lines($"a\n{line}\nb"));
    }

    [Fact]
    public void JSON_and_markup_read_as_before()
    {
        Gen.String[Gen.Char["#vso[]:\"\\<& a"], 0, 20].Sample(text =>
        {
            var json = LogText.Json(JsonSerializer.Serialize(text));
            Assert.DoesNotMatch("##[A-Za-z]*\\[", json);
            Assert.Equal(text, JsonSerializer.Deserialize<string>(json));
            var markup = LogText.Markup(System.Net.WebUtility.HtmlEncode(text));
            Assert.DoesNotMatch("##[A-Za-z]*\\[", markup);
            Assert.Equal(text, System.Net.WebUtility.HtmlDecode(markup));
        });
    }

    [Theory]
    [InlineData("##vso[task.complete]")]
    [InlineData("##teamcity[buildStop]")]
    [InlineData("::error::x")]
    public void No_text_of_a_spec_comes_through_as_a_command(string attack)
    {
        var record = new Sample { Text = text => attack + text, File = attack + ".yaml" }.ToRecord();
        foreach (var level in Enum.GetValues<TextLevel>())
        {
            using var text = new StringWriter();
            new TextReport(level).Write(record, text);

            Assert.NotEmpty(text.ToString());
            Assert.DoesNotMatch("##[A-Za-z]*\\[|(?m:^ *::)", text.ToString());
        }
    }

    [Fact]
    public void Quiet_is_the_verdict_and_nothing_else()
    {
        using var text = new StringWriter();
        new TextReport(TextLevel.Quiet).Write(Sample.Record(), text);

        Assert.StartsWith("specs/tarn-180/r180.yaml: R180 revision C does not conform. ", text.ToString(), StringComparison.Ordinal);
        Assert.Equal(1, text.ToString().Count(c => c == '\n'));
    }

    // A description that reads as an outcome, in a cell of its own, in the table of what is stated.
    [Fact]
    public void A_text_of_a_spec_gets_no_colour_of_a_verdict()
    {
        var record = Sample.Record();
        record = record with { Inputs = [.. record.Inputs.Select(i => i with { Written = "✓ conforms" })] };

        var page = new HtmlParser().ParseDocument(HtmlReport.Render(record));

        var cells = page.QuerySelectorAll("td").Where(c => c.TextContent == "✓ conforms").ToList();
        Assert.True(cells.Count > record.Inputs.Length);
        Assert.All(
            page.QuerySelector("#inputs")!.ParentElement!.QuerySelectorAll("td"), cell => Assert.True(string.IsNullOrEmpty(cell.ClassName), cell.OuterHtml));
    }
}
