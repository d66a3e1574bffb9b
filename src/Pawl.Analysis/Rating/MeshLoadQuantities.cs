using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Rating;

/// <summary>Forces and load factors of a mesh after ISO 6336-1, and what both flanks share of the contact.</summary>
public static class MeshLoadQuantities
{
    private const string Loads = "ISO 6336-1";
    private const string Contact = "ISO 6336-2";
    private const string Film = "UR M56.2.10, after ISO 6336-2";

    public static readonly QuantityKind RatedFaceWidth = new()
    {
        Name = "rated_face_width", Symbol = "b", Title = "Face width that carries", Unit = Units.Millimetre,
        Formula = "b = face width in common", Symbols = ["b"], Source = Contact,
    };

    public static readonly QuantityKind DrivingGear = new()
    {
        Name = "driving_gear", Title = "Gear that drives the mesh, seen from the carrier", ValueKind = ValueKind.Text,
        Formula = "the gear that gives power to the mesh in the carrier's frame",
        Source = "power balance in the carrier frame",
    };

    public static readonly QuantityKind LoadSharing = new()
    {
        Name = "load_sharing", Symbol = "K_γ", Title = "Mesh load factor: load of the heaviest planet over the mean",
        Formula = "by the number of planets and whether a central gear floats", Symbols = ["N"],
        Source = "IEC 61400-4, mesh load factors", Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind LoadSharingProven = new()
    {
        Name = "load_sharing_proven", Title = "The mesh load factor comes from a named test or analysis", ValueKind = ValueKind.Truth,
        Certainty = Certainty.Declared, Formula = "load_sharing_proof is stated", Source = "the spec",
    };

    public static readonly QuantityKind PlanetCount = new()
    {
        Name = "planet_count", Symbol = "N", Title = "Planets that share the load", Certainty = Certainty.Declared,
        Formula = "count of the planet set; 1 between central gears", Source = "the spec",
    };

    public static readonly QuantityKind TangentialForceHeaviest = new()
    {
        Name = "tangential_force_heaviest", Symbol = "F_t·K_γ", Title = "Tangential force at the heaviest planet", Unit = Units.Newton,
        Formula = "F_t·K_γ", Symbols = ["F_t", "K_γ"], Source = Loads,
    };

    public static readonly QuantityKind RadialForce = new()
    {
        Name = "radial_force", Symbol = "F_r", Title = "Radial force at the heaviest planet", Unit = Units.Newton,
        Formula = "F_r = F_t·K_γ·sin α_wt/cos α_t", Symbols = ["F_t·K_γ", "α_t", "α_wt"], Source = "statics",
    };

    public static readonly QuantityKind AxialForce = new()
    {
        Name = "axial_force", Symbol = "F_a", Title = "Axial force at the heaviest planet", Unit = Units.Newton, Scale = 1000,
        Formula = "F_a = F_t·K_γ·tan β", Symbols = ["F_t·K_γ", "β"], Source = "statics",
    };

    public static readonly QuantityKind LineLoad = new()
    {
        Name = "line_load", Symbol = "w_t", Title = "Line load with application and sharing", Unit = Units.NewtonPerMillimetre,
        Formula = "w_t = F_t·K_γ·K_A/b", Symbols = ["F_t·K_γ", "K_A", "b"], Source = Loads,
    };

    public static readonly QuantityKind DynamicParameter = new()
    {
        Name = "dynamic_parameter", Symbol = "s", Title = "Speed parameter of the dynamic factor", Unit = Units.MetrePerSecond,
        Formula = "s = (v·z_1/100)·√(u²/(1 + u²))", Symbols = ["v", "z_1", "z_2"], Source = Loads,
        Note = "method C holds up to 3 m/s, below resonance",
    };

    public static readonly QuantityKind AccuracyGrade = new()
    {
        Name = "accuracy_grade", Symbol = "A", Title = "Accuracy grade of the coarser gear",
        Formula = "the greater of A_1 and A_2", Symbols = ["A_1", "A_2"], Source = "ISO 1328-1",
    };

    public static readonly QuantityKind DynamicFactor = new()
    {
        Name = "dynamic_factor", Symbol = "K_v", Title = "Dynamic factor",
        Formula = "K_v = 1 + (K_1/max(w_t, 100 N/mm) + K_2)·s·K_3, or as declared", Symbols = ["s", "w_t", "A", "ε_β"],
        Source = "UR M56.1.6.3, after ISO 6336-1, method C", Certainty = Certainty.Published, Note = "K_1 of grades 9 and 10 from memory",
    };

    public static readonly QuantityKind MeshStiffness = new()
    {
        Name = "mesh_stiffness", Symbol = "c_γα", Title = "Mesh stiffness per unit of face width", Unit = Units.Megapascal,
        Formula = "c_γα = c′·(0.75·ε_α + 0.25), c′ = 14 N/(mm·µm)·(w_t/100)^0.25 below 100 N/mm", Symbols = ["ε_α", "w_t"],
        Source = "ISO 6336-1, method C", Certainty = Certainty.Memory, Note = "solid steel gears; 1000 MPa are 1 N/(mm·µm)",
    };

    public static readonly QuantityKind Misalignment = new()
    {
        Name = "misalignment", Symbol = "F_βx", Title = "Misalignment of the flanks before running-in", Unit = Units.Micrometre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind RunInMisalignment = new()
    {
        Name = "run_in_misalignment", Symbol = "F_βy", Title = "Misalignment after running-in", Unit = Units.Micrometre,
        Formula = "F_βy = F_βx − y_β, y_β by material", Symbols = ["F_βx", "σ_Hlim,1", "σ_Hlim,2", "v"], Source = Loads, Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind FaceLoadFactor = new()
    {
        Name = "face_load_factor", Symbol = "K_Hβ", Title = "Face load factor of the contact",
        Formula = "q = F_βy·0.85·c_γα/(2·w_t·K_v): K_Hβ = 1 + q up to q = 1, else 2·√q; or as declared", Symbols = ["F_βy", "c_γα", "w_t", "K_v"],
        Source = "ISO 6336-1, method C",
    };

    public static readonly QuantityKind BasePitchDeviation = new()
    {
        Name = "base_pitch_deviation", Symbol = "f_pb", Title = "Base pitch deviation, the greater of the two", Unit = Units.Micrometre,
        Formula = "f_pb = f_pt·cos α_t", Symbols = ["f_pt1", "f_pt2", "α_t"], Source = "ISO 1328-1",
    };

    public static readonly QuantityKind TransverseLoadFactor = new()
    {
        Name = "transverse_load_factor", Symbol = "K_Hα", Title = "Transverse load factor of the contact",
        Formula = "K_Hα = ε_γ/2·(0.9 + 0.4·q) up to ε_γ = 2, else 0.9 + 0.4·q·√(2·(ε_γ − 1)/ε_γ), q = c_γα·(f_pb − y_α)/(w_t·K_v·K_Hβ); from 1 to ε_γ/(ε_α·Z_ε²)",
        Symbols = ["ε_γ", "ε_α", "Z_ε", "c_γα", "f_pb", "w_t", "K_v", "K_Hβ", "σ_Hlim,1", "σ_Hlim,2", "v"], Source = "ISO 6336-1, method B", Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind TransverseLoadFactorBending = new()
    {
        Name = "transverse_load_factor_bending", Symbol = "K_Fα", Title = "Transverse load factor of the root",
        Formula = "as K_Hα, from 1 to ε_γ/(0.25·ε_α + 0.75)",
        Symbols = ["ε_γ", "ε_α", "c_γα", "f_pb", "w_t", "K_v", "K_Hβ", "σ_Hlim,1", "σ_Hlim,2", "v"], Source = "ISO 6336-1, method B", Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind PeakLoadRatio = new()
    {
        Name = "peak_load_ratio", Symbol = "r_peak", Title = "Load at the peak torque over the rated load, factors included",
        Formula = "r = (T_peak·K_v·K_Hβ·K_Hα at the peak)/(T_in·K_A·K_v·K_Hβ·K_Hα)", Symbols = ["T_peak", "T_in", "K_A", "K_v", "K_Hβ", "K_Hα", "w_t", "v"],
        Source = Loads, Note = "the load factors at the peak follow from the same formulas at its load, at the rated speed, with the geometry at nominal",
    };

    public static readonly QuantityKind PeakLoadRatioBending = new()
    {
        Name = "peak_load_ratio_bending", Symbol = "r_peak", Title = "Load at the peak torque over the rated load, factors of the root included",
        Formula = "r = (T_peak·K_v·K_Fβ·K_Fα at the peak)/(T_in·K_A·K_v·K_Fβ·K_Fα)", Symbols = ["T_peak", "T_in", "K_A", "K_v", "K_Hβ", "K_Fα", "w_t", "v"],
        Source = Loads, Note = "the load factors at the peak follow from the same formulas at its load, at the rated speed, with the geometry at nominal",
    };

    public static readonly QuantityKind ZoneFactor = new()
    {
        Name = "zone_factor", Symbol = "Z_H", Title = "Zone factor",
        Formula = "Z_H = √(2·cos β_b·cos α_wt/(cos² α_t·sin α_wt))", Symbols = ["α_t", "α_wt", "β_b"], Source = Contact,
    };

    public static readonly QuantityKind ElasticityFactor = new()
    {
        Name = "elasticity_factor", Symbol = "Z_E", Title = "Elasticity factor", Unit = RootMegapascal,
        Formula = "Z_E = √(1/(π·((1 − ν_1²)/E_1 + (1 − ν_2²)/E_2)))", Symbols = ["E_1", "ν_1", "E_2", "ν_2"], Source = Contact,
        Note = "in √MPa",
    };

    public static readonly QuantityKind ContactRatioFactor = new()
    {
        Name = "contact_ratio_factor", Symbol = "Z_ε", Title = "Contact ratio factor of the contact",
        Formula = "Z_ε = √((4 − ε_α)/3·(1 − ε_β) + ε_β/ε_α), ε_β at most 1", Symbols = ["ε_α", "ε_β"], Source = Contact,
    };

    public static readonly QuantityKind HelixFactor = new()
    {
        Name = "helix_factor", Symbol = "Z_β", Title = "Helix angle factor of the contact", Formula = "Z_β = 1/√cos β", Symbols = ["β"],
        Source = "UR M56.2.7, after ISO 6336-2:2019", Certainty = Certainty.Published,
    };

    public static readonly QuantityKind NominalContactStress = new()
    {
        Name = "nominal_contact_stress", Symbol = "σ_H0", Title = "Nominal contact stress at the pitch point", Unit = Units.Megapascal,
        Formula = "σ_H0 = Z_H·Z_E·Z_ε·Z_β·√(F_t/(d_1·b)·(u + 1)/u), signed u and d_1 of the pinion",
        Symbols = ["F_t", "d_1", "b", "z_1", "z_2", "Z_H", "Z_E", "Z_ε", "Z_β"], Source = Contact,
    };

    public static readonly QuantityKind ReducedRadius = new()
    {
        Name = "reduced_radius", Symbol = "ρ_red", Title = "Reduced radius of curvature at the pitch point", Unit = Units.Millimetre,
        Formula = "ρ_red = ρ_1·ρ_2/(ρ_1 + ρ_2), ρ = ½·d_b·tan α_wt, signed", Symbols = ["d_b1", "d_b2", "α_wt"], Source = Contact,
    };

    public static readonly QuantityKind LubricantFactor = new()
    {
        Name = "lubricant_factor", Symbol = "Z_L", Title = "Lubricant factor",
        Formula = "Z_L = C + 4·(1 − C)/(1.2 + 134/ν_40)², C by σ_Hlim of the softer", Symbols = ["ν_40", "σ_Hlim,1", "σ_Hlim,2"], Source = Film, Certainty = Certainty.Published,
    };

    public static readonly QuantityKind SpeedFactor = new()
    {
        Name = "speed_factor", Symbol = "Z_v", Title = "Velocity factor",
        Formula = "Z_v = C + 2·(1 − C)/√(0.8 + 32/v), v in m/s", Symbols = ["v", "σ_Hlim,1", "σ_Hlim,2"], Source = Film, Certainty = Certainty.Published,
    };

    public static readonly QuantityKind RoughnessFactor = new()
    {
        Name = "roughness_factor", Symbol = "Z_R", Title = "Roughness factor",
        Formula = "Z_R = (3/Rz10)^C, Rz10 = ½·(Rz_1 + Rz_2)·(10/ρ_red)^(1/3)", Symbols = ["Rz_1", "Rz_2", "ρ_red", "σ_Hlim,1", "σ_Hlim,2"], Source = Film, Certainty = Certainty.Published,
    };

    public static readonly QuantityKind FilmThickness = new()
    {
        Name = "film_thickness", Symbol = "h_min", Title = "Minimum film at the pitch point, oil from coldest to hottest", Unit = Units.Micrometre,
        Formula = "h_min = 2.65·α_p^0.54·(η·u)^0.7·ρ^0.43/(E′^0.03·w^0.13)",
        Symbols = ["α_p", "ν", "ρ_oil", "v", "α_wt", "α_t", "ρ_red", "E_1", "ν_1", "E_2", "ν_2", "w_t", "β_b"], Source = "line contact after Dowson and Higginson",
        Certainty = Certainty.Memory, Note = "flanks at the temperature of the oil; mean load over the face",
    };

    public static readonly QuantityKind FilmRatio = new()
    {
        Name = "film_ratio", Symbol = "λ", Title = "Film thickness over the roughness of both flanks",
        Formula = "λ = h_min/√(Ra_1² + Ra_2²)", Symbols = ["h_min", "Ra_1", "Ra_2"], Source = "common practice, no source",
        Certainty = Certainty.CommonPractice,
    };

    public static readonly QuantityKind FlashTemperature = new()
    {
        Name = "flash_temperature", Symbol = "Δθ", Title = "Maximum rise of the flank temperature along the path of contact", Unit = Units.Kelvin,
        Formula = "Δθ = 1.11·μ_m·w·|√v_1 − √v_2|/(B_M·√(2·b_H)), greatest from A to E, w shared in double contact",
        Symbols = ["μ_m", "w_t", "K_v", "K_Hβ", "K_Hα", "v", "α_wt", "d_Na1", "d_b1", "d_1", "d_Na2", "d_b2", "m_n", "β", "α_t", "β_b", "ε_β", "E_1", "ν_1", "E_2", "ν_2"],
        Source = "Blok 1937", Note = "at nominal dimensions; thermal contact coefficient of steel, 13.5 N/(mm·√s·K), from memory",
    };

    public static readonly QuantityKind ContactTemperature = new()
    {
        Name = "contact_temperature", Symbol = "θ_B", Title = "Contact temperature, from coldest to hottest oil", Unit = Units.Celsius,
        Formula = "θ_B = T + Δθ", Symbols = ["T", "Δθ"], Source = "Blok 1937", Note = "bulk temperature taken as that of the oil",
    };

    public static readonly ImmutableArray<QuantityKind> All =
    [
        RatedFaceWidth, DrivingGear, PlanetCount, LoadSharing, LoadSharingProven, TangentialForceHeaviest, RadialForce, AxialForce, LineLoad, DynamicParameter,
        AccuracyGrade, DynamicFactor, MeshStiffness, Misalignment, RunInMisalignment, FaceLoadFactor, BasePitchDeviation, TransverseLoadFactor,
        TransverseLoadFactorBending, PeakLoadRatio, PeakLoadRatioBending, ZoneFactor, ElasticityFactor, ContactRatioFactor, HelixFactor, NominalContactStress,
        ReducedRadius, LubricantFactor, SpeedFactor, RoughnessFactor, FilmThickness, FilmRatio, FlashTemperature, ContactTemperature,
    ];

    // The square root of a stress has no unit of the trade; the number is in √MPa and the note says so.
    private static Unit RootMegapascal => Units.One;
}
