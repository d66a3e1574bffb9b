using Pawl.Analysis.Core;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Assembly;
using Pawl.Mechanics.Gears;
using Pawl.Mechanics.Trains;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;
using G = Pawl.Analysis.Gears.GearQuantities;

namespace Pawl.Analysis.Gears;

/// <summary>A pair of gears in mesh. In an internal pair the ring is the second gear.</summary>
public sealed class MeshQuantities : Section<MeshSpec>
{
    private const string Iso = "ISO 21771";
    private const string Willis = "Willis relation of every mesh, solved as one linear system";
    private const string PowerBalance = "torque and power balance, losses by the power in the carrier frame";

    /// <summary>The losses of every mesh stand behind it.</summary>
    private static readonly IInput TrainEfficiency = Of("train", static () => TrainQuantities.Efficiency);

    // Drawing dimensions hold at 20 °C (ISO 1).
    private const double ReferenceTemperature = 20;

    public static readonly RowDefinition<MeshSpec, string> Kind = Text("kind", "External or internal pair").OneOf(G.External, G.Internal)
        .By("internal where one gear is a ring", "the spec", Certainty.Declared)
        .From(
            OfRow("first", static () => G.Kind), OfRow("second", static () => G.Kind),
            static (first, second) => first == G.Internal || second == G.Internal ? G.Internal : G.External);

    public static readonly TruthDefinition<MeshSpec> SameRack = Truth("same_rack", "Module, pressure angle and helix angle agree")
        .By("m_n, α_n and β equal on both gears", Iso)
        .From(
            Of("first", static () => G.Module, "m_n1"), Of("second", static () => G.Module, "m_n2"),
            Of("first", static () => G.PressureAngle, "α_n1"), Of("second", static () => G.PressureAngle, "α_n2"),
            Of("first", static () => G.HelixAngle, "β_1"), Of("second", static () => G.HelixAngle, "β_2"),
            static (m1, m2, alpha1, alpha2, beta1, beta2) =>
                Math.Abs(m1 - m2) <= 1e-9 && Math.Abs(alpha1 - alpha2) <= 1e-9 && Math.Abs(beta1 - beta2) <= 1e-9);

    public static readonly TruthDefinition<MeshSpec> HandsAgree = Truth("hands_agree", "Hands of helix agree")
        .By("external pair: opposite hands; internal pair: the same hand", Iso)
        .From(OfRow("first", static () => G.Hand), OfRow("second", static () => G.Hand), Kind, static (first, second, kind) =>
            Helix.HandsAgree(HandOf(first), HandOf(second), kind == G.Internal));

    public static readonly NumberDefinition<MeshSpec> Module = Number("module", "m_n", "Normal module", Units.Millimetre).NeverNegative()
        .By("that of both gears", "the spec", Certainty.Declared)
        .From(SameRack, Of("first", static () => G.Module), static (same, module) =>
            same ? module : throw Guard.Because($"the gears differ in module, pressure angle or helix angle"));

    public static readonly NumberDefinition<MeshSpec> ReferenceCentreDistance =
        Number("reference_centre_distance", "a", "Reference centre distance", Units.Millimetre)
        .By("a = m_n·|z_1 + z_2| / (2·cos β)", Iso)
        .From(
            Kind, Of("first", static () => G.Teeth, "z_1"), Of("second", static () => G.Teeth, "z_2"), Module,
            Of("first", static () => G.HelixAngle), static (kind, z1, z2, m, beta) => Turn(kind)
                * MeshGeometry.ReferenceCentreDistance((int)z1, Second(kind, z2), ToothGeometry.TransverseModule(m, beta)));

    public static readonly NumberDefinition<MeshSpec> ShiftCentreDistance =
        Number("shift_centre_distance", "a_w(x)", "Centre distance without play, from the profile shifts", Units.Millimetre)
        .By("a_w = a·cos α_t/cos α_wt, inv α_wt = inv α_t + 2·tan α_n·(x_1 + x_2)/(z_1 + z_2)", Iso)
        .From(
            Kind, ReferenceCentreDistance, Of("first", static () => G.TransversePressureAngle), Of("first", static () => G.PressureAngle),
            Of("first", static () => G.ProfileShift, "x_1"), Of("second", static () => G.ProfileShift, "x_2"),
            Of("first", static () => G.Teeth, "z_1"), Of("second", static () => G.Teeth, "z_2"),
            static (kind, a, transverse, normal, x1, x2, z1, z2) => Turn(kind) * MeshGeometry.WorkingCentreDistance(
                Turn(kind) * a, transverse,
                MeshGeometry.WorkingPressureAngleFromShift(transverse, normal, x1 + x2, (int)z1, Second(kind, z2))));

    public static readonly NumberDefinition<MeshSpec> CentreDistance =
        Number("centre_distance", "a_w", "Working centre distance", Units.Millimetre)
        .By("as declared; else as another mesh of the planet with a central gear declares it; else from the profile shifts", Iso)
        .Stated(static s => s.CentreDistance)
        .From(Of("same_centres", static () => CentreDistance!), static a => a)
        .From(ShiftCentreDistance, static a => a);

    public static readonly NumberDefinition<MeshSpec> CentreDistanceDifference =
        Number("centre_distance_difference", "Δa_w", "Declared centre distance less that of the profile shifts", Units.Millimetre)
        .By("Δa_w = a_w − a_w(x)", Iso).Scaled(0.005)
        .When(static (s, subject) => s.CentreDistance is not null || subject.Reach("same_centres") is not null)
        .From(CentreDistance, ShiftCentreDistance, static (working, free) => working - free);

    public static readonly NumberDefinition<MeshSpec> WorkingPressureAngle =
        Number("working_pressure_angle", "α_wt", "Working transverse pressure angle", Units.Degree)
        .By("α_wt = acos(a·cos α_t/a_w)", Iso)
        .From(Kind, ReferenceCentreDistance, Of("first", static () => G.TransversePressureAngle), CentreDistance, AngleAt);

    public static readonly NumberDefinition<MeshSpec> ClosingShiftSum =
        Number("closing_shift_sum", "(x_1 + x_2)(a_w)", "Sum of the profile shifts that closes the mesh at its centre distance")
        .By("x_1 + x_2 = (z_1 + z_2)·(inv α_wt − inv α_t)/(2·tan α_n)", Iso)
        .When(CentreDistanceDifference, IsOpen)
        .From(
            Kind, Of("first", static () => G.Teeth, "z_1"), Of("second", static () => G.Teeth, "z_2"), WorkingPressureAngle,
            Of("first", static () => G.TransversePressureAngle), Of("first", static () => G.PressureAngle),
            static (kind, z1, z2, working, transverse, normal) =>
                MeshGeometry.ProfileShiftSum(working, transverse, normal, (int)z1, Second(kind, z2)));

    private static readonly IInput<double> FirstShift = Of("first", static () => G.ProfileShift, "x_1");

    private static readonly IInput<double> SecondShift = Of("second", static () => G.ProfileShift, "x_2");

    public static readonly RowDefinition<MeshSpec, string> ClosingValues = Text("closing_values", "Centre distance or profile shifts that close the mesh")
        .By("a_w(x), or (x_1 + x_2)(a_w)", Iso)
        .When(CentreDistanceDifference, IsOpen)
        .Solved([ShiftCentreDistance, ClosingShiftSum, FirstShift, SecondShift], static (_, subject) => Closing(
            subject[ShiftCentreDistance].Value.Nominal, subject[ClosingShiftSum].Value.Nominal,
            subject.Reach("first")![G.ProfileShift].Value.Nominal + subject.Reach("second")![G.ProfileShift].Value.Nominal));

    public static readonly NumberDefinition<MeshSpec> CommonFaceWidth =
        Number("common_face_width", "b", "Face width in common", Units.Millimetre)
        .By("b = least of b_1, b_2 and (b_1 + b_2)/2 − |place_1 − place_2|", "closed form").Turns()
        .From(
            Of("first", static () => G.FaceWidth, "b_1"), Of("first", static () => G.AxialPosition, "place_1"),
            Of("second", static () => G.FaceWidth, "b_2"), Of("second", static () => G.AxialPosition, "place_2"),
            static (b1, place1, b2, place2) => Math.Min(Math.Min(b1, b2), -new AxialSpan(place1, b1).GapTo(new(place2, b2))));

    public static readonly NumberDefinition<MeshSpec> BasePitch =
        Number("transverse_base_pitch", "p_bt", "Transverse base pitch", Units.Millimetre)
        .By("p_bt = π·m_n/cos β·cos α_t", Iso)
        .From(
            Module, Of("first", static () => G.HelixAngle), Of("first", static () => G.TransversePressureAngle),
            static (m, beta, transverse) => PathOfContact.TransverseBasePitch(ToothGeometry.TransverseModule(m, beta), transverse));

    public static readonly NumberDefinition<MeshSpec> TransverseContactRatio =
        Number("transverse_contact_ratio", "ε_α", "Transverse contact ratio")
        .By("ε_α = g_α / p_bt, g_α = ±½√(d_Na1² − d_b1²) ± ½√(d_Na2² − d_b2²) − a_w·sin α_wt", Iso)
        .Noted("full involute down to the start of active profile").Turns()
        .From(
            Kind, CentreDistance, WorkingPressureAngle, Of("first", static () => G.ActiveTipDiameter, "d_Na1"),
            Of("first", static () => G.BaseDiameter, "d_b1"), Of("second", static () => G.ActiveTipDiameter, "d_Na2"),
            Of("second", static () => G.BaseDiameter, "d_b2"), BasePitch,
            static (kind, aw, angle, tip1, base1, tip2, base2, pitch) => PathOfContact.TransverseContactRatio(
                PathOfContact.Length(
                    Turn(kind) * aw, angle, PathOfContact.CurvatureAt(tip1, base1),
                    PathOfContact.CurvatureAt(Turn(kind) * tip2, Turn(kind) * base2)),
                pitch));

    public static readonly NumberDefinition<MeshSpec> OverlapRatio = Number("overlap_ratio", "ε_β", "Overlap ratio")
        .By("ε_β = b·sin β / (π·m_n)", Iso)
        .From(CommonFaceWidth, Of("first", static () => G.HelixAngle), Module, PathOfContact.OverlapRatio);

    public static readonly NumberDefinition<MeshSpec> TotalContactRatio = Number("total_contact_ratio", "ε_γ", "Total contact ratio")
        .By("ε_γ = ε_α + ε_β; spur gears: ε_γ = ε_α", Iso)
        .For(static (_, subject) => IsSpur(subject)).From(TransverseContactRatio, static transverse => transverse)
        .From(TransverseContactRatio, OverlapRatio, PathOfContact.TotalContactRatio);

    public static readonly NumberDefinition<MeshSpec> LossFactor = Number("loss_factor", "H_v", "Tooth loss factor")
        .By("H_v = π·(1/z_1 + 1/z_2)/cos β_b · (1 − ε_α + ε_1² + ε_2²)", "ISO/TR 14179-2", Certainty.Memory)
        .Noted("for ε_α from 1 to 2; outside, state the efficiency of the mesh").Turns()
        .From(
            Kind, Of("first", static () => G.Teeth, "z_1"), Of("second", static () => G.Teeth, "z_2"), Of("first", static () => G.BaseHelixAngle),
            Of("first", static () => G.ActiveTipDiameter, "d_Na1"), Of("first", static () => G.BaseDiameter, "d_b1"),
            Of("second", static () => G.ActiveTipDiameter, "d_Na2"), Of("second", static () => G.BaseDiameter, "d_b2"), WorkingPressureAngle,
            static (kind, z1, z2, helix, tip1, base1, tip2, base2, angle) => MeshFormulas.LossOf(
                (int)z1, Second(kind, z2), helix, ToothGeometry.PressureAngleAt(tip1, base1),
                ToothGeometry.PressureAngleAt(Turn(kind) * tip2, Turn(kind) * base2), angle));

    public static readonly NumberDefinition<MeshSpec> Friction = Number("friction", "μ_m", "Mean friction coefficient of the flanks")
        .When(static s => s.Efficiency is null || s.Friction is not null)
        .Stated(static s => s.Friction).Assumed(0.06, "0.06, common practice for oil-lubricated ground flanks, no source");

    public static readonly NumberDefinition<MeshSpec> Efficiency = Number("efficiency", "η", "Efficiency of the mesh", Units.Percent)
        .By("η = 1 − μ_m·H_v, or as declared", "ISO/TR 14179-2", Certainty.Memory)
        .AsOne().Stated(static s => s.Efficiency).From(Friction, LossFactor, Sliding.MeshEfficiency);

    public static readonly NumberDefinition<MeshSpec> RelativeSpeedRatio =
        Number("relative_speed_ratio", "(ω − ω_carrier)/ω_in", "Speed of the first gear against the carrier, per input speed, magnitude")
        .By("from the system of Willis relations", Willis)
        .Solved([], SpeedReasons, static (s, subject) => Math.Abs(Speeds(subject)!.First.ToDouble()));

    public static readonly NumberDefinition<MeshSpec> RollingPowerRatio =
        Number("rolling_power_ratio", "P_m/P_in", "Rolling power per input power, one planet set together")
        .By("P_m/P_in = |T · (ω − ω_carrier)| / (T_in · ω_in), with losses", PowerBalance)
        .Noted("at nominal efficiency of every mesh")
        .Solved([TrainEfficiency], TorqueReasons, static (_, subject) => TorquesOf(subject)!.RollingPower);

    public static readonly NumberDefinition<MeshSpec> TorqueRatio =
        Number("torque_ratio", "T/T_in", "Torque on the first gear per input torque, one planet of the set, magnitude")
        .By("from the system of torque balances, with losses", PowerBalance)
        .Noted("at nominal efficiency of every mesh")
        .Solved([TrainEfficiency], TorqueReasons, static (_, subject) => TorquesOf(subject) is { } load ? Math.Abs(load.FirstTorque) / load.Paths : null);

    public static readonly NumberDefinition<MeshSpec> OutputTorqueShare =
        Number("output_torque_share", "T/T_out", "Torque on the first gear per output torque, the whole planet set, without losses, magnitude")
        .By("from the system of torque balances without losses", "virtual work on the lossless train")
        .Solved([], static (_, subject) => LosslessShare(subject));

    public static readonly NumberDefinition<MeshSpec> RollingPower =
        Number("rolling_power", "P_m", "Rolling power, one planet set together", Units.Kilowatt)
        .By("P_m = P_in · (P_m/P_in)", PowerBalance).Scaled(1e6)
        .From(Of("train", static () => TrainQuantities.InputPower), RollingPowerRatio, static (power, share) => power * share);

    public static readonly NumberDefinition<MeshSpec> MeshFrequency = Number("mesh_frequency", "f_m", "Mesh frequency", Units.Hertz)
        .By("f_m = z·|n − n_carrier|", Willis)
        .From(
            Of("train", static () => TrainQuantities.InputSpeed), RelativeSpeedRatio, Of("first", static () => G.Teeth),
            static (speed, perInput, z) => MeshRates.MeshFrequency((int)z, speed * perInput, 0));

    public static readonly NumberDefinition<MeshSpec> Order = Number("mesh_order", "o_m", "Teeth that pass the mesh a turn of the input")
        .By("o_m = z·|ω − ω_carrier|/ω_in", Willis)
        .From(RelativeSpeedRatio, Of("first", static () => G.Teeth), static (perInput, z) => z * Math.Abs(perInput));

    public static readonly NumberDefinition<MeshSpec> PitchLineSpeed =
        Number("pitch_line_speed", "v", "Pitch line speed, relative to the carrier", Units.MetrePerSecond)
        .By("v = d/2·|ω − ω_carrier|", Willis)
        .From(
            Of("train", static () => TrainQuantities.InputSpeed), RelativeSpeedRatio, Of("first", static () => G.ReferenceDiameter),
            static (speed, perInput, d) => MeshRates.PitchLineSpeed(d, speed * perInput, 0));

    public static readonly NumberDefinition<MeshSpec> TangentialForce =
        Number("tangential_force", "F_t", "Nominal tangential force at the reference circle, one planet of the set", Units.Newton)
        .By("F_t = 2·T_in·(T/T_in) / d", PowerBalance)
        .Noted("equal shares; without load-sharing, application and dynamic factors")
        .From(
            Of("train", static () => TrainQuantities.InputTorque), TorqueRatio, Of("first", static () => G.ReferenceDiameter),
            static (torque, perInput, d) => 2 * torque * perInput / d);

    public static readonly NumberDefinition<MeshSpec> CommonFactor = Number("common_factor", "g", "Maximum common divisor of the tooth numbers")
        .By("g = gcd(z_1, z_2); 1: hunting teeth", "closed form")
        .From(
            Of("first", static () => G.Teeth, "z_1"), Of("second", static () => G.Teeth, "z_2"),
            static (z1, z2) => new ToothHunting((int)z1, (int)z2).Factor);

    public static readonly NumberDefinition<MeshSpec> AssemblyBacklash =
        Number("assembly_backlash", "j_bn", "Normal backlash at 20 °C", Units.Millimetre)
        .By("j_bn = −(E_sn1 + E_sn2)·cos α_n + 2·a·cos α_t·(inv α_wt − inv α_wt(x))·cos β_b", "ISO 21771, exact", Certainty.ClosedForm)
        .Noted("without run-out and shaft bending").Scaled(0.05).Turns()
        .From(
            Kind, Of("first", static () => G.ThicknessAllowance, "E_sn1"), Of("second", static () => G.ThicknessAllowance, "E_sn2"),
            ReferenceCentreDistance, Of("first", static () => G.TransversePressureAngle), WorkingPressureAngle, ShiftCentreDistance,
            Of("first", static () => G.PressureAngle), Of("first", static () => G.BaseHelixAngle), BacklashAt);

    public static readonly NumberDefinition<MeshSpec> ExpansionOfCentres =
        Number("expansion_of_centres", "α_c", "Thermal expansion of the body that holds the centres", Units.PerKelvin)
        .Custom(static subject => BodyCentres.Of(subject).Expansion(subject.Context, ExpansionOfCentres!));

    public static readonly NumberDefinition<MeshSpec> ExpansionOfGears =
        Number("expansion_of_gears", "α_g", "Thermal expansion of the gears", Units.PerKelvin)
        .By("(α_g1·d_1 ± α_g2·d_2) / (d_1 ± d_2) (external +, internal −)", "linear thermal expansion")
        .From(
            Kind, Of("first", static () => G.ThermalExpansion, "α_g1"), Of("second", static () => G.ThermalExpansion, "α_g2"),
            Of("first", static () => G.ReferenceDiameter, "d_1"), Of("second", static () => G.ReferenceDiameter, "d_2"),
            static (kind, first, second, d1, d2) => ((first * d1) + (second * Turn(kind) * d2)) / (d1 + (Turn(kind) * d2)));

    public static readonly NumberDefinition<MeshSpec> RunningTemperatureOfCentres =
        Number("running_temperature_of_centres", "T_body", "Temperature in continuous service of the body that holds the centres", Units.Celsius)
        .Found(static (_, subject) => BodyCentres.Of(subject).Spec?.Running);

    public static readonly NumberDefinition<MeshSpec> TemperatureOfCentres =
        Number("temperature_of_centres", "T_c", "Temperature of the body that holds the centres", Units.Celsius)
        .By("T_c = T + (T_body − T_oil) as far as the oil has warmed from its coldest to its running temperature", "the spec").Turns()
        .From(
            Of("train", static () => TrainQuantities.OilTemperature), RunningTemperatureOfCentres,
            Of("train", static () => TrainQuantities.RunningOil), Of("train", static () => TrainQuantities.ColdestOil),
            static (oil, body, running, coldest) => oil + ((body - running)
                * (running > coldest ? Math.Clamp((oil - coldest) / (running - coldest), 0, 1) : 1)))
        .From(Of("train", static () => TrainQuantities.OilTemperature), static oil => oil);

    public static readonly NumberDefinition<MeshSpec> OperatingCentreDistance =
        Number("operating_centre_distance", "a_w(T)", "Working centre distance from coldest to hottest, measured by gears that grow with it", Units.Millimetre)
        .By("a_w(T) = a_w·(1 + α_c·(T_c − 20 °C)) / (1 + α_g·(T − 20 °C))", "linear thermal expansion")
        .Noted("the gears keep their drawn size; what all lengths grow by together is left out").Turns()
        .From(
            CentreDistance, ExpansionOfCentres, ExpansionOfGears, TemperatureOfCentres, Of("train", static () => TrainQuantities.OilTemperature),
            static (a, centres, gears, ofCentres, ofGears) => Backlash.OperatingCentreDistance(
                a, centres, ofCentres - ReferenceTemperature, gears, ofGears - ReferenceTemperature));

    public static readonly NumberDefinition<MeshSpec> OperatingPressureAngle =
        Number("operating_pressure_angle", "α_wt(T)", "Working transverse pressure angle from coldest to hottest", Units.Degree)
        .By("α_wt(T) = acos(a·cos α_t/a_w(T))", Iso)
        .From(Kind, ReferenceCentreDistance, Of("first", static () => G.TransversePressureAngle), OperatingCentreDistance, AngleAt);

    public static readonly NumberDefinition<MeshSpec> OperatingBacklash =
        Number("operating_backlash", "j_bn(T)", "Normal backlash from coldest to hottest", Units.Millimetre)
        .By("j_bn(T) = −(E_sn1 + E_sn2)·cos α_n + 2·a·cos α_t·(inv α_wt(T) − inv α_wt(x))·cos β_b", "ISO 21771, exact; linear thermal expansion")
        .Noted("gears at the temperature of the oil, and the body that holds the centres too unless its own is stated").Scaled(0.05).Turns()
        .From(
            Kind, Of("first", static () => G.ThicknessAllowance, "E_sn1"), Of("second", static () => G.ThicknessAllowance, "E_sn2"),
            ReferenceCentreDistance, Of("first", static () => G.TransversePressureAngle), OperatingPressureAngle, ShiftCentreDistance,
            Of("first", static () => G.PressureAngle), Of("first", static () => G.BaseHelixAngle), BacklashAt);

    public static readonly NumberDefinition<MeshSpec> CircumferentialBacklash =
        Number("circumferential_backlash", "j_wt", "Circumferential backlash from coldest to hottest", Units.Millimetre)
        .By("j_wt = j_bn(T) / (cos α_wt(T) · cos β_b)", Iso).Scaled(0.05).Turns()
        .From(OperatingBacklash, OperatingPressureAngle, Of("first", static () => G.BaseHelixAngle), Backlash.Circumferential);

    public static readonly NumberDefinition<MeshSpec> RequiredMinBacklash =
        Number("required_min_backlash", "", "Required minimum normal backlash", Units.Millimetre).Scaled(0.05)
        .Stated(static s => s.MinBacklash).Optional();

    public static readonly NumberDefinition<MeshSpec> PermittedMaxBacklash =
        Number("permitted_max_backlash", "", "Permitted maximum normal backlash", Units.Millimetre)
        .Stated(static s => s.MaxBacklash).Optional();

    public static readonly NumberDefinition<MeshSpec> InvoluteClearance =
        Number("involute_clearance", "", "Ring tip outside the base-circle limit of its mate", Units.Millimetre)
        .By("√(r_a2² − r_b2²) − a_w·sin α_wt", Iso).Scaled(1)
        .When(Kind, static kind => kind == G.Internal)
        .From(
            CentreDistance, WorkingPressureAngle, Of("second", static () => G.TipDiameter, "d_a2"), Of("second", static () => G.BaseDiameter, "d_b2"),
            static (aw, angle, tip, ground) => InternalInterference.InvoluteSlack(-aw, angle, -tip, -ground));

    public static readonly NumberDefinition<MeshSpec> TipInterferenceClearance =
        Number("tip_interference_clearance", "", "Clearance of the tips as they enter and leave an internal mesh", Units.Degree)
        .By("θ_1·z_1/z_2 + inv α_wt − inv α_a2 − θ_2 (θ from the crossing of the tip circles)", "handbook formula, confirmed by rolling simulation")
        .Noted("a full turn where the tip circles do not cross").Scaled(0.01).Turns()
        .When(Kind, static kind => kind == G.Internal)
        .From(
            Of("first", static () => G.Teeth, "z_1"), Of("second", static () => G.Teeth, "z_2"), Of("first", static () => G.TipDiameter, "d_a1"),
            Of("first", static () => G.BaseDiameter, "d_b1"), Of("second", static () => G.TipDiameter, "d_a2"),
            Of("second", static () => G.BaseDiameter, "d_b2"), CentreDistance, WorkingPressureAngle,
            static (z1, z2, tip1, base1, tip2, base2, aw, angle) =>
                MeshFormulas.Slack(InternalInterference.Tip((int)z1, -(int)z2, tip1, base1, -tip2, -base2, -aw, angle)));

    public static readonly NumberDefinition<MeshSpec> TrimmingClearance =
        Number("trimming_clearance", "", "Clearance of the tips as a pinion enters a ring radially", Units.Degree)
        .By("θ_1 + inv α_a1 − inv α_wt − (z_2/z_1)·(θ_2 + inv α_a2 − inv α_wt)", "handbook formula, confirmed by insertion simulation")
        .Noted("a full turn where the tip circles do not cross").Scaled(0.01).Turns()
        .When(Kind, static kind => kind == G.Internal)
        .From(
            Of("first", static () => G.Teeth, "z_1"), Of("second", static () => G.Teeth, "z_2"), Of("first", static () => G.TipDiameter, "d_a1"),
            Of("first", static () => G.BaseDiameter, "d_b1"), Of("second", static () => G.TipDiameter, "d_a2"),
            Of("second", static () => G.BaseDiameter, "d_b2"), CentreDistance, WorkingPressureAngle,
            static (z1, z2, tip1, base1, tip2, base2, aw, angle) =>
                MeshFormulas.Slack(InternalInterference.Trimming((int)z1, -(int)z2, tip1, base1, -tip2, -base2, -aw, angle)));

    public static readonly RowDefinition<MeshSpec, string> Insertion = Text("insertion", "How the planet enters the ring").OneOf("axial", "radial")
        .When(Kind, static kind => kind == G.Internal)
        .Custom(static subject => AnalysisContext.Text(Insertion!, PlanetSetOf(subject)?.Insertion, "axial", "axial insertion"));

    /// <summary>The torques of a mesh per input torque; null where they are not known.</summary>
    internal static MeshLoad? TorquesOf(Subject mesh) => mesh.Context.Train!.LoadOf(NameOf(mesh));

    internal static ImmutableArray<string> TorqueReasons(Subject mesh) =>
        TorquesOf(mesh) is not null ? [] : TrainQuantities.TorqueReasons(mesh) is { IsEmpty: false } reasons ? reasons : ["the torques are not determined"];

    private static MeshSpeed? Speeds(Subject mesh) => mesh.Context.Train!.SpeedOf(NameOf(mesh));

    private static ImmutableArray<string> SpeedReasons(Subject mesh) =>
        Speeds(mesh) is not null ? [] : TrainQuantities.SpeedReasons(mesh) is { IsEmpty: false } reasons ? reasons : ["the speeds are not determined"];

    internal static double? LosslessShare(Subject mesh)
    {
        var train = mesh.Context.Train!;
        return train.LosslessLoadOf(NameOf(mesh)) is { } load && train.Solution!.Lossless!.Of(mesh.Context.Spec.Train!.Output.Value) is { External: not 0 } output
            ? Math.Abs(load.FirstTorque / output.External)
            : null;
    }

    /// <summary>Name in the train graph and in paths.</summary>
    internal static string NameOf(Subject mesh) => mesh.Path["meshes.".Length..];

    /// <summary>The planet set that a mesh belongs to; null between two shafts.</summary>
    internal static PlanetSetSpec? PlanetSetOf(Subject mesh)
    {
        var train = mesh.Context.Spec.Train!;
        return Set("first") ?? Set("second");

        PlanetSetSpec? Set(string role) => train.Planets.Find(((GearSpec)mesh.Reach(role)!.Model).On.Value);
    }

    /// <summary>−1 in an internal pair: the sign of its centre distance and of its second gear.</summary>
    private static int Turn(string kind) => G.Sign(kind);

    private static int Second(string kind, double teeth) => G.Signed(kind, teeth);

    private static HelixHand HandOf(string word) => word == "left" ? HelixHand.Left : HelixHand.Right;

    /// <summary>Whether the teeth close at another centre distance than they have, by what a drawing shows.</summary>
    private static bool IsOpen(double difference) => Math.Abs(difference) > 0.0005;

    private static string Closing(double centreDistance, double sum, double stated) => string.Create(
        System.Globalization.CultureInfo.InvariantCulture,
        $"centre distance {centreDistance:0.000} mm with these profile shifts, or x_1 + x_2 = {sum:0.0000} in place of {stated:0.0000} with this centre distance").Replace('-', '−');

    private static double AngleAt(string kind, double reference, double transverse, double working) =>
        MeshGeometry.WorkingPressureAngleFromCentreDistance(Turn(kind) * reference, transverse, Turn(kind) * working);

    private static double BacklashAt(
        string kind, double allowance1, double allowance2, double reference, double transverse, double working, double free, double normal,
        double baseHelix) => Backlash.Normal(
        allowance1 + allowance2, Turn(kind) * reference, transverse, working, AngleAt(kind, reference, transverse, free), normal, baseHelix);

    private static bool IsSpur(Subject subject) =>
        subject.Reach("first")![G.HelixAngle] is { IsEvaluated: true, Value: { IsExact: true, Nominal: 0 } };
}
