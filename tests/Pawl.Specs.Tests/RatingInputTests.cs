using Pawl.Quantities;
using Pawl.Specs.Text;

namespace Pawl.Specs.Tests;

/// <summary>What the rating of gears needs of a spec: heat treatment, hardness, accuracy, roughness, cutter, factors, peaks and safety.</summary>
public sealed class RatingInputTests
{
    private const string Case = "0.40 mm +0.20/0";

    [Fact]
    public void Every_key_of_the_duty_reaches_the_model()
    {
        var duty = Sample.Loader().Load("r180.yaml").Spec!.Duty!;

        Assert.Equal((400_000, 120_000), (duty.Input!.PeakTorque!.Value.Coherent, duty.Input.ReverseTorque!.Value.Coherent));
        Assert.Equal((1.1, 1.45), (duty.Safety!.Contact!.Value, duty.Safety.Bending!.Value));
        Assert.Equal((1.02, 1.3), (duty.Safety.PeakContact!.Value, duty.Safety.PeakBending!.Value));
        Assert.Equal("included", duty.SpectrumPeaks!.Value);
    }

    [Fact]
    public void Every_key_of_the_heat_treatment_reaches_the_model()
    {
        var treatment = Sample.Loader().Load("r180.yaml").Spec!.Train!.Gears.Find("fixed_sun")!.HeatTreatment!;

        Assert.Equal(("case-hardened", "MQ", "Furnace chart and section of a test piece"), (treatment.Treatment.Value, treatment.Quality!.Value, treatment.Proof!.Value));
        Assert.Equal(new(HardnessScale.RockwellC, 60, 58, 62), treatment.SurfaceHardness!.Value);
        Assert.Equal(new(HardnessScale.Vickers, 340, 310, 370), treatment.CoreHardness!.Value);
        Assert.Equal("340 HV10 ±30", treatment.CoreHardness.Text);
        Assert.Equal((true, false, true), (treatment.HardenabilityProven!.Value, treatment.RootHardened!.Value, treatment.Superfinished!.Value));
        Assert.Equal((0.4, new Tolerance.Deviations(0, 0.2)), (treatment.CaseDepth!.Value.Nominal.Coherent, treatment.CaseDepth.Value.Tolerance));
        Assert.Equal((0.1, 0.15), (treatment.GrindingStock!.Value.Coherent, treatment.FurnaceSpread!.Value.Coherent));
        Assert.Equal((170, 510, 850), (treatment.Tempering!.Value.Coherent, treatment.Nitriding!.Value.Coherent, treatment.YieldStrength!.Value.Coherent));
        var heat = Assert.Single(treatment.LaterHeat);
        Assert.Equal(("shrink-fit", 160), (heat.Process.Value, heat.Temperature.Value.Coherent));
        Assert.Equal("phosphated", treatment.Plating!.Value);
        Assert.Equal((190, 8 * 3600.0, 2 * 3600.0), (treatment.Bake!.Temperature.Value.Coherent, treatment.Bake.Duration.Value.Coherent, treatment.Bake.BeginsWithin!.Value.Coherent));
        Assert.Equal((0.3, 2, false), (treatment.Peening!.Intensity!.Value.Coherent, treatment.Peening.Coverage!.Value.Coherent, treatment.Peening.RootGroundAfter!.Value));
        Assert.Equal([("raceway", "59..63 HRC"), ("spline", null)], treatment.Features.Select(feature => (feature.Feature.Value, feature.Hardness?.Text)));
        Assert.Equal(Sample.Place(Sample.Text, "heat_treatment:"), (treatment.Span.Start.Line, treatment.Span.Start.Column));
    }

    [Fact]
    public void Every_key_of_gear_mesh_and_planets_reaches_the_model()
    {
        var train = Sample.Loader().Load("r180.yaml").Spec!.Train!;

        var gear = train.Gears.Find("fixed_sun")!;
        Assert.Equal((6, 0.005), (gear.AccuracyGrade!.Value, gear.PitchDeviation!.Value.Coherent));
        Assert.Equal((0.003, 0.0004, 0.01), (gear.Roughness!.FlankRz!.Value.Coherent, gear.Roughness.FlankRa!.Value.Coherent, gear.Roughness.RootRz!.Value.Coherent));
        Assert.Equal((20, 56.2), (gear.Cutter!.Teeth.Value, gear.Cutter.TipDiameter.Value.Coherent));
        Assert.Equal((0.07, 0.35), (gear.Cutter.ProfileShift!.Value, gear.Cutter.TipRadius.Value.Coherent));
        Assert.Equal((0.008, 1.15, 1.05), (train.Meshes[0].Misalignment!.Value.Coherent, train.Meshes[0].FaceLoadFactor!.Value, train.Meshes[0].DynamicFactor!.Value));
        var planets = train.Planets.Find("long_pinion")!;
        Assert.Equal((1.12, "Strain gauges at three pinions"), (planets.LoadSharing!.Value, planets.LoadSharingProof!.Value));
    }

    // Each row: what is replaced, by what, the code, the text at whose start the complaint stands, and a piece of the hint.
    [Theory]
    [InlineData("torque: 190 N·m, direction", "torque: 0 N·m, direction", DiagnosticCodes.OutOfRange, "0 N·m, direction", null)]
    [InlineData("peak_torque: 400 N·m", "peak_torque: 0 N·m", DiagnosticCodes.OutOfRange, "0 N·m, reverse", null)]
    [InlineData("peak_torque: 400 N·m", "peak_torque: 189 N·m", DiagnosticCodes.OutOfRange, "189 N·m", null)]
    [InlineData("peak_torque: 400 N·m", "peak_torque: 400", DiagnosticCodes.MissingUnit, "400, reverse", "400 N·m")]
    [InlineData("peak_torque: 400 N·m", "peak_torque: 400 kW", DiagnosticCodes.UnitMismatch, "kW", "torque")]
    [InlineData("torque: 190 N·m, speed: 5200", "torque: 401 N·m, speed: 5200", DiagnosticCodes.OutOfRange, "401 N·m", null)]
    [InlineData("reverse_torque: 120 N·m", "reverse_torque: -120 N·m", DiagnosticCodes.OutOfRange, "-120 N·m", null)]
    [InlineData("reverse_torque: 120 N·m", "reverse_torque: 191 N·m", DiagnosticCodes.OutOfRange, "191 N·m", "State the greater torque")]
    [InlineData("duty:\n", "duty:\n  coast: {torque: 191 N·m}\n", DiagnosticCodes.OutOfRange, "191 N·m", "State the greater torque")]
    [InlineData("duty:\n", "duty:\n  coast: {speed: 900 rpm}\n", DiagnosticCodes.MissingKey, "coast:", "torque")]
    [InlineData("duty:\n", "duty:\n  coast: {torque: 20 N·m, share: 120 %}\n", DiagnosticCodes.OutOfRange, "120 %", null)]
    [InlineData("duty:\n", "duty:\n  coast: {torque: 20 N·m, machine: idles}\n", DiagnosticCodes.UnknownWord, "idles", "turns, stands")]
    [InlineData("reverse_torque: 120 N·m", "inertia: 0 kg·m²", DiagnosticCodes.OutOfRange, "0 kg·m²", null)]
    [InlineData("reverse_torque: 120 N·m", "inertia: 0.02 kg", DiagnosticCodes.UnitMismatch, "kg}", "moment of inertia")]
    [InlineData("reverse_torque: 120 N·m", "inertia: 0.02 kg·m², stiffness: 4000 N·m", DiagnosticCodes.UnitMismatch, "N·m}", "torsional stiffness")]
    [InlineData("reverse_torque: 120 N·m", "stiffness: 4000 N·m/rad", DiagnosticCodes.MissingKey, "input:", "inertia")]
    [InlineData("duty:\n", "duty:\n  output: {stiffness: 4000 N·m/rad}\n", DiagnosticCodes.MissingKey, "output:", "inertia")]
    [InlineData("direction: both", "direction: one", DiagnosticCodes.OneWay, "120 N·m", "direction: both")]
    [InlineData("duty:\n", "duty:\n  service_life: 0 h\n", DiagnosticCodes.OutOfRange, "0 h", null)]
    [InlineData("contact: 1.1,", "contact: 0,", DiagnosticCodes.OutOfRange, "0, bending", null)]
    [InlineData("bending: 1.45", "bending: 21", DiagnosticCodes.OutOfRange, "21, peak", null)]
    [InlineData("peak_contact: 1.02", "peak_contact: 2 %", DiagnosticCodes.NotANumber, "2 %, peak", "without a unit")]
    [InlineData("peak_bending: 1.3", "peak_bend: 1.3", DiagnosticCodes.UnknownKey, "peak_bend:", "peak_bending")]
    [InlineData("spectrum_peaks: included", "spectrum_peaks: include", DiagnosticCodes.UnknownWord, "include\n", "included")]
    [InlineData("load_sharing: 1.12", "load_sharing: 0.99", DiagnosticCodes.OutOfRange, "0.99", null)]
    [InlineData("load_sharing: 1.12", "load_sharing: 112 %", DiagnosticCodes.NotANumber, "112 %", "without a unit")]
    [InlineData("load_sharing_proof: Strain gauges at three pinions", "load_sharing_proof: true", DiagnosticCodes.NotText, "true\n  gears", "\"true\"")]
    [InlineData("misalignment: 8 µm", "misalignment: -8 µm", DiagnosticCodes.OutOfRange, "-8 µm", null)]
    [InlineData("misalignment: 8 µm", "misalignment: 8", DiagnosticCodes.MissingUnit, "8\n      face_load", "8 µm")]
    [InlineData("face_load_factor: 1.15", "face_load_factor: 0.9", DiagnosticCodes.OutOfRange, "0.9", null)]
    [InlineData("dynamic_factor: 1.05", "dynamic_factor: 11", DiagnosticCodes.OutOfRange, "11\n", null)]
    [InlineData("{treatment: case-hardened, quality", "{quality", DiagnosticCodes.MissingKey, "heat_treatment:", "treatment")]
    [InlineData("treatment: case-hardened", "treatment: case-hardend", DiagnosticCodes.UnknownWord, "case-hardend,", "`case-hardened`")]
    [InlineData("treatment: case-hardened", "treatment: carburised", DiagnosticCodes.UnknownWord, "carburised, quality", "gas-nitrided")]
    [InlineData("treatment: case-hardened", "treatment: through-hardened", DiagnosticCodes.NoCase, Case, "Leave it out")]
    [InlineData("treatment: case-hardened", "treatment: normalised", DiagnosticCodes.NoCase, Case, "Leave it out")]
    [InlineData("treatment: case-hardened", "treatment: precipitation-hardened", DiagnosticCodes.NoCase, Case, "Leave it out")]
    [InlineData("quality: MQ", "quality: mq", DiagnosticCodes.UnknownWord, "mq", "MQ")]
    [InlineData("proof: Furnace chart and section of a test piece", "proof: ''", DiagnosticCodes.EmptyText, "''", "Write")]
    [InlineData("surface_hardness: 58..62 HRC", "surface_hardness: 60", DiagnosticCodes.MissingUnit, "60,", "58..62 HRC")]
    [InlineData("surface_hardness: 58..62 HRC", "surface_hardness: 58..62", DiagnosticCodes.MissingUnit, "58..62,", "58..62 HRC")]
    [InlineData("surface_hardness: 58..62 HRC", "surface_hardness: 82 HRA", DiagnosticCodes.UnknownUnit, "HRA", "HRC, HV, HBW")]
    [InlineData("surface_hardness: 58..62 HRC", "surface_hardness: 60 mm", DiagnosticCodes.UnknownUnit, "mm,\n          core", "HRC, HV, HBW")]
    [InlineData("surface_hardness: 58..62 HRC", "surface_hardness: 58..62 hrc", DiagnosticCodes.UnknownUnit, "hrc", "HRC")]
    [InlineData("surface_hardness: 58..62 HRC", "surface_hardness: 58..82 HRC", DiagnosticCodes.OutOfRange, "82 HRC", "HV or HBW")]
    [InlineData("surface_hardness: 58..62 HRC", "surface_hardness: '58..82 HRC'", DiagnosticCodes.OutOfRange, "82 HRC", "HV or HBW")]
    [InlineData("surface_hardness: 58..62 HRC", "surface_hardness: 62..58 HRC", DiagnosticCodes.MalformedTolerance, "62..58", "58..62")]
    [InlineData("surface_hardness: 58..62 HRC", "surface_hardness: nan HRC", DiagnosticCodes.NotFinite, "nan", "Delete")]
    [InlineData("surface_hardness: 58..62 HRC", "surface_hardness: .nan", DiagnosticCodes.NotFinite, ".nan", "Delete")]
    [InlineData("surface_hardness: 58..62 HRC", "surface_hardness: ''", DiagnosticCodes.EmptyText, "''", "Write")]
    [InlineData("surface_hardness: 58..62 HRC", "surface_hardness: null", DiagnosticCodes.NullValue, "surface_hardness: null", "null")]
    [InlineData("surface_hardness: 58..62 HRC", "surface_hardness: [58, 62]", DiagnosticCodes.MalformedAmount, "[58, 62]", null)]
    [InlineData("surface_hardness: 58..62 HRC", "surface_hardness: min 58 HRC", DiagnosticCodes.MalformedAmount, "min 58", "two ends")]
    [InlineData("core_hardness: 340 HV10 ±30", "core_hardness: 340 HV10 ±", DiagnosticCodes.MalformedAmount, ", hardenability", "58..62 HRC")]
    [InlineData("hardenability_proven: true", "hardenability_proven: yes", DiagnosticCodes.NotATruthValue, "yes", "`true`")]
    [InlineData("root_hardened: false", "root_hardened: no", DiagnosticCodes.NotATruthValue, "no,", "`false`")]
    [InlineData("case_depth: 0.40 mm +0.20/0", "case_depth: 0 mm", DiagnosticCodes.OutOfRange, "0 mm, grinding", null)]
    [InlineData("case_depth: 0.40 mm +0.20/0", "case_depth: -0.4 mm", DiagnosticCodes.OutOfRange, "-0.4 mm", null)]
    [InlineData("case_depth: 0.40 mm +0.20/0", "case_depth: 0.4 mm ±0.4", DiagnosticCodes.OutOfRange, "0.4 mm ±0.4", null)]
    [InlineData("case_depth: 0.40 mm +0.20/0", "case_depth: 0.4", DiagnosticCodes.MissingUnit, "0.4, grinding", "0.4 mm")]
    [InlineData("case_depth: 0.40 mm +0.20/0", "case_depth: 0.4 mm +0.2", DiagnosticCodes.MalformedTolerance, "+0.2, grinding", "+0.2/0")]
    [InlineData("grinding_stock: 0.10 mm", "grinding_stock: -0.10 mm", DiagnosticCodes.OutOfRange, "-0.10 mm", null)]
    [InlineData("furnace_spread: 0.15 mm", "furnace_spread: 0 mm", DiagnosticCodes.OutOfRange, "0 mm, tempering", null)]
    [InlineData("tempering: 170 °C", "tempering: 170 K", DiagnosticCodes.UnitMismatch, "K, nitriding", "temperature")]
    [InlineData("nitriding: 510 °C", "nitriding: 5100 °C", DiagnosticCodes.OutOfRange, "5100 °C", null)]
    [InlineData("yield_strength: 850 MPa", "yield_strength: 0 MPa", DiagnosticCodes.OutOfRange, "0 MPa", null)]
    [InlineData("[{process: shrink-fit, temperature: 160 °C}]", "{process: shrink-fit}", DiagnosticCodes.NotAList, "{process: shrink-fit}", null)]
    [InlineData("process: shrink-fit", "process: shrinkfit", DiagnosticCodes.UnknownWord, "shrinkfit", "shrink-fit")]
    [InlineData("shrink-fit, temperature: 160 °C", "shrink-fit", DiagnosticCodes.MissingKey, "{process: shrink-fit}", "temperature")]
    [InlineData("plating: phosphated", "plating: phosphate", DiagnosticCodes.UnknownWord, "phosphate,", "phosphated")]
    [InlineData("duration: 8 h, ", "", DiagnosticCodes.MissingKey, "bake:", "duration")]
    [InlineData("duration: 8 h", "duration: 0 h", DiagnosticCodes.OutOfRange, "0 h", null)]
    [InlineData("begins_within: 2 h", "begins_within: 2 mm", DiagnosticCodes.UnitMismatch, "mm},", "time")]
    [InlineData("intensity: 0.30 mm", "intensity: 0.30", DiagnosticCodes.MissingUnit, "0.30, coverage", "mm")]
    [InlineData("coverage: 200 %", "coverage: 0 %", DiagnosticCodes.OutOfRange, "0 %, root", null)]
    [InlineData("root_ground_after: false", "root_ground_after: 0", DiagnosticCodes.NotATruthValue, "0}, superfinished", "`false`")]
    [InlineData("superfinished: true", "superfinished: 'true'", DiagnosticCodes.NotATruthValue, "'true'", "without quotes")]
    [InlineData("{feature: raceway, ", "{", DiagnosticCodes.MissingKey, "{hardness: 59", "feature")]
    [InlineData("feature: raceway", "feature: race-way", DiagnosticCodes.UnknownWord, "race-way", "raceway")]
    [InlineData("hardness: 59..63 HRC", "hardness: 59..63", DiagnosticCodes.MissingUnit, "59..63", "58..62 HRC")]
    [InlineData("accuracy_grade: 6", "accuracy_grade: 13", DiagnosticCodes.OutOfRange, "13, pitch", null)]
    [InlineData("accuracy_grade: 6", "accuracy_grade: 0", DiagnosticCodes.OutOfRange, "0, pitch", null)]
    [InlineData("accuracy_grade: 6", "accuracy_grade: Q6", DiagnosticCodes.NotAWholeNumber, "Q6", "digits")]
    [InlineData("pitch_deviation: 5 µm", "pitch_deviation: -5 µm", DiagnosticCodes.OutOfRange, "-5 µm", null)]
    [InlineData("flank_rz: 3 µm", "flank_rz: -3 µm", DiagnosticCodes.OutOfRange, "-3 µm", null)]
    [InlineData("flank_rz: 3 µm", "flank_rz: 0 µm", DiagnosticCodes.OutOfRange, "0 µm, flank", null)]
    [InlineData("flank_ra: 0.4 µm", "flank_ra: 4 µm", DiagnosticCodes.OutOfRange, "4 µm, root", "Exchange")]
    [InlineData("root_rz: 10 µm", "root_rz: N8", DiagnosticCodes.MalformedAmount, "N8", null)]
    [InlineData("roughness: {flank_rz: 3 µm, flank_ra: 0.4 µm, root_rz: 10 µm}", "roughness: 3 µm", DiagnosticCodes.NotAMap, "3 µm", null)]
    [InlineData("cutter: {teeth: 20, ", "cutter: {", DiagnosticCodes.MissingKey, "cutter:", "teeth")]
    [InlineData("cutter: {teeth: 20", "cutter: {teeth: 0", DiagnosticCodes.OutOfRange, "0, tip_diameter", null)]
    [InlineData("tip_diameter: 56.2 mm, ", "", DiagnosticCodes.MissingKey, "cutter:", "tip_diameter")]
    [InlineData("tip_diameter: 56.2 mm", "tip_diameter: 56.2 mm h8", DiagnosticCodes.ToleranceNotAllowed, "h8, profile", "56.2 mm")]
    [InlineData("profile_shift: 0.07", "profile_shift: 4", DiagnosticCodes.OutOfRange, "4, tip_radius", null)]
    [InlineData(", tip_radius: 0.35 mm", "", DiagnosticCodes.MissingKey, "cutter:", "tip_radius")]
    [InlineData("tip_radius: 0.35 mm", "tip_radius: -0.35 mm", DiagnosticCodes.OutOfRange, "-0.35 mm", null)]
    [InlineData("      surface: case-hardened\n", "      surface: case-hardened\n      heat_treatment: {treatment: case-hardened}\n", DiagnosticCodes.ExclusiveKeys, "surface: case", "one of them")]
    [InlineData("material: EN-18CrNiMo7-6", "material: EN-18CrNiMo7-5", DiagnosticCodes.NotInCatalogue, "EN-18CrNiMo7-5", "`EN-18CrNiMo7-6`")]
    public void A_fault_is_named_at_its_place(string old, string @new, string code, string at, string? hint)
    {
        var text = Sample.Text.Replace(old, @new, StringComparison.Ordinal);
        Assert.NotEqual(Sample.Text, text);

        var diagnostic = Sample.Only(Sample.Load(text), code, text, at);

        Assert.Equal("r180.yaml", diagnostic.Span.File);
        if (hint is not null)
            Assert.Contains(hint, diagnostic.Hint, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("induction-hardened")]
    [InlineData("gas-nitrided")]
    [InlineData("nitrocarburised")]
    public void Treatments_that_make_a_case_have_a_depth(string treatment) =>
        Assert.NotNull(Sample.With("treatment: case-hardened", $"treatment: {treatment}").Spec);

    [Fact]
    public void Neither_a_drive_without_a_direction_nor_a_peak_at_the_torque_is_a_fault()
    {
        Assert.NotNull(Sample.With(", direction: both", "").Spec);
        Assert.NotNull(Sample.With("peak_torque: 400 N·m", "peak_torque: 190 N·m").Spec);
    }

    [Fact]
    public void The_messages_say_what_is_wrong_with_the_text_found()
    {
        Assert.Equal(
            "duty.input.peak_torque is at least the torque of 190 N·m, but `189 N·m` is not.", Message("peak_torque: 400 N·m", "peak_torque: 189 N·m"));
        Assert.Equal(
            "duty.spectrum[1].torque is at most the peak torque of 400 N·m, but `401 N·m` is not.", Message("torque: 95 N·m", "torque: 401 N·m"));
        Assert.Equal(
            "duty.input.reverse_torque: the drive turns one way, so it has no reverse torque, but `120 N·m` stands here.", Message("direction: both", "direction: one"));
        Assert.Equal(
            "train.gears.fixed_sun.heat_treatment.case_depth: a normalised gear has no case.", Message("treatment: case-hardened", "treatment: normalised"));
        Assert.Equal(
            "train.gears.fixed_sun.heat_treatment.case_depth is more than zero at its lower limit, but `0.4 mm ±0.5` is not.", Message(Case, "0.4 mm ±0.5"));
        Assert.Equal(
            "train.gears.fixed_sun.heat_treatment.surface_hardness: `60` names no hardness scale.", Message("58..62 HRC", "60"));
        Assert.Equal(
            "train.gears.fixed_sun.heat_treatment.features[0].hardness: 80 HRC is beyond the scale, which goes from 20 to 70.", Message("59..63 HRC", "80 HRC"));

        static string Message(string old, string @new) => Assert.Single(Sample.With(old, @new).Diagnostics).Message;
    }

    [Fact]
    public void A_missing_treatment_hides_no_other_fault_of_its_map()
    {
        var load = Sample.Load(Sample.Text.Replace("phosphated", "gold", StringComparison.Ordinal).Replace("{treatment: case-hardened, quality: MQ", "{quality: MX, depth: 1 mm", StringComparison.Ordinal));

        Assert.Equal(
            [DiagnosticCodes.MissingKey, DiagnosticCodes.UnknownWord, DiagnosticCodes.UnknownKey, DiagnosticCodes.UnknownWord],
            load.Diagnostics.Select(d => d.Code));
    }
}
