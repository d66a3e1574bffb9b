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

    /// <summary>Past the sun that it does not mesh: the wide pinion of an unshifted meshed pair in two planes.</summary>
    /// <remarks>
    /// <code>c = m_n·(z_own − z_passed)/(2·cos β) − 2·h_a*·m_n;  spur, full addendum: m·(z_own − z_passed − 4)/2</code>
    /// Symbols: m_n normal module, mm; z_own teeth of the sun that the wide pinion meshes; z_passed teeth of the sun that it
    /// passes; β helix angle, rad; h_a* addendum factor, 1; c in mm. The pinion's teeth cancel.<br/>
    /// Source: derived from a = m_t·(z_own + z_p)/2 and r_a = m_t·z/2 + h_a*·m_n.<br/>
    /// Valid for: one module, one step, no profile shift.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double UnshiftedWidePinion(
        double normalModule, int ownSunTeeth, int passedSunTeeth, double helixAngle = 0, double addendumFactor = 1)
    {
        Guard.Positive(normalModule, "the module", "mm");
        Guard.Helix(helixAngle);
        return normalModule * (ownSunTeeth - passedSunTeeth) / (2 * Math.Cos(helixAngle)) - 2 * Guard.NotNegative(addendumFactor, "the addendum factor") * normalModule;
    }

    private static double Centre(double distance) => Guard.Positive(distance, "the centre distance", "mm");

    private static double Tip(double radius) => Guard.Positive(radius, "the tip radius", "mm");
}
