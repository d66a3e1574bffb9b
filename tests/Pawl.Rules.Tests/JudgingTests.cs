using Pawl.Analysis;
using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Analysis.Trains;

namespace Pawl.Rules.Tests;

/// <summary>Margins and outcomes, worked by hand from the definition of a margin.</summary>
public class JudgingTests
{
    // (1.5 − 1.2)/1.2 = 0.25; (1.14 − 1.2)/1.2 = −0.05; on the limit 0.
    [Theory]
    [InlineData(1.5, 0.25, Outcome.Conforms)]
    [InlineData(1.14, -0.05, Outcome.Fails)]
    [InlineData(1.2, 0, Outcome.Conforms)]
    public void A_lower_limit_gives_the_distance_above_it_as_a_share(double value, double margin, Outcome outcome)
    {
        var finding = Try.Put(Try.Rule("measure: total_contact_ratio\nat_least: 1.2"), Try.ContactRatio(value));

        Assert.Equal(margin, finding.Margin!.Value, 1e-12);
        Assert.Equal(outcome, finding.Outcome);
    }

    // (1.8 − 1.5)/1.8 = 1/6; (1.8 − 1.98)/1.8 = −0.1.
    [Theory]
    [InlineData(1.5, 1.0 / 6, Outcome.Conforms)]
    [InlineData(1.98, -0.1, Outcome.Fails)]
    public void An_upper_limit_gives_the_distance_below_it_as_a_share(double value, double margin, Outcome outcome)
    {
        var finding = Try.Put(Try.Rule("measure: total_contact_ratio\nat_most: 1.8"), Try.ContactRatio(value));

        Assert.Equal(margin, finding.Margin!.Value, 1e-12);
        Assert.Equal(outcome, finding.Outcome);
    }

    // 21° between 15° and 30°: (21 − 15)/15 = 0.4 and (30 − 21)/30 = 0.3.
    [Fact]
    public void A_window_gives_the_smaller_margin()
    {
        var mesh = Try.Mesh("meshes.a~b", Try.Number(MeshQuantities.WorkingPressureAngle, "21°"));

        var finding = Try.Put(Try.Rule("measure: working_pressure_angle\nat_least: 15°\nat_most: 30°"), mesh);

        Assert.Equal(0.3, finding.Margin!.Value, 1e-12);
        Assert.NotNull(finding.AtLeast);
        Assert.NotNull(finding.AtMost);
    }

    // 70.000 − 69.990 is not quite 0.010 in binary: 0.01000000000000512.
    [Fact]
    public void A_part_exactly_at_its_limit_passes_in_spite_of_binary_fractions()
    {
        var mesh = Try.Mesh("meshes.a~b", Try.Toleranced(MeshQuantities.CentreDistanceDifference, 0, 0, 70.000 - 69.990));

        var finding = Try.Put(Try.Rule("measure: centre_distance_difference\nat_most: 0.010 mm"), mesh);

        Assert.Equal(0, finding.Margin);
        Assert.Equal(Outcome.Conforms, finding.Outcome);
    }

    // The scale of operating backlash is 0.05 mm: (0.06 − 0)/0.05 = 1.2.
    [Fact]
    public void A_limit_of_zero_is_measured_against_the_scale_of_the_quantity()
    {
        var mesh = Try.Mesh("meshes.a~b", Try.Number(MeshQuantities.OperatingBacklash, "0.06 mm"));

        Assert.Equal(1.2, Try.Put(Try.Rule("measure: operating_backlash\nat_least: 0 mm"), mesh).Margin!.Value, 1e-12);
    }

    // 0.06 − 0, the least of −0.01…0.03 below 0, the greatest of 4…5 above 0; a limit that is not zero has a share.
    [Theory]
    [InlineData("at_least: 0 mm", 0.06, 0.06, 0.06, 0.06)]
    [InlineData("at_least: 0 mm", 0.01, -0.01, 0.03, -0.01)]
    [InlineData("at_most: 0 mm", 4.5, 4, 5, -5d)]
    [InlineData("equals: 0 mm", 4.5, 4, 5, -5d)]
    [InlineData("equals: 0 mm", -4.5, -5, -4, -5d)]
    [InlineData("equals: 0 mm", 0, 0, 0, 0d)]
    [InlineData("at_least: 0.1 mm", 0.06, 0.06, 0.06, null)]
    // The limit that governs: 0.9 above 0 is 0.9 of the scale of 1 mm, 0.1 below 1 is 0.1 of the limit.
    [InlineData("at_least: 0 mm\nat_most: 1 mm", 0.9, 0.9, 0.9, null)]
    [InlineData("at_least: 0 mm\nat_most: 1 mm", -0.03, -0.03, -0.03, -0.03)]
    public void A_limit_of_zero_leaves_a_distance(string limits, double nominal, double least, double greatest, double? distance)
    {
        var mesh = Try.Mesh("meshes.a~b", Try.Toleranced(MeshQuantities.CentreDistance, nominal, least, greatest));

        var finding = Try.Put(Try.Rule($"measure: centre_distance\n{limits}"), mesh);

        Assert.Equal(distance, finding.Distance);
    }

    // The end of 1.1…1.6 that is nearer to the limit or farther beyond it; of 1.1…1.6 against 1.2, 1.6 is farther off.
    [Theory]
    [InlineData("at_least: 1.2", 1.1)]
    [InlineData("at_most: 1.5", 1.6)]
    [InlineData("at_least: 1.2\nat_most: 1.21", 1.6)]
    [InlineData("equals: 1.2", 1.6)]
    // Value and limit are at their worst together at 1.1 and 2.2; together with itself no one end governs.
    [InlineData("at_least: overlap_ratio", 1.1)]
    [InlineData("at_least: total_contact_ratio * total_contact_ratio", null)]
    public void The_end_of_the_tolerances_that_governs_is_told(string limits, double? worst)
    {
        var mesh = Try.Mesh(
            "meshes.a~b", Try.Toleranced(MeshQuantities.TotalContactRatio, 1.3, 1.1, 1.6),
            Try.Toleranced(MeshQuantities.OverlapRatio, 2, 1.8, 2.2));

        var finding = Try.Put(Try.Rule($"measure: total_contact_ratio\n{limits}"), mesh);

        Assert.Equal(worst, finding.Worst);
    }

    [Fact]
    public void A_value_without_tolerances_has_no_worst_end() =>
        Assert.Null(Try.Put(Try.Rule("measure: total_contact_ratio\nat_least: 1.2"), Try.ContactRatio(1.1)).Worst);

    // Least 1.1 against 1.2: −1/12. Greatest 1.6 against 1.5: −1/15.
    [Theory]
    [InlineData("at_least: 1.2", -1.0 / 12)]
    [InlineData("at_most: 1.5", -1.0 / 15)]
    public void The_worst_case_of_the_tolerances_is_judged(string limit, double margin)
    {
        var mesh = Try.Mesh("meshes.a~b", Try.Toleranced(MeshQuantities.TotalContactRatio, 1.3, 1.1, 1.6));

        var finding = Try.Put(Try.Rule($"measure: total_contact_ratio\n{limit}"), mesh);

        Assert.Equal(margin, finding.Margin!.Value, 1e-12);
        Assert.Equal(Outcome.Fails, finding.Outcome);
    }

    // Measure a and limit a/2 move together: the margin is 1 at every corner. Taken apart, the worst would be
    // (50 − 30.5)/30.5 = 0.64 or so.
    [Fact]
    public void A_tolerance_in_both_value_and_limit_is_counted_once()
    {
        var mesh = Try.Mesh("meshes.a~b", Try.Toleranced(MeshQuantities.CentreDistance, 60, 50, 61));

        var finding = Try.Put(Try.Rule("measure: centre_distance\nat_least: centre_distance / 2"), mesh);

        Assert.Equal(1, finding.Margin!.Value, 1e-12);
    }

    // −|6 − 1|/1 = −5.
    [Theory]
    [InlineData("1", 0, Outcome.Conforms)]
    [InlineData("6", -5, Outcome.Fails)]
    public void An_equal_number_has_no_margin_to_give_away(string factor, double margin, Outcome outcome)
    {
        var mesh = Try.Mesh("meshes.a~b", Try.Number(MeshQuantities.CommonFactor, factor));

        var finding = Try.Put(Try.Rule("measure: common_factor\nequals: 1"), mesh);

        Assert.Equal(margin, finding.Margin!.Value, 1e-12);
        Assert.Equal(outcome, finding.Outcome);
        Assert.Same(finding.AtLeast, finding.AtMost);
    }

    [Fact]
    public void A_text_is_compared_with_words_and_has_no_margin()
    {
        var ring = Try.Subject(Analysis.SubjectKinds.ORing, "o_rings.a", Try.Text(Analysis.Seals.ORings.Motion, "rotating"));

        var passes = Try.Put(Try.Rule("measure: motion\none_of: [static, rotating]", "o_ring"), ring);
        var fails = Try.Put(Try.Rule("measure: motion\nequals: static", "o_ring"), ring);

        Assert.Equal((Outcome.Conforms, null), (passes.Outcome, passes.Margin));
        Assert.Equal((Outcome.Fails, null), (fails.Outcome, fails.Margin));
        Assert.Equal(["static"], fails.OneOf);
    }

    [Fact]
    public void A_text_may_have_to_say_what_another_quantity_says()
    {
        var train = Try.Subject(SubjectKinds.Train, "train", Try.Text(TrainQuantities.Sense, "reversed"), Try.Text(TrainQuantities.TargetSense, "same"));

        var finding = Try.Put(Try.Rule("measure: sense\nequals: target_sense", "train"), train);

        Assert.Equal(Outcome.Fails, finding.Outcome);
        Assert.Equal(["same"], finding.OneOf);
    }

    [Theory]
    [InlineData(true, Outcome.Conforms)]
    [InlineData(false, Outcome.Fails)]
    public void A_truth_value_is_compared_with_the_one_demanded(bool truth, Outcome outcome)
    {
        var mesh = Try.Mesh("meshes.a~b", Try.Truth(MeshQuantities.SameRack, truth));

        var finding = Try.Put(Try.Rule("measure: same_rack\nequals: true"), mesh);

        Assert.Equal(outcome, finding.Outcome);
        Assert.Null(finding.Margin);
    }

    // 1.1 to 1.6: neither above nor below 1.2 at every corner.
    [Theory]
    [InlineData("true", Outcome.Fails)]
    [InlineData("false", Outcome.Fails)]
    public void A_comparison_that_the_tolerances_leave_open_fails_whatever_is_demanded(string demanded, Outcome outcome)
    {
        var mesh = Try.Mesh("meshes.a~b", Try.Toleranced(MeshQuantities.TotalContactRatio, 1.3, 1.1, 1.6));

        Assert.Equal(outcome, Try.Put(Try.Rule($"measure: total_contact_ratio > 1.2\nequals: {demanded}"), mesh).Outcome);
    }

    [Fact]
    public void A_rule_does_not_apply_where_its_condition_does_not_hold()
    {
        var mesh = Try.Mesh("meshes.a~b", Try.Text(MeshQuantities.Kind, "external"), Try.Number(MeshQuantities.TotalContactRatio, "1.0"));

        var finding = Try.Put(Try.Rule("when: kind == 'internal'\nmeasure: total_contact_ratio\nat_least: 1.2"), mesh);

        Assert.Equal(Outcome.NotApplicable, finding.Outcome);
        Assert.Equal(["the condition `kind == 'internal'` does not hold"], finding.Reasons);
    }

    // The greatest overlap is 0.1 mm: the pinion may share the plane, so the rule applies.
    [Theory]
    [InlineData(-0.3, 0.1, Outcome.Fails)]
    [InlineData(-0.3, -0.1, Outcome.NotApplicable)]
    [InlineData(0.1, 0.3, Outcome.Fails)]
    public void A_rule_applies_when_its_condition_may_hold_within_the_tolerances(double least, double greatest, Outcome outcome)
    {
        var passing = Try.Subject(
            SubjectKinds.Passing, "passings.a~b", Try.Toleranced(PassingQuantities.AxialOverlap, (least + greatest) / 2, least, greatest),
            Try.Number(PassingQuantities.Clearance, "-1 mm"));

        Assert.Equal(outcome, Try.Put(Try.Rule("when: axial_overlap > 0 mm\nmeasure: passing_clearance\nat_least: 0 mm", "passing"), passing).Outcome);
    }

    [Theory]
    [InlineData("measure: overlap_ratio\nat_least: 1", "the mesh has no overlap_ratio")]
    [InlineData("measure: total_contact_ratio\nat_least: overlap_ratio", "the mesh has no overlap_ratio")]
    [InlineData("measure: total_contact_ratio + overlap_ratio\nat_least: 1", "the mesh has no overlap_ratio")]
    [InlineData("when: overlap_ratio > 0\nmeasure: total_contact_ratio\nat_least: 1", "the mesh has no overlap_ratio")]
    [InlineData("measure: total_contact_ratio\nat_least: first.profile_shift", "the mesh has no first.profile_shift")]
    public void A_rule_does_not_apply_to_a_subject_that_lacks_a_quantity_it_names(string body, string reason)
    {
        var finding = Try.Put(Try.Rule(body), Try.ContactRatio(1.5));

        Assert.Equal(Outcome.NotApplicable, finding.Outcome);
        Assert.Equal([reason], finding.Reasons);
    }

    [Theory]
    [InlineData("measure: total_contact_ratio\nat_least: 1")]
    [InlineData("measure: overlap_ratio\nat_least: total_contact_ratio")]
    [InlineData("when: total_contact_ratio > 1\nmeasure: overlap_ratio\nat_least: 1")]
    [InlineData("measure: overlap_ratio + total_contact_ratio\nat_most: 9")]
    [InlineData("measure: total_contact_ratio > 1\nequals: true")]
    public void A_rule_is_not_evaluated_where_an_input_is_missing_and_says_which(string body)
    {
        var mesh = Try.Mesh(
            "meshes.a~b", Try.Missing(MeshQuantities.TotalContactRatio, "train.gears.a.face_width is not stated"),
            Try.Number(MeshQuantities.OverlapRatio, "1.1"));

        var finding = Try.Put(Try.Rule(body), mesh);

        Assert.Equal(Outcome.NotEvaluated, finding.Outcome);
        Assert.Equal(["train.gears.a.face_width is not stated"], finding.Reasons);
        Assert.Null(finding.Margin);
    }

    [Fact]
    public void A_limit_without_a_finite_value_is_not_evaluated_and_no_pass()
    {
        var mesh = Try.Mesh("meshes.a~b", Try.Number(MeshQuantities.TotalContactRatio, "1.5"), Try.Number(MeshQuantities.OverlapRatio, "0"));

        var finding = Try.Put(Try.Rule("measure: total_contact_ratio\nat_least: 1 / overlap_ratio"), mesh);

        Assert.Equal(Outcome.NotEvaluated, finding.Outcome);
        Assert.NotEmpty(finding.Reasons);
    }

    // s_an/m_n ≥ 0.4 case hardened, 0.2 else: common practice, no source. (0.3 − 0.4)/0.4 and (0.3 − 0.2)/0.2.
    [Theory]
    [InlineData("case-hardened", Outcome.Fails, -0.25)]
    [InlineData("nitrided", Outcome.Conforms, 0.5)]
    public void A_table_takes_the_limit_of_the_category(string surface, Outcome outcome, double margin)
    {
        var gear = Try.Subject(SubjectKinds.Gear, "gears.a", Try.Text(GearQuantities.Surface, surface), Try.Number(GearQuantities.TipThicknessFactor, "0.3"));

        var finding = Try.Put(Try.Rule("measure: tip_thickness_factor\nat_least: {by: surface, case-hardened: 0.4, default: 0.2}", "gear"), gear);

        Assert.Equal(outcome, finding.Outcome);
        Assert.Equal(margin, finding.Margin!.Value, 1e-12);
    }

    [Fact]
    public void A_category_without_a_row_is_not_evaluated_and_named()
    {
        var gear = Try.Subject(SubjectKinds.Gear, "gears.a", Try.Text(GearQuantities.Surface, "plated"), Try.Number(GearQuantities.TipThicknessFactor, "0.3"));

        var finding = Try.Put(Try.Rule("measure: tip_thickness_factor\nat_least: {by: surface, case-hardened: 0.4}", "gear"), gear);

        Assert.Equal(Outcome.NotEvaluated, finding.Outcome);
        Assert.Equal(["the rule has no limit for surface `plated`"], finding.Reasons);
    }

    // Nested: external case-hardened 0.4, external else 0.3, internal 0.2. (0.36 − 0.3)/0.3 = 0.2.
    [Fact]
    public void Tables_nest()
    {
        var gear = Try.Subject(
            SubjectKinds.Gear, "gears.a", Try.Text(GearQuantities.Surface, "nitrided"), Try.Text(GearQuantities.Kind, "external"),
            Try.Number(GearQuantities.TipThicknessFactor, "0.36"));

        var finding = Try.Put(
            Try.Rule("measure: tip_thickness_factor\nat_least: {by: kind, internal: 0.2, external: {by: surface, case-hardened: 0.4, default: 0.3}}", "gear"), gear);

        Assert.Equal(0.2, finding.Margin!.Value, 1e-12);
    }

    [Fact]
    public void The_place_is_the_declared_value_nearest_to_the_measure()
    {
        var gear = Try.Subject(SubjectKinds.Gear, "gears.a", Try.Number(GearQuantities.Module, "2 mm", line: 12));
        var depth = Quantity.Compute(GearQuantities.ToothDepth, [gear[GearQuantities.Module]], x => 2.25 * x[0]);
        gear.Add(depth);

        var finding = Try.Put(Try.Rule("measure: tooth_depth\nat_least: 1 mm", "gear"), gear);

        Assert.Equal(Try.At(12), finding.Span);
        Assert.Equal([gear[GearQuantities.Module]], finding.Governing);
    }

    [Fact]
    public void The_place_is_the_subject_when_nothing_is_declared_beneath()
    {
        var mesh = Try.Mesh("meshes.a~b", Quantity.Computed(MeshQuantities.CommonFactor, 6, []));

        Assert.Equal(mesh.Span, Try.Put(Try.Rule("measure: common_factor\nequals: 1"), mesh).Span);
    }

    [Fact]
    public void Every_rule_meets_every_subject_of_its_kind_once_and_the_counts_add_up()
    {
        var rules = RulePacks.Shipped.Rules!;
        var analysis = Try.Analysis(
            [
                Try.Mesh("meshes.a~b", Try.Number(MeshQuantities.TotalContactRatio, "0.9"), Try.Truth(MeshQuantities.SameRack, true)),
                Try.Mesh("meshes.b~c", Try.Missing(MeshQuantities.TotalContactRatio, "module is not stated")),
                Try.Subject(SubjectKinds.Train, "train", Try.Number(TrainQuantities.CirculatingPower, "2")),
            ],
            Try.Concession("mesh/contact-ratio", "meshes.a~b", Try.Today));

        var judgement = Judge.Of(analysis, rules, Try.Today);

        var subjects = analysis.Subjects.AddRange(judgement.Concessions);
        var pairs = rules.Rules.Sum(rule => subjects.Count(subject => subject.Kind == rule.AppliesTo));
        var coverage = judgement.Coverage;
        Assert.Equal(pairs, judgement.Findings.Length);
        Assert.Equal(pairs, coverage.Conforms + coverage.Fails + coverage.UnderConcession + coverage.NotEvaluated + coverage.NotApplicable);
        Assert.Equal(pairs, judgement.Findings.Select(f => (f.Rule.Id, f.Subject.Path)).Distinct().Count());
        Assert.True(coverage is { Conforms: > 0, Fails: > 0, UnderConcession: 1, NotEvaluated: > 0, NotApplicable: > 0 });
    }

    [Fact]
    public void Findings_come_by_rule_and_then_by_subject_in_order()
    {
        var rules = RulePacks.Shipped.Rules!;
        var analysis = Try.Analysis([Try.ContactRatio(1.1), Try.Mesh("meshes.0", Try.Number(MeshQuantities.TotalContactRatio, "2"))]);

        var findings = Judge.Of(analysis, rules, Try.Today).Findings;

        Assert.Equal(
            rules.Rules.Where(r => r.AppliesTo == SubjectKinds.Mesh).SelectMany(r => new[] { (r.Id, "meshes.a~b"), (r.Id, "meshes.0") }),
            findings.Select(f => (f.Rule.Id, f.Subject.Path)));
    }
}
