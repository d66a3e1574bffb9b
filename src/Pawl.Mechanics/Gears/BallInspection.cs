namespace Pawl.Mechanics.Gears;

/// <summary>Dimension over balls (external) or between balls (internal): tooth thickness measured in the spaces.</summary>
/// <remarks>
/// On spur gears, pins of the same diameter read the same. On helical gears use balls, both in one transverse section.
/// Angles and thicknesses carry ISO 21771 signs: z, d, d_b negative for an internal gear; M, d_K and D_M are magnitudes.
/// </remarks>
public static class BallInspection
{
    /// <summary>Pressure angle α_Kt at the circle through the ball's centre.</summary>
    /// <remarks>
    /// <code>inv α_Kt = inv α_t + D_M / (z·m_n·cos α_n) − (π/2 − 2·x·tan α_n) / z + E_sn / (z·m_n)</code>
    /// Symbols: D_M ball diameter, mm; z teeth, internal negative; m_n normal module, mm; α_n normal, α_t transverse pressure angle,
    /// rad; x nominal profile shift coefficient; E_sn thickness allowance, normal, mm (0 for the nominal value).<br/>
    /// Source: ISO 21771, dimension over balls.<br/>
    /// Valid for: a ball that touches both flanks and not the root.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double CentrePressureAngle(
        double ballDiameter,
        int teeth,
        double normalModule,
        double normalPressureAngle,
        double transversePressureAngle,
        double profileShift,
        double thicknessAllowance = 0)
    {
        Guard.Positive(ballDiameter, "the ball diameter");
        var module = ToothGeometry.Module(normalModule);
        var involute = SpaceAngle(teeth, normalPressureAngle, transversePressureAngle, profileShift)
            + (ballDiameter / Math.Cos(normalPressureAngle) + thicknessAllowance) / (teeth * module);
        return Involute.TryInverse(involute, out var angle)
            ? angle
            : throw Guard.Because(
                teeth > 0
                    ? (FormattableString)$"no dimension over balls: a ball of {ballDiameter:0.####} mm is too small and drops to the bottom of the space"
                    : $"no dimension between balls: a ball of {ballDiameter:0.####} mm is too large for the space");
    }

    /// <summary>Diameter d_K of the circle through the ball's centre, a magnitude.</summary>
    /// <remarks>
    /// <code>d_K = |d_b| / cos α_Kt</code>
    /// Symbols: d_b base diameter, mm; α_Kt pressure angle at the ball's centre, rad.<br/>
    /// Source: ISO 21771, dimension over balls.<br/>
    /// Valid for: both kinds of gear.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double CentreDiameter(double baseDiameter, double centrePressureAngle) =>
        Guard.Positive(Math.Abs(baseDiameter), "the base diameter")
        / Math.Cos(Guard.Acute(centrePressureAngle, "the pressure angle at the ball's centre"));

    /// <summary>Dimension over two balls (external) or between them (internal), M_dK, a magnitude.</summary>
    /// <remarks>
    /// <code>even z: M = d_K ± D_M;  odd z: M = d_K · cos( π / (2·|z|) ) ± D_M;  + external, − internal</code>
    /// Symbols: d_K circle of the ball centres, D_M ball diameter, mm; z teeth, internal negative.<br/>
    /// Source: ISO 21771, dimension over balls.<br/>
    /// Valid for: balls in opposite, or most nearly opposite, spaces of one transverse section.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Dimension(int teeth, double centreDiameter, double ballDiameter)
    {
        var dimension = Guard.Positive(centreDiameter, "the circle of the ball centres") * Across(teeth)
            + Math.Sign(teeth) * Guard.Positive(ballDiameter, "the ball diameter");
        return dimension > 0
            ? dimension
            : throw Guard.Because(
                $"no dimension between balls: balls of {ballDiameter:0.####} mm have no room between them");
    }

    /// <summary>Thickness allowance E_sn that a measured dimension over or between balls shows.</summary>
    /// <remarks>
    /// <code>
    /// d_K = (M ∓ D_M) [/ cos( π/(2·|z|) ) for odd z],  cos α_Kt = |d_b| / d_K
    /// E_sn = z·m_n · [ inv α_Kt − inv α_t + (π/2 − 2·x·tan α_n)/z ] − D_M / cos α_n
    /// </code>
    /// Symbols: as <see cref="CentrePressureAngle"/> and <see cref="Dimension"/>; d_b base diameter, mm, signed.<br/>
    /// Source: those two turned round.<br/>
    /// Valid for: as those two.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ThicknessAllowance(
        double measuredDimension,
        double ballDiameter,
        int teeth,
        double baseDiameter,
        double normalModule,
        double normalPressureAngle,
        double transversePressureAngle,
        double profileShift)
    {
        Guard.Positive(ballDiameter, "the ball diameter");
        var centre = (measuredDimension - Math.Sign(Guard.Teeth(teeth)) * ballDiameter) / Across(teeth);
        if (!(centre > Math.Abs(baseDiameter)))
        {
            throw Guard.Because(
                $"no tooth thickness: a dimension of {measuredDimension:0.####} mm would put the ball centres, at {centre:0.####} mm, inside the base circle of {Math.Abs(baseDiameter):0.####} mm");
        }

        var involute = Involute.Of(ToothGeometry.PressureAngleAt(centre, Math.Abs(baseDiameter)));
        return Guard.Finite(
            teeth * ToothGeometry.Module(normalModule)
                * (involute - SpaceAngle(teeth, normalPressureAngle, transversePressureAngle, profileShift))
                - ballDiameter / Math.Cos(normalPressureAngle),
            "the thickness allowance");
    }

    /// <summary>How far the ball stands proud of the tip circle, mm. Zero or less: the anvil meets the tips, not the ball.</summary>
    /// <remarks>
    /// <code>external: (d_K + D_M − d_a)/2;  internal: (|d_a| − d_K + D_M)/2</code>
    /// Symbols: d_K circle of the ball centres, D_M ball diameter, d_a tip diameter (signed), mm.<br/>
    /// Source: geometry.<br/>
    /// Valid for: flat anvils.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double StandsProud(double centreDiameter, double ballDiameter, double tipDiameter) =>
        Guard.Finite(
            (Math.Sign(Guard.NotZero(tipDiameter, "the tip diameter", "mm")) * Guard.Positive(centreDiameter, "the circle of the ball centres")
                + Guard.Positive(ballDiameter, "the ball diameter") - tipDiameter) / 2, "how far the ball stands proud");

    /// <summary>Room between ball and root circle, mm. Zero or less: the ball sits on the root.</summary>
    /// <remarks>
    /// <code>external: (d_K − D_M − d_f)/2;  internal: (|d_f| − d_K − D_M)/2</code>
    /// Symbols: d_K circle of the ball centres, D_M ball diameter, d_f root diameter (signed), mm.<br/>
    /// Source: geometry.<br/>
    /// Valid for: both kinds of gear.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double RootClearance(double centreDiameter, double ballDiameter, double rootDiameter) =>
        Guard.Finite(
            (Math.Sign(Guard.NotZero(rootDiameter, "the root diameter", "mm")) * Guard.Positive(centreDiameter, "the circle of the ball centres")
                - Guard.Positive(ballDiameter, "the ball diameter") - rootDiameter) / 2, "the room below the ball");

    // inv α_t less half of the space's angle, with the signs of z.
    private static double SpaceAngle(
        int teeth, double normalPressureAngle, double transversePressureAngle, double profileShift) =>
        Involute.Of(transversePressureAngle)
        - (Math.PI / 2 - 2 * profileShift * Math.Tan(ToothGeometry.NormalAngle(normalPressureAngle)))
        / Guard.Teeth(teeth);

    private static double Across(int teeth) => teeth % 2 == 0 ? 1 : Math.Cos(Math.PI / (2.0 * Math.Abs(teeth)));
}
