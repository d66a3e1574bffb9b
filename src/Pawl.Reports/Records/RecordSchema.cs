using System.ComponentModel.DataAnnotations;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using Pawl.Reports.Comparing;
using Pawl.Reports.Records.Stored;
using Pawl.Specs.Schema;

namespace Pawl.Reports.Records;

/// <summary>The JSON Schema of a record, made from the very contract by which records are written and read.</summary>
/// <remarks>The schemas of specs describe YAML, where <c>3</c> may be a text; in a record a text is a text.</remarks>
public static class RecordSchema
{
    /// <summary>The schemas of this layer, as kept in the folder <c>schema</c>.</summary>
    public static ImmutableArray<SchemaFile> Files { get; } =
    [
        new("record.schema.json", () => Text(StoredSchema.Add(Generate(RecordJson.StoredOptions, typeof(StoredRecord), "Pawl conformance record", "The judgement of one variant as one document. What repeats stands once and is referred to by its number in a list, from 0.")))),
        new("comparison.schema.json", () => Text(Generate(ComparisonJson.SerializerOptions, typeof(ComparisonRecord), "Pawl comparison", "What a change does to every check, as one document."))),
    ];

    internal static JsonObject Generate(JsonSerializerOptions options, Type type, string title, string description)
    {
        var node = options.GetJsonSchemaAsNode(type, new()
        {
            TreatNullObliviousAsNonNullable = true,
            TransformSchemaNode = Describe,
        });

        var schema = new JsonObject
        {
            ["$schema"] = "http://json-schema.org/draft-07/schema#",
            ["title"] = title,
            ["description"] = description,
        };
        foreach (var (key, value) in node.AsObject().ToList())
        {
            node.AsObject().Remove(key);
            schema[key] = value;
        }

        return schema;
    }

    internal static string Text(JsonObject schema) => schema.ToJsonString(RecordJson.SerializerOptions) + "\n";

    private static JsonNode Describe(JsonSchemaExporterContext context, JsonNode schema)
    {
        if (context.TypeInfo.Options == RecordJson.StoredOptions && StoredSchema.Of(context.TypeInfo.Type) is { } reference)
            schema = reference;
        if (schema is not JsonObject members || context.PropertyInfo?.AttributeProvider is not { } property)
            return schema;
        if (property.GetCustomAttributes(typeof(DisplayAttribute), inherit: false) is not [DisplayAttribute display])
            return schema;

        // Draft-07 readers ignore what stands beside a reference; there the words would be lost, not wrong.
        members.Insert(0, "description", display.Description);
        members.Insert(0, "title", display.Name);
        return schema;
    }
}
