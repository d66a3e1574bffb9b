using System.Text;
using System.Text.Json.Nodes;
using NJsonSchema;
using Pawl.Rules.Schema;
using Pawl.Specs.Schema;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Rules.Tests;

/// <summary>The schema of rule packs, put to the packs by a library of its own.</summary>
public class SchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromJsonAsync(RuleSchemas.Files[0].Generate()).GetAwaiter().GetResult();

    private static string Repository()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Pawl.slnx")))
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("The tests run outside the repository.");
        return folder;
    }

    private static string Json(string yaml)
    {
        var diagnostics = new List<Diagnostic>();
        var tree = YamlReader.Read("p.yaml", Encoding.UTF8.GetBytes(yaml), diagnostics)!;
        Assert.Empty(diagnostics);
        return Node(tree)!.ToJsonString();
    }

    private static JsonNode? Node(YamlNode node) => node switch
    {
        YamlMap map => new JsonObject(map.Entries.Select(e => KeyValuePair.Create(e.Key.Value, Node(e.Value)))),
        YamlList list => new JsonArray([.. list.Items.Select(Node)]),
        YamlScalar { IsQuoted: false, Value: "true" or "false" } truth => JsonValue.Create(truth.Value == "true"),
        YamlScalar { IsQuoted: false } number when double.TryParse(number.Value, System.Globalization.CultureInfo.InvariantCulture, out var value) => JsonValue.Create(value),
        YamlScalar scalar => JsonValue.Create(scalar.Value),
        _ => null,
    };

    [Fact]
    public void The_kept_schema_is_what_the_types_say() =>
        Assert.Empty(SchemaFiles.Stale(Path.Combine(Repository(), "schema"), RuleSchemas.Files));

    [Theory]
    [InlineData("train")]
    [InlineData("mesh")]
    [InlineData("concession")]
    public void The_schema_accepts_every_shipped_pack(string pack) =>
        Assert.Empty(Schema.Validate(Json(File.ReadAllText(Path.Combine(Repository(), "rules", $"{pack}.yaml")))));

    [Fact]
    public void The_schema_accepts_an_override_and_nested_tables() =>
        Assert.Empty(Schema.Validate(Json(
            "pack: house\nversion: 1.0.0\ntitle: x\nrules: [{id: mesh/a, override: true, reason: x, approved_by: y, at_least: {by: kind, a: {by: kind, b: 1 mm}, default: 2}}]")));

    [Theory]
    [InlineData("at_lest: 1")]
    [InlineData("severity: grave")]
    [InlineData("applies_to: wheel")]
    [InlineData("at_least: [1]")]
    [InlineData("at_least: {a: 1}")]
    [InlineData("id: Mesh")]
    public void The_schema_refuses_what_the_reader_refuses(string line)
    {
        var key = line[..line.IndexOf(':', StringComparison.Ordinal)];
        var sound = Try.Pack("measure: overlap_ratio\nat_least: 1").Split('\n').Where(l => !l.TrimStart(' ', '-').StartsWith($"{key}:", StringComparison.Ordinal));
        var text = string.Join('\n', sound).Replace("    title: Tried", $"    title: Tried\n    {line}", StringComparison.Ordinal);
        text = key == "id" ? text.Replace("    title: Tried", "  - title: Tried", StringComparison.Ordinal) : text;

        Assert.NotEmpty(Schema.Validate(Json(text)));
        Assert.Null(RulePacks.LoadTexts(("rules/house.yaml", text)).Rules);
    }
}
