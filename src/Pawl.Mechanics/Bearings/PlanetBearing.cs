using Pawl.Mechanics.Rating;

namespace Pawl.Mechanics.Bearings;

/// <summary>What a planet lays on its bearings.</summary>
public static class PlanetBearing
{

    /// <summary>The same with normal play, for balls and rollers, 1.</summary>
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

    /// <summary>Force of a planet on its pin, N: along the path of the planet, and outwards.</summary>
    /// <param name="sunTangential">Tangential force at the sun, N.</param>
    /// <param name="ringTangential">Tangential force at the ring, N, the same way when power passes through.</param>
    /// <param name="sunRadial">Radial force at the sun, N, a magnitude: it presses the planet outwards.</param>
    /// <param name="ringRadial">Radial force at the ring, N, a magnitude: it presses the planet inwards.</param>
    /// <param name="centrifugal">Centrifugal force, N.</param>
    /// <remarks>
    /// <code>F_t = F_t,s + F_t,r;  F_out = F_r,s − F_r,r + F_c;  F = √(F_t² + F_out²)</code>
    /// Source: statics. With equal pressure angles and no friction F = √((2·F_t)² + F_c²).<br/>
    /// Valid for: a planet with one sun and one ring mesh in one plane; the mesh load factor is in the tooth forces.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static PlanetForce Force(
        double sunTangential, double ringTangential, double sunRadial, double ringRadial, double centrifugal) => new(
        Guard.Finite(sunTangential + ringTangential, "the tooth force"),
        Guard.NotNegative(sunRadial, "the radial force at the sun", "N") - Guard.NotNegative(ringRadial, "the radial force at the ring", "N")
            + Guard.NotNegative(centrifugal, "the centrifugal force", "N"));

    /// <summary>Speed of the planet against its pin, rad/s, a magnitude.</summary>
    /// <remarks>
    /// <code>ω = |ω_p − ω_c|</code>
    /// Symbols: ω_p speed of the planet, ω_c of the carrier, both against the housing, rad/s, with sign.<br/>
    /// Source: kinematics; the pin turns with the carrier.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double RelativeSpeed(double planetSpeed, double carrierSpeed) =>
        Guard.Finite(Math.Abs(planetSpeed - carrierSpeed), "the speed");

    /// <summary>Couple that tilts a helical planet on its pin, N·mm; its axis lies along the planet's path.</summary>
    /// <remarks>
    /// <code>M = (F_a,s + F_a,r)·d_w/2 = F_t·tan β·d_w</code>
    /// Symbols: F_a axial forces at sun and ring, opposite and as a rule equal, N; d_w working pitch diameter of the planet, mm;
    /// where the two differ, each takes its own half.<br/>
    /// Source: statics. The axial forces cancel, their couple does not.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double TiltCouple(double sunAxial, double ringAxial, double sunPitchDiameter, double ringPitchDiameter) =>
        (DynamicLoad.NotNegative(sunAxial, "the axial force") * Guard.Positive(Math.Abs(sunPitchDiameter), "the pitch diameter")
            + DynamicLoad.NotNegative(ringAxial, "the axial force") * Guard.Positive(Math.Abs(ringPitchDiameter), "the pitch diameter")) / 2;

    /// <summary>Loads of two bearings side by side in a planet, N.</summary>
    /// <param name="force">Force of the planet, midway between the bearings.</param>
    /// <param name="tiltCouple">Couple M, N·mm.</param>
    /// <param name="spacing">Distance s of the bearings' middles, mm.</param>
    /// <remarks>
    /// <code>F₁,₂ = √( (F_t/2)² + (F_out/2 ± M/s)² )</code>
    /// Source: statics; the couple's forces lie along the radius of the carrier.<br/>
    /// Valid for: loads midway; rings that do not tilt within a bearing. One row bears the couple as edge load, which this does
    /// not tell.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static (double First, double Second) Split(PlanetForce force, double tiltCouple, double spacing)
    {
        var each = Guard.Finite(tiltCouple, "the couple") / Guard.Positive(spacing, "the distance of the bearings");
        return (
            double.Hypot(force.Tangential / 2, force.Outward / 2 + each),
            double.Hypot(force.Tangential / 2, force.Outward / 2 - each));
    }

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

/// <summary>Force of a planet on its pin, in the frame of the carrier.</summary>
/// <param name="Tangential">Along the path of the planet, N.</param>
/// <param name="Outward">Away from the carrier axis, N; below zero inwards.</param>
public readonly record struct PlanetForce(double Tangential, double Outward)
{
}
