namespace Pawl.Mechanics.Gears;

/// <summary>Where the rack tool ends the involute at the root, and where it begins to cut it away.</summary>
public static class Root
{
    /// <summary>Root form diameter d_Ff: the involute ends here, the fillet begins.</summary>
    /// <remarks>
    /// <code>d_Ff = √( ( d·sin α_t − 2·m_n·(h_fP* − x − ρ_fP*·(1 − sin α_n)) / sin α_t )² + d_b² )</code>
    /// Symbols: d reference, d_b base diameter, mm; α_t transverse, α_n normal pressure angle, rad; m_n normal module, mm; x profile
    /// shift coefficient (x_E for the tooth as cut); h_fP* dedendum factor, ρ_fP* root radius factor of the basic rack.<br/>
    /// Source: ISO 21771, root form diameter; the last point of the rack's straight flank, carried along the line of action.<br/>
    /// Valid for: external gears cut by a rack tool without undercut. The fillet of an internal gear depends on its cutter.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double FormDiameter(
        double referenceDiameter,
        double baseDiameter,
        double transversePressureAngle,
        double normalPressureAngle,
        double normalModule,
        double profileShift,
        double dedendumFactor,
        double rootRadiusFactor)
    {
        if (Guard.NotZero(referenceDiameter, "the reference diameter") < 0)
        {
            throw Guard.Because(
                $"no root form diameter: a rack cannot cut an internal gear, and the fillet depends on the cutter");
        }

        var sine = Math.Sin(Guard.AcuteAboveZero(transversePressureAngle, "the transverse pressure angle"));
        var depth = StraightDepth(dedendumFactor, rootRadiusFactor, normalPressureAngle) - profileShift;
        var bracket = Guard.Finite(
            referenceDiameter * sine - 2 * ToothGeometry.Module(normalModule) * depth / sine, "the root form diameter");
        return bracket >= 0
            ? Math.Sqrt(bracket * bracket + Guard.Positive(baseDiameter, "the base diameter") * baseDiameter)
            : throw Guard.Because(
                $"no root form diameter by this formula: the root is undercut (profile shift {profileShift:0.####} is below the limit for this number of teeth)");
    }

    /// <summary>Least profile shift coefficient x_min without undercut.</summary>
    /// <remarks>
    /// <code>x_min = h_fP* − ρ_fP* · (1 − sin α_n) − z · sin² α_t / (2 · cos β)</code>
    /// Symbols: h_fP* dedendum factor (the addendum factor of the tool), ρ_fP* root radius factor (the tip radius factor of the
    /// tool); α_n normal, α_t transverse pressure angle, rad; z teeth; β helix angle, rad.<br/>
    /// Source: generation limit of the rack: its last straight flank point just reaches the line of action's end; ISO 21771.<br/>
    /// Valid for: external gears cut by a rack tool. With ρ_fP* = 0, h_fP* = 1: the textbook's z = 17.1 at 20°.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double MinProfileShift(
        int teeth,
        double helixAngle,
        double normalPressureAngle,
        double transversePressureAngle,
        double dedendumFactor,
        double rootRadiusFactor)
    {
        if (Guard.Teeth(teeth) < 0)
        {
            throw Guard.Because($"no least profile shift: a rack cannot cut an internal gear");
        }

        var sine = Math.Sin(Guard.AcuteAboveZero(transversePressureAngle, "the transverse pressure angle"));
        return Guard.Finite(
            StraightDepth(dedendumFactor, rootRadiusFactor, normalPressureAngle)
                - teeth * sine * sine / (2 * Math.Cos(Guard.Helix(helixAngle))),
            "the least profile shift");
    }

    private static double StraightDepth(double dedendumFactor, double rootRadiusFactor, double normalPressureAngle) =>
        dedendumFactor - rootRadiusFactor * (1 - Math.Sin(ToothGeometry.NormalAngle(normalPressureAngle)));
}
