namespace Pawl.Mechanics.Bearings;

/// <summary>How the load on a bearing lies to one of its rings.</summary>
public enum LoadOnRing
{
    /// <summary>It always presses on the same spot of the ring.</summary>
    Stationary,

    /// <summary>It goes round the ring.</summary>
    Rotating,

    /// <summary>It wanders or swings: unbalance beside a fixed load, shocks.</summary>
    Indeterminate,
}

/// <summary>Which ring must sit tight.</summary>
public static class RingSeat
{
    /// <summary>How a load lies to a ring.</summary>
    /// <param name="ringSpeed">Speed of the ring against the housing, rad/s, with sign.</param>
    /// <param name="loadSpeed">
    /// Speed at which the direction of the load turns, rad/s, with sign: zero for gear forces and weight on a shaft, the
    /// carrier's speed for a planet, the shaft's for unbalance.
    /// </param>
    /// <remarks>
    /// <code>stationary where |ω_ring − ω_load| is nothing beside the greater of both</code>
    /// Source: kinematics.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static LoadOnRing Of(double ringSpeed, double loadSpeed)
    {
        var difference = Math.Abs(Guard.Finite(ringSpeed, "the speed of the ring") - Guard.Finite(loadSpeed, "the speed of the load"));
        return difference <= 1e-9 * Math.Max(Math.Abs(ringSpeed), Math.Abs(loadSpeed)) ? LoadOnRing.Stationary : LoadOnRing.Rotating;
    }

    /// <summary>Whether the ring needs an interference fit; else it creeps on its seat and wears it.</summary>
    /// <remarks>
    /// <code>rotating or indeterminate: yes;  stationary: it may be loose</code>
    /// Source: common practice, in every textbook of rolling bearings.<br/>
    /// Valid for: rings held by their seat alone.
    /// </remarks>
    public static bool NeedsInterference(LoadOnRing load) => load != LoadOnRing.Stationary;
}
