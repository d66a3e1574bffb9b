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
public sealed class MapReader
{
    /// <param name="node">The mapping; anything else is reported as such and reads as empty.</param>
    /// <param name="path">Dotted path for messages: <c>train.gears.input_sun</c>.</param>
    /// <param name="diagnostics">Receives complaints.</param>
    public MapReader(YamlNode node, string path, ICollection<Diagnostic> diagnostics) => throw new NotImplementedException();

    /// <summary>Whether this object has reported an error so far.</summary>
    public bool HasErrors => throw new NotImplementedException();

    public SourceSpan Span => throw new NotImplementedException();

    public Stated<string>? Text(string key, bool required = false) => throw new NotImplementedException();

    public Stated<string>? Word(string key, ReadOnlySpan<string> words, bool required = false) => throw new NotImplementedException();

    /// <summary>A name that other parts of the spec refer to: letters, digits, underscore, hyphen; starts with a letter.</summary>
    public Stated<string>? Name(string key, bool required = false) => throw new NotImplementedException();

    public Stated<int>? Whole(string key, int least, int most, bool required = false) => throw new NotImplementedException();

    public Stated<bool>? Truth(string key, bool required = false) => throw new NotImplementedException();

    public Stated<double>? Number(string key, double least, double most, bool required = false) => throw new NotImplementedException();

    public Stated<DateOnly>? Date(string key, bool required = false) => throw new NotImplementedException();

    /// <summary>An amount of a dimension; <paramref name="range"/> bounds it in coherent units.</summary>
    public Stated<Amount>? Amount(string key, Dimension dimension, AmountRange range = AmountRange.Any, bool required = false) =>
        throw new NotImplementedException();

    public Stated<Toleranced>? Toleranced(string key, Dimension dimension, AmountRange range = AmountRange.Any, bool required = false) =>
        throw new NotImplementedException();

    /// <summary>The mapping under a key, or null.</summary>
    public MapReader? Map(string key, bool required = false) => throw new NotImplementedException();

    /// <summary>The list under a key, or an empty one.</summary>
    public ImmutableArray<YamlNode> List(string key, bool required = false) => throw new NotImplementedException();

    /// <summary>The raw node under a key, or null; marks the key as known.</summary>
    public YamlNode? Node(string key, bool required = false) => throw new NotImplementedException();

    /// <summary>Complains of every key that was not asked for, with the nearest known one.</summary>
    public void Finish() => throw new NotImplementedException();
}

/// <summary>Which amounts make sense.</summary>
public enum AmountRange
{
    Any,
    NotNegative,
    Positive,
    NotPositive,
}
