using Pawl.Mechanics.Bearings;

namespace Pawl.Mechanics.Pins;

/// <summary>Dowels that carry a torque or locate two parts.</summary>
public static class DowelPins
{
    /// <summary>How many of the pins on a circle may be counted on.</summary>
    /// <param name="pins">Number of pins.</param>
    /// <param name="reamedTogether">Whether the holes of both parts were reamed in one, assembled.</param>
    /// <remarks>
    /// <code>all of them when reamed together; no more than two else; one alone none</code>
    /// Source: common practice, no source: of more than two holes made apart, two touch first.
    /// </remarks>
    public static int Effective(int pins, bool reamedTogether) => pins switch
    {
        < 0 => throw Guard.Because($"the number of pins must not be below zero; it is {pins}"),
        < 2 => 0,
        _ => reamedTogether ? pins : 2,
    };

    /// <summary>Force on a pin, N.</summary>
    /// <remarks>
    /// <code>F = T/(z·r)</code>
    /// Symbols: T the whole torque, N·mm: friction is not counted on; z effective pins; r radius of their circle, mm.<br/>
    /// Source: statics.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Force(double torque, int effectivePins, double radius) =>
        effectivePins >= 1
            ? DynamicLoad.NotNegative(torque, "the torque") / (effectivePins * Guard.Positive(radius, "the radius of the pins"))
            : throw Guard.Because($"a torque needs two pins or more");

    /// <summary>Mean shear stress, MPa.</summary>
    /// <param name="force">Force across F, N.</param>
    /// <param name="diameter">Diameter d, mm.</param>
    /// <param name="planes">Planes of shear: 1 between two parts, 2 in a fork.</param>
    /// <param name="hole">Diameter of the hole along a hollow or tapped pin, mm.</param>
    /// <remarks><code>τ = F/(m·π/4·(d² − d_i²))</code> Source: definition.</remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ShearStress(double force, double diameter, int planes = 1, double hole = 0)
    {
        Guard.Positive(diameter, "the diameter of the pin");
        if (planes is not (1 or 2))
            throw Guard.Because($"a pin shears in one plane or two; there are {planes}");
        if (!(hole >= 0 && hole < diameter))
            throw Guard.Because($"the hole of a pin must be below its diameter; they are {hole:0.###} mm and {diameter:0.###} mm");
        return DynamicLoad.NotNegative(force, "the force") / (planes * Math.PI / 4 * (diameter * diameter - hole * hole));
    }

    /// <summary>Mean pressure in the hole, MPa.</summary>
    /// <param name="force">Force on this part F, N; of the middle part of a fork all of it, of the outer ones half each.</param>
    /// <param name="diameter">Diameter d, mm.</param>
    /// <param name="length">Length l that bears in this part, chamfers off, mm.</param>
    /// <remarks><code>p = F/(d·l)</code> Source: definition.</remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Pressure(double force, double diameter, double length) =>
        DynamicLoad.NotNegative(force, "the force")
        / (Guard.Positive(diameter, "the diameter of the pin") * Guard.Positive(length, "the length that bears"));

    /// <summary>Room that is left for pins to go into their holes, mm; below zero some pairs do not go together.</summary>
    /// <param name="play">Least play of a pin in its loose hole, mm, on the diameter: hole's least less pin's greatest.</param>
    /// <param name="positionOfPins">Position tolerance of the pins, mm, on the diameter.</param>
    /// <param name="positionOfHoles">Position tolerance of the loose holes, mm, on the diameter.</param>
    /// <remarks>
    /// <code>room = S_min − t₁ − t₂</code>
    /// Source: fixed fasteners of ASME Y14.5, ISO 5458: each centre lies within half its tolerance, so the two are apart by
    /// (t₁ + t₂)/2 at most, and the play gives way S/2.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Room(double play, double positionOfPins, double positionOfHoles) =>
        Guard.Finite(play, "the play of the pins") - DynamicLoad.NotNegative(positionOfPins, "the position tolerance")
        - DynamicLoad.NotNegative(positionOfHoles, "the position tolerance");

    /// <summary>Room between a dowel that stands midway between two evenly spread bolts and their holes, mm; below zero they run into each other.</summary>
    /// <param name="circle">Circle of the dowels D, mm.</param>
    /// <param name="diameter">Diameter of a dowel d, mm.</param>
    /// <param name="boltCircle">Circle of the bolts D_b, mm.</param>
    /// <param name="bolts">Number of bolts z_b, at least 1.</param>
    /// <param name="hole">Hole of a bolt d_h, mm.</param>
    /// <remarks>
    /// <code>√(D²/4 + D_b²/4 − D·D_b/2·cos(π/z_b)) − (d + d_h)/2</code>
    /// Source: law of cosines; midway is the farthest place from the bolts.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double FromBolts(double circle, double diameter, double boltCircle, double bolts, double hole)
    {
        var (r, b) = (Guard.Positive(circle, "the circle of the dowels") / 2, Guard.Positive(boltCircle, "the bolt circle") / 2);
        var between = Math.Sqrt(Math.Max(0, r * r + b * b - 2 * r * b * Math.Cos(Math.PI / Guard.AtLeast(bolts, 1, "the number of bolts"))));
        return between - (Guard.Positive(diameter, "the diameter of the pin") + Guard.Positive(hole, "the hole of the bolts")) / 2;
    }

    /// <summary>How far two parts on pins may turn against each other, rad, from end to end.</summary>
    /// <param name="play">Greatest play of a pin in its hole, mm, on the diameter.</param>
    /// <param name="radius">Radius of the circle of the pins, mm.</param>
    /// <remarks>
    /// <code>ψ = S_max/r</code>
    /// Source: geometry, the same play at every pin; small angles.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Turn(double play, double radius) =>
        DynamicLoad.NotNegative(play, "the play of the pins") / Guard.Positive(radius, "the radius of the pins");
}
