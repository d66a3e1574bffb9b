using Pawl.Analysis.Core;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Lubrication;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;
using B = Pawl.Analysis.Bearings.BearingQuantities;
using D = Pawl.Analysis.Rating.DutyQuantities;

namespace Pawl.Analysis.Bearings;

/// <summary>Life, lubricant, static safety and speed of a rolling bearing.</summary>
public sealed class BearingLifeQuantities : Section<BearingSpec>
{
    private const string Iso281 = "ISO 281:2007";

    private static readonly IInput<double> PeakTorque = Of("train", static () => D.PeakTorque);

    public static readonly NumberDefinition<BearingSpec> MeanLoad =
        Number("mean_load", "P_m", "Mean equivalent load of the service life", Units.Newton)
        .By("P_m = (Σ P_i^p·q_i·n_i / Σ q_i·n_i)^(1/p)", "ISO/TR 1281-2")
        .Solved([B.EquivalentLoad, B.RelativeSpeed], B.LoadReasons, static (_, subject) => BearingWork.Of(subject).MeanLoad());

    public static readonly NumberDefinition<BearingSpec> BasicLife = Number("basic_life", "L_10h", "Basic rating life", Units.Hour).NeverNegative()
        .By("L_10h = (C_s/P_m)^p·10⁶/(60·n_m), p = 3 balls, 10/3 rollers", Iso281)
        .Noted("a life that 90 % of many such bearings reach; no promise for one of them; 10⁶ h at most are told")
        .Solved([B.SetRating, MeanLoad, B.EquivalentLoad, B.RelativeSpeed], B.LoadReasons, static (_, subject) => BearingWork.Of(subject).BasicLife());

    public static readonly NumberDefinition<BearingSpec> Reliability = Number("reliability", "", "Reliability required", Units.Percent)
        .Custom(static subject => subject.Context.Amount(Reliability!, subject.Context.Spec.Duty?.Reliability, 0.90, "90 %, the reliability of the basic rating life"));

    public static readonly NumberDefinition<BearingSpec> ReliabilityFactor = Number("reliability_factor", "a_1", "Life factor for reliability")
        .By("a_1 by the table", Iso281)
        .Tables(RatingLife.ReliabilityTableId).From(Reliability, RatingLife.ReliabilityFactor);

    public static readonly NumberDefinition<BearingSpec> Temperature = Number("temperature", "θ_b", "Temperature of the bearing", Units.Celsius)
        .Noted("as warm as the oil where it is not stated, which flatters the film")
        .Stated(static s => s.Running)
        .Custom(static subject => subject.Context.Spec.Duty?.Oil?.Running is { } oil
            ? subject.Context.Assumed(
                Temperature!, oil.Value.Coherent, "as warm as the oil, for no temperature of the bearing is stated; a bearing runs warmer")
            : AnalysisContext.Missing(Temperature!, "duty.oil.running"));

    public static readonly NumberDefinition<BearingSpec> WorkingViscosity =
        Number("working_viscosity", "ν_b", "Viscosity of the lubricant in the bearing", Units.SquareMillimetrePerSecond)
        .By("Walther's line through ν_40 and ν_100, at θ_b", "ASTM D341")
        .Unless(static subject => BearingWork.Of(subject).IsGreased
            ? ["the bearing runs on grease of its own, whose base oil the spec does not state"]
            : [])
        .From(
            Of("train", static () => D.Viscosity40), Of("train", static () => D.Viscosity100), Temperature,
            static (v40, v100, temperature) => Viscosity.Kinematic(temperature, 40, v40, 100, v100));

    public static readonly NumberDefinition<BearingSpec> ViscosityRatio = Number("viscosity_ratio", "κ", "Viscosity ratio in the slowest share").NeverNegative()
        .By("κ = ν_b/ν_1; ν_1 = 45 000·n^−0.83·D_pw^−0.5 below 1000 1/min, else 4500·(n·D_pw)^−0.5", Iso281)
        .Solved(
            [WorkingViscosity, B.PitchDiameter, B.RelativeSpeed], static subject => BearingWork.Of(subject).TurningReasons,
            static (_, subject) => BearingWork.Of(subject).ViscosityRatio());

    public static readonly TruthDefinition<BearingSpec> ExtremePressure = Truth("extreme_pressure", "Proven additives of extreme pressure")
        .Custom(static subject => AnalysisContext.Truth(
            ExtremePressure!, subject.Context.Spec.Lubrication?.ExtremePressure, false, "none proven, for nothing is stated"));

    public static readonly NumberDefinition<BearingSpec> Contamination = Number("contamination_factor", "e_C", "Contamination factor")
        .By("e_C = a·(1 − b/∛D_pw), a = min(1, a_0·κ^0.68·D_pw^0.55), by the code of cleanliness; in words: the least of the class", Iso281, Certainty.Memory)
        .Tables(Mechanics.Bearings.Contamination.TableId, Mechanics.Bearings.Contamination.ClassTableId)
        .Solved([ViscosityRatio, B.PitchDiameter], static (_, subject) => BearingWork.Of(subject).Cleanliness(BearingWork.Of(subject).Nominal(ViscosityRatio)));

    public static readonly NumberDefinition<BearingSpec> StatedFatigueLimit =
        Number("stated_fatigue_limit", "C_u1", "Fatigue load limit of one bearing in the catalogue", Units.Newton)
        .Found(static (_, subject) => B.EntryOf(subject).FatigueLimit);

    public static readonly NumberDefinition<BearingSpec> FatigueLimit = Number("fatigue_limit", "C_u", "Fatigue load limit", Units.Newton)
        .By("as stated, else C_0s/22 of balls, C_0s/8.2 of rollers", "ISO 281:2007, annex B, simplified", Certainty.Memory)
        .From(B.Arrangement, StatedFatigueLimit, static (place, stated) => stated * place.Count)
        .Unless(B.Refused)
        .From(B.Arrangement, B.SetStaticRating, B.PitchDiameter, static (place, rating, pitch) => LifeModification.FatigueLoadLimit(place.Type!, rating, pitch));

    private static readonly ImmutableArray<IInput> Modified = [ReliabilityFactor, ViscosityRatio, Contamination, FatigueLimit, B.SetRating, BasicLife];

    public static readonly NumberDefinition<BearingSpec> LifeFactor =
        Number("life_factor", "a_ISO", "Life modification factor, mean over the service life")
        .By("L_nm/(a_1·L_10)", Iso281, Certainty.Memory)
        .Solved(Modified, B.LoadReasons, static (_, subject) => BearingWork.Of(subject).LifeFactor());

    public static readonly NumberDefinition<BearingSpec> ModifiedLife = Number("modified_life", "L_nmh", "Modified rating life", Units.Hour).NeverNegative()
        .By("1/L_nmh = Σ q_i/(a_1·a_ISO,i·L_10h,i), a_ISO from κ_i and e_C·C_u/P_i", Iso281, Certainty.Memory)
        .Noted("10⁶ h at most are told")
        .Solved(Modified, B.LoadReasons, static (_, subject) => BearingWork.Of(subject).ModifiedLife());

    public static readonly NumberDefinition<BearingSpec> PeakLoad =
        Number("peak_static_load", "P_0", "Equivalent static load at the peak torque", Units.Newton)
        .By("P_0 = max(X_0·F_r + Y_0·F_a, F_r) at the peak torque", "ISO 76:2006")
        .Noted("machine and weight grow with the torque to the peak, common practice")
        .Solved([PeakTorque, .. B.LoadInputs], B.LoadReasons, static (_, subject) => BearingWork.Of(subject).PeakLoad());

    public static readonly NumberDefinition<BearingSpec> StaticSafety = Number("static_safety", "s_0", "Static safety at the peak torque").NeverNegative()
        .By("s_0 = C_0s/P_0", "ISO 76:2006")
        .From(B.SetStaticRating, PeakLoad, StaticLoad.Safety);

    public static readonly NumberDefinition<BearingSpec> RequiredStaticSafety = Number("required_static_safety", "s_0min", "Static safety required")
        .Stated(static s => s.StaticSafety).Assumed(1, "1.0, common practice, no source");

    public static readonly NumberDefinition<BearingSpec> LimitingSpeed =
        Number("limiting_speed", "n_lim", "Limiting speed", Units.RevolutionPerMinute)
        .Found(static (_, subject) => B.EntryOf(subject).LimitingSpeed);

    public static readonly NumberDefinition<BearingSpec> ReferenceSpeed =
        Number("reference_speed", "n_ref", "Thermal reference speed", Units.RevolutionPerMinute)
        .Found(static (_, subject) => B.EntryOf(subject).ReferenceSpeed);

    public static readonly NumberDefinition<BearingSpec> LimitingShare =
        Number("limiting_share", "n/n_lim", "Speed over the limiting speed of the maker")
        .By("n/n_lim", "the maker")
        .From(B.Entry, B.RelativeSpeed, LimitingSpeed, static (_, speed, limit) => speed / limit)
        .Custom(static subject => subject.Find(ReferenceSpeed) is null
            ? AnalysisContext.Missing(LimitingShare!, $"limiting_speed or reference_speed of bearing {((BearingSpec)subject.Model).Bearing.Value} in the catalogue")
            : null);

    public static readonly NumberDefinition<BearingSpec> ReferenceShare =
        Number("reference_share", "n/n_ref", "Speed over the thermal reference speed")
        .By("n/n_ref", "ISO 15312, speed of the maker")
        .From(B.Entry, B.RelativeSpeed, ReferenceSpeed, static (_, speed, reference) => speed / reference);

    public static readonly NumberDefinition<BearingSpec> SpeedNumber = Number("speed_number", "n·d_m", "Speed number", Units.MillimetrePerMinute)
        .By("n·(d + D)/2", "common practice")
        .From(B.RelativeSpeed, B.Bore, B.Outside, static (speed, bore, outside) => BearingSpeed.Number(speed, BearingSpeed.MeanDiameter(bore, outside)) / 60);

    public static readonly NumberDefinition<BearingSpec> SpeedGuide =
        Number("speed_guide", "", "Speed number that such a bearing bears", Units.MillimetrePerMinute)
        .By("by kind, lubrication and cage, least of the range; ceramic balls: 1.2 times", "common practice, no source", Certainty.CommonPractice)
        .Tables(BearingSpeed.TableId).Solved([B.Kind], static (_, subject) => BearingWork.Of(subject).SpeedGuide());

    public static readonly NumberDefinition<BearingSpec> CentrifugalShare =
        Number("centrifugal_share", "F_c·Z/F_r", "Centrifugal force of a ball over its mean load")
        .By("m·(D_pw/2)·ω_c²·Z/F_r, ω_c of the cage", "closed form")
        .Noted("in the frame of the slower ring")
        .When(static (_, subject) => B.EntryOf(subject).Elements is not null && B.PlaceOf(subject).Type is { IsBall: true })
        .Solved([B.RelativeSpeed, B.RadialLoad], static (_, subject) => BearingWork.Of(subject).CentrifugalShare());

    public static readonly NumberDefinition<BearingSpec> FrictionLoss =
        Number("friction_loss", "P_V", "Friction of such bearings at the rated torque", Units.Watt)
        .By("μ·P·d/2·ω of all of them, P without the application factor", "textbooks of machine design", Certainty.Memory)
        .Noted("first estimate; seals and drag of the oil left out").Scaled(1000)
        .Tables(BearingFriction.TableId).Solved([B.EquivalentLoad, B.Bore, B.RelativeSpeed], B.LoadReasons, static (_, subject) => BearingWork.Of(subject).FrictionLoss());
}
