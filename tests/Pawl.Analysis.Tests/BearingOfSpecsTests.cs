using CsCheck;
using Pawl.Mechanics.Bearings;

namespace Pawl.Analysis.Tests;

/// <summary>Bearings as a spec states them: loads by hand, life by hand, and what is refused.</summary>
public class BearingOfSpecsTests
{
    private const string Gears = "module: 2 mm, profile_shift: 0, face_width: 20 mm, axial_position: 0 mm";

    private const string Planet = "pin: {bearing: needles-12, shaft: carrier, housing: planet, axial_position: 0 mm, shaft_seat: 12 mm h5, housing_seat: 17 mm G6}";

    private const string Carrier =
        """
        near: {bearing: ball-6208, shaft: carrier, housing: housing, axial_position: 40 mm, axial: floating, clearance: C3, shaft_seat: 40 mm k5, housing_seat: 80 mm H7},
        far: {bearing: ball-6208, shaft: carrier, housing: housing, axial_position: 100 mm, axial: locating, clearance: C3, shaft_seat: 40 mm k5, housing_seat: 80 mm H7}
        """;

    private static string Duty(string more = "", string input = "", string output = "") =>
        $$$"""
        duty:
          input: {speed: 1500 rpm, torque: 60 N·m, direction: one, peak_torque: 120 N·m{{{input}}}}
          output: { {{{output}}} }
          service_life: 2000 h
          application_factor: 1
          oil: {lubricant: gear-oil-vg100, running: 60 °C, coldest: 0 °C, hottest: 90 °C}
          {{{more}}}
        """;

    private static string OneLine(string bearings) => bearings.ReplaceLineEndings(" ");

    private static GearboxAnalysis Of(string bearings, string duty, string planets = "", string gears = Gears, string mesh = "", int count = 3) =>
        SpecText.Analyse(SpecText.Simple(
            count: count, duty: $"{duty}\nbearings: {{ {OneLine(bearings)} }}", gears: gears, mesh: mesh,
            extraTrain: "bodies: {input: {floating: true}, carrier: {material: EN-42CrMo4}, housing: {material: EN-42CrMo4}}")
            .Replace($"planet: {{carrier: carrier, count: {count}}}", $"planet: {{carrier: carrier, count: {count}, mass: 0.2 kg, load_sharing: 1, load_sharing_proof: test{planets}}}", StringComparison.Ordinal));

    // 20/25/70 teeth of module 2: the sun turns at 1500, the carrier at 1500·20/90 = 333.33, so the planet turns on it at
    // (1500 − 333.33)·20/25 = 933.33 1/min. Closed form.
    [Fact]
    public void A_planet_bearing_turns_with_the_planet_against_the_carrier() =>
        Assert.Equal(933.3333, Of(Planet, Duty()).Value("bearings.pin", "relative_speed"), 1e-3);

    // F_t = 60 000/(3·20) = 1000 N at the sun and, lossless, at the ring; F_c = 0.2·0.045·(333.33·π/30)² = 10.97 N across it; radial forces
    // cancel for no profile shift. The loss of the first mesh makes the ring's force smaller, by some 2 %.
    [Fact]
    public void A_planet_presses_on_its_pin_with_both_teeth_and_its_orbit()
    {
        var analysis = Of(Planet, Duty());

        Assert.Equal(2000, analysis.Value("bearings.pin", "radial_load"), tolerance: 30.0);
        Assert.Equal(10.966, analysis.Value("bearings.pin", "orbit_force"), 0.001);
        Assert.Equal(10.966 / 2000, analysis.Value("bearings.pin", "orbit_share"), 1e-4);
        Assert.Equal(0, analysis.Value("bearings.pin", "tilt_couple"), 1e-9);
    }

    // The same planet on two bearings 8 mm before and 4 mm behind its middle: 2000·4/12 and 2000·8/12, closed form.
    [Fact]
    public void Two_bearings_share_a_planet_by_their_distances()
    {
        var two = Planet.Replace("pin:", "first:", StringComparison.Ordinal).Replace("axial_position: 0 mm", "axial_position: -8 mm", StringComparison.Ordinal)
            + ", " + Planet.Replace("pin:", "second:", StringComparison.Ordinal).Replace("axial_position: 0 mm", "axial_position: 4 mm", StringComparison.Ordinal);
        var (whole, analysis) = (Of(Planet, Duty()).Value("bearings.pin", "radial_load"), Of(two, Duty()));

        // The orbit lies on each by its own lever, 10.966·4/12 and 10.966·8/12, and so do the teeth, which lie in the same plane.
        Assert.Equal(10.966 / 3, analysis.Value("bearings.first", "orbit_load"), 0.001);
        Assert.Equal(10.966 * 2 / 3, analysis.Value("bearings.second", "orbit_load"), 0.001);
        Assert.Equal(Of(Planet, Duty()).Value("bearings.pin", "orbit_share"), analysis.Value("bearings.first", "orbit_share"), 1e-9);
        Assert.Equal(whole / 3, analysis.Value("bearings.first", "radial_load"), 1e-6);
        Assert.Equal(whole * 2 / 3, analysis.Value("bearings.second", "radial_load"), 1e-6);
    }

    // Straight from ISO 281 by hand: C/P with C = needles-12 of the catalogue, 10/3, 933.33 1/min.
    [Fact]
    public void The_basic_life_by_hand()
    {
        var analysis = Of(Planet, Duty());
        var (rating, load) = (analysis.Value("bearings.pin", "set_rating"), analysis.Value("bearings.pin", "equivalent_load"));

        Assert.Equal(1e6 * Math.Pow(rating / load, 10.0 / 3) / (60 * 933.33333), analysis.Value("bearings.pin", "basic_life"), 1e-3);
    }

    // Three planets with one needle bearing each: the product of three like Weibull distributions of slope 9/8, so L·3^(−8/9).
    [Fact]
    public void Alike_bearings_together_live_shorter_by_their_number()
    {
        var analysis = Of(Planet, Duty());

        Assert.Equal(analysis.Value("bearings.pin", "basic_life") * Math.Pow(3, -8.0 / 9), analysis.Value("train", "bearing_set_life"), 1e-6);
    }

    // K_γ = 1.2 of three: the others carry (3 − 1.2)/2 = 0.9 of the mean, 0.75 of the heaviest; the orbit of 11 N stays. That life is
    // computed again as that of the heaviest planet at three quarters of the torque. Σ (t/L)^e = 1 with 9/8 rollers, 10/9 balls.
    [Theory]
    [InlineData("", 0)]
    [InlineData(", " + Carrier, 2)]
    public void The_heaviest_planet_and_the_others_use_up_the_life_of_the_set(string more, int balls)
    {
        GearboxAnalysis At(int torque) => SpecText.Analyse(SpecText.Simple(
            duty: $"{Duty().Replace("torque: 60", $"torque: {torque}", StringComparison.Ordinal)}\nbearings: {{ {OneLine(Planet + more)} }}", gears: Gears,
            extraTrain: "bodies: {input: {floating: true}}")
            .Replace("planet: {carrier: carrier, count: 3}", "planet: {carrier: carrier, count: 3, mass: 0.2 kg, load_sharing: 1.2}", StringComparison.Ordinal));
        var analysis = At(60);
        var (heaviest, other) = (analysis.Value("bearings.pin", "basic_life"), At(45).Value("bearings.pin", "basic_life"));
        var life = analysis.Value("train", "bearing_set_life");
        var used = Math.Pow(life / heaviest, 9.0 / 8) + (2 * Math.Pow(life / other, 9.0 / 8))
            + new[] { "near", "far" }.Take(balls).Sum(name => Math.Pow(life / analysis.Value($"bearings.{name}", "basic_life"), 10.0 / 9));

        Assert.Equal(0.75, analysis.Value("bearings.pin", "other_planet_share"), 1e-12);
        Assert.Equal(1, analysis.Value("bearings.pin", "life_of_others") / other, 1e-9);
        Assert.Equal(1, used, 1e-9);
        Assert.Equal(
            Math.Pow(0.9, Math.Pow(2000 / life, 9.0 / 8)), analysis.Value("train", "bearing_set_reliability") / 100, balls == 0 ? 1e-9 : 2e-3);
    }

    // P_m = (Σ P³·q·n/Σ q·n)^(1/3) for balls: 800 N all the time; the torque has no hold on a load of the coupled machine.
    [Fact]
    public void A_load_of_the_machine_stays_through_the_spectrum()
    {
        var analysis = Of(
            Carrier, Duty("spectrum: [{share: 50 %, torque: 60 N·m, speed: 1500 rpm}, {share: 50 %, torque: 30 N·m, speed: 750 rpm}]", output: "radial_force: 1200 N, radial_force_at: 160 mm"));

        // Overhung by 60 mm on a span of 60 mm: the far bearing bears twice the force, the near one the force itself.
        Assert.Equal(1200, analysis.Value("bearings.near", "radial_load"), 1e-6);
        Assert.Equal(2400, analysis.Value("bearings.far", "radial_load"), 1e-6);
        Assert.Equal(2400, analysis.Value("bearings.far", "mean_load"), 1e-6);
        Assert.Equal(1e6 * Math.Pow(29100 / 2400.0, 3) / (60 * 333.33333 * 0.75), analysis.Value("bearings.far", "basic_life"), tolerance: 1.0);
    }

    // A planet that gets K_γ times the mean of three leaves 3·(K_γ − 1)/2 of a planet's force on the carrier: 0.3·2000 N for 1.2.
    [Fact]
    public void Uneven_planets_load_the_carrier()
    {
        var even = Of(Carrier, Duty());
        var uneven = SpecText.Analyse(SpecText.Simple(
            duty: $"{Duty()}\nbearings: {{ {OneLine(Carrier)} }}", gears: Gears,
            extraTrain: "bodies: {input: {floating: true}}")
            .Replace("planet: {carrier: carrier, count: 3}", "planet: {carrier: carrier, count: 3, mass: 0.2 kg, load_sharing: 1.2}", StringComparison.Ordinal));

        Assert.Equal(0, even.Value("bearings.near", "radial_load"), 1e-6);
        // Less the losses, 1 %. At z = 0, 40 mm before a span of 60 mm: near 600·100/60, far 600·40/60.
        Assert.Equal(1000, uneven.Value("bearings.near", "radial_load"), tolerance: 15.0);
        Assert.Equal(400, uneven.Value("bearings.far", "radial_load"), tolerance: 6.0);
    }

    // Right-hand sun driven forward: by the right-hand rule of textbooks the thrust on the driver points along its turning, + here.
    // F_a = 2·T·tan β/d of all meshes, on the ring the opposite; none is left on the planet, but the couple F_a·d_w of its two meshes. β = 15°, d_sun = 40/cos 15°, T = 60 N·m. Closed form.
    [Fact]
    public void Helical_planets_push_sun_and_ring_apart_and_tilt()
    {
        const string Helical = "module: 2 mm, profile_shift: 0, face_width: 20 mm, axial_position: 0 mm, helix_angle: 15°";
        var text = SpecText.Simple(
            duty: $"{Duty()}\nbearings: {{ {Planet}, sun: {{bearing: ball-6208, shaft: input, housing: housing, axial_position: -40 mm, axial: locating}} }}", gears: Helical,
            extraTrain: "bodies: {input: {floating: true}}")
            .Replace("sun: {on: input,", "sun: {hand: right, on: input,", StringComparison.Ordinal)
            .Replace("planet_gear: {on: planet,", "planet_gear: {hand: left, on: planet,", StringComparison.Ordinal)
            .Replace("ring: {on: housing,", "ring: {hand: left, on: housing,", StringComparison.Ordinal)
            .Replace("planet: {carrier: carrier, count: 3}", "planet: {carrier: carrier, count: 3, mass: 0.2 kg, load_sharing: 1, load_sharing_proof: test}", StringComparison.Ordinal);
        var analysis = SpecText.Analyse(text);
        var force = 2 * 60_000 * Math.Tan(Math.PI / 12) / (40 / Math.Cos(Math.PI / 12));

        Assert.Equal(force, analysis.Value("bodies.input", "axial_force"), 1e-6 * force);
        Assert.Equal(force, analysis.Value("bearings.sun", "axial_load"), 1e-6 * force);
        // Each mesh of a planet has a third of it, at half the pitch diameter of 50/cos 15°.
        Assert.Equal(force / 3 * (50 / Math.Cos(Math.PI / 12)) / 1000, analysis.Value("bearings.pin", "tilt_couple"), 0.2);
    }

    // Tapered rollers face to face: F_r/(2·Y) sets thrust free, Y = 0.4·cot α. By the textbook's table of a pair: the one with the greater
    // induced thrust helped by the outer force keeps its own, the other gets the sum.
    [Fact]
    public void A_pair_hands_its_thrust_on()
    {
        const string Pair =
            """
            front: {bearing: tapered-50, shaft: carrier, housing: housing, axial_position: 40 mm, axial: minus},
            rear: {bearing: tapered-50, shaft: carrier, housing: housing, axial_position: 100 mm, axial: plus}
            """;
        var analysis = Of(Pair, Duty(output: "radial_force: 3000 N, radial_force_at: 160 mm, axial_force: 500 N"));
        var offset = 65 / 2.0 * Math.Tan(Math.PI / 12);
        var span = 60 - (2 * offset);
        var (front, rear) = (3000 * (60 + offset) / span, 3000 * (60 + offset + span) / span);
        var y = 0.4 / Math.Tan(Math.PI / 12);

        Assert.Equal(front, analysis.Value("bearings.front", "radial_load"), 1e-6);
        Assert.Equal(rear, analysis.Value("bearings.rear", "radial_load"), 1e-6);
        Assert.Equal((rear / (2 * y)) + 500, analysis.Value("bearings.front", "axial_load"), 1e-6);
        Assert.Equal(Math.Max(rear / (2 * y), (front / (2 * y)) + 500), analysis.Value("bearings.rear", "axial_load"), 1e-6);
    }

    // Steel in steel, evenly warm: no fit and no play changes but by the 0.5·10⁻⁶ 1/K between ring and shaft steel.
    [Fact]
    public void Even_warmth_of_steel_leaves_fits_and_play_alone()
    {
        var even = Carrier.Replace("axial: floating", "axial: floating, inner_warmer: 0 K", StringComparison.Ordinal);
        var found = Of(even, Duty()).Quantity("bearings.near", "inner_fit");

        // 40 k5 is +2 to +13 µm (ISO 286-2), the bore 0 to −12 µm: 2 to 25 µm at 20 °C; hot by 70 K 1.4 µm less, cold by 20 K 0.4 µm more.
        Assert.Equal(2 - 1.4, found.Value.Min * 1000, 1e-6);
        Assert.Equal(25 + 0.4, found.Value.Max * 1000, 1e-6);
    }

    // F_c of a ball, B25 of textbooks: closed form m·(D_pw/2)·ω_c² with ω_c = ω·(1 − γ)/2.
    [Fact]
    public void Balls_of_silicon_nitride_press_less()
    {
        static double Share(string id) => Of(
            $"near: {{bearing: {id}, shaft: carrier, housing: housing, axial_position: 40 mm}}, far: {{bearing: ball-6208, shaft: carrier, housing: housing, axial_position: 100 mm}}",
            Duty(output: "radial_force: 1200 N, radial_force_at: 160 mm")).Value("bearings.near", "centrifugal_share");
        var omega = 1500.0 * 20 / 90 * Math.PI / 30;
        var cage = omega * (1 - (11.906 / 60)) / 2;
        var force = 7850e-12 * Math.PI * Math.Pow(11.906, 3) / 6 * 30 * cage * cage;

        Assert.Equal(force * 9 / 1200, Share("ball-6208"), 1e-9);
        Assert.Equal(3250.0 / 7850, Share("ball-6208-hybrid") / Share("ball-6208"), 1e-9);
    }

    // The meshed pair of R180 reckoned apart from this code: complex numbers in the plane of the carrier, lossless, K_A = 1.25, both
    // directions of drive with 190 N·m and 150 N·m. The losses, which that leaves out, are 1.5 % in all.
    [Theory]
    [InlineData("short", 4722)]
    [InlineData("long_front", 2736)]
    [InlineData("long_rear", 2610)]
    public void The_pinions_of_a_meshed_pair_press_as_vectors_say(string bearing, double expected) =>
        Assert.Equal(1, SpecText.AnalyseFile("specs/tarn-180/r180.yaml").Value($"bearings.{bearing}", "radial_load") / expected, 0.025);

    // Common practice, no source: a bearing of some 42 mm mean diameter in a splashed unit runs on balls of steel up to 11 000 to 12 000 1/min, on
    // ceramic ones at 12 000 to 13 000 1/min.
    [Fact]
    public void Ceramic_balls_run_where_steel_ones_no_longer_do()
    {
        static double Max(string id) => Of(
            $"near: {{bearing: {id}, shaft: carrier, housing: housing, axial_position: 40 mm}}", Duty()).Value("bearings.near", "speed_guide") / 42;

        Assert.InRange(Max("ball-6208"), 11_000, 12_000);
        Assert.True(Max("ball-6208-hybrid") > 13_000);
    }

    // More torque never lengthens the life nor the static safety.
    [Fact]
    public void More_torque_never_lets_a_bearing_live_longer() => Gen.Double[5, 200].Select(Gen.Double[1, 3]).Sample(
        (torque, factor) =>
        {
            static (double Life, double Safety) At(double torque)
            {
                var analysis = Of(Planet, FormattableString.Invariant(
                    $"duty: {{input: {{speed: 1500 rpm, torque: {torque:0.######} N·m, peak_torque: {torque * 2:0.######} N·m}}, application_factor: 1, oil: {{lubricant: gear-oil-vg100, running: 60 °C, coldest: 0 °C, hottest: 90 °C}}}}"));
                return (analysis.Value("bearings.pin", "basic_life"), analysis.Value("bearings.pin", "static_safety"));
            }

            var (light, heavy) = (At(torque), At(torque * factor));
            Assert.True(heavy.Life <= light.Life * (1 + 1e-9));
            Assert.True(heavy.Safety <= light.Safety * (1 + 1e-9));
        }, iter: 60);

    // Equally spaced planets leave nothing on central shafts; moved ones do. Statics.
    [Theory]
    [InlineData(3)]
    [InlineData(5)]
    public void Equally_spaced_planets_leave_the_carrier_alone(int count) =>
        Assert.Equal(0, Of(Carrier, Duty(), count: count).Value("bearings.near", "radial_load"), 1e-6);

    [Fact]
    public void Moved_planets_load_the_carrier() => Assert.True(
        Of(Carrier, Duty(), planets: ", positions: [0°, 112°, 240°]").Value("bearings.near", "radial_load") > 100);

    // The share of the hottest and coldest that decides is told apart: an aluminium housing lets a steel ring go by D·(23 − 12)·10⁻⁶·70 K.
    [Fact]
    public void A_housing_of_aluminium_lets_go_when_hot()
    {
        var text = SpecText.Simple(
            duty: $"{Duty()}\nbearings: {{ {OneLine(Carrier)} }}", gears: Gears, extraTrain: "bodies: {input: {floating: true}, housing: {material: wrought-6082}}")
            .Replace("planet: {carrier: carrier, count: 3}", "planet: {carrier: carrier, count: 3, mass: 0.2 kg}", StringComparison.Ordinal);
        var found = SpecText.Analyse(text).Quantity("bearings.near", "outer_fit");

        // 80 H7 is 0 to +30 µm, the ring 0 to −13 µm (ISO 492): −43 to 0 µm at 20 °C.
        Assert.Equal(-43 - (80 * 11e-3 * 70), found.Value.Min * 1000, 1e-6);
        Assert.Equal(80 * 11e-3 * 20, found.Value.Max * 1000, 1e-6);
    }

    // The sun shaft is pushed forward with 776 N (right-hand rule). On a stub its outer ring goes forward, so the bearing whose inner ring takes
    // thrust backward bears it.
    [Fact]
    public void A_body_on_the_outer_ring_presses_the_other_way()
    {
        static (double Plus, double Minus) On(string shaft, string housing)
        {
            var text = SpecText.Simple(
                duty: $"{Duty()}\nbearings: {{ a: {{bearing: tapered-50, shaft: {shaft}, housing: {housing}, axial_position: -140 mm, axial: plus}}, b: {{bearing: tapered-50, shaft: {shaft}, housing: {housing}, axial_position: -40 mm, axial: minus}} }}",
                gears: "module: 2 mm, profile_shift: 0, face_width: 20 mm, axial_position: 0 mm, helix_angle: 15°", extraTrain: "bodies: {input: {floating: false}}")
                .Replace("sun: {on: input,", "sun: {hand: right, on: input,", StringComparison.Ordinal)
                .Replace("planet_gear: {on: planet,", "planet_gear: {hand: left, on: planet,", StringComparison.Ordinal)
                .Replace("ring: {on: housing,", "ring: {hand: left, on: housing,", StringComparison.Ordinal)
                .Replace("planet: {carrier: carrier, count: 3}", "planet: {carrier: carrier, count: 3, mass: 0.2 kg, load_sharing: 1, load_sharing_proof: test}", StringComparison.Ordinal);
            var analysis = SpecText.Analyse(text);
            return (analysis.Value("bearings.a", "axial_load"), analysis.Value("bearings.b", "axial_load"));
        }

        Assert.True(On("input", "housing").Plus > 700);
        Assert.Equal(0, On("input", "housing").Minus, 1e-6);
        Assert.Equal(On("input", "housing").Plus, On("housing", "input").Minus, 1e-6);
        Assert.Equal(On("input", "housing").Minus, On("housing", "input").Plus, 1e-6);
    }

    // Steel in steel, 11.5 against 11.5: nothing is lost. In aluminium the 23 − 11.5 of 70 K over the 60 mm to its own locating bearing.
    [Fact]
    public void A_floating_bearing_asks_its_own_locating_one()
    {
        var bearings = Carrier.Replace("axial: floating", "axial: floating, float: 0.3 mm, inner_warmer: 0 K", StringComparison.Ordinal)
            + ", input: {bearing: ball-6205, shaft: input, housing: housing, axial_position: -300 mm, axial: locating}";
        var text = SpecText.Simple(
            duty: $"{Duty()}\nbearings: {{ {OneLine(bearings)} }}", gears: Gears,
            extraTrain: "bodies: {input: {floating: true}, carrier: {material: EN-42CrMo4}, housing: {material: wrought-6082}}")
            .Replace("planet: {carrier: carrier, count: 3}", "planet: {carrier: carrier, count: 3, mass: 0.2 kg}", StringComparison.Ordinal);

        Assert.Equal(0.3 - (11.5e-6 * 70 * 60), SpecText.Analyse(text).Value("bearings.near", "axial_float"), 1e-9);
    }

    [Fact]
    public void What_turns_without_a_bearing_is_told()
    {
        var analysis = Of(Carrier, Duty(input: ", radial_force: 50 N, radial_force_at: -50 mm"));

        Assert.Equal("a planet without a bearing", analysis.Quantity("bodies.planet", "unsupported").Text);
        Assert.Equal("a floating body without a bearing that bears the coupled machine or its weight", analysis.Quantity("bodies.input", "unsupported").Text);
        Assert.Equal("none", analysis.Quantity("bodies.carrier", "unsupported").Text);
    }

    [Theory]
    [InlineData("40 mm", "100 mm", true)]
    [InlineData("40 mm", "40 mm", false)]
    [InlineData("40 mm", "40.5 mm", false)]
    public void Bearings_at_one_place_hold_nothing(string first, string second, bool holds)
    {
        var found = Of(
            $"a: {{bearing: ball-6208, shaft: carrier, housing: housing, axial_position: {first}}}, b: {{bearing: ball-6208, shaft: carrier, housing: housing, axial_position: {second}}}",
            Duty()).Quantity("bearings.a", "radial_load");

        Assert.Equal(holds, found.IsEvaluated);
    }

    [Fact]
    public void A_share_at_rest_wears_nothing()
    {
        var analysis = Of(
            Planet, Duty("spectrum: [{share: 50 %, torque: 60 N·m, speed: 1500 rpm}, {share: 50 %, torque: 60 N·m, speed: 0 rpm}]"));

        Assert.Equal(2 * Of(Planet, Duty()).Value("bearings.pin", "basic_life"), analysis.Value("bearings.pin", "basic_life"), 1e-3);
        Assert.True(analysis.Quantity("bearings.pin", "viscosity_ratio").IsEvaluated);
    }

    // The load of a machine stands still; what uneven planets leave over turns with the carrier, and then the outer ring is the one that must sit tight.
    [Fact]
    public void Where_uneven_planets_outweigh_the_machine_the_load_turns_with_the_carrier()
    {
        var text = SpecText.Simple(
            duty: $"{Duty()}\nbearings: {{ {OneLine(Carrier)} }}", gears: Gears, extraTrain: "bodies: {input: {floating: true}}")
            .Replace("planet: {carrier: carrier, count: 3}", "planet: {carrier: carrier, count: 3, mass: 0.2 kg, load_sharing: 1.2}", StringComparison.Ordinal);
        var alone = SpecText.Analyse(text);
        var loaded = SpecText.Analyse(text.Replace("output: {", "output: {radial_force: 9000 N, radial_force_at: 160 mm", StringComparison.Ordinal));

        Assert.Equal(("stationary", "rotating"), (alone.Quantity("bearings.near", "inner_load").Text, alone.Quantity("bearings.near", "outer_load").Text));
        Assert.Equal(("rotating", "stationary"), (loaded.Quantity("bearings.near", "inner_load").Text, loaded.Quantity("bearings.near", "outer_load").Text));
    }

    [Theory]
    [InlineData("a: {bearing: ball-6208, shaft: carrier, housing: housing, axial_position: 30 mm}", "basic_life", "carrier is not held")]
    [InlineData("a: {bearing: ball-6208, shaft: carrier, housing: housing}, b: {bearing: ball-6208, shaft: carrier, housing: housing, axial_position: 90 mm}", "basic_life", "bearings.a.axial_position is not stated")]
    [InlineData("a: {bearing: ball-6208, shaft: carrier, housing: housing, axial_position: 30 mm}, b: {bearing: ball-6208, shaft: carrier, housing: housing, axial_position: 60 mm}, c: {bearing: ball-6208, shaft: carrier, housing: housing, axial_position: 90 mm}", "radial_load", "3 bearings hold carrier: their loads need the stiffness of the shaft")]
    [InlineData("a: {bearing: ball-6208, shaft: carrier, housing: housing, axial_position: 30 mm}, b: {bearing: ball-6208, shaft: carrier, housing: housing, axial_position: 90 mm}", "operating_clearance", "bearings.a.clearance is not stated")]
    [InlineData("a: {bearing: ball-6208, shaft: carrier, housing: housing, axial_position: 30 mm, clearance: CN}, b: {bearing: ball-6208, shaft: carrier, housing: housing, axial_position: 90 mm}", "operating_clearance", "bearings.a.shaft_seat is not stated")]
    [InlineData("a: {bearing: ball-6208, shaft: carrier, housing: housing, axial_position: 30 mm}, b: {bearing: ball-6208, shaft: carrier, housing: housing, axial_position: 90 mm}", "contamination_factor", "lubrication.cleanliness is not stated")]
    [InlineData("a: {bearing: needles-12, shaft: carrier, housing: planet, axial_position: 0 mm}", "raceway_hardness", "bearings.a.raceway_hardness is not stated")]
    [InlineData("a: {bearing: ball-6208-sealed, shaft: carrier, housing: housing, axial_position: 30 mm}, b: {bearing: ball-6208, shaft: carrier, housing: housing, axial_position: 90 mm}", "viscosity_ratio", "the bearing runs on grease of its own")]
    [InlineData("a: {bearing: ball-6208, shaft: carrier, housing: housing, axial_position: 30 mm}, b: {bearing: ball-6208, shaft: carrier, housing: housing, axial_position: 90 mm}", "fillet_reserve", "bearings.a.fillet is not stated")]
    [InlineData("a: {bearing: ball-6208, shaft: carrier, housing: housing, axial_position: 30 mm}, b: {bearing: ball-6208, shaft: carrier, housing: housing, axial_position: 90 mm, axial: locating}", "axial_float", "bearings.a.float is not stated")]
    public void What_is_missing_is_named(string bearings, string quantity, string reason)
    {
        var found = Of(bearings, Duty()).Quantity("bearings.a", quantity);

        Assert.False(found.IsEvaluated);
        Assert.Contains(found.Reasons, said => said.Contains(reason, StringComparison.Ordinal));
    }

    // The pin and the carrier on one oil: the thinnest film is that of the bearing with the least κ; one on grease of its own is left out.
    [Theory]
    [InlineData("ball-6208")]
    [InlineData("ball-6208-sealed")]
    public void The_thinnest_film_is_that_of_the_bearings_in_oil(string near)
    {
        var analysis = Of(
            $"{Planet}, a: {{bearing: {near}, shaft: carrier, housing: housing, axial_position: 30 mm}}, b: {{bearing: ball-6208, shaft: carrier, housing: housing, axial_position: 90 mm}}",
            Duty());
        double[] ratios = [analysis.Value("bearings.pin", "viscosity_ratio"), analysis.Value("bearings.b", "viscosity_ratio")];

        Assert.Equal(ratios.Min(), analysis.Value("train", "min_viscosity_ratio"), 1e-12);
        Assert.True(ratios.Max() > 1.05 * ratios.Min());
    }

    [Fact]
    public void A_planet_without_mass_has_no_load_when_its_carrier_turns()
    {
        var text = SpecText.Simple(duty: $"{Duty()}\nbearings: {{ {Planet} }}", gears: Gears);
        var found = SpecText.Analyse(text).Quantity("bearings.pin", "radial_load");

        Assert.Equal(["train.planets.planet.mass is not stated"], found.Reasons);
    }

    // ISO 281:2007 lists 95 % and 96 %, nothing between.
    [Fact]
    public void A_reliability_between_the_rows_is_refused()
    {
        var found = Of(Planet, Duty("reliability: 95.5 %")).Quantity("bearings.pin", "reliability_factor");

        Assert.False(found.IsEvaluated);
        Assert.StartsWith("there is no factor for a reliability of 95.5 %", Assert.Single(found.Reasons), StringComparison.Ordinal);
        Assert.Equal(0.64, Of(Planet, Duty("reliability: 95 %")).Value("bearings.pin", "reliability_factor"), 1e-12);
        Assert.Equal(1, RatingLife.ReliabilityFactor(0.9));
    }
}
