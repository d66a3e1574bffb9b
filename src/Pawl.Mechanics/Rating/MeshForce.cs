namespace Pawl.Mechanics.Rating;

/// <summary>Forces in a mesh and how often a flank feels them. All are magnitudes.</summary>
public static class MeshForce
{
    /// <summary>Radial force F_r, N, at the working circle; it pushes the axes of an external pair apart.</summary>
    /// <remarks>
    /// <code>F_r = F_t · (d/d_w) · tan α_wt = F_t · sin α_wt / cos α_t</code>
    /// Symbols: F_t tangential force at the reference circle, N; d reference, d_w working pitch diameter; α_t transverse
    /// pressure angle, α_wt working, rad.<br/>
    /// Source: statics; d/d_w = cos α_wt/cos α_t (ISO 21771).<br/>
    /// Valid for: no friction.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Radial(double tangential, double transversePressureAngle, double workingPressureAngle) =>
        Guard.Finite(
            tangential * Math.Sin(Guard.Acute(workingPressureAngle, "the working pressure angle"))
                / Math.Cos(Guard.Acute(transversePressureAngle, "the transverse pressure angle")),
            "the radial force");

    /// <summary>Axial force F_a, N.</summary>
    /// <remarks>
    /// <code>F_a = F_t · tan |β|</code>
    /// Symbols: F_t tangential force at the reference circle, N; β helix angle there, rad.<br/>
    /// Source: statics.<br/>
    /// Valid for: no friction.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Axial(double tangential, double helixAngle) =>
        Guard.Finite(tangential * Math.Tan(Math.Abs(Guard.Helix(helixAngle))), "the axial force");

    /// <summary>Load cycles N_L of one flank.</summary>
    /// <remarks>
    /// <code>N_L = c · |ω_rel| · t / (2·π)</code>
    /// Symbols: c contacts of a flank in one revolution relative to the carrier: the planets for a sun or ring, 1 for a planet's
    /// flank; ω_rel speed relative to the carrier, rad/s; t life, s.<br/>
    /// Source: definition.<br/>
    /// Valid for: one direction of torque.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double FlankCycles(int contactsPerRevolution, double relativeSpeed, double life)
    {
        if (contactsPerRevolution < 1 || !(life >= 0))
        {
            throw Guard.Because(
                $"no load cycles: {contactsPerRevolution} contacts in a revolution over a life of {life:0.###} s");
        }

        return Guard.Finite(
            contactsPerRevolution * Math.Abs(relativeSpeed) * life / (2 * Math.PI), "the number of load cycles");
    }
}
