using Pawl.Mechanics.Bearings;

namespace Pawl.Mechanics.Joints;

/// <summary>What becomes of the preload of a bolt: by embedding, by heat, by a load along its axis.</summary>
/// <remarks>Source: VDI 2230 Part 1, bolt and load concentric. Bending by an eccentric load is not covered.</remarks>
public static class ClampForce
{
    /// <summary>Load factor Φ, 1: the share of a load along the bolt that the bolt feels.</summary>
    /// <param name="introduction">Load introduction factor n: 1 where the load enters under head and nut, less the nearer to the interface.</param>
    /// <param name="bolt">Compliance δ_S of the bolt, mm/N.</param>
    /// <param name="parts">Compliance δ_P of the parts, mm/N.</param>
    /// <param name="tappedHole">Compliance of a tapped hole, mm/N, which counts with the parts; zero with a nut.</param>
    /// <remarks>
    /// <code>Φ = n·(δ_P + δ_M)/(δ_S + δ_P)</code>
    /// Source: VDI 2230 Part 1; δ_M of a tapped hole from memory: it makes Φ greater, which is cautious.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double LoadFactor(double introduction, double bolt, double parts, double tappedHole = 0) =>
        introduction > 0 && introduction <= 1
            ? introduction * (parts + DynamicLoad.NotNegative(tappedHole, "the compliance of the tapped hole")) / Both(bolt, parts)
            : throw Guard.Because($"the load introduction factor must lie above 0 and up to 1; it is {introduction:0.###}");

    /// <summary>Preload lost by embedding F_Z, N.</summary>
    /// <remarks>
    /// <code>F_Z = f_Z/(δ_S + δ_P)</code>
    /// Symbols: f_Z embedding, mm, by <see cref="Embedding.Amount"/>. Source: VDI 2230 Part 1.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double EmbeddingLoss(double embedding, double bolt, double parts) =>
        DynamicLoad.NotNegative(embedding, "the embedding") / Both(bolt, parts);

    /// <summary>Change of the preload by heat, N; above zero it rises.</summary>
    /// <param name="layers">The clamped layers, each with its expansion.</param>
    /// <param name="partsRise">Temperature of the parts less that of assembly, K.</param>
    /// <param name="boltExpansion">Expansion of the bolt, 1/K.</param>
    /// <param name="boltRise">Temperature of the bolt less that of assembly, K.</param>
    /// <param name="bolt">Compliance of the bolt, mm/N.</param>
    /// <param name="parts">Compliance of the parts, mm/N.</param>
    /// <remarks>
    /// <code>ΔF = (Σ l·α·ΔT_P − l_K·α_S·ΔT_S)/(δ_S + δ_P)</code>
    /// Source: VDI 2230 Part 1; moduli taken as at room temperature.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ThermalChange(
        ImmutableArray<ClampedLayer> layers, double partsRise, double boltExpansion, double boltRise, double bolt, double parts) =>
        Guard.Finite(layers.Sum(layer => layer.Thickness * (layer.Expansion * partsRise - boltExpansion * boltRise)), "the change by heat")
        / Both(bolt, parts);

    /// <summary>Force F_KR that is left between the parts, N; below zero they part.</summary>
    /// <param name="assembly">Preload F_M when tightened, N: the least for the clamp.</param>
    /// <param name="embeddingLoss">Loss F_Z, N.</param>
    /// <param name="thermal">Change by heat, N.</param>
    /// <param name="loadFactor">Load factor Φ.</param>
    /// <param name="axial">Load F_A along the bolt, N, above zero where it parts.</param>
    /// <remarks><code>F_KR = F_M − F_Z + ΔF − (1 − Φ)·F_A</code> Source: VDI 2230 Part 1.</remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Residual(double assembly, double embeddingLoss, double thermal, double loadFactor, double axial) =>
        Guard.Finite(Preload(assembly) - Guard.NotNegative(embeddingLoss, "the loss by embedding", "N") + thermal - (1 - Share(loadFactor)) * axial, "the clamp force");

    /// <summary>Force in the bolt in service F_S, N, as long as the parts touch.</summary>
    /// <remarks><code>F_S = F_M + ΔF + Φ·F_A</code> with the greatest preload, embedding left out. Source: VDI 2230 Part 1.</remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double BoltForce(double assembly, double thermal, double loadFactor, double axial) =>
        Guard.Finite(Preload(assembly) + thermal + Share(loadFactor) * axial, "the force in the bolt");

    /// <summary>Load along the bolt at which the parts part, N.</summary>
    /// <remarks><code>F_A = (F_M − F_Z + ΔF)/(1 − Φ)</code> Source: the residual clamp set to zero.</remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double SeparatingLoad(double assembly, double embeddingLoss, double thermal, double loadFactor) =>
        Share(loadFactor) < 1
            ? Guard.Finite((Preload(assembly) - Guard.NotNegative(embeddingLoss, "the loss by embedding", "N") + thermal) / (1 - loadFactor), "the load that parts")
            : throw Guard.Because($"with a load factor of 1 the parts never feel the load");

    private static double Preload(double assembly) => Guard.NotNegative(assembly, "the preload", "N");

    private static double Both(double bolt, double parts) =>
        Guard.Positive(bolt, "the compliance of the bolt") + Guard.Positive(parts, "the compliance of the parts");

    private static double Share(double loadFactor) =>
        loadFactor >= 0 && loadFactor <= 1 ? loadFactor : throw Guard.Because($"a load factor lies from 0 to 1; it is {loadFactor:0.###}");
}
