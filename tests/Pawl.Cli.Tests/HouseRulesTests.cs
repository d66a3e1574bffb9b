using Pawl.Cli.Checking;
using Pawl.Reports.Records;

namespace Pawl.Cli.Tests;

/// <summary>A house that weakens shipped rules, in every output of a run.</summary>
public sealed class HouseRulesTests : IDisposable
{
    private const string Sentence = "2 shipped rules are weakened by house rules.";

    private const string Weak =
        """
        pack: house
        version: 1.0.0
        title: House
        rules:
          - id: mesh/contact-ratio
            override: true
            at_least: 1.1
            reason: Ten boats run quietly with it.
            approved_by: A. Designer
          - id: train/ratio-agrees
            override: true
            severity: warning
            reason: The customer accepts any ratio near.
            approved_by: B. Owner
          - id: mesh/hunting
            override: true
            severity: error
            reason: Our cutters leave one error per turn.
            approved_by: A. Designer
        """;

    private readonly Workplace _place = new() { Engine = Engine.Shipped };

    public HouseRulesTests()
    {
        Assert.Equal(0, _place.Run("new", "works", "--project").Code);
        Assert.Equal(0, _place.Run("new", "r1").Code);
    }

    public void Dispose() => _place.Dispose();

    private Ran Check(params string[] more) => _place.Run(["check", "specs/r1.yaml", "--rules", "house", .. more]);

    [Fact]
    public void The_run_says_once_what_is_weakened_and_where()
    {
        _place.With("house/house.yaml", Weak).With("specs/r2.yaml", File.ReadAllText(_place.PathOf("specs/r1.yaml")));

        var ran = _place.Run("check", "specs", "--rules", "house");

        Assert.Equal(
            [
                "house/house.yaml:5:9: note rule/weakened: The shipped rule `mesh/contact-ratio` is weakened: limit `at least 1.1` in place of `at least 1.2`; approved by A. Designer.",
                "  hint: Reason given: Ten boats run quietly with it.",
                "house/house.yaml:10:9: note rule/weakened: The shipped rule `train/ratio-agrees` is weakened: severity `warning` in place of `error`; approved by B. Owner.",
                "  hint: Reason given: The customer accepts any ratio near.",
            ],
            ran.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal(2, ran.OutLines.Count(line => line.EndsWith(Sentence, StringComparison.Ordinal)));
        Assert.Contains(" rules (2 weakened by house rules), ", ran.OutLines[^1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("text")]
    [InlineData("markdown")]
    [InlineData("html")]
    [InlineData("json")]
    public void The_verdict_of_every_format_counts_them(string format)
    {
        _place.With("house/house.yaml", Weak);

        Assert.Contains(Sentence, Check("--format", format).Out, StringComparison.Ordinal);
        Assert.Contains(Sentence, Check("--format", format, "--quiet").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_record_lists_each_change_with_both_texts_reason_approver_and_place()
    {
        _place.With("house/house.yaml", Weak);

        var record = ConformanceRecord.Read(Check("--format", "json").Out);

        Assert.Equal(2, record.Verdict.WeakenedRules);
        Assert.Equal(
            [
                "train/ratio-agrees severity weakened error warning house 10",
                "mesh/contact-ratio limit weakened at least 1.2 at least 1.1 house 5",
                "mesh/hunting severity tightened note error house 15",
            ],
            record.Deviations.Select(static d => $"{d.Rule} {d.What} {d.Effect.ToString().ToLowerInvariant()} {d.Shipped} {d.House} {d.Pack} {d.Place.Line}"));
        Assert.Equal(("Ten boats run quietly with it.", "A. Designer"), (record.Deviations[1].Reason, record.Deviations[1].ApprovedBy));
    }

    [Fact]
    public void The_reports_list_the_changes_and_the_index_names_the_rules()
    {
        _place.With("house/house.yaml", Weak);

        Assert.Equal(0, _place.Run("check", "specs", "--rules", "house", "--format", "markdown", "--format", "html", "--output", "out").Code);

        var page = File.ReadAllText(_place.PathOf("out/r1.md"));
        Assert.Contains("| limit | at least 1.2 | at least 1.1 | weakened | Ten boats run quietly with it. | A. Designer | `house/house.yaml:5:9` |", page, StringComparison.Ordinal);
        Assert.Contains("| severity | note | error | tightened | Our cutters leave one error per turn. | A. Designer | `house/house.yaml:15:9` |", page, StringComparison.Ordinal);
        foreach (var index in (string[])["out/index.md", "out/index.html"])
        {
            var text = File.ReadAllText(_place.PathOf(index));
            Assert.Contains("Shipped rules weakened by house rules: ", text, StringComparison.Ordinal);
            Assert.Contains("2 rules weakened", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Verbose_text_lists_the_changes()
    {
        _place.With("house/house.yaml", Weak);

        var lines = Check("--verbose").OutLines;

        var at = Array.IndexOf([.. lines], "house/house.yaml:5:9: deviation mesh/contact-ratio: limit at least 1.1, shipped at least 1.2: weakened");
        Assert.True(at >= 0);
        Assert.Equal("  approved by A. Designer: Ten boats run quietly with it.", lines[at + 1]);
    }

    [Fact]
    public void Without_overrides_no_output_says_a_word()
    {
        var ran = _place.Run("check", "specs", "--format", "markdown", "--format", "json", "--output", "out");

        Assert.DoesNotContain("weakened", ran.Out + ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("weakened by", File.ReadAllText(_place.PathOf("out/r1.md")) + File.ReadAllText(_place.PathOf("out/index.md")), StringComparison.Ordinal);
        var record = ConformanceRecord.Read(File.ReadAllText(_place.PathOf("out/r1.json")));
        Assert.Empty(record.Deviations);
        Assert.Equal(0, record.Verdict.WeakenedRules);
    }

    [Fact]
    public void Tightening_is_recorded_and_not_counted()
    {
        _place.With("house/house.yaml", Weak.Replace("at_least: 1.1", "at_least: 1.25", StringComparison.Ordinal)
            .Replace("train/ratio-agrees", "mesh/contact-lost", StringComparison.Ordinal).Replace("severity: warning", "at_least: 1.05", StringComparison.Ordinal));

        var ran = Check("--format", "json");

        Assert.DoesNotContain("weakened by house rules", ran.Out, StringComparison.Ordinal);
        var record = ConformanceRecord.Read(ran.Out);
        Assert.Equal(0, record.Verdict.WeakenedRules);
        Assert.Contains(record.Deviations, static d => !d.IsWeakening);
    }

    private const string Idle =
        """
        pack: house
        version: 1.0.0
        title: House
        rules:
          - id: house/large-ring
            title: Large rings are forged
            applies_to: gear
            when: kind == 'internal' and teeth > 400
            measure: face_width
            at_least: 40 mm
            severity: warning
            source: {method: drawing, limit: "common practice, no source"}
            why: It warps.
            mend: Make it wider.
          - id: house/face
            title: Faces are wide
            applies_to: gear
            measure: face_width
            at_least: 2 mm
            severity: warning
            source: {method: drawing, limit: "common practice, no source"}
            why: It breaks.
            mend: Make it wider.
        """;

    [Fact]
    public void A_house_rule_that_applied_to_nothing_is_named_when_the_run_ends()
    {
        _place.With("house/house.yaml", Idle);

        var ran = Check();

        Assert.Equal(0, ran.Code);
        Assert.Equal(
            [
                "house/house.yaml:5:9: warning rule/applied-to-nothing: The house rule `house/large-ring` applied to nothing in the specs judged: no gear met `kind == 'internal' and teeth > 400` and had what it measures.",
                "  hint: Check `applies_to`, `when` and `measure`, or judge a spec that it is for.",
            ],
            ran.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.Empty(Check("--quiet").Error);
    }

    [Fact]
    public void A_run_that_judged_nothing_says_nothing_of_its_rules()
    {
        _place.With("house/house.yaml", Idle).With("specs/r1.yaml", "pawl: 1\ngearbox: {family: F, variant: V, colour: red}\n");

        Assert.DoesNotContain("rule/applied-to-nothing", Check().Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_refused_override_keeps_the_run_from_judging()
    {
        _place.With("house/house.yaml", Weak.Replace("reason: Ten boats run quietly with it.", "reason: n/a", StringComparison.Ordinal));

        var ran = Check();

        Assert.Equal(2, ran.Code);
        Assert.Contains("house/house.yaml:8:13: error rule/thin-reason: The reason to override `mesh/contact-ratio` says too little: `n/a`.", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_explanation_of_a_rule_tells_how_the_house_differs()
    {
        _place.With("house/house.yaml", Weak);

        var text = _place.Run("explain", "mesh/contact-ratio", "--rules", "house").Out;

        Assert.Contains("limit: at least 1.1, shipped at least 1.2; weakened", text, StringComparison.Ordinal);
        Assert.Contains("Ten boats run quietly with it.", text, StringComparison.Ordinal);
        Assert.Contains("A. Designer", text, StringComparison.Ordinal);
    }
}
