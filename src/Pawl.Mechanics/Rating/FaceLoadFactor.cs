namespace Pawl.Mechanics.Rating;

/// <summary>How much more the heavier loaded end of a face carries than the mean.</summary>
public static class FaceLoadFactor
{
    /// <summary>Face load factor for contact stress, K_Hβ.</summary>
    /// <remarks>
    /// <code>q = F_βy · c_γβ / (2 · w_m);  q ≤ 1: K_Hβ = 1 + q;  q &gt; 1: K_Hβ = 2·√q</code>
    /// Symbols: F_βy = F_βx − y_β misalignment after running in, mm; c_γβ mesh stiffness, N/mm²; w_m = F_t·K_A·K_γ·K_v/b mean
    /// line load, N/mm. Above q = 1 a part of the face is out of contact.<br/>
    /// Source: ISO 6336-1, face load factors, method C.<br/>
    /// Valid for: a misalignment that tilts the flanks without crowning them. It follows from flanks that are springs side by
    /// side.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Contact(double misalignment, double stiffness, double meanLineLoad)
    {
        if (!(misalignment >= 0))
        {
            throw Guard.Because($"the misalignment must not be below zero; it is {misalignment:0.######} mm");
        }

        var ratio = misalignment * Guard.Positive(stiffness, "the mesh stiffness")
            / (2 * Guard.Positive(meanLineLoad, "the line load"));
        return Guard.Finite(ratio <= 1 ? 1 + ratio : 2 * Math.Sqrt(ratio), "the face load factor");
    }

    /// <summary>Face load factor for tooth root stress, K_Fβ.</summary>
    /// <remarks>
    /// <code>K_Fβ = K_Hβ^N_F;  N_F = 1 / (1 + h/b + (h/b)²),  b/h at least 3</code>
    /// Symbols: b face width, h tooth height, mm; of the pair the smaller b/h.<br/>
    /// Source: ISO 6336-1, face load factors.<br/>
    /// Valid for: K_Hβ ≥ 1.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Root(double contact, double faceWidth, double toothHeight)
    {
        if (!(contact >= 1))
        {
            throw Guard.Because($"a face load factor is 1 or more; it is {contact:0.####}");
        }

        var ratio = Guard.Positive(faceWidth, "the face width") / Guard.Positive(toothHeight, "the tooth height");
        var slender = 1 / Math.Max(ratio, 3);
        return Guard.Finite(Math.Pow(contact, 1 / (1 + slender + slender * slender)), "the face load factor");
    }
}
