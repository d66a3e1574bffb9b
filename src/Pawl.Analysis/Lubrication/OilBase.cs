using Pawl.Analysis.Core;
using Pawl.Mechanics.Seals;
using Pawl.Specs.Model;

namespace Pawl.Analysis.Lubrication;

/// <summary>The base of the oil in the unit, and what follows from it.</summary>
internal static class OilBase
{
    /// <summary>The oil that the duty names, or null.</summary>
    public static LubricantSpec? Lubricant(AnalysisContext context) =>
        context.Spec.Duty?.Oil?.Lubricant is { } named ? context.Spec.Catalogue.Lubricants.Find(named.Value) : null;

    /// <summary>Its base, or the key that is missing.</summary>
    public static Quantity Of(AnalysisContext context, QuantityKind kind) => Lubricant(context) is { } lubricant
        ? AnalysisContext.Text(kind, lubricant.Base, $"lubricants.{lubricant.Name.Value}.base")
        : AnalysisContext.Missing(kind, "duty.oil.lubricant");

    /// <summary>Compatibility of an elastomer with a base of oil: suitable, limited, unsuitable; the worst of what the oil may be.</summary>
    public static string Suitability(Elastomer elastomer, string oil) => Word(Fluids(oil).Min(elastomer.In));

    /// <summary>Maximum continuous sump temperature of an oil, °C. Common practice, no source.</summary>
    public static double MaxSumpTemperature(string oil) => oil is "PAO" or "PAG" or "ester" ? 115 : 100;

    /// <summary>How two bases mix: same, compatible, doubtful, incompatible. Common practice, no source.</summary>
    public static string Mixture(string before, string now) =>
        before == now ? "same"
        : before == "PAG" || now == "PAG" ? "incompatible"
        : before == "ester" || now == "ester" ? "doubtful"
        : "compatible";

    /// <summary>Fluid of automatic transmissions is of mineral oil or PAO: what is worse counts.</summary>
    private static SealedFluid[] Fluids(string oil) => oil switch
    {
        "mineral" => [SealedFluid.Mineral],
        "PAO" => [SealedFluid.Polyalphaolefin],
        "ester" => [SealedFluid.Ester],
        "PAG" => [SealedFluid.Polyglycol],
        "ATF" => [SealedFluid.Mineral, SealedFluid.Polyalphaolefin],
        _ => throw new InvalidOperationException($"The reader let the base {oil} through."),
    };

    private static string Word(Suitability suitability) => suitability switch
    {
        Mechanics.Seals.Suitability.Suitable => "suitable",
        Mechanics.Seals.Suitability.Limited => "limited",
        _ => "unsuitable",
    };
}
