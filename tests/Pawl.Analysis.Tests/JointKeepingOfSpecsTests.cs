using System.Reflection;
using Pawl.Analysis.Core;
using Pawl.Mechanics.Joints;
using Pawl.Specs.Model;
using Joint = Pawl.Analysis.Tests.JointOfSpecsTests;

namespace Pawl.Analysis.Tests;

/// <summary>What keeps a joint, how far it settles, and what it bears from outside, as a spec states it.</summary>
public class JointKeepingOfSpecsTests
{
    private static Quantity Of(GearboxAnalysis analysis, string quantity) => analysis.Quantity("joints.j", quantity);

    private static double Number(GearboxAnalysis analysis, string quantity) => analysis.Value("joints.j", quantity);

    [Fact]
    public void Every_way_to_lock_that_the_spec_accepts_is_a_row_of_the_table() => Assert.Equal(
        LockingElement.All.Select(row => row.Name).Order(StringComparer.Ordinal),
        typeof(LockingSpec).GetProperty(nameof(LockingSpec.By))!.GetCustomAttribute<OneOfAttribute>()!.Words.Order(StringComparer.Ordinal));

    // Oil from 0 °C to 90 °C, assembled at 20 °C. ISO 2320:2015: −50 °C to 150 °C with nuts of metal, to 120 °C with polyamide. By hand.
    [Theory]
    [InlineData("prevailing torque of metal", "friction", "published", 50, 60)]
    [InlineData("prevailing torque of polyamide", "friction", "published", 50, 30)]
    [InlineData("polyamide patch, coldest: 5 °C, hottest: 80 °C", "friction", "maker", -5, -10)]
    [InlineData("anaerobic medium strength", "adhesive", "usual", 55, 60)]
    [InlineData("anaerobic medium strength, hottest: 100 °C", "adhesive", "usual", 55, 10)]
    public void A_locking_element_has_room_to_its_temperatures(string by, string method, string rating, double cold, double heat)
    {
        var analysis = Joint.Of(Joint.Nut($"locking: {{by: {by}}}"));

        Assert.Equal((method, rating), (Of(analysis, "locking_method").Text, Of(analysis, "locking_rating").Text));
        Assert.Equal(cold, Of(analysis, "locking_cold_reserve").Value.Min, 1e-9);
        Assert.Equal(heat, Of(analysis, "locking_heat_reserve").Value.Min, 1e-9);
    }

    [Fact]
    public void What_locks_by_form_has_no_temperature()
    {
        var joint = Joint.Of(Joint.Nut("locking: {by: staked collar}")).Subject("joints.j");

        Assert.DoesNotContain(joint.Quantities, quantity => quantity.Kind.Name is "locking_heat_reserve" or "locking_cold_reserve" or "locking_slip_safety");
    }

    // The ring that carries 40 N·m under the nut: F·µ·(50³ − 30³)/(3·(50² − 30²)), even pressure. Without a torque nobody knows.
    [Fact]
    public void A_nut_that_only_its_preload_locks_must_not_slip()
    {
        var analysis = Joint.Of(Joint.Nut("locking: {by: preload}", "torque: 40 N·m", "face_friction: 0.12"));
        var clamp = Of(analysis, "residual_clamp").Value.Min;

        // The nut's own face, 36 mm on 30 mm, is the narrowest.
        Assert.Equal(clamp * 0.12 * (36 * 36 * 36 - 27_000.0) / (3 * (36 * 36 - 900)) / 40_000, Of(analysis, "locking_slip_safety").Value.Min, 1e-3);
        Assert.Contains("joints.j.carries or joints.j.torque", string.Join("; ", Of(Joint.Of(Joint.Nut("locking: {by: preload}")), "locking_slip_safety").Reasons), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("both", "both")]
    [InlineData("one", "one")]
    public void The_direction_is_that_of_the_duty(string stated, string direction) => Assert.Equal(
        direction, Of(Joint.Of(Joint.Nut(), duty: Joint.Duty.Replace("direction: both", $"direction: {stated}", StringComparison.Ordinal)), "direction").Text);

    // VDI 2230 Part 1, table 5, from memory: Rz 4 µm along the bolt 3 + 2.5 + 1.5·n_i; two rings make two interfaces: 8.5 µm.
    [Fact]
    public void Embedding_is_that_of_the_table_unless_it_is_stated()
    {
        var (table, stated) = (Joint.Of(Joint.Nut()), Joint.Of(Joint.Nut("embedding: 4 µm")));

        Assert.Equal(8.5, Number(table, "embedding"), 1e-9);
        Assert.Equal(4, Number(stated, "embedding"), 1e-9);
        Assert.Equal(4 / 8.5, Number(stated, "embedding_over_table"), 1e-9);
        Assert.Equal(Number(table, "embedding_loss") * 4 / 8.5, Number(stated, "embedding_loss"), 1e-6);
        Assert.True(Of(Joint.Of(Joint.Nut("embedding: 4 µm", "roughness: null")), "residual_clamp").IsEvaluated);
        Assert.False(Of(Joint.Of(Joint.Nut("roughness: null")), "residual_clamp").IsEvaluated);
    }

    // The printed formulas, redone with the printed inputs and nothing else: F_Z = f_Z/(δ_S + δ_P), its share, F_KR, S_A.
    [Theory]
    [InlineData("specs/tarn-180/r180.yaml", "joints.output_nut")]
    [InlineData("specs/tarn-180/r180.yaml", "joints.housing_flange")]
    [InlineData("specs/tarn-120/r400.yaml", "joints.housing_flange")]
    [InlineData("specs/beck-90/r760.yaml", "joints.housing_flange")]
    public void What_becomes_of_the_preload_is_what_its_printed_formulas_give(string spec, string joint)
    {
        var analysis = SpecText.AnalyseFile(spec);

        double In(string quantity, string symbol)
        {
            var found = analysis.Quantity(joint, quantity);
            return found.Inputs[found.Symbols.IndexOf(symbol)].Value.Nominal;
        }

        double Value(string quantity) => analysis.Quantity(joint, quantity).Value.Nominal;

        Assert.Equal(
            In("table_embedding", "f_th") + In("table_embedding", "n_f") * In("table_embedding", "f_f") + In("table_embedding", "n_i") * In("table_embedding", "f_i"),
            Value("table_embedding"), 1e-12);
        Assert.Equal(
            In("embedding_loss", "f_Z") / (1 / In("embedding_loss", "1/δ_S") + 1 / In("embedding_loss", "1/δ_P")), Value("embedding_loss"), 1e-6);
        Assert.Equal(In("embedding_share", "F_Z") / In("embedding_share", "F_M,min"), Value("embedding_share"), 1e-12);
        Assert.Equal(
            In("residual_clamp", "F_M,min") - In("residual_clamp", "F_Z") + In("residual_clamp", "ΔF_th") - (1 - In("residual_clamp", "Φ_K")) * In("residual_clamp", "F_A"),
            Value("residual_clamp"), 1e-6);
        Assert.Equal(
            (In("parting_safety", "F_M,min") - In("parting_safety", "F_Z") + In("parting_safety", "ΔF_th")) / ((1 - In("parting_safety", "Φ_K")) * In("parting_safety", "F_A")),
            Value("parting_safety"), 1e-9);
    }

    // ISO 898-2, a public reprint: M8 of class 12, regular, stands 41.7 kN; of 10, 38.1 kN. Loads rounded to three figures.
    [Theory]
    [InlineData("12", 41_700)]
    [InlineData("10", 38_100)]
    public void A_nut_has_the_proof_load_of_ISO_898_2(string strength, double load)
    {
        var analysis = Joint.Of(Joint.Flange("tapped: null", $"nut: {{strength: {strength}}}", "length: 45 mm"));

        Assert.Equal(load, Number(analysis, "nut_proof_load"), 0.007 * load);
        Assert.Equal(Number(analysis, "bolt_force") / Number(analysis, "nut_proof_load"), Number(analysis, "nut_proof_share"), 1e-9);
        Assert.DoesNotContain(
            Joint.Of(Joint.Flange("thread: M8x1", "tapped: null", $"nut: {{strength: {strength}}}", "length: 45 mm")).Subject("joints.j").Quantities,
            quantity => quantity.Kind.Name == "nut_proof_load");
    }

    // 4·600 000/(8·134) = 2238.8 N on the worst bolt, a page on slewing rings: F = 2·M/(n·R). With 8·500 N along: 2738.8 N.
    // It comes from either side: half the range is (2738.8 − (0 − 2238.8))/2.
    [Fact]
    public void A_moment_loads_the_worst_bolt_of_the_circle()
    {
        var analysis = Joint.Of(Joint.Flange("moment: 600 N·m", "axial_force: 4 kN", "outside: 160 mm", "inside: 110 mm"));

        Assert.Equal(2238.8, Number(analysis, "moment_force"), 0.05);
        Assert.Equal(2738.8, Number(analysis, "axial_force"), 0.05);
        var phi = Number(analysis, "load_factor");
        Assert.Equal(phi * (2738.8 + 2238.8) / (2 * 36.609), Number(analysis, "stress_amplitude"), 0.01);

        // W/A of a ring 160/110: (160² + 110²)/(8·160) = 29.45 mm.
        var clamp = 8 * (Number(analysis, "residual_clamp") + (1 - phi) * 2238.8);
        Assert.Equal(clamp * 29.453 / 600_000, Number(analysis, "edge_safety"), 0.002);
    }

    // 900 N at 110 mm on the carrier, faces at 20 mm, peak 60 N·m over 30 N·m: 1800 N·90 mm = 162 N·m. The axial 300 N become 600 N.
    [Fact]
    public void Overhung_forces_of_the_duty_go_through_the_joint_at_their_peak()
    {
        var duty = Joint.Duty.Replace("  application_factor", "  output: {radial_force: 900 N, radial_force_at: 110 mm, axial_force: 300 N}\n  application_factor", StringComparison.Ordinal);
        var analysis = Joint.Of(Joint.Flange("supports: carrier", "axial_position: 20 mm"), duty: duty);

        Assert.Equal(162, Number(analysis, "bending_moment"), 1e-9);
        Assert.Equal(1800, Number(analysis, "force_across"), 1e-6);
        Assert.Equal(600 / 8.0 + 4 * 162_000 / (8 * 134.0), Number(analysis, "axial_force"), 1e-6);
        Assert.Equal("stated", Of(analysis, "external_loads").Text);
        Assert.Equal("not stated", Of(Joint.Of(Joint.Flange(), duty: duty), "external_loads").Text);
        Assert.Equal("none", Of(Joint.Of(Joint.Flange()), "external_loads").Text);
        Assert.Contains("edge_safety", Joint.Of(Joint.Flange("supports: carrier", "axial_position: 20 mm"), duty: duty).Subject("joints.j").Quantities
            .Where(quantity => !quantity.IsEvaluated).Select(quantity => quantity.Kind.Name));
    }

    [Fact]
    public void A_planet_has_no_overhung_force_of_the_duty() => Assert.Contains(
        "neither input nor output", string.Join("; ", Of(Joint.Of(Joint.Flange("supports: planet", "axial_position: 20 mm")), "overhung_force").Reasons), StringComparison.Ordinal);

    [Fact]
    public void A_moment_on_two_bolts_has_no_answer() => Assert.Contains(
        "three bolts or more", string.Join("; ", Of(Joint.Of(Joint.Flange("moment: 60 N·m", "bolts: 2")), "residual_clamp").Reasons), StringComparison.Ordinal);
}
