namespace Pawl.Analysis.Tests;

/// <summary>Parallel keys as a spec gets them, by hand calculation beside the tests.</summary>
public sealed class ParallelKeyOfSpecsTests
{
    private static GearboxAnalysis Analyse(string key, string duty = SpecText.Duty) =>
        SpecText.Analyse(SpecText.Simple(duty: duty, mesh: ", efficiency: 100 %") + $"\nparallel_keys: {{output: {{diameter: 30 mm k6, ends: round, length: 28 mm, {key}}}}}\n");

    // 120 N·m on 30 mm: F = 2·120 000/30 = 8000 N; flat length 28 − 8 = 20 mm; DIN 6885-1 8 × 7, t_1 = 4, chamfer 0.4:
    // hub (7 − 4 − 0.4)·20 = 52 mm², shaft 3.6·20 = 72 mm², shear 8·20 = 160 mm².
    [Fact]
    public void Pressures_and_shear_at_nominal_are_those_by_hand()
    {
        var analysis = Analyse("torque: 120 N·m, key_yield: 400 MPa, shaft_yield: 700 MPa, hub_yield: 300 MPa");

        Assert.Equal(8000, analysis.Value("parallel_keys.output", "force"), 9);
        Assert.Equal(8000 / 52.0, analysis.Value("parallel_keys.output", "hub_pressure"), 9);
        Assert.Equal(8000 / 72.0, analysis.Value("parallel_keys.output", "shaft_pressure"), 9);
        Assert.Equal(50, analysis.Value("parallel_keys.output", "shear_stress"), 9);
        Assert.Equal(8000 / 52.0 / 300, analysis.Value("parallel_keys.output", "hub_pressure_share"), 9);
        Assert.Equal(8000 / 72.0 / 400, analysis.Value("parallel_keys.output", "shaft_pressure_share"), 9);
    }

    // Worst case by hand: k6 of 30 mm is +2…+15 µm, h11 of 7 mm −90 µm, t_1 +0.2, b h9 −36 µm:
    // F = 240 000/30.002; length 28 − 8 = 20; height 6.91 − 4.2 − 0.4 = 2.31.
    [Fact]
    public void The_worst_pressure_has_the_lowest_key_in_the_deepest_keyway()
    {
        var pressure = Analyse("torque: 120 N·m").Quantity("parallel_keys.output", "hub_pressure");

        Assert.Equal(240_000 / 30.002 / (20 * 2.31), pressure.Value.Max, 9);
    }

    // Carrier of a set of ratio 4.5 at 30 N·m without losses: 135 N·m; K_A 1.5, peak 60 N·m: the greater of 135·1.5 and 270.
    [Fact]
    public void The_torque_of_a_body_counts_with_its_overloads()
    {
        Assert.Equal(202.5, Analyse("carries: carrier", "duty: {application_factor: 1.5, input: {speed: 1450 rpm, torque: 30 N·m}}").Value("parallel_keys.output", "torque"), 9);
        Assert.Equal(270, Analyse("carries: carrier", "duty: {application_factor: 1.5, input: {speed: 1450 rpm, torque: 30 N·m, peak_torque: 60 N·m}}").Value("parallel_keys.output", "torque"), 9);
    }

    [Fact]
    public void A_key_without_torque_says_what_to_state() => Assert.Equal(
        ["parallel_keys.output.carries or parallel_keys.output.torque is not stated"], Analyse("count: 1").Quantity("parallel_keys.output", "hub_pressure").Reasons);

    [Fact]
    public void A_shaft_outside_the_table_is_evaluated_with_a_stated_section()
    {
        var bare = SpecText.Analyse(SpecText.Simple() + "\nparallel_keys: {k: {diameter: 120 mm, ends: square, length: 100 mm, torque: 1 kN·m}}\n");
        var stated = SpecText.Analyse(SpecText.Simple()
            + "\nparallel_keys: {k: {diameter: 120 mm, ends: square, length: 100 mm, torque: 1 kN·m, width: 32 mm, height: 18 mm, shaft_depth: 11 mm, chamfer: 1 mm}}\n");

        Assert.Contains("state width, height and shaft_depth", Assert.Single(bare.Quantity("parallel_keys.k", "hub_pressure").Reasons), StringComparison.Ordinal);
        Assert.Equal(2e6 / 120 / (100 * 6), stated.Value("parallel_keys.k", "hub_pressure"), 9);
    }

    // DIN 6885-1: 30 mm has t_2 = 3.3 mm. Wall (54 − 30)/2 − 3.3 = 8.7 mm; tube of 54 and 36.6 mm at 120 N·m:
    // 16·120 000·54/(π·(54⁴ − 36.6⁴)) = 4.92 MPa. By hand.
    [Fact]
    public void The_hub_over_its_keyway_by_hand()
    {
        var analysis = Analyse("torque: 120 N·m, hub_outside: 54 mm, hub_held: clamped");

        Assert.Equal(8.7, analysis.Value("parallel_keys.output", "hub_wall"), 9);
        Assert.Equal(1.8, analysis.Value("parallel_keys.output", "hub_ratio"), 9);
        Assert.Equal(4.92, analysis.Value("parallel_keys.output", "hub_shear_stress"), 0.005);
        Assert.Equal("clamped", analysis.Quantity("parallel_keys.output", "hub_held").Text);
        Assert.Contains("must be above zero", Assert.Single(Analyse("torque: 120 N·m, hub_outside: 36 mm").Quantity("parallel_keys.output", "hub_shear_stress").Reasons), StringComparison.Ordinal);
        Assert.Contains("parallel_keys.output.hub_outside is not stated", Analyse("torque: 120 N·m").Quantity("parallel_keys.output", "hub_shear_stress").Reasons);
    }

    [Theory]
    [InlineData("direction: both", "", 0.7)]
    [InlineData("direction: one", "", 1)]
    [InlineData("direction: both", ", reversal_factor: 0.85", 0.85)]
    public void A_torque_that_reverses_leaves_a_share_of_the_pressure(string direction, string stated, double factor) => Assert.Equal(
        factor,
        Analyse($"torque: 120 N·m{stated}", $"duty: {{input: {{speed: 1450 rpm, torque: 30 N·m, {direction}}}}}").Value("parallel_keys.output", "reversal_factor"), 9);

    // 20 of 28 mm are flat.
    [Fact]
    public void Round_ends_bear_nothing() => Assert.Equal(20.0 / 28, Analyse("torque: 120 N·m").Value("parallel_keys.output", "bearing_share"), 9);
}
