namespace Pawl.Mechanics.Gears;

/// <summary>Geometry of a pair of cylindrical involute gears without backlash.</summary>
/// <remarks>
/// Sign rule of ISO 21771: internal teeth count negative. With a pinion (index 1, z₁ &gt; 0) in a ring (index 2, z₂ &lt; 0) the
/// diameters of the ring and the centre distance of the pair are negative; a report shows magnitudes.
/// </remarks>
public static class MeshGeometry
{
    /// <summary>Reference centre distance a; negative for an internal pair.</summary>
    /// <remarks>
    /// <code>a = m_t · (z₁ + z₂) / 2</code>
    /// Symbols: z teeth, internal negative; m_t transverse module, mm.<br/>
    /// Source: ISO 21771, reference centre distance.<br/>
    /// Valid for: z₁ + z₂ ≠ 0. A pinion cannot run in a ring of as many teeth.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ReferenceCentreDistance(int teeth1, int teeth2, double transverseModule) =>
        TeethSum(teeth1, teeth2) * Guard.Positive(transverseModule, "the transverse module") / 2;

    /// <summary>Working transverse pressure angle α_wt from the sum of the profile shifts.</summary>
    /// <remarks>
    /// <code>inv α_wt = inv α_t + 2 · tan α_n · (x₁ + x₂) / (z₁ + z₂)</code>
    /// Symbols: α_t transverse, α_n normal pressure angle, rad; x profile shift coefficients; z teeth, internal negative.<br/>
    /// Source: ISO 21771, working pressure angle.<br/>
    /// Valid for: a pair without backlash; a result above zero.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double WorkingPressureAngleFromShift(
        double transversePressureAngle, double normalPressureAngle, double profileShiftSum, int teeth1, int teeth2)
    {
        if (TryWorkingPressureAngleFromShift(
            transversePressureAngle, normalPressureAngle, profileShiftSum, teeth1, teeth2, out var angle))
        {
            return angle;
        }

        var sum = TeethSum(teeth1, teeth2);
        var limit = -Involute.Of(transversePressureAngle) * sum / (2 * Math.Tan(normalPressureAngle));
        throw sum > 0
            ? Guard.Because(
                $"no working pressure angle: the sum of the profile shifts {profileShiftSum:0.####} is below the least possible {limit:0.####}")
            : Guard.Because(
                $"no working pressure angle: the sum of the profile shifts {profileShiftSum:0.####} is above the greatest possible {limit:0.####}");
    }

    /// <summary>As <see cref="WorkingPressureAngleFromShift"/>; false when there is no such angle.</summary>
    public static bool TryWorkingPressureAngleFromShift(
        double transversePressureAngle,
        double normalPressureAngle,
        double profileShiftSum,
        int teeth1,
        int teeth2,
        out double angle) =>
        Involute.TryInverse(
            Involute.Of(transversePressureAngle)
                + 2 * Math.Tan(ToothGeometry.NormalAngle(normalPressureAngle)) * profileShiftSum / TeethSum(teeth1, teeth2),
            out angle);

    /// <summary>Working transverse pressure angle α_wt from the working centre distance.</summary>
    /// <remarks>
    /// <code>cos α_wt = a · cos α_t / a_w</code>
    /// Symbols: a reference, a_w working centre distance, mm, of one sign; α_t transverse pressure angle, rad.<br/>
    /// Source: ISO 21771, working pressure angle.<br/>
    /// Valid for: |a_w| &gt; |a| · cos α_t: the base circles leave room for a common tangent.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double WorkingPressureAngleFromCentreDistance(
        double referenceCentreDistance, double transversePressureAngle, double workingCentreDistance)
    {
        if (TryWorkingPressureAngleFromCentreDistance(
            referenceCentreDistance, transversePressureAngle, workingCentreDistance, out var angle))
        {
            return angle;
        }

        var least = Math.Abs(referenceCentreDistance) * Math.Cos(transversePressureAngle);
        throw referenceCentreDistance * workingCentreDistance < 0
            ? Guard.Because(
                $"no working pressure angle: the centre distance {workingCentreDistance:0.####} mm and the reference centre distance {referenceCentreDistance:0.####} mm differ in sign (an internal pair has both negative)")
            : Guard.Because(
                $"no working pressure angle: the centre distance {Math.Abs(workingCentreDistance):0.0###} mm is not above the least possible {least:0.0###} mm");
    }

    /// <summary>As <see cref="WorkingPressureAngleFromCentreDistance"/>; false when there is no such angle.</summary>
    public static bool TryWorkingPressureAngleFromCentreDistance(
        double referenceCentreDistance, double transversePressureAngle, double workingCentreDistance, out double angle)
    {
        var cosine = Guard.NotZero(referenceCentreDistance, "the reference centre distance")
            * Math.Cos(Guard.AcuteAboveZero(transversePressureAngle, "the transverse pressure angle"))
            / Guard.NotZero(workingCentreDistance, "the working centre distance");
        var possible = cosine is > 0 and < 1;
        angle = possible ? Math.Acos(cosine) : 0;
        return possible;
    }

    /// <summary>Sum of the profile shifts whose teeth close the mesh at a working pressure angle.</summary>
    /// <remarks>
    /// <code>x₁ + x₂ = (z₁ + z₂) · (inv α_wt − inv α_t) / (2 · tan α_n)</code>
    /// Symbols: α_wt working, α_t reference transverse, α_n normal pressure angle, rad; z teeth, internal negative.<br/>
    /// Source: ISO 21771, working pressure angle, solved for the profile shifts.<br/>
    /// Valid for: a pair without backlash.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ProfileShiftSum(
        double workingPressureAngle, double transversePressureAngle, double normalPressureAngle, int teeth1, int teeth2) =>
        TeethSum(teeth1, teeth2)
        * (Involute.Of(Guard.AcuteAboveZero(workingPressureAngle, "the working pressure angle"))
            - Involute.Of(Guard.AcuteAboveZero(transversePressureAngle, "the transverse pressure angle")))
        / (2 * Math.Tan(ToothGeometry.NormalAngle(normalPressureAngle)));

    /// <summary>Working centre distance a_w without backlash; negative for an internal pair.</summary>
    /// <remarks>
    /// <code>a_w = a · cos α_t / cos α_wt</code>
    /// Symbols: a reference centre distance, mm; α_t reference, α_wt working transverse pressure angle, rad.<br/>
    /// Source: ISO 21771, centre distance.<br/>
    /// Valid for: angles below π/2.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double WorkingCentreDistance(
        double referenceCentreDistance, double transversePressureAngle, double workingPressureAngle) =>
        Guard.NotZero(referenceCentreDistance, "the reference centre distance")
        * Math.Cos(Guard.Acute(transversePressureAngle, "the transverse pressure angle"))
        / Math.Cos(Guard.Acute(workingPressureAngle, "the working pressure angle"));

    /// <summary>Working pitch diameter d_w, with the sign of d_b.</summary>
    /// <remarks>
    /// <code>d_w = d_b / cos α_wt</code>
    /// Symbols: d_b base diameter, mm; α_wt working transverse pressure angle, rad.<br/>
    /// Source: ISO 21771, working pitch diameter.<br/>
    /// Valid for: α_wt &lt; π/2.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double WorkingPitchDiameter(double baseDiameter, double workingPressureAngle) =>
        Guard.NotZero(baseDiameter, "the base diameter")
        / Math.Cos(Guard.Acute(workingPressureAngle, "the working pressure angle"));

    /// <summary>Tip clearance c of one gear's tip in the other gear's root. Below zero: they collide.</summary>
    /// <remarks>
    /// <code>c₁ = a_w − d_a1/2 − d_f2/2</code>
    /// Symbols: a_w working centre distance, d_a1 tip diameter of the one, d_f2 root diameter of the other, mm, all signed. For c₂
    /// pass d_a2 and d_f1.<br/>
    /// Source: ISO 21771, tip clearance.<br/>
    /// Valid for: both kinds of pair.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double TipClearance(double workingCentreDistance, double tipDiameter, double mateRootDiameter) =>
        Guard.Finite(
            Guard.NotZero(workingCentreDistance, "the centre distance") - Guard.NotZero(tipDiameter, "the tip diameter") / 2
                - Guard.NotZero(mateRootDiameter, "the root diameter of the mate") / 2,
            "the tip clearance");

    /// <summary>Face width over the pinion's reference diameter.</summary>
    /// <remarks>
    /// <code>b / d₁</code>
    /// Symbols: b face width, d₁ reference diameter of the pinion, mm.<br/>
    /// Source: definition.<br/>
    /// Valid for: both kinds of pair.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double FaceWidthRatio(double faceWidth, double pinionReferenceDiameter) =>
        Guard.Positive(faceWidth, "the face width")
        / Guard.Positive(Math.Abs(pinionReferenceDiameter), "the reference diameter");

    internal static int TeethSum(int teeth1, int teeth2)
    {
        var sum = Guard.Teeth(teeth1) + Guard.Teeth(teeth2);
        return sum != 0
            ? sum
            : throw Guard.Because(
                $"no centre distance: pinion and internal gear have the same number of teeth, {Math.Abs(teeth1)}");
    }
}
