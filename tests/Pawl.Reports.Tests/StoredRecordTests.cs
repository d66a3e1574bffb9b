using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using System.Text.Json.Nodes;
using NJsonSchema;
using Pawl.Analysis;
using Pawl.Reports.Records;
using Pawl.Rules;
using Pawl.Specs;

namespace Pawl.Reports.Tests;

/// <summary>The record as a file: nothing is lost, nothing repeats, and nothing that is wrong with it passes.</summary>
public sealed class StoredRecordTests
{
    private static readonly SpecLoader Loader = new(
        Root(), ["specs/catalogue/materials.yaml", "specs/catalogue/lubricants.yaml", "specs/catalogue/bearings.yaml"], adapterPaths: [.. Adapters()]);

    public static TheoryData<string> Specs => [.. Directory.EnumerateFiles(Path.Combine(Root(), "specs"), "*.yaml", SearchOption.AllDirectories)
        .Select(static path => Path.GetRelativePath(Root(), path).Replace('\\', '/')).Where(static path => !path.Contains("/catalogue/", StringComparison.Ordinal) && !path.Contains("/adapters/", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

    private static string Root([CallerFilePath] string file = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(file)!, "..", ".."));

    private static IEnumerable<string> Adapters() => Directory.EnumerateFiles(Path.Combine(Root(), "specs", "adapters"), "*.yaml")
        .Select(static path => Path.GetRelativePath(Root(), path).Replace('\\', '/')).Order(StringComparer.Ordinal);

    private static ConformanceRecord? Record(string path) => Loader.Load(path).Spec is { } spec
        ? RecordBuilder.Build(Judge.Of(GearboxAnalyser.Analyse(spec), RulePacks.Shipped.Rules!, new(2026, 1, 15)))
        : null;

    [Theory]
    [MemberData(nameof(Specs))]
    public void Nothing_is_lost_in_a_file(string path)
    {
        if (Record(path) is not { } record)
            return;

        var back = ConformanceRecord.Read(record.ToJson());

        Assert.Equal(Encoding.UTF8.GetString(RecordJson.Whole(record)), Encoding.UTF8.GetString(RecordJson.Whole(back)));
        Assert.Equal(record.ToJson(), back.ToJson());
    }

    // A megabyte: what people still send by mail and keep beside a spec. Written in full it has more than eight.
    [Fact]
    public void The_record_of_R180_has_at_most_a_megabyte()
    {
        var size = Encoding.UTF8.GetByteCount(Record("specs/tarn-180/r180.yaml")!.ToJson());

        Assert.InRange(size, 100_000, 1_000_000);
    }

    [Fact]
    public async Task The_record_of_R180_follows_the_schema()
    {
        var schema = await JsonSchema.FromJsonAsync(await File.ReadAllTextAsync(Path.Combine(Root(), "schema", "record.schema.json"), TestContext.Current.CancellationToken), TestContext.Current.CancellationToken);

        Assert.Empty(schema.Validate(Record("specs/tarn-180/r180.yaml")!.ToJson()));
        Assert.NotEmpty(schema.Validate(Record("specs/tarn-180/r180.yaml")!.ToJson().Replace("\"outcome\":\"fails\"", "\"outcome\":\"passes\"", StringComparison.Ordinal)));
    }

    private static string Altered(Action<JsonObject> change)
    {
        var json = JsonNode.Parse(Record("specs/tarn-120/r400.yaml")!.ToJson())!.AsObject();
        change(json);
        return json.ToJsonString();
    }

    public static TheoryData<string, Action<JsonObject>, string> Wrong => new()
    {
        { "a rule that is not there", static json => json["findings"]![3]!["rule"] = 100_000, "$.findings[3].rule" },
        { "a subject below zero", static json => json["findings"]![3]!["subject"] = -1, "$.findings[3].subject" },
        { "a measure that is not there", static json => json["findings"]![3]!["measured"] = 100_000, "$.findings[3].measured" },
        { "a governing input that is not there", static json => json["findings"]![3]!["governing"] = new JsonArray(100_000), "$.findings[3].governing[0]" },
        { "a reason that is not there", static json => json["findings"]![3]!["reasons"] = new JsonArray(100_000), "$.findings[3].reasons[0]" },
        { "a file of a place that is not there", static json => json["findings"]![3]!["place"]![0] = 100_000, "$.findings[3].place" },
        { "a place that is a text", static json => json["findings"]![3]!["place"] = "here", "$.findings[3].place" },
        { "no place", static json => json["findings"]![3]!.AsObject().Remove("place"), "$.findings[3]" },
        { "a rule by an unknown id and without a title", static json => json["findings"]![3]!["rule"] = "who/knows", "$.findings[3].title" },
        { "null", static json => json["findings"]![3] = null, "$.findings[3]" },
        { "a kind that is not there", static json => json["quantities"]![5]![0] = 100_000, "$.quantities[5]" },
        { "a quantity that comes about by itself", static json => json["quantities"]![5] = new JsonArray(0, 1.5, new JsonArray(5)), "$.quantities[5].terms[0]" },
        { "two quantities that come about by each other", static json => (json["quantities"]![5], json["quantities"]![6]) = (new JsonArray(0, 1.5, new JsonArray(6)), new JsonArray(0, 1.5, new JsonArray(5))), "comes about by itself" },
        { "a term that is not there", static json => json["quantities"]![5] = new JsonArray(0, 1.5, new JsonArray(-3)), "$.quantities[5].terms[0]" },
        { "a quantity that is no list", static json => json["quantities"]![5] = 7, "$.quantities[5]" },
        { "subjects that overlap", static json => json["subjects"]![1]!["first"] = 0, "$.subjects[1].first" },
        { "more quantities than there are", static json => json["subjects"]![0]!["count"] = int.MaxValue, "$.subjects[0].count" },
        { "a quantity of no subject", static json => json["quantities"]!.AsArray().Add(new JsonArray(0, 1)), "No subject has this quantity" },
        { "a source that is not there", static json => json["quantity_kinds"]![0]!["source"] = 100_000, "$.quantity_kinds[0].source" },
        { "a method that is not there", static json => json["rules"]![0]!["source"]![0] = 100_000, "$.rules[0].source" },
        { "an assumption of nothing", static json => json["assumptions"]![0]!["quantity"] = 100_000, "$.assumptions[0].quantity" },
        { "a long text, many times", static json => LongText(json), "more text than any record has" },
    };

    private static void LongText(JsonObject json)
    {
        json["texts"]![0] = new string('x', 300_000);
        json["findings"]![3]!["reasons"] = new JsonArray([.. Enumerable.Range(0, 1000).Select(static _ => (JsonNode)0)]);
    }

    [Theory]
    [MemberData(nameof(Wrong))]
    public void What_is_wrong_is_refused_with_its_path(string what, Action<JsonObject> change, string path)
    {
        var refused = Assert.Throws<FormatException>(() => ConformanceRecord.Read(Altered(change)));

        Assert.True(refused.Message.Contains(path, StringComparison.Ordinal), $"{what}: {refused.Message}");
    }

    [Fact]
    public void What_is_spoilt_at_random_is_read_or_refused_and_no_more()
    {
        string[] pieces = ["0", "-1", "99999", "1e999", "null", "\"\"", "[]", "{}", "[0,[0]]", "true", "}", "\"x\":1,", "4294967296"];
        var random = new Random(11);
        var json = Record("specs/tarn-120/r400.yaml")!.ToJson();
        var (read, refused) = (0, 0);
        for (var run = 0; run < 150; run++)
        {
            var spoilt = new StringBuilder(json);
            for (var i = random.Next(1, 3); i > 0; i--)
            {
                var at = random.Next(json.Length - 100);
                while (spoilt[at] is not (',' or '[' or ':'))
                    at++;
                var end = at + 1;
                while (spoilt[end] is not (',' or ']' or '}'))
                    end++;
                spoilt.Remove(at + 1, end - at - 1).Insert(at + 1, pieces[random.Next(pieces.Length)]);
            }

            try
            {
                Assert.NotEmpty(RecordJson.Whole(ConformanceRecord.Read(spoilt.ToString())));
                read++;
            }
            catch (FormatException)
            {
                refused++;
            }
        }

        Assert.True(read > 0 && refused > 0, string.Create(CultureInfo.InvariantCulture, $"{read} read, {refused} refused"));
    }
}
