using Pawl.Reports.Records;
using Pawl.Reports.Rendering;
using Scriban.Runtime;

namespace Pawl.Reports.Markdown;

/// <summary>What the judgement rests on besides the spec: known findings, changed rules, unread sources.</summary>
internal sealed partial class ReportModel
{
    private ScriptObject? Baseline() => record.Baseline is not { } baseline ? null : new()
    {
        ["path"] = Code(baseline.Path),
        ["known"] = Phrase.Whole(baseline.Known),
        ["worse"] = Phrase.Whole(baseline.Worse),
        ["unneeded"] = List(baseline.Unneeded, u => Row(
            ("rule", RuleLink(u.Rule)), ("subject", Code(u.Subject)), ("reason", Escape(u.Reason)), ("gone", u.IsGone ? "to be removed" : "stays"), ("place", Code(u.Place.ToString())))),
    };

    private ScriptObject Deviation(DeviationRecord deviation) => Row(
        ("rule", RuleLink(deviation.Rule)),
        ("what", deviation.What == "when" ? "condition" : Escape(deviation.What)),
        ("shipped", Escape(deviation.Shipped)),
        ("now", Escape(deviation.House)),
        ("effect", Labels.Of(deviation.Effect)),
        ("reason", Escape(deviation.Reason)),
        ("approved_by", Escape(deviation.ApprovedBy)),
        ("place", Code(deviation.Place.ToString())));

    /// <summary>Limits and formulas whose source was not open when they were written down.</summary>
    private ScriptArray Unchecked()
    {
        var rows = new ScriptArray();
        foreach (var rule in record.Rules)
        {
            if (rule.Source.Certainty is CertaintyWord.Memory or CertaintyWord.CommonPractice)
                rows.Add(Row(("what", $"limit of {RuleLink(rule.Id)}"), ("source", Escape(rule.Source.Limit)), ("certainty", Labels.Of(rule.Source.Certainty))));
        }

        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (var subject in record.Subjects)
        {
            foreach (var quantity in subject.Quantities)
            {
                if (quantity is { Origin: OriginWord.Computed, Certainty: CertaintyWord.Memory or CertaintyWord.CommonPractice }
                    && seen.Add($"{subject.Kind}.{quantity.Name}"))
                {
                    rows.Add(Row(
                        ("what", $"formula of {Escape(Sheet.Titled(quantity))}"),
                        ("source", Escape(quantity.Source)),
                        ("certainty", Labels.Of(quantity.Certainty))));
                }
            }
        }

        return rows;
    }

    private ScriptArray Simplifications()
    {
        var rows = new ScriptArray();
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (var subject in record.Subjects)
        {
            foreach (var quantity in subject.Quantities)
            {
                if (quantity.Note.Length > 0 && seen.Add($"{subject.Kind}.{quantity.Name}"))
                    rows.Add(Row(("what", Escape(quantity.Title)), ("note", Escape(quantity.Note))));
            }
        }

        return rows;
    }
}
