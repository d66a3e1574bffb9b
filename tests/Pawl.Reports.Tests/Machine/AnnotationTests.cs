using CsCheck;
using Pawl.Reports.Machine;
using Pawl.Reports.Records;

namespace Pawl.Reports.Tests.Machine;

public sealed class AnnotationTests
{
    private static List<ReadCommand> Commands(string text) => [.. text.Split('\n').Select(CommandLineReader.Read).OfType<ReadCommand>()];

    [Fact]
    public void The_lines_are_as_approved() => Approved.Match("annotations", "txt", Documents.Annotations(complaints: Documents.Unreadable));

    [Fact]
    public void A_failure_stands_at_its_place_with_value_reason_and_remedy()
    {
        var command = Commands(Documents.Annotations(project: "gear, boxes")).Single();

        Assert.Equal("error", command.Name);
        Assert.Equal(
            [("col", "5"), ("endColumn", "14"), ("endLine", "60"), ("file", "gear, boxes/specs/tarn-180/r180.yaml"), ("line", "60"), ("title", "mesh/tip-clearance")],
            command.Properties.OrderBy(p => p.Key, StringComparer.Ordinal).Select(p => (p.Key, p.Value)));
        var lines = command.Message.Split('\n');
        Assert.StartsWith("R180: meshes.sun~planet.sun The tip stays clear of the mate's root: value ", lines[0], StringComparison.Ordinal);
        Assert.Equal(["why: The tip digs into the root and breaks the tooth.", "mend: Shorten the addendum or raise the centre distance."], lines[1..]);
    }

    [Fact]
    public void Concessions_and_passes_are_no_annotations_and_the_verdict_is_a_plain_line()
    {
        var text = Documents.Annotations();

        Assert.Single(Commands(text));
        Assert.Equal("specs/tarn-180/r180.yaml: R180 revision C does not conform.", text.TrimEnd('\n').Split('\n')[^1].Split(". ")[0] + ".");
    }

    // One line in a file that two variants share is one cause.
    [Fact]
    public void One_cause_in_a_shared_file_is_one_annotation_that_names_the_variants()
    {
        var document = new AnnotationDocument("");
        var first = Sample.Record();
        document.Add(Documents.Outcome(first));
        document.Add(Documents.Outcome(first with
        {
            Identity = first.Identity with { Variant = "R225", File = "specs/tarn-180/r225.yaml" },
            Findings = [.. first.Findings.Select(f => f with { Margin = f.Margin - 0.5 })],
        }));

        var command = Assert.Single(Commands(document.Finish(new(1, true))));
        Assert.StartsWith("R225: ", command.Message, StringComparison.Ordinal);
        Assert.EndsWith("\nvariants: R180, R225", command.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_worst_ten_of_a_level_are_annotations_and_the_rest_plain_lines()
    {
        var record = Sample.Record();
        var tip = record.Findings.Single(f => f.Outcome == OutcomeWord.Fails);
        record = record with
        {
            Findings = [.. Enumerable.Range(1, 13).Select(i => tip with { Subject = $"m{i}", Margin = -i / 100.0, Place = tip.Place with { Line = i, EndLine = i } })],
        };

        var text = Documents.Annotations(record);

        Assert.Equal(Enumerable.Range(4, 10).Reverse().Select(i => $"{i}"), Commands(text).Select(c => c.Properties["line"]));
        Assert.Equal(3, text.Split('\n').Count(l => l.StartsWith("specs/tarn-180/r180.yaml:", StringComparison.Ordinal) && l.Contains(": error mesh/tip-clearance: R180: m", StringComparison.Ordinal)));
    }

    [Fact]
    public void An_incomplete_spec_says_what_it_waits_for()
    {
        var record = Sample.Record();
        record = record with
        {
            Findings = [.. record.Findings.Where(f => f.Outcome != OutcomeWord.Fails)],
            Verdict = record.Verdict with { Word = VerdictWord.Incomplete },
        };

        var command = Assert.Single(Commands(Documents.Annotations(record)));

        Assert.Equal(("error", "incomplete"), (command.Name, command.Properties["title"]));
        Assert.Contains("\nwaits for: tip diameter of the planet is not known", command.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_complaint_about_a_spec_is_an_annotation()
    {
        var command = Assert.Single(Commands(Documents.Annotations(complaints: Documents.Unreadable)), c => c.Properties["title"] == "spec/unknown-unit");

        Assert.Equal(("specs/größe b.yaml", "41", "18"), (command.Properties["file"], command.Properties["line"], command.Properties["col"]));
        Assert.Equal("`12 Nmm²` has no unit that is known.\nhint: Did you mean N·mm²?", command.Message);
    }

    [Fact]
    public void Whatever_is_written_is_read_back() =>
        Gen.Select(Gen.String[Gen.Char["abc%250DA,:= \r\nü"], 1, 20], Gen.String[Gen.Char["abc%250DA,:= \r\nü"], 0, 20]).Sample((value, message) =>
        {
            var read = CommandLineReader.Read(WorkflowCommand.Of("error", [("file", value), ("line", "7"), ("none", "")], message));

            Assert.NotNull(read);
            Assert.Equal((value, "7", message, 2), (read.Properties["file"], read.Properties["line"], read.Message, read.Properties.Count));
        });

    [Theory]
    [MemberData(nameof(EscapingTests.Attacks), MemberType = typeof(EscapingTests))]
    [InlineData("##vso[task.setvariable variable=a]b")]
    [InlineData(",title=other::text")]
    [InlineData("%0A::error::gotcha")]
    public void A_hostile_text_adds_no_command(string attack)
    {
        var text = Documents.Annotations(new Sample { Text = t => attack + t, File = attack + ".yaml" }.ToRecord());

        var command = Assert.Single(Commands(text));
        Assert.Equal(["col", "endColumn", "endLine", "file", "line", "title"], command.Properties.Keys.Order(StringComparer.Ordinal));
        Assert.Equal("mesh/tip-clearance", command.Properties["title"]);
        Assert.DoesNotContain(text, c => char.IsControl(c) && c != '\n');
        Assert.DoesNotMatch("##[A-Za-z]*\\[", text);
        Assert.DoesNotContain(command.Message.Split('\n'), l => l.StartsWith("::", StringComparison.Ordinal));
    }
}
