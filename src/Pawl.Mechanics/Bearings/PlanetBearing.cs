using Pawl.Mechanics.Rating;

namespace Pawl.Mechanics.Bearings;

/// <summary>What a planet lays on its bearings.</summary>
public static class PlanetBearing
{
    /// <summary>Load of the heaviest rolling element over the mean, with normal play, for balls and rollers, 1.</summary>
    /// <remarks>Source: Stribeck; textbooks of machine design, from memory.</remarks>
    public const double ShareWithPlay = 5;

    /// <summary>Centrifugal force of a planet, outwards, N.</summary>
    /// <remarks>
    /// <code>F_c = m·a·ω_c²</code>
    /// Symbols: m mass of the planet and what turns about the pin with it, t; a distance from the carrier axis, mm; ω_c speed of
    /// the carrier, rad/s.<br/>
    /// Source: mechanics.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Centrifugal(double mass, double centreDistance, double carrierSpeed) =>
        DynamicLoad.NotNegative(mass, "the mass of the planet") * Acceleration(centreDistance, carrierSpeed);

    /// <summary>Acceleration that rollers and cage of a planet bearing feel, mm/s².</summary>
    /// <remarks>
    /// <code>a_c = a·ω_c²</code>
    /// Symbols: a distance from the carrier axis, mm; ω_c speed of the carrier, rad/s.<br/>
    /// Source: mechanics.<br/>
    /// Valid for: a comparison with the supplier's limit of the cage; no general limit is known.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Acceleration(double centreDistance, double carrierSpeed) =>
        Guard.Positive(Math.Abs(centreDistance), "the centre distance") * Guard.Finite(carrierSpeed * carrierSpeed, "the speed");

    /// <summary>Load on the heaviest loaded roller, N.</summary>
    /// <remarks>
    /// <code>Q = k·F/Z</code>
    /// Symbols: F radial load, N; Z rollers; k 4.08 without play, 5 with normal play.<br/>
    /// Source: Stribeck; textbooks of rolling bearings.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double HeaviestRoller(double radial, int rollers, double share = ShareWithPlay) =>
        rollers >= 3
            ? Guard.Positive(share, "the share of a roller") * DynamicLoad.NotNegative(radial, "the radial load") / rollers
            : throw Guard.Because($"a row needs at least three rollers; it has {rollers}");

    /// <summary>Greatest pressure of a roller on the pin that is its raceway, MPa.</summary>
    /// <remarks>
    /// <code>p = √( (Q/L_we)·E* / (π·R) );  1/R = 2/D_we + 2/d</code>
    /// Symbols: Q load of the roller, N; L_we effective length, D_we diameter of the roller, d of the pin, mm; E* reduced
    /// modulus, MPa.<br/>
    /// Source: Hertz, line contact.<br/>
    /// Valid for: even load along the roller.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double PinPressure(
        double rollerLoad, double rollerLength, double rollerDiameter, double pinDiameter, Elastic roller, Elastic pin) =>
        LineContact.Pressure(
            Guard.Positive(rollerLoad, "the load of a roller") / Guard.Positive(rollerLength, "the length of a roller"),
            LineContact.ReducedCurvature(
                Guard.Positive(rollerDiameter, "the diameter of a roller") / 2,
                Guard.Positive(pinDiameter, "the diameter of the pin") / 2),
            Elastic.Reduced(roller, pin));
}
