using Pawl.Analysis.Core;
using Pawl.Mechanics.Fits;
using Pawl.Mechanics.Joints;
using Pawl.Mechanics.Splines;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using static Pawl.Analysis.BodyInputs;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Interfaces;

/// <summary>An interface of the gearbox and an adapter that it may be built with.</summary>
/// <param name="Own">The gearbox's side.</param>
/// <param name="Adapter">The adapter.</param>
/// <param name="Name">The adapter as the spec names it.</param>
public sealed record InterfacePairing(InterfaceSpec Own, AdapterSpec Adapter, Stated<string> Name)
{
    public InterfaceSideSpec Other => Adapter.Interface;

    internal string Key(bool own, string key) => own ? $"interfaces.{Own.Name.Value}.{key}" : $"interface.{key} of adapter {Adapter.Adapter.Value}";

    internal bool SplinesAgree { get; } = SideMisfit.OfSpline(Own.Spline, Adapter.Interface.Spline) == SideMisfit.None;

    internal bool PilotsAgree { get; } = SideMisfit.OfPilot(Own.Pilot, Adapter.Interface.Pilot) == SideMisfit.None;

    internal bool BoltsAgree { get; } = SideMisfit.OfBolts(Own.Bolts, Adapter.Interface.Bolts) == SideMisfit.None;

    internal bool DowelsAgree { get; } = SideMisfit.OfDowels(Own.Dowels, Adapter.Interface.Dowels) == SideMisfit.None;

    internal bool OwnIsRecess => Own.Pilot!.Side.Value == "recess";

    internal PilotSpec Recess => OwnIsRecess ? Own.Pilot! : Other.Pilot!;

    internal PilotSpec Spigot => OwnIsRecess ? Other.Pilot! : Own.Pilot!;

    internal bool OwnIsThrough => Own.Bolts!.Holes.Value == "through";

    internal BoltPatternSpec Through => OwnIsThrough ? Own.Bolts! : Other.Bolts!;

    internal BoltPatternSpec Tapped => OwnIsThrough ? Other.Bolts! : Own.Bolts!;

    internal bool OwnIsHole => Own.Dowels!.Side.Value == "hole";
}

/// <summary>What is known of a gearbox and an adapter that it may be built with.</summary>
public sealed class Interfaces : Section<InterfacePairing>
{
    private const string Sides = "both sides as stated";
    private const string Geometry = "geometry";

    public static readonly RowDefinition<InterfacePairing, string> Adapter = Text("adapter", "Adapter").Stated(static s => s.Name, "adapter");

    public static readonly RowDefinition<InterfacePairing, string> KindMisfit = Misfit(
        "kind_misfit", "What differs in kind", "flange to flange, shaft to shaft, mount to mount; none: they agree", static s => SideMisfit.OfKind(s.Own, s.Other));

    public static readonly RowDefinition<InterfacePairing, string> SplineMisfit = Misfit(
        "spline_misfit", "What differs between the splines", "external to internal; standard, module, pressure angle, teeth; none: they agree",
        static s => SideMisfit.OfSpline(s.Own.Spline, s.Other.Spline));

    public static readonly NumberDefinition<InterfacePairing> SplineClearance =
        Number("spline_clearance", "c_v", "Effective clearance of the flanks", Units.Micrometre)
        .By("E_v − S_v, least to greatest, of the classes", "ISO 4156-1", Certainty.Memory).Scaled(1e-2).Tables(SplineTolerance.TableId)
        .When(static s => s.SplinesAgree)
        .Custom(static subject => Clearance(subject));

    public static readonly RowDefinition<InterfacePairing, string> PilotMisfit = Misfit(
        "pilot_misfit", "What differs between the pilots", "spigot to recess; nominal diameter; none: they agree", static s => SideMisfit.OfPilot(s.Own.Pilot, s.Other.Pilot));

    public static readonly NumberDefinition<InterfacePairing> RecessDiameter = Size("recess_diameter", "D_recess", "Diameter of the recess")
        .When(static s => s.PilotsAgree).Stated(static s => s.Recess.Diameter, "pilot.diameter");

    public static readonly NumberDefinition<InterfacePairing> SpigotDiameter = Size("spigot_diameter", "D_spigot", "Diameter of the spigot")
        .When(static s => s.PilotsAgree).Stated(static s => s.Spigot.Diameter, "pilot.diameter");

    // Of a fit the nominal size may lie outside both tolerances: the middle stands for it.
    public static readonly NumberDefinition<InterfacePairing> PilotClearance = Number("pilot_clearance", "C", "Clearance of the pilot", Units.Micrometre)
        .By("D_recess − D_spigot", "ISO 286-1").Scaled(1e-2)
        .Range(RecessDiameter.Limits(), SpigotDiameter.Limits(), static (recess, spigot) => recess.Less(spigot));

    public static readonly NumberDefinition<InterfacePairing> Eccentricity =
        Number("pilot_eccentricity", "e", "How far off centre the pilot lets the adapter sit", Units.Micrometre)
        .By("C/2", Geometry).Scaled(1e-3)
        .From(PilotClearance, Register.OfPilot);

    public static readonly NumberDefinition<InterfacePairing> RequiredEccentricity = Number("max_eccentricity", "", "Maximum eccentricity required", Units.Micrometre)
        .Scaled(1e-3).When(static s => s.PilotsAgree).Stated(static s => s.Own.MaxEccentricity, "max_eccentricity").Optional();

    public static readonly NumberDefinition<InterfacePairing> RecessDepth = Size("recess_depth", "t_r", "Depth of the recess")
        .When(HasDepths)
        .Custom(static subject => Dimension(subject, RecessDepth!, static s => s.Recess.Depth, static s => s.Key(s.OwnIsRecess, "pilot.depth")));

    public static readonly NumberDefinition<InterfacePairing> SpigotLength = Size("spigot_length", "l_s", "Length of the spigot")
        .When(HasDepths)
        .Custom(static subject => Dimension(subject, SpigotLength!, static s => s.Spigot.Depth, static s => s.Key(!s.OwnIsRecess, "pilot.depth")));

    public static readonly NumberDefinition<InterfacePairing> PilotRoom = Number("pilot_room", "t", "Room of the spigot in its recess", Units.Millimetre)
        .By("depth of the recess − length of the spigot", Geometry).Scaled(0.1)
        .From(RecessDepth, SpigotLength, static (depth, length) => depth - length);

    public static readonly RowDefinition<InterfacePairing, string> BoltMisfit = Misfit(
        "bolt_misfit", "What differs between the screw patterns", "thread, count, circle, position; through to tapped; none: they agree",
        static s => SideMisfit.OfBolts(s.Own.Bolts, s.Other.Bolts));

    public static readonly RowDefinition<InterfacePairing, ScrewThread> Thread = Row<ScrewThread>("thread", "Thread of the screws", ThreadTable.TryFind, "d")
        .Tables(ThreadTable.MetricTableId, ThreadTable.UnifiedTableId)
        .When(static s => s.BoltsAgree).Stated(static s => s.Through.Thread, "bolts.thread");

    public static readonly NumberDefinition<InterfacePairing> ScrewLength = Size("screw_length", "l", "Length of the screws")
        .When(static s => s.BoltsAgree).Found(static (s, _) => s.Through.ScrewLength, static s => s.Key(s.OwnIsThrough, "bolts.screw_length"));

    public static readonly NumberDefinition<InterfacePairing> Grip = Size("grip", "l_K", "Grip of the screws")
        .When(static s => s.BoltsAgree).Found(static (s, _) => s.Through.Grip, static s => s.Key(s.OwnIsThrough, "bolts.grip"));

    public static readonly NumberDefinition<InterfacePairing> ThreadDepth = Size("thread_depth", "t", "Depth of full thread")
        .When(static s => s.BoltsAgree).Found(static (s, _) => s.Tapped.ThreadDepth, static s => s.Key(!s.OwnIsThrough, "bolts.thread_depth"));

    public static readonly NumberDefinition<InterfacePairing> Engagement = Number("thread_engagement", "l_e", "Length of the screws in their thread", Units.Millimetre)
        .By("screw length − grip", Geometry)
        .From(ScrewLength, Grip, static (length, grip) => length - grip);

    public static readonly NumberDefinition<InterfacePairing> EngagementShare = Number("thread_engagement_share", "l_e/d", "Length in the thread over the diameter")
        .By("l_e/d", Geometry)
        .From(Engagement, Thread, static (engaged, thread) => engaged / thread.Diameter);

    public static readonly NumberDefinition<InterfacePairing> ScrewRoom = Number("screw_room", "t_s", "Thread left beyond the end of the screws", Units.Millimetre)
        .By("depth of thread − (screw length − grip)", Geometry).Scaled(1)
        .From(ThreadDepth, Engagement, static (depth, engaged) => depth - engaged);

    public static readonly RowDefinition<InterfacePairing, string> DowelMisfit = Misfit(
        "dowel_misfit", "What differs between the dowel patterns", "pin to hole; nominal diameter, count, circle, position; none: they agree",
        static s => SideMisfit.OfDowels(s.Own.Dowels, s.Other.Dowels));

    public static readonly NumberDefinition<InterfacePairing> HoleDiameter = Size("dowel_hole_diameter", "D_hole", "Diameter of the dowel holes")
        .When(static s => s.DowelsAgree).Stated(static s => (s.OwnIsHole ? s.Own.Dowels : s.Other.Dowels)!.Diameter, "dowels.diameter");

    public static readonly NumberDefinition<InterfacePairing> PinDiameter = Size("dowel_pin_diameter", "D_pin", "Diameter of the dowel pins")
        .When(static s => s.DowelsAgree).Stated(static s => (s.OwnIsHole ? s.Other.Dowels : s.Own.Dowels)!.Diameter, "dowels.diameter");

    public static readonly NumberDefinition<InterfacePairing> DowelClearance = Number("dowel_clearance", "C_d", "Clearance of the dowels in their holes", Units.Micrometre)
        .By("D_hole − D_pin", "ISO 286-1").Scaled(1e-2)
        .Range(HoleDiameter.Limits(), PinDiameter.Limits(), static (hole, pin) => hole.Less(pin));

    public static readonly RowDefinition<InterfacePairing, string> SealMisfit = Misfit(
        "seal_misfit", "What keeps the seal from sealing", "groove to face, and the face covers the groove's diameter; none: they agree",
        static s => SideMisfit.OfSeal(s.Own.Seal, s.Other.Seal));

    public static readonly NumberDefinition<InterfacePairing> RequiredReach = Size("min_engagement", "l_min", "Required axial engagement")
        .Stated(static s => s.Own.Engagement, "engagement").Optional();

    public static readonly NumberDefinition<InterfacePairing> Reach = Size("engagement", "l", "Axial engagement of the adapter")
        .When(static s => s.Own.Engagement is not null).Found(static (s, _) => s.Other.Engagement, static s => s.Key(false, "engagement"));

    public static readonly NumberDefinition<InterfacePairing> ReachShare =
        Number("engagement_share", "l/l_min", "Axial engagement of the adapter over the required one")
        .By("l/l_min", Sides)
        .From(RequiredReach, Reach, static (min, given) => given / min);

    public static readonly NumberDefinition<InterfacePairing> Torque = Number("torque", "T_max", "Maximum torque through the interface", Units.NewtonMetre)
        .By("the greater of K_A·T and T·T_peak/T_in", "torque balance of the train").Scaled(1000)
        .When(HasTorque)
        .From(BodyTorque, ApplicationFactor, InputPeak, InputTorque, static (torque, application, peak, input) => Math.Abs(torque) * Math.Max(application, peak / input))
        .Otherwise(static s => NoTorque(s.Own.Body.Value));

    public static readonly NumberDefinition<InterfacePairing> OwnTorque = Number("own_torque", "T_1", "Permitted torque of the gearbox's side", Units.NewtonMetre)
        .Scaled(1000).Stated(static s => s.Own.Torque, "torque").Optional();

    public static readonly NumberDefinition<InterfacePairing> AdapterTorque = Number("adapter_torque", "T_2", "Permitted torque of the adapter", Units.NewtonMetre)
        .Scaled(1000).Stated(static s => s.Other.Torque, "torque").Optional();

    public static readonly NumberDefinition<InterfacePairing> TorqueCapacity = Number("torque_capacity", "T_cap", "Permitted torque of both sides", Units.NewtonMetre)
        .By("the lesser of T_1 and T_2", Sides).Scaled(1000)
        .When(HasTorque)
        .From(OwnTorque.Or(double.PositiveInfinity), AdapterTorque.Or(double.PositiveInfinity), Math.Min);

    public static readonly NumberDefinition<InterfacePairing> TorqueShare =
        Number("torque_share", "T_cap/T_max", "Permitted torque of both sides over what passes")
        .By("T_cap/T_max", Sides)
        .From(TorqueCapacity, Torque, static (capacity, torque) => capacity / torque);

    public static readonly NumberDefinition<InterfacePairing> Speed = Number("speed", "n", "Maximum speed", Units.RevolutionPerMinute)
        .By("n = max n_in·|ω/ω_in|, over duty and load cases", "speeds of the train").Scaled(Math.PI / 30)
        .When(HasSpeed)
        .From(FastestSpeed, SpeedRatio, static (fastest, ratio) => fastest * Math.Abs(ratio));

    public static readonly NumberDefinition<InterfacePairing> OwnSpeed = Number("own_speed", "n_1", "Permitted speed of the gearbox's side", Units.RevolutionPerMinute)
        .Scaled(Math.PI / 30).Stated(static s => s.Own.Speed, "speed").Optional();

    public static readonly NumberDefinition<InterfacePairing> AdapterSpeed = Number("adapter_speed", "n_2", "Permitted speed of the adapter", Units.RevolutionPerMinute)
        .Scaled(Math.PI / 30).Stated(static s => s.Other.Speed, "speed").Optional();

    public static readonly NumberDefinition<InterfacePairing> SpeedCapacity = Number("speed_capacity", "n_cap", "Permitted speed of both sides", Units.RevolutionPerMinute)
        .By("the lesser of n_1 and n_2", Sides).Scaled(Math.PI / 30)
        .When(HasSpeed)
        .From(OwnSpeed.Or(double.PositiveInfinity), AdapterSpeed.Or(double.PositiveInfinity), Math.Min);

    /// <summary>All pairings, in the order of the spec.</summary>
    internal static void AddAll(AnalysisContext context)
    {
        foreach (var own in context.Spec.Interfaces.Entries)
        {
            foreach (var name in own.Adapters)
            {
                // The reader has told of an adapter that is not there.
                if (context.Spec.Catalogue.Adapters.Find(name.Value) is { } adapter)
                {
                    context.Begin(
                        SubjectKinds.Interface, $"interfaces.{own.Name.Value}~{name.Value}", name.Span, new InterfacePairing(own, adapter, name), $"interfaces.{own.Name.Value}")
                        .On(context, own.Body.Value);
                }
            }
        }
    }

    private static NumberDefinition<InterfacePairing> Size(string name, string symbol, string title) => Number(name, symbol, title, Units.Millimetre);

    private static RowDefinition<InterfacePairing, string> Misfit(string name, string title, string formula, Func<InterfacePairing, string?> find)
    {
        RowDefinition<InterfacePairing, string>? self = null;
        return self = Text(name, title).By(formula, Sides)
            .Custom(subject => find((InterfacePairing)subject.Model) is { } found ? Quantity.ComputedText(self!, found, [subject[Adapter]]) : null);
    }

    private static bool HasDepths(InterfacePairing pairing) => pairing.PilotsAgree && (pairing.Recess.Depth is not null || pairing.Spigot.Depth is not null);

    private static bool HasTorque(InterfacePairing pairing) => pairing.Own.Torque is not null || pairing.Other.Torque is not null;

    private static bool HasSpeed(InterfacePairing pairing) => pairing.Own.Speed is not null || pairing.Other.Speed is not null;

    private static Quantity Dimension(Subject subject, QuantityKind kind, Func<InterfacePairing, Stated<Toleranced>?> select, Func<InterfacePairing, string> key)
    {
        var pairing = (InterfacePairing)subject.Model;
        return subject.Context.Dimension(kind, select(pairing), key(pairing));
    }

    /// <summary>Classes and lengths are exact: the limits are those of the tolerances.</summary>
    private static Quantity Clearance(Subject subject)
    {
        var pairing = (InterfacePairing)subject.Model;
        var ownIsExternal = pairing.Own.Spline!.Side.Value == "external";
        var (external, inner) = ownIsExternal ? (pairing.Own.Spline, pairing.Other.Spline!) : (pairing.Other.Spline!, pairing.Own.Spline);
        var spline = Splines.Splines.BasicOf(
            external.System.Value, external.Root.Value, external.Teeth.Value, SideMisfit.ModuleOf(external), external.PressureAngle.Value.Coherent);
        var length = Math.Min(Length(external, ownIsExternal), Length(inner, !ownIsExternal));
        var fit = SplineTolerance.Clearance(
            SplineTolerance.Spaces(spline, Class(inner, !ownIsExternal), length),
            SplineTolerance.Teeth(spline, external.Fit?.Value ?? "h", Class(external, ownIsExternal), length));
        return Quantity.WithLimits(SplineClearance, new(fit.Middle, fit.Min, fit.Max), [subject[Adapter]]);

        double Length(InterfaceSplineSpec side, bool own) => side.Length?.Value.Coherent ?? throw Guard.Because($"{pairing.Key(own, "spline.length")} is not stated");

        int Class(InterfaceSplineSpec side, bool own) => side.Class?.Value ?? throw Guard.Because($"{pairing.Key(own, "spline.class")} is not stated");
    }
}
