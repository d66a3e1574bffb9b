using Pawl.Specs.Yaml;

namespace Pawl.Specs.Files;

/// <summary>Lays one tree over another. Every node keeps the file, line and column that stated it.</summary>
/// <remarks>
/// Maps merge key by key, in the order of the base and then what is new. A written <c>null</c> removes what the base states; one that
/// removes nothing stays and is complained of when read. Lists replace, unless every entry of both is a map with an <c>id</c>:
/// those merge by id.
/// </remarks>
internal static class TreeMerge
{
    public static YamlNode Lay(YamlNode @base, YamlNode over) => (@base, over) switch
    {
        (YamlMap below, YamlMap above) => Maps(below, above),
        (YamlList below, YamlList above) when below.Items.Length > 0 && above.Items.Length > 0 && HaveIds(below) && HaveIds(above) => Lists(below, above),
        _ => over,
    };

    /// <summary>The map without a key.</summary>
    public static YamlMap Without(YamlMap map, string key)
    {
        for (var i = 0; i < map.Entries.Length; i++)
        {
            if (map.Entries[i].Key.Value == key)
                return map with { Entries = map.Entries.RemoveAt(i) };
        }

        return map;
    }

    private static YamlMap Maps(YamlMap below, YamlMap above)
    {
        var entries = ImmutableArray.CreateBuilder<KeyValuePair<YamlScalar, YamlNode>>(below.Entries.Length + above.Entries.Length);
        var newer = new Dictionary<string, KeyValuePair<YamlScalar, YamlNode>>(above.Entries.Length, StringComparer.Ordinal);
        foreach (var entry in above.Entries)
            newer[entry.Key.Value] = entry;

        foreach (var entry in below.Entries)
        {
            if (!newer.Remove(entry.Key.Value, out var over))
                entries.Add(entry);
            else if (over.Value is not YamlScalar { IsWrittenNull: true })
                entries.Add(new(over.Key, Lay(entry.Value, over.Value)));
        }

        foreach (var entry in above.Entries)
        {
            if (newer.ContainsKey(entry.Key.Value))
                entries.Add(entry);
        }

        return above with { Entries = entries.DrainToImmutable() };
    }

    private static bool HaveIds(YamlList list)
    {
        foreach (var item in list.Items)
        {
            if (IdOf(item) is null)
                return false;
        }

        return true;
    }

    private static string? IdOf(YamlNode item) => item is YamlMap map && map.Find("id") is YamlScalar { IsNull: false } id ? id.Value : null;

    private static YamlList Lists(YamlList below, YamlList above)
    {
        var items = below.Items.ToBuilder();
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < items.Count; i++)
            places.TryAdd(IdOf(items[i])!, i);

        foreach (var item in above.Items)
        {
            var id = IdOf(item)!;
            if (places.TryGetValue(id, out var place))
            {
                items[place] = Lay(items[place], item);
            }
            else
            {
                places.Add(id, items.Count);
                items.Add(item);
            }
        }

        return above with { Items = items.DrainToImmutable() };
    }
}
