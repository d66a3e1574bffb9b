using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>One adapter file.</summary>
internal static class AdapterReader
{
    public static AdapterSpec? Read(YamlNode tree, ICollection<Diagnostic> diagnostics)
    {
        var reader = new MapReader(tree, "", diagnostics);
        var pawl = reader.Whole("pawl", Limits.Format, Limits.Format, required: true);
        var name = reader.Name("adapter", required: true);
        var title = reader.Text("title");
        InterfaceSideSpec? side = null;
        if (reader.Map("interface", required: true) is { } map)
        {
            side = InterfaceReader.Side(map);
            map.Finish();
        }

        reader.Finish();
        return pawl is null || name is null || side is null ? null : new() { Pawl = pawl, Adapter = name, Title = title, Interface = side };
    }
}
