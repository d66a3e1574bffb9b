using System.Diagnostics.CodeAnalysis;

namespace Pawl.Mechanics.Assembly;

/// <summary>The triangle of centres of a meshed pair: carrier axis, long pinion, short pinion.</summary>
public sealed record PairTriangle
{
    private PairTriangle(double longRadius, double shortRadius, double pairDistance)
    {
        LongRadius = longRadius;
        ShortRadius = shortRadius;
        PairDistance = pairDistance;
        var cosine = (longRadius * longRadius + shortRadius * shortRadius - pairDistance * pairDistance)
            / (2 * longRadius * shortRadius);
        Angle = Math.Acos(Math.Clamp(cosine, -1, 1));
    }

    /// <summary>a_L, distance of the long pinion from the axis, mm.</summary>
    public double LongRadius { get; }

    /// <summary>a_S, distance of the short pinion from the axis, mm.</summary>
    public double ShortRadius { get; }

    /// <summary>a_LS, centre distance of the two pinions, mm.</summary>
    public double PairDistance { get; }

    /// <summary>Angle δ at the carrier axis between the long and the short pinion of a pair, rad.</summary>
    /// <remarks>
    /// <code>δ = acos( (a_L² + a_S² − a_LS²)/(2·a_L·a_S) )</code>
    /// Symbols: a_L, a_S distances of the pinions from the axis, mm; a_LS distance of their centres, mm; δ in rad.<br/>
    /// Source: cosine rule.<br/>
    /// Valid for: |a_L − a_S| &lt; a_LS &lt; a_L + a_S.
    /// </remarks>
    public double Angle { get; }

    /// <summary>Whether three centre distances close to a triangle: |a_L − a_S| &lt; a_LS &lt; a_L + a_S.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static bool Exists(double longRadius, double shortRadius, double pairDistance) =>
        longRadius > 0 && shortRadius > 0
        && Math.Abs(longRadius - shortRadius) < pairDistance && pairDistance < longRadius + shortRadius;

    public static bool TryCreate(
        double longRadius, double shortRadius, double pairDistance, [NotNullWhen(true)] out PairTriangle? triangle)
    {
        triangle = Exists(longRadius, shortRadius, pairDistance) ? new(longRadius, shortRadius, pairDistance) : null;
        return triangle is not null;
    }
}
