using Pawl.Mechanics.Bearings;

namespace Pawl.Mechanics.Joints;

/// <summary>Friction of a bolt that is tightened.</summary>
/// <param name="Thread">Coefficient µ_G in the thread, 1.</param>
/// <param name="Head">Coefficient µ_K under the head or nut that turns, 1.</param>
public readonly record struct JointFriction(double Thread, double Head);

/// <summary>The face under the head or nut, a ring.</summary>
/// <param name="Outer">Outside diameter d_W, mm: of the head, or of the washer if that is pressed on.</param>
/// <param name="Hole">Inside diameter d_h, mm: of the hole with its chamfer.</param>
public readonly record struct BearingFace(double Outer, double Hole)
{
    /// <summary>Mean diameter D_Km, mm.</summary>
    /// <remarks><code>D_Km = (d_W + d_h)/2</code> Source: VDI 2230 Part 1.</remarks>
    public double MeanDiameter => (Checked().Outer + Hole) / 2;

    /// <summary>Area A_p, mm².</summary>
    public double Area => Math.PI / 4 * (Checked().Outer * Outer - Hole * Hole);

    private BearingFace Checked() =>
        Hole >= 0 && Outer > Hole && double.IsFinite(Outer)
            ? this
            : throw Guard.Because($"the hole under a head must be narrower than its face; they are {Hole:0.###} mm and {Outer:0.###} mm");
}

/// <summary>Torque and preload of a bolt, and how far tightening uses its strength.</summary>
public static class Tightening
{
    // Half the angle of the flanks.
    private static readonly double Flank = Math.Cos(Math.PI / 6);

    /// <summary>Torque M_A that tightens to a preload, N·mm.</summary>
    /// <remarks>
    /// <code>M_A = F·(P/(2π) + d₂·µ_G/(2·cos 30°) + D_Km·µ_K/2)</code>
    /// Symbols: F preload, N; P pitch, d₂ pitch diameter, D_Km mean diameter under the head, mm.<br/>
    /// Source: VDI 2230 Part 1, after Kellermann and Klein.<br/>
    /// Valid for: lead angles of fasteners, where tan(φ + ρ′) is tan φ + tan ρ′.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Torque(ScrewThread thread, JointFriction friction, BearingFace face, double preload) =>
        DynamicLoad.NotNegative(preload, "the preload") * Lever(thread, friction, face);

    /// <summary>Preload F that a torque gives, N.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="friction">Friction in thread and under the head.</param>
    /// <param name="face">The face that turns.</param>
    /// <param name="torque">Tightening torque M_A, N·mm.</param>
    /// <param name="prevailing">Torque that a locking element takes for itself, N·mm.</param>
    /// <remarks><code>F = (M_A − M_p)/(P/(2π) + d₂·µ_G/(2·cos 30°) + D_Km·µ_K/2)</code> Source and validity: <see cref="Torque"/>.</remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Preload(ScrewThread thread, JointFriction friction, BearingFace face, double torque, double prevailing = 0)
    {
        if (!(torque >= DynamicLoad.NotNegative(prevailing, "the prevailing torque")))
            throw Guard.Because(
                $"the tightening torque must be above the prevailing torque; they are {torque:0.###} N·mm and {prevailing:0.###} N·mm");
        return Guard.Finite(torque - prevailing, "the preload") / Lever(thread, friction, face);
    }

    /// <summary>Torque M_G that comes into the bolt through its thread, N·mm.</summary>
    /// <remarks><code>M_G = F·(P/(2π) + d₂·µ_G/(2·cos 30°))</code> Source: VDI 2230 Part 1.</remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ThreadTorque(ScrewThread thread, double threadFriction, double preload) =>
        DynamicLoad.NotNegative(preload, "the preload") * (thread.Pitch / (2 * Math.PI) + Drag(thread, threadFriction));

    /// <summary>Torque that loosens, N·mm; below zero would loosen by itself.</summary>
    /// <remarks><code>M_L = F·(−P/(2π) + d₂·µ_G/(2·cos 30°) + D_Km·µ_K/2)</code> Source: as <see cref="Torque"/>.</remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double LooseningTorque(ScrewThread thread, JointFriction friction, BearingFace face, double preload) =>
        Torque(thread, friction, face, preload) - preload * thread.Pitch / Math.PI;

    /// <summary>Preload that uses a share of the yield when tightened, F_M zul, N.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="threadFriction">Least friction µ_G in the thread; the head does not count.</param>
    /// <param name="yield">Yield R_p, MPa.</param>
    /// <param name="share">Share ν of the yield; 0.9 is usual.</param>
    /// <param name="section">Diameter d₀ of the thinnest section, mm; the stress diameter where none is given.</param>
    /// <remarks>
    /// <code>F = A₀·ν·R_p / √(1 + 3·(3/2·d₂/d₀·(P/(π·d₂) + 1.155·µ_G))²);  A₀ = π/4·d₀²</code>
    /// Source: VDI 2230 Part 1: tension and torsion by von Mises, torsion as if the whole section yielded.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double PermittedPreload(ScrewThread thread, double threadFriction, double yield, double share = 0.9, double? section = null)
    {
        var diameter = Section(thread, section);
        if (!(share > 0 && share <= 1))
            throw Guard.Because($"the share of the yield must lie above 0 and up to 1; it is {share:0.###}");
        var twist = 3 / diameter * ThreadTorque(thread, threadFriction, 1);
        return Math.PI / 4 * diameter * diameter * share * Guard.Positive(yield, "the yield") / Math.Sqrt(1 + 3 * twist * twist);
    }

    /// <summary>Share of the yield that tightening uses, 1, with elastic torsion.</summary>
    /// <remarks>
    /// <code>√(σ² + 3·τ²)/R_p;  σ = F/A₀;  τ = 16·M_G/(π·d₀³)</code>
    /// Source: von Mises; VDI 2230 Part 1 assumes plastic torsion for the permitted preload, which gives some per cent more.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Utilisation(ScrewThread thread, double threadFriction, double yield, double preload, double? section = null) =>
        Reduced(thread, preload, ThreadTorque(thread, threadFriction, preload), section) / Guard.Positive(yield, "the yield");

    /// <summary>Reduced stress in service σ_red,B, MPa, when half the torsion is left.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="threadTorque">Torque M_G in the bolt when it was tightened, N·mm, by <see cref="ThreadTorque"/>.</param>
    /// <param name="boltForce">Greatest force in the bolt in service, N.</param>
    /// <param name="section">Diameter of the thinnest section, mm; the stress diameter where none is given.</param>
    /// <remarks>
    /// <code>σ_red,B = √(σ² + 3·(τ/2)²)</code>
    /// Source: VDI 2230 Part 1, with k_τ = 0.5.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ServiceStress(ScrewThread thread, double threadTorque, double boltForce, double? section = null) =>
        Reduced(thread, boltForce, DynamicLoad.NotNegative(threadTorque, "the torque in the thread") / 2, section);

    private static double Reduced(ScrewThread thread, double force, double torque, double? section)
    {
        var diameter = Section(thread, section);
        var tension = DynamicLoad.NotNegative(force, "the force in the bolt") * 4 / (Math.PI * diameter * diameter);
        var shear = 16 * torque / (Math.PI * Math.Pow(diameter, 3));
        return Math.Sqrt(tension * tension + 3 * shear * shear);
    }

    private static double Section(ScrewThread thread, double? section) =>
        section is { } given ? Guard.Positive(given, "the diameter of the thinnest section") : thread.StressDiameter;

    private static double Lever(ScrewThread thread, JointFriction friction, BearingFace face) =>
        thread.Pitch / (2 * Math.PI) + Drag(thread, friction.Thread)
        + face.MeanDiameter / 2 * DynamicLoad.NotNegative(friction.Head, "the friction under the head");

    private static double Drag(ScrewThread thread, double friction) =>
        thread.PitchDiameter / 2 * DynamicLoad.NotNegative(friction, "the friction in the thread") / Flank;
}
