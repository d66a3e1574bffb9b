namespace Pawl.Analysis.Tests;

/// <summary>Which rings creep, and what holds them; by hand from the numbers of the spec.</summary>
public class BearingCreepTests
{
    private const string Gears = "module: 2 mm, profile_shift: 0, face_width: 20 mm, axial_position: 0 mm";

    private static GearboxAnalysis Of(string output, string near = "", double sharing = 1, string duty = "") => SpecText.Analyse(SpecText.Simple(
        duty:
        $$"""
        duty:
          input: {speed: 1500 rpm, torque: 60 N·m, direction: one, peak_torque: 120 N·m}
          output: { {{output}} }
          service_life: 2000 h
          application_factor: 1
          oil: {lubricant: gear-oil-vg100, running: 60 °C, coldest: 20 °C, hottest: 90 °C}
          {{duty}}
        bearings:
          near: {bearing: ball-6208, shaft: carrier, housing: housing, axial_position: 40 mm, axial: floating, clearance: C3, shaft_seat: 40 mm h6, housing_seat: 80 mm G7, inner_warmer: 0 K{{near}}}
          far: {bearing: ball-6208, shaft: carrier, housing: housing, axial_position: 100 mm, axial: locating, clearance: C3, shaft_seat: 40 mm k5, housing_seat: 80 mm H7}
        """,
        gears: Gears, extraTrain: "bodies: {input: {floating: true}, carrier: {material: EN-42CrMo4}, housing: {material: EN-42CrMo4}}")
        .Replace("planet: {carrier: carrier, count: 3}", FormattableString.Invariant($"planet: {{carrier: carrier, count: 3, mass: 0.2 kg, load_sharing: {sharing}, load_sharing_proof: test}}"), StringComparison.Ordinal));

    private static (string?, string?) Lie(GearboxAnalysis analysis, string bearing = "near") =>
        (analysis.Quantity($"bearings.{bearing}", "inner_load").Text, analysis.Quantity($"bearings.{bearing}", "outer_load").Text);

    // Three equal planets leave nothing on the carrier but what rounding leaves of 6000 N. That asks no ring of a housing at rest to sit tight.
    [Fact]
    public void What_rounding_leaves_of_a_load_is_none()
    {
        var analysis = Of("");

        Assert.Equal(0, analysis.Value("bearings.near", "turning_load"));
        Assert.Equal(("negligible", "negligible"), Lie(analysis));
    }

    // Loaded along its axis alone, the bearing carries; nothing turns, and only the inner ring goes round under the load.
    [Fact]
    public void A_load_along_the_axis_turns_with_no_carrier() => Assert.Equal(("rotating", "stationary"), Lie(Of("axial_force: 3000 N"), "far"));

    // 291 N is a hundredth of the rating of 29.1 kN.
    [Theory]
    [InlineData(280, "negligible")]
    [InlineData(300, "rotating")]
    public void A_hundredth_of_the_rating_is_the_least_that_counts(int force, string expected) =>
        Assert.Equal(expected, Lie(Of($"radial_force: {force} N, radial_force_at: 160 mm")).Item1);

    // K_γ = 1.2: 0.3·2000 N, less losses, turn; at z = 0 they are 1000 N on the near bearing. 500 N of the machine at 160 mm stand: 500 N on
    // it. In the share of a quarter of the torque 250 N turn, and the 500 N rule: then it is the inner ring that the load goes round.
    [Fact]
    public void Where_shares_of_the_life_differ_both_rings_see_a_load_that_goes_round()
    {
        const string Shares = "spectrum: [{share: 50 %, torque: 60 N·m, speed: 1500 rpm}, {share: 50 %, torque: 15 N·m, speed: 1500 rpm}]";
        const string Machine = "radial_force: 500 N, radial_force_at: 160 mm";

        Assert.Equal(("stationary", "rotating"), Lie(Of(Machine, sharing: 1.2)));
        Assert.Equal(("rotating", "rotating"), Lie(Of(Machine, sharing: 1.2, duty: Shares)));
        Assert.Equal(1000, Of(Machine, sharing: 1.2, duty: Shares).Value("bearings.near", "turning_load"), tolerance: 15.0);
        Assert.Equal(250, Of(Machine, sharing: 1.2, duty: Shares).Value("bearings.near", "least_turning_load"), tolerance: 4.0);
        Assert.Equal(500, Of(Machine, sharing: 1.2).Value("bearings.near", "standing_load"), 1e-6);
    }

    // 40 h6 is −16 to 0 µm, the bore −12 to 0 µm: 16 µm of play at 20 °C, and hot by 70 K 40·(12 − 11.5)·10⁻³·70 = 1.4 µm more; the carrier turns at
    // 333.33 1/min: 333.33·17.4/40 000 = 0.145 1/min. Held, the ring slides: 0.2·1200 N·20 mm = 4.8 N·m.
    [Fact]
    public void A_loose_ring_creeps_by_its_play_and_is_held_by_friction()
    {
        var analysis = Of(
            "radial_force: 1200 N, radial_force_at: 160 mm", ", inner_locking: o-ring, inner_locking_torque: 6 N·m");
        var play = -analysis.Quantity("bearings.near", "inner_fit").Value.Min;

        Assert.InRange(play, 0.016, 0.0176);
        Assert.Equal(1500.0 * 20 / 90 * play / 40, analysis.Quantity("bearings.near", "inner_creep").Value.Max / Math.Tau * 60, 1e-9);
        Assert.Equal(4.8, analysis.Value("bearings.near", "inner_creep_torque"), 1e-9);
        Assert.Equal(6 / 4.8, analysis.Value("bearings.near", "inner_locking_safety"), 1e-9);
    }

    [Fact]
    public void A_locking_by_friction_needs_its_torque_and_an_adhesive_its_temperature()
    {
        var analysis = Of("radial_force: 1200 N, radial_force_at: 160 mm", ", inner_locking: adhesive");

        Assert.Contains("bearings.near.inner_locking_torque is not stated", analysis.Quantity("bearings.near", "inner_locking_safety").Reasons);
        Assert.Contains("bearings.near.adhesive_limit is not stated", analysis.Quantity("bearings.near", "adhesive_reserve").Reasons);
        var known = Of("radial_force: 1200 N, radial_force_at: 160 mm", ", inner_locking: adhesive, adhesive_limit: 120 °C");
        Assert.Equal(30, known.Value("bearings.near", "adhesive_reserve"), 1e-9);
    }
}
