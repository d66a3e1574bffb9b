namespace Pawl.Specs.Model;

/// <summary>What a field of the spec measures: the reader holds a value to it, the JSON Schema makes pattern and example of it.</summary>
/// <param name="dimension">Name of a static field of <see cref="Quantities.Dimension"/>: <c>nameof(Dimension.OfLength)</c>.</param>
/// <param name="range">The sign that makes sense.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class MeasuresAttribute(string dimension, AmountRange range = AmountRange.Any) : Attribute
{
    public string Dimension { get; } = dimension;

    public AmountRange Range { get; } = range;

    /// <summary>An example that can be pasted.</summary>
    public string Example { get; init; } = "";

    /// <summary>Name of a static field of <see cref="Quantities.Units"/> in which <see cref="Min"/> and <see cref="Max"/> are given; without it they are not.</summary>
    public string Unit { get; init; } = "";

    /// <summary>Lower bound, included.</summary>
    public double Min { get; init; }

    /// <summary>Upper bound, included.</summary>
    public double Max { get; init; }

    /// <summary>Whether the classes of both parts of a fit may stand here: <c>25 mm H7/g6</c>.</summary>
    public bool AllowsFit { get; init; }
}

/// <summary>Which amounts make sense.</summary>
public enum AmountRange
{
    Any,
    NotNegative,
    Positive,
    NotPositive,
}

/// <summary>An example of a hardness or a text that can be pasted.</summary>
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
/// <param name="kind">What must have been declared under that name.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class RefersAttribute(Declared kind = Declared.Anything) : Attribute
{
    public Declared Kind { get; } = kind;
}

/// <summary>What a name can refer to.</summary>
public enum Declared
{
    /// <summary>Nothing that is looked up, or what a check of its own looks up.</summary>
    Anything,

    /// <summary>A material of the catalogue.</summary>
    Material,

    /// <summary>A lubricant of the catalogue.</summary>
    Lubricant,

    /// <summary>A bearing of the catalogue.</summary>
    BearingType,

    /// <summary>An adapter with a file of its own.</summary>
    Adapter,

    /// <summary>A body or planet set of the train.</summary>
    Body,

    /// <summary>A planet set of the train.</summary>
    PlanetSet,

    /// <summary>A bearing of the spec.</summary>
    Bearing,

    /// <summary>A joint of the spec.</summary>
    Joint,
}

/// <summary>How many entries a list has.</summary>
/// <param name="least">The fewest.</param>
/// <param name="most">The most.</param>
/// <param name="expected">In words, for the complaint: <c>two gears</c>.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class CountAttribute(int least, int most, string expected) : Attribute
{
    public int Min { get; } = least;

    public int Max { get; } = most;

    public string Required { get; } = expected;

    /// <summary>What to do about it.</summary>
    public string Hint { get; init; } = "";
}

/// <summary>Something that later sections of the spec refer to.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class DeclaresAttribute : Attribute;

/// <summary>With any fault in it, it reads as absent: nothing else is held against a faulty one.</summary>
[AttributeUsage(AttributeTargets.Class)]
public sealed class OnlySoundAttribute : Attribute;

/// <summary>A list that may also be written as its only entry.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class OneOrMoreAttribute : Attribute;

/// <summary>A number that may also be written as a fraction of two whole numbers: <c>9/5</c>.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class FractionAttribute : Attribute;

/// <summary>Not a key in the YAML: the name under which an entry stands, or its place.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class NotAKeyAttribute : Attribute
{
    /// <summary>Whether a place is that of the key rather than that of its value.</summary>
    public bool IsPlaceOfKey { get; init; }
}

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
