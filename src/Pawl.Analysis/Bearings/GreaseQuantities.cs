using Pawl.Analysis.Core;
using Pawl.Mechanics.Bearings;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;
using B = Pawl.Analysis.Bearings.BearingQuantities;
using L = Pawl.Analysis.Bearings.BearingLifeQuantities;

namespace Pawl.Analysis.Bearings;

/// <summary>Fill and renewal of the grease of a bearing that runs on grease of its own.</summary>
public sealed class GreaseQuantities : Section<BearingSpec>
{
    private const double Hour = 3600;

    public static readonly NumberDefinition<BearingSpec> Fill = Number("grease_fill", "", "Grease as a share of the free space", Units.Percent).NeverNegative()
        .When(static (s, subject) => IsGreased(s, subject) && !IsSealed(subject))
        .Found(static (_, subject) => subject.Context.Spec.Lubrication?.Grease?.Fill, static _ => "lubrication.grease.fill");

    public static readonly NumberDefinition<BearingSpec> Interval = Number("grease_interval", "t", "Time that the grease must serve", Units.Hour).NeverNegative()
        .By("the stated interval of relubrication; of sealed bearings, and without one, the service life", "the spec", Certainty.Declared)
        .When(IsGreased)
        .For(static (_, subject) => !IsSealed(subject)).Found(static (_, subject) => subject.Context.Spec.Lubrication?.Grease?.Relubrication)
        .From(Of("train", static () => Rating.DutyQuantities.ServiceLife, "L_h"), static life => life);

    public static readonly NumberDefinition<BearingSpec> Life = Number("grease_life", "t_f", "Time after which the grease is due for renewal", Units.Hour).NeverNegative()
        .By(
            "t_f = k·(14·10⁶/(n·√d) − 4·d)·f_T·f_P h, n in 1/min, d in mm; f_T halves each 15 K above 70 °C; f_P = 1, 0.5 above P/C = 0.1, 0.25 above 0.2",
            "rule of the lubrication literature, common practice", Certainty.CommonPractice)
        .Noted("mineral oil and lithium soap, clean surroundings; at most 40 000 h, at least 0")
        .Tables(GreaseRenewal.TableId)
        .When(IsGreased)
        .From(
            B.Kind, B.Bore, B.RelativeSpeed, L.Temperature, B.LoadShare,
            static (kind, bore, speed, temperature, share) => Hour * GreaseRenewal.IntervalInHours(GreaseRenewal.FactorOf(kind), bore, speed, temperature, share));

    private static bool IsGreased(BearingSpec spec, Subject subject) => BearingWork.Of(subject).IsGreased;

    private static bool IsSealed(Subject subject) => B.EntryOf(subject).Closure is { Value: not "open" };
}
