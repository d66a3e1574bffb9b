using Pawl.Analysis.Trains;
using Pawl.Mechanics.Rating;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Analysis.Fits;

/// <summary>What parts are made of, and the temperatures that they see.</summary>
internal sealed class Parts(Draft draft, TrainDraft? train)
{
    /// <summary>Drawings hold at 20 °C (ISO 1).</summary>
    public const double Room = 20;

    private const double SteelDensity = 7.85e-9;

    // 1/K, common practice, no source: handbooks give plain and alloyed steels 11 to 12.
    private const double SteelExpansion = 11.5e-6;

    private static readonly Elastic s_steel = new(206_000, 0.3);

    private OilSpec? Oil => draft.Spec.Duty?.Oil;

    public Draft Draft => draft;

    public TrainDraft? Train => train;

    /// <summary>Of a part: its own material, else that of the body of this name, else of its first gear, else steel.</summary>
    public PartMaterial MaterialOf(string? part, Stated<string>? material)
    {
        var id = material?.Value
            ?? (part is null ? null : draft.Spec.Train?.Bodies.Find(part)?.Material?.Value
                ?? train?.Gears.FirstOrDefault(gear => gear.Spec.On.Value == part)?.Spec.Material?.Value);
        var entry = id is null ? null : draft.Spec.Catalogue.Materials.Find(id);
        return new(
            entry is { ElasticModulus: { } modulus, PoissonRatio: { } poisson } ? new(modulus.Value.Coherent, poisson.Value) : s_steel,
            entry?.ThermalExpansion?.Value.Coherent ?? SteelExpansion,
            entry?.Density?.Value.Coherent ?? SteelDensity);
    }

    public (double Temperature, string? Missing) Coldest() => Of(Oil?.Coldest, "duty.oil.coldest");

    /// <summary>Its own running temperature, else that of the oil.</summary>
    public (double Temperature, string? Missing) Running(Stated<Amount>? own) => own is null ? Of(Oil?.Running, "duty.oil.running") : (own.Value.Coherent, null);

    /// <summary>As far above its running temperature as the hottest oil is above its own.</summary>
    public (double Temperature, string? Missing) Hottest(Stated<Amount>? own)
    {
        if (Oil?.Hottest is not { } hottest)
            return (0, "duty.oil.hottest is not stated");
        if (own is null)
            return (hottest.Value.Coherent, null);
        return Oil.Running is { } running
            ? (own.Value.Coherent + hottest.Value.Coherent - running.Value.Coherent, null)
            : (0, "duty.oil.running is not stated");
    }

    private static (double Temperature, string? Missing) Of(Stated<Amount>? stated, string key) =>
        stated is null ? (0, $"{key} is not stated") : (stated.Value.Coherent, null);
}

/// <summary>What a part is made of.</summary>
/// <param name="Elastic">Modulus and Poisson's ratio.</param>
/// <param name="Expansion">1/K.</param>
/// <param name="Density">t/mm³.</param>
internal readonly record struct PartMaterial(Elastic Elastic, double Expansion, double Density);
