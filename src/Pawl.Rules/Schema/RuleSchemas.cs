using NJsonSchema;
using Pawl.Specs.Schema;

namespace Pawl.Rules.Schema;

/// <summary>The schema of rule packs, generated from <see cref="RulePackFile"/>, the vocabulary of subjects and the shape of limits.</summary>
public static class RuleSchemas
{
    /// <summary>Those of this layer, kept in the folder <c>schema</c>.</summary>
    public static ImmutableArray<SchemaFile> Files { get; } = [new("rules.schema.json", () => SchemaFiles.Render(Generate()))];

    private static JsonSchema Generate()
    {
        var root = new SchemaGenerator(SchemaPurpose.Whole).Generate(
            typeof(RulePackFile), "Pawl rule pack", "Rules as data: what is measured, its limit, its source, why it matters and how to mend it.");
        var rule = root.Definitions[nameof(RuleEntry)];
        var limit = Limit();
        root.Definitions["Limit"] = limit;

        // A C# member cannot be called `Equals`.
        rule.Properties["equals"] = rule.Properties["equal_to"];
        rule.Properties.Remove("equal_to");
        foreach (var key in (ReadOnlySpan<string>)["at_least", "at_most", "equals"])
            Refer(rule.Properties[key], limit);
        Reshape(rule.Properties["one_of"]);
        rule.Properties["one_of"].AnyOf.Add(new() { Type = JsonObjectType.Array, MinItems = 1, Item = new() { Type = JsonObjectType.String } });
        rule.Properties["one_of"].AnyOf.Add(new() { Reference = limit });

        rule.Properties["id"].Type = JsonObjectType.String;
        rule.Properties["id"].Pattern = "^[a-z][a-z0-9]*(-[a-z0-9]+)*/[a-z][a-z0-9]*(-[a-z0-9]+)*$";
        rule.Properties["applies_to"].Type = JsonObjectType.String;
        rule.Properties["applies_to"].Pattern = null;
        foreach (var kind in JudgedKinds.All)
            rule.Properties["applies_to"].Enumeration.Add(kind.Name);

        var given = root.Definitions[nameof(ExampleEntry)].Properties["given"];
        Reshape(given);
        given.Type = JsonObjectType.Object;
        given.AdditionalPropertiesSchema = new() { Type = JsonObjectType.String | JsonObjectType.Number | JsonObjectType.Boolean };
        rule.ExtensionData = new Dictionary<string, object?>
        {
            ["if"] = new
            {
                required = (string[])["override"],
                properties = new Dictionary<string, object> { ["override"] = new Dictionary<string, object> { ["const"] = true } },
            },
            ["then"] = new { required = (string[])["reason", "approved_by"] },
            ["else"] = new { required = (string[])["title", "applies_to", "measure", "severity", "source", "why", "mend"] },
        };
        return root;
    }

    private static JsonSchema Limit()
    {
        var limit = new JsonSchema { Description = "An amount with its unit, a quantity, an expression, or a table by category." };
        var table = new JsonSchema { Type = JsonObjectType.Object, AdditionalPropertiesSchema = new() { Reference = limit } };
        table.Properties["by"] = new() { Type = JsonObjectType.String, Description = "The text or truth quantity that the table goes by." };
        table.RequiredProperties.Add("by");
        limit.AnyOf.Add(new() { Type = JsonObjectType.String | JsonObjectType.Number | JsonObjectType.Boolean });
        limit.AnyOf.Add(table);
        return limit;
    }

    private static void Refer(JsonSchemaProperty property, JsonSchema schema)
    {
        Reshape(property);
        property.AllOf.Add(new() { Reference = schema });
    }

    private static void Reshape(JsonSchemaProperty property)
    {
        property.Type = JsonObjectType.None;
        property.Pattern = null;
    }
}
