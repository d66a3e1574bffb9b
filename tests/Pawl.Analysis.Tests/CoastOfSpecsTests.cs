namespace Pawl.Analysis.Tests;

/// <summary>Overrunning, towing and regeneration: the output drives.</summary>
public class CoastOfSpecsTests
{
    private const string L = "lubrication";

    // All load factors 1: stresses follow the torque alone.
    private const string Gear =
        "module: 2 mm, profile_shift: 0, face_width: 20 mm ±0, axial_position: 0 mm ±0, material: EN-18CrNiMo7-6, accuracy_grade: 6, pitch_deviation: 0.01 µm, "
        + "rim_thickness: 20 mm, roughness: {flank_rz: 3 µm, root_rz: 10 µm}, "
        + "heat_treatment: {treatment: case-hardened, quality: MQ, surface_hardness: 60 HRC, core_hardness: 35 HRC}";

    private static GearboxAnalysis Of(string coast, string more = "", string input = "direction: one", string spectrum = "") => OilText.Analyse(
        SpecText.Simple(
            duty: $"duty:\n  service_life: 10000 h\n  application_factor: 1\n  input: {{speed: 1500 rpm, torque: 30 N·m, {input}}}\n"
                + $"  oil: {OilText.Oil}\n{(coast.Length > 0 ? $"  coast: {{{coast}}}\n" : "")}{spectrum}{more}",
            gears: Gear, mesh: ", dynamic_factor: 1, face_load_factor: 1, efficiency: 100 %, friction: 0.05")
            .Replace("count: 3}", "count: 3, load_sharing: 1, load_sharing_proof: test}", StringComparison.Ordinal));

    private static IEnumerable<string> Names(GearboxAnalysis analysis, string subject) => analysis.Subject(subject).Quantities.Select(quantity => quantity.Kind.Name);

    // Hertz goes with the root of the load and bending with the load; the cycles with share and speed. Teeth are alike on both flanks.
    [Theory]
    [InlineData(30)]
    [InlineData(15)]
    public void The_other_flanks_are_stressed_by_their_own_torque(double torque)
    {
        var analysis = Of($"torque: {torque} N·m, speed: 750 rpm, share: 20 %");
        foreach (var gear in (ReadOnlySpan<string>)["meshes.sun~planet_gear.sun", "meshes.sun~planet_gear.planet_gear"])
        {
            Assert.Equal(Math.Sqrt(torque / 30), analysis.Value(gear, "coast_contact_stress") / analysis.Value(gear, "contact_stress"), 1e-9);
            Assert.Equal(torque / 30, analysis.Value(gear, "coast_root_stress") / analysis.Value(gear, "root_stress"), 1e-9);
            Assert.Equal(0.2 * 0.5, analysis.Value(gear, "coast_cycles") / analysis.Value(gear, "load_cycles"), 1e-9);
        }
    }

    // All life at the rated speed: the safeties stand in the ratio of the stresses.
    [Fact]
    public void Safeties_stand_in_the_ratio_of_the_stresses()
    {
        var analysis = Of("torque: 10 N·m");
        const string Sun = "meshes.sun~planet_gear.sun";

        Assert.Equal(Math.Sqrt(3), analysis.Value(Sun, "coast_contact_safety") / analysis.Value(Sun, "contact_safety"), 1e-9);
        Assert.Equal(3, analysis.Value(Sun, "coast_bending_safety") / analysis.Value(Sun, "bending_safety"), 1e-9);
    }

    // ISO 6336-3: R = −1.2·lesser/greater; a drive that turns one way and coasts with half its torque bends the sun with R = −0.6, planets as ever with −1.2.
    [Theory]
    [InlineData("", "direction: one", 0)]
    [InlineData("torque: 15 N·m", "direction: one", -0.6)]
    [InlineData("torque: 15 N·m", "direction: both, reverse_torque: 20 N·m", -0.8)]
    [InlineData("torque: 25 N·m", "direction: both, reverse_torque: 20 N·m", -1)]
    [InlineData("torque: 0 N·m", "direction: one", 0)]
    public void Coasting_bends_the_teeth_of_a_one_way_drive_both_ways(string coast, string input, double reversal)
    {
        var analysis = Of(coast, input: input);

        Assert.Equal(reversal, analysis.Value("meshes.sun~planet_gear.sun", "load_reversal"), 1e-9);
        Assert.Equal(-1.2, analysis.Value("meshes.sun~planet_gear.planet_gear", "load_reversal"), 1e-9);
    }

    // η′ = 2 − 1/η, a little below η.
    [Fact]
    public void The_efficiency_from_the_output_has_the_same_loss()
    {
        var analysis = SpecText.AnalyseFile("specs/tarn-180/r180.yaml");
        var forward = analysis.Value("train", "efficiency") / 100;

        Assert.Equal(100 * (2 - 1 / forward), analysis.Value("train", "back_efficiency"), 1e-9);
        Assert.InRange(analysis.Value("train", "back_efficiency"), 90, 100 * forward);
    }

    [Fact]
    public void A_duty_without_coasting_has_none_of_it()
    {
        Assert.DoesNotContain(Names(Of(""), "meshes.sun~planet_gear.sun"), name => name.StartsWith("coast", StringComparison.Ordinal));
        Assert.DoesNotContain("coast_contact_safety", Names(Of("torque: 0 N·m"), "meshes.sun~planet_gear.sun"));
    }

    [Theory]
    [InlineData("supply: splash", "machine: stands", "supplied")]
    [InlineData("supply: grease", "machine: stands", "supplied")]
    [InlineData("supply: jet, pump: {driven_by: own}", "machine: stands", "supplied")]
    [InlineData("supply: jet, pump: {driven_by: output}", "machine: stands", "supplied")]
    [InlineData("supply: jet, pump: {driven_by: machine}", "machine: turns", "supplied")]
    [InlineData("supply: jet, pump: {driven_by: machine}", "machine: stands", "the pump stands with the machine")]
    public void The_pump_must_turn_while_the_output_drives(string supply, string machine, string says) =>
        Assert.Equal(says, Of($"torque: 5 N·m, {machine}", $"lubrication: {{{supply}}}").Quantity(L, "coast_supply").Text);

    [Fact]
    public void What_is_not_said_of_the_pump_is_asked_for()
    {
        Assert.Equal(["lubrication.pump.driven_by is not stated"], Of("torque: 5 N·m", "lubrication: {supply: jet}").Quantity(L, "coast_supply").Reasons);
        Assert.Equal(
            ["duty.coast.machine is not stated"], Of("torque: 5 N·m", "lubrication: {supply: jet, pump: {driven_by: machine}}").Quantity(L, "coast_supply").Reasons);
        Assert.Equal(
            ["lubrication.pump.reversible is not stated"],
            Of("", "lubrication: {supply: jet, pump: {driven_by: input}}", "direction: both").Quantity(L, "pump_reversible").Reasons);
        Assert.DoesNotContain("pump_reversible", Names(Of("", "lubrication: {supply: jet, pump: {driven_by: own}}", "direction: both"), L));
        Assert.DoesNotContain("pump_reversible", Names(Of("", "lubrication: {supply: jet, pump: {driven_by: input}}"), L));
    }

    // 1500 rated, 900 in the spectrum, 300 while the output drives; ratio 90/20 = 4.5 to the output. A share at rest does not count.
    [Theory]
    [InlineData("input", "", 900)]
    [InlineData("input", "torque: 5 N·m, speed: 300 rpm", 300)]
    [InlineData("output", "torque: 5 N·m, speed: 300 rpm", 300 / 4.5)]
    [InlineData("machine", "torque: 5 N·m, speed: 300 rpm, machine: turns", 300)]
    [InlineData("machine", "torque: 5 N·m, speed: 300 rpm, machine: stands", 900)]
    public void The_slowest_shaft_sets_the_pump(string driver, string coast, double slowest) => Assert.Equal(
        slowest,
        Of(
            coast, $"lubrication: {{supply: jet, pump: {{driven_by: {driver}, min_speed: 600 rpm}}}}",
            spectrum: "  spectrum: [{share: 50 %, torque: 30 N·m, speed: 900 rpm}, {share: 40 %, torque: 10 N·m, speed: 1500 rpm}, {share: 10 %, torque: 0 N·m, speed: 0 rpm}]\n")
            .Value(L, "pump_speed"),
        1e-9);

    // The right-hand sun is pushed forward with F_a = 2·T·tan β/d = 776 N at 60 N·m (right-hand rule), and back with a third of it by 20 N·m while the
    // output drives.
    [Theory]
    [InlineData("plus", "direction: one", "", 0)]
    [InlineData("minus", "direction: one", "", 1)]
    [InlineData("plus", "direction: one", "  coast: {torque: 20 N·m}\n", 1.0 / 3)]
    [InlineData("plus", "direction: both", "", 1)]
    [InlineData("locating", "direction: both", "  coast: {torque: 20 N·m}\n", 0)]
    public void A_one_sided_bearing_does_not_hold_reversed_thrust(string axial, string direction, string coast, double share)
    {
        var text = SpecText.Simple(
            duty: $"duty:\n  input: {{speed: 1500 rpm, torque: 60 N·m, {direction}}}\n  application_factor: 1\n{coast}"
                + $"bearings: {{sun: {{bearing: ball-6208, shaft: input, housing: housing, axial_position: -40 mm, axial: {axial}}}}}",
            gears: "module: 2 mm, profile_shift: 0, face_width: 20 mm, axial_position: 0 mm, helix_angle: 15°", extraTrain: "bodies: {input: {floating: true}}")
            .Replace("sun: {on: input,", "sun: {hand: right, on: input,", StringComparison.Ordinal)
            .Replace("planet_gear: {on: planet,", "planet_gear: {hand: left, on: planet,", StringComparison.Ordinal)
            .Replace("ring: {on: housing,", "ring: {hand: left, on: housing,", StringComparison.Ordinal);
        var analysis = SpecText.Analyse(text);
        var force = 2 * 60_000 * Math.Tan(Math.PI / 12) / (40 / Math.Cos(Math.PI / 12));

        Assert.Equal(share * force, analysis.Value("bodies.input", "unheld_thrust"), 1e-6 * force);
        Assert.Equal(
            direction.EndsWith("both", StringComparison.Ordinal) ? -force : coast.Length > 0 ? -force / 3 : 0,
            analysis.Value("bodies.input", "reverse_axial_force"), 1e-6 * force);
    }
}
