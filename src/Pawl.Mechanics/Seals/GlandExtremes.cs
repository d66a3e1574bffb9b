namespace Pawl.Mechanics.Seals;

/// <summary>Least and greatest of what a gland does to its ring, over all tolerances and places of the circumference.</summary>
/// <param name="Height">Height of the gland, mm.</param>
/// <param name="SqueezeLength">Squeeze in length, mm; below zero somewhere the ring does not touch.</param>
/// <param name="Squeeze">Squeeze as a share of the cord in the gland, 1.</param>
/// <param name="Fill">Share of the gland that the rubber fills in service, 1.</param>
/// <param name="Stretch">Stretch of the inside diameter, 1; none where nothing lies under the ring.</param>
/// <param name="Compression">Compression of the outside diameter, 1; none where nothing lies around the free ring.</param>
/// <param name="Gap">Widest gap on one side, mm.</param>
public sealed record GlandExtremes(
    Interval Height, Interval SqueezeLength, Interval Squeeze, Interval Fill, Interval? Stretch, Interval? Compression, Interval Gap);

/// <summary>What service makes of the rubber.</summary>
/// <param name="Expansion">Expansion of the elastomer α, 1/K.</param>
/// <param name="Rise">Temperature above 20 °C, K.</param>
/// <param name="Swell">Swell by volume, 1.</param>
public readonly record struct RubberService(double Expansion, Interval Rise, Interval Swell)
{
    /// <summary>As bought: 20 °C, no swell.</summary>
    public static RubberService None => new(0, Interval.Exactly(0), Interval.Exactly(0));

    internal double MinGrowth => Growth(Rise.Min, Swell.Min);

    internal double MaxGrowth => Growth(Rise.Max, Swell.Max);

    private double Growth(double rise, double swell) => (1 + 3 * Expansion * rise) * (1 + swell);
}
