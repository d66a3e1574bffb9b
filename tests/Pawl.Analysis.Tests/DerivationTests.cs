using Pawl.Analysis.Core;

namespace Pawl.Analysis.Tests;

/// <summary>What a derivation says of itself is what was computed.</summary>
public class DerivationTests
{
    private const string Helical =
        "module: 2 mm, helix_angle: 15°, profile_shift: 0, face_width: 30 mm, axial_position: 0 mm, material: EN-42CrMo4, thickness_allowance: {upper: -0.05 mm, lower: -0.1 mm}";

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Every_symbol_of_a_formula_stands_for_one_input(string path) => EverySymbolStandsForOneInput(SpecText.AnalyseFile(path));

    [Fact]
    public void Every_symbol_of_a_formula_stands_for_one_input_in_helical_gears() => EverySymbolStandsForOneInput(
        SpecText.Analyse(SpecText.Pair($"teeth: 20, hand: left, {Helical}", $"teeth: 41, hand: right, {Helical}")));

    private static void EverySymbolStandsForOneInput(GearboxAnalysis analysis)
    {
        var wrong = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var quantity in analysis.Subjects.SelectMany(subject => subject.Quantities))
        {
            // Declared instead of computed, as a tip diameter may be; the total contact ratio of spur gears has no second term.
            if (quantity.Origin is not Origin.Computed || quantity.Inputs.IsEmpty
                || (quantity.Kind.Name == "total_contact_ratio" && quantity.Inputs.Length == 1))
            {
                continue;
            }

            if (quantity.Symbols.Length != quantity.Inputs.Length || quantity.Symbols.Any(string.IsNullOrEmpty))
                wrong.Add($"{quantity.Kind.Of}.{quantity.Kind.Name}: {string.Join(", ", quantity.Symbols)} for {string.Join(", ", quantity.Inputs.Select(input => input.Kind.Name))}");
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    // Without a profile shift there is no loss factor, so no efficiency, and what rests on the losses is open.
    [Fact]
    public void What_rests_on_the_losses_waits_for_them()
    {
        var analysis = SpecText.Analyse(SpecText.Simple(gears: "module: 2 mm"));

        Assert.True(analysis.Quantity("train", "ratio").IsEvaluated);
        foreach (var (path, quantity) in (ReadOnlySpan<(string, string)>)
            [("train", "self_locking"), ("meshes.sun~planet_gear", "rolling_power"), ("meshes.sun~planet_gear", "tangential_force")])
        {
            Assert.Contains("train.gears.sun.profile_shift is not stated", analysis.Quantity(path, quantity).Reasons);
        }
    }

    // The assumptions of a report are those that a value rests on.
    [Fact]
    public void A_stated_efficiency_needs_no_assumed_friction()
    {
        var analysis = SpecText.Analyse(SpecText.Simple(mesh: ", efficiency: 99 %"));

        Assert.Null(analysis.Subject("meshes.sun~planet_gear").Find(Gears.MeshQuantities.Friction));
    }

    // Ohlendorf's loss factor, as ISO/TR 14179-2 and Niemann and Winter have it (from memory), shares the load between one and two pairs.
    [Fact]
    public void The_loss_factor_stays_within_its_source()
    {
        var analysis = SpecText.Analyse(SpecText.Pair(
            "teeth: 50, module: 2 mm, profile_shift: 0, addendum: 1.3", "teeth: 80, module: 2 mm, profile_shift: 0, addendum: 1.3"));

        Assert.True(analysis.Value("meshes.pinion~wheel", "transverse_contact_ratio") > 2);
        Assert.Contains(
            "covers 1 to 2", Assert.Single(analysis.Quantity("meshes.pinion~wheel", "loss_factor").Reasons), StringComparison.Ordinal);
    }

    // Greatest gear that runs with a pinion of few teeth, 20° full depth, as machine design textbooks tabulate it (from memory):
    // 13 with 16, 14 with 26, 15 with 45, 16 with 101, 17 with 1309.
    [Theory]
    [InlineData(13, 16)]
    [InlineData(14, 26)]
    [InlineData(15, 45)]
    [InlineData(16, 101)]
    [InlineData(17, 1309)]
    public void A_pinion_runs_with_gears_up_to_the_textbook_limit(int pinion, int greatest)
    {
        Assert.True(CurvatureAtStart(greatest) > 0);
        Assert.True(CurvatureAtStart(greatest + 1) < 0);

        double CurvatureAtStart(int wheel) => SpecText.Analyse(SpecText.Pair(
            $"teeth: {pinion}, module: 1 mm, profile_shift: 0", $"teeth: {wheel}, module: 1 mm, profile_shift: 0"))
            .Value("meshes.pinion~wheel.pinion", "curvature_at_start");
    }

    [Fact]
    public void A_centre_distance_from_the_profile_shifts_has_nothing_to_differ_from()
    {
        var analysis = SpecText.Analyse(SpecText.Pair(
            "teeth: 20, module: 2 mm, profile_shift: 0", "teeth: 40, module: 2 mm, profile_shift: 0"));

        Assert.Null(analysis.Subject("meshes.pinion~wheel").Find(Gears.MeshQuantities.CentreDistanceDifference));
    }

    public static TheoryData<string> Shipped => TrainOfSpecsTests.Shipped;
}
