using System.CommandLine;
using System.Globalization;
using System.Runtime.ExceptionServices;
using Pawl.Cli.Commands;
using Pawl.Cli.Output;
using Pawl.Reports.Comparing;
using Pawl.Reports.Records;
using Pawl.Specs.Text;

namespace Pawl.Cli.Comparing;

/// <summary>One run of <c>pawl compare</c>.</summary>
internal sealed class CompareRun
{
    private readonly CommandContext _context;
    private readonly Side _base;
    private readonly Side _head;
    private readonly Lock _lock = new();
    private readonly SortedDictionary<string, PairDiff> _diffs = new(StringComparer.Ordinal);
    private readonly HashSet<Diagnostic> _told = [];
    private int _unchanged;
    private bool _refused;

    private CompareRun(CommandContext context, Side @base, Side head)
    {
        (_context, _base, _head) = (context, @base, head);
    }

    /// <summary>Runs it; returns the exit code.</summary>
    public static int Start(CommandContext context, Command command, CompareRequest request)
    {
        if (Thresholds(request, out var usage) is not { } thresholds || ComparedOutput.Of(context, request, out usage) is not { } output)
            return Usage.Report(context, command, usage!);
        if (request.Family != request.Head is null)
            return Usage.Report(context, command, request.Family ? "--family takes one side." : "There are two sides to a comparison: BASE and HEAD.", "`pawl compare main .` compares the working folder with main.");

        var sides = new Sides(context, request);
        using var @base = sides.Open(request.Base, request.Head);
        using var head = request.Head is { } other && @base is not null ? sides.Open(other, request.Base) : null;
        foreach (var problem in sides.Problems)
            DiagnosticWriter.Write(context.Error, problem);
        if (sides.UsageError is { } error)
            return Usage.Report(context, command, error);
        if (@base is null || (head is null && !request.Family))
            return ExitCode.NotJudged;
        return request.Family ? FamilyRun.Go(context, @base, output) : new CompareRun(context, @base, head!).Go(thresholds, output);
    }

    private static Thresholds? Thresholds(CompareRequest request, out string? error)
    {
        error = null;
        double? loss = null;
        if (request.FailOnLoss is { } text)
        {
            if (!Share(text, out var share))
            {
                error = $"--fail-on-loss is a share of the margin such as `10 %`, not `{text}`.";
                return null;
            }

            loss = share;
        }

        return new()
        {
            FailOn = request.FailOn switch { "never" => null, "note" => SeverityWord.Note, "warning" => SeverityWord.Warning, _ => SeverityWord.Error },
            Loss = loss,
            LostCoverage = request.FailOnLostCoverage,
        };
    }

    private static bool Share(string text, out double share)
    {
        var number = text.Trim();
        var isPercent = number.EndsWith('%');
        var isNumber = double.TryParse(number.TrimEnd('%').TrimEnd(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out share);
        share /= isPercent ? 100 : 1;
        return isNumber && isPercent && share > 0;
    }

    private int Go(Thresholds thresholds, ComparedOutput output)
    {
        Pair();
        _context.Error.Flush();
        if (_diffs.Count + _unchanged == 0)
        {
            if (!_refused)
                DiagnosticWriter.Write(_context.Error, new(CliCodes.NoSpec, Severity.Error, SourceSpan.Whole("pawl"), "Neither side holds a spec.", "Name files or folders, or list specs under `specs:` in pawl.yaml."));
            return ExitCode.NotJudged;
        }

        var comparison = Comparer.Join(_base.Record, _head.Record, [.. _diffs.Values], _unchanged);
        comparison = comparison with { Breaches = thresholds.Breaches(comparison) };
        output.Write(new ComparedDocument(
            comparison.ToJson, () => ComparisonMarkdown.Comment(comparison), () => ComparisonMarkdown.Page(comparison), (verbose, colour, to) => new ComparisonText(verbose, colour).Write(comparison, to)));
        return _refused ? ExitCode.NotJudged : comparison.Breaches.IsEmpty ? ExitCode.Conforms : ExitCode.Findings;
    }

    /// <summary>By name; two single files are a pair whatever their names; what is left by family and variant.</summary>
    private void Pair()
    {
        List<(string? Base, string? Head)> pairs = [];
        List<string> gone = [], come = [];
        if (_base.Keys is [var one] && _head.Keys is [var other])
        {
            pairs.Add((one, other));
        }
        else
        {
            gone = [.. _base.Keys.Except(_head.Keys, StringComparer.Ordinal)];
            come = [.. _head.Keys.Except(_base.Keys, StringComparer.Ordinal)];
            pairs.AddRange(_head.Keys.Intersect(_base.Keys, StringComparer.Ordinal).Select(static key => ((string?)key, (string?)key)));
        }

        var names = gone.ToLookup(key => _base.Open(key).Identity, static key => key);
        foreach (var key in come)
        {
            var before = _head.Open(key).Identity is { } identity ? names[identity].FirstOrDefault(gone.Contains) : null;
            pairs.Add((before, key));
            if (before is not null)
                gone.Remove(before);
        }

        pairs.AddRange(gone.Select(static key => ((string?)key, (string?)null)));
        InParallel(_context, pairs.Count, i => Compare(pairs[i].Base, pairs[i].Head));
    }

    /// <summary>What is thrown comes out as it is.</summary>
    internal static void InParallel(CommandContext context, int count, Action<int> action)
    {
        try
        {
            Parallel.For(0, count, new ParallelOptions { CancellationToken = context.Cancelled }, action);
        }
        catch (AggregateException several)
        {
            ExceptionDispatchInfo.Throw(several.InnerExceptions[0]);
        }
    }

    private void Compare(string? baseKey, string? headKey)
    {
        var head = headKey is null ? null : _head.Open(headKey);
        if (head is { IsBase: true })
            return;
        if (head is not null && baseKey is not null && head.Judge is not null && _base.Ground == _head.Ground && _base.HasSame(baseKey, head.FilesRead, head.File))
        {
            Interlocked.Increment(ref _unchanged);
            return;
        }

        var @base = baseKey is null ? null : _base.Open(baseKey);
        if (head is null && @base is null or { IsBase: true })
            return;
        if (head is { Judge: null })
            Refuse(head, _head.Prefix, isHead: true);
        if (@base is { Judge: null, IsBase: false })
            Refuse(@base, _base.Prefix, isHead: false);
        var records = new RecordPair(@base?.Judge?.Invoke(), head?.Judge?.Invoke()) { BaseIsRefused = @base is { Judge: null, IsBase: false } };
        if (records is { Base: null, Head: null } || head is { Judge: null })
            return;
        var diff = PairDiff.Of(records);
        lock (_lock)
            _diffs[headKey ?? "\uffff" + baseKey] = diff;
    }

    private void Refuse(Opened spec, string prefix, bool isHead)
    {
        lock (_lock)
        {
            _refused |= isHead;
            foreach (var diagnostic in spec.Diagnostics.Where(static d => d.Severity == Severity.Error))
            {
                var shown = Sides.Prefixed(diagnostic, prefix);
                if (_told.Add(shown))
                    DiagnosticWriter.Write(_context.Error, shown);
            }

            if (!isHead)
                DiagnosticWriter.Write(_context.Error, new(CliCodes.NotComparable, Severity.Warning, SourceSpan.Whole(prefix + spec.File), "The base cannot be judged, so that all of the head counts as new."));
        }
    }
}
