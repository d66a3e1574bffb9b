namespace Pawl.Mechanics.Gears;

/// <summary>Base tangent length: tooth thickness measured across several teeth.</summary>
/// <remarks>External gears only. In an internal gear the anvils would have to sit in the spaces; balls do that better.</remarks>
public static class Inspection
{
    /// <summary>Base tangent length W_k over k teeth.</summary>
    /// <remarks>
    /// <code>W_k = m_n · cos α_n · [ (k − ½)·π + z · inv α_t ] + 2 · x · m_n · sin α_n + E_sn · cos α_n</code>
    /// Symbols: k teeth spanned; z teeth; m_n normal module, mm; α_n normal, α_t transverse pressure angle, rad; x nominal profile
    /// shift coefficient; E_sn thickness allowance, normal, mm (0 for the nominal value).<br/>
    /// Source: ISO 21771, base tangent length.<br/>
    /// Valid for: external spur and helical gears; 1 ≤ k ≤ z; both anvils on involute.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double BaseTangentLength(
        int teethSpanned,
        int teeth,
        double normalModule,
        double normalPressureAngle,
        double transversePressureAngle,
        double profileShift,
        double thicknessAllowance = 0)
    {
        RequireExternal(teeth);
        if (teethSpanned < 1 || teethSpanned > teeth)
        {
            throw Guard.Because(
                $"no base tangent length: {teethSpanned} teeth cannot be spanned on a gear of {teeth}");
        }

        var module = ToothGeometry.Module(normalModule);
        var angle = ToothGeometry.NormalAngle(normalPressureAngle);
        return Guard.Finite(
            module * Math.Cos(angle) * ((teethSpanned - 0.5) * Math.PI + teeth * Involute.Of(transversePressureAngle))
                + 2 * profileShift * module * Math.Sin(angle) + thicknessAllowance * Math.Cos(angle),
            "the base tangent length");
    }

    /// <summary>Number of teeth k for which the anvils touch nearest the V-circle d + 2·x·m_n, half way up the tooth.</summary>
    /// <remarks>
    /// <code>k = (z/π) · [ tan α_v / cos² β_b − inv α_t ] − 2·x·tan α_n/π + ½, rounded;  cos α_v = d_b / (d + 2·x·m_n)</code>
    /// Symbols: z teeth; α_n normal, α_t transverse pressure angle, β_b base helix angle, rad; d reference, d_b base diameter, m_n
    /// normal module, mm; x profile shift coefficient.<br/>
    /// Source: ISO 21771; follows from the contact diameter of W_k put at the V-circle.<br/>
    /// Valid for: external gears; a V-circle inside the base circle is taken at it. At least 2 where there are 2 teeth to span.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static int BestTeethSpanned(
        int teeth,
        double normalModule,
        double normalPressureAngle,
        double transversePressureAngle,
        double baseHelixAngle,
        double profileShift)
    {
        RequireExternal(teeth);
        var baseCosine = Math.Cos(Guard.Helix(baseHelixAngle));
        var baseDiameter = BaseDiameter(teeth, normalModule, normalPressureAngle, baseCosine);
        var referenceDiameter = baseDiameter / Math.Cos(transversePressureAngle);
        var cosine = baseDiameter / (referenceDiameter + 2 * profileShift * normalModule);
        var tangent = cosine is > 0 and < 1 ? Math.Tan(Math.Acos(cosine)) : 0;
        var best = teeth / Math.PI * (tangent / (baseCosine * baseCosine) - Involute.Of(transversePressureAngle))
            - 2 * profileShift * Math.Tan(normalPressureAngle) / Math.PI + 0.5;
        return Math.Clamp((int)Math.Round(Guard.Finite(best, "the number of teeth to span")), Math.Min(2, teeth), teeth);
    }

    /// <summary>Face width left over when both anvils of a helical gear sit on the teeth, mm; less than zero: they miss.</summary>
    /// <remarks>
    /// <code>b − W_k · sin |β_b|</code>
    /// Symbols: b face width, W_k base tangent length, mm; β_b base helix angle, rad.<br/>
    /// Source: ISO 21771, measurability of the base tangent length. Some 1.5 mm for the anvils: common practice, no source.<br/>
    /// Valid for: external gears.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double BaseTangentFaceWidthReserve(double faceWidth, double baseTangentLength, double baseHelixAngle) =>
        Guard.Finite(
            Guard.Positive(faceWidth, "the face width", "mm") - Guard.Positive(baseTangentLength, "the base tangent length", "mm") * Math.Sin(Math.Abs(Guard.Helix(baseHelixAngle))),
            "the face width left over");

    // d_b = z · m_n · cos α_n / cos β_b, from cos α_n · cos β = cos α_t · cos β_b.
    private static double BaseDiameter(int teeth, double normalModule, double normalPressureAngle, double baseHelixCosine) =>
        teeth * ToothGeometry.Module(normalModule) * Math.Cos(ToothGeometry.NormalAngle(normalPressureAngle))
        / baseHelixCosine;

    private static void RequireExternal(int teeth)
    {
        if (Guard.Teeth(teeth) < 0)
        {
            throw Guard.Because($"no base tangent length: an internal gear is measured between balls");
        }
    }
}
