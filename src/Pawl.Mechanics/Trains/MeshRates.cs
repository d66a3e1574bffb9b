namespace Pawl.Mechanics.Trains;

/// <summary>Rates that follow from tooth counts and speeds. Speeds are angular, rad/s, and signed about the common axis.</summary>
public static class MeshRates
{
    /// <summary>Mesh frequency f, Hz: tooth engagements a second.</summary>
    /// <remarks>
    /// <code>f = z·|ω − ω_c| / (2π)</code>
    /// Symbols: z teeth of either gear, its sign ignored; ω its speed and ω_c that of the carrier (0 in the housing), rad/s.<br/>
    /// Source: definition.<br/>
    /// Valid for: any mesh.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double MeshFrequency(int teeth, double speed, double carrierSpeed) =>
        Math.Abs((double)Guard.Teeth(teeth)) * Relative(speed, carrierSpeed) / Math.Tau;

    /// <summary>Pitch line speed in the frame of the carrier v, mm/s.</summary>
    /// <remarks>
    /// <code>v = |d|/2·|ω − ω_c|</code>
    /// Symbols: d reference or working diameter, mm, its sign ignored; ω, ω_c as in <see cref="MeshFrequency"/>.<br/>
    /// Source: definition; the speed that counts for a mesh is the one its carrier sees.<br/>
    /// Valid for: any mesh.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double PitchLineSpeed(double diameter, double speed, double carrierSpeed) =>
        Math.Abs(Guard.NotZero(diameter, "the diameter", "mm")) / 2 * Relative(speed, carrierSpeed);

    private static double Relative(double speed, double carrierSpeed) => Guard.Finite(Math.Abs(speed - carrierSpeed), "the speed");
}
