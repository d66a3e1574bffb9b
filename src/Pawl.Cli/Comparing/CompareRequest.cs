namespace Pawl.Cli.Comparing;

/// <summary>What the command line of <c>pawl compare</c> asked for; null and empty where it was silent.</summary>
internal sealed record CompareRequest
{
    public required string Base { get; init; }

    /// <summary>Null with <see cref="Family"/>.</summary>
    public string? Head { get; init; }

    /// <summary>Whether one side is asked for, its variants beside each other.</summary>
    public bool Family { get; init; }

    public string? Format { get; init; }

    public string? Output { get; init; }

    public string? FailOn { get; init; }

    public string? FailOnLoss { get; init; }

    public bool FailOnLostCoverage { get; init; }

    public string? AsOf { get; init; }

    public bool Verbose { get; init; }

    public string? Color { get; init; }
}
