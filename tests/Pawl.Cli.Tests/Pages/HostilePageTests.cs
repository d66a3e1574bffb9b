using System.Collections.Immutable;
using Pawl.Reports;
using Pawl.Reports.Output;

namespace Pawl.Cli.Tests.Pages;

/// <summary>The pages of a record that means ill, in a browser: 200 subjects, 25 rules, 5 000 findings.</summary>
public sealed class HostilePageTests(Browser browser) : IClassFixture<Browser>
{
    private static readonly Lazy<ImmutableArray<OutputFile>> Files = new(() =>
    {
        var record = HostileRecord.Of();
        return [.. ReportFiles.Of(record, "hostile", ReportFormats.Html | ReportFormats.Markdown), .. ReportFiles.Index([.. Enumerable.Repeat(IndexEntry.Of(record, "hostile"), 30)], ReportFormats.Html)];
    });

    private string Written()
    {
        _ = Browser.Path;
        var folder = Path.Combine(browser.Folder, "..", "hostile");
        Assert.Empty(ReportWriter.Write(folder, Files.Value));
        return folder;
    }

    [Theory]
    [InlineData("hostile.html", 1280)]
    [InlineData("hostile.html", 390)]
    [InlineData("hostile.derivations.html", 1280)]
    [InlineData("hostile.derivations.html", 390)]
    [InlineData("index.html", 1280)]
    [InlineData("index.html", 390)]
    public async Task Nothing_runs_nothing_is_fetched_and_nothing_overflows(string name, int width)
    {
        var address = new Uri(Path.GetFullPath(Path.Combine(Written(), name))).AbsoluteUri;
        await using var window = await browser.Open(width);
        await window.Page.GotoAsync(address);
        await window.Page.EvaluateAsync("document.querySelectorAll('details').forEach(d => d.open = true)");

        Assert.Empty(window.Wrong);
        Assert.Equal([address], window.Requests);
        Assert.False(await window.Overflows(), name);
        Assert.InRange(await window.Page.EvaluateAsync<int>("document.scripts.length"), 0, 1);
        Assert.Equal(0, await window.Page.EvaluateAsync<int>(
            "[...document.querySelectorAll('*')].filter(e => e.hasAttribute('style') || [...e.attributes].some(a => a.name.startsWith('on'))).length"));
        Assert.Equal(0, await window.Page.EvaluateAsync<int>("document.querySelectorAll('img, iframe, object, embed, form, base, body svg[onload]').length"));
        Assert.Equal(0, await window.Page.EvaluateAsync<int>("[...document.links].filter(a => a.protocol !== 'file:').length"));
    }

    [Fact]
    public async Task The_page_of_results_is_bounded_and_every_finding_is_on_one_of_both()
    {
        var folder = Written();
        Assert.InRange(new FileInfo(Path.Combine(folder, "hostile.html")).Length, 300_000, 1_000_000);
        var rows = 0;
        foreach (var name in (string[])["hostile.html", "hostile.derivations.html"])
        {
            await using var window = await browser.Open();
            await window.Page.GotoAsync(new Uri(Path.GetFullPath(Path.Combine(folder, name))).AbsoluteUri);
            rows += await window.Page.EvaluateAsync<int>("document.querySelectorAll('.checks th[scope=row]').length");
        }

        Assert.Equal(HostileRecord.Subjects * HostileRecord.Rules, rows);
    }

    [Fact]
    public async Task Its_summary_prints_on_a_bounded_number_of_pages()
    {
        var address = new Uri(Path.GetFullPath(Path.Combine(Written(), "hostile.html"))).AbsoluteUri;
        await using var window = await browser.Open(bypass: true);
        await window.Page.GotoAsync(address);
        await window.Page.AddStyleTagAsync(new() { Content = ".rest { display: none }" });

        Assert.InRange(PageTests.Pages(await window.Page.PdfAsync(new() { Format = "A4" })), 3, 40);
    }

    [Fact]
    public async Task It_reads_in_light_and_dark_and_by_the_validator()
    {
        Judges.SkipUnlessHere();
        var folder = Written();
        var (code, said) = await Judges.Html(Path.Combine(folder, "hostile.html"), Path.Combine(folder, "index.html"));
        Assert.True(code == 0, said);
        await using var window = await browser.Open(scheme: Microsoft.Playwright.ColorScheme.Dark, bypass: true);
        await window.Page.GotoAsync(new Uri(Path.GetFullPath(Path.Combine(folder, "hostile.html"))).AbsoluteUri);
        Assert.Equal("", await window.Axe());
    }
}
