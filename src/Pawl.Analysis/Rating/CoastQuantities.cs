using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Mechanics.Rating;
using Pawl.Quantities;
using static Pawl.Analysis.Core.Inputs;
using L = Pawl.Analysis.Rating.MeshLoadQuantities;

namespace Pawl.Analysis.Rating;

/// <summary>The flank and the root of a gear in one of its meshes while the output drives.</summary>
public sealed class CoastQuantities : Section<MeshGear>
{
    private const string Other = "teeth alike on both flanks; film factors, misalignment and share of the planets as at the rated load";

    public static readonly NumberDefinition<MeshGear> Cycles = Number("coast_cycles", "N_c", "Load cycles of a flank while the output drives")
        .By("N_c = N_L·q_c·n_c/n_in", "closed form")
        .From(FlankQuantities.LoadCycles, Of("coast", static () => MeshCaseQuantities.CycleShare, "q_N"), static (cycles, share) => cycles * share);

    public static readonly NumberDefinition<MeshGear> ContactStress =
        Number("coast_contact_stress", "σ_H,c", "Contact stress while the output drives", Units.Megapascal)
        .By("σ_H,c = Z_B,D·σ_H0·√K_H,c", "ISO 6336-2").Noted(Other)
        .When(HasTorque)
        .From(
            FlankQuantities.SingleContactFactor, Of("mesh", static () => L.NominalContactStress),
            Of("coast", static () => MeshCaseQuantities.ContactLoadFactor, "K_H,c"),
            static (single, nominal, factor) => Mechanics.Rating.ContactStress.OfGear(nominal, single, factor));

    public static readonly NumberDefinition<MeshGear> ContactSafety =
        Number("coast_contact_safety", "S_H,c", "Safety against pitting of the flank that carries while the output drives").NeverNegative()
        .By("S_H,c = σ_HG·Z_NT(N_c)/σ_H,c", "ISO 6336-2").Noted(Other)
        .From(FlankQuantities.ContactStrength, FlankQuantities.Curve, ContactStress, Cycles, Safety);

    public static readonly NumberDefinition<MeshGear> RootStress =
        Number("coast_root_stress", "σ_F,c", "Root stress while the output drives", Units.Megapascal)
        .By("σ_F,c = σ_F0·K_F,c", "ISO 6336-3").Noted(Other)
        .When(HasTorque)
        .From(
            RootQuantities.NominalRootStress, Of("coast", static () => MeshCaseQuantities.RootLoadFactor, "K_F,c"),
            static (nominal, factor) => nominal * factor);

    public static readonly NumberDefinition<MeshGear> BendingSafety =
        Number("coast_bending_safety", "S_F,c", "Safety against breakage at the root while the output drives").NeverNegative()
        .By("S_F,c = σ_FG·Y_NT(N_c)/σ_F,c, Y_M as for both directions", "ISO 6336-3").Noted(Other)
        .From(RootQuantities.BendingStrength, RootQuantities.Curve, RootStress, Cycles, Safety);

    private static bool HasTorque(MeshGear gear, Subject subject) => subject.Context.Spec.Duty?.Coast is { Torque.Value.Coherent: > 0 };

    private static double Safety(double strength, LifeCurve curve, double stress, double cycles) =>
        Spectrum.Safety(strength, curve, [new DamageBin(stress, cycles)]);
}
