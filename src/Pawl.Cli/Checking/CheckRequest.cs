namespace Pawl.Cli.Checking;

/// <summary>What the command line of <c>pawl check</c> asked for; null and empty where it was silent.</summary>
internal sealed record CheckRequest
{
    public ImmutableArray<string> Paths { get; init; } = [];

    public ImmutableArray<string> Formats { get; init; } = [];

    public string? Output { get; init; }

    public string? FailOn { get; init; }

    public bool RequireComplete { get; init; }

    public bool AllowIncomplete { get; init; }

    public string? AsOf { get; init; }

    public ImmutableArray<string> Rules { get; init; } = [];

    public string? Root { get; init; }

    /// <summary>The file of known findings, from the working folder.</summary>
    public string? Baseline { get; init; }

    /// <summary>Whether the baseline is made smaller.</summary>
    public bool Prune { get; init; }

    public string? StdinPath { get; init; }

    public bool Quiet { get; init; }

    public bool Verbose { get; init; }

    public bool NoReports { get; init; }

    /// <summary>Whether sheets of every role are written beside the reports.</summary>
    public bool Sheets { get; init; }

    public string? Color { get; init; }

    public bool StrictSchema { get; init; }

    public bool ShowConfig { get; init; }
}
