using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Rating;

/// <summary>Pitting of a gear in one of its meshes, after ISO 6336-2.</summary>
public static class FlankQuantities
{
    private const string Contact = "ISO 6336-2";

    public static readonly QuantityKind LoadCycles = new()
    {
        Name = "load_cycles", Symbol = "N_L", Title = "Load cycles of a flank in the service life",
        Formula = "N_L = contacts a turn · |n − n_carrier| · L_h", Symbols = ["n_in", "L_h"], Source = "closed form",
        Note = "turns relative to the carrier; a drive that turns both ways counts the whole life on each flank",
    };

    public static readonly QuantityKind SingleContactFactor = new()
    {
        Name = "single_contact_factor", Symbol = "Z_B,D", Title = "Single pair contact factor",
        Formula = "pinion Z_B = M_1, wheel Z_D = M_2, each at least 1; internal ring and ε_β ≥ 1: 1; between, linear in ε_β",
        Symbols = ["z", "z_mate", "d_Na", "d_b", "d_Na,mate", "d_b,mate", "α_wt", "ε_α", "ε_β"], Source = Contact,
        Note = "with f_ZCa = 1 of the 2019 edition: the flanks of a helical pair are modified",
    };

    public static readonly QuantityKind ContactStress = new()
    {
        Name = "contact_stress", Symbol = "σ_H", Title = "Contact stress at the rated torque", Unit = Units.Megapascal,
        Formula = "σ_H = Z_B,D·σ_H0·√(K_A·K_γ·K_v·K_Hβ·K_Hα)", Symbols = ["Z_B,D", "σ_H0", "K_A", "K_γ", "K_v", "K_Hβ", "K_Hα"], Source = Contact,
    };

    public static readonly QuantityKind WorkHardeningFactor = new()
    {
        Name = "work_hardening_factor", Symbol = "Z_W", Title = "Work hardening factor",
        Formula = "through-hardened gear, surface-hardened mate: Z_W = (1.2 − (HB − 130)/1700)·(3/R_zH)^0.15, HB within 130 to 470, R_zH = Rz_mate·(10/ρ_red)^0.33·(Rz_mate/Rz)^0.66/(v·ν_40/1500)^0.33; else 1",
        Source = "UR M56.2.11, after ISO 6336-2", Symbols = ["H", "Rz_mate", "Rz", "ρ_red", "v", "ν_40"], Certainty = Certainty.Published, Note = "Vickers taken as Brinell",
    };

    public static readonly QuantityKind SizeFactor = new()
    {
        Name = "contact_size_factor", Symbol = "Z_X", Title = "Size factor of the contact", Formula = "Z_X = 1 up to m_n = 10 mm", Symbols = ["m_n"],
        Source = Contact, Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind LifeFactor = new()
    {
        Name = "contact_life_factor", Symbol = "Z_NT", Title = "Life factor of the contact",
        Formula = "lines between the points of the class in lg N, lg Z; the static point over Z_L·Z_v·Z_R, which do not act on it", Symbols = ["N_L", "Z_L", "Z_v", "Z_R"], Source = Contact, Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind ContactStrength = new()
    {
        Name = "contact_strength", Symbol = "σ_HG", Title = "Contact strength at the reference life", Unit = Units.Megapascal,
        Formula = "σ_Hlim·Z_L·Z_v·Z_R·Z_W·Z_X", Symbols = ["σ_Hlim", "Z_L", "Z_v", "Z_R", "Z_W", "Z_X"], Source = Contact,
    };

    public static readonly QuantityKind ContactSafety = new()
    {
        Name = "contact_safety", Symbol = "S_H", Title = "Safety against pitting",
        Formula = "S_H = σ_HG·Z_NT/σ_H; under a load spectrum the factor on all stresses at which the damage sum is 1",
        Source = "ISO 6336-2, ISO 6336-6", Note = "1 % probability of damage; on stress, so its square is on load; load factors of the shares of a spectrum with the geometry at nominal",
    };

    public static readonly QuantityKind ContactDamage = new()
    {
        Name = "contact_damage", Symbol = "D_H", Title = "Damage sum of the flank with the safety required",
        Formula = "D_H = Σ n_i/N_i, N_i the life at S_Hmin·σ_Hi", Source = "ISO 6336-6, linear damage",
        Note = "load factors of each share from the same formulas at its load and speed, with the geometry at nominal",
    };

    public static readonly QuantityKind ContactLife = new()
    {
        Name = "contact_life", Symbol = "L_H", Title = "Life of the flank with the safety required", Unit = Units.Hour,
        Formula = "L_H = L_h/D_H, D_H = Σ n_i/N_i at S_Hmin·σ_Hi", Source = "ISO 6336-6, linear damage", Note = "counted up to 10⁶ h; load factors of the shares with the geometry at nominal",
    };

    public static readonly QuantityKind PeakContactSafety = new()
    {
        Name = "peak_contact_safety", Symbol = "S_H,peak", Title = "Safety of the flank at the peak torque",
        Formula = "S_H,peak = σ_Hlim·Z_NT,static·Z_W/(σ_H·√r_peak)", Symbols = ["σ_Hlim", "Z_W", "σ_H", "r_peak"], Source = Contact,
    };

    public static readonly ImmutableArray<QuantityKind> All =
    [
        LoadCycles, SingleContactFactor, ContactStress, WorkHardeningFactor, SizeFactor, LifeFactor, ContactStrength, ContactSafety, ContactDamage,
        ContactLife, PeakContactSafety,
    ];
}
