using System.Globalization;
using System.Text.Json.Nodes;
using LibGit2Sharp;
using Pawl.Reports.Records;
using Pawl.Reports.Tests;

namespace Pawl.Cli.Tests.Comparing;

/// <summary>A family in a repository, and a branch that changes one tooth count, one groove depth and one torque.</summary>
public sealed class CompareTests
{
    private const string Family = "specs/tarn-120/family.yaml";
    private const string Variant = "specs/tarn-120/r400.yaml";

    private static GitPlace Changed(params string[] families)
    {
        var place = new GitPlace(families);
        place.Branch("change");
        place.Edit(Variant, "teeth: 25", "teeth: 24");
        place.Edit(Family, "groove: 104.4 mm h9", "groove: 105.4 mm h9");
        place.Edit(Family, "torque: 30 N·m, method", "torque: 34 N·m, method");
        place.Commit("A tooth, a groove and a torque");
        return place;
    }

    [Fact]
    public void The_comparison_is_as_approved()
    {
        using var place = Changed("tarn-120");

        var text = place.Run("compare", "main", "HEAD");

        Assert.Empty(text.Error);
        Assert.Equal(1, text.Code);
        Approved.Match("one-tooth-one-groove-one-torque", "txt", WithoutCommits(place, text.Out));
    }

    [Fact]
    public void The_changed_lines_are_those_that_git_itself_finds()
    {
        using var place = Changed("tarn-120");
        var patch = place.Git.Diff.Compare<Patch>(place.Git.Branches["main"].Tip.Tree, place.Git.Head.Tip.Tree);
        string[] expected = [.. patch.SelectMany(file => file.AddedLines.Select(line => string.Create(CultureInfo.InvariantCulture, $"{file.Path}:{line.LineNumber}"))).Order(StringComparer.Ordinal)];

        var changes = Json(place.Run("compare", "main", "HEAD", "--format", "json"))["changes"]!.AsArray();

        Assert.Equal(expected, changes.Select(c => $"{c!["head"]!["place"]!["file"]}:{c["head"]!["place"]!["line"]}").Order(StringComparer.Ordinal));
        Assert.Equal(["104.4 mm h9", "25", "30 N·m"], changes.Select(c => (string)c!["base"]!["written"]!).Order(StringComparer.Ordinal));
        Assert.Equal(["105.4 mm h9", "24", "34 N·m"], changes.Select(c => (string)c!["head"]!["written"]!).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void One_cause_in_a_base_file_is_one_entry_with_its_variants_on_the_changed_line_and_on_the_one_that_governs()
    {
        using var place = Changed("tarn-120");

        var lines = place.Run("compare", "main", "HEAD").OutLines;

        var groove = Assert.Single(lines, l => l.Contains("changed o_rings.housing_joint.groove", StringComparison.Ordinal));
        var line = 1 + Array.FindIndex(File.ReadAllLines(Path.Combine(RepositoryTests.Root, Family)), l => l.Contains("groove: 104.4 mm", StringComparison.Ordinal));
        Assert.Equal($"{Family}:{line}:13: changed o_rings.housing_joint.groove: 104.4 mm h9 → 105.4 mm h9, for R400, R525", groove);
        var fill = Assert.Single(lines, l => l.Contains("error seal/gland-fill:", StringComparison.Ordinal));
        Assert.StartsWith($"  {Family}:{line}:13: ", fill, StringComparison.Ordinal);
        Assert.EndsWith("(R400, R525)", fill, StringComparison.Ordinal);
        Assert.StartsWith($"    governed at {Family}:", lines[Array.IndexOf(lines, fill) + 1], StringComparison.Ordinal);
    }

    // Each side against what `check` says of the same files in a checkout: another way to the same numbers.
    [Fact]
    public void What_newly_fails_is_what_a_check_of_both_checkouts_tells_apart()
    {
        using var place = Changed("tarn-120");
        var now = Failing(place);
        LibGit2Sharp.Commands.Checkout(place.Git, "main");
        var before = Failing(place);

        var effects = Json(place.Run("compare", "main", "change", "--format", "json"))["effects"]!.AsArray();

        var newly = effects.Where(e => (string)e!["kind"]! == "newly_fails")
            .SelectMany(e => e!["variants"]!.AsArray().Select(v => $"{v!["variant"]} {e["rule"]} {e["subject"]}")).Order(StringComparer.Ordinal);
        Assert.NotEmpty(newly);
        Assert.Equal(now.Except(before).Order(StringComparer.Ordinal), newly);
    }

    private static List<string> Failing(GitPlace place) =>
    [
        .. JsonNode.Parse(place.Run("check", "specs/tarn-120", "--format", "json").Out)!.AsArray().Select(static record => ConformanceRecord.Read(record!.ToJsonString()))
            .SelectMany(static record => record.Findings.Where(static f => f.Outcome == OutcomeWord.Fails).Select(f => $"{record.Identity.Variant} {f.Rule} {f.Subject}")),
    ];

    [Fact]
    public void Nothing_is_written_and_no_checkout_is_disturbed()
    {
        using var place = Changed("tarn-120");
        place.Edit(Variant, "teeth: 24", "teeth: 25");
        var before = place.Everything();

        place.Run("compare", "main", "HEAD", "--format", "html");

        Assert.Equal(before, place.Everything());
    }

    [Fact]
    public void Specs_of_the_same_bytes_are_not_judged()
    {
        using var place = Changed("tarn-120", "tarn-180");

        Assert.Equal(0, place.Run("compare", "main", "main").Code);
        Assert.Equal(0, place.Judged);
        var ran = place.Run("compare", "main", "HEAD");

        // Two variants of the changed family, on both sides; of the three of the other family none.
        Assert.Equal(4, place.Judged);
        Assert.StartsWith("2 specs compared, 3 unchanged, 3 declared values changed: ", ran.OutLines[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_changed_catalogue_value_is_a_change_of_its_own()
    {
        using var place = new GitPlace("tarn-120");
        place.Edit("specs/catalogue/bearings.yaml", "dynamic_rating: 15.3 kN", "dynamic_rating: 15.1 kN");

        var changes = Json(place.Run("compare", "main", ".", "--format", "json"))["changes"]!.AsArray();

        var change = Assert.Single(changes);
        Assert.Equal("specs/catalogue/bearings.yaml", (string)change!["head"]!["place"]!["file"]!);
    }

    [Theory]
    [InlineData("main", ".")]
    [InlineData("main", "change")]
    [InlineData("main", "specs/tarn-120")]
    [InlineData("main:specs/tarn-120", "HEAD:specs/tarn-120")]
    [InlineData("HEAD~1", "HEAD")]
    [InlineData("base", ".")]
    [InlineData("base.json", "specs/tarn-120")]
    [InlineData("records", "HEAD")]
    public void Every_kind_of_side_gives_the_same_comparison(string @base, string head)
    {
        using var place = Changed("tarn-120");
        var expected = Effects(place.Run("compare", "main", "HEAD", "--format", "json"));
        LibGit2Sharp.Commands.Checkout(place.Git, "main");
        place.Write("base.json", place.Run("check", "specs/tarn-120", "--format", "json").Out);
        place.Run("check", "specs/tarn-120", "--format", "json", "--output", "records");
        foreach (var file in Directory.GetFiles(Path.Combine(place.Folder, "specs"), "*", SearchOption.AllDirectories).Append(Path.Combine(place.Folder, "pawl.yaml")))
            place.Write(Path.Combine("base", Path.GetRelativePath(place.Folder, file)), File.ReadAllText(file));
        LibGit2Sharp.Commands.Checkout(place.Git, "change");

        var ran = place.Run("compare", @base, head, "--format", "json");

        Assert.Equal(expected, Effects(ran));
        Assert.Equal(1, ran.Code);
    }

    // 1: newly failing error rules. 0: asked for nothing, or for more than is lost.
    [Theory]
    [InlineData(1)]
    [InlineData(0, "--fail-on", "never")]
    [InlineData(1, "--fail-on", "never", "--fail-on-loss", "90 %")]
    [InlineData(0, "--fail-on", "never", "--fail-on-loss", "95 %")]
    [InlineData(2, "--fail-on-loss", "10")]
    [InlineData(2, "--fail-on-loss", "-1 %")]
    [InlineData(2, "--fail-on-loss", "NaN %")]
    [InlineData(2, "--as-of", "soon")]
    public void The_exit_code_is_that_of_the_thresholds(int code, params string[] options)
    {
        using var place = Changed("tarn-120");

        Assert.Equal(code, place.Run(["compare", "main", "HEAD", .. options]).Code);
    }

    [Fact]
    public void A_margin_that_shrinks_fails_only_where_that_is_asked_for()
    {
        using var place = new GitPlace("tarn-120");
        place.Edit(Family, "torque: 30 N·m, method", "torque: 32 N·m, method");

        Assert.Equal(0, place.Run("compare", "main", ".").Code);
        var loss = place.Run("compare", "main", ".", "--fail-on-loss", "30 %");
        Assert.Equal(1, loss.Code);
        Assert.Contains("exceeds: ", loss.Out, StringComparison.Ordinal);
        Assert.Equal(0, place.Run("compare", ".", "main", "--fail-on-loss", "99.9 %").Code);
    }

    [Fact]
    public void Lost_coverage_fails_where_that_is_asked_for()
    {
        using var place = new GitPlace("tarn-120");
        place.Edit(Family, "  service_life: 1500 h\n", "");

        var plain = place.Run("compare", "main", ".", "--fail-on", "never");
        Assert.Equal(0, plain.Code);
        Assert.Contains("? no longer evaluated", plain.Out, StringComparison.Ordinal);
        Assert.Equal(1, place.Run("compare", "main", ".", "--fail-on", "never", "--fail-on-lost-coverage").Code);
    }

    [Fact]
    public void A_spec_that_comes_goes_or_moves_is_told()
    {
        using var place = new GitPlace("tarn-120");
        var spec = File.ReadAllText(Path.Combine(place.Folder, Variant));
        File.Delete(Path.Combine(place.Folder, Variant));
        var gone = place.Run("compare", "main", ".");
        Assert.Equal(0, gone.Code);
        Assert.Contains($"{Variant}: R400 ✓ conforms → removed", gone.Out, StringComparison.Ordinal);
        Assert.Equal(1, place.Run("compare", "main", ".", "--fail-on-lost-coverage").Code);
        Assert.Contains($"{Variant}: R400 new → ✓ conforms", place.Run("compare", ".", "main").Out, StringComparison.Ordinal);

        place.Write("specs/tarn-120/moved.yaml", spec);
        Assert.EndsWith("2 unchanged, 0 declared values changed: no check comes out otherwise\n", place.Run("compare", "main", ".").Out, StringComparison.Ordinal);
        place.Edit("specs/tarn-120/moved.yaml", "teeth: 25", "teeth: 24");
        Assert.Contains("specs/tarn-120/moved.yaml: R400 ✓ conforms → ✗ does not conform", place.Run("compare", "main", ".").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_concession_that_comes_stands_apart_and_the_verdict_is_worse()
    {
        using var place = Changed("tarn-120");
        place.Write(Family, File.ReadAllText(Path.Combine(place.Folder, Family)) + """

            concessions:
              - {rule: seal/gland-fill, subject: o_rings.housing_joint, worst_margin: -10 %, reason: The ring is cut to the groove and tried at the highest temperature., approved_by: Head of design, expires: 2026-12-31, variants: [R400, R525]}

            """);

        var ran = place.Run("compare", "HEAD", ".");

        Assert.Contains("concession seal/gland-fill on o_rings.housing_joint, for R400, R525, came: ", ran.Out, StringComparison.Ordinal);
        Assert.Contains(" mended", ran.Out, StringComparison.Ordinal);
        Assert.Contains("◐ newly under concession", place.Run("compare", "main", ".").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_house_rule_that_changes_is_told_and_all_is_judged_again()
    {
        using var place = new GitPlace("tarn-120");
        place.Write("house/seals.yaml", """
            pack: house
            version: 1.0.0
            title: House rules
            rules:
              - id: seal/gland-fill
                override: true
                at_most: 84 %
                reason: The shop has seen extruded rings above this fill at the highest temperature.
                approved_by: Head of design

            """);
        place.Edit("pawl.yaml", "reports:", "rules: [house]\nreports:");

        var ran = place.Run("compare", "main", ".");

        Assert.Empty(ran.Error);
        Assert.Contains("rule seal/gland-fill limit: ", ran.Out, StringComparison.Ordinal);
        Assert.Equal(4, place.Judged);
    }

    // What a stranger's branch names is read from that branch, or not at all.
    [Fact]
    public void The_formats_go_to_standard_output_or_a_file()
    {
        using var place = Changed("tarn-120");

        var markdown = place.Run("compare", "main", "HEAD", "--format", "markdown").Out;
        place.Run("compare", "main", "HEAD", "--output", "out/comparison.md");
        var page = place.Run("compare", "main", "HEAD", "--format", "html").Out;

        Assert.Equal(markdown, File.ReadAllText(Path.Combine(place.Folder, "out/comparison.md")));
        Assert.StartsWith("### Comparison: main (", markdown, StringComparison.Ordinal);
        Assert.Contains("<details><summary>", markdown, StringComparison.Ordinal);
        Assert.True(markdown.Length < 60_000);
        Assert.StartsWith("<!DOCTYPE html>", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<details", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_family_stands_side_by_side()
    {
        using var place = Changed("tarn-120");

        var before = place.Run("compare", "--family", "main");
        var after = place.Run("compare", "--family", ".", "--verbose");

        Assert.Equal((0, 1), (before.Code, after.Code));
        Assert.Equal("Tarn 120", before.OutLines[0]);
        Assert.StartsWith("  R400 ✓ conforms; least ", before.OutLines[1], StringComparison.Ordinal);
        Assert.StartsWith("  R525 ✓ conforms; least ", before.OutLines[2], StringComparison.Ordinal);
        Assert.Contains(before.OutLines, static l => l.StartsWith("  train.gears.sun.teeth ", StringComparison.Ordinal) && l.EndsWith(" 20", StringComparison.Ordinal));
        Assert.Contains(after.OutLines, static l => l.StartsWith("  mesh/coaxial ", StringComparison.Ordinal) && l.Contains("✗ −12", StringComparison.Ordinal) && l.Contains("✓ +", StringComparison.Ordinal));
    }

    private static string Effects(Ran ran) => Json(ran)["effects"]!.ToJsonString();

    private static JsonObject Json(Ran ran)
    {
        Assert.Empty(ran.Error);
        return JsonNode.Parse(ran.Out)!.AsObject();
    }

    private static string WithoutCommits(GitPlace place, string text)
    {
        foreach (var (branch, number) in (ReadOnlySpan<(string, char)>)[("main", '0'), ("change", '1')])
            text = text.Replace(place.Git.Branches[branch].Tip.Sha[..12], new string(number, 12), StringComparison.Ordinal);
        return text;
    }
}
