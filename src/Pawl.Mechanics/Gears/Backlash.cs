namespace Pawl.Mechanics.Gears;

/// <summary>Play between the flanks, where it comes from and what it does at the shaft.</summary>
/// <remarks>
/// Allowances E_sn are zero or less, and thin the tooth. Δa is the change of the signed centre distance: a greater distance opens an
/// external pair (Δa &gt; 0) and closes an internal one (Δa &lt; 0).
/// </remarks>
public static class Backlash
{
    /// <summary>Normal backlash j_bn, square to the flanks.</summary>
    /// <remarks>
    /// <code>j_bn = −(E_sn1 + E_sn2) · cos α_n + 2 · Δa · sin α_wt · cos β_b</code>
    /// Symbols: E_sn tooth thickness allowances, normal, mm, ≤ 0; Δa deviation of the signed centre distance from the one without
    /// backlash, mm; α_n normal, α_wt working transverse pressure angle, β_b base helix angle, rad.<br/>
    /// Source: ISO 21771, backlash; ISO/TR 10064-2.<br/>
    /// Valid for: Δa small against a_w (the second order is left out). Below zero: the teeth jam.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Normal(
        double thicknessAllowanceSum,
        double centreDistanceDeviation,
        double normalPressureAngle,
        double workingPressureAngle,
        double baseHelixAngle) =>
        Guard.Finite(
            -thicknessAllowanceSum * Math.Cos(ToothGeometry.NormalAngle(normalPressureAngle))
                + 2 * centreDistanceDeviation * Math.Sin(Working(workingPressureAngle))
                * Math.Cos(Guard.Helix(baseHelixAngle)),
            "the backlash");

    /// <summary>Sum of the thickness allowances E_sn1 + E_sn2 that gives a normal backlash: <see cref="Normal"/> turned round.</summary>
    /// <remarks>
    /// <code>E_sn1 + E_sn2 = (2 · Δa · sin α_wt · cos β_b − j_bn) / cos α_n</code>
    /// Symbols, source, validity: as <see cref="Normal"/>.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ThicknessAllowanceSum(
        double normalBacklash,
        double centreDistanceDeviation,
        double normalPressureAngle,
        double workingPressureAngle,
        double baseHelixAngle) =>
        Guard.Finite(
            (2 * centreDistanceDeviation * Math.Sin(Working(workingPressureAngle))
                * Math.Cos(Guard.Helix(baseHelixAngle)) - normalBacklash)
                / Math.Cos(ToothGeometry.NormalAngle(normalPressureAngle)),
            "the thickness allowance");

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

    /// <summary>Normal backlash from the circumferential one: <see cref="Circumferential"/> turned round.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double NormalFromCircumferential(
        double circumferentialBacklash, double workingPressureAngle, double baseHelixAngle) =>
        Guard.Finite(
            circumferentialBacklash * Math.Cos(Working(workingPressureAngle)) * Math.Cos(Guard.Helix(baseHelixAngle)),
            "the backlash");

    /// <summary>Radial backlash j_r: how far the gears could still close in.</summary>
    /// <remarks>
    /// <code>j_r = j_wt / (2 · tan α_wt)</code>
    /// Symbols: j_wt circumferential backlash, mm; α_wt working transverse pressure angle, rad.<br/>
    /// Source: ISO 21771, radial backlash.<br/>
    /// Valid for: both kinds of pair, a magnitude: an internal pair closes by moving apart.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Radial(double circumferentialBacklash, double workingPressureAngle) =>
        Guard.Finite(
            circumferentialBacklash
                / (2 * Math.Tan(Guard.AcuteAboveZero(workingPressureAngle, "the working pressure angle"))),
            "the backlash");

    /// <summary>Change of the centre distance by heat, with the sign that <see cref="Normal"/> takes.</summary>
    /// <remarks>
    /// <code>Δa = a_w · (α_c · ΔT_c − α_g · ΔT_g)</code>
    /// Symbols: a_w signed working centre distance, mm; α_c expansion of the part that holds the axes apart, α_g of the gears, 1/K;
    /// ΔT their rises above 20 °C, K. Between sun and planet the carrier holds the axes, not the housing.<br/>
    /// Source: linear expansion; both gears of one material and temperature.<br/>
    /// Valid for: free expansion.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ThermalCentreDistanceDeviation(
        double workingCentreDistance,
        double expansionOfCarrier,
        double temperatureRiseOfCarrier,
        double expansionOfGears,
        double temperatureRiseOfGears) =>
        Guard.Finite(
            Guard.NotZero(workingCentreDistance, "the centre distance")
                * (expansionOfCarrier * temperatureRiseOfCarrier - expansionOfGears * temperatureRiseOfGears),
            "the change of centre distance");

    /// <summary>Angle one gear can turn while its mate is held, rad.</summary>
    /// <remarks>
    /// <code>φ = 2 · j_wt / |d_w|</code>
    /// Symbols: j_wt circumferential backlash, d_w working pitch diameter of the gear that turns, mm.<br/>
    /// Source: definition. Divide by the ratio from there to the output for its part in the output's lash.<br/>
    /// Valid for: one mesh.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double AngularLash(double circumferentialBacklash, double workingPitchDiameter) =>
        Guard.Finite(
            2 * circumferentialBacklash / Guard.Positive(Math.Abs(workingPitchDiameter), "the working pitch diameter"),
            "the lash");

    /// <summary>Angle a carrier can turn while both central gears are held, rad.</summary>
    /// <remarks>
    /// <code>φ = (j₁ / r₁ + j₂ / r₂) / ( |a_w| · (1/r₁ + 1/r₂) );  r₁ = r₂: φ = (j₁ + j₂) / (2 · |a_w|)</code>
    /// Symbols: j circumferential backlash of the planet with each central gear, r the planet's working pitch radius in that mesh
    /// (given as diameters), a_w centre distance, mm.<br/>
    /// Source: closed form. The carrier turns by φ, the planet by ψ; the flank play in the meshes is |a_w|·φ − r₁·ψ and
    /// |a_w|·φ + r₂·ψ, and ψ is free.<br/>
    /// Valid for: one sun and one ring on single or stepped planets.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double CarrierLash(
        double sunBacklash,
        double ringBacklash,
        double planetPitchDiameterAtSun,
        double planetPitchDiameterAtRing,
        double workingCentreDistance)
    {
        var atSun = 2 / Guard.Positive(Math.Abs(planetPitchDiameterAtSun), "the planet's working pitch diameter");
        var atRing = 2 / Guard.Positive(Math.Abs(planetPitchDiameterAtRing), "the planet's working pitch diameter");
        var centre = Guard.Positive(Math.Abs(workingCentreDistance), "the centre distance");
        return Guard.Finite(
            (sunBacklash * atSun + ringBacklash * atRing) / (centre * (atSun + atRing)), "the lash of the carrier");
    }

    private static double Working(double angle) => Guard.Acute(angle, "the working pressure angle");
}
