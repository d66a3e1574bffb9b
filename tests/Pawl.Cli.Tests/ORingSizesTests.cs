using System.Globalization;
using System.Text;
using System.Text.Json;
using CsCheck;
using Pawl.Analysis;
using Pawl.Analysis.Seals;
using Pawl.Cli.Checking;
using Pawl.Mechanics.Seals;
using Pawl.Rules;
using Pawl.Specs;
using Pawl.Specs.Text;

namespace Pawl.Cli.Tests;

/// <summary><c>pawl o-ring</c>, with the layers as shipped.</summary>
public sealed class ORingSizesTests
{
    private const string Lid = """
        pawl: 1
        gearbox: {family: Test, variant: Lid}
        duty: {oil: {running: 65 °C, coldest: -10 °C, hottest: 95 °C}}
        o_rings:
          joint: {as568: 241, elastomer: FKM, gland: plug, bore: 110 mm H8, plug: 110 mm f7, groove: 104.4 mm h9, width: 5.2 mm +0.2/0}
          other: {inside: 101.2 mm ±0.7, cord: 3.53 mm ±0.1, elastomer: FKM, gland: plug, bore: 110 mm H8, plug: 110 mm f7, groove: 104.4 mm h9, width: 5.2 mm +0.2/0}
          torn: {as568: 242, gland: plug, bore: 110 mm H8}
        """;

    private static Workplace Place() => new() { Engine = Engine.Shipped };

    private static JsonElement Ask(Workplace place, params string[] arguments)
    {
        var ran = place.Run(["o-ring", .. arguments, "--format", "json"]);
        Assert.Empty(ran.Error);
        using var json = JsonDocument.Parse(ran.Out);
        Assert.Equal(json.RootElement.GetProperty("fitting").GetInt32() > 0 ? 0 : 1, ran.Code);
        return json.RootElement.Clone();
    }

    private static string Key(JsonElement line) => line.GetProperty("key").GetString()!;

    private static JsonElement[] Sizes(JsonElement answer) => [.. answer.GetProperty("sizes").EnumerateArray()];

    private static string Name(JsonElement size) => size.GetProperty("size").GetString()!;

    private static double In(JsonElement size, string quantity, string bound) => size.GetProperty(quantity).GetProperty(bound).GetDouble();

    /// <summary>A spec with one ring: the size asked about in the gland that the answer tells.</summary>
    private static string SpecOf(JsonElement answer, JsonElement size)
    {
        var lines = answer.GetProperty("gland").EnumerateArray()
            .Concat(size.TryGetProperty("proposed", out var proposed) ? proposed.EnumerateArray() : Enumerable.Empty<JsonElement>()).ToArray();
        var ring = string.Join(", ", lines.Where(l => !Key(l).Contains('.', StringComparison.Ordinal)).Select(l => $"{Key(l)}: {l.GetProperty("value").GetString()}"));
        var oil = string.Join(", ", lines.Where(l => Key(l).StartsWith("oil.", StringComparison.Ordinal)).Select(l => $"{Key(l)[4..]}: {l.GetProperty("value").GetString()}"));
        return $$$"""
            pawl: 1
            gearbox: {family: Test, variant: Lid}
            duty: {oil: { {{{oil}}} }}
            o_rings: {joint: {as568: {{{Name(size)[6..].TrimStart('0')}}}, {{{ring}}} }}
            """;
    }

    private static readonly string[] Glands = ["plug", "bore", "face-inside", "face-outside"];
    private static readonly string[] Elastomers = ["FKM", "NBR", "VMQ"];

    private static readonly Gen<string[]> Questions = Gen.Select(Gen.Int[80, 1300], Gen.Int[0, 3], Gen.Bool, Gen.Int[0, 2], Gen.Int[60, 160]).Select(
        (tenths, gland, moves, elastomer, hottest) =>
        {
            var size = string.Create(CultureInfo.InvariantCulture, $"{tenths / 10.0} mm");
            return (string[])
            [
                gland switch { 0 => "--bore", 1 => "--plug", _ => "--groove" }, size, "--gland", Glands[gland], "--motion", moves ? "reciprocating" : "static",
                "--elastomer", Elastomers[elastomer], "--hottest", $"{hottest} °C",
            ];
        });

    // Outside judge: each size in a spec of its own, read from YAML, computed and judged as `pawl check` does it.
    [Fact]
    public void Every_size_is_judged_as_a_spec_with_that_ring_is()
    {
        using var place = Place();
        var loader = new SpecLoader(place.Folder, [], validate: false);
        var (fit, failed) = (0, 0);
        Questions.Sample(
            question =>
            {
                var answer = Ask(place, [.. question, "--all", "--top", "300"]);
                var fitting = Sizes(answer).Count(size => size.GetProperty("fits").GetBoolean());
                Assert.Equal(answer.GetProperty("fitting").GetInt32(), fitting);
                Assert.Equal(answer.GetProperty("examined").GetInt32(), Sizes(answer).Length);
                foreach (var size in Sizes(answer))
                {
                    var load = loader.Load("lid.yaml", Encoding.UTF8.GetBytes(SpecOf(answer, size)));
                    var fits = false;
                    if (load.Spec is { } spec)
                    {
                        var judged = Judge.Of(GearboxAnalyser.Analyse(spec), RulePacks.Shipped.Rules!, new(2026, 1, 15));
                        var ring = judged.Findings.Where(f => f.Subject.Kind == SubjectKinds.ORing).ToArray();
                        fits = ring[0].Subject[ORings.Squeeze].IsEvaluated && !ring.Any(f => f is { Outcome: Outcome.Fails, Rule.Severity: Severity.Error });
                        if (fits)
                        {
                            var worst = ring.Single(f => f.Rule.Id == size.GetProperty("set_by").GetString());
                            Assert.Equal(worst.Margin!.Value, size.GetProperty("worst_margin").GetDouble(), 1e-12);
                            Assert.True(
                                ring.Where(f => f is { Outcome: Outcome.Fails }).All(f => size.GetProperty("warnings").ToString().Contains(f.Rule.Id, StringComparison.Ordinal)
                                    || answer.GetProperty("whatever_the_size").ToString().Contains(f.Rule.Id, StringComparison.Ordinal)),
                                $"{Name(size)}: a warning is not told");
                        }
                    }

                    Assert.True(fits == size.GetProperty("fits").GetBoolean(), $"{string.Join(' ', question)}: {Name(size)}");
                    Interlocked.Add(ref fits ? ref fit : ref failed, 1);
                }
            },
            iter: 60);
        Assert.True(fit > 200 && failed > 1000, $"{fit} fit, {failed} do not: the questions ask too little");
    }

    [Fact]
    public void The_best_come_first_by_warnings_and_then_by_the_worst_margin() => Questions.Sample(
        question =>
        {
            using var place = Place();
            var fitting = Sizes(Ask(place, [.. question, "--top", "300"])).Select(size =>
                (Warnings: size.GetProperty("warnings").GetArrayLength(), Margin: size.TryGetProperty("worst_margin", out var margin) ? margin.GetDouble() : 0)).ToArray();
            for (var i = 1; i < fitting.Length; i++)
            {
                Assert.True(fitting[i - 1].Warnings <= fitting[i].Warnings);
                Assert.True(fitting[i - 1].Warnings < fitting[i].Warnings || fitting[i - 1].Margin >= fitting[i].Margin);
            }
        },
        iter: 100);

    [Fact]
    public void Check_gives_a_listed_size_the_same_verdict_on_the_command_line()
    {
        using var place = Place();
        var answer = Ask(place, "--bore", "60 mm H8", "--all", "--cord", "2.62 mm");

        foreach (var size in Sizes(answer))
        {
            place.With("lid.yaml", SpecOf(answer, size));
            Assert.Equal(size.GetProperty("fits").GetBoolean() ? 0 : 1, place.Run("check", "lid.yaml", "--allow-incomplete").Code);
        }
    }

    // The trade's figure for a static radial seal on a medium cord is about 0.020 in. Its table gives 0.017 in to 0.025 in on a cord of
    // 0.103 in and 0.022 in to 0.032 in on one of 0.139 in (common practice, from memory), without stretch: the 5 % that no rule
    // minds thin the cord by 2.5 %, 0.0026 in and 0.0035 in, and the diameter rounded to 0.05 mm moves the height by 0.0005 in.
    [Theory]
    [InlineData("0.103 in", 0.017 - 0.0031, 0.025 + 0.0005)]
    [InlineData("0.139 in", 0.022 - 0.0040, 0.032 + 0.0005)]
    public void The_squeeze_of_a_medium_cord_is_that_of_the_trade(string cord, double least, double greatest)
    {
        using var place = Place();
        var seen = 0;
        for (var bore = 40; bore <= 140; bore += 5)
        {
            var sizes = Sizes(Ask(place, "--bore", $"{bore} mm H8", "--cord", cord)).Where(size => size.GetProperty("warnings").GetArrayLength() == 0).ToArray();
            Assert.All(sizes, size => Assert.InRange(In(size, "squeeze_length", "nominal") / ORing.Inch, least, greatest));
            seen += sizes.Length;
        }

        Assert.True(seen >= 10, $"only {seen} sizes without a warning");
    }

    // AS568: -242 is 3.984 in ± 0.028 in by 0.139 in ± 0.004 in; from memory, as the table says of itself.
    [Fact]
    public void A_size_bears_the_dimensions_of_AS568()
    {
        using var place = Place();

        var size = Sizes(Ask(place, "--bore", "110 mm H8"))[0];

        Assert.Equal("AS568-242", Name(size));
        Assert.Equal(3.984 * 25.4, In(size, "inside_diameter", "nominal"), 1e-6);
        Assert.Equal((3.984 - 0.028) * 25.4, In(size, "inside_diameter", "min"), 1e-6);
        Assert.Equal(0.143 * 25.4, In(size, "cord", "max"), 1e-6);
        Assert.All(
            (string[])["inside_diameter", "cord", "squeeze", "squeeze_length", "stretch", "gland_fill"],
            quantity => Assert.NotEmpty(size.GetProperty(quantity).GetProperty("unit").GetString()!));
    }

    [Fact]
    public void Inches_and_millimetres_ask_the_same()
    {
        using var place = Place();

        var metric = Sizes(Ask(place, "--bore", "101.6 mm H8", "--groove", "95.9 mm h9", "--width", "5.08 mm +0.1/0", "--cord", "3.53mm"));
        var inch = Sizes(Ask(place, "--bore", "4 in H8", "--groove", "95.9 mm h9", "--width", "0.2 in +0.1 mm/0 mm", "--cord", "0.139in"));

        Assert.Equal(metric.Select(size => size.ToString()), inch.Select(size => size.ToString()));
    }

    [Theory]
    [InlineData("simple")]
    [InlineData("stepped")]
    [InlineData("pair")]
    public void The_fragment_goes_into_a_starter_and_conforms(string kind)
    {
        using var place = Place();
        Assert.Equal(0, place.Run("new", "works", "--project").Code);
        Assert.Equal(0, place.Run("new", "r1", "--kind", kind).Code);
        Assert.Equal(0, place.Run("check", "--fail-on", "warning", "--require-complete").Code);
        var starter = File.ReadAllText(place.PathOf("specs/r1.yaml"));

        var fragment = Ask(place, "--bore", "110 mm H8", "--roughness-ra", "0.8 µm").GetProperty("fragment").GetString()!;
        place.With("specs/r1.yaml", starter[..starter.IndexOf("o_rings:", StringComparison.Ordinal)] + fragment);

        var ran = place.Run("check", "--fail-on", "warning", "--require-complete");
        Assert.True(ran.Code == 0, ran.Out + ran.Error);
    }

    [Theory]
    [InlineData("simple")]
    [InlineData("stepped")]
    [InlineData("pair")]
    public void The_ring_of_a_starter_is_among_those_that_fit(string kind)
    {
        using var place = Place();
        Assert.Equal(0, place.Run("new", "works", "--project").Code);
        Assert.Equal(0, place.Run("new", "r1", "--kind", kind).Code);

        Assert.Contains(Sizes(Ask(place, "specs/r1.yaml")), size => size.TryGetProperty("declared", out _) && size.GetProperty("warnings").GetArrayLength() == 0);
    }

    [Fact]
    public void The_declared_ring_is_marked_beside_better_ones()
    {
        using var place = Place().With("lid.yaml", Lid);

        var text = place.Run("o-ring", "lid.yaml", "joint").Out;
        var sizes = Sizes(Ask(place, "lid.yaml", "joint"));

        Assert.Equal("AS568-242", Name(sizes[0]));
        Assert.Equal("AS568-241", Name(Assert.Single(sizes, size => size.TryGetProperty("declared", out var declared) && declared.GetBoolean())));
        Assert.Contains("AS568-241 (declared)", text, StringComparison.Ordinal);
        Assert.Contains("declared size, AS568-241, stands further down", place.Run("o-ring", "lid.yaml", "joint", "--top", "1").Out, StringComparison.Ordinal);
        Assert.Contains("declared size, AS568-241, does not fit: seal/", place.Run("o-ring", "lid.yaml", "joint", "--rules", Strict(place)).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_ring_of_its_own_dimensions_stands_beside_the_sizes()
    {
        using var place = Place().With("lid.yaml", Lid);

        var sizes = Sizes(Ask(place, "lid.yaml", "other", "--top", "300"));

        Assert.Single(sizes, size => Name(size) == "own size");
        Assert.Contains(sizes, size => Name(size) == "AS568-242");
    }

    [Fact]
    public void House_rules_count()
    {
        using var place = Place();
        string[] question = ["--bore", "110 mm H8", "--top", "300"];

        var shipped = Sizes(Ask(place, question)).Select(Name).ToArray();
        var strict = Sizes(Ask(place, [.. question, "--rules", Strict(place)])).Select(Name).ToArray();

        Assert.Contains("AS568-241", shipped);
        Assert.DoesNotContain("AS568-241", strict);
        Assert.Empty(strict.Except(shipped));
    }

    /// <summary>A house that wants no more than 4 % of stretch.</summary>
    private static string Strict(Workplace place)
    {
        place.With("house/house.yaml", """
            pack: house
            version: 1.0.0
            title: House
            rules:
              - {id: seal/stretch, override: true, at_least: -5 %, at_most: 4 %, reason: rings lie in store for long, approved_by: A. Designer}
            """);
        return "house";
    }

    // The same of every size: EPDM swells in mineral oil (common practice, no source), and no size helps.
    [Fact]
    public void What_no_size_can_help_is_said_once()
    {
        using var place = Place();
        Assert.Equal(0, place.Run("new", "works", "--project").Code);
        Assert.Equal(0, place.Run("new", "r1").Code);
        var starter = File.ReadAllText(place.PathOf("specs/r1.yaml"));

        place.With("specs/r1.yaml", starter.Replace("elastomer: FKM", "elastomer: EPDM", StringComparison.Ordinal));
        var ran = place.Run("o-ring", "specs/r1.yaml");

        Assert.Equal(1, ran.Code);
        Assert.Contains("Whatever the size: error seal/elastomer-oil: suitability unsuitable, ", ran.Out, StringComparison.Ordinal);
        Assert.Single(place.Run("o-ring", "--bore", "110 mm", "--coldest", "-30 °C").OutLines, line => line.Contains("seal/elastomer-cold", StringComparison.Ordinal));
    }

    [Fact]
    public void None_that_fits_is_said_with_the_reasons_and_exit_code_1()
    {
        using var place = Place();

        var ran = place.Run("o-ring", "--bore", "400 mm");

        Assert.Equal(1, ran.Code);
        Assert.Contains("None of 203 sizes satisfies every rule of severity error.\n203 sizes do not fit. Most break:\n  203 seal/stretch: ", ran.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("o_rings:\n", ran.Out, StringComparison.Ordinal);
        Assert.Contains("leave no room for a cord of 5.33 mm", place.Run("o-ring", "--bore", "3 mm", "--cord", "5.33mm").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void All_lists_each_size_that_fails_with_its_reason()
    {
        using var place = Place();

        var few = place.Run("o-ring", "--bore", "60 mm").OutLines;
        var all = place.Run("o-ring", "--bore", "60 mm", "--all").OutLines;

        Assert.DoesNotContain(few, line => line.StartsWith("  AS568-004: ", StringComparison.Ordinal));
        Assert.Contains(all, line => line.StartsWith("  AS568-004: seal/", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_assumed_is_said()
    {
        using var place = Place();

        var lines = place.Run("o-ring", "--bore", "110 mm").OutLines;

        Assert.All(
            (string[])["bore", "plug", "gland", "motion", "elastomer", "hardness", "oil.running", "oil.coldest", "oil.hottest"],
            key => Assert.Contains(lines, line => line.TrimStart().StartsWith(key, StringComparison.Ordinal) && line.Contains("assumed", StringComparison.Ordinal)));
        Assert.Contains(lines, line => line.Contains("groove ", StringComparison.Ordinal) && line.Contains("proposed: height 2.82 to 2.87 mm of the trade", StringComparison.Ordinal));
        Assert.DoesNotContain(place.Run("o-ring", "--bore", "110 mm H7").OutLines, line => line.StartsWith("  bore", StringComparison.Ordinal) && line.Contains("assumed", StringComparison.Ordinal));
    }

    // Each row: a piece of the complaint, a piece of the hint, the arguments parted by bars.
    [Theory]
    [InlineData("--bore: error spec/missing-unit: o_rings.joint.bore is a length, but `110` has no unit", "110 mm", "--bore|110")]
    [InlineData("--bore: error spec/missing-unit: o_rings.joint.bore: `110` has no unit before `H8`", "110 mm H8", "--bore|110 H8")]
    [InlineData("--groove: error spec/missing-unit: ", "35 mm h9", "--bore|40 mm|--groove|35 h9")]
    [InlineData("--gland: error spec/unknown-word: ", "Did you mean `plug`?", "--bore|40 mm|--gland|plg")]
    [InlineData("--elastomer: error spec/unknown-word: ", "Did you mean `FKM`?", "--bore|40 mm|--elastomer|FPM")]
    [InlineData("--plug: error spec/out-of-range: ", "would not go into its bore", "--bore|40 mm|--plug|41 mm")]
    [InlineData("--hottest: error spec/missing-unit: ", "95 °C", "--bore|40 mm|--hottest|95")]
    [InlineData("--hottest: error spec/temperature-order: ", "ascend", "--bore|40 mm|--hottest|10 °C|--coldest|20 °C")]
    [InlineData("--hardness: error spec/", "", "--bore|40 mm|--hardness|soft")]
    [InlineData("--cord: error cli/unknown-cord: The table has no cord of `3.6 mm`", "Did you mean 3.53 mm?", "--bore|40 mm|--cord|3.6 mm")]
    [InlineData("--cord: error cli/unknown-cord: `3` has no unit", "the point as decimal mark", "--bore|40 mm|--cord|3,53mm")]
    [InlineData("--cord: error cli/unknown-cord: A cord is a length", "1.78 mm", "--bore|40 mm|--cord|3 N")]
    [InlineData("cli/usage: Neither a bore nor a plug is stated", "--bore", "")]
    [InlineData("cli/usage: A gland in a face needs the wall", "--groove", "--gland|face-inside")]
    [InlineData("cli/usage: --top is a number of sizes", "--help", "--bore|40 mm|--top|0")]
    [InlineData("cli/usage: There is no option `--bor`", "Did you mean `--bore`?", "--bor|40 mm")]
    [InlineData("cli/usage: --bore states a gland, but lid.yaml states it already", "Leave", "lid.yaml|joint|--bore|40 mm")]
    [InlineData("cli/usage: lid.yaml declares 3 O-rings: joint, other, torn", "Name one", "lid.yaml")]
    [InlineData("cli/unknown-name: No O-ring is called `jiont`", "Did you mean `joint`?", "lid.yaml|jiont")]
    [InlineData("cli/gland-open: The gland of torn cannot be computed: o_rings.torn.plug is not stated", "State what is missing", "lid.yaml|torn")]
    [InlineData("cli/base-named: ", "Name a spec", "base.yaml|joint")]
    [InlineData("spec/missing-file: There is no file `none.yaml`", "", "none.yaml|joint")]
    public void Bad_input_is_told_with_what_would_do(string complaint, string hint, string arguments)
    {
        using var place = Place().With("lid.yaml", Lid).With("base.yaml", "pawl: 1\ngearbox: {family: Test}\n");

        var ran = place.Run(["o-ring", .. arguments.Split('|', StringSplitOptions.RemoveEmptyEntries)]);

        Assert.Equal(2, ran.Code);
        Assert.Empty(ran.Out);
        Assert.Contains(complaint, ran.Error, StringComparison.Ordinal);
        Assert.Contains(hint, ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("fa-IR")]
    public void The_same_bytes_under_any_culture(string culture)
    {
        using var place = Place().With("lid.yaml", Lid);
        string[][] questions = [["--bore", "1-1/2 in", "--all"], ["--plug", "30 mm", "--gland", "bore", "--format", "json"], ["lid.yaml", "joint"]];
        var plain = questions.Select(question => place.Run(["o-ring", .. question])).ToArray();
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(culture);

            Assert.Equal(plain, questions.Select(question => place.Run(["o-ring", .. question])));
        }
        finally
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = before;
        }
    }
}
