using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Lubrication;

/// <summary>Oil, its way to the teeth, its temperature and its housing.</summary>
public static class LubricationQuantities
{
    private const string Closed = "closed form";
    private const string Practice = "common practice, no source";

    public static readonly QuantityKind Supply = Text("supply", "How oil reaches the meshes");
    public static readonly QuantityKind Attitude = Text("attitude", "How the common axis lies");
    public static readonly QuantityKind TopBearing = Text("top_bearing", "Supply of the upper bearing of an upright unit");
    public static readonly QuantityKind Base = Text("base", "Base of the oil");
    public static readonly QuantityKind BaseBefore = Text("base_before", "Base of the oil that was in the unit before");
    public static readonly QuantityKind Flushed = Truth("flushed", "The unit is flushed before the oil is changed");
    public static readonly QuantityKind LowestWetted = Truth("lowest_wetted", "The level at rest wets the lowest planet over its whole face");
    public static readonly QuantityKind Vented = Truth("vented", "The housing breathes");

    public static readonly QuantityKind Mixture = Computed(
        "mixture", "How the oil mixes with the one before", "same, compatible (mineral, PAO, ATF), doubtful (ester with another), incompatible (PAG with another)",
        Practice, Certainty.CommonPractice);

    public static readonly QuantityKind Grade = Computed(
        "grade", "Viscosity grade", "the grade whose middle lies within 10 % of ν_40, or none", "ISO 3448", Certainty.Published);

    public static readonly QuantityKind Index = new()
    {
        Name = "viscosity_index", Symbol = "VI", Title = "Viscosity index",
        Formula = "VI = 100·(L − ν_40)/(L − H), above 100: 100 + (10^N − 1)/0.00715, N = lg(H/ν_40)/lg ν_100; L, H of ν_100",
        Symbols = ["ν_40", "ν_100"], Source = "ISO 2909, ASTM D2270", Certainty = Certainty.Published,
    };

    public static readonly QuantityKind StartViscosity = Viscosity("start_viscosity", "Kinematic viscosity at the coldest start");
    public static readonly QuantityKind RunningViscosity = Viscosity("running_viscosity", "Kinematic viscosity at the running temperature");
    public static readonly QuantityKind HotViscosity = Viscosity("hot_viscosity", "Kinematic viscosity at the hottest");

    public static readonly QuantityKind PitchLineSpeed = new()
    {
        Name = "pitch_line_speed", Symbol = "v", Title = "Fastest pitch line of all meshes", Unit = Units.MetrePerSecond, Scale = 1000,
        Formula = "greatest v of the meshes, at the fastest input of duty and spectrum", Source = Closed,
    };

    public static readonly QuantityKind RimSpeed = new()
    {
        Name = "rim_speed", Symbol = "v_rim", Title = "Fastest rim of the planets around the axis", Unit = Units.MetrePerSecond, Scale = 1000,
        Formula = "v_rim = |ω_carrier|·(a_w + d_a/2) of the planets, at the fastest input", Source = Closed,
        Note = "the web of the carrier, where it reaches farther out, is not known here",
    };

    public static readonly QuantityKind Fastest = new()
    {
        Name = "fastest_speed", Title = "Fastest of pitch lines and rims", Unit = Units.MetrePerSecond, Scale = 1000,
        Formula = "max(v, v_rim)", Symbols = ["v", "v_rim"], Source = Closed,
    };

    public static readonly QuantityKind SupplyNeeded = Computed(
        "supply_needed", "Supply that the fastest speed asks for", "splash to 12 m/s, splash with care to 15 m/s, jet above", Practice,
        Certainty.CommonPractice);

    public static readonly QuantityKind MeshLoss = new()
    {
        Name = "mesh_loss", Symbol = "P_mesh", Title = "Power lost in the meshes", Unit = Units.Watt, Scale = 1000,
        Formula = "that of the train, at the rated torque and speed", Source = Closed,
        Note = "a spectrum that is lighter than the rated load runs cooler",
    };

    public static readonly QuantityKind BearingLoss = new()
    {
        Name = "bearing_loss", Symbol = "P_bearing", Title = "Power lost in the bearings", Unit = Units.Watt, Scale = 1000,
        Formula = "sum of the losses of all bearings that are stated", Source = Closed,
    };

    public static readonly QuantityKind SealLoss = new()
    {
        Name = "seal_loss", Symbol = "P_seal", Title = "Power lost under the lips", Unit = Units.Watt, Scale = 1000,
        Formula = "sum of the losses that the lip seals state", Source = Closed,
    };

    public static readonly QuantityKind OtherLoss = new()
    {
        Name = "other_loss", Symbol = "P_other", Title = "Power lost otherwise: churning", Unit = Units.Watt, Certainty = Certainty.Declared, Scale = 1000,
    };

    public static readonly QuantityKind LeftOut = Computed(
        "losses_left_out", "Losses that the balance leaves out", "none, or those that nobody states", "the spec", Certainty.Declared);

    public static readonly QuantityKind Loss = new()
    {
        Name = "loss", Symbol = "P", Title = "Power that becomes heat", Unit = Units.Watt, Scale = 1000,
        Formula = "P = P_mesh + P_bearing + P_seal + P_other", Symbols = ["P_mesh", "P_bearing", "P_seal", "P_other"], Source = Closed,
    };

    public static readonly QuantityKind Ambient = new()
    {
        Name = "ambient", Symbol = "θ_a", Title = "Warmest air around the housing", Unit = Units.Celsius, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Area = new()
    {
        Name = "cooling_area", Symbol = "A", Title = "Surface of the housing in free air", Unit = Units.SquareMetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Transfer = new()
    {
        Name = "heat_transfer", Symbol = "k", Title = "Heat transfer to the air", Unit = Units.WattPerSquareMetreKelvin, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Balanced = new()
    {
        Name = "balanced_temperature", Symbol = "θ_S", Title = "Temperature of the sump in balance", Unit = Units.Celsius,
        Formula = "θ_S = θ_a + P/(k·A)", Symbols = ["θ_a", "P", "k", "A"], Source = "balance of heat, as in textbooks of machine design",
        Note = "one temperature of the whole housing, steady running; the losses do not follow the temperature",
    };

    public static readonly QuantityKind Running = new()
    {
        Name = "running_temperature", Title = "Running temperature of the duty", Unit = Units.Celsius, Formula = "that of the oil", Source = Closed,
    };

    public static readonly QuantityKind Hottest = new()
    {
        Name = "hottest_temperature", Title = "Hottest oil of the duty", Unit = Units.Celsius, Formula = "that of the oil", Source = Closed,
    };

    public static readonly QuantityKind SumpLimit = new()
    {
        Name = "sump_limit", Title = "Warmest sump that the oil stands for good", Unit = Units.Celsius,
        Formula = "100 °C of mineral oil and ATF, 115 °C of PAO, PAG and ester", Source = Practice, Certainty = Certainty.CommonPractice,
    };

    public static readonly QuantityKind FreeVolume = Volume("free_volume", "V", "Free volume of the housing without its parts");
    public static readonly QuantityKind Fill = Volume("fill", "V_oil", "Oil in the housing");
    public static readonly QuantityKind LeastFill = Volume("least_fill", "", "Least oil that the builder permits");
    public static readonly QuantityKind GreatestFill = Volume("greatest_fill", "", "Most oil that the builder permits");

    public static readonly QuantityKind FillShare = new()
    {
        Name = "fill_share", Title = "Share of the free volume that is oil", Unit = Units.Percent,
        Formula = "V_oil/V", Symbols = ["V_oil", "V"], Source = Closed,
    };

    public static readonly QuantityKind PortsMissing = Computed(
        "ports_missing", "Openings that are missing", "none, or those of fill, drain, vent and level that the housing lacks", "the spec", Certainty.Declared);

    public static readonly QuantityKind HousingPressure = new()
    {
        Name = "housing_pressure", Symbol = "p", Title = "Gauge pressure in the hottest housing", Unit = Units.Megapascal, Scale = 0.01,
        Formula = "vented: 0; else p = p_1·(T_2/T_1·V_air/(V_air − V_oil·β·(T_2 − T_1)) − 1), V_air = V − V_oil, p_1 = 0.101325 MPa, β = 7·10⁻⁴ 1/K",
        Source = "law of ideal gases; expansion of the oil common practice, no source",
        Note = "from the coldest start to the hottest oil, for a lip lets air in as a housing cools; vapour of water is left out: optimistic where there is any",
    };

    public static readonly QuantityKind PressurePermitted = new()
    {
        Name = "permitted_pressure", Title = "Pressure that the weakest lip stands", Unit = Units.Megapascal, Scale = 0.01,
        Formula = "least of the lip seals; without any 0.02 MPa", Source = Practice, Certainty = Certainty.CommonPractice,
    };

    private static QuantityKind Text(string name, string title) =>
        new() { Name = name, Title = title, ValueKind = ValueKind.Text, Certainty = Certainty.Declared };

    private static QuantityKind Truth(string name, string title) =>
        new() { Name = name, Title = title, ValueKind = ValueKind.Truth, Certainty = Certainty.Declared };

    private static QuantityKind Computed(string name, string title, string formula, string source, Certainty certainty) =>
        new() { Name = name, Title = title, ValueKind = ValueKind.Text, Formula = formula, Source = source, Certainty = certainty };

    private static QuantityKind Volume(string name, string symbol, string title) =>
        new() { Name = name, Symbol = symbol, Title = title, Unit = Units.Litre, Certainty = Certainty.Declared };

    private static QuantityKind Viscosity(string name, string title) => new()
    {
        Name = name, Symbol = "ν", Title = title, Unit = Units.SquareMillimetrePerSecond,
        Formula = "lg lg(ν + 0.7) = A − B·lg T, T in kelvin, through ν_40 and ν_100", Symbols = ["ν_40", "ν_100", "T"],
        Source = "ASTM D341", Certainty = Certainty.Published,
    };

    public static readonly ImmutableArray<QuantityKind> All =
    [
        Supply, Attitude, Base, Grade, Index, StartViscosity, RunningViscosity, HotViscosity, PitchLineSpeed, RimSpeed, Fastest, SupplyNeeded,
        LowestWetted, TopBearing, MeshLoss, BearingLoss, SealLoss, OtherLoss, LeftOut, Loss, Ambient, Area, Transfer, Balanced, Running,
        Hottest, SumpLimit, FreeVolume, Fill, LeastFill, GreatestFill, FillShare, PortsMissing, Vented, HousingPressure, PressurePermitted,
        BaseBefore, Mixture, Flushed,
    ];
}
