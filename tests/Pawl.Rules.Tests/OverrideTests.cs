using System.Collections.Immutable;
using Pawl.Specs.Text;

namespace Pawl.Rules.Tests;

/// <summary>Overrides of shipped rules: what they owe, what they may not do, and how they differ from what was shipped.</summary>
public class OverrideTests
{
    private const string Reason = "reason: Our mounts carry noise to the hull.\napproved_by: A. Designer";

    private static RuleSetLoad Override(string body, string id = "mesh/contact-ratio") => Try.Load(Pack(body, id));

    private static string Pack(string body, string id = "mesh/contact-ratio") =>
        $"""
        pack: house
        version: 1.0.0
        title: House
        rules:
          - id: {id}
            override: true
        {string.Join('\n', body.Split('\n').Select(line => "    " + line))}
        """;

    private static Deviation Of(string body, string id = "mesh/contact-ratio")
    {
        var load = Override($"{body}\n{Reason}", id);
        Assert.DoesNotContain(load.Diagnostics, d => d.Severity == Severity.Error);
        return load.Rules!.Find(id)!.Deviation!;
    }

    // (1.25 − 1.2)/1.2 conforms by the shipped rule; (1.25 − 1.3)/1.3 = −1/26 fails by the house.
    [Fact]
    public void An_override_changes_limit_and_severity_and_keeps_what_was_shipped()
    {
        var load = Override($"at_least: 1.3\nseverity: error\n{Reason}");

        Assert.Empty(load.Diagnostics);
        var rule = load.Rules!.Find("mesh/contact-ratio")!;
        Assert.Equal(("at least 1.3", Severity.Error), (rule.LimitText, rule.Severity));
        Assert.Equal(("house", "Our mounts carry noise to the hull.", "A. Designer", false), (rule.Deviation!.Pack, rule.Deviation.Reason, rule.Deviation.ApprovedBy, rule.Deviation.IsWeakening));
        Assert.Equal(("rules/house.yaml", 5, 9), (rule.Deviation.Span.File, rule.Deviation.Span.Start.Line, rule.Deviation.Span.Start.Column));
        Assert.Equal(
            [
                new RuleChange("severity", DeviationEffect.Tightened, "warning", "error"),
                new RuleChange("limit", DeviationEffect.Tightened, "at least 1.2", "at least 1.3"),
            ],
            rule.Deviation.Changes);
        Assert.Equal(("at least 1.2", Severity.Warning, "mesh"), (rule.Shipped!.LimitText, rule.Shipped.Severity, rule.Pack));
        Assert.Equal("rules/house.yaml", rule.Span.File);
        Assert.Equal(RulePacks.Shipped.Rules!.Rules.Select(r => r.Id), load.Rules.Rules.Select(r => r.Id));
        Assert.Empty(load.Rules.Weakened);
        Assert.Equal(-1.0 / 26, Try.Put(rule, Try.ContactRatio(1.25)).Margin!.Value, 1e-12);
        Assert.Equal(Outcome.Conforms, Try.Put(rule.Shipped, Try.ContactRatio(1.25)).Outcome);
    }

    [Fact]
    public void A_weakened_rule_is_told_at_its_place_with_both_texts_approver_and_reason()
    {
        var load = Override($"at_least: 1.1\n{Reason}");

        var note = Assert.Single(load.Diagnostics);
        Assert.Equal((RuleCodes.Weakened, Severity.Note), (note.Code, note.Severity));
        Assert.Equal("The shipped rule `mesh/contact-ratio` is weakened: limit `at least 1.1` in place of `at least 1.2`; approved by A. Designer.", note.Message);
        Assert.Equal("Reason given: Our mounts carry noise to the hull.", note.Hint);
        Assert.Equal(["mesh/contact-ratio"], load.Rules!.Weakened.Select(r => r.Id));
    }

    // mesh/contact-ratio is shipped as `at least 1.2`, a warning. What is wider is read off the number line.
    [Theory]
    [InlineData("at_least: 1.3", DeviationEffect.Tightened)]
    [InlineData("at_least: 1.1", DeviationEffect.Weakened)]
    [InlineData("at_least: 120.0001 %", DeviationEffect.Tightened)]
    [InlineData("at_least: 119.9999 %", DeviationEffect.Weakened)]
    [InlineData("at_most: 2", DeviationEffect.Tightened)]
    [InlineData("equals: 1.5", DeviationEffect.Tightened)]
    [InlineData("equals: 1.1", DeviationEffect.Weakened)]
    [InlineData("at_least: transverse_contact_ratio", DeviationEffect.NotComparable)]
    [InlineData("at_least: {by: kind, external: 1.1, default: 1.3}", DeviationEffect.Weakened)]
    [InlineData("at_least: {by: kind, external: 1.3}", DeviationEffect.Weakened)]
    [InlineData("at_least: {by: kind, external: 1.3, default: 1.4}", DeviationEffect.NotComparable)]
    public void A_changed_limit_is_held_against_the_shipped_one(string limit, DeviationEffect effect)
    {
        var deviation = Of(limit);

        Assert.Equal(("limit", effect), (Assert.Single(deviation.Changes).What, deviation.Changes[0].Effect));
        Assert.Equal(effect != DeviationEffect.Tightened, deviation.IsWeakening);
    }

    [Theory]
    [InlineData("severity: note", DeviationEffect.Weakened)]
    [InlineData("severity: error", DeviationEffect.Tightened)]
    public void A_lower_severity_weakens(string severity, DeviationEffect effect) =>
        Assert.Equal(new("severity", effect, "warning", severity[10..]), Assert.Single(Of(severity).Changes));

    [Fact]
    public void What_weakens_one_side_of_a_window_weakens_it_whatever_the_other_does()
    {
        var shipped = RulePacks.Shipped.Rules!.Find("seal/stretch")!;
        Assert.Equal("at least -5 %, at most 8 %", shipped.LimitText);

        Assert.Equal(DeviationEffect.Weakened, Assert.Single(Of("at_least: 1 %\nat_most: 9 %", "seal/stretch").Changes).Effect);
        Assert.Equal(DeviationEffect.Weakened, Assert.Single(Of("at_least: -6 %", "seal/stretch").Changes).Effect);
        Assert.Equal(DeviationEffect.Tightened, Assert.Single(Of("at_least: 1 %\nat_most: 4 %", "seal/stretch").Changes).Effect);
    }

    // rules/seal.yaml: one of suitable, limited. The elastomer table knows unsuitable besides.
    [Theory]
    [InlineData("equals: suitable", DeviationEffect.Tightened)]
    [InlineData("one_of: [suitable]", DeviationEffect.Tightened)]
    [InlineData("one_of: [limited, other]", DeviationEffect.Weakened)]
    public void A_word_more_weakens_and_a_word_less_tightens(string words, DeviationEffect effect) =>
        Assert.Equal(effect, Assert.Single(Of(words, "seal/elastomer-oil").Changes).Effect);

    // A table of the shipped packs, row by row: its own text first.
    [Fact]
    public void A_table_is_compared_row_by_row()
    {
        var shipped = RulePacks.Shipped.Rules!.Rules.First(r => r.Concedable && r.LimitText.Contains("by surface", StringComparison.Ordinal));
        var key = shipped.LimitText.StartsWith("at least", StringComparison.Ordinal) ? "at_least" : "at_most";
        var rows = shipped.LimitText[(shipped.LimitText.IndexOf(": ", StringComparison.Ordinal) + 2)..^1].Split("; ")
            .Select(row => row.Split(' ', 2)).Select(row => (Key: row[0] == "otherwise" ? "default" : row[0], Value: row[1])).ToList();
        string Table(Func<(string Key, string Value), string> value) => $"{key}: {{by: surface, {string.Join(", ", rows.Select(r => $"{r.Key}: {value(r)}"))}}}";

        Assert.True(rows.Count > 1);
        Assert.Contains(RuleCodes.IdleOverride, Override($"{Table(r => r.Value)}\n{Reason}", shipped.Id).Diagnostics.Select(d => d.Code));
        foreach (var loosened in rows)
        {
            var wider = key == "at_least" ? "0.9" : "1.1";
            Assert.Equal(DeviationEffect.Weakened, Of(Table(r => r == loosened ? $"{wider} * ({r.Value})" : r.Value), shipped.Id).Changes.Single().Effect);
        }
    }

    public static TheoryData<string, string, DeviationEffect> Conditions => new()
    {
        // mesh/contact-ratio has none: any is narrower.
        { "mesh/contact-ratio", "kind == 'internal'", DeviationEffect.Weakened },
        // seal/squeeze-static has motion == 'static' and direction == 'radial': dropped, joined by `and`, joined by `or`, another.
        { "seal/squeeze-static", "true", DeviationEffect.Tightened },
        { "seal/squeeze-static", "motion == 'static'", DeviationEffect.Tightened },
        { "seal/squeeze-static", "direction == 'radial' and motion == 'static' and gland == 'bore'", DeviationEffect.Weakened },
        { "seal/squeeze-static", "motion == 'static' and direction == 'radial' or gland == 'bore'", DeviationEffect.Tightened },
        { "seal/squeeze-static", "motion != 'static' and direction == 'radial'", DeviationEffect.NotComparable },
        { "seal/squeeze-static", "gland == 'bore'", DeviationEffect.NotComparable },
    };

    [Theory]
    [MemberData(nameof(Conditions))]
    public void A_changed_condition_is_held_against_the_shipped_one(string id, string when, DeviationEffect effect)
    {
        var deviation = Of($"when: {when}", id);

        var change = Assert.Single(deviation.Changes);
        Assert.Equal(("when", effect), (change.What, change.Effect));
        Assert.Equal(RulePacks.Shipped.Rules!.Find(id)!.When ?? "always", change.Shipped);
        Assert.Equal(when == "true" ? "always" : when, change.House);
    }

    [Fact]
    public void A_condition_in_other_words_changes_nothing()
    {
        Assert.Equal("motion == 'static' and direction == 'radial'", RulePacks.Shipped.Rules!.Find("seal/squeeze-static")!.When);

        Assert.Equal([RuleCodes.IdleOverride], Override($"when: direction in ('radial') and not (motion != 'static')\n{Reason}", "seal/squeeze-static").Diagnostics.Select(d => d.Code));
    }

    [Theory]
    [InlineData("at_least: 1.2")]
    [InlineData("at_least: 120 %")]
    [InlineData("severity: warning")]
    public void An_override_that_changes_nothing_is_a_warning(string body)
    {
        var load = Override($"{body}\n{Reason}");

        var idle = Assert.Single(load.Diagnostics);
        Assert.Equal((RuleCodes.IdleOverride, Severity.Warning, 5), (idle.Code, idle.Severity, idle.Span.Start.Line));
        Assert.NotNull(load.Rules);
    }

    public static TheoryData<string, string, int, string, string> Wrong => new()
    {
        { "at_least: 1.3\napproved_by: A. Designer", RuleCodes.MissingReason, 5, "The rule `mesh/contact-ratio` lacks `reason`.", "Say why this house differs from the shipped pack." },
        { "at_least: 1.3\nreason: Our mounts carry noise to the hull.", RuleCodes.MissingApprover, 5, "The rule `mesh/contact-ratio` lacks `approved_by`.", "Name who agreed to it: a person or an office." },
        { "reason: \"\"\napproved_by: A. Designer\nat_least: 1.3", RuleCodes.MissingReason, 7, "`reason` of the rule `mesh/contact-ratio` is empty.", "Say why this house differs from the shipped pack." },
        { "approved_by: ' '\nreason: Our mounts carry noise to the hull.\nat_least: 1.3", RuleCodes.MissingApprover, 7, "`approved_by` of the rule `mesh/contact-ratio` is empty.", "Name who agreed to it: a person or an office." },
        { "approved_by:\nreason: Our mounts carry noise to the hull.\nat_least: 1.3", RuleCodes.MissingApprover, 7, "`approved_by` of the rule `mesh/contact-ratio` is empty.", "Name who agreed to it: a person or an office." },
        { "approved_by: tbd\nreason: Our mounts carry noise to the hull.\nat_least: 1.3", RuleCodes.MissingApprover, 7, "`approved_by` of the rule `mesh/contact-ratio` names nobody: `tbd`.", "Name who agreed to it: a person or an office." },
        { Reason, RuleCodes.MissingLimit, 5, "The rule `mesh/contact-ratio` lacks `a change`.", "Give a limit, a severity or a condition that differs from the shipped one." },
        { $"at_least: 1.3\n{Reason}\nmeasure: overlap_ratio", RuleCodes.OverrideKey, 10, "An override cannot change `measure`.", "It changes limits, severity and condition. For another measure add a rule with an id of its own." },
        { $"at_least: 1.3 mm\n{Reason}", RuleCodes.DimensionMismatch, 7, "The limit compares a ratio with a length.", "Give a ratio" },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void A_wrong_override_is_refused_with_place_and_hint(string body, string code, int line, string message, string hint)
    {
        var load = Override(body);

        Assert.Null(load.Rules);
        var wrong = Assert.Single(load.Diagnostics);
        Assert.Equal((code, Severity.Error, line, message), (wrong.Code, wrong.Severity, wrong.Span.Start.Line, wrong.Message));
        Assert.StartsWith(hint, wrong.Hint, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("n/a", "says too little")]
    [InlineData("tbd", "says too little")]
    [InlineData("ok", "says too little")]
    [InlineData("N/A, TBD, ok, see above", "says too little")]
    [InlineData("as agreed", "says too little")]
    [InlineData("x x x x x x", "says too little")]
    [InlineData("1.1 is 100 % fine", "says too little")]
    [InlineData("mesh/contact-ratio", "says too little")]
    public void A_reason_without_substance_is_refused(string reason, string lack)
    {
        var load = Override($"reason: '{reason}'\napproved_by: A. Designer\nat_least: 1.3");

        var thin = Assert.Single(load.Diagnostics);
        Assert.Equal((RuleCodes.ThinReason, Severity.Error, 7), (thin.Code, thin.Severity, thin.Span.Start.Line));
        Assert.StartsWith($"The reason to override `mesh/contact-ratio` {lack}: `", thin.Message, StringComparison.Ordinal);
        Assert.Contains("4 words at least", thin.Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void The_title_of_the_rule_is_no_reason()
    {
        var rule = RulePacks.Shipped.Rules!.Rules.First(r => r.Concedable && r.Title.Split(' ').Length >= 5 && r.AppliesTo.Name == "mesh");

        var load = Override($"reason: '{rule.Title} {rule.Id}'\napproved_by: A. Designer\nseverity: error", rule.Id);

        Assert.Contains("repeats the rule", Assert.Single(load.Diagnostics, d => d.Code == RuleCodes.ThinReason).Message, StringComparison.Ordinal);
    }

    // Scripts that do not part words count by the letter.
    [Theory]
    [InlineData("Tested on ten boats for a season.")]
    [InlineData("Dauerlauf über 2000 h ohne Befund bestanden")]
    [InlineData("试验台运行两千小时无损伤")]
    public void A_sentence_is_a_reason(string reason) =>
        Assert.Empty(Override($"reason: {reason}\napproved_by: A. Designer\nat_least: 1.3").Diagnostics);

    // What a concession cannot cover a house cannot weaken.
    [Theory]
    [InlineData("train/locked", "severity: note", "severity `note` in place of `error`")]
    [InlineData("mesh/contact-lost", "at_least: 0.9", "limit `at least 0.9` in place of `at least 1`")]
    [InlineData("mesh/contact-lost", "when: kind == 'internal'", "when `kind == 'internal'` in place of `always`")]
    [InlineData("concession/expired", "at_least: -10 d", "limit `at least -10 d` in place of `at least 0 d`")]
    [InlineData("mesh/contact-lost", "at_least: transverse_contact_ratio", "which cannot be compared")]
    public void A_rule_that_is_not_concedable_cannot_be_weakened(string id, string change, string what)
    {
        var load = Override($"{change}\n{Reason}", id);

        Assert.Null(load.Rules);
        var refused = Assert.Single(load.Diagnostics);
        Assert.Equal((RuleCodes.CannotWeaken, Severity.Error, 5), (refused.Code, refused.Severity, refused.Span.Start.Line));
        Assert.StartsWith($"The rule `{id}` cannot be weakened: ", refused.Message, StringComparison.Ordinal);
        Assert.Contains(what, refused.Message, StringComparison.Ordinal);
        Assert.Contains("tightened only", refused.Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rule_that_is_not_concedable_can_be_tightened() =>
        Assert.False(Of("at_least: 1.05", "mesh/contact-lost").IsWeakening);

    // A failure of these means that the parts cannot be made, assembled or turned, or that the spec contradicts itself.
    [Theory]
    [InlineData("train/locked")]
    [InlineData("train/impossible-graph")]
    [InlineData("mesh/planet-position")]
    [InlineData("mesh/tip-collision")]
    [InlineData("bearing/designation")]
    [InlineData("interface/kind")]
    [InlineData("interface/spline")]
    [InlineData("interface/pilot")]
    [InlineData("interface/screws")]
    [InlineData("interface/dowels")]
    [InlineData("rating/spectrum-torque")]
    public void No_concession_makes_up_for_what_cannot_be_built(string id) => Assert.False(RulePacks.Shipped.Rules!.Find(id)!.Concedable);

    [Fact]
    public void An_override_of_no_shipped_rule_is_refused_with_the_nearest_id()
    {
        var complaint = Assert.Single(Override($"at_least: 1.3\n{Reason}", "mesh/contact-ration").Diagnostics);

        Assert.Equal((RuleCodes.UnknownRule, "Did you mean `mesh/contact-ratio`?"), (complaint.Code, complaint.Hint));
    }

    [Fact]
    public void Two_overrides_of_one_rule_are_refused()
    {
        var pack = Pack($"at_least: 1.3\n{Reason}");

        var load = RulePacks.LoadTexts(("a.yaml", pack), ("b.yaml", pack.Replace("house", "two", StringComparison.Ordinal)));

        Assert.Equal([RuleCodes.DuplicateId], load.Diagnostics.Select(d => d.Code));
    }

    [Fact]
    public void All_faults_of_an_override_are_told_at_once() =>
        Assert.Equal(
            ImmutableArray.Create(RuleCodes.CannotWeaken, RuleCodes.ThinReason),
            [.. Override("at_least: 0.9\nreason: ok\napproved_by: A. Designer", "mesh/contact-lost").Diagnostics.Select(d => d.Code)]);
}
