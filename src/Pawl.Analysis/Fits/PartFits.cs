using Pawl.Analysis.Core;
using Pawl.Analysis.Rating;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Fits;
using Pawl.Mechanics.Rating;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Fits;

/// <summary>A hole and the shaft in it, at 20 °C and in service. Clearance and interference are of diameters.</summary>
public sealed class PartFits : Section<FitSpec>
{
    private const string Closed = "closed form";
    private const string Lame = "Lamé; DIN 7190-1";
    private const string Press = "DIN 7190-1; statics";
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

    public static readonly NumberDefinition<FitSpec> Interference =
        Number("interference", "U", "Interference, coldest to hottest and at 20 °C", Units.Micrometre)
        .By("U = −C_θ", Closed).Scaled(0.01)
        .When(IsPress)
        .From(Clearance, static clearance => -clearance);

    public static readonly NumberDefinition<FitSpec> HoleRoughness =
        Number("hole_roughness", "Rz_h", "Roughness of the hole", Units.Micrometre)
        .When(IsPress)
        .Stated(static s => s.HoleRz)
        .Assumed(0.0063, "Rz 6.3 µm, common practice, no source");

    public static readonly NumberDefinition<FitSpec> ShaftRoughness =
        Number("shaft_roughness", "Rz_s", "Roughness of the shaft", Units.Micrometre)
        .When(IsPress)
        .Stated(static s => s.ShaftRz)
        .Assumed(0.004, "Rz 4 µm, common practice, no source");

    public static readonly NumberDefinition<FitSpec> Smoothing =
        Number("smoothing", "s", "Interference lost to smoothing", Units.Micrometre)
        .By("s = 0.8·(Rz_h + Rz_s)", "DIN 7190-1", Certainty.Memory).Scaled(0.01)
        .From(HoleRoughness, ShaftRoughness, PressFit.Smoothing);

    public static readonly NumberDefinition<FitSpec> HubOutside =
        Number("hub_outside", "D_o", "Outside diameter of the hub", Units.Millimetre).When(IsPress).Stated(static s => s.HubOutside);

    public static readonly NumberDefinition<FitSpec> ShaftBore =
        Number("shaft_bore", "d_i", "Bore of the shaft", Units.Millimetre)
        .When(IsPress)
        .Stated(static s => s.ShaftBore)
        .Assumed(0, "a solid shaft, for no bore is stated");

    public static readonly NumberDefinition<FitSpec> JointLength =
        Number("length", "l", "Length of the joint", Units.Millimetre).When(IsPress).Stated(static s => s.Length);

    public static readonly NumberDefinition<FitSpec> Speed =
        Number("speed", "n", "Maximum speed of the joint", Units.RevolutionPerMinute)
        .By("as stated, else of the body, at the fastest input of duty and spectrum", Closed).Scaled(100)
        .When(IsPress)
        .Stated(static s => s.Speed)
        .From(
            Of("body", static () => BodyQuantities.Speed, "n_body"),
            BodyInputs.FastestOverRated, static (body, fastest) => Math.Abs(body) * fastest);

    public static readonly NumberDefinition<FitSpec> SpeedLoss =
        Number("speed_loss", "ΔU", "Interference lost at speed", Units.Micrometre)
        .By("ΔU = 2·(u_h − u_s), u growth of rotating rings", "Timoshenko, Theory of Elasticity: rotating ring in plane stress").Scaled(0.001)
        .Noted("a toothed rim counts as a plain ring up to its outside")
        .From(
            Speed, HubOutside, ShaftBore, Diameter, HoleMaterial, ShaftMaterial,
            static (speed, outside, bore, d, hub, shaft) =>
                Joint(outside, bore, d, hub, shaft).CentrifugalLoss(speed, shaft.Density, hub.Density));

    public static readonly NumberDefinition<FitSpec> SpeedLossShare =
        Number("speed_loss_share", "", "Interference lost at speed, relative to what temperature and smoothing leave", Units.Percent)
        .By("ΔU/(U − s)", Closed)
        .From(
            SpeedLoss, Interference, Smoothing,
            static (loss, interference, smoothing) => interference - smoothing > 0
                ? loss / (interference - smoothing)
                : throw Guard.Because($"no interference is left to lose"));

    public static readonly NumberDefinition<FitSpec> EffectiveInterference =
        Number("effective_interference", "U_w", "Effective interference", Units.Micrometre)
        .By("U_w from U_min − s − ΔU at speed to U_max − s at rest", "DIN 7190-1").Scaled(0.01)
        .Range(Interference.Limits(), Smoothing, SpeedLoss, static (interference, smoothing, loss) => Effective(interference, smoothing, loss));

    public static readonly NumberDefinition<FitSpec> Pressure =
        Number("pressure", "p", "Pressure in the joint", Units.Megapascal)
        .By("p = U_w/(d·[((1 + Q_s²)/(1 − Q_s²) − ν_s)/E_s + ((1 + Q_h²)/(1 − Q_h²) + ν_h)/E_h]), Q_s = d_i/d, Q_h = d/D_o", Lame).Scaled(10)
        .Noted("plane stress, elastic, parts of equal length; 0 where there is clearance")
        .From(
            EffectiveInterference, HubOutside, ShaftBore, Diameter, HoleMaterial, ShaftMaterial,
            static (interference, outside, bore, d, hub, shaft) => Joint(outside, bore, d, hub, shaft).Pressure(interference));

    public static readonly NumberDefinition<FitSpec> MinFriction =
        Number("min_friction", "µ", "Minimum friction of the joint").When(IsPress).Stated(static s => s.MinFriction);

    public static readonly NumberDefinition<FitSpec> RatedTorque =
        Number("rated_torque", "T_r", "Rated torque through the joint", Units.NewtonMetre)
        .By("as stated, else that of the body that it carries", "the spec; torque balance of the train").Scaled(1000)
        .When(IsPress)
        .Stated(static s => s.Torque, "carries or torque")
        .From(Of("carried", static () => BodyQuantities.Torque, "T_body"), static torque => Math.Abs(torque))
        .Custom(static subject => ((FitSpec)subject.Model).Carries is { } carried
            ? Quantity.NotEvaluated(RatedTorque!, [], $"the torque of {carried.Value} is not determined")
            : null);

    public static readonly NumberDefinition<FitSpec> OverloadFactor =
        Number("overload_factor", "K", "Overload of the joint over the rated torque")
        .By("K = max(K_A, T_peak/T_in)", "ISO 6336-1 for K_A")
        .When(static s => IsPress(s) && s.Torque is not { Value.Coherent: 0 })
        .From(
            Of("train", static () => DutyQuantities.ApplicationFactor),
            Of("train", static () => DutyQuantities.PeakTorque),
            Of("train", static () => TrainQuantities.InputTorque, "T_in"),
            static (application, peak, rated) => Math.Max(application, peak / rated));

    public static readonly NumberDefinition<FitSpec> TorqueCarried =
        Number("torque_carried", "T", "Maximum torque through the joint", Units.NewtonMetre)
        .By("T = K·T_r", Closed).Scaled(1000)
        .From(RatedTorque, OverloadFactor.Or(1), static (torque, overload) => torque * overload);

    public static readonly NumberDefinition<FitSpec> AxialForce =
        Number("axial_force", "F", "Maximum axial force through the joint", Units.Newton)
        .When(IsPress)
        .Stated(static s => s.AxialForce)
        .Assumed(0, "none, for none is stated");

    public static readonly NumberDefinition<FitSpec> AxialCapacity =
        Number("axial_capacity", "F_p", "Axial force at which the joint slips", Units.Newton)
        .By("F_p = µ·p·π·d·l", Press).Scaled(100)
        .From(
            Pressure, MinFriction, Diameter, JointLength,
            static (pressure, friction, d, length) => new PressFit(d, 0, 2 * d, length, Elastic.Steel, Elastic.Steel).AxialCapacity(pressure, friction));

    public static readonly NumberDefinition<FitSpec> TorqueCapacity =
        Number("torque_capacity", "T_p", "Torque at which the joint slips", Units.NewtonMetre)
        .By("T_p = F_p·d/2", Press).Scaled(1000)
        .From(AxialCapacity, Diameter, static (force, d) => force * d / 2);

    public static readonly NumberDefinition<FitSpec> SlipSafety =
        Number("slip_safety", "S", "Safety against slip, torque and axial force together")
        .By("S = F_p/√((2·T/d)² + F²)", Press)
        .From(
            AxialCapacity, TorqueCarried, AxialForce, Diameter,
            static (capacity, torque, force, d) => capacity / Guard.Positive(double.Hypot(2 * torque / d, force), "the load on the joint"));

    public static readonly NumberDefinition<FitSpec> RequiredSlipSafety =
        Number("required_slip_safety", "", "Required safety against slip")
        .When(IsPress)
        .Stated(static s => s.SlipSafety)
        .Assumed(1.5, "1.5, common practice, no source");

    public static readonly NumberDefinition<FitSpec> HubStress =
        Number("hub_stress", "σ_h", "Von Mises stress at the bore of the hub", Units.Megapascal).NeverNegative()
        .By("σ_h = p·√(3 + Q_h⁴)/(1 − Q_h²), Q_h = d/D_o", Lame)
        .Noted("a plain ring; the ends of a hub on a longer shaft see more")
        .From(Pressure, HubOutside, Diameter, HoleMaterial, static (pressure, outside, d, hub) =>
            new PressFit(d, 0, outside, 1, hub.Elastic, hub.Elastic).HubStress(pressure));

    public static readonly NumberDefinition<FitSpec> HubYield =
        Number("hub_yield", "R_h", "Yield strength of the hub", Units.Megapascal).When(IsPress).Stated(static s => s.HubYield);

    public static readonly NumberDefinition<FitSpec> ShaftStress =
        Number("shaft_stress", "σ_s", "Von Mises stress of the shaft", Units.Megapascal).NeverNegative()
        .By("σ_s = 2·p/(1 − Q_s²) at a bore, p of a solid shaft, Q_s = d_i/d", Lame)
        .From(Pressure, ShaftBore, Diameter, ShaftMaterial, static (pressure, bore, d, shaft) =>
            new PressFit(d, bore, 2 * d, 1, shaft.Elastic, shaft.Elastic).ShaftStress(pressure));

    public static readonly NumberDefinition<FitSpec> ShaftYield =
        Number("shaft_yield", "R_s", "Yield strength of the shaft", Units.Megapascal).When(IsPress).Stated(static s => s.ShaftYield);

    public static readonly NumberDefinition<FitSpec> MaxFriction =
        Number("max_friction", "µ_max", "Maximum friction in pressing").When(IsPressed).Stated(static s => s.MaxFriction);

    public static readonly NumberDefinition<FitSpec> PressingPressure =
        Number("pressing_pressure", "p_20", "Pressure in the joint at 20 °C", Units.Megapascal)
        .By("as the pressure in the joint, of the interference −C − s", Lame).Scaled(10)
        .When(IsPressed)
        .From(
            ClearanceAtRoom, Smoothing, HubOutside, ShaftBore, Diameter, HoleMaterial, ShaftMaterial,
            static (clearance, smoothing, outside, bore, d, hub, shaft) => Joint(outside, bore, d, hub, shaft).Pressure(-clearance - smoothing));

    public static readonly NumberDefinition<FitSpec> PressForce =
        Number("press_force", "", "Force to press the parts together", Units.Newton)
        .By("µ_max·p_20·π·d·l", Press).Scaled(1000)
        .From(
            PressingPressure, MaxFriction, Diameter, JointLength,
            static (pressure, friction, d, length) => new PressFit(d, 0, 2 * d, length, Elastic.Steel, Elastic.Steel).AxialCapacity(pressure, friction));

    public static readonly NumberDefinition<FitSpec> MaxPressForce =
        Number("max_press_force", "", "Available press force", Units.Newton).When(IsPressed).Stated(static s => s.MaxPressForce).Optional();

    public static readonly NumberDefinition<FitSpec> JoiningTemperature =
        Number("joining_temperature", "θ_j", "Temperature of the hub at which it slips on freely, shaft at 20 °C", Units.Celsius)
        .By("θ_j = 20 °C + (d/1000 − C)/(α_h·d)", "DIN 7190-1; thermal expansion").Scaled(100)
        .Noted("clearance of a thousandth of the diameter while joining, DIN 7190-1 from memory")
        .When(IsWarm)
        .From(ClearanceAtRoom, HoleExpansion, ShaftExpansion, Diameter, static (clearance, ofHub, ofShaft, d) =>
            new PressFit(d, 0, 2 * d, 1, Elastic.Steel, Elastic.Steel).HubTemperature(-clearance, d / 1000, ofHub, ofShaft));

    public static readonly NumberDefinition<FitSpec> MaxJoiningTemperature =
        Number("max_joining_temperature", "", "Permitted temperature of the hub", Units.Celsius).When(IsWarm).Stated(static s => s.MaxJoining);

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

    private static bool IsPress(FitSpec spec) => spec.Function.Value == "press";

    private static bool IsWarm(FitSpec spec) => IsPress(spec) && spec.Joined is { Value: "warm" };

    private static bool IsPressed(FitSpec spec) => IsPress(spec) && !IsWarm(spec);

    private static PressFit Joint(double outside, double bore, double diameter, PartMaterial hub, PartMaterial shaft) =>
        new(diameter, bore, outside, 1, shaft.Elastic, hub.Elastic);

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

    private static Extent Effective(Extent interference, double smoothing, double loss)
    {
        var (least, greatest) = (interference.Min - smoothing - Math.Max(0, loss), interference.Max - smoothing);
        return new(Math.Clamp(interference.Nominal - smoothing, least, greatest), least, greatest);
    }
}
