namespace Pawl.Mechanics.Bearings;

/// <summary>Axial loads of two bearings whose contact angles face each other on one shaft.</summary>
/// <param name="First">Axial load of the first bearing, N.</param>
/// <param name="Second">Axial load of the second bearing, N.</param>
public readonly record struct PairThrust(double First, double Second);

/// <summary>How a radial load on a slanted contact pushes along the axis.</summary>
public static class InducedThrust
{
    /// <summary>Axial force that a radial load sets free in a bearing at a contact angle, N.</summary>
    /// <param name="type">One row at a contact angle.</param>
    /// <param name="radial">Radial load F_r, N.</param>
    /// <param name="axialRatio">
    /// f₀·F_a/C₀, for a contact angle of 15° only; F_a is what comes of it, so go round once or twice.
    /// </param>
    /// <remarks>
    /// <code>balls: F_i = e·F_r;  rollers: F_i = F_r/(2·Y)</code>
    /// Symbols: e limit ratio; Y axial factor above e, 1.<br/>
    /// Source: textbooks of machine design, from memory; half of the rollers under load.<br/>
    /// Valid for: a pair set without play and without preload.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Of(BearingType type, double radial, double? axialRatio = null)
    {
        DynamicLoad.NotNegative(radial, "the radial load");
        if (axialRatio is { } ratio)
            Guard.NotNegative(ratio, "f₀·F_a/C₀");
        if (!type.ThrustsUnderRadialLoad)
            return 0;

        var factors = DynamicLoad.Factors(type, axialRatio);
        return type.IsBall ? factors.Limit * radial : radial / (2 * factors.AxialAbove);
    }

    /// <summary>Axial loads of a pair that is set against each other, face to face or back to back.</summary>
    /// <param name="first">Thrust F_i1 that the radial load sets free in the first bearing, N.</param>
    /// <param name="second">The same of the second, N.</param>
    /// <param name="external">Axial force K on the shaft, N: positive where it presses onto the first bearing.</param>
    /// <remarks>
    /// <code>F_i1 ≥ F_i2 + K: F_a1 = F_i1, F_a2 = F_i1 − K;  else F_a2 = F_i2, F_a1 = F_i2 + K</code>
    /// Source: statics; textbooks of machine design, tapered roller bearings in pairs.<br/>
    /// Valid for: no play, no preload. Neither bearing has less than its own thrust.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static PairThrust OfPair(double first, double second, double external)
    {
        DynamicLoad.NotNegative(first, "the induced thrust");
        DynamicLoad.NotNegative(second, "the induced thrust");
        Guard.Number(external, "the axial load", "N");
        return first >= second + external ? new(first, first - external) : new(second + external, second);
    }
}
