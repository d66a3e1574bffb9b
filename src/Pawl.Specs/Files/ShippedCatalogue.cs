using Pawl.Specs.Model;
using Pawl.Specs.Reading;
using Pawl.Specs.Text;

namespace Pawl.Specs.Files;

/// <summary>The public steels that ship inside the tool, in the form of any catalogue.</summary>
/// <param name="Catalogue">The entries.</param>
/// <param name="Read">Their hash, under a path that no project file can have.</param>
internal sealed record ShippedCatalogue(Catalogue Catalogue, FileRead Read)
{
    private const string Resource = "catalogue/steels.yaml";
    private const string Shown = "shipped:catalogue/steels.yaml";

    private static readonly Lazy<ShippedCatalogue> Loaded = new(Load);

    /// <summary>Read once.</summary>
    public static ShippedCatalogue Instance => Loaded.Value;

    private static ShippedCatalogue Load()
    {
        using var stream = typeof(ShippedCatalogue).Assembly.GetManifestResourceStream(Resource)
            ?? throw new InvalidOperationException($"{Resource} is not embedded.");
        using var content = new MemoryStream();
        stream.CopyTo(content);
        var file = ParsedFile.Of(Shown, content.ToArray());
        List<Diagnostic> diagnostics = [.. file.Diagnostics];
        var catalogue = file.Tree is null ? null : CatalogueReader.Read(file.Tree, diagnostics);
        if (catalogue is null || diagnostics.Count > 0)
            throw new InvalidOperationException($"{Shown} is faulty: {string.Join("; ", diagnostics.Select(each => $"{each.Span.Start.Line}: {each.Message}"))}");
        return new(new() { Materials = catalogue.Materials, Lubricants = catalogue.Lubricants }, file.Read!);
    }
}
