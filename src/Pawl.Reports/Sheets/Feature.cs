namespace Pawl.Reports.Sheets;

/// <summary>Something of a part that is measured, with its limits as they are printed.</summary>
internal sealed record Feature
{
    /// <summary>Id of the part: <c>gears.sun</c>, <c>bodies.carrier</c>, or the word that the spec has for a part without an entry of its own.</summary>
    public required string Part { get; init; }

    /// <summary>What it is, in words.</summary>
    public required string Title { get; init; }

    public required string Nominal { get; init; }

    /// <summary>Least permitted; empty: none.</summary>
    public required string Least { get; init; }

    /// <summary>Greatest permitted; empty: none.</summary>
    public required string Greatest { get; init; }

    public required string Unit { get; init; }

    /// <summary>As the spec writes it, or where computed limits come from.</summary>
    public required string Grounds { get; init; }

    /// <summary>Paths in the spec that state it, or the quantity that it is.</summary>
    public required ImmutableArray<string> Paths { get; init; }

    /// <summary>Whether the limits are those of the general tolerance.</summary>
    public bool IsGeneral { get; init; }
}
