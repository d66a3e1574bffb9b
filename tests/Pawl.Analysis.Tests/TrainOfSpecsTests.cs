using CsCheck;
using Pawl.Analysis.Core;

namespace Pawl.Analysis.Tests;

/// <summary>Trains and assembly as a spec gets them, against closed forms of the textbooks.</summary>
public class TrainOfSpecsTests
{
    // Closed form, simple planetary set, ring held: i = 1 + z_r/z_s = 4.5; differential: n_c = (z_s·n_s + z_r·n_r)/(z_s + z_r).
    [Fact]
    public void A_simple_set_has_the_textbook_ratio_and_speeds()
    {
        var analysis = SpecText.Analyse(SpecText.Simple());

        Assert.Equal(4.5, analysis.Value("train", "ratio"), 12);
        Assert.Equal("9/2", analysis.Quantity("train", "exact_ratio").Text);
        Assert.Equal("same", analysis.Quantity("train", "sense").Text);
        Assert.Equal(1450 / 4.5, analysis.Value("bodies.carrier", "speed"), 9);
        // Relative to the carrier the planet turns −z_s/z_p times the sun's relative speed.
        Assert.Equal(-(1450 - (1450 / 4.5)) * 20 / 25, analysis.Value("bodies.planet", "spin_speed"), 9);
        Assert.Equal(20 * (1450 - (1450 / 4.5)) / 60, analysis.Value("meshes.sun~planet_gear", "mesh_frequency"), 9);
    }

    // Torques on the whole sum to zero; with losses the carrier gives less than i·T and the ring takes the rest.
    [Fact]
    public void Torques_balance_with_losses()
    {
        var analysis = SpecText.Analyse(SpecText.Simple(mesh: ", efficiency: 99 %"));

        // Closed form with η0 = 0.99²: η = (1 + η0·R)/(1 + R), R = 3.5.
        var efficiency = (1 + (0.99 * 0.99 * 3.5)) / 4.5;
        Assert.Equal(100 * efficiency, analysis.Value("train", "efficiency"), 9);
        Assert.Equal(30 * 4.5 * efficiency, analysis.Value("train", "output_torque"), 9);
        Assert.Equal(-30 * 4.5 * efficiency, analysis.Value("bodies.carrier", "torque"), 9);
        Assert.Equal((30 * 4.5 * efficiency) - 30, analysis.Value("bodies.housing", "torque"), 9);
        Assert.Equal(
            analysis.Value("train", "input_power") * 1000 * (1 - efficiency), analysis.Value("train", "lost_power"), 6);
    }

    // Definition: F_t = 2·T/(d·N) = 2·30 000/(40·3) = 500 N.
    [Fact]
    public void The_tangential_force_is_shared_by_the_planets()
    {
        var analysis = SpecText.Analyse(SpecText.Simple());

        Assert.Equal(500, analysis.Value("meshes.sun~planet_gear", "tangential_force"), 9);
    }

    [Fact]
    public void Power_in_is_power_out_and_losses_for_any_simple_set()
    {
        Gen.Select(Gen.Int[14, 40], Gen.Int[14, 40], Gen.Double[0.9, 1]).Sample((sun, planet, mesh) =>
        {
            var analysis = SpecText.Analyse(SpecText.Simple(
                sun, planet, sun + (2 * planet), mesh: FormattableString.Invariant($", efficiency: {100 * mesh:0.00} %")));

            var power = analysis.Value("bodies.input", "power") + analysis.Value("bodies.carrier", "power");
            Assert.Equal(power * 1000, analysis.Value("train", "lost_power"), 6);
            Assert.True(analysis.Value("train", "torque_balance") < 1e-9);
        }, iter: 100);
    }

    // Virtual work, closed form for a simple set with the sun held: φ_carrier = (j_sp + j_pr)/(2·a), here with one backlash in both meshes.
    [Fact]
    public void Output_lash_follows_from_virtual_work()
    {
        var analysis = SpecText.Analyse(SpecText.Simple(
            duty: "duty: {input: {speed: 1450 rpm, torque: 30 N·m}, oil: {running: 20 °C, coldest: 20 °C, hottest: 20 °C}}",
            extraTrain: "bodies: {carrier: {material: EN-42CrMo4}}",
            gears: "module: 2 mm, profile_shift: 0, material: EN-42CrMo4, thickness_allowance: {upper: -0.05 mm, lower: -0.05 mm}"));

        var backlash = analysis.Value("meshes.sun~planet_gear", "circumferential_backlash");
        Assert.Equal(
            2 * backlash / (2 * 45) * 180 * 60 / Math.PI, analysis.Value("train", "output_lash"), 6);
    }

    // Closed form: planets of a simple set go in at multiples of 360°/(z_s + z_r).
    [Fact]
    public void Spacing_of_a_simple_set_is_the_textbook_rule()
    {
        var equal = SpecText.Analyse(SpecText.Simple(count: 3));
        var unequal = SpecText.Analyse(SpecText.Simple(count: 4));

        Assert.Equal(4, equal.Value("planets.planet", "min_mesh_angle"), 9);
        Assert.Equal(0, equal.Value("planets.planet", "spacing_remainder"));
        Assert.Equal(2, unequal.Value("planets.planet", "spacing_remainder"));
        // 90° is 2° from the nearest multiple of 4°; on a circle of 45 mm that is 45·2°.
        Assert.Equal(45 * 2 * Math.PI / 180, unequal.Value("planets.planet", "position_misfit"), 9);
        Assert.Equal("0°, 92°, 180°, 272°", unequal.Quantity("planets.planet", "permitted_positions").Text);
    }

    // Closed form: chord less tip diameter, 2·45·sin 60° − 54 = 23.942 mm.
    [Fact]
    public void Neighbours_clear_by_the_chord_less_the_tip_diameter()
    {
        var analysis = SpecText.Analyse(SpecText.Simple());

        Assert.Equal(23.9422863, analysis.Value("planets.planet", "neighbour_clearance"), 6);
    }

    [Fact]
    public void A_train_with_nothing_held_names_the_free_bodies()
    {
        var analysis = SpecText.Analyse(SpecText.Simple(held: "other", extraTrain: "bodies: {other: {}, housing: {}}"));

        Assert.Contains("housing", analysis.Quantity("train", "free_bodies").Text, StringComparison.Ordinal);
        Assert.False(analysis.Quantity("train", "ratio").IsEvaluated);
        Assert.False(analysis.Quantity("bodies.carrier", "speed_ratio").IsEvaluated);
    }

    [Fact]
    public void A_train_with_too_much_held_names_what_contradicts()
    {
        var analysis = SpecText.Analyse(SpecText.Simple(held: "housing, brake", extraTrain: "bodies: {brake: {}}", output: "carrier")
            .Replace("planet: {carrier: carrier, count: 3}", "planet: {carrier: brake, count: 3}", StringComparison.Ordinal)
            .Replace("output: carrier", "output: load", StringComparison.Ordinal)
            .Replace("bodies: {brake: {}}", "bodies: {brake: {}, load: {}}", StringComparison.Ordinal));

        Assert.Contains("cannot turn", analysis.Quantity("train", "contradiction").Text, StringComparison.Ordinal);
        Assert.False(analysis.Quantity("train", "ratio").IsEvaluated);
    }

    [Fact]
    public void A_spec_without_a_train_has_nothing_but_assumptions()
    {
        var analysis = SpecText.Analyse("pawl: 1\ngearbox: {family: Test, variant: Empty}\n");

        Assert.All(
            Assert.Single(analysis.Subjects, subject => subject.Kind != SubjectKinds.SpecSection)
                .Quantities.Where(quantity => quantity.IsEvaluated && quantity.Kind.Name is not ("peak_over_rated" or "is_product")),
            quantity => Assert.IsType<Origin.Assumed>(quantity.Origin));
        Assert.Equal(["train is not stated"], analysis.Quantity("train", "ratio").Reasons);
    }

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Shipped_specs_are_computed_throughout(string path)
    {
        var analysis = SpecText.AnalyseFile(path);

        // The demo range states no cutter for its rings, and no heat treatment or roughness yet.
        Assert.All(
            analysis.Subjects.SelectMany(subject => subject.Quantities).Where(quantity => !quantity.IsEvaluated),
            quantity => Assert.All(quantity.Reasons, reason => Assert.Matches("internal gear|(heat_treatment|treatments|roughness.*) is not stated", reason)));
    }

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Every_computed_number_names_formula_inputs_and_source(string path)
    {
        var analysis = SpecText.AnalyseFile(path);

        Assert.All(analysis.Subjects.SelectMany(subject => subject.Quantities), quantity =>
        {
            if (quantity.Origin is not Origin.Computed || !quantity.IsEvaluated)
                return;
            Assert.True(quantity.Kind.Formula.Length > 0 || quantity.Inputs.Length > 0, $"{quantity.Kind} has no formula");
            Assert.True(quantity.Kind.Formula.Length == 0 || quantity.Kind.Source.Length > 0 || quantity.Kind.Certainty == Certainty.Declared, $"{quantity.Kind} has no source");
        });
    }

    public static TheoryData<string> Shipped =>
        [.. Directory.EnumerateFiles(Path.Combine(SpecText.Root, "specs"), "r*.yaml", SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(SpecText.Root, path).Replace('\\', '/')).Order(StringComparer.Ordinal)];
}
