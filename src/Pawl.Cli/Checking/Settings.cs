using Pawl.Reports;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Cli.Checking;

/// <summary>A value in force and where it was set.</summary>
internal sealed record Setting<T>(T Value, string Origin);

/// <summary>Words for where a setting was set; a place in pawl.yaml is its <c>file:line:column</c>.</summary>
internal static class Origins
{
    public const string CommandLine = "command line";
    public const string Default = "default";
}

/// <summary>The settings in force for one run of <c>pawl check</c>.</summary>
internal sealed record Settings
{
    /// <summary>The project root, absolute.</summary>
    public required Setting<string> Root { get; init; }

    /// <summary>pawl.yaml, absolute; null when there is none.</summary>
    public required string? ProjectFile { get; init; }

    /// <summary>pawl.yaml with its hash; null when there is none.</summary>
    public FileRead? ProjectRead { get; init; }

    /// <summary>Paths and patterns to judge.</summary>
    public required Setting<ImmutableArray<string>> Specs { get; init; }

    /// <summary>Whether the specs come from pawl.yaml, so that its reports apply.</summary>
    public required bool FromProject { get; init; }

    /// <summary>Patterns of what <see cref="Specs"/> is not to match, when they are those of pawl.yaml.</summary>
    public required Setting<ImmutableArray<string>> Exclude { get; init; }

    /// <summary>Catalogue files, from the root.</summary>
    public required Setting<ImmutableArray<string>> Catalogue { get; init; }

    /// <summary>Adapter files, from the root.</summary>
    public required Setting<ImmutableArray<string>> Adapters { get; init; }

    public required Setting<ImmutableArray<string>> Rules { get; init; }

    /// <summary>The file of known findings, from the root; null for none.</summary>
    public required Setting<string?> Baseline { get; init; }

    /// <summary>Least severity that fails; null for never.</summary>
    public required Setting<Severity?> FailOn { get; init; }

    public required Setting<bool> RequireComplete { get; init; }

    public required Setting<bool> AllowIncomplete { get; init; }

    /// <summary>Sections that pawl.yaml requires, with their places there.</summary>
    public required ImmutableArray<Stated<string>> RequiredSections { get; init; }

    public required Setting<DateOnly> AsOf { get; init; }

    /// <summary>What standard output carries.</summary>
    public required Setting<Format> Out { get; init; }

    /// <summary>Reports to write: folder or file, absolute; null for none.</summary>
    public required Setting<string?> ReportPlace { get; init; }

    /// <summary>Whether <see cref="ReportPlace"/> is one file.</summary>
    public required bool ReportIsFile { get; init; }

    public required Setting<ImmutableArray<Format>> ReportFormats { get; init; }

    public required Setting<bool> Color { get; init; }

    /// <summary>Cells of the terminal that shows the text; null where standard output is none.</summary>
    public int? Width { get; init; }

    /// <summary>Whether sheets of every role are written beside the reports.</summary>
    public bool Sheets { get; init; }

    public required bool Quiet { get; init; }

    public required bool Verbose { get; init; }

    /// <summary>How much is said.</summary>
    public TextLevel Level => Quiet ? TextLevel.Quiet : Verbose ? TextLevel.Verbose : TextLevel.Normal;

    /// <summary>Whether the JSON Schema judges specs beside the reader.</summary>
    public required bool StrictSchema { get; init; }
}
