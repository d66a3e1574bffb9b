using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Pawl.Cli.Tests.Pages;

/// <summary>The pages of the shipped specs in a browser. Outside judges: Chromium, axe-core, html-validate.</summary>
public sealed partial class PageTests(Browser browser) : IClassFixture<Browser>
{
    private const string R180 = "tarn-180/r180.html";
    private const string Derivations = "tarn-180/r180.derivations.html";

    [Fact]
    public async Task Every_page_opens_without_an_error_or_a_request_and_fits_its_window()
    {
        foreach (var width in (int[])[1280, 390])
        {
            // The derivations are long; those of one family show what those of the others do.
            foreach (var name in browser.All().Where(static p => !p.EndsWith(".derivations.html", StringComparison.Ordinal) || p.StartsWith("tarn-120/r400", StringComparison.Ordinal)))
            {
                await using var window = await browser.Open(width);
                await window.Page.GotoAsync(browser.Address(name));

                Assert.Empty(window.Wrong);
                Assert.Equal([browser.Address(name)], window.Requests);
                Assert.False(await window.Overflows(), $"{name} at {width}");
            }
        }
    }

    [Fact]
    public void The_page_of_results_is_small_and_the_derivations_are_beside_it()
    {
        _ = browser.All();
        Assert.InRange(new FileInfo(Path.Combine(browser.Folder, R180)).Length, 100_000, 400_000);
        Assert.True(new FileInfo(Path.Combine(browser.Folder, Derivations)).Length > 1_000_000);
    }

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Axe_finds_nothing_wrong(ColorScheme scheme)
    {
        Judges.SkipUnlessHere();
        foreach (var name in (string[])["index.html", R180, "faulty/beck-90-wrong-marks.html", "tarn-120/r400.derivations.html"])
        {
            await using var window = await browser.Open(scheme: scheme, bypass: true);
            await window.Page.GotoAsync(browser.Address(name));

            // Folded parts are judged where they are small enough; of the derivations some.
            await window.Page.EvaluateAsync("[...document.querySelectorAll('details')].slice(0, 8).forEach(d => d.open = true)");
            var found = await window.Axe();
            Assert.True(found.Length == 0, $"{name}:\n{found}");
        }
    }

    [Fact]
    public async Task A_validator_of_HTML_finds_nothing_wrong()
    {
        Judges.SkipUnlessHere();
        string[] pages = ["index.html", R180, Derivations, "faulty/beck-90-wrong-marks.html", "faulty/tarn-180-wrong-sun.html"];

        var (code, said) = await Judges.Html([.. pages.Select(p => Path.Combine(browser.Folder, p))]);

        Assert.True(code == 0, said);
    }

    [Theory]
    [InlineData(R180 + "#rule.mesh-factorising", R180)]
    [InlineData(R180 + "#what-fails", R180)]
    [InlineData(R180 + "#quantity.gears.input_sun.teeth", Derivations)]
    [InlineData(R180 + "#subject.gears.long", Derivations)]
    [InlineData(R180 + "#requirement.mesh-factorising", Derivations)]
    [InlineData(Derivations + "#quantity.meshes.input_sun-long.centre_distance", Derivations)]
    public async Task A_deep_link_lands(string link, string page)
    {
        await using var window = await browser.Open();
        var (file, anchor) = (link[..link.IndexOf('#', StringComparison.Ordinal)], link[(link.IndexOf('#', StringComparison.Ordinal) + 1)..]);
        await window.Page.GotoAsync(browser.Address(file) + "#" + anchor);
        await window.Page.WaitForURLAsync($"**/{page}#{anchor}");

        var there = window.Page.Locator($"[id='{anchor}']");
        await Assertions.Expect(there).ToBeInViewportAsync();
        Assert.Empty(window.Wrong);
    }

    [Fact]
    public async Task Every_link_of_every_page_leads_to_what_is_there()
    {
        var ids = new Dictionary<string, HashSet<string>>(StringComparer.Ordinal);
        var pages = browser.All();
        foreach (var name in pages)
            ids[name] = [.. Ids().Matches(await File.ReadAllTextAsync(Path.Combine(browser.Folder, name), TestContext.Current.CancellationToken)).Select(m => m.Groups[1].Value)];

        List<string> dead = [];
        var links = 0;
        foreach (var name in pages)
        {
            foreach (Match link in Links().Matches(await File.ReadAllTextAsync(Path.Combine(browser.Folder, name), TestContext.Current.CancellationToken)))
            {
                links++;
                var parts = link.Groups[1].Value.Split('#');
                var target = parts[0].Length == 0 ? name : Path.Join(Path.GetDirectoryName(name), Uri.UnescapeDataString(parts[0])).TrimStart('/');
                if (!ids.TryGetValue(target, out var there) || (parts.Length > 1 && !there.Contains(parts[1])))
                    dead.Add($"{name}: {link.Groups[1].Value}");
            }
        }

        Assert.Empty(dead.Distinct().Take(20));
        Assert.True(links > 50_000);
    }

    [Fact]
    public async Task Filter_and_search_show_what_is_looked_for()
    {
        await using var window = await browser.Open();
        await window.Page.GotoAsync(browser.Address("faulty/tarn-180-wrong-sun.html"));
        var rows = window.Page.Locator(".checks th[scope=row]:visible");
        var all = await rows.CountAsync();
        Assert.Equal($"{all} checks", await window.Page.Locator("#filter-count").TextContentAsync());

        await window.Page.Locator("#filter-outcome").SelectOptionAsync("✗");
        Assert.Equal(18, await rows.CountAsync());
        Assert.Equal($"18 of {all} checks", await window.Page.Locator("#filter-count").TextContentAsync());
        await window.Page.Locator("#filter-severity").SelectOptionAsync("error");
        Assert.Equal(8, await rows.CountAsync());
        await window.Page.Locator("#filter-clear").ClickAsync();
        Assert.Equal(all, await rows.CountAsync());

        await window.Page.Locator("#filter-subject").SelectOptionAsync("gears.fixed_sun");
        Assert.All(await rows.AllTextContentsAsync(), subject => Assert.Equal("gears.fixed_sun", subject));
        await window.Page.Locator("#filter-clear").ClickAsync();

        await window.Page.Locator("#filter-text").FillAsync("Lip  SPEED");
        var found = await window.Page.Locator(".checks tbody:visible").AllTextContentsAsync();
        Assert.NotEmpty(found);
        Assert.All(found, text => Assert.Contains("lip", text, StringComparison.OrdinalIgnoreCase));
        await window.Page.Locator("#filter-text").FillAsync("no such thing");
        Assert.Equal(0, await rows.CountAsync());
        Assert.Equal(0, await window.Page.Locator("h3[id^='checks.']:visible").CountAsync());
        Assert.Empty(window.Wrong);
    }

    [Fact]
    public async Task Without_script_every_check_shows_and_nothing_waits_for_it()
    {
        await using var window = await browser.Open(script: false);
        await window.Page.GotoAsync(browser.Address(R180));
        var html = await File.ReadAllTextAsync(Path.Combine(browser.Folder, R180), TestContext.Current.CancellationToken);

        Assert.Equal(863, await window.Page.Locator(".checks th[scope=row]").CountAsync());
        Assert.Contains("None of 863 evaluated checks fails", html, StringComparison.Ordinal);
        await Assertions.Expect(window.Page.Locator(".checks th[scope=row]").First).ToBeVisibleAsync();
        await Assertions.Expect(window.Page.Locator(".checks th[scope=row]").Last).ToBeVisibleAsync();
        await Assertions.Expect(window.Page.Locator(".filter")).ToBeHiddenAsync();
    }

    [Theory]
    [InlineData(R180, "A4")]
    [InlineData(R180, "Letter")]
    [InlineData("faulty/tarn-180-wrong-sun.html", "A4")]
    [InlineData("faulty/beck-90-wrong-marks.html", "Letter")]
    public async Task The_summary_prints_on_three_to_five_pages_and_the_whole_on_a_bounded_number(string name, string format)
    {
        await using var window = await browser.Open(bypass: true);
        await window.Page.GotoAsync(browser.Address(name));

        // What a filter hides is printed all the same.
        await window.Page.Locator("#filter-text").FillAsync("no such thing");
        var whole = Pages(await window.Page.PdfAsync(new() { Format = format }));
        await window.Page.AddStyleTagAsync(new() { Content = ".rest { display: none }" });
        var summary = Pages(await window.Page.PdfAsync(new() { Format = format }));

        Assert.InRange(summary, 3, 5);
        Assert.InRange(whole, summary + 10, 60);
    }

    // The command of the README.
    [Fact]
    public async Task The_command_of_the_README_makes_a_PDF_with_numbered_pages()
    {
        var readme = await File.ReadAllTextAsync(Path.Combine(RepositoryTests.Root, "README.md"), TestContext.Current.CancellationToken);
        Assert.Contains("chromium --headless --no-pdf-header-footer --print-to-pdf=r180.pdf reports/out/tarn-180/r180.html", readme, StringComparison.Ordinal);
        var program = Browser.Path;
        using var place = new Workplace();
        var pdf = place.PathOf("r180.pdf");

        var (code, said) = await Judges.Run(
            program,
            ["--headless", "--no-sandbox", "--disable-gpu", $"--user-data-dir={place.PathOf("profile")}", "--no-pdf-header-footer", $"--print-to-pdf={pdf}", Path.Combine(browser.Folder, R180)],
            place.Folder);

        Assert.True(code == 0 && File.Exists(pdf), said);
        Assert.InRange(Pages(await File.ReadAllBytesAsync(pdf, TestContext.Current.CancellationToken)), 13, 60);
    }

    [Fact]
    public async Task The_keyboard_reaches_the_content_first_and_what_has_the_focus_shows_it()
    {
        await using var window = await browser.Open();
        await window.Page.GotoAsync(browser.Address(R180));

        await window.Page.Keyboard.PressAsync("Tab");
        var skip = window.Page.Locator("a.skip");
        await Assertions.Expect(skip).ToBeFocusedAsync();
        await Assertions.Expect(skip).ToBeInViewportAsync();
        Assert.NotEqual("none", await skip.EvaluateAsync<string>("e => getComputedStyle(e).outlineStyle"));
        await window.Page.Keyboard.PressAsync("Enter");
        Assert.EndsWith("#content", window.Page.Url, StringComparison.Ordinal);
    }

    /// <summary>Pages of a document, by the objects that its file lists.</summary>
    internal static int Pages(byte[] pdf)
    {
        Assert.Equal("%PDF-", Encoding.ASCII.GetString(pdf, 0, 5));
        return PdfPage().Count(Encoding.Latin1.GetString(pdf));
    }

    [GeneratedRegex(@"/Type\s*/Page\b")]
    private static partial Regex PdfPage();

    [GeneratedRegex(" id=\"([^\"]+)\"")]
    private static partial Regex Ids();

    [GeneratedRegex(" href=\"([^\"]+)\"")]
    private static partial Regex Links();
}
