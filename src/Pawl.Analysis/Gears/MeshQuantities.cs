using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Gears;

/// <summary>What is known of a pair of gears in mesh.</summary>
public static class MeshQuantities
{
    private const string Iso = "ISO 21771";
    private const string Willis = "Willis relation of every mesh, solved as one linear system";
    private const string PowerBalance = "torque and power balance, losses by the power in the carrier frame";

    public static readonly QuantityKind Kind = new()
    {
        Name = "kind", Title = "External or internal pair", ValueKind = ValueKind.Text, Certainty = Certainty.Declared,
        Formula = "internal where one gear is a ring", Source = "the spec",
    };

    public static readonly QuantityKind SameRack = new()
    {
        Name = "same_rack", Title = "Module, pressure angle and helix angle agree", ValueKind = ValueKind.Truth,
        Formula = "m_n, α_n and β equal on both gears", Source = Iso,
    };

    public static readonly QuantityKind HandsFit = new()
    {
        Name = "hands_fit", Title = "Hands of helix fit", ValueKind = ValueKind.Truth,
        Formula = "external pair: opposite hands; internal pair: the same hand", Source = Iso,
    };

    public static readonly QuantityKind Module = new()
    {
        Name = "module", Symbol = "m_n", Title = "Normal module", Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind ReferenceCentreDistance = new()
    {
        Name = "reference_centre_distance", Symbol = "a", Title = "Reference centre distance", Unit = Units.Millimetre,
        Formula = "a = m_n·|z_1 + z_2| / (2·cos β)", Symbols = ["z_1", "z_2", "m_n", "β"], Source = Iso,
    };

    public static readonly QuantityKind CentreDistance = new()
    {
        Name = "centre_distance", Symbol = "a_w", Title = "Working centre distance", Unit = Units.Millimetre,
        Formula = "as declared; else as another mesh of the planet with a central gear declares it; else from the profile shifts",
        Source = Iso,
    };

    public static readonly QuantityKind ShiftCentreDistance = new()
    {
        Name = "shift_centre_distance", Symbol = "a_w(x)", Title = "Centre distance without play, from the profile shifts", Unit = Units.Millimetre,
        Formula = "a_w = a·cos α_t/cos α_wt, inv α_wt = inv α_t + 2·tan α_n·(x_1 + x_2)/(z_1 + z_2)",
        Symbols = ["a", "α_t", "α_n", "x_1", "x_2", "z_1", "z_2"], Source = Iso,
    };

    public static readonly QuantityKind CentreDistanceDifference = new()
    {
        Name = "centre_distance_difference", Symbol = "Δa_w", Title = "Declared centre distance less that of the profile shifts",
        Unit = Units.Millimetre, Scale = 0.005,
        Formula = "Δa_w = a_w − a_w(x), nominal", Symbols = ["a_w", "a_w(x)"], Source = Iso,
    };

    public static readonly QuantityKind WorkingPressureAngle = new()
    {
        Name = "working_pressure_angle", Symbol = "α_wt", Title = "Working transverse pressure angle", Unit = Units.Degree,
        Formula = "α_wt = acos(a·cos α_t/a_w)", Symbols = ["a", "α_t", "a_w"], Source = Iso,
    };

    public static readonly QuantityKind TransverseContactRatio = new()
    {
        Name = "transverse_contact_ratio", Symbol = "ε_α", Title = "Transverse contact ratio",
        Formula = "ε_α = g_α / (π·m_t·cos α_t), g_α = ±½√(d_Na1² − d_b1²) ± ½√(d_Na2² − d_b2²) − a_w·sin α_wt",
        Symbols = ["a_w", "α_wt", "d_Na1", "d_b1", "d_Na2", "d_b2", "m_n", "β", "α_t"], Source = Iso,
        Note = "full involute down to the start of active profile",
    };

    public static readonly QuantityKind OverlapRatio = new()
    {
        Name = "overlap_ratio", Symbol = "ε_β", Title = "Overlap ratio",
        Formula = "ε_β = b·sin β / (π·m_n)", Symbols = ["b", "β", "m_n"], Source = Iso,
    };

    public static readonly QuantityKind TotalContactRatio = new()
    {
        Name = "total_contact_ratio", Symbol = "ε_γ", Title = "Total contact ratio",
        Formula = "ε_γ = ε_α + ε_β; spur gears: ε_γ = ε_α", Symbols = ["ε_α", "ε_β"], Source = Iso,
    };

    public static readonly QuantityKind CommonFaceWidth = new()
    {
        Name = "common_face_width", Symbol = "b", Title = "Face width in common", Unit = Units.Millimetre,
        Formula = "b = least of b_1, b_2 and (b_1 + b_2)/2 − |place_1 − place_2|",
        Symbols = ["b_1", "place_1", "b_2", "place_2"], Source = "closed form",
    };

    public static readonly QuantityKind LossFactor = new()
    {
        Name = "loss_factor", Symbol = "H_v", Title = "Tooth loss factor",
        Formula = "H_v = π·(1/z_1 + 1/z_2)/cos β_b · (1 − ε_α + ε_1² + ε_2²)",
        Symbols = ["z_1", "z_2", "β_b", "d_Na1", "d_b1", "d_Na2", "d_b2", "α_wt"], Source = "ISO/TR 14179-2", Certainty = Certainty.Memory,
        Note = "for ε_α from 1 to 2; outside, state the efficiency of the mesh",
    };

    public static readonly QuantityKind Friction = new()
    {
        Name = "friction", Symbol = "μ_m", Title = "Mean friction coefficient of the flanks", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Efficiency = new()
    {
        Name = "efficiency", Symbol = "η", Title = "Efficiency of the mesh", Unit = Units.Percent,
        Formula = "η = 1 − μ_m·H_v, or as declared", Symbols = ["μ_m", "H_v"], Source = "ISO/TR 14179-2", Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind RollingPower = new()
    {
        Name = "rolling_power", Symbol = "P_m", Title = "Rolling power, one planet set together", Unit = Units.Kilowatt,
        Formula = "P_m = P_in · |T · (ω − ω_carrier)| / (T_in · ω_in), with losses", Symbols = ["P_in", "η"], Source = PowerBalance, Scale = 1e6,
    };

    public static readonly QuantityKind MeshFrequency = new()
    {
        Name = "mesh_frequency", Symbol = "f_m", Title = "Mesh frequency", Unit = Units.Hertz,
        Formula = "f_m = z·|n − n_carrier|", Symbols = ["n_in", "z"], Source = Willis,
    };

    public static readonly QuantityKind PitchLineSpeed = new()
    {
        Name = "pitch_line_speed", Symbol = "v", Title = "Pitch line speed, relative to the carrier", Unit = Units.MetrePerSecond,
        Formula = "v = d/2·|ω − ω_carrier|", Symbols = ["n_in", "d"], Source = Willis,
    };

    public static readonly QuantityKind TangentialForce = new()
    {
        Name = "tangential_force", Symbol = "F_t", Title = "Nominal tangential force at the reference circle, one planet of the set",
        Unit = Units.Newton,
        Formula = "F_t = 2·T / (d·N), T = T_in · (T/T_in) with losses", Symbols = ["T_in", "d", "η"], Source = PowerBalance,
        Note = "equal shares; without load-sharing, application and dynamic factors",
    };

    public static readonly QuantityKind CommonFactor = new()
    {
        Name = "common_factor", Symbol = "g", Title = "Greatest common divisor of the tooth numbers",
        Formula = "g = gcd(z_1, z_2); 1: hunting teeth", Symbols = ["z_1", "z_2"], Source = "closed form",
    };

    public static readonly QuantityKind AssemblyBacklash = new()
    {
        Name = "assembly_backlash", Symbol = "j_bn", Title = "Normal backlash at 20 °C", Unit = Units.Millimetre,
        Formula = "j_bn = −(E_sn1 + E_sn2)·cos α_n + 2·Δa_w·sin α_wt·cos β_b",
        Symbols = ["E_sn1", "E_sn2", "a_w", "a_w(x)", "α_n", "α_wt", "β_b"], Source = "ISO 21771, ISO/TR 10064-2",
        Scale = 0.05, Note = "without run-out and shaft bending",
    };

    public static readonly QuantityKind OperatingBacklash = new()
    {
        Name = "operating_backlash", Symbol = "j_bn", Title = "Normal backlash from coldest to hottest", Unit = Units.Millimetre,
        Formula = "j_bn(T) = j_bn ± 2·a_w·(α_c·(T_c − 20 °C) − α_g·(T − 20 °C))·sin α_wt·cos β_b (external +, internal −)",
        Symbols = ["j_bn", "a_w", "α_c", "α_g", "T_c", "T", "α_wt", "β_b"],
        Source = "ISO 21771; linear thermal expansion", Scale = 0.05,
        Note = "gears at the temperature of the oil, and the body that holds the centres too unless its own is stated",
    };

    public static readonly QuantityKind CircumferentialBacklash = new()
    {
        Name = "circumferential_backlash", Symbol = "j_wt", Title = "Circumferential backlash from coldest to hottest", Unit = Units.Millimetre,
        Formula = "j_wt = j_bn / (cos α_wt · cos β_b)", Symbols = ["j_bn", "α_wt", "β_b"], Source = Iso, Scale = 0.05,
    };

    public static readonly QuantityKind ExpansionOfCentres = new()
    {
        Name = "expansion_of_centres", Symbol = "α_c", Title = "Thermal expansion of the body that holds the centres",
        Unit = Units.PerKelvin, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind ExpansionOfGears = new()
    {
        Name = "expansion_of_gears", Symbol = "α_g", Title = "Thermal expansion of the gears", Unit = Units.PerKelvin,
        Formula = "(α_g1·d_1 ± α_g2·d_2) / (d_1 ± d_2) (external +, internal −)", Symbols = ["α_g1", "α_g2", "d_1", "d_2"],
        Source = "linear thermal expansion",
    };

    public static readonly QuantityKind TemperatureOfCentres = new()
    {
        Name = "temperature_of_centres", Symbol = "T_c", Title = "Temperature of the body that holds the centres", Unit = Units.Celsius,
        Formula = "T_c = T + (T_body − T_oil) as far as the oil has warmed from its coldest to its running temperature",
        Symbols = ["T"], Source = "the spec",
    };

    public static readonly QuantityKind LeastBacklashWanted = new()
    {
        Name = "least_backlash_wanted", Title = "Least normal backlash wanted", Unit = Units.Millimetre, Certainty = Certainty.Declared,
        Scale = 0.05,
    };

    public static readonly QuantityKind GreatestBacklashWanted = new()
    {
        Name = "greatest_backlash_wanted", Title = "Greatest normal backlash wanted", Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind InvoluteSlack = new()
    {
        Name = "involute_slack", Title = "Ring tip outside the base-circle limit of its mate", Unit = Units.Millimetre,
        Formula = "√(r_a2² − r_b2²) − a_w·sin α_wt", Symbols = ["a_w", "α_wt", "d_a2", "d_b2"], Source = Iso, Scale = 1,
    };

    public static readonly QuantityKind TipInterferenceSlack = new()
    {
        Name = "tip_interference_slack", Title = "Slack of the tips as they enter and leave an internal mesh", Unit = Units.Degree,
        Formula = "θ_1·z_1/z_2 + inv α_wt − inv α_a2 − θ_2 (θ from the crossing of the tip circles)",
        Symbols = ["z_1", "z_2", "d_a1", "d_b1", "d_a2", "d_b2", "a_w", "α_wt"],
        Source = "handbook formula, confirmed by rolling simulation", Scale = 0.01,
        Note = "a full turn where the tip circles do not cross",
    };

    public static readonly QuantityKind TrimmingSlack = new()
    {
        Name = "trimming_slack", Title = "Slack of the tips as a pinion enters a ring radially", Unit = Units.Degree,
        Formula = "θ_1 + inv α_a1 − inv α_wt − (z_2/z_1)·(θ_2 + inv α_a2 − inv α_wt)",
        Symbols = ["z_1", "z_2", "d_a1", "d_b1", "d_a2", "d_b2", "a_w", "α_wt"],
        Source = "handbook formula, confirmed by insertion simulation", Scale = 0.01,
        Note = "a full turn where the tip circles do not cross",
    };

    public static readonly QuantityKind Insertion = new()
    {
        Name = "insertion", Title = "How the planet enters the ring", ValueKind = ValueKind.Text, Certainty = Certainty.Declared,
    };

    public static readonly ImmutableArray<QuantityKind> All =
    [
        Kind, SameRack, HandsFit, Module, ReferenceCentreDistance, CentreDistance, ShiftCentreDistance, CentreDistanceDifference,
        WorkingPressureAngle, CommonFaceWidth, TransverseContactRatio, OverlapRatio, TotalContactRatio, LossFactor, Friction, Efficiency,
        RollingPower, MeshFrequency, PitchLineSpeed, TangentialForce, CommonFactor, AssemblyBacklash, ExpansionOfCentres, ExpansionOfGears,
        TemperatureOfCentres, OperatingBacklash, CircumferentialBacklash, LeastBacklashWanted, GreatestBacklashWanted, InvoluteSlack, TipInterferenceSlack, TrimmingSlack, Insertion,
    ];
}

/// <summary>What is known of a gear in one of its meshes.</summary>
public static class MeshGearQuantities
{
    private const string Iso = "ISO 21771";

    public static readonly QuantityKind WorkingPitchDiameter = new()
    {
        Name = "working_pitch_diameter", Symbol = "d_w", Title = "Working pitch diameter", Unit = Units.Millimetre,
        Formula = "d_w = d_b / cos α_wt", Symbols = ["d_b", "α_wt"], Source = Iso,
    };

    public static readonly QuantityKind TipClearance = new()
    {
        Name = "tip_clearance", Symbol = "c", Title = "Tip clearance against the mate's root", Unit = Units.Millimetre,
        Formula = "c = a_w − d_a1/2 − d_f2/2 (signed; internal pair: r_f2 − a_w − r_a1)", Symbols = ["a_w", "d_a1", "d_f2"], Source = Iso,
        Scale = 0.1,
    };

    public static readonly QuantityKind TipClearanceFactor = new()
    {
        Name = "tip_clearance_factor", Symbol = "c/m_n", Title = "Tip clearance per module",
        Formula = "c / m_n", Symbols = ["c", "m_n"], Source = Iso, Scale = 0.1,
    };

    public static readonly QuantityKind CurvatureAtStart = new()
    {
        Name = "curvature_at_start", Symbol = "ρ_A", Title = "Radius of curvature where the mate's tip asks for contact", Unit = Units.Millimetre,
        Formula = "ρ_A = a_w·sin α_wt − ½√(d_Na2² − d_b2²)", Symbols = ["a_w", "α_wt", "d_Na2", "d_b2"], Source = Iso,
        Note = "external pairs; zero lies on the base circle, where the involute ends",
    };

    public static readonly QuantityKind StartOfActiveProfile = new()
    {
        Name = "start_of_active_profile", Symbol = "d_Nf", Title = "Start of active profile", Unit = Units.Millimetre,
        Formula = "d_Nf = √(4·(a_w·sin α_wt − ½√(d_Na2² − d_b2²))² + d_b1²)",
        Symbols = ["d_b1", "a_w", "α_wt", "d_Na2", "d_b2"], Source = Iso,
    };

    public static readonly QuantityKind FormMargin = new()
    {
        Name = "form_margin", Symbol = "d_Nf − d_Ff", Title = "Start of active profile above the root form circle", Unit = Units.Millimetre,
        Formula = "d_Nf − d_Ff (internal: d_Ff − d_Nf)", Symbols = ["d_Nf", "d_Ff"], Source = Iso, Scale = 0.1,
    };

    public static readonly QuantityKind SpecificSliding = new()
    {
        Name = "specific_sliding", Symbol = "ζ", Title = "Greatest specific sliding", Unit = Units.One,
        Formula = "ζ_1 = 1 − (ρ_2/ρ_1)·(z_1/z_2) at the start of active profile, magnitude",
        Symbols = ["z_1", "z_2", "a_w", "α_wt", "d_Na2", "d_b2"], Source = Iso,
    };

    public static readonly QuantityKind FaceWidthRatio = new()
    {
        Name = "face_width_ratio", Symbol = "b/d", Title = "Face width per reference diameter",
        Formula = "b / d", Symbols = ["b", "d"], Source = "closed form",
    };

    public static readonly ImmutableArray<QuantityKind> All =
    [
        WorkingPitchDiameter, TipClearance, TipClearanceFactor, CurvatureAtStart, StartOfActiveProfile, FormMargin, SpecificSliding, FaceWidthRatio,
    ];
}
