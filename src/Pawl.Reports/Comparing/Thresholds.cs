using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Comparing;

/// <summary>What makes a comparison fail.</summary>
public sealed record Thresholds
{
    private const double Slack = 1e-9;

    /// <summary>Least severity of a rule whose new failure counts; null: neither new failures nor verdicts count.</summary>
    public SeverityWord? FailOn { get; init; } = SeverityWord.Error;

    /// <summary>Least share of a margin whose loss counts, of rules of <see cref="FailOn"/> and above; null: no loss counts.</summary>
    public double? Loss { get; init; }

    /// <summary>Whether a check counts that was evaluated in the base and is not in the head, of whatever severity; a spec that goes counts too.</summary>
    public bool LostCoverage { get; init; }

    /// <summary>What exceeds them.</summary>
    public ImmutableArray<Breach> Breaches(ComparisonRecord comparison)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        var breaches = ImmutableArray.CreateBuilder<Breach>();
        if (FailOn is { } least)
        {
            var failures = Count(comparison, e => e.Kind == EffectKind.NewlyFails && e.Severity >= least);
            if (failures > 0)
                Add(ThresholdWord.NewFailure, $"{Phrase.Count(failures, "check")} newly {Phrase.Verb(failures, "fails", "fail")} at severity {Labels.Of(least)}{(least == SeverityWord.Error ? "" : " or above")}.");
            foreach (var variant in comparison.Variants.Where(static v => v.IsWorse))
                Add(ThresholdWord.WorseVerdict, $"{variant.Variant}: {ComparisonWords.Verdict(variant.BaseVerdict, "new")} → {ComparisonWords.Verdict(variant.HeadVerdict, "gone")}.");
        }

        if (Loss is { } share)
        {
            var grave = FailOn ?? SeverityWord.Error;
            var lost = comparison.Effects.Where(e => e.Kind == EffectKind.MarginLost && e.Severity >= grave)
                .SelectMany(static e => e.Variants).Count(v => v.Lost >= share - Slack);
            if (lost > 0)
                Add(ThresholdWord.LostMargin, $"{Phrase.Count(lost, "check")} {Phrase.Verb(lost, "loses", "lose")} {Figures.Share(share)} or more of the margin.");
        }

        if (LostCoverage)
        {
            var lost = Count(comparison, static e => e.Kind is EffectKind.NoLongerEvaluated or EffectKind.NoLongerJudged);
            if (lost > 0)
                Add(ThresholdWord.LostCoverage, $"{Phrase.Count(lost, "check")} that the base evaluates {Phrase.Verb(lost, "is", "are")} not evaluated.");
            foreach (var variant in comparison.Variants.Where(static v => v.Presence == PresenceWord.Removed))
                Add(ThresholdWord.LostCoverage, $"{variant.Variant} is no longer there.");
        }

        return breaches.DrainToImmutable();

        void Add(ThresholdWord threshold, string statement) => breaches.Add(new() { Threshold = threshold, Statement = statement });
    }

    private static int Count(ComparisonRecord comparison, Func<Effect, bool> which) => comparison.Effects.Where(which).Sum(static e => e.Variants.Length);
}
