using Pawl.Cli.Checking;

namespace Pawl.Cli.Tests;

/// <summary>
/// What a stranger may send: nothing is read or listed outside of the project, nothing is written there, and nothing takes for ever. A
/// test that does not end has found what does.
/// </summary>
public sealed class UntrustedInputTests
{
    private const string Secret = "a-secret-of-the-machine";

    private static Workplace Project()
    {
        var place = new Workplace { Engine = Engine.Shipped };
        Assert.Equal(0, place.Run("new", "Works", "--project").Code);
        Assert.Equal(0, place.Run("new", "R450").Code);
        return place;
    }

    private static Workplace Outside() => new Workplace().With($"{Secret}.yaml", $"{Secret}: 1\n").With($"deep/{Secret}.yaml", $"pack: p\nversion: 1.0.0\ntitle: t\nrules: []\n{Secret}: 1\n");

    private static void Refused(Ran ran, string code)
    {
        Assert.True(ran.Code == 2, ran.Out);
        Assert.Contains($"error {code}: ", ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain(Secret, ran.Out + ran.Error, StringComparison.Ordinal);
    }

    private static void Append(Workplace place, string path, string text) => File.AppendAllText(place.PathOf(path), "\n" + text + "\n");

    [Theory]
    [InlineData("specs: ['{0}/**/*.yaml']")]
    [InlineData("specs: ['{1}/**/*.yaml']")]
    [InlineData("specs: ['specs/../{1}/*.yaml']")]
    [InlineData("specs: ['specs/link/*.yaml']")]
    [InlineData("specs: ['specs/link/**/*.yaml']")]
    [InlineData("catalogues: ['{1}/*.yaml']")]
    [InlineData("adapters: ['{0}/*.yaml']")]
    [InlineData("exclude: ['../**']")]
    public void A_pattern_that_leads_out_is_not_tried(string line)
    {
        using var outside = Outside();
        using var place = Project();
        Directory.CreateSymbolicLink(place.PathOf("specs/link"), outside.Folder);
        place.With("pawl.yaml", "pawl: 1\n" + string.Format(
            System.Globalization.CultureInfo.InvariantCulture, line, outside.Folder, Path.GetRelativePath(place.Folder, outside.Folder)) + "\n");

        Refused(place.Run("check", "specs/r450.yaml"), "cli/outside-project");
    }

    [Fact]
    public void Links_among_folders_are_not_followed()
    {
        using var outside = Outside();
        using var place = Project();
        foreach (var name in (string[])["a", "b", "c"])
            Directory.CreateSymbolicLink(place.PathOf($"specs/{name}"), ".");
        Directory.CreateSymbolicLink(place.PathOf("specs/out"), outside.Folder);

        foreach (var asked in (string[][])[["check"], ["check", "specs"], ["check", "specs/**/*.yaml"]])
        {
            var ran = place.Run(asked);
            Assert.Equal((0, ""), (ran.Code, ran.Error));
            Assert.StartsWith("1 spec ", ran.OutLines[^1], StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_project_file_that_is_a_link_out_is_not_read()
    {
        using var outside = Outside();
        using var place = Project();
        File.Delete(place.PathOf("pawl.yaml"));
        File.CreateSymbolicLink(place.PathOf("pawl.yaml"), outside.PathOf($"{Secret}.yaml"));

        Refused(place.Run("check", "specs/r450.yaml"), "spec/outside-root");
    }

    [Theory]
    [InlineData("specs/x.yaml", null)]
    [InlineData("specs/base.yaml", "extends")]
    [InlineData("specs/catalogue/x.yaml", null)]
    [InlineData("known.yaml", "baseline")]
    [InlineData("house/p.yaml", "rules")]
    public void A_file_that_is_a_link_out_is_not_read(string link, string? key)
    {
        using var outside = Outside();
        using var place = Project();
        Directory.CreateDirectory(Path.GetDirectoryName(place.PathOf(link))!);
        File.CreateSymbolicLink(place.PathOf(link), outside.PathOf($"deep/{Secret}.yaml"));
        if (key == "extends")
            place.With("specs/x.yaml", "pawl: 1\nextends: base.yaml\ngearbox: {variant: R1}\n");
        else if (key == "rules")
            Append(place, "pawl.yaml", "rules: [house]");
        else if (key is not null)
            Append(place, "pawl.yaml", $"{key}: {link}");

        Refused(place.Run("check"), key == "rules" ? "rule/outside-root" : "spec/outside-root");
    }

    // Each link by itself stays inside.
    [Fact]
    public void A_chain_of_links_to_a_folder_of_rules_is_followed_to_its_end()
    {
        using var outside = Outside();
        using var place = Project();
        Directory.CreateSymbolicLink(place.PathOf("x"), outside.Folder);
        Directory.CreateSymbolicLink(place.PathOf("house"), place.PathOf("x/deep"));
        Append(place, "pawl.yaml", "rules: [house]");

        Refused(place.Run("check"), "rule/outside-root");
    }

    [Fact]
    public void Reports_are_not_written_through_links()
    {
        using var outside = new Workplace();
        using var place = Project();
        Directory.CreateDirectory(place.PathOf("reports"));
        Directory.CreateSymbolicLink(place.PathOf("reports/out"), outside.Folder);
        Refused(place.Run("check"), "cli/outside-project");

        File.Delete(place.PathOf("reports/out"));
        Directory.CreateDirectory(place.PathOf("reports/out"));
        Directory.CreateDirectory(place.PathOf("specs/fam"));
        File.Move(place.PathOf("specs/r450.yaml"), place.PathOf("specs/fam/r450.yaml"));
        Directory.CreateSymbolicLink(place.PathOf("reports/out/fam"), outside.Folder);
        Refused(place.Run("check"), "cli/cannot-write");
        Assert.Equal([".git"], Directory.GetFileSystemEntries(outside.Folder).Select(Path.GetFileName));
    }

    public static TheoryData<string, string> Endless() => new()
    {
        { "deep: " + new string('[', 100_000), "yaml/too-deep" },
        { string.Concat(Enumerable.Repeat("- ", 100_000)), "yaml/" },
        { "a0: &a0 [x, x, x, x, x, x, x, x, x]\n" + string.Join('\n', Enumerable.Range(1, 20).Select(i => $"a{i}: &a{i} [{string.Join(", ", Enumerable.Repeat($"*a{i - 1}", 9))}]")), "yaml/alias" },
        { "a: [" + string.Join(", ", Enumerable.Range(0, 40_000).Select(i => $"&anchor{i} x")) + ", " + string.Join(", ", Enumerable.Range(0, 40_000).Select(i => $"*other{i}")) + "]", "yaml/alias" },
        { string.Join('\n', Enumerable.Repeat("k: 1", 50_000)), "spec/unknown-key" },
        { string.Join('\n', Enumerable.Range(0, 50_000).Select(i => $"k{i}: 1")), "spec/unknown-key" },
        { "extends: [" + string.Join(", ", Enumerable.Repeat("r450.yaml", 60_000)) + "]", "spec/wrong-count" },
        { "shafts: {" + string.Join(", ", Enumerable.Range(0, 20_000).Select(i => $"s{i}: {{}}")) + "}", "spec/wrong-count" },
        { "duty: {input: {speed: " + new string('9', 1_000_000) + " rpm}}", "spec/not-finite" },
        { "duty: {input: {speed: 1e" + new string('9', 1_000_000) + " rpm}}", "spec/not-finite" },
        { "duty: {input: {speed: 1 " + string.Concat(Enumerable.Repeat("m*", 500_000)) + "}}", "spec/unknown-unit" },
        {
            "stacks: {" + string.Join(", ", Enumerable.Range(0, 200).Select(i => $"s{i}: {{window: {{min: 0 mm, max: 1 mm}}, draws: 1000000, contributors: {{a: {{size: 1 mm, coefficient: 1}}}}}}")) + "}",
            "spec/wrong-count"
        },
    };

    [Theory]
    [MemberData(nameof(Endless))]
    public void What_would_take_for_ever_is_refused(string text, string code)
    {
        using var place = Project().With("specs/x.yaml", $"pawl: 1\ngearbox: {{family: X, variant: X}}\n{text}\n");

        var ran = place.Run("check", "specs/x.yaml");

        Assert.Equal(2, ran.Code);
        Assert.Contains($"error {code}", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(100_000, "1+", "1")]
    [InlineData(100_000, "(", "1")]
    [InlineData(150, "-", "1")]
    [InlineData(20, "abs(", "1")]
    public void An_expression_without_end_is_refused(int times, string part, string last)
    {
        using var place = Project().With("house/p.yaml", $$"""
            pack: house
            version: 1.0.0
            title: House rules
            rules:
              - {id: house/r, title: t, applies_to: mesh, measure: "{{string.Concat(Enumerable.Repeat(part, times))}}{{last}}", at_least: 1, severity: error, source: {method: closed form, limit: closed form}, why: w, mend: m}
            """);

        var ran = place.Run("check", "--rules", "house");

        Assert.Equal(2, ran.Code);
        Assert.Contains("error rule/", ran.Error, StringComparison.Ordinal);
    }

    // The exact ratio of a train has more digits than a machine number holds.
    [Fact]
    public void A_hundred_stages_in_a_row_are_judged_without_a_defect()
    {
        var bodies = string.Concat(Enumerable.Range(0, 101).Select(i => $"    b{i}: {{}}\n"));
        var gears = string.Concat(Enumerable.Range(0, 101).Select(i => $"    g{i}: {{on: b{i}, teeth: 7, module: 1 mm, face_width: 10 mm}}\n    h{i}: {{on: b{i}, teeth: 2000, module: 1 mm, face_width: 10 mm}}\n"));
        var meshes = string.Concat(Enumerable.Range(0, 100).Select(i => $"    - {{gears: [h{i}, g{i + 1}]}}\n"));
        using var place = Project().With("specs/x.yaml", $"pawl: 1\ngearbox: {{family: X, variant: X}}\nduty:\n  input: {{speed: 1000 rpm, torque: 10 N·m}}\ntrain:\n  input: b0\n  output: b100\n  fixed: [housing]\n  bodies:\n    housing: {{}}\n{bodies}  gears:\n{gears}  meshes:\n{meshes}");

        var ran = place.Run("check", "specs/x.yaml", "--quiet");

        Assert.InRange(ran.Code, 1, 2);
    }
}
