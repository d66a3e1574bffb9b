using Pawl.Specs.Text;

namespace Pawl.Specs.Tests.Files;

public sealed class CatalogueTests
{
    private const string Spec = "pawl: 1\ngearbox: {family: F, variant: V}\nduty: {oil: {lubricant: thin}}\n";
    private const string Lubricant = "  thin: {title: T, source: S, certainty: invented}\n";

    [Fact]
    public void A_later_path_overrides_an_earlier_one_and_says_so()
    {
        using var project = new Project()
            .With("b.yaml", "pawl: 1\ncatalogue: B\nlubricants:\n" + Lubricant.Replace("T", "Later", StringComparison.Ordinal))
            .With("a.yaml", "pawl: 1\ncatalogue: A\nlubricants:\n" + Lubricant)
            .With("v.yaml", Spec);

        var load = project.Loader("b.yaml", "a.yaml").Load("v.yaml");

        Assert.Equal("Later", load.Spec!.Catalogue.Lubricants.Find("thin")!.Title.Value);
        var note = Assert.Single(load.Diagnostics);
        Assert.Equal((DiagnosticCodes.CatalogueOverride, Severity.Note, "b.yaml:4:3"), (note.Code, note.Severity, note.Span.ToString()));
        Assert.Contains("a.yaml, line 4", note.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_faulty_catalogue_is_reported_and_hides_no_entry()
    {
        using var project = new Project().With("a.yaml", "pawl: 1\ncatalogue: A\nlubricants:\n  thin: {title: T}\n").With("v.yaml", Spec);

        var load = project.Loader("a.yaml").Load("v.yaml");

        Assert.Null(load.Spec);
        Assert.Equal([DiagnosticCodes.MissingKey, DiagnosticCodes.MissingKey], load.Diagnostics.Select(d => d.Code));
        Assert.All(load.Diagnostics, d => Assert.Equal("a.yaml:4:3", d.Span.ToString()));
    }

    [Fact]
    public void Without_a_catalogue_an_id_is_unknown()
    {
        using var project = new Project().With("v.yaml", Spec);

        var diagnostic = Assert.Single(project.Loader().Load("v.yaml").Diagnostics);

        Assert.Equal((DiagnosticCodes.NotInCatalogue, "v.yaml:3:25"), (diagnostic.Code, diagnostic.Span.ToString()));
        Assert.Contains("pawl.yaml", diagnostic.Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void A_catalogue_outside_the_project_is_refused_also_through_a_symbolic_link()
    {
        using var project = new Project().With("v.yaml", Spec);
        File.WriteAllText(Path.Combine(project.Outer, "a.yaml"), "pawl: 1\ncatalogue: A\nlubricants:\n" + Lubricant);
        File.CreateSymbolicLink(project.At("link.yaml"), "../a.yaml");

        Assert.Equal([DiagnosticCodes.OutsideRoot], project.Loader("../a.yaml").Load("v.yaml").Diagnostics.Select(d => d.Code));
        Assert.Equal([DiagnosticCodes.OutsideRoot], project.Loader("link.yaml").Load("v.yaml").Diagnostics.Select(d => d.Code));
    }

    [Fact]
    public void A_missing_catalogue_is_reported()
    {
        using var project = new Project().With("v.yaml", Spec);

        Assert.Equal([DiagnosticCodes.MissingFile], project.Loader("a.yaml").CatalogueDiagnostics.Select(d => d.Code));
    }
}
