using Pawl.Analysis.Core;
using Pawl.Mechanics.Rating;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;
using G = Pawl.Analysis.Gears.GearQuantities;

namespace Pawl.Analysis.Rating;

/// <summary>The mass of a gear that its teeth feel; quantities of the gear.</summary>
/// <remarks>What is held fast has none: it counts as rigid.</remarks>
public sealed class GearInertiaQuantities : Section<GearSpec>
{
    private const double SteelDensity = 7850e-12;
    private const string Resonance = "ISO 6336-1, resonance speed";

    /// <summary>Moment of inertia of a part.</summary>
    internal static readonly Unit KilogramSquareMillimetre = new("kg·mm²", new(Length: 2, Mass: 1), 1e-3);

    /// <summary>Mass for a unit of face width.</summary>
    internal static readonly Unit KilogramPerMillimetre = new("kg/mm", new(Length: -1, Mass: 1), 1e-3);

    public static readonly NumberDefinition<GearSpec> Density = Number("density", "ρ", "Density", Units.KilogramPerCubicMetre)
        .When(Turning)
        .Found(static (s, subject) => s.Material is { } id ? subject.Context.Spec.Catalogue.Materials.Find(id.Value)?.Density : null)
        .Assumed(SteelDensity, "7850 kg/m³ of steel, for the material states none");

    public static readonly NumberDefinition<GearSpec> MeanDiameter =
        Number("mean_diameter", "d_m", "Mean of tip and root circle", Units.Millimetre)
        .By("d_m = (d_a + d_f)/2", Resonance)
        .When(Turning)
        .From(G.TipDiameter, G.RootDiameter, static (tip, root) => (tip + root) / 2);

    public static readonly NumberDefinition<GearSpec> MomentOfInertia =
        Number("moment_of_inertia", "J", "Moment of inertia of the gear", KilogramSquareMillimetre)
        .By("J = (π/32)·ρ·b·(d_m⁴ − d_i⁴), d_i = d_f − 2·s_R; internal: (π/32)·ρ·b·(d_o⁴ − d_m⁴), d_o = d_f + 2·s_R", Resonance, Certainty.Memory)
        .Noted("a rim as thick as stated, a solid disc where none is; webs, hubs and shafts left out")
        .When(Turning)
        .For(static s => s.RimThickness is not null).From(
            G.Kind, Density, G.FaceWidth, MeanDiameter, G.RootDiameter, G.RimThickness, static (kind, density, width, mean, root, rim) =>
                kind == G.Internal
                    ? MeshResonance.Inertia(root + 2 * rim, mean, width, density)
                    : MeshResonance.Inertia(mean, Math.Max(0, root - 2 * rim), width, density))
        .For(static s => !G.IsInternal(s)).From(
            Density, G.FaceWidth, MeanDiameter, static (density, width, mean) => MeshResonance.Inertia(mean, 0, width, density))
        .Otherwise(static s => $"train.gears.{s.Name.Value}.rim_thickness is not stated");

    public static readonly NumberDefinition<GearSpec> MassAtBase =
        Number("mass_at_base", "m*", "Mass at the base circle, per unit of face width", KilogramPerMillimetre)
        .By("m* = 4·ΣJ/(b·d_b²), all gears of the body", Resonance, Certainty.Memory)
        .When(Turning)
        .From(Each("body_gears", static () => MomentOfInertia!), G.FaceWidth, G.BaseDiameter, static (inertias, width, ground) =>
            MeshResonance.MassAtBase(inertias.Sum(), width, ground));

    /// <summary>Whether the body of a gear is free to turn.</summary>
    internal static bool Turning(GearSpec gear, Subject subject) => !subject.Context.Spec.Train!.Fixed.Any(held => held.Value == gear.On.Value);
}
