using Pawl.Specs.Reading;
using Pawl.Specs.Tests.Files;
using Pawl.Specs.Text;

namespace Pawl.Specs.Tests.Reading;

public sealed class ProjectReaderTests
{
    private const string Full = """
        pawl: 1
        specs: ["specs/**/*.yaml"]
        exclude: ["specs/faulty/**"]
        catalogues: ["specs/catalogue/*.yaml"]
        adapters: ["specs/adapters/*.yaml"]
        rules: [house/rules]
        reports: {folder: reports/out, formats: [markdown, html, json]}
        fail_on: warning
        require_complete: true
        """;

    [Fact]
    public void Every_key_reaches_the_model()
    {
        using var project = new Project().With("pawl.yaml", Full);

        var (file, diagnostics) = ProjectReader.Read(project.At("pawl.yaml"), "pawl.yaml");

        Assert.Empty(diagnostics);
        Assert.Equal("specs/**/*.yaml", Assert.Single(file!.Specs).Value);
        Assert.Equal("specs/faulty/**", Assert.Single(file.Exclude).Value);
        Assert.Equal("specs/catalogue/*.yaml", Assert.Single(file.Catalogues).Value);
        Assert.Equal("specs/adapters/*.yaml", Assert.Single(file.Adapters).Value);
        Assert.Equal("house/rules", Assert.Single(file.Rules).Value);
        Assert.Equal("reports/out", file.Reports!.Folder!.Value);
        Assert.Equal(["markdown", "html", "json"], file.Reports.Formats.Select(format => format.Value));
        Assert.Equal(("warning", true), (file.FailOn!.Value, file.RequireComplete!.Value));
    }

    [Theory]
    [InlineData("spec: []", DiagnosticCodes.UnknownKey, "specs")]
    [InlineData("fail_on: never", DiagnosticCodes.UnknownWord, "error")]
    [InlineData("reports: {formats: [htlm]}", DiagnosticCodes.UnknownWord, "html")]
    [InlineData("require_complete: yes", DiagnosticCodes.NotATruthValue, "true")]
    [InlineData("rules: house", DiagnosticCodes.NotAList, "[house]")]
    public void A_fault_is_reported_with_a_hint(string line, string code, string hint)
    {
        using var project = new Project().With("pawl.yaml", "pawl: 1\n" + line);

        var (file, diagnostics) = ProjectReader.Read(project.At("pawl.yaml"), "pawl.yaml");

        Assert.Null(file);
        var diagnostic = Assert.Single(diagnostics);
        Assert.Equal((code, 2), (diagnostic.Code, diagnostic.Span.Start.Line));
        Assert.Contains(hint, diagnostic.Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void The_nearest_file_upwards_is_found_but_none_beyond_the_repository()
    {
        using var project = new Project().With("pawl.yaml", "pawl: 1").With("a/b/x.yaml", "").With("repo/.git/HEAD", "").With("repo/c/x.yaml", "");

        Assert.Equal(project.At("pawl.yaml"), ProjectReader.Find(project.At("a/b")));
        Assert.Null(ProjectReader.Find(project.At("repo/c")));
        project.With("repo/pawl.yaml", "pawl: 1");
        Assert.Equal(project.At("repo/pawl.yaml"), ProjectReader.Find(project.At("repo/c")));
    }

    [Fact]
    public void A_missing_project_file_is_a_diagnostic() =>
        Assert.Equal(DiagnosticCodes.MissingFile, Assert.Single(ProjectReader.Read("/none/pawl.yaml", "pawl.yaml").Diagnostics).Code);
}
