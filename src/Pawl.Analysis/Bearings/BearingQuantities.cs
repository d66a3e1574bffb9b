using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Bearings;

/// <summary>What is known of a rolling bearing in its place.</summary>
public static class BearingQuantities
{
    private const string Iso281 = "ISO 281:2007";
    private const string Statics = "statics of rigid shafts; each cause by itself, sizes added where directions are not known";

    public static readonly QuantityKind Entry = Words("entry", "Entry in the catalogue");
    public static readonly QuantityKind Kind = Words("bearing_kind", "Kind");
    public static readonly QuantityKind Seat = Words("axial_duty", "Axial duty");
    public static readonly QuantityKind HasPartner = new()
    {
        Name = "has_partner", Title = "One row at a contact angle has its partner", ValueKind = ValueKind.Truth,
        Formula = "one bearing of the body takes thrust in the positive direction, another in the negative", Source = "the spec",
    };

    public static readonly QuantityKind Greased = new()
    {
        Name = "greased", Title = "Runs on grease of its own", ValueKind = ValueKind.Truth,
        Formula = "lubricated_by: grease; where that is silent: contact seals, or a gearbox that is greased", Source = "the spec",
    };

    public static readonly QuantityKind Shaft = Words("on_shaft", "Inner ring sits on");
    public static readonly QuantityKind Housing = Words("in_housing", "Outer ring sits in");

    public static readonly QuantityKind InPlanet = new()
    {
        Name = "in_planet", Title = "Carries a planet", ValueKind = ValueKind.Truth, Formula = "one of its bodies is a planet set", Source = "the spec",
    };

    public static readonly QuantityKind Bore = Millimetres("bore", "d", "Bore");
    public static readonly QuantityKind Outside = Millimetres("outside", "D", "Outside diameter");
    public static readonly QuantityKind Width = Millimetres("width", "B", "Width");

    public static readonly QuantityKind PitchDiameter = new()
    {
        Name = "pitch_diameter", Symbol = "D_pw", Title = "Pitch diameter of the rolling elements", Unit = Units.Millimetre,
        Formula = "as stated, else (d + D)/2", Symbols = ["d", "D"], Source = "ISO 281 permits the mean diameter",
    };

    public static readonly QuantityKind Misfit = new()
    {
        Name = "designation_misfit", Title = "What contradicts its designation", ValueKind = ValueKind.Text,
        Formula = "bore, outside diameter and width against the designation; none: they agree", Source = "ISO 15", Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind DynamicRating = new()
    {
        Name = "dynamic_rating", Symbol = "C", Title = "Basic dynamic load rating", Unit = Units.Newton, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind StaticRating = new()
    {
        Name = "static_rating", Symbol = "C_0", Title = "Basic static load rating", Unit = Units.Newton, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind SetRating = new()
    {
        Name = "set_rating", Symbol = "C_s", Title = "Dynamic rating of all bearings of this place", Unit = Units.Newton,
        Formula = "C·k^0.7 of balls, C·k^(7/9) of rollers, k like bearings side by side", Symbols = ["C"], Source = Iso281,
    };

    public static readonly QuantityKind SetStaticRating = new()
    {
        Name = "set_static_rating", Symbol = "C_0s", Title = "Static rating of all bearings of this place", Unit = Units.Newton,
        Formula = "C_0·k", Symbols = ["C_0"], Source = "ISO 76",
    };

    public static readonly QuantityKind ComputedRating = new()
    {
        Name = "computed_rating", Symbol = "C_r", Title = "Dynamic rating of the internal geometry", Unit = Units.Newton,
        Formula = "balls: 1.3·f_c·(i·cos α)^0.7·Z^(2/3)·D_w^1.8; rollers: 1.1·f_c·(i·L_we·cos α)^(7/9)·Z^(3/4)·D_we^(29/27)", Source = Iso281,
        Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind RatingShare = new()
    {
        Name = "rating_share", Symbol = "C/C_r", Title = "Stated over computed dynamic rating", Formula = "C/C_r", Symbols = ["C", "C_r"], Source = "closed form",
    };

    public static readonly QuantityKind StaticRatingShare = new()
    {
        Name = "static_rating_share", Symbol = "C_0/C_0r", Title = "Stated over computed static rating",
        Formula = "C_0/C_0r; balls: C_0r = f_0·i·Z·D_w²·cos α; rollers: 44·(1 − γ)·i·Z·L_we·D_we·cos α", Symbols = ["C_0"], Source = "ISO 76:2006",
        Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind Hybrid = new()
    {
        Name = "hybrid", Title = "Ceramic balls in steel rings", ValueKind = ValueKind.Truth, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind StaticOfHybrid = new()
    {
        Name = "static_rating_of_hybrid", Title = "The static rating is that of the hybrid bearing", ValueKind = ValueKind.Truth, Certainty = Certainty.Declared,
    };

    // Loads.
    public static readonly QuantityKind RelativeSpeed = new()
    {
        Name = "relative_speed", Symbol = "n", Title = "Maximum speed of one ring against the other", Unit = Units.RevolutionPerMinute,
        Formula = "|n_inner − n_outer|, at the input's greatest speed or the fastest share", Source = "kinematics", Scale = 1,
    };

    public static readonly QuantityKind RadialLoad = new()
    {
        Name = "radial_load", Symbol = "F_r", Title = "Radial load at the rated torque", Unit = Units.Newton,
        Formula = "reaction to tooth forces and orbit, with the application factor; unequal sharing, forces of the coupled machine and weight added in size",
        Source = Statics, Certainty = Certainty.ClosedForm, Note = "at nominal dimensions; planets: of the most loaded one",
    };

    public static readonly QuantityKind AxialLoad = new()
    {
        Name = "axial_load", Symbol = "F_a", Title = "Axial load at the rated torque", Unit = Units.Newton,
        Formula = "what the arrangement hands to this bearing of tooth forces, machine, weight and induced thrust, in the worse direction", Source = Statics,
        Scale = 1, Note = "pairs: set without play and without preload",
    };

    public static readonly QuantityKind AxialRatio = new()
    {
        Name = "axial_ratio", Symbol = "f_0·F_a/C_0", Title = "Relative axial load", Formula = "f_0·F_a/C_0", Symbols = ["F_a", "C_0s"], Source = Iso281,
        Note = "outside the table its nearest row is taken",
    };

    public static readonly QuantityKind EquivalentLoad = new()
    {
        Name = "equivalent_load", Symbol = "P", Title = "Equivalent dynamic load at the rated torque", Unit = Units.Newton, Formula = "P = X·F_r + Y·F_a",
        Symbols = ["F_r", "F_a"], Source = Iso281,
    };

    public static readonly QuantityKind LoadShare = new()
    {
        Name = "load_share", Symbol = "P/C", Title = "Maximum equivalent load over the dynamic rating", Formula = "greatest P of all shares and the rated load over C_s",
        Symbols = ["P", "C_s"], Source = Iso281,
    };

    public static readonly QuantityKind LoadOverStatic = new()
    {
        Name = "load_over_static", Symbol = "P/C_0", Title = "Maximum equivalent load over the static rating", Formula = "greatest P over C_0s",
        Symbols = ["P", "C_0s"], Source = Iso281,
    };

    public static readonly QuantityKind MinLoadShare = new()
    {
        Name = "min_load_share", Symbol = "P_min/C", Title = "Minimum equivalent load over the dynamic rating",
        Formula = "least P of all shares without the application factor, shared evenly, machine and weight against the teeth, over C_s", Symbols = ["P", "C_s"], Source = "common practice, no source",
    };

    public static readonly QuantityKind AxialShare = new()
    {
        Name = "axial_share", Symbol = "F_a/C_0", Title = "Axial load over the static rating", Formula = "F_a/C_0s", Symbols = ["F_a", "C_0s"], Source = "closed form", Scale = 1,
    };

    public static readonly QuantityKind MeanLoad = new()
    {
        Name = "mean_load", Symbol = "P_m", Title = "Mean equivalent load of the service life", Unit = Units.Newton,
        Formula = "P_m = (Σ P_i^p·q_i·n_i / Σ q_i·n_i)^(1/p)", Source = "ISO/TR 1281-2",
    };

    public static readonly QuantityKind BasicLife = new()
    {
        Name = "basic_life", Symbol = "L_10h", Title = "Basic rating life", Unit = Units.Hour, Formula = "L_10h = (C_s/P_m)^p·10⁶/(60·n_m), p = 3 balls, 10/3 rollers",
        Symbols = ["C_s", "P_m", "P", "n"], Source = Iso281, Note = "a life that 90 % of many such bearings reach; no promise for one of them; 10⁶ h at most are told",
    };

    public static readonly QuantityKind Reliability = new()
    {
        Name = "reliability", Title = "Reliability required", Unit = Units.Percent, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind ReliabilityFactor = new()
    {
        Name = "reliability_factor", Symbol = "a_1", Title = "Life factor for reliability", Formula = "a_1 by the table", Source = Iso281,
    };

    public static readonly QuantityKind Temperature = new()
    {
        Name = "temperature", Symbol = "θ_b", Title = "Temperature of the bearing", Unit = Units.Celsius, Certainty = Certainty.Declared,
        Note = "as warm as the oil where it is not stated, which flatters the film",
    };

    public static readonly QuantityKind WorkingViscosity = new()
    {
        Name = "working_viscosity", Symbol = "ν_b", Title = "Viscosity of the lubricant in the bearing", Unit = Units.SquareMillimetrePerSecond,
        Formula = "Walther's line through ν_40 and ν_100, at θ_b", Symbols = ["ν_40", "ν_100", "θ_b"], Source = "ASTM D341",
    };

    public static readonly QuantityKind ViscosityRatio = new()
    {
        Name = "viscosity_ratio", Symbol = "κ", Title = "Viscosity ratio in the slowest share", Formula = "κ = ν_b/ν_1; ν_1 = 45 000·n^−0.83·D_pw^−0.5 below 1000 1/min, else 4500·(n·D_pw)^−0.5",
        Symbols = ["ν_b", "D_pw", "n"], Source = Iso281,
    };

    public static readonly QuantityKind ExtremePressure = new()
    {
        Name = "extreme_pressure", Title = "Proven additives of extreme pressure", ValueKind = ValueKind.Truth, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Contamination = new()
    {
        Name = "contamination_factor", Symbol = "e_C", Title = "Contamination factor",
        Formula = "e_C = a·(1 − b/∛D_pw), a = min(1, a_0·κ^0.68·D_pw^0.55), by the code of cleanliness; in words: the least of the class", Symbols = ["κ", "D_pw"],
        Source = Iso281, Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind FatigueLimit = new()
    {
        Name = "fatigue_limit", Symbol = "C_u", Title = "Fatigue load limit", Unit = Units.Newton, Formula = "as stated, else C_0s/22 of balls, C_0s/8.2 of rollers",
        Symbols = ["C_0s", "D_pw"], Source = "ISO 281:2007, annex B, simplified", Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind LifeFactor = new()
    {
        Name = "life_factor", Symbol = "a_ISO", Title = "Life modification factor, mean over the service life", Formula = "L_nm/(a_1·L_10)",
        Source = Iso281, Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind ModifiedLife = new()
    {
        Name = "modified_life", Symbol = "L_nmh", Title = "Modified rating life", Unit = Units.Hour,
        Formula = "1/L_nmh = Σ q_i/(a_1·a_ISO,i·L_10h,i), a_ISO from κ_i and e_C·C_u/P_i", Symbols = ["a_1", "κ", "e_C", "C_u", "C_s", "L_10h"], Source = Iso281,
        Certainty = Certainty.Memory, Note = "10⁶ h at most are told",
    };

    public static readonly QuantityKind PeakLoad = new()
    {
        Name = "peak_static_load", Symbol = "P_0", Title = "Equivalent static load at the peak torque", Unit = Units.Newton, Formula = "P_0 = max(X_0·F_r + Y_0·F_a, F_r) at the peak torque",
        Source = "ISO 76:2006",
    };

    public static readonly QuantityKind StaticSafety = new()
    {
        Name = "static_safety", Symbol = "s_0", Title = "Static safety at the peak torque", Formula = "s_0 = C_0s/P_0", Symbols = ["C_0s", "P_0"], Source = "ISO 76:2006",
    };

    public static readonly QuantityKind RequiredStaticSafety = new()
    {
        Name = "required_static_safety", Symbol = "s_0min", Title = "Static safety required", Certainty = Certainty.Declared,
    };

    // Speed.
    public static readonly QuantityKind LimitingShare = new()
    {
        Name = "limiting_share", Symbol = "n/n_lim", Title = "Speed over the limiting speed of the maker", Formula = "n/n_lim", Symbols = ["n"], Source = "the maker",
    };

    public static readonly QuantityKind ReferenceShare = new()
    {
        Name = "reference_share", Symbol = "n/n_ref", Title = "Speed over the thermal reference speed", Formula = "n/n_ref", Symbols = ["n"], Source = "ISO 15312, speed of the maker",
    };

    public static readonly QuantityKind SpeedNumber = new()
    {
        Name = "speed_number", Symbol = "n·d_m", Title = "Speed number", Unit = Units.MillimetrePerMinute, Formula = "n·(d + D)/2", Symbols = ["n", "d", "D"], Source = "common practice",
    };

    public static readonly QuantityKind SpeedGuide = new()
    {
        Name = "speed_guide", Title = "Speed number that such a bearing bears", Unit = Units.MillimetrePerMinute,
        Formula = "by kind, lubrication and cage, least of the range; ceramic balls: 1.2 times", Source = "common practice, no source", Certainty = Certainty.CommonPractice,
    };

    public static readonly QuantityKind CentrifugalShare = new()
    {
        Name = "centrifugal_share", Symbol = "F_c·Z/F_r", Title = "Centrifugal force of a ball over its mean load",
        Formula = "m·(D_pw/2)·ω_c²·Z/F_r, ω_c of the cage", Symbols = ["n", "F_r"], Source = "closed form", Note = "in the frame of the slower ring",
    };

    // Fits and play.
    public static readonly QuantityKind InnerLoad = Seen("inner_load", "How the load lies to the inner ring");
    public static readonly QuantityKind OuterLoad = Seen("outer_load", "How the load lies to the outer ring");

    public static readonly QuantityKind ShaftSeat = Millimetres("shaft_seat", "d_s", "Seat on the shaft");
    public static readonly QuantityKind HousingSeat = Millimetres("housing_seat", "D_h", "Seat in the housing");

    public static readonly QuantityKind InnerFit = new()
    {
        Name = "inner_fit", Symbol = "I_i", Title = "Overlap of shaft seat and inner ring, cold to hot", Unit = Units.Micrometre,
        Formula = "d_s − d, at 20 °C, coldest and hottest; below 0: play", Source = "ISO 286-1, ISO 492; thermal expansion", Scale = 0.005, Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind OuterFit = new()
    {
        Name = "outer_fit", Symbol = "I_o", Title = "Overlap of outer ring and housing seat, cold to hot", Unit = Units.Micrometre,
        Formula = "D − D_h, at 20 °C, coldest and hottest; below 0: play", Source = "ISO 286-1, ISO 492; thermal expansion", Scale = 0.005,
        Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind ClearanceClass = Words("clearance_class", "Class of internal clearance");

    public static readonly QuantityKind NewClearance = new()
    {
        Name = "new_clearance", Symbol = "G_r", Title = "Radial internal clearance of the new bearing", Unit = Units.Micrometre, Formula = "by class and bore; needle cages: D_h − d_s − 2·D_w",
        Source = "ISO 5753-1:2009", Scale = 0.01,
    };

    public static readonly QuantityKind OperatingClearance = new()
    {
        Name = "operating_clearance", Symbol = "G_op", Title = "Clearance mounted, cold to hot", Unit = Units.Micrometre,
        Formula = "G_r − growth of the inner raceway − contraction of the outer − loss by warmth; at 20 °C, coldest and hottest", Source = "Lamé, thermal expansion",
        Scale = 0.005, Note = "below 0: preload; raceways estimated where they are not stated",
    };

    public static readonly QuantityKind MaxClearance = new()
    {
        Name = "max_clearance", Title = "Maximum operating clearance that is borne", Unit = Units.Micrometre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Preloaded = new()
    {
        Name = "preloaded", Title = "A negative operating clearance is meant", ValueKind = ValueKind.Truth, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind AxialFloat = new()
    {
        Name = "axial_float", Title = "Axial way left when hottest or coldest", Unit = Units.Millimetre,
        Formula = "float − |α_shaft·Δθ_shaft − α_housing·Δθ_housing|·distance from the locating bearing", Source = "thermal expansion", Scale = 0.1,
    };

    public static readonly QuantityKind FilletReserve = new()
    {
        Name = "fillet_reserve", Title = "Chamfer of the ring less the fillet of the shaft", Unit = Units.Millimetre, Formula = "r_s min − fillet", Source = "ISO 582; chamfer by the maker", Scale = 0.1,
    };

    // Planets.
    public static readonly QuantityKind OrbitForce = new()
    {
        Name = "orbit_force", Symbol = "F_c", Title = "Centrifugal force of the planet", Unit = Units.Newton, Formula = "m·a·ω_carrier²", Source = "closed form", Scale = 1,
    };

    public static readonly QuantityKind OrbitShare = new()
    {
        Name = "orbit_share", Symbol = "F_c/F_mesh", Title = "Centrifugal force over the tooth forces of the planet", Formula = "F_c/|Σ F_tooth|", Symbols = ["F_c"], Source = "closed form",
    };

    public static readonly QuantityKind Acceleration = new()
    {
        Name = "acceleration", Symbol = "a_c", Title = "Acceleration of the planet bearing", Unit = Units.MetrePerSecondSquared, Formula = "a·ω_carrier²", Source = "closed form", Scale = 9810,
    };

    public static readonly QuantityKind AccelerationShare = new()
    {
        Name = "acceleration_share", Title = "Acceleration over what the maker permits", Formula = "a_c over the maker's limit", Symbols = ["a_c"], Source = "the maker",
    };

    public static readonly QuantityKind TiltCouple = new()
    {
        Name = "tilt_couple", Symbol = "M", Title = "Couple that a single planet bearing bears as edge load", Unit = Units.NewtonMetre,
        Formula = "couple of the tooth forces about the middle of the bearing", Source = Statics, Scale = 1000,
    };

    public static readonly QuantityKind RacewayHardness = new()
    {
        Name = "raceway_hardness", Title = "Minimum hardness of shaft and bore as raceways", Unit = Units.Vickers, Certainty = Certainty.Declared,
        Note = "converted to HV after ISO 18265, table A.1, where written in HRC or HBW",
    };

    public static readonly QuantityKind RacewayPressure = new()
    {
        Name = "raceway_pressure", Symbol = "p_H", Title = "Maximum pressure of the heaviest roller on the shaft, rated or in a share", Unit = Units.Megapascal,
        Formula = "p_H = √(Q·E*/(π·R·L_we)), Q = 5·F_r/Z of one row, at the greatest F_r of all shares", Symbols = ["F_r", "d"], Source = "Hertz; Stribeck", Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind PeakRacewayPressure = new()
    {
        Name = "peak_raceway_pressure", Symbol = "p_Hp", Title = "The same at the peak torque", Unit = Units.Megapascal,
        Formula = "p_H at the radial load of the peak torque", Source = "Hertz; Stribeck", Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind FrictionLoss = new()
    {
        Name = "friction_loss", Symbol = "P_V", Title = "Friction of such bearings at the rated torque", Unit = Units.Watt,
        Formula = "μ·P·d/2·ω of all of them, P without the application factor", Symbols = ["P", "d", "n"], Source = "textbooks of machine design", Certainty = Certainty.Memory, Note = "first estimate; seals and drag of the oil left out", Scale = 1000,
    };

    public static readonly ImmutableArray<QuantityKind> All =
    [
        Entry, Kind, Seat, HasPartner, Greased, Shaft, Housing, InPlanet, Bore, Outside, Width, PitchDiameter, Misfit, DynamicRating, StaticRating, SetRating, SetStaticRating, ComputedRating,
        RatingShare, StaticRatingShare, Hybrid, StaticOfHybrid, RelativeSpeed, OrbitForce, OrbitShare, RadialLoad, AxialLoad, TiltCouple, AxialRatio, EquivalentLoad, LoadShare,
        LoadOverStatic, MinLoadShare, AxialShare, MeanLoad, BasicLife, Reliability, ReliabilityFactor, Temperature, WorkingViscosity, ViscosityRatio,
        ExtremePressure, Contamination, FatigueLimit, LifeFactor, ModifiedLife, PeakLoad, StaticSafety, RequiredStaticSafety, LimitingShare, ReferenceShare,
        SpeedNumber, SpeedGuide, CentrifugalShare, InnerLoad, OuterLoad, ShaftSeat, HousingSeat, InnerFit, OuterFit, ClearanceClass, NewClearance, OperatingClearance,
        MaxClearance, Preloaded, AxialFloat, FilletReserve, Acceleration, AccelerationShare, RacewayHardness, RacewayPressure, PeakRacewayPressure, FrictionLoss,
    ];

    private static QuantityKind Words(string name, string title) => new()
    {
        Name = name, Title = title, ValueKind = ValueKind.Text, Certainty = Certainty.Declared,
    };

    private static QuantityKind Seen(string name, string title) => new()
    {
        Name = name, Title = title, ValueKind = ValueKind.Text, Formula = "rotating where ring and direction of the load turn at different speeds", Source = "kinematics",
    };

    private static QuantityKind Millimetres(string name, string symbol, string title) => new()
    {
        Name = name, Symbol = symbol, Title = title, Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };
}

/// <summary>How a body is held; quantities of bodies.</summary>
public static class SupportQuantities
{
    public static readonly QuantityKind BearingCount = new()
    {
        Name = "bearing_count", Title = "Bearings that hold it", Formula = "bearings of the body that hold no other one", Source = "the spec",
    };

    public static readonly QuantityKind LocatingPlaces = new()
    {
        Name = "locating_places", Title = "Places that hold it along the axis", Formula = "locating bearings, and one for bearings that take thrust in both directions as a pair",
        Source = "the spec",
    };

    public static readonly QuantityKind Supports = new()
    {
        Name = "supports", Title = "How it is held", ValueKind = ValueKind.Text, Formula = "two bearings, or one and its meshes where it floats: held; else the reason", Source = "statics of rigid shafts",
    };

    public static readonly QuantityKind Unsupported = new()
    {
        Name = "unsupported", Title = "What is left without a bearing", ValueKind = ValueKind.Text,
        Formula = "planets, bodies that do not float, and floating ones that bear the coupled machine or their weight need bearings; none: they have them",
        Source = "statics of rigid shafts",
    };

    public static readonly QuantityKind UnheldThrust = new()
    {
        Name = "unheld_thrust", Title = "Axial force on it that nothing holds", Unit = Units.Newton,
        Formula = "|Σ F_a| of the teeth, the machine and an upright weight, where no bearing locates it and no thrust washers are stated", Source = "statics", Scale = 1,
    };

    public static readonly QuantityKind AxialForce = new()
    {
        Name = "axial_force", Title = "Axial force of the teeth on it at the rated torque", Unit = Units.Newton, Formula = "Σ F_a with direction, in the forward direction of drive",
        Source = "statics", Scale = 1,
    };

    public static readonly QuantityKind MachineRadial = new()
    {
        Name = "machine_radial_force", Title = "Radial force of the coupled machine", Unit = Units.Newton, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind MachineAxial = new()
    {
        Name = "machine_axial_force", Title = "Axial force of the coupled machine, in either direction", Unit = Units.Newton, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Weight = new()
    {
        Name = "mass", Title = "Mass whose weight its bearings bear", Unit = Units.Kilogram, Certainty = Certainty.Declared,
    };

    public static readonly ImmutableArray<QuantityKind> All = [MachineRadial, MachineAxial, Weight, BearingCount, LocatingPlaces, Supports, Unsupported, AxialForce, UnheldThrust];
}
