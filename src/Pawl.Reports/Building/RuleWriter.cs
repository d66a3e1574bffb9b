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
        Place = Place(rule.Span),
        Shipped = rule.Shipped is not { } shipped ? null : new()
        {
            OverriddenBy = rule.OverriddenBy ?? "",
            Reason = rule.OverrideReason ?? "",
            When = shipped.When,
            Measure = shipped.Measure,
            Limit = shipped.LimitText,
            Severity = Words.Of(shipped.Severity),
            Source = Write(shipped.Source),
            Concedable = shipped.Concedable,
        },
    };

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
