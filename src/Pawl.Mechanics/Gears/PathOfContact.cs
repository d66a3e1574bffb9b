namespace Pawl.Mechanics.Gears;

/// <summary>Where on the line of action two flanks touch, and what follows: contact ratios, sliding, loss.</summary>
/// <remarks>
/// Gear 1 drives: contact begins at A, on the tip of gear 2, passes the pitch point C and ends at E, on the tip of gear 1. Radii of
/// curvature ρ are measured along the line of action from each base circle, transverse, negative for an internal gear, so that
/// ρ₁ + ρ₂ = a_w · sin α_wt holds for both kinds of pair.
/// </remarks>
public static class PathOfContact
{
    /// <summary>Transverse radius of curvature ρ of a flank at a diameter, with the diameter's sign.</summary>
    /// <remarks>
    /// <code>ρ = sign(d) · ½ · √(d_y² − d_b²)</code>
    /// Symbols: d_y the diameter, d_b base diameter, mm, of one sign.<br/>
    /// Source: ISO 21771, radius of curvature.<br/>
    /// Valid for: |d_y| ≥ |d_b|.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double CurvatureAt(double diameter, double baseDiameter)
    {
        var angle = ToothGeometry.PressureAngleAt(diameter, baseDiameter);
        return diameter / 2 * Math.Sin(angle);
    }

    /// <summary>Radius of curvature ρ of a flank where its mate has the radius of curvature given.</summary>
    /// <remarks>
    /// <code>ρ₁ = a_w · sin α_wt − ρ₂</code>
    /// Symbols: a_w working centre distance, mm; α_wt working transverse pressure angle, rad; ρ in mm, signed.<br/>
    /// Source: ISO 21771; both base circles have the line of action as tangent.<br/>
    /// Valid for: both kinds of pair. With the mate's tip this is ρ_A1, where active profile and contact begin; zero or less asks
    /// an external gear for contact below its base circle: involute interference.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double CurvatureOpposite(
        double workingCentreDistance, double workingPressureAngle, double mateCurvature) =>
        Guard.Finite(
            Guard.NotZero(workingCentreDistance, "the working centre distance") * Math.Sin(Guard.Acute(workingPressureAngle, "the working pressure angle"))
                - mateCurvature,
            "the radius of curvature");

    /// <summary>Diameter of a flank point from its radius of curvature, with the sign of d_b.</summary>
    /// <remarks>
    /// <code>d_y = sign(d_b) · √(4·ρ² + d_b²)</code>
    /// Symbols: ρ transverse radius of curvature, mm; d_b base diameter, mm.<br/>
    /// Source: ISO 21771, radius of curvature.<br/>
    /// Valid for: ρ with the sign of d_b.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double DiameterAt(double curvature, double baseDiameter) =>
        curvature * Guard.NotZero(baseDiameter, "the base diameter") > 0
            ? Math.CopySign(Math.Sqrt(4 * Guard.Number(curvature, "the radius of curvature", "mm") * curvature + baseDiameter * baseDiameter), baseDiameter)
            : throw Guard.Because(
                $"no contact there: the mate's tip asks for contact {Math.Abs(curvature):0.####} mm beyond the end of the involute at the base circle (involute interference)");

    /// <summary>Start of active profile d_Nf: the diameter where the mate's tip touches the flank.</summary>
    /// <remarks>
    /// <code>d_Nf1 = √( 4·ρ_A1² + d_b1² ),  ρ_A1 = a_w · sin α_wt − ρ_a2</code>
    /// Symbols: d_b1 base diameter of this gear; a_w working centre distance; ρ_a2 radius of curvature at the mate's tip (effective,
    /// without chamfer), mm, all signed; α_wt working transverse pressure angle, rad.<br/>
    /// Source: ISO 21771, start of active profile.<br/>
    /// Valid for: external and internal gears; no involute interference.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ActiveProfileStart(
        double baseDiameter, double workingCentreDistance, double workingPressureAngle, double mateTipCurvature) =>
        DiameterAt(CurvatureOpposite(workingCentreDistance, workingPressureAngle, mateTipCurvature), baseDiameter);

    /// <summary>Length of the path of contact g_α.</summary>
    /// <remarks>
    /// <code>g_α = ρ_a1 + ρ_a2 − a_w · sin α_wt</code>
    /// Symbols: ρ_a radii of curvature at the effective tips, a_w working centre distance, mm, signed; α_wt working transverse
    /// pressure angle, rad.<br/>
    /// Source: ISO 21771, length of the path of contact.<br/>
    /// Valid for: tips that touch involute all the way. Under involute interference it counts contact that cannot be.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Length(
        double workingCentreDistance, double workingPressureAngle, double tipCurvature1, double tipCurvature2)
    {
        var length = Guard.Number(tipCurvature1, "the radius of curvature at the tip", "mm") - CurvatureOpposite(workingCentreDistance, workingPressureAngle, tipCurvature2);
        return length > 0
            ? length
            : throw Guard.Because(
                $"no path of contact: the tips pass {Math.Abs(length):0.####} mm clear of each other on the line of action");
    }

    /// <summary>Transverse base pitch p_bt.</summary>
    /// <remarks>
    /// <code>p_bt = π · m_t · cos α_t</code>
    /// Symbols: m_t transverse module, mm; α_t transverse pressure angle, rad.<br/>
    /// Source: ISO 21771, base pitch.<br/>
    /// Valid for: m_t &gt; 0.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double TransverseBasePitch(double transverseModule, double transversePressureAngle) =>
        Math.PI * Guard.Positive(transverseModule, "the transverse module")
        * Math.Cos(Guard.Acute(transversePressureAngle, "the transverse pressure angle"));

    /// <summary>Transverse contact ratio ε_α; also its parts, from approach or recess.</summary>
    /// <remarks>
    /// <code>ε_α = g_α / p_bt</code>
    /// Symbols: g_α length of the path of contact, p_bt transverse base pitch, mm.<br/>
    /// Source: ISO 21771, transverse contact ratio.<br/>
    /// Valid for: p_bt &gt; 0.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double TransverseContactRatio(double length, double transverseBasePitch) =>
        Guard.Finite(length / Guard.Positive(transverseBasePitch, "the base pitch"), "the contact ratio");

    /// <summary>Overlap ratio ε_β, positive for both hands.</summary>
    /// <remarks>
    /// <code>ε_β = b · sin|β| / (π · m_n)</code>
    /// Symbols: b common face width, mm; β helix angle, rad; m_n normal module, mm.<br/>
    /// Source: ISO 21771, overlap ratio.<br/>
    /// Valid for: b &gt; 0. Zero for spur gears.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double OverlapRatio(double faceWidth, double helixAngle, double normalModule) =>
        Guard.Positive(faceWidth, "the face width") * Math.Sin(Math.Abs(Guard.Helix(helixAngle)))
        / (Math.PI * ToothGeometry.Module(normalModule));

    /// <summary>Total contact ratio ε_γ.</summary>
    /// <remarks>
    /// <code>ε_γ = ε_α + ε_β</code>
    /// Source: ISO 21771, total contact ratio.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double TotalContactRatio(double transverseContactRatio, double overlapRatio) =>
        Guard.Positive(transverseContactRatio, "the transverse contact ratio") + Guard.NotNegative(overlapRatio, "the overlap ratio");
}
