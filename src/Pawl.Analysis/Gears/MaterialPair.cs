using Pawl.Analysis.Core;
using Pawl.Mechanics.Materials;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;
using G = Pawl.Analysis.Gears.GearQuantities;
using M = Pawl.Analysis.Gears.MaterialQuantities;

namespace Pawl.Analysis.Gears;

/// <summary>What the steels of two gears in mesh are to each other.</summary>
public sealed class MaterialPairQuantities : Section<MeshSpec>
{
    private const string Practice = "common practice, no source";

    public static readonly NumberDefinition<MeshSpec> HardnessLead =
        Number("hardness_lead", "", "Hardness of the pinion above that of the wheel", Units.Vickers)
        .By("hardness of the gear with fewer teeth less that of its mate", Practice, Certainty.CommonPractice)
        .Noted("only where both are hardened through or not at all").Scaled(20)
        .When(static (_, subject) => IsSoft(subject.Reach("first")!) && IsSoft(subject.Reach("second")!))
        .From(
            Of("first", static () => G.Teeth, "z_1"), Of("first", static () => M.SurfaceHardness, "first"),
            Of("second", static () => G.Teeth, "z_2"), Of("second", static () => M.SurfaceHardness, "second"),
            static (z1, first, z2, second) => z1 <= z2 ? first - second : second - first);

    public static readonly TruthDefinition<MeshSpec> SoftAlike = Truth("unhardened_alike", "Both gears are unhardened and of one steel")
        .By("same material, both normalised", Practice, Certainty.CommonPractice)
        .From(
            OfRow("first", static () => M.Treatment), OfRow("second", static () => M.Treatment),
            OfRow("first", static () => M.Material), OfRow("second", static () => M.Material),
            static (first, second, one, other) => first == Treatments.Normalised && second == Treatments.Normalised && one == other);

    public static readonly TruthDefinition<MeshSpec> StainlessAlike =
        Truth("stainless_alike", "Both gears are of precipitation-hardening stainless steel")
        .By("both precipitation-hardened", Practice, Certainty.CommonPractice)
        .From(
            OfRow("first", static () => M.Treatment), OfRow("second", static () => M.Treatment),
            static (first, second) => first == Treatments.PrecipitationHardened && second == Treatments.PrecipitationHardened);

    public static readonly TruthDefinition<MeshSpec> Nitrided = Truth("nitrided_flank", "A flank of the pair is nitrided")
        .By("first or second is nitrided or nitrocarburised", "definition")
        .From(
            OfRow("first", static () => M.Treatment), OfRow("second", static () => M.Treatment),
            static (first, second) => IsNitrided(first) || IsNitrided(second));

    public static readonly TruthDefinition<MeshSpec> Soft = Truth("soft_flank", "A flank of the pair is soft")
        .By("first or second is neither case-hardened, induction-hardened, nitrided nor nitrocarburised", "definition")
        .From(
            OfRow("first", static () => M.Treatment), OfRow("second", static () => M.Treatment),
            static (first, second) => !Treatments.HasCase(first) || !Treatments.HasCase(second));

    private static bool IsNitrided(string treatment) => treatment is Treatments.GasNitrided or Treatments.Nitrocarburised;

    private static bool IsSoft(Subject gear) => M.Of(gear).Class is
        MaterialClass.Normalised or MaterialClass.CarbonThroughHardened or MaterialClass.AlloyThroughHardened;
}
