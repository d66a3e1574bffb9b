using Pawl.Reports.Records;
using Pawl.Reports.Rendering;
using Scriban.Runtime;

namespace Pawl.Reports.Markdown;

/// <summary>The findings as lists to look things up in: failures by rule, what is open by reason, all checks by rule.</summary>
internal sealed partial class ReportModel
{
    /// <summary>Subjects that an entry of a summary names; the others are counted, and stand in the list of checks.</summary>
    private const int MostNamed = 8;

    /// <summary>Entries of one rule that a summary shows.</summary>
    private const int MostEntries = 8;

    /// <summary>What the list of checks of the first page may come to, in characters, about; the rest stands with the derivations.</summary>
    private const int MostOfChecks = 290_000;

    private HashSet<string>? _first;

    /// <summary>Rules whose checks stand in the first page, those with failures before all; each rule whole.</summary>
    public IReadOnlySet<string> RulesOfFirstPage
    {
        get
        {
            if (_first is not null)
                return _first;
            _first = new(StringComparer.Ordinal);
            var left = MostOfChecks;
            var groups = record.Findings.Where(static f => f.Outcome != OutcomeWord.NotApplicable).GroupBy(static f => f.Rule)
                .OrderBy(static g => g.Min(static f => f.Outcome switch
                {
                    OutcomeWord.Fails => 0,
                    OutcomeWord.UnderConcession => 1,
                    OutcomeWord.NotEvaluated => 2,
                    _ => 3,
                }));
            foreach (var group in groups)
            {
                var size = 200 + (2 * group.Key.Length) + group.Sum(static f => 140 + (2 * f.Subject.Length) + (f.Measured?.Quantity?.Length ?? 0) + f.Reasons.Sum(static r => r.Length));
                if (size > left)
                    continue;
                left -= size;
                _first.Add(group.Key);
            }

            return _first;
        }
    }

    /// <summary>Anchors of what stands in the first page.</summary>
    public IReadOnlySet<string> AnchorsOfFirstPage => RulesOfFirstPage.Select(_anchors.Rule).ToHashSet(StringComparer.Ordinal);

    /// <summary>Texts as a list of a template.</summary>
    public static ScriptArray Texts(IEnumerable<string> texts) => List(texts, static text => text);

    /// <summary>The failures, one entry for each rule and what it follows from; the order is that of the list of failures.</summary>
    private ScriptArray Failing()
    {
        var rows = new ScriptArray();
        foreach (var group in FailureList.Of(record).GroupBy(static f => (f.Worst.Rule, Cause: f is { IsConsequence: true, Worst.FollowsFrom: { } cause } ? cause : null)))
        {
            var entries = group.ToList();
            var first = entries[0].Worst;
            var rule = _rules.GetValueOrDefault(first.Rule);
            var checks = entries.Sum(static e => e.Others.Length + 1);
            rows.Add(new ScriptObject
            {
                ["rule"] = RuleLink(first.Rule),
                ["title"] = Escape(first.Title),
                ["severity"] = Labels.SeverityOf(first),
                ["count"] = Phrase.Count(checks, "check"),
                ["follows_from"] = group.Key.Cause is { } cause ? $"{RuleLink(cause.Rule)} on {Code(cause.Subject)}" : "",
                ["why"] = Escape(rule?.Why ?? ""),
                ["mend"] = Escape(rule?.Mend ?? ""),
                ["entries"] = List(entries.Take(MostEntries), Entry),
                ["rests_on"] = Texts(entries.Take(MostEntries).SelectMany(static e => e.Worst.Governing).Select(Governing).Distinct(StringComparer.Ordinal)),
                ["left_out"] = entries.Count > MostEntries ? Phrase.Count(entries.Skip(MostEntries).Sum(static e => e.Others.Length + 1), "check") : "",
            });
        }

        return rows;
    }

    private ScriptObject Entry(Failure failure)
    {
        var model = Failure(failure);
        model["subjects"] = Named([failure.Worst.Subject, .. failure.Others.Select(static f => f.Subject)]);
        return model;
    }

    /// <summary>What is not evaluated, one entry for each rule and reason.</summary>
    private ScriptArray Open() => List(
        FindingOrder.WorstFirst(record.Findings, OutcomeWord.NotEvaluated).GroupBy(static f => (f.Rule, Reasons: string.Join("; ", f.Reasons))),
        group =>
        {
            var first = group.First();
            return Row(
                ("rule", RuleLink(first.Rule)),
                ("title", Escape(first.Title)),
                ("severity", Labels.SeverityOf(first)),
                ("count", Phrase.Whole(group.Count())),
                ("subjects", Named([.. group.Select(static f => f.Subject)])),
                ("reasons", string.Join("; ", first.Reasons.Select(Escape))));
        });

    /// <summary>Every check that applies: by part of the report, then by rule.</summary>
    /// <param name="further">Those that the first page has no room for, or the others.</param>
    private ScriptArray Checks(bool further)
    {
        var parts = new ScriptArray();
        var rules = record.Findings.Where(f => f.Outcome != OutcomeWord.NotApplicable && RulesOfFirstPage.Contains(f.Rule) != further).GroupBy(static f => f.Rule);
        foreach (var domain in rules.GroupBy(static rule => rule.First().Domain))
        {
            parts.Add(new ScriptObject
            {
                ["domain"] = Escape(domain.Key),
                ["anchor"] = _anchors.Checks(further ? domain.Key + ".further" : domain.Key),
                ["rules"] = List(domain, Checked),
            });
        }

        return parts;
    }

    private ScriptObject Checked(IGrouping<string, FindingRecord> group)
    {
        var first = group.First();
        var limits = group.Select(static f => Figures.Apart(f).Limit).Distinct(StringComparer.Ordinal).ToList();
        return new()
        {
            ["id"] = Code(first.Rule),
            ["anchor"] = _anchors.Rule(first.Rule),
            ["requirement"] = Link(Code(first.Rule), _anchors.Requirement(first.Rule)),
            ["title"] = Escape(first.Title),
            ["severity"] = Labels.Of(first.Severity),
            ["limit"] = limits.Count == 1 ? Escape(limits[0]) : "",
            ["rows"] = List(group, finding =>
            {
                var (value, limit) = Figures.Apart(finding);
                var shown = finding.Outcome == OutcomeWord.NotEvaluated ? string.Join("; ", finding.Reasons.Select(Escape)) : Linked(value, finding.Measured);
                return Row(
                    ("subject", Escape(finding.Subject)),
                    ("value", shown),
                    ("limit", limits.Count == 1 ? "" : Escape(limit)),
                    ("outcome", Labels.Of(finding.Outcome)),
                    ("css", finding.Outcome == OutcomeWord.Conforms ? "" : Html.OutcomeClass.Of(finding.Outcome)),
                    ("margin", $"{Labels.Symbol(finding.Outcome)} {(finding.Outcome == OutcomeWord.Conforms && finding.Margin is not null ? Figures.Margin(finding) : finding.Margin is null ? Labels.Of(finding.Outcome) : $"{Labels.Of(finding.Outcome)} {Figures.Margin(finding)}")}"));
            }),
        };
    }

    private string Named(ImmutableArray<string> subjects) =>
        string.Join(", ", subjects.Take(MostNamed).Select(Code)) + (subjects.Length > MostNamed ? $" and {Phrase.Whole(subjects.Length - MostNamed)} more" : "");
}
