namespace Pawl.Mechanics.Gears;

/// <summary>What a check for interference in an internal pair came to.</summary>
public abstract record Interference
{
    private Interference()
    {
    }

    /// <summary>Free: the tip circles do not cross, so no tip can meet another.</summary>
    public sealed record TipCirclesApart : Interference;

    /// <summary>The room that is left, rad: zero or more is free, less than zero interferes by so much.</summary>
    public sealed record Slack(double Radians) : Interference;

    /// <summary>The formula says nothing about this pair. Never to be read as free.</summary>
    public sealed record NotEvaluable(string Reason) : Interference;
}

/// <summary>The three ways in which a pinion can collide with the ring it runs in.</summary>
/// <remarks>
/// Index 1 is the pinion (z₁ &gt; 0), 2 the ring (z₂ &lt; 0, its diameters and the centre distance negative). The formulas of tip
/// interference and trimming are written in magnitudes, as the handbooks have them.
/// </remarks>
public static class InternalInterference
{
    /// <summary>Room before involute interference: how far above the pinion's base circle the ring's tip touches, mm.</summary>
    /// <remarks>
    /// <code>ρ_A1 = a_w · sin α_wt − ρ_a2 = √(r_a2² − r_b2²) − |a_w| · sin α_wt</code>
    /// Symbols: a_w working centre distance, mm, negative; α_wt working transverse pressure angle, rad; d_a2 tip, d_b2 base diameter
    /// of the ring, mm, negative.<br/>
    /// Source: ISO 21771; the contact must stay on the pinion's involute.<br/>
    /// Valid for: a ring whose tip lies outside its base circle. Zero or less: the ring's tip gouges the pinion's root.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double InvoluteSlack(
        double workingCentreDistance, double workingPressureAngle, double ringTipDiameter, double ringBaseDiameter)
    {
        RequireInternal(workingCentreDistance, ringTipDiameter);
        return PathOfContact.CurvatureOpposite(
            workingCentreDistance, workingPressureAngle, PathOfContact.CurvatureAt(ringTipDiameter, ringBaseDiameter));
    }

    /// <summary>Tip interference: the pinion's tip against the ring's tip as the tooth leaves the ring, rad of the ring.</summary>
    /// <remarks>
    /// <code>
    /// slack = θ₁ · z₁/z₂ + inv α_wt − inv α_a2 − θ₂
    /// θ₁ = acos( (r_a2² − r_a1² − a²) / (2·a·r_a1) ) + inv α_a1 − inv α_wt
    /// θ₂ = acos( (a² + r_a2² − r_a1²) / (2·a·r_a2) )
    /// </code>
    /// Symbols, all magnitudes: z teeth; r_a tip radii, a working centre distance, mm; α_a transverse pressure angles at the tips,
    /// α_wt working, rad.<br/>
    /// Source: the handbooks' trochoid interference; at a negative slack a rolling simulation of the tip corner finds an overlap
    /// of the same size.<br/>
    /// Valid for: a pair without backlash (on the safe side with it), spur or in the transverse section.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static Interference Tip(
        int pinionTeeth,
        int ringTeeth,
        double pinionTipDiameter,
        double pinionBaseDiameter,
        double ringTipDiameter,
        double ringBaseDiameter,
        double workingCentreDistance,
        double workingPressureAngle)
    {
        RequireInternal(workingCentreDistance, ringTipDiameter);
        var ratio = RequireRatio(pinionTeeth, ringTeeth);
        var centre = -workingCentreDistance;
        var pinion = Guard.Positive(pinionTipDiameter, "the pinion's tip diameter") / 2;
        var ring = -ringTipDiameter / 2;
        if (ring >= centre + pinion)
        {
            return new Interference.TipCirclesApart();
        }

        if (ring <= Math.Abs(centre - pinion))
        {
            return new Interference.NotEvaluable(FormattableString.Invariant(
                $"the ring's tip circle, radius {ring:0.####} mm, lies wholly inside or outside of the pinion's, radius {pinion:0.####} mm at {centre:0.####} mm"));
        }

        var working = Involute.Of(workingPressureAngle);
        var pinionInvolute = Involute.Of(ToothGeometry.PressureAngleAt(pinionTipDiameter, pinionBaseDiameter));
        var ringInvolute = Involute.Of(ToothGeometry.PressureAngleAt(ringTipDiameter, ringBaseDiameter));
        var turnOfPinion = Math.Acos((ring * ring - pinion * pinion - centre * centre) / (2 * centre * pinion))
            + pinionInvolute - working;
        var placeOnRing = Math.Acos((centre * centre + ring * ring - pinion * pinion) / (2 * centre * ring));
        return new Interference.Slack(
            Guard.Finite(turnOfPinion * ratio + working - ringInvolute - placeOnRing, "the slack of the tips"));
    }

    /// <summary>Trimming: the pinion's tips against the ring's when the pinion goes in radially, rad of the pinion.</summary>
    /// <remarks>
    /// <code>
    /// slack = θ₁ + inv α_a1 − inv α_wt − (z₂/z₁) · (θ₂ + inv α_a2 − inv α_wt)
    /// θ₁ = asin √[ (1 − (cos α_a1 / cos α_a2)²) / (1 − (z₁/z₂)²) ]
    /// θ₂ = asin √[ ((cos α_a2 / cos α_a1)² − 1) / ((z₂/z₁)² − 1) ]
    /// </code>
    /// Symbols, all magnitudes: z teeth; α_a transverse pressure angles at the tips, α_wt working, rad.<br/>
    /// Source: the handbooks' trimming interference; at a negative slack an insertion simulation finds an overlap of slack · z₁/z₂
    /// on the ring.<br/>
    /// Valid for: radial insertion at equal speed of turning, none. Not needed when the pinion goes in along the axis.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static Interference Trimming(
        int pinionTeeth,
        int ringTeeth,
        double pinionTipDiameter,
        double pinionBaseDiameter,
        double ringTipDiameter,
        double ringBaseDiameter,
        double workingCentreDistance,
        double workingPressureAngle)
    {
        RequireInternal(workingCentreDistance, ringTipDiameter);
        var ratio = RequireRatio(pinionTeeth, ringTeeth);
        Guard.Positive(pinionTipDiameter, "the pinion's tip diameter");
        if (-ringTipDiameter / 2 >= pinionTipDiameter / 2 - workingCentreDistance)
        {
            return new Interference.TipCirclesApart();
        }

        var pinionAngle = ToothGeometry.PressureAngleAt(pinionTipDiameter, pinionBaseDiameter);
        var ringAngle = ToothGeometry.PressureAngleAt(ringTipDiameter, ringBaseDiameter);
        var cosines = Math.Cos(pinionAngle) / Math.Cos(ringAngle);
        if (cosines > 1)
        {
            return new Interference.NotEvaluable(FormattableString.Invariant(
                $"the ring's pressure angle at the tip, {ringAngle * 180 / Math.PI:0.##}°, is above the pinion's, {pinionAngle * 180 / Math.PI:0.##}°, which the formula does not cover"));
        }

        if (cosines < ratio)
        {
            return new Interference.NotEvaluable(FormattableString.Invariant(
                $"the pinion's tip circle {pinionTipDiameter:0.####} mm does not pass through the ring's {-ringTipDiameter:0.####} mm, so it cannot go in radially"));
        }

        var working = Involute.Of(workingPressureAngle);
        var onPinion = Math.Asin(Math.Sqrt((1 - cosines * cosines) / (1 - ratio * ratio)));
        var onRing = Math.Asin(Math.Sqrt((1 / (cosines * cosines) - 1) / (1 / (ratio * ratio) - 1)));
        return new Interference.Slack(Guard.Finite(
            onPinion + Involute.Of(pinionAngle) - working - (onRing + Involute.Of(ringAngle) - working) / ratio,
            "the slack of trimming"));
    }

    private static void RequireInternal(double workingCentreDistance, double ringTipDiameter)
    {
        if (!(workingCentreDistance < 0) || !(ringTipDiameter < 0) || !double.IsFinite(workingCentreDistance + ringTipDiameter))
        {
            throw Guard.Because(
                $"not an internal pair: its centre distance and the ring's diameters count negative, but are {workingCentreDistance:0.####} mm and {ringTipDiameter:0.####} mm");
        }
    }

    private static double RequireRatio(int pinionTeeth, int ringTeeth) =>
        pinionTeeth > 0 && ringTeeth < -pinionTeeth
            ? (double)pinionTeeth / -ringTeeth
            : throw Guard.Because(
                $"not an internal pair: a pinion of {pinionTeeth} teeth does not run in an internal gear of {ringTeeth} (internal teeth count negative)");
}
