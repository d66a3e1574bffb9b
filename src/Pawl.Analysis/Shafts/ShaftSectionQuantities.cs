using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Shafts;

/// <summary>What is known of a section of a shaft.</summary>
public static class ShaftSectionQuantities
{
    private const string Din743 = "DIN 743-1 to -3:2012";

    private const string Start = "every start counts as a swing, endless life; bending turns with the shaft and has no mean";

    public static readonly QuantityKind Outside = Millimetres("outside", "d", "Outside diameter");
    public static readonly QuantityKind Bore = Millimetres("bore", "d_i", "Bore");
    public static readonly QuantityKind Roughness = new()
    {
        Name = "roughness", Symbol = "Rz", Title = "Height of roughness", Unit = Units.Micrometre, Scale = 1e-3, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Wall = new()
    {
        Name = "wall_share", Symbol = "s/d", Title = "Wall of a hollow section by its diameter", Formula = "(d − d_i)/(2·d)", Symbols = ["d", "d_i"], Source = "geometry",
    };

    public static readonly QuantityKind Notch = new()
    {
        Name = "notch", Title = "What weakens it", ValueKind = ValueKind.Text, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Torque = new()
    {
        Name = "torque", Symbol = "T", Title = "Torque through the section at the rated torque", Unit = Units.NewtonMetre, Formula = "|T| of the shaft; 0 where it carries none",
        Symbols = ["T"], Source = "the spec", Scale = 1000,
    };

    public static readonly QuantityKind Moment = new()
    {
        Name = "bending_moment", Symbol = "M", Title = "Bending moment, greatest of all states of the duty", Unit = Units.NewtonMetre,
        Formula = "of teeth, orbit, sharing, machine and weight, with K_A", Source = "statics of a rigid shaft on two bearings; causes added as for the bearings", Scale = 1000,
        Note = "at nominal dimensions",
    };

    public static readonly QuantityKind PeakMoment = new()
    {
        Name = "peak_bending_moment", Symbol = "M_peak", Title = "Bending moment at the peak torque", Unit = Units.NewtonMetre, Formula = "as M, at the peak torque",
        Source = "statics of a rigid shaft on two bearings; causes added as for the bearings", Scale = 1000, Note = "at nominal dimensions",
    };

    public static readonly QuantityKind BendingStress = new()
    {
        Name = "bending_stress", Symbol = "σ_ba", Title = "Nominal bending stress, swing", Unit = Units.Megapascal, Formula = "M/W; W = π·(d⁴ − d_i⁴)/(32·d)",
        Symbols = ["d", "d_i", "M"], Source = "strength of materials",
    };

    public static readonly QuantityKind TorsionStress = new()
    {
        Name = "torsion_stress", Symbol = "τ_ta", Title = "Nominal torsion stress, swing", Unit = Units.Megapascal,
        Formula = "K_A·T·(1 + T_rev/T_in)/2/(2·W): from the torque ahead to that in the other direction, or to none", Symbols = ["d", "d_i", "T", "K_A"],
        Source = "strength of materials", Note = Start,
    };

    public static readonly QuantityKind BendingNotch = new()
    {
        Name = "bending_notch_factor", Symbol = "β_b", Title = "Notch factor of bending", Formula = "by the kind of the notch", Source = Din743, Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind TorsionNotch = new()
    {
        Name = "torsion_notch_factor", Symbol = "β_t", Title = "Notch factor of torsion", Formula = "by the kind of the notch", Source = Din743, Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind StaticSafety = new()
    {
        Name = "static_safety", Symbol = "S_F", Title = "Safety against yield at the peak torque",
        Formula = "1/√((σ_zd/σ_zdFK + σ_b/σ_bFK)² + (τ_t/τ_tFK)²)", Symbols = ["notch", "d", "d_i", "σ_S", "M_peak", "T", "T_peak", "K_1", "σ_B", "T_in"], Source = Din743, Certainty = Certainty.Memory,
        Note = "the least at every corner of the tolerances; the moment at nominal",
    };

    public static readonly QuantityKind FatigueSafety = new()
    {
        Name = "fatigue_safety", Symbol = "S_D", Title = "Safety against fatigue",
        Formula = "1/√((σ_zda/σ_zdADK + σ_ba/σ_bADK)² + (τ_ta/τ_tADK)²), mean and swing growing together",
        Symbols = ["notch", "d", "d_i", "σ_B", "M", "T", "K_A", "Rz", "K_1", "σ_S"], Source = Din743, Certainty = Certainty.Memory, Note = Start,
    };

    public static readonly ImmutableArray<QuantityKind> All =
        [Outside, Bore, Roughness, Wall, Notch, Torque, Moment, PeakMoment, BendingStress, TorsionStress, BendingNotch, TorsionNotch, StaticSafety, FatigueSafety];

    private static QuantityKind Millimetres(string name, string symbol, string title) => new()
    {
        Name = name, Symbol = symbol, Title = title, Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };
}
