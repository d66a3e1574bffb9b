namespace Pawl.Analysis.Tests;

/// <summary>Grease of bearings that run on grease of their own.</summary>
public class GreaseOfSpecsTests
{
    private static GearboxAnalysis Of(string near, string lubrication = "") => SpecText.Analyse(SpecText.Simple(
        duty: $$$"""
            duty: {input: {speed: 1500 rpm, torque: 60 N·m, direction: one}, service_life: 9000 h, application_factor: 1, oil: {running: 85 °C, coldest: 20 °C, hottest: 85 °C, lubricant: gear-oil-vg100}}
            {{{lubrication}}}
            bearings:
              near: {bearing: {{{near}}}, shaft: carrier, housing: housing, axial_position: 30 mm}
              far: {bearing: ball-6208, shaft: carrier, housing: housing, axial_position: 90 mm}
            """,
        gears: "module: 2 mm, profile_shift: 0, face_width: 20 mm, axial_position: 0 mm", mesh: ", efficiency: 100 %",
        extraTrain: "bodies: {input: {floating: true}, carrier: {material: EN-42CrMo4}, housing: {material: EN-42CrMo4}}")
        .Replace("planet: {carrier: carrier, count: 3}", "planet: {carrier: carrier, count: 3, mass: 0.2 kg, load_sharing: 1, load_sharing_proof: test}", StringComparison.Ordinal));

    // 6208: d = 40 mm, 1500/4.5 = 333.3 1/min; 10·(14·10⁶/(333.3·√40) − 160) = 64 808 h, halved at 85 °C: 32 404 h, of a light load.
    [Fact]
    public void Grease_lasts_by_the_rule_of_the_literature()
    {
        var analysis = Of("ball-6208, lubricated_by: grease", "lubrication: {grease: {fill: 40 %, relubrication: 2000 h}}");

        Assert.InRange(analysis.Value("bearings.near", "load_share"), 0, 0.1);
        Assert.Equal(32_404, analysis.Value("bearings.near", "grease_life"), 1.0);
        Assert.Equal(40, analysis.Value("bearings.near", "grease_fill"), 1e-9);
        Assert.Equal(2000, analysis.Value("bearings.near", "grease_interval"), 1e-9);
    }

    // Nobody opens a seal; and what is never renewed serves as long as the gearbox.
    [Theory]
    [InlineData("ball-6208-sealed", "lubrication: {grease: {fill: 40 %, relubrication: 2000 h}}", false)]
    [InlineData("ball-6208, lubricated_by: grease", "lubrication: {grease: {fill: 40 %}}", true)]
    [InlineData("ball-6208, lubricated_by: grease", "", true)]
    public void Without_relubrication_grease_serves_the_service_life(string bearing, string lubrication, bool isFilledHere)
    {
        var analysis = Of(bearing, lubrication);

        Assert.Equal(9000, analysis.Value("bearings.near", "grease_interval"), 1e-9);
        Assert.Equal(isFilledHere, analysis.Has("bearings.near", "grease_fill"));
    }

    [Fact]
    public void A_bearing_in_oil_has_none_of_it_and_a_fill_that_is_not_stated_is_named()
    {
        var analysis = Of("ball-6208, lubricated_by: grease");

        Assert.False(analysis.Has("bearings.far", "grease_life"));
        Assert.False(analysis.Has("bearings.far", "grease_interval"));
        Assert.Equal(["lubrication.grease.fill is not stated"], analysis.Quantity("bearings.near", "grease_fill").Reasons);
    }
}
