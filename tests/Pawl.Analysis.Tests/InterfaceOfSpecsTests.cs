using System.Text;
using CsCheck;
using Pawl.Specs;

namespace Pawl.Analysis.Tests;

/// <summary>Interfaces with adapters: what fits, what does not, and by how much.</summary>
public sealed class InterfaceOfSpecsTests : IDisposable
{
    private const string Path = "interfaces.drive~flange";

    private const string Own =
        "kind: flange, engagement: 20 mm, torque: 200 N·m, speed: 3000 rpm, max_eccentricity: 0.06 mm, "
        + "spline: {side: external, system: iso-4156, module: 1.25 mm, pressure_angle: 30°, teeth: 26, root: fillet, class: 6, fit: e, length: 24 mm}, "
        + "pilot: {side: recess, diameter: 130 mm H8, depth: 6 mm}, bolts: {thread: M8, holes: tapped, count: 6, circle: 150 mm, thread_depth: 20 mm}, "
        + "dowels: {side: hole, diameter: 8 mm H7, count: 2, circle: 150 mm, angle: 30°}, seal: {kind: face, from: 132 mm, to: 143 mm}";

    private const string Other =
        "kind: flange, engagement: 25 mm, torque: 150 N·m, speed: 4000 rpm, "
        + "spline: {side: internal, system: iso-4156, module: 1.25 mm, pressure_angle: 30°, teeth: 26, root: flat, class: 6, length: 28 mm}, "
        + "pilot: {side: spigot, diameter: 130 mm g6, depth: 5 mm}, bolts: {thread: M8x1.25, holes: through, count: 6, circle: 150 mm, grip: 12 mm, screw_length: 28 mm}, "
        + "dowels: {side: pin, diameter: 8 mm h6, count: 2, circle: 150 mm, angle: 30°}, seal: {kind: groove, diameter: 137 mm}";

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("pawl-adapters-");

    public void Dispose() => _folder.Delete(recursive: true);

    private GearboxAnalysis Of(string own = Own, string other = Other, double torque = 60, double peak = 120, double application = 1.5)
    {
        var file = $"{Guid.NewGuid():N}.yaml";
        File.WriteAllText(System.IO.Path.Combine(_folder.FullName, file), $"pawl: 1\nadapter: flange\ninterface: {{{other}}}\n");
        var spec = SpecText.Simple(duty: FormattableString.Invariant(
            $$$"""
            duty: {input: {speed: 1500 rpm, torque: {{{torque}}} N·m, peak_torque: {{{peak}}} N·m}, application_factor: {{{application}}}}
            interfaces: {drive: {body: input, adapters: [flange], {{{own}}}}}
            """));
        var load = new SpecLoader(_folder.FullName, [], adapterPaths: [file]).Load("test.yaml", Encoding.UTF8.GetBytes(spec));
        Assert.True(load.Spec is not null, string.Join('\n', load.Diagnostics));
        return GearboxAnalyser.Analyse(load.Spec);
    }

    // ISO 286-1 at 130 mm: H8 0…+63, g6 −39…−14 µm: 14 to 102 µm, half of it off centre.
    [Fact]
    public void Clearance_and_eccentricity_of_the_pilot_by_the_table()
    {
        var analysis = Of();
        var clearance = analysis.Quantity(Path, "pilot_clearance").Value;

        Assert.Equal((0.014, 0.102), (Math.Round(clearance.Min, 9), Math.Round(clearance.Max, 9)));
        Assert.Equal(0.051, analysis.Quantity(Path, "pilot_eccentricity").Value.Max, 1e-9);
        Assert.Equal(1, analysis.Value(Path, "pilot_room"), 1e-12);
    }

    // H7 of 8 mm 0…+15, h6 −9…0 µm: 0 to 24 µm.
    [Fact]
    public void Clearance_of_the_dowels_by_the_table()
    {
        var clearance = Of().Quantity(Path, "dowel_clearance").Value;

        Assert.Equal((0, 0.024), (Math.Round(clearance.Min, 9), Math.Round(clearance.Max, 9)));
    }

    // 28 − 12 = 16 mm in the thread, two diameters of M8; 20 − 16 = 4 mm left.
    [Fact]
    public void Screws_by_hand()
    {
        var analysis = Of();

        Assert.Equal(16, analysis.Value(Path, "thread_engagement"), 1e-12);
        Assert.Equal(2, analysis.Value(Path, "thread_engagement_share"), 1e-12);
        Assert.Equal(4, analysis.Value(Path, "screw_room"), 1e-12);
    }

    // e of 30 mm to 50 mm: −50 µm (ISO 286-1).
    [Fact]
    public void The_splines_have_the_play_of_their_letter() => Assert.Equal(0.050, Of().Quantity(Path, "spline_clearance").Value.Min, 1e-9);

    // 60·1.5 = 90 against a peak of 120; then 60·2.5 = 150. The lesser capacity of 200 and 150 N·m, of 3000 and 4000 1/min.
    [Theory]
    [InlineData(1.5, 120)]
    [InlineData(2.5, 150)]
    public void The_greater_of_lasting_and_peak_torque_meets_the_lesser_capacity(double application, double greatest)
    {
        var analysis = Of(application: application);

        Assert.Equal(greatest, analysis.Value(Path, "torque"), 1e-9);
        Assert.Equal(150 / greatest, analysis.Value(Path, "torque_share"), 1e-9);
        Assert.Equal(3000, analysis.Value(Path, "speed_capacity"), 1e-9);
        Assert.Equal(1500, analysis.Value(Path, "speed"), 1e-9);
        Assert.Equal(25 / 20.0, analysis.Value(Path, "engagement_share"), 1e-12);
    }

    [Fact]
    public void Sides_that_match_differ_in_nothing() => Assert.All(
        (string[])["kind_misfit", "spline_misfit", "pilot_misfit", "bolt_misfit", "dowel_misfit", "seal_misfit"], misfit => Assert.Equal("none", Of().Quantity(Path, misfit).Text));

    [Theory]
    [InlineData("kind: flange", "kind: mount", "kind_misfit", "flange against mount")]
    [InlineData("teeth: 26", "teeth: 24", "spline_misfit", "teeth 26 against 24")]
    [InlineData("module: 1.25 mm", "module: 1.5 mm", "spline_misfit", "module 1.25 mm against module 1.5 mm")]
    [InlineData("module: 1.25 mm", "diametral_pitch: 20", "spline_misfit", "module 1.25 mm against diametral pitch 20")]
    [InlineData("system: iso-4156", "system: ansi-b92.1", "spline_misfit", "standard iso-4156 against ansi-b92.1")]
    [InlineData("pressure_angle: 30°", "pressure_angle: 45°", "spline_misfit", "pressure angle 30° against 45°")]
    [InlineData("side: internal", "side: external", "spline_misfit", "side external on both")]
    [InlineData("130 mm g6", "120 mm g6", "pilot_misfit", "diameter 130 mm H8 against 120 mm g6")]
    [InlineData("side: spigot", "side: recess", "pilot_misfit", "side recess on both")]
    [InlineData("M8x1.25", "M8x1", "bolt_misfit", "thread M8 against M8x1")]
    [InlineData("count: 6", "count: 8", "bolt_misfit", "count 6 against 8")]
    [InlineData("count: 6, circle: 150 mm", "count: 6, circle: 160 mm", "bolt_misfit", "circle 150 mm against 160 mm")]
    [InlineData("grip: 12 mm", "angle: 30°, grip: 12 mm", "bolt_misfit", "position 0° against 30°")]
    [InlineData("holes: through", "holes: tapped", "bolt_misfit", "holes tapped on both")]
    [InlineData("angle: 30°", "angle: 45°", "dowel_misfit", "position 30° against 45°")]
    [InlineData("8 mm h6", "10 mm h6", "dowel_misfit", "diameter 8 mm H7 against 10 mm h6")]
    [InlineData("diameter: 137 mm", "diameter: 145 mm", "seal_misfit", "groove of 145 mm off the face from 132 mm to 143 mm")]
    [InlineData("kind: groove", "kind: face", "seal_misfit", "kind face on both")]
    [InlineData(", seal: {kind: groove, diameter: 137 mm}", "", "seal_misfit", "the adapter states no seal")]
    public void What_differs_is_told_in_words(string old, string @new, string misfit, string says) =>
        Assert.Equal(says, Of(other: Other.Replace(old, @new, StringComparison.Ordinal)).Quantity(Path, misfit).Text);

    // A pitch of 60° further, the same six holes are met.
    [Fact]
    public void A_pattern_meets_itself_after_every_pitch() => Gen.Select(Gen.Int[2, 12], Gen.Int[-20, 20], Gen.Int[0, 359]).Sample(
        (count, pitches, from) =>
        {
            GearboxAnalysis With(double angle) => Of(
                Own.Replace("count: 6, circle: 150 mm", $"count: {count}, circle: 150 mm, angle: {from}°", StringComparison.Ordinal),
                Other.Replace("count: 6, circle: 150 mm", FormattableString.Invariant($"count: {count}, circle: 150 mm, angle: {angle:0.######}°"), StringComparison.Ordinal));

            Assert.Equal("none", With(from + (pitches * 360.0 / count)).Quantity(Path, "bolt_misfit").Text);
            Assert.NotEqual("none", With(from + ((pitches + 0.5) * 360.0 / count)).Quantity(Path, "bolt_misfit").Text);
        },
        iter: 200);

    // An inch and its millimetres are one size; a thread by its short and its long name is one thread.
    [Fact]
    public void Units_make_no_difference() => Assert.Equal(
        "none", Of(other: Other.Replace("circle: 150 mm, grip", "circle: 5.905512 in, grip", StringComparison.Ordinal)).Quantity(Path, "bolt_misfit").Text);

    [Fact]
    public void What_is_missing_on_either_side_is_named()
    {
        var analysis = Of(Own.Replace(", thread_depth: 20 mm", "", StringComparison.Ordinal), Other.Replace("class: 6, ", "", StringComparison.Ordinal).Replace("engagement: 25 mm, ", "", StringComparison.Ordinal));

        Assert.Contains("interfaces.drive.bolts.thread_depth is not stated", analysis.Quantity(Path, "screw_room").Reasons);
        Assert.Contains("interface.spline.class of adapter flange is not stated", analysis.Quantity(Path, "spline_clearance").Reasons);
        Assert.Contains("interface.engagement of adapter flange is not stated", analysis.Quantity(Path, "engagement_share").Reasons);
    }

    [Fact]
    public void Sides_with_nothing_but_their_kind_are_compared_in_kind_alone()
    {
        var subject = Of("kind: mount", "kind: mount").Subject(Path);

        Assert.Equal(["adapter", "kind_misfit"], subject.Quantities.Select(quantity => quantity.Kind.Name));
    }
}
