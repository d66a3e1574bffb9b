namespace Pawl.Mechanics.Bearings;

/// <summary>Factors that make one radial load of a radial and an axial load.</summary>
/// <param name="Limit">Ratio e of axial to radial load up to which the first pair holds, 1.</param>
/// <param name="RadialUpTo">X up to e.</param>
/// <param name="AxialUpTo">Y up to e.</param>
/// <param name="RadialAbove">X above e.</param>
/// <param name="AxialAbove">Y above e.</param>
/// <param name="Remark">What a reader of the result should know, or null.</param>
public sealed record LoadFactors(
    double Limit, double RadialUpTo, double AxialUpTo, double RadialAbove, double AxialAbove, string? Remark = null)
{
    /// <summary>Equivalent load P, N.</summary>
    /// <remarks>
    /// <code>F_a ≤ e·F_r: P = X₁·F_r + Y₁·F_a;  else P = X₂·F_r + Y₂·F_a</code>
    /// Symbols: F_r radial, F_a axial load, N; X, Y, e factors, 1.<br/>
    /// Source: ISO 281, dynamic equivalent radial load.<br/>
    /// Valid for: loads of one direction and size. Just above e the result may be a hundredth below F_r: the table is rounded.
    /// </remarks>
    internal double Equivalent(double radial, double axial) => axial <= Limit * radial
        ? RadialUpTo * radial + AxialUpTo * axial
        : RadialAbove * radial + AxialAbove * axial;
}
