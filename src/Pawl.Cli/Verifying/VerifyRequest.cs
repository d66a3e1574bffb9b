namespace Pawl.Cli.Verifying;

/// <summary>What the command line of <c>pawl verify</c> asked for.</summary>
internal sealed record VerifyRequest
{
    public required ImmutableArray<string> Records { get; init; }

    public string? Key { get; init; }

    public string? Signature { get; init; }

    public string? Root { get; init; }

    public bool Json { get; init; }

    public bool Verbose { get; init; }
}
