namespace Pawl.Mechanics.Bearings;

/// <summary>Axial force of helical gears as the torque changes its sign.</summary>
public static class AxialThrust
{
    /// <summary>Greatest force in the positive direction of the axis, N; 0 where there is none.</summary>
    /// <remarks>
    /// <code>F₊ = max(F_a, −r · F_a, 0) + F_m</code>
    /// Symbols: F_a force of the teeth in the drive, its sign the direction, N; r torque while the drive is reversed or the output drives, over that
    /// of the drive; F_m force of machine and weight that may act either way, N.<br/>
    /// Source: statics: F_a = F_t · tan β, and F_t changes its sign with the torque.<br/>
    /// Valid for: rigid shafts.
    /// </remarks>
    /// <param name="teeth">Force of the teeth F_a.</param>
    /// <param name="reverse">Ratio r.</param>
    /// <param name="lasting">Force F_m.</param>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Along(double teeth, double reverse, double lasting) => Guard.Finite(
        Math.Max(0, Math.Max(Guard.Number(teeth, "the axial force of the teeth", "N"), -Guard.NotNegative(reverse, "the ratio of the torques") * teeth))
            + Guard.NotNegative(lasting, "the lasting axial force", "N"),
        "the axial force");
}
