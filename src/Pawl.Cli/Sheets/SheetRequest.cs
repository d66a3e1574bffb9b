using Pawl.Reports.Sheets;

namespace Pawl.Cli.Sheets;

/// <summary>What the command line of <c>pawl sheet</c> asked for.</summary>
internal sealed record SheetRequest
{
    public required SheetRole Role { get; init; }

    public required string Spec { get; init; }

    public string? Part { get; init; }

    public bool IsMarkdown { get; init; }

    /// <summary>The folder; null for standard output.</summary>
    public string? Output { get; init; }

    public string? AsOf { get; init; }

    public ImmutableArray<string> Rules { get; init; } = [];

    public string? Root { get; init; }
}
