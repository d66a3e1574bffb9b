using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Pins;

/// <summary>What is known of the pins of a planet set.</summary>
public static class PlanetPinQuantities
{
    private const string Beam = "beam on two supports, or held at one end";

    public static readonly QuantityKind Planets = Words("planets", "Planets");
    public static readonly QuantityKind Held = Words("held", "Held");
    public static readonly QuantityKind Secured = Words("secured", "Secured by");

    public static readonly QuantityKind Diameter = new()
    {
        Name = "diameter", Symbol = "d", Title = "Diameter of the pin", Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Force = new()
    {
        Name = "planet_force", Symbol = "F", Title = "Force of the most loaded planet at the rated torque", Unit = Units.Newton, Scale = 1,
        Formula = "Σ_planes |Σ F_tooth|·K_γ·K_A + F_c", Source = "statics", Note = "as vectors in one plane of meshes; planes and orbit added in size, which is cautious",
    };

    public static readonly QuantityKind PeakForce = new()
    {
        Name = "peak_force", Symbol = "F_p", Title = "Force of the most loaded planet at the peak torque", Unit = Units.Newton, Scale = 1,
        Formula = "Σ_planes |Σ F_tooth|·K_γ·T_peak/T_in + F_c", Source = "statics",
    };

    public static readonly QuantityKind Bending = new()
    {
        Name = "bending_stress", Symbol = "σ_b", Title = "Bending stress at the rated torque", Unit = Units.Megapascal, Scale = 1,
        Formula = "32·d·M/(π·(d⁴ − d_i⁴)); straddled M = F/2·(L/2 − b/4), overhung M = F·(g + b/2)", Source = Beam, Note = "without notches: an oil hole is one",
    };

    public static readonly QuantityKind Shear = new()
    {
        Name = "shear_stress", Symbol = "τ", Title = "Greatest shear stress at the rated torque", Unit = Units.Megapascal, Scale = 1,
        Formula = "4/3·V/A·(d² + d·d_i + d_i²)/(d² + d_i²)", Source = "shear of a round tube",
    };

    public static readonly QuantityKind Yield = new()
    {
        Name = "yield", Symbol = "R_e", Title = "Yield of the pin", Unit = Units.Megapascal, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind RatedSafety = new()
    {
        Name = "rated_safety", Title = "Yield over the reduced stress at the rated torque", Formula = "R_e/√(σ_b² + 3·τ²)", Source = "von Mises",
        Note = "bending is greatest in the middle, shear at the cheeks: added as if at one place",
    };

    public static readonly QuantityKind PeakSafety = new()
    {
        Name = "peak_safety", Title = "Yield over the reduced stress at the peak torque", Formula = "R_e/√(σ_b² + 3·τ²)·F/F_p", Source = "von Mises",
    };

    public static readonly QuantityKind Slope = new()
    {
        Name = "slope", Symbol = "φ", Title = "Slope of the pin at the edge of its load, rated torque", Unit = Units.Arcminute, Scale = 1e-4,
        Formula = "straddled F·(L²/16 − b²/48 − a²/4)/(E·I), a = (L − b)/2; overhung F·(g²/2 + g·b/2 + b²/6)/(E·I)", Source = Beam,
    };

    public static readonly QuantityKind GreatestSlope = new()
    {
        Name = "greatest_slope", Title = "Slope that the planet bearing bears", Unit = Units.Arcminute, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind CheekPressure = new()
    {
        Name = "cheek_pressure", Symbol = "p", Title = "Mean pressure in a cheek at the peak torque", Unit = Units.Megapascal, Scale = 1,
        Formula = "straddled F_p/(2·d·t), overhung F_p/(d·t)", Source = "closed form",
    };

    public static readonly QuantityKind CheekYield = new()
    {
        Name = "cheek_yield", Title = "Yield of the carrier", Unit = Units.Megapascal, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind CheekHole = new()
    {
        Name = "cheek_hole", Symbol = "D", Title = "Hole of the cheek", Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Overlap = new()
    {
        Name = "press_overlap", Title = "Overlap of pin and hole of the cheek", Unit = Units.Micrometre, Scale = 0.01, Formula = "d − D", Source = "ISO 286-1",
    };

    public static readonly ImmutableArray<QuantityKind> All =
    [
        Planets, Held, Secured, Diameter, Force, PeakForce, Bending, Shear, Yield, RatedSafety, PeakSafety, Slope, GreatestSlope, CheekPressure, CheekYield, CheekHole, Overlap,
    ];

    private static QuantityKind Words(string name, string title) => new()
    {
        Name = name, Title = title, ValueKind = ValueKind.Text, Certainty = Certainty.Declared,
    };
}
