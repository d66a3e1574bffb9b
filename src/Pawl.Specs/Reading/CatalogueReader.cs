using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>One catalogue file as typed entries.</summary>
internal static partial class CatalogueReader
{
    public static CatalogueFile? Read(YamlNode tree, ICollection<Diagnostic> diagnostics)
    {
        var reader = new MapReader(tree, "", diagnostics);
        return Read(reader, new(reader));
    }
}

/// <summary>One adapter file.</summary>
internal static partial class AdapterReader
{
    public static AdapterSpec? Read(YamlNode tree, ICollection<Diagnostic> diagnostics)
    {
        var reader = new MapReader(tree, "", diagnostics);
        return Read(reader, new(reader));
    }
}
