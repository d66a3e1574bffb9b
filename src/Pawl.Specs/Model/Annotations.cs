namespace Pawl.Specs.Model;

/// <summary>What a field of the spec measures; becomes pattern, example and hover text in the JSON Schema.</summary>
/// <param name="dimension">Name of a static field of <see cref="Quantities.Dimension"/>: <c>nameof(Dimension.OfLength)</c>.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class MeasuresAttribute(string dimension) : Attribute
{
    public string Dimension { get; } = dimension;

    /// <summary>An example that can be pasted.</summary>
    public string Example { get; init; } = "";
}

/// <summary>An example of a hardness that can be pasted.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class ExampleAttribute(string text) : Attribute
{
    public string Text { get; } = text;
}

/// <summary>The key in the YAML, where it is not the property's name in small letters.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class YamlKeyAttribute(string name) : Attribute
{
    public string Name { get; } = name;
}

/// <summary>The words that a field accepts.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class OneOfAttribute(params string[] words) : Attribute
{
    public IReadOnlyList<string> Words { get; } = words;
}

/// <summary>A name that the spec itself or a catalogue declares: starts with a letter; letters, digits, underscores, hyphens.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class RefersAttribute : Attribute;

/// <summary>A list that may also be written as its only entry.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class OneOrMoreAttribute : Attribute;

/// <summary>A number that may also be written as a fraction of two whole numbers: <c>9/5</c>.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class FractionAttribute : Attribute;

/// <summary>Not a key in the YAML: the name under which an entry stands, or its place.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class NotAKeyAttribute : Attribute;

/// <summary>A section of named entries, in the order of the file.</summary>
public sealed class Named<T>(ImmutableArray<T> entries, Func<T, string> nameOf)
    where T : class
{
    public static readonly Named<T> Empty = new([], _ => "");

    private readonly Dictionary<string, T> _byName = Index(entries, nameOf);

    /// <summary>The entries in the order of the file.</summary>
    public ImmutableArray<T> Entries { get; } = entries;

    /// <summary>The entry of that name, or null.</summary>
    public T? Find(string name) => _byName.GetValueOrDefault(name);

    private static Dictionary<string, T> Index(ImmutableArray<T> entries, Func<T, string> nameOf)
    {
        var index = new Dictionary<string, T>(entries.Length, StringComparer.Ordinal);
        foreach (var entry in entries)
            index[nameOf(entry)] = entry;
        return index;
    }
}
