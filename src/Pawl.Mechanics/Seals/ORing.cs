namespace Pawl.Mechanics.Seals;

/// <summary>A size of O-ring as it is bought, free and at 20 °C.</summary>
/// <param name="Dash">Dash number of AS568, which is also the size code of ISO 3601-1: <c>-113</c>; empty for a size of one's own.</param>
/// <param name="InsideDiameter">Inside diameter d₁, mm.</param>
/// <param name="InsideDeviation">Permissible deviation ± of the inside diameter, mm.</param>
/// <param name="Cord">Diameter of the cord d₂, mm.</param>
/// <param name="CordDeviation">Permissible deviation ± of the cord, mm.</param>
public sealed record ORing(string Dash, double InsideDiameter, double InsideDeviation, double Cord, double CordDeviation)
{
    /// <summary>One inch, mm. The sizes of AS568 are inches.</summary>
    public const double Inch = 25.4;

    /// <summary>Outside diameter of the free ring, mm.</summary>
    public double OutsideDiameter =>
        Guard.Positive(InsideDiameter, "the inside diameter of the ring", "mm") + 2 * Guard.Positive(Cord, "the cord", "mm");

    /// <summary>The same with its tolerances.</summary>
    public RingExtents Extents =>
        new(Interval.About(InsideDiameter, InsideDeviation), Interval.About(Cord, CordDeviation));
}

/// <summary>What a free ring may measure.</summary>
/// <param name="InsideDiameter">Inside diameter, mm.</param>
/// <param name="Cord">Diameter of the cord, mm.</param>
public readonly record struct RingExtents(Interval InsideDiameter, Interval Cord)
{
}
