namespace Pawl.Mechanics.Rating;

/// <summary>How much running adds to the force in a mesh: K_v by method B of ISO 6336-1, at any speed.</summary>
public static class DynamicFactorB
{
    /// <summary>The finest grade whose profiles are too uneven for a tip relief to take effect.</summary>
    public const int Coarse = 7;

    private const double MillimetresPerMicrometre = 1e-3;

    /// <summary>Tip relief C_ay that running in leaves on a gear, mm.</summary>
    /// <remarks>
    /// <code>C_ay = (1/18) · (σ_Hlim/97 − 18.45)² + 1.5 µm, here divided by 1000</code>
    /// Symbols: σ_Hlim allowable stress number of the flank, MPa. Not homogeneous. Of two materials the mean.<br/>
    /// Source: ISO 6336-1, running-in tip relief.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double RunningInRelief(double contactLimit)
    {
        var excess = Guard.Positive(contactLimit, "the contact stress limit of the material") / 97 - 18.45;
        return Guard.Finite((excess * excess / 18 + 1.5) * MillimetresPerMicrometre, "the tip relief of running in");
    }

    /// <summary>B_p or B_f: the force of a deviation of pitch or profile over the force in the mesh.</summary>
    /// <remarks>
    /// <code>B_p = c′ · f_pb,eff / w;  B_f = c′ · f_fα,eff / w</code>
    /// Symbols: c′ stiffness of one pair of teeth, N/mm²; f_pb,eff base pitch deviation and f_fα,eff profile form deviation after
    /// running in, the greater of both gears, mm; w = F_t·K_A·K_γ/b line load, N/mm.<br/>
    /// Source: ISO 6336-1, dynamic factor, method B.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Deviation(double stiffness, double deviation, double lineLoad) => Guard.Finite(
        Guard.Positive(stiffness, "the tooth stiffness") * Guard.NotNegative(deviation, "the deviation", "mm")
            / Guard.Positive(lineLoad, "the line load"),
        "the force of the deviation");

    /// <summary>B_k: what the tip relief leaves of the change of stiffness from one to two pairs of teeth.</summary>
    /// <remarks>
    /// <code>B_k = |1 − c′ · C_a / w|;  grade 7 and coarser: at least 1</code>
    /// Symbols: c′ stiffness of one pair of teeth, N/mm²; C_a tip relief as drawn, or C_ay where none is, mm; w line load, N/mm.<br/>
    /// Source: ISO 6336-1, dynamic factor, method B; that coarse gears gain nothing by relief from memory, less sure.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Relief(double stiffness, double tipRelief, double lineLoad, int grade)
    {
        var left = Guard.Finite(
            Math.Abs(1 - Guard.Positive(stiffness, "the tooth stiffness") * Guard.NotNegative(tipRelief, "the tip relief", "mm")
                / Guard.Positive(lineLoad, "the line load")),
            "what the tip relief leaves");
        return grade >= Coarse ? Math.Max(1, left) : left;
    }

    /// <summary>Dynamic factor K_v.</summary>
    /// <remarks>
    /// <code>N ≤ N_S: K_v = 1 + N · (C_v1·B_p + C_v2·B_f + C_v3·B_k)</code>
    /// <code>N_S &lt; N ≤ 1.15: K_v = 1 + C_v1·B_p + C_v2·B_f + C_v4·B_k</code>
    /// <code>1.15 &lt; N &lt; 1.5: on the line between the values at 1.15 and 1.5;  N ≥ 1.5: K_v = C_v5·B_p + C_v6·B_f + C_v7</code>
    /// <code>ε_γ ≤ 2: C_v2 = 0.34, C_v3 = 0.23, C_v4 = 0.90, C_v6 = 0.47</code>
    /// <code>ε_γ &gt; 2: C_v2 = 0.57/(ε_γ − 0.3), C_v3 = 0.096/(ε_γ − 1.56), C_v4 = (0.57 − 0.05·ε_γ)/(ε_γ − 1.44), C_v6 = 0.12/(ε_γ − 1.74)</code>
    /// <code>C_v1 = 0.32, C_v5 = 0.47;  C_v7 = 0.75 up to ε_γ = 1.5, 0.875 + 0.125·sin(π·(ε_γ − 2)) up to 2.5, then 1</code>
    /// Symbols: N resonance ratio, N_S where the main resonance range begins; B_p, B_f, B_k forces of pitch, profile and change of
    /// stiffness over the force in the mesh; ε_γ total contact ratio. Here at least 1, also where the supercritical value is less.<br/>
    /// Source: ISO 6336-1, dynamic factor, method B.<br/>
    /// Valid for: ε_γ above 1. Damping and shafts beside the mesh are not seen: in the main resonance range the standard advises a
    /// finer analysis. At N_S and at ε_γ = 2 the printed formulas do not meet.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Factor(
        double resonanceRatio, double lowerLimit, double pitchForce, double profileForce, double stiffnessForce, double totalContactRatio)
    {
        var ratio = Guard.NotNegative(resonanceRatio, "the resonance ratio");
        var lower = Guard.Between(lowerLimit, MeshResonance.LeastLowerLimit, MeshResonance.UpperLimit, "the lower limit of the main resonance range");
        var pitch = Guard.NotNegative(pitchForce, "the force of the pitch deviation");
        var profile = Guard.NotNegative(profileForce, "the force of the profile deviation");
        var periodic = Guard.NotNegative(stiffnessForce, "the force of the change of stiffness");
        var c = Coefficients.Of(Overlap.Transverse(totalContactRatio));

        var resonant = 1 + c.V1 * pitch + c.V2 * profile + c.V4 * periodic;
        var beyond = c.V5 * pitch + c.V6 * profile + c.V7;
        var factor = ratio <= lower ? 1 + ratio * (c.V1 * pitch + c.V2 * profile + c.V3 * periodic)
            : ratio <= MeshResonance.UpperLimit ? resonant
            : ratio < MeshResonance.Supercritical ? beyond
                + (resonant - beyond) * (MeshResonance.Supercritical - ratio) / (MeshResonance.Supercritical - MeshResonance.UpperLimit)
            : beyond;
        return Guard.Finite(Math.Max(1, factor), "the dynamic factor");
    }

    private readonly record struct Coefficients(double V1, double V2, double V3, double V4, double V5, double V6, double V7)
    {
        public static Coefficients Of(double total)
        {
            var step = total <= 1.5 ? 0.75 : total <= 2.5 ? 0.875 + 0.125 * Math.Sin(Math.PI * (total - 2)) : 1;
            return total <= 2
                ? new(0.32, 0.34, 0.23, 0.90, 0.47, 0.47, step)
                : new(
                    0.32, 0.57 / (total - 0.3), 0.096 / (total - 1.56), Math.Max(0, 0.57 - 0.05 * total) / (total - 1.44), 0.47,
                    0.12 / (total - 1.74), step);
        }
    }
}
