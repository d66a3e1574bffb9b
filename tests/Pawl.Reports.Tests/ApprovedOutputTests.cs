using Pawl.Reports.Html;
using Pawl.Reports.Markdown;

namespace Pawl.Reports.Tests;

public sealed class ApprovedOutputTests
{
    [Fact]
    public void The_record_is_as_approved() => Approved.Match("sample", "json", Sample.Record().ToJson());

    [Fact]
    public void The_markdown_report_is_as_approved() => Approved.Match("sample", "md", MarkdownReport.Render(Sample.Record()));

    [Fact]
    public void The_html_report_is_as_approved() => Approved.Match("sample", "html", HtmlReport.Render(Sample.Record()));

    [Theory]
    [InlineData(TextLevel.Quiet, false, "quiet")]
    [InlineData(TextLevel.Normal, false, "normal")]
    [InlineData(TextLevel.Verbose, false, "verbose")]
    [InlineData(TextLevel.Normal, true, "coloured")]
    public void The_text_is_as_approved(TextLevel level, bool colour, string name)
    {
        using var text = new StringWriter();
        var record = Sample.Record();
        new TextReport(level, colour).Write(record, text);
        var totals = new Totals();
        totals.Add(record);
        totals.AddUnreadable();
        totals.Write(text);

        Approved.Match(name, "txt", text.ToString());
    }

    [Fact]
    public void The_index_is_as_approved()
    {
        var index = IndexReport.Markdown(
            [IndexEntry.Of(Sample.Record(), "tarn-180/r180"), new() { SpecFile = "specs/tarn-180/broken.yaml" }], ".md");

        Approved.Match("index", "md", index);
    }

    [Fact]
    public void The_index_page_is_as_approved()
    {
        var index = IndexReport.Html(
            [IndexEntry.Of(Sample.Record(), "tarn-180/r180"), new() { SpecFile = "specs/tarn-180/broken.yaml" }]);

        Approved.Match("index", "html", index);
    }
}
