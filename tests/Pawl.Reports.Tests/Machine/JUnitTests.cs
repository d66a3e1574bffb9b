using System.Globalization;
using System.Xml.Linq;
using Pawl.Reports.Records;

namespace Pawl.Reports.Tests.Machine;

public sealed class JUnitTests
{
    private static XElement Case(XElement suites, string name) => suites.Descendants("testcase").Single(c => c.Attribute("name")!.Value == name);

    private static int Number(XElement element, string name) => int.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);

    [Fact]
    public void The_document_is_as_approved() => Approved.Match("findings", "junit.xml", Documents.JUnitText(complaints: Documents.Unreadable));

    [Fact]
    public void Every_outcome_but_not_applicable_is_a_case()
    {
        var suites = Documents.JUnit();

        Assert.Equal("mesh/tip-clearance", Case(suites, "mesh/tip-clearance meshes.sun~planet.sun").Element("failure")!.Attribute("type")!.Value);
        Assert.StartsWith("specs/tarn-180/r180.yaml:60:5\nseverity: error\nwhy: The tip digs", Case(suites, "mesh/tip-clearance meshes.sun~planet.sun").Element("failure")!.Value, StringComparison.Ordinal);
        Assert.StartsWith("not evaluated: tip diameter of the planet", Case(suites, "assembly/neighbours planets.planet").Element("skipped")!.Value, StringComparison.Ordinal);
        Assert.Contains("under concession", Case(suites, "train/ratio train").Element("system-out")!.Value, StringComparison.Ordinal);
        Assert.Empty(Case(suites, "train/floating bodies.input_shaft").Elements());
        Assert.DoesNotContain(suites.Descendants("testcase"), c => c.Attribute("name")!.Value.StartsWith("assembly/positions", StringComparison.Ordinal));
        Assert.Equal("tarn-180.r180.Meshes", Case(suites, "mesh/centre-distance meshes.sun~planet").Attribute("classname")!.Value);
    }

    [Fact]
    public void The_counts_are_those_of_the_elements()
    {
        var suites = Documents.JUnit(complaints: Documents.Unreadable);

        foreach (var element in suites.DescendantsAndSelf().Where(e => e.Name.LocalName is "testsuites" or "testsuite"))
        {
            Assert.Equal(element.Descendants("testcase").Count(), Number(element, "tests"));
            Assert.Equal(element.Descendants("failure").Count(), Number(element, "failures"));
            Assert.Equal(element.Descendants("error").Count(), Number(element, "errors"));
        }

        Assert.Equal(2, suites.Elements("testsuite").Count());
        Assert.Equal(("spec/unknown-unit", "specs/größe b.yaml:41:18\nDid you mean N·mm²?"), (suites.Descendants("error").Single().Attribute("type")!.Value, suites.Descendants("error").Single().Value));
    }

    [Theory]
    [InlineData(SeverityWord.Note, true)]
    [InlineData(SeverityWord.Error, false)]
    [InlineData(null, false)]
    public void What_fails_by_the_threshold_is_a_failure_and_the_rest_is_told(SeverityWord? failOn, bool fails)
    {
        var record = Sample.Record();
        record = record with { Findings = [.. record.Findings.Select(f => f with { Severity = SeverityWord.Warning })] };

        var tip = Case(Documents.JUnit(record, failOn), "mesh/tip-clearance meshes.sun~planet.sun");

        Assert.Equal(fails, tip.Element("failure") is not null);
        Assert.Equal(!fails, tip.Element("system-out") is not null);
    }

    [Theory]
    [MemberData(nameof(EscapingTests.Attacks), MemberType = typeof(EscapingTests))]
    [InlineData("]]> <!-- ##vso[task.complete]")]
    public void A_hostile_text_changes_no_structure_and_is_no_command(string attack)
    {
        var text = Documents.JUnitText(new Sample { Text = t => attack + t }.ToRecord());

        Assert.Equal(Documents.JUnit().Descendants().Select(e => e.Name.LocalName), XElement.Parse(text).Descendants().Select(e => e.Name.LocalName));
        Assert.DoesNotContain("##vso[", text, StringComparison.Ordinal);
        Assert.DoesNotContain(text, c => char.IsControl(c) && c != '\n');
        Assert.DoesNotContain(text.Split('\n'), l => l.TrimStart().StartsWith("::", StringComparison.Ordinal));
    }
}
