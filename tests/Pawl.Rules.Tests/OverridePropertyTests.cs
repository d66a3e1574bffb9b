using System.Globalization;
using CsCheck;

namespace Pawl.Rules.Tests;

/// <summary>What must hold of overrides whatever the numbers: the order of the real numbers is the judge.</summary>
public class OverridePropertyTests
{
    // Shipped rules with one or two constant limits that may be weakened, and the limits as numbers in the unit written.
    private static readonly (string Id, string Key, double Limit, string Unit)[] Shipped =
        [.. RulePacks.Shipped.Rules!.Rules.Where(r => r.Concedable).SelectMany(r => r.LimitText.Split(", ").Select(text => (r.Id, text)))
            .Select(each => (each.Id, Words: each.text.Split(' ')))
            .Where(each => each.Words is ["at", "least" or "most", _] or ["at", "least" or "most", _, _])
            .Select(each => (each.Id, each.Words, IsNumber: double.TryParse(each.Words[2], CultureInfo.InvariantCulture, out var limit), limit))
            .Where(each => each.IsNumber)
            .Select(each => (each.Id, $"at_{each.Words[1]}", each.limit, each.Words.Length == 4 ? " " + each.Words[3] : ""))];

    private static readonly Gen<((string Id, string Key, double Limit, string Unit) Shipped, double Shift)> Shifted =
        Gen.Select(Gen.Int[0, Shipped.Length - 1].Select(i => Shipped[i]), Gen.Double[-6, 3].Select(power => Math.Pow(10, power)));

    private static RuleSetLoad Override(string id, string key, double limit, string unit) => Try.Load(
        $"""
        pack: house
        version: 1.0.0
        title: House
        rules:
          - id: {id}
            override: true
            {key}: {limit.ToString("R", CultureInfo.InvariantCulture)}{unit}
            reason: The customer tested ten of them.
            approved_by: A. Designer
        """);

    private static double Shift(double limit, double by) => limit + (by * Math.Max(Math.Abs(limit), 1e-3));

    [Fact]
    public void There_are_shipped_limits_to_try() => Assert.True(Shipped.Length > 40, $"{Shipped.Length}");

    [Fact]
    public void A_looser_constant_is_always_counted_as_weakened() =>
        Shifted.Sample((shipped, shift) =>
        {
            var load = Override(shipped.Id, shipped.Key, Shift(shipped.Limit, shipped.Key == "at_least" ? -shift : shift), shipped.Unit);

            // A limit so loose that nothing can break it is refused; any other is in force and counted.
            if (load.Rules is null)
            {
                Assert.Contains(load.Diagnostics, d => d.Code == RuleCodes.NeverFails);
                return;
            }

            Assert.Equal([shipped.Id], load.Rules.Weakened.Select(r => r.Id));
            Assert.Contains(load.Diagnostics, d => d.Code == RuleCodes.Weakened);
        }, iter: 400);

    [Fact]
    public void A_stricter_constant_never_is() =>
        Shifted.Sample((shipped, shift) =>
        {
            var load = Override(shipped.Id, shipped.Key, Shift(shipped.Limit, shipped.Key == "at_least" ? shift : -shift), shipped.Unit);

            // A window may close; the pack is refused then.
            if (load.Rules is null)
            {
                Assert.Contains(load.Diagnostics, d => d.Code == RuleCodes.EmptyWindow);
                return;
            }

            Assert.Empty(load.Rules.Weakened);
            Assert.False(load.Rules.Find(shipped.Id)!.Deviation!.IsWeakening);
        }, iter: 400);

    // Brute force: whatever the house passes and the shipped rule refuses shows that it was weakened.
    [Fact]
    public void A_rule_that_is_not_counted_passes_nothing_that_the_shipped_one_refuses() =>
        Gen.Select(
            Gen.OneOf("at_least", "at_most", "equals"), Gen.Double[0.5, 2], Gen.OneOf("", "kind == 'internal'", "true", "total_contact_ratio > 1.4"),
            Gen.Double[0.5, 2]).Sample((key, limit, when, value) =>
        {
            var body = $"{key}: {limit.ToString("R", CultureInfo.InvariantCulture)}";
            var load = Try.Load(
                $$"""
                pack: house
                version: 1.0.0
                title: House
                rules:
                  - {id: mesh/contact-ratio, override: true, {{body}}, reason: The customer tested ten of them., approved_by: A. Designer{{(when.Length == 0 ? "" : $", when: \"{when}\"")}}}
                """);
            var mesh = Try.ContactRatio(value);
            mesh.Add(Try.Text(Analysis.Gears.MeshQuantities.Kind, "external"));
            if (load.Rules is null)
            {
                Assert.Contains(load.Diagnostics, d => d.Code == RuleCodes.EmptyWindow);
                return;
            }

            var house = load.Rules.Find("mesh/contact-ratio")!;

            var isLaxer = Try.Put(house.Shipped!, mesh).Outcome == Outcome.Fails && Try.Put(house, mesh).Outcome != Outcome.Fails;

            Assert.True(!isLaxer || house.Deviation!.IsWeakening);
        }, iter: 400);
}
