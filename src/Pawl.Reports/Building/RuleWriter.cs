using Pawl.Reports.Records;
using Pawl.Rules;
using Pawl.Specs.Text;

namespace Pawl.Reports.Building;

/// <summary>Writes rules down.</summary>
internal static class RuleWriter
{
    public static RuleRecord Write(Rule rule) => new()
    {
        Id = rule.Id,
        Title = rule.Title,
        Pack = rule.Pack,
        AppliesTo = rule.AppliesTo.Name,
        When = rule.When,
        Measure = rule.Measure,
        Limit = rule.LimitText,
        Severity = Words.Of(rule.Severity),
        Source = Write(rule.Source),
        Why = rule.Why,
        Mend = rule.Mend,
        Concedable = rule.Concedable,
        Explains = rule.Explains,
        Place = Place(rule.Span),
        Shipped = rule.Shipped is not { } shipped ? null : new()
        {
            OverriddenBy = rule.Deviation?.Pack ?? "",
            Reason = rule.Deviation?.Reason ?? "",
            ApprovedBy = rule.Deviation?.ApprovedBy ?? "",
            When = shipped.When,
            Measure = shipped.Measure,
            Limit = shipped.LimitText,
            Severity = Words.Of(shipped.Severity),
            Source = Write(shipped.Source),
            Concedable = shipped.Concedable,
        },
    };

    /// <summary>What house packs change, rule by rule.</summary>
    public static ImmutableArray<DeviationRecord> Deviations(ImmutableArray<Rule> rules)
    {
        var records = ImmutableArray.CreateBuilder<DeviationRecord>();
        foreach (var rule in rules)
        {
            if (rule.Deviation is not { } deviation)
                continue;
            foreach (var change in deviation.Changes)
            {
                records.Add(new()
                {
                    Rule = rule.Id,
                    What = change.What,
                    Effect = Words.Of(change.Effect),
                    Shipped = change.Shipped,
                    House = change.House,
                    Pack = deviation.Pack,
                    Reason = deviation.Reason,
                    ApprovedBy = deviation.ApprovedBy,
                    Place = Place(deviation.Span),
                });
            }
        }

        return records.DrainToImmutable();
    }

    private static SourceRecord Write(RuleSource source) =>
        new() { Method = source.Method, Limit = source.Limit, Certainty = Words.Of(source.Certainty) };

    private static PlaceRecord Place(SourceSpan span) => new()
    {
        File = span.File,
        Line = span.Start.Line,
        Column = span.Start.Column,
        EndLine = span.End.Line,
        EndColumn = span.End.Column,
    };
}
