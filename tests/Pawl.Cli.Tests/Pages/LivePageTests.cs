using Microsoft.Playwright;
using Pawl.Cli.Checking;

namespace Pawl.Cli.Tests.Pages;

/// <summary>The page that follows the files, in a browser: it keeps the reader's place, and what is typed into the filter.</summary>
public sealed class LivePageTests
{
    private const string Spec = "specs/r450.yaml";

    [Fact]
    public async Task A_reader_stays_where_he_is_while_the_spec_is_broken_mended_and_changed()
    {
        var program = Browser.Path;
        using var place = new Workplace { Engine = Engine.Shipped };
        place.Run("new", "Works", "--project");
        place.Run("new", "R450");
        var good = File.ReadAllText(place.PathOf(Spec));
        await using var live = await LivePlace.Start(place);
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = program, Args = ["--no-sandbox"] });
        var context = await browser.NewContextAsync(new() { ViewportSize = new() { Width = 1280, Height = 900 } });
        await using var window = new Window(context, await context.NewPageAsync());
        var page = window.Page;
        page.SetDefaultTimeout(0);
        await page.GotoAsync(live.Address.AbsoluteUri);
        await Until(page, "document.querySelector('iframe.report')?.contentDocument?.querySelector('#filter-text')");

        // The reader filters, and scrolls to the list of checks.
        await page.EvaluateAsync("""
            () => {
              const view = document.querySelector('iframe.report').contentWindow;
              const filter = view.document.querySelector('#filter-text');
              filter.value = 'tip';
              filter.dispatchEvent(new view.Event('input', { bubbles: true }));
              view.document.querySelector('#all-checks').scrollIntoView();
              window.before = view;
            }
            """);
        const string Place = "() => { const view = document.querySelector('iframe.report').contentWindow; return Math.round(view.document.querySelector('#all-checks').getBoundingClientRect().top); }";
        var before = await page.EvaluateAsync<int>(Place);

        place.With(Spec, good.Replace("    speed: 2900", "    speeed: 2900", StringComparison.Ordinal));
        await Until(page, "document.querySelector('#now mark')?.textContent === 'speeed'");
        Assert.StartsWith("✗", await page.TitleAsync(), StringComparison.Ordinal);
        Assert.Equal(before, await page.EvaluateAsync<int>(Place));

        place.With(Spec, good.Replace("2900 rpm", "2800 rpm", StringComparison.Ordinal));
        await Until(page, "!document.querySelector('#now mark') && document.querySelectorAll('iframe').length === 1 && document.querySelector('iframe.report').contentWindow !== window.before");
        Assert.Contains("2800", await page.EvaluateAsync<string>("() => document.querySelector('iframe.report').contentDocument.body.textContent"), StringComparison.Ordinal);
        Assert.Equal("tip", await page.EvaluateAsync<string>("() => document.querySelector('iframe.report').contentDocument.querySelector('#filter-text').value"));
        Assert.InRange(await page.EvaluateAsync<int>(Place), before - 2, before + 2);
        Assert.Empty(window.Wrong);
    }

    // Not by the browser's own waiting, which evaluates text: the policy of the page forbids that.
    private static async Task Until(IPage page, string condition)
    {
        while (!await page.EvaluateAsync<bool>($"() => !!({condition})"))
            await Task.Delay(20, TestContext.Current.CancellationToken);
    }
}
