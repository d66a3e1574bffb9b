using Pawl.Analysis.Core;
using Pawl.Rules.Expressions;
using Pawl.Rules.Packs;
using Pawl.Specs.Text;

namespace Pawl.Rules.Tests;

/// <summary>What every shipped rule must carry, and its examples put to it.</summary>
public class ShippedPackTests
{
    public static TheoryData<string> Ids => [.. RulePacks.Shipped.Rules!.Rules.Select(r => r.Id)];

    [Fact]
    public void The_shipped_packs_load_without_a_diagnostic()
    {
        var shipped = RulePacks.Shipped;

        Assert.Equal("", string.Join('\n', shipped.Diagnostics.Select(d => $"{d.Span}: {d.Code}: {d.Message} {d.Hint}")));
        Assert.Equal(["train", "mesh", "material", "rating", "bearing", "shaft", "spline", "key", "vibration", "interface", "lubrication", "fit", "stack", "joint", "pin", "seal", "plausible", "agreement", "completeness", "concession"], shipped.Rules!.Packs.Select(p => p.Name));
        Assert.All(shipped.Rules.Packs, p => Assert.Matches("^[0-9a-f]{64}$", p.Sha256));
        Assert.All(shipped.Rules.Packs, p => Assert.StartsWith("shipped:rules/", p.Path, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_shipped_rule_says_why_how_to_mend_it_and_where_it_comes_from(string id)
    {
        var rule = RulePacks.Shipped.Rules!.Find(id)!;

        foreach (var text in new[] { rule.Title, rule.Why, rule.Mend, rule.Source.Method, rule.Source.Limit, rule.LimitText })
            Assert.False(string.IsNullOrWhiteSpace(text));
        Assert.EndsWith(".", rule.Why, StringComparison.Ordinal);
        Assert.EndsWith(".", rule.Mend, StringComparison.Ordinal);
        Assert.False(rule.Severity == Severity.Error && rule.Source.Certainty == Certainty.Memory);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_shipped_rule_has_a_case_that_conforms_and_one_that_fails(string id)
    {
        var outcomes = RulePacks.Shipped.Rules!.Find(id)!.Examples.Select(e => e.Outcome).ToHashSet();

        Assert.Superset(new HashSet<Outcome> { Outcome.Conforms, Outcome.Fails }, outcomes);
    }

    // The numbers are worked by hand in the comments of the packs, from the definition of a margin.
    [Theory]
    [MemberData(nameof(Ids))]
    public void The_examples_of_every_shipped_rule_come_out_as_the_pack_says(string id)
    {
        var rule = RulePacks.Shipped.Rules!.Find(id)!;

        foreach (var example in rule.Examples)
        {
            var complaints = new List<Diagnostic>();
            var subject = ExampleReader.Read(rule.AppliesTo, example, complaints.Add);
            var finding = Judging.RuleEvaluator.Put(rule, subject);

            Assert.Empty(complaints);
            Assert.Equal((example.Span, example.Outcome), (example.Span, finding.Outcome));
            if (example.Margin is { } margin)
                Assert.Equal(margin, finding.Margin!.Value, 0.0005);
            else
                Assert.True(finding.Margin is null, $"{example.Span}: the margin {finding.Margin} is not stated");
        }
    }

    // NCalc costs about 24 ms at its first use; a check with the shipped rules alone does without.
    [Theory]
    [MemberData(nameof(Ids))]
    public void No_shipped_rule_needs_the_full_grammar(string id)
    {
        var draft = RulePacks.Shipped.Rules!.Find(id)!.Program!.Draft;

        foreach (var node in new[] { draft.When, draft.Measure, draft.AtLeast, draft.AtMost })
        {
            if (node is Specs.Yaml.YamlScalar scalar)
                Assert.NotNull(SimpleForms.Read(Tokeniser.Read(scalar.Value, out _)!));
        }
    }

    [Fact]
    public void There_are_rules_for_every_kind_of_subject()
    {
        var covered = RulePacks.Shipped.Rules!.Rules.Select(r => r.AppliesTo.Name).ToHashSet();

        // The entries of a list are judged by what they are part of.
        string[] entries = ["centring_link", "dowelled_part", "joint_layer"];
        Assert.Equal(JudgedKinds.All.Select(k => k.Name).Order(), covered.Concat(entries).Order());
    }

    [Fact]
    public void Every_code_of_a_rule_pack_is_explained()
    {
        var codes = typeof(RuleCodes).GetFields().Select(f => (string)f.GetValue(null)!).Order(StringComparer.Ordinal);

        Assert.Equal(codes, RuleDiagnosticCatalogue.All.Select(e => e.Code).Order(StringComparer.Ordinal));
        Assert.All(RuleDiagnosticCatalogue.All, e => Assert.All(new[] { e.Title, e.Meaning, e.Mend, e.Example }, t => Assert.False(string.IsNullOrWhiteSpace(t))));
        Assert.All(RuleDiagnosticCatalogue.All, e => Assert.Same(e, RuleDiagnosticCatalogue.Find(e.Code)));
    }
}
