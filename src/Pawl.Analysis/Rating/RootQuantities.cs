using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Rating;

/// <summary>Breakage at the root of a gear in one of its meshes, after ISO 6336-3.</summary>
public static class RootQuantities
{
    private const string Bending = "ISO 6336-3";

    public static readonly QuantityKind FaceWidth = new()
    {
        Name = "root_face_width", Symbol = "b_F", Title = "Face width that the root counts", Unit = Units.Millimetre,
        Formula = "b_F = own face width, at most the one in common and a module at each end", Symbols = ["b_own", "b", "m_n"], Source = Bending,
    };

    public static readonly QuantityKind RootChord = new()
    {
        Name = "root_chord", Symbol = "s_Fn", Title = "Tooth thickness at the critical section", Unit = Units.Millimetre,
        Formula = "chord between the 30° tangents of the fillets (internal: 60°)", Source = Bending,
    };

    public static readonly QuantityKind BendingArm = new()
    {
        Name = "bending_arm", Symbol = "h_Fe", Title = "Bending arm of load at the outer point of single contact", Unit = Units.Millimetre,
        Formula = "from the critical section to the load line on the middle of the tooth", Source = Bending,
    };

    public static readonly QuantityKind RootRadius = new()
    {
        Name = "root_radius", Symbol = "ρ_F", Title = "Radius of the fillet at the critical section", Unit = Units.Millimetre,
        Formula = "curvature of the fillet at its 30° tangent (internal: 60°)", Source = Bending,
    };

    public static readonly QuantityKind LoadAngle = new()
    {
        Name = "load_angle", Symbol = "α_Fen", Title = "Angle of the load at the outer point of single contact", Unit = Units.Degree,
        Formula = "α_Fen = α_en − γ_e (internal: + γ_e)", Source = Bending,
    };

    public static readonly QuantityKind FormFactor = new()
    {
        Name = "form_factor", Symbol = "Y_F", Title = "Form factor",
        Formula = "Y_F = 6·(h_Fe/m_n)·cos α_Fen/((s_Fn/m_n)²·cos α_n)·f_ε", Symbols = ["h_Fe", "m_n", "α_Fen", "s_Fn", "α_n", "ε_α", "ε_β", "β_b"],
        Source = "ISO 6336-3:2019, method B", Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind NotchParameter = new()
    {
        Name = "notch_parameter", Symbol = "q_s", Title = "Notch parameter", Formula = "q_s = s_Fn/(2·ρ_F)", Symbols = ["s_Fn", "ρ_F"], Source = Bending,
    };

    public static readonly QuantityKind StressCorrection = new()
    {
        Name = "stress_correction", Symbol = "Y_S", Title = "Stress correction factor",
        Formula = "Y_S = (1.2 + 0.13·L)·q_s^(1/(1.21 + 2.3/L)), L = s_Fn/h_Fe, 1 ≤ q_s < 8", Symbols = ["s_Fn", "h_Fe", "ρ_F"], Source = "UR M56.3.4, after ISO 6336-3", Certainty = Certainty.Published,
        Note = "without grinding notches",
    };

    public static readonly QuantityKind HelixFactor = new()
    {
        Name = "root_helix_factor", Symbol = "Y_β", Title = "Helix angle factor of the root",
        Formula = "Y_β = (1 − ε_β·β/120°)/cos³ β, ε_β at most 1, β at most 30°", Symbols = ["ε_β", "β"], Source = "ISO 6336-3:2019", Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind RimFactor = new()
    {
        Name = "rim_factor", Symbol = "Y_B", Title = "Rim thickness factor",
        Formula = "external: 1 from s_R/h = 1.2, 1.6·ln(2.242·h/s_R) down to 0.5; internal: 1 from s_R/m_n = 3.5, 1.15·ln(8.324·m_n/s_R) down to 1.75",
        Symbols = ["s_R", "h or m_n"], Source = "UR M56.3.6, after ISO 6336-3", Certainty = Certainty.Published,
    };

    public static readonly QuantityKind FaceLoadFactor = new()
    {
        Name = "face_load_factor_bending", Symbol = "K_Fβ", Title = "Face load factor of the root",
        Formula = "K_Fβ = K_Hβ^(r²/(1 + r + r²)), r the smaller b/h of the pair, at least 3", Symbols = ["K_Hβ", "b", "h_1", "h_2"], Source = "UR M56.1.6.4, after ISO 6336-1", Certainty = Certainty.Published,
    };

    public static readonly QuantityKind NominalRootStress = new()
    {
        Name = "nominal_root_stress", Symbol = "σ_F0", Title = "Nominal root stress", Unit = Units.Megapascal,
        Formula = "σ_F0 = F_t/(b_F·m_n)·Y_F·Y_S·Y_β·Y_B", Symbols = ["F_t", "b_F", "m_n", "Y_F", "Y_S", "Y_β", "Y_B"], Source = Bending,
        Note = "Y_DT = 1, on the safe side above ε_αn = 2.05",
    };

    public static readonly QuantityKind RootStress = new()
    {
        Name = "root_stress", Symbol = "σ_F", Title = "Root stress at the rated torque", Unit = Units.Megapascal,
        Formula = "σ_F = σ_F0·K_A·K_γ·K_v·K_Fβ·K_Fα", Symbols = ["σ_F0", "K_A", "K_γ", "K_v", "K_Fβ", "K_Fα"], Source = Bending,
    };

    public static readonly QuantityKind LoadedFlanks = new()
    {
        Name = "loaded_flanks", Title = "Flanks of a tooth that carry load", ValueKind = ValueKind.Text,
        Formula = "both where R < 0, else one", Symbols = ["R"], Source = "statics of the train",
    };

    public static readonly QuantityKind LoadReversal = new()
    {
        Name = "load_reversal", Symbol = "R", Title = "Stress ratio of the root", Scale = 1,
        Formula = "R = 0 for load on one flank; −1.2 · lesser/greater load of the two flanks", Symbols = ["T_in", "T_rev"], Source = Bending,
        Certainty = Certainty.Memory, Note = "planets and idlers are loaded on both flanks, and so is every gear of a drive that turns both ways",
    };

    public static readonly QuantityKind MeanStressFactor = new()
    {
        Name = "mean_stress_factor", Symbol = "Y_M", Title = "Mean stress factor of reversed bending",
        Formula = "Y_M = 1/(1 − R·(1 − M)/(1 + M)), M by class", Symbols = ["R", "Y_S"], Source = "ISO 6336-3, annex B", Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind NotchSensitivity = new()
    {
        Name = "notch_sensitivity_factor", Symbol = "Y_δrelT", Title = "Relative notch sensitivity factor",
        Formula = "Y_δrelT = (1 + √(ρ′·χ))/(1 + √(1.2·ρ′)), χ = 0.2·(1 + 2·q_s), ρ′ by class and yield strength; yield unknown: 1, below q_s = 1.5: 0.95",
        Source = "UR M56.3.11, after ISO 6336-3", Certainty = Certainty.Published, Note = "ρ′ of normalised steels and the values for unknown yield from memory",
    };

    public static readonly QuantityKind SurfaceFactor = new()
    {
        Name = "root_surface_factor", Symbol = "Y_RrelT", Title = "Relative surface factor of the root",
        Formula = "by class from Rz of the root", Symbols = ["Rz"], Source = "UR M56.3.12, after ISO 6336-3", Certainty = Certainty.Published,
    };

    public static readonly QuantityKind SizeFactor = new()
    {
        Name = "root_size_factor", Symbol = "Y_X", Title = "Size factor of the root", Formula = "Y_X = 1 up to m_n = 5 mm, then by class", Symbols = ["m_n"],
        Source = "UR M56.3.13, after ISO 6336-3", Certainty = Certainty.Published,
    };

    public static readonly QuantityKind LifeFactor = new()
    {
        Name = "root_life_factor", Symbol = "Y_NT", Title = "Life factor of the root",
        Formula = "lines between the points of the class in lg N, lg Y; the static point times Y_δrelT,static·Y_M,static over Y_δrelT·Y_RrelT·Y_X·Y_M", Symbols = ["N_L", "Y_δrelT", "Y_RrelT", "Y_X", "Y_M", "Y_S", "R"], Source = Bending, Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind BendingStrength = new()
    {
        Name = "bending_strength", Symbol = "σ_FG", Title = "Bending strength at the reference life", Unit = Units.Megapascal,
        Formula = "σ_Flim·Y_ST·Y_δrelT·Y_RrelT·Y_X·Y_M, Y_ST = 2", Symbols = ["σ_Flim", "Y_δrelT", "Y_RrelT", "Y_X", "Y_M"], Source = Bending,
    };

    public static readonly QuantityKind BendingSafety = new()
    {
        Name = "bending_safety", Symbol = "S_F", Title = "Safety against breakage at the root",
        Formula = "S_F = σ_FG·Y_NT/σ_F; under a load spectrum the factor on all stresses at which the damage sum is 1",
        Source = "ISO 6336-3, ISO 6336-6", Note = "1 % probability of damage; load factors of the shares of a spectrum with the geometry at nominal",
    };

    public static readonly QuantityKind BendingDamage = new()
    {
        Name = "bending_damage", Symbol = "D_F", Title = "Damage sum of the root with the safety required",
        Formula = "D_F = Σ n_i/N_i, N_i the life at S_Fmin·σ_Fi", Source = "ISO 6336-6, linear damage",
        Note = "load factors of each share from the same formulas at its load and speed, with the geometry at nominal",
    };

    public static readonly QuantityKind BendingLife = new()
    {
        Name = "bending_life", Symbol = "L_F", Title = "Life of the root with the safety required", Unit = Units.Hour,
        Formula = "L_F = L_h/D_F, D_F = Σ n_i/N_i at S_Fmin·σ_Fi", Source = "ISO 6336-6, linear damage", Note = "counted up to 10⁶ h; load factors of the shares with the geometry at nominal",
    };

    public static readonly QuantityKind PeakBendingSafety = new()
    {
        Name = "peak_bending_safety", Symbol = "S_F,peak", Title = "Safety of the root at the peak torque",
        Formula = "S_F,peak = σ_Flim·Y_ST·Y_NT,static·Y_δrelT,static·Y_M/(σ_F·r_peak), Y_M with the static M of the class; yield strength unknown: Y_δrelT,static = Y_S/2, at most 1, on the safe side",
        Symbols = ["σ_Flim", "Y_S", "R", "σ_F", "r_peak"], Source = Bending, Certainty = Certainty.Memory,
    };

    public static readonly ImmutableArray<QuantityKind> All =
    [
        FaceWidth, RootChord, BendingArm, RootRadius, LoadAngle, FormFactor, NotchParameter, StressCorrection, HelixFactor, RimFactor, FaceLoadFactor,
        NominalRootStress, RootStress, LoadReversal, LoadedFlanks, MeanStressFactor, NotchSensitivity, SurfaceFactor, SizeFactor, LifeFactor, BendingStrength,
        BendingSafety, BendingDamage, BendingLife, PeakBendingSafety,
    ];
}
