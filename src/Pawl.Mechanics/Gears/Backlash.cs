namespace Pawl.Mechanics.Gears;

/// <summary>Play between the flanks, where it comes from and what it does at the shaft.</summary>
/// <remarks>
/// Allowances E_sn are zero or less, and thin the tooth. Centre distances of internal pairs are negative: a greater distance opens an
/// external pair and closes an internal one.
/// </remarks>
public static class Backlash
{
    /// <summary>Normal backlash j_bn, square to the flanks, at any centre distance.</summary>
    /// <remarks>
    /// <code>j_bn = −(E_sn1 + E_sn2) · cos α_n + 2 · a · cos α_t · (inv α_wt − inv α_wt(x)) · cos β_b</code>
    /// Symbols: E_sn tooth thickness allowances, normal, mm, ≤ 0; a signed reference centre distance, mm; α_n normal, α_t transverse
    /// pressure angle, α_wt the working one at the actual centre distance, α_wt(x) the one at the centre distance without backlash of
    /// the profile shifts, β_b base helix angle, rad.<br/>
    /// Source: what two teeth leave of the pitch on the working pitch circles, after the tooth thickness of ISO 21771: exact.<br/>
    /// Valid for: involute flanks in contact. Below zero: the teeth jam.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An angle is not between 0° and 90°, or a value is not a number.</exception>
    public static double Normal(
        double thicknessAllowanceSum,
        double referenceCentreDistance,
        double transversePressureAngle,
        double workingPressureAngle,
        double freePressureAngle,
        double normalPressureAngle,
        double baseHelixAngle) =>
        Guard.Finite(
            -thicknessAllowanceSum * Math.Cos(ToothGeometry.NormalAngle(normalPressureAngle))
                + Opening(referenceCentreDistance, transversePressureAngle, workingPressureAngle, freePressureAngle, baseHelixAngle),
            "the backlash");

    /// <summary>What a centre distance other than that without backlash opens, square to the flanks.</summary>
    private static double Opening(double reference, double transverse, double working, double free, double baseHelix) =>
        2 * Guard.NotZero(reference, "the reference centre distance")
            * Math.Cos(Guard.AcuteAboveZero(transverse, "the transverse pressure angle"))
            * (Involute.Of(Working(working)) - Involute.Of(Guard.AcuteAboveZero(free, "the pressure angle without backlash"))) * Math.Cos(Guard.Helix(baseHelix));

    /// <summary>Circumferential backlash j_wt, along the working pitch circle.</summary>
    /// <remarks>
    /// <code>j_wt = j_bn / (cos α_wt · cos β_b)</code>
    /// Symbols: j_bn normal backlash, mm; α_wt working transverse pressure angle, β_b base helix angle, rad.<br/>
    /// Source: ISO 21771, circumferential backlash.<br/>
    /// Valid for: both kinds of pair.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Circumferential(double normalBacklash, double workingPressureAngle, double baseHelixAngle) =>
        Guard.Finite(
            normalBacklash / (Math.Cos(Working(workingPressureAngle)) * Math.Cos(Guard.Helix(baseHelixAngle))),
            "the backlash");

    /// <summary>Centre distance at temperature, measured by gears that keep their drawn size.</summary>
    /// <remarks>
    /// <code>a_w(T) = a_w · (1 + α_c · ΔT_c) / (1 + α_g · ΔT_g)</code>
    /// Symbols: a_w working centre distance at 20 °C, mm; α_c expansion of the part that holds the axes apart, α_g of the gears, 1/K;
    /// ΔT their rises above 20 °C, K. Between sun and planet the carrier holds the axes, not the housing.<br/>
    /// Source: linear expansion; both gears of one material and temperature.<br/>
    /// Valid for: free expansion. What all lengths grow by together is left out.
    /// </remarks>
    /// <exception cref="OutsideValidityException">The gears would shrink to nothing, or a value is not a number.</exception>
    public static double OperatingCentreDistance(
        double workingCentreDistance,
        double expansionOfCarrier,
        double temperatureRiseOfCarrier,
        double expansionOfGears,
        double temperatureRiseOfGears) =>
        Guard.Finite(
            Guard.NotZero(workingCentreDistance, "the centre distance") * (1 + expansionOfCarrier * temperatureRiseOfCarrier)
                / Guard.Positive(1 + expansionOfGears * temperatureRiseOfGears, "the size of the gears at temperature"),
            "the centre distance");

    private static double Working(double angle) => Guard.Acute(angle, "the working pressure angle");
}
