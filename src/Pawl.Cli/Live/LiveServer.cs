using System.Net;
using System.Net.Sockets;
using System.Text;
using System.Text.Json;
using Pawl.Reports;
using Pawl.Reports.Output;

namespace Pawl.Cli.Live;

/// <summary>Serves the page and the reports on the loopback address, to browsers of this machine alone. Reads only.</summary>
internal sealed class LiveServer : IDisposable
{
    private const string Loopback = "127.0.0.1";
    private const string ReportRoot = "/report/";

    private readonly HttpListener _listener;
    private readonly LiveProject _project;
    private readonly CancellationToken _cancelled;

    private LiveServer(HttpListener listener, int port, LiveProject project, CancellationToken cancelled)
    {
        (_listener, _project, _cancelled) = (listener, project, cancelled);
        Address = $"http://{Loopback}:{Phrase(port)}/";
    }

    /// <summary>What to open in a browser.</summary>
    public string Address { get; }

    /// <summary>Listens on a port; null when another program has it.</summary>
    public static LiveServer? Start(int port, LiveProject project, CancellationToken cancelled)
    {
        // By these names alone: a site elsewhere may give a name of its own to this address, and is not answered.
        var listener = new HttpListener();
        listener.Prefixes.Add($"http://{Loopback}:{Phrase(port)}/");
        listener.Prefixes.Add($"http://localhost:{Phrase(port)}/");
        try
        {
            listener.Start();
            return new(listener, port, project, cancelled);
        }
        catch (Exception taken) when (taken is HttpListenerException or SocketException)
        {
            listener.Close();
            return null;
        }
    }

    /// <summary>Answers until it is cancelled.</summary>
    public async Task Serve()
    {
        await using var ends = _cancelled.Register(_listener.Stop);
        while (!_cancelled.IsCancellationRequested)
        {
            HttpListenerContext call;
            try
            {
                call = await _listener.GetContextAsync();
            }
            catch (Exception ended) when (ended is HttpListenerException or ObjectDisposedException or InvalidOperationException)
            {
                return;
            }

            _ = Task.Run(() => Answer(call), CancellationToken.None);
        }
    }

    public void Dispose() => _listener.Close();

    private static string Phrase(int port) => port.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private async Task Answer(HttpListenerContext call)
    {
        try
        {
            call.Response.Headers["X-Content-Type-Options"] = "nosniff";
            call.Response.Headers["Cross-Origin-Resource-Policy"] = "same-origin";
            call.Response.Headers["Referrer-Policy"] = "no-referrer";
            call.Response.Headers["Cache-Control"] = "no-store";

            if (call.Request.HttpMethod is not ("GET" or "HEAD"))
                await Send(call, HttpStatusCode.MethodNotAllowed, "text/plain", "There is nothing to send here.\n");
            else if (call.Request.Url?.AbsolutePath is "/events")
                await Events(call);
            else
                await Page(call);
        }
        catch (Exception gone) when (gone is HttpListenerException or IOException or ObjectDisposedException or OperationCanceledException or InvalidOperationException)
        {
            // The browser went away in the middle, or the server ends.
        }
        finally
        {
            Close(call.Response);
        }
    }

    private async Task Page(HttpListenerContext call)
    {
        var (state, _) = _project.Now;
        var path = Uri.UnescapeDataString(call.Request.Url?.AbsolutePath ?? "/");
        if (path == "/")
        {
            call.Response.Headers["Content-Security-Policy"] = LivePage.Policy;
            await Send(call, HttpStatusCode.OK, "text/html", LivePage.Of(state, state.Specs is [var only] ? only.Page : ReportNames.IndexName + ".html"));
        }
        else if (path == "/state")
        {
            await Send(call, HttpStatusCode.OK, "application/json", StateOf(state));
        }
        else if (path.StartsWith(ReportRoot, StringComparison.Ordinal) && Report(state, path[ReportRoot.Length..]) is { } page)
        {
            // The page has a policy of its own inside; this one only says who may show it.
            call.Response.Headers["Content-Security-Policy"] = "frame-ancestors 'self'";
            await Send(call, HttpStatusCode.OK, "text/html", page);
        }
        else
        {
            await Send(call, HttpStatusCode.NotFound, "text/html", LivePage.Nothing("There is no such page."));
        }
    }

    private static string? Report(LiveState state, string path)
    {
        if (path == ReportNames.IndexName + ".html")
        {
            return ReportFiles.Index(
                [.. state.Specs.Select(static s => s.Record is { } record ? IndexEntry.Of(record, s.Name) : new IndexEntry { SpecFile = s.Input.Display })],
                ReportFormats.Html)[0].Text;
        }

        foreach (var spec in state.Specs)
        {
            if (!path.StartsWith(spec.Name, StringComparison.Ordinal))
                continue;
            foreach (var page in spec.Pages.Value)
            {
                if (page.Path == path)
                    return page.Text;
            }

            if (spec.Record is null && path == spec.Page)
                return LivePage.Nothing("There is no report yet. What keeps the spec from being judged stands above.");
        }

        return null;
    }

    private static string StateOf(LiveState state)
    {
        using var text = new MemoryStream();
        using (var json = new Utf8JsonWriter(text))
        {
            json.WriteStartObject();
            json.WriteNumber("version", state.Version);
            json.WriteString("title", LivePage.Title(state));
            json.WriteString("panel", LivePage.Panel(state));
            json.WriteStartObject("pages");
            json.WriteNumber(ReportNames.IndexName + ".html", state.Version);
            foreach (var spec in state.Specs)
            {
                json.WriteNumber(spec.Page, spec.Version);
                if (!spec.Pages.IsValueCreated)
                    continue;
                foreach (var page in spec.Pages.Value.Where(p => p.Path != spec.Page))
                    json.WriteNumber(page.Path, spec.Version);
            }

            json.WriteEndObject();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(text.ToArray());
    }

    /// <summary>Server-sent events: the version, now and whenever it grows.</summary>
    private async Task Events(HttpListenerContext call)
    {
        call.Response.ContentType = "text/event-stream";
        call.Response.SendChunked = true;
        while (true)
        {
            var (state, changed) = _project.Now;
            await call.Response.OutputStream.WriteAsync(Encoding.UTF8.GetBytes($"data: {Phrase(state.Version)}\n\n"), _cancelled);
            await call.Response.OutputStream.FlushAsync(_cancelled);
            await changed.WaitAsync(_cancelled);
        }
    }

    private async Task Send(HttpListenerContext call, HttpStatusCode status, string type, string text)
    {
        var bytes = Encoding.UTF8.GetBytes(text);
        call.Response.StatusCode = (int)status;
        call.Response.ContentType = type + "; charset=utf-8";
        call.Response.ContentLength64 = bytes.Length;
        if (call.Request.HttpMethod != "HEAD")
            await call.Response.OutputStream.WriteAsync(bytes, _cancelled);
    }

    private static void Close(HttpListenerResponse response)
    {
        try
        {
            response.Close();
        }
        catch (Exception gone) when (gone is HttpListenerException or IOException or ObjectDisposedException or InvalidOperationException)
        {
            // Closed by the other side.
        }
    }
}
