namespace Pawl.Mechanics.Rating;

/// <summary>How much more one of the pairs of teeth in contact carries because pitches differ.</summary>
public static class TransverseLoadFactor
{
    /// <summary>Transverse load factor before its limits, the same for contact and root.</summary>
    /// <remarks>
    /// <code>q = c_γα · (f_pb − y_α) / w_H</code>
    /// <code>ε_γ ≤ 2: K = ε_γ/2 · (0.9 + 0.4·q);  ε_γ &gt; 2: K = 0.9 + 0.4 · √( 2·(ε_γ − 1)/ε_γ ) · q</code>
    /// Symbols: c_γα mesh stiffness, N/mm²; f_pb base pitch deviation, the greater of both gears, y_α running-in allowance, mm;
    /// w_H = F_t·K_A·K_γ·K_v·K_Hβ/b line load, N/mm; ε_γ total contact ratio.<br/>
    /// Source: ISO 6336-1, transverse load factors, method B.<br/>
    /// Valid for: y_α ≤ f_pb.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Unlimited(
        double stiffness, double basePitchDeviation, double allowance, double lineLoad, double totalContactRatio)
    {
        if (!(allowance >= 0 && basePitchDeviation >= allowance))
        {
            throw Guard.Because(
                $"no transverse load factor: running in by {allowance:0.######} mm must lie between 0 and the base pitch deviation of {basePitchDeviation:0.######} mm");
        }

        var total = Overlap.Transverse(totalContactRatio);
        var ratio = Guard.Positive(stiffness, "the mesh stiffness") * (basePitchDeviation - allowance)
            / Guard.Positive(lineLoad, "the line load");
        return Guard.Finite(
            total <= 2 ? total / 2 * (0.9 + 0.4 * ratio) : 0.9 + 0.4 * Math.Sqrt(2 * (total - 1) / total) * ratio,
            "the transverse load factor");
    }

    /// <summary>Transverse load factor for contact stress, K_Hα.</summary>
    /// <remarks>
    /// <code>1 ≤ K_Hα ≤ ε_γ / (ε_α · Z_ε²)</code>
    /// Symbols: ε_γ total, ε_α transverse contact ratio; Z_ε contact ratio factor.<br/>
    /// Source: ISO 6336-1, limits of the transverse load factors.<br/>
    /// Valid for: the upper limit is one pair that carries all.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Contact(
        double unlimited, double totalContactRatio, double transverseContactRatio, double contactRatioFactor) =>
        Limited(
            unlimited,
            Overlap.Transverse(totalContactRatio) / (Overlap.Transverse(transverseContactRatio)
                * Guard.Positive(contactRatioFactor, "the contact ratio factor") * contactRatioFactor));

    /// <summary>Transverse load factor for tooth root stress, K_Fα.</summary>
    /// <remarks>
    /// <code>1 ≤ K_Fα ≤ ε_γ / (0.25·ε_α + 0.75)</code>
    /// Symbols: ε_γ total, ε_α transverse contact ratio.<br/>
    /// Source: ISO 6336-1, limits of the transverse load factors: ε_γ/(ε_α·Y_ε), Y_ε = 0.25 + 0.75/ε_α.<br/>
    /// Valid for: the upper limit is one pair that carries all.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Root(double unlimited, double totalContactRatio, double transverseContactRatio) =>
        Limited(unlimited, Overlap.Transverse(totalContactRatio) / (0.25 * Overlap.Transverse(transverseContactRatio) + 0.75));

    private static double Limited(double factor, double greatest) =>
        Guard.Finite(Math.Max(1, Math.Min(Guard.Positive(factor, "the transverse load factor"), greatest)), "the transverse load factor");
}
