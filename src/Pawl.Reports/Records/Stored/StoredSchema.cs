using System.Text.Json.Nodes;

namespace Pawl.Reports.Records.Stored;

/// <summary>What the converters write, in words of JSON Schema.</summary>
internal static class StoredSchema
{
    private const string Definitions = "definitions";

    private static readonly (Type Type, string Name)[] Known =
    [
        (typeof(PlaceRecord), "place"), (typeof(SourceRecord), "rule_source"), (typeof(ValueRecord), "value"), (typeof(StoredName), "name"),
        (typeof(StoredTerm), "term"), (typeof(StoredMeasure), "measure"), (typeof(StoredQuantity), "quantity"),
    ];

    /// <summary>A reference to the definition of a type that a converter writes; null of any other.</summary>
    public static JsonObject? Of(Type type)
    {
        foreach (var (known, name) in Known)
        {
            if (known == type)
                return Reference(name);
        }

        return null;
    }

    /// <summary>The schema with those definitions.</summary>
    public static JsonObject Add(JsonObject schema)
    {
        schema[Definitions] = new JsonObject
        {
            ["number"] = new JsonObject { ["type"] = "integer", ["minimum"] = 0 },
            ["place"] = new JsonObject
            {
                ["description"] = "Number in \"place_files\", line, column, end line where it is another, end column. Lines and columns count from 1; the end is exclusive.",
                ["type"] = "array",
                ["items"] = new JsonObject { ["type"] = "integer" },
                ["minItems"] = 4,
                ["maxItems"] = 5,
            },
            ["rule_source"] = Tuple("How the value is computed and where the limit comes from, as numbers in \"texts\"; how sure the limit is.", 3, Number, Number, Whole("certainty", typeof(CertaintyWord))),
            ["value"] = new JsonObject
            {
                ["description"] = "A number; nominal, least and greatest number over all tolerances; a text; a truth value; or in full. In \"quantities\" the unit stands in the kind.",
                ["anyOf"] = new JsonArray(
                    new JsonObject { ["type"] = new JsonArray("number", "string", "boolean") },
                    new JsonObject { ["type"] = "array", ["items"] = new JsonObject { ["type"] = "number" }, ["minItems"] = 3, ["maxItems"] = 3 },
                    Whole("whole_value", typeof(WholeValue))),
            },
            ["name"] = Either("A number in the list, or a name that is not in it.", Number, new JsonObject { ["type"] = "string" }),
            ["term"] = Either("A number in \"quantities\", the same under another symbol, or a term in full.", Number, Whole("renamed_term", typeof(RenamedTerm)), Whole("whole_term", typeof(TermRecord))),
            ["measure"] = Either("A number in \"quantities\", or in full.", Number, Whole("whole_measure", typeof(WholeMeasure))),
            ["quantity"] = new JsonObject
            {
                ["description"] = "Number in \"quantity_kinds\"; value; terms as numbers in \"quantities\"; where it comes from if it is not merely computed. The last two are left out when empty.",
                ["type"] = "array",
                ["items"] = new JsonArray(
                    Number,
                    Reference("value"),
                    new JsonObject { ["anyOf"] = new JsonArray(new JsonObject { ["type"] = "array", ["items"] = Number }, Whole("origin", typeof(StoredOrigin))) },
                    Whole("origin", typeof(StoredOrigin))),
                ["minItems"] = 2,
                ["maxItems"] = 4,
            },
        };

        foreach (var (name, type) in (ReadOnlySpan<(string, Type)>)
        [
            ("certainty", typeof(CertaintyWord)), ("whole_value", typeof(WholeValue)), ("renamed_term", typeof(RenamedTerm)), ("whole_measure", typeof(WholeMeasure)),
            ("origin", typeof(StoredOrigin)),
        ])
        {
            schema[Definitions]![name] = Exported(name, type);
        }

        schema[Definitions]!["whole_term"] = Exported("whole_term", typeof(TermRecord));
        return schema;
    }

    private static JsonObject Number => Reference("number");

    private static JsonObject Reference(string name) => new() { ["$ref"] = $"#/{Definitions}/{name}" };

    private static JsonObject Whole(string name, Type type) => Of(type) ?? Reference(name);

    private static JsonObject Either(string description, params ReadOnlySpan<JsonNode> shapes) => new() { ["description"] = description, ["anyOf"] = new JsonArray([.. shapes]) };

    private static JsonObject Tuple(string description, int count, params ReadOnlySpan<JsonNode> items) => new()
    {
        ["description"] = description,
        ["type"] = "array",
        ["items"] = new JsonArray([.. items]),
        ["minItems"] = count,
        ["maxItems"] = count,
    };

    private static JsonObject Exported(string name, Type type)
    {
        var schema = RecordSchema.Generate(RecordJson.StoredOptions, type, "", "");
        schema.Remove("$schema");
        schema.Remove("title");
        schema.Remove("description");
        Move(schema, $"#/{Definitions}/{name}");
        return schema;
    }

    // References of a piece are from its own top; in the whole schema it stands below.
    private static void Move(JsonNode? node, string to)
    {
        if (node is JsonArray list)
        {
            foreach (var item in list)
                Move(item, to);
        }
        else if (node is JsonObject members)
        {
            foreach (var (key, value) in members.ToList())
            {
                if (key == "$ref" && value!.GetValue<string>() is var path && !path.StartsWith($"#/{Definitions}/", StringComparison.Ordinal))
                    members[key] = to + path[1..];
                else
                    Move(value, to);
            }
        }
    }
}
