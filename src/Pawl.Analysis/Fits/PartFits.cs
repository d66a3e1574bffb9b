using Pawl.Analysis.Core;
using Pawl.Mechanics.Fits;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Fits;

/// <summary>A hole and the shaft in it, at 20 °C and in service. Clearance and interference are of diameters.</summary>
public sealed class PartFits : Section<FitSpec>
{
    private const string Closed = "closed form";
    private const string Warm = "C_θ = C + d·(α_h·(θ_h − 20 °C) − α_s·(θ_s − 20 °C))";
    private const string Thermal = "thermal expansion; ISO 1 for the 20 °C";

    public static readonly RowDefinition<FitSpec, string> Function = Text("function", "Function of the fit")
        .OneOf("slide", "locate", "press", "register").Stated(static s => s.Function);

    public static readonly NumberDefinition<FitSpec> Diameter = Number("diameter", "d", "Nominal diameter", Units.Millimetre).NeverNegative()
        .Custom(static subject => Nominal(subject, (FitSpec)subject.Model));

    public static readonly NumberDefinition<FitSpec> Hole =
        Number("hole", "d_h", "Diameter of the hole, mean of its limits", Units.Millimetre)
        .Custom(static subject => Mean(subject, Hole!, ((FitSpec)subject.Model).Hole, "hole", static fit => fit.Hole));

    public static readonly NumberDefinition<FitSpec> Shaft =
        Number("shaft", "d_s", "Diameter of the shaft, mean of its limits", Units.Millimetre)
        .Custom(static subject => Mean(subject, Shaft!, ((FitSpec)subject.Model).Shaft, "shaft", static fit => fit.Shaft));

    public static readonly RowDefinition<FitSpec, PartMaterial> HoleMaterial = Row<PartMaterial>("hole_material", "Material of the part with the hole")
        .Custom(static subject => PartMaterial.Of(
            subject.Context, HoleMaterial!, ((FitSpec)subject.Model).HolePart, ((FitSpec)subject.Model).HoleMaterial));

    public static readonly RowDefinition<FitSpec, PartMaterial> ShaftMaterial = Row<PartMaterial>("shaft_material", "Material of the part with the shaft")
        .Custom(static subject => PartMaterial.Of(
            subject.Context, ShaftMaterial!, ((FitSpec)subject.Model).ShaftPart, ((FitSpec)subject.Model).ShaftMaterial
                ?? (((FitSpec)subject.Model).Pin is { } pin ? subject.Context.Spec.PlanetPins.Find(pin.Value)?.Material : null)));

    public static readonly NumberDefinition<FitSpec> HoleExpansion =
        Number("hole_expansion", "α_h", "Thermal expansion of the part with the hole", Units.PerKelvin)
        .By("that of its material", "the catalogue", Certainty.Declared)
        .Custom(static subject => PartMaterial.ExpansionOf(subject.Context, HoleExpansion!, subject[HoleMaterial]));

    public static readonly NumberDefinition<FitSpec> ShaftExpansion =
        Number("shaft_expansion", "α_s", "Thermal expansion of the part with the shaft", Units.PerKelvin)
        .By("that of its material", "the catalogue", Certainty.Declared)
        .Custom(static subject => PartMaterial.ExpansionOf(subject.Context, ShaftExpansion!, subject[ShaftMaterial]));

    public static readonly NumberDefinition<FitSpec> ClearanceAtRoom =
        Number("clearance_20", "C", "Clearance at 20 °C; negative: interference", Units.Micrometre)
        .By("C = d_h − d_s", "ISO 286-1:2010").Scaled(0.01)
        .From(Hole, Shaft, static (hole, shaft) => hole - shaft);

    public static readonly RowDefinition<FitSpec, string> KindOfFit = Text("fit_kind", "Kind of fit at 20 °C").OneOf("clearance", "transition", "interference")
        .By("C_min ≥ 0 clearance, C_max ≤ 0 interference, else transition", "ISO 286-1:2010, definitions")
        .From(ClearanceAtRoom.Limits(), static clearance => KindOf(clearance));

    public static readonly RowDefinition<FitSpec, string> Contradiction = Text("contradiction", "Conflict between limits and function")
        .By("slide: C_min ≥ 0; press: C_max < 0; locate and register: not C_max < 0, at 20 °C", Closed)
        .From(Function, ClearanceAtRoom.Limits(), static (function, clearance) => Conflict(function, LimitsOf(clearance).Kind));

    public static readonly NumberDefinition<FitSpec> CompetingRegisters =
        Number("competing_registers", "", "Other registers between the same two parts")
        .By("counted", Closed)
        .When(static s => s is { Function.Value: "register", HolePart: not null, ShaftPart: not null })
        .Custom(static subject => Quantity.Computed(
            CompetingRegisters!, subject.Context.Spec.Fits.Entries.Count(other => Competes(other, (FitSpec)subject.Model)), []));

    public static readonly NumberDefinition<FitSpec> ColdTemperature =
        Number("cold_temperature", "θ_c", "Temperature at the coldest start", Units.Celsius)
        .Found(static (_, subject) => subject.Context.Spec.Duty?.Oil?.Coldest, static _ => "duty.oil.coldest");

    public static readonly NumberDefinition<FitSpec> OilRunning =
        Number("oil_running", "θ_oil", "Oil temperature in continuous service", Units.Celsius)
        .Found(static (_, subject) => subject.Context.Spec.Duty?.Oil?.Running, static _ => "duty.oil.running");

    public static readonly NumberDefinition<FitSpec> OilHottest =
        Number("oil_hottest", "θ_max", "Maximum oil temperature", Units.Celsius)
        .Found(static (_, subject) => subject.Context.Spec.Duty?.Oil?.Hottest, static _ => "duty.oil.hottest");

    public static readonly NumberDefinition<FitSpec> HoleRunning =
        Number("hole_running", "θ_h", "Hole part in continuous service", Units.Celsius)
        .By("as stated, else that of the oil", "the spec", Certainty.Declared)
        .Stated(static s => s.HoleRunning)
        .From(OilRunning, static oil => oil);

    public static readonly NumberDefinition<FitSpec> ShaftRunning =
        Number("shaft_running", "θ_s", "Shaft part in continuous service", Units.Celsius)
        .By("as stated, else that of the oil", "the spec", Certainty.Declared)
        .Stated(static s => s.ShaftRunning)
        .From(OilRunning, static oil => oil);

    public static readonly NumberDefinition<FitSpec> HoleAboveOil =
        Number("hole_above_oil", "Δθ_h", "Hole part above the oil", Units.Kelvin)
        .By("Δθ_h = θ_h − θ_oil", Closed).Scaled(10)
        .When(static s => s.HoleRunning is not null)
        .From(HoleRunning, OilRunning, static (own, oil) => own - oil);

    public static readonly NumberDefinition<FitSpec> ShaftAboveOil =
        Number("shaft_above_oil", "Δθ_s", "Shaft part above the oil", Units.Kelvin)
        .By("Δθ_s = θ_s − θ_oil", Closed).Scaled(10)
        .When(static s => s.ShaftRunning is not null)
        .From(ShaftRunning, OilRunning, static (own, oil) => own - oil);

    public static readonly NumberDefinition<FitSpec> Cold =
        Number("clearance_cold", "C_θ", "Clearance at the coldest start", Units.Micrometre)
        .By(Warm, Thermal).Scaled(0.01)
        .From(
            Hole, Shaft, Diameter, HoleExpansion, ColdTemperature, ShaftExpansion,
            static (hole, shaft, d, ofHole, cold, ofShaft) => At(hole, shaft, d, ofHole, cold, ofShaft, cold));

    public static readonly NumberDefinition<FitSpec> Running =
        Number("clearance_running", "C_θ", "Clearance in continuous service", Units.Micrometre)
        .By(Warm, Thermal).Scaled(0.01)
        .From(Hole, Shaft, Diameter, HoleExpansion, HoleRunning, ShaftExpansion, ShaftRunning, At);

    public static readonly NumberDefinition<FitSpec> Hot =
        Number("clearance_hot", "C_θ", "Clearance at the maximum oil temperature", Units.Micrometre)
        .By($"{Warm}; both parts as far above the oil as in continuous service", Thermal).Scaled(0.01)
        .From(
            Hole, Shaft, Diameter, HoleExpansion, ShaftExpansion, OilHottest, HoleAboveOil.Or(0), ShaftAboveOil.Or(0),
            static (hole, shaft, d, ofHole, ofShaft, oil, holeAbove, shaftAbove) =>
                At(hole, shaft, d, ofHole, oil + holeAbove, ofShaft, oil + shaftAbove));

    public static readonly NumberDefinition<FitSpec> Clearance =
        Number("clearance", "C_θ", "Clearance, coldest to hottest and at 20 °C", Units.Micrometre)
        .By("limits over all states", Closed).Scaled(0.01)
        .Range(ClearanceAtRoom.Limits(), Cold.Limits(), Running.Limits(), Hot.Limits(), Hull);

    public static readonly NumberDefinition<FitSpec> MinClearance =
        Number("min_clearance", "", "Required minimum clearance", Units.Micrometre).Scaled(0.01)
        .When(static s => s.MinClearance is not null || s.Function.Value == "slide")
        .Stated(static s => s.MinClearance)
        .Assumed(0, "0, for it must move");

    public static readonly NumberDefinition<FitSpec> MaxClearance =
        Number("max_clearance", "", "Permitted maximum clearance", Units.Micrometre).Scaled(0.01)
        .Stated(static s => s.MaxClearance).Optional();

    /// <summary>All fits, in the order of the spec.</summary>
    internal static void AddAll(AnalysisContext context)
    {
        foreach (var spec in context.Spec.Fits.Entries)
        {
            context.Begin(SubjectKinds.Fit, $"fits.{spec.Name.Value}", spec.Name.Span, spec)
                .InDuty(context)
                .RelateOptional("body", () => Bodies(context, spec.ShaftPart, spec.HolePart, spec.Carries).FirstOrDefault())
                .RelateOptional("carried", () => Bodies(context, spec.Carries).FirstOrDefault());
        }
    }

    private static IEnumerable<Subject> Bodies(AnalysisContext context, params Stated<string>?[] names) =>
        names.OfType<Stated<string>>().Select(name => context.Find(SubjectKinds.Body, $"bodies.{name.Value}")).OfType<Subject>();

    private static Quantity Nominal(Subject subject, FitSpec spec)
    {
        if ((spec.Size ?? spec.Hole ?? spec.Shaft) is not { } stated)
            return AnalysisContext.Missing(Diameter, $"{subject.Path}.size or {subject.Path}.hole");
        var nominal = stated.Value.Nominal.Coherent;
        return subject.Context.Between(Diameter, AnalysisContext.Declared(stated), nominal, nominal, nominal);
    }

    /// <summary>A size in the middle of its limits: the nominal size of a press lies outside of them, and no part has it.</summary>
    private static Quantity Mean(
        Subject subject, QuantityKind kind, Stated<Toleranced>? own, string key, Func<Tolerance.Fit, Tolerance.ToleranceClass> part)
    {
        // One size with two classes, or two dimensions.
        var stated = ((FitSpec)subject.Model).Size is { Value.Tolerance: Tolerance.Fit fit } size
            ? new(new(size.Value.Nominal, part(fit)), size.Span, size.Text)
            : own;
        var found = subject.Context.Dimension(kind, stated, $"{subject.Path}.size or {subject.Path}.{key}");
        return found.IsEvaluated
            ? subject.Context.Between(kind, found.Origin, (found.Value.Min + found.Value.Max) / 2, found.Value.Min, found.Value.Max)
            : found;
    }

    // 25.021 − 25.021 is not quite 0 in binary.
    private static FitLimits LimitsOf(Extent clearance) => new(Math.Round(clearance.Min, 9), Math.Round(clearance.Max, 9));

    private static string KindOf(Extent clearance) => LimitsOf(clearance).Kind switch
    {
        FitKind.Clearance => "clearance",
        FitKind.Interference => "interference",
        _ => "transition",
    };

    private static string Conflict(string function, FitKind kind) => (function, kind) switch
    {
        ("slide", FitKind.Transition) => "a slide that some pairs of parts jam",
        ("slide", FitKind.Interference) => "a slide without clearance",
        ("press", FitKind.Clearance) => "a press with clearance",
        ("press", FitKind.Transition) => "a press that some pairs of parts leave loose",
        ("locate", FitKind.Interference) => "a locating fit that is a press: it comes apart by force only",
        ("register", FitKind.Interference) => "a register that is a press: it comes apart by force only",
        _ => "none",
    };

    private static bool Competes(FitSpec other, FitSpec spec) =>
        !ReferenceEquals(other, spec) && other is { Function.Value: "register", HolePart: { } hole, ShaftPart: { } shaft }
        && ((hole.Value == spec.HolePart!.Value && shaft.Value == spec.ShaftPart!.Value)
            || (hole.Value == spec.ShaftPart!.Value && shaft.Value == spec.HolePart!.Value));

    /// <summary>Clearance with both parts at their temperatures.</summary>
    private static double At(double hole, double shaft, double diameter, double ofHole, double holeTemperature, double ofShaft, double shaftTemperature)
    {
        var clearance = hole - shaft;
        return new FitLimits(clearance, clearance).At(diameter, ofHole, holeTemperature, ofShaft, shaftTemperature).Min;
    }

    /// <summary>Limits over several states; nominal is that of the first.</summary>
    private static Extent Hull(Extent room, Extent cold, Extent running, Extent hot) => new(
        room.Nominal,
        Math.Min(Math.Min(room.Min, cold.Min), Math.Min(running.Min, hot.Min)),
        Math.Max(Math.Max(room.Max, cold.Max), Math.Max(running.Max, hot.Max)));
}
