using System.Runtime.CompilerServices;
using NJsonSchema;
using Pawl.Reports.Records;

namespace Pawl.Reports.Tests;

public sealed class RecordTests
{
    [Fact]
    public void A_record_reads_back_as_it_was_written()
    {
        var json = Sample.Record().ToJson();

        Assert.Equal(json, ConformanceRecord.Read(json).ToJson());
    }

    [Fact]
    public void A_record_with_odd_characters_reads_back()
    {
        var json = new Sample { Text = text => text + "\u001B[31m\"\\\u202E<&>\u2028 \u00E9\U0001F680" }.ToRecord().ToJson();

        Assert.Equal(json, ConformanceRecord.Read(json).ToJson());
    }

    [Fact]
    public void Two_builds_of_the_same_judgement_are_the_same_bytes() =>
        Assert.Equal(Sample.Record().ToJson(), Sample.Record().ToJson());

    [Fact]
    public void A_record_ends_in_a_line_feed_and_holds_no_carriage_return()
    {
        var json = Sample.Record().ToJson();

        Assert.EndsWith("}\n", json, StringComparison.Ordinal);
        Assert.DoesNotContain('\r', json);
    }

    [Fact]
    public void A_concession_tells_the_variants_that_it_names()
    {
        var record = Sample.Record();
        var named = record with
        {
            Findings = [.. record.Findings.Select(f => f.Concession is null ? f : f with { Concession = f.Concession with { Variants = ["R148", "R180"] } })],
        };
        using var text = new StringWriter();
        new TextReport().Write(named, text);

        Assert.Contains(", down to −5 %, for R148, R180, approved by", text.ToString(), StringComparison.Ordinal);
        Assert.Contains("- For the variants R148, R180\n- Stated at", Markdown.MarkdownReport.Render(named), StringComparison.Ordinal);
        Assert.Contains("For the variants R148, R180", Html.HtmlReport.Render(named), StringComparison.Ordinal);
        Assert.Equal(named.ToJson(), ConformanceRecord.Read(named.ToJson()).ToJson());
        Assert.DoesNotContain("For the variants", Markdown.MarkdownReport.Render(record), StringComparison.Ordinal);
    }

    [Fact]
    public void A_build_that_was_told_its_revision_says_so_and_no_other()
    {
        var judgement = new Sample().ToJudgement();
        var tool = new ToolRecord { Name = "pawl", Version = "1.2.3" };
        var plain = RecordBuilder.Build(judgement, tool);
        var traced = RecordBuilder.Build(judgement, tool with { Revision = "4b825dc642cb6eb9a060e54bf8d69288fbee4904" });

        Assert.DoesNotContain("\"revision\":\"4b825dc", plain.ToJson(), StringComparison.Ordinal);
        Assert.Contains("\"revision\":\"4b825dc642cb6eb9a060e54bf8d69288fbee4904\"", traced.ToJson(), StringComparison.Ordinal);
        Assert.NotEqual(plain.Id, traced.Id);
        Assert.Contains("| Tool | pawl 1.2.3 (revision 4b825dc642cb6eb9a060e54bf8d69288fbee4904) |", Markdown.MarkdownReport.Render(traced), StringComparison.Ordinal);
        Assert.Contains("| Tool | pawl 1.2.3 |", Markdown.MarkdownReport.Render(plain), StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_of_rules_as_shipped_says_nothing_of_deviations()
    {
        var judgement = new Sample().ToJudgement();
        var asShipped = judgement with { Rules = judgement.Rules with { Rules = [.. judgement.Rules.Rules.Select(r => r with { Shipped = null, Deviation = null })] } };

        var record = RecordBuilder.Build(asShipped, Sample.Tool);

        Assert.Equal((0, true), (record.Verdict.WeakenedRules, record.Deviations.IsEmpty));
        Assert.Equal(
            "1 check of 4 evaluated fails at severity error. 1 check stands under concession. 1 check that applies is not evaluated, 1 of them at severity error. Not stated, so not judged: duty, tolerances, train, bearings, shafts, splines, parallel_keys, interfaces, joints, dowels, retaining_rings, planet_pins, o_rings, lip_seals, fits, centring, shims, stacks, lubrication.", record.Verdict.Statement);
        Assert.Contains("The rules are in force as shipped.", Markdown.MarkdownReport.Render(record), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "no conformance record")]
    [InlineData("[]", "states no format")]
    [InlineData("{}", "states no format")]
    [InlineData("{\"format\": 1}", "has format 1; this build reads 2")]
    [InlineData("{\"format\": 2}", "no conformance record")]
    [InlineData("{\"format\": 1e99}", "states no format")]
    public void What_is_no_record_is_refused_with_the_reason(string json, string reason)
    {
        var refused = Assert.Throws<FormatException>(() => ConformanceRecord.Read(json));

        Assert.Contains(reason, refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_key_is_refused()
    {
        var json = Sample.Record().ToJson().Replace("\"as_of\"", "\"surprise\": 1,\n  \"as_of\"", StringComparison.Ordinal);

        Assert.Throws<FormatException>(() => ConformanceRecord.Read(json));
    }

    [Fact]
    public void The_schema_in_the_repository_is_that_of_the_types()
    {
        foreach (var file in RecordSchema.Files)
        {
            var kept = Path.Combine(Root(), "schema", file.Name);
            var text = file.Generate();
            if (!File.Exists(kept) || File.ReadAllText(kept).ReplaceLineEndings("\n") != text)
            {
                File.WriteAllText(Path.ChangeExtension(kept, ".received.json"), text);
                Assert.Fail($"{file.Name} is stale.");
            }
        }
    }

    [Fact]
    public async Task A_record_is_valid_by_its_schema()
    {
        var schema = await JsonSchema.FromJsonAsync(RecordSchema.Files[0].Generate(), TestContext.Current.CancellationToken);

        Assert.Empty(schema.Validate(Sample.Record().ToJson()));
    }

    [Theory]
    [InlineData("\"outcome\":\"fails\"", "\"outcome\":\"passes\"")]
    [InlineData("\"margin\":-", "\"margin\":\"a lot\",\"x\":-")]
    [InlineData("\"verdict\":{", "\"judgement\":{")]
    public async Task The_schema_refuses_what_is_no_record(string right, string wrong)
    {
        var schema = await JsonSchema.FromJsonAsync(RecordSchema.Files[0].Generate(), TestContext.Current.CancellationToken);
        var json = Sample.Record().ToJson();
        Assert.Contains(right, json, StringComparison.Ordinal);

        Assert.NotEmpty(schema.Validate(json.Replace(right, wrong, StringComparison.Ordinal)));
    }

    [Fact]
    public void An_assumption_names_the_rules_that_rest_on_it()
    {
        var assumption = Assert.Single(Sample.Record().Assumptions, a => a.Quantity.EndsWith("floating", StringComparison.Ordinal));

        Assert.Equal(["train/floating"], assumption.Rules);
    }

    [Fact]
    public void Counts_add_up_to_the_findings()
    {
        var record = Sample.Record();

        Assert.Equal(record.Findings.Length, record.Coverage.Overall.All);
        Assert.Equal(record.Findings.Length, record.Coverage.Domains.Sum(d => d.Counts.All));
    }

    [Fact]
    public void A_record_of_findings_prints_the_same_text_and_is_no_document()
    {
        var judgement = new Sample().ToJudgement();
        var findings = RecordBuilder.Build(judgement, Sample.Tool, RecordScope.Findings);
        using var few = new StringWriter();
        using var all = new StringWriter();
        new TextReport().Write(findings, few);
        new TextReport().Write(RecordBuilder.Build(judgement, Sample.Tool), all);

        Assert.Equal(all.ToString(), few.ToString());
        Assert.Throws<InvalidOperationException>(findings.ToJson);
        Assert.Throws<InvalidOperationException>(() => Markdown.MarkdownReport.Render(findings));
    }

    private static string Root([CallerFilePath] string caller = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(caller)!, "..", ".."));
}
