using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using CsCheck;
using Pawl.Analysis;
using Pawl.Analysis.Core;
using Pawl.Cli.Commands;
using Pawl.Rules;
using Pawl.Specs;

namespace Pawl.Cli.Tests;

/// <summary>Starters with numbers, steels and treatments changed at random and lines left out: refused, judged or not evaluated, never a crash.</summary>
public partial class SpoiledStarterTests
{
    private static readonly string[] Starters = ["simple.yaml", "stepped.yaml", "pair.yaml"];

    private static readonly string[] Treatments =
        ["case-hardened", "gas-nitrided", "through-hardened", "induction-hardened", "normalised", "nitrocarburised", "precipitation-hardened"];

    private static readonly double[] Factors = [0, -1, 1000, 0.001, 10, 0.1, 0.7, 1.3, 1.05];

    [Fact]
    public void A_spoiled_spec_is_refused_or_judged_and_gives_its_reasons()
    {
        using var place = new Workplace();
        Assert.Equal(0, place.Run("new", "workshop", "--project").Code);
        var loader = new SpecLoader(place.Folder, ["specs/catalogue/materials.yaml", "specs/catalogue/lubricants.yaml"]);

        var judged = 0;
        Gen.Select(Gen.Int[0, Starters.Length - 1], Gen.Int[0, int.MaxValue].Array[1, 6], Gen.Int[0, 5]).Sample(
            (starter, choices, more) =>
            {
                var load = loader.Load("spoiled.yaml", Encoding.UTF8.GetBytes(Spoil(NewCommand.Starter(Starters[starter]), choices, more)));
                if (load.Spec is null)
                {
                    // A file that lost its variant is a base for others, which is no fault of its own.
                    Assert.True(load.IsBase || load.Diagnostics.Any(), "refused without a reason");
                    return;
                }

                var analysis = GearboxAnalyser.Analyse(load.Spec);
                Assert.All(analysis.Subjects.SelectMany(subject => subject.Quantities), Sound);
                Assert.NotEmpty(Judge.Of(analysis, RulePacks.Shipped.Rules!, new(2026, 1, 15)).Findings);
                Interlocked.Increment(ref judged);
            },
            iter: 400);
        Assert.True(judged > 40, $"only {judged} of 400 were fit to be judged");
    }

    private static void Sound(Quantity quantity)
    {
        if (quantity is { IsEvaluated: true, Kind.ValueKind: ValueKind.Number })
            Assert.True(double.IsFinite(quantity.Value.Min) && double.IsFinite(quantity.Value.Max), $"{quantity.Subject}.{quantity.Kind.Name}");
        Assert.All(quantity.Reasons, reason => Assert.DoesNotContain("Parameter", reason, StringComparison.Ordinal));
    }

    private static string Spoil(string text, int[] choices, int more)
    {
        foreach (var choice in choices)
        {
            var numbers = Numbers().Matches(text);
            var number = numbers[choice % numbers.Count];
            var value = double.Parse(number.Value, CultureInfo.InvariantCulture) * Factors[choice / 7 % Factors.Length];
            var written = number.Value.Contains('.', StringComparison.Ordinal)
                ? value.ToString("0.######", CultureInfo.InvariantCulture)
                : Math.Round(value).ToString("0", CultureInfo.InvariantCulture);
            text = $"{text[..number.Index]}{written}{text[(number.Index + number.Length)..]}";
        }

        switch (more)
        {
            case 0:
                var lines = text.Split('\n').ToList();
                lines.RemoveAt(choices[0] % lines.Count);
                return string.Join('\n', lines);
            case 1:
                return text.Replace("case-hardened", Treatments[choices[0] % Treatments.Length], StringComparison.Ordinal);
            case 2:
                var steels = SpecLoader.Shipped.Materials.Entries;
                return text.Replace("EN-18CrNiMo7-6", steels[choices[0] % steels.Length].Name.Value, StringComparison.Ordinal);
            default:
                return text;
        }
    }

    [GeneratedRegex(@"(?<![A-Za-z0-9_-])-?\d+(\.\d+)?(?![A-Za-z0-9_])")]
    private static partial Regex Numbers();
}
