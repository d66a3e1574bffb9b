using System.Text;
using System.Text.Json;
using NJsonSchema;
using Pawl.Specs.Model;
using Pawl.Specs.Schema;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Tests.Schema;

public sealed class SchemaTests
{
    private static string Folder => Path.Combine(Sample.Repository(), "schema");

    private static Task<JsonSchema> Kept(string name) =>
        JsonSchema.FromJsonAsync(File.ReadAllText(Path.Combine(Folder, name)), TestContext.Current.CancellationToken);

    private static YamlNode Tree(string text)
    {
        List<Diagnostic> diagnostics = [];
        var tree = YamlReader.Read("f.yaml", Encoding.UTF8.GetBytes(text), diagnostics);
        Assert.Empty(diagnostics);
        return tree!;
    }

    [Fact]
    public void The_kept_schemas_are_what_the_types_say() => Assert.Empty(SchemaFiles.Stale(Folder, SchemaFiles.Specs));

    [Fact]
    public void A_missing_and_a_changed_file_are_stale_until_written()
    {
        using var project = new Files.Project();
        ImmutableArray<SchemaFile> files = [new("a.json", () => "{}\n"), new("b.json", () => "[]\n")];
        project.With("a.json", "{ }\n");

        Assert.Equal(["a.json", "b.json"], SchemaFiles.Stale(project.Root, files));
        Assert.Equal(["a.json", "b.json"], SchemaFiles.Write(project.Root, files));
        Assert.Empty(SchemaFiles.Stale(project.Root, files));
        Assert.Empty(SchemaFiles.Write(project.Root, files));
    }

    [Theory]
    [InlineData("gearbox.schema.json", "r180.yaml")]
    [InlineData("gearbox.schema.json", "family.yaml")]
    [InlineData("catalogue.schema.json", "catalogue/materials.yaml")]
    [InlineData("catalogue.schema.json", "catalogue/lubricants.yaml")]
    public async Task The_editor_schema_accepts_every_file_of_the_sample(string schema, string file) =>
        Assert.Empty((await Kept(schema)).Validate(new TreeToJson().Convert(Tree(Sample.Read(file)))));

    [Theory]
    [InlineData("motor-flange-a")]
    [InlineData("shaft-coupling-b")]
    [InlineData("mount-c")]
    public async Task The_schema_of_adapters_accepts_those_of_the_demo_range(string adapter) => Assert.Empty(
        (await Kept("adapter.schema.json")).Validate(new TreeToJson().Convert(Tree(
            File.ReadAllText(Path.Combine(Sample.Repository(), "specs", "adapters", adapter + ".yaml"))))));

    [Fact]
    public async Task The_schema_of_catalogues_accepts_the_steels_that_ship_inside() => Assert.Empty(
        (await Kept("catalogue.schema.json")).Validate(new TreeToJson().Convert(Tree(
            File.ReadAllText(Path.Combine(Sample.Repository(), "rules", "catalogue", "steels.yaml"))))));

    [Theory]
    [InlineData("train: {planets: {a: null}}")]
    [InlineData("train: null")]
    [InlineData("train: {gears: {a: {teeth: null, surface: null}}}")]
    [InlineData("train: {gears: {a: {heat_treatment: {case_depth: null}}}}")]
    [InlineData("train: {gears: {a: {heat_treatment: null}}}")]
    [InlineData("ratio: {target: 9/5}")]
    [InlineData("train: {gears: {a: {face_width: null, tip_diameter: 80.6 mm h8, axial_position: -3 mm, root_diameter: 2 1/2 in}}}")]
    [InlineData("train: {gears: {a: {face_width: 24 ±0.1 mm, tip_diameter: 2.9 mm (2.85..2.95), root_diameter: 25 mm +0.021/0, root_form_diameter: '1-1/2\"'}}}")]
    [InlineData("train: {gears: {a: {thickness_allowance: {upper: 0 mm, lower: −0.1 mm}, helix_angle: 20° 30′ 15″}}}")]
    [InlineData("duty: {input: {torque: 140 ft-lb, speed: 8200 1/min}}")]
    [InlineData("duty: {input: {torque: 0.2 kN*mm, radial_force: 3 kg·m/s², speed: null}}")]
    [InlineData("duty: {oil: {running: -40 °C}, reliability: 95 %}")]
    [InlineData("ratio: {target: null}")]
    [InlineData("extends: [a.yaml, b.yaml]")]
    public async Task The_editor_schema_lets_a_variant_remove_and_leave_out(string line) =>
        Assert.Empty((await Kept("gearbox.schema.json")).Validate(new TreeToJson().Convert(Tree("pawl: 1\n" + line))));

    [Theory]
    [InlineData("trian: {}")]
    [InlineData("train: {gears: {2nd: {}}}")]
    [InlineData("train: {gears: {a: {teeth: 1.5}}}")]
    [InlineData("train: {gears: {a: {teeth: 10000}}}")]
    [InlineData("train: {gears: {a: {module: 2.5}}}")]
    [InlineData("train: {meshes: [{}]}")]
    [InlineData("duty: {input: {direction: botth}}")]
    [InlineData("concessions: [{rule: a}]")]
    [InlineData("train: {gears: {a: {heat_treatment: {treatment: carburised}}}}")]
    [InlineData("train: {gears: {a: {heat_treatment: {surface_hardness: 60}}}}")]
    [InlineData("train: {gears: {a: {heat_treatment: {surface_hardness: 82 HRA}}}}")]
    [InlineData("train: {gears: {a: {accuracy_grade: 13}}}")]
    [InlineData("train: {planets: {a: {load_sharing: 0.9}}}")]
    [InlineData("duty: {safety: {bending: 0}}")]
    [InlineData("train: {gears: {a: {face_width: -24 mm}}}")]
    [InlineData("train: {gears: {a: {face_width: 0 mm}}}")]
    [InlineData("train: {gears: {a: {face_width: 24 apples}}}")]
    [InlineData("train: {gears: {a: {face_width: 24 kg}}}")]
    [InlineData("train: {gears: {a: {face_width: 24 apples H7}}}")]
    [InlineData("train: {gears: {a: {thickness_allowance: {upper: 0.06 mm, lower: -0.1 mm}}}}")]
    [InlineData("duty: {input: {torque: 190 N}}")]
    [InlineData("duty: {input: {torque: 190 N/mm}}")]
    [InlineData("duty: {oil: {running: 80 K}}")]
    [InlineData("duty: {reliability: -95 %}")]
    public async Task The_editor_schema_refuses_what_no_base_can_mend(string line) =>
        Assert.NotEmpty((await Kept("gearbox.schema.json")).Validate(new TreeToJson().Convert(Tree("pawl: 1\n" + line))));

    [Fact]
    public void Every_key_of_every_schema_has_a_title_and_a_description()
    {
        foreach (var file in SchemaFiles.Specs)
        {
            using var document = JsonDocument.Parse(file.Generate());
            var root = document.RootElement;
            Check(file.Name, root);
            if (root.TryGetProperty("definitions", out var definitions))
            {
                foreach (var definition in definitions.EnumerateObject())
                {
                    // What is no object is the pattern of a quantity.
                    if (definition.Value.TryGetProperty("properties", out _))
                        Check($"{file.Name} {definition.Name}", definition.Value);
                    else
                        Assert.True(definition.Value.TryGetProperty("pattern", out _), $"{file.Name} {definition.Name}");
                }
            }
        }

        static void Check(string where, JsonElement type)
        {
            foreach (var property in type.GetProperty("properties").EnumerateObject())
            {
                Assert.True(property.Value.TryGetProperty("title", out _), $"{where}.{property.Name} has no title");
                Assert.True(property.Value.TryGetProperty("description", out var text) && text.GetString()!.Length > 1, $"{where}.{property.Name} has no description");
            }
        }
    }

    // What editors offer as examples must be what the reader takes.
    [Fact]
    public void Every_example_in_the_model_is_of_the_dimension_that_it_illustrates()
    {
        foreach (var type in typeof(GearboxSpec).Assembly.GetTypes())
        {
            foreach (var property in type.GetProperties())
            {
                if (property.PropertyType == typeof(Stated<Quantities.Hardness>) && Attribute.GetCustomAttribute(property, typeof(ExampleAttribute)) is ExampleAttribute example)
                    Assert.True(Quantities.Hardness.TryParse(example.Text, out _, out _), $"{type.Name}.{property.Name}: {example.Text}");
                if (Attribute.GetCustomAttribute(property, typeof(MeasuresAttribute)) is not MeasuresAttribute measures)
                    continue;
                var dimension = (Quantities.Dimension)typeof(Quantities.Dimension).GetField(measures.Dimension)!.GetValue(null)!;
                Assert.True(Quantities.Toleranced.TryParse(measures.Example, out var value, out _), $"{type.Name}.{property.Name}: {measures.Example}");
                Assert.Equal(dimension, value.Nominal.Dimension);
            }
        }
    }

    [Fact]
    public void The_fast_reader_of_schemas_refuses_a_word_that_it_does_not_know() =>
        Assert.Throws<NotSupportedException>(() => SchemaText.Read(new MemoryStream("""{"not": {}}"""u8.ToArray())));

    [Theory]
    [InlineData("Teeth", "teeth")]
    [InlineData("CentreDistance", "centre_distance")]
    [InlineData("Viscosity40", "viscosity_40")]
    [InlineData("Viscosity100", "viscosity_100")]
    [InlineData("Bore2Depth", "bore_2_depth")]
    public void Keys_follow_from_the_names_of_properties(string property, string key) => Assert.Equal(key, PropertyName.Of(property));
}
