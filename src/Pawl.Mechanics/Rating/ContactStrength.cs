namespace Pawl.Mechanics.Rating;

/// <summary>The Z factors of ISO 6336-2 that say how much contact stress flanks stand, method B.</summary>
/// <remarks>The factors of the oil film, Z_L, Z_V and Z_R, take σ_Hlim of the softer gear. For static stress they are 1.</remarks>
public static class ContactStrength
{
    private const double Soft = 850;
    private const double Hard = 1200;
    private const double MillimetresPerMetre = 1000;
    private const double MicrometresPerMillimetre = 1000;

    /// <summary>Lubricant factor Z_L.</summary>
    /// <remarks>
    /// <code>Z_L = C + 4·(1 − C) / (1.2 + 134/ν₄₀)²</code>
    /// <code>C = 0.83 below 850 MPa, σ_Hlim/4375 + 0.6357 up to 1200 MPa, 0.91 above</code>
    /// Symbols: ν₄₀ kinematic viscosity at 40 °C, mm²/s; σ_Hlim of the softer gear, MPa.<br/>
    /// Source: ISO 6336-2, lubricant factor, method B.<br/>
    /// Valid for: mineral oil. For grease it is an assumption.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Lubricant(double viscosityAt40, double contactLimit)
    {
        var c = Between(contactLimit, 0.83, 0.91);
        var root = 1.2 + 134 / Guard.Positive(viscosityAt40, "the viscosity at 40 °C");
        return c + 4 * (1 - c) / (root * root);
    }

    /// <summary>Velocity factor Z_V.</summary>
    /// <remarks>
    /// <code>Z_V = C + 2·(1 − C) / √( 0.8 + 32/v )</code>
    /// <code>C = 0.85 below 850 MPa, 0.85 + 0.08·(σ_Hlim − 850)/350 up to 1200 MPa, 0.93 above</code>
    /// Symbols: v speed of the reference circle relative to the carrier, mm/s (the source has m/s; converted inside); σ_Hlim of
    /// the softer gear, MPa.<br/>
    /// Source: ISO 6336-2, velocity factor, method B.<br/>
    /// Valid for: v ≥ 0.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Velocity(double pitchLineSpeedInMillimetresPerSecond, double contactLimit)
    {
        var c = Between(contactLimit, 0.85, 0.93);
        var speed = Math.Abs(Guard.Finite(pitchLineSpeedInMillimetresPerSecond, "the pitch line speed")) / MillimetresPerMetre;
        return speed == 0 ? c : c + 2 * (1 - c) / Math.Sqrt(0.8 + 32 / speed);
    }

    /// <summary>Roughness factor Z_R.</summary>
    /// <remarks>
    /// <code>Z_R = (3/Rz₁₀)^C;  Rz₁₀ = ½·(Rz₁ + Rz₂) · ∛(10/ρ_red)</code>
    /// <code>C = 0.15 below 850 MPa, 0.32 − 0.0002·σ_Hlim up to 1200 MPa, 0.08 above</code>
    /// Symbols: Rz mean peak-to-valley roughness of the run-in flanks, mm (the source has µm; converted inside); ρ_red reduced
    /// radius of curvature at the pitch point, transverse, mm; σ_Hlim of the softer gear, MPa.<br/>
    /// Source: ISO 6336-2, roughness factor, method B.<br/>
    /// Valid for: Rz above 0.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Roughness(double roughness1InMillimetres, double roughness2InMillimetres, double reducedCurvature, double contactLimit)
    {
        var sum = Guard.Positive(roughness1InMillimetres, "the flank roughness") + Guard.Positive(roughness2InMillimetres, "the flank roughness");
        var mean = sum / 2 * MicrometresPerMillimetre;
        var relative = mean * Math.Cbrt(10 / Guard.Positive(reducedCurvature, "the reduced curvature"));
        return Math.Pow(3 / relative, Between(contactLimit, 0.15, 0.08));
    }

    /// <summary>Roughness R_zH, mm, that a soft wheel feels of a hard pinion.</summary>
    /// <remarks>
    /// <code>R_zH = Rz₁ · (10/ρ_red)^0.33 · (Rz₁/Rz₂)^0.66 / (v·ν₄₀/1500)^0.33,  from 3 to 16 µm</code>
    /// Symbols: Rz₁ of the hard pinion, Rz₂ of the soft wheel before running in, mm (µm in the source); ρ_red reduced radius of
    /// curvature, mm; v pitch line speed, mm/s (m/s in the source); ν₄₀ kinematic viscosity at 40 °C, mm²/s.<br/>
    /// Source: ISO 6336-2:2006, work hardening factor; as printed in UR M56.2.11.<br/>
    /// Valid for: a hardened pinion and a through-hardened wheel.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double RoughnessOnSoftWheel(
        double hardRoughnessInMillimetres, double softRoughnessInMillimetres, double reducedCurvature, double pitchLineSpeedInMillimetresPerSecond, double viscosityAt40)
    {
        var hard = Guard.Positive(hardRoughnessInMillimetres, "the flank roughness");
        var film = Guard.Positive(Math.Abs(pitchLineSpeedInMillimetresPerSecond), "the pitch line speed") / MillimetresPerMetre
            * Guard.Positive(viscosityAt40, "the viscosity at 40 °C") / 1500;
        var felt = hard * Math.Pow(10 / Guard.Positive(reducedCurvature, "the reduced curvature"), 0.33)
            * Math.Pow(hard / Guard.Positive(softRoughnessInMillimetres, "the flank roughness"), 0.66) / Math.Pow(film, 0.33);
        return Math.Clamp(Guard.Finite(felt, "the flank roughness"), 0.003, 0.016);
    }

    /// <summary>Work hardening factor Z_W of a soft wheel that runs with a hard pinion. The pinion has 1.</summary>
    /// <remarks>
    /// <code>Z_W = (1.2 − (HB − 130)/1700) · (3/R_zH)^0.15,  HB held within 130 to 470</code>
    /// Symbols: HB Brinell hardness of the wheel's flanks; R_zH as <see cref="RoughnessOnSoftWheel"/>, mm (µm in the
    /// source).<br/>
    /// Source: ISO 6336-2:2006, work hardening factor, surface-hardened pinion with through-hardened wheel. The edition of 1996
    /// is without the roughness; that is R_zH = 3 µm.<br/>
    /// Valid for: a hardened, smooth pinion with a through-hardened wheel. Other pairs: 1.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double WorkHardening(double brinell, double roughnessInMillimetres)
    {
        var hardness = Math.Clamp(Guard.Positive(brinell, "the Brinell hardness"), 130, 470);
        var felt = Guard.Positive(roughnessInMillimetres, "the flank roughness") * MicrometresPerMillimetre;
        return (1.2 - (hardness - 130) / 1700) * Math.Pow(3 / felt, 0.15);
    }

    /// <summary>Size factor Z_X.</summary>
    /// <remarks>
    /// <code>Z_X = 1</code>
    /// Symbols: m_n normal module, mm.<br/>
    /// Source: ISO 6336-2, size factor; the limit of 10 mm from memory.<br/>
    /// Valid for: m_n ≤ 10 mm.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Size(double normalModule) =>
        Guard.Positive(normalModule, "the normal module") <= 10
            ? 1
            : throw Guard.Because(
                $"no size factor: it is 1 up to a normal module of 10 mm; this one is {normalModule:0.####} mm");

    /// <summary>Contact stress that a gear stands, σ_HG, MPa.</summary>
    /// <remarks>
    /// <code>σ_HG = σ_Hlim · Z_NT · Z_L·Z_V·Z_R · Z_W · Z_X</code>
    /// Symbols: σ_Hlim of this gear, MPa; Z_NT life factor; the others here as their product.<br/>
    /// Source: ISO 6336-2, pitting stress limit.<br/>
    /// Valid for: one gear; 1 % probability of damage.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Limit(double contactLimit, double lifeFactor, double otherFactors) =>
        Guard.Positive(contactLimit, "the contact stress limit of the material")
        * Guard.Positive(lifeFactor, "the life factor")
        * Guard.Positive(otherFactors, "the product of the strength factors");

    private static double Between(double contactLimit, double soft, double hard)
    {
        var share = (Guard.Positive(contactLimit, "the contact stress limit of the material") - Soft) / (Hard - Soft);
        return soft + (hard - soft) * Math.Clamp(share, 0, 1);
    }
}
