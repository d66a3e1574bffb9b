using Pawl.Analysis.Core;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Shafts;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;
using D = Pawl.Analysis.Rating.DutyQuantities;
using S = Pawl.Analysis.Shafts.ShaftQuantities;

namespace Pawl.Analysis.Shafts;

/// <summary>A section of a shaft: stresses, notch, safeties.</summary>
public sealed class ShaftSectionQuantities : Section<ShaftSectionSpec>
{
    private const string Din743 = "DIN 743-1 to -3:2012";
    private const string Start = "every start counts as a swing, endless life; bending turns with the shaft and has no mean";
    private const string Statics = "statics of a rigid shaft on two bearings; causes added as for the bearings";

    private static readonly IInput<ShaftStrength> Strength = Join(
        OfRow("shaft", static () => S.Steel), Of("shaft", static () => S.Tensile), Of("shaft", static () => S.Yield), Of("shaft", static () => S.Technological),
        static (steel, tensile, yield, factor) => new ShaftStrength(tensile * factor, yield * factor, S.SteelOf(steel)));

    private static readonly IInput<double> PeakRatio = Join(
        Of("train", static () => D.PeakTorque), Of("train", static () => TrainQuantities.InputTorque), static (peak, torque) => peak / torque);

    public static readonly NumberDefinition<ShaftSectionSpec> Length =
        Number("length", "l", "Length", Units.Millimetre).Stated(static s => s.Length);

    public static readonly NumberDefinition<ShaftSectionSpec> Outside =
        Number("outside", "d", "Outside diameter", Units.Millimetre).NeverNegative().Stated(static s => s.Outside);

    public static readonly NumberDefinition<ShaftSectionSpec> Bore =
        Number("bore", "d_i", "Bore", Units.Millimetre).NeverNegative().Stated(static s => s.Bore).Assumed(0, "0: a solid section");

    public static readonly NumberDefinition<ShaftSectionSpec> Roughness =
        Number("roughness", "Rz", "Height of roughness", Units.Micrometre).Scaled(1e-3).Stated(static s => s.Roughness);

    public static readonly TruthDefinition<ShaftSectionSpec> Keyed = Truth("keyed", "A parallel key sits in its keyway")
        .By("an entry of parallel_keys carries its body on a shaft of its diameter", "the spec")
        .When(static s => s.Notch?.Kind.Value == "keyway")
        .Solved([Outside], static (s, subject) => ((ShaftSpec)subject.Reach("shaft")!.Model) is var shaft
            && subject.Context.Spec.ParallelKeys.Entries.Any(key => (key.Carries is null || key.Carries.Value == shaft.Body.Value)
                && Math.Abs(key.Diameter.Value.Nominal.Coherent - s.Outside.Value.Nominal.Coherent) < 1e-6));

    public static readonly NumberDefinition<ShaftSectionSpec> Wall = Number("wall_share", "s/d", "Wall of a hollow section by its diameter")
        .By("(d − d_i)/(2·d)", "geometry")
        .When(static s => s.Bore is not null)
        .From(Outside, Bore, static (outside, bore) => (outside - bore) / (2 * outside));

    public static readonly RowDefinition<ShaftSectionSpec, string> Notch = Text("notch", "What weakens it")
        .Stated(static s => s.Notch?.Kind).Assumed("none", "none, for none is stated");

    public static readonly NumberDefinition<ShaftSectionSpec> NotchLarge =
        Number("notch_large", "D", "Diameter beyond the shoulder", Units.Millimetre)
        .When(static s => IsOf(s, "shoulder")).Stated(static s => s.Notch!.Large, "notch.large");

    public static readonly NumberDefinition<ShaftSectionSpec> NotchBottom =
        Number("notch_bottom", "d_b", "Diameter in the bottom of the notch", Units.Millimetre)
        .When(static s => IsOf(s, "round-groove", "square-groove", "spline")).Stated(static s => s.Notch!.Bottom, "notch.bottom");

    public static readonly NumberDefinition<ShaftSectionSpec> NotchRadius =
        Number("notch_radius", "r", "Radius in the notch", Units.Millimetre)
        .When(static s => IsOf(s, "shoulder", "round-groove", "square-groove")).Stated(static s => s.Notch!.Radius, "notch.radius");

    public static readonly NumberDefinition<ShaftSectionSpec> NotchWidth =
        Number("notch_width", "m", "Width of the groove", Units.Millimetre)
        .When(static s => IsOf(s, "square-groove")).Stated(static s => s.Notch!.Width, "notch.width");

    public static readonly NumberDefinition<ShaftSectionSpec> Keys = Number("keys", "i", "Keys about the shaft")
        .When(static s => IsOf(s, "keyway")).Stated(static s => s.Notch!.Keys).Assumed(1, "1 key, for no number is stated");

    private static readonly IInput<ShaftNotch> Weakened = Join(
        Notch, Join(Outside, NotchBottom.Or(double.NaN), static (outside, bottom) => (outside, bottom)),
        Join(NotchLarge.Or(double.NaN), NotchRadius.Or(double.NaN), NotchWidth.Or(double.NaN), Keys.Or(1),
            static (large, radius, width, keys) => (large, radius, width, keys)),
        Strength, static (kind, size, notch, strength) => kind switch
        {
            "none" => ShaftNotch.None,
            "shoulder" => ShaftNotch.Shoulder(notch.large, size.outside, notch.radius, strength),
            "round-groove" => ShaftNotch.RoundGroove(size.outside, size.bottom, notch.radius, strength),
            "square-groove" => ShaftNotch.SquareGroove(size.outside, size.bottom, notch.width, notch.radius, strength),
            "keyway" => ShaftNotch.Keyway(size.outside, strength, (int)notch.keys),
            "pressed-hub" => ShaftNotch.PressedHub(size.outside, strength),
            _ => ShaftNotch.InvoluteSpline(size.bottom, strength),
        });

    /// <summary>That of the nominal stress: the bottom of a groove or spline, else the outside.</summary>
    private static readonly IInput<ShaftSection> Stressed = Join(
        Outside, NotchBottom.Or(double.NaN), Bore, static (outside, bottom, bore) => new ShaftSection(double.IsNaN(bottom) ? outside : bottom, bore));

    public static readonly TruthDefinition<ShaftSectionSpec> CarriesTorque = Truth("carries_torque", "Carries the torque of the shaft")
        .By("unless the spec says that it does not", "the spec", Certainty.Declared)
        .Stated(static s => s.CarriesTorque).Named(static _ => true);

    public static readonly NumberDefinition<ShaftSectionSpec> Torque =
        Number("torque", "T", "Torque through the section at the rated torque", Units.NewtonMetre)
        .By("|T| of the shaft; 0 where it carries none", "the spec").Scaled(1000)
        .From(Of("shaft", static () => S.Torque), CarriesTorque, static (torque, carries) => carries ? torque : 0);

    public static readonly NumberDefinition<ShaftSectionSpec> Moment =
        Number("bending_moment", "M", "Bending moment, greatest of all states of the duty", Units.NewtonMetre)
        .By("of teeth, orbit, sharing, machine and weight, with K_A", Statics).Scaled(1000).Noted("at nominal dimensions")
        .Solved(
            [OfRow("shaft", static () => S.Body), Of("train", static () => TrainQuantities.InputTorque), Of("train", static () => D.ApplicationFactor)],
            Reasons, static (_, subject) => Bent(subject).Moment(subject));

    public static readonly NumberDefinition<ShaftSectionSpec> PeakMoment =
        Number("peak_bending_moment", "M_peak", "Bending moment at the peak torque", Units.NewtonMetre)
        .By("as M, at the peak torque", Statics).Scaled(1000).Noted("at nominal dimensions; machine and weight grow with the torque to the peak, common practice")
        .Solved([Of("train", static () => D.PeakTorque)], Reasons, static (_, subject) => Bent(subject).PeakMoment(subject));

    public static readonly NumberDefinition<ShaftSectionSpec> BendingStress =
        Number("bending_stress", "σ_ba", "Nominal bending stress, swing", Units.Megapascal)
        .By("M/W; W = π·(d⁴ − d_i⁴)/(32·d), d_b for d in a groove or spline", "strength of materials")
        .From(Stressed, Moment, static (section, moment) => section.Stresses(0, moment, 0).Bending);

    public static readonly NumberDefinition<ShaftSectionSpec> TorsionStress =
        Number("torsion_stress", "τ_ta", "Nominal torsion stress, swing", Units.Megapascal)
        .By("T·r_a/(2·W): from the torque ahead to that in the other direction, or to none", "strength of materials").Noted(Start)
        .From(Stressed, Torque, Of("shaft", static () => S.TorqueSwing), static (section, torque, swing) => section.Stresses(0, 0, torque * swing).Torsion);

    public static readonly NumberDefinition<ShaftSectionSpec> BendingNotch = Number("bending_notch_factor", "β_b", "Notch factor of bending")
        .By("by the kind of the notch", Din743, Certainty.Memory)
        .When(static s => s.Notch is not null).From(Weakened, static notch => notch.Bending);

    public static readonly NumberDefinition<ShaftSectionSpec> TorsionNotch = Number("torsion_notch_factor", "β_t", "Notch factor of torsion")
        .By("by the kind of the notch", Din743, Certainty.Memory)
        .When(static s => s.Notch is not null).From(Weakened, static notch => notch.Torsion);

    public static readonly NumberDefinition<ShaftSectionSpec> StaticSafety = Number("static_safety", "S_F", "Safety against yield at the peak torque").NeverNegative()
        .By("1/√((σ_zd/σ_zdFK + σ_b/σ_bFK)² + (τ_t/τ_tFK)²)", Din743, Certainty.Memory)
        .Noted("the least at every corner of the tolerances; the moment at nominal; axial force F_a·f_p + F_a0·max(1, f_p)")
        .When(static (_, subject) => IsLoaded(subject))
        .From(
            Weakened, Stressed, Strength, PeakMoment, Torque, PeakRatio, Of("shaft", static () => S.AxialOfTeeth), Of("shaft", static () => S.AxialLasting), Bore,
            static (notch, section, strength, moment, torque, peak, teeth, lasting, bore) => ShaftFatigue.StaticSafety(
                strength, notch, section.Stresses(teeth * peak + lasting * Math.Max(1, peak), moment, torque * peak), bore > 0));

    public static readonly NumberDefinition<ShaftSectionSpec> FatigueSafety = Number("fatigue_safety", "S_D", "Safety against fatigue").NeverNegative()
        .By("1/√((σ_zda/σ_zdADK + σ_ba/σ_bADK)² + (τ_ta/τ_tADK)²), mean and swing growing together", Din743, Certainty.Memory).Noted(Start)
        .When(static (_, subject) => IsLoaded(subject))
        .From(
            Weakened, Stressed, Strength, Moment, Torque, Roughness,
            Join(Of("shaft", static () => S.TorqueSwing), Of("shaft", static () => S.MeanTorque), static (swing, mean) => (swing, mean)),
            Of("shaft", static () => S.AxialOfTeeth), Of("shaft", static () => S.AxialLasting), Endurance);

    private static double Endurance(
        ShaftNotch notch, ShaftSection section, ShaftStrength strength, double moment, double torque, double roughness, (double Swing, double Mean) ratio,
        double teeth, double lasting)
    {
        var notched = ShaftFatigue.NotchedStrength(strength, notch, section.Outside, roughness * 1000);
        return ShaftFatigue.Safety(
            strength, notched, section.Stresses(teeth * ratio.Mean, 0, torque * ratio.Mean),
            section.Stresses(teeth * ratio.Swing + lasting, moment, torque * ratio.Swing), ShaftOverload.RatioStays);
    }

    private static bool IsOf(ShaftSectionSpec section, params ReadOnlySpan<string> kinds) => section.Notch is { } notch && kinds.Contains(notch.Kind.Value);

    private static ShaftBending Bent(Subject section) => ShaftBending.Of(section.Reach("shaft")!);

    private static ImmutableArray<string> Reasons(Subject section) => Bent(section).Reasons;

    /// <summary>What neither torque nor moment nor axial force loads has no safety to speak of.</summary>
    private static bool IsLoaded(Subject section) =>
        section[Torque] is not { IsEvaluated: true, Value.Max: 0 } || section[Moment] is not { IsEvaluated: true, Value.Max: 0 }
        || Bent(section) is not { AxialTeeth: 0, AxialLasting: 0 };
}
