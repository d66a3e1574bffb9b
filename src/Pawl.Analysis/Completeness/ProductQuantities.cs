using Pawl.Analysis.Core;
using Pawl.Specs.Model;

namespace Pawl.Analysis.Completeness;

/// <summary>What the product as a whole must state so that it can be judged.</summary>
public sealed class ProductQuantities : Section<GearboxSpec>
{
    private static readonly ImmutableArray<string> OfProducts = ["bearings", "shafts", "interfaces", "joints", "lip_seals", "lubrication"];

    public static readonly TruthDefinition<GearboxSpec> IsProduct = Truth("is_product", "Spec describes a product")
        .By($"one of {string.Join(", ", OfProducts)} is stated; without them the spec describes gears alone", "the spec")
        .Named(static s => SectionInSpec.Of(s).Any(static section => section.Statement == SectionInSpec.Stated && OfProducts.Contains(section.Name)));

    public static readonly RowDefinition<GearboxSpec, string> OilSupply = Text("oil_supply", "Supply of oil")
        .Stated(static s => s.Lubrication?.Supply);

    public static readonly RowDefinition<GearboxSpec, string> Support = Text("support", "Support of the bodies")
        .By("bearings, where they are stated", "the spec")
        .Unless(static subject => subject.Context.Spec.Bearings.Entries.IsEmpty ? ["bearings is not stated"] : [])
        .Named(static _ => "bearings");
}
