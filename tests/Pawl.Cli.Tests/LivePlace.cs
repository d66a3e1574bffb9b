using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text.Json;

namespace Pawl.Cli.Tests;

/// <summary>What <c>/state</c> says.</summary>
internal sealed record Seen(int Version, string Title, string Panel, Dictionary<string, int> Pages);

/// <summary>A command that runs beside the test, until it is disposed of.</summary>
internal sealed class LivePlace : IAsyncDisposable
{
    private static CancellationToken Test => TestContext.Current.CancellationToken;

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

internal sealed class FirstLine : StringWriter
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
