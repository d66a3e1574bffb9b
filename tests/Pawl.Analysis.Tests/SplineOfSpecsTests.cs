using CsCheck;

namespace Pawl.Analysis.Tests;

/// <summary>Splines as a spec states them: sizes, fit, stresses by hand.</summary>
public class SplineOfSpecsTests
{
    private const string Metric = "system: iso-4156, module: 1.25 mm, pressure_angle: 30°, root: fillet, length: 28 mm";

    private static GearboxAnalysis Of(
        string spline = Metric, string more = "floating: true, lubrication: oil, starts: 10000",
        string shaft = "class: 6, fit: e, hardness: 60 HRC, yield: 800 MPa", string hub = "class: 6, outside: 50 mm, hardness: 60 HRC, yield: 700 MPa",
        int teeth = 26, string input = "torque: 60 N·m, direction: both, peak_torque: 120 N·m", string life = "1000 h") =>
        SpecText.Analyse(SpecText.Simple(duty:
            $$$"""
            duty: {input: {speed: 1500 rpm, {{{input}}}}, service_life: {{{life}}}, application_factor: 1.5}
            splines: {joint: {body: input, {{{spline}}}, {{{more}}}, shaft: {teeth: {{{teeth}}}, {{{shaft}}}}, hub: {teeth: {{{teeth}}}, {{{hub}}} } } }
            """));

    // m·z = 32.5; D·cos 30° = 28.1458; m·(z + 1) = 33.75; m·(z + 1.8) = 34.75; m·(z − 1.8) = 30.25; π·m/2 = 1.9635.
    [Theory]
    [InlineData("pitch_diameter", 32.5)]
    [InlineData("base_diameter", 28.14583)]
    [InlineData("external_major_diameter", 33.75)]
    [InlineData("internal_major_diameter", 34.75)]
    [InlineData("external_minor_diameter", 30.25)]
    [InlineData("tooth_thickness", 1.963495)]
    public void Sizes_of_a_metric_spline_by_hand(string quantity, double millimetres) => Assert.Equal(millimetres, Of().Value("splines.joint", quantity), 5e-6);

    // 20 teeth of 16/32: D = 20/16 in = 31.75 mm, major (20 + 1)/16 in = 33.3375 mm, minor of the hub (20 − 1)/16 in = 30.1625 mm.
    [Theory]
    [InlineData("pitch_diameter", 31.75)]
    [InlineData("external_major_diameter", 33.3375)]
    [InlineData("internal_minor_diameter", 30.1625)]
    [InlineData("contact_height", 1.5875)]
    public void Sizes_of_an_inch_spline_by_hand(string quantity, double millimetres) => Assert.Equal(
        millimetres, Of("system: ansi-b92.1, diametral_pitch: 16, pressure_angle: 30°, root: fillet, length: 28 mm", teeth: 20).Value("splines.joint", quantity), 5e-6);

    // ISO 286-1: the deviation e of 30 mm to 50 mm is −50 µm; an H space and an e tooth leave at least that.
    [Fact]
    public void The_letter_of_the_fit_is_the_least_clearance() => Assert.Equal(0.050, Of().Quantity("splines.joint", "flank_clearance").Value.Min, 1e-9);

    // 1.98 to 2.01 less 1.90 to 1.95 mm.
    [Fact]
    public void Limits_of_the_drawing_go_before_those_of_the_class()
    {
        var clearance = Of(shaft: "thickness: 1.95 mm +0/-0.05", hub: "space: 1.98 mm +0.03/0").Quantity("splines.joint", "flank_clearance");

        Assert.Equal((0.03, 0.11), (Math.Round(clearance.Value.Min, 9), Math.Round(clearance.Value.Max, 9)));
    }

    // T = 60 N·m, K_A = 1.5, K_m = 1; h = (33.75 − 31.3587)/2 = 1.19566 mm. 2·T/(D·z·L·h) = 4.24188, 4·T/(D·z·L·S) = 5.16615,
    // 16·T/(π·30.25³) = 11.03939 MPa, each times 1.5.
    [Theory]
    [InlineData("contact_height", 1.195660, 1)]
    [InlineData("flank_pressure", 4.241885, 1.5)]
    [InlineData("tooth_shear", 5.166145, 1.5)]
    [InlineData("root_torsion", 11.039394, 1.5)]
    public void Stresses_by_hand(string quantity, double value, double factor) => Assert.Equal(value * factor, Of().Value("splines.joint", quantity), 5e-6);

    // Ring of Ø34.75 in Ø50: hoop 2.00057 (Lamé), bending of the teeth 4·T/(D²·L·1.5) = 5.40997, both times 1.5; at 1500 1/min
    // ρ·ω²/16·(3.3·50² + 0.7·34.75²) = 0.11010 MPa.
    [Fact]
    public void Tension_of_the_hub_by_hand() => Assert.Equal((1.5 * (2.000569 + 5.409975)) + 0.110105, Of().Value("splines.joint", "hub_tension"), 5e-6);

    // Peak of 120 N·m: twice as much of each, without K_A, over the yield strength; shear at σ_S/√3 of the weaker part.
    [Fact]
    public void At_the_peak_the_yield_strength_counts()
    {
        var analysis = Of();

        Assert.Equal(2 * 5.166145 * Math.Sqrt(3) / 700, analysis.Value("splines.joint", "tooth_yield_utilisation"), 1e-7);
        Assert.Equal(2 * 11.039394 * Math.Sqrt(3) / 800, analysis.Value("splines.joint", "root_yield_utilisation"), 1e-7);
        Assert.Equal(((2 * (2.000569 + 5.409975)) + 0.110105) / 700, analysis.Value("splines.joint", "hub_yield_utilisation"), 1e-7);
    }

    // Dudley's table in ksi: hardened flanks of 58 HRC and more 50 in shear, 5 in pressure; 1500·60·1000 = 9·10⁷ turns; 10⁴ starts: factor 1.
    [Fact]
    public void Uses_of_hard_flanks_by_the_table()
    {
        var analysis = Of();
        var wear = Math.Pow(10, Math.Log10(1.4) + (Math.Log10(1.0 / 1.4) * (Math.Log10(9e7) - 7)));

        Assert.Equal(9e7, analysis.Value("splines.joint", "turns"), 1);
        Assert.Equal(wear, analysis.Value("splines.joint", "wear_factor"), 1e-9);
        Assert.Equal(1, analysis.Value("splines.joint", "life_factor"), 1e-12);
        Assert.Equal(1.5 * 4.241885 / (5 * 6.894757 * wear), analysis.Value("splines.joint", "flank_pressure_utilisation"), 1e-6);
        Assert.Equal(1.5 * 5.166145 / (50 * 6.894757), analysis.Value("splines.joint", "tooth_shear_utilisation"), 1e-7);
    }

    // The softer side counts: 180 HBW has 20 ksi in shear. Clamped flanks: nine times the fatigue factor instead of wear.
    [Fact]
    public void The_softer_side_and_the_clamp_count()
    {
        var soft = Of(hub: "class: 6, outside: 50 mm, hardness: 180 HBW, yield: 300 MPa");
        var clamped = Of(more: "lubrication: oil, starts: 10000");

        Assert.Equal(1.5 * 5.166145 / (20 * 6.894757), soft.Value("splines.joint", "tooth_shear_utilisation"), 1e-7);
        Assert.Equal(1.5 * 4.241885 / (5 * 6.894757 * 9), clamped.Value("splines.joint", "flank_pressure_utilisation"), 1e-7);
        Assert.Null(clamped.Subject("splines.joint").Find(Splines.Splines.Wear));
    }

    [Fact]
    public void What_is_missing_is_named()
    {
        var analysis = Of(more: "floating: true", shaft: "fit: e", hub: "class: 6");

        Assert.Contains("splines.joint.shaft.class is not stated", analysis.Quantity("splines.joint", "flank_clearance").Reasons);
        Assert.Contains("splines.joint.hub.outside is not stated", analysis.Quantity("splines.joint", "hub_tension").Reasons);
        Assert.Contains("splines.joint.starts is not stated", analysis.Quantity("splines.joint", "tooth_shear_utilisation").Reasons);
        Assert.Contains("splines.joint.shaft.hardness is not stated", analysis.Quantity("splines.joint", "flank_pressure_utilisation").Reasons);
        Assert.Contains("splines.joint.lubrication is not stated", analysis.Quantity("splines.joint", "lubrication").Reasons);
    }

    [Fact]
    public void A_hub_without_a_wall_is_told() => Assert.Contains(
        Of(hub: "outside: 34 mm").Quantity("splines.joint", "hub_tension").Reasons, reason => reason.StartsWith("a sleeve needs a wall about its spline", StringComparison.Ordinal));

    // Statics: every stress falls with the length, grows with the torque, and a thicker hub is never worse.
    [Fact]
    public void More_torque_is_never_better_and_more_spline_never_worse() => Gen.Select(Gen.Double[10, 40], Gen.Double[1, 2], Gen.Double[10, 200], Gen.Double[36, 60])
        .Sample(
            (length, factor, torque, outside) =>
            {
                GearboxAnalysis With(double l, double t, double o) => Of(
                    FormattableString.Invariant($"system: iso-4156, module: 1.25 mm, pressure_angle: 30°, root: fillet, length: {l:0.###} mm"),
                    input: FormattableString.Invariant($"torque: {t:0.###} N·m, direction: both, peak_torque: {2 * t:0.###} N·m"),
                    hub: FormattableString.Invariant($"class: 6, outside: {o:0.###} mm, hardness: 60 HRC, yield: 700 MPa"));
                var before = With(length, torque, outside);
                var (longer, stronger, thicker) = (With(length * factor, torque, outside), With(length, torque * factor, outside), With(length, torque, outside * factor));
                foreach (var use in (ReadOnlySpan<string>)["flank_pressure_utilisation", "tooth_shear_utilisation", "root_torsion_utilisation", "hub_tension_utilisation", "tooth_yield_utilisation", "root_yield_utilisation", "hub_yield_utilisation"])
                {
                    var value = before.Value("splines.joint", use);
                    Assert.True(longer.Value("splines.joint", use) <= value * (1 + 1e-6), use);
                    Assert.True(stronger.Value("splines.joint", use) >= value * (1 - 1e-6), use);
                    if (use.StartsWith("tooth", StringComparison.Ordinal))
                        Assert.Equal(value, thicker.Value("splines.joint", use), 1e-9);
                }
            },
            iter: 200);
}
