using System.Buffers;
using System.Text;
using System.Text.Json;
using Pawl.Specs.Yaml;

namespace Pawl.Fuzz;

/// <summary>A YAML value that can be changed: a scalar as it is written, a list, or a map, whose items then bear keys.</summary>
public sealed class Node
{
    private static readonly SearchValues<char> Quoted = SearchValues.Create(",[]{}#:&*!|>'\"%@`\n");

    public string? Scalar { get; set; }

    public bool IsMap { get; private init; }

    public List<(string Key, Node Value)> Items { get; private init; } = [];

    public static Node Of(YamlNode node) => node switch
    {
        YamlMap map => new() { IsMap = true, Items = [.. map.Entries.Select(e => (Written(e.Key), Of(e.Value)))] },
        YamlList list => new() { Items = [.. list.Items.Select(i => ("", Of(i)))] },
        YamlScalar scalar => new() { Scalar = Written(scalar) },
        _ => throw new ArgumentOutOfRangeException(nameof(node)),
    };

    public static Node Parse(string text) => Of(YamlReader.Read("seed.yaml", Encoding.UTF8.GetBytes(text), []) ?? throw new ArgumentException("The text is no YAML.", nameof(text)));

    public Node Copy() => new() { Scalar = Scalar, IsMap = IsMap, Items = [.. Items.Select(i => (i.Key, i.Value.Copy()))] };

    public Node? Find(string key) => Items.Find(i => i.Key == key).Value;

    /// <summary>This value and all within it.</summary>
    public IEnumerable<Node> All() => Items.SelectMany(i => i.Value.All()).Prepend(this);

    /// <summary>In flow style, a line for each item of the outermost.</summary>
    public override string ToString() => IsMap ? string.Concat(Items.Select(i => $"{i.Key}: {i.Value.Flow()}\n")) : Flow();

    private string Flow() => Scalar
        ?? (IsMap ? $"{{{string.Join(", ", Items.Select(i => $"{i.Key}: {i.Value.Flow()}"))}}}" : $"[{string.Join(", ", Items.Select(i => i.Value.Flow()))}]");

    // What would not be read as the same plain scalar within a flow collection is quoted.
    private static string Written(YamlScalar scalar) =>
        scalar.IsQuoted || scalar.Value.AsSpan().ContainsAny(Quoted) ? JsonSerializer.Serialize(scalar.Value) : scalar.Value;
}
