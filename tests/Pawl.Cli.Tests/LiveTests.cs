using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text.Json;
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

    /// <summary>What <c>/state</c> says.</summary>
    private sealed record Seen(int Version, string Title, string Panel, Dictionary<string, int> Pages);

    /// <summary>A command that runs beside the test, until it is disposed of.</summary>
    private sealed class LivePlace : IAsyncDisposable
    {
        private readonly CancellationTokenSource _cancel = new();
        private Task<int> _run = Task.FromResult(-1);
        private StreamReader _events = StreamReader.Null;

        public HttpClient Client { get; } = new() { Timeout = Timeout.InfiniteTimeSpan };

        public Uri Address { get; private set; } = new("http://127.0.0.1/");

        public static async Task<LivePlace> Start(Workplace place)
        {
            var live = new LivePlace();
            using var free = new TcpListener(IPAddress.Loopback, 0);
            free.Start();
            var port = ((IPEndPoint)free.LocalEndpoint).Port;
            free.Stop();
            var said = new FirstLine();
            live._run = Task.Factory.StartNew(
                () => PawlCommand.Run(["live", "--port", port.ToString(CultureInfo.InvariantCulture)], place.CommandContext(said, TextWriter.Null, cancelled: live._cancel.Token)),
                Test, TaskCreationOptions.LongRunning, TaskScheduler.Default);
            await Task.WhenAny(said.Written, live._run);
            Assert.False(live._run.IsCompleted, "it ended at once");
            live.Address = new((await said.Written).Split(' ')[0]);
            live._events = new(await live.Client.GetStreamAsync(new Uri(live.Address, "/events"), Test));
            await live.Told();
            return live;
        }

        public async Task<Seen> State() => JsonSerializer.Deserialize<Seen>((await Get("/state")).Text, JsonSerializerOptions.Web)!;

        /// <summary>The state when the next change is told.</summary>
        public async Task<Seen> Next()
        {
            await Told();
            return await State();
        }

        public async Task<(HttpStatusCode Status, string Text)> Get(string path, string? host = null)
        {
            using var request = new HttpRequestMessage(HttpMethod.Get, new Uri(Address, path));
            request.Headers.Host = host;

            // A listener ends the connection over which another name was asked for.
            request.Headers.ConnectionClose = host is not null;
            using var response = await Client.SendAsync(request, Test);
            return (response.StatusCode, await response.Content.ReadAsStringAsync(Test));
        }

        public async ValueTask DisposeAsync()
        {
            await _cancel.CancelAsync();
            var code = await _run;
            _events.Dispose();
            Client.Dispose();
            _cancel.Dispose();
            Assert.Equal(ExitCode.Conforms, code);
        }

        private async Task Told()
        {
            while (await _events.ReadLineAsync(Test) is { } line)
            {
                if (line.StartsWith("data:", StringComparison.Ordinal))
                    return;
            }

            Assert.Fail("The events ended.");
        }
    }

    private sealed class FirstLine : StringWriter
    {
        private readonly TaskCompletionSource<string> _written = new(TaskCreationOptions.RunContinuationsAsynchronously);

        public FirstLine()
            : base(CultureInfo.InvariantCulture)
        {
        }

        public Task<string> Written => _written.Task;

        public override void Flush()
        {
            base.Flush();
            if (GetStringBuilder().Length > 0)
                _written.TrySetResult(ToString());
        }
    }
}
