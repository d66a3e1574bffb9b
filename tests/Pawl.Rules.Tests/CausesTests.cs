using Pawl.Analysis;
using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;

namespace Pawl.Rules.Tests;

/// <summary>Which failures follow from which, by what the packs say of each other.</summary>
public class CausesTests
{
    private static readonly FindingName CentresOfAb = new("mesh/centre-distance-agrees", "meshes.a~b");

    private static Subject Mesh(string path, string difference, int line) =>
        Try.Mesh(path, Try.Number(MeshQuantities.CentreDistanceDifference, difference, line));

    private static Subject TipOn(Subject mesh, string clearance) => Try.Subject(
        SubjectKinds.MeshGear, $"{mesh.Path}.a", Try.Number(MeshGearQuantities.TipClearance, clearance)).Relate("mesh", mesh);

    private static Finding Find(Judgement judgement, string rule, string subject) =>
        judgement.Findings.Single(f => f.Rule.Id == rule && f.Subject.Path == subject);

    private static Judgement Judged(params ReadOnlySpan<Subject> subjects) =>
        Judge.Of(Try.Analysis([.. subjects]), RulePacks.Shipped.Rules!, Try.Today);

    [Fact]
    public void What_fails_in_a_mesh_follows_from_a_centre_distance_that_the_teeth_do_not_give()
    {
        var mesh = Mesh("meshes.a~b", "-1.25 mm", 3);

        var judgement = Judged(mesh, TipOn(mesh, "-0.7 mm"));

        Assert.Equal(CentresOfAb, Find(judgement, "mesh/tip-collision", "meshes.a~b.a").FollowsFrom);
        Assert.Null(Find(judgement, "mesh/centre-distance-agrees", "meshes.a~b").FollowsFrom);
    }

    [Theory]
    [InlineData("-1.25 mm", "0.7 mm")]
    [InlineData("0 mm", "-0.7 mm")]
    public void Nothing_follows_from_what_conforms_and_what_conforms_follows_from_nothing(string difference, string clearance)
    {
        var mesh = Mesh("meshes.a~b", difference, 3);

        Assert.All(Judged(mesh, TipOn(mesh, clearance)).Findings, finding => Assert.Null(finding.FollowsFrom));
    }

    [Fact]
    public void A_mesh_explains_nothing_of_another_mesh()
    {
        var (wrong, right) = (Mesh("meshes.a~b", "-1.25 mm", 3), Mesh("meshes.b~c", "0 mm", 4));

        Assert.Null(Find(Judged(wrong, right, TipOn(right, "-0.7 mm")), "mesh/tip-collision", "meshes.b~c.a").FollowsFrom);
    }

    [Fact]
    public void A_cause_under_concession_explains_nothing()
    {
        var mesh = Mesh("meshes.a~b", "0.006 mm", 3);
        var analysis = Try.Analysis([mesh, TipOn(mesh, "-0.7 mm")], Try.Concession(CentresOfAb.Rule, CentresOfAb.Subject, Try.Today));

        var judgement = Judge.Of(analysis, RulePacks.Shipped.Rules!, Try.Today);

        Assert.Equal(Outcome.UnderConcession, Find(judgement, CentresOfAb.Rule, CentresOfAb.Subject).Outcome);
        Assert.Null(Find(judgement, "mesh/tip-collision", "meshes.a~b.a").FollowsFrom);
    }

    // A lip of 40 mm at 137 % of its speed, where another section states 31 mm; the place is what tells whether it is that size.
    [Theory]
    [InlineData(8, true)]
    [InlineData(9, false)]
    public void What_two_statements_of_one_size_govern_follows_from_them(int line, bool follows)
    {
        var size = Try.Subject(SubjectKinds.SharedSize, "lip_seals.input.diameter~shafts.input.sections.sun.outside");
        var first = Try.Number(Analysis.Agreement.SharedSizes.First, "40 mm", 8);
        size.Add(first);
        size.Add(Quantity.Computed(Analysis.Agreement.SharedSizes.Difference, 9, [first]));
        var lip = Try.Subject(SubjectKinds.LipSeal, "lip_seals.input", Try.Number(Analysis.Seals.LipSeals.SpeedShare, "137 %", line));

        var judgement = Judged(size, lip);

        Assert.Equal(follows ? new("agreement/same-size", size.Path) : null, Find(judgement, "seal/lip-speed", "lip_seals.input").FollowsFrom);
        // The sharper of two limits of one value follows from the other, wherever it is governed.
        Assert.Equal("seal/lip-speed", Find(judgement, "seal/lip-speed-reserve", "lip_seals.input").FollowsFrom!.Rule);
    }

    [Fact]
    public void Of_two_rules_that_explain_each_other_one_is_the_cause()
    {
        static string Rule(string id, string other) =>
            $$"""

              - id: house/{{id}}
                title: Tried
                applies_to: mesh
                measure: total_contact_ratio
                at_least: 1.5
                severity: note
                source: {method: closed form, limit: closed form}
                why: It breaks.
                mend: Make it stronger.
                explains: [house/{{other}}]
            """;
        var load = Try.Load("pack: house\nversion: 1.0.0\ntitle: House rules\nrules:" + Rule("one", "two") + Rule("two", "one") + "\n");
        Assert.Empty(load.Diagnostics);

        var judgement = Judge.Of(Try.Analysis([Try.ContactRatio(1.4)]), load.Rules!, Try.Today);

        Assert.Null(Find(judgement, "house/one", "meshes.a~b").FollowsFrom);
        Assert.Equal(new("house/one", "meshes.a~b"), Find(judgement, "house/two", "meshes.a~b").FollowsFrom);
    }

    [Fact]
    public void An_id_that_no_rule_has_is_refused()
    {
        var diagnostic = Assert.Single(Try.Wrong("measure: total_contact_ratio\nat_least: 1.5\nexplains: [mesh/tip-colision]"));

        Assert.Equal((RuleCodes.UnknownRule, "Did you mean `mesh/tip-collision`?"), (diagnostic.Code, diagnostic.Hint));
    }

    [Fact]
    public void A_suggestion_is_a_text()
    {
        var diagnostic = Assert.Single(Try.Wrong("measure: total_contact_ratio\nat_least: 1.5\nsuggest: overlap_ratio"));

        Assert.Equal(RuleCodes.KindMismatch, diagnostic.Code);
    }
}
