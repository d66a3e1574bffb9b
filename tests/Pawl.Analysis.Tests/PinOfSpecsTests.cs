using CsCheck;
using Pawl.Quantities;

namespace Pawl.Analysis.Tests;

/// <summary>Dowels, retaining rings and planet pins as a spec states them.</summary>
public class PinOfSpecsTests
{
    private const string Duty =
        """
        duty:
          input: {speed: 1500 rpm, torque: 60 N·m, direction: one, peak_torque: 120 N·m}
          application_factor: 1
          oil: {lubricant: gear-oil-vg100, running: 60 °C, coldest: 0 °C, hottest: 90 °C}
        """;

    private const string Parts = "parts: [{yield: 250 MPa, length: 16 mm, hole: 8 mm H7}, {yield: 250 MPa, length: 10 mm, hole: 8 mm G7}]";

    private static GearboxAnalysis Of(string sections) => SpecText.Analyse(SpecText.Simple(
        duty: $"{Duty}\n{sections}", gears: "module: 2 mm, profile_shift: 0, face_width: 20 mm, axial_position: 0 mm", extraTrain: "bodies: {input: {floating: true}}")
        .Replace("planet: {carrier: carrier, count: 3}", "planet: {carrier: carrier, count: 3, mass: 0.2 kg, load_sharing: 1, load_sharing_proof: test}", StringComparison.Ordinal));

    private static GearboxAnalysis Dowels(string more) =>
        Of($"dowels: {{ d: {{purpose: carry, circle: 100 mm, diameter: 8 mm m6, yield: 900 MPa, {Parts}, {more}}} }}");

    // 400 N·m on two dowels of 8 mm at 50 mm: 4000 N each; τ = 4000/50.27 = 79.6 MPa; p = 4000/(8·10) = 50 MPa of 250. Statics.
    [Fact]
    public void Dowels_by_hand()
    {
        var analysis = Dowels("torque: 400 N·m, count: 2");

        Assert.Equal(4000, analysis.Value("dowels.d", "dowel_force"), 1e-6);
        Assert.Equal(79.58, analysis.Value("dowels.d", "shear_stress"), 0.01);
        Assert.Equal(0.2, analysis.Value("dowels.d", "pressure_share"), 1e-9);
        Assert.Equal(1.25, analysis.Value("dowels.d", "length_ratio"), 1e-9);

        // Pressure decides: 125 MPa on 80 mm² are 10 kN a dowel, 1000 N·m both; shear would hold 0.4·900·50.27 = 18.1 kN.
        Assert.Equal(1000, analysis.Value("dowels.d", "dowel_torque"), 1e-6);
    }

    // Of holes made apart two dowels touch first; one alone carries nothing. Common practice.
    [Theory]
    [InlineData("count: 4", 2)]
    [InlineData("count: 4, reamed_together: true", 4)]
    [InlineData("count: 1", 0)]
    public void Only_dowels_that_bear_are_counted_on(string count, int effective) =>
        Assert.Equal(effective, Dowels($"torque: 400 N·m, {count}").Value("dowels.d", "effective_dowels"));

    // 8 m6 is +15/+6 µm, 8 G7 +20/+5 µm (ISO 286-2): 5 − 15 = −10 µm of play, less 2·3 µm of position. Parts may turn by (20 − 6)/50 mm.
    [Fact]
    public void Room_and_turn_of_dowels_by_hand()
    {
        var analysis = Dowels("torque: 400 N·m, count: 2, pin_position: 3 µm, hole_position: 3 µm");

        Assert.Equal(-0.016, Extent(analysis, "dowels.d", "room").Min, 1e-9);
        Assert.Equal(0.014 / 50, Extent(analysis, "dowels.d", "turn").Max, 1e-9);
    }

    private static Extent Extent(GearboxAnalysis analysis, string path, string quantity) => analysis.Quantity(path, quantity).Value;

    // 4000 N on 7.95 mm by 9 mm; 8.08 mm of hole less 8.05 mm of pin leave 30 µm, 8.12 less 7.95 give way 170 µm. Statics, as in Dowels_by_hand.
    [Fact]
    public void The_worst_case_of_dowels_covers_every_tolerance()
    {
        static GearboxAnalysis With(string diameter, string length, string hole) => Of(
            $$"""
            dowels: { d: {purpose: carry, torque: 400 N·m, count: 2, circle: 100 mm, diameter: {{diameter}}, yield: 900 MPa, pin_position: 0 mm, hole_position: 0 mm,
              parts: [{yield: 250 MPa, length: 16 mm, hole: 8 mm}, {yield: 250 MPa, length: {{length}}, hole: {{hole}}}]} }
            """);

        var rough = With("8 mm ±0.05", "10 mm ±1", "8.1 mm ±0.02");
        Assert.Equal(0.2, Extent(rough, "dowels.d", "pressure_share").Nominal, 1e-12);
        Assert.Equal(4000 / (7.95 * 9) / 250, Extent(rough, "dowels.d", "pressure_share").Max, 1e-12);
        Assert.Equal(4000 / (Math.PI / 4 * 7.95 * 7.95), Extent(rough, "dowels.d", "shear_stress").Max, 1e-9);
        Assert.Equal(9 / 8.05, Extent(rough, "dowels.d", "length_ratio").Min, 1e-12);
        Assert.Equal(0.03, Extent(rough, "dowels.d", "room").Min, 1e-9);
        Assert.Equal(0.17 / 50, Extent(rough, "dowels.d", "turn").Max, 1e-9);
        Assert.Equal(400_000 * 0.5 / (4000 / (7.95 * 9) / 250), Extent(rough, "dowels.d", "dowel_torque").Min, 1e-3);

        var wider = With("8 mm ±0.05", "10 mm ±2", "8.1 mm ±0.06");
        Assert.True(Extent(wider, "dowels.d", "pressure_share").Max > Extent(rough, "dowels.d", "pressure_share").Max);
        Assert.True(Extent(wider, "dowels.d", "room").Min < Extent(rough, "dowels.d", "room").Min);
        Assert.True(Extent(wider, "dowels.d", "turn").Max > Extent(rough, "dowels.d", "turn").Max);
    }

    // d_2 = 16 ∓0.1 on 17 mm: t = 0.45 to 0.55 mm; the load of the groove falls to π/4·(17² − 16.1²)·600/1.2. DIN 471 by hand.
    [Fact]
    public void The_worst_case_of_a_groove_covers_its_diameter_and_its_land()
    {
        var found = Ring("sits: shaft, diameter: 17 mm, groove: 16 mm ±0.1, land: 2 mm ±0.2, yield: 600 MPa, corner: 0 mm, axial_force: 1 kN");

        Assert.Equal(1.8 / 0.55, Extent(found, "retaining_rings.r", "land_ratio").Min, 1e-9);
        Assert.Equal(Math.PI / 4 * (17 * 17 - 16.1 * 16.1) * 500, Extent(found, "retaining_rings.r", "groove_load").Min, 1e-6);
    }

    // M = F/2·(L/2 − b/4) at L = 31, b = 19: 10.75/10 of that at 30 and 20. Beam on two supports.
    [Fact]
    public void The_worst_case_of_a_planet_pin_covers_span_and_load_width()
    {
        var found = Of("planet_pins: { p: {planets: planet, diameter: 12 mm, load_width: 20 mm ±1, cheek: 8 mm ±0.5, yield: 800 MPa, held: straddled, span: 30 mm ±1} }");
        var (bending, pressure) = (Extent(found, "planet_pins.p", "bending_stress"), Extent(found, "planet_pins.p", "cheek_pressure"));

        Assert.Equal(1.075 * bending.Nominal, bending.Max, 1e-9);
        Assert.Equal(8 / 7.5 * pressure.Nominal, pressure.Max, 1e-9);
        Assert.True(Extent(found, "planet_pins.p", "peak_safety").Min < Extent(found, "planet_pins.p", "peak_safety").Nominal / 1.05);
    }

    // Friction and dowels that hold half each hold nothing together; either alone is enough.
    [Theory]
    [InlineData(0.15, 8, "friction")]
    [InlineData(0.02, 8, "dowels")]
    [InlineData(0.02, 2, "neither")]
    public void Friction_and_dowels_are_never_added(double friction, double diameter, string path)
    {
        var analysis = Of(FormattableString.Invariant(
            $$"""
            joints:
              j: {kind: flange, torque: 400 N·m, thread: M8, strength: 8.8, bolts: 8, bolt_circle: 100 mm, face: 16 mm, hole: 9 mm, length: 40 mm, width: 22 mm,
                  clamped: [{material: wrought-6082, thickness: 24 mm}], tapped: {material: wrought-6082, depth: 20 mm}, friction: {min: 0.10, max: 0.12},
                  tightening: {torque: 22 N·m}, coating: none, roughness: 8 µm, face_friction: {{friction}}}
            dowels:
              d: {joint: j, purpose: locate, count: 2, circle: 100 mm, diameter: {{diameter}} mm, yield: 900 MPa, reamed_together: true,
                  parts: [{yield: 250 MPa, length: 16 mm, hole: {{diameter}} mm H7}, {yield: 250 MPa, length: 10 mm, hole: {{diameter}} mm G7}]}
            """));

        Assert.Equal(path, analysis.Quantity("dowels.d", "torque_path").Text);
        Assert.Equal(400, analysis.Value("dowels.d", "carried_torque"), 1e-9);
    }

    [Fact]
    public void Dowels_that_carry_take_the_torque_from_friction()
    {
        const string Joint = "joints: { j: {kind: flange, torque: 400 N·m, thread: M8, bolts: 8, clamped: [{material: wrought-6082, thickness: 24 mm}]} }";

        Assert.True(Of($"{Joint}\ndowels: {{ d: {{joint: j, purpose: carry, count: 2, circle: 100 mm, diameter: 8 mm, {Parts}}} }}").Quantity("joints.j", "dowels_carry").Truth);
        Assert.False(Of($"{Joint}\ndowels: {{ d: {{joint: j, purpose: locate, count: 2, circle: 100 mm, diameter: 8 mm, {Parts}}} }}").Quantity("joints.j", "dowels_carry").Truth);
    }

    private static GearboxAnalysis Ring(string keys) => Of($"retaining_rings: {{ r: {{on: input, {keys}}} }}");

    // DIN 471 on a public trade page: load of the groove of 17 mm for a yield of 200 MPa 3.46 kN, of 12 mm 1.53 kN, with the least land; of the
    // ring of 17 mm against a sharp edge 8 kN, lifting off at 41 000 1/min.
    [Theory]
    [InlineData(17, 1.2, 3460)]
    [InlineData(12, 0.8, 1530)]
    public void The_groove_holds_what_DIN_471_prints(double diameter, double land, double load)
    {
        var found = Ring(FormattableString.Invariant($"sits: shaft, diameter: {diameter} mm, land: {land} mm, yield: 200 MPa, corner: 0 mm, axial_force: 1 kN"));

        Assert.Equal(load, found.Value("retaining_rings.r", "groove_load"), 0.03 * load);
        Assert.Equal(found.Value("retaining_rings.r", "groove_load") / 1000, found.Value("retaining_rings.r", "groove_safety"), 1e-9);
        Assert.Equal(3, found.Value("retaining_rings.r", "land_ratio"), 0.25);
    }

    [Fact]
    public void The_ring_bears_and_turns_as_DIN_471_prints()
    {
        var found = Ring("sits: shaft, diameter: 17 mm, land: 2 mm, yield: 600 MPa, corner: 0 mm, axial_force: 1 kN");

        Assert.Equal(8, found.Value("retaining_rings.r", "ring_safety"), 1e-9);
        Assert.Equal(1500.0 / 41_000, found.Value("retaining_rings.r", "speed_share"), 1e-6);
    }

    // No number of a supplier is invented.
    [Theory]
    [InlineData("sits: shaft, diameter: 25 mm, land: 3 mm, yield: 600 MPa, corner: 0 mm, axial_force: 1 kN", "ring_load", "supplier")]
    [InlineData("sits: shaft, diameter: 25 mm, land: 3 mm, yield: 600 MPa, corner: 0 mm, axial_force: 1 kN", "speed_share", "max_speed")]
    [InlineData("sits: shaft, diameter: 17 mm, land: 3 mm, yield: 600 MPa, axial_force: 1 kN", "ring_load", "corner")]
    [InlineData("sits: shaft, diameter: 17 mm, land: 0.5 mm, yield: 600 MPa, corner: 0 mm, axial_force: 1 kN", "groove_load", "land below 3")]
    [InlineData("sits: bore, diameter: 23.7 mm, land: 3 mm, yield: 600 MPa, corner: 0 mm, axial_force: 1 kN", "groove", "DIN 472")]
    [InlineData("sits: shaft, diameter: 17 mm, land: 3 mm, yield: 600 MPa, corner: 0 mm", "groove_safety", "axial_force")]
    public void What_the_supplier_must_state_is_asked_for(string keys, string quantity, string says) =>
        Assert.Contains(says, string.Join("; ", Ring(keys).Quantity("retaining_rings.r", quantity).Reasons), StringComparison.Ordinal);

    private static GearboxAnalysis Pin(string keys) => Of(
        $"planet_pins: {{ p: {{planets: planet, diameter: 12 mm h5, load_width: 20 mm, cheek: 8 mm, cheek_yield: 650 MPa, yield: 800 MPa, secured: press, cheek_hole: 12 mm P7, {keys}}} }}");

    // F_t = 60 000/(3·20) = 1000 N at sun and ring, 2000 N on the pin less the losses, and 11 N of orbit. Straddled, L = 30, b = 20:
    // M = F/2·(15 − 5); σ = 32·M/(π·12³); τ = 4/3·(F/2)/113.1; overhung, g = 2: M = F·12.
    [Theory]
    [InlineData("held: straddled, span: 30 mm", 5, 0.5)]
    [InlineData("held: overhung, gap: 2 mm", 12, 1)]
    public void A_planet_pin_by_hand(string held, double arm, double share)
    {
        var analysis = Pin(held);
        var force = analysis.Value("planet_pins.p", "planet_force");

        Assert.Equal(2011, force, tolerance: 30.0);
        Assert.Equal(32 * force * arm / (Math.PI * 1728), analysis.Value("planet_pins.p", "bending_stress"), 1e-6);
        Assert.Equal(4.0 / 3 * share * force / (Math.PI * 36), analysis.Value("planet_pins.p", "shear_stress"), 1e-6);
        Assert.Equal(share * analysis.Value("planet_pins.p", "peak_force") / (12 * 8), analysis.Value("planet_pins.p", "cheek_pressure"), 1e-6);
        Assert.Equal(2 * (force - 10.966) + 10.966, analysis.Value("planet_pins.p", "peak_force"), 0.01);
    }

    // Planets that mesh in two planes: what one of their two bearings bears, the pin bears too. Statics: a couple loads both, and sums to nothing.
    [Theory]
    [InlineData("specs/beck-90/r760.yaml", "planet", "planet_front", "planet_rear")]
    [InlineData("specs/tarn-180/r225.yaml", "long", "long_front", "long_rear")]
    [InlineData("specs/tarn-180/r148.yaml", "long", "long_front", "long_rear")]
    public void Forces_in_two_planes_are_never_let_cancel(string path, string pin, string front, string rear)
    {
        var analysis = SpecText.AnalyseFile(path);
        var (one, other) = (analysis.Value($"bearings.{front}", "radial_load"), analysis.Value($"bearings.{rear}", "radial_load"));

        Assert.True(analysis.Value($"planet_pins.{pin}", "planet_force") >= Math.Max(one, other));
    }

    // The curvature M/(E·I) of a straddled pin summed over ten thousand slices from the middle to the edge of its load. Brute force.
    [Fact]
    public void The_slope_of_a_pin_is_the_sum_of_its_curvature()
    {
        var analysis = Pin("held: straddled, span: 30 mm, material: EN-18CrNiMo7-6");
        var force = analysis.Value("planet_pins.p", "planet_force");
        var slope = 0.0;
        for (var i = 0; i < 10_000; i++)
        {
            var x = (i + 0.5) * 1e-3;
            slope += (force / 2 * (15 - x) - force / 20 * Math.Pow(10 - x, 2) / 2) * 1e-3;
        }

        Assert.Equal(slope / (206_000 * Math.PI / 64 * Math.Pow(12, 4)) * 10_800 / Math.PI, analysis.Value("planet_pins.p", "slope"), 1e-5);
    }

    // 12 h5 is 0/−8 µm, 12 P7 −11/−29 µm (ISO 286-2): 3 to 29 µm of overlap.
    [Fact]
    public void A_pressed_pin_is_tight_by_its_fits()
    {
        var found = Pin("held: straddled, span: 30 mm").Quantity("planet_pins.p", "press_overlap");

        Assert.Equal((3, 29), (Math.Round(found.Value.Min * 1000, 6), Math.Round(found.Value.Max * 1000, 6)));
    }

    [Theory]
    [InlineData("held: straddled", "bending_stress", "planet_pins.p.span")]
    [InlineData("held: overhung", "slope", "planet_pins.p.gap")]
    public void What_a_pin_lacks_is_named(string keys, string quantity, string key) =>
        Assert.Contains(key, string.Join("; ", Pin(keys).Quantity("planet_pins.p", quantity).Reasons), StringComparison.Ordinal);

    // A thicker pin is never weaker nor steeper; a wider span never stronger; a hollow pin never stiffer.
    [Fact]
    public void Thick_short_solid_pins_are_stiffer_and_stronger() => Gen.Select(Gen.Double[8, 20], Gen.Double[1, 1.5], Gen.Double[22, 40], Gen.Double[0, 0.8]).Sample(
        (diameter, factor, span, bore) =>
        {
            static (double Slope, double Safety) At(double diameter, double span, double bore)
            {
                var analysis = Of(FormattableString.Invariant(
                    $"planet_pins: {{ p: {{planets: planet, diameter: {diameter:0.#####} mm, bore: {bore:0.#####} mm, load_width: 20 mm, cheek: 8 mm, yield: 800 MPa, held: straddled, span: {span:0.#####} mm}} }}"));
                return (analysis.Value("planet_pins.p", "slope"), analysis.Value("planet_pins.p", "peak_safety"));
            }

            var plain = At(diameter, span, 0);
            foreach (var (better, worse) in (((double Slope, double Safety), (double Slope, double Safety))[])[(At(diameter * factor, span, 0), plain), (plain, At(diameter, span * factor, 0)), (plain, At(diameter, span, bore * diameter))])
            {
                Assert.True(better.Slope <= worse.Slope * (1 + 1e-9));
                Assert.True(better.Safety >= worse.Safety * (1 - 1e-9));
            }
        }, iter: 100);
}
