using Pawl.Reports.Records;
using Pawl.Rules;
using Pawl.Specs.Model;

namespace Pawl.Reports.Building;

/// <summary>Writes findings down, in the order of the judgement.</summary>
internal static class FindingWriter
{
    public static ImmutableArray<FindingRecord> Write(ImmutableArray<Finding> findings, QuantityWriter quantities, bool whole)
    {
        var records = ImmutableArray.CreateBuilder<FindingRecord>(findings.Length);
        foreach (var finding in findings)
            records.Add(Write(finding, quantities, whole));
        return records.MoveToImmutable();
    }

    private static FindingRecord Write(Finding finding, QuantityWriter quantities, bool withGoverning) => new()
    {
        Rule = finding.Rule.Id,
        Subject = finding.Subject.Path,
        Domain = finding.Subject.Kind.Domain,
        Title = finding.Rule.Title,
        Outcome = Words.Of(finding.Outcome),
        Severity = Words.Of(finding.Rule.Severity),
        Measured = quantities.Measure(finding.Measured),
        AtLeast = quantities.Measure(finding.AtLeast),
        AtMost = quantities.Measure(finding.AtMost),
        OneOf = finding.OneOf,
        Margin = Margin(finding),
        AbsoluteMargin = finding is { Distance: { } distance, Measured: { } measured } ? QuantityWriter.Distance(measured.Kind, distance) : null,
        Worst = finding is { Worst: { } worst, Measured: { } ranged } ? ranged.Kind.Unit.FromCoherent(worst) + 0.0 : null,
        Place = quantities.Place(finding.Span),
        Reasons = finding.Reasons,
        Suggestion = finding.Suggestion?.Text,
        FollowsFrom = finding.FollowsFrom is { } cause ? new() { Rule = cause.Rule, Subject = cause.Subject } : null,
        Concession = finding.Concession is { } concession ? Write(concession, quantities) : null,
        Known = Baselines.Of(finding.Known, quantities),
        Governing = withGoverning ? [.. finding.Governing.Select(quantities.Term)] : [],
    };

    private static ConcessionRecord Write(ConcessionSpec concession, QuantityWriter quantities) => new()
    {
        Reason = concession.Reason.Value,
        ApprovedBy = concession.ApprovedBy.Value,
        Expires = concession.Expires.Value,
        WorstMargin = concession.WorstMargin.Value.Coherent,
        Variants = [.. concession.Variants.Select(variant => variant.Value)],
        Place = quantities.Place(concession.Span),
    };

    private static double? Margin(Finding finding) => finding.Margin switch
    {
        null => null,
        { } margin when double.IsFinite(margin) => margin + 0.0,
        _ => throw new InvalidOperationException($"{finding.Rule.Id} on {finding.Subject.Path} has no finite margin."),
    };
}
