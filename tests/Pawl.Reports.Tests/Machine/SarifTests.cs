using System.Text.Json;
using Pawl.Reports.Machine;
using Pawl.Reports.Records;

namespace Pawl.Reports.Tests.Machine;

public sealed class SarifTests
{
    private static JsonElement.ArrayEnumerator Results(JsonElement run) => run.GetProperty("results").EnumerateArray();

    private static string Text(JsonElement element, params string[] path) => path.Aggregate(element, (e, key) => e.GetProperty(key)).GetString()!;

    private static JsonElement Place(JsonElement located) => located.GetProperty("physicalLocation");

    [Fact]
    public void The_log_is_as_approved() => Approved.Match("findings", "sarif", Documents.SarifText(complaints: Documents.Unreadable));

    // SARIF 2.1.0, 3.27.9 and 3.27.10: a level other than none is of kind fail alone.
    [Fact]
    public void Every_outcome_has_its_kind_and_only_a_failure_has_a_level()
    {
        var results = Results(Documents.Sarif(level: TextLevel.Verbose)).Select(r => $"{Text(r, "ruleId")} {Text(r, "kind")} {Text(r, "level")}");

        Assert.Equal(
            ["mesh/tip-clearance fail error", "train/ratio fail error", "assembly/neighbours open none", "mesh/centre-distance pass none", "train/floating pass none", "assembly/positions notApplicable none"],
            results);
    }

    [Theory]
    [InlineData(TextLevel.Quiet, 1)]
    [InlineData(TextLevel.Normal, 3)]
    [InlineData(TextLevel.Verbose, 6)]
    public void How_much_is_said_is_how_much_it_holds(TextLevel level, int results) => Assert.Equal(results, Results(Documents.Sarif(level: level)).Count());

    [Fact]
    public void A_rule_tells_what_it_is_and_every_result_points_at_its_own()
    {
        var run = Documents.Sarif(level: TextLevel.Verbose);
        var rules = run.GetProperty("tool").GetProperty("driver").GetProperty("rules");

        Assert.Equal(6, rules.GetArrayLength());
        Assert.All(Results(run), r => Assert.Equal(Text(r, "ruleId"), Text(rules[r.GetProperty("ruleIndex").GetInt32()], "id")));
        var tip = rules.EnumerateArray().Single(r => Text(r, "id") == "mesh/tip-clearance");
        Assert.Equal("MeshTipClearance", Text(tip, "name"));
        Assert.Equal("The tip stays clear of the mate's root", Text(tip, "shortDescription", "text"));
        Assert.Equal("The tip digs into the root and breaks the tooth.", Text(tip, "fullDescription", "text"));
        Assert.StartsWith("Shorten the addendum or raise the centre distance. Measured: tip_clearance, at least 0.25 * module.", Text(tip, "help", "text"), StringComparison.Ordinal);
        Assert.Contains("- Source of the method: closed form\n", Text(tip, "help", "markdown"), StringComparison.Ordinal);
        Assert.Equal("error", Text(tip, "defaultConfiguration", "level"));
        Assert.Equal("error", Text(tip, "properties", "severity"));
        Assert.True(tip.GetProperty("properties").GetProperty("concedable").GetBoolean());
        var centre = rules.EnumerateArray().Single(r => Text(r, "id") == "mesh/centre-distance");
        Assert.Equal("at most 55 mm", Text(centre, "properties", "limitAsShipped"));
    }

    [Fact]
    public void A_failure_tells_value_limit_and_margin_and_where_it_and_its_inputs_stand()
    {
        var tip = Results(Documents.Sarif()).First();

        Assert.Equal(
            "meshes.sun~planet.sun The tip stays clear of the mate's root: value 0.510 mm at worst (nominal 0.525, 0.510…0.540), limit at least 0.625 mm, margin −18 %.",
            Text(tip, "message", "text"));
        var place = Place(tip.GetProperty("locations")[0]);
        Assert.Equal("specs/tarn-180/r180.yaml", Text(place, "artifactLocation", "uri"));
        Assert.Equal("%SRCROOT%", Text(place, "artifactLocation", "uriBaseId"));
        Assert.Equal("""{"startLine":60,"startColumn":5,"endLine":60,"endColumn":15}""", Compact(place.GetProperty("region")));
        var related = tip.GetProperty("relatedLocations")[0];
        Assert.Equal("meshes.sun~planet.centre_distance = 52.65 mm ±0.015", Text(related, "message", "text"));
        Assert.NotEqual(60, Place(related).GetProperty("region").GetProperty("startLine").GetInt32());
        Assert.True(tip.GetProperty("properties").GetProperty("margin").GetDouble() < 0);
    }

    [Fact]
    public void A_concession_is_a_suppression_with_its_reason_approver_and_end()
    {
        var run = Documents.Sarif();
        var conceded = Assert.Single(Results(run), r => r.TryGetProperty("suppressions", out _));
        var suppression = conceded.GetProperty("suppressions")[0];

        Assert.Equal("train/ratio", Text(conceded, "ruleId"));
        Assert.Equal(("inSource", "accepted"), (Text(suppression, "kind"), Text(suppression, "status")));
        Assert.Equal(
            "Concession until 2027-03-31, down to −5 %, approved by Chief designer: The customer accepts the ratio for the first ten boats",
            Text(suppression, "justification"));
        Assert.Equal(90, Place(suppression.GetProperty("location")).GetProperty("region").GetProperty("startLine").GetInt32());
        Assert.Equal("2027-03-31", Text(suppression, "properties", "expires"));
    }

    [Fact]
    public void What_is_not_evaluated_names_the_reason()
    {
        var open = Assert.Single(Results(Documents.Sarif()), r => Text(r, "kind") == "open");

        Assert.Contains("not evaluated: tip diameter of the planet is not known", Text(open, "message", "text"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_spec_that_cannot_be_read_is_a_notification_with_its_place()
    {
        var run = Documents.Sarif(complaints: Documents.Unreadable);
        var note = run.GetProperty("invocations")[0].GetProperty("toolExecutionNotifications")[0];
        var descriptor = run.GetProperty("tool").GetProperty("driver").GetProperty("notifications")[note.GetProperty("descriptor").GetProperty("index").GetInt32()];

        Assert.Equal("spec/unknown-unit", Text(note, "descriptor", "id"));
        Assert.Equal("spec/unknown-unit", Text(descriptor, "id"));
        Assert.Equal("A unit is not known.", Text(descriptor, "fullDescription", "text"));
        Assert.Equal("error", Text(note, "level"));
        Assert.Equal("`12 Nmm²` has no unit that is known. Did you mean N·mm²?", Text(note, "message", "text"));
        Assert.Equal("specs/gr%C3%B6%C3%9Fe%20b.yaml", Text(Place(note.GetProperty("locations")[0]), "artifactLocation", "uri"));
    }

    [Fact]
    public void Paths_count_from_the_root_of_the_repository()
    {
        var run = Documents.Sarif(project: "gear boxes/tarn");

        Assert.All(Results(run), r => Assert.Equal("gear%20boxes/tarn/specs/tarn-180/r180.yaml", Text(Place(r.GetProperty("locations")[0]), "artifactLocation", "uri")));
        Assert.All(run.GetProperty("artifacts").EnumerateArray(), a => Assert.StartsWith("gear%20boxes/tarn/", Text(a, "location", "uri"), StringComparison.Ordinal));
    }

    [Fact]
    public void Every_finding_has_a_fingerprint_of_its_own_that_numbers_and_lines_do_not_change()
    {
        static IEnumerable<string> Prints(ConformanceRecord record) =>
            Results(Documents.Sarif(record, TextLevel.Verbose)).Select(r => Text(r, "partialFingerprints", Fingerprint.Name));
        var before = Sample.Record();
        var moved = before with
        {
            Findings = [.. before.Findings.Select(f => f with { Place = Down(f.Place), Margin = f.Margin - 0.01 })],
            Inputs = [.. before.Inputs.Select(i => i with { Place = Down(i.Place), Written = i.Written + "0" })],
        };

        Assert.Equal(Prints(before), Prints(moved));
        Assert.Equal(6, Prints(before).Distinct().Count());
        Assert.Empty(Prints(before).Intersect(Prints(before with { Identity = before.Identity with { File = "specs/r181.yaml" } })));
        static PlaceRecord Down(PlaceRecord place) => place with { Line = place.Line + 7, EndLine = place.EndLine + 7 };
    }

    // SARIF 2.1.0, 3.11.5 and 3.11.6: single braces are placeholders, "[text](target)" is a link.
    [Theory]
    [MemberData(nameof(EscapingTests.Attacks), MemberType = typeof(EscapingTests))]
    [InlineData("{0} {1}")]
    [InlineData("[click](https://example.org)")]
    public void A_hostile_text_is_no_link_no_placeholder_no_markup_and_no_command(string attack)
    {
        var text = Documents.SarifText(new Sample { Text = t => attack + t, File = "specs/" + attack + ".yaml" }.ToRecord(), TextLevel.Verbose);

        Assert.DoesNotContain(text, c => c is '<' or '>' or '&' or '\'' || (char.IsControl(c) && c != '\n'));
        Assert.DoesNotContain("##[", text, StringComparison.Ordinal);
        Assert.DoesNotContain(text.Split('\n'), l => l.TrimStart().StartsWith("::", StringComparison.Ordinal));
        using var log = JsonDocument.Parse(text);
        Assert.All(Messages(log.RootElement), message =>
        {
            Assert.DoesNotContain("](", message, StringComparison.Ordinal);
            Assert.DoesNotContain('{', message.Replace("{{", "", StringComparison.Ordinal));
            Assert.DoesNotContain('}', message.Replace("}}", "", StringComparison.Ordinal));
        });
        Assert.All(Uris(log.RootElement), uri => Assert.True(System.Uri.TryCreate(uri, UriKind.Relative, out _) && !uri.Contains(':', StringComparison.Ordinal), uri));
    }

    private static IEnumerable<string> Messages(JsonElement element) => Strings(element, "text");

    private static IEnumerable<string> Uris(JsonElement element) => Strings(element, "uri");

    private static IEnumerable<string> Strings(JsonElement element, string name) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(p => p.Name == name && p.Value.ValueKind == JsonValueKind.String ? [p.Value.GetString()!] : Strings(p.Value, name)),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(e => Strings(e, name)),
        _ => [],
    };

    private static string Compact(JsonElement element) => JsonSerializer.Serialize(element);
}
