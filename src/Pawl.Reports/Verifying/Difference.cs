namespace Pawl.Reports.Verifying;

/// <summary>What differs.</summary>
public enum DifferenceKind
{
    /// <summary>A verdict, or the outcome of a rule.</summary>
    Outcome,

    /// <summary>A number beyond what another machine may round.</summary>
    Number,

    /// <summary>A word, a text, a place, or something that only one of the two has.</summary>
    Other,
}

/// <summary>One thing that two records say differently.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Path">Where in the record: <c>findings[mesh/contact-ratio on meshes.sun~planet].margin</c>.</param>
/// <param name="Was">As the first says; null when it says nothing.</param>
/// <param name="Is">As the second says; null when it says nothing.</param>
public sealed record Difference(DifferenceKind Kind, string Path, string? Was, string? Is);

/// <summary>Two records of one spec, set side by side.</summary>
/// <param name="Differences">What differs, outcomes before numbers before the rest.</param>
/// <param name="Numbers">How many numbers both have and agree on.</param>
/// <param name="Outcomes">How many outcomes both have and agree on.</param>
public sealed record Comparison(ImmutableArray<Difference> Differences, int Numbers, int Outcomes);
