using Pawl.Rules.Packs;
using Pawl.Specs.Text;

namespace Pawl.Rules.Tests;

/// <summary>Limits that nothing can break, conditions that nothing meets, rules that find nothing to judge.</summary>
public class IdleRuleTests
{
    private static RuleSetLoad Load(string body, string appliesTo) => Try.Load(Try.Pack(body, appliesTo));

    public static TheoryData<string, string, int, string> NeverFails => new()
    {
        { "gear", "measure: face_width\nat_least: 0 mm", 13, "`at_least: 0 mm` of `house/tried` never fails: `face_width` is never below 0 mm." },
        { "gear", "measure: face_width\nat_least: -2 mm", 13, "`at_least: -2 mm` of `house/tried` never fails: `face_width` is never below 0." },
        { "gear", "measure: face_width / module\nat_least: 0", 13, "`at_least: 0` of `house/tried` never fails: `face_width / module` is never below 0." },
        { "gear", "measure: abs(profile_shift)\nat_least: 0", 13, "`at_least: 0` of `house/tried` never fails: `abs(profile_shift)` is never below 0." },
        { "gear", "measure: profile_shift ^ 2\nat_least: 0", 13, "`at_least: 0` of `house/tried` never fails: `profile_shift ^ 2` is never below 0." },
        { "gear", "measure: max(profile_shift, 0.5)\nat_least: 0.5", 13, "`at_least: 0.5` of `house/tried` never fails: `max(profile_shift, 0.5)` is never below 0.5." },
        { "gear", "measure: min(profile_shift, 0.5)\nat_most: 0.5", 13, "`at_most: 0.5` of `house/tried` never fails: `min(profile_shift, 0.5)` is never above 0.5." },
        { "gear", "measure: sin(pressure_angle)\nat_most: 1", 13, "`at_most: 1` of `house/tried` never fails: `sin(pressure_angle)` is never above 1." },
        { "gear", "measure: teeth\nat_most: 1e30", 13, "`at_most: 1e30` of `house/tried` never fails: no value is that large." },
        { "gear", "measure: profile_shift\nat_least: -1e30", 13, "`at_least: -1e30` of `house/tried` never fails: no value is that small." },
        { "gear", "measure: profile_shift\nat_most: 1 / 0", 13, "`at_most: 1 / 0` of `house/tried` never fails: no value is that large." },
        { "gear", "measure: profile_shift\nat_most: profile_shift", 13, "`at_most: profile_shift` of `house/tried` never fails: the measure is compared with itself." },
        { "gear", "measure: profile_shift\nequals: profile_shift", 13, "`equals: profile_shift` of `house/tried` never fails: the measure is compared with itself." },
        { "gear", "measure: face_width\nat_least: {by: kind, external: 0 mm, internal: 0 mm}", 13, "`at_least: 0 mm` of `house/tried` never fails: `face_width` is never below 0 mm." },
        { "o_ring", "measure: motion\none_of: [rotating, static, reciprocating]", 13, "The limit `one_of` of `house/tried` never fails: `motion` has no other word than static, reciprocating, rotating." },
        { "o_ring", "measure: motion\nequals: motion", 13, "The limit `equals` of `house/tried` never fails: the measure is compared with itself." },
        { "mesh", "measure: same_rack or not same_rack\nequals: true", 13, "The limit `equals` of `house/tried` never fails: `same_rack or not same_rack` is never anything else." },
        { "mesh", "measure: kind == 'internal' or kind == 'external'\nequals: true", 13, "The limit `equals` of `house/tried` never fails: `kind == 'internal' or kind == 'external'` is never anything else." },
    };

    [Theory]
    [MemberData(nameof(NeverFails))]
    public void A_limit_that_nothing_can_break_is_an_error(string kind, string body, int line, string message)
    {
        var load = Load(body, kind);

        Assert.Null(load.Rules);
        var first = load.Diagnostics[0];
        Assert.All(load.Diagnostics, d => Assert.Equal(RuleCodes.NeverFails, d.Code));
        Assert.Equal((Severity.Error, line, message), (first.Severity, first.Span.Start.Line, first.Message));
        Assert.Equal("Give a limit that a bad design breaks, or leave it out.", first.Hint);
    }

    [Theory]
    [InlineData("gear", "measure: face_width\nat_least: 0 mm\nat_most: 40 mm")]
    [InlineData("gear", "measure: face_width\nat_least: {by: kind, external: 0 mm, internal: 12 mm}")]
    public void A_limit_beside_one_that_can_fail_is_a_warning(string kind, string body)
    {
        var load = Load(body, kind);

        var warning = Assert.Single(load.Diagnostics);
        Assert.Equal((RuleCodes.NeverFails, Severity.Warning), (warning.Code, warning.Severity));
        Assert.NotNull(load.Rules);
    }

    [Theory]
    [InlineData("gear", "measure: face_width\nat_least: 0.001 mm")]
    [InlineData("gear", "measure: profile_shift\nat_least: 0")]
    [InlineData("gear", "measure: profile_shift ^ 3\nat_least: 0")]
    [InlineData("gear", "measure: face_width - module\nat_least: 0 mm")]
    [InlineData("gear", "measure: face_width\nequals: 0 mm")]
    [InlineData("gear", "measure: min(profile_shift, 0.5)\nat_least: 0.5")]
    [InlineData("gear", "measure: cos(pressure_angle)\nat_least: 0.9")]
    [InlineData("o_ring", "measure: motion\none_of: [static, rotating]")]
    [InlineData("mesh", "measure: kind == 'internal' or same_rack\nequals: true")]
    [InlineData("gear", "measure: teeth\nat_least: 12\nwhen: kind == 'external' and teeth < 100")]
    [InlineData("gear", "measure: teeth\nat_least: 12\nwhen: teeth >= 17 and teeth <= 17")]
    [InlineData("gear", "measure: teeth\nat_least: 12\nwhen: teeth > 17 and teeth < 19")]
    [InlineData("gear", "measure: teeth\nat_least: 12\nwhen: kind not in ('internal') or tip_diameter > root_diameter")]
    public void A_limit_that_some_design_breaks_is_left_alone(string kind, string body) => Assert.Empty(Load(body, kind).Diagnostics);

    [Theory]
    [InlineData("gear", "false")]
    [InlineData("gear", "teeth > 30 and teeth < 20")]
    [InlineData("gear", "teeth > 30 and not (teeth > 20)")]
    [InlineData("gear", "teeth < 0")]
    [InlineData("gear", "face_width < module * 0 and face_width < 0 mm")]
    [InlineData("gear", "kind == 'internal' and kind == 'external'")]
    [InlineData("gear", "kind != 'internal' and kind != 'external'")]
    [InlineData("gear", "on_planet and not on_planet")]
    [InlineData("gear", "teeth > module / 1 mm and module / 1 mm > teeth")]
    [InlineData("gear", "1 > 2")]
    public void A_condition_that_nothing_meets_is_an_error(string kind, string when)
    {
        var load = Load($"measure: teeth\nat_least: 12\nwhen: {when}", kind);

        var never = Assert.Single(load.Diagnostics);
        Assert.Equal((RuleCodes.NeverApplies, Severity.Error, 14), (never.Code, never.Severity, never.Span.Start.Line));
        Assert.Equal($"The condition `{when}` of `house/tried` holds for no gear, so the rule judges nothing.", never.Message);
        Assert.Equal("Correct the condition, or remove the rule.", never.Hint);
    }

    // Column 19: four spaces, `when: kind == `, then the word in its quotes.
    [Fact]
    public void A_word_that_the_quantity_never_has_is_shown_at_its_place()
    {
        var load = Load("measure: teeth\nat_least: 12\nwhen: kind == 'interal'", "gear");

        Assert.Equal([RuleCodes.UnknownWord, RuleCodes.NeverApplies], load.Diagnostics.OrderByDescending(d => d.Code, StringComparer.Ordinal).Select(d => d.Code));
        var word = Assert.Single(load.Diagnostics, d => d.Code == RuleCodes.UnknownWord);
        Assert.Equal((Severity.Warning, 14, 19, "`kind` is never `interal`.", "Did you mean `internal`?"), (word.Severity, word.Span.Start.Line, word.Span.Start.Column, word.Message, word.Hint));
    }

    [Theory]
    [InlineData("measure: motion\none_of: [static, rotatin]")]
    [InlineData("measure: squeeze\nat_least: {by: motion, static: 12 %, rotatin: 8 %}")]
    [InlineData("measure: squeeze\nat_least: 12 %\nwhen: motion in ('static', 'rotatin')")]
    public void A_word_too_many_is_a_warning(string body)
    {
        var load = Load(body, "o_ring");

        var word = Assert.Single(load.Diagnostics);
        Assert.Equal((RuleCodes.UnknownWord, Severity.Warning, "Did you mean `rotating`?"), (word.Code, word.Severity, word.Hint));
        Assert.NotNull(load.Rules);
    }

    [Fact]
    public void An_override_that_switches_a_rule_off_by_its_limit_is_refused()
    {
        var load = Try.Load(
            """
            pack: house
            version: 1.0.0
            title: House
            rules:
              - {id: rating/bending-safety, override: true, at_least: 0, reason: The customer tested ten of them., approved_by: A. Designer}
            """);

        Assert.Null(load.Rules);
        Assert.Contains(load.Diagnostics, d => d.Code == RuleCodes.NeverFails && d.Span.Start.Line == 5);
    }

    // What is asked of a house the shipped packs keep themselves.
    [Fact]
    public void No_shipped_rule_is_idle()
    {
        var found = new List<Diagnostic>();
        foreach (var rule in RulePacks.Shipped.Rules!.Rules)
            IdleCheck.Check(rule, rule.Program!.Draft, found.Add);

        Assert.Equal("", string.Join('\n', found.Select(d => $"{d.Span}: {d.Message}")));
    }

    [Fact]
    public void A_house_rule_that_applied_to_nothing_is_named_with_its_place()
    {
        var load = Try.Load(Try.Pack("measure: total_contact_ratio\nat_least: 1.1\nwhen: kind == 'internal'"));
        var use = new RuleUse(load.Rules!);

        var warning = Assert.Single(use.Warnings);
        Assert.Equal((RuleCodes.AppliedToNothing, Severity.Warning, "rules/house.yaml", 5), (warning.Code, warning.Severity, warning.Span.File, warning.Span.Start.Line));
        Assert.Equal("The house rule `house/tried` applied to nothing in the specs judged: no mesh met `kind == 'internal'` and had what it measures.", warning.Message);

        use.Applied("mesh/contact-ratio");
        Assert.True(use.IsOpen);
        use.Applied("house/tried");
        Assert.False(use.IsOpen);
        Assert.Empty(use.Warnings);
    }

    // That a range has no seals is no fault of the rules on seals, whatever their limits.
    [Fact]
    public void Shipped_rules_are_watched_only_where_a_house_changes_their_condition()
    {
        static string Pack(string change) =>
            $$"""
            pack: house
            version: 1.0.0
            title: House
            rules:
              - {id: seal/gland-fill, override: true, {{change}}, reason: The customer tested ten of them., approved_by: A. Designer}
            """;

        Assert.Empty(new RuleUse(RulePacks.Shipped.Rules!).Warnings);
        Assert.Empty(new RuleUse(Try.Load(Pack("at_most: 80 %")).Rules!).Warnings);
        Assert.Equal(["rules/house.yaml"], new RuleUse(Try.Load(Pack("when: motion == 'rotating'")).Rules!).Warnings.Select(w => w.Span.File));
    }
}
