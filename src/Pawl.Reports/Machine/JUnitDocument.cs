using System.Globalization;
using System.Xml;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;
using Pawl.Specs.Text;

namespace Pawl.Reports.Machine;

/// <summary>A run as JUnit XML: a suite for each spec, a case for each rule put to a subject that it applies to.</summary>
/// <remarks>
/// There is no standard; this keeps to what the common schema of build services takes. The first case of a suite is the verdict, and it fails
/// if and only if the spec makes the exit code 1. What is not evaluated is skipped, with the reasons; what stands under concession passes and
/// says so. Times are 0, for the same input gives the same bytes.
/// </remarks>
public sealed class JUnitDocument : RunDocument, IDisposable
{
    private readonly StringWriter _suites = new() { NewLine = "\n" };
    private readonly XmlWriter _xml;
    private readonly SeverityWord? _failOn;
    private readonly List<Diagnostic> _complaints = [];
    private readonly HashSet<Diagnostic> _ofSpecs = [];
    private Tally _all;

    private record struct Tally(int Tests, int Failures, int Errors, int Skipped);

    /// <param name="failOn">The least severity of a finding that is a failure; null for none.</param>
    public JUnitDocument(SeverityWord? failOn)
    {
        _failOn = failOn;
        _xml = Writer(_suites);
    }

    public override void Complain(Diagnostic diagnostic) => _complaints.Add(diagnostic);

    public override void Add(SpecOutcome spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        foreach (var diagnostic in spec.Diagnostics)
            _ofSpecs.Add(diagnostic);
        var errors = spec.Diagnostics.Count(d => d.Severity == Severity.Error) + (spec.Defect is null ? 0 : 1);
        var findings = spec.Record?.Findings ?? [];
        var tally = new Tally(1, spec.Fails ? 1 : 0, errors, 0);
        foreach (var finding in findings)
        {
            if (finding.Outcome == OutcomeWord.NotApplicable)
                continue;
            tally.Tests++;
            tally.Failures += IsFailure(finding) ? 1 : 0;
            tally.Skipped += finding.Outcome == OutcomeWord.NotEvaluated ? 1 : 0;
        }

        Suite(spec.File, tally, spec.Record);
        Verdict(spec, errors);
        if (spec.Record is { } record)
        {
            var rules = record.Rules.ToDictionary(r => r.Id, StringComparer.Ordinal);
            foreach (var finding in findings)
            {
                if (finding.Outcome != OutcomeWord.NotApplicable)
                    Case(spec.Name, finding, rules.GetValueOrDefault(finding.Rule));
            }
        }

        _xml.WriteEndElement();
    }

    public override string Finish(RunEnd ended)
    {
        // What is wrong with a spec stands in its suite; what is left is wrong with the run.
        var left = _complaints.Where(d => !_ofSpecs.Contains(d)).ToList();
        var errors = left.Count(d => d.Severity == Severity.Error);
        if (errors > 0)
        {
            Suite("pawl", new(1, 0, errors, 0), null);
            Start("pawl", "run");
            Errors(left);
            _xml.WriteEndElement();
            _xml.WriteEndElement();
        }

        _xml.Flush();
        using var text = new StringWriter { NewLine = "\n" };
        using (var xml = Writer(text))
        {
            xml.WriteStartElement("testsuites");
            xml.WriteAttributeString("name", "pawl");
            xml.WriteAttributeString("tests", Phrase.Whole(_all.Tests));
            xml.WriteAttributeString("failures", Phrase.Whole(_all.Failures));
            xml.WriteAttributeString("errors", Phrase.Whole(_all.Errors));
            xml.WriteAttributeString("time", "0");
            xml.WriteRaw("\n" + _suites.ToString().TrimStart('\n') + "\n");
            xml.WriteEndElement();
        }

        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + LogText.Markup(text.ToString()) + "\n";
    }

    public void Dispose()
    {
        _xml.Dispose();
        _suites.Dispose();
    }

    private static XmlWriter Writer(TextWriter to) => XmlWriter.Create(to, new()
    {
        ConformanceLevel = ConformanceLevel.Fragment,
        OmitXmlDeclaration = true,
        Indent = true,
        NewLineChars = "\n",
        NewLineHandling = NewLineHandling.Entitize,
    });

    private bool IsFailure(FindingRecord finding) => finding.Outcome == OutcomeWord.Fails && finding.Severity >= _failOn && finding.Known is not { Holds: true };

    private void Suite(string name, Tally tally, ConformanceRecord? record)
    {
        _xml.WriteStartElement("testsuite");
        _xml.WriteAttributeString("name", SafeText.Line(name));
        _xml.WriteAttributeString("tests", Phrase.Whole(tally.Tests));
        _xml.WriteAttributeString("failures", Phrase.Whole(tally.Failures));
        _xml.WriteAttributeString("errors", Phrase.Whole(tally.Errors));
        _xml.WriteAttributeString("skipped", Phrase.Whole(tally.Skipped));
        _xml.WriteAttributeString("time", "0");
        _all = new(_all.Tests + tally.Tests, _all.Failures + tally.Failures, _all.Errors + tally.Errors, _all.Skipped + tally.Skipped);
        if (record is null)
            return;
        _xml.WriteStartElement("properties");
        Property("family", record.Identity.Family);
        Property("variant", record.Identity.Variant);
        Property("revision", record.Identity.Revision);
        Property("verdict", Labels.Of(record.Verdict));
        Property("evaluated as of", record.AsOf.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        Property("report number", record.Id);
        Property("not applicable", Phrase.Whole(record.Coverage.Overall.NotApplicable));
        _xml.WriteEndElement();
    }

    private void Property(string name, string value)
    {
        _xml.WriteStartElement("property");
        _xml.WriteAttributeString("name", name);
        _xml.WriteAttributeString("value", SafeText.Line(value));
        _xml.WriteEndElement();
    }

    private void Verdict(SpecOutcome spec, int errors)
    {
        Start(ClassName(spec.Name), "verdict");
        if (errors > 0)
        {
            Errors(spec.Diagnostics);
            if (spec.Defect is { } defect)
                Problem("error", "pawl/defect", defect);
        }

        var statement = spec.Record is { } record ? $"{Labels.Of(record.Verdict)}. {record.Verdict.Statement}" : "";
        if (spec.Fails)
            Problem("failure", "verdict", statement);
        else if (statement.Length > 0)
            Output(statement);
        _xml.WriteEndElement();
    }

    private void Errors(IEnumerable<Diagnostic> diagnostics)
    {
        foreach (var diagnostic in diagnostics.Where(d => d.Severity == Severity.Error))
            Problem("error", diagnostic.Code, diagnostic.Message, diagnostic.Span.ToString(), diagnostic.Hint ?? "");
    }

    private void Case(string name, FindingRecord finding, RuleRecord? rule)
    {
        Start($"{ClassName(name)}.{finding.Domain}", $"{finding.Rule} {finding.Subject}");
        var measured = $"{FindingText.Head(finding)}: {FindingText.Measured(finding)}";
        switch (finding.Outcome)
        {
            case OutcomeWord.NotEvaluated:
                // The schema permits a text in it and no attributes.
                _xml.WriteElementString("skipped", $"not evaluated: {SafeText.Line(string.Join("; ", finding.Reasons))}");
                break;
            case OutcomeWord.Fails when IsFailure(finding):
                Problem("failure", finding.Rule, measured, finding.Place.ToString(), $"severity: {Labels.Of(finding.Severity)}", $"why: {rule?.Why}", $"mend: {rule?.Mend}");
                break;
            case OutcomeWord.Fails:
                Output($"{finding.Place}: {Labels.SeverityOf(finding)} {measured}{(finding.Known is null ? "" : $"; {Labels.BaselineOf(finding)}")}");
                break;
            case OutcomeWord.UnderConcession:
                Output($"{finding.Place}: under concession {measured}; {(finding.Concession is { } concession ? FindingText.Of(concession) : "")}");
                break;
        }

        _xml.WriteEndElement();
    }

    private void Start(string className, string name)
    {
        _xml.WriteStartElement("testcase");
        _xml.WriteAttributeString("classname", SafeText.Line(className));
        _xml.WriteAttributeString("name", SafeText.Line(name));
        _xml.WriteAttributeString("time", "0");
    }

    private void Problem(string element, string type, string message, params ReadOnlySpan<string> lines)
    {
        _xml.WriteStartElement(element);
        _xml.WriteAttributeString("type", type);
        _xml.WriteAttributeString("message", SafeText.Line(message));
        for (var i = 0; i < lines.Length; i++)
            _xml.WriteString((i == 0 ? "" : "\n") + LogText.Line(SafeText.Line(lines[i])));
        _xml.WriteEndElement();
    }

    private void Output(string text) => _xml.WriteElementString("system-out", SafeText.Line(text));

    // Points part packages; the name of a report is a path.
    private static string ClassName(string name) => name.Replace('.', '_').Replace('/', '.');
}
