using System.Globalization;
using Pawl.Reports.Records;
using Pawl.Specs.Model;
using Pawl.Specs.Yaml;

namespace Pawl.Reports.Building;

/// <summary>Everything that a spec declares, as written, in the order of the merged spec. What catalogues state stands where it is used.</summary>
internal static class DeclaredInputs
{
    public static ImmutableArray<InputRecord> Of(GearboxSpec spec, QuantityWriter writer)
    {
        var inputs = ImmutableArray.CreateBuilder<InputRecord>();
        if (spec.Tree is { } tree)
            Walk(tree, "", inputs, writer);
        return inputs.DrainToImmutable();
    }

    private static void Walk(YamlNode node, string path, ImmutableArray<InputRecord>.Builder inputs, QuantityWriter writer)
    {
        switch (node)
        {
            case YamlMap map:
                foreach (var (key, value) in map.Entries)
                    Walk(value, path.Length == 0 ? key.Value : $"{path}.{key.Value}", inputs, writer);
                break;
            case YamlList list:
                // Entries are counted from 1, as people count them.
                for (var i = 0; i < list.Items.Length; i++)
                    Walk(list.Items[i], string.Create(CultureInfo.InvariantCulture, $"{path}[{i + 1}]"), inputs, writer);
                break;
            case YamlScalar scalar:
                inputs.Add(new() { Path = path, Written = scalar.Value, Place = writer.Place(scalar.Span) });
                break;
        }
    }
}
