using Pawl.Cli.Checking;
using Pawl.Reports;

namespace Pawl.Cli.Tests;

/// <summary>Templates that a project brings.</summary>
public sealed class TemplateTests
{
    private static Workplace Project()
    {
        var place = new Workplace { Engine = Engine.Shipped };
        place.Run("new", "Works", "--project");
        place.Run("new", "R450");
        return place;
    }

    private static Ran Check(Workplace place, string output) =>
        place.Run("check", "--templates", "own", "--format", "markdown", "--format", "html", "--output", output, "--sheets");

    [Fact]
    public void The_examples_unchanged_give_the_same_bytes()
    {
        using var place = Project();
        Assert.Equal(0, place.Run("new", "own", "--templates").Code);
        Assert.Equal(ReportTemplates.Names, Directory.GetFiles(place.PathOf("own")).Select(static f => Path.GetFileName(f)!).Order(StringComparer.Ordinal));
        Assert.Equal(2, place.Run("new", "own", "--templates").Code);

        Assert.Equal(0, Check(place, "one").Code);
        Assert.Equal(0, place.Run("check", "--format", "markdown", "--format", "html", "--output", "two", "--sheets").Code);

        var files = Directory.GetFiles(place.PathOf("two"), "*", SearchOption.AllDirectories);
        Assert.NotEmpty(files);
        Assert.All(files, file => Assert.Equal(File.ReadAllBytes(file), File.ReadAllBytes(file.Replace("/two/", "/one/", StringComparison.Ordinal))));
    }

    [Fact]
    public void A_template_of_the_project_takes_the_place_of_the_shipped_one_and_is_listed_with_its_hash()
    {
        using var place = Project();
        place.With("own/report.md", "# Ours: {{ identity.variant }} {{ verdict.word }}\n{{ for f in files }}{{ f.path }}\n{{ end }}")
            .With("own/report.css", "main { color: rebeccapurple; }\n")
            .With("own/sheet-head.md", "# Our sheet\n");
        File.AppendAllText(place.PathOf("pawl.yaml"), "templates: own\n");

        Assert.Equal(0, place.Run("check", "--format", "markdown", "--format", "html", "--format", "json", "--output", "out", "--sheets").Code);

        var report = File.ReadAllText(place.PathOf("out/r450.md"));
        Assert.StartsWith("# Ours: R450 Conforms\n", report, StringComparison.Ordinal);
        Assert.Contains("`own/report.md`", report, StringComparison.Ordinal);
        var page = File.ReadAllText(place.PathOf("out/r450.html"));
        Assert.Contains("rebeccapurple", page, StringComparison.Ordinal);
        Assert.Contains("Our sheet", File.ReadAllText(place.PathOf("out/r450-sheets/audit.html")), StringComparison.Ordinal);
        var style = page[(page.IndexOf("<style>", StringComparison.Ordinal) + 7)..page.IndexOf("</style>", StringComparison.Ordinal)];
        Assert.Contains(
            "style-src 'sha256-" + Convert.ToBase64String(System.Security.Cryptography.SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(style))) + "'",
            System.Net.WebUtility.HtmlDecode(page), StringComparison.Ordinal);
        Assert.Equal(0, place.Run("verify", "out/r450.json").Code);
        place.With("own/report.md", "# Other\n");
        Assert.Contains("changed own/report.md", place.Run("verify", "out/r450.json").Out, StringComparison.Ordinal);
    }

    // Loops, depth, size, files, members of the host: what a stranger would try.
    [Theory]
    [InlineData("{{ identitty.variant }}", "own/report.md:1:4", "Did you mean `identity`?")]
    [InlineData("a\n{{ for x in", "own/report.md:", "Scriban")]
    [InlineData("{{ include 'pawl.yaml' }}", "own/report.md:1:", "")]
    [InlineData("{{ while true }}{{ end }}", "own/report.md:1:", "")]
    [InlineData("{{ func f; f; end; f }}", "own/report.md:1:", "")]
    [InlineData("{{ for a in 1..100000 }}{{ for b in 1..100000 }}{{ end }}{{ end }}", "own/report.md:1:", "")]
    [InlineData("{{ x = 'aaaaaaaaaaaaaaaa' }}{{ for i in 1..40 }}{{ x = x + x }}{{ end }}{{ x }}", "own/report.md:1:", "")]
    [InlineData("{{ identity.variant.get_type.assembly }}", "own/report.md:1:", "")]
    [InlineData("{{ object.eval 'include \"pawl.yaml\"' }}", "own/report.md:1:", "")]
    public void One_that_cannot_be_filled_in_is_refused_at_its_place_and_nothing_is_written(string text, string at, string hint)
    {
        using var place = Project();
        place.With("own/report.md", text);

        var ran = place.Run("check", "--templates", "own", "--format", "markdown", "--output", "out");

        Assert.Equal(2, ran.Code);
        Assert.StartsWith(at, ran.Error, StringComparison.Ordinal);
        Assert.Contains("error cli/bad-template: ", ran.Error, StringComparison.Ordinal);
        Assert.Contains(hint, ran.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(place.PathOf("out/r450.md")));
    }

    [Fact]
    public void A_name_that_no_template_has_a_folder_outside_and_one_that_is_not_there_are_refused()
    {
        using var place = Project();
        place.With("own/reprot.md", "x");

        Assert.Contains("Did you mean `report.md`?", Check(place, "out").Error, StringComparison.Ordinal);
        Assert.Equal(2, place.Run("check", "--templates", "..", "--no-reports").Code);
        Assert.Equal(2, place.Run("check", "--templates", "none", "--no-reports").Code);
        Assert.Equal(2, place.Run("new", "a/b", "--templates").Code);
    }
}
