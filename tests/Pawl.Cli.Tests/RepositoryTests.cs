using System.Globalization;
using System.Runtime.CompilerServices;
using Pawl.Cli.Checking;

namespace Pawl.Cli.Tests;

/// <summary>The layers as shipped, on the specs that are shipped.</summary>
public sealed class RepositoryTests
{
    internal static readonly string Root = Path.GetFullPath("../..", Path.GetDirectoryName(Here())!);

    private static string Here([CallerFilePath] string file = "") => file;

    private static Ran Run(params string[] arguments)
    {
        using var place = new Workplace { Engine = Engine.Shipped };
        return place.RunWith("", Root, arguments);
    }

    public static TheoryData<string> FaultySpecs() =>
        [.. Directory.GetFiles(Path.Combine(Root, "specs/faulty"), "*.yaml").Select(f => Path.GetRelativePath(Root, f)).Order(StringComparer.Ordinal)];

    [Fact]
    public void The_shipped_specs_conform()
    {
        var ran = Run("check", "--no-reports");

        Assert.Empty(ran.Error);
        Assert.True(ran.Code == 0, ran.Out);
    }

    [Theory]
    [MemberData(nameof(FaultySpecs))]
    public void Every_faulty_spec_has_findings(string spec)
    {
        var ran = Run("check", spec, "--no-reports");

        Assert.Empty(ran.Error);
        Assert.True(ran.Code == 1, ran.Out);
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void Records_and_pages_have_the_same_bytes_under_any_culture_and_from_any_folder(string culture)
    {
        string[] asked = ["check", Path.Combine(Root, "specs"), "--as-of", "2026-01-15", "--quiet"];
        using var place = new Workplace { Engine = Engine.Shipped };
        var before = CultureInfo.CurrentCulture;
        var plain = place.Run([.. asked, "--output", "a"]);
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(culture);
            CultureInfo.DefaultThreadCurrentCulture = CultureInfo.CurrentCulture;
            var other = place.RunWith("", "a", [.. asked, "--output", "../b"]);

            Assert.Equal(plain, other);
        }
        finally
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = before;
            CultureInfo.DefaultThreadCurrentCulture = null;
        }

        var files = Names(place.PathOf("a"));
        Assert.NotEmpty(files);
        Assert.Equal(files, Names(place.PathOf("b")));
        Assert.All(files, f => Assert.Equal(File.ReadAllBytes(place.PathOf($"a/{f}")), File.ReadAllBytes(place.PathOf($"b/{f}"))));
    }

    [Theory]
    [InlineData("simple")]
    [InlineData("stepped")]
    [InlineData("pair")]
    public void A_new_project_with_a_new_spec_conforms(string kind)
    {
        using var place = new Workplace { Engine = Engine.Shipped };
        Assert.Equal(0, place.Run("new", "Works", "--project").Code);
        Assert.Equal(0, place.Run("new", "R450", "--kind", kind).Code);

        var ran = place.Run("check");

        Assert.Empty(ran.Error);
        Assert.True(ran.Code == 0, ran.Out);
        Assert.True(File.Exists(place.PathOf("reports/out/r450.html")));
    }

    [Fact]
    public void The_spec_in_the_README_breaks_nothing_and_is_incomplete()
    {
        var readme = File.ReadAllText(Path.Combine(Root, "README.md"));
        var start = readme.IndexOf("# yaml-language-server", StringComparison.Ordinal);
        using var place = new Workplace { Engine = Engine.Shipped }.With("r.yaml", readme[start..readme.IndexOf("```", start, StringComparison.Ordinal)]);

        var ran = place.Run("check", "r.yaml");

        Assert.Empty(ran.Error);
        Assert.True(ran.Code == 1, ran.Out);
        Assert.Contains("r.yaml: R525 incomplete. None of ", ran.Out, StringComparison.Ordinal);
        Assert.Equal(0, place.Run("check", "r.yaml", "--allow-incomplete").Code);
    }

    // The README's spec with nothing held: "limit none" would read as if there were no limit.
    [Fact]
    public void A_list_of_faults_is_told_as_it_is_and_not_set_against_a_limit()
    {
        var readme = File.ReadAllText(Path.Combine(Root, "README.md"));
        var start = readme.IndexOf("# yaml-language-server", StringComparison.Ordinal);
        var spec = readme[start..readme.IndexOf("```", start, StringComparison.Ordinal)].Replace("fixed: [housing]", "fixed: []", StringComparison.Ordinal)
            .Replace("  planets:\n", "  bodies: {housing: {}}\n  planets:\n", StringComparison.Ordinal);
        using var place = new Workplace { Engine = Engine.Shipped }.With("r.yaml", spec);

        var ran = place.Run("check", "r.yaml");

        Assert.Equal(1, ran.Code);
        var finding = Assert.Single(ran.OutLines, l => l.Contains(": error train/undetermined: ", StringComparison.Ordinal));
        Assert.Contains(": The speed of ", finding, StringComparison.Ordinal);
        Assert.DoesNotContain("limit none", finding, StringComparison.Ordinal);
    }

    [Fact]
    public void The_schemas_in_the_repository_are_up_to_date() => Assert.Equal(0, Run("schema", "--output", "schema", "--check").Code);

    [Fact]
    public void Every_name_in_the_list_can_be_explained()
    {
        var listed = Run("explain");
        Assert.Equal(0, listed.Code);

        Assert.All(listed.OutLines.Select(l => l.Split(' ', StringSplitOptions.RemoveEmptyEntries)[1]).Take(400), name => Assert.Equal(0, Run("explain", name).Code));
    }

    [Fact]
    public void The_examples_of_explain_are_true()
    {
        foreach (var (line, _) in Commands.Examples.Of("explain"))
            Assert.Equal(0, Run(line.Split(' ')[1..]).Code);
    }

    [Fact]
    public void What_the_README_explains_can_be_explained()
    {
        const string Command = "`pawl explain ";
        var parts = File.ReadAllText(Path.Combine(Root, "README.md")).ReplaceLineEndings(" ").Split(Command)[1..];

        Assert.NotEmpty(parts);
        Assert.All(parts, part => Assert.Equal(0, Run("explain", part[..part.IndexOf('`', StringComparison.Ordinal)]).Code));
    }

    // A source that is a word of certainty stands once: "common practice, no source".
    [Fact]
    public void A_source_is_told_once() =>
        Assert.DoesNotContain("no source (common practice, no source)", Run("explain", "mesh/tip-clearance").Out, StringComparison.Ordinal);

    [Fact]
    public void A_catalogue_pattern_without_a_file_is_warned_of_at_its_line()
    {
        using var place = new Workplace { Engine = Engine.Shipped }.With("pawl.yaml", "pawl: 1\ncatalogues: [catalog/*.yaml]\n");

        Assert.StartsWith("pawl.yaml:2:14: warning cli/no-catalogue: ", place.Run("check").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void An_adapter_pattern_without_a_file_is_warned_of_at_its_line()
    {
        using var place = new Workplace { Engine = Engine.Shipped }.With("pawl.yaml", "pawl: 1\nadapters: [adapter/*.yaml]\n");

        Assert.StartsWith("pawl.yaml:2:12: warning cli/no-catalogue: `adapter/*.yaml` matches no adapter.", place.Run("check").Error, StringComparison.Ordinal);
    }

    // Adapter files lie among the specs, yet none is judged, and what they state reaches the pairing.
    [Fact]
    public void Adapters_among_the_specs_are_read_for_them_and_not_judged()
    {
        using var place = new Workplace { Engine = Engine.Shipped }
            .With("pawl.yaml", "pawl: 1\nspecs: [specs/**/*.yaml]\nadapters: [specs/adapters/*.yaml]\n")
            .With("specs/adapters/foot.yaml", "pawl: 1\nadapter: foot\ninterface: {kind: mount, torque: 9 N·m}\n")
            .With("specs/v.yaml", "pawl: 1\ngearbox: {family: F, variant: V}\ntrain: {input: a, output: b, fixed: [h], gears: {p: {on: a, teeth: 20, module: 2 mm}, w: {on: b, teeth: 40, module: 2 mm}}, meshes: [{gears: [p, w]}]}\ninterfaces: {base: {body: a, kind: flange, adapters: [foot]}}\n");

        var ran = place.Run("check");

        Assert.Contains("specs/v.yaml:4:55: error interface/kind: interfaces.base~foot ", ran.Error + ran.Out, StringComparison.Ordinal);
        Assert.Contains("1 spec (", ran.Error + ran.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("../reports")]
    [InlineData("/reports")]
    [InlineData("a/../../b")]
    public void A_project_file_does_not_write_outside_its_project(string folder)
    {
        using var place = new Workplace { Engine = Engine.Shipped }.With("pawl.yaml", $"pawl: 1\nspecs: [a.yaml]\nreports: {{folder: {folder}}}\n");

        var ran = place.Run("check");

        Assert.Equal(2, ran.Code);
        Assert.StartsWith("pawl.yaml:3:19: error cli/outside-project: ", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_broken_project_file_ends_with_2_and_says_where()
    {
        using var place = new Workplace { Engine = Engine.Shipped }.With("pawl.yaml", "pawl: 1\nspec: [a.yaml]\n");

        var ran = place.Run("check");

        Assert.Equal(2, ran.Code);
        Assert.StartsWith("pawl.yaml:2:1: error spec/unknown-key: ", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Settings_of_the_project_file_carry_its_lines_and_give_way_to_the_command_line()
    {
        using var place = new Workplace { Engine = Engine.Shipped }.With("pawl.yaml", "pawl: 1\nfail_on: warning\nrequire_complete: true\n");

        Assert.Contains("fail_on: warning", place.Run("check", "--show-config").Out, StringComparison.Ordinal);
        Assert.Contains("# pawl.yaml:2:10\n", place.Run("check", "--show-config").Out, StringComparison.Ordinal);
        Assert.Contains("fail_on: never", place.Run("check", "--show-config", "--fail-on", "never").Out, StringComparison.Ordinal);
        Assert.Contains("require_complete: true", place.Run("check", "--show-config").Out, StringComparison.Ordinal);
    }

    private static string[] Names(string folder) =>
        [.. Directory.GetFiles(folder, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(folder, f)).Order(StringComparer.Ordinal)];
}
