using Pawl.Specs;
using Pawl.Specs.Model;

namespace Pawl.Cli.Checking;

/// <summary>Reads and computes the specs of a project under its settings, for every command that judges. Thread-safe.</summary>
internal sealed class Workbench
{
    private readonly Engine _engine;
    private readonly Settings _settings;
    private readonly Func<SpecInput, SpecLoad> _load;

    public Workbench(Engine engine, Settings settings)
    {
        _engine = engine;
        _settings = settings;
        _load = engine.OpenSpecs(settings.Root.Value, settings.Catalogue.Value, settings.Adapters.Value, settings.StrictSchema);
    }

    public ComputedSpec Compute(SpecInput input)
    {
        var loaded = _load(input);
        return new(input, loaded, loaded is { IsBase: false, Spec: { } spec } ? _engine.Analyse(InProject(spec)) : null);
    }

    /// <summary>What the project file adds to each spec: its demands, and itself as a file that was read.</summary>
    private GearboxSpec InProject(GearboxSpec spec) => spec with
    {
        RequiredSections = spec.RequiredSections.AddRange(_settings.RequiredSections),
        FilesRead = _settings.ProjectRead is { } project ? Inserted(spec.FilesRead, project) : spec.FilesRead,
    };

    private static ImmutableArray<FileRead> Inserted(ImmutableArray<FileRead> files, FileRead more)
    {
        var at = 0;
        while (at < files.Length && string.CompareOrdinal(files[at].Path, more.Path) < 0)
            at++;
        return at < files.Length && files[at].Path == more.Path ? files : files.Insert(at, more);
    }
}
