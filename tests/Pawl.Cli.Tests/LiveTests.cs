using System.Globalization;
using System.Net;
using System.Net.Sockets;
using Pawl.Cli.Checking;
using Pawl.Cli.Live;

namespace Pawl.Cli.Tests;

/// <summary>The page that follows the files, as a browser meets it: by HTTP.</summary>
public sealed class LiveTests
{
    private const string Spec = "specs/r450.yaml";

    private static CancellationToken Test => TestContext.Current.CancellationToken;

    private static Workplace Project()
    {
        var place = new Workplace { Engine = Engine.Shipped };
        place.Run("new", "Works", "--project");
        place.Run("new", "R450");
        return place;
    }

    [Fact]
    public async Task A_saved_error_is_shown_with_its_line_above_the_last_good_report_and_goes_when_it_is_mended()
    {
        using var place = Project();
        await using var live = await LivePlace.Start(place);
        var good = File.ReadAllText(place.PathOf(Spec));
        var report = await live.Get("/report/r450.html");
        Assert.Contains("<h1", report.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("cannot be judged", (await live.State()).Panel, StringComparison.Ordinal);

        place.With(Spec, good.Replace("    speed: 2900", "    speeed: 2900", StringComparison.Ordinal));
        var broken = await live.Next();
        Assert.Contains("specs/r450.yaml", broken.Panel, StringComparison.Ordinal);
        Assert.Contains("<mark>speeed</mark>", broken.Panel, StringComparison.Ordinal);
        Assert.Contains("of the last state that could be judged", broken.Panel, StringComparison.Ordinal);
        Assert.StartsWith("✗", broken.Title, StringComparison.Ordinal);
        Assert.Equal(report.Text, (await live.Get("/report/r450.html")).Text);

        place.With(Spec, good);
        var mended = await live.Next();
        Assert.DoesNotContain("cannot be judged", mended.Panel, StringComparison.Ordinal);
        Assert.True(mended.Pages["r450.html"] > broken.Pages["r450.html"]);
        Assert.Equal(report.Text, (await live.Get("/report/r450.html")).Text);
    }

    [Fact]
    public async Task A_saved_base_or_rule_pack_renews_what_rests_on_it_and_nothing_else()
    {
        using var place = Project();
        var whole = File.ReadAllText(place.PathOf(Spec));
        place.With("specs/base.yaml", whole.Replace("  variant: R450\n", "", StringComparison.Ordinal));
        place.With(Spec, "pawl: 1\nextends: base.yaml\ngearbox: {variant: R450}\n").With("specs/alone.yaml", whole);
        await using var live = await LivePlace.Start(place);
        var before = await live.State();
        Assert.Equal(["alone.html", "index.html", "r450.html"], before.Pages.Keys.Order(StringComparer.Ordinal));

        place.With("specs/base.yaml", File.ReadAllText(place.PathOf("specs/base.yaml")) + "# seen\n");
        var after = await live.Next();
        Assert.True(after.Pages["r450.html"] > before.Pages["r450.html"]);
        Assert.Equal(before.Pages["alone.html"], after.Pages["alone.html"]);
    }

    [Fact]
    public async Task What_comes_and_goes_is_noticed()
    {
        using var place = Project();
        await using var live = await LivePlace.Start(place);

        place.With("specs/r451.yaml", File.ReadAllText(place.PathOf(Spec)).Replace("R450", "R451", StringComparison.Ordinal));
        Assert.Contains("r451.html", (await live.Next()).Pages.Keys);
        File.Delete(place.PathOf("specs/r451.yaml"));
        Assert.DoesNotContain("r451.html", (await live.Next()).Pages.Keys);
        Assert.Equal(HttpStatusCode.NotFound, (await live.Get("/report/r451.html")).Status);
    }

    [Fact]
    public async Task The_loopback_address_answers_to_its_own_names_alone_and_hands_out_nothing_but_reports()
    {
        using var place = Project();
        await using var live = await LivePlace.Start(place);

        Assert.Equal(HttpStatusCode.OK, (await live.Get("/")).Status);
        Assert.NotEqual(HttpStatusCode.OK, (await live.Get("/", host: "example.org")).Status);
        foreach (var path in (string[])["/report/..%2fpawl.yaml", "/report/%2e%2e/pawl.yaml", "/report/", "/pawl.yaml", "/report/r450", "/report/r450.yaml", "/report/r450.html/x", "/x"])
            Assert.Equal((path, HttpStatusCode.NotFound), (path, (await live.Get(path)).Status));
        using var post = await live.Client.PostAsync(new Uri(live.Address, "/"), new StringContent("x"), Test);
        Assert.Equal(HttpStatusCode.MethodNotAllowed, post.StatusCode);

        using var page = await live.Client.GetAsync(live.Address, Test);
        var policy = Assert.Single(page.Headers.GetValues("Content-Security-Policy"));
        Assert.StartsWith("default-src 'none'; ", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Names_and_lines_of_a_spec_are_text_and_never_markup()
    {
        using var place = Project();
        await using var live = await LivePlace.Start(place);

        place.With(Spec, File.ReadAllText(place.PathOf(Spec)).Replace("    speed: 2900", "    \"<img src=x onerror=alert(1)>\u202e\": 2900", StringComparison.Ordinal));
        var state = await live.Next();

        Assert.DoesNotContain("<img", state.Panel, StringComparison.Ordinal);
        Assert.DoesNotContain('\u202e', state.Panel);
        Assert.Contains("&lt;img src=x", state.Panel, StringComparison.Ordinal);
    }

    [Fact]
    public void A_spec_that_is_typed_letter_by_letter_never_ends_it()
    {
        using var place = Project();
        using var output = new StringWriter(CultureInfo.InvariantCulture);
        using var error = new StringWriter(CultureInfo.InvariantCulture);
        var live = new LiveProject(place.CommandContext(output, error, cancelled: Test), new() { NoReports = true });
        Assert.Null(live.Start());
        var whole = File.ReadAllText(place.PathOf(Spec));
        var first = live.Now.State.Specs[0].Record!;

        for (var length = 0; length < whole.Length; length += 7)
        {
            place.With(Spec, whole[..length]);
            live.Look();
            live.Look();
            var (state, _) = live.Now;
            Assert.Null(Assert.Single(state.Specs).Defect);
            Assert.NotNull(state.Specs[0].Record);
            LivePage.Panel(state);
        }

        place.With(Spec, whole);
        live.Look();
        live.Look();
        Assert.True(live.Now.State.Specs[0] is { IsRefused: false, IsCurrent: true });
        Assert.Equal(first.Id, live.Now.State.Specs[0].Record!.Id);
    }

    [Theory]
    [InlineData("--port", "0")]
    [InlineData("--port", "65536")]
    [InlineData("--port", "x")]
    [InlineData("-")]
    [InlineData("specs/none.yaml")]
    [InlineData("--as-of", "yesterday")]
    public void What_cannot_be_shown_is_refused_with_2(params string[] arguments)
    {
        using var place = Project();

        var ran = place.Run(["live", .. arguments]);

        Assert.Equal((2, ""), (ran.Code, ran.Out));
        Assert.NotEqual("", ran.Error);
    }

    [Fact]
    public void A_port_that_another_program_has_is_refused_with_2()
    {
        using var place = Project();
        using var taken = new TcpListener(IPAddress.Loopback, 0);
        taken.Start();
        var port = ((IPEndPoint)taken.LocalEndpoint).Port.ToString(CultureInfo.InvariantCulture);

        var ran = place.Run("live", "--port", port);

        Assert.Equal(2, ran.Code);
        Assert.Contains(port, ran.Error, StringComparison.Ordinal);
    }
}
