using Pawl.Specs.Text;

namespace Pawl.Specs.Yaml;

/// <summary>A piece of a YAML file that knows where it was written.</summary>
/// <param name="Span">The text of the node, in the file that stated it.</param>
public abstract record YamlNode(SourceSpan Span);

/// <summary>A scalar. Every value of a spec is read from one.</summary>
/// <param name="Span">Where it stands.</param>
/// <param name="Value">The text, after quotes and folding.</param>
/// <param name="IsQuoted">Quoted or block scalars are text, never a number, a truth value or null.</param>
public sealed record YamlScalar(SourceSpan Span, string Value, bool IsQuoted) : YamlNode(Span)
{
    /// <summary>Whether this is the YAML 1.2 null of the core schema: <c>null</c>, <c>~</c> or nothing.</summary>
    public bool IsNull => !IsQuoted && Value is "" or "~" or "null" or "Null" or "NULL";

    /// <summary>Whether this null was written out, rather than left blank after a colon.</summary>
    public bool IsWrittenNull => IsNull && Value.Length > 0;

    /// <summary>The place of a part of the text where it can be told, else of the whole.</summary>
    public SourceSpan Part(int start, int length)
    {
        if (Span.Start.Line != Span.End.Line || start < 0 || length < 0 || start + length > Value.Length)
            return Span;

        // Written as it reads, or so within quotes; anything else holds escapes or folds.
        var before = Span.End.Column - Span.Start.Column - Value.Length;
        if (before is not 0 and not 2)
            return Span;

        var from = Span.Start.Column + (before / 2) + start;
        return Span with { Start = Span.Start with { Column = from }, End = Span.Start with { Column = from + Math.Max(1, length) } };
    }
}

/// <summary>A mapping, in the order of the file. Keys are unique: a second one is a diagnostic and is left out.</summary>
public sealed record YamlMap(SourceSpan Span, ImmutableArray<KeyValuePair<YamlScalar, YamlNode>> Entries) : YamlNode(Span)
{
    /// <summary>The value of a key, or null.</summary>
    public YamlNode? Find(string key)
    {
        foreach (var (name, value) in Entries)
        {
            if (name.Value == key)
                return value;
        }

        return null;
    }
}

/// <summary>A sequence.</summary>
public sealed record YamlList(SourceSpan Span, ImmutableArray<YamlNode> Items) : YamlNode(Span);
