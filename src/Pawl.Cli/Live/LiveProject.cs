using Pawl.Cli.Checking;
using Pawl.Cli.Output;
using Pawl.Reports;
using Pawl.Reports.Output;
using Pawl.Rules;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Cli.Live;

/// <summary>The specs of a project, judged anew whenever a file that they rest on is saved. Looked at by one thread, read by many.</summary>
internal sealed class LiveProject
{
    /// <summary>Every so many looks the folders are searched too: for specs, catalogues and rule packs that came or went.</summary>
    private const int SearchEvery = 20;

    private const string Shipped = "shipped:";

    private readonly CommandContext _context;
    private readonly CheckRequest _request;
    private readonly Lock _lock = new();
    private Ground? _ground;
    private FileMarks _last = FileMarks.None;
    private LiveState _state = new() { Version = 0 };
    private TaskCompletionSource _changed = NewSignal();
    private int _looks;

    public LiveProject(CommandContext context, CheckRequest request) => (_context, _request) = (context, request);

    /// <summary>The rules and settings in force, and what they were read from.</summary>
    private sealed record Ground(Settings Settings, RuleSet? Rules, ImmutableArray<LiveComplaint> Complaints, FileMarks Marks);

    /// <summary>How it stands, and what is done when that changes.</summary>
    public (LiveState State, Task Changed) Now
    {
        get
        {
            lock (_lock)
                return (_state, _changed.Task);
        }
    }

    /// <summary>Reads and judges everything.</summary>
    /// <returns>What is wrong with the usage; null when it can be understood.</returns>
    public string? Start()
    {
        if (Read(null, out var usage) is not { } ground)
            return usage;
        Judge(ground);
        _last = Watched().Again();
        return null;
    }

    /// <summary>Looks whether a file was saved, and judges anew what rests on it. A file that is still being written is left until it rests.</summary>
    public void Look()
    {
        _looks++;
        var now = Watched().Again();
        var isAtRest = now.Equals(_last);
        _last = now;
        if (!isAtRest)
            return;
        var search = _looks % SearchEvery == 0;
        if (!search && now.Equals(Watched()))
            return;

        Judge(Read(_ground, out _) ?? _ground!);
        _last = Watched().Again();
    }

    private static TaskCompletionSource NewSignal() => new(TaskCreationOptions.RunContinuationsAsynchronously);

    private FileMarks Watched() => _state.Specs.Aggregate(_ground!.Marks, static (marks, spec) => marks.With(spec.Marks));

    /// <summary>The ground as it stands, the same one when nothing beneath it was saved; null when the usage cannot be understood.</summary>
    private Ground? Read(Ground? before, out string? usage)
    {
        if (SettingsResolver.Resolve(_request, _context, out var project, out usage) is not { } settings)
            return null;
        var root = settings.Root.Value;
        var marks = FileMarks.Of(
        [
            settings.ProjectFile ?? Path.Combine(root, Specs.Model.ProjectFile.FileName),
            .. settings.Catalogue.Value.Select(Absolute),
            .. settings.Adapters.Value.Select(Absolute),
            .. settings.Baseline.Value is { } baseline ? [Absolute(baseline)] : (ImmutableArray<string>)[],
            .. settings.Rules.Value.SelectMany(folder => PacksIn(Absolute(folder))),
        ]);
        if (before is not null && marks.Equals(before.Marks) && settings.AsOf == before.Settings.AsOf)
            return before;
        var load = _context.Engine.LoadRules(root, settings.Rules.Value);
        ImmutableArray<Diagnostic> complaints = [.. project.Diagnostics, .. load.Diagnostics];
        var isGood = !complaints.Any(static d => d.Severity == Severity.Error);
        return new(settings, isGood ? load.Rules : null, Shown(complaints, root), marks);

        string Absolute(string path) => Path.GetFullPath(path, root);
    }

    private IEnumerable<string> PacksIn(string folder)
    {
        try
        {
            return [folder, .. _context.Files.Entries(folder).Where(static e => !e.IsFolder).Select(e => Path.Combine(folder, e.Name))];
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return [folder];
        }
    }

    private void Judge(Ground ground)
    {
        var isNew = !ReferenceEquals(ground, _ground);
        _ground = ground;
        var root = ground.Settings.Root.Value;
        var selection = SpecSelection.Of(ground.Settings, _request, _context);
        var bench = new Workbench(_context.Engine, ground.Settings);
        var complaints = ground.Complaints.AddRange(Shown([.. selection.Problems, .. bench.Diagnostics], root));
        var names = ReportNames.Of(selection.Specs.Select(static s => s.Display));
        var before = _state.Specs.ToDictionary(static s => s.Input.Display, StringComparer.Ordinal);
        var specs = ImmutableArray.CreateBuilder<LiveSpec>();
        for (var i = 0; i < selection.Specs.Length; i++)
        {
            _context.Cancelled.ThrowIfCancellationRequested();
            var input = selection.Specs[i];
            var old = before.GetValueOrDefault(input.Display);

            // What was refused may have waited for a file that nobody knew of.
            if (old is { IsRefused: false } && !isNew && old.Name == names[i] && old.Marks.Again().Equals(old.Marks))
                specs.Add(old);
            else if (Judged(new() { Input = input, Name = names[i] }, old, bench, ground) is { } spec)
                specs.Add(spec);
        }

        Publish(complaints, specs.DrainToImmutable());
    }

    /// <summary>Null for a base that nobody named.</summary>
    private LiveSpec? Judged(LiveSpec spec, LiveSpec? old, Workbench bench, Ground ground)
    {
        var root = ground.Settings.Root.Value;

        // Marked before they are read: what is saved meanwhile is read again.
        var own = Path.GetFullPath(spec.Input.Display, root);
        var marks = FileMarks.Of([own]).With((old?.Marks ?? FileMarks.None).Again());
        spec = spec with { Record = old?.Record, Version = old?.Version ?? 0, Pages = old?.Pages ?? spec.Pages, Marks = marks };
        if (spec.Name != old?.Name && spec.Record is { } last)
            spec = spec with { Pages = PagesOf(last, spec.Name) };
        if (ground.Rules is not { } rules || bench.Diagnostics.Any(static d => d.Severity == Severity.Error))
            return spec;
        try
        {
            var (_, loaded, analysis) = bench.Compute(spec.Input);
            spec = spec with
            {
                Complaints = Shown(loaded.Diagnostics, root),
                Marks = marks.Of(FileMarks.Of([own, .. loaded.FilesRead.Where(static f => !f.Path.StartsWith(Shipped, StringComparison.Ordinal)).Select(f => Path.GetFullPath(f.Path, root))])),
            };
            // A variant that is being written names itself late; it does not vanish meanwhile.
            if (loaded.IsBase)
                return spec.Input.Named || spec.Record is not null ? Refused(spec, CliCodes.BaseNamed, "This file names no variant, so it is a base for others and cannot be judged.", "Name a spec that extends it.") : null;
            if (analysis is null)
                return spec;
            var judgement = bench.Judge(analysis, rules, ground.Settings.AsOf.Value);
            if (judgement.Coverage.Evaluated == 0)
                spec = Refused(spec, CliCodes.NothingEvaluated, "Not one rule could be evaluated, so the spec is not judged.", "State the inputs that the report lists as missing.");
            var record = RecordBuilder.Build(judgement);
            return spec with { Record = record, IsCurrent = true, Version = spec.Version + 1, Pages = PagesOf(record, spec.Name) };
        }
#pragma warning disable CA1031 // Whatever it is, it is told of this spec, and the others stay alive.
        catch (Exception defect) when (defect is not OperationCanceledException)
#pragma warning restore CA1031
        {
            return spec with { Defect = DefectText.Of(defect, spec.Input.Display, verbose: false) };
        }
    }

    private static LiveSpec Refused(LiveSpec spec, string code, string message, string hint) => spec with
    {
        Complaints = spec.Complaints.Add(new(new(code, Severity.Error, SourceSpan.Whole(spec.Input.Display), message, hint), null)),
    };

    private static Lazy<ImmutableArray<OutputFile>> PagesOf(Reports.Records.ConformanceRecord record, string name) =>
        new(() => ReportFiles.Of(record, name, ReportFormats.Html));

    private void Publish(ImmutableArray<LiveComplaint> complaints, ImmutableArray<LiveSpec> specs)
    {
        TaskCompletionSource changed;
        lock (_lock)
        {
            if (_state.Version > 0 && complaints.SequenceEqual(_state.Complaints) && IsSame(specs, _state.Specs))
                return;
            _state = new() { Version = _state.Version + 1, Complaints = complaints, Specs = specs };
            (changed, _changed) = (_changed, NewSignal());
        }

        changed.SetResult();
    }

    private static bool IsSame(ImmutableArray<LiveSpec> now, ImmutableArray<LiveSpec> before) => now.Length == before.Length
        && now.Zip(before).All(static pair => pair.First.Name == pair.Second.Name && pair.First.Version == pair.Second.Version
            && pair.First.IsCurrent == pair.Second.IsCurrent && pair.First.Defect == pair.Second.Defect
            && pair.First.Complaints.SequenceEqual(pair.Second.Complaints));

    private ImmutableArray<LiveComplaint> Shown(IEnumerable<Diagnostic> diagnostics, string root)
    {
        var lines = new Dictionary<string, string[]>(StringComparer.Ordinal);
        return [.. diagnostics.Select(d => new LiveComplaint(d, LineOf(d.Span, root, lines)))];
    }

    private string? LineOf(SourceSpan span, string root, Dictionary<string, string[]> files)
    {
        if (span.Start.Line < 1 || SettingsResolver.IsOutside(root, span.File))
            return null;
        if (!files.TryGetValue(span.File, out var lines))
            files[span.File] = lines = LinesOf(Path.GetFullPath(span.File, root));
        return span.Start.Line <= lines.Length ? lines[span.Start.Line - 1] : null;
    }

    private string[] LinesOf(string path)
    {
        try
        {
            return _context.Files.IsFile(path) && _context.Files.Read(path, YamlReader.MostBytes, out _) is { } bytes
                ? System.Text.Encoding.UTF8.GetString(bytes).ReplaceLineEndings("\n").Split('\n')
                : [];
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }
}
