using System.CommandLine;
using System.Globalization;
using System.Runtime.ExceptionServices;
using Pawl.Cli.Commands;
using Pawl.Cli.Output;
using Pawl.Reports;
using Pawl.Reports.Output;
using Pawl.Reports.Records;
using Pawl.Rules;
using Pawl.Specs.Text;

namespace Pawl.Cli.Checking;

/// <summary>One run of <c>pawl check</c>.</summary>
internal sealed class CheckRun : IDisposable
{
    // Enough to keep the cores busy between two printings, few enough to keep the memory flat.
    // Few at a time, so that what they leave is dropped while it is young.
    private static readonly int ChunkSize = 2 * Environment.ProcessorCount;

    private readonly CommandContext _context;
    private readonly Settings _settings;
    private readonly Totals _totals = new();
    private readonly List<IndexEntry> _index = [];
    private readonly bool _many;
    private readonly HashSet<string> _bases = new(StringComparer.Ordinal);
    private readonly HashSet<string> _read = new(StringComparer.Ordinal);
    private readonly HashSet<Diagnostic> _told = [];
    private readonly Sequence _out;
    private readonly StringWriter _fileText = new() { NewLine = "\n" };
    private readonly Sequence? _file;
    private readonly RunDocuments _documents;
    private BaselineShrink? _shrink;
    private RuleUse? _use;
    private Progress? _progress;
    private bool _refused;
    private bool _fails;
    private bool _defect;

    private CheckRun(CommandContext context, Settings settings, bool many)
    {
        _context = context;
        _settings = settings;
        _many = many;
        _documents = new(context, settings);
        _out = new Sequence(context.Out, settings.Out.Value, many, IsSpaced(settings, settings.Out.Value));
        if (settings is { ReportIsFile: true, ReportPlace.Value: not null } && !Formats.IsOfRun(settings.ReportFormats.Value[0]))
            _file = new Sequence(_fileText, settings.ReportFormats.Value[0], many, IsSpaced(settings, settings.ReportFormats.Value[0]));
    }

    // A verdict is one line.
    private static bool IsSpaced(Settings settings, Format format) => format != Format.Text || settings.Level != TextLevel.Quiet;

    /// <summary>Settles the settings and runs; returns the exit code.</summary>
    public static int Start(CommandContext context, Command command, CheckRequest request)
    {
        if (request.Baseline is { Length: 0 })
            return Usage.Report(context, command, "--baseline names no file.");
        if (SettingsResolver.Resolve(request, context, out var project, out var usage) is not { } settings)
            return Usage.Report(context, command, usage!);

        foreach (var diagnostic in project.Diagnostics)
            DiagnosticWriter.Write(context.Error, diagnostic);
        var isBad = project.Diagnostics.Any(d => d.Severity == Severity.Error);
        if (request.Prune && settings.Baseline.Value is null && !isBad)
            return Usage.Report(context, command, "--prune makes a baseline smaller, but none is in force.", "Give --baseline FILE.");
        if (request.Sheets && !isBad && (settings.ReportPlace.Value is null || settings.ReportIsFile))
            return Usage.Report(context, command, "--sheets are files beside the reports.", "Give --output DIR.");
        if (request.ShowConfig && !isBad)
        {
            SettingsWriter.Write(context.Out, settings);
            return ExitCode.Conforms;
        }

        // Asked of the request, not of what it happens to match, so that the shape of the output can be relied on.
        var many = request.Paths is not [var only] || !(only == "-" || context.Files.IsFile(context.Absolute(only)));
        if (many && (settings.Out.Value == Format.Html || (settings.ReportIsFile && settings.ReportFormats.Value is [Format.Html])))
            return Usage.Report(context, command, "A page holds one spec. Give --output DIR for a page each, or name one spec.");

        using var run = new CheckRun(context, settings, many);
        foreach (var diagnostic in project.Diagnostics)
            run._documents.Complain(diagnostic);
        return isBad ? run.NotJudged() : run.Go(request);
    }

    public void Dispose() => _fileText.Dispose();

    private int Go(CheckRequest request)
    {
        var engine = _context.Engine;
        var root = _settings.Root.Value;

        // The rules are read and compiled while the first spec is read and computed.
        var loading = Task.Run(() => engine.LoadRules(root, _settings.Rules.Value));
        var selection = SpecSelection.Of(_settings, request, _context);
        foreach (var problem in selection.Problems)
            Complain(problem);
        if (selection.Specs.IsEmpty)
            return NotJudged();
        if (_settings is { ReportIsFile: true, ReportPlace.Value: { } place }
            && selection.Specs.FirstOrDefault(s => Path.GetFullPath(s.Display, root) == place) is { } victim)
        {
            Complain(new(
                CliCodes.CannotWrite, Severity.Error, SourceSpan.Whole(victim.Display), "The report would take the place of this spec.",
                "Give --output another name."));
            return ExitCode.NotJudged;
        }

        var bench = new Workbench(engine, _settings);
        foreach (var problem in bench.Diagnostics)
            Complain(problem);
        if (bench.Diagnostics.Any(d => d.Severity == Severity.Error))
            return ExitCode.NotJudged;
        _shrink = bench.Baseline is { } baseline ? new(baseline, root) : null;

        // A task, because what it throws is said when its turn comes.
        var first = new Task<ComputedSpec>(() => bench.Compute(selection.Specs[0]));
        first.RunSynchronously();
        if (InForce(loading.GetAwaiter().GetResult()) is not { } rules)
            return NotJudged();

        _use = new(rules);
        CheckAll(selection.Specs, bench.Compute, first, new SpecChecker(bench, _settings, rules));
        WarnOfUnusedBases();
        WarnOfIdleRules();
        ShrinkBaseline(request.Prune);
        return Conclude();
    }

    /// <summary>Ends a run in which nothing can be judged; what machines read says so, rather than staying what it was.</summary>
    private int NotJudged()
    {
        _documents.Finish(ExitCode.NotJudged, successful: false);
        return ExitCode.NotJudged;
    }

    private int Conclude()
    {
        var code = _defect ? ExitCode.Defect
            : _refused || _totals.Counts.Evaluated == 0 ? ExitCode.NotJudged
            : _fails ? ExitCode.Findings
            : ExitCode.Conforms;
        _documents.Finish(code, successful: code is ExitCode.Conforms or ExitCode.Findings);
        _out.Finish();
        if (_file is not null && _file.Count > 0)
        {
            _file.Finish();
            Files.Write(_settings.ReportPlace.Value!, _fileText.ToString());
        }

        if (_many && _settings is { ReportIsFile: false, ReportPlace.Value: { } folder })
            SpecChecker.Written(ReportWriter.Write(folder, ReportFiles.Index([.. _index], Formats.FilesOf(_settings.ReportFormats.Value))));

        // Whatever else standard output carries, the counts are said somewhere, and last.
        var to = _settings.Out.Value == Format.Text ? _context.Out : _context.Error;
        if (_bases.Count > 0 && !_settings.Quiet)
            to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{_bases.Count} base {(_bases.Count == 1 ? "file" : "files")} passed over"));
        if (_settings.ReportPlace.Value is { } place && !_settings.Quiet)
            to.WriteLine($"reports in {Plain.Line(Path.GetRelativePath(_context.Folder, place).Replace('\\', '/'))}");
        _totals.Write(to);
        return code;
    }

    private RuleSet? InForce(RuleSetLoad load)
    {
        foreach (var diagnostic in load.Diagnostics)
            Complain(diagnostic);
        if (load.Rules is { Rules.IsEmpty: true })
        {
            Complain(new(
                CliCodes.NoRules, Severity.Error, new("pawl", default, default), "No rule is in force, so nothing can be judged.",
                "Check --rules, and `rules:` in pawl.yaml."));
        }

        return load.Rules is { Rules.IsEmpty: false } && !load.Diagnostics.Any(d => d.Severity == Severity.Error) ? load.Rules : null;
    }

    private void CheckAll(ImmutableArray<SpecInput> specs, Func<SpecInput, ComputedSpec> compute, Task<ComputedSpec> first, SpecChecker checker)
    {
        var names = ReportNames.Of(specs.Select(s => s.Display));
        _context.Cancelled.ThrowIfCancellationRequested();
        Print(Guarded(specs[0], () => checker.Check(first.GetAwaiter().GetResult(), names[0])), names[0]);
        if (specs.Length == 1)
            return;

        using var progress = Progress.For(_context, _settings, specs.Length);
        _progress = progress;
        var results = new SpecResult[Math.Min(ChunkSize, specs.Length - 1)];
        for (var start = 1; start < specs.Length; start += ChunkSize)
        {
            var count = Math.Min(ChunkSize, specs.Length - start);
            var from = start;
            InParallel(count, i => results[i] = Guarded(specs[from + i], () => checker.Check(compute(specs[from + i]), names[from + i])));
            for (var i = 0; i < count; i++)
                Print(results[i], names[from + i]);
            progress.Advance(start + count);
            Forget(results);
        }
    }

    /// <summary>
    /// Between two chunks next to nothing is alive, so that a collection costs little. Left to itself it would come in the middle of some
    /// specs, and copy all that has been computed of them.
    /// </summary>
    private static void Forget(SpecResult[] results)
    {
        Array.Clear(results);
#pragma warning disable S1215 // Measured: a third of the time of a run over a thousand specs.
        GC.Collect(0, GCCollectionMode.Forced, blocking: true);
#pragma warning restore S1215
    }

    /// <summary>A defect that one spec brings to light leaves the others their verdicts.</summary>
    private static SpecResult Guarded(SpecInput input, Func<SpecResult> check)
    {
        try
        {
            return check();
        }
#pragma warning disable CA1031 // Whatever it is, it is told of this spec and ends in an exit code of its own.
        catch (Exception defect) when (defect is not (OperationCanceledException or CannotWriteException or IOException or UnauthorizedAccessException))
#pragma warning restore CA1031
        {
            return new() { Input = input, State = SpecState.Defect, Defect = defect };
        }
    }

    private void InParallel(int count, Action<int> action)
    {
        try
        {
            Parallel.For(0, count, new ParallelOptions { CancellationToken = _context.Cancelled }, action);
        }
        catch (AggregateException several)
        {
            ExceptionDispatchInfo.Throw(several.InnerExceptions[0]);
        }
    }

    private void Print(SpecResult result, string name)
    {
        foreach (var diagnostic in result.Diagnostics)
            Complain(diagnostic);
        if (result.Defect is { } defect)
        {
            _defect = true;
            Say(to => to.WriteLine(DefectText.Of(defect, result.Input.Display, _settings.Verbose)));
        }

        foreach (var file in result.FilesRead)
        {
            if (file != result.Input.Display)
                _read.Add(file);
        }

        if (result.State == SpecState.Base)
        {
            _bases.Add(result.Input.Display);
            return;
        }

        _refused |= result.State == SpecState.Refused;
        _fails |= result.Fails;
        _documents.Add(result, name);
        if (result.Record is { } record)
        {
            _totals.Add(record);
            _shrink?.Note(result);
            Note(record);
        }
        else
            _totals.AddUnreadable();
        if (_many)
            _index.Add(result.Record is null ? new IndexEntry { SpecFile = result.Input.Display } : IndexEntry.Of(result.Record, name));
        if (result.Rendered is { } text)
            _out.Add(text);
        if (result.ForFile is { } forFile)
            _file!.Add(forFile);
    }

    private void Note(ConformanceRecord record)
    {
        if (_use is not { IsOpen: true } use)
            return;
        foreach (var finding in record.Findings)
        {
            if (finding.Outcome != OutcomeWord.NotApplicable)
                use.Applied(finding.Rule);
        }
    }

    /// <summary>Of a run that judged nothing there is nothing to say.</summary>
    private void WarnOfIdleRules()
    {
        if (_totals.Specs == _totals.Unreadable)
            return;
        foreach (var warning in _use!.Warnings)
            Complain(warning);
    }

    /// <summary>Says which entries are to be removed, or removes them; of a run that met a refusal or a defect nothing is written.</summary>
    private void ShrinkBaseline(bool prune)
    {
        if (_shrink is not { } shrink)
            return;
        if (prune && !_refused && !_defect)
        {
            if (shrink.Write(out var said))
                Say(to => to.WriteLine(said));
            return;
        }

        foreach (var warning in shrink.Warnings)
            Complain(warning);
    }

    private void WarnOfUnusedBases()
    {
        foreach (var unused in _bases.Where(b => !_read.Contains(b)).Order(StringComparer.Ordinal))
        {
            Complain(new(
                CliCodes.UnusedBase, Severity.Warning, SourceSpan.Whole(unused), "No spec of this run extends this base file.",
                "Remove it, or check the `extends:` of its variants."));
        }
    }

    private void Complain(Diagnostic diagnostic)
    {
        if (diagnostic.Severity == Severity.Error)
            _refused = true;
        else if (_settings.Quiet)
            return;

        // A fault in a base file or a catalogue is met again by every spec that reads it.
        if (!_told.Add(diagnostic))
            return;

        _documents.Complain(diagnostic);
        Say(to => DiagnosticWriter.Write(to, diagnostic));
    }

    private void Say(Action<TextWriter> write)
    {
        // Both streams may be one terminal or one log: what came first stands first.
        _context.Out.Flush();
        _progress?.Clear();
        write(_context.Error);
    }
}
