namespace Pawl.Mechanics.Joints;

/// <summary>The standard a thread is of.</summary>
public enum ThreadForm
{
    /// <summary>ISO 68-1, ISO 261, ISO 724.</summary>
    IsoMetric,

    /// <summary>ASME B1.1.</summary>
    Unified,
}

/// <summary>A screw thread of 60° with one start.</summary>
/// <param name="Designation">As it is written on a drawing: <c>M8</c>, <c>M8x1</c>, <c>1/2-20 UNF</c>.</param>
/// <param name="Form">The standard it is of.</param>
/// <param name="Diameter">Nominal diameter d, mm.</param>
/// <param name="Pitch">Pitch P, mm.</param>
/// <remarks>
/// <code>H = √3/2·P;  d₂ = d − 3/4·H;  D₁ = d − 5/4·H;  d₃ = d − 17/12·H, unified d − 3/2·H</code>
/// Symbols: H height of the sharp triangle, mm; d₂ pitch diameter; D₁ minor diameter of the nut; d₃ minor diameter of the bolt.<br/>
/// Source: ISO 68-1, ISO 724; d₃ as ISO 898-1 and ASME B1.1 have it for the stress area.
/// </remarks>
public sealed record ScrewThread(string Designation, ThreadForm Form, double Diameter, double Pitch)
{
    private double Height => Math.Sqrt(3) / 2 * Guard.Positive(Pitch, "the pitch of the thread", "mm");

    private double Nominal => Guard.Positive(Diameter, "the diameter of the thread", "mm");

    /// <summary>Pitch diameter d₂, mm.</summary>
    public double PitchDiameter => Guard.Positive(Nominal - 0.75 * Height, "the pitch diameter of the thread", "mm");

    /// <summary>Minor diameter d₃ of the bolt, mm.</summary>
    public double RootDiameter =>
        Guard.Positive(Nominal - (Form == ThreadForm.Unified ? 1.5 : 17.0 / 12) * Height, "the minor diameter of the thread", "mm");

    /// <summary>Minor diameter D₁ of the nut, mm.</summary>
    public double NutMinorDiameter => Guard.Positive(Nominal - 1.25 * Height, "the minor diameter of the thread", "mm");

    /// <summary>Diameter d_s of the round that has the stress area, mm.</summary>
    public double StressDiameter => (PitchDiameter + RootDiameter) / 2;

    /// <summary>Stress area A_s, mm².</summary>
    /// <remarks>
    /// <code>A_s = π/4·((d₂ + d₃)/2)²</code>
    /// Source: ISO 898-1; ASME B1.1 with the same mean.
    /// </remarks>
    public double StressArea => Math.PI / 4 * StressDiameter * StressDiameter;
}
