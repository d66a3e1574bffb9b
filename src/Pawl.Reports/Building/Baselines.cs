using Pawl.Reports.Records;
using Pawl.Rules;

namespace Pawl.Reports.Building;

/// <summary>Writes down what was known before.</summary>
internal static class Baselines
{
    public static BaselineRecord? Of(Judgement judgement, QuantityWriter quantities) => judgement.Baseline is not { } baseline ? null : new()
    {
        Path = baseline.Path,
        Known = judgement.Findings.Count(static finding => finding.Known is { Holds: true }),
        Worse = judgement.Findings.Count(static finding => finding.Known is { Holds: false }),
        Unneeded =
        [
            .. judgement.Unneeded.Select(each => new UnneededRecord
            {
                Rule = each.Entry.Rule.Value,
                Subject = each.Entry.Subject.Value,
                Reason = each.Reason,
                IsGone = each.IsGone,
                Place = quantities.Place(each.Entry.Span),
            }),
        ],
    };

    public static KnownRecord? Of(Known? known, QuantityWriter quantities) =>
        known is null ? null : new() { WorstMargin = known.WorstMargin, Holds = known.Holds, Place = quantities.Place(known.Span) };
}
