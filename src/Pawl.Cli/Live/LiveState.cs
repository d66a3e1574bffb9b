using Pawl.Cli.Checking;
using Pawl.Reports.Output;
using Pawl.Reports.Records;
using Pawl.Specs.Text;

namespace Pawl.Cli.Live;

/// <summary>A complaint with the line that it is about.</summary>
/// <param name="Diagnostic">The complaint.</param>
/// <param name="Line">The line as it stands in the file; null where there is none.</param>
internal sealed record LiveComplaint(Diagnostic Diagnostic, string? Line);

/// <summary>One spec as it stands, with its last report.</summary>
internal sealed record LiveSpec
{
    public required SpecInput Input { get; init; }

    /// <summary>Name of its report files, without an ending.</summary>
    public required string Name { get; init; }

    /// <summary>What is wrong with the files as they stand.</summary>
    public ImmutableArray<LiveComplaint> Complaints { get; init; } = [];

    /// <summary>A defect of Pawl that these files bring to light, as text; null for none.</summary>
    public string? Defect { get; init; }

    /// <summary>The last record; null before there was one.</summary>
    public ConformanceRecord? Record { get; init; }

    /// <summary>Whether <see cref="Record"/> is of the files as they stand.</summary>
    public bool IsCurrent { get; init; }

    /// <summary>Grows with each new record.</summary>
    public int Version { get; init; }

    /// <summary>Files that it rests on, absolute, with their state when they were read.</summary>
    public FileMarks Marks { get; init; } = FileMarks.None;

    /// <summary>The pages of <see cref="Record"/>, made when asked for.</summary>
    public Lazy<ImmutableArray<OutputFile>> Pages { get; init; } = new([]);

    /// <summary>The page of its report.</summary>
    public string Page => Name + ".html";

    public bool IsRefused => Defect is not null || Complaints.Any(static c => c.Diagnostic.Severity == Severity.Error);
}

/// <summary>All that the page shows, at one moment.</summary>
internal sealed record LiveState
{
    /// <summary>Grows with each change.</summary>
    public required int Version { get; init; }

    /// <summary>What is wrong with the project itself: pawl.yaml, rule packs, patterns that match nothing.</summary>
    public ImmutableArray<LiveComplaint> Complaints { get; init; } = [];

    /// <summary>In ordinal order of their paths.</summary>
    public ImmutableArray<LiveSpec> Specs { get; init; } = [];
}
