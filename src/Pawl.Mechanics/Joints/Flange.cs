using Pawl.Mechanics.Bearings;

namespace Pawl.Mechanics.Joints;

/// <summary>Who carries the torque of a flange.</summary>
public enum TorquePath
{
    /// <summary>Friction of the clamped faces; dowels only locate.</summary>
    Friction,

    /// <summary>The dowels, all of it: friction is not counted on.</summary>
    Dowels,

    /// <summary>Neither can alone.</summary>
    Neither,
}

/// <summary>A flange on a circle of bolts that carries a torque.</summary>
public static class Flange
{
    /// <summary>Torque at which the flange slips, N·mm.</summary>
    /// <param name="bolts">Number of bolts z.</param>
    /// <param name="clamp">Clamp force F_KR that is left at each, N: the least.</param>
    /// <param name="friction">Coefficient µ_T between the faces: the least.</param>
    /// <param name="boltCircle">Diameter D of the circle of bolts, mm.</param>
    /// <param name="interfaces">Interfaces that would all have to slip; 1 for a plain flange.</param>
    /// <remarks>
    /// <code>T = z·F_KR·µ_T·D/2·i</code>
    /// Source: statics, VDI 2230 Part 1.<br/>
    /// Valid for: bolts in clearance holes that carry no shear; no clamp left carries nothing.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double FrictionTorque(int bolts, double clamp, double friction, double boltCircle, int interfaces = 1) =>
        Count(bolts) * Math.Max(0, Guard.Number(clamp, "the clamp force", "N")) * Guard.Positive(friction, "the friction of the faces")
        * Guard.Positive(boltCircle, "the circle of the bolts") / 2
        * (interfaces >= 1 ? interfaces : throw Guard.Because($"a flange has an interface; there are {interfaces}"));

    /// <summary>Greatest force across a bolt, N, from a torque and a force through the middle.</summary>
    /// <remarks>
    /// <code>Q = 2·T/(z·D) + F_Q/z</code>
    /// Symbols: T torque, N·mm; F_Q force across, N, at the bolt where both point the same way.<br/>
    /// Source: statics, bolts evenly on their circle and the flange rigid.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ForceAcross(int bolts, double torque, double across, double boltCircle) =>
        (2 * DynamicLoad.NotNegative(torque, "the torque") / Guard.Positive(boltCircle, "the circle of the bolts")
            + DynamicLoad.NotNegative(across, "the force across")) / Count(bolts);

    /// <summary>Greatest force along a bolt, N, from a bending moment across the axis of the circle.</summary>
    /// <param name="bolts">Number of bolts z.</param>
    /// <param name="moment">Moment M, N·mm.</param>
    /// <param name="boltCircle">Diameter D of the circle of bolts, mm.</param>
    /// <remarks>
    /// <code>F = M·r/Σ(r·sin φ_i)² = 4·M/(z·D)</code>
    /// Source: statics of a group of bolts: forces as the distance from a line through the middle, bolts evenly on their circle and the
    /// flanges rigid. A flange that tilts about its edge loads its worst bolt less, one that bends more: prying is not covered.<br/>
    /// Valid for: 3 bolts or more.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ForceOfMoment(int bolts, double moment, double boltCircle) => bolts >= 3
        ? 4 * DynamicLoad.NotNegative(moment, "the bending moment") / (bolts * Guard.Positive(boltCircle, "the circle of the bolts"))
        : throw Guard.Because($"a bending moment from any side takes three bolts or more; there are {bolts}");

    /// <summary>Clamp force of a ring of faces, N, below which a bending moment opens its outer edge.</summary>
    /// <param name="moment">Moment M, N·mm.</param>
    /// <param name="outside">Outside diameter D_o of the faces, mm.</param>
    /// <param name="inside">Inside diameter D_i, mm.</param>
    /// <remarks>
    /// <code>F/A = M/W:  F = 8·D_o·M/(D_o² + D_i²)</code>
    /// Source: beam theory, even pressure over a ring and that of the moment on top; rigid flanges.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double OpeningForce(double moment, double outside, double inside)
    {
        _ = new BearingFace(outside, inside).Area;
        return 8 * outside * Guard.Positive(moment, "the bending moment") / (outside * outside + inside * inside);
    }

    /// <summary>Who carries a torque.</summary>
    /// <param name="needed">Torque with its safety, N·mm.</param>
    /// <param name="friction">Torque that friction carries, N·mm.</param>
    /// <param name="dowels">Torque that the dowels carry, N·mm.</param>
    /// <remarks>
    /// <code>friction ≥ needed, or dowels ≥ needed; never the sum</code>
    /// Source: common practice, no source: the faces hold until they slip, the dowels carry after they have, and no one knows what both
    /// do together.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static TorquePath Path(double needed, double friction, double dowels)
    {
        Guard.NotNegative(needed, "the torque", "N·mm");
        Guard.NotNegative(friction, "the torque that friction holds", "N·mm");
        Guard.NotNegative(dowels, "the torque that dowels hold", "N·mm");
        return friction >= needed ? TorquePath.Friction : dowels >= needed ? TorquePath.Dowels : TorquePath.Neither;
    }

    private static int Count(int bolts) => bolts >= 1 ? bolts : throw Guard.Because($"a flange has bolts; there are {bolts}");
}
