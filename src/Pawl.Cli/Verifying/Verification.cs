using Pawl.Reports.Records;
using Pawl.Reports.Verifying;

namespace Pawl.Cli.Verifying;

/// <summary>What was found of one record.</summary>
internal sealed record Verification
{
    /// <summary>The file that holds the record, as the user wrote it.</summary>
    public required string Name { get; init; }

    public required ConformanceRecord Record { get; init; }

    /// <summary>Every file that the record names, and those read now that it does not name.</summary>
    public required ImmutableArray<RecordedFile> Files { get; init; }

    /// <summary>The record beside one computed now; null when that could not be.</summary>
    public Comparison? Comparison { get; init; }

    /// <summary>Why it could not be computed again.</summary>
    public string? NotComputed { get; init; }

    public bool FilesAreAsRecorded => Files.All(static file => file.State == FileState.AsRecorded);

    public bool IsAsRecorded => FilesAreAsRecorded && Comparison is { Differences.IsEmpty: true };

    /// <summary>What the shell is told: what cannot be computed again, although nothing changed, is not judged.</summary>
    public int Code => IsAsRecorded ? ExitCode.Conforms : FilesAreAsRecorded && Comparison is null ? ExitCode.NotJudged : ExitCode.Findings;
}
