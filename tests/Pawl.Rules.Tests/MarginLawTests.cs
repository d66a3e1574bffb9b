using CsCheck;
using Pawl.Analysis.Gears;

namespace Pawl.Rules.Tests;

/// <summary>What must hold of margins whatever the numbers.</summary>
public class MarginLawTests
{
    private static readonly Gen<double> Value = Gen.Double[-10, 10];

    private static Finding Put(string limits, double nominal, double spread)
    {
        var mesh = Try.Mesh("meshes.a~b", Try.Toleranced(MeshQuantities.OverlapRatio, nominal, nominal - spread, nominal + spread));
        return Try.Put(Try.Rule($"measure: overlap_ratio\n{limits}"), mesh);
    }

    private static string Text(double value) => value.ToString("R", System.Globalization.CultureInfo.InvariantCulture);

    [Fact]
    public void A_rule_fails_exactly_when_its_margin_is_negative() =>
        Gen.Select(Value, Gen.Double[0, 2], Value, Gen.Bool).Sample((nominal, spread, limit, isLower) =>
        {
            var finding = Put($"{(isLower ? "at_least" : "at_most")}: {Text(limit)}", nominal, spread);

            Assert.Equal(finding.Margin < 0, finding.Outcome == Outcome.Fails);
            Assert.Equal(finding.Margin >= 0, finding.Outcome == Outcome.Conforms);
            // Brute force: the worst end of the value against the limit.
            var isWithin = isLower ? nominal - spread >= limit : nominal + spread <= limit;
            if (Math.Abs(isLower ? nominal - spread - limit : nominal + spread - limit) > 1e-6)
                Assert.Equal(isWithin, finding.Outcome == Outcome.Conforms);
        }, iter: 300);

    // For positive limits: (v − l)/l falls as l rises, for a value that is not negative.
    [Fact]
    public void Raising_a_lower_limit_never_raises_the_margin() =>
        Gen.Select(Gen.Double[0, 10], Gen.Double[0.01, 10], Gen.Double[0, 5]).Sample((value, limit, rise) =>
            Assert.True(Put($"at_least: {Text(limit + rise)}", value, 0).Margin <= Put($"at_least: {Text(limit)}", value, 0).Margin + 1e-9), iter: 300);

    [Fact]
    public void A_wider_tolerance_never_raises_the_margin() =>
        Gen.Select(Value, Gen.Double[0, 2], Gen.Double[0, 2], Gen.Double[0.1, 5]).Sample((nominal, spread, more, limit) =>
        {
            var limits = $"at_least: -{Text(limit)}\nat_most: {Text(limit)}";

            Assert.True(Put(limits, nominal, spread + more).Margin <= Put(limits, nominal, spread).Margin + 1e-9);
        }, iter: 300);

    [Fact]
    public void A_window_is_as_good_as_its_worse_side() =>
        Gen.Select(Value, Gen.Double[-5, 0], Gen.Double[0.01, 5]).Sample((value, low, high) =>
        {
            var both = Put($"at_least: {Text(low)}\nat_most: {Text(high)}", value, 0.1).Margin!.Value;
            var lower = Put($"at_least: {Text(low)}", value, 0.1).Margin!.Value;
            var upper = Put($"at_most: {Text(high)}", value, 0.1).Margin!.Value;

            Assert.Equal(Math.Min(lower, upper), both);
        }, iter: 300);

    // Against all corners by brute force: value a − b, limit b/2, both with tolerances.
    [Fact]
    public void The_worst_margin_is_the_least_over_all_corners() =>
        Gen.Select(Gen.Double[5, 10], Gen.Double[1, 4], Gen.Double[0, 0.5], Gen.Double[0, 0.5]).Sample((a, b, da, db) =>
        {
            var mesh = Try.Mesh(
                "meshes.a~b", Try.Toleranced(MeshQuantities.TotalContactRatio, a, a - da, a + da),
                Try.Toleranced(MeshQuantities.OverlapRatio, b, b - db, b + db));
            var rule = Try.Rule("measure: total_contact_ratio - overlap_ratio\nat_least: overlap_ratio / 2");

            var worst = double.PositiveInfinity;
            foreach (var x in new[] { a - da, a + da })
            {
                foreach (var y in new[] { b - db, b + db })
                    worst = Math.Min(worst, ((x - y) - (y / 2)) / (y / 2));
            }

            Assert.Equal(worst, Try.Put(rule, mesh).Margin!.Value, 1e-9);
        }, iter: 200);

    [Fact]
    public void Judging_twice_gives_the_same_findings()
    {
        var analysis = Try.Analysis([Try.ContactRatio(1.14)], Try.Concession("mesh/contact-ratio", "meshes.a~b", Try.Today));
        var rules = RulePacks.Shipped.Rules!;

        var (first, second) = (Judge.Of(analysis, rules, Try.Today), Judge.Of(analysis, rules, Try.Today));

        Assert.Equal(
            first.Findings.Select(f => (f.Rule.Id, f.Subject.Path, f.Outcome, f.Margin, f.Span)),
            second.Findings.Select(f => (f.Rule.Id, f.Subject.Path, f.Outcome, f.Margin, f.Span)));
    }

    [Fact]
    public void Threads_may_judge_with_the_same_rules()
    {
        var rules = RulePacks.Shipped.Rules!;

        Parallel.For(0, 64, i =>
        {
            var ratio = 1 + (i / 100.0);
            var finding = Judge.Of(Try.Analysis([Try.ContactRatio(ratio)]), rules, Try.Today).Findings.First(f => f.Rule.Id == "mesh/contact-ratio");
            Assert.Equal((ratio - 1.2) / 1.2, finding.Margin!.Value, 1e-8);
        });
    }
}
