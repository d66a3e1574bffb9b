namespace Pawl.Mechanics.Assembly;

/// <summary>Clearance of a pinion that passes a central gear which it does not mesh.</summary>
public static class PassingClearance
{
    /// <summary>Past a sun.</summary>
    /// <remarks>
    /// <code>c = a − r_a,pinion − r_a,sun</code>
    /// Symbols: a distance of the pinion from the axis, mm; r_a tip radii, mm; c in mm, negative where they cross.<br/>
    /// Source: geometry.<br/>
    /// Valid for: gears that share some width of the axis.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Sun(double centreDistance, double pinionTipRadius, double sunTipRadius) =>
        Centre(centreDistance) - Tip(pinionTipRadius) - Tip(sunTipRadius);

    /// <summary>Past a ring, inside it.</summary>
    /// <remarks>
    /// <code>c = r_a,ring − a − r_a,pinion</code>
    /// Symbols: r_a,ring tip radius of the ring, mm, its amount where counted negative; else as for a sun.<br/>
    /// Source: geometry.<br/>
    /// Valid for: gears that share some width of the axis.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Ring(double centreDistance, double pinionTipRadius, double ringTipRadius) =>
        Tip(Math.Abs(ringTipRadius)) - Centre(centreDistance) - Tip(pinionTipRadius);

    private static double Centre(double distance) => Guard.Positive(distance, "the centre distance", "mm");

    private static double Tip(double radius) => Guard.Positive(radius, "the tip radius", "mm");
}
