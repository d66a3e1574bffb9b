namespace Pawl.Mechanics.Bearings;

/// <summary>How a ring wanders on its seat under a load that goes round it, and what holds it.</summary>
public static class RingCreep
{
    /// <summary>Speed at which a loose ring turns against its seat, rad/s.</summary>
    /// <param name="loadSpeed">ω of the direction of the load against the seat, rad/s; its sign does not matter.</param>
    /// <param name="play">s, clearance of ring and seat on the diameter, mm; below zero is interference, and nothing turns.</param>
    /// <param name="diameter">d of the ring at its seat, mm.</param>
    /// <remarks>
    /// <code>ω_c = |ω|·s/d</code>
    /// Source: geometry of rolling: the point of contact goes once round the seat while the ring, longer or shorter by π·s,
    /// rolls off on it.<br/>
    /// Valid for: a ring that rolls without slip, which is all that a loose ring under load does; tight rings creep by their
    /// elasticity, which this does not see.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Speed(double loadSpeed, double play, double diameter) =>
        Math.Abs(Guard.Number(loadSpeed, "the speed of the load")) * Math.Max(0, Guard.Number(play, "the play of the ring"))
        / Guard.Positive(diameter, "the diameter of the seat");

    /// <summary>Torque that holds a loose ring, N·mm.</summary>
    /// <param name="radial">F_r, radial load, N.</param>
    /// <param name="diameter">d of the seat, mm.</param>
    /// <param name="friction">μ of ring and seat, 1.</param>
    /// <remarks>
    /// <code>M = μ·F_r·d/2</code>
    /// Source: statics and Coulomb's friction: held, the ring slides where it would have rolled.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double HoldingTorque(double radial, double diameter, double friction) =>
        Guard.Positive(friction, "the friction of the seat") * Guard.NotNegative(radial, "the radial load")
        * Guard.Positive(diameter, "the diameter of the seat") / 2;

    /// <summary>Overlap that a rotating radial load takes from an inner ring on a solid shaft of steel, mm.</summary>
    /// <param name="bore">d, mm.</param>
    /// <param name="width">B of the ring, mm.</param>
    /// <param name="radial">F_r, radial load, N.</param>
    /// <remarks>
    /// <code>Δ = max(0.08·√(d·F_r/B), 0.02·F_r/B)·10⁻³</code>
    /// Source: handbooks of rolling bearings, from memory; the first branch for loads up to a quarter of the static rating, the
    /// second beyond; here the greater.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double LossUnderLoad(double bore, double width, double radial)
    {
        var line = Guard.NotNegative(radial, "the radial load") / Guard.Positive(width, "the width of the ring");
        return 1e-3 * Math.Max(0.08 * Math.Sqrt(Guard.Positive(bore, "the bore") * line), 0.02 * line);
    }
}
