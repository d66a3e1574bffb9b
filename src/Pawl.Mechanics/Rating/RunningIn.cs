using Pawl.Mechanics.Materials;

namespace Pawl.Mechanics.Rating;

/// <summary>How far wear in the first hours evens out deviations, mm.</summary>
public static class RunningIn
{
    // Limits of the source are in µm; here all lengths are mm and speeds mm/s.
    private const double Slow = 5000;
    private const double Fast = 10_000;

    /// <summary>Running-in allowance y_β on an equivalent misalignment, one gear.</summary>
    /// <remarks>
    /// <code>St, V: y_β = 320/σ_Hlim · F_βx;  5 &lt; v ≤ 10 m/s: y_β ≤ 25.6/σ_Hlim;  v &gt; 10 m/s: y_β ≤ 12.8/σ_Hlim</code>
    /// <code>Eh, IF, NT, NV: y_β = 0.15 · F_βx ≤ 0.006 mm</code>
    /// Symbols: F_βx misalignment before running in, mm; σ_Hlim of the gear, MPa; v pitch line speed relative to the carrier,
    /// mm/s. The source has µm and m/s.<br/>
    /// Source: ISO 6336-1, face load factors, running-in allowance.<br/>
    /// Valid for: y_β ≤ F_βx; below σ_Hlim = 320 MPa all of it.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double AlongFace(MaterialClass material, double contactLimit, double pitchLineSpeedInMillimetresPerSecond, double misalignment) =>
        Soft(material)
            ? Worn(320, 12.8, contactLimit, pitchLineSpeedInMillimetresPerSecond, misalignment)
            : Math.Min(0.15 * NotNegative(misalignment), 0.006);

    /// <summary>Running-in allowance y_α on a base pitch deviation, one gear.</summary>
    /// <remarks>
    /// <code>St, V: y_α = 160/σ_Hlim · f_pb;  5 &lt; v ≤ 10 m/s: y_α ≤ 12.8/σ_Hlim;  v &gt; 10 m/s: y_α ≤ 6.4/σ_Hlim</code>
    /// <code>Eh, IF, NT, NV: y_α = 0.075 · f_pb ≤ 0.003 mm</code>
    /// Symbols: f_pb base pitch deviation, mm; σ_Hlim of the gear, MPa; v pitch line speed relative to the carrier, mm/s. The
    /// source has µm and m/s.<br/>
    /// Source: ISO 6336-1, transverse load factors, running-in allowance.<br/>
    /// Valid for: y_α ≤ f_pb.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double AlongProfile(MaterialClass material, double contactLimit, double pitchLineSpeedInMillimetresPerSecond, double deviation) =>
        Soft(material)
            ? Worn(160, 6.4, contactLimit, pitchLineSpeedInMillimetresPerSecond, deviation)
            : Math.Min(0.075 * NotNegative(deviation), 0.003);

    /// <summary>Allowance of a pair of unlike gears.</summary>
    /// <remarks>
    /// <code>y = (y₁ + y₂) / 2</code>
    /// Source: ISO 6336-1, running-in allowances of different materials.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double OfPair(double first, double second) => (NotNegative(first) + NotNegative(second)) / 2;

    private static bool Soft(MaterialClass material) => material switch
    {
        MaterialClass.Normalised or MaterialClass.CarbonThroughHardened or MaterialClass.AlloyThroughHardened => true,
        MaterialClass.InductionHardened or MaterialClass.CaseHardened or MaterialClass.NitridingSteelNitrided
            or MaterialClass.ThroughHardeningSteelNitrided or MaterialClass.Nitrocarburised => false,
        _ => throw Guard.Because($"no running-in allowance for the material class {material}"),
    };

    private static double Worn(double share, double fastLimit, double contactLimit, double speed, double deviation)
    {
        Guard.Positive(contactLimit, "the contact stress limit of the material");
        var worn = Math.Min(share / contactLimit, 1) * NotNegative(deviation);
        return Math.Abs(Guard.Finite(speed, "the pitch line speed")) switch
        {
            <= Slow => worn,
            <= Fast => Math.Min(worn, 2 * fastLimit / contactLimit),
            _ => Math.Min(worn, fastLimit / contactLimit),
        };
    }

    private static double NotNegative(double deviation) =>
        deviation >= 0 && double.IsFinite(deviation)
            ? deviation
            : throw Guard.Because($"a deviation must not be below zero; it is {deviation:0.######} mm");
}
