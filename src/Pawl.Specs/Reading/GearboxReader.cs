using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>The merged tree of a variant as the typed model.</summary>
internal static partial class GearboxReader
{
    /// <summary>The spec, or null when a required part is missing; complaints go into <paramref name="diagnostics"/>.</summary>
    public static GearboxSpec? Read(
        YamlNode tree, string file, ImmutableArray<FileRead> filesRead, Catalogue? catalogue, ICollection<Diagnostic> diagnostics)
    {
        var reader = new MapReader(tree, "", diagnostics);
        return Read(reader, new(reader) { File = file, FilesRead = filesRead, Tree = tree, Lookup = catalogue });
    }
}
