using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Xml.Linq;
using CsCheck;
using Pawl.Cli.Checking;
using Pawl.Quantities;

namespace Pawl.Cli.Tests;

/// <summary>Known findings: told, counted, never a pass in words, and a list that only shrinks.</summary>
public sealed class BaselineTests
{
    private const string Rated = "    torque: 42 N·m\n";

    /// <summary>A spec whose teeth fail under the torque, and the list of what fails.</summary>
    private static Workplace Old(int torque = 60)
    {
        var place = Spoilt(torque);
        var ran = place.Run("baseline", "--output", "baseline.yaml");
        Assert.True(ran.Code == 0, ran.Error);
        Assert.StartsWith("baseline.yaml: ", ran.Out, StringComparison.Ordinal);
        return place;
    }

    private static Workplace Spoilt(int torque)
    {
        var place = new Workplace { Engine = Engine.Shipped };
        Assert.Equal(0, place.Run("new", "Works", "--project").Code);
        Assert.Equal(0, place.Run("new", "R450").Code);
        Torque(place, 42, torque);
        return place;
    }

    private static void Torque(Workplace place, int from, int to) => Replace(
        place, "specs/r450.yaml", Rated.Replace("42", Whole(from), StringComparison.Ordinal), Rated.Replace("42", Whole(to), StringComparison.Ordinal));

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static void Replace(Workplace place, string path, string old, string by)
    {
        var text = File.ReadAllText(place.PathOf(path));
        Assert.Contains(old, text, StringComparison.Ordinal);
        File.WriteAllText(place.PathOf(path), text.Replace(old, by, StringComparison.Ordinal));
    }

    private static string[] Listed(Workplace place) =>
        [.. File.ReadAllLines(place.PathOf("baseline.yaml")).Where(line => line.StartsWith("  - ", StringComparison.Ordinal))];

    [Fact]
    public void What_is_known_does_not_fail_and_is_told_all_the_same()
    {
        using var place = Old();
        Assert.Equal(1, place.Run("check", "--no-reports").Code);

        var ran = place.Run("check", "--baseline", "baseline.yaml", "--no-reports");

        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.Contains(": known error rating/contact-safety: ", ran.Out, StringComparison.Ordinal);
        Assert.Contains("  in the baseline down to −", ran.Out, StringComparison.Ordinal);
        Assert.DoesNotContain(": error ", ran.Out, StringComparison.Ordinal);
        Assert.Contains(" does not conform. ", ran.OutLines[0], StringComparison.Ordinal);
        Assert.Contains($"{Listed(place).Length} known findings in the baseline.", ran.OutLines[0], StringComparison.Ordinal);
        Assert.Contains("1 spec (1 does not conform)", ran.OutLines[^1], StringComparison.Ordinal);
        Assert.Contains("known findings in the baseline)", ran.OutLines[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void Every_format_and_the_index_tell_it()
    {
        using var place = Old();

        Assert.Equal(0, place.Run("check", "--baseline", "baseline.yaml", "--output", "out").Code);

        var markdown = File.ReadAllText(place.PathOf("out/r450.md"));
        Assert.Contains("### Baseline\n", markdown, StringComparison.Ordinal);
        Assert.Contains("| known error |", markdown, StringComparison.Ordinal);
        Assert.Contains("- In the baseline down to −", markdown, StringComparison.Ordinal);
        Assert.Contains("known findings in the baseline.", File.ReadAllText(place.PathOf("out/r450.html")), StringComparison.Ordinal);
        Assert.Contains($"✗ does not conform, {Listed(place).Length} known |", File.ReadAllText(place.PathOf("out/index.md")), StringComparison.Ordinal);
        using var record = JsonDocument.Parse(File.ReadAllText(place.PathOf("out/r450.json")));
        Assert.Equal("does_not_conform", record.RootElement.GetProperty("verdict").GetProperty("word").GetString());
        Assert.Equal(Listed(place).Length, record.RootElement.GetProperty("verdict").GetProperty("known_findings").GetInt32());
        Assert.Equal("baseline.yaml", record.RootElement.GetProperty("baseline").GetProperty("path").GetString());
        Assert.Contains(record.RootElement.GetProperty("files").EnumerateArray(), f => f.GetProperty("path").GetString() == "baseline.yaml");
        Assert.Equal(
            Listed(place).Length,
            record.RootElement.GetProperty("findings").EnumerateArray().Count(f => f.TryGetProperty("known", out var known) && known.GetProperty("holds").GetBoolean()));

        Assert.Equal(0, place.Run("verify", "out/r450.json").Code);
        File.AppendAllText(place.PathOf("baseline.yaml"), "# more\n");
        Assert.Contains("changed baseline.yaml", place.Run("verify", "out/r450.json").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void One_that_is_worse_fails_and_one_that_is_new_too()
    {
        using var place = Old();
        Torque(place, 60, 62);

        var ran = place.Run("check", "--baseline", "baseline.yaml", "--no-reports");
        Assert.Equal(1, ran.Code);
        Assert.Contains(": error rating/contact-safety: ", ran.Out, StringComparison.Ordinal);
        Assert.Contains("  worse than the baseline, which lists it down to −", ran.Out, StringComparison.Ordinal);
        Assert.Contains(" worse than the baseline.", ran.OutLines[0], StringComparison.Ordinal);

        Torque(place, 62, 60);
        File.WriteAllLines(place.PathOf("baseline.yaml"), File.ReadAllLines(place.PathOf("baseline.yaml")).Where(line => !line.Contains("rating/contact-safety", StringComparison.Ordinal)));
        ran = place.Run("check", "--baseline", "baseline.yaml", "--no-reports");
        Assert.Equal(1, ran.Code);
        Assert.Contains(": error rating/contact-safety: ", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_new_stands_before_what_is_known()
    {
        using var place = Old();
        File.WriteAllLines(place.PathOf("baseline.yaml"), File.ReadAllLines(place.PathOf("baseline.yaml")).Where(line => !line.Contains("rating/micropitting", StringComparison.Ordinal)));

        var ran = place.Run("check", "--baseline", "baseline.yaml", "--no-reports", "--verbose");

        Assert.True(ran.Out.IndexOf(": note rating/micropitting", StringComparison.Ordinal) < ran.Out.IndexOf(": known error ", StringComparison.Ordinal), ran.Out);
    }

    [Fact]
    public void What_is_known_is_told_to_machines_and_alarms_none()
    {
        using var place = Old();
        string[] check = ["check", "--baseline", "baseline.yaml", "--no-reports", "--format"];

        var results = JsonNode.Parse(place.Run([.. check, "sarif"]).Out)!["runs"]![0]!["results"]!.AsArray();
        var known = results.Where(result => (string?)result!["kind"] == "fail").ToArray();
        Assert.NotEmpty(known);
        Assert.All(known, result =>
        {
            Assert.Equal("external", (string?)result!["suppressions"]![0]!["kind"]);
            Assert.StartsWith("Known finding, in the baseline", (string?)result["suppressions"]![0]!["justification"], StringComparison.Ordinal);
        });

        var cases = XDocument.Parse(place.Run([.. check, "junit"]).Out).Descendants("testcase").ToArray();
        Assert.Contains(cases, each => each.Element("system-out")?.Value.Contains(" known error ", StringComparison.Ordinal) == true);
        Assert.DoesNotContain(cases, static each => each.Element("failure") is not null);

        var lines = place.Run([.. check, "annotations"]).OutLines;
        Assert.Contains(lines, static line => line.StartsWith("::notice ", StringComparison.Ordinal) && line.Contains("known error, in the baseline", StringComparison.Ordinal));
        Assert.DoesNotContain(lines, static line => line.StartsWith("::error ", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_gone_is_to_be_removed_and_prune_does_it()
    {
        using var place = Old();
        var before = Listed(place);
        Torque(place, 60, 42);

        var ran = place.Run("check", "--baseline", "baseline.yaml", "--no-reports");
        Assert.Equal(0, ran.Code);
        Assert.Contains("baseline.yaml:6:5: warning baseline/gone: The known finding ", ran.Error, StringComparison.Ordinal);
        Assert.Contains("is gone: it conforms.", ran.Error, StringComparison.Ordinal);
        Assert.Contains("--prune", ran.Error, StringComparison.Ordinal);
        Assert.Equal(before, Listed(place));

        ran = place.Run("check", "--baseline", "baseline.yaml", "--no-reports", "--prune");
        Assert.Equal(0, ran.Code);
        Assert.Contains(" removed, ", ran.Error, StringComparison.Ordinal);
        var after = Listed(place);
        Assert.True(after.Length < before.Length);

        ran = place.Run("check", "--baseline", "baseline.yaml", "--no-reports", "--prune");
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.Equal(after, Listed(place));
    }

    [Fact]
    public void Prune_keeps_what_became_better_from_becoming_worse_again()
    {
        using var place = Old();
        Torque(place, 60, 58);

        Assert.Contains(" tightened, ", place.Run("check", "--baseline", "baseline.yaml", "--no-reports", "--prune").Error, StringComparison.Ordinal);
        Assert.Equal(0, place.Run("check", "--baseline", "baseline.yaml", "--no-reports").Code);
        Torque(place, 58, 60);

        Assert.Equal(1, place.Run("check", "--baseline", "baseline.yaml", "--no-reports").Code);
    }

    [Fact]
    public void An_entry_of_a_spec_that_is_gone_is_gone_and_one_of_a_spec_not_judged_stays()
    {
        using var place = Old();
        Assert.Equal(0, place.Run("new", "R500").Code);

        Assert.Equal("", place.Run("check", "specs/r500.yaml", "--baseline", "baseline.yaml", "--no-reports").Error);

        File.Delete(place.PathOf("specs/r450.yaml"));
        var ran = place.Run("check", "specs/r500.yaml", "--baseline", "baseline.yaml", "--no-reports", "--prune");
        Assert.Equal(0, ran.Code);
        Assert.Empty(Listed(place));
        Assert.Contains("findings: []", File.ReadAllText(place.PathOf("baseline.yaml")), StringComparison.Ordinal);
        Assert.Equal(0, place.Run("check", "specs/r500.yaml", "--baseline", "baseline.yaml", "--no-reports").Code);
    }

    [Fact]
    public void A_gap_is_no_known_finding_and_hides_none()
    {
        using var place = Old();
        Replace(place, "specs/r450.yaml", "  service_life: 3000 h\n", "");

        var ran = place.Run("check", "--baseline", "baseline.yaml", "--no-reports", "--prune");
        Assert.Equal(1, ran.Code);
        ran = place.Run("check", "--baseline", "baseline.yaml", "--no-reports");
        Assert.Contains("warning baseline/open: Whether the known finding rating/", ran.Error, StringComparison.Ordinal);
        Assert.Contains(Listed(place), line => line.Contains("rating/contact-safety", StringComparison.Ordinal));
    }

    [Fact]
    public void A_concession_and_the_baseline_are_both_told()
    {
        using var place = Old();
        const string Subject = "meshes.sun~planet.sun";
        File.AppendAllText(place.PathOf("specs/r450.yaml"), $$"""
            concessions:
              - {rule: rating/contact-safety, subject: {{Subject}}, reason: The first ten run at half load., approved_by: A. Designer, expires: 2026-03-31, worst_margin: -50 %}
            """);

        var ran = place.Run("check", "--baseline", "baseline.yaml", "--no-reports");

        Assert.Equal(0, ran.Code);
        Assert.Contains($"concession rating/contact-safety: {Subject}", ran.Out, StringComparison.Ordinal);
        Assert.Contains("1 under concession", ran.OutLines[^1], StringComparison.Ordinal);
        Assert.Contains("is gone: it is under concession.", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-03-31T23:59:59Z", 0)]
    [InlineData("2026-04-01T00:00:00Z", 1)]
    [InlineData("2026-04-01T13:59:59+14:00", 0)]
    [InlineData("2026-03-31T13:00:00-11:00", 1)]
    public void On_its_last_day_in_UTC_a_concession_still_holds(string now, int code)
    {
        using var made = Spoilt(42);
        using var place = new Workplace { Engine = Engine.Shipped, Now = DateTimeOffset.Parse(now, CultureInfo.InvariantCulture) };
        foreach (var file in (string[])["pawl.yaml", "specs/r450.yaml", "specs/catalogue/materials.yaml", "specs/catalogue/lubricants.yaml"])
            place.With(file, File.ReadAllText(made.PathOf(file)));
        File.AppendAllText(place.PathOf("specs/r450.yaml"), """
            concessions:
              - {rule: rating/micropitting, subject: meshes.sun~planet, reason: The first ten run at half load., approved_by: A. Designer, expires: 2026-03-31, worst_margin: -90 %}
            """);

        var ran = place.Run("check", "--no-reports");

        Assert.True(ran.Code == code, ran.Out);
        Assert.Equal(code == 0, ran.Out.Contains("conforms under concession", StringComparison.Ordinal));
        Assert.Equal(code == 1, ran.Out.Contains("concession/", StringComparison.Ordinal));
    }

    [Fact]
    public void The_file_is_never_overwritten_unasked()
    {
        using var place = Old();
        var before = File.ReadAllText(place.PathOf("baseline.yaml"));
        Torque(place, 60, 62);

        Assert.Equal(2, place.Run("baseline", "--output", "baseline.yaml").Code);
        Assert.Equal(before, File.ReadAllText(place.PathOf("baseline.yaml")));
        Assert.Equal(2, place.Run("baseline", "--output", "specs/r450.yaml", "--overwrite").Code);
        Assert.Equal(2, place.Run("baseline", "--output", "../elsewhere.yaml").Code);
        Assert.Equal(0, place.Run("baseline", "--output", "baseline.yaml", "--overwrite").Code);
        Assert.NotEqual(before, File.ReadAllText(place.PathOf("baseline.yaml")));
    }

    [Fact]
    public void It_may_stand_in_the_project_file_and_beside_the_specs()
    {
        using var place = Spoilt(60);
        Assert.Equal(0, place.Run("baseline", "--output", "specs/known.yaml").Code);
        File.AppendAllText(place.PathOf("pawl.yaml"), "\nbaseline: specs/known.yaml\n");

        var ran = place.Run("check", "--no-reports");

        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.Contains("baseline: specs/known.yaml", place.Run("check", "--show-config").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("pawl: 1\nfindings:\n  - {spec: a.yaml, rule: a/b, subject: c}\n  - {spec: a.yaml, rule: a/b, subject: c}\n", "baseline/repeated")]
    [InlineData("pawl: 1\nfindings:\n  - {spec: a.yaml, rule: a/b, subjekt: c}\n", "spec/unknown-key")]
    [InlineData("pawl: 1\nfindings:\n  - {spec: a.yaml, rule: a/b, subject: c, worst_margin: 5 %}\n", "spec/out-of-range")]
    [InlineData("pawl: 2\n", "spec/")]
    [InlineData("", "yaml/empty")]
    public void A_faulty_list_is_refused(string text, string code)
    {
        using var place = Spoilt(60).With("baseline.yaml", text);

        var ran = place.Run("check", "--baseline", "baseline.yaml", "--no-reports");

        Assert.Equal(2, ran.Code);
        Assert.Contains($"error {code}", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_list_that_is_not_there_or_lies_outside_is_refused()
    {
        using var place = Spoilt(60);

        Assert.Equal(2, place.Run("check", "--baseline", "none.yaml", "--no-reports").Code);
        Assert.Equal(2, place.Run("check", "--baseline", "../none.yaml", "--no-reports").Code);
        Assert.Equal(2, place.Run("check", "--prune", "--no-reports").Code);
    }

    [Fact]
    public void A_margin_is_written_no_better_than_it_is() => Gen.Double[-1e20, -1e-12].Sample(
        static margin =>
        {
            var text = BaselineText.Percent(margin);
            Assert.True(Amount.TryParse(text, out var read, out _), text);
            Assert.True(read.Coherent <= margin * (1 - 1e-15) && read.Coherent >= (margin * 1.0002) - 1e-13, $"{margin:R} as {text}");
        });
}
