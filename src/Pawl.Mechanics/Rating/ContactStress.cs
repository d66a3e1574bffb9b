namespace Pawl.Mechanics.Rating;

/// <summary>Contact stress of a mesh.</summary>
public static class ContactStress
{
    /// <summary>Nominal contact stress at the pitch point, σ_H0, MPa.</summary>
    /// <remarks>
    /// <code>σ_H0 = Z_H·Z_E·Z_ε·Z_β · √( F_t/(d₁·b) · (u + 1)/u )</code>
    /// Symbols: Z factors, here their product, √MPa; F_t nominal tangential force in one mesh at the reference circle, N; d₁
    /// reference diameter of the pinion, b common face width, mm; u = z₂/z₁, internal negative.<br/>
    /// Source: ISO 6336-2, nominal contact stress.<br/>
    /// Valid for: u above 0, or below −1.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Nominal(
        double factors, double tangentialForce, double pinionReferenceDiameter, double faceWidth, double toothRatio)
    {
        if (!(toothRatio is > 0 or < -1) || !double.IsFinite(toothRatio))
        {
            throw Guard.Because(
                $"no contact stress: z₂/z₁ must be above 0, or below −1 for an internal pair; it is {toothRatio:0.####}");
        }

        if (!(tangentialForce >= 0))
        {
            throw Guard.Because($"the tooth force must not be below zero; it is {tangentialForce:0.###} N");
        }

        return Guard.Positive(factors, "the product of the Z factors") * Math.Sqrt(
            Guard.Finite(tangentialForce, "the tooth force")
                / (Guard.Positive(pinionReferenceDiameter, "the pinion's reference diameter")
                    * Guard.Positive(faceWidth, "the face width"))
                * (toothRatio + 1) / toothRatio);
    }

    /// <summary>Contact stress of one gear, σ_H, MPa.</summary>
    /// <remarks>
    /// <code>σ_H = Z_B·σ_H0 · √( K_A·K_γ·K_v·K_Hβ·K_Hα )</code>
    /// Symbols: Z_B single pair tooth contact factor of the pinion, Z_D for the wheel; σ_H0 nominal contact stress, MPa; K load
    /// factors, here their product.<br/>
    /// Source: ISO 6336-2, contact stress.<br/>
    /// Valid for: both gears of a pair.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double OfGear(double nominal, double singlePair, double loadFactors) =>
        Guard.Finite(
            Guard.NotNegative(nominal, "the nominal contact stress", "MPa") * Guard.Positive(singlePair, "the single pair contact factor")
                * Math.Sqrt(Guard.Positive(loadFactors, "the product of the load factors")),
            "the contact stress");
}
