using Pawl.Quantities;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs;

/// <summary>A spec whose values can be changed one by one and read again. Safe for use by several threads.</summary>
public sealed class SpecTemplate
{
    private readonly Func<YamlNode?, SpecLoad, SpecLoad> _read;

    internal SpecTemplate(SpecLoad original, Func<YamlNode?, SpecLoad, SpecLoad> read) => (Original, _read) = (original, read);

    /// <summary>The spec as it stands.</summary>
    public SpecLoad Original { get; }

    /// <summary>The spec with other values; those of keys that it does not state are added.</summary>
    /// <returns>What came of reading it; a path that leads nowhere is a complaint like any other.</returns>
    public SpecLoad With(IEnumerable<ValueChange> changes)
    {
        ArgumentNullException.ThrowIfNull(changes);
        if (Original.Merged is not { } tree)
            return Original;
        foreach (var change in changes)
        {
            if (Set(tree, change.Path, change) is not { } next)
                return Original with { Spec = null, Diagnostics = Original.Diagnostics.Add(NoPlace(change.Path)) };
            tree = next;
        }

        return _read(tree, Original);
    }

    /// <summary>The value at a path; null where the spec states none, or where a list or a map stands.</summary>
    public YamlScalar? Find(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return Original.Merged is { } tree ? Find(tree, path) as YamlScalar : null;
    }

    /// <summary>Whether a value can stand at a path: one does, or a key can be added there.</summary>
    public bool HasPlace(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return path.Length > 0 && Original.Merged is { } tree && Set(tree, path, new(path, "")) is not null;
    }

    /// <summary>Paths of all single values, in the order of the spec.</summary>
    public IEnumerable<string> Paths => Original.Merged is { } tree ? PathsIn(tree, "") : [];

    /// <summary>What is said of a path that leads nowhere.</summary>
    public Diagnostic NoPlace(string path) => new(
        DiagnosticCodes.UnknownKey, Severity.Error, new(Original.File, default, default), $"The spec has no place `{path}`.",
        Nearest.To(path, [.. Paths]) is { } near ? $"Did you mean `{near}`?" : "Write a key as messages do: train.meshes[0].centre_distance.");

    private static IEnumerable<string> PathsIn(YamlNode node, string path) => node switch
    {
        YamlMap map => map.Entries.SelectMany(entry => PathsIn(entry.Value, path.Length == 0 ? entry.Key.Value : $"{path}.{entry.Key.Value}")),
        YamlList list => list.Items.SelectMany((item, i) => PathsIn(item, $"{path}[{i.ToString(Invariant)}]")),
        _ => [path],
    };

    private static YamlNode? Find(YamlNode node, string path)
    {
        if (path.Length == 0)
            return node;
        return node switch
        {
            YamlMap map => Entries(map, path).Select(at => Find(map.Entries[at.Index].Value, at.Left)).FirstOrDefault(static found => found is not null),
            YamlList list when Item(list, path) is var (index, rest) => Find(list.Items[index], rest),
            _ => null,
        };
    }

    /// <summary>The node with a value set; null when the path leads nowhere.</summary>
    private static YamlNode? Set(YamlNode node, string path, ValueChange change)
    {
        if (path.Length == 0)
            return Value(node.Span, change.Text);
        switch (node)
        {
            case YamlMap map:
                foreach (var (index, rest) in Entries(map, path))
                {
                    if (Set(map.Entries[index].Value, rest, change) is { } set)
                        return map with { Entries = map.Entries.SetItem(index, new(map.Entries[index].Key, set)) };
                }

                return Added(map, path, change);
            case YamlList list when Item(list, path) is var (index, rest):
                return Set(list.Items[index], rest, change) is { } item ? list with { Items = list.Items.SetItem(index, item) } : null;
            default:
                return null;
        }
    }

    /// <summary>A key that is not there yet, with the maps on the way to it.</summary>
    private static YamlMap? Added(YamlMap map, string path, ValueChange change)
    {
        if (path.AsSpan().ContainsAny('[', ']'))
            return null;
        var point = path.IndexOf('.', StringComparison.Ordinal);
        var (key, rest) = point < 0 ? (path, "") : (path[..point], path[(point + 1)..]);
        if (key.Length == 0 || map.Find(key) is not null)
            return null;
        var value = rest.Length == 0 ? Value(map.Span, change.Text) : Added(new(map.Span, []), rest, change);
        return value is null ? null : map with { Entries = map.Entries.Add(new(new(map.Span, key, IsQuoted: false), value)) };
    }

    // A list or a map is parsed, anything else is the text of a value, whatever YAML would make of it.
    private static YamlNode Value(SourceSpan span, string text)
    {
        if (text.TrimStart() is not ['{' or '[', ..])
            return new YamlScalar(span, text, IsQuoted: false);
        List<Diagnostic> faults = [];
        return YamlReader.Read(span.File, System.Text.Encoding.UTF8.GetBytes(text), faults) is { } node && faults.Count == 0
            ? At(node, span)
            : new YamlScalar(span, text, IsQuoted: false);
    }

    private static YamlNode At(YamlNode node, SourceSpan span) => node switch
    {
        YamlMap map => new YamlMap(span, [.. map.Entries.Select(e => KeyValuePair.Create(e.Key with { Span = span }, At(e.Value, span)))]),
        YamlList list => new YamlList(span, [.. list.Items.Select(item => At(item, span))]),
        _ => node with { Span = span },
    };

    /// <summary>Entries that a path may go through; a name may hold points itself.</summary>
    private static IEnumerable<(int Index, string Left)> Entries(YamlMap map, string path)
    {
        for (var i = 0; i < map.Entries.Length; i++)
        {
            var key = map.Entries[i].Key.Value;
            if (key.Length == 0 || !path.StartsWith(key, StringComparison.Ordinal))
                continue;
            if (path.Length == key.Length)
                yield return (i, "");
            else if (path[key.Length] == '.')
                yield return (i, path[(key.Length + 1)..]);
            else if (path[key.Length] == '[')
                yield return (i, path[key.Length..]);
        }
    }

    private static (int Index, string Left)? Item(YamlList list, string path)
    {
        var end = path.IndexOf(']', StringComparison.Ordinal);
        if (path[0] != '[' || end < 0)
            return null;
        var name = path[1..end];
        var rest = path[(end + 1)..].TrimStart('.');
        if (int.TryParse(name, System.Globalization.NumberStyles.None, Invariant, out var index))
            return index < list.Items.Length ? (index, rest) : null;
        for (var i = 0; i < list.Items.Length; i++)
        {
            if (list.Items[i] is YamlMap map && map.Find("id") is YamlScalar id && id.Value == name)
                return (i, rest);
        }

        return null;
    }
}
