using System.Globalization;
using CsCheck;

namespace Pawl.Analysis.Tests;

/// <summary>Stacks and shims as a spec states them: sums by hand, loops by brute force.</summary>
public class StackOfSpecsTests
{
    private const string Wide = "window: {min: 0 mm, max: 0.5 mm}";

    private static GearboxAnalysis Of(string stack, string oil = "running: 80 °C, coldest: -20 °C, hottest: 100 °C", string shims = "") => SpecText.Analyse(
        $$"""
        pawl: 1
        gearbox: {family: Test, variant: Stacks}
        duty:
          oil: { {{oil}} }
        stacks:
          it: { {{stack.ReplaceLineEndings(" ")}} }
        shims:
          list: {sheets: [ {{(shims.Length == 0 ? "{thickness: 1 mm}" : shims)}} ]}
        """);

    private static (double Min, double Max) Range(GearboxAnalysis analysis, string quantity)
    {
        var found = analysis.Quantity("stacks.it", quantity);
        Assert.True(found.IsEvaluated, string.Join("; ", found.Reasons));
        return (Math.Round(found.Value.Min, 7), Math.Round(found.Value.Max, 7));
    }

    private const string Three =
        """
        contributors: {housing: {size: 50 mm ±0.1, coefficient: 1}, sleeve: {size: 20 mm ±0.05, coefficient: -1}, bearing: {size: 29.8 mm ±0.05, coefficient: -1}}
        """;

    // 50 ± 0.1 − 20 ± 0.05 − 29.8 ± 0.05: 0.2 ± 0.2, root of the squares √(0.01 + 0.0025 + 0.0025) = 0.12247; σ a third of it. By hand.
    [Fact]
    public void Worst_case_and_root_sum_square_by_hand()
    {
        var analysis = Of($"{Wide}, {Three}");

        Assert.Equal((0, 0.4), Range(analysis, "worst_case"));
        Assert.Equal((0.0775255, 0.3224745), Range(analysis, "root_sum_square"));
        Assert.Equal(0.122474 / 3, analysis.Value("stacks.it", "standard_deviation"), 1e-6);
        Assert.Equal((0, 0.4), Range(analysis, "end_play"));
        Assert.Equal((0.0775255, 0.3224745), Range(Of($"method: statistical, {Wide}, {Three}"), "end_play"));
        Assert.Equal(3, analysis.Value("stacks.it", "unproven"));
    }

    // C_pk = min(0.5 − 0.2, 0.2 − 0)/(3·0.0408248) = 1.63299.
    [Fact]
    public void Capability_by_hand() => Assert.Equal(1.63299, Of($"{Wide}, {Three}").Value("stacks.it", "capability"), 1e-5);

    // Shares of the worst case 0.1 : 0.05 : 0.05, of the variance 4 : 1 : 1.
    [Fact]
    public void Sensitivities_by_hand()
    {
        var analysis = Of($"{Wide}, {Three}");

        Assert.Equal(50, analysis.Value("stacks.it.housing", "share_of_worst_case"), 1e-9);
        Assert.Equal(200 / 3.0, analysis.Value("stacks.it.housing", "share_of_variance"), 1e-9);
        Assert.Equal(25, analysis.Value("stacks.it.sleeve", "share_of_worst_case"), 1e-9);
        Assert.Equal("housing", analysis.Quantity("stacks.it", "dominant").Text);
        Assert.Equal(50, analysis.Value("stacks.it", "max_share"), 1e-9);
    }

    // Variances: uniform h/√3, triangular h/√6: √(0.05²/3 + 0.06²/6) = 0.037859.
    [Fact]
    public void Uniform_and_triangular_sizes_by_their_variances() => Assert.Equal(
        0.037859, Of($"{Wide}, contributors: {{a: {{size: 10 mm ±0.05, coefficient: 1, distribution: uniform}}, b: {{size: 9.8 mm ±0.06, coefficient: -1, distribution: triangular}}}}")
            .Value("stacks.it", "standard_deviation"), 1e-6);

    // C_p 1.33 of a normal size: σ = 0.1/(3·1.33).
    [Fact]
    public void A_proven_process_scatters_less() => Assert.Equal(
        0.1 / 3.99, Of($"{Wide}, contributors: {{a: {{size: 0.2 mm ±0.1, coefficient: 1, capability: 1.33}}}}").Value("stacks.it", "standard_deviation"), 1e-9);

    // One uniform size: the quantiles of 0.135 % lie at ±0.1·(1 − 0.0027) about 0.2; with 200 000 draws their scatter is 2·10⁻⁵ (binomial).
    // Half of the window's edge at 0.25 leaves a quarter outside.
    [Fact]
    public void Random_assemblies_lie_where_their_distribution_says()
    {
        var analysis = Of("draws: 200000, window: {min: 0 mm, max: 0.25 mm}, contributors: {a: {size: 0.2 mm ±0.1, coefficient: 1, distribution: uniform}}");
        var (least, greatest) = Range(analysis, "sampled");

        Assert.Equal(0.2 - 0.09973, least, 1e-4);
        Assert.Equal(0.2 + 0.09973, greatest, 1e-4);
        Assert.Equal(25, analysis.Value("stacks.it", "share_outside"), 0.4);
    }

    [Fact]
    public void One_seed_gives_the_same_bits_and_another_others()
    {
        string Bits(int seed) => string.Join(' ', Range($"seed: {seed}").Select(BitConverter.DoubleToInt64Bits));
        double[] Range(string seed) => Of($"{seed}, {Wide}, {Three}").Quantity("stacks.it", "sampled").Value is var value ? [value.Nominal, value.Min, value.Max] : [];

        Assert.Equal(Bits(7), Bits(7));
        Assert.NotEqual(Bits(7), Bits(8));
        Assert.Equal(7, Of($"seed: 7, {Wide}, {Three}").Value("stacks.it", "seed"));
        Assert.Equal(20_000, Of($"{Wide}, {Three}").Value("stacks.it", "draws"));
    }

    // Aluminium opens 60 mm, steel closes 59.8 mm. +60 K: 60·23·60 − 59.8·11.5·60 = 82.8 − 41.262 = 41.538 µm; −40 K: −27.692 µm; +80 K: 55.384 µm.
    [Fact]
    public void Warmth_along_the_loop_by_hand()
    {
        var analysis = Of($"{Wide}, contributors: {{bore: {{size: 60 mm, coefficient: 1, material: wrought-6082}}, rings: {{size: 59.8 mm, coefficient: -1}}}}");

        Assert.Equal(0.2 + 0.041538, analysis.Value("stacks.it", "end_play_running"), 1e-6);
        Assert.Equal(0.2 - 0.027692, analysis.Value("stacks.it", "end_play_cold"), 1e-6);
        Assert.Equal(0.2 + 0.055384, analysis.Value("stacks.it", "end_play_hot"), 1e-6);
        Assert.Equal((0.172308, 0.255384), Range(analysis, "end_play_in_service"));
    }

    // The shaft at 90 °C while the housing is at 40 °C: 60·23·20 − 59.8·11.5·70 = 27.6 − 48.139 = −20.539 µm, though both states of rest open.
    [Fact]
    public void A_shaft_ahead_of_its_housing_takes_play()
    {
        var analysis = Of(
            $"{Wide}, warm_up: {{shaft: 90 °C, housing: 40 °C}}, contributors: {{bore: {{size: 60 mm, coefficient: 1, expansion: 23 µm/(m·K), side: housing}}, rings: {{size: 59.8 mm, coefficient: -1, side: shaft}}}}");

        Assert.Equal(0.2 - 0.020539, analysis.Value("stacks.it", "end_play_warm_up"), 1e-6);
        Assert.Contains(
            "stacks.it.contributors.a.side is not stated",
            Of($"{Wide}, warm_up: {{shaft: 90 °C, housing: 40 °C}}, contributors: {{a: {{size: 0.2 mm, coefficient: 1}}}}").Quantity("stacks.it", "end_play_warm_up").Reasons);
    }

    // A contributor that runs 15 K above the oil stays 15 K above it at the hottest: 100·11.5·(115 − 20) µm.
    [Fact]
    public void A_size_with_a_temperature_of_its_own_keeps_its_distance_from_the_oil() => Assert.Equal(
        100.1 - 100 + (0.0115 * 95 / 10 * 1.001),
        Of($"window: {{min: 0 mm, max: 1 mm}}, contributors: {{a: {{size: 100.1 mm, coefficient: 1, running: 95 °C}}, b: {{size: 100 mm, coefficient: -1, expansion: 0 µm/(m·K)}}}}").Value("stacks.it", "end_play_hot"), 1e-6);

    // Gap 0.25 to 0.47 mm, window 0.01 to 0.04: packs of 0.225 to 0.445 for its middle. Of 0.1 and 0.2 mm the packs 0.2, 0.3, 0.4 serve 0.21 to 0.24,
    // 0.31 to 0.34, 0.41 to 0.44; left are 0.25 to 0.31, 0.34 to 0.41 and 0.44 to 0.47: 0.16 mm. By hand.
    [Theory]
    [InlineData("{thickness: 0.1 mm}, {thickness: 0.2 mm}", 0.16)]
    [InlineData("{thickness: 0.03 mm}, {thickness: 0.05 mm}, {thickness: 0.1 mm}, {thickness: 0.2 mm}, {thickness: 0.3 mm}", 0)]
    [InlineData("{thickness: 0.2 mm, count: 1}", 0.22)]
    public void Shims_that_leave_gaps_are_told(string list, double uncovered)
    {
        var analysis = Of(
            "window: {min: 0.01 mm, max: 0.04 mm}, shims: {stock: list, effect: fills}, contributors: {a: {size: 0.36 mm ±0.11, coefficient: 1}}", shims: list);

        Assert.Equal((0.225, 0.445), Range(analysis, "required_pack"));
        Assert.Equal(uncovered, analysis.Value("stacks.it", "uncovered"), 1e-4);
        Assert.Equal((0.01, 0.04), Range(analysis, "end_play"));
    }

    // Enumerated by hand in ten thousandths of an inch: of 1, 2, 5, 10, 20 thousandths no single shim and no pair leaves 0 to 1 thousandth of a gap
    // of 17.5; 10 + 5 + 2 leave 0.5 thousandth, 12.7 µm.
    [Fact]
    public void A_pack_in_inches_for_a_measured_gap()
    {
        var analysis = Of(
            "window: {min: 0 in, max: 0.001 in}, shims: {stock: list, effect: fills, target: 0 in, measured_gap: 0.0175 in}, contributors: {a: {size: 0.018 in ±0.004, coefficient: 1}}",
            shims: "{thickness: 0.001 in}, {thickness: 0.002 in}, {thickness: 0.005 in}, {thickness: 0.010 in}, {thickness: 0.020 in}");

        Assert.Equal("0.254 + 0.127 + 0.0508 mm", analysis.Quantity("stacks.it", "pack").Text);
        Assert.Equal(3, analysis.Value("stacks.it", "pieces"));
        Assert.Equal(0.0127, analysis.Value("stacks.it", "end_play"), 1e-9);
    }

    // Under a cover that lifts: the pack is the overlap and the play required, 0.44 + 0.06 = 0.50; doubts ±(4 + 2·2) µm with two shims of ±2 µm.
    [Fact]
    public void Shims_under_a_cover_add_play()
    {
        var analysis = Of(
            "window: {min: 0.04 mm, max: 0.08 mm}, shims: {stock: list, effect: lifts, measured_gap: -0.44 mm, uncertainty: 4 µm}, contributors: {a: {size: 0.4 mm ±0.1, coefficient: -1}}",
            shims: "{thickness: 0.2 mm, tolerance: 2 µm}, {thickness: 0.3 mm, tolerance: 2 µm}");

        Assert.Equal("0.3 + 0.2 mm", analysis.Quantity("stacks.it", "pack").Text);
        Assert.Equal((0.052, 0.068), Range(analysis, "end_play"));
        Assert.Equal(20, analysis.Value("stacks.it", "measurement_share"), 1e-9);
        Assert.Equal((0.36, 0.56), Range(analysis, "required_pack"));
    }

    [Fact]
    public void A_gap_that_no_pack_sets_names_the_nearest()
    {
        var analysis = Of(
            "window: {min: 0 mm, max: 0.02 mm}, shims: {stock: list, effect: fills, measured_gap: 0.35 mm}, contributors: {a: {size: 0.3 mm ±0.1, coefficient: 1}}",
            shims: "{thickness: 0.1 mm}, {thickness: 0.5 mm}");

        Assert.False(analysis.Quantity("stacks.it", "pack_found").Truth);
        Assert.Equal("none; the nearest are 0.1 + 0.1 + 0.1 mm and 0.1 + 0.1 + 0.1 + 0.1 mm", analysis.Quantity("stacks.it", "pack").Text);
        Assert.Equal(["no pack brings the measured gap into the window"], analysis.Quantity("stacks.it", "end_play").Reasons);
    }

    // Faces at random places, visited in random order: the loop must give the distance of the ends, whichever way each size lies. Brute force.
    [Fact]
    public void The_loop_gives_the_distance_of_its_ends() =>
        Gen.Select(Gen.Int[1, 10_000].Array[3, 8], Gen.Int[0, 1000]).Where((places, _) => places.Distinct().Count() == places.Length).Sample((places, shuffle) =>
        {
            static string Micro(int value) => (value / 1000.0).ToString("0.000", CultureInfo.InvariantCulture);
            var sizes = Enumerable.Range(0, places.Length - 1).OrderBy(i => ((i * 37) + shuffle) % 11).Select(i =>
            {
                var (low, high) = places[i] < places[i + 1] ? (i, i + 1) : (i + 1, i);
                return $"s{i}: {{size: {Micro(places[high] - places[low])} mm, from: f{low}, to: f{high}}}";
            });
            var analysis = Of($"window: {{min: -20 mm, max: 20 mm}}, from: f0, to: f{places.Length - 1}, contributors: {{{string.Join(", ", sizes)}}}");
            return Math.Abs(analysis.Value("stacks.it", "worst_case") - ((places[^1] - places[0]) / 1000.0)) < 1e-9;
        }, iter: 200);

    // The worst case holds every random assembly of sizes that end at their limits, and the root of the squares never reaches beyond it.
    [Fact]
    public void The_worst_case_holds_all_others() =>
        Gen.Select(Gen.Int[1, 100].Array[1, 6], Gen.Int[0, 1]).Sample((tolerances, triangular) =>
        {
            var parts = tolerances.Select((h, i) => $"s{i}: {{size: 10 mm ±{(h / 1000.0).ToString("0.000", CultureInfo.InvariantCulture)}, coefficient: {(i % 2 == 0 ? 1 : -1)}, distribution: {(triangular == 1 ? "triangular" : "uniform")}}}");
            var analysis = Of($"draws: 1000, window: {{min: -20 mm, max: 20 mm}}, contributors: {{{string.Join(", ", parts)}}}");
            var (worst, root, sample) = (Range(analysis, "worst_case"), Range(analysis, "root_sum_square"), Range(analysis, "sampled"));
            return root.Min >= worst.Min - 1e-6 && root.Max <= worst.Max + 1e-6 && sample.Min >= worst.Min - 1e-6 && sample.Max <= worst.Max + 1e-6;
        }, iter: 200);
}
