using System.Text.Json;

namespace Pawl.Specs.Schema;

/// <summary>A key that a spec may state, as the schema describes it.</summary>
/// <param name="Path">From the top of the spec; NAME stands for a name that the spec gives: <c>joints.NAME.thread</c>.</param>
/// <param name="Title">In words.</param>
/// <param name="Description">What it means and which units it takes.</param>
/// <param name="Example">A value that can be pasted; empty when there is none.</param>
/// <param name="Words">The words that it takes; empty when it takes others.</param>
/// <param name="IsRequired">Whether its section must have it.</param>
/// <param name="IsList">Whether it holds a list.</param>
/// <param name="Holds">Name of the type of what stands under it, as the model has it; empty of a plain value.</param>
/// <param name="Below">The keys under it.</param>
public sealed record SpecKey(
    string Path, string Title, string Description, string Example, ImmutableArray<string> Words, bool IsRequired, bool IsList, string Holds,
    ImmutableArray<string> Below)
{
    /// <summary>What stands for a name that the spec gives.</summary>
    public const string Name = "NAME";

    /// <summary>Whether a person means this key: by its path, with a name in the place of NAME, or with none at all.</summary>
    public bool IsMeantBy(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        var (own, given) = (Path.Split('.'), path.Split('.'));
        return (own.Length == given.Length && own.Zip(given).All(static pair => pair.First == Name || pair.First == pair.Second))
            || own.Where(static part => part != Name).SequenceEqual(given);
    }
}

/// <summary>Every key that a spec may state, read off the schema that ships inside.</summary>
public static class SpecKeys
{
    private const string Reference = "#/definitions/";

    private static readonly Lazy<ImmutableArray<SpecKey>> Read = new(static () =>
    {
        using var text = typeof(SpecKeys).Assembly.GetManifestResourceStream("gearbox-whole.schema.json")
            ?? throw new InvalidOperationException("The schema is not part of this build.");
        using var schema = JsonDocument.Parse(text);
        var keys = ImmutableArray.CreateBuilder<SpecKey>();
        new Walk(schema.RootElement.GetProperty("definitions"), keys).Object("", schema.RootElement);
        return keys.ToImmutable();
    });

    /// <summary>In the order of the model, each section before what is in it.</summary>
    public static ImmutableArray<SpecKey> All => Read.Value;

    private sealed class Walk(JsonElement definitions, ImmutableArray<SpecKey>.Builder keys)
    {
        private readonly Stack<string> _open = new();

        public void Object(string path, JsonElement schema)
        {
            if (!schema.TryGetProperty("properties", out var properties))
                return;
            var required = schema.TryGetProperty("required", out var names) ? names.EnumerateArray().Select(static name => name.GetString()).ToHashSet() : [];
            foreach (var property in properties.EnumerateObject())
                Key(path.Length == 0 ? property.Name : $"{path}.{property.Name}", property.Value, required.Contains(property.Name));
        }

        private void Key(string path, JsonElement schema, bool isRequired)
        {
            var (inner, below, isList) = (schema, path, false);
            if (schema.TryGetProperty("patternProperties", out var named))
                (inner, below) = (named.EnumerateObject().First().Value, $"{path}.{SpecKey.Name}");
            else if (Items(schema) is { } items)
                (inner, isList) = (items, true);

            var definition = Definition(inner);
            var target = definition.Length > 0 ? definitions.GetProperty(definition) : default;
            var holds = definition.Length > 0 && target.TryGetProperty("properties", out _) ? definition : "";
            keys.Add(new(
                path, Text(schema, "title"), Text(schema, "description"),
                schema.TryGetProperty("examples", out var examples) && examples.GetArrayLength() > 0 ? examples[0].ToString() : "",
                [.. Words(inner)], isRequired, isList, holds,
                holds.Length == 0 ? [] : [.. target.GetProperty("properties").EnumerateObject().Select(static property => property.Name)]));

            // A type within itself would never end.
            if (holds.Length == 0 || _open.Contains(holds))
                return;
            _open.Push(holds);
            Object(below, target);
            _open.Pop();
        }

        private static JsonElement? Items(JsonElement schema)
        {
            if (schema.TryGetProperty("items", out var items))
                return items;
            foreach (var group in (string[])["anyOf", "oneOf"])
            {
                if (!schema.TryGetProperty(group, out var choices))
                    continue;
                foreach (var choice in choices.EnumerateArray())
                {
                    if (choice.TryGetProperty("items", out var some))
                        return some;
                }
            }

            return null;
        }

        private static string Definition(JsonElement schema)
        {
            if (schema.TryGetProperty("$ref", out var reference))
                return reference.GetString()![Reference.Length..];
            foreach (var group in (string[])["allOf", "anyOf", "oneOf"])
            {
                if (!schema.TryGetProperty(group, out var parts))
                    continue;
                foreach (var part in parts.EnumerateArray())
                {
                    if (Definition(part) is { Length: > 0 } found)
                        return found;
                }
            }

            return "";
        }

        private static IEnumerable<string> Words(JsonElement schema) =>
            schema.TryGetProperty("enum", out var words) ? words.EnumerateArray().Where(static word => word.ValueKind == JsonValueKind.String).Select(static word => word.GetString()!) : [];

        private static string Text(JsonElement schema, string name) => schema.TryGetProperty(name, out var text) ? text.GetString() ?? "" : "";
    }
}
