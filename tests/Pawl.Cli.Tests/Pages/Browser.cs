using Microsoft.Playwright;
using Pawl.Cli.Checking;

namespace Pawl.Cli.Tests.Pages;

/// <summary>Headless Chromium, with the pages of the shipped specs and of some faulty siblings. <c>.ci/run</c> installs the browser of the distribution.</summary>
public sealed class Browser : IAsyncLifetime
{
    private static readonly string? Program = new[] { "/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome" }.FirstOrDefault(File.Exists);
    private readonly Workplace _place = new() { Engine = Engine.Shipped };
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    /// <summary>Where the reports are.</summary>
    public string Folder => _place.PathOf("out");

    /// <summary>Path of the browser. Skips the test where there is none.</summary>
    public static string Path
    {
        get
        {
            Assert.SkipUnless(Program is not null, "install Chromium, as /usr/bin/chromium");
            return Program!;
        }
    }

    public async ValueTask InitializeAsync()
    {
        if (Program is null)
            return;
        string[] faulty = ["beck-90-wrong-marks", "tarn-120-ring-clash", "tarn-180-wrong-sun"];
        _place.RunWith(
            "", RepositoryTests.Root, ["check", "specs", .. faulty.Select(f => $"specs/faulty/{f}.yaml"), "--as-of", "2026-01-15", "--format", "html", "--output", Folder, "--quiet"]);
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new() { ExecutablePath = Program, Args = ["--no-sandbox"] });
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
            await _browser.DisposeAsync();
        _playwright?.Dispose();
        _place.Dispose();
    }

    /// <summary>The pages of results and of derivations, and the index; from the folder.</summary>
    public string[] All()
    {
        _ = Path;
        var pages = Directory.GetFiles(Folder, "*.html", SearchOption.AllDirectories).Select(f => System.IO.Path.GetRelativePath(Folder, f)).Order(StringComparer.Ordinal).ToArray();
        Assert.Contains("index.html", pages);
        Assert.True(pages.Length > 12, string.Join(' ', pages));
        return pages;
    }

    /// <summary>A window of its own. What goes wrong in it is collected.</summary>
    public async Task<Window> Open(int width = 1280, ColorScheme scheme = ColorScheme.Light, bool script = true, bool bypass = false)
    {
        _ = Path;
        var context = await _browser!.NewContextAsync(new()
        {
            ViewportSize = new() { Width = width, Height = 900 },
            ColorScheme = scheme,
            JavaScriptEnabled = script,
            BypassCSP = bypass,
        });
        return new(context, await context.NewPageAsync());
    }

    /// <summary>Address of a page of the folder.</summary>
    public string Address(string page) => new Uri(System.IO.Path.Combine(Folder, page)).AbsoluteUri;
}

/// <summary>A window of the browser.</summary>
public sealed class Window : IAsyncDisposable
{
    private readonly IBrowserContext _context;

    public Window(IBrowserContext context, IPage page)
    {
        (_context, Page) = (context, page);
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
                Wrong.Add(message.Text);
        };
        page.PageError += (_, error) => Wrong.Add(error);
        page.Dialog += (_, dialog) => Wrong.Add("dialog: " + dialog.Message);
        page.Request += (_, request) => Requests.Add(request.Url);
    }

    public IPage Page { get; }

    /// <summary>Errors, warnings, refusals of the policy, dialogs.</summary>
    public List<string> Wrong { get; } = [];

    /// <summary>Everything that was asked for, the page itself included.</summary>
    public List<string> Requests { get; } = [];

    /// <summary>Whether the page is wider than the window.</summary>
    public Task<bool> Overflows() => Page.EvaluateAsync<bool>("document.documentElement.scrollWidth > document.documentElement.clientWidth");

    /// <summary>What axe-core finds wrong with the page as it is.</summary>
    public async Task<string> Axe()
    {
        await Page.EvaluateAsync(await File.ReadAllTextAsync(Judges.PathOf("axe-core", "axe.min.js")));
        return await Page.EvaluateAsync<string>("""
            async () => {
              const found = await axe.run(document, { resultTypes: ['violations'] });
              return found.violations.map(v => `${v.id} (${v.nodes.length}): ${v.nodes.slice(0, 3).map(n => n.html.slice(0, 200) + ' ' + n.failureSummary).join(' | ')}`).join('\n');
            }
            """);
    }

    public ValueTask DisposeAsync() => _context.DisposeAsync();
}
