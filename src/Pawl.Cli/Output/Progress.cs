using System.Diagnostics;
using System.Globalization;
using Pawl.Cli.Checking;

namespace Pawl.Cli.Output;

/// <summary>How far a long run has come: one line on standard error, where somebody watches it and findings do not fill the screen.</summary>
internal sealed class Progress : IDisposable
{
    private readonly TextWriter? _to;
    private readonly int _total;
    private readonly Stopwatch _since = Stopwatch.StartNew();
    private long _next = 500;
    private bool _shown;

    private Progress(TextWriter? to, int total)
    {
        _to = to;
        _total = total;
    }

    public static Progress For(CommandContext context, Settings settings, int total) =>
        new(context.ErrorIsTerminal && !context.OutIsTerminal && !settings.Quiet ? context.Error : null, total);

    public void Advance(int done)
    {
        if (_to is null || _since.ElapsedMilliseconds < _next)
            return;

        _next = _since.ElapsedMilliseconds + 200;
        _shown = true;
        _to.Write(string.Create(CultureInfo.InvariantCulture, $"\r{done} of {_total} specs, {100L * done / _total} %"));
        _to.Flush();
    }

    /// <summary>Takes the line away, so that something else can be written.</summary>
    public void Clear()
    {
        if (!_shown)
            return;
        _to!.Write("\r\u001b[K");
        _shown = false;
    }

    public void Dispose()
    {
        Clear();
        _to?.Flush();
    }
}
