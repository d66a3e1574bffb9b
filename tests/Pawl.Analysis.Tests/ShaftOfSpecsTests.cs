using CsCheck;

namespace Pawl.Analysis.Tests;

/// <summary>Shafts as a spec states them: moments, stresses, safeties, twist, slopes and critical speed by hand.</summary>
public class ShaftOfSpecsTests
{
    private const string Gears = "module: 2 mm, profile_shift: 0, face_width: 20 mm, axial_position: 0 mm";

    // A carrier on two bearings 60 mm apart with 1000 N another 60 mm out; it bears 60·4.5 = 270 N·m without losses.
    private const string Bearings =
        "near: {bearing: ball-6208, shaft: carrier, housing: housing, axial_position: 40 mm, axial: floating}, "
        + "far: {bearing: ball-6208, shaft: carrier, housing: housing, axial_position: 100 mm, axial: locating}, "
        + "pin: {bearing: needles-12, shaft: carrier, housing: planet, axial_position: 0 mm}";

    private static string Shaft(string seat = "outside: 40 mm", string more = "", string length = "140 mm") =>
        $$$"""
        out: {body: carrier, from: -20 mm, material: EN-42CrMo4, tensile: 900 MPa, yield: 700 MPa{{{more}}},
          sections: {cage: {length: 50 mm, outside: 100 mm, roughness: 16 µm}, seat: {length: {{{length}}}, roughness: 6.3 µm, {{{seat}}} } } }
        """;

    private static GearboxAnalysis Of(
        string shafts, string input = "direction: one, peak_torque: 120 N·m", double force = 1000, double application = 1, string bearings = Bearings, double torque = 60) =>
        SpecText.Analyse(SpecText.Simple(
            duty: FormattableString.Invariant(
                $$$"""
                duty:
                  input: {speed: 1500 rpm, torque: {{{torque}}} N·m, {{{input}}}}
                  output: {radial_force: {{{force}}} N, radial_force_at: 160 mm}
                  application_factor: {{{application}}}
                bearings: { {{{bearings}}} }
                shafts: { {{{shafts.ReplaceLineEndings(" ")}}} }
                """),
            gears: Gears, mesh: ", efficiency: 100 %",
            extraTrain: "bodies: {input: {floating: true}, carrier: {material: EN-42CrMo4}, housing: {material: EN-42CrMo4}}")
            .Replace("planet: {carrier: carrier, count: 3}", "planet: {carrier: carrier, count: 3, mass: 0.2 kg, load_sharing: 1, load_sharing_proof: test}", StringComparison.Ordinal));

    // Statics: 1000 N·60 mm at the bearing next to it, whatever the planets do: three alike cancel.
    [Fact]
    public void The_moment_is_greatest_at_the_bearing_next_to_the_load()
    {
        var analysis = Of(Shaft());

        Assert.Equal(60, analysis.Value("shafts.out.seat", "bending_moment"), 1e-9);
        // The peak torque is twice the rated one, and the machine pulls twice as hard.
        Assert.Equal(120, analysis.Value("shafts.out.seat", "peak_bending_moment"), 1e-9);
        Assert.Equal(0, analysis.Value("shafts.out.cage", "bending_moment"), 1e-9);
    }

    [Fact]
    public void At_a_stated_place_the_moment_is_that_of_the_place() =>
        Assert.Equal(30, Of(Shaft("outside: 40 mm, at: 130 mm")).Value("shafts.out.seat", "bending_moment"), 1e-9);

    [Fact]
    public void A_place_outside_of_its_section_is_told() => Assert.Contains(
        "shafts.out.sections.seat.at is 20 mm, but the section lies from 30 mm to 170 mm",
        Of(Shaft("outside: 40 mm, at: 20 mm")).Quantity("shafts.out.seat", "bending_moment").Reasons);

    // W = π·40³/32 = 6283.19 mm³: 60 000/W = 9.5493 MPa; half of 270 N·m over 2·W = 10.7430 MPa.
    [Fact]
    public void Nominal_stresses_by_hand()
    {
        var analysis = Of(Shaft());

        Assert.Equal(270, analysis.Value("shafts.out", "torque"), 1e-9);
        Assert.Equal(9.5493, analysis.Value("shafts.out.seat", "bending_stress"), 5e-5);
        Assert.Equal(10.7430, analysis.Value("shafts.out.seat", "torsion_stress"), 5e-5);
    }

    // A hollow section: W·(1 − (20/40)⁴) = 15/16·W.
    [Fact]
    public void A_bore_takes_its_fourth_power()
    {
        var hollow = Of(Shaft("outside: 40 mm, bore: 20 mm"));

        Assert.Equal(9.5493 * 16 / 15, hollow.Value("shafts.out.seat", "bending_stress"), 1e-4);
        Assert.Equal(0.25, hollow.Value("shafts.out.seat", "wall_share"), 1e-12);
    }

    // Both ways with half of the torque back: the swing is (270 + 135)/2 instead of 270/2. K_A multiplies both.
    [Fact]
    public void Torque_swings_from_one_direction_to_the_other()
    {
        const string Both = "direction: both, reverse_torque: 30 N·m, peak_torque: 120 N·m";

        Assert.Equal(10.7430 * 1.5, Of(Shaft(), Both).Value("shafts.out.seat", "torsion_stress"), 1e-4);
        Assert.Equal(10.7430 * 1.5 * 1.25, Of(Shaft(), Both, application: 1.25).Value("shafts.out.seat", "torsion_stress"), 1e-4);
    }

    // DIN 743 by hand: K_2 = 1 − 0.2·lg(40/7.5)/lg 20 = 0.88824, K_F = 1 − 0.22·lg 6.3·(lg 45 − 1) = 0.88513 and 0.93395 for torsion;
    // σ_bWK = 450/(1/0.88824 + 1/0.88513 − 1) = 358.40, τ_tWK = 270/(1/0.88824 + 1/0.93395 − 1) = 225.65 MPa. ψ = 0.24861 and 0.14335;
    // σ_mv = √3·10.743; σ_bADK = 358.40/(1 + 0.24861·18.607/9.5493) = 241.44, τ_tADK = 225.65/1.14335 = 197.36 MPa.
    // S_D = 1/√((9.5493/241.44)² + (10.743/197.36)²) = 14.862.
    [Fact]
    public void Fatigue_safety_of_a_smooth_section_by_hand() => Assert.Equal(14.862, Of(Shaft()).Value("shafts.out.seat", "fatigue_safety"), 5e-4);

    // With a keyway: β_b = 3·0.9^0.38 = 2.8823, β_t = 0.56·β_b + 0.1 = 1.7141 at 40 mm, the roughness in them: S_D = 8.658 the same way.
    [Fact]
    public void Fatigue_safety_of_a_keyway_by_hand()
    {
        var analysis = Of(Shaft("outside: 40 mm, notch: {kind: keyway}"));

        Assert.Equal(2.8823, analysis.Value("shafts.out.seat", "bending_notch_factor"), 5e-5);
        Assert.Equal(1.7141, analysis.Value("shafts.out.seat", "torsion_notch_factor"), 5e-5);
        Assert.Equal(8.658, analysis.Value("shafts.out.seat", "fatigue_safety"), 5e-4);
    }

    // DIN 743: at the peak σ_b = 2·9.5493 and τ = 540 N·m/(2·W) = 42.972 MPa against 1.2·700 and 1.2·700/√3: 10.9317.
    [Fact]
    public void Static_safety_by_hand() => Assert.Equal(10.9317, Of(Shaft()).Value("shafts.out.seat", "static_safety"), 5e-4);

    // K_1 of a part tempered at 100 mm: 1 − 0.26·lg(100/16) = 0.79307.
    [Fact]
    public void A_thick_part_gets_less_of_its_heat_treatment()
    {
        var analysis = Of(Shaft(more: ", heat_treated_diameter: 100 mm"));

        Assert.Equal(0.79307, analysis.Value("shafts.out", "technological_size_factor"), 5e-6);
        Assert.Equal(10.9317 * 0.79307, analysis.Value("shafts.out.seat", "static_safety"), 5e-4);
    }

    // φ = 270 000·32/(π·G)·(50/100⁴ + 140/40⁴), G = 206 000/2.6: 6.5854′.
    [Fact]
    public void Wind_up_by_hand() => Assert.Equal(6.5854, Of(Shaft()).Value("shafts.out", "wind_up"), 5e-5);

    [Fact]
    public void What_carries_no_torque_does_not_twist()
    {
        var still = Of(Shaft("outside: 40 mm, carries_torque: false"));

        Assert.Equal(6.5854 * (50 / 1e8) / ((50 / 1e8) + (140 / 256e4)), still.Value("shafts.out", "wind_up"), 1e-4);
        Assert.Equal(0, still.Value("shafts.out.seat", "torsion_stress"));
    }

    // An overhung load bends the span like a couple: M·l/(3·E·I) = 60 000·60/(3·206 000·125 664) = 4.6356·10⁻⁵ rad at the bearing next to it;
    // table 7-2 of Shigley lets a deep groove ball bearing stand 0.001 rad.
    [Fact]
    public void Slope_at_a_bearing_by_hand()
    {
        var analysis = Of(Shaft());

        Assert.Equal(4.6356e-5 * 10_800 / Math.PI, analysis.Value("shafts.out", "bearing_slope"), 5e-5);
        Assert.Equal(0.046356, analysis.Value("shafts.out", "bearing_slope_share"), 5e-6);
    }

    private static GearboxAnalysis Pair(string more = "") => SpecText.Analyse(SpecText.Pair(
        "teeth: 20, module: 2 mm, profile_shift: 0, face_width: 20 mm, axial_position: 100 mm",
        "teeth: 41, module: 2 mm, profile_shift: 0, face_width: 20 mm, axial_position: 100 mm", more:
        $$$"""
          application_factor: 1
        bearings:
          left: {bearing: ball-6208, shaft: shaft_1, housing: housing, axial_position: 0 mm, axial: locating}
          right: {bearing: ball-6208, shaft: shaft_1, housing: housing, axial_position: 200 mm, axial: floating}
        shafts: {first: {body: shaft_1, from: 0 mm, material: EN-42CrMo4, tensile: 900 MPa, yield: 700 MPa, sections: {all: {length: 200 mm, outside: 30 mm, roughness: 6.3 µm}}{{{more}}}}}
        """));

    // F = F_t/cos 20° = 2000/cos 20° = 2128.36 N in the middle of 200 mm of Ø30: F·l/4, F·l²/(16·E·I), F·l³/(48·E·I).
    [Fact]
    public void A_gear_between_its_bearings_bends_the_shaft_as_the_textbook_has_it()
    {
        var analysis = Pair();

        Assert.Equal(106.418, analysis.Value("shafts.first.all", "bending_moment"), 5e-4);
        Assert.Equal(2.23324, analysis.Value("shafts.first", "bearing_slope"), 5e-6);
        Assert.Equal(0, analysis.Value("shafts.first", "gear_slope"), 1e-9);
        Assert.Equal(43.3083, analysis.Value("shafts.first", "gear_deflection"), 5e-5);
    }

    // A uniform shaft on two bearings: ω = (π/l)²·√(E·I/(ρ·A)) = 90 525 1/min; slices of 10 mm are a little off.
    [Fact]
    public void A_uniform_shaft_whirls_as_the_textbook_has_it()
    {
        var analysis = Pair();

        Assert.Equal(90_525, analysis.Value("shafts.first", "critical_speed"), tolerance: 90_525 * 0.005);

        // Bearings that give way make it whirl earlier; Dunkerley: 1/n² is at most the sum of those of the shaft and of the springs alone.
        var soft = analysis.Value("shafts.first", "critical_speed_on_springs");
        Assert.InRange(soft, 1000, 90_525);
        Assert.Equal(1500 / soft, analysis.Value("shafts.first", "critical_speed_share"), tolerance: 1e-6);
    }

    [Theory]
    [InlineData("peak_bending_moment", "duty.input.peak_torque is not stated")]
    public void What_waits_for_the_duty_says_so(string quantity, string reason) => Assert.Contains(reason, Pair().Quantity("shafts.first.all", quantity).Reasons);

    [Fact]
    public void What_is_missing_is_named()
    {
        var analysis = Of("out: {body: carrier, sections: {seat: {length: 10 mm, outside: 40 mm, notch: {kind: shoulder}}}}");

        Assert.Contains("shafts.out.tensile is not stated", analysis.Quantity("shafts.out.seat", "fatigue_safety").Reasons);
        Assert.Contains("shafts.out.material is not stated", analysis.Quantity("shafts.out", "wind_up").Reasons);
        Assert.Contains("shafts.out.from is not stated", analysis.Quantity("shafts.out", "bearing_slope").Reasons);
        Assert.Contains("shafts.out.sections.seat.roughness is not stated", analysis.Quantity("shafts.out.seat", "roughness").Reasons);
    }

    [Fact]
    public void A_notch_names_the_dimension_that_it_lacks() => Assert.Contains(
        "shafts.out.sections.seat.notch.large is not stated", Of(Shaft("outside: 40 mm, notch: {kind: shoulder, radius: 1 mm}")).Quantity("shafts.out.seat", "fatigue_safety").Reasons);

    [Fact]
    public void A_shaft_without_bearings_is_not_bent_by_guesses()
    {
        var analysis = Of(Shaft(), bearings: "pin: {bearing: needles-12, shaft: carrier, housing: planet, axial_position: 0 mm}");

        Assert.False(analysis.Quantity("shafts.out.seat", "bending_moment").IsEvaluated);
        Assert.False(analysis.Quantity("shafts.out.seat", "fatigue_safety").IsEvaluated);
        Assert.True(analysis.Quantity("shafts.out", "wind_up").IsEvaluated);
    }

    [Fact]
    public void A_load_beside_the_shaft_is_told() => Assert.Contains(
        Of(Shaft(length: "100 mm")).Quantity("shafts.out.seat", "bending_moment").Reasons,
        reason => reason.StartsWith("bearings and loads must lie on the shaft", StringComparison.Ordinal));

    // Law: no load makes a section safer, no thickness weaker; tolerances contain the nominal value.
    [Fact]
    public void More_load_is_never_safer_and_more_steel_never_weaker() => Gen.Select(Gen.Double[20, 60], Gen.Double[1, 1.5], Gen.Double[100, 2000], Gen.Double[1, 2])
        .Sample(
            (diameter, thicker, force, more) =>
            {
                var (seat, stout) = (Shaft(FormattableString.Invariant($"outside: {diameter:0.###} mm h9")), Shaft(FormattableString.Invariant($"outside: {diameter * thicker:0.###} mm h9")));
                var before = Of(seat, force: Math.Round(force, 3));
                foreach (var safety in (ReadOnlySpan<string>)["static_safety", "fatigue_safety"])
                {
                    var value = before.Value("shafts.out.seat", safety);
                    Assert.True(Of(stout, force: Math.Round(force, 3)).Value("shafts.out.seat", safety) >= value * (1 - 1e-6));
                    Assert.True(Of(seat, force: Math.Round(force * more, 3)).Value("shafts.out.seat", safety) <= value * (1 + 1e-6));
                    Assert.True(Of(seat, force: Math.Round(force, 3), application: Math.Round(more, 3)).Value("shafts.out.seat", safety) <= value * (1 + 1e-6));
                    var extent = before.Quantity("shafts.out.seat", safety).Value;
                    Assert.InRange(extent.Nominal, extent.Min, extent.Max);
                }
            },
            iter: 200);
}
