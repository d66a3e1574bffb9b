namespace Pawl.Mechanics.Gears;

/// <summary>Geometry of one cylindrical involute gear.</summary>
/// <remarks>
/// Sign rule of ISO 21771: the teeth of an internal gear count negative, z &lt; 0, and so do its diameters. A positive profile
/// shift makes the tooth thicker on both kinds. With these signs one formula serves external and internal gears.
/// </remarks>
public static class ToothGeometry
{
    /// <summary>Transverse pressure angle α_t at the reference cylinder.</summary>
    /// <remarks>
    /// <code>α_t = atan( tan α_n / cos β )</code>
    /// Symbols: α_n normal pressure angle, rad; β helix angle, rad.<br/>
    /// Source: ISO 21771, pressure angles.<br/>
    /// Valid for: 0 &lt; α_n &lt; π/2, |β| &lt; π/2.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double TransversePressureAngle(double normalPressureAngle, double helixAngle) =>
        Math.Atan(Math.Tan(NormalAngle(normalPressureAngle)) / Math.Cos(Guard.Helix(helixAngle)));

    /// <summary>Transverse module m_t.</summary>
    /// <remarks>
    /// <code>m_t = m_n / cos β</code>
    /// Symbols: m_n normal module, mm; β helix angle, rad.<br/>
    /// Source: ISO 21771, module.<br/>
    /// Valid for: m_n &gt; 0, |β| &lt; π/2.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double TransverseModule(double normalModule, double helixAngle) =>
        Module(normalModule) / Math.Cos(Guard.Helix(helixAngle));

    /// <summary>Base helix angle β_b, with the sign of β.</summary>
    /// <remarks>
    /// <code>sin β_b = sin β · cos α_n</code>
    /// Symbols: β helix angle, rad; α_n normal pressure angle, rad.<br/>
    /// Source: ISO 21771, base helix angle.<br/>
    /// Valid for: 0 &lt; α_n &lt; π/2, |β| &lt; π/2.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double BaseHelixAngle(double normalPressureAngle, double helixAngle) =>
        Math.Asin(Math.Sin(Guard.Helix(helixAngle)) * Math.Cos(NormalAngle(normalPressureAngle)));

    /// <summary>Reference diameter d; negative for an internal gear.</summary>
    /// <remarks>
    /// <code>d = z · m_t</code>
    /// Symbols: z teeth, internal negative; m_t transverse module, mm.<br/>
    /// Source: ISO 21771, reference diameter.<br/>
    /// Valid for: z ≠ 0, m_t &gt; 0.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ReferenceDiameter(int teeth, double transverseModule) =>
        Guard.Teeth(teeth) * Guard.Positive(transverseModule, "the transverse module");

    /// <summary>Base diameter d_b, with the sign of d.</summary>
    /// <remarks>
    /// <code>d_b = d · cos α_t</code>
    /// Symbols: d reference diameter, mm; α_t transverse pressure angle, rad.<br/>
    /// Source: ISO 21771, base diameter.<br/>
    /// Valid for: d ≠ 0, 0 &lt; α_t &lt; π/2.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double BaseDiameter(double referenceDiameter, double transversePressureAngle) =>
        Guard.NotZero(referenceDiameter, "the reference diameter")
        * Math.Cos(Guard.AcuteAboveZero(transversePressureAngle, "the transverse pressure angle"));

    /// <summary>Tip diameter d_a, with the sign of d.</summary>
    /// <remarks>
    /// <code>d_a = d + 2 · m_n · (x + h_aP* + k)</code>
    /// Symbols: d reference diameter, mm; m_n normal module, mm; x profile shift coefficient; h_aP* addendum factor of the basic
    /// rack; k tip alteration coefficient, negative when the tip is shortened.<br/>
    /// Source: ISO 21771, tip diameter.<br/>
    /// Valid for: a result with the sign of d.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double TipDiameter(
        double referenceDiameter, double normalModule, double profileShift, double addendumFactor, double tipAlteration) =>
        SameSign(
            referenceDiameter + 2 * Module(normalModule) * (profileShift + addendumFactor + tipAlteration),
            referenceDiameter,
            "tip diameter");

    /// <summary>Root diameter d_f, with the sign of d.</summary>
    /// <remarks>
    /// <code>d_f = d + 2 · m_n · (x − h_fP*)</code>
    /// Symbols: d reference diameter, mm; m_n normal module, mm; x profile shift coefficient, nominal, or for the root as cut
    /// x_E = x + E_sn/(2·m_n·tan α_n); h_fP* dedendum factor of the basic rack.<br/>
    /// Source: ISO 21771, root diameter.<br/>
    /// Valid for: a result with the sign of d; cut by a rack tool, or nominal.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double RootDiameter(
        double referenceDiameter, double normalModule, double profileShift, double dedendumFactor) =>
        SameSign(
            referenceDiameter + 2 * Module(normalModule) * (profileShift - dedendumFactor), referenceDiameter, "root diameter");

    /// <summary>Tooth depth h, positive for both kinds of gear.</summary>
    /// <remarks>
    /// <code>h = (d_a − d_f) / 2</code>
    /// Symbols: d_a tip diameter, d_f root diameter, mm, both with their sign.<br/>
    /// Source: ISO 21771, tooth depth.<br/>
    /// Valid for: a tip beyond the root.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ToothDepth(double tipDiameter, double rootDiameter)
    {
        var depth = (Guard.NotZero(tipDiameter, "the tip diameter") - Guard.NotZero(rootDiameter, "the root diameter")) / 2;
        return depth > 0
            ? Guard.Finite(depth, "the tooth depth")
            : throw Guard.Because(
                $"no tooth depth: the tip diameter {tipDiameter:0.####} mm does not lie beyond the root diameter {rootDiameter:0.####} mm");
    }

    /// <summary>Transverse pressure angle α_y of the flank at a diameter.</summary>
    /// <remarks>
    /// <code>cos α_y = d_b / d_y</code>
    /// Symbols: d_b base diameter, d_y the diameter, mm, of one sign.<br/>
    /// Source: ISO 21771, pressure angle at a point.<br/>
    /// Valid for: |d_y| ≥ |d_b|; inside the base circle there is no involute.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double PressureAngleAt(double diameter, double baseDiameter)
    {
        var cosine = Guard.NotZero(baseDiameter, "the base diameter") / Guard.NotZero(diameter, "the diameter");
        return cosine is > 0 and <= 1
            ? Math.Acos(cosine)
            : throw Guard.Because(
                $"no pressure angle: the diameter {diameter:0.######} mm lies inside the base circle {baseDiameter:0.######} mm, where there is no involute");
    }

    /// <summary>Helix angle β_y at a diameter.</summary>
    /// <remarks>
    /// <code>tan β_y = tan β · d_y / d</code>
    /// Symbols: β helix angle at d, rad; d_y the diameter, d reference diameter, mm, of one sign.<br/>
    /// Source: ISO 21771, helix angle: one lead at every diameter.<br/>
    /// Valid for: |β| &lt; π/2.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double HelixAngleAt(double helixAngle, double diameter, double referenceDiameter) =>
        Guard.Finite(
            Math.Atan(
                Math.Tan(Guard.Helix(helixAngle))
                * Guard.NotZero(diameter, "the diameter") / Guard.NotZero(referenceDiameter, "the reference diameter")),
            "the helix angle at the diameter");

    /// <summary>Transverse tooth thickness s_yt at a diameter. Below zero: the flanks have crossed, the tooth is pointed sooner.</summary>
    /// <remarks>
    /// <code>s_yt = d_y · [ (π/2 + 2 · x · tan α_n) / z + inv α_t − inv α_y ],  cos α_y = d_b / d_y</code>
    /// Symbols: d_y the diameter, d_b base diameter, mm; z teeth; x profile shift coefficient (x_E for the tooth as cut);
    /// α_n normal, α_t transverse pressure angle, rad.<br/>
    /// Source: ISO 21771, tooth thickness at a diameter.<br/>
    /// Valid for: |d_y| ≥ |d_b|. With signed z and d the internal tooth, which grows towards its root, comes out right.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double TransverseThicknessAt(
        double diameter,
        double baseDiameter,
        int teeth,
        double profileShift,
        double normalPressureAngle,
        double transversePressureAngle) =>
        Guard.Finite(
            diameter * (ThicknessAngle(teeth, profileShift, normalPressureAngle)
                + Involute.Of(transversePressureAngle) - Involute.Of(PressureAngleAt(diameter, baseDiameter))),
            "the tooth thickness");

    /// <summary>Thickness square to the tooth at a diameter, s_yn.</summary>
    /// <remarks>
    /// <code>s_yn = s_yt · cos β_y</code>
    /// Symbols: s_yt transverse thickness at the diameter, mm; β_y helix angle there, rad (<see cref="HelixAngleAt"/>).<br/>
    /// Source: ISO 21771, normal tooth thickness at a diameter.<br/>
    /// Valid for: |β_y| &lt; π/2.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double NormalThicknessAt(double transverseThickness, double helixAngleThere) =>
        Guard.Finite(transverseThickness * Math.Cos(Guard.Helix(helixAngleThere)), "the tooth thickness");

    /// <summary>Normal tip thickness s_an. Zero or less: the tooth runs to a point before it reaches its tip circle.</summary>
    /// <remarks>
    /// <code>s_an = s_at · cos β_a</code>
    /// Symbols: s_at transverse thickness at d_a (<see cref="TransverseThicknessAt"/>), mm; β_a helix angle at d_a, rad.<br/>
    /// Source: ISO 21771, tooth thickness at a diameter, put at the tip.<br/>
    /// Valid for: an involute up to the tip: no tip relief, no chamfer.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double TipThickness(
        double tipDiameter,
        double referenceDiameter,
        double baseDiameter,
        int teeth,
        double profileShift,
        double helixAngle,
        double normalPressureAngle,
        double transversePressureAngle) =>
        NormalThicknessAt(
            TransverseThicknessAt(
                tipDiameter, baseDiameter, teeth, profileShift, normalPressureAngle, transversePressureAngle),
            HelixAngleAt(helixAngle, tipDiameter, referenceDiameter));

    /// <summary>Half of the angle the tooth spans at the reference cylinder, twice over, with the sign of z: s_t / r.</summary>
    internal static double ThicknessAngle(int teeth, double profileShift, double normalPressureAngle) =>
        (Math.PI / 2 + 2 * profileShift * Math.Tan(NormalAngle(normalPressureAngle))) / Guard.Teeth(teeth);

    internal static double Module(double normalModule) => Guard.Positive(normalModule, "the normal module");

    internal static double NormalAngle(double normalPressureAngle) =>
        Guard.AcuteAboveZero(normalPressureAngle, "the normal pressure angle");

    private static double SameSign(double diameter, double referenceDiameter, string name) =>
        diameter * Guard.NotZero(referenceDiameter, "the reference diameter") > 0
            ? Guard.Finite(diameter, name)
            : throw Guard.Because(
                $"no {name}: with reference diameter {referenceDiameter:0.####} mm the {name} would be {diameter:0.####} mm");
}
