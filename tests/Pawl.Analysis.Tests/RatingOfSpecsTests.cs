using CsCheck;
using Pawl.Mechanics.Rating;

namespace Pawl.Analysis.Tests;

/// <summary>Loads and strength as a spec gets them, from YAML to safety factor.</summary>
public class RatingOfSpecsTests
{
    private const string Case =
        "material: EN-18CrNiMo7-6, heat_treatment: {treatment: case-hardened, quality: MQ, surface_hardness: 60 HRC, core_hardness: 35 HRC}";

    private const string Finish = "accuracy_grade: 6, rim_thickness: 20 mm, roughness: {flank_rz: 3 µm, root_rz: 10 µm}";

    private const string Duty =
        "duty: {service_life: 10000 h, application_factor: 1, input: {speed: 1500 rpm, torque: 30 N·m, peak_torque: 60 N·m, direction: one}, "
        + "oil: {lubricant: gear-oil-vg220, running: 70 °C, coldest: 20 °C, hottest: 70 °C}}";

    // All load factors 1: what is left is the formula of the stress.
    private const string Plain = ", dynamic_factor: 1, face_load_factor: 1, efficiency: 100 %, friction: 0.05";

    private static string Gear(string more) => $"{more}, {Case}, {Finish}, pitch_deviation: 0.01 µm";

    private static string Set(string duty = Duty, string planets = "load_sharing: 1.1", string mesh = Plain, string face = "20 mm ±0") =>
        SpecText.Simple(duty: duty, mesh: mesh, gears: Gear($"module: 2 mm, profile_shift: 0, face_width: {face}, axial_position: 0 mm ±0"))
            .Replace("count: 3}", $"count: 3, {planets}}}", StringComparison.Ordinal);

    private static string Pair(string first, string second, string torque = "40 N·m", string more = "", string mesh = Plain) =>
        SpecText.Pair(Gear(first), Gear(second), mesh)
            .Replace("input: {speed: 1500 rpm, torque: 40 N·m}", $"input: {{speed: 1500 rpm, torque: {torque}, peak_torque: 1000 N·m, direction: one}}\n  service_life: 10000 h\n  application_factor: 1{more}", StringComparison.Ordinal)
            .Replace("oil: {running", "oil: {lubricant: gear-oil-vg220, running", StringComparison.Ordinal);

    // Closed form, in the carrier frame: F_t = 2·30 000/(40·3) = 500 N; z 20/25/70, ring held: n_c = 1500·20/90 = 333.33, sun
    // relative 1166.67 1/min, met by three planets: 210 000 contacts an hour; planet 1166.67·20/25·60 = 56 000, ring 333.33·60·3 = 60 000.
    [Fact]
    public void Forces_and_cycles_of_a_planetary_set_are_those_of_the_carrier_frame()
    {
        var analysis = SpecText.Analyse(Set());

        Assert.Equal(500, analysis.Value("meshes.sun~planet_gear", "tangential_force"), 1e-9);
        Assert.Equal(550, analysis.Value("meshes.sun~planet_gear", "tangential_force_heaviest"), 1e-9);
        Assert.Equal(500, analysis.Value("meshes.planet_gear~ring", "tangential_force"), 1e-9);
        Assert.Equal(550 * Math.Tan(Math.PI / 9), analysis.Value("meshes.planet_gear~ring", "radial_force"), 1e-6);
        Assert.Equal(0, analysis.Value("meshes.sun~planet_gear", "axial_force"));
        Assert.Equal(2.44346095, analysis.Value("meshes.sun~planet_gear", "pitch_line_speed"), 1e-7);
        Assert.Equal(210_000e4, analysis.Value("meshes.sun~planet_gear.sun", "load_cycles"), 1);
        Assert.Equal(56_000e4, analysis.Value("meshes.sun~planet_gear.planet_gear", "load_cycles"), 1);
        Assert.Equal(56_000e4, analysis.Value("meshes.planet_gear~ring.planet_gear", "load_cycles"), 1);
        Assert.Equal(60_000e4, analysis.Value("meshes.planet_gear~ring.ring", "load_cycles"), 1);
    }

    // Hertz: p = √(w·E_r/(π·ρ)) at the pitch point, where spur teeth of ε_α share by Z_ε² = (4 − ε_α)/3; w = F_t/(b·cos α).
    [Fact]
    public void Nominal_contact_stress_of_sun_and_ring_mesh_is_that_of_Hertz()
    {
        var analysis = SpecText.Analyse(Set());
        var steel = 206_000 / (2 * (1 - (0.3 * 0.3)));
        var angle = Math.PI / 9;
        foreach (var (mesh, first, second) in (ReadOnlySpan<(string, double, double)>)
            [("meshes.sun~planet_gear", 40, 50), ("meshes.planet_gear~ring", 50, -140)])
        {
            var (r1, r2) = (first / 2 * Math.Sin(angle), second / 2 * Math.Sin(angle));
            var pressure = Math.Sqrt(500 / (20 * Math.Cos(angle)) * steel / (Math.PI * (r1 * r2 / (r1 + r2))));
            var share = Math.Sqrt((4 - analysis.Value(mesh, "transverse_contact_ratio")) / 3);

            Assert.Equal(pressure * share, analysis.Value(mesh, "nominal_contact_stress"), 1e-6);
        }
    }

    // Statics and ISO 6336: with load factors of 1 contact stress goes with √T, root stress with T, and with width to −1/2 and −1.
    [Fact]
    public void Stress_follows_torque_and_width()
    {
        Gen.Select(Gen.Double[5, 200], Gen.Double[1.1, 5], Gen.Double[1.1, 3]).Sample(
            (torque, more, wider) =>
            {
                var one = SpecText.Analyse(PairOf(torque, 20));
                var loaded = SpecText.Analyse(PairOf(torque * more, 20));
                var wide = SpecText.Analyse(PairOf(torque, 20 * wider));
                const string Gear = "meshes.pinion~wheel.pinion";

                Assert.Equal(Math.Sqrt(more), loaded.Value(Gear, "contact_stress") / one.Value(Gear, "contact_stress"), 1e-9);
                Assert.Equal(more, loaded.Value(Gear, "root_stress") / one.Value(Gear, "root_stress"), 1e-9);
                Assert.Equal(1 / Math.Sqrt(wider), wide.Value(Gear, "contact_stress") / one.Value(Gear, "contact_stress"), 1e-9);
                Assert.Equal(1 / wider, wide.Value(Gear, "root_stress") / one.Value(Gear, "root_stress"), 1e-9);
                Assert.Equal(one.Value(Gear, "contact_safety") / Math.Sqrt(more), loaded.Value(Gear, "contact_safety"), 1e-9);
                Assert.Equal(one.Value(Gear, "bending_safety") / more, loaded.Value(Gear, "bending_safety"), 1e-9);
            },
            iter: 40);

        static string PairOf(double torque, double width) => Pair(
            FormattableString.Invariant($"teeth: 20, module: 2 mm, profile_shift: 0.1, face_width: {width:R} mm ±0, axial_position: 0 mm ±0"),
            FormattableString.Invariant($"teeth: 47, module: 2 mm, profile_shift: 0, face_width: {width:R} mm ±0, axial_position: 0 mm ±0"),
            FormattableString.Invariant($"{torque:R} N·m"));
    }

    // Symmetry: two like gears are stressed and stand alike.
    [Fact]
    public void A_pair_of_like_gears_is_equally_safe()
    {
        const string Twin = "teeth: 31, module: 2 mm, profile_shift: 0.15, face_width: 18 mm, axial_position: 0 mm";
        var analysis = SpecText.Analyse(Pair(Twin, Twin));

        foreach (var quantity in (ReadOnlySpan<string>)["contact_safety", "bending_safety", "peak_contact_safety", "peak_bending_safety", "form_factor", "load_cycles"])
            Assert.Equal(analysis.Value("meshes.pinion~wheel.pinion", quantity), analysis.Value("meshes.pinion~wheel.wheel", quantity), 1e-9);
    }

    // A tooth that two gears press from both sides is bent both ways (ISO 6336-3: R = −1.2 for equal loads); one that turns one way and meets one gear is not.
    [Theory]
    [InlineData("direction: one", 0, -1.2, 0)]
    [InlineData("direction: both", -1.2, -1.2, -1.2)]
    [InlineData("direction: both, reverse_torque: 15 N·m", -0.6, -1.2, -0.6)]
    public void Planets_are_bent_both_ways_and_so_is_all_in_a_drive_that_turns_both_ways(string direction, double sun, double planet, double ring)
    {
        var analysis = SpecText.Analyse(Set(Duty.Replace("direction: one", direction, StringComparison.Ordinal)));

        Assert.Equal(sun, analysis.Value("meshes.sun~planet_gear.sun", "load_reversal"), 1e-9);
        Assert.Equal(planet, analysis.Value("meshes.sun~planet_gear.planet_gear", "load_reversal"), 1e-9);
        Assert.Equal(planet, analysis.Value("meshes.planet_gear~ring.planet_gear", "load_reversal"), 1e-9);
        Assert.Equal(ring, analysis.Value("meshes.planet_gear~ring.ring", "load_reversal"), 1e-9);
    }

    // The steps of a stepped planet have teeth of their own: each meets one gear.
    [Fact]
    public void The_steps_of_a_planet_are_bent_one_way()
    {
        var yaml = SpecText.Simple(duty: Duty, sun: 20, planet: 40, ring: 84, gears: Gear("module: 2 mm, profile_shift: 0"))
            .Replace("planet_gear: {on: planet,", "small: {on: planet, teeth: 24, module: 2 mm, profile_shift: 0}\n    planet_gear: {on: planet,", StringComparison.Ordinal)
            .Replace("[planet_gear, ring]", "[small, ring]", StringComparison.Ordinal);
        var analysis = SpecText.Analyse(yaml);

        Assert.Equal(0, analysis.Value("meshes.sun~planet_gear.planet_gear", "load_reversal"));
        Assert.Equal(0, analysis.Value("meshes.small~ring.small", "load_reversal"));
    }

    // One share of the whole life at the rated load is no spectrum; after 2 h the life factors lie between static strength and endurance.
    [Theory]
    [InlineData("10000 h")]
    [InlineData("2 h")]
    public void A_spectrum_of_one_share_at_the_rated_load_changes_nothing(string life)
    {
        var duty = Duty.Replace("service_life: 10000 h", $"service_life: {life}", StringComparison.Ordinal);
        var plain = SpecText.Analyse(Set(duty));
        var spectrum = SpecText.Analyse(Set(duty.Replace(
            "oil:", "spectrum: [{share: 100 %, torque: 30 N·m, speed: 1500 rpm}], oil:", StringComparison.Ordinal)));

        foreach (var gear in (ReadOnlySpan<string>)["meshes.sun~planet_gear.sun", "meshes.sun~planet_gear.planet_gear", "meshes.planet_gear~ring.planet_gear"])
        {
            foreach (var quantity in (ReadOnlySpan<string>)["contact_safety", "bending_safety", "contact_life", "bending_life"])
                Assert.Equal(1, spectrum.Value(gear, quantity) / plain.Value(gear, quantity), 1e-9);
        }
    }

    // Damage sum and safety speak of the same: at the safety found the sum is 1.
    [Fact]
    public void At_the_safety_found_the_damage_sum_is_one()
    {
        const string Shares = "spectrum: [{share: 30 %, torque: 30 N·m, speed: 1000 rpm}, {share: 70 %, torque: 18 N·m, speed: 1500 rpm}], oil:";
        var found = SpecText.Analyse(Set(Duty.Replace("oil:", Shares, StringComparison.Ordinal)));
        var expected = found.Value("meshes.sun~planet_gear.sun", "contact_safety");
        var again = SpecText.Analyse(Set(Duty.Replace(
            "oil:", FormattableString.Invariant($"safety: {{contact: {expected:R}}}, {Shares}"), StringComparison.Ordinal)));

        Assert.Equal(1, again.Value("meshes.sun~planet_gear.sun", "contact_damage"), 1e-6);
        Assert.Equal(10_000, again.Value("meshes.sun~planet_gear.sun", "contact_life"), 0.1);
    }

    // Peaks that the spectrum holds are not multiplied once more by the application factor.
    [Fact]
    public void The_application_factor_is_not_applied_to_peaks_twice()
    {
        const string Shares = "spectrum: [{share: 100 %, torque: 30 N·m, speed: 1500 rpm}], ";
        var shocks = Duty.Replace("application_factor: 1,", "application_factor: 1.5,", StringComparison.Ordinal);
        var excluded = SpecText.Analyse(Set(shocks.Replace("oil:", $"{Shares}spectrum_peaks: excluded, oil:", StringComparison.Ordinal)));
        var included = SpecText.Analyse(Set(shocks.Replace("oil:", $"{Shares}spectrum_peaks: included, oil:", StringComparison.Ordinal)));
        const string Sun = "meshes.sun~planet_gear.sun";

        Assert.Equal(1.5, included.Value(Sun, "bending_safety") / excluded.Value(Sun, "bending_safety"), 1e-9);
        Assert.Equal(Math.Sqrt(1.5), included.Value(Sun, "contact_safety") / excluded.Value(Sun, "contact_safety"), 1e-9);
    }

    // More load, less accuracy, more misalignment never make a gear safer.
    [Fact]
    public void Nothing_that_loads_a_gear_makes_it_safer()
    {
        Gen.Select(Gen.Double[5, 120], Gen.Int[3, 9], Gen.Double[0, 12], Gen.Int[0, 2]).Sample(
            (torque, grade, misalignment, which) =>
            {
                var before = SpecText.Analyse(Of(torque, grade, misalignment));
                var after = SpecText.Analyse(which switch
                {
                    0 => Of(torque * 1.2, grade, misalignment),
                    1 => Of(torque, grade + 1, misalignment),
                    _ => Of(torque, grade, misalignment + 3),
                });
                foreach (var gear in (ReadOnlySpan<string>)["meshes.pinion~wheel.pinion", "meshes.pinion~wheel.wheel"])
                {
                    foreach (var quantity in (ReadOnlySpan<string>)["contact_safety", "bending_safety", "peak_contact_safety", "peak_bending_safety"])
                        Assert.True(after.Value(gear, quantity) <= before.Value(gear, quantity) * (1 + 1e-12), $"{gear} {quantity}");
                }
            },
            iter: 60);

        static string Of(double torque, int grade, double misalignment) => SpecText.Pair(
                FormattableString.Invariant($"teeth: 20, module: 2 mm, profile_shift: 0.2, face_width: 20 mm, axial_position: 0 mm, {Case}, {Finish}"),
                FormattableString.Invariant($"teeth: 47, module: 2 mm, profile_shift: 0, face_width: 20 mm, axial_position: 0 mm, {Case}, {Finish}"),
                FormattableString.Invariant($", misalignment: {misalignment:R} µm"))
            .Replace("accuracy_grade: 6", $"accuracy_grade: {grade}", StringComparison.Ordinal)
            .Replace("input: {speed: 1500 rpm, torque: 40 N·m}", FormattableString.Invariant($"input: {{speed: 1500 rpm, torque: {torque:R} N·m, peak_torque: 1000 N·m, direction: one}}\n  service_life: 10000 h\n  application_factor: 1"), StringComparison.Ordinal)
            .Replace("oil: {running", "oil: {lubricant: gear-oil-vg220, running", StringComparison.Ordinal);
    }

    // The same spec in inch and in metric words: 1 in = 25.4 mm, 1 lbf·ft = 1.3558179483314 N·m, exact.
    [Fact]
    public void Inch_and_metric_words_give_the_same_rating()
    {
        var metric = SpecText.Analyse(Pair(
            "teeth: 20, module: 2.54 mm, profile_shift: 0.1, face_width: 25.4 mm ±0, axial_position: 0 mm ±0",
            "teeth: 41, module: 2.54 mm, profile_shift: 0, face_width: 25.4 mm ±0, axial_position: 0 mm ±0",
            "40.674538449942 N·m"));
        var inch = SpecText.Analyse(Pair(
            "teeth: 20, diametral_pitch: 10, profile_shift: 0.1, face_width: 1 in ±0, axial_position: 0 in ±0",
            "teeth: 41, diametral_pitch: 10, profile_shift: 0, face_width: 1 in ±0, axial_position: 0 in ±0",
            "30 lbf·ft").Replace("flank_rz: 3 µm", "flank_rz: 118.11023622047244 µin", StringComparison.Ordinal));

        foreach (var (one, other) in metric.Subjects.Zip(inch.Subjects))
        {
            foreach (var (a, b) in one.Quantities.Zip(other.Quantities.Where(each => each.Kind.Name != "diametral_pitch")))
            {
                Assert.Equal(a.Kind, b.Kind);
                Assert.Equal(a.IsEvaluated, b.IsEvaluated);
                Assert.Equal(a.Text, b.Text);
                if (a.IsEvaluated && a.Text is null)
                    Assert.Equal(a.Value.Nominal, b.Value.Nominal, 1e-9 * Math.Max(1, Math.Abs(a.Value.Nominal)));
            }
        }

        Assert.True(metric.Quantity("meshes.pinion~wheel.pinion", "bending_safety").IsEvaluated);
    }

    // The root of a ring depends on its cutter; without one it stays open, and the flank does not.
    [Fact]
    public void A_ring_without_a_cutter_has_no_root_stress_and_says_so()
    {
        var analysis = SpecText.Analyse(Set());

        Assert.Equal(
            ["train.gears.ring.cutter is not stated, and the root of an internal gear depends on its cutter"],
            analysis.Quantity("meshes.planet_gear~ring.ring", "bending_safety").Reasons);
        Assert.True(analysis.Quantity("meshes.planet_gear~ring.ring", "contact_safety").IsEvaluated);
    }

    [Theory]
    [InlineData("application_factor: 1, ", "", "duty.application_factor is not stated")]
    [InlineData("service_life: 10000 h, ", "", "duty.service_life is not stated")]
    [InlineData("lubricant: gear-oil-vg220, ", "", "duty.oil.lubricant is not stated")]
    [InlineData(", face_load_factor: 1", "", "train.meshes[0].misalignment or train.meshes[0].face_load_factor is not stated")]
    [InlineData("treatment: case-hardened, quality: MQ, surface_hardness: 60 HRC", "treatment: case-hardened, quality: MQ", "train.gears.sun.heat_treatment.surface_hardness is not stated")]
    [InlineData("accuracy_grade: 6, ", "", "train.gears.sun.accuracy_grade is not stated", ", dynamic_factor: 1")]
    public void What_is_missing_is_named(string stated, string instead, string reason, string? alsoRemove = null)
    {
        var yaml = Set().Replace(stated, instead, StringComparison.Ordinal);
        if (alsoRemove is not null)
            yaml = yaml.Replace(alsoRemove, "", StringComparison.Ordinal);
        var safety = SpecText.Analyse(yaml).Quantity("meshes.sun~planet_gear.sun", "contact_safety");

        Assert.False(safety.IsEvaluated);
        Assert.Contains(reason, safety.Reasons);
    }

    // ISO 6336-1 method C covers s up to 3 m/s; beyond it method B rates the mesh.
    [Fact]
    public void A_mesh_too_fast_for_the_simple_factor_is_rated_by_method_B()
    {
        var fast = Duty.Replace("speed: 1500 rpm", "speed: 30000 rpm", StringComparison.Ordinal);
        var analysis = SpecText.Analyse(Set(fast, mesh: Plain.Replace(", dynamic_factor: 1", "", StringComparison.Ordinal)));

        Assert.True(analysis.Value("meshes.sun~planet_gear", "dynamic_parameter") > 3);
        Assert.Equal("B", analysis.Quantity("meshes.sun~planet_gear", "dynamic_method").Text);
        Assert.True(analysis.Quantity("meshes.sun~planet_gear.sun", "contact_safety").IsEvaluated);
        Assert.True(SpecText.Analyse(Set(fast)).Quantity("meshes.sun~planet_gear.sun", "contact_safety").IsEvaluated);
    }

    // The load factors of a load case come of the formulas that the rated ones come of.
    [Fact]
    public void At_the_rated_torque_the_peak_has_the_rated_load_factors()
    {
        var analysis = SpecText.Analyse(Set(
            Duty.Replace("peak_torque: 60 N·m", "peak_torque: 30 N·m", StringComparison.Ordinal), mesh: ", misalignment: 5 µm, efficiency: 100 %"));

        foreach (var factor in (ReadOnlySpan<string>)["dynamic_factor", "face_load_factor", "face_load_factor_bending", "transverse_load_factor", "transverse_load_factor_bending"])
            Assert.Equal(analysis.Value("meshes.planet_gear~ring", factor), analysis.Value("meshes.planet_gear~ring.peak", factor), 1e-12);
        Assert.Equal(1, analysis.Value("meshes.sun~planet_gear.peak", "torque_ratio"), 1e-12);
    }

    // Static strength over the life curve: at one contact the life factor is the static one, Z_NT = 1.6 (ISO 6336-2, from memory), without the film factors.
    [Fact]
    public void A_life_of_a_few_turns_is_static_strength()
    {
        var analysis = SpecText.Analyse(Set(Duty.Replace("service_life: 10000 h", "service_life: 0.001 h", StringComparison.Ordinal)));
        const string Sun = "meshes.sun~planet_gear.sun";
        var film = analysis.Value("meshes.sun~planet_gear", "lubricant_factor") * analysis.Value("meshes.sun~planet_gear", "speed_factor")
            * analysis.Value("meshes.sun~planet_gear", "roughness_factor");

        Assert.Equal(1.6, analysis.Value(Sun, "contact_life_factor") * film, 1e-9);
        Assert.Equal(
            analysis.Value(Sun, "contact_safety") / Math.Sqrt(2), analysis.Value(Sun, "peak_contact_safety"), 1e-9);
        Assert.Equal(1.6, LifeCurves.Flank(Mechanics.Materials.MaterialClass.CaseHardened).StaticFactor, 1e-12);
    }

    // Limited life by hand: 1 h is 21 000·10 = 210 000 contacts of the sun and 56 000 of the planet. Flank: from 1.6/(Z_L·Z_V·Z_R) at 10⁵ to
    // 1 at 5·10⁷; root: from 2.5 times the static factors over those of endurance at 10³ to 1 at 3·10⁶, both straight in logarithms.
    // Static: Y_δrelT = 0.44·Y_S + 0.12; the planet has R = −1.2 and the static M = 0.7, Y_M = 1/(1 + 1.2·0.3/1.7) = 0.825243.
    [Fact]
    public void Between_static_strength_and_endurance_the_static_corner_has_its_own_factors()
    {
        var analysis = SpecText.Analyse(Set(Duty.Replace("service_life: 10000 h", "service_life: 1 h", StringComparison.Ordinal)));
        const string Mesh = "meshes.sun~planet_gear";
        var film = analysis.Value(Mesh, "lubricant_factor") * analysis.Value(Mesh, "speed_factor") * analysis.Value(Mesh, "roughness_factor");

        Assert.Equal(
            Math.Pow(1.6 / film, Math.Log(5e7 / 210_000) / Math.Log(5e7 / 1e5)), analysis.Value($"{Mesh}.sun", "contact_life_factor"), 1e-9);
        foreach (var (gear, cycles, reversal) in (ReadOnlySpan<(string, double, double)>)[("sun", 210_000, 1), ("planet_gear", 56_000, 0.825243)])
        {
            double Of(string quantity) => analysis.Value($"{Mesh}.{gear}", quantity);
            var endurance = Of("notch_sensitivity_factor") * Of("root_surface_factor") * Of("root_size_factor") * Of("mean_stress_factor");
            var corner = 2.5 * (0.44 * Of("stress_correction") + 0.12) * reversal / endurance;

            Assert.Equal(Math.Pow(corner, Math.Log(3e6 / cycles) / Math.Log(3e6 / 1e3)), Of("root_life_factor"), 2e-6);
        }
    }

    // Stated factors hold at every load: nothing but the torque is left, 60/30 at the peak; and half the torque is half the load. The teeth
    // carry 110 N/mm, above the 100 below which method C would not change either.
    [Fact]
    public void Stated_load_factors_stay_at_any_load()
    {
        const string Stated = ", dynamic_factor: 1.3, face_load_factor: 1.4, efficiency: 100 %, friction: 0.05";
        var analysis = SpecText.Analyse(Set(
            Duty.Replace("oil:", "spectrum: [{share: 100 %, torque: 15 N·m, speed: 1500 rpm}], oil:", StringComparison.Ordinal), mesh: Stated, face: "5 mm ±0"));
        var full = SpecText.Analyse(Set(mesh: Stated, face: "5 mm ±0"));
        const string Sun = "meshes.sun~planet_gear.sun";

        Assert.Equal(2 * Product("transverse_load_factor", "face_load_factor"), analysis.Value("meshes.sun~planet_gear.peak", "contact_load_factor"), 1e-12);
        Assert.Equal(2 * Product("transverse_load_factor_bending", "face_load_factor_bending"), analysis.Value("meshes.sun~planet_gear.peak", "root_load_factor"), 1e-12);
        Assert.Equal(2, analysis.Value(Sun, "bending_safety") / full.Value(Sun, "bending_safety"), 1e-9);
        Assert.Equal(Math.Sqrt(2), analysis.Value(Sun, "contact_safety") / full.Value(Sun, "contact_safety"), 1e-9);

        double Product(string transverse, string face) => analysis.Value("train", "application_factor") * analysis.Value("meshes.sun~planet_gear", "load_sharing")
            * 1.3 * analysis.Value("meshes.sun~planet_gear", face) * analysis.Value("meshes.sun~planet_gear", transverse);
    }

    // What evens out at more load is the pitch deviation alone: K_Hα = ε/2·(0.9 + 0.4·q), q halves at twice the load while the stated K_Hβ
    // stays; from 1 on.
    [Fact]
    public void At_the_peak_pitch_deviations_count_less_beside_a_stated_face_load_factor()
    {
        var analysis = SpecText.Analyse(Set(mesh: ", dynamic_factor: 1.3, face_load_factor: 1.4, efficiency: 100 %", face: "5 mm ±0")
            .Replace("pitch_deviation: 0.01 µm", "pitch_deviation: 13 µm", StringComparison.Ordinal));
        const string Mesh = "meshes.sun~planet_gear";
        var (rated, exact) = (analysis.Value(Mesh, "transverse_load_factor"), 0.45 * analysis.Value(Mesh, "transverse_contact_ratio"));

        Assert.InRange(rated, 1.05, 1.25);
        Assert.Equal(Math.Max(1, exact + (rated - exact) / 2), analysis.Value($"{Mesh}.peak", "transverse_load_factor"), 1e-9);
    }

    // Rims of 3 mm: external s_R/h = 3/4.5, 1.6·ln(2.242·4.5/3) = 1.940533; internal s_R/m_n = 2.5 with 5 mm, 1.15·ln(8.324/2.5) = 1.383280.
    [Theory]
    [InlineData("3 mm", "meshes.sun~planet_gear.sun", 1.940533)]
    [InlineData("5 mm", "meshes.planet_gear~ring.ring", 1.383280)]
    public void Thin_rims_raise_the_stress(string rim, string gear, double factor)
    {
        var analysis = SpecText.Analyse(Set().Replace("rim_thickness: 20 mm", $"rim_thickness: {rim}", StringComparison.Ordinal));

        Assert.Equal(factor, analysis.Value(gear, "rim_factor"), 1e-6);
    }

    // A gear that a pinion drives from outside and that drives three planets: on one flank the whole tooth force, on the other a third.
    // R = −1.2/3 = −0.4.
    [Fact]
    public void A_gear_between_one_mesh_and_three_is_bent_back_by_a_third()
    {
        var yaml = Set().Replace("input: input\n", "input: motor\n  bodies: {input: {floating: false}}\n", StringComparison.Ordinal)
            .Replace("    sun: {on: input,", $"    drive: {{on: motor, teeth: 18, {Gear("module: 2 mm, profile_shift: 0, face_width: 20 mm, axial_position: 0 mm")}}}\n    sun: {{on: input,", StringComparison.Ordinal)
            .Replace("    - {gears: [sun, planet_gear]", $"    - {{gears: [drive, sun]{Plain}}}\n    - {{gears: [sun, planet_gear]", StringComparison.Ordinal);
        var analysis = SpecText.Analyse(yaml);

        Assert.Equal(-0.4, analysis.Value("meshes.drive~sun.sun", "load_reversal"), 1e-9);
        Assert.Equal(-0.4, analysis.Value("meshes.sun~planet_gear.sun", "load_reversal"), 1e-9);
        Assert.Equal(0, analysis.Value("meshes.drive~sun.drive", "load_reversal"), 1e-9);
    }

    // Three planets: 1.05 when sun, ring or carrier settles between them, else the 1.1 of the table.
    [Theory]
    [InlineData("", 1.1)]
    [InlineData("bodies: {input: {floating: true}}", 1.05)]
    [InlineData("bodies: {carrier: {floating: true}}", 1.05)]
    [InlineData("bodies: {housing: {floating: true}}", 1.05)]
    public void A_floating_member_evens_the_load(string bodies, double sharing)
    {
        var analysis = SpecText.Analyse(SpecText.Simple(duty: Duty, extraTrain: bodies, gears: Gear("module: 2 mm, profile_shift: 0")));

        Assert.Equal(sharing, analysis.Value("meshes.sun~planet_gear", "load_sharing"), 1e-12);
        Assert.Equal(sharing, analysis.Value("meshes.planet_gear~ring", "load_sharing"), 1e-12);
    }

    // Shifted pair 20/47, x 0.3/0.2, 2000 N on 20 mm, 1500 1/min, by hand in SI units: ν at 70 °C by ASTM D341 51.517 mm²/s, η = 0.044820 Pa·s;
    // rolling velocity 1.198666 m/s, ρ_red 5.353052 mm, w = 100/cos 20° N/mm: h_min = 0.25472 µm. Flash with K_v·K_Hβ = 1.2·1.3 and μ = 0.06,
    // 200 001 places along the path: 14.184 K, at the root of the pinion, where a third of the load slides fastest.
    [Fact]
    public void Film_and_flash_of_a_shifted_pair()
    {
        var analysis = SpecText.Analyse(Pair(
            "teeth: 20, module: 2 mm, profile_shift: 0.3, face_width: 20 mm ±0, axial_position: 0 mm ±0",
            "teeth: 47, module: 2 mm, profile_shift: 0.2, face_width: 20 mm ±0, axial_position: 0 mm ±0",
            mesh: ", dynamic_factor: 1.2, face_load_factor: 1.3, efficiency: 100 %, friction: 0.06"));

        Assert.Equal(0.25472, analysis.Value("meshes.pinion~wheel", "film_thickness"), 1e-5);
        Assert.Equal(14.18428, analysis.Value("meshes.pinion~wheel", "flash_temperature"), 1e-4);
        Assert.Equal(84.18428, analysis.Value("meshes.pinion~wheel", "contact_temperature"), 1e-4);
    }

    // ISO 6336-2 and -3, from memory: Eh has 1.0 at 5·10⁷ and 0.85 at 10¹⁰ cycles, or 1.0 with best practice; where a few pits are
    // permitted 1.0 at 10⁹ and 0.85 at 10¹⁰.
    [Fact]
    public void Long_life_and_a_few_pits_go_by_what_the_spec_permits()
    {
        const string Sun = "meshes.sun~planet_gear.sun";
        var cautious = SpecText.Analyse(Set());
        var full = SpecText.Analyse(Set(Duty.Replace("oil:", "safety: {long_life: full}, oil:", StringComparison.Ordinal)));
        var pits = SpecText.Analyse(Set(Duty.Replace("oil:", "safety: {pitting: limited}, oil:", StringComparison.Ordinal)));

        // 2.1·10⁹ cycles: lg between 5·10⁷ and 10¹⁰.
        var fall = Math.Pow(0.85, Math.Log(2.1e9 / 5e7) / Math.Log(1e10 / 5e7));
        Assert.Equal(fall, cautious.Value(Sun, "contact_life_factor"), 1e-9);
        Assert.Equal(1, full.Value(Sun, "contact_life_factor"), 1e-9);
        Assert.Equal(1, full.Value(Sun, "root_life_factor"), 1e-9);
        Assert.Equal(Math.Pow(0.85, Math.Log(2.1) / Math.Log(10)), pits.Value(Sun, "contact_life_factor"), 1e-9);
    }

    // The sun drives the planet and the planet the ring; planets carry load on both flanks.
    [Fact]
    public void Who_drives_and_which_flanks_carry_is_said()
    {
        var analysis = SpecText.Analyse(Set());

        Assert.Equal("sun", analysis.Quantity("meshes.sun~planet_gear", "driving_gear").Text);
        Assert.Equal("planet_gear", analysis.Quantity("meshes.planet_gear~ring", "driving_gear").Text);
        Assert.Equal("one", analysis.Quantity("meshes.sun~planet_gear.sun", "loaded_flanks").Text);
        Assert.Equal("both", analysis.Quantity("meshes.sun~planet_gear.planet_gear", "loaded_flanks").Text);
    }
}
