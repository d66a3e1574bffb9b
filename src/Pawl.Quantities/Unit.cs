namespace Pawl.Quantities;

/// <summary>A unit of measurement and its place in the coherent set N, mm, MPa, N·mm, rad, s, °C (mass: tonne).</summary>
/// <param name="Symbol">As reports write it: <c>mm</c>, <c>N·m</c>, <c>1/min</c>.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Factor">Coherent units in one of this unit.</param>
/// <param name="Offset">Added after the factor; other than zero for temperature scales alone.</param>
public sealed record Unit(string Symbol, Dimension Dimension, double Factor, double Offset = 0)
{
    /// <summary>A number in this unit, in coherent units.</summary>
    public double ToCoherent(double value) => (value * Factor) + Offset;

    /// <summary>A number in coherent units, in this unit.</summary>
    public double FromCoherent(double coherent) => (coherent - Offset) / Factor;

    public override string ToString() => Symbol;
}
