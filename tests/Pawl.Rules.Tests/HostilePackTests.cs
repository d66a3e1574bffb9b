using System.Globalization;
using CsCheck;

namespace Pawl.Rules.Tests;

/// <summary>Packs that nobody wrote in earnest.</summary>
public class HostilePackTests
{
    private static readonly string Sound = Try.Pack(
        "when: kind == 'internal'\nmeasure: total_contact_ratio\nat_least: {by: kind, internal: 1.2, default: 1}\nexamples: [{given: {kind: internal, total_contact_ratio: 1.5}, outcome: conforms}]");

    // Any cut, doubling or swap of lines gives a set or diagnostics, never an exception.
    [Fact]
    public void A_mangled_pack_gives_diagnostics_and_no_exception() =>
        Gen.Select(Gen.Int[0, Sound.Length - 1], Gen.Int[0, 30], Gen.OneOf("", "\t", "{", "]", ": ", "- ", "&a ", "*a", "null", "~", "\n", "'", "\"", "!!int ", "<<: ", "\u0000", "é"))
            .Sample((at, cut, put) =>
            {
                var text = Sound[..at] + put + Sound[Math.Min(Sound.Length, at + cut)..];
                var load = RulePacks.LoadTexts(("rules/house.yaml", text));

                Assert.True(load.Rules is not null || !load.Diagnostics.IsEmpty);
            }, iter: 3000);

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("rules")]
    [InlineData("pack: house\nversion: 1.0.0\ntitle: x\nrules: {a: 1}")]
    [InlineData("pack: house\nversion: 1.0.0\ntitle: x\nrules: [1, [2], ~]")]
    [InlineData("pack: house\nversion: 1.0.0\ntitle: x\nrules: [{override: true}]")]
    [InlineData("pack: [house]\nversion: {}\ntitle: []\nrules: []")]
    public void What_is_no_pack_is_refused(string text)
    {
        var load = RulePacks.LoadTexts(("rules/house.yaml", text));

        Assert.Null(load.Rules);
        Assert.NotEmpty(load.Diagnostics);
    }

    [Fact]
    public void An_empty_pack_is_told_how_a_pack_begins() =>
        Assert.Contains("`pack:`", Assert.Single(RulePacks.LoadTexts(("rules/house.yaml", "# to do\n")).Diagnostics).Hint, StringComparison.Ordinal);

    // 2.5 is 2.5 on every desk, also where the decimal mark is a comma or the i has no dot.
    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void A_pack_reads_alike_in_every_culture(string culture)
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
        try
        {
            var finding = Try.Put(Try.Rule("measure: TOTAL_contact_ratio * 1.5\nat_least: 1.25".Replace("TOTAL", "total", StringComparison.Ordinal)), Try.ContactRatio(2.5));

            Assert.Equal(2, finding.Margin!.Value, 1e-12); // (3.75 − 1.25)/1.25
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    // Linear in the rules: 500 of them on 40 meshes. A generous bound, for the machine may be busy.
    [Fact]
    public void Five_hundred_rules_are_judged_in_linear_time()
    {
        var rules = string.Join('\n', Enumerable.Range(0, 500).Select(i => string.Create(
            CultureInfo.InvariantCulture,
            $"  - {{id: house/r{i}, title: t, applies_to: mesh, measure: total_contact_ratio, at_least: 1.{i}, severity: error, source: {{method: closed form, limit: closed form}}, why: w, mend: m}}")));
        var load = RulePacks.LoadTexts(("rules/house.yaml", $"pack: house\nversion: 1.0.0\ntitle: House\nrules:\n{rules}"));
        Assert.Empty(load.Diagnostics);
        var meshes = Enumerable.Range(0, 40).Select(_ => Try.ContactRatio(1.5)).ToArray();
        var analysis = Try.Analysis([.. meshes]);
        Judge.Of(analysis, load.Rules!, Try.Today);

        var watch = System.Diagnostics.Stopwatch.StartNew();
        var judgement = Judge.Of(analysis, load.Rules!, Try.Today);

        Assert.True(judgement.Findings.Length >= 20_000);
        Assert.True(watch.ElapsedMilliseconds < 500, $"{judgement.Findings.Length} findings took {watch.ElapsedMilliseconds} ms");
    }
}
