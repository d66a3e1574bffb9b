namespace Pawl.Analysis.Tests;

/// <summary>The root of a helical ring that a pinion-type cutter makes.</summary>
public class HelicalRingOfSpecsTests
{
    private static readonly double Helix = 15 * Math.PI / 180;

    private static GearboxAnalysis Of(string cutter) => SpecText.Analyse(
        SpecText.Simple(gears: "module: 2 mm, profile_shift: 0, helix_angle: 15°, face_width: 20 mm, axial_position: 0 mm, rim_thickness: 20 mm", mesh: ", efficiency: 99 %")
            .Replace("sun: {on: input,", "sun: {hand: right, on: input,", StringComparison.Ordinal)
            .Replace("planet_gear: {on: planet,", "planet_gear: {hand: left, on: planet,", StringComparison.Ordinal)
            .Replace("ring: {on: housing,", $"ring: {{hand: left, on: housing, addendum: 0.8, {cutter}", StringComparison.Ordinal));

    // x + x_0 = 0: the cutter stands at the reference centre distance, and d_f = d + 2·h_a0 with d = 70·2/cos 15°, h_a0 from d_0 = 20·2/cos 15°.
    [Fact]
    public void The_root_diameter_is_that_of_the_transverse_section()
    {
        var analysis = Of(FormattableString.Invariant($"cutter: {{teeth: 20, tip_diameter: {(40 / Math.Cos(Helix)) + 5:0.000000} mm, tip_radius: 0.4 mm}},"));

        Assert.Equal(140 / Math.Cos(Helix) + 5, analysis.Value("gears.ring", "root_diameter"), 1e-5);
    }

    // ISO 6336-3: the section of the virtual ring, about 70/cos³ 15° = 78 teeth. A ring's chord at the 60° tangents is wider than the half pitch of its teeth.
    [Fact]
    public void The_root_stress_is_evaluated()
    {
        var analysis = Of("cutter: {teeth: 20, tip_diameter: 46.4 mm, tip_radius: 0.4 mm},");

        Assert.InRange(analysis.Value("meshes.planet_gear~ring.ring", "root_chord"), Math.PI, 3 * Math.PI);
        Assert.Empty(analysis.Quantity("meshes.planet_gear~ring.ring", "nominal_root_stress").Reasons);
        Assert.InRange(analysis.Value("meshes.planet_gear~ring.ring", "root_helix_factor"), 0.8, 1.1);
    }

    [Fact]
    public void Without_a_cutter_it_stays_open() =>
        Assert.Equal(
            ["train.gears.ring.cutter is not stated, and the root of an internal gear depends on its cutter"],
            Of("").Quantity("meshes.planet_gear~ring.ring", "root_chord").Reasons);
}
