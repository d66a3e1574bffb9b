using Pawl.Mechanics.Bearings;

namespace Pawl.Mechanics.Joints;

/// <summary>A ring in the stack that a central nut clamps: spacer, shim, inner ring, hub.</summary>
/// <param name="Length">Length l, mm.</param>
/// <param name="Outer">Outside diameter, mm.</param>
/// <param name="Inner">Inside diameter, mm.</param>
/// <param name="Modulus">Modulus of elasticity E, MPa.</param>
/// <param name="Expansion">Linear expansion α, 1/K.</param>
public sealed record StackedRing(double Length, double Outer, double Inner, double Modulus, double Expansion = 0);

/// <summary>A large nut on a shaft that clamps a stack of rings against a shoulder.</summary>
/// <remarks>
/// Torque and preload as for any thread, <see cref="Tightening"/>; embedding, heat and loads along the shaft as for any bolt,
/// <see cref="ClampForce"/>, the shaft within the stack being the bolt.
/// </remarks>
public static class CentralNut
{
    /// <summary>Compliance of the stack δ_P, mm/N.</summary>
    /// <remarks><code>δ_P = Σ l/(E·π/4·(D² − d²))</code> Source: Hooke's law. Valid for: rings that touch over their whole faces.</remarks>
    public static double StackCompliance(ImmutableArray<StackedRing> stack) => stack.Sum(ring =>
        Guard.Positive(ring.Length, "the length of a ring")
        / (Guard.Positive(ring.Modulus, "the modulus of a ring") * new BearingFace(ring.Outer, ring.Inner).Area));

    /// <summary>Compliance of the shaft within the stack δ_S, mm/N.</summary>
    /// <param name="pieces">The pieces of the shaft under tension, from shoulder to nut.</param>
    /// <param name="bore">Bore of a hollow shaft, mm.</param>
    /// <param name="modulus">Modulus of the shaft, MPa.</param>
    /// <remarks><code>δ_S = Σ l/(E·π/4·(d² − d_i²))</code> Source: Hooke's law; what gives way in thread and nut is left out.</remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ShaftCompliance(ImmutableArray<ShankPiece> pieces, double bore, double modulus) => pieces.Sum(piece =>
        Guard.Positive(piece.Length, "the length of the shaft")
        / (Guard.Positive(modulus, "the modulus of the shaft") * new BearingFace(piece.Diameter, bore).Area));

    /// <summary>Diameter of the round that has the area left of a thread with a hole across, mm.</summary>
    /// <param name="thread">The thread of the shaft.</param>
    /// <param name="crossHole">Diameter d_q of the hole for a cotter pin, mm.</param>
    /// <param name="bore">Bore d_i along the shaft, mm.</param>
    /// <remarks>
    /// <code>π/4·d₀² = A_s − π/4·d_i² − d_q·(d_s − d_i)</code>
    /// Source: area less what the holes take, approximate. Torsion is calculated with the same round, an estimate.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double SectionDiameter(ScrewThread thread, double crossHole, double bore = 0)
    {
        var area = thread.StressArea - Math.PI / 4 * Math.Pow(DynamicLoad.NotNegative(bore, "the bore"), 2)
            - DynamicLoad.NotNegative(crossHole, "the hole across") * (thread.StressDiameter - bore);
        return area > 0 && bore < thread.StressDiameter
            ? Math.Sqrt(4 * area / Math.PI)
            : throw Guard.Because($"the holes leave nothing of the thread {thread.Designation}");
    }

    /// <summary>Torque that the clamped faces carry by friction, N·mm.</summary>
    /// <param name="clamp">Clamp force F that is left, N.</param>
    /// <param name="friction">Coefficient µ of the faces, the least.</param>
    /// <param name="outer">Outside diameter D of the faces, mm.</param>
    /// <param name="inner">Inside diameter d, mm.</param>
    /// <remarks>
    /// <code>T = F·µ·(D³ − d³)/(3·(D² − d²))</code>
    /// Source: even pressure over a ring. One face: what is clamped on both sides by the shaft carries twice that.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double FaceTorque(double clamp, double friction, double outer, double inner)
    {
        _ = new BearingFace(outer, inner).Area;
        return DynamicLoad.NotNegative(clamp, "the clamp force") * Guard.Positive(friction, "the friction of the faces")
            * (Math.Pow(outer, 3) - Math.Pow(inner, 3)) / (3 * (outer * outer - inner * inner));
    }

    private static double Left(
        double assembly, double embedding, double shaft, double stack, double thermal, double axial, double loadFactor) =>
        ClampForce.Residual(
            assembly,
            ClampForce.EmbeddingLoss(embedding, shaft, stack),
            thermal,
            loadFactor,
            DynamicLoad.NotNegative(axial, "the load along the shaft"));
}
