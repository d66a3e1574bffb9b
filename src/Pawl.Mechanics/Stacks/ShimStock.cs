using Pawl.Mechanics.Bearings;

namespace Pawl.Mechanics.Stacks;

/// <summary>One kind of shim on the shelf.</summary>
public sealed record ShimStock
{
    /// <param name="thickness">Thickness, mm, nominal or measured.</param>
    /// <param name="tolerance">What it may differ from that, ± mm; zero for a measured one.</param>
    /// <param name="available">How many there are.</param>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public ShimStock(double thickness, double tolerance = 0, int available = int.MaxValue)
    {
        Thickness = Guard.Positive(thickness, "the thickness of a shim");
        Tolerance = DynamicLoad.NotNegative(tolerance, "the tolerance of a shim");
        Available = available >= 0 ? available : throw Guard.Because($"the number of shims must not be below zero; it is {available}");
        if (tolerance >= thickness)
            throw Guard.Because(
                $"the tolerance of a shim must be below its thickness; they are {tolerance:0.####} mm and {thickness:0.####} mm");
    }

    public double Thickness { get; }

    public double Tolerance { get; }

    public int Available { get; }
}

/// <summary>What a shim does to the gap.</summary>
public enum ShimEffect
{
    /// <summary>It fills the gap: end play is the gap less the pack.</summary>
    Fills,

    /// <summary>It lifts what closes the gap: end play is the gap and the pack.</summary>
    Lifts,
}

/// <summary>A pack of shims.</summary>
/// <param name="Shims">Thickness of every shim, mm, the thickest first.</param>
/// <param name="Thickness">Thickness of all, mm.</param>
/// <param name="Tolerance">What that may differ, ± mm: the tolerances added up.</param>
public sealed record ShimPack(ImmutableArray<double> Shims, double Thickness, double Tolerance);
