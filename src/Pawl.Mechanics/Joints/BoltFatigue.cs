namespace Pawl.Mechanics.Joints;

/// <summary>Fatigue of rolled threads under a load along the bolt that comes and goes.</summary>
/// <remarks>
/// Source: VDI 2230 Part 1, from memory.<br/>
/// Valid for: bolts of 8.8 to 12.9, M6 to M40, in nuts of steel.
/// </remarks>
public static class BoltFatigue
{
    /// <summary>Cycles N_D from which the limit holds without end.</summary>
    public const double EnduranceCycles = 2e6;

    /// <summary>Least cycles of limited life.</summary>
    public const double MinCycles = 1e4;

    /// <summary>Stress amplitude σ_a, MPa: half of what comes and goes.</summary>
    /// <remarks>
    /// <code>σ_a = Φ·(F_A,max − F_A,min)/(2·A_s)</code>
    /// Symbols: Φ load factor; F_A loads along the bolt, N; A_s stress area, mm².<br/>
    /// Source: VDI 2230 Part 1, concentric.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Amplitude(ScrewThread thread, double loadFactor, double greatest, double least) =>
        greatest >= least && double.IsFinite(least) && double.IsFinite(greatest) && loadFactor is >= 0 and <= 1
            ? Guard.Finite(loadFactor * (greatest - least) / (2 * thread.StressArea), "the stress amplitude")
            : throw Guard.Because(
                $"the greatest load must not be below the least, and the load factor must lie from 0 to 1; they are {greatest:0.###} N, {least:0.###} N and {loadFactor:0.###}");

    /// <summary>Permissible amplitude of a thread rolled before heat treatment, MPa.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="cycles">Cycles; fewer than 2·10⁶ allow more.</param>
    /// <remarks>
    /// <code>σ_ASV = 0.85·(150/d + 45), d in mm;  below N_D times (N_D/N)^⅓</code>
    /// Source: VDI 2230 Part 1. Not homogeneous. The class of the bolt makes no difference.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double RolledBeforeTreatment(ScrewThread thread, double cycles = EnduranceCycles) => Plain(thread) * Math.Cbrt(Life(cycles));

    /// <summary>Permissible amplitude of a thread rolled after heat treatment, MPa.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="meanShare">Mean force in the bolt over its force at yield, F_Sm/F_0.2.</param>
    /// <param name="cycles">Cycles.</param>
    /// <remarks>
    /// <code>σ_ASG = (2 − F_Sm/F_0.2)·σ_ASV;  below N_D times (N_D/N)^(1/6)</code>
    /// Source: VDI 2230 Part 1.<br/>
    /// Valid for: 0.3 ≤ F_Sm/F_0.2 &lt; 1.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double RolledAfterTreatment(ScrewThread thread, double meanShare, double cycles = EnduranceCycles) =>
        meanShare is >= 0.3 and < 1
            ? (2 - meanShare) * Plain(thread) * Math.Pow(Life(cycles), 1.0 / 6)
            : throw Guard.Because($"VDI 2230 has fatigue of bolts with a mean force from 0.3 to below 1 of that at yield; it is {meanShare:0.###}");

    private static double Plain(ScrewThread thread) =>
        thread.Diameter is >= 6 and <= 40
            ? 0.85 * (150 / thread.Diameter + 45)
            : throw Guard.Because($"VDI 2230 has fatigue of threads from 6 mm to 40 mm; {thread.Designation} lies outside");

    private static double Life(double cycles) =>
        cycles >= MinCycles && double.IsFinite(cycles)
            ? Math.Max(1, EnduranceCycles / cycles)
            : throw Guard.Because($"VDI 2230 has limited life from {MinCycles:0} cycles on; there are {cycles:0.###}");
}
