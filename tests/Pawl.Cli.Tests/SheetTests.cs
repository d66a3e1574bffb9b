using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using Pawl.Cli.Checking;
using Pawl.Reports.Records;

namespace Pawl.Cli.Tests;

public sealed partial class SheetTests
{
    private static readonly string Root = Path.GetFullPath("../..", Path.GetDirectoryName(Here())!);

    public static readonly TheoryData<string> Shipped =
    [
        .. Directory.EnumerateFiles(Path.Combine(Root, "specs"), "r*.yaml", SearchOption.AllDirectories).Select(file => Path.GetRelativePath(Root, file).Replace('\\', '/')).Order(StringComparer.Ordinal),
    ];

    private static string Here([CallerFilePath] string file = "") => file;

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Every_toleranced_dimension_of_a_shipped_spec_is_inspected_once_within_its_limits(string spec)
    {
        var record = ConformanceRecord.Read(Run("check", spec, "--format", "json").Out);
        var rows = Run("sheet", "inspection", spec, "--format", "markdown").Out.Split('\n').Where(line => Numbered().IsMatch(line)).ToArray();
        var seen = 0;
        foreach (var input in record.Inputs)
        {
            if (Written().Match(input.Written) is not { Success: true } written)
                continue;
            var matching = rows.Where(row => row.Contains($"`{input.Path}`", StringComparison.Ordinal)).ToArray();

            // A fit is of two parts, which are measured each.
            Assert.True(matching.Length == (input.Written.Contains('/', StringComparison.Ordinal) && Fit().IsMatch(input.Written) ? 2 : 1), $"{input.Path}: {input.Written} stands on {matching.Length} rows");
            Assert.All(matching, row => Assert.DoesNotContain("–", string.Join('|', row.Split('|')[5..7]), StringComparison.Ordinal));
            seen++;
            if (LimitsOf(written) is not var (nominal, least, greatest))
                continue;
            var cells = matching[0].Split('|');
            Assert.Equal([nominal, least, greatest], cells[4..7].Select(cell => decimal.Parse(cell.Replace('−', '-'), CultureInfo.InvariantCulture)));
            Assert.Equal(written.Groups["unit"].Value, cells[7].Trim());
        }

        Assert.True(seen > 20, $"{seen} toleranced dimensions");
    }

    // ISO 286-2: H7 over 6 to 10 mm is +15/0 µm; js6 over 50 to 80 mm is ±9.5 µm; k5 over 30 to 50 mm is +13/+2 µm. From memory.
    [Theory]
    [InlineData("interfaces.input.dowels.diameter", "8.000 | 8.000 | 8.015 | mm")]
    [InlineData("train.meshes[1].centre_distance", "59.8000 | 59.7905 | 59.8095 | mm")]
    [InlineData("bearings.input.shaft_seat", "40.000 | 40.002 | 40.013 | mm")]
    public void Limits_of_tolerance_classes_are_those_of_the_standard(string path, string limits)
    {
        var row = Assert.Single(Run("sheet", "inspection", "specs/tarn-180/r180.yaml", "-f", "markdown").Out.Split('\n'), line => line.Contains($"`{path}`", StringComparison.Ordinal));

        Assert.Contains(limits, row, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Bolts_are_tightened_once_a_step_and_the_opposite_bolt_follows(string spec)
    {
        var orders = Run("sheet", "assembly", spec, "-f", "markdown").Out.Split('\n').Where(line => line.Contains("before the next: ", StringComparison.Ordinal)).ToArray();

        Assert.NotEmpty(orders);
        foreach (var line in orders)
        {
            var order = line[(line.LastIndexOf(": ", StringComparison.Ordinal) + 2)..].TrimEnd('.').Split(", ").Select(word => int.Parse(word, CultureInfo.InvariantCulture)).ToArray();
            Assert.Equal(Enumerable.Range(1, order.Length), order.Order());
            for (var i = 0; order.Length % 2 == 0 && i < order.Length; i += 2)
                Assert.Equal(order.Length / 2, Math.Abs(order[i] - order[i + 1]));
        }
    }

    // NIST SP 811: 1 lbf = 4.4482216152605 N exactly, 1 ft = 0.3048 m exactly.
    [Theory]
    [MemberData(nameof(Shipped))]
    public void Torques_have_their_twins(string spec)
    {
        var twins = TwinTorque().Matches(Run("sheet", "assembly", spec, "-f", "markdown").Out);

        Assert.NotEmpty(twins);
        foreach (Match twin in twins)
        {
            var metric = double.Parse(twin.Groups["own"].Value, CultureInfo.InvariantCulture);
            var other = double.Parse(twin.Groups["other"].Value, CultureInfo.InvariantCulture);
            var lever = twin.Groups["arm"].Value == "ft" ? 0.3048 : 0.0254;

            // Three digits are shown: half of the third.
            Assert.Equal(1, other * 4.4482216152605 * lever / metric, 0.0051);
        }
    }

    [Fact]
    public void Steps_are_shares_of_the_torque()
    {
        var sheet = Run("sheet", "assembly", "specs/tarn-180/r180.yaml", "-f", "markdown").Out;

        // 30 %, 60 % and 100 % of 18 N·m.
        Assert.Contains("| 30 %: 5.4 N·m (3.98 lbf·ft) | 60 %: 10.8 N·m (7.97 lbf·ft) | 100 %: 18 N·m (13.3 lbf·ft) |", sheet, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("assembly")]
    [InlineData("inspection")]
    [InlineData("part")]
    [InlineData("audit")]
    public void What_does_not_conform_says_so_at_the_top_and_on_each_printed_page(string role)
    {
        var ran = Run("sheet", role, "specs/faulty/tarn-120-hot-sump.yaml");

        Assert.Equal(ExitCode.Findings, ran.Code);
        Assert.Contains("✗ Not released for manufacture: does not conform", ran.Out, StringComparison.Ordinal);
        Assert.Contains("Not released for manufacture: does not conform", ran.Out[..ran.Out.IndexOf("</style>", StringComparison.Ordinal)].Replace("\\002717 ", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain("Not released", Run("sheet", role, "specs/tarn-180/r180.yaml").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("welding", "sheet", "welding", "specs/tarn-180/r180.yaml")]
    [InlineData("There is no such file", "sheet", "audit", "specs/none.yaml")]
    [InlineData("a sheet is of one spec", "sheet", "audit", "specs/tarn-180")]
    [InlineData("names no variant", "sheet", "audit", "specs/tarn-180/family.yaml")]
    [InlineData("--part is of the part sheet", "sheet", "audit", "specs/tarn-180/r180.yaml", "--part", "gears.long")]
    [InlineData("Did you mean `input_sun`", "sheet", "part", "specs/tarn-180/r180.yaml", "--part", "input_sn")]
    [InlineData("is a file, not a folder", "sheet", "audit", "specs/tarn-180/r180.yaml", "--output", "README.md")]
    [InlineData("Give --output DIR", "check", "specs/tarn-180/r180.yaml", "--sheets")]
    public void A_wrong_question_ends_with_2_and_an_answer(string answer, params string[] arguments)
    {
        var ran = Run(arguments);

        Assert.Equal(ExitCode.NotJudged, ran.Code);
        Assert.Contains(answer, ran.Error, StringComparison.OrdinalIgnoreCase);
        Assert.Empty(ran.Out);
    }

    [Fact]
    public void A_part_is_found_by_the_end_of_its_id_and_stands_alone()
    {
        var sheet = Run("sheet", "part", "specs/tarn-180/r180.yaml", "--part", "input_sun", "-f", "markdown");

        Assert.Equal(ExitCode.Conforms, sheet.Code);
        Assert.Contains("T180-102", sheet.Out, StringComparison.Ordinal);
        // Case 0.45 +0.20/0 with 0.10 mm of stock: 0.55 to 0.75 before grinding.
        Assert.Contains("0.55", Assert.Single(sheet.Out.Split('\n'), line => line.Contains("before grinding", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.DoesNotContain("Part `gears.long`", sheet.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_writes_every_sheet_beside_the_reports()
    {
        using var place = new Workplace { Engine = Engine.Shipped };
        place.RunWith("", Root, "check", "specs/tarn-180/r180.yaml", "--sheets", "--format", "html", "--format", "markdown", "--output", place.PathOf("out"));

        Assert.All(
            (string[])["assembly.html", "inspection.html", "audit.html", "part-gears.long.html", "assembly.md", "figures/bolts-1.svg"],
            name => Assert.True(File.Exists(place.PathOf($"out/tarn-180/r180-sheets/{name}")), name));
    }

    private static Ran Run(params string[] arguments)
    {
        using var place = new Workplace { Engine = Engine.Shipped };
        return place.RunWith("", Root, arguments);
    }

    private static (decimal Nominal, decimal Least, decimal Greatest)? LimitsOf(Match written)
    {
        decimal Number(string group) => decimal.Parse(written.Groups[group].Value, NumberStyles.Number, CultureInfo.InvariantCulture);
        return written.Groups["both"].Success ? (Number("size"), Number("size") - Number("both"), Number("size") + Number("both"))
            : written.Groups["upper"].Success ? (Number("size"), Number("size") + Number("lower"), Number("size") + Number("upper"))
            : null;
    }

    [GeneratedRegex(@"^\| [\d.]+ \|")]
    private static partial Regex Numbered();

    [GeneratedRegex(@"^(?<size>[\d.]+) (?<unit>mm|µm|in) (±(?<both>[\d.]+)|(?<upper>[+-]?[\d.]+)/(?<lower>[+-]?[\d.]+)|[A-Za-z]{1,2}\d{1,2}(/[a-z]{1,2}\d{1,2})?)$")]
    private static partial Regex Written();

    [GeneratedRegex(@" [A-Z]{1,2}\d{1,2}/[a-z]{1,2}\d{1,2}$")]
    private static partial Regex Fit();

    [GeneratedRegex(@"(?<own>[\d.]+) N·m \((?<other>[\d.]+) lbf·(?<arm>ft|in)\)")]
    private static partial Regex TwinTorque();
}
