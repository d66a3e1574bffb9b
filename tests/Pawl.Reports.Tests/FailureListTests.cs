using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Tests;

public sealed class FailureListTests
{
    private static FindingRecord Finding(
        string rule, string subject, double? margin, int line, SeverityWord severity = SeverityWord.Error, (string Rule, string Subject)? cause = null,
        string? words = null) => new()
        {
            Rule = rule,
            Subject = subject,
            Domain = "Meshes",
            Title = "It holds",
            Outcome = OutcomeWord.Fails,
            Severity = severity,
            Measured = new() { Value = words is null ? new() { Nominal = 1 + margin } : new() { Text = words } },
            AtLeast = words is null ? new() { Value = new() { Nominal = 1 } } : null,
            OneOf = words is null ? [] : ["none"],
            Margin = margin,
            Place = new() { File = "specs/a.yaml", Line = line, Column = 3, EndLine = line, EndColumn = 9 },
            FollowsFrom = cause is { } name ? new() { Rule = name.Rule, Subject = name.Subject } : null,
        };

    private static ConformanceRecord Record(params ImmutableArray<FindingRecord> findings)
    {
        var sample = Sample.Record();
        var some = sample.Rules[0];
        return sample with
        {
            Findings = findings,
            Rules = [.. findings.Select(f => f.Rule).Distinct().Select(id => some with { Id = id, Explains = id == "a/cause" ? ["a/basic"] : [] })],
        };
    }

    private static string Text(TextLevel level, params ImmutableArray<FindingRecord> findings)
    {
        using var text = new StringWriter();
        new TextReport(level).Write(Record(findings), text);
        return text.ToString();
    }

    private static string[] Listed(params ImmutableArray<FindingRecord> findings) =>
        [.. FailureList.Of(Record(findings)).Select(f => $"{(f.IsConsequence ? "  " : "")}{f.Worst.Rule} {f.Worst.Subject} {f.Others.Length}")];

    [Fact]
    public void One_rule_at_one_place_is_one_entry_with_the_worst_value() => Assert.Equal(
        ["b/rule y 2", "b/rule w 0", "c/rule z 0"],
        Listed(
            Finding("b/rule", "x", -0.1, 5), Finding("b/rule", "y", -0.3, 5), Finding("b/rule", "z", -0.2, 5), Finding("b/rule", "w", -0.15, 6),
            Finding("c/rule", "z", -0.05, 5)));

    [Fact]
    public void Texts_that_differ_are_two_entries() => Assert.Equal(
        ["b/rule x 1", "b/rule y 0"],
        Listed(Finding("b/rule", "x", null, 5, words: "no oil"), Finding("b/rule", "y", null, 5, words: "no ring"), Finding("b/rule", "z", null, 5, words: "no oil")));

    [Fact]
    public void A_cause_stands_before_what_follows_from_it_and_counts_as_grave() => Assert.Equal(
        ["a/cause m 0", "  b/rule m.one 1", "  b/rest m.one 0", "c/rule z 0", "c/rule n 0"],
        Listed(
            Finding("c/rule", "z", -9, 5), Finding("c/rule", "n", -9, 6, SeverityWord.Warning), Finding("a/cause", "m", -0.1, 7, SeverityWord.Warning),
            Finding("b/rule", "m.one", -0.2, 7, cause: ("a/cause", "m")), Finding("b/rule", "m.two", -0.1, 7, cause: ("a/cause", "m")),
            Finding("b/rest", "m.one", -0.2, 7, SeverityWord.Note, ("b/rule", "m.two"))));

    [Fact]
    public void Of_equal_gravity_a_rule_that_explains_others_is_first() =>
        Assert.Equal(["a/cause m 0", "c/rule z 0"], Listed(Finding("c/rule", "z", -9, 5), Finding("a/cause", "m", -0.1, 7)));

    [Fact]
    public void What_follows_from_different_causes_stays_apart() => Assert.Equal(
        ["a/cause m 0", "  b/rule m.one 0", "a/cause n 0", "  b/rule n.one 0"],
        Listed(
            Finding("a/cause", "m", -0.2, 7), Finding("a/cause", "n", -0.1, 8),
            Finding("b/rule", "m.one", -0.2, 9, cause: ("a/cause", "m")), Finding("b/rule", "n.one", -0.1, 9, cause: ("a/cause", "n"))));

    [Fact]
    public void A_consequence_whose_cause_does_not_fail_stands_alone() =>
        Assert.Equal(["b/rule m 0"], Listed(Finding("b/rule", "m", -0.2, 9, cause: ("a/cause", "m"))));

    [Fact]
    public void The_text_names_the_other_subjects_and_the_cause()
    {
        ImmutableArray<FindingRecord> findings =
        [
            Finding("a/cause", "m", -0.5, 7) with { Suggestion = "58/41" },
            Finding("b/rule", "m.one", -0.2, 7, cause: ("a/cause", "m")), Finding("b/rule", "m.two", -0.1, 7, cause: ("a/cause", "m")),
        ];
        var text = Text(TextLevel.Normal, findings);

        Assert.StartsWith("specs/a.yaml:7:3: error a/cause: m It holds: value 0.5, limit at least 1, margin −50 %\n  why:  ", text[(text.IndexOf('\n') + 1)..], StringComparison.Ordinal);
        Assert.Contains(
            """

              would do: 58/41
              specs/a.yaml:7:3: error b/rule: m.one It holds: value 0.8, limit at least 1, margin −20 %
                also: m.two (2 in all)
                follows from a/cause on m

            """.ReplaceLineEndings("\n"), text, StringComparison.Ordinal);
        Assert.Equal(1, text.Split("why:").Length - 1);
        Assert.Equal(2, Text(TextLevel.Verbose, findings).Split("why:").Length - 1);
    }

    [Fact]
    public void The_reports_name_them_too()
    {
        var record = Record(
            Finding("a/cause", "m", -0.5, 7) with { Suggestion = "58/41" }, Finding("b/rule", "m.one", -0.2, 7, cause: ("a/cause", "m")),
            Finding("b/rule", "m.two", -0.1, 7, cause: ("a/cause", "m")));

        var markdown = Markdown.MarkdownReport.Render(record);

        Assert.Contains("- Also: `m.two` (2 in all)\n- Follows from [`a/cause`](#rule.a-cause) on `m`\n", markdown, StringComparison.Ordinal);
        Assert.Contains("- Would do: 58/41\n", markdown, StringComparison.Ordinal);
        Assert.DoesNotContain("### [`b/rule`](#rule.b-rule) on `m.two`", markdown, StringComparison.Ordinal);
        Assert.Contains("follows from <a href=\"#rule.a-cause\">", Html.HtmlReport.Render(record), StringComparison.Ordinal);
    }
}
