namespace Pawl.Mechanics.Joints;

/// <summary>The sizes at which a thread of bolt and nut overlaps least.</summary>
/// <param name="BoltMajor">Least major diameter of the bolt, mm.</param>
/// <param name="BoltPitch">Least pitch diameter of the bolt, mm.</param>
/// <param name="NutPitch">Greatest pitch diameter of the nut, mm.</param>
/// <param name="NutMinor">Greatest minor diameter of the nut, mm.</param>
public sealed record ThreadLimits(double BoltMajor, double BoltPitch, double NutPitch, double NutMinor)
{
    private const double Micrometre = 1e-3;
    private const double Inch = 25.4;

    private static readonly double[] Ranges = [1, 1.4, 2.8, 5.6, 11.2, 22.4, 45, 90];

    /// <summary>The extremes of the usual classes: 6g bolt in 6H nut, or 2A bolt in 2B nut.</summary>
    /// <remarks>
    /// <code>
    /// metric, µm with P and D in mm: es = −(15 + 11·P);  T_d = 180·P^⅔ − 3.15/√P;  T_d2 = 90·P^0.4·D^0.1;
    /// T_D2 = 1.32·T_d2;  T_D1 = 230·P^0.7, below P = 1: 433·P − 190·P^1.22
    /// unified, inches: T_d2 = 0.0015·D^⅓ + 0.0015·√L + 0.015·P^⅔;  es = −0.3·T_d2;  T_d = 0.060·P^⅔;  T_D2 = 1.3·T_d2;
    /// T_D1 = 0.25·P − 0.40·P², below 1/4 in: 0.05·P^⅔ + 0.03·P/D − 0.002 where that is more
    /// </code>
    /// Symbols: P pitch; D metric: geometric mean of the range of diameters, unified: the diameter; L length of engagement, the
    /// diameter for UNC and UNF, 9·P for the others. None of these formulas is homogeneous.<br/>
    /// Source: ISO 965-1 and ASME B1.1, from memory.<br/>
    /// Valid for: uncoated threads of normal length. The tables of ISO 965-1 round; they differ by up to 6 µm.
    /// </remarks>
    public static ThreadLimits Usual(ScrewThread thread) => thread.Form == ThreadForm.IsoMetric ? Metric(thread) : Unified(thread);

    private static ThreadLimits Metric(ScrewThread thread)
    {
        var pitch = thread.Pitch;
        var upper = Array.FindIndex(Ranges, end => thread.Diameter <= end);
        var mean = Math.Sqrt(Ranges[upper - 1] * Ranges[upper]);
        var allowance = 15 + 11 * pitch;
        var pitchTolerance = 90 * Math.Pow(pitch, 0.4) * Math.Pow(mean, 0.1);
        var majorTolerance = 180 * Math.Cbrt(pitch * pitch) - 3.15 / Math.Sqrt(pitch);
        var minorTolerance = pitch < 1 ? 433 * pitch - 190 * Math.Pow(pitch, 1.22) : 230 * Math.Pow(pitch, 0.7);
        return new ThreadLimits(
            thread.Diameter - (allowance + majorTolerance) * Micrometre,
            thread.PitchDiameter - (allowance + pitchTolerance) * Micrometre,
            thread.PitchDiameter + 1.32 * pitchTolerance * Micrometre,
            thread.NutMinorDiameter + minorTolerance * Micrometre);
    }

    private static ThreadLimits Unified(ScrewThread thread)
    {
        var (diameter, pitch) = (thread.Diameter / Inch, thread.Pitch / Inch);
        var usual = thread.Designation.EndsWith("UNC", StringComparison.Ordinal) || thread.Designation.EndsWith("UNF", StringComparison.Ordinal);
        var length = usual ? diameter : 9 * pitch;
        var twoThirds = Math.Cbrt(pitch * pitch);
        var pitchTolerance = 0.0015 * Math.Cbrt(diameter) + 0.0015 * Math.Sqrt(length) + 0.015 * twoThirds;
        var minorTolerance = 0.25 * pitch - 0.40 * pitch * pitch;
        if (diameter < 0.25)
            minorTolerance = Math.Max(minorTolerance, 0.05 * twoThirds + 0.03 * pitch / diameter - 0.002);
        return new ThreadLimits(
            thread.Diameter - (0.3 * pitchTolerance + 0.060 * twoThirds) * Inch,
            thread.PitchDiameter - 1.3 * pitchTolerance * Inch,
            thread.PitchDiameter + 1.3 * pitchTolerance * Inch,
            thread.NutMinorDiameter + minorTolerance * Inch);
    }
}
