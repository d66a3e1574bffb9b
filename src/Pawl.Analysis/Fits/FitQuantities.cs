using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Fits;

/// <summary>A hole and the shaft in it, at 20 °C and in service. Play and overlap are of diameters.</summary>
public static class FitQuantities
{
    private const string Closed = "closed form";
    private const string Iso = "ISO 286-1:2010";
    private const string Lame = "Lamé; DIN 7190-1";
    private const string Warm = "C_θ = C + d·(α_h·(θ_h − 20 °C) − α_s·(θ_s − 20 °C))";
    private const string Expansion = "thermal expansion; ISO 1 for the 20 °C";

    public static readonly QuantityKind Function = Text("function", "What the fit is for");

    public static readonly QuantityKind Diameter = Length("diameter", "d", "Nominal diameter of the fit", Certainty.Declared);

    public static readonly QuantityKind Hole = Length("hole", "d_h", "Diameter of the hole, from the middle of its limits", Certainty.Declared);

    public static readonly QuantityKind Shaft = Length("shaft", "d_s", "Diameter of the shaft, from the middle of its limits", Certainty.Declared);

    public static readonly QuantityKind HoleExpansion = new()
    {
        Name = "hole_expansion", Symbol = "α_h", Title = "Linear expansion of the part with the hole", Unit = Units.PerKelvin, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind ShaftExpansion = new()
    {
        Name = "shaft_expansion", Symbol = "α_s", Title = "Linear expansion of the part with the shaft", Unit = Units.PerKelvin, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind ClearanceAtRoom = new()
    {
        Name = "clearance_20", Symbol = "C", Title = "Play at 20 °C; below zero overlap", Unit = Units.Micrometre, Scale = 0.01,
        Formula = "C = d_h − d_s", Symbols = ["d_h", "d_s"], Source = Iso,
    };

    public static readonly QuantityKind Kind = new()
    {
        Name = "fit_kind", Title = "Kind of the fit at 20 °C", ValueKind = ValueKind.Text,
        Formula = "C_min ≥ 0 clearance, C_max ≤ 0 interference, else transition", Source = "ISO 286-1:2010, definitions",
    };

    public static readonly QuantityKind Contradiction = new()
    {
        Name = "contradiction", Title = "What its limits hold against its function", ValueKind = ValueKind.Text,
        Formula = "slide: C_min ≥ 0; press: C_max < 0; locate and register: not C_max < 0, at 20 °C", Source = Closed,
    };

    public static readonly QuantityKind Rivals = new()
    {
        Name = "rivals", Title = "Other registers between the same two parts", Formula = "counted", Source = Closed,
    };

    public static readonly QuantityKind Cold = Service("clearance_cold", "Play at the coldest", Warm, Expansion);

    public static readonly QuantityKind Running = Service("clearance_running", "Play in continuous service", Warm, Expansion);

    public static readonly QuantityKind Hot = Service(
        "clearance_hot", "Play at the hottest", $"{Warm}; both parts as far above their running temperature as the oil above its own", Expansion);

    public static readonly QuantityKind Clearance = Service("clearance", "Play from coldest to hottest, and at 20 °C", "least and greatest of all states", Closed);

    public static readonly QuantityKind LeastClearance = new()
    {
        Name = "least_clearance", Title = "Least play wanted", Unit = Units.Micrometre, Certainty = Certainty.Declared, Scale = 0.01,
    };

    public static readonly QuantityKind GreatestClearance = new()
    {
        Name = "greatest_clearance", Title = "Greatest play that is borne", Unit = Units.Micrometre, Certainty = Certainty.Declared, Scale = 0.01,
    };

    public static readonly QuantityKind Interference = Service(
        "interference", "Overlap from coldest to hottest, and at 20 °C", "U = −C", Closed, "U");

    public static readonly QuantityKind Smoothing = new()
    {
        Name = "smoothing", Symbol = "s", Title = "Roughness lost in pressing", Unit = Units.Micrometre,
        Formula = "s = 0.8·(Rz_h + Rz_s)", Symbols = ["Rz_h", "Rz_s"], Source = "DIN 7190-1", Certainty = Certainty.Memory, Scale = 0.01,
    };

    public static readonly QuantityKind HoleRoughness = new()
    {
        Name = "hole_roughness", Symbol = "Rz_h", Title = "Roughness of the hole", Unit = Units.Micrometre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind ShaftRoughness = new()
    {
        Name = "shaft_roughness", Symbol = "Rz_s", Title = "Roughness of the shaft", Unit = Units.Micrometre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind HubOutside = Length("hub_outside", "D_o", "Outside diameter of the hub", Certainty.Declared);

    public static readonly QuantityKind ShaftBore = Length("shaft_bore", "d_i", "Bore of the shaft", Certainty.Declared);

    public static readonly QuantityKind JointLength = Length("length", "l", "Length of the joint", Certainty.Declared);

    public static readonly QuantityKind Speed = new()
    {
        Name = "speed", Symbol = "n", Title = "Greatest speed of the joint", Unit = Units.RevolutionPerMinute,
        Formula = "as stated, else of the body by Willis at its fastest share", Source = Closed, Scale = 100,
    };

    public static readonly QuantityKind SpeedLoss = new()
    {
        Name = "speed_loss", Symbol = "ΔU", Title = "Overlap lost at speed, for the hub grows more than the shaft", Unit = Units.Micrometre, Scale = 0.001,
        Formula = "ΔU = 2·(u_h − u_s), u growth of rotating rings", Symbols = ["n", "D_o", "d_i", "d"], Source = "Timoshenko, Theory of Elasticity: rotating ring in plane stress",
        Note = "a toothed rim counts as a plain ring up to its outside",
    };

    public static readonly QuantityKind SpeedLossShare = new()
    {
        Name = "speed_loss_share", Title = "Overlap lost at speed, over the least that is left by warmth and smoothing", Unit = Units.Percent,
        Formula = "ΔU/(U_min − s)", Symbols = ["ΔU", "U", "s"], Source = Closed,
    };

    public static readonly QuantityKind Pressure = new()
    {
        Name = "pressure", Symbol = "p", Title = "Pressure in the joint", Unit = Units.Megapascal, Scale = 10,
        Formula = "p = U_w/(d·[((1 + Q_s²)/(1 − Q_s²) − ν_s)/E_s + ((1 + Q_h²)/(1 − Q_h²) + ν_h)/E_h]); least: U_w = U_min − s − ΔU, greatest: U_max − s",
        Symbols = ["U", "s", "ΔU", "D_o", "d_i", "d"], Source = Lame, Note = "plane stress, elastic, parts of equal length; 0 where there is play",
    };

    public static readonly QuantityKind Friction = new()
    {
        Name = "least_friction", Symbol = "µ", Title = "Least friction of the joint", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind PressFriction = new()
    {
        Name = "greatest_friction", Symbol = "µ_max", Title = "Greatest friction when it is pressed together", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind TorqueCarried = new()
    {
        Name = "torque_carried", Symbol = "T", Title = "Greatest torque through the joint", Unit = Units.NewtonMetre, Scale = 1000,
        Formula = "the greatest of K_A·T at rated torque and T at the peak torque", Source = "torque balance of the train; ISO 6336-1 for K_A",
    };

    public static readonly QuantityKind AxialForce = new()
    {
        Name = "axial_force", Symbol = "F", Title = "Greatest axial force through the joint", Unit = Units.Newton, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind TorqueCapacity = new()
    {
        Name = "torque_capacity", Symbol = "T_p", Title = "Torque at which the joint slips, at its loosest", Unit = Units.NewtonMetre, Scale = 1000,
        Formula = "T_p = µ·p_min·π·d²·l/2", Symbols = ["p", "µ", "l", "d"], Source = "DIN 7190-1; statics",
    };

    public static readonly QuantityKind AxialCapacity = new()
    {
        Name = "axial_capacity", Symbol = "F_p", Title = "Axial force at which the joint slips, at its loosest", Unit = Units.Newton, Scale = 100,
        Formula = "F_p = µ·p_min·π·d·l", Symbols = ["p", "µ", "l", "d"], Source = "DIN 7190-1; statics",
    };

    public static readonly QuantityKind SlipSafety = new()
    {
        Name = "slip_safety", Symbol = "S", Title = "Safety against slip, torque and axial force together",
        Formula = "S = F_p/√((2·T/d)² + F²)", Symbols = ["F_p", "T", "F", "d"], Source = "DIN 7190-1; statics",
    };

    public static readonly QuantityKind SlipSafetyWanted = new()
    {
        Name = "slip_safety_wanted", Title = "Least safety against slip wanted", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind HubStress = new()
    {
        Name = "hub_stress", Symbol = "σ_h", Title = "Von Mises stress at the bore of the hub, at its tightest", Unit = Units.Megapascal,
        Formula = "σ_h = p_max·√(3 + Q_h⁴)/(1 − Q_h²), Q_h = d/D_o", Symbols = ["p", "D_o", "d"], Source = Lame, Note = "a plain ring; the ends of a hub on a longer shaft see more",
    };

    public static readonly QuantityKind ShaftStress = new()
    {
        Name = "shaft_stress", Symbol = "σ_s", Title = "Von Mises stress of the shaft, at its tightest", Unit = Units.Megapascal,
        Formula = "σ_s = 2·p_max/(1 − Q_s²) at a bore, p_max of a solid shaft, Q_s = d_i/d", Symbols = ["p", "d_i", "d"], Source = Lame,
    };

    public static readonly QuantityKind HubYield = new()
    {
        Name = "hub_yield", Symbol = "R_h", Title = "Yield strength of the hub", Unit = Units.Megapascal, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind ShaftYield = new()
    {
        Name = "shaft_yield", Symbol = "R_s", Title = "Yield strength of the shaft", Unit = Units.Megapascal, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind PressForce = new()
    {
        Name = "press_force", Title = "Greatest force to press the parts together", Unit = Units.Newton, Scale = 1000,
        Formula = "µ_max·p_20·π·d·l, p_20 of the greatest overlap at 20 °C", Symbols = ["µ_max", "C", "s", "l", "D_o", "d_i", "d"], Source = "DIN 7190-1; statics",
    };

    public static readonly QuantityKind GreatestPressForce = new()
    {
        Name = "greatest_press_force", Title = "Force of the press at hand", Unit = Units.Newton, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Joining = new()
    {
        Name = "joining_temperature", Symbol = "θ_h", Title = "Temperature of the hub at which it slips on freely, shaft at 20 °C", Unit = Units.Celsius,
        Formula = "θ_h = 20 °C + (d/1000 − C_min)/(α_h·d)", Symbols = ["C", "α_h", "d"], Source = "DIN 7190-1; thermal expansion", Scale = 100,
        Note = "play of a thousandth of the diameter while joining, DIN 7190-1 from memory",
    };

    public static readonly QuantityKind GreatestJoining = new()
    {
        Name = "greatest_joining", Title = "Temperature that the hub stands", Unit = Units.Celsius, Certainty = Certainty.Declared,
    };

    private static QuantityKind Text(string name, string title) =>
        new() { Name = name, Title = title, ValueKind = ValueKind.Text, Certainty = Certainty.Declared };

    private static QuantityKind Length(string name, string symbol, string title, Certainty certainty) =>
        new() { Name = name, Symbol = symbol, Title = title, Unit = Units.Millimetre, Certainty = certainty };

    private static QuantityKind Service(string name, string title, string formula, string source, string symbol = "C_θ") =>
        new() { Name = name, Symbol = symbol, Title = title, Unit = Units.Micrometre, Formula = formula, Source = source, Scale = 0.01 };

    public static readonly ImmutableArray<QuantityKind> All =
    [
        Function, Diameter, Hole, Shaft, HoleExpansion, ShaftExpansion, ClearanceAtRoom, Kind, Contradiction, Rivals, Cold, Running, Hot, Clearance, LeastClearance, GreatestClearance, Interference, HoleRoughness,
        ShaftRoughness, Smoothing, HubOutside, ShaftBore, JointLength, Speed, SpeedLoss, SpeedLossShare, Pressure, Friction, PressFriction, TorqueCarried, AxialForce,
        TorqueCapacity, AxialCapacity, SlipSafety, SlipSafetyWanted, HubStress, HubYield, ShaftStress, ShaftYield, PressForce, GreatestPressForce, Joining,
        GreatestJoining,
    ];
}
