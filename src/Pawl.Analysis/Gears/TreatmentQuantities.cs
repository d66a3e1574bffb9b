using Pawl.Analysis.Core;
using Pawl.Mechanics.Materials;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Gears;

/// <summary>What was done to the steel of a gear: its case, its heats, its plating and its finish. Only what applies is there.</summary>
public sealed class TreatmentQuantities : Section<GearSpec>
{
    private const string Practice = "common practice, no source";
    private const string Catalogue = "the catalogue, converted to HV after ISO 18265";
    private const string Bakes = "ASTM B850";

    public static readonly NumberDefinition<GearSpec> CaseDepth =
        Number("case_depth", "Eht", "Effective depth of the finished case", Units.Millimetre).NeverNegative()
        .When(static s => HasCase(s)).Stated(static s => s.HeatTreatment?.CaseDepth);

    public static readonly NumberDefinition<GearSpec> GrindingStock =
        Number("grinding_stock", "q", "Grinding stock of a flank", Units.Millimetre)
        .When(static s => HasCase(s)).Stated(static s => s.HeatTreatment?.GrindingStock).Optional();

    public static readonly NumberDefinition<GearSpec> FurnaceSpread =
        Number("furnace_spread", "ΔEht_f", "Spread of the case depth in the furnace", Units.Millimetre)
        .When(static s => HasCase(s)).Stated(static s => s.HeatTreatment?.FurnaceSpread).Optional();

    public static readonly NumberDefinition<GearSpec> MinCase =
        Number("min_case_depth", "Eht_min", "Minimum case depth by the module", Units.Millimetre)
        .By("max(0.1·m_n, 0.3 mm)", Practice, Certainty.CommonPractice)
        .When(static s => IsCarburised(s)).From(Own(static () => GearQuantities.Module), Mechanics.Materials.CaseDepth.Min);

    public static readonly NumberDefinition<GearSpec> MaxCase =
        Number("max_case_depth", "Eht_max", "Maximum case depth by the module", Units.Millimetre)
        .By("min(0.4·m_n, 6 mm)", "ISO 6336-5", Certainty.Memory)
        .When(static s => IsCarburised(s)).From(Own(static () => GearQuantities.Module), Mechanics.Materials.CaseDepth.Most);

    public static readonly NumberDefinition<GearSpec> CaseWindow =
        Number("case_window", "", "Room for the case depth by the module", Units.Millimetre)
        .By("Eht_max − Eht_min", Practice, Certainty.CommonPractice).Scaled(0.1)
        .From(MaxCase, MinCase, static (most, least) => most - least);

    public static readonly NumberDefinition<GearSpec> CaseTolerance =
        Number("case_tolerance", "", "Tolerance of the case depth, end to end", Units.Millimetre)
        .By("greatest less least of Eht", "the spec", Certainty.Declared).Scaled(0.1)
        .Custom(static subject => subject.Find(FurnaceSpread) is null ? null
            : subject[CaseDepth] is { IsEvaluated: true } depth
                ? Quantity.WithLimits(CaseTolerance!, Extent.Exactly(depth.Value.Max - depth.Value.Min), [depth]).With(["Eht"])
                : Quantity.NotEvaluated(CaseTolerance!, [subject[CaseDepth]], subject[CaseDepth].Reasons));

    public static readonly NumberDefinition<GearSpec> CaseFactor = Number("case_depth_factor", "Eht/m_n", "Case depth per module")
        .By("Eht / m_n", "definition")
        .From(CaseDepth, Own(static () => GearQuantities.Module), static (depth, module) => depth / module);

    public static readonly NumberDefinition<GearSpec> OrderedCase =
        Number("ordered_case_depth", "", "Case depth to order, before grinding", Units.Millimetre)
        .By("Eht + q", "definition")
        .From(CaseDepth, GrindingStock, Mechanics.Materials.CaseDepth.Ordered);

    public static readonly NumberDefinition<GearSpec> TipShare =
        Number("case_tip_share", "", "Share of the tip that the case of both flanks takes")
        .By("2·Eht / s_an", "definition")
        .When(static s => IsCarburised(s) || s.HeatTreatment?.Treatment.Value == Treatments.InductionHardened)
        .From(CaseDepth, Own(static () => GearQuantities.TipThickness), Mechanics.Materials.CaseDepth.TipShare);

    public static readonly NumberDefinition<GearSpec> Tempering = Temperature("tempering", "Last tempering or ageing")
        .When(static s => IsHeated(s)).Stated(static s => s.HeatTreatment?.Tempering);

    public static readonly NumberDefinition<GearSpec> MinTempering = Temperature("min_usual_tempering", "Minimum usual tempering of the steel")
        .Found(static (_, subject) => MaterialOf(subject).Taken?.Tempering?.Min);

    public static readonly NumberDefinition<GearSpec> MaxTempering = Temperature("max_usual_tempering", "Maximum usual tempering of the steel")
        .Found(static (_, subject) => MaterialOf(subject).Taken?.Tempering?.Max);

    public static readonly NumberDefinition<GearSpec> Nitriding = Temperature("nitriding", "Nitriding")
        .When(static s => s.HeatTreatment?.Treatment.Value is Treatments.GasNitrided or Treatments.Nitrocarburised)
        .Stated(static s => s.HeatTreatment?.Nitriding);

    public static readonly NumberDefinition<GearSpec> Process = Temperature("process_temperature", "Hottest process after tempering")
        .Found(static (s, _) => s.HeatTreatment?.LaterHeat.MaxBy(heat => heat.Temperature.Value.Coherent)?.Temperature);

    public static readonly NumberDefinition<GearSpec> Service = Temperature("service_temperature", "Hottest oil in service")
        .When(static s => IsHeated(s))
        .Found(static (_, subject) => subject.Context.Spec.Duty?.Oil?.Hottest, static _ => "duty.oil.hottest");

    public static readonly NumberDefinition<GearSpec> MinSurface = Window("min_usual_hardness", "Minimum usual hardness of the flanks")
        .Custom(static subject => MaterialBuilder.End(
            subject.Context, MinSurface!, MaterialOf(subject).Taken?.SurfaceHardness, static window => window.Min));

    public static readonly NumberDefinition<GearSpec> MaxSurface = Window("max_usual_hardness", "Maximum usual hardness of the flanks")
        .Custom(static subject => MaterialBuilder.End(
            subject.Context, MaxSurface!, MaterialOf(subject).Taken?.SurfaceHardness, static window => window.Max));

    public static readonly NumberDefinition<GearSpec> MinCore = Window("min_usual_core", "Minimum usual hardness of the core")
        .Custom(static subject => MaterialBuilder.End(
            subject.Context, MinCore!, MaterialOf(subject).Taken?.CoreHardness, static window => window.Min));

    public static readonly NumberDefinition<GearSpec> MaxCore = Window("max_usual_core", "Maximum usual hardness of the core")
        .Custom(static subject => MaterialBuilder.End(
            subject.Context, MaxCore!, MaterialOf(subject).Taken?.CoreHardness, static window => window.Max));

    public static readonly NumberDefinition<GearSpec> Carbon = Number("carbon", "", "Carbon of the steel", Units.Percent).NeverNegative()
        .Custom(static subject => CarbonOf(subject));

    public static readonly NumberDefinition<GearSpec> TensileStrength =
        Number("tensile_strength", "R_m", "Tensile strength, core of a case", Units.Megapascal)
        .By("R_m of the hardness", "ISO 18265, table A.1", Certainty.Published)
        .Noted("an estimate: the conversion scatters by some percent").Tables(HardnessConversion.TableId)
        .When(static s => s.HeatTreatment is not null)
        .From(Own(static () => MaterialQuantities.CoreHardness, "HV"), HardnessConversion.TensileStrength)
        .From(Own(static () => MaterialQuantities.SurfaceHardness, "HV"), HardnessConversion.TensileStrength);

    public static readonly RowDefinition<GearSpec, string> Plating = Text("plating", "Process that brings in hydrogen")
        .When(static s => IsPlated(s)).Stated(static s => s.HeatTreatment?.Plating);

    public static readonly TruthDefinition<GearSpec> HydrogenProne = Truth("hydrogen_prone", "Hydrogen can crack the part")
        .By("R_m > 1000 MPa at its hardest place", Bakes, Certainty.Published)
        .Noted("the depth of a case is measured to 400 HV or more, which is 1290 MPa: every case is prone")
        .When(static s => IsPlated(s))
        .Custom(static subject => Prone(subject));

    public static readonly TruthDefinition<GearSpec> Baked = Truth("baked", "A bake follows the plating")
        .When(static s => IsPlated(s))
        .Custom(static subject => MaterialQuantities.HeatOf(subject) is { Plating: { } plating } heat
            ? Quantity.OfTruth(
                Baked!, heat.Bake is { } follows ? AnalysisContext.Declared(follows.Duration) : AnalysisContext.Declared(plating), heat.Bake is not null, [])
            : null);

    public static readonly NumberDefinition<GearSpec> BakeTemperature = Temperature("bake_temperature", "Bake")
        .Stated(static s => s.HeatTreatment?.Bake?.Temperature).Optional();

    public static readonly NumberDefinition<GearSpec> MinBakeTemperature =
        Number("min_bake_temperature", "", "Minimum temperature of the bake", Units.Celsius)
        .By("190 °C; surface-hardened 130 °C", Bakes, Certainty.Memory).Tables(HydrogenBake.TableId)
        .When(static s => s.HeatTreatment is { Bake: not null })
        .From(OwnRow(static () => MaterialQuantities.Treatment), static treatment => Treatments.HasCase(treatment)
            ? HydrogenBake.MinTemperatureOfCase
            : HydrogenBake.MinTemperature);

    public static readonly NumberDefinition<GearSpec> BakeDuration = Number("bake_duration", "", "Duration of the bake", Units.Hour)
        .Stated(static s => s.HeatTreatment?.Bake?.Duration).Optional();

    public static readonly NumberDefinition<GearSpec> MinBakeDuration =
        Number("min_bake_duration", "", "Minimum duration of the bake", Units.Hour)
        .By("8 h to 22 h by R_m; surface-hardened 8 h", Bakes, Certainty.Memory).Tables(HydrogenBake.TableId)
        .When(static s => s.HeatTreatment is { Bake: not null })
        .For(static s => HasCase(s)).From(OwnRow(static () => MaterialQuantities.Treatment), static _ => HydrogenBake.MinDurationOfCase)
        .From(TensileStrength, HydrogenBake.MinDuration);

    public static readonly NumberDefinition<GearSpec> BakeDelay = Number("bake_delay", "", "Time from plating to the bake", Units.Hour)
        .When(static s => s.HeatTreatment is { Bake: not null })
        .Stated(static s => s.HeatTreatment?.Bake?.BeginsWithin);

    public static readonly TruthDefinition<GearSpec> QualityProven = Truth("quality_proven", "Records prove the quality")
        .Custom(static subject => MaterialQuantities.HeatOf(subject) is { Quality: { Value: not "ML" } quality } heat
            ? Quantity.OfTruth(QualityProven!, AnalysisContext.Declared(heat.Proof ?? quality), heat.Proof is not null, [])
            : null);

    public static readonly TruthDefinition<GearSpec> PeeningRecorded =
        Truth("peening_recorded", "Intensity and coverage of the peening are recorded")
        .Custom(static subject => MaterialQuantities.HeatOf(subject)?.Peening is { } peening
            ? Quantity.OfTruth(
                PeeningRecorded!, Origin.Computed.Instance, peening is { Intensity: not null, Coverage: not null }, [])
            : null);

    public static readonly TruthDefinition<GearSpec> RootGroundAfter = Truth("root_ground_after", "The root is ground after peening")
        .When(static s => s.HeatTreatment is { Peening: not null })
        .Stated(static s => s.HeatTreatment?.Peening?.RootGroundAfter).Assumed(false, "the root stays as peened");

    public static readonly TruthDefinition<GearSpec> Superfinished = Truth("superfinished", "The flanks are superfinished")
        .Stated(static s => s.HeatTreatment?.Superfinished).Optional();

    private static NumberDefinition<GearSpec> Temperature(string name, string title) => Number(name, "", $"{title}, temperature", Units.Celsius);

    private static NumberDefinition<GearSpec> Window(string name, string title) => Number(name, "", title, Units.Vickers).Noted(Catalogue);

    private static MaterialBuilder MaterialOf(Subject subject) => MaterialQuantities.Of(subject);

    private static bool HasCase(GearSpec gear) => MaterialQuantities.HasCase(gear);

    private static bool IsCarburised(GearSpec gear) => gear.HeatTreatment?.Treatment.Value == Treatments.CaseHardened;

    private static bool IsHeated(GearSpec gear) => gear.HeatTreatment is { } heat && heat.Treatment.Value != Treatments.Normalised;

    private static bool IsPlated(GearSpec gear) => gear.HeatTreatment is { Plating.Value: not "none" };

    private static Quantity? CarbonOf(Subject subject)
    {
        if (MaterialOf(subject) is not { Heat: not null, Steel.Carbon: { } carbon } material)
            return null;
        var (least, most) = (carbon.Min.Value.Coherent, carbon.Max.Value.Coherent);
        return subject.Context.Between(
            Carbon,
            new Origin.Declared(
                material.Gear.Material!.Span, $"{material.Gear.Material.Text}, {carbon.Min.Text} to {carbon.Max.Text}", "as the catalogue states it"),
            (least + most) / 2, least, most);
    }

    private static Quantity Prone(Subject subject)
    {
        var (treatment, strength) = (subject[MaterialQuantities.Treatment], subject[TensileStrength]);
        ImmutableArray<Quantity> inputs = [treatment, strength];
        return HasCase((GearSpec)subject.Model) ? Quantity.OfTruth(HydrogenProne, Origin.Computed.Instance, true, [treatment])
            : !strength.IsEvaluated ? Quantity.NotEvaluated(HydrogenProne, inputs, strength.Reasons)
            : Quantity.OfTruth(HydrogenProne, Origin.Computed.Instance, strength.Value.Max > HydrogenBake.DangerousStrength, inputs);
    }
}
