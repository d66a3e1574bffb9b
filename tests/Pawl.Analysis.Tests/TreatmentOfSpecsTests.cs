using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Analysis.Rating;

namespace Pawl.Analysis.Tests;

/// <summary>Case, heats, plating, finish and features of a gear as its spec states them, and the steels of a pair.</summary>
public class TreatmentOfSpecsTests
{
    private const string Pinion = "gears.pinion";
    private const string Mesh = "meshes.pinion~wheel";
    private const string Teeth = "teeth: 20, module: 2 mm, profile_shift: 0";

    private const string Case =
        "surface_hardness: 59..62 HRC, core_hardness: 32..40 HRC, case_depth: 0.40 mm +0.20/0, grinding_stock: 0.10 mm, furnace_spread: 0.15 mm, "
        + "tempering: 170 °C";

    private const string After =
        "later_heat: [{process: shrink-fit, temperature: 140 °C}, {process: coating, temperature: 160 °C}], plating: phosphated, "
        + "bake: {temperature: 140 °C, duration: 10 h, begins_within: 2 h}, peening: {intensity: 0.30 mm, coverage: 200 %}, superfinished: true, "
        + "features: [{feature: raceway, hardness: 58 HRC}, {feature: thread, hardness: 300..330 HBW}, {feature: spline}]";

    private const string Nitrided =
        "surface_hardness: 700..800 HV, core_hardness: 30..36 HRC, case_depth: 0.30 mm +0.10/0, tempering: 620 °C, nitriding: 520 °C";

    private static string Of(string material, string heat) => $"{Teeth}, material: {material}, heat_treatment: {{{heat}}}";

    private static string CaseHardened(string more) => Of("EN-18CrNiMo7-6", $"treatment: case-hardened, {more}");

    private static string Through(string more) => Of("EN-42CrMo4", $"treatment: through-hardened, {more}");

    private static string GasNitrided(string more) => Of("EN-31CrMoV9", $"treatment: gas-nitrided, {more}");

    private static string Soft(string hardness, string material = "EN-C45") =>
        Of(material, $"treatment: normalised, surface_hardness: {hardness}");

    private static GearboxAnalysis Gear(string pinion, string wheel = Teeth) => SpecText.Analyse(SpecText.Pair(pinion, wheel));

    private static readonly Lazy<GearboxAnalysis> Everything = new(() => Gear(CaseHardened($"quality: MQ, proof: furnace chart, {Case}, {After}")));

    private static readonly Lazy<GearboxAnalysis> Nitride = new(() => Gear(GasNitrided(Nitrided)));

    private static void Holds(GearboxAnalysis analysis, string path, string quantity, double nominal, double least, double greatest, double tolerance)
    {
        var found = analysis.Quantity(path, quantity);

        Assert.True(found.IsEvaluated, $"{quantity}: {string.Join("; ", found.Reasons)}");
        foreach (var (expected, value) in (ReadOnlySpan<(double, double)>)
            [(nominal, found.Value.Nominal), (least, found.Value.Min), (greatest, found.Value.Max)])
            Assert.Equal(expected, found.Kind.Unit.FromCoherent(value), tolerance);
    }

    private static ImmutableArray<string> Reasons(GearboxAnalysis analysis, string path, string quantity)
    {
        var found = analysis.Quantity(path, quantity);
        Assert.False(found.IsEvaluated, $"{quantity} has a value");
        return found.Reasons;
    }

    private static bool Has(GearboxAnalysis analysis, string path, string quantity)
    {
        var subject = analysis.Subject(path);
        return subject.Find(subject.Kind.Find(quantity)!) is not null;
    }

    // By hand from the spec above. Tip: 44·(π/40 + inv 20° − inv arccos(37.5877/44)) = 1.389760 mm. Hardness by rows of ISO 18265, table A.1:
    // 58 HRC 650 + 10·0.2/0.5 = 654 HV; 62 HRC 740 + 20·0.2/0.7 = 745.71; 30 HRC 300 + 10·0.2/1.2 = 301.67; 43 HRC 420 + 10·0.3/0.9 =
    // 423.33; 25 HRC 265 + 5·0.2/0.8 = 266.25. Core: 32 HRC 318.33 HV, 36 HRC 354.55, 40 HRC 392, so R_m 1024.2, 1138.6, 1262 MPa.
    [Theory]
    [InlineData("case_depth", 0.4, 0.4, 0.6, 1e-9)]
    [InlineData("grinding_stock", 0.1, 0.1, 0.1, 1e-9)]
    [InlineData("ordered_case_depth", 0.5, 0.5, 0.7, 1e-9)]
    [InlineData("furnace_spread", 0.15, 0.15, 0.15, 1e-9)]
    [InlineData("case_tolerance", 0.2, 0.2, 0.2, 1e-9)]
    [InlineData("case_depth_factor", 0.2, 0.2, 0.3, 1e-9)]
    [InlineData("min_case_depth", 0.3, 0.3, 0.3, 1e-9)]
    [InlineData("max_case_depth", 0.8, 0.8, 0.8, 1e-9)]
    [InlineData("case_window", 0.5, 0.5, 0.5, 1e-9)]
    [InlineData("case_tip_share", 0.575639, 0.575639, 0.863458, 1e-6)]
    [InlineData("tempering", 170, 170, 170, 1e-9)]
    [InlineData("min_usual_tempering", 150, 150, 150, 1e-9)]
    [InlineData("max_usual_tempering", 200, 200, 200, 1e-9)]
    [InlineData("service_temperature", 70, 70, 70, 1e-9)]
    [InlineData("process_temperature", 160, 160, 160, 1e-9)]
    [InlineData("min_class_hardness", 653, 653, 653, 1e-9)]
    [InlineData("max_class_hardness", 800, 800, 800, 1e-9)]
    [InlineData("min_quality_core", 266.25, 266.25, 266.25, 0.01)]
    [InlineData("min_usual_hardness", 654, 654, 654, 0.01)]
    [InlineData("max_usual_hardness", 745.71, 745.71, 745.71, 0.01)]
    [InlineData("min_usual_core", 301.67, 301.67, 301.67, 0.01)]
    [InlineData("max_usual_core", 423.33, 423.33, 423.33, 0.01)]
    [InlineData("carbon", 0.18, 0.15, 0.21, 1e-9)]
    [InlineData("tensile_strength", 1138.6, 1024.2, 1262, 0.1)]
    [InlineData("bake_temperature", 140, 140, 140, 1e-9)]
    [InlineData("min_bake_temperature", 130, 130, 130, 1e-9)]
    [InlineData("bake_duration", 10, 10, 10, 1e-9)]
    [InlineData("min_bake_duration", 8, 8, 8, 1e-9)]
    [InlineData("bake_delay", 2, 2, 2, 1e-9)]
    public void A_case_hardened_gear_has_every_number_of_its_treatment(string quantity, double nominal, double least, double greatest, double tolerance) =>
        Holds(Everything.Value, Pinion, quantity, nominal, least, greatest, tolerance);

    [Theory]
    [InlineData("hydrogen_prone", true)]
    [InlineData("baked", true)]
    [InlineData("quality_proven", true)]
    [InlineData("peening_recorded", true)]
    [InlineData("root_ground_after", false)]
    [InlineData("superfinished", true)]
    public void A_case_hardened_gear_has_every_fact_of_its_treatment(string quantity, bool truth) =>
        Assert.Equal(truth, Everything.Value.Quantity(Pinion, quantity).Truth);

    [Fact]
    public void The_plating_is_named() => Assert.Equal("phosphated", Everything.Value.Quantity(Pinion, "plating").Text);

    // Every kind of quantity of this area is met by one of the tests: none is declared in vain.
    [Fact]
    public void Every_quantity_of_a_treatment_is_met()
    {
        var met = new[] { Everything.Value, Nitride.Value }
            .SelectMany(each => each.Subject(Pinion).Quantities).Where(each => each.IsEvaluated).Select(each => each.Kind).ToHashSet();

        Assert.All(Declared(typeof(TreatmentQuantities)), kind => Assert.Contains(kind, met));
    }

    // By hand: a nitrided case is 0.3 mm deep, 0.15·m_n; nitrided at 520 °C. The window by the module is that of case hardening.
    [Fact]
    public void A_nitrided_gear_has_its_temperature_and_no_window_of_case_hardening()
    {
        Holds(Nitride.Value, Pinion, "nitriding", 520, 520, 520, 1e-9);
        Holds(Nitride.Value, Pinion, "case_depth_factor", 0.15, 0.15, 0.2, 1e-9);
        Assert.All(
            (string[])["min_case_depth", "max_case_depth", "case_window", "case_tip_share", "min_quality_core"],
            quantity => Assert.False(Has(Nitride.Value, Pinion, quantity)));
    }

    // Rows of ISO 18265, HV | HBW: 310 | 295, 320 | 304, 330 | 314, 340 | 323, 350 | 333. 300 HBW is 310 + 10·5/9 = 315.56 HV, the middle,
    // 315 HBW, 330 + 10·1/9 = 331.11, 330 HBW 340 + 10·7/10 = 347.
    [Theory]
    [InlineData("300..330 HBW", 331.11, 315.56, 347, 0.01)]
    [InlineData("285 HBW", 300, 300, 300, 1e-9)]
    [InlineData("310..340 HV", 325, 310, 340, 1e-9)]
    public void A_through_hardened_gear_may_state_any_scale(string written, double nominal, double least, double greatest, double tolerance) =>
        Holds(Gear(Through($"surface_hardness: {written}")), Pinion, "surface_hardness", nominal, least, greatest, tolerance);

    // A gear without a case cracks by its own strength: 290 HBW is 305 HV, 980 MPa; 320 HBW 336.7 HV, 1083 MPa; 330 HBW is 347 HV, 1116 MPa, baked 10 h by ASTM B850.
    [Theory]
    [InlineData("260..290 HBW", false, 0, 0)]
    [InlineData("290..320 HBW", true, 8, 8)]
    [InlineData("300..330 HBW", true, 8, 10)]
    public void A_through_hardened_gear_cracks_by_hydrogen_above_1000_MPa(string hardness, bool prone, double nominal, double greatest)
    {
        var analysis = Gear(Through($"surface_hardness: {hardness}, plating: electroplated, bake: {{temperature: 200 °C, duration: 12 h}}"));

        Assert.Equal(prone, analysis.Quantity(Pinion, "hydrogen_prone").Truth);
        var duration = analysis.Quantity(Pinion, "min_bake_duration");
        Assert.Equal(nominal, duration.Kind.Unit.FromCoherent(duration.Value.Nominal), 1e-9);
        Assert.Equal(greatest, duration.Kind.Unit.FromCoherent(duration.Value.Max), 1e-9);
        Holds(analysis, Pinion, "min_bake_temperature", 190, 190, 190, 1e-9);
    }

    [Theory]
    [InlineData("plating: pickled", "baked", false)]
    [InlineData("quality: ME", "quality_proven", false)]
    [InlineData("peening: {intensity: 0.30 mm}", "peening_recorded", false)]
    [InlineData("peening: {coverage: 200 %}", "peening_recorded", false)]
    [InlineData("peening: {root_ground_after: true}", "root_ground_after", true)]
    [InlineData("superfinished: false", "superfinished", false)]
    public void What_lacks_its_record_says_so(string heat, string quantity, bool truth) =>
        Assert.Equal(truth, Gear(CaseHardened($"{Case}, {heat}")).Quantity(Pinion, quantity).Truth);

    [Theory]
    [InlineData("plating")]
    [InlineData("hydrogen_prone")]
    [InlineData("baked")]
    [InlineData("bake_temperature")]
    [InlineData("process_temperature")]
    [InlineData("peening_recorded")]
    [InlineData("superfinished")]
    [InlineData("quality_proven")]
    [InlineData("nitriding")]
    public void What_was_not_done_is_not_asked_for(string quantity)
    {
        Assert.False(Has(Gear(CaseHardened(Case)), Pinion, quantity));
        Assert.False(Has(Gear(CaseHardened($"{Case}, quality: ML, plating: none")), Pinion, quantity));
    }

    [Theory]
    [InlineData("case_depth")]
    [InlineData("core_hardness")]
    [InlineData("tempering")]
    [InlineData("service_temperature")]
    [InlineData("furnace_spread")]
    [InlineData("min_quality_core")]
    public void A_normalised_gear_has_no_case_and_no_tempering(string quantity) =>
        Assert.False(Has(Gear(Soft("160..190 HBW")), Pinion, quantity));

    // What applies and is not stated names its key.
    [Theory]
    [InlineData("surface_hardness: 59..62 HRC, ", "surface_hardness", "heat_treatment.surface_hardness")]
    [InlineData("core_hardness: 32..40 HRC, ", "core_hardness", "heat_treatment.core_hardness")]
    [InlineData("core_hardness: 32..40 HRC, ", "tensile_strength", "heat_treatment.core_hardness")]
    [InlineData("case_depth: 0.40 mm +0.20/0, ", "case_depth", "heat_treatment.case_depth")]
    [InlineData("case_depth: 0.40 mm +0.20/0, ", "ordered_case_depth", "heat_treatment.case_depth")]
    [InlineData("case_depth: 0.40 mm +0.20/0, ", "case_tolerance", "heat_treatment.case_depth")]
    [InlineData("case_depth: 0.40 mm +0.20/0, ", "case_depth_factor", "heat_treatment.case_depth")]
    [InlineData("case_depth: 0.40 mm +0.20/0, ", "case_tip_share", "heat_treatment.case_depth")]
    [InlineData(", tempering: 170 °C", "tempering", "heat_treatment.tempering")]
    [InlineData(", begins_within: 2 h", "bake_delay", "heat_treatment.bake.begins_within")]
    public void A_missing_input_is_named_by_its_key(string left, string quantity, string key)
    {
        var heat = $"{Case}, {After}";
        var without = heat.Replace(left, "", StringComparison.Ordinal);
        Assert.NotEqual(heat, without);

        Assert.Equal([$"train.gears.pinion.{key} is not stated"], Reasons(Gear(CaseHardened(without)), Pinion, quantity));
    }

    [Fact]
    public void A_missing_nitriding_temperature_and_missing_oil_are_named_by_their_keys()
    {
        Assert.Equal(
            ["train.gears.pinion.heat_treatment.nitriding is not stated"],
            Reasons(Gear(GasNitrided(Nitrided.Replace(", nitriding: 520 °C", "", StringComparison.Ordinal))), Pinion, "nitriding"));
        var cold = SpecText.Pair(CaseHardened(Case), Teeth).Replace(", hottest: 70 °C", "", StringComparison.Ordinal);
        Assert.Equal(["duty.oil.hottest is not stated"], Reasons(SpecText.Analyse(cold), Pinion, "service_temperature"));
    }

    [Fact]
    public void A_gear_without_a_treatment_asks_for_it_and_for_nothing_of_it()
    {
        var analysis = Gear($"{Teeth}, material: EN-18CrNiMo7-6");

        Assert.Equal(["train.gears.pinion.heat_treatment is not stated"], Reasons(analysis, Pinion, "treatment"));
        Assert.Equal(["train.gears.pinion.heat_treatment is not stated"], Reasons(analysis, Pinion, "material_class"));
        Assert.All(Declared(typeof(TreatmentQuantities)), kind => Assert.False(Has(analysis, Pinion, kind.Name)));
    }

    [Fact]
    public void A_treatment_that_the_steel_does_not_take_is_told_and_has_no_class()
    {
        var analysis = Gear(Of("EN-42CrMo4", $"treatment: case-hardened, {Case}"));
        const string Reason = "materials.EN-42CrMo4 does not list the treatment case-hardened";

        Assert.False(analysis.Quantity(Pinion, "treatment_suits").Truth);
        Assert.Equal([Reason], Reasons(analysis, Pinion, "material_class"));
        Assert.Equal([Reason], Reasons(analysis, Pinion, "contact_limit"));
        Assert.All(
            (string[])["min_class_hardness", "min_usual_hardness", "min_usual_core", "min_usual_tempering"],
            quantity => Assert.False(Has(analysis, Pinion, quantity)));
        Holds(analysis, Pinion, "case_depth", 0.4, 0.4, 0.6, 1e-9);
    }

    [Fact]
    public void A_steel_that_no_class_covers_has_hardness_but_no_strength()
    {
        var analysis = Gear(Of("EN-X5CrNiCuNb16-4", "treatment: precipitation-hardened, surface_hardness: 40..44 HRC, tempering: 482 °C"));

        Assert.Equal("none", analysis.Quantity(Pinion, "material_class").Text);
        Assert.StartsWith("ISO 6336-5 does not cover EN-X5CrNiCuNb16-4", Assert.Single(Reasons(analysis, Pinion, "contact_limit")), StringComparison.Ordinal);
        Assert.False(Has(analysis, Pinion, "min_class_hardness"));
        Assert.True(Has(analysis, Pinion, "min_usual_hardness"));
    }

    [Fact]
    public void A_material_that_is_no_gear_steel_has_no_class() =>
        Assert.Equal(
            ["materials.wrought-6082.treatments is not stated: the catalogue does not know it as a gear steel"],
            Reasons(Gear(Of("wrought-6082", "treatment: normalised, surface_hardness: 100 HV")), Pinion, "material_class"));

    // ISO 18265, table A.1, converts 20.3 HRC to 68 HRC and gives tensile strength up to 650 HV.
    [Fact]
    public void Hardness_outside_the_conversion_is_not_evaluated_with_the_range()
    {
        var analysis = Gear(CaseHardened("surface_hardness: 59..69 HRC, core_hardness: 20..25 HRC"));
        Assert.Equal(
            ["train.gears.pinion.heat_treatment.surface_hardness: 69 HRC has no HV: ISO 18265 converts 20.3 to 68 HRC"],
            Reasons(analysis, Pinion, "surface_hardness"));
        Assert.Equal(
            ["train.gears.pinion.heat_treatment.core_hardness: 20 HRC has no HV: ISO 18265 converts 20.3 to 68 HRC"],
            Reasons(analysis, Pinion, "tensile_strength"));

        var hard = Gear(Through("surface_hardness: 640..660 HV, plating: electroplated"));
        Assert.Equal(["660 HV has no tensile strength: ISO 18265 converts 80 to 650 HV"], Reasons(hard, Pinion, "hydrogen_prone"));
    }

    // ASTM B850 ends at 1800 MPa; 560 HV is 1845 MPa.
    [Fact]
    public void A_bake_beyond_the_guide_is_not_evaluated() =>
        Assert.Equal(
            ["ASTM B850 gives no bake for 1845 MPa: it ends at 1800 MPa"],
            Reasons(Gear(Through("surface_hardness: 560 HV, plating: electroplated, bake: {temperature: 200 °C, duration: 24 h}")), Pinion, "min_bake_duration"));

    [Fact]
    public void A_case_deeper_than_half_the_tip_takes_more_than_all_of_it() =>
        Assert.True(Gear(CaseHardened("case_depth: 0.8 mm")).Value(Pinion, "case_tip_share") > 1);

    // Twelve teeth with x = 1.5 run to a point before the tip circle.
    [Fact]
    public void A_pointed_tip_has_no_share() =>
        Assert.StartsWith(
            "the tip is pointed",
            Assert.Single(Reasons(
                Gear(CaseHardened(Case).Replace("teeth: 20, module: 2 mm, profile_shift: 0", "teeth: 12, module: 2 mm, profile_shift: 1.5", StringComparison.Ordinal)),
                Pinion, "case_tip_share")),
            StringComparison.Ordinal);

    // 58 HRC is 654 HV and 300..330 HBW is 315.56..347 HV, as above; the third lacks its hardness.
    [Fact]
    public void Features_have_their_hardness_and_know_their_gear_and_train()
    {
        var analysis = Everything.Value;

        Assert.Equal(
            ["gears.pinion.features[0]", "gears.pinion.features[1]", "gears.pinion.features[2]"],
            analysis.Subjects.Where(each => each.Kind == SubjectKinds.PartFeature).Select(each => each.Path));
        Assert.Equal("raceway", analysis.Quantity("gears.pinion.features[0]", "feature").Text);
        Holds(analysis, "gears.pinion.features[0]", "hardness", 654, 654, 654, 0.01);
        Holds(analysis, "gears.pinion.features[1]", "hardness", 331.11, 315.56, 347, 0.01);
        Assert.Equal(
            ["train.gears.pinion.heat_treatment.features[2].hardness is not stated"], Reasons(analysis, "gears.pinion.features[2]", "hardness"));
        Assert.Same(analysis.Subject(Pinion), analysis.Subject("gears.pinion.features[1]").Related["gear"]);
        Assert.Same(analysis.Subject("train"), analysis.Subject("gears.pinion.features[1]").Related["train"]);
    }

    [Fact]
    public void The_quantities_of_pairs_and_features_are_met()
    {
        var pair = Gear(Soft("180..200 HBW"), Soft("160..180 HBW"));
        Assert.All(Declared(typeof(MaterialPairQuantities)), kind => Assert.True(pair.Quantity(Mesh, kind.Name).IsEvaluated, kind.Name));
        Assert.All(Declared(typeof(PartFeatureQuantities)), kind => Assert.True(Has(Everything.Value, "gears.pinion.features[0]", kind.Name), kind.Name));
    }

    // 190 HBW is 200 HV, 171 HBW is 180 HV; the pinion is the gear with fewer teeth, on whichever shaft.
    [Theory]
    [InlineData("20", "40", 20)]
    [InlineData("40", "20", -20)]
    public void The_pinion_leads_in_hardness(string first, string second, double lead)
    {
        var analysis = Gear(
            Soft("190 HBW").Replace("teeth: 20", $"teeth: {first}", StringComparison.Ordinal),
            Soft("171 HBW").Replace("teeth: 20", $"teeth: {second}", StringComparison.Ordinal));

        Holds(analysis, Mesh, "hardness_lead", lead, lead, lead, 1e-9);
    }

    [Theory]
    [InlineData("normalised", "EN-C45", "EN-C45", true)]
    [InlineData("normalised", "EN-C45", "SAE-1045", false)]
    [InlineData("through-hardened", "EN-C45", "EN-C45", false)]
    public void Two_soft_gears_are_alike_when_normalised_and_of_one_steel(string treatment, string first, string second, bool alike) =>
        Assert.Equal(
            alike, Gear(Of(first, $"treatment: {treatment}"), Of(second, $"treatment: {treatment}")).Quantity(Mesh, "unhardened_alike").Truth);

    // Two gears without a steel are not of one steel: nobody knows.
    [Fact]
    public void Two_soft_gears_of_unknown_steel_are_not_judged()
    {
        const string Unknown = $"{Teeth}, heat_treatment: {{treatment: normalised}}";

        Assert.Equal(
            ["train.gears.pinion.material is not stated", "train.gears.wheel.material is not stated"],
            Reasons(Gear(Unknown, Unknown), Mesh, "unhardened_alike"));
        Assert.Equal(["train.gears.wheel.material is not stated"], Reasons(Gear(Soft("190 HBW"), Unknown), Mesh, "unhardened_alike"));
    }

    [Fact]
    public void Nitrided_and_stainless_pairs_are_told()
    {
        var hard = CaseHardened(Case);
        var stainless = Of("EN-X5CrNiCuNb16-4", "treatment: precipitation-hardened");

        Assert.True(Gear(GasNitrided(Nitrided), hard).Quantity(Mesh, "nitrided_flank").Truth);
        Assert.True(Gear(hard, Of("EN-42CrMo4", "treatment: nitrocarburised")).Quantity(Mesh, "nitrided_flank").Truth);
        Assert.False(Gear(hard, hard).Quantity(Mesh, "nitrided_flank").Truth);
        Assert.True(Gear(stainless, stainless).Quantity(Mesh, "stainless_alike").Truth);
        Assert.False(Gear(stainless, hard).Quantity(Mesh, "stainless_alike").Truth);
        Assert.False(Has(Gear(hard, hard), Mesh, "hardness_lead"));
        Assert.Equal(["train.gears.wheel.heat_treatment is not stated"], Reasons(Gear(hard), Mesh, "nitrided_flank"));
    }

    // Spur pair 20/40, m 2: a_w 60, d_w1 40, u 2. Eht_H = σ_H·40·sin 20°/U_H·2/3, with U_H 66 000 MPa for MQ and 44 000 for ML: the same
    // stress asks a gear of ML for half as much again.
    [Theory]
    [InlineData("MQ", 66_000)]
    [InlineData("ME", 66_000)]
    [InlineData("ML", 44_000)]
    public void The_contact_asks_for_a_depth_by_its_stress(string quality, double shear)
    {
        var analysis = Rated(quality, 40, "");

        foreach (var gear in (ReadOnlySpan<string>)["pinion", "wheel"])
        {
            var stress = analysis.Value($"{Mesh}.{gear}", "contact_stress");
            Assert.True(stress > 100);
            Assert.Equal(
                stress * 40 * Math.Sin(Math.PI / 9) / shear * 2 / 3, analysis.Value($"{Mesh}.{gear}", CaseStrengthQuantities.DepthForContact.Name), 1e-9);
        }
    }

    // In a ring the sign of u decides. Planet 20 in ring 60: u = −3, factor 3/2, against 3/4 for the same planet on a wheel of 60.
    [Fact]
    public void The_contact_in_a_ring_asks_for_more()
    {
        var analysis = Rated("MQ", 60, "internal: true, rim_thickness: 20 mm, ");

        Assert.Equal(
            analysis.Value($"{Mesh}.pinion", "contact_stress") * 40 * Math.Sin(Math.PI / 9) / 66_000 * 3 / 2,
            analysis.Value($"{Mesh}.pinion", "case_depth_for_contact"), 1e-9);
    }

    [Fact]
    public void Only_a_case_hardened_flank_asks_for_a_depth() =>
        Assert.False(Has(Gear(GasNitrided(Nitrided), CaseHardened(Case)), $"{Mesh}.pinion", "case_depth_for_contact"));

    private static GearboxAnalysis Rated(string quality, int wheel, string more)
    {
        var finish = "face_width: 20 mm ±0, axial_position: 0 mm ±0, accuracy_grade: 6, pitch_deviation: 0.01 µm, roughness: {flank_rz: 3 µm, root_rz: 10 µm}";
        var gear = $"{CaseHardened($"quality: {quality}, surface_hardness: 60 HRC, core_hardness: 35 HRC, case_depth: 0.4 mm")}, {finish}";
        return SpecText.Analyse(
            SpecText.Pair(gear, more + gear.Replace("teeth: 20", $"teeth: {wheel}", StringComparison.Ordinal), ", dynamic_factor: 1, face_load_factor: 1, efficiency: 100 %, friction: 0.05")
                .Replace("torque: 40 N·m}", "torque: 40 N·m, peak_torque: 60 N·m, direction: one}\n  service_life: 10000 h\n  application_factor: 1", StringComparison.Ordinal)
                .Replace("oil: {running", "oil: {lubricant: gear-oil-vg220, running", StringComparison.Ordinal));
    }

    private static IEnumerable<QuantityKind> Declared(Type section) =>
        section.GetFields(System.Reflection.BindingFlags.Public | System.Reflection.BindingFlags.Static).Select(field => field.GetValue(null)).Cast<QuantityKind>();
}
