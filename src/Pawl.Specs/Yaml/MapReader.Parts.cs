using Pawl.Specs.Text;

namespace Pawl.Specs.Yaml;

/// <content>Objects within the object, each by a reader that shares what the file has declared so far.</content>
public sealed partial class MapReader
{
    /// <summary>The object under a key, or null.</summary>
    public T? Map<T, TScope>(string key, Func<MapReader, TScope, T?> read, TScope scope, bool required = false)
        where T : class
        where TScope : class
    {
        ArgumentNullException.ThrowIfNull(read);
        return Map(key, required) is { } map ? read(map, scope) : null;
    }

    /// <summary>Reads each mapping of a list; what <paramref name="read"/> drops is left out.</summary>
    public ImmutableArray<T> Items<T, TScope>(string key, Func<MapReader, TScope, T?> read, TScope scope, bool required = false)
        where T : class
        where TScope : class
    {
        ArgumentNullException.ThrowIfNull(read);
        return Items(key, map => read(map, scope), required);
    }

    /// <summary>Reads a section of named mappings, in the order of the file; what <paramref name="read"/> drops is left out.</summary>
    public ImmutableArray<T> Named<T, TScope>(string key, Func<Stated<string>, MapReader, TScope, T?> read, TScope scope, bool required = false)
        where T : class
        where TScope : class
    {
        ArgumentNullException.ThrowIfNull(read);
        return Named(key, (name, map) => read(name, map, scope), required);
    }

    /// <summary>What stands under a key, if anything, without a word about it.</summary>
    public YamlNode? Peek(string key) => Find(key, out _, out var node) ? node : null;

    /// <summary>Complains of a key that is absent, where others make it necessary.</summary>
    public void Demand(string key)
    {
        if (!Has(key))
            Report(SpecDiagnostics.MissingKey(_name, _path, key));
    }

    /// <summary>Complains of a list of the wrong length.</summary>
    public void Count(string key, int least, int most, string expected, string? hint = null)
    {
        if (Peek(key) is YamlList list && (list.Items.Length < least || list.Items.Length > most))
            Report(SpecDiagnostics.WrongCount(list.Span, PathOf(key), expected, list.Items.Length, hint));
    }

    /// <summary>Complains of two keys that say the same, where both have a value.</summary>
    public void Exclude(string first, object? one, string second, object? other)
    {
        if (one is not null && other is not null)
            Report(SpecDiagnostics.ExclusiveKeys(KeySpan(second), _path, first, second));
    }
}
