using Pawl.Specs.Files;
using Pawl.Specs.Model;
using Pawl.Specs.Reading;
using Pawl.Specs.Schema;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs;

/// <summary>Reads specs of one project. Safe for use by several threads; bases and catalogues are read once.</summary>
public sealed class SpecLoader
{
    private static readonly string[] NotOfABase =
    [
        DiagnosticCodes.MissingKey, DiagnosticCodes.UnknownBody, DiagnosticCodes.UnknownGear,
    ];

    private readonly ProjectRoot _root;
    private readonly FileStore _files;
    private readonly Inheritance _inheritance;
    private readonly Lazy<CatalogueFiles> _catalogues;
    private readonly bool _validate;

    /// <param name="root">The project root: nothing is read from outside of it.</param>
    /// <param name="cataloguePaths">Catalogue files, absolute or from the root; they apply in the order of their paths.</param>
    /// <param name="validate">Whether a spec that the reader takes is put before the JSON Schema as well: a second judge, and slow.</param>
    /// <param name="adapterPaths">Adapter files, absolute or from the root.</param>
    /// <param name="source">Where files are read from; null: the disk.</param>
    public SpecLoader(
        string root, ImmutableArray<string> cataloguePaths, bool validate = false, ImmutableArray<string> adapterPaths = default, FileSource? source = null)
    {
        ArgumentException.ThrowIfNullOrEmpty(root);
        var files = source ?? FileSource.Disk;
        _root = new(root, files);
        _files = new(files);
        _inheritance = new(_root, _files);
        _catalogues = new(() => CatalogueFiles.Read(
            _root, _files, cataloguePaths.IsDefault ? [] : cataloguePaths, adapterPaths.IsDefault ? [] : adapterPaths));
        _validate = validate;
        if (validate)
            SchemaValidator.Warm();
    }

    /// <summary>The steels that ship inside, before a project adds to them or overrides them.</summary>
    public static Catalogue Shipped => ShippedCatalogue.Instance.Catalogue;

    /// <summary>The file that they ship in, with its hash.</summary>
    public static FileRead ShippedFile => ShippedCatalogue.Instance.Read;

    /// <summary>The project root, in full.</summary>
    public string Root => _root.Folder;

    /// <summary>What the catalogue files declare; entries of a faulty file may be missing.</summary>
    public Catalogue Catalogue => _catalogues.Value.Catalogue;

    /// <summary>Complaints about catalogue files; every load repeats them.</summary>
    public ImmutableArray<Diagnostic> CatalogueDiagnostics => _catalogues.Value.Diagnostics;

    /// <summary>Reads a spec from a file.</summary>
    /// <param name="path">Absolute, or from the project root.</param>
    public SpecLoad Load(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (_root.Find(path, out var complaint) is not { } source)
            return new() { File = complaint!.Span.File, Diagnostics = [complaint] };

        var file = _files.Read(source);
        return file.Unreadable is { } unreadable
            ? new() { File = source.Shown, Diagnostics = [unreadable(SourceSpan.Whole(source.Shown), source.Shown)] }
            : Load(file, source);
    }

    /// <summary>Reads a spec from memory.</summary>
    /// <param name="displayPath">The name that messages carry: <c>-</c>, or a path from the root, from whose folder bases are looked up.</param>
    /// <param name="content">The text, UTF-8.</param>
    public SpecLoad Load(string displayPath, ReadOnlyMemory<byte> content)
    {
        ArgumentException.ThrowIfNullOrEmpty(displayPath);
        var full = Path.GetFullPath(displayPath.Replace('\0', '_'), _root.Folder);
        return Load(ParsedFile.Of(displayPath, content), new(full, displayPath));
    }

    /// <summary>Reads a spec whose values are to be tried: each trial reads the tree again, not the file.</summary>
    /// <param name="path">Absolute, or from the project root.</param>
    public SpecTemplate Template(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (_root.Find(path, out _) is not { } source || _files.Read(source) is not { Unreadable: null } file)
            return new(Load(path), static (_, load) => load);
        var merged = _inheritance.Merge(file, source);
        return new(Load(file, source, merged), (tree, _) => Load(file, source, merged with { Tree = tree }));
    }

    private SpecLoad Load(ParsedFile file, SourcePath source) => Load(file, source, _inheritance.Merge(file, source));

    private SpecLoad Load(ParsedFile file, SourcePath source, Merged merged)
    {
        var catalogues = _catalogues.Value;
        List<Diagnostic> diagnostics = [.. merged.Diagnostics, .. catalogues.Diagnostics];
        var filesRead = Ordered([.. merged.FilesRead, .. catalogues.FilesRead]);
        var isBase = IsBaseFile(file.Tree);

        GearboxSpec? spec = null;
        if (merged.Tree is not null)
        {
            List<Diagnostic> found = [];
            spec = GearboxReader.Read(merged.Tree, source.Shown, filesRead, catalogues.IsWhole ? catalogues.Catalogue : null, found);
            if (isBase)
                found.RemoveAll(diagnostic => Array.IndexOf(NotOfABase, diagnostic.Code) >= 0);
            else if (_validate && !HasErrors(found) && !HasErrors(diagnostics))
                SchemaValidator.Gearbox.Validate(merged.Tree, found);
            diagnostics.AddRange(found);
        }

        return new()
        {
            File = source.Shown,
            Spec = isBase || HasErrors(diagnostics) ? null : spec,
            Merged = merged.Tree,
            Diagnostics = InFileOrder(diagnostics),
            IsBase = isBase,
            Extends = merged.Extends,
            Catalogue = catalogues.Catalogue,
            FilesRead = filesRead,
        };
    }

    private static bool IsBaseFile(YamlNode? tree) =>
        tree is YamlMap map && map.Find("pawl") is not null
        && (map.Find("gearbox") is not YamlMap gearbox || gearbox.Find("variant") is null);

    private static bool HasErrors(List<Diagnostic> diagnostics)
    {
        foreach (var diagnostic in diagnostics)
        {
            if (diagnostic.Severity == Severity.Error)
                return true;
        }

        return false;
    }

    private static ImmutableArray<FileRead> Ordered(List<FileRead> files)
    {
        files.Sort((a, b) => string.CompareOrdinal(a.Path, b.Path));
        var once = ImmutableArray.CreateBuilder<FileRead>(files.Count);
        foreach (var file in files)
        {
            if (once.Count == 0 || once[^1].Path != file.Path)
                once.Add(file);
        }

        return once.DrainToImmutable();
    }

    /// <summary>By file, line and column; complaints at the same place in the order in which they were found, each once.</summary>
    internal static ImmutableArray<Diagnostic> InFileOrder(IEnumerable<Diagnostic> diagnostics)
    {
        List<Diagnostic> once = [.. diagnostics.Distinct()];

        return once.Count < 2
            ? [.. once]
            : [.. once.OrderBy(d => d.Span.File, StringComparer.Ordinal).ThenBy(d => d.Span.Start.Line).ThenBy(d => d.Span.Start.Column)];
    }
}
