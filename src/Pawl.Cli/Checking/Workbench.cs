using Pawl.Analysis;
using Pawl.Reports;
using Pawl.Rules;
using Pawl.Specs;
using Pawl.Specs.Model;
using Pawl.Specs.Reading;
using Pawl.Specs.Text;

namespace Pawl.Cli.Checking;

/// <summary>Reads, computes and judges the specs of a project under its settings, for every command that judges. Thread-safe.</summary>
internal sealed class Workbench
{
    private readonly Engine _engine;
    private readonly Settings _settings;
    private readonly Func<SpecInput, SpecLoad> _load;
    private readonly ImmutableArray<FileRead> _ofProject;

    public Workbench(Engine engine, Settings settings)
    {
        _engine = engine;
        _settings = settings;
        _load = engine.OpenSpecs(settings.Root.Value, settings.Catalogue.Value, settings.Adapters.Value, settings.StrictSchema);
        var known = settings.Baseline.Value is { } path ? BaselineReader.Load(settings.Root.Value, path) : null;
        var templates = TemplateFolder.Load(settings.Root.Value, settings.Templates);
        Templates = templates.Templates;
        Diagnostics = [.. known is null ? [] : known.Diagnostics, .. Repeated(known?.Baseline), .. templates.Diagnostics];
        Baseline = known?.Baseline is { } file ? new(settings.Baseline.Value!, file) : null;
        _ofProject = [.. new[] { settings.ProjectRead, known?.Read }.OfType<FileRead>(), .. templates.Read];
    }

    /// <summary>What reports are made by.</summary>
    public ReportTemplates Templates { get; }

    /// <summary>What is wrong with the baseline or the templates; with an error nothing is judged.</summary>
    public ImmutableArray<Diagnostic> Diagnostics { get; }

    /// <summary>The known findings; null without a baseline.</summary>
    public Baseline? Baseline { get; }

    public ComputedSpec Compute(SpecInput input)
    {
        var loaded = _load(input);
        return new(input, loaded, loaded is { IsBase: false, Spec: { } spec } ? _engine.Analyse(InProject(spec)) : null);
    }

    public Judgement Judge(GearboxAnalysis analysis, RuleSet rules, DateOnly asOf)
    {
        var judgement = _engine.Judge(analysis, rules, asOf);
        return Baseline is { } baseline ? baseline.Apply(judgement) : judgement;
    }

    /// <summary>What the project adds to each spec: its demands, and its own files as files that were read.</summary>
    private GearboxSpec InProject(GearboxSpec spec) => spec with
    {
        RequiredSections = spec.RequiredSections.AddRange(_settings.RequiredSections),
        FilesRead = _ofProject.Aggregate(spec.FilesRead, Inserted),
    };

    private static ImmutableArray<FileRead> Inserted(ImmutableArray<FileRead> files, FileRead more)
    {
        var at = 0;
        while (at < files.Length && string.CompareOrdinal(files[at].Path, more.Path) < 0)
            at++;
        return at < files.Length && files[at].Path == more.Path ? files : files.Insert(at, more);
    }

    private static IEnumerable<Diagnostic> Repeated(BaselineFile? file)
    {
        var seen = new Dictionary<(string, FindingName), KnownFindingSpec>();
        foreach (var entry in file?.Findings ?? [])
        {
            if (!seen.TryAdd((entry.Spec.Value, Baseline.NameOf(entry)), entry))
            {
                yield return new(
                    CliCodes.BaselineRepeated, Severity.Error, entry.Span,
                    $"{entry.Rule.Value} on {entry.Subject.Value} of {entry.Spec.Value} is listed already at line {seen[(entry.Spec.Value, Baseline.NameOf(entry))].Span.Start.Line.ToString(System.Globalization.CultureInfo.InvariantCulture)}.",
                    "Keep one of them.");
            }
        }
    }
}
