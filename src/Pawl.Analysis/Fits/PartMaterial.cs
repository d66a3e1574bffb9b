using Pawl.Analysis.Core;
using Pawl.Mechanics.Rating;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Analysis.Fits;

/// <summary>What a part is made of.</summary>
/// <param name="Name">Id of the material in the catalogue, or steel.</param>
/// <param name="Elastic">Modulus and Poisson's ratio.</param>
/// <param name="Density">t/mm³.</param>
/// <param name="Expansion">1/K; null where a material of the catalogue states none.</param>
public sealed record PartMaterial(string Name, Elastic Elastic, double Density, double? Expansion)
{
    // 1/K, common practice, no source: handbooks give plain and alloyed steels 11 to 12.
    internal const double SteelExpansion = 11.5e-6;

    private const double SteelDensity = 7.85e-9;

    private static readonly PartMaterial Steel = new("steel", Elastic.Steel, SteelDensity, SteelExpansion);

    /// <summary>As it stands in reports.</summary>
    public string Text => FormattableString.Invariant(
        $"{Name}: E {Elastic.Modulus:0} MPa, ν {Elastic.Poisson:0.###}, ρ {Density * 1e12:0} kg/m³");

    /// <summary>The material of a part as a text quantity with its row: its own, else that of the body of this name, else of its first gear, else steel.</summary>
    internal static Quantity Of(AnalysisContext context, QuantityKind kind, Stated<string>? part, Stated<string>? material)
    {
        var stated = material ?? (part is null ? null : OfBody(context.Spec.Train, part.Value));
        if (stated is null && part is not null && !IsBody(context.Spec.Train, part.Value))
            return Quantity.NotEvaluated(kind, [], $"{part.Span} names `{part.Value}`, which is no body of the train: state its material beside it");
        if (stated is null || context.Spec.Catalogue.Materials.Find(stated.Value) is not { } entry)
        {
            return Quantity.OfText(
                kind, new Origin.Assumed(part is null ? "steel, for no material is stated" : $"steel, for {part.Value} has no material"), Steel.Text, []).With(Steel);
        }

        var found = new PartMaterial(
            stated.Value,
            entry is { ElasticModulus: { } modulus, PoissonRatio: { } poisson } ? new(modulus.Value.Coherent, poisson.Value) : Elastic.Steel,
            entry.Density?.Value.Coherent ?? SteelDensity,
            entry.ThermalExpansion?.Value.Coherent);
        return Quantity.OfText(kind, AnalysisContext.Declared(stated), found.Text, []).With(found);
    }

    /// <summary>Linear expansion of a material; of steel where the catalogue states none, which the report lists.</summary>
    internal static Quantity ExpansionOf(AnalysisContext context, QuantityKind kind, Quantity material) =>
        material.Row is PartMaterial { Expansion: { } own }
            ? Quantity.Compute(kind, [material], _ => own).With([material.Kind.Name])
            : context.Assumed(kind, SteelExpansion, "11.5·10⁻⁶ 1/K of steel, for the material states none");

    private static bool IsBody(TrainSpec? train, string part) =>
        train is not null && (train.Bodies.Find(part) is not null || train.Planets.Find(part) is not null
            || train.Input?.Value == part || train.Output?.Value == part || train.Fixed.Any(held => held.Value == part)
            || train.Gears.Entries.Any(gear => gear.On.Value == part));

    private static Stated<string>? OfBody(TrainSpec? train, string part) =>
        train?.Bodies.Find(part)?.Material ?? train?.Gears.Entries.FirstOrDefault(gear => gear.On.Value == part)?.Material;
}
