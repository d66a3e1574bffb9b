using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Rating;

/// <summary>Accuracy of a gear, and the cutter of an internal one; quantities of the gear.</summary>
public static class ToothQuantities
{
    public static readonly QuantityKind AccuracyGrade = new()
    {
        Name = "accuracy_grade", Symbol = "A", Title = "Flank tolerance class", Certainty = Certainty.Declared, Note = "ISO 1328-1",
    };

    public static readonly QuantityKind PitchDeviation = new()
    {
        Name = "pitch_deviation", Symbol = "f_pt", Title = "Single pitch deviation", Unit = Units.Micrometre,
        Formula = "f_pT = (0.001·d + 0.4·m_n + 5)·(√2)^(A − 5) µm, d and m_n in mm, or as declared", Symbols = ["d", "m_n", "A"], Source = "ISO 1328-1:2013",
        Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind CutterTeeth = new()
    {
        Name = "cutter_teeth", Symbol = "z_0", Title = "Number of teeth of the cutter", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind CutterTipDiameter = new()
    {
        Name = "cutter_tip_diameter", Symbol = "d_a0", Title = "Tip diameter of the cutter", Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind CutterTipRadius = new()
    {
        Name = "cutter_tip_radius", Symbol = "ρ_a0", Title = "Tip radius of the cutter", Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind CutterProfileShift = new()
    {
        Name = "cutter_profile_shift", Symbol = "x_0", Title = "Profile shift coefficient of the cutter", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind CutterRootDiameter = new()
    {
        Name = "cutter_root_diameter", Symbol = "d_f0", Title = "Root diameter that the cutter makes", Unit = Units.Millimetre,
        Formula = "d_f = 2·a_0 − d_a0, a_0 without backlash, signed", Symbols = ["z", "m_n", "α_n", "x", "z_0", "d_a0", "ρ_a0", "x_0"],
        Source = "ISO 21771, generation by a pinion-type cutter",
    };

    public static readonly QuantityKind CutterRootFormDiameter = new()
    {
        Name = "cutter_root_form_diameter", Symbol = "d_Ff0", Title = "Root form diameter that the cutter makes", Unit = Units.Millimetre,
        Formula = "where the involute of the cutter ends at its tip rounding", Symbols = ["z", "m_n", "α_n", "x", "z_0", "d_a0", "ρ_a0", "x_0"],
        Source = "ISO 21771, generation by a pinion-type cutter",
    };

    public static readonly QuantityKind CutterRootDifference = new()
    {
        Name = "cutter_root_difference", Symbol = "Δd_f", Title = "Root diameter of the gear less that of its cutter, magnitude", Unit = Units.Millimetre,
        Formula = "|d_f − d_f0|", Symbols = ["d_f", "d_f0"], Source = "closed form", Scale = 0.1,
    };

    public static readonly ImmutableArray<QuantityKind> All =
    [
        AccuracyGrade, PitchDeviation, CutterTeeth, CutterTipDiameter, CutterTipRadius, CutterProfileShift, CutterRootDiameter,
        CutterRootFormDiameter, CutterRootDifference,
    ];
}
