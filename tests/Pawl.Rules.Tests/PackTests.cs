using Pawl.Specs.Text;

namespace Pawl.Rules.Tests;

/// <summary>Reading of house packs: what they may say, and every way to say it wrong.</summary>
public class PackTests
{
    private const string Good = "measure: total_contact_ratio\nat_least: 1.3";

    public static TheoryData<string, string, string> WrongRules => new()
    {
        { "measure: total_contact_ration\nat_least: 1", RuleCodes.UnknownQuantity, "Did you mean `total_contact_ratio`?" },
        { "measure: face_width\nat_least: 1 mm", RuleCodes.UnknownQuantity, "Did you mean `first.face_width`?" },
        { "measure: frist.module\nat_least: 1 mm", RuleCodes.UnknownRole, "Did you mean `first`?" },
        { "measure: centre_distance\nat_least: 60", RuleCodes.DimensionMismatch, "Give a length with its unit: mm" },
        { "measure: centre_distance\nat_least: 5 N", RuleCodes.DimensionMismatch, "Give a length: mm" },
        { "measure: total_contact_ratio\nat_least: 15°", RuleCodes.DimensionMismatch, "" },
        { "measure: working_pressure_angle\nat_most: 0.5", RuleCodes.DimensionMismatch, "°" },
        { "measure: centre_distance + working_pressure_angle\nat_most: 1 mm", RuleCodes.DimensionMismatch, "" },
        { "measure: max(centre_distance, overlap_ratio)\nat_most: 1 mm", RuleCodes.DimensionMismatch, "" },
        { "measure: overlap_ratio\nwhen: centre_distance > 3\nat_most: 1", RuleCodes.DimensionMismatch, "" },
        { "measure: sqrt(centre_distance)\nat_most: 1 mm", RuleCodes.DimensionMismatch, "" },
        { "measure: sin(centre_distance)\nat_most: 1", RuleCodes.DimensionMismatch, "" },
        { "measure: centre_distance\nat_least: 60 milimetre", RuleCodes.UnknownUnit, "" },
        { "measure: kind\nat_least: 1", RuleCodes.KindMismatch, "Use `equals` or `one_of`." },
        { "measure: same_rack\nat_least: 1", RuleCodes.KindMismatch, "" },
        { "measure: same_rack\nequals: yes please", RuleCodes.KindMismatch, "Write `true` or `false`" },
        { "measure: same_rack\none_of: [true]", RuleCodes.KindMismatch, "" },
        { "measure: overlap_ratio\none_of: [1, 2]", RuleCodes.KindMismatch, "" },
        { "measure: overlap_ratio\nequals: kind", RuleCodes.KindMismatch, "" },
        { "measure: overlap_ratio + kind\nat_least: 1", RuleCodes.KindMismatch, "" },
        { "measure: overlap_ratio\nwhen: overlap_ratio\nat_least: 1", RuleCodes.KindMismatch, "Compare it" },
        { "measure: overlap_ratio\nwhen: kind > 1\nat_least: 1", RuleCodes.KindMismatch, "" },
        { "measure: overlap_ratio\nwhen: not kind == 'internal'\nat_least: 1", RuleCodes.KindMismatch, "" },
        { "measure: overlap_ratio", RuleCodes.MissingLimit, "" },
        { "measure: overlap_ratio\nat_least: 2\nat_most: 1", RuleCodes.EmptyWindow, "" },
        { "measure: overlap_ratio\nat_least: 2\nequals: 1", RuleCodes.ConflictingLimits, "" },
        { "measure: kind\none_of: [internal]\nequals: internal", RuleCodes.ConflictingLimits, "" },
        { "measure: log(overlap_ratio)\nat_least: 2", RuleCodes.UnknownFunction, "Known here: min, max" },
        { "measure: maxx(overlap_ratio, 1)\nat_least: 2", RuleCodes.UnknownFunction, "Did you mean `max`?" },
        { "measure: overlap_ratio *\nat_least: 2", RuleCodes.ExpressionSyntax, "" },
        { "measure: overlap_ratio 2\nat_least: 2", RuleCodes.ExpressionSyntax, "" },
        { "measure: (overlap_ratio\nat_least: 2", RuleCodes.ExpressionSyntax, "" },
        { "measure: overlap_ratio)\nat_least: 2", RuleCodes.ExpressionSyntax, "" },
        { "measure: overlap_ratio ^ 0.5\nat_least: 2", RuleCodes.ExpressionSyntax, "sqrt" },
        { "measure: overlap_ratio\nwhen: kind = 'internal'\nat_least: 2", RuleCodes.ExpressionSyntax, "`==`" },
        { "measure: overlap_ratio\nwhen: overlap_ratio ≥ 1\nat_least: 2", RuleCodes.ExpressionSyntax, "`>=`" },
        { "measure: overlap_ratio\nwhen: kind == 'internal\nat_least: 2", RuleCodes.ExpressionSyntax, "" },
        { "measure: '2'\nat_least: 2", RuleCodes.NotAnExpression, "" },
        { "measure: [overlap_ratio]\nat_least: 2", RuleCodes.NotAnExpression, "" },
        { "measure: overlap_ratio\nat_least: [2]", RuleCodes.NotAnExpression, "" },
        { "measure: overlap_ratio\nat_least: {external: 1, internal: 2}", RuleCodes.MalformedTable, "by" },
        { "measure: overlap_ratio\nat_least: {by: centre_distance, a: 1}", RuleCodes.MalformedTable, "" },
        { "measure: overlap_ratio\nat_least: {by: kind}", RuleCodes.MalformedTable, "" },
        { "measure: overlap_ratio\nat_least: {by: same_rack, perhaps: 1}", RuleCodes.MalformedTable, "" },
        { "measure: overlap_ratio\nat_least: {by: kid, internal: 1}", RuleCodes.UnknownQuantity, "Did you mean `kind`?" },
        { "measure: overlap_ratio\nat_least: {by: kind, a: {by: kind, a: {by: kind, a: {by: kind, a: {by: kind, a: 1}}}}}", RuleCodes.TableTooDeep, "" },
        { "measure: overlap_ratio\nat_least: &t {by: kind, internal: *t}", "yaml/alias", "" },
        { "measure: overlap_ratio\nat_least: 1\nat_lest: 2", "spec/unknown-key", "Did you mean `at_least`?" },
        { "measure: overlap_ratio\nat_least: 1\nexamples: [{given: {overlap_ratio: 3 mm}, outcome: conforms}]", RuleCodes.MalformedExample, "" },
        { "measure: overlap_ratio\nat_least: 1\nexamples: [{given: {overlap: 3}, outcome: conforms}]", RuleCodes.UnknownQuantity, "" },
        { "measure: overlap_ratio\nat_least: 1\nexamples: [{given: {overlap_ratio: 0.5}, outcome: conforms}]", RuleCodes.WrongExample, "by hand" },
        { "measure: overlap_ratio\nat_least: 1\nexamples: [{given: {overlap_ratio: 3}, outcome: conforms, margin: 3}]", RuleCodes.WrongExample, "by hand" },
        { "measure: overlap_ratio\nat_least: 1\nexamples: [{given: {overlap_ratio: 3}, outcome: good}]", "spec/unknown-word", "" },
        { "measure: train.oil_temperature * 2\nat_most: 1", RuleCodes.DimensionMismatch, "difference" },
        { "measure: nominal(2 * overlap_ratio)\nat_most: 1", RuleCodes.ExpressionSyntax, "" },
        { "measure: centre_distance ^ 9 * centre_distance ^ 9 * centre_distance ^ 9\nat_most: 1 mm", RuleCodes.DimensionMismatch, "" },
    };

    [Theory]
    [MemberData(nameof(WrongRules))]
    public void A_wrong_rule_is_refused_with_code_place_and_hint(string body, string code, string hint)
    {
        var diagnostics = Try.Wrong(body);

        var complaint = Assert.Single(diagnostics, d => d.Code == code);
        Assert.Equal(("rules/house.yaml", Severity.Error), (complaint.Span.File, complaint.Severity));
        Assert.True(complaint.Span.Start.Line >= 5);
        Assert.Contains(hint, complaint.Hint ?? "", StringComparison.Ordinal);
    }

    // Column 14 of the line: four spaces, `measure: `, then 16 characters.
    [Fact]
    public void A_fault_within_an_expression_is_shown_at_its_word()
    {
        var fault = Assert.Single(Try.Wrong("measure: overlap_ratio + overlap\nat_least: 1"));

        Assert.Equal((12, 30, 37), (fault.Span.Start.Line, fault.Span.Start.Column, fault.Span.End.Column));
    }

    [Fact]
    public void All_faults_of_a_pack_are_told_at_once_in_the_order_of_the_file()
    {
        var load = Try.Load(
            """
            pack: house
            version: "1"
            title: House
            rules:
              - id: Contact
                title: x
                applies_to: wheel
                measure: teeth
                severity: grave
              - id: house/two
                title: x
                applies_to: mesh
                measure: teeth
                at_least: 1
                severity: error
                source: {method: ISO 21771, limit: ISO 21771}
                why: x
                mend: y
            """);

        Assert.Null(load.Rules);
        Assert.Equal(
            [
                RuleCodes.MalformedVersion, RuleCodes.MalformedId, RuleCodes.UnknownSubject, "spec/unknown-word", RuleCodes.UnsureError,
            ],
            load.Diagnostics.Where(d => !d.Code.StartsWith("rule/missing", StringComparison.Ordinal)).Select(d => d.Code));
        Assert.Equal(
            [RuleCodes.MissingLimit, RuleCodes.MissingMend, RuleCodes.MissingSource, RuleCodes.MissingWhy],
            load.Diagnostics.Where(d => d.Code.StartsWith("rule/missing", StringComparison.Ordinal)).Select(d => d.Code).Order(StringComparer.Ordinal));
        Assert.Equal(load.Diagnostics.OrderBy(d => d.Span.Start.Line).ThenBy(d => d.Span.Start.Column), load.Diagnostics);
    }

    [Fact]
    public void A_house_rule_is_added_behind_the_shipped_ones()
    {
        var load = Try.Load(Try.Pack(Good));

        Assert.Empty(load.Diagnostics);
        Assert.Equal(RulePacks.Shipped.Rules!.Rules.Length + 1, load.Rules!.Rules.Length);
        Assert.Equal(("house/tried", "house"), (load.Rules.Rules[^1].Id, load.Rules.Rules[^1].Pack));
        Assert.Equal(("house", "rules/house.yaml", "1.0.0"), (load.Rules.Packs[^1].Name, load.Rules.Packs[^1].Path, load.Rules.Packs[^1].Version));
    }

    [Fact]
    public void House_packs_come_by_name_whatever_their_files_are_called()
    {
        var late = Try.Pack(Good).Replace("house", "zeta", StringComparison.Ordinal);
        var early = Try.Pack(Good).Replace("house", "alpha", StringComparison.Ordinal);

        var rules = RulePacks.LoadTexts(("a.yaml", late), ("b.yaml", early)).Rules!;

        Assert.Equal(["alpha/tried", "zeta/tried"], rules.Rules[^2..].Select(r => r.Id));
    }

    [Fact]
    public void A_shipped_id_without_override_is_a_duplicate()
    {
        var load = Try.Load(Try.Pack(Good).Replace("house/tried", "mesh/contact-ratio", StringComparison.Ordinal));

        Assert.Equal([RuleCodes.DuplicateId], load.Diagnostics.Select(d => d.Code));
    }

    [Fact]
    public void A_pack_by_the_name_of_a_shipped_one_is_refused()
    {
        var load = Try.Load(Try.Pack(Good).Replace("pack: house", "pack: mesh", StringComparison.Ordinal));

        Assert.Equal([RuleCodes.DuplicatePack], load.Diagnostics.Select(d => d.Code));
    }

    [Theory]
    [InlineData("at_least: 12 %\nat_most: 30 %", "at least 12 %, at most 30 %")]
    [InlineData("equals: 1", "equal to 1")]
    [InlineData("at_least: {by: kind, internal: 1, default: 1.5}", "at least (by kind: internal 1; otherwise 1.5)")]
    public void Limits_are_put_into_words(string limits, string words) =>
        Assert.Equal(words, Try.Rule($"measure: overlap_ratio\n{limits}").LimitText);

    [Fact]
    public void House_folders_are_read_inside_the_project_and_nowhere_else()
    {
        var root = Directory.CreateTempSubdirectory("pawl-rules").FullName;
        try
        {
            Directory.CreateDirectory(Path.Combine(root, "project", "rules"));
            Directory.CreateDirectory(Path.Combine(root, "outside"));
            File.WriteAllText(Path.Combine(root, "project", "rules", "house.yaml"), Try.Pack(Good));
            File.WriteAllText(Path.Combine(root, "outside", "pack.yaml"), Try.Pack(Good));
            var project = Path.Combine(root, "project");

            Assert.NotNull(RulePacks.Load(project, ["rules"]).Rules!.Find("house/tried"));
            Assert.Equal([RuleCodes.OutsideRoot], RulePacks.Load(project, ["../outside"]).Diagnostics.Select(d => d.Code));
            Assert.Equal([RuleCodes.OutsideRoot], RulePacks.Load(project, [Path.Combine(root, "outside")]).Diagnostics.Select(d => d.Code));
            Directory.CreateDirectory(Path.Combine(project, "empty"));
            Assert.Equal([RuleCodes.EmptyFolder], RulePacks.Load(project, ["empty"]).Diagnostics.Select(d => d.Code));
            Assert.Equal([RuleCodes.MissingFolder], RulePacks.Load(project, ["house"]).Diagnostics.Select(d => d.Code));

            File.CreateSymbolicLink(Path.Combine(project, "rules", "link.yaml"), Path.Combine(root, "outside", "pack.yaml"));
            Assert.Equal([RuleCodes.OutsideRoot], RulePacks.Load(project, ["rules"]).Diagnostics.Select(d => d.Code));
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }
    }
}
