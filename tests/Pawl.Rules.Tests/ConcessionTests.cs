using Pawl.Analysis;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Rules.Tests;

/// <summary>Concessions: ISO 9000, permission to use what does not conform.</summary>
public class ConcessionTests
{
    private const string Rule = "mesh/contact-ratio";
    private const string Subject = "meshes.a~b";

    // (1.14 − 1.2)/1.2 = −0.05.
    private static Judgement Judged(DateOnly expires, string worst = "-100 %", string rule = Rule, string subject = Subject, double ratio = 1.14) =>
        Judge.Of(
            Try.Analysis([Try.ContactRatio(ratio)], Try.Concession(rule, subject, expires, worst)), RulePacks.Shipped.Rules!, Try.Today);

    private static Finding Of(Judgement judgement, string id) => Assert.Single(judgement.Findings, f => f.Rule.Id == id);

    [Fact]
    public void It_covers_a_failure_and_keeps_its_margin()
    {
        var judgement = Judged(Try.Today.AddDays(30));

        var finding = Of(judgement, Rule);
        Assert.Equal(Outcome.UnderConcession, finding.Outcome);
        Assert.Equal(-0.05, finding.Margin!.Value, 1e-12);
        Assert.Equal(judgement.Analysis.Spec.Concessions[0], finding.Concession);
        Assert.All(judgement.Findings.Where(f => f.Rule.Pack == "concession"), f => Assert.True(f.Outcome is Outcome.Conforms or Outcome.NotApplicable));
    }

    [Fact]
    public void It_holds_on_the_day_of_expiry()
    {
        var judgement = Judged(Try.Today);

        Assert.Equal(Outcome.UnderConcession, Of(judgement, Rule).Outcome);
        Assert.Equal(Outcome.Conforms, Of(judgement, "concession/expired").Outcome);
        Assert.Equal(0, Of(judgement, "concession/expired").Margin);
    }

    [Fact]
    public void It_has_run_out_on_the_day_after()
    {
        var judgement = Judged(Try.Today.AddDays(-1));

        Assert.Equal(Outcome.Fails, Of(judgement, Rule).Outcome);
        var expired = Of(judgement, "concession/expired");
        Assert.Equal((Outcome.Fails, Severity.Error), (expired.Outcome, expired.Rule.Severity));
        Assert.Equal(-1, expired.Margin);
        Assert.Equal(Try.At(6), expired.Span);
        Assert.Equal(Outcome.Conforms, Of(judgement, "concession/unused").Outcome);
    }

    [Fact]
    public void One_for_a_rule_that_holds_is_unused()
    {
        var judgement = Judged(Try.Today, ratio: 1.5);

        var unused = Of(judgement, "concession/unused");
        Assert.Equal((Outcome.Fails, Severity.Warning), (unused.Outcome, unused.Rule.Severity));
        Assert.Equal(Outcome.Conforms, Of(judgement, Rule).Outcome);
    }

    [Fact]
    public void The_second_of_two_for_the_same_failure_is_unused()
    {
        var judgement = Judge.Of(
            Try.Analysis([Try.ContactRatio(1.14)], Try.Concession(Rule, Subject, Try.Today), Try.Concession(Rule, Subject, Try.Today)),
            RulePacks.Shipped.Rules!, Try.Today);

        Assert.Equal([Outcome.Conforms, Outcome.Fails], judgement.Findings.Where(f => f.Rule.Id == "concession/unused").Select(f => f.Outcome));
        Assert.Equal(2, judgement.Concessions.Select(c => c.Path).Distinct().Count());
    }

    [Fact]
    public void A_misspelt_rule_is_an_error_with_the_nearest_id()
    {
        var judgement = Judged(Try.Today, rule: "mesh/contact-ration");

        var unknown = Of(judgement, "concession/unknown-rule");
        Assert.Equal((Outcome.Fails, Severity.Error), (unknown.Outcome, unknown.Rule.Severity));
        Assert.Equal(["did you mean `mesh/contact-ratio`?"], unknown.Reasons);
        Assert.Equal(Outcome.Fails, Of(judgement, Rule).Outcome);
        Assert.Equal(Outcome.NotApplicable, Of(judgement, "concession/unused").Outcome);
    }

    [Fact]
    public void A_misspelt_subject_is_an_error_with_the_nearest_path()
    {
        var judgement = Judged(Try.Today, subject: "meshes.a~c");

        var unknown = Of(judgement, "concession/unknown-subject");
        Assert.Equal(Outcome.Fails, unknown.Outcome);
        Assert.Equal(["did you mean `meshes.a~b`?"], unknown.Reasons);
        Assert.Equal(Outcome.Fails, Of(judgement, Rule).Outcome);
    }

    // The margin is −5 %.
    [Theory]
    [InlineData("-6 %", Outcome.UnderConcession, Outcome.Conforms)]
    [InlineData("-5 %", Outcome.UnderConcession, Outcome.Conforms)]
    [InlineData("-4 %", Outcome.Fails, Outcome.Fails)]
    public void The_worst_margin_that_is_accepted_binds(string worst, Outcome outcome, Outcome exceeded)
    {
        var judgement = Judged(Try.Today, worst);

        Assert.Equal(outcome, Of(judgement, Rule).Outcome);
        Assert.Equal(exceeded, Of(judgement, "concession/exceeded").Outcome);
    }

    [Fact]
    public void A_rule_that_guards_what_no_permission_makes_safe_cannot_be_conceded()
    {
        var judgement = Judged(Try.Today, rule: "mesh/contact-lost", ratio: 0.9);

        Assert.Equal(Outcome.Fails, Of(judgement, "mesh/contact-lost").Outcome);
        Assert.Equal(Outcome.Fails, Of(judgement, "concession/not-concedable").Outcome);
    }

    [Fact]
    public void A_concession_cannot_be_conceded()
    {
        var judgement = Judged(Try.Today, rule: "concession/expired", subject: "concessions.x");

        Assert.Equal(Outcome.Fails, Of(judgement, "concession/not-concedable").Outcome);
        Assert.Equal(Outcome.Fails, Of(judgement, "concession/unknown-subject").Outcome);
    }

    [Fact]
    public void One_for_a_rule_that_is_not_evaluated_is_not_evaluated()
    {
        var mesh = Try.Mesh(Subject, Try.Missing(Analysis.Gears.MeshQuantities.TotalContactRatio, "module is not stated"));

        var judgement = Judge.Of(Try.Analysis([mesh], Try.Concession(Rule, Subject, Try.Today)), RulePacks.Shipped.Rules!, Try.Today);

        var unused = Of(judgement, "concession/unused");
        Assert.Equal(Outcome.NotEvaluated, unused.Outcome);
        Assert.Equal(["module is not stated"], unused.Reasons);
    }

    // A word is right or wrong as a whole: broken, it counts as −100 %, and −100 % − (−100 %) = 0.
    [Theory]
    [InlineData("-100 %", Outcome.UnderConcession, Outcome.Conforms, null)]
    [InlineData("-150 %", Outcome.UnderConcession, Outcome.Conforms, null)]
    [InlineData("-99 %", Outcome.Fails, Outcome.Fails, "house/tried has no margin: it is kept or broken as a whole, which a worst margin of -100 % accepts")]
    public void A_rule_without_a_margin_is_conceded_as_a_whole(string worst, Outcome outcome, Outcome exceeded, string? reason)
    {
        var mesh = Try.Mesh(Subject, Try.Text(Analysis.Gears.MeshQuantities.Kind, "internal"));
        var rules = Try.Load(Try.Pack("measure: kind\nequals: external")).Rules!;

        var judgement = Judge.Of(Try.Analysis([mesh], Try.Concession("house/tried", Subject, Try.Today, worst)), rules, Try.Today);

        Assert.Equal(outcome, Of(judgement, "house/tried").Outcome);
        Assert.Equal(exceeded, Of(judgement, "concession/exceeded").Outcome);
        Assert.Equal(reason is null ? [] : [reason], Of(judgement, "concession/exceeded").Reasons);
    }

    // The variant of the spec is T1.
    [Theory]
    [InlineData(new string[0], Outcome.UnderConcession, 1)]
    [InlineData(new[] { "T1" }, Outcome.UnderConcession, 1)]
    [InlineData(new[] { "T0", "T1" }, Outcome.UnderConcession, 1)]
    [InlineData(new[] { "T0" }, Outcome.Fails, 0)]
    [InlineData(new[] { "t1" }, Outcome.Fails, 0)]
    public void It_covers_the_variants_that_it_names_and_is_not_stale_elsewhere(string[] variants, Outcome outcome, int concessions)
    {
        var concession = Try.Concession(Rule, Subject, Try.Today.AddDays(-1000 * (1 - concessions)), "-5 %", [.. variants]);

        var judgement = Judge.Of(Try.Analysis([Try.ContactRatio(1.14)], concession), RulePacks.Shipped.Rules!, Try.Today);

        Assert.Equal(outcome, Of(judgement, Rule).Outcome);
        Assert.Equal(concessions, judgement.Concessions.Length);
        Assert.DoesNotContain(judgement.Findings, f => f.Rule.Pack == "concession" && f.Outcome == Outcome.Fails);
    }

    // ISO 8601 calendar dates; 2027 is no leap year.
    [Theory]
    [InlineData("2027-02-29")]
    [InlineData("31.03.2027")]
    [InlineData("2027-3-31")]
    [InlineData("soon")]
    public void A_date_that_cannot_be_read_is_bad_input(string date)
    {
        var diagnostics = new List<Diagnostic>();
        var root = YamlReader.Read("c.yaml", System.Text.Encoding.UTF8.GetBytes($"expires: {date}"), diagnostics)!;

        Assert.Null(new MapReader(root, "concessions[0]", diagnostics).Date("expires", required: true));
        Assert.Equal(Severity.Error, Assert.Single(diagnostics).Severity);
    }

    [Fact]
    public void Concessions_are_a_kind_of_subject_that_rules_and_explanations_know()
    {
        Assert.Same(ConcessionQuantities.Kind, JudgedKinds.Find("concession"));
        Assert.All(SubjectKinds.All, kind => Assert.Same(kind, JudgedKinds.Find(kind.Name)));
    }
}
