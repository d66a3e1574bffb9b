using AngleSharp.Html.Parser;
using NJsonSchema;
using Pawl.Reports.Comparing;
using Pawl.Reports.Records;

namespace Pawl.Reports.Tests.Comparing;

public sealed class ComparisonTests
{
    private const string Hostile = "<img src=x onerror=alert(1)> @all [x](http://evil.example) **✓ conforms** | </details> ::error::x \n# y";
    private static readonly SideRecord Before = new() { Name = "main", Commit = new string('0', 40) };
    private static readonly SideRecord After = new() { Name = "HEAD" };

    private static FindingRecord Finding(OutcomeWord outcome, double? margin = null, SeverityWord severity = SeverityWord.Error, string subject = "meshes.a~b", int line = 3) => new()
    {
        Rule = "mesh/a",
        Subject = subject,
        Domain = "Meshes",
        Title = "A holds",
        Outcome = outcome,
        Severity = severity,
        Margin = margin,
        Place = Place(line),
    };

    private static PlaceRecord Place(int line) => new() { File = "family.yaml", Line = line, Column = 1, EndLine = line, EndColumn = 5 };

    private static ConformanceRecord With(string variant, string written, params FindingRecord[] findings)
    {
        var record = Sample.Record();
        return record with
        {
            Identity = record.Identity with { Variant = variant, File = variant + ".yaml" },
            Findings = [.. findings],
            Inputs = [new() { Path = "a.b", Written = written, Place = Place(3) }],
            Subjects = [],
        };
    }

    private static ComparisonRecord Compare(params (ConformanceRecord? Base, ConformanceRecord? Head)[] pairs) =>
        Comparer.Join(Before, After, [.. pairs.Select(p => PairDiff.Of(new(p.Base, p.Head)))], 2);

    private static FindingRecord? Read(string word) => word switch
    {
        "absent" => null,
        "conforms" => Finding(OutcomeWord.Conforms, 0.5),
        "fails" => Finding(OutcomeWord.Fails, -0.5),
        "conceded" => Finding(OutcomeWord.UnderConcession, -0.1),
        "open" => Finding(OutcomeWord.NotEvaluated),
        _ => Finding(OutcomeWord.NotApplicable),
    };

    // The whole table: what there was, what there is, what it is called. Equal outcomes with equal margins are nothing.
    [Theory]
    [InlineData("absent", "fails", EffectKind.NewlyFails)]
    [InlineData("conforms", "fails", EffectKind.NewlyFails)]
    [InlineData("conceded", "fails", EffectKind.NewlyFails)]
    [InlineData("open", "fails", EffectKind.NewlyFails)]
    [InlineData("aside", "fails", EffectKind.NewlyFails)]
    [InlineData("conforms", "open", EffectKind.NoLongerEvaluated)]
    [InlineData("fails", "open", EffectKind.NoLongerEvaluated)]
    [InlineData("conceded", "open", EffectKind.NoLongerEvaluated)]
    [InlineData("absent", "open", EffectKind.NewlyOpen)]
    [InlineData("aside", "open", EffectKind.NewlyOpen)]
    [InlineData("conforms", "absent", EffectKind.NoLongerJudged)]
    [InlineData("fails", "aside", EffectKind.NoLongerJudged)]
    [InlineData("conceded", "absent", EffectKind.NoLongerJudged)]
    [InlineData("conforms", "conceded", EffectKind.NewlyConceded)]
    [InlineData("absent", "conceded", EffectKind.NewlyConceded)]
    [InlineData("open", "conceded", EffectKind.NewlyConceded)]
    [InlineData("absent", "conforms", EffectKind.NewlyJudged)]
    [InlineData("open", "conforms", EffectKind.NewlyJudged)]
    [InlineData("aside", "conforms", EffectKind.NewlyJudged)]
    [InlineData("fails", "conforms", EffectKind.Mended)]
    [InlineData("fails", "conceded", EffectKind.Mended)]
    [InlineData("conceded", "conforms", EffectKind.Mended)]
    [InlineData("conforms", "conforms", null)]
    [InlineData("fails", "fails", null)]
    [InlineData("conceded", "conceded", null)]
    [InlineData("open", "open", null)]
    [InlineData("aside", "aside", null)]
    [InlineData("open", "absent", null)]
    [InlineData("open", "aside", null)]
    [InlineData("absent", "aside", null)]
    [InlineData("aside", "absent", null)]
    public void Every_pair_of_outcomes_has_its_word(string was, string now, EffectKind? kind) =>
        Assert.Equal(kind, EffectKinds.Of(Read(was), Read(now)));

    // Share of the margin of the base: (a − b)/|a|; by hand.
    [Theory]
    [InlineData(0.5, 0.4, 0.2, EffectKind.MarginLost)]
    [InlineData(0.4, 0.5, -0.25, EffectKind.MarginGained)]
    [InlineData(0, 0.1, -1, EffectKind.MarginGained)]
    [InlineData(0.1, 0, 1, EffectKind.MarginLost)]
    [InlineData(0.5, 0.5 + 1e-12, 0, null)]
    public void The_loss_is_a_share_of_the_margin_that_there_was(double was, double now, double lost, EffectKind? kind)
    {
        var (before, after) = (Finding(OutcomeWord.Conforms, was), Finding(OutcomeWord.Conforms, now));

        Assert.Equal(lost, EffectKinds.Lost(before, after)!.Value, 1e-12);
        Assert.Equal(kind, EffectKinds.Of(before, after));
    }

    [Fact]
    public void What_fails_still_and_worse_loses_margin()
    {
        var (before, after) = (Finding(OutcomeWord.Fails, -0.1), Finding(OutcomeWord.Fails, -0.3));

        Assert.Equal(EffectKind.MarginLost, EffectKinds.Of(before, after));
        Assert.Equal(2, EffectKinds.Lost(before, after)!.Value, 1e-12);
    }

    [Fact]
    public void One_changed_line_is_one_change_and_one_effect_with_its_variants()
    {
        var comparison = Compare(
            (With("A", "1 mm", Finding(OutcomeWord.Conforms, 0.5)), With("A", "2 mm", Finding(OutcomeWord.Fails, -0.1))),
            (With("B", "1 mm", Finding(OutcomeWord.Conforms, 0.4)), With("B", "2 mm", Finding(OutcomeWord.Fails, -0.2))));

        Assert.Equal(["A", "B"], Assert.Single(comparison.Changes).Variants);
        var effect = Assert.Single(comparison.Effects);
        Assert.Equal((EffectKind.NewlyFails, 0), (effect.Kind, Assert.Single(effect.Causes)));
        Assert.Equal(["A", "B"], effect.Variants.Select(v => v.Variant));
    }

    [Fact]
    public void What_matters_most_stands_first()
    {
        static FindingRecord Of(string subject, OutcomeWord outcome, double? margin, SeverityWord severity = SeverityWord.Error) => Finding(outcome, margin, severity, subject);
        var comparison = Compare((
            With("A", "1", Of("a", OutcomeWord.Conforms, 0.9), Of("b", OutcomeWord.Conforms, 0.9), Of("c", OutcomeWord.Conforms, 0.9), Of("d", OutcomeWord.Conforms, 0.9, SeverityWord.Warning), Of("e", OutcomeWord.Conforms, 0.1), Of("f", OutcomeWord.Conforms, 0.9)),
            With("A", "2", Of("a", OutcomeWord.Conforms, 1), Of("b", OutcomeWord.Conforms, 0.8), Of("c", OutcomeWord.NotEvaluated, null), Of("d", OutcomeWord.Fails, -1, SeverityWord.Warning), Of("e", OutcomeWord.Conforms, 0.01), Of("f", OutcomeWord.Fails, -0.1))));

        // A new error, lost evaluation, a new warning, the greater share of margin lost, the lesser, what is better.
        Assert.Equal(["f", "c", "d", "e", "b", "a"], comparison.Effects.Select(e => e.Subject));
    }

    [Fact]
    public void A_new_spec_brings_what_is_wrong_with_it_and_not_all_that_conforms()
    {
        var comparison = Compare((null, With("A", "1", Finding(OutcomeWord.Conforms, 1), Finding(OutcomeWord.Fails, -1, subject: "x"), Finding(OutcomeWord.NotEvaluated, subject: "y"))));

        Assert.Equal(["x", "y"], comparison.Effects.Select(e => e.Subject));
        Assert.Equal(PresenceWord.Added, Assert.Single(comparison.Variants).Presence);
        Assert.True(comparison.Variants[0].IsWorse);
    }

    [Theory]
    [InlineData(VerdictWord.Conforms, VerdictWord.ConformsUnderConcession, true)]
    [InlineData(VerdictWord.ConformsUnderConcession, VerdictWord.Incomplete, true)]
    [InlineData(VerdictWord.Incomplete, VerdictWord.DoesNotConform, true)]
    [InlineData(VerdictWord.DoesNotConform, VerdictWord.DoesNotConform, false)]
    [InlineData(VerdictWord.DoesNotConform, VerdictWord.Incomplete, false)]
    public void A_worse_word_is_a_worse_verdict(VerdictWord was, VerdictWord now, bool worse)
    {
        static ConformanceRecord Of(VerdictWord word) => With("A", "1") is var record ? record with { Verdict = record.Verdict with { Word = word } } : null!;
        var comparison = Compare((Of(was), Of(now)));

        Assert.Equal(worse, comparison.Variants[0].IsWorse);
        Assert.Equal(worse ? [ThresholdWord.WorseVerdict] : [], new Thresholds().Breaches(comparison).Select(b => b.Threshold));
        Assert.Empty(new Thresholds { FailOn = null }.Breaches(comparison));
    }

    [Fact]
    public void Rules_and_concessions_that_differ_are_told()
    {
        static InputRecord[] Concession(string reason) => [new() { Path = "concessions[1].rule", Written = "mesh/a", Place = Place(9) }, new() { Path = "concessions[1].subject", Written = "meshes.a~b", Place = Place(9) }, new() { Path = "concessions[1].reason", Written = reason, Place = Place(9) }];
        var (before, after) = (With("A", "1"), With("A", "1"));
        var rule = before.Rules[0];
        var comparison = Compare((
            before with { Inputs = [.. before.Inputs, .. Concession("old")] },
            after with { Inputs = [.. after.Inputs, .. Concession("new")], Rules = [rule with { Limit = "at least 99", Severity = SeverityWord.Note }, .. after.Rules.Skip(2)] }));

        Assert.Equal([(rule.Id, "limit"), (rule.Id, "severity"), (before.Rules[1].Id, "rule")], comparison.Rules.Select(r => (r.Rule, r.What)));
        var concession = Assert.Single(comparison.Concessions);
        Assert.Equal(("reason: old", "reason: new"), (concession.Base, concession.Head));
        Assert.Empty(comparison.Changes);
    }

    [Fact]
    public async Task The_comparison_is_valid_by_its_schema()
    {
        var schema = await JsonSchema.FromJsonAsync(RecordSchema.Files.Single(f => f.Name == "comparison.schema.json").Generate(), TestContext.Current.CancellationToken);
        var comparison = HostileComparison();

        Assert.Empty(schema.Validate(comparison.ToJson()));
        Assert.NotEmpty(schema.Validate(comparison.ToJson().Replace("\"newly_fails\"", "\"worse\"", StringComparison.Ordinal)));
    }

    private static ComparisonRecord HostileComparison()
    {
        var before = new Sample { Text = text => text + Hostile }.ToRecord();
        var after = before with
        {
            Findings = [.. before.Findings.Select(f => f.Outcome == OutcomeWord.Conforms ? f with { Outcome = OutcomeWord.Fails, Margin = -1 } : f)],
            Inputs = [.. before.Inputs.Select((input, i) => i % 2 == 0 ? input with { Written = Hostile + i } : input), new() { Path = Hostile, Written = Hostile, Place = Place(1) with { File = Hostile } }],
            Subjects = [],
            Rules = [],
        };
        var comparison = Comparer.Join(Before with { Name = Hostile }, After, [PairDiff.Of(new(before, after))], 0);
        return comparison with { Breaches = new Thresholds().Breaches(comparison) };
    }

    [Fact]
    public void What_a_spec_says_is_text_in_every_format()
    {
        var comparison = HostileComparison();

        var markdown = ComparisonMarkdown.Comment(comparison);
        Assert.DoesNotContain("<img", markdown, StringComparison.Ordinal);
        Assert.DoesNotContain(" @all", markdown, StringComparison.Ordinal);
        Assert.Equal(markdown.Split("<details>").Length, markdown.Split("</details>").Length);
        Assert.Equal(markdown.Split("<details>").Length, markdown.Split("<summary>").Length);

        using var text = new StringWriter();
        new ComparisonText(verbose: true).Write(comparison, text);
        Assert.DoesNotContain(text.ToString().Split('\n'), static line => line.TrimStart().StartsWith("::", StringComparison.Ordinal));

        var page = new HtmlParser(new() { IsStrictMode = true }).ParseDocument(ComparisonMarkdown.Page(comparison));
        Assert.Empty(page.QuerySelectorAll("img, script, a[href^=http], details"));
        Assert.All(page.QuerySelectorAll("td.conforms"), static cell => Assert.DoesNotContain("img", cell.TextContent, StringComparison.Ordinal));
    }

    // A record may come from anywhere: what can be read can be compared.
    [Fact]
    public void A_spoiled_record_is_refused_or_compared()
    {
        var json = Sample.Record().ToJson();
        var whole = ConformanceRecord.Read(json);
        var lines = json.Split('\n');
        string[] values = ["1e999", "-1e300", "0", "-1", "null", "\"\"", "[]", "{}", "true", "\"fails\"", "2147483648"];
        var random = new Random(3);
        var compared = 0;
        for (var i = 0; i < 500; i++)
        {
            var spoiled = lines.ToArray();
            var at = random.Next(lines.Length);
            var colon = spoiled[at].IndexOf(": ", StringComparison.Ordinal);
            if (random.Next(4) == 0 && spoiled[at].EndsWith("},", StringComparison.Ordinal))
                spoiled[at] += Entry(lines, at);
            else if (colon > 0 && !spoiled[at].EndsWith('{') && !spoiled[at].EndsWith('['))
                spoiled[at] = spoiled[at][..(colon + 2)] + values[random.Next(values.Length)] + (spoiled[at].EndsWith(',') ? "," : "");

            ConformanceRecord record;
            try
            {
                record = ConformanceRecord.Read(string.Join('\n', spoiled));
            }
            catch (FormatException)
            {
                continue;
            }

            compared++;
            var comparison = Comparer.Join(Before, After, [PairDiff.Of(new(whole, record)), PairDiff.Of(new(record, whole))], 0);
            comparison.ToJson();
            ComparisonMarkdown.Comment(comparison);
            ComparisonMarkdown.Page(comparison);
            new ComparisonText(verbose: true).Write(comparison, TextWriter.Null);
            new FamilyMatrix([FamilyVariant.Of(record), FamilyVariant.Of(whole)]).Html();
        }

        Assert.True(compared > 80, $"{compared} compared");

        // The entry that ends at a line once more: a finding, a rule or a file twice.
        static string Entry(string[] lines, int end)
        {
            var start = end;
            while (start > 0 && lines[start].Length - lines[start].TrimStart().Length >= lines[end].Length - lines[end].TrimStart().Length && lines[start].Trim() != "{")
                start--;
            return string.Join('\n', lines[start..(end + 1)]);
        }
    }

    [Fact]
    public void A_comment_keeps_its_limit_and_says_what_it_leaves_out()
    {
        var many = Enumerable.Range(0, 2000).Select(i => Finding(OutcomeWord.Conforms, 1, subject: $"meshes.subject-with-a-long-name-{i}", line: i)).ToArray();
        var (before, after) = (With("A", "1", many), With("A", "1", [.. many.Select(f => f with { Outcome = OutcomeWord.Fails, Margin = -1 })]));
        var comparison = Compare((
            before with { Inputs = [.. Enumerable.Range(0, 2000).Select(i => new InputRecord { Path = $"a.value-{i}", Written = "1 mm", Place = Place(i) })] },
            after with { Inputs = [.. Enumerable.Range(0, 2000).Select(i => new InputRecord { Path = $"a.value-{i}", Written = "2 mm", Place = Place(i) })] }));

        var comment = ComparisonMarkdown.Comment(comparison);

        Assert.True(comment.Length <= ComparisonMarkdown.MostCharacters, $"{comment.Length} characters");
        Assert.EndsWith(" left out for the size of a comment; `pawl compare --format html` holds all.\n", comment, StringComparison.Ordinal);
        Assert.Contains("meshes.subject-with-a-long-name-1999", ComparisonMarkdown.Page(comparison), StringComparison.Ordinal);
    }

    [Fact]
    public void The_matrix_has_a_column_a_variant_and_a_colour_for_each_sign()
    {
        var matrix = new FamilyMatrix([
            FamilyVariant.Of(With("A", "1 mm", Finding(OutcomeWord.Conforms, 0.5), Finding(OutcomeWord.Conforms, 0.2, subject: "x"))),
            FamilyVariant.Of(With("B", "**✓ conforms**", Finding(OutcomeWord.Fails, -0.1), Finding(OutcomeWord.Conforms, 0.9, subject: "x")))]);

        using var text = new StringWriter();
        matrix.Write(verbose: false, colour: false, text);
        Assert.Contains("\n  mesh/a              ✓ +20 %  ✗ −10 %\n", text.ToString(), StringComparison.Ordinal);
        Assert.Contains("\n  a.b       1 mm  **✓ conforms**\n", text.ToString(), StringComparison.Ordinal);

        var page = new HtmlParser(new() { IsStrictMode = true }).ParseDocument(matrix.Html());
        Assert.Equal("✓ +20 %", Assert.Single(page.QuerySelectorAll("td.conforms")).TextContent);
        Assert.Contains("✗ −10 %", page.QuerySelectorAll("td.fails").Select(cell => cell.TextContent));
        Assert.Equal(2, page.QuerySelectorAll("table")[0].QuerySelectorAll("tbody tr").Length);
    }
}
