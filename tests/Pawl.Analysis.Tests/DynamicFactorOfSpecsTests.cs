namespace Pawl.Analysis.Tests;

/// <summary>The dynamic factor of specs: which method counts, and that fast drives have one.</summary>
public class DynamicFactorOfSpecsTests
{
    private const string Gear =
        "module: 2 mm, profile_shift: 0, face_width: 20 mm ±0, axial_position: 0 mm ±0, accuracy_grade: 6, material: EN-18CrNiMo7-6, "
        + "heat_treatment: {treatment: case-hardened, quality: MQ, surface_hardness: 60 HRC, core_hardness: 35 HRC}";

    private const string Duty =
        "duty: {application_factor: 1.25, service_life: 1000 h, input: {speed: 1450 rpm, torque: 120 N·m, peak_torque: 200 N·m}}";

    private const string Mesh = "meshes.pinion~wheel";

    private static string Pair(string speed, string first = "", string second = "", string mesh = "", string gear = Gear) =>
        SpecText.Pair($"teeth: 25, {gear}{first}", $"teeth: 50, {gear}{second}", $", efficiency: 100 %{mesh}")
            .Replace(
                "input: {speed: 1500 rpm, torque: 40 N·m}",
                $"application_factor: 1.25\n  service_life: 1000 h\n  input: {{speed: {speed}, torque: 120 N·m, peak_torque: 200 N·m}}", StringComparison.Ordinal);

    // Worked beside the test: z 25/50, m_n 2 mm, solid, d_m = d − 0.5 mm. 120 N·m at 50 mm: F_t = 4800 N, w = 4800·1.25/20 = 300 N/mm.
    // m*_1 = (π/8)·7850·10⁻⁹·49.5⁴/46.985² = 0.0083840 kg/mm, m*_2 = (π/8)·7.85·10⁻⁶·99.5⁴/93.969² = 0.0342190 kg/mm:
    // m_red = 0.0067340 kg/mm. c_γα = 14·(0.75·ε_α + 0.25), n_E1 = 30 000/(25·π)·√(c_γα/m_red).
    [Fact]
    public void The_resonance_of_a_pair_of_discs()
    {
        var analysis = SpecText.Analyse(Pair("12000 rpm"));
        var ground1 = 50 * Math.Cos(Math.PI / 9);
        var pinion = Math.PI / 8 * 7.85e-6 * Math.Pow(49.5, 4) / (ground1 * ground1);
        var wheel = Math.PI / 8 * 7.85e-6 * Math.Pow(99.5, 4) / (4 * ground1 * ground1);
        var reduced = pinion * wheel / (pinion + wheel);
        var contact = analysis.Value(Mesh, "transverse_contact_ratio");
        var resonance = 30_000 / (25 * Math.PI) * Math.Sqrt(14 * (0.75 * contact + 0.25) / reduced);

        Near(pinion, analysis.Value("gears.pinion", "mass_at_base"));
        Near(wheel, analysis.Value("gears.wheel", "mass_at_base"));
        Near(reduced, analysis.Value(Mesh, "reduced_mass"));
        Near(resonance, analysis.Value(Mesh, "resonance_speed"));
        Near(12_000 / resonance, analysis.Value(Mesh, "resonance_ratio"));
        Near(0.85, analysis.Value(Mesh, "resonance_limit"));
        Near(0.85 - 12_000 / resonance, analysis.Value(Mesh, "resonance_distance"));

        // f_pT = (0.001·100 + 0.8 + 5)·√2 µm and f_fαT = 6.1·√2 µm, less 7.5 %; C_ay = 1.995372 µm.
        var pitch = 14 * 5.9 * Math.Sqrt(2) * Math.Cos(Math.PI / 9) * 0.925 / 300;
        var profile = 14 * 6.1 * Math.Sqrt(2) * 0.925 / 300;
        var periodic = 1 - 14 * 1.9953716 / 300;
        Near(pitch, analysis.Value(Mesh, "pitch_force"));
        Near(profile, analysis.Value(Mesh, "profile_force"));
        Near(periodic, analysis.Value(Mesh, "stiffness_force"));
        var factor = 1 + 12_000 / resonance * (0.32 * pitch + 0.34 * profile + 0.23 * periodic);
        Near(factor, analysis.Value(Mesh, "dynamic_factor_b"));

        // s = 31.416·0.25·√(4/5) = 7.02 m/s: beyond method C.
        Assert.Equal("B", analysis.Quantity(Mesh, "dynamic_method").Text);
        Assert.False(analysis.Quantity(Mesh, "dynamic_factor_c").IsEvaluated);
        Near(factor, analysis.Value(Mesh, "dynamic_factor"));
    }

    // The speed at which N is 0.2, 1, 1.3 and 2: each range once, and the ranges of method B restated.
    [Theory]
    [InlineData(0.2)]
    [InlineData(1)]
    [InlineData(1.3)]
    [InlineData(2)]
    public void Every_range_of_speed_has_a_factor(double ratio)
    {
        var resonance = SpecText.Analyse(Pair("12000 rpm")).Value(Mesh, "resonance_speed");
        var analysis = SpecText.Analyse(Pair(FormattableString.Invariant($"{ratio * resonance:R} rpm")));
        double B(string name) => analysis.Value(Mesh, name);
        var (pitch, profile, periodic) = (B("pitch_force"), B("profile_force"), B("stiffness_force"));
        var main = 1 + 0.32 * pitch + 0.34 * profile + 0.9 * periodic;
        var step = B("total_contact_ratio") is var total && total <= 1.5 ? 0.75 : 0.875 + 0.125 * Math.Sin(Math.PI * (total - 2));
        var beyond = Math.Max(1, 0.47 * (pitch + profile) + step);
        var expected = ratio switch
        {
            0.2 => 1 + 0.2 * (0.32 * pitch + 0.34 * profile + 0.23 * periodic),
            1 => main,
            1.3 => 0.47 * (pitch + profile) + step + (main - 0.47 * (pitch + profile) - step) * 0.2 / 0.35,
            _ => beyond,
        };

        Near(expected, B("dynamic_factor_b"), 1e-6);
        Assert.Equal(ratio is 1, B("resonance_distance") < 0);
    }

    // At the rated torque with K_A, 150 N·m, the peak is the rated load. A share at half the speed and the rated torque has half the ratio
    // and half of what K_vB adds; at 30 N·m the line load is 75 N/mm, c′ = 14·0.75^0.25 = 13.028 and N_S = 0.5 + 0.35·√0.75.
    [Fact]
    public void Each_load_case_has_a_factor_of_its_own()
    {
        var analysis = SpecText.Analyse(Pair("12000 rpm")
            .Replace("peak_torque: 200 N·m}", "peak_torque: 150 N·m}\n  spectrum: [{share: 50 %, torque: 120 N·m, speed: 6000 rpm}, {share: 50 %, torque: 30 N·m, speed: 12000 rpm}]", StringComparison.Ordinal));
        double Of(string part, string quantity) => analysis.Value(Mesh + part, quantity);
        var added = Of("", "dynamic_factor_b") - 1;

        Near(1 + added, Of(".peak", "dynamic_factor_b"));
        Near(Of("", "resonance_distance"), Of(".peak", "resonance_distance"));
        Near(1 + added / 2, Of(".spectrum[0]", "dynamic_factor_b"));
        Near(Of("", "resonance_ratio") / 2, Of(".spectrum[0]", "resonance_ratio"));

        var softer = Math.Pow(0.75, 0.25);
        Near(0.5 + 0.35 * Math.Sqrt(0.75), Of(".spectrum[1]", "resonance_limit"));
        Near(Of("", "resonance_ratio") / Math.Sqrt(softer), Of(".spectrum[1]", "resonance_ratio"));
        var force = 4 * softer;
        Near(
            1 + Of(".spectrum[1]", "resonance_ratio")
                * (0.32 * force * Of("", "pitch_force") + 0.34 * force * Of("", "profile_force") + 0.23 * (1 - 14 * softer * 1.9953716 / 75)),
            Of(".spectrum[1]", "dynamic_factor_b"));
        Near(Of(".spectrum[1]", "dynamic_factor_b"), Of(".spectrum[1]", "dynamic_factor"));
    }

    // Slow: both can be evaluated and C, the more cautious below resonance, is the larger. In a grade that C lacks B
    // stands alone, without a material C does. What is declared comes before both.
    [Fact]
    public void The_larger_of_both_methods_counts_or_the_one_that_can_be_evaluated()
    {
        var slow = SpecText.Analyse(Pair("1450 rpm"));
        Assert.Equal("both", slow.Quantity(Mesh, "dynamic_method").Text);
        Assert.True(slow.Value(Mesh, "dynamic_factor_c") > slow.Value(Mesh, "dynamic_factor_b"));
        Near(slow.Value(Mesh, "dynamic_factor_c"), slow.Value(Mesh, "dynamic_factor"));

        // 0.8 N·m is 2 N/mm: deviations swing against a hardly loaded spring, and C counts 100 N/mm at least.
        var light = SpecText.Analyse(Pair("4000 rpm").Replace("torque: 120 N·m, peak", "torque: 0.8 N·m, peak", StringComparison.Ordinal));
        Assert.Equal("both", light.Quantity(Mesh, "dynamic_method").Text);
        Assert.True(light.Value(Mesh, "dynamic_factor_b") > light.Value(Mesh, "dynamic_factor_c"));
        Near(light.Value(Mesh, "dynamic_factor_b"), light.Value(Mesh, "dynamic_factor"));

        var bare = SpecText.Analyse(Pair("1450 rpm", gear: "module: 2 mm, profile_shift: 0, face_width: 20 mm, axial_position: 0 mm, accuracy_grade: 6"));
        Assert.Equal("C", bare.Quantity(Mesh, "dynamic_method").Text);
        Near(bare.Value(Mesh, "dynamic_factor_c"), bare.Value(Mesh, "dynamic_factor"));

        var veryFine = SpecText.Analyse(Pair("1450 rpm", gear: Gear.Replace("accuracy_grade: 6", "accuracy_grade: 2", StringComparison.Ordinal)));
        Assert.Equal("B", veryFine.Quantity(Mesh, "dynamic_method").Text);
        Near(veryFine.Value(Mesh, "dynamic_factor_b"), veryFine.Value(Mesh, "dynamic_factor"));

        var declared = SpecText.Analyse(Pair("12000 rpm", mesh: ", dynamic_factor: 1.4"));
        Assert.Equal("declared", declared.Quantity(Mesh, "dynamic_method").Text);
        Assert.Equal(1.4, declared.Value(Mesh, "dynamic_factor"));
        Assert.DoesNotContain(declared.Subject(Mesh).Quantities, quantity => quantity.Kind.Name is "dynamic_factor_b" or "dynamic_factor_c");
    }

    [Fact]
    public void Without_an_accuracy_grade_there_is_no_factor()
    {
        var factor = SpecText.Analyse(Pair("12000 rpm", gear: Gear.Replace(", accuracy_grade: 6", "", StringComparison.Ordinal))).Quantity(Mesh, "dynamic_factor");

        Assert.Contains("train.gears.pinion.accuracy_grade is not stated", factor.Reasons);
    }

    // A material is what method B needs beyond method C. Too fast for C, the reasons of both are told.
    [Fact]
    public void Where_neither_method_has_what_it_needs_both_say_why()
    {
        var bare = SpecText.Analyse(Pair("12000 rpm", gear: "module: 2 mm, profile_shift: 0, face_width: 20 mm, axial_position: 0 mm, accuracy_grade: 6"));
        var reasons = bare.Quantity(Mesh, "dynamic_factor").Reasons;

        Assert.Equal("C", bare.Quantity(Mesh, "dynamic_method").Text);
        Assert.Contains(reasons, reason => reason.Contains("method C ends at a speed parameter of 3 m/s", StringComparison.Ordinal));
        Assert.Contains("train.gears.pinion.material is not stated", reasons);
    }

    // A drawn relief of 12 µm: |1 − 14·12/300| = 0.44 at that tip, 1 − 14·1.995372/300 = 0.906883 at the other, which counts. Both tips: 0.44.
    // Grade 8 gains nothing.
    [Fact]
    public void Tip_relief_counts_where_it_is_drawn_and_the_gears_are_fine()
    {
        const string Drawn = ", tip_relief: 12 µm";

        Near(0.906883, SpecText.Analyse(Pair("3000 rpm", Drawn)).Value(Mesh, "stiffness_force"), 1e-6);
        Near(0.44, SpecText.Analyse(Pair("3000 rpm", Drawn, Drawn)).Value(Mesh, "stiffness_force"));
        var coarse = Gear.Replace("accuracy_grade: 6", "accuracy_grade: 8", StringComparison.Ordinal);
        Near(1, SpecText.Analyse(Pair("3000 rpm", Drawn, Drawn, gear: coarse)).Value(Mesh, "stiffness_force"));
    }

    // A rim of 5 mm under the root: d_i = 45 − 10 = 35 mm, against d_m = 49.5 mm.
    [Fact]
    public void A_rim_is_lighter_than_a_disc()
    {
        var disc = SpecText.Analyse(Pair("3000 rpm"));
        var rim = SpecText.Analyse(Pair("3000 rpm", ", rim_thickness: 5 mm ±0"));

        Near(1 - Math.Pow(35 / 49.5, 4), rim.Value("gears.pinion", "mass_at_base") / disc.Value("gears.pinion", "mass_at_base"));
        Assert.True(rim.Value(Mesh, "resonance_speed") > disc.Value(Mesh, "resonance_speed"));
    }

    // Sun of three planets: the planets share its inertia. Ring held: the planet alone. Ring turning, sun held: the ring is a tube that
    // the planets share, and without a rim thickness nothing is known of it. Solid gears, d_m = d − 0.5 mm.
    [Fact]
    public void In_a_planetary_set_the_central_gears_are_shared()
    {
        const string Rim = "module: 2 mm, profile_shift: 0, face_width: 20 mm ±0, axial_position: 0 mm ±0";
        var held = SpecText.Analyse(SpecText.Simple(gears: Rim, duty: Duty));
        var sun = held.Value("gears.sun", "mass_at_base");
        var planet = held.Value("gears.planet_gear", "mass_at_base");
        Near(sun * planet / (sun + 3 * planet), held.Value("meshes.sun~planet_gear", "reduced_mass"));
        Near(planet, held.Value("meshes.planet_gear~ring", "reduced_mass"));

        var turning = SpecText.Simple(gears: Rim, duty: Duty, input: "ring", held: "housing", sunOn: "housing", ringOn: "ring");
        Assert.Contains(
            "train.gears.ring.rim_thickness is not stated", SpecText.Analyse(turning).Quantity("meshes.planet_gear~ring", "reduced_mass").Reasons);
        var tube = SpecText.Analyse(turning.Replace("internal: true,", "internal: true, rim_thickness: 10 mm ±0,", StringComparison.Ordinal));
        var (mean, outside, ground) = (140.5, 145 + 20.0, 140 * Math.Cos(Math.PI / 9));
        var ring = Math.PI / 8 * 7.85e-6 * (Math.Pow(outside, 4) - Math.Pow(mean, 4)) / (ground * ground);
        Near(ring, tube.Value("gears.ring", "mass_at_base"));
        Near(ring * planet / (ring + 3 * planet), tube.Value("meshes.planet_gear~ring", "reduced_mass"));
        Near(planet, tube.Value("meshes.sun~planet_gear", "reduced_mass"));
    }

    // Stepped planet: both steps turn as one, each with its own width.
    [Fact]
    public void Both_steps_of_a_planet_swing_together()
    {
        var analysis = SpecText.AnalyseFile("specs/beck-90/r760.yaml");
        double J(string gear) => analysis.Value($"gears.{gear}", "moment_of_inertia");
        var radius = analysis.Value("gears.small_step", "base_diameter") / 2;

        Near((J("large_step") + J("small_step")) / (12 * radius * radius), analysis.Value("meshes.small_step~ring", "reduced_mass"));
    }

    // At 12 000 1/min, where method C ends, no quantity of a mesh is left open.
    [Theory]
    [MemberData(nameof(Shipped))]
    public void A_shipped_drive_at_12_000_revolutions_a_minute_has_every_factor(string path)
    {
        var fast = SpecText.AnalyseChanged(path, "duty: {input: {speed: 12000 rpm}}");

        Assert.Equal(12_000, fast.Value("train", "input_speed"), 1e-9);
        var open = fast.Subjects.Where(subject => subject.Path.StartsWith("meshes.", StringComparison.Ordinal))
            .SelectMany(subject => subject.Quantities).Where(quantity => !quantity.IsEvaluated && quantity.Kind.Name != "dynamic_factor_c");
        Assert.Empty(open.Select(quantity => $"{quantity}: {quantity.Reasons[0]}"));
    }

    public static TheoryData<string> Shipped => TrainOfSpecsTests.Shipped;

    private static void Near(double expected, double actual, double tolerance = 1e-8) => Assert.Equal(1, actual / expected, tolerance);
}
