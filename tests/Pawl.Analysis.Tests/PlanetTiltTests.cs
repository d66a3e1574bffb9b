namespace Pawl.Analysis.Tests;

/// <summary>Tilt of planets against what the spec states of the misalignment; by hand from the numbers of the spec.</summary>
public class PlanetTiltTests
{
    private const string Gears = "module: 2 mm, profile_shift: 0, face_width: 20 mm ±0, axial_position: 0 mm";

    // Pin 12 −0.004/0, bore 17 +0.006/+0.010, needles of 2.5 mm: 6 to 14 µm of play at 20 °C, and the same warm, for nothing gets warm.
    private static string Bearing(string name, int place) =>
        $"{name}: {{bearing: needles-12, shaft: carrier, housing: planet, axial_position: {place} mm, shaft_seat: 12 mm 0/-0.004, housing_seat: 17 mm +0.010/+0.006, inner_warmer: 0 K}}";

    private static GearboxAnalysis Of(string bearings, string pins = "", string mesh = ", misalignment: 6 µm", string gears = Gears) => SpecText.Analyse(SpecText.Simple(
        duty:
        $$"""
        duty:
          input: {speed: 100 rpm, torque: 60 N·m, direction: one}
          service_life: 2000 h
          application_factor: 1
          oil: {lubricant: gear-oil-vg100, running: 20 °C, coldest: 20 °C, hottest: 20 °C}
        bearings: { {{bearings}} }
        {{pins}}
        """,
        gears: gears, mesh: mesh, extraTrain: "bodies: {input: {floating: true}}")
        .Replace("planet: {carrier: carrier, count: 3}", "planet: {carrier: carrier, count: 3, mass: 0.2 kg, load_sharing: 1, load_sharing_proof: test}", StringComparison.Ordinal));

    private static readonly string Two = $"{Bearing("first", -8)}, {Bearing("second", 8)}";

    // Both ends are pressed around the axis alike, so only the 8 µm by which the plays may differ tilt it: 4 µm over 16 mm, of which the flanks at 20°
    // see the cosine; over 20 mm of face 4.70 µm.
    [Fact]
    public void Bearings_that_are_pressed_alike_tilt_by_the_difference_of_their_plays()
    {
        var analysis = Of(Two);
        var tilt = analysis.Quantity("meshes.sun~planet_gear", "planet_tilt").Value;

        Assert.Equal(0, tilt.Nominal, 1e-6);
        Assert.Equal(0.004 / 16 * Math.Cos(Math.PI / 9), tilt.Max, 3e-6);
        Assert.Equal(4.70, analysis.Quantity("meshes.sun~planet_gear", "known_misalignment").Value.Max * 1000, 0.06);
    }

    // Bearings that are pressed apart: the pinion of a meshed pair leans on one mesh at each end. The plays add: R180 with 6 to 14 µm would tilt by
    // (G_1 + G_2)/2 over their distance at most, and by at least some of it.
    [Fact]
    public void A_pinion_in_two_planes_tilts_through_the_sum_of_its_plays()
    {
        var analysis = SpecText.AnalyseFile("specs/tarn-180/r180.yaml");
        var tilt = analysis.Quantity("meshes.input_sun~long", "planet_tilt").Value.Max;
        var play = analysis.Quantity("bearings.long_front", "operating_clearance").Value.Max;

        Assert.InRange(tilt, play / 26, (play / 26) + 4e-4);
    }

    // Spur teeth in the plane of one bearing: no couple, no tilt. Moved by 3 mm, the couple of both meshes is 2000 N·3 mm; the load lies outside of the middle
    // third of the 15.8 mm (2.63 mm), and the planet takes up its 6 to 14 µm over their length.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(3, 0.014)]
    public void One_bearing_tilts_where_the_load_leaves_its_middle_third(int place, double play) =>
        Assert.Equal(play / 15.8, Of(Bearing("pin", place)).Quantity("meshes.sun~planet_gear", "planet_tilt").Value.Max, 1e-9);

    // An overhung pin of 12 mm, 2 mm from the cheek, under 20 mm of load: the middle is 12 mm out. F·a²/(2·E·I) of 2000 N, less 1 % of losses: 0.687 mrad; the flanks
    // see the cosine of 20°.
    [Fact]
    public void An_overhung_pin_leans_with_its_planet()
    {
        var analysis = Of(
            Bearing("pin", 0), "planet_pins: {planet: {planets: planet, diameter: 12 mm ±0, held: overhung, gap: 2 mm ±0, load_width: 20 mm ±0}}");
        var slope = 2000 * 12 * 12 / (2 * 206_000 * Math.PI * Math.Pow(12, 4) / 64);

        Assert.Equal(1, analysis.Value("meshes.sun~planet_gear", "planet_tilt") / 10_800 * Math.PI / (slope * Math.Cos(Math.PI / 9)), 0.015);
    }

    // T_c = 60·4.5 N·m, less losses; half of it over 10⁵ N·m/rad, 45 mm out, over a span of 30 mm: 2.025 mrad; the flanks see the cosine of 20°: 20 mm · that.
    [Fact]
    public void The_carrier_twists_its_pins()
    {
        var analysis = Of(
            Bearing("pin", 0), "planet_pins: {planet: {planets: planet, diameter: 12 mm ±0, held: straddled, span: 30 mm ±0, load_width: 20 mm ±0, twist_stiffness: 100000 N·m/rad}}");
        var slope = 270.0 / 2 / 100_000 * 45 / 30;

        Assert.Equal(1, analysis.Value("planet_pins.planet", "carrier_twist") / 10_800 * Math.PI / slope, 0.02);
        Assert.Equal(1, analysis.Value("meshes.sun~planet_gear", "known_misalignment") / (slope * Math.Cos(Math.PI / 9) * 20_000), 0.02);
    }

    [Fact]
    public void A_correction_takes_off_what_is_known_of_the_tilt()
    {
        var pin = "planet_pins: {planet: {planets: planet, diameter: 12 mm ±0, held: overhung, gap: 2 mm ±0, load_width: 20 mm ±0}}";
        var (bare, corrected) = (Of(Bearing("pin", 0), pin), Of(Bearing("pin", 0), pin, ", misalignment: 6 µm, helix_correction: 5 µm"));

        Assert.Equal(
            bare.Value("meshes.sun~planet_gear", "known_misalignment") - 5, corrected.Value("meshes.sun~planet_gear", "known_misalignment"), 1e-9);
    }

    [Fact]
    public void A_play_that_is_not_known_leaves_the_tilt_open() => Assert.Contains(
        "bearings.second.housing_seat is not stated",
        Of(Two.Replace("axial_position: 8 mm, shaft_seat: 12 mm 0/-0.004, housing_seat: 17 mm +0.010/+0.006", "axial_position: 8 mm, shaft_seat: 12 mm 0/-0.004", StringComparison.Ordinal))
            .Quantity("meshes.sun~planet_gear", "known_misalignment").Reasons);
}
