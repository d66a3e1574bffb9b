using System.Globalization;
using System.Text.Json;
using Pawl.Cli.Checking;
using Pawl.Cli.Trials;

namespace Pawl.Cli.Tests;

/// <summary>What <c>pawl sweep</c> and <c>pawl solve</c> answer is held against <c>pawl check</c> of a file that states the same value.</summary>
public sealed class TrialTests
{
    private const string Spec = "specs/r450.yaml";
    private const string Distance = "centre_distance: ";

    private static Workplace Project()
    {
        var place = new Workplace { Engine = Engine.Shipped };
        place.Run("new", "Works", "--project");
        place.Run("new", "R450");
        return place;
    }

    /// <summary>The margins that <c>check</c> finds when the file says so.</summary>
    private static Dictionary<string, double> Checked(Workplace place, string old, string value)
    {
        var whole = File.ReadAllText(place.PathOf(Spec));
        Assert.Contains(old, whole, StringComparison.Ordinal);
        place.With("specs/other.yaml", whole.Replace(old, value, StringComparison.Ordinal));
        var ran = place.Run("check", "specs/other.yaml", "--format", "json", "--no-reports");
        using var record = JsonDocument.Parse(ran.Out);
        return Findings(record).Where(static f => f.Margin is not null).ToDictionary(static f => $"{f.Rule} {f.Subject}", static f => f.Margin!.Value, StringComparer.Ordinal);
    }

    private static IEnumerable<(string Rule, string Subject, double? Margin)> Findings(JsonDocument record)
    {
        var read = Reports.Records.ConformanceRecord.Read(record.RootElement.GetRawText());
        return read.Findings.Select(static f => (f.Rule, f.Subject, f.Margin));
    }

    [Fact]
    public void A_sweep_finds_the_margins_that_check_finds_of_a_file_with_that_value()
    {
        using var place = Project();

        var ran = place.Run("sweep", Spec, "--vary", "duty.input.torque=30..50:10", "--format", "json");

        Assert.Equal((0, ""), (ran.Code, ran.Error));
        using var sweep = JsonDocument.Parse(ran.Out);
        var texts = sweep.RootElement.GetProperty("values")[0].GetProperty("texts").EnumerateArray().Select(static t => t.GetString()!).ToArray();
        Assert.Equal(["30 N·m", "40 N·m", "50 N·m"], texts);
        for (var point = 0; point < texts.Length; point++)
        {
            var expected = Checked(place, "torque: 42 N·m", $"torque: {texts[point]}");
            var found = sweep.RootElement.GetProperty("rules").EnumerateArray()
                .Select(rule => (Name: $"{rule.GetProperty("rule")} {rule.GetProperty("subject")}", Margin: rule.GetProperty("margins")[point]))
                .Where(static f => f.Margin.ValueKind == JsonValueKind.Number)
                .ToDictionary(static f => f.Name, static f => f.Margin.GetDouble(), StringComparer.Ordinal);
            Assert.Equal(expected.Count, found.Count);
            Assert.All(expected, pair => Assert.Equal(pair.Value, found[pair.Key], 12));
        }
    }

    [Fact]
    public void The_comma_separated_values_hold_the_same_and_two_values_make_all_combinations()
    {
        using var place = Project();

        var ran = place.Run("sweep", Spec, "--vary", "duty.input.torque=30,40", "--vary", "duty.input.speed=2000 rpm..3000 rpm:500 rpm", "--format", "csv");

        Assert.Equal(0, ran.Code);
        var rows = ran.Out.TrimEnd().Split("\r\n");
        Assert.Equal("duty.input.torque,duty.input.speed,rule,subject,severity,outcome,value,unit,margin", rows[0]);
        Assert.Equal(
            ["30 N·m,2000 rpm", "30 N·m,2500 rpm", "30 N·m,3000 rpm", "40 N·m,2000 rpm", "40 N·m,2500 rpm", "40 N·m,3000 rpm"],
            rows[1..].Select(static row => string.Join(',', row.Split(',')[..2])).Distinct().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void At_the_borders_that_solve_tells_all_rules_hold_and_just_beyond_one_fails()
    {
        using var place = Project();
        using var output = new StringWriter(CultureInfo.InvariantCulture);
        using var error = new StringWriter(CultureInfo.InvariantCulture);
        var command = Commands.CommandTree.Build(null).Subcommands.First(static c => c.Name == "solve");
        var bench = TrialBench.Open(place.CommandContext(output, error, cancelled: TestContext.Current.CancellationToken), command, new() { Paths = [Spec], NoReports = true }, out _)!;
        const string Key = "train.meshes[0].centre_distance";
        var pattern = StatedNumber.Of(bench.Template.Find(Key)!.Value)!;

        var solution = new Solver(bench, Key, pattern, null).Around(pattern.Value);

        var range = Assert.Single(solution.Ranges, r => r.From <= pattern.Value && pattern.Value <= r.To);
        Assert.NotNull(range.Below);
        Assert.NotNull(range.Above);
        Assert.Null(Failing(range.From));
        Assert.Null(Failing(range.To));
        var slack = (range.To - range.From) * 1e-3;
        Assert.NotNull(Failing(range.From - slack));
        Assert.NotNull(Failing(range.To + slack));

        string? Failing(double value)
        {
            var margins = Checked(place, pattern.With(pattern.Value), pattern.With(value));
            var depending = solution.Depending.Where(static r => r.Severity == Specs.Text.Severity.Error).Select(static r => $"{r.Rule} {r.Subject}");
            return depending.FirstOrDefault(name => margins.TryGetValue(name, out var margin) && margin < 0);
        }
    }

    [Fact]
    public void The_classes_that_do_are_those_that_pass_one_by_one()
    {
        using var place = Project();

        var ran = place.Run("solve", Spec, "--for", "train.meshes[0].centre_distance", "--classes");

        Assert.Equal(0, ran.Code);
        var tried = ran.OutLines.Where(static l => l.StartsWith("  ✓ ", StringComparison.Ordinal) || l.StartsWith("  ✗ ", StringComparison.Ordinal))
            .Select(static l => (Does: l[2] == '✓', Text: l[4..].Split("  ")[0].Trim())).ToArray();
        Assert.Contains(tried, static t => t.Does && t.Text.EndsWith("js7", StringComparison.Ordinal));
        Assert.Contains(tried, static t => !t.Does);
        var whole = File.ReadAllText(place.PathOf(Spec));
        var stated = tried.First(static t => t.Text.EndsWith(" js7", StringComparison.Ordinal)).Text;
        foreach (var (does, text) in tried.Where(static (_, i) => i % 6 == 0).Append(tried[^1]))
        {
            place.With("specs/other.yaml", whole.Replace(Distance + stated, Distance + text, StringComparison.Ordinal));
            Assert.Equal((text, does), (text, place.Run("check", "specs/other.yaml", "--allow-incomplete", "--no-reports").Code == 0));
        }
    }

    [Theory]
    [InlineData("sweep", "--vary", "duty.input.torque")]
    [InlineData("sweep", "--vary", "duty.input.torque=50..30")]
    [InlineData("sweep", "--vary", "duty.input.torque=30..50:0")]
    [InlineData("sweep", "--vary", "duty.input.torque=30..50:-1")]
    [InlineData("sweep", "--vary", "duty.input.torque=30 mm..50 mm")]
    [InlineData("sweep", "--vary", "duty.input.torque=30..1e300:1e-9")]
    [InlineData("sweep", "--vary", "duty.input.torque=")]
    [InlineData("sweep", "--vary", "gearbox.revision=A,B")]
    [InlineData("sweep", "--vary", "train.meshes[7].centre_distance=30..40")]
    [InlineData("sweep", "--vary", "duty.input.torque=30,40", "--vary", "duty.input.torque=30,40")]
    [InlineData("sweep", "--vary", "duty.input.direction=both,x", "--format", "svg")]
    [InlineData("solve", "--for", "duty.input.torqe")]
    [InlineData("solve", "--for", "train.meshes[0]")]
    [InlineData("solve", "--for", "")]
    [InlineData("solve", "--for", "duty.input.torque", "--from", "3 mm", "--to", "4 mm")]
    [InlineData("solve", "--for", "duty.input.torque", "--from", "3")]
    [InlineData("solve", "--for", "duty.input.torque", "--classes")]
    [InlineData("solve", "--for", "duty.input.torque", "--rule", "mesh/none")]
    [InlineData("solve", "--for", "gearbox.revision", "--among", "A,B")]
    public void What_cannot_be_tried_is_refused_with_2_and_a_reason(params string[] arguments)
    {
        using var place = Project();

        var ran = place.Run([arguments[0], Spec, .. arguments[1..]]);

        Assert.Equal((2, ""), (ran.Code, ran.Out));
        Assert.StartsWith(arguments.Contains("gearbox.revision") || arguments.Any(static a => a.StartsWith("gearbox", StringComparison.Ordinal)) ? Spec : "pawl: error cli/usage: ", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("59.8 mm js6", 59.8, " mm js6", "mm")]
    [InlineData("-0.3", -0.3, "", "")]
    [InlineData("21/4", 5.25, "", "")]
    [InlineData("24 mm ±0.1", 24, " mm ±0.1", "mm")]
    [InlineData("150 lbf·ft", 150, " lbf·ft", "lbf·ft")]
    [InlineData("20°", 20, "°", "°")]
    [InlineData("1e3 h", 1000, " h", "h")]
    public void A_stated_number_keeps_what_stands_behind_it(string text, double value, string tail, string unit)
    {
        var number = StatedNumber.Of(text)!;

        Assert.Equal((value, tail, unit), (number.Value, number.Tail, number.Unit.Symbol));
        Assert.Equal("7.25" + tail, number.With(7.25));
    }

    [Theory]
    [InlineData("58..62 HRC")]
    [InlineData("case-hardened")]
    [InlineData("")]
    [InlineData("1e999 mm")]
    public void What_is_no_single_number_is_none(string text) => Assert.Null(StatedNumber.Of(text));
}
