using Pawl.Specs.Text;

namespace Pawl.Specs.Tests.Files;

public sealed class AdapterTests
{
    private const string Spec = "pawl: 1\ngearbox: {family: F, variant: V}\ninterfaces: {drive: {body: shaft, kind: mount, adapters: [foot]}}\n";
    private const string Foot = "pawl: 1\nadapter: foot\ninterface: {kind: mount}\n";

    private static SpecLoad Load(Project project, params string[] adapters) => new SpecLoader(project.Root, [], adapterPaths: [.. adapters]).Load("v.yaml");

    [Fact]
    public void An_adapter_is_read_by_name_and_its_file_is_hashed()
    {
        using var project = new Project().With("adapters/foot.yaml", Foot).With("v.yaml", Spec);

        var load = Load(project, "adapters/foot.yaml");

        Assert.Empty(load.Diagnostics);
        Assert.Equal("mount", load.Spec!.Catalogue.Adapters.Find("foot")!.Interface.Kind.Value);
        Assert.Matches("^[0-9a-f]{64}$", Assert.Single(load.FilesRead, file => file.Path == "adapters/foot.yaml").Sha256);
        Assert.Same(load.Spec.FilesRead.First(file => file.Path == "adapters/foot.yaml"), load.FilesRead.First(file => file.Path == "adapters/foot.yaml"));
    }

    [Fact]
    public void A_later_path_overrides_an_earlier_one_and_says_so()
    {
        using var project = new Project().With("a.yaml", Foot).With("b.yaml", Foot.Replace("mount", "flange", StringComparison.Ordinal)).With("v.yaml", Spec);

        var load = Load(project, "b.yaml", "a.yaml");

        Assert.Equal("flange", load.Spec!.Catalogue.Adapters.Find("foot")!.Interface.Kind.Value);
        var note = Assert.Single(load.Diagnostics);
        Assert.Equal((DiagnosticCodes.CatalogueOverride, Severity.Note, "b.yaml:2:10"), (note.Code, note.Severity, note.Span.ToString()));
    }

    [Theory]
    [InlineData("pawl: 1\nadapter: foot\ninterface: {kind: mout}\n", DiagnosticCodes.UnknownWord, "a.yaml:3:19")]
    [InlineData("pawl: 1\nadapter: foot\n", DiagnosticCodes.MissingKey, "a.yaml:1:1")]
    [InlineData("pawl: 2\nadapter: foot\ninterface: {kind: mount}\n", DiagnosticCodes.OutOfRange, "a.yaml:1:7")]
    [InlineData("pawl: 1\nadapter: 2nd\ninterface: {kind: mount}\n", DiagnosticCodes.NotAName, "a.yaml:2:10")]
    [InlineData("pawl: 1\nadapter: foot\ninterface: {kind: mount, body: shaft}\n", DiagnosticCodes.UnknownKey, "a.yaml:3:26")]
    [InlineData("pawl: 1\nadapter: foot\ninterface: {kind: mount, pilot: {side: spigot}}\n", DiagnosticCodes.MissingKey, "a.yaml:3:26")]
    public void A_faulty_adapter_is_told_and_none_is_missed_for_it(string text, string code, string place)
    {
        using var project = new Project().With("a.yaml", text).With("v.yaml", Spec);

        var load = Load(project, "a.yaml");

        Assert.Null(load.Spec);
        var diagnostic = Assert.Single(load.Diagnostics);
        Assert.Equal((code, place), (diagnostic.Code, diagnostic.Span.ToString()));
    }

    [Fact]
    public void A_missing_adapter_file_is_told()
    {
        using var project = new Project().With("v.yaml", Spec);

        Assert.Equal([DiagnosticCodes.MissingFile], Load(project, "adapters/foot.yaml").Diagnostics.Select(diagnostic => diagnostic.Code));
    }
}
