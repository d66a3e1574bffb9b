using System.Text;
using CsCheck;
using NJsonSchema;
using NJsonSchema.Validation;
using Pawl.Specs.Model;
using Pawl.Specs.Reading;
using Pawl.Specs.Schema;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Tests.Schema;

/// <summary>Two judges of a document: the reader, and the JSON Schema by a library of its own. They must agree.</summary>
public sealed class AgreementTests
{
    private static readonly YamlNode Sound = Sample.Loader().Load("r180.yaml").Merged!;
    private static readonly Catalogue Catalogue = Sample.Loader().Catalogue;

    private static readonly JsonSchema Kept = JsonSchema.FromJsonAsync(
        File.ReadAllText(Path.Combine(Sample.Repository(), "schema", "gearbox-whole.schema.json"))).GetAwaiter().GetResult();

    // Faults that a schema cannot tell: relations within the document, the forms of tolerances, the calendar.
    private static readonly string[] BeyondSchema =
    [
        DiagnosticCodes.AllowanceOrder, DiagnosticCodes.DuplicateName, DiagnosticCodes.ExclusiveKeys, DiagnosticCodes.InternalPair,
        DiagnosticCodes.NoCase, DiagnosticCodes.NotInCatalogue, DiagnosticCodes.OneWay, DiagnosticCodes.RepeatedMesh, DiagnosticCodes.SelfCarried, DiagnosticCodes.SelfMesh, DiagnosticCodes.SpectrumSum,
        DiagnosticCodes.TemperatureOrder, DiagnosticCodes.UnknownBody, DiagnosticCodes.UnknownGear,
    ];

    // Faults of which a schema tells some: the form of a tolerance, a date that the calendar does not have.
    private static readonly string[] PartlyBeyondSchema = [DiagnosticCodes.MalformedTolerance, DiagnosticCodes.NotADate];

    private static readonly string[] Values =
    [
        "", "null", "~", "true", "yes", "0", "1", "-1", "3", "2001", "10000", "1.5", "0.15", "-3.5", "30.0", "1e3", "010", "0x1F", "1:30", ".nan", ".inf",
        "'1'", "'2.5'", "''", "' '", "x", "2nd", "a b", "input_sun", "carrier", "left", "iso", "both", "m", "f", "9/5", "9/0", "2.5 mm", "60 mm H7", "24 mm ±0.1",
        "15 %", "20°", "80 °C", "190 N·m", "8200 rpm", "4000 h", "0.3 kg", "12 apples", "mm", "2027-03-31", "2027-3-1", "2027-02-30", "[]", "[1]", "[a, b]",
        "[input_sun, long]", "[a, b, c]", "{}", "{a: 1}", "{a: {}}", "[[]]", "[null]", "[{}]", "99999999999999999999", "1e999", "carburised-9310", "\"a\\nb\"",
        "58..62 HRC", "60 HRA", "80 HRC", "60", "700 HV10", "Rc 60", "case-hardened", "through-hardened", "spline", "MQ", "one", "0.4 mm ±0.5",
    ];

    private static readonly string[] Keys = ["teeth", "on", "gears", "module", "x", "Teeth", "2nd", "count", "carrier", "input", "pawl", "hand", "helix_angle"];

    private static readonly ImmutableArray<YamlNode> Pool = [.. Values.Select(Parse)];

    [Fact]
    public void Reader_and_schema_accept_the_sound_document()
    {
        Assert.Empty(Read(Sound));
        Assert.Empty(Judge(Sound, Kept));
        Assert.Empty(Judged(Sound));
    }

    [Fact]
    public void Reader_and_schema_agree_on_every_single_value_of_the_document()
    {
        var count = Count(Sound);
        for (var place = 0; place < count; place++)
        {
            foreach (var value in Pool)
            {
                var at = place;
                Compare(Change(Sound, ref at, _ => value)!);
            }

            var dropped = place;
            if (Change(Sound, ref dropped, _ => null) is { } without)
                Compare(without);
        }
    }

    [Fact]
    public void Reader_and_schema_agree_on_documents_with_several_changes() =>
        Gen.Select(Gen.Int[0, 2], Gen.Int[0, 10_000], Gen.Int[0, 10_000]).Array[1, 6].Sample(
            changes =>
            {
                var tree = Sound;
                foreach (var (kind, place, choice) in changes)
                {
                    var at = place % Count(tree);
                    tree = Change(tree, ref at, node => kind switch
                    {
                        0 => Pool[choice % Pool.Length],
                        1 => null,
                        _ => Renamed(node, choice),
                    }) ?? tree;
                }

                Compare(tree);
            },
            iter: 3000);

    private static void Compare(YamlNode tree)
    {
        var found = Read(tree);
        var byLibrary = Judge(tree, Kept);
        var isValid = byLibrary.Count == 0;

        // The kept schema, read fast, judges as the library's own reading of it does.
        Assert.True(isValid == (Judged(tree).Count == 0), Show(tree));

        if (!isValid)
            Assert.True(found.Exists(diagnostic => !BeyondSchema.Contains(diagnostic.Code)), $"The schema refuses what the reader takes: {string.Join("; ", byLibrary)}\n{Show(tree)}");
        else
            Assert.All(found, diagnostic => Assert.True(IsBeyondSchema(diagnostic), $"The schema takes what the reader refuses: {diagnostic}"));
    }

    private static bool IsBeyondSchema(Diagnostic diagnostic) => diagnostic.Code switch
    {
        // A gear needs a module or a pitch, a helical one a hand.
        DiagnosticCodes.MissingKey => diagnostic.Message.Contains("`module`", StringComparison.Ordinal) || diagnostic.Message.Contains("`hand`", StringComparison.Ordinal),

        // Amounts and fractions are texts to a schema; plain numbers are not.
        DiagnosticCodes.OutOfRange => !diagnostic.Message.Contains("number from", StringComparison.Ordinal) || diagnostic.Message.Contains('/', StringComparison.Ordinal),

        // A share too large for a double, as in 1e999 %.
        DiagnosticCodes.NotFinite => diagnostic.Message.Contains("no finite number", StringComparison.Ordinal),

        // As many positions as planets.
        DiagnosticCodes.WrongCount => diagnostic.Message.Contains("planets", StringComparison.Ordinal),
        var code => BeyondSchema.Contains(code) || PartlyBeyondSchema.Contains(code),
    };

    private static List<Diagnostic> Read(YamlNode tree)
    {
        List<Diagnostic> found = [];
        GearboxReader.Read(tree, "r180.yaml", [], Catalogue, found);
        return found;
    }

    private static ICollection<ValidationError> Judge(YamlNode tree, JsonSchema schema) =>
        new JsonSchemaValidator(new JsonSchemaValidatorSettings { FormatValidators = [] }).Validate(new TreeToJson().Convert(tree), schema);

    private static List<Diagnostic> Judged(YamlNode tree)
    {
        List<Diagnostic> found = [];
        SchemaValidator.Gearbox.Validate(tree, found);
        return found;
    }

    private static YamlNode Parse(string text)
    {
        var diagnostics = new List<Diagnostic>();
        var map = (YamlMap)YamlReader.Read("pool", Encoding.UTF8.GetBytes("v: " + text), diagnostics)!;
        return map.Find("v")!;
    }

    private static int Count(YamlNode node) => 1 + node switch
    {
        YamlMap map => map.Entries.Sum(entry => Count(entry.Value)),
        YamlList list => list.Items.Sum(Count),
        _ => 0,
    };

    /// <summary>The tree with the node at a place, counted in the order of the text, put through a change; null drops it.</summary>
    private static YamlNode? Change(YamlNode node, ref int place, Func<YamlNode, YamlNode?> change)
    {
        if (place-- == 0)
            return change(node);
        if (node is YamlMap map)
        {
            var entries = ImmutableArray.CreateBuilder<KeyValuePair<YamlScalar, YamlNode>>();
            foreach (var (key, value) in map.Entries)
            {
                if ((place < 0 ? value : Change(value, ref place, change)) is { } changed)
                    entries.Add(new(key, changed));
            }

            return map with { Entries = entries.ToImmutable() };
        }

        if (node is YamlList list)
        {
            var items = ImmutableArray.CreateBuilder<YamlNode>();
            foreach (var item in list.Items)
            {
                if ((place < 0 ? item : Change(item, ref place, change)) is { } changed)
                    items.Add(changed);
            }

            return list with { Items = items.ToImmutable() };
        }

        return node;
    }

    private static YamlNode Renamed(YamlNode node, int choice)
    {
        if (node is not YamlMap { Entries.Length: > 0 } map)
            return node;
        var index = choice % map.Entries.Length;
        var name = Keys[choice % Keys.Length];
        if (map.Find(name) is not null)
            return node;
        var (key, value) = map.Entries[index];
        return map with { Entries = map.Entries.SetItem(index, new(key with { Value = name }, value)) };
    }

    private static string Show(YamlNode tree) => new TreeToJson().Convert(tree).ToString();
}
