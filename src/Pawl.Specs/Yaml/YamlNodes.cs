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
