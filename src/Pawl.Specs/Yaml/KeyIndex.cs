namespace Pawl.Specs.Yaml;

/// <summary>Finds a key that a map holds already: by looking while the map is small, by hash when it grows.</summary>
internal struct KeyIndex
{
    private const int Small = 16;
    private Dictionary<string, YamlScalar>? _byName;

    /// <summary>The entry's key with the same name, or null; a null answer means that the caller adds the entry.</summary>
    public YamlScalar? FirstOf(ImmutableArray<KeyValuePair<YamlScalar, YamlNode>>.Builder entries, YamlScalar key)
    {
        if (entries.Count < Small)
        {
            foreach (var (name, _) in entries)
            {
                if (name.Value == key.Value)
                    return name;
            }

            return null;
        }

        if (_byName is null)
        {
            _byName = new(StringComparer.Ordinal);
            foreach (var (name, _) in entries)
                _byName[name.Value] = name;
        }

        return _byName.TryAdd(key.Value, key) ? null : _byName[key.Value];
    }
}
