using System.Globalization;
using Newtonsoft.Json.Linq;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Schema;

/// <summary>A tree as JSON, by the core schema of YAML 1.2, with the way back from a token to its node.</summary>
internal sealed class TreeToJson
{
    private readonly Dictionary<JToken, YamlNode> _nodes = new(ReferenceEqualityComparer.Instance);

    /// <summary>The node that a token was made from.</summary>
    public YamlNode? NodeOf(JToken? token)
    {
        for (; token is not null; token = token.Parent)
        {
            if (_nodes.TryGetValue(token, out var node))
                return node;
        }

        return null;
    }

    public JToken Convert(YamlNode node)
    {
        JToken token = node switch
        {
            YamlMap map => Object(map),
            YamlList list => Array(list),
            YamlScalar scalar => Value(scalar),
            _ => throw new ArgumentException("A node is a map, a list or a scalar.", nameof(node)),
        };
        _nodes[token] = node;
        return token;
    }

    private JObject Object(YamlMap map)
    {
        var target = new JObject();
        foreach (var (key, value) in map.Entries)
            target[key.Value] = Convert(value);
        return target;
    }

    private JArray Array(YamlList list)
    {
        var target = new JArray();
        foreach (var item in list.Items)
            target.Add(Convert(item));
        return target;
    }

    private static JValue Value(YamlScalar scalar) => CoreSchema.KindOf(scalar) switch
    {
        ScalarKind.Null => JValue.CreateNull(),
        ScalarKind.Truth => new(scalar.Value[0] is 't' or 'T'),
        ScalarKind.Whole when long.TryParse(scalar.Value, NumberStyles.AllowLeadingSign, Invariant, out var whole) => new(whole),

        // JSON numbers are decimals to the validator; what does not fit one is out of every range that a schema states.
        ScalarKind.Whole or ScalarKind.Real when CoreSchema.TryNumber(scalar, out var number) =>
            new(Math.Clamp(number, -1e28, 1e28)),
        _ => new(scalar.Value),
    };
}
