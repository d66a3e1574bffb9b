using Pawl.Quantities;
using Pawl.Specs.Text;

namespace Pawl.Specs.Yaml;

/// <summary>
/// Reads the keys of one mapping into typed values. What is missing, misspelt or of the wrong kind becomes a diagnostic at its
/// place; <see cref="Finish"/> complains of every key that nobody asked for.
/// </summary>
/// <remarks>
/// A <c>Required…</c> call that finds nothing reports it and returns null: the caller goes on, so that one run names every fault,
/// and drops the incomplete object at the end.
/// </remarks>
public sealed partial class MapReader
{
    private readonly YamlMap? _map;
    private readonly MapReader? _parent;
    private readonly string _path;
    private readonly ICollection<Diagnostic> _diagnostics;
    private readonly SourceSpan _name;
    private readonly bool[] _asked;
    private readonly List<string> _known = [];

    /// <param name="node">The mapping; anything else is reported as such and reads as empty.</param>
    /// <param name="path">Dotted path for messages: <c>train.gears.input_sun</c>.</param>
    /// <param name="diagnostics">Receives complaints.</param>
    public MapReader(YamlNode node, string path, ICollection<Diagnostic> diagnostics)
        : this(node, path, diagnostics, name: null, parent: null)
    {
    }

    private MapReader(YamlNode node, string path, ICollection<Diagnostic> diagnostics, SourceSpan? name, MapReader? parent)
    {
        ArgumentNullException.ThrowIfNull(node);
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(diagnostics);
        _path = path;
        _diagnostics = diagnostics;
        _parent = parent;
        _map = node as YamlMap;
        _asked = _map is null ? [] : new bool[_map.Entries.Length];
        Span = node.Span;
        _name = name ?? node.Span with { End = node.Span.Start };
        if (_map is null)
        {
            Report(node is YamlScalar { IsNull: true }
                ? SpecDiagnostics.NullValue(_name, Title)
                : SpecDiagnostics.NotA(DiagnosticCodes.NotAMap, node, Title, "a map of `key: value`"));
        }
    }

    /// <summary>Whether this object, or one read from within it, has reported an error so far.</summary>
    public bool HasErrors { get; private set; }

    /// <summary>Whether there is a mapping to read at all.</summary>
    public bool IsMap => _map is not null;

    public SourceSpan Span { get; }

    /// <summary>The key under which the mapping stands, for complaints about the object as a whole.</summary>
    public SourceSpan NameSpan => _name;

    /// <summary>The dotted path of this object.</summary>
    public string ObjectPath => _path;

    private string Title => _path.Length == 0 ? "The file" : _path;

    /// <summary>The dotted path of a key, for messages.</summary>
    public string PathOf(string key) => _path.Length == 0 ? key : $"{_path}.{key}";

    /// <summary>Adds a complaint of the caller's own.</summary>
    public void Report(Diagnostic diagnostic)
    {
        ArgumentNullException.ThrowIfNull(diagnostic);
        _diagnostics.Add(diagnostic);
        if (diagnostic.Severity != Severity.Error)
            return;
        for (var reader = this; reader is { HasErrors: false }; reader = reader._parent)
            reader.HasErrors = true;
    }

    /// <summary>Whether a key stands there, whatever its value; marks the key as known.</summary>
    public bool Has(string key) => Find(key, out _, out _);

    /// <summary>The place of a key, or of the object when the key is absent.</summary>
    public SourceSpan KeySpan(string key) => Find(key, out var name, out _) ? name.Span : _name;

    /// <summary>The mapping under a key, or null.</summary>
    public MapReader? Map(string key, bool required = false)
    {
        if (Node(key, required) is not { } node)
            return null;
        var reader = new MapReader(node, PathOf(key), _diagnostics, KeySpan(key), this);
        return reader.IsMap ? reader : null;
    }

    /// <summary>The list under a key, or an empty one.</summary>
    public ImmutableArray<YamlNode> List(string key, bool required = false)
    {
        if (Node(key, required) is not { } node)
            return [];
        if (node is YamlList list)
            return list.Items;

        Report(SpecDiagnostics.NotA(
            DiagnosticCodes.NotAList, node, PathOf(key), "a list", node is YamlScalar scalar ? $"Put it in brackets: [{scalar.Value.Trim()}]." : null));
        return [];
    }

    /// <summary>Reads each mapping of a list; what <paramref name="read"/> drops is left out.</summary>
    public ImmutableArray<T> Items<T>(string key, Func<MapReader, T?> read, bool required = false)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(read);
        var items = List(key, required);
        var found = ImmutableArray.CreateBuilder<T>(items.Length);
        for (var i = 0; i < items.Length; i++)
        {
            var reader = new MapReader(items[i], $"{PathOf(key)}[{i}]", _diagnostics, name: null, this);
            if (reader.IsMap && read(reader) is { } item)
                found.Add(item);
        }

        return found.DrainToImmutable();
    }

    /// <summary>Most entries of one section: some checks hold every entry against every other.</summary>
    public const int MostNamed = 2000;

    /// <summary>Reads a section of named mappings, in the order of the file; what <paramref name="read"/> drops is left out.</summary>
    public ImmutableArray<T> Named<T>(string key, Func<Stated<string>, MapReader, T?> read, bool required = false)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(read);
        if (Map(key, required)?._map is not { } map)
            return [];
        if (map.Entries.Length > MostNamed)
        {
            Report(SpecDiagnostics.WrongCount(map.Span, PathOf(key), $"at most {MostNamed.ToString(Invariant)} entries", map.Entries.Length, "Take what is not used out, or split the file."));
            return [];
        }

        var entries = ImmutableArray.CreateBuilder<T>(map.Entries.Length);
        foreach (var (name, node) in map.Entries)
        {
            var path = $"{PathOf(key)}.{name.Value}";
            if (!IsName(name.Value))
            {
                Report(SpecDiagnostics.NotAName(name.Span, PathOf(key), name.Value));
                continue;
            }

            var reader = new MapReader(node, path, _diagnostics, name.Span, this);
            if (reader.IsMap && read(new(name.Value, name.Span, name.Value), reader) is { } entry)
                entries.Add(entry);
        }

        return entries.DrainToImmutable();
    }

    /// <summary>What stands under a key, be it null; without a complaint.</summary>
    public YamlNode? Raw(string key) => Find(key, out _, out var node) ? node : null;

    /// <summary>The raw node under a key, or null; marks the key as known.</summary>
    public YamlNode? Node(string key, bool required = false)
    {
        if (!Find(key, out var name, out var node))
        {
            if (required && _map is not null)
                Report(SpecDiagnostics.MissingKey(_name, _path, key));
            return null;
        }

        if (node is YamlScalar { IsNull: true })
        {
            Report(SpecDiagnostics.NullValue(name.Span, PathOf(key)));
            return null;
        }

        return node;
    }

    /// <summary>Complains of every key that was not asked for, with the nearest known one.</summary>
    public void Finish()
    {
        for (var i = 0; i < _asked.Length; i++)
        {
            if (_asked[i])
                continue;
            var key = _map!.Entries[i].Key;
            Report(SpecDiagnostics.UnknownKey(_path, key, Nearest.To(key.Value, _known), _known));
        }
    }

    private bool Find(string key, out YamlScalar name, out YamlNode node)
    {
        if (!_known.Contains(key))
            _known.Add(key);
        if (_map is not null)
        {
            var entries = _map.Entries;
            for (var i = 0; i < entries.Length; i++)
            {
                if (entries[i].Key.Value != key)
                    continue;
                _asked[i] = true;
                (name, node) = (entries[i].Key, entries[i].Value);
                return true;
            }
        }

        (name, node) = (null!, null!);
        return false;
    }

    private YamlScalar? Scalar(string key, bool required, string code, string expected)
    {
        if (Node(key, required) is not { } node)
            return null;
        if (node is YamlScalar scalar)
            return scalar;

        Report(SpecDiagnostics.NotA(code, node, PathOf(key), expected));
        return null;
    }
}
