using Pawl.Specs;

namespace Pawl.Cli.Sizing;

/// <summary>What <c>pawl o-ring</c> was asked.</summary>
internal sealed record SizeRequest
{
    /// <summary>The spec that declares the ring; null: the gland is stated on the command line.</summary>
    public string? Spec { get; init; }

    /// <summary>The name of the ring in the spec; null: its only one.</summary>
    public string? Ring { get; init; }

    /// <summary>The gland as options state it, in the keys of a spec.</summary>
    public ImmutableArray<StatedWord> Words { get; init; } = [];

    /// <summary>Cords to choose from, as written; null: all of the table.</summary>
    public string? Cords { get; init; }

    /// <summary>How many sizes to show.</summary>
    public int Top { get; init; } = 10;

    /// <summary>Whether to show also the sizes that do not fit.</summary>
    public bool All { get; init; }

    public bool Json { get; init; }

    public ImmutableArray<string> Rules { get; init; } = [];

    public string? Root { get; init; }
}
