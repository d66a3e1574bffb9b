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

    static partial void Check(GearboxSpec read, MapReader reader, Scope scope)
    {
        var variant = ((scope.Tree as YamlMap)?.Find("gearbox") as YamlMap)?.Find("variant") is YamlScalar { IsNull: false } name ? name.Value : null;
        foreach (var concession in read.Concessions)
        {
            var isOwn = variant is not null && concession.Span.File == scope.File;
            if (!isOwn && concession.Variants.IsEmpty)
                reader.Report(SpecDiagnostics.MissingVariants(concession.Rule.Span, concession.Rule.Value));
            else if (isOwn && !concession.Covers(variant!))
                reader.Report(SpecDiagnostics.OtherVariants(concession.Variants[0].Span, concession.Rule.Value, variant!));
        }
    }
}
