namespace Pawl.Analysis.Tests;

/// <summary>Unbalance of a body against its balance quality grade, as a spec states both.</summary>
public class BalanceOfSpecsTests
{
    private const string Chain = """
        fits:
          coupler: {hole: 20 mm +0.021/0, shaft: 20 mm -0.007/-0.020, function: slide, hole_part: coupler, shaft_part: input, hole_material: EN-42CrMo4, shaft_material: EN-42CrMo4}
        centring:
          coupler: {from: input, to: coupler, links: [{fit: coupler}, {runout: 0.012 mm, of: coupler}]}
        """;

    private static GearboxAnalysis Of(string input, string sections = "", string speed = "3000 rpm", string duty = "") => SpecText.Analyse(SpecText.Simple(
        duty: $$$"""
            duty: {input: {speed: {{{speed}}}, torque: 30 N·m}, oil: {running: 20 °C, coldest: 20 °C, hottest: 20 °C}{{{duty}}}}
            {{{sections}}}
            """,
        extraTrain: $$$"""bodies: {input: {{{{input}}}}}"""));

    // 6.3 mm/s over 100·π rad/s; 1.5 kg·20.05 µm = 30.1 g·mm, of which 4 µm are 6 g·mm and 1.5e-3 t·0.004 mm·(100·π)² = 0.592 N.
    [Fact]
    public void A_grade_gives_the_permissible_unbalance_at_the_speed_of_the_body()
    {
        var analysis = Of("mass: 1.5 kg, balance_grade: 6.3 mm/s, mass_eccentricity: 4 µm");

        Assert.Equal(3000, analysis.Value("bodies.input", "max_speed"), 1e-9);
        Assert.Equal(20.0535, analysis.Value("bodies.input", "permitted_mass_eccentricity"), 1e-4);
        Assert.Equal(30.0803, analysis.Value("bodies.input", "permitted_unbalance"), 1e-4);
        Assert.Equal(6, analysis.Value("bodies.input", "unbalance"), 1e-9);
        Assert.Equal(0.59218, analysis.Value("bodies.input", "unbalance_force"), 1e-5);
    }

    // The fastest share counts; the carrier of 20-25-70 turns 4.5 times slower.
    [Fact]
    public void The_fastest_share_of_the_spectrum_counts()
    {
        var analysis = Of(
            "balance_grade: 6.3 mm/s", duty: ", spectrum: [{share: 50 %, torque: 30 N·m, speed: 3000 rpm}, {share: 50 %, torque: 10 N·m, speed: 6000 rpm}]");

        Assert.Equal(10.0268, analysis.Value("bodies.input", "permitted_mass_eccentricity"), 1e-4);
        Assert.Equal(6000 / 4.5, analysis.Value("bodies.carrier", "max_speed"), 1e-9);
    }

    // Greatest clearance (21 + 20) µm: half of it and half of the run-out of 12 µm; the coupler is a quarter of the mass: 5 + (20.5 + 6)/4.
    // All runs at 20 °C.
    [Fact]
    public void A_loose_part_adds_its_worst_eccentricity_by_its_mass()
    {
        var analysis = Of("mass: 2 kg, balance_grade: 6.3 mm/s, mass_eccentricity: 5 µm, centred_by: coupler, centred_mass: 0.5 kg", Chain);

        Assert.Equal(0.25, analysis.Value("bodies.input", "centred_share"), 1e-12);
        Assert.Equal(0.005 + 0.0265 / 4, analysis.Quantity("bodies.input", "total_mass_eccentricity").Value.Max, 1e-9);
        Assert.False(analysis.Has("centring.coupler", "permitted_eccentricity"));
    }

    [Fact]
    public void Without_the_mass_of_the_part_the_whole_body_is_off_centre() =>
        Assert.Equal(0.0265, Of("balance_grade: 6.3 mm/s, centred_by: coupler", Chain).Quantity("bodies.input", "total_mass_eccentricity").Value.Max, 1e-9);

    [Theory]
    [InlineData("balance_grade: 6.3 mm/s, centred_by: coupler, centred_mass: 0.5 kg", "train.bodies.input.mass is not stated")]
    [InlineData("mass: 0.4 kg, balance_grade: 6.3 mm/s, centred_by: coupler, centred_mass: 0.5 kg", "a part cannot be heavier than the body that it belongs to")]
    public void What_is_missing_or_impossible_is_named(string input, string reason) => Assert.Contains(
        Of(input, Chain).Quantity("bodies.input", "total_mass_eccentricity").Reasons, said => said.Contains(reason, StringComparison.Ordinal));

    [Fact]
    public void Without_a_grade_nothing_but_the_speed_is_asked()
    {
        var analysis = Of("mass: 2 kg, mass_eccentricity: 5 µm");

        Assert.False(analysis.Quantity("bodies.input", "balance_grade_stated").Truth);
        Assert.False(analysis.Has("bodies.input", "total_mass_eccentricity"));
        Assert.False(analysis.Has("bodies.housing", "max_speed"));
        Assert.False(analysis.Has("bodies.planet", "max_speed"));
    }
}
