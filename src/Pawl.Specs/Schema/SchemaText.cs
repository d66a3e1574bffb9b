using System.Text.Json;
using NJsonSchema;

namespace Pawl.Specs.Schema;

/// <summary>Builds the schema's objects from its kept text.</summary>
/// <remarks>
/// The library's own reader goes by reflection and costs more than all the rest of a check. This one knows the vocabulary that
/// <see cref="SchemaGenerator"/> writes, and refuses any other word, so that nothing is left unchecked unnoticed.
/// </remarks>
public static class SchemaText
{
    public static JsonSchema Read(Stream text)
    {
        using var document = JsonDocument.Parse(text);
        var root = new JsonSchema();
        var walk = new Walk(root);
        if (document.RootElement.TryGetProperty("definitions", out var definitions))
        {
            foreach (var definition in definitions.EnumerateObject())
                root.Definitions[definition.Name] = new();
            foreach (var definition in definitions.EnumerateObject())
                walk.Fill(root.Definitions[definition.Name], definition.Value);
        }

        walk.Fill(root, document.RootElement);
        return root;
    }

    private sealed class Walk(JsonSchema root)
    {
        public void Fill(JsonSchema schema, JsonElement element)
        {
            foreach (var word in element.EnumerateObject())
            {
                var value = word.Value;
                switch (word.Name)
                {
                    case "type":
                        schema.Type = TypeOf(value);
                        break;
                    case "properties":
                        foreach (var property in value.EnumerateObject())
                            Fill(schema.Properties[property.Name] = new(), property.Value);
                        break;
                    case "patternProperties":
                        foreach (var property in value.EnumerateObject())
                            Fill(schema.PatternProperties[property.Name] = new(), property.Value);
                        break;
                    case "additionalProperties":
                        schema.AllowAdditionalProperties = value.GetBoolean();
                        break;
                    case "required":
                        foreach (var name in value.EnumerateArray())
                            schema.RequiredProperties.Add(name.GetString()!);
                        break;
                    case "items":
                        schema.Item = Filled(value);
                        break;
                    case "anyOf":
                        foreach (var part in value.EnumerateArray())
                            schema.AnyOf.Add(Filled(part));
                        break;
                    case "allOf":
                        foreach (var part in value.EnumerateArray())
                            schema.AllOf.Add(Filled(part));
                        break;
                    case "$ref":
                        schema.Reference = root.Definitions[value.GetString()!["#/definitions/".Length..]];
                        break;
                    case "enum":
                        foreach (var entry in value.EnumerateArray())
                            schema.Enumeration.Add(entry.ValueKind == JsonValueKind.Null ? null : entry.GetString());
                        break;
                    case "pattern":
                        schema.Pattern = value.GetString();
                        break;
                    case "minimum":
                        schema.Minimum = value.GetDecimal();
                        break;
                    case "exclusiveMinimum":
                        schema.ExclusiveMinimum = value.GetDecimal();
                        break;
                    case "maximum":
                        schema.Maximum = value.GetDecimal();
                        break;
                    case "minItems":
                        schema.MinItems = value.GetInt32();
                        break;
                    case "maxItems":
                        schema.MaxItems = value.GetInt32();
                        break;
                    case "definitions" or "$schema" or "title" or "description" or "examples":
                        break;
                    default:
                        throw new NotSupportedException($"The schema word {word.Name} is not known here.");
                }
            }
        }

        private JsonSchema Filled(JsonElement element)
        {
            var schema = new JsonSchema();
            Fill(schema, element);
            return schema;
        }

        private static JsonObjectType TypeOf(JsonElement value)
        {
            if (value.ValueKind != JsonValueKind.Array)
                return Single(value);
            var type = JsonObjectType.None;
            foreach (var entry in value.EnumerateArray())
                type |= Single(entry);
            return type;
        }

        private static JsonObjectType Single(JsonElement value) => value.GetString() switch
        {
            "object" => JsonObjectType.Object,
            "array" => JsonObjectType.Array,
            "string" => JsonObjectType.String,
            "number" => JsonObjectType.Number,
            "integer" => JsonObjectType.Integer,
            "boolean" => JsonObjectType.Boolean,
            "null" => JsonObjectType.Null,
            var other => throw new NotSupportedException($"The schema type {other} is not known here."),
        };
    }
}
