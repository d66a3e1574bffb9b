using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Joints;

/// <summary>What is known of a joint besides its forces: torque through it, fatigue, faces, threads, what keeps it tight.</summary>
public static class JointStrengthQuantities
{
    private const string Vdi = "VDI 2230 Part 1";
    private const string Closed = "closed form";
    private const string TheSpec = "the spec";

    public static readonly QuantityKind CarriedTorque = new()
    {
        Name = "carried_torque", Symbol = "T", Title = "Greatest torque through the joint", Unit = Units.NewtonMetre,
        Formula = "as stated; else |T_body| times K_A, or at the peak, whichever is more", Source = "torque balance", Scale = 1000,
    };

    public static readonly QuantityKind SlipTorque = new()
    {
        Name = "slip_torque", Symbol = "T_fr", Title = "Torque that the clamped faces carry by friction", Unit = Units.NewtonMetre,
        Formula = "T_fr = z·F_KR·µ_T·D/2, less what a force across takes", Source = "statics, VDI 2230 Part 1", Scale = 1000,
    };

    public static readonly QuantityKind SlipSafety = new()
    {
        Name = "slip_safety", Symbol = "S_G", Title = "Friction over the force across at the worst bolt", Formula = "S_G = µ_T·F_KR/(2·T/(z·D) + F_Q/z)", Source = "statics, VDI 2230 Part 1",
    };

    public static readonly QuantityKind SlipSafetyWanted = new()
    {
        Name = "slip_safety_wanted", Symbol = "S_Gmin", Title = "Safety against slip wanted", Source = "VDI 2230 Part 1, from memory", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind DowelsCarry = new()
    {
        Name = "dowels_carry", Title = "Dowels carry the torque, and friction is not counted on", ValueKind = ValueKind.Truth,
        Formula = "a set of dowels of this joint has the purpose to carry", Source = TheSpec, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Amplitude = new()
    {
        Name = "stress_amplitude", Symbol = "σ_a", Title = "Amplitude of the stress in the thread", Unit = Units.Megapascal, Scale = 1,
        Formula = "σ_a = Φ·(F_A,max − F_A,min)/(2·A_s)", Source = Vdi, Note = "half of the range",
    };

    public static readonly QuantityKind PermittedAmplitude = new()
    {
        Name = "permitted_amplitude", Symbol = "σ_A", Title = "Amplitude that the thread stands for good", Unit = Units.Megapascal,
        Formula = "rolled before treatment 0.85·(150/d + 45); after it times 2 − F_Sm/F_0.2", Source = Vdi, Certainty = Certainty.Memory,
        Note = "at 2·10⁶ cycles; no class of bolt stands more than another",
    };

    public static readonly QuantityKind FatigueSafety = new()
    {
        Name = "fatigue_safety", Symbol = "S_D", Title = "Permitted over present amplitude", Formula = "S_D = σ_A/σ_a", Source = Vdi,
    };

    public static readonly QuantityKind FacePressure = new()
    {
        Name = "face_pressure", Symbol = "p", Title = "Greatest pressure under head or nut, or in the stack", Unit = Units.Megapascal,
        Formula = "p = (F_M,max + ΔF_th,greatest + Φ·F_A)/(π/4·(d_W² − d_h²)); in a stack over the least overlap of two rings", Source = Vdi,
    };

    public static readonly QuantityKind LimitingPressure = new()
    {
        Name = "limiting_pressure", Symbol = "p_G", Title = "Least limiting pressure of the parts under it", Unit = Units.Megapascal, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Length = JointQuantities.Millimetres("length", "l", "Length of the bolt under its head");
    public static readonly QuantityKind Depth = JointQuantities.Millimetres("tapped_depth", "t", "Depth of full thread");

    public static readonly QuantityKind Engagement = new()
    {
        Name = "engagement", Symbol = "m", Title = "Length of engaged full thread", Unit = Units.Millimetre,
        Formula = "length − l_K − relief, no more than the depth; a nut: its height", Source = "the spec", Scale = 1,
    };

    public static readonly QuantityKind EngagementRatio = new()
    {
        Name = "engagement_ratio", Symbol = "m/d", Title = "Engaged length over diameter", Formula = "m/d", Source = Closed,
    };

    public static readonly QuantityKind Family = new()
    {
        Name = "tapped_family", Title = "What the thread is cut in", ValueKind = ValueKind.Text, Formula = "steel from 180 GPa, aluminium below 90 GPa, other between",
        Source = "by its modulus of elasticity",
    };

    public static readonly QuantityKind StrippingLoad = new()
    {
        Name = "stripping_load", Symbol = "F_m", Title = "Load at which the weaker thread strips", Unit = Units.Newton,
        Formula = "C_1·min(C_2·τ_bolt·A_bolt, C_3·τ_nut·A_nut) over m − 0.8·P, at the loosest sizes of 6g/6H or 2A/2B",
        Source = "VDI 2230 Part 1 after Alexander, shear areas of FED-STD-H28/2", Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind StrippingSafety = new()
    {
        Name = "stripping_safety", Symbol = "S_m", Title = "Stripping load over the greatest force in the bolt", Formula = "S_m = F_m/(F_M,max + ΔF_th,greatest + Φ·F_A)", Source = Closed,
    };

    public static readonly QuantityKind BreaksFirst = new()
    {
        Name = "stripping_over_breaking", Title = "Stripping load over the greatest load at which the bolt breaks", Formula = "F_m/(1.2·R_m·A_s)",
        Source = "VDI 2230 Part 1; 1.2 for a bolt stronger than its least, common practice",
    };

    public static readonly QuantityKind BottomReserve = new()
    {
        Name = "bottom_reserve", Title = "Free full thread below the end of the bolt, in pitches", Formula = "(depth + l_K − length)/P", Source = Closed,
    };

    public static readonly QuantityKind NutCarries = new()
    {
        Name = "nut_carries", Title = "The nut holds what the class of the bolt can", ValueKind = ValueKind.Truth,
        Formula = "class of the nut at least the first number of that of the bolt, and no thin nut", Source = "ISO 898-2",
    };

    public static readonly QuantityKind Coating = JointQuantities.Words("coating", "Coating");

    public static readonly QuantityKind Bake = new() { Name = "bake", Title = "Bake after coating", Unit = Units.Hour, Certainty = Certainty.Declared };

    public static readonly QuantityKind BakeNeeded = new()
    {
        Name = "bake_needed", Title = "Bake that strength and coating ask for", Unit = Units.Hour, Formula = "by the tensile strength, where the coating brings hydrogen", Source = "ASTM B850", Certainty = Certainty.Published, Scale = 3600,
    };

    public static readonly QuantityKind Locker = JointQuantities.Words("locker", "Locking");

    public static readonly QuantityKind LockerReserve = new()
    {
        Name = "locker_reserve", Title = "Hottest temperature of the locker less the hottest of the gearbox", Unit = Units.Kelvin, Formula = "θ_locker − θ_hottest",
        Source = Closed, Scale = 10,
    };

    public static readonly QuantityKind Between = JointQuantities.Words("between_faces", "Between the faces");
    public static readonly QuantityKind Order = JointQuantities.Words("tightening_order", "Order of tightening");

    public static readonly QuantityKind Steps = new()
    {
        Name = "tightening_steps", Title = "Steps of tightening", Formula = "number of stated shares of the torque", Source = TheSpec, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Sequence = new()
    {
        Name = "tightening_sequence", Title = "Crosswise order of the bolts, numbered round the circle", ValueKind = ValueKind.Text,
        Formula = "each bolt, the one opposite, then the pair farthest from all before", Source = "common practice",
    };

    // Central nut.
    public static readonly QuantityKind PathStand = new()
    {
        Name = "path_stand", Title = "How far the stack stands out beyond the seat of the shaft", Unit = Units.Millimetre, Scale = 0.1,
        Formula = "Σ of the thicknesses − length from the shoulder to the first full thread", Source = Closed,
        Note = "zero or less: the nut runs out of thread before it clamps",
    };

    public static readonly QuantityKind Seat = JointQuantities.Millimetres("seat", "l_s", "Shoulder to first full thread");

    public static readonly QuantityKind ClampTorque = new()
    {
        Name = "clamp_torque", Title = "Torque that the narrowest face of the stack carries by friction", Unit = Units.NewtonMetre,
        Formula = "F_KR·µ_T·(D³ − d³)/(3·(D² − d²))", Source = "even pressure over a ring", Scale = 1000, Note = "told only; a spline or key carries the torque",
    };

    public static readonly ImmutableArray<QuantityKind> All =
    [
        CarriedTorque, SlipTorque, SlipSafety, SlipSafetyWanted, DowelsCarry, Amplitude, PermittedAmplitude, FatigueSafety, FacePressure,
        LimitingPressure, Length, Depth, Engagement, EngagementRatio, Family, StrippingLoad, StrippingSafety, BreaksFirst, BottomReserve, NutCarries, Coating, Bake,
        BakeNeeded, Locker, LockerReserve, Between, Order, Steps, Sequence, PathStand, Seat, ClampTorque,
    ];
}
