using Pawl.Analysis.Core;
using Pawl.Mechanics.Materials;
using Pawl.Quantities;
using Pawl.Specs.Model;
using M = Pawl.Analysis.Gears.MaterialQuantities;

namespace Pawl.Analysis.Gears;

/// <summary>What the steels of two gears in mesh are to each other.</summary>
public static class MaterialPairQuantities
{
    private const string Practice = "common practice, no source";

    public static readonly QuantityKind HardnessLead = new()
    {
        Name = "hardness_lead", Title = "Hardness of the pinion above that of the wheel", Unit = Units.Vickers, Scale = 20,
        Formula = "hardness of the gear with fewer teeth less that of its mate", Symbols = ["pinion", "wheel"], Source = Practice,
        Certainty = Certainty.CommonPractice, Note = "only where both are hardened through or not at all",
    };

    public static readonly QuantityKind SoftAlike = new()
    {
        Name = "unhardened_alike", Title = "Both gears are unhardened and of one steel", ValueKind = ValueKind.Truth,
        Formula = "same material, both normalised", Symbols = ["first", "second"], Source = Practice, Certainty = Certainty.CommonPractice,
    };

    public static readonly QuantityKind StainlessAlike = new()
    {
        Name = "stainless_alike", Title = "Both gears are of precipitation-hardening stainless steel", ValueKind = ValueKind.Truth,
        Formula = "both precipitation-hardened", Symbols = ["first", "second"], Source = Practice, Certainty = Certainty.CommonPractice,
    };

    public static readonly QuantityKind Nitrided = new()
    {
        Name = "nitrided_flank", Title = "A flank of the pair is nitrided", ValueKind = ValueKind.Truth,
        Formula = "first or second is nitrided or nitrocarburised", Symbols = ["first", "second"], Source = "definition",
    };

    public static readonly ImmutableArray<QuantityKind> All = [HardnessLead, SoftAlike, StainlessAlike, Nitrided];
}

/// <summary>The steels of two gears in mesh.</summary>
internal static class MaterialPair
{
    public static void Add(MeshDraft mesh)
    {
        var (first, second) = (mesh.First, mesh.Second);
        ImmutableArray<Quantity> treatments = [first[M.Treatment], second[M.Treatment]];
        mesh.Subject.Add(SoftAlike(first, second, treatments));
        mesh.Subject.Add(Alike(MaterialPairQuantities.StainlessAlike, treatments, Both(treatments, Treatments.PrecipitationHardened)));
        mesh.Subject.Add(Alike(
            MaterialPairQuantities.Nitrided, treatments,
            Array.Exists([.. treatments], each => each.Text is Treatments.GasNitrided or Treatments.Nitrocarburised)));
        if (IsSoft(first) && IsSoft(second))
        {
            var (pinion, wheel) = first.Spec.Teeth.Value <= second.Spec.Teeth.Value ? (first, second) : (second, first);
            mesh.Subject.Add(Derive.From(
                MaterialPairQuantities.HardnessLead, pinion[M.SurfaceHardness], wheel[M.SurfaceHardness], (own, other) => own - other));
        }
    }

    private static Quantity SoftAlike(GearDraft first, GearDraft second, ImmutableArray<Quantity> treatments)
    {
        if (!Both(treatments, Treatments.Normalised))
            return Alike(MaterialPairQuantities.SoftAlike, treatments, false);
        ImmutableArray<string> unknown =
        [
            .. new[] { first, second }.Where(gear => gear.Spec.Material is null).Select(gear => $"train.gears.{gear.Name}.material is not stated"),
        ];
        return unknown.IsEmpty
            ? Alike(MaterialPairQuantities.SoftAlike, treatments, first.Spec.Material!.Value == second.Spec.Material!.Value)
            : Quantity.NotEvaluated(MaterialPairQuantities.SoftAlike, treatments, unknown);
    }

    private static Quantity Alike(QuantityKind kind, ImmutableArray<Quantity> treatments, bool alike) =>
        Quantity.MissingReasons(treatments) is { IsEmpty: false } reasons
            ? Quantity.NotEvaluated(kind, treatments, reasons)
            : Quantity.OfTruth(kind, Origin.Computed.Instance, alike, treatments);

    private static bool Both(ImmutableArray<Quantity> treatments, string word) =>
        treatments[0].Text == word && treatments[1].Text == word;

    private static bool IsSoft(GearDraft gear) => gear.Material.Class is
        MaterialClass.Normalised or MaterialClass.CarbonThroughHardened or MaterialClass.AlloyThroughHardened;
}
