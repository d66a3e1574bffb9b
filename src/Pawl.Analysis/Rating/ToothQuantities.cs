using Pawl.Analysis.Core;
using Pawl.Mechanics.Rating;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;
using G = Pawl.Analysis.Gears.GearQuantities;

namespace Pawl.Analysis.Rating;

/// <summary>Accuracy of a gear, and the cutter of an internal one; quantities of the gear.</summary>
public sealed class ToothQuantities : Section<GearSpec>
{
    private const string Generation = "ISO 21771, generation by a pinion-type cutter";

    public static readonly NumberDefinition<GearSpec> AccuracyGrade =
        Number("accuracy_grade", "A", "Flank tolerance class").NeverNegative().Noted("ISO 1328-1").Stated(static s => s.AccuracyGrade);

    public static readonly NumberDefinition<GearSpec> PitchDeviation = Number("pitch_deviation", "f_pt", "Single pitch deviation", Units.Micrometre)
        .By("f_pT = (0.001·d + 0.4·m_n + 5)·(√2)^(A − 5) µm, d and m_n in mm, or as declared", "ISO 1328-1:2013", Certainty.Memory)
        .Stated(static s => s.PitchDeviation)
        .From(G.ReferenceDiameter, G.Module, AccuracyGrade, static (d, module, grade) => FlankTolerance.SinglePitch(d, module, (int)grade));

    public static readonly NumberDefinition<GearSpec> HelixDeviation = Number("helix_deviation", "f_Hβ", "Helix slope deviation", Units.Micrometre).NeverNegative()
        .By("f_HβT = (0.05·√d + 0.35·√b + 4)·(√2)^(A − 5) µm, d and b in mm, or as declared", "ISO 1328-1:2013", Certainty.Memory)
        .Stated(static s => s.HelixDeviation)
        .From(G.ReferenceDiameter, G.Module, G.FaceWidth, AccuracyGrade, static (d, module, width, grade) => FlankTolerance.HelixSlope(d, module, width, (int)grade));

    public static readonly NumberDefinition<GearSpec> ProfileDeviation = Number("profile_deviation", "f_fα", "Profile form deviation", Units.Micrometre)
        .By("f_fαT = (0.55·m_n + 5)·(√2)^(A − 5) µm, m_n in mm", "ISO 1328-1:2013", Certainty.Memory)
        .From(G.ReferenceDiameter, G.Module, AccuracyGrade, static (d, module, grade) => FlankTolerance.ProfileForm(d, module, (int)grade));

    public static readonly NumberDefinition<GearSpec> CutterTeeth =
        Number("cutter_teeth", "z_0", "Number of teeth of the cutter").When(IsShaped).Stated(static s => s.Cutter!.Teeth);

    public static readonly NumberDefinition<GearSpec> CutterTipDiameter =
        Number("cutter_tip_diameter", "d_a0", "Tip diameter of the cutter", Units.Millimetre).When(IsShaped).Stated(static s => s.Cutter!.TipDiameter);

    public static readonly NumberDefinition<GearSpec> CutterTipRadius =
        Number("cutter_tip_radius", "ρ_a0", "Tip radius of the cutter", Units.Millimetre).When(IsShaped).Stated(static s => s.Cutter!.TipRadius);

    public static readonly NumberDefinition<GearSpec> CutterProfileShift = Number("cutter_profile_shift", "x_0", "Profile shift coefficient of the cutter")
        .When(IsShaped).Stated(static s => s.Cutter!.ProfileShift).Assumed(0, "0: a cutter without profile shift");

    public static readonly NumberDefinition<GearSpec> CutterRootDiameter =
        Number("cutter_root_diameter", "d_f0", "Root diameter that the cutter makes", Units.Millimetre)
        .By("d_f = 2·a_0 − d_a0, a_0 without backlash, signed", Generation)
        .From(
            G.Teeth, G.Module, G.PressureAngle, G.HelixAngle, G.ProfileShift, CutterTeeth, CutterTipDiameter, CutterTipRadius, CutterProfileShift,
            static (z, m, alpha, beta, x, z0, tip, radius, x0) => -Shaping(z, m, alpha, beta, x, z0, tip, radius, x0).RootDiameter);

    public static readonly NumberDefinition<GearSpec> CutterRootFormDiameter =
        Number("cutter_root_form_diameter", "d_Ff0", "Root form diameter that the cutter makes", Units.Millimetre)
        .By("where the involute of the cutter ends at its tip rounding; helical: at the depth at which that of the virtual spur cutter ends", Generation)
        .From(
            G.Teeth, G.Module, G.PressureAngle, G.HelixAngle, G.ProfileShift, CutterTeeth, CutterTipDiameter, CutterTipRadius, CutterProfileShift,
            static (z, m, alpha, beta, x, z0, tip, radius, x0) => -Shaping(z, m, alpha, beta, x, z0, tip, radius, x0).FormDiameter);

    public static readonly NumberDefinition<GearSpec> CutterRootDifference =
        Number("cutter_root_difference", "Δd_f", "Root diameter of the gear less that of its cutter, magnitude", Units.Millimetre)
        .By("|d_f − d_f0|", "closed form").Scaled(0.1)
        .When(static s => s.RootDiameter is not null)
        .From(Own(static () => G.RootDiameter, "d_f"), CutterRootDiameter, static (stated, made) => Math.Abs(stated - made));

    private static bool IsShaped(GearSpec gear) => G.IsInternal(gear) && gear.Cutter is not null;

    private static RootShaping Shaping(
        double z, double m, double alpha, double beta, double x, double z0, double tip, double radius, double x0) =>
        new(new(-(int)z, m, alpha, beta, x, -z * m), new((int)z0, tip, radius, x0));
}
