using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Interfaces;

/// <summary>What is known of a gearbox and an adapter that it may be built with.</summary>
public static class InterfaceQuantities
{
    private const string Sides = "both sides as stated";

    public static readonly QuantityKind Adapter = Stated("adapter", "Adapter", ValueKind.Text);
    public static readonly QuantityKind KindMisfit = Misfit("kind_misfit", "What differs in kind", "flange to flange, shaft to shaft, mount to mount; none: they agree");
    public static readonly QuantityKind SplineMisfit = Misfit("spline_misfit", "What differs between the splines", "external to internal; standard, module, pressure angle, teeth; none: they agree");

    public static readonly QuantityKind SplineClearance = new()
    {
        Name = "spline_clearance", Symbol = "c_v", Title = "Effective clearance of the flanks", Unit = Units.Micrometre, Scale = 1e-2, Formula = "E_v − S_v, least to greatest, of the classes",
        Source = "ISO 4156-1", Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind PilotMisfit = Misfit("pilot_misfit", "What differs between the pilots", "spigot to recess; nominal diameter; none: they agree");

    public static readonly QuantityKind PilotClearance = new()
    {
        Name = "pilot_clearance", Symbol = "C", Title = "Clearance of the pilot", Unit = Units.Micrometre, Scale = 1e-2, Formula = "D_recess − D_spigot", Symbols = ["D_recess", "D_spigot"], Source = "ISO 286-1",
    };

    public static readonly QuantityKind Eccentricity = new()
    {
        Name = "pilot_eccentricity", Symbol = "e", Title = "How far off centre the pilot lets the adapter sit", Unit = Units.Micrometre, Scale = 1e-3, Formula = "C/2", Symbols = ["C"], Source = "geometry",
    };

    public static readonly QuantityKind RequiredEccentricity = new()
    {
        Name = "max_eccentricity", Title = "Maximum eccentricity required", Unit = Units.Micrometre, Scale = 1e-3, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind PilotRoom = new()
    {
        Name = "pilot_room", Symbol = "t", Title = "Room of the spigot in its recess", Unit = Units.Millimetre, Formula = "depth of the recess − length of the spigot", Symbols = ["t_r", "l_s"], Source = "geometry", Scale = 0.1,
    };

    public static readonly QuantityKind BoltMisfit = Misfit("bolt_misfit", "What differs between the screw patterns", "thread, count, circle, position; through to tapped; none: they agree");

    public static readonly QuantityKind Engagement = new()
    {
        Name = "thread_engagement", Symbol = "l_e", Title = "Length of the screws in their thread", Unit = Units.Millimetre, Formula = "screw length − grip", Symbols = ["l", "l_K"], Source = "geometry",
    };

    public static readonly QuantityKind EngagementShare = new()
    {
        Name = "thread_engagement_share", Symbol = "l_e/d", Title = "Length in the thread over the diameter", Formula = "l_e/d", Symbols = ["l_e"], Source = "geometry",
    };

    public static readonly QuantityKind ScrewRoom = new()
    {
        Name = "screw_room", Symbol = "t_s", Title = "Thread left beyond the end of the screws", Unit = Units.Millimetre, Formula = "depth of thread − (screw length − grip)", Symbols = ["t", "l_e"], Source = "geometry", Scale = 1,
    };

    public static readonly QuantityKind DowelMisfit = Misfit("dowel_misfit", "What differs between the dowel patterns", "pin to hole; nominal diameter, count, circle, position; none: they agree");

    public static readonly QuantityKind DowelClearance = new()
    {
        Name = "dowel_clearance", Symbol = "C_d", Title = "Clearance of the dowels in their holes", Unit = Units.Micrometre, Scale = 1e-2, Formula = "D_hole − D_pin", Symbols = ["D_hole", "D_pin"], Source = "ISO 286-1",
    };

    public static readonly QuantityKind SealMisfit = Misfit("seal_misfit", "What keeps the seal from sealing", "groove to face, and the face covers the groove's diameter; none: they agree");

    public static readonly QuantityKind ReachShare = new()
    {
        Name = "engagement_share", Symbol = "l/l_min", Title = "Axial engagement that the adapter gives over what is asked for", Formula = "l/l_min", Symbols = ["l_min", "l"], Source = Sides,
    };

    public static readonly QuantityKind Torque = new()
    {
        Name = "torque", Symbol = "T_max", Title = "Maximum torque through the interface", Unit = Units.NewtonMetre, Formula = "the greater of K_A·T and T·T_peak/T_in", Symbols = ["T", "K_A", "T_peak", "T_in"], Source = "torque balance of the train", Scale = 1000,
    };

    public static readonly QuantityKind TorqueShare = new()
    {
        Name = "torque_share", Symbol = "T_cap/T_max", Title = "Torque that both sides bear over what passes", Formula = "the lesser capacity/T_max", Symbols = ["T_cap", "T_max"], Source = Sides,
    };

    public static readonly QuantityKind Speed = new()
    {
        Name = "speed", Symbol = "n", Title = "Maximum speed", Unit = Units.RevolutionPerMinute, Formula = "|n| of the body in the fastest share of the duty", Symbols = ["n"], Source = "speeds of the train", Scale = Math.PI / 30,
    };

    public static readonly QuantityKind SpeedCapacity = new()
    {
        Name = "speed_capacity", Symbol = "n_cap", Title = "Maximum speed that both sides bear", Unit = Units.RevolutionPerMinute, Formula = "the lesser of both", Source = Sides, Scale = Math.PI / 30,
    };

    // Sides, for the derivations above.
    public static readonly QuantityKind RecessDiameter = Side("recess_diameter", "Diameter of the recess");
    public static readonly QuantityKind SpigotDiameter = Side("spigot_diameter", "Diameter of the spigot");
    public static readonly QuantityKind RecessDepth = Side("recess_depth", "Depth of the recess");
    public static readonly QuantityKind SpigotLength = Side("spigot_length", "Length of the spigot");
    public static readonly QuantityKind ScrewLength = Side("screw_length", "Length of the screws");
    public static readonly QuantityKind Grip = Side("grip", "Grip of the screws");
    public static readonly QuantityKind ThreadDepth = Side("thread_depth", "Depth of full thread");
    public static readonly QuantityKind HoleDiameter = Side("dowel_hole_diameter", "Diameter of the dowel holes");
    public static readonly QuantityKind PinDiameter = Side("dowel_pin_diameter", "Diameter of the dowel pins");
    public static readonly QuantityKind RequiredReach = Side("min_engagement", "Axial engagement asked for");
    public static readonly QuantityKind Reach = Side("engagement", "Axial engagement of the adapter");

    public static readonly QuantityKind TorqueCapacity = new()
    {
        Name = "torque_capacity", Symbol = "T_cap", Title = "Maximum torque that both sides bear", Unit = Units.NewtonMetre, Formula = "the lesser of both", Source = Sides, Scale = 1000,
    };

    public static readonly ImmutableArray<QuantityKind> All =
    [
        Adapter, KindMisfit, SplineMisfit, SplineClearance, PilotMisfit, RecessDiameter, SpigotDiameter, PilotClearance, Eccentricity, RequiredEccentricity, RecessDepth, SpigotLength, PilotRoom,
        BoltMisfit, ScrewLength, Grip, ThreadDepth, Engagement, EngagementShare, ScrewRoom, DowelMisfit, HoleDiameter, PinDiameter, DowelClearance, SealMisfit, RequiredReach, Reach, ReachShare,
        Torque, TorqueCapacity, TorqueShare, Speed, SpeedCapacity,
    ];

    private static QuantityKind Stated(string name, string title, ValueKind kind) => new() { Name = name, Title = title, ValueKind = kind, Certainty = Certainty.Declared };

    private static QuantityKind Misfit(string name, string title, string formula) => new()
    {
        Name = name, Title = title, ValueKind = ValueKind.Text, Formula = formula, Source = Sides,
    };

    private static QuantityKind Side(string name, string title) => new() { Name = name, Title = title, Unit = Units.Millimetre, Certainty = Certainty.Declared };
}
