using System.Text;
using Pawl.Analysis;
using Pawl.Specs;

namespace Pawl.Rules.Tests;

/// <summary>What builders hold of the end play of deep groove ball bearings.</summary>
public class EndPlayOfTheTradeTests
{
    // Common practice, no source: about a thousandth of an inch of end play is accepted, any preload of a deep groove bearing is not. Size and
    // mate are of steel, so that the temperature changes nothing.
    [Theory]
    [InlineData("0.001 in", "")]
    [InlineData("0 in", "")]
    [InlineData("0.0005 in", "")]
    [InlineData("-0.0005 in", "stack/end-play stack/no-preload-cold stack/no-preload-hot stack/no-preload-running")]
    [InlineData("0.0025 in", "stack/end-play")]
    public void A_thousandth_of_an_inch_is_accepted_and_preload_is_not(string play, string rules)
    {
        var spec =
            $$"""
            pawl: 1
            gearbox: {family: Test, variant: Play}
            duty:
              oil: {running: 70 °C, coldest: -20 °C, hottest: 90 °C}
            stacks:
              bearing:
                window: {min: 0 in, max: 0.001 in}
                contributors:
                  gap: {size: {{(play.StartsWith('-') ? "1 in" : $"{1 + double.Parse(play[..^3], System.Globalization.CultureInfo.InvariantCulture):0.0000} in")}}, coefficient: 1}
                  ring: {size: {{(play.StartsWith('-') ? "1.0005 in" : "1 in")}}, coefficient: -1}
            """;
        var load = new SpecLoader(".", []).Load("play.yaml", Encoding.UTF8.GetBytes(spec));
        Assert.True(load.Spec is not null, string.Join('\n', load.Diagnostics));
        var failing = Judge.Of(GearboxAnalyser.Analyse(load.Spec), RulePacks.Shipped.Rules!, new(2026, 1, 15)).Findings
            .Where(finding => finding.Outcome == Outcome.Fails && finding.Rule.Id.StartsWith("stack/", StringComparison.Ordinal)
                && finding.Rule.Severity == Specs.Text.Severity.Error);

        Assert.Equal(rules, string.Join(' ', failing.Select(finding => finding.Rule.Id).Order(StringComparer.Ordinal)));
    }
}
