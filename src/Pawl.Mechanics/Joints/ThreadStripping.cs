namespace Pawl.Mechanics.Joints;

/// <summary>The load at which engaged threads strip.</summary>
/// <param name="Thread">The thread.</param>
/// <param name="Limits">The sizes of bolt and nut, <see cref="ThreadLimits.Usual"/> where none are stated.</param>
/// <param name="Engagement">Length of engagement L, mm, full threads only: chamfers off.</param>
/// <remarks>
/// Source: VDI 2230 Part 1 after Alexander, Analysis and Design of Threaded Assemblies (SAE 770420); shear areas as FED-STD-H28/2.
/// From memory.
/// </remarks>
public sealed record ThreadStripping(ScrewThread Thread, ThreadLimits Limits, double Engagement)
{
    // Pitches that carry nothing, in all, at both ends.
    private const double LostPitches = 0.8;

    /// <summary>Area in which the nut's thread shears, at the crests of the bolt, mm².</summary>
    /// <remarks>
    /// <code>A = π·d_min·(L/P)·(P/2 + (d_min − D_2max)·tan 30°)</code>
    /// Symbols: d_min least major diameter of the bolt, D_2max greatest pitch diameter of the nut, P pitch, mm.
    /// </remarks>
    public double NutArea => Area(Engagement, Limits.BoltMajor, Limits.BoltMajor - Limits.NutPitch);

    /// <summary>Area in which the bolt's thread shears, at the crests of the nut, mm².</summary>
    /// <remarks>
    /// <code>A = π·D_1max·(L/P)·(P/2 + (d_2min − D_1max)·tan 30°)</code>
    /// Symbols: D_1max greatest minor diameter of the nut, d_2min least pitch diameter of the bolt, mm.
    /// </remarks>
    public double BoltArea => Area(Engagement, Limits.NutMinor, Limits.BoltPitch - Limits.NutMinor);

    /// <summary>Load at which the weaker thread strips, N.</summary>
    /// <param name="boltShear">Shear strength of the bolt, MPa: about 0.6 of its tensile strength.</param>
    /// <param name="nutShear">Shear strength of the nut or tapped part, MPa.</param>
    /// <param name="widthRatio">Width across flats of the nut, or diameter of the boss, over the thread's diameter.</param>
    /// <remarks>
    /// <code>F = C₁·min(C₂·τ_bolt·A_bolt, C₃·τ_nut·A_nut)</code>
    /// Symbols: C₁ widening of the nut, C₂ and C₃ bending of the threads, by R_S = τ_nut·A_nut/(τ_bolt·A_bolt).
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double Strength(double boltShear, double nutShear, double widthRatio)
    {
        var bolt = Guard.Positive(boltShear, "the shear strength of the bolt") * BoltArea;
        var nut = Guard.Positive(nutShear, "the shear strength of the tapped part") * NutArea;
        var ratio = nut / bolt;
        return Widening(widthRatio) * Math.Min(BoltBending(ratio) * bolt, NutBending(ratio) * nut);
    }

    /// <summary>Factor C₁, 1: a narrow nut widens.</summary>
    /// <remarks><code>C₁ = 3.8·s/d − (s/d)² − 2.61 for 1.4 ≤ s/d &lt; 1.9;  1 above</code></remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Widening(double widthRatio) => Guard.Positive(widthRatio, "the width over the thread") switch
    {
        >= 1.9 => 1,
        >= 1.4 => 3.8 * widthRatio - widthRatio * widthRatio - 2.61,
        _ => throw Guard.Because($"the method has no nut or boss narrower than 1.4 diameters of its thread; it has {widthRatio:0.###}"),
    };

    /// <summary>Factor C₂, 1, of the bolt's thread.</summary>
    /// <remarks>
    /// <code>C₂ = 0.897 up to R_S = 1;  5.594 − 13.682·R_S + 14.107·R_S² − 6.057·R_S³ + 0.9353·R_S⁴ below 2.2;  1 above</code>
    /// Never above 1 here, where the polynomial reaches 1.19; beyond 2.2 the source has nothing.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double BoltBending(double ratio) => Guard.Positive(ratio, "the ratio of strengths") switch
    {
        <= 1 => 0.897,
        < 2.2 => Math.Min(1, 5.594 + ratio * (-13.682 + ratio * (14.107 + ratio * (-6.057 + ratio * 0.9353)))),
        _ => 1,
    };

    /// <summary>Factor C₃, 1, of the nut's thread.</summary>
    /// <remarks>
    /// <code>C₃ = 0.897 from R_S = 1;  0.728 + 1.769·R_S − 2.896·R_S² + 1.296·R_S³ above 0.4;  1 below</code>
    /// Never above 1 here, where the polynomial reaches 1.06; up to 0.4 the source has nothing.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double NutBending(double ratio) => Guard.Positive(ratio, "the ratio of strengths") switch
    {
        >= 1 => 0.897,
        > 0.4 => Math.Min(1, 0.728 + ratio * (1.769 + ratio * (-2.896 + ratio * 1.296))),
        _ => 1,
    };

    private double Area(double length, double diameter, double overlap)
    {
        var ridge = Thread.Pitch / 2 + overlap / Math.Sqrt(3);
        return ridge > 0
            ? Math.PI * diameter * Guard.Positive(length, "the length of engagement") / Thread.Pitch * ridge
            : throw Guard.Because($"the threads of bolt and nut do not engage");
    }
}
