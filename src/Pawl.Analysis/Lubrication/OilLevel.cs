using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Lubrication;

/// <summary>Where the oil stands at rest in a horizontal unit, against what dips into it and what must stay above it.</summary>
public sealed class OilLevel : Section<LubricationSpec>
{
    private const string Closed = "closed form";
    private const string AtRest = "at rest, cold; planets on a turning carrier pass the bottom";

    public static readonly NumberDefinition<LubricationSpec> Level =
        Number("level", "h", "Level of the oil over the common axis, lowest to highest permitted", Units.Millimetre)
        .By("level, from min_level to max_level", "the spec", Certainty.Declared).Scaled(1)
        .When(static s => s is { MountingPosition.Value: "horizontal", Supply: not { Value: "grease" } })
        .For(static s => s.Level is not null).Custom(static subject => Of((LubricationSpec)subject.Model, subject))
        .For(static s => s.Supply is { Value: "splash" }).Custom(static _ => AnalysisContext.Missing(Level!, "lubrication.level"));

    private static readonly IInput<(double Reach, double Module)> Deepest = Join(
        Each("rim_meshes", static () => MeshQuantities.CentreDistance, "a_w"), Each("rim_gears", static () => GearQuantities.TipDiameter, "d_a"),
        Each("rim_gears", static () => GearQuantities.Module, "m_n"), DeepestOf);

    public static readonly NumberDefinition<LubricationSpec> Reach =
        Number("planet_reach", "R", "Greatest radius that teeth of planets reach", Units.Millimetre)
        .By("R = greatest a_w + d_a/2 of the planets", Closed)
        .When(static (_, subject) => subject.ReachAll("rim_gears").Any())
        .From(Deepest, static deepest => deepest.Reach);

    public static readonly NumberDefinition<LubricationSpec> Dip =
        Number("dip", "e", "Depth to which the teeth of the lowest planet dip", Units.Millimetre)
        .By("e = h + R", Closed).Scaled(1).Noted(AtRest)
        .From(Level, Reach, static (level, reach) => level + reach);

    public static readonly NumberDefinition<LubricationSpec> DipInModules =
        Number("dip_in_modules", "e/m_n", "Depth to which the teeth of the lowest planet dip, in modules")
        .By("e/m_n", Closed).Noted(AtRest)
        .When(static (_, subject) => subject.ReachAll("rim_gears").Any())
        .From(Level, Deepest, static (level, deepest) => (level + deepest.Reach) / deepest.Module);

    public static readonly TruthDefinition<LubricationSpec> LevelWets = Truth("level_wets_lowest", "The lowest level wets the lowest planet")
        .By("e > 0 at the lowest level", Closed)
        .For(static s => s.Level is not null).From(Dip.Limits(), static dip => dip.Min > 0);

    public static readonly NumberDefinition<LubricationSpec> LowestOpening =
        Number("lowest_opening", "h_o", "Height of the lowest opening over the common axis", Units.Millimetre)
        .When(static s => s is { MountingPosition.Value: "horizontal" }).Stated(static s => s.LowestOpening).Optional();

    public static readonly NumberDefinition<LubricationSpec> OpeningOverLevel =
        Number("opening_over_level", "", "Height of the lowest opening over the oil", Units.Millimetre)
        .By("h_o − h", Closed).Scaled(1).Noted("at rest, cold")
        .From(LowestOpening, Level, static (opening, level) => opening - level);

    /// <summary>Whether a body lies on the common axis: in a train without meshes between central gears every body but the planets does.</summary>
    internal static bool IsOnAxis(AnalysisContext context, string body) =>
        context.Spec.Train is { } train && train.Planets.Find(body) is null
        && train.Meshes.All(mesh => mesh.Gears.Any(gear => train.Gears.Find(gear.Value) is { } found && train.Planets.Find(found.On.Value) is not null));

    private static Quantity Of(LubricationSpec spec, Subject subject)
    {
        var level = spec.Level!;
        double Or(Specs.Text.Stated<Amount>? stated) => (stated ?? level).Value.Coherent;
        return subject.Context.Between(Level, AnalysisContext.Declared(level), level.Value.Coherent, Or(spec.MinLevel), Or(spec.MaxLevel));
    }

    private static (double Reach, double Module) DeepestOf(double[] centres, double[] tips, double[] modules)
    {
        var deepest = 0;
        for (var i = 1; i < centres.Length; i++)
        {
            if (Math.Abs(centres[i]) + (tips[i] / 2) > Math.Abs(centres[deepest]) + (tips[deepest] / 2))
                deepest = i;
        }

        return (Math.Abs(centres[deepest]) + (tips[deepest] / 2), modules[deepest]);
    }
}
