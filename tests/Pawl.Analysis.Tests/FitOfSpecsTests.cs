using System.Globalization;
using CsCheck;

namespace Pawl.Analysis.Tests;

/// <summary>Fits and centring as a spec states them: play, pressure and torque by hand, and what is refused.</summary>
public class FitOfSpecsTests
{
    private const string Oil = "oil: {running: 80 °C, coldest: -20 °C, hottest: 120 °C}";

    private const string Seat = "function: press, length: 40 mm, hub_outside: 80 mm, hole_rz: 0 µm, shaft_rz: 0 µm, min_friction: 0.1, max_friction: 0.15, torque: 0 N·m, axial_force: 100 N, speed: 0 rpm, hub_yield: 600 MPa, shaft_yield: 600 MPa";

    /// <summary>Fits without a train.</summary>
    private static GearboxAnalysis Of(string fit, string duty = Oil) => SpecText.Analyse(
        $$"""
        pawl: 1
        gearbox: {family: Test, variant: Fits}
        duty: { {{duty}} }
        fits:
          it: { {{fit}} }
        """);

    private static (double Min, double Max) Range(GearboxAnalysis analysis, string quantity, string path = "fits.it")
    {
        var found = analysis.Quantity(path, quantity);
        Assert.True(found.IsEvaluated, string.Join("; ", found.Reasons));
        var unit = found.Kind.Unit;
        return (Math.Round(unit.FromCoherent(found.Value.Min), 6), Math.Round(unit.FromCoherent(found.Value.Max), 6));
    }

    // ISO 286-2, from memory; of 25 H7/g6 and 40 H7/p6 the everyday clearances stand in many tables: 7 to 41 µm of play, 1 to 42 µm of overlap.
    // 50 H7/k6: k6 +18/+2 and H7 +25/0.
    [Theory]
    [InlineData("25 mm H7/g6", "slide", 7, 41, "clearance")]
    [InlineData("40 mm H7/p6", "press", -42, -1, "interference")]
    [InlineData("50 mm H7/k6", "locate", -18, 23, "transition")]
    public void Everyday_fits_have_their_play(string size, string function, double least, double greatest, string kind)
    {
        var analysis = Of($"size: {size}, function: {function}");

        Assert.Equal((least, greatest), Range(analysis, "clearance_20"));
        Assert.Equal(kind, analysis.Quantity("fits.it", "fit_kind").Text);
        Assert.Equal("none", analysis.Quantity("fits.it", "contradiction").Text);
    }

    // The same limits by classes and by deviations are one fit.
    [Fact]
    public void Two_dimensions_say_what_one_size_says() => Assert.Equal(
        Range(Of("size: 25 mm H7/g6, function: slide"), "clearance"),
        Range(Of("hole: 25 mm +0.021/0, shaft: 25 mm (24.980..24.993), function: slide"), "clearance"));

    [Theory]
    [InlineData("25 mm H7/k6", "slide", "a slide that some pairs of parts jam")]
    [InlineData("25 mm H7/s6", "slide", "a slide without clearance")]
    [InlineData("25 mm H7/k6", "press", "a press that some pairs of parts leave loose")]
    [InlineData("25 mm H7/g6", "press", "a press with clearance")]
    [InlineData("25 mm H7/s6", "locate", "a locating fit that is a press: it comes apart by force only")]
    [InlineData("25 mm H7/s6", "register", "a register that is a press: it comes apart by force only")]
    [InlineData("25 mm H7/h6", "slide", "none")]
    [InlineData("25 mm H7/h6", "register", "none")]
    public void A_function_against_its_limits_is_told(string size, string function, string says) =>
        Assert.Equal(says, Of($"size: {size}, function: {function}").Quantity("fits.it", "contradiction").Text);

    // An aluminium housing about steel, 62 mm: 62·(23 − 11.5)·10⁻⁶ = 0.713 µm a kelvin; +100 K: 71.3 µm, −40 K: −28.52 µm; running +60 K: 42.78 µm.
    [Fact]
    public void Light_metal_opens_in_the_heat_and_closes_in_the_cold()
    {
        var analysis = Of("hole: 62 mm +0.030/0, shaft: 62 mm 0/-0.013, function: slide, hole_material: wrought-6082");

        Assert.Equal((0, 43), Range(analysis, "clearance_20"));
        Assert.Equal(0 - 28.52, Range(analysis, "clearance_cold").Min, 0.01);
        Assert.Equal(43 + 42.78, Range(analysis, "clearance_running").Max, 0.01);
        Assert.Equal(43 + 71.3, Range(analysis, "clearance_hot").Max, 0.01);
        Assert.Equal((Range(analysis, "clearance_cold").Min, Range(analysis, "clearance_hot").Max), Range(analysis, "clearance"));
    }

    // A shaft 30 K warmer than its hub, both steel, 50 mm: 50·11.5·10⁻⁶·30 = 17.25 µm less play; as much at the hottest, which lies 40 K above running.
    [Fact]
    public void A_warmer_shaft_takes_play()
    {
        var analysis = Of("size: 50 mm H7/f7, function: slide, shaft_running: 110 °C");
        var cool = Range(analysis, "clearance_20").Min;

        Assert.Equal(cool - 17.25, Range(analysis, "clearance_running").Min, 1e-3);
        Assert.Equal(cool - 17.25, Range(analysis, "clearance_hot").Min, 1e-3);
        Assert.Equal(cool, Range(analysis, "clearance_cold").Min, 1e-3);
    }

    // Shigley, problem 3-64 in a solution manual on a public page: 40 H7/s6, solid shaft, collar of 80 mm, E = 207 GPa: 34.9 to 114.5 MPa; steel here
    // has 206 GPa, and the pressure goes with it. 20 °C throughout.
    [Fact]
    public void Pressures_of_a_solution_manual()
    {
        var (least, greatest) = Range(Of($"size: 40 mm H7/s6, {Seat}", "oil: {running: 20 °C, coldest: 20 °C, hottest: 20 °C}"), "pressure");

        Assert.Equal(34.9 * 206 / 207, least, 0.05);
        Assert.Equal(114.5 * 206 / 207, greatest, 0.05);
    }

    // Closed form of one steel and a solid shaft: p = U·E·(1 − Q²)/(2·d) = 0.06·206 000·(1 − 0.390625)/100 = 75.319 MPa; hub
    // σ_v = p·√(3 + Q⁴)/(1 − Q²) = 75.319·1.77544/0.609375; F = 0.1·p·π·50·40; T = F·25; press 0.15/0.1·F.
    [Fact]
    public void A_press_fit_by_hand()
    {
        var analysis = Of($"hole: 50 mm, shaft: 50 mm +0.06/+0.06, {Seat}");
        var axial = 0.1 * 75.319 * Math.PI * 50 * 40;

        Assert.Equal(75.319, analysis.Value("fits.it", "pressure"), 0.001);
        Assert.Equal(75.319 * Math.Sqrt(3 + (0.390625 * 0.390625)) / 0.609375, analysis.Value("fits.it", "hub_stress"), 0.01);
        Assert.Equal(75.319, analysis.Value("fits.it", "shaft_stress"), 0.001);
        Assert.Equal(axial, analysis.Value("fits.it", "axial_capacity"), tolerance: 1.0);
        Assert.Equal(axial * 25 / 1000, analysis.Value("fits.it", "torque_capacity"), 0.05);
        Assert.Equal(axial / 100, analysis.Value("fits.it", "slip_safety"), 0.01);
        Assert.Equal(1.5 * axial, analysis.Value("fits.it", "press_force"), tolerance: 2.0);
    }

    // What slips at exactly the required safety with U_req: by hand from the capacity, which is proportional to the overlap.
    [Fact]
    public void The_required_interference_gives_the_required_safety()
    {
        var analysis = Of($"hole: 50 mm, shaft: 50 mm +0.06/+0.06, {Seat}");

        Assert.Equal(
            60 * analysis.Value("fits.it", "required_slip_safety") / analysis.Value("fits.it", "slip_safety"), analysis.Value("fits.it", "required_interference"), 1e-6);
    }

    // 1.8 where the torque of a body reverses, 1.5 in one direction, and for pins that carry none.
    [Theory]
    [InlineData("direction: both", "carries: carrier", 1.8)]
    [InlineData("direction: one", "carries: carrier", 1.5)]
    [InlineData("direction: both", "torque: 0 N·m", 1.5)]
    [InlineData("direction: both", "carries: carrier, slip_safety: 2.2", 2.2)]
    public void A_torque_that_reverses_asks_for_more_safety(string direction, string torque, double required) => Assert.Equal(
        required, SpecText.Analyse(SpecText.Simple(duty:
            $$"""
            duty: {input: {speed: 1450 rpm, torque: 30 N·m, {{direction}}}, {{Oil}} }
            fits:
              it: {size: 40 mm H7/u6, {{Seat.Replace("torque: 0 N·m", torque, StringComparison.Ordinal)}} }
            """)).Value("fits.it", "required_slip_safety"));

    // DIN 7190-1 from memory: s = 0.8·(6 + 4) = 8 µm off the 60 µm.
    [Fact]
    public void Rough_seats_lose_overlap()
    {
        string Fit(string rz) => $"hole: 50 mm, shaft: 50 mm +0.06/+0.06, {Seat.Replace("hole_rz: 0 µm, shaft_rz: 0 µm", rz, StringComparison.Ordinal)}";
        var analysis = Of(Fit("hole_rz: 6 µm, shaft_rz: 4 µm"));

        Assert.Equal(8, analysis.Value("fits.it", "smoothing"), 1e-9);
        Assert.Equal(75.319 * 52 / 60, analysis.Value("fits.it", "pressure"), 0.001);
    }

    // Warm joining, by hand: 20 + (0.042 + 0.040)/(11.5·10⁻⁶·40) = 198.3 °C.
    [Fact]
    public void The_temperature_of_joining_by_hand() => Assert.Equal(
        198.26, Range(Of($"size: 40 mm H7/p6, {Seat}, joined: warm, max_joining: 200 °C"), "joining_temperature").Max, 0.01);

    // Solid shaft in a hub of one steel: the growth of the plain shaft falls out, ΔU = ρ·ω²·d·(3 + ν)·D²/(16·E) =
    // 7.85·10⁻⁹·1047.2²·50·3.3·80²/(16·206 000) = 2.758 µm at 10 000 1/min.
    [Fact]
    public void Speed_takes_overlap_by_hand()
    {
        var analysis = Of($"hole: 50 mm, shaft: 50 mm +0.06/+0.06, {Seat.Replace("speed: 0 rpm", "speed: 10000 rpm", StringComparison.Ordinal)}");

        Assert.Equal(2.758, analysis.Value("fits.it", "speed_loss"), 0.001);
        Assert.Equal(2.758 / 60 * 100, analysis.Value("fits.it", "speed_loss_share"), 0.01);
        Assert.Equal(75.319 * (60 - 2.758) / 60, Range(analysis, "pressure").Min, 0.01);
    }

    // 20/25/70 teeth: the carrier carries 30·(1 + 70/20) = 135 N·m less the losses; K_A = 1.5, and the peak 60/30 = 2 is more.
    [Theory]
    [InlineData("50 N·m", 5.0 / 3)]
    [InlineData("60 N·m", 2.0)]
    [InlineData("31 N·m", 1.5)]
    public void A_joint_carries_the_torque_of_its_body_at_the_peak(string peak, double factor)
    {
        var analysis = SpecText.Analyse(SpecText.Simple(duty:
            $$"""
            duty: {input: {speed: 1450 rpm, torque: 30 N·m, peak_torque: {{peak}}}, application_factor: 1.5, {{Oil}} }
            fits:
              it: {size: 40 mm H7/u6, {{Seat.Replace("torque: 0 N·m", "carries: carrier", StringComparison.Ordinal)}} }
            """));

        Assert.Equal(Math.Abs(analysis.Value("bodies.carrier", "torque")) * factor, analysis.Value("fits.it", "torque_carried"), 1e-6);
        Assert.Equal(135 * factor, analysis.Value("fits.it", "torque_carried"), 0.02 * 135 * factor);
    }

    [Fact]
    public void What_is_missing_is_named()
    {
        var analysis = Of("size: 40 mm H7/p6, function: press", "");

        Assert.Equal(["duty.oil.coldest is not stated"], analysis.Quantity("fits.it", "clearance_cold").Reasons);
        Assert.Contains("fits.it.hub_outside is not stated", analysis.Quantity("fits.it", "pressure").Reasons);
        Assert.Contains("fits.it.carries or fits.it.torque is not stated", analysis.Quantity("fits.it", "slip_safety").Reasons);
        Assert.Equal(["fits.it.size or fits.it.hole is not stated", "fits.it.size or fits.it.shaft is not stated"], Of("function: slide").Quantity("fits.it", "clearance_20").Reasons);
    }

    [Fact]
    public void A_size_beyond_the_table_is_not_evaluated() =>
        Assert.Contains("up to 500 mm", Assert.Single(Of("size: 600 mm H7/g6, function: slide").Quantity("fits.it", "clearance_20").Reasons.Distinct()), StringComparison.Ordinal);

    // Any two parts within their limits at the temperatures of a state have play within that state's limits. Brute force.
    [Fact]
    public void No_pair_of_parts_leaves_its_limits() =>
        Gen.Select(Gen.Int[10, 400], Gen.Int[0, 60], Gen.Int[-60, 60], Gen.Int[-40, 20], Gen.Int[20, 150], Gen.Double[0, 1], Gen.Double[0, 1]).Sample(
            (diameter, hole, shaft, cold, hot, a, b) =>
            {
                string Micro(int value) => (value / 1000.0).ToString("+0.000;-0.000", CultureInfo.InvariantCulture);
                var analysis = Of(
                    $"hole: {diameter} mm {Micro(hole + 20)}/{Micro(hole)}, shaft: {diameter} mm {Micro(shaft)}/{Micro(shaft - 13)}, function: locate, hole_material: wrought-6082",
                    $"oil: {{running: {hot} °C, coldest: {cold} °C, hottest: {hot} °C}}");
                var (d, s) = (diameter + ((hole + (20 * a)) / 1000), diameter + ((shaft - (13 * b)) / 1000));
                double Play(double t) => 1000 * ((d * (1 + (23e-6 * (t - 20)))) - (s * (1 + (11.5e-6 * (t - 20)))));

                // The growth of a hole is reckoned on the shaft's diameter: their difference, 0.1 mm, grows by no more than 0.5 µm.
                var (least, greatest) = Range(analysis, "clearance");
                return new[] { cold, 20, hot }.All(t => Play(t) >= least - 0.5 && Play(t) <= greatest + 0.5);
            }, iter: 300);

    // More overlap never carries less, a longer seat carries more in proportion, a thicker hub presses more.
    [Fact]
    public void A_press_obeys_its_laws() =>
        Gen.Select(Gen.Int[20, 80], Gen.Int[10, 60], Gen.Int[1, 40]).Sample((diameter, overlap, more) =>
        {
            double Capacity(int u, int length, double hub) => Of(
                FormattableString.Invariant($"hole: {diameter} mm, shaft: {diameter} mm +0.{u:000}/+0.{u:000}, function: press, length: {length} mm, hub_outside: {diameter * hub} mm, hole_rz: 0 µm, shaft_rz: 0 µm, min_friction: 0.1, torque: 1 N·m, speed: 0 rpm"))
                .Value("fits.it", "axial_capacity");
            var plain = Capacity(overlap, 20, 1.6);
            return Capacity(overlap + more, 20, 1.6) > plain && Capacity(overlap, 20, 2) > plain && Math.Abs((Capacity(overlap, 40, 1.6) / plain) - 2) < 1e-9;
        }, iter: 100);

    private const string Chain =
        """
        fits:
          spigot: {size: 100 mm H6/h5, function: register, hole_part: ring, shaft_part: housing}
          dowel: {size: 6 mm H7/h6, function: locate, hole_part: cover, shaft_part: ring}
        centring:
          it:
            from: housing
            to: cover
            links:
              - {runout: 0.02 mm, of: housing}
              - {fit: spigot}
              - {dowels: {first: dowel, distance: 80 mm}}
        """;

    private static GearboxAnalysis Centred(string more) => SpecText.Analyse(SpecText.Simple(
        extraTrain: "bodies: {carrier: {material: EN-42CrMo4}}", gears: "material: EN-42CrMo4, module: 2 mm, profile_shift: 0, thickness_allowance: {upper: -0.04 mm, lower: -0.06 mm}",
        mesh: more,
        duty: $$"""
            duty: {input: {speed: 1450 rpm, torque: 30 N·m}, oil: {running: 20 °C, coldest: 20 °C, hottest: 20 °C} }
            {{Chain}}
            """));

    // Run-out 20/2; 100 H6/h5 of 22 and 15 µm: 37/2; two dowels 6 H7/h6 of 12 and 8 µm, midway: (20 + 20)/4. ISO 286-2, from memory. 38.5 µm.
    [Fact]
    public void A_chain_of_registers_by_hand()
    {
        var analysis = Centred("");

        Assert.Equal(0.0385, Range(analysis, "eccentricity", "centring.it").Max, 1e-6);
        Assert.Equal(
            [("run-out of housing", 0.01), ("fit spigot", 0.0185), ("dowels dowel", 0.01)],
            Enumerable.Range(1, 3).Select(i => $"centring.it.links.{i}")
                .Select(link => (analysis.Quantity(link, "link").Text, Range(analysis, "link_eccentricity", link).Max)));
        Assert.Equal(["centring.it.limit or centring.it.mesh is not stated"], analysis.Quantity("centring.it", "permitted_eccentricity").Reasons);
    }

    // What the mesh permits, put into its centre distance, must leave just the least backlash required; sun and planet sum to 45 teeth of 2 mm.
    [Fact]
    public void The_permitted_eccentricity_takes_the_backlash_above_the_least_wanted()
    {
        string Text(string centre, string chain) => SpecText.Simple(
            extraTrain: "bodies: {carrier: {material: EN-42CrMo4}}", gears: "material: EN-42CrMo4, module: 2 mm, profile_shift: 0, thickness_allowance: {upper: -0.04 mm, lower: -0.06 mm}",
            mesh: $", centre_distance: {centre}, min_backlash: 0.03 mm",
            duty: $$"""
                duty: {input: {speed: 1450 rpm, torque: 30 N·m}, oil: {running: 20 °C, coldest: 20 °C, hottest: 20 °C} }
                {{chain}}
                """);
        var analysis = SpecText.Analyse(Text("45 mm ±0.01", Chain + "\n    mesh: [planet_gear, sun]"));
        var permitted = Range(analysis, "permitted_eccentricity", "centring.it").Min;
        var closer = SpecText.Analyse(Text(FormattableString.Invariant($"{45 - permitted:0.000000} mm ±0.01"), ""));

        Assert.Equal("the backlash of the mesh", analysis.Quantity("centring.it", "basis").Text);
        Assert.True(permitted > 0.02, $"{permitted}");
        // Second order in the shift: some 0.1 %.
        Assert.Equal(0.03, closer.Quantity("meshes.sun~planet_gear", "operating_backlash").Value.Min, 5e-4);
    }

    // A bearing gives half of its play and of that of its loose outer seat; both stand in the report of the bearing.
    [Fact]
    public void A_bearing_in_a_chain_gives_its_play_and_that_of_its_seats()
    {
        var analysis = SpecText.Analyse(SpecText.Simple(duty:
            $$"""
            duty: {input: {speed: 1450 rpm, torque: 30 N·m}, {{Oil}} }
            bearings:
              front: {bearing: ball-6208, shaft: carrier, housing: housing, axial_position: 40 mm, axial: locating, clearance: C3, shaft_seat: 40 mm k5, housing_seat: 80 mm H7}
            centring:
              it: {from: carrier, to: housing, links: [{bearing: front}], limit: 0.1 mm}
            """));
        var (play, seat) = (analysis.Quantity("bearings.front", "operating_clearance").Value.Max, analysis.Quantity("bearings.front", "outer_fit").Value.Min);

        Assert.True(seat < 0);
        Assert.Equal((play - seat) / 2, analysis.Quantity("centring.it", "eccentricity").Value.Max, 1e-9);
        Assert.Equal("the spec", analysis.Quantity("centring.it", "basis").Text);
    }

    [Fact]
    public void Two_registers_between_two_parts_compete()
    {
        var analysis = SpecText.Analyse(
            """
            pawl: 1
            gearbox: {family: Test, variant: Fits}
            fits:
              one: {size: 100 mm H6/h5, function: register, hole_part: ring, shaft_part: housing}
              two: {size: 80 mm H6/h5, function: register, hole_part: housing, shaft_part: ring}
              other: {size: 80 mm H6/h5, function: register, hole_part: housing, shaft_part: cover}
            """);

        Assert.Equal([1, 1, 0], new[] { "one", "two", "other" }.Select(name => analysis.Value($"fits.{name}", "competing_registers")));
    }
}
