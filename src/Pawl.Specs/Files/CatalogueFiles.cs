using Pawl.Specs.Model;
using Pawl.Specs.Reading;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Files;

/// <summary>The catalogue files of a project, merged by id, and its adapters.</summary>
/// <param name="Catalogue">What they declare.</param>
/// <param name="IsWhole">Whether all of them could be read: only then is a missing id a fault of the spec.</param>
/// <param name="FilesRead">The files, with their hashes.</param>
/// <param name="Diagnostics">What is wrong with them.</param>
internal sealed record CatalogueFiles(
    Catalogue Catalogue, bool IsWhole, ImmutableArray<FileRead> FilesRead, ImmutableArray<Diagnostic> Diagnostics)
{
    public static CatalogueFiles Read(ProjectRoot root, FileStore files, ImmutableArray<string> paths, ImmutableArray<string> adapterPaths)
    {
        List<Diagnostic> diagnostics = [];
        var sources = Find(root, paths, diagnostics);
        var shipped = ShippedCatalogue.Instance;
        List<FileRead> read = [shipped.Read];
        List<MaterialSpec> materials = [.. shipped.Catalogue.Materials.Entries];
        List<LubricantSpec> lubricants = [.. shipped.Catalogue.Lubricants.Entries];
        List<BearingTypeSpec> bearings = [];
        List<AdapterSpec> adapters = [];
        foreach (var source in sources.Values)
        {
            if (Open(source) is not { } tree || CatalogueReader.Read(tree, diagnostics) is not { } catalogue)
                continue;

            foreach (var material in catalogue.Materials.Entries)
                Put(materials, material, entry => entry.Name, "material", diagnostics);
            foreach (var lubricant in catalogue.Lubricants.Entries)
                Put(lubricants, lubricant, entry => entry.Name, "lubricant", diagnostics);
            foreach (var bearing in catalogue.Bearings.Entries)
                Put(bearings, bearing, entry => entry.Name, "bearing", diagnostics);
        }

        foreach (var source in Find(root, adapterPaths, diagnostics).Values)
        {
            if (Open(source) is { } tree && AdapterReader.Read(tree, diagnostics) is { } adapter)
                Put(adapters, adapter, entry => entry.Adapter, "adapter", diagnostics);
        }

        return new(
            new()
            {
                Materials = new([.. materials], entry => entry.Name.Value),
                Lubricants = new([.. lubricants], entry => entry.Name.Value),
                Bearings = new([.. bearings], entry => entry.Name.Value),
                Adapters = new([.. adapters], entry => entry.Adapter.Value),
            },
            !diagnostics.Exists(diagnostic => diagnostic.Severity == Severity.Error), [.. read], [.. diagnostics]);

        YamlNode? Open(SourcePath source)
        {
            var file = files.Shared(source);
            if (file.Unreadable is { } unreadable)
                diagnostics.Add(unreadable(SourceSpan.Whole(source.Shown), source.Shown));
            diagnostics.AddRange(file.Diagnostics);
            if (file.Read is not null)
                read.Add(file.Read);
            return file.Tree;
        }
    }

    private static SortedDictionary<string, SourcePath> Find(ProjectRoot root, ImmutableArray<string> paths, List<Diagnostic> diagnostics)
    {
        var sources = new SortedDictionary<string, SourcePath>(StringComparer.Ordinal);
        foreach (var path in paths)
        {
            if (root.Find(path, out var complaint) is { } source)
                sources[source.Shown] = source;
            else
                diagnostics.Add(complaint!);
        }

        return sources;
    }

    private static void Put<T>(List<T> entries, T entry, Func<T, Stated<string>> nameOf, string kind, List<Diagnostic> diagnostics)
    {
        var name = nameOf(entry);
        var place = entries.FindIndex(earlier => nameOf(earlier).Value == name.Value);
        if (place < 0)
        {
            entries.Add(entry);
            return;
        }

        diagnostics.Add(SpecDiagnostics.CatalogueOverride(name.Span, kind, name.Value, nameOf(entries[place]).Span));
        entries[place] = entry;
    }
}
