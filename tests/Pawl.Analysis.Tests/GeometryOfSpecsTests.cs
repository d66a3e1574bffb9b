using Pawl.Analysis.Core;
namespace Pawl.Analysis.Tests;

/// <summary>Geometry as a spec gets it, from YAML to quantity, against published examples and closed forms.</summary>
public class GeometryOfSpecsTests
{
    // A handbook's profile-shifted spur pair, reprinted on public pages: m 3, z 12 and 24, a_w 56.5; it prints x_1 + x_2 = 0.9600. With
    // 0.6 and 0.36 the same handbook prints a_w = 56.4999. Here the pair is drawn with 0.6 and 0.3; a_w(0.9) by halving
    // inv α_w = inv 20° + 2·tan 20°·0.9/36, a_w = 54·cos 20°/cos α_w.
    [Fact]
    public void Teeth_that_do_not_give_the_drawn_centre_distance_are_told_what_closes_the_mesh()
    {
        var analysis = SpecText.Analyse(SpecText.Pair(
            "teeth: 12, module: 3 mm, profile_shift: 0.6", "teeth: 24, module: 3 mm, profile_shift: 0.3", ", centre_distance: 56.5 mm ±0"));

        Assert.Equal(0.96, analysis.Value("meshes.pinion~wheel", "closing_shift_sum"), 0.0005);
        var (low, high) = (0.01, 1.0);
        var rack = 20 * Math.PI / 180;
        for (var round = 0; round < 60; round++)
        {
            var middle = (low + high) / 2;
            (low, high) = Math.Tan(middle) - middle < Math.Tan(rack) - rack + (2 * Math.Tan(rack) * 0.9 / 36) ? (middle, high) : (low, middle);
        }

        var centre = (54 * Math.Cos(rack) / Math.Cos(low)).ToString("0.000", System.Globalization.CultureInfo.InvariantCulture);
        Assert.StartsWith(
            $"centre distance {centre} mm with these profile shifts, or x_1 + x_2 = 0.960",
            analysis.Quantity("meshes.pinion~wheel", "closing_values").Text, StringComparison.Ordinal);
        Assert.EndsWith(" in place of 0.9000 with this centre distance", analysis.Quantity("meshes.pinion~wheel", "closing_values").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Teeth_that_give_the_drawn_centre_distance_need_nothing_to_close()
    {
        var analysis = SpecText.Analyse(SpecText.Pair(
            "teeth: 12, module: 3 mm, profile_shift: 0.6", "teeth: 24, module: 3 mm, profile_shift: 0.36", ", centre_distance: 56.5 mm ±0"));

        Assert.DoesNotContain(analysis.Subject("meshes.pinion~wheel").Quantities, quantity => quantity.Kind.Name.StartsWith("closing_", StringComparison.Ordinal));
    }

    // Handbook example of a profile-shifted pair, widely reprinted (from memory): m 3, z 12/24, x 0.6/0.36, α 20°:
    // α_wt = 26.0886°, a_w = 56.4999 mm, d_w 37.667/75.333, contact ratio 1.202 with tips shortened to full clearance.
    [Fact]
    public void A_profile_shifted_spur_pair_matches_the_handbook()
    {
        var analysis = SpecText.Analyse(SpecText.Pair(
            "teeth: 12, module: 3 mm, profile_shift: 0.6, tip_diameter: 44.840 mm ±0",
            "teeth: 24, module: 3 mm, profile_shift: 0.36, tip_diameter: 79.400 mm ±0"));

        Assert.Equal(56.4999, analysis.Value("meshes.pinion~wheel", "centre_distance"), 0.0001);
        Assert.Equal(26.0886, analysis.Value("meshes.pinion~wheel", "working_pressure_angle"), 0.0001);
        Assert.Equal(37.667, analysis.Value("meshes.pinion~wheel.pinion", "working_pitch_diameter"), 0.0005);
        Assert.Equal(75.333, analysis.Value("meshes.pinion~wheel.wheel", "working_pitch_diameter"), 0.0005);
        Assert.Equal(1.202, analysis.Value("meshes.pinion~wheel", "transverse_contact_ratio"), 0.0005);
        Assert.Equal(0.75, analysis.Value("meshes.pinion~wheel.pinion", "tip_clearance"), 0.0005);
    }

    // Handbook example of a helical pair, widely reprinted (from memory): m_n 3, z 12/60, β 30°, x 0.09809/0: a_w = 125.000 mm, α_wt = 23.1126°.
    [Fact]
    public void A_helical_pair_matches_the_handbook()
    {
        var analysis = SpecText.Analyse(SpecText.Pair(
            "teeth: 12, module: 3 mm, helix_angle: 30°, hand: right, profile_shift: 0.09809, face_width: 30 mm, axial_position: 0 mm",
            "teeth: 60, module: 3 mm, helix_angle: 30°, hand: left, profile_shift: 0, face_width: 30 mm, axial_position: 0 mm"));

        Assert.Equal(125.000, analysis.Value("meshes.pinion~wheel", "centre_distance"), 0.0005);
        Assert.Equal(23.1126, analysis.Value("meshes.pinion~wheel", "working_pressure_angle"), 0.0001);
        Assert.Equal(30 * Math.Sin(Math.PI / 6) / (Math.PI * 3), analysis.Value("meshes.pinion~wheel", "overlap_ratio"), 9);
        Assert.True(analysis.Quantity("meshes.pinion~wheel", "hands_agree").Truth);
    }

    // Handbook example of an internal pair, widely reprinted (from memory): m 3, z 16/24, x_outward 0.5 on the ring: a_w = 13.1683 mm, α_wt = 31.0937°
    // (the handbook looks the angle up from a rounded involute; exactly it is 31.0936°).
    [Fact]
    public void An_internal_pair_matches_the_handbook_in_either_sign_convention()
    {
        foreach (var (convention, shift) in (ReadOnlySpan<(string, string)>)[("outward", "0.5"), ("iso", "-0.5")])
        {
            var analysis = SpecText.Analyse(SpecText.Simple(
                sun: 16, planet: 16, ring: 24, extraTrain: $"internal_profile_shift: {convention}", gears: "module: 3 mm, profile_shift: 0")
                .Replace("internal: true, module: 3 mm, profile_shift: 0", $"internal: true, module: 3 mm, profile_shift: {shift}", StringComparison.Ordinal));

            Assert.Equal(13.1683, analysis.Value("meshes.planet_gear~ring", "centre_distance"), 0.0001);
            Assert.Equal(31.0937, analysis.Value("meshes.planet_gear~ring", "working_pressure_angle"), 0.0002);
            Assert.Equal(-0.5, analysis.Value("gears.ring", "profile_shift"));
        }
    }

    // Closed form: the sun and ring of an unshifted set close when z_r = z_s + 2·z_p; the standard ring 60 on a planet of 20
    // with full addendum interferes by 0.0375 modules (checked by the mechanics tests against simulation).
    [Fact]
    public void A_full_addendum_ring_on_a_small_planet_interferes()
    {
        var analysis = SpecText.Analyse(SpecText.Simple(sun: 20, planet: 20, ring: 60, count: 4));

        Assert.Equal(0, analysis.Value("planets.planet", "coaxial_spread"), 9);
        Assert.Equal(-0.0375 * 2, analysis.Value("meshes.planet_gear~ring", "involute_clearance"), 0.0002);
    }

    // Closed form: 25.4 mm / 10 per inch = 2.54 mm. The same gears in inch and in metric words are the same gears.
    [Fact]
    public void Inch_and_metric_words_give_the_same_geometry()
    {
        var metric = SpecText.Analyse(SpecText.Pair(
            "teeth: 20, module: 2.54 mm, profile_shift: 0, face_width: 25.4 mm, axial_position: 0 mm, thickness_allowance: {upper: -0.0508 mm, lower: -0.1016 mm}",
            "teeth: 40, module: 2.54 mm, profile_shift: 0, face_width: 25.4 mm, axial_position: 0 mm, thickness_allowance: {upper: -0.0508 mm, lower: -0.1016 mm}",
            ", centre_distance: 76.2 mm ±0.0254"));
        var inch = SpecText.Analyse(SpecText.Pair(
            "teeth: 20, diametral_pitch: 10, profile_shift: 0, face_width: 1 in, axial_position: 0 in, thickness_allowance: {upper: -0.002 in, lower: -0.004 in}",
            "teeth: 40, diametral_pitch: 10, profile_shift: 0, face_width: 1 in, axial_position: 0 in, thickness_allowance: {upper: -0.002 in, lower: -0.004 in}",
            ", centre_distance: 3.000 in ±0.001"));

        foreach (var (one, other) in metric.Subjects.Zip(inch.Subjects))
        {
            foreach (var (a, b) in one.Quantities.Zip(other.Quantities.Where(each => each.Kind.Name != "diametral_pitch")))
            {
                Assert.Equal(a.IsEvaluated, b.IsEvaluated);
                Assert.Equal(1, Ratio(a.Value.Nominal, b.Value.Nominal), 9);
                Assert.Equal(1, Ratio(a.Value.Min, b.Value.Min), 9);
                Assert.Equal(1, Ratio(a.Value.Max, b.Value.Max), 9);
            }
        }
    }

    private static double Ratio(double a, double b) => Math.Abs(a - b) < 1e-9 ? 1 : a / b;

    // ISO 286-2: 60 js6 is ±9.5 µm. ISO 2768-1 class m: over 30 up to 120 mm ±0.3 mm.
    [Fact]
    public void Tolerance_classes_become_limits()
    {
        var analysis = SpecText.Analyse(SpecText.Pair(
            "teeth: 20, module: 2 mm, profile_shift: 0, face_width: 40 mm, axial_position: 0 mm",
            "teeth: 40, module: 2 mm, profile_shift: 0, face_width: 40 mm ±0.05, axial_position: 0 mm",
            ", centre_distance: 60 mm js6", "tolerances: {general: m}"));

        var centre = analysis.Quantity("meshes.pinion~wheel", "centre_distance").Value;
        Assert.Equal(59.9905, centre.Min, 9);
        Assert.Equal(60.0095, centre.Max, 9);
        Assert.Equal(39.7, analysis.Quantity("gears.pinion", "face_width").Value.Min, 9);
        Assert.Equal(39.95, analysis.Quantity("gears.wheel", "face_width").Value.Min, 9);
        Assert.Contains("iso2768-1-linear", analysis.TablesUsed);
    }

    // Closed form: on the working pitch circles at the actual centre distance two teeth, thinned by 0.05 mm each, leave what is left of
    // the pitch. An aluminium housing, 23 against 11.5 µm/(m·K), 50 K warmer than 20 °C, stands 60.02·1.00115/1.000575 mm apart for the gears.
    [Fact]
    public void Backlash_follows_allowance_centre_distance_and_heat()
    {
        const string gear = "module: 2 mm, profile_shift: 0, material: EN-42CrMo4, thickness_allowance: {upper: -0.05 mm, lower: -0.05 mm}";
        var analysis = SpecText.Analyse(SpecText.Pair($"teeth: 20, {gear}", $"teeth: 40, {gear}", ", centre_distance: 60.02 mm ±0"));

        Assert.Equal(NormalBacklash(60.02), analysis.Value("meshes.pinion~wheel", "assembly_backlash"), 9);
        var operating = analysis.Quantity("meshes.pinion~wheel", "operating_backlash").Value;
        Assert.Equal(NormalBacklash(60.02 * 1.00115 / 1.000575), operating.Max, 9);
        Assert.Equal(NormalBacklash(60.02), operating.Min, 9);
    }

    // Teeth 20 and 40 of module 2 mm, thinned by 0.05 mm each: thickness at any radius, ISO 21771.
    private static double NormalBacklash(double distance)
    {
        var (reference, working) = (20 * Math.PI / 180, Math.Acos(60 * Math.Cos(20 * Math.PI / 180) / distance));
        double Thickness(int z) => 2 * distance * z / 60
            * ((((Math.PI / 2 * 2) - 0.05) / (2 * z)) + Math.Tan(reference) - reference - Math.Tan(working) + working);
        return ((2 * Math.PI * distance / 60) - Thickness(20) - Thickness(40)) * Math.Cos(working);
    }

    // By hand: a housing of aluminium that is cooled to 20 °C lets the gears grow alone until the oil runs at 80 °C; from there on it
    // warms with the oil, 23 against 11.5 µm/(m·K). So the least backlash is at 80 °C, neither at −15 °C nor at 110 °C: the gears have
    // grown by 1.00069. First order: 0.1·cos 20° − 2·60·11.5e-6·60·sin 20° = 0.0656 mm.
    [Fact]
    public void The_least_backlash_may_lie_between_the_coldest_and_the_hottest()
    {
        const string gear = "module: 2 mm, profile_shift: 0, material: EN-42CrMo4, thickness_allowance: {upper: -0.05 mm, lower: -0.10 mm}";
        var analysis = SpecText.Analyse(SpecText.Pair($"teeth: 20, {gear}", $"teeth: 40, {gear}", ", centre_distance: 60 mm ±0")
            .Replace("running: 70 °C, coldest: 20 °C, hottest: 70 °C", "running: 80 °C, coldest: -15 °C, hottest: 110 °C", StringComparison.Ordinal)
            .Replace("{material: wrought-6082}", "{material: wrought-6082, running: 20 °C}", StringComparison.Ordinal));

        Assert.Equal(NormalBacklash(60 / 1.00069), analysis.Quantity("meshes.pinion~wheel", "operating_backlash").Value.Min, 9);
    }

    // 1.728/P pins over 20 teeth of P = 1: M = 22.3900 (published pin tables for 20° spur gears, from memory).
    [Fact]
    public void The_dimension_over_balls_matches_the_pin_tables()
    {
        var analysis = SpecText.Analyse(SpecText.Pair(
            "teeth: 20, module: 1 mm, profile_shift: 0, ball_diameter: 1.728 mm, thickness_allowance: {upper: 0 mm, lower: 0 mm}",
            "teeth: 21, module: 1 mm, profile_shift: 0, ball_diameter: 1.728 mm, thickness_allowance: {upper: 0 mm, lower: 0 mm}"));

        Assert.Equal(22.3900, analysis.Value("gears.pinion", "dimension_over_balls"), 0.00005);
        Assert.Equal(23.3321, analysis.Value("gears.wheel", "dimension_over_balls"), 0.00005);
        Assert.Equal(7.6604, analysis.Value("gears.pinion", "base_tangent_length"), 0.00005);
    }

    [Theory]
    [InlineData("profile_shift: 0", "meshes.pinion~wheel", "transverse_contact_ratio", "train.gears.pinion.profile_shift is not stated")]
    [InlineData("face_width: 20 mm, axial_position: 0 mm", "meshes.pinion~wheel", "common_face_width", "train.gears.pinion.face_width is not stated")]
    [InlineData("thickness_allowance: {upper: 0 mm, lower: -0.1 mm}", "meshes.pinion~wheel", "assembly_backlash", "train.gears.pinion.thickness_allowance is not stated")]
    public void What_is_not_stated_is_named(string left, string path, string quantity, string reason)
    {
        const string whole = "module: 2 mm, profile_shift: 0, face_width: 20 mm, axial_position: 0 mm, thickness_allowance: {upper: 0 mm, lower: -0.1 mm}";
        var part = whole.Replace(", " + left, "", StringComparison.Ordinal);

        var analysis = SpecText.Analyse(SpecText.Pair($"teeth: 20, {part}", $"teeth: 40, {whole}", ", centre_distance: 60 mm"));

        var found = analysis.Quantity(path, quantity);
        Assert.False(found.IsEvaluated);
        Assert.Contains(reason, found.Reasons);
    }

    [Fact]
    public void A_centre_distance_too_small_for_the_base_circles_is_a_reason()
    {
        var analysis = SpecText.Analyse(SpecText.Pair(
            "teeth: 20, module: 2 mm, profile_shift: 0", "teeth: 40, module: 2 mm, profile_shift: 0", ", centre_distance: 50 mm"));

        var found = analysis.Quantity("meshes.pinion~wheel", "working_pressure_angle");
        Assert.False(found.IsEvaluated);
        Assert.Contains("working pressure angle", Assert.Single(found.Reasons), StringComparison.Ordinal);
    }

    [Fact]
    public void Gears_of_different_module_are_named_and_not_computed()
    {
        var analysis = SpecText.Analyse(SpecText.Pair(
            "teeth: 20, module: 2 mm, profile_shift: 0", "teeth: 40, module: 2.5 mm, profile_shift: 0"));

        Assert.False(analysis.Quantity("meshes.pinion~wheel", "same_rack").Truth);
        Assert.Contains("differ", Assert.Single(analysis.Quantity("meshes.pinion~wheel", "transverse_contact_ratio").Reasons), StringComparison.Ordinal);
    }

    // Closed form: 30 µm on 2 mm.
    [Fact]
    public void Tip_relief_is_counted_in_modules()
    {
        var analysis = SpecText.Analyse(SpecText.Simple(gears: "module: 2 mm, profile_shift: 0, tip_relief: 30 µm ±10"));

        Assert.Equal(0.015, analysis.Value("gears.sun", "tip_relief_factor"), 12);
        Assert.Equal(0.020, analysis.Quantity("gears.sun", "tip_relief_factor").Value.Max, 12);
    }

    // ISO 2768-1, class m: ±0.3 mm over 30 to 120 mm, as the standard prints it. Sun of 20 teeth of module 2: d_a = 44 mm, d_f = 35 mm.
    [Fact]
    public void Tip_and_root_without_limits_of_their_own_have_the_general_tolerance()
    {
        var exact = SpecText.Analyse(SpecText.Simple());
        var general = SpecText.Analyse(SpecText.Simple() + "\ntolerances: {general: m}\n");
        var stated = SpecText.Analyse(SpecText.Simple(gears: "module: 2 mm, profile_shift: 0, tip_deviations: {upper: 0 mm, lower: -0.05 mm}, root_deviations: {upper: -0.1 mm, lower: -0.3 mm}")
            + "\ntolerances: {general: m}\n");

        AssertLimits(44, 44, exact, "tip_diameter");
        AssertLimits(43.7, 44.3, general, "tip_diameter");
        AssertLimits(34.7, 35.3, general, "root_diameter");
        AssertLimits(43.95, 44, stated, "tip_diameter");
        AssertLimits(34.7, 34.9, stated, "root_diameter");
        Assert.Contains("ISO 2768-1, class m", Assert.IsType<Origin.Declared>(general.Quantity("gears.sun", "tip_deviation").Origin).Tolerance, StringComparison.Ordinal);

        // c = a − d_a1/2 − d_f2/2: half of ±0.3 at the tip of the sun and half of ±0.3 at the root of the planet.
        Assert.Equal(
            exact.Value("meshes.sun~planet_gear.sun", "tip_clearance") - 0.3,
            general.Quantity("meshes.sun~planet_gear.sun", "tip_clearance").Value.Min, 12);

        static void AssertLimits(double least, double greatest, GearboxAnalysis analysis, string quantity)
        {
            var value = analysis.Quantity("gears.sun", quantity).Value;
            Assert.Equal(least, value.Min, 12);
            Assert.Equal(greatest, value.Max, 12);
        }
    }
}
