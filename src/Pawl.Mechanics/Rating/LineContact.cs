namespace Pawl.Mechanics.Rating;

/// <summary>Hertz's contact of two cylinders along a line.</summary>
public static class LineContact
{
    /// <summary>Reduced radius of curvature ρ_red, mm.</summary>
    /// <remarks>
    /// <code>ρ_red = ρ₁·ρ₂ / (ρ₁ + ρ₂)</code>
    /// Symbols: ρ radii of curvature, mm, hollow flanks of internal gears negative.<br/>
    /// Source: Hertz; ISO 6336-2, radius of relative curvature.<br/>
    /// Valid for: a result above zero: the hollow is wider than what lies in it.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ReducedCurvature(double curvature1, double curvature2)
    {
        var reduced = curvature1 * curvature2 / (curvature1 + curvature2);
        return reduced > 0 && double.IsFinite(reduced)
            ? reduced
            : throw Guard.Because(
                $"no line contact: flanks with radii of curvature of {curvature1:0.####} mm and {curvature2:0.####} mm do not touch along a line");
    }

    /// <summary>Reduced radius of curvature of a pair at its pitch point, in the transverse section, mm.</summary>
    /// <remarks>
    /// <code>ρ₁,₂ = ½ · d_b1,2 · tan α_wt</code>
    /// Symbols: d_b base diameters, mm, internal negative; α_wt working transverse pressure angle, rad. The normal section of a
    /// helical pair has ρ_red/cos β_b; Z_R takes the transverse value, film and flash temperature the normal one.<br/>
    /// Source: ISO 6336-2, radius of relative curvature.<br/>
    /// Valid for: both kinds of pair.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ReducedCurvatureAtPitchPoint(
        double baseDiameter1, double baseDiameter2, double workingPressureAngle)
    {
        var half = Math.Tan(Guard.AcuteAboveZero(workingPressureAngle, "the working pressure angle")) / 2;
        return ReducedCurvature(baseDiameter1 * half, baseDiameter2 * half);
    }

    /// <summary>Half of the width of the contact, b_H, mm.</summary>
    /// <remarks>
    /// <code>b_H = √( 4·w·ρ_red / (π·E_r) )</code>
    /// Symbols: w line load, N/mm; ρ_red reduced radius of curvature, mm; E_r reduced modulus, MPa.<br/>
    /// Source: Hertz; Johnson, Contact Mechanics, line contact.<br/>
    /// Valid for: dry, elastic contact; b_H small against ρ_red.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double HalfWidth(double lineLoad, double reducedCurvature, double reducedModulus) =>
        Guard.Finite(
            Math.Sqrt(
                4 * Guard.Positive(lineLoad, "the line load")
                    * Guard.Positive(reducedCurvature, "the reduced curvature")
                    / (Math.PI * Guard.Positive(reducedModulus, "the reduced modulus"))),
            "the width of the contact");

    /// <summary>Greatest pressure p_H, MPa.</summary>
    /// <remarks>
    /// <code>p_H = √( w·E_r / (π·ρ_red) )</code>
    /// Symbols, source, validity: as <see cref="HalfWidth"/>.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Pressure(double lineLoad, double reducedCurvature, double reducedModulus) =>
        Guard.Finite(
            Math.Sqrt(
                Guard.Positive(lineLoad, "the line load") * Guard.Positive(reducedModulus, "the reduced modulus")
                    / (Math.PI * Guard.Positive(reducedCurvature, "the reduced curvature"))),
            "the contact pressure");
}
