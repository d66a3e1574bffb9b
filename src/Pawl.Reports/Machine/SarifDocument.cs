using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;
using Pawl.Specs.Text;

namespace Pawl.Reports.Machine;

/// <summary>A run as a log of SARIF 2.1.0 (OASIS).</summary>
/// <remarks>
/// What fails is of kind fail with the severity of its rule as level; what stands under concession the same with a suppression; what is
/// not evaluated is open, what conforms pass and what does not apply notApplicable, all without a level (§3.27.9, §3.27.10). Specs that
/// cannot be judged are notifications. Nothing in it depends on the clock or the machine.
/// </remarks>
public sealed class SarifDocument : RunDocument, IDisposable
{
    /// <summary>The base of all addresses: the root of the repository, which the reader knows.</summary>
    private const string Root = "%SRCROOT%";

    private readonly MemoryStream _bytes = new();
    private readonly Utf8JsonWriter _json;
    private readonly TextLevel _level;
    private readonly ToolRecord _tool;
    private readonly Places _places;
    private readonly SarifRules _rules = new();
    private readonly SortedDictionary<string, string> _files = new(StringComparer.Ordinal);
    private readonly List<ConformanceSummary> _specs = [];
    private readonly List<(string Code, SeverityWord Level, string Message, PlaceRecord? Place)> _notes = [];
    private readonly Func<string, (string Meaning, string Mend)?> _explain;

    private sealed record ConformanceSummary(string File, string? Variant, string Verdict, string Statement);

    /// <param name="tool">The tool.</param>
    /// <param name="project">The folder of the project from the root of the repository, with forward slashes; empty when they are one.</param>
    /// <param name="level">Quiet: what fails. Normal: also what stands under concession or is not evaluated. Verbose: everything.</param>
    /// <param name="explain">What a diagnostic means and how to mend it, by its code.</param>
    public SarifDocument(ToolRecord tool, string project, TextLevel level, Func<string, (string Meaning, string Mend)?> explain)
    {
        ArgumentNullException.ThrowIfNull(project);
        (_tool, _places, _level, _explain) = (tool, new(project), level, explain);
        _json = new(_bytes, new()
        {
            Indented = true,
            NewLine = "\n",
            // Letters of all scripts stay readable; what a page would take for markup is written as its code.
            Encoder = JavaScriptEncoder.Create(UnicodeRanges.All),
        });
        _json.WriteStartObject();
        _json.WriteString("$schema", "https://docs.oasis-open.org/sarif/sarif/v2.1.0/os/schemas/sarif-schema-2.1.0.json");
        _json.WriteString("version", "2.1.0");
        _json.WriteStartArray("runs");
        _json.WriteStartObject();
        _json.WriteStartArray("results");
    }

    public override void Complain(Diagnostic diagnostic)
    {
        ArgumentNullException.ThrowIfNull(diagnostic);
        var hint = diagnostic.Hint is { Length: > 0 } text ? " " + text : "";
        _notes.Add((diagnostic.Code, Building.Words.Of(diagnostic.Severity), diagnostic.Message + hint, Places.Of(diagnostic)));
    }

    public override void Add(SpecOutcome spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (spec.Defect is { } defect)
            _notes.Add(("pawl/defect", SeverityWord.Error, defect, Places.Whole(spec.File)));
        if (spec.Record is not { } record)
        {
            _specs.Add(new(spec.File, null, "not judged", ""));
            return;
        }

        _specs.Add(new(spec.File, $"{record.Identity.Family} {record.Identity.Variant}", Labels.Of(record.Verdict), record.Verdict.Statement));
        _rules.Add(record.Rules);
        foreach (var file in record.Files)
        {
            if (!Places.IsShipped(file.Path))
                _files.TryAdd(file.Path, file.Sha256);
        }

        var fingerprint = new Fingerprint(record);
        foreach (var outcome in Shown())
        {
            foreach (var finding in FindingOrder.WorstFirst(record.Findings, outcome))
                Result(record, finding, fingerprint);
        }
    }

    public override string Finish(RunEnd ended)
    {
        ArgumentNullException.ThrowIfNull(ended);
        _json.WriteEndArray();
        var codes = _notes.Select(n => n.Code).Distinct().Order(StringComparer.Ordinal).ToList();
        Tool(codes);
        Invocation(ended, codes);
        Artifacts();
        _json.WriteString("columnKind", "utf16CodeUnits");
        _json.WriteStartObject("automationDetails");
        _json.WriteString("id", "pawl/");
        _json.WriteEndObject();
        Specs();
        _json.WriteEndObject();
        _json.WriteEndArray();
        _json.WriteEndObject();
        _json.Flush();
        return LogText.Json(Encoding.UTF8.GetString(_bytes.GetBuffer(), 0, (int)_bytes.Length)) + "\n";
    }

    public void Dispose()
    {
        _json.Dispose();
        _bytes.Dispose();
    }

    private OutcomeWord[] Shown() => _level switch
    {
        TextLevel.Quiet => [OutcomeWord.Fails],
        TextLevel.Normal => [OutcomeWord.Fails, OutcomeWord.UnderConcession, OutcomeWord.NotEvaluated],
        _ => [OutcomeWord.Fails, OutcomeWord.UnderConcession, OutcomeWord.NotEvaluated, OutcomeWord.Conforms, OutcomeWord.NotApplicable],
    };

    private void Result(ConformanceRecord record, FindingRecord finding, Fingerprint fingerprint)
    {
        var isBroken = finding.Outcome is OutcomeWord.Fails or OutcomeWord.UnderConcession;
        _json.WriteStartObject();
        _json.WriteString("ruleId", finding.Rule);
        _json.WriteNumber("ruleIndex", _rules.Number(finding.Rule));
        _json.WriteString("kind", Kind(finding.Outcome));
        _json.WriteString("level", isBroken ? Labels.Of(finding.Severity) : "none");
        Message("message", Text(finding));
        _json.WriteStartArray("locations");
        Location(Places.Of(finding, record.Identity.File), $"{record.Identity.Family}/{record.Identity.Variant}/{finding.Subject}");
        _json.WriteEndArray();
        if (isBroken)
            Related(finding);
        _json.WriteStartObject("partialFingerprints");
        _json.WriteString(Fingerprint.Name, fingerprint.Of(finding));
        _json.WriteEndObject();
        if (finding is { Outcome: OutcomeWord.UnderConcession, Concession: { } concession })
            SarifSuppressions.Write(_json, concession, Physical);
        else if (finding is { Outcome: OutcomeWord.Fails, Known: { Holds: true } known })
            SarifSuppressions.Write(_json, finding, known, Physical);
        Properties(record, finding, fingerprint.Key(finding));
        _json.WriteEndObject();
    }

    private static string Kind(OutcomeWord outcome) => outcome switch
    {
        OutcomeWord.Conforms => "pass",
        OutcomeWord.NotEvaluated => "open",
        OutcomeWord.NotApplicable => "notApplicable",
        _ => "fail",
    };

    private static string Text(FindingRecord finding)
    {
        var reasons = string.Join("; ", finding.Reasons);
        var said = finding.Outcome switch
        {
            OutcomeWord.NotEvaluated => $"not evaluated: {reasons}",
            OutcomeWord.NotApplicable => $"not applicable: {reasons}",
            _ => FindingText.Measured(finding) + (reasons.Length > 0 ? $". {reasons}" : ""),
        };
        return $"{FindingText.Head(finding)}: {said.TrimEnd('.')}.";
    }

    /// <summary>The declared inputs beneath the value, where a change of one may have moved it.</summary>
    private void Related(FindingRecord finding)
    {
        var terms = finding.Governing.Where(t => t.Place is { } p && p != finding.Place && !Places.IsShipped(p.File)).ToList();
        if (terms.Count == 0)
            return;
        _json.WriteStartArray("relatedLocations");
        foreach (var term in terms)
        {
            _json.WriteStartObject();
            Physical(term.Place!);
            Message("message", $"{term.Quantity ?? term.Symbol} = {term.Written ?? Figures.Of(term.Value)}");
            _json.WriteEndObject();
        }

        _json.WriteEndArray();
    }

    private void Properties(ConformanceRecord record, FindingRecord finding, string key)
    {
        var (value, limit) = Figures.Apart(finding);
        _json.WriteStartObject("properties");
        _json.WriteString("spec", _places.Path(record.Identity.File));
        _json.WriteString("variant", SafeText.Line(record.Identity.Variant));
        _json.WriteString("domain", finding.Domain);
        _json.WriteString("subject", SafeText.Line(finding.Subject));
        if (key.Length > 0)
            _json.WriteString("key", SafeText.Line(key));
        if (finding.Measured is not null && finding.Outcome is not (OutcomeWord.NotEvaluated or OutcomeWord.NotApplicable))
        {
            _json.WriteString("value", SafeText.Line(value));
            _json.WriteString("limit", SafeText.Line(limit));
        }

        if (finding.Margin is { } margin)
            _json.WriteNumber("margin", margin);
        if (finding.FollowsFrom is { } cause)
            _json.WriteString("followsFrom", SafeText.Line($"{cause.Rule} on {cause.Subject}"));
        if (finding.Suggestion is { } suggestion)
            _json.WriteString("wouldDo", SafeText.Line(suggestion));
        _json.WriteEndObject();
    }

    private void Location(PlaceRecord place, string? logical)
    {
        _json.WriteStartObject();
        Physical(place);
        if (logical is not null)
        {
            _json.WriteStartArray("logicalLocations");
            _json.WriteStartObject();
            _json.WriteString("fullyQualifiedName", SafeText.Line(logical));
            _json.WriteEndObject();
            _json.WriteEndArray();
        }

        _json.WriteEndObject();
    }

    private void Physical(PlaceRecord place)
    {
        _json.WriteStartObject("physicalLocation");
        Artifact("artifactLocation", place.File);
        _json.WriteStartObject("region");
        _json.WriteNumber("startLine", place.Line);
        _json.WriteNumber("startColumn", Math.Max(1, place.Column));
        if (Places.HasExtent(place))
        {
            _json.WriteNumber("endLine", place.EndLine);
            _json.WriteNumber("endColumn", Math.Max(1, place.EndColumn));
        }

        _json.WriteEndObject();
        _json.WriteEndObject();
    }

    private void Artifact(string name, string file)
    {
        _json.WriteStartObject(name);
        _json.WriteString("uri", _places.Uri(file));
        _json.WriteString("uriBaseId", Root);
        _json.WriteEndObject();
    }

    private void Message(string name, string text)
    {
        _json.WriteStartObject(name);
        _json.WriteString("text", SarifText.Plain(text));
        _json.WriteEndObject();
    }

    private void Tool(List<string> codes)
    {
        _json.WriteStartObject("tool");
        _json.WriteStartObject("driver");
        _json.WriteString("name", _tool.Name);
        _json.WriteString("semanticVersion", _tool.Version);
        _json.WriteString("version", _tool.Version);
        _rules.Write(_json);
        if (codes.Count > 0)
        {
            _json.WriteStartArray("notifications");
            foreach (var code in codes)
            {
                _json.WriteStartObject();
                _json.WriteString("id", code);
                _json.WriteString("name", SarifRules.Name(code));
                if (_explain(code) is var (meaning, mend))
                {
                    SarifRules.Message(_json, "fullDescription", meaning, null);
                    SarifRules.Message(_json, "help", mend, null);
                }

                _json.WriteEndObject();
            }

            _json.WriteEndArray();
        }

        _json.WriteEndObject();
        _json.WriteEndObject();
    }

    private void Invocation(RunEnd ended, List<string> codes)
    {
        _json.WriteStartArray("invocations");
        _json.WriteStartObject();
        _json.WriteBoolean("executionSuccessful", ended.Successful);
        _json.WriteNumber("exitCode", ended.ExitCode);
        Notifications("toolConfigurationNotifications", codes, isConfiguration: true);
        Notifications("toolExecutionNotifications", codes, isConfiguration: false);
        _json.WriteEndObject();
        _json.WriteEndArray();
    }

    private void Notifications(string name, List<string> codes, bool isConfiguration)
    {
        var notes = _notes.Where(n => IsOfConfiguration(n.Code) == isConfiguration).ToList();
        if (notes.Count == 0)
            return;
        _json.WriteStartArray(name);
        foreach (var (code, level, message, place) in notes)
        {
            _json.WriteStartObject();
            _json.WriteStartObject("descriptor");
            _json.WriteString("id", code);
            _json.WriteNumber("index", codes.IndexOf(code));
            _json.WriteEndObject();
            _json.WriteString("level", Labels.Of(level));
            Message("message", message);
            if (place is not null)
            {
                _json.WriteStartArray("locations");
                Location(place, null);
                _json.WriteEndArray();
            }

            _json.WriteEndObject();
        }

        _json.WriteEndArray();
    }

    // What pawl.yaml, the command line and the rule packs say, apart from what the specs say.
    private static bool IsOfConfiguration(string code) =>
        code.StartsWith("rules/", StringComparison.Ordinal) || code.StartsWith("cli/", StringComparison.Ordinal);

    private void Artifacts()
    {
        if (_files.Count == 0)
            return;
        _json.WriteStartArray("artifacts");
        foreach (var (file, hash) in _files)
        {
            _json.WriteStartObject();
            Artifact("location", file);
            _json.WriteStartObject("hashes");
            _json.WriteString("sha-256", hash);
            _json.WriteEndObject();
            _json.WriteEndObject();
        }

        _json.WriteEndArray();
    }

    private void Specs()
    {
        _json.WriteStartObject("properties");
        _json.WriteStartArray("specs");
        foreach (var spec in _specs)
        {
            _json.WriteStartObject();
            _json.WriteString("file", _places.Path(spec.File));
            if (spec.Variant is { } variant)
                _json.WriteString("variant", SafeText.Line(variant));
            _json.WriteString("verdict", spec.Verdict);
            if (spec.Statement.Length > 0)
                _json.WriteString("statement", SafeText.Line(spec.Statement));
            _json.WriteEndObject();
        }

        _json.WriteEndArray();
        _json.WriteEndObject();
    }
}
