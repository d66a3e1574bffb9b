using Pawl.Analysis;
using Pawl.Rules;
using Pawl.Specs;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Cli.Checking;

/// <summary>A spec to be read.</summary>
/// <param name="Display">From the project root with forward slashes, or <c>-</c>.</param>
/// <param name="Bytes">The content where it does not come from a file; null otherwise.</param>
/// <param name="Named">Whether the user named this very file, rather than a folder or pattern that holds it.</param>
internal sealed record SpecInput(string Display, byte[]? Bytes, bool Named);

/// <summary>pawl.yaml as the command line needs it; null where it is silent.</summary>
internal sealed record ProjectView
{
    /// <summary>Absolute.</summary>
    public required string Root { get; init; }

    /// <summary>Absolute; null when there is no project file.</summary>
    public string? File { get; init; }

    /// <summary>The project file with its hash; null when there is none.</summary>
    public FileRead? Read { get; init; }

    public Setting<ImmutableArray<string>>? Specs { get; init; }

    public Setting<ImmutableArray<string>>? Exclude { get; init; }

    public Setting<ImmutableArray<string>>? Catalogues { get; init; }

    public Setting<ImmutableArray<string>>? Adapters { get; init; }

    public Setting<ImmutableArray<string>>? Rules { get; init; }

    public Setting<string>? Baseline { get; init; }

    public Setting<string>? Templates { get; init; }

    public Setting<string>? ReportFolder { get; init; }

    public Setting<ImmutableArray<string>>? ReportFormats { get; init; }

    public Setting<string>? FailOn { get; init; }

    public Setting<bool>? RequireComplete { get; init; }

    public Setting<bool>? AllowIncomplete { get; init; }

    /// <summary>Sections that every product of the project must have.</summary>
    public ImmutableArray<Stated<string>> RequiredSections { get; init; } = [];

    public ImmutableArray<Diagnostic> Diagnostics { get; init; } = [];
}

/// <summary>The layers below, as the commands drive them.</summary>
internal sealed partial record Engine
{
    /// <summary>Finds and reads the project file, from a folder upwards; a given root is not searched beyond.</summary>
    public required Func<string, string?, ProjectView> FindProject { get; init; }

    /// <summary>
    /// Opens a reader of specs: project root, catalogue files, adapter files; these are read once. Strictly: a spec that the reader
    /// takes is put before the JSON Schema as well.
    /// </summary>
    public required Func<string, ImmutableArray<string>, ImmutableArray<string>, bool, Func<SpecInput, SpecLoad>> OpenSpecs { get; init; }

    /// <summary>Loads the rules in force: project root, house folders.</summary>
    public required Func<string, ImmutableArray<string>, RuleSetLoad> LoadRules { get; init; }

    /// <summary>Computes every quantity of a spec.</summary>
    public required Func<GearboxSpec, GearboxAnalysis> Analyse { get; init; }

    /// <summary>Puts the rules to an analysis.</summary>
    public required Func<GearboxAnalysis, RuleSet, DateOnly, Judgement> Judge { get; init; }

    /// <summary>The JSON Schemas by name, each made when asked for.</summary>
    public required Func<ImmutableSortedDictionary<string, Func<string>>> Schemas { get; init; }

    /// <summary>Diagnostics of the layers below: code, meaning, remedy.</summary>
    public required Func<ImmutableArray<(string Code, string Meaning, string Mend)>> Diagnostics { get; init; }
}
