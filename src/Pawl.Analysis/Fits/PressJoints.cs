using Pawl.Analysis.Core;
using Pawl.Analysis.Rating;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Fits;
using Pawl.Mechanics.Rating;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;
using static Pawl.Analysis.Fits.PartFits;

namespace Pawl.Analysis.Fits;

/// <summary>A hub pressed or shrunk on its shaft: interference in service, pressure, what it carries, how it is joined.</summary>
public sealed class PressJoints : Section<FitSpec>
{
    private const string Closed = "closed form";
    private const string Lame = "Lamé; DIN 7190-1";
    private const string Press = "DIN 7190-1; statics";

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
            static (pressure, friction, d, length) => Slipping(d, length).AxialCapacity(pressure, friction));

    public static readonly NumberDefinition<FitSpec> TorqueCapacity =
        Number("torque_capacity", "T_p", "Torque at which the joint slips", Units.NewtonMetre)
        .By("T_p = µ·p·π·d²·l/2", Press).Scaled(1000)
        .From(Pressure, MinFriction, Diameter, JointLength, static (pressure, friction, d, length) => Slipping(d, length).TorqueCapacity(pressure, friction));

    public static readonly NumberDefinition<FitSpec> SlipSafety =
        Number("slip_safety", "S", "Safety against slip, torque and axial force together")
        .By("S = µ·p·π·d·l/√((2·T/d)² + F²)", Press)
        .From(
            Pressure, MinFriction, Diameter, JointLength, TorqueCarried, AxialForce,
            static (pressure, friction, d, length, torque, force) => Slipping(d, length).SlipSafety(pressure, friction, torque, force));

    public static readonly NumberDefinition<FitSpec> RequiredSlipSafety =
        Number("required_slip_safety", "S_min", "Required safety against slip")
        .By("as stated; else 1.8 for torque that reverses, 1.5 in one direction or for an axial force alone", "common practice, no source", Certainty.CommonPractice)
        .When(IsPress)
        .Stated(static s => s.SlipSafety)
        .For(static (s, subject) => s.Torque is not { Value.Coherent: 0 }
            && subject.Reach("train")?.Find(DutyQuantities.ReverseTorque) is { IsEvaluated: true, Value.Nominal: > 0 })
        .Assumed(1.8, "1.8, common practice for torque that reverses, no source")
        .Assumed(1.5, "1.5, common practice, no source");

    public static readonly NumberDefinition<FitSpec> RequiredInterference =
        Number("required_interference", "U_req", "Effective interference that the required safety against slip takes", Units.Micrometre)
        .By("U_req = p_req·d·[…] as for the pressure, p_req = S_min·√((2·T/d)² + F²)/(µ·π·d·l)", Press)
        .From(
            RequiredSlipSafety, TorqueCarried, AxialForce, MinFriction, Diameter, JointLength, HubOutside, ShaftBore, HoleMaterial, ShaftMaterial,
            static (safety, torque, force, friction, d, length, outside, bore, hub, shaft) => Joint(outside, bore, d, hub, shaft)
                .Interference(safety * double.Hypot(2 * torque / d, force) / Slipping(d, length).AxialCapacity(1, friction)));

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
            static (pressure, friction, d, length) => Slipping(d, length).AxialCapacity(pressure, friction));

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

    private static bool IsPress(FitSpec spec) => spec.Function.Value == "press";

    private static bool IsWarm(FitSpec spec) => IsPress(spec) && spec.Joined is { Value: "warm" };

    private static bool IsPressed(FitSpec spec) => IsPress(spec) && !IsWarm(spec);

    private static PressFit Joint(double outside, double bore, double diameter, PartMaterial hub, PartMaterial shaft) =>
        new(diameter, bore, outside, 1, shaft.Elastic, hub.Elastic);

    // What slips depends on neither wall nor material.
    private static PressFit Slipping(double diameter, double length) => new(diameter, 0, 2 * diameter, length, Elastic.Steel, Elastic.Steel);

    private static Extent Effective(Extent interference, double smoothing, double loss)
    {
        var (least, greatest) = (interference.Min - smoothing - Math.Max(0, loss), interference.Max - smoothing);
        return new(Math.Clamp(interference.Nominal - smoothing, least, greatest), least, greatest);
    }
}
