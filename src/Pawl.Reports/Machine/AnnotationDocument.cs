using System.Text;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;
using Pawl.Specs.Text;

namespace Pawl.Reports.Machine;

/// <summary>A run as workflow commands that a build service shows beside the lines of a pull request; the verdicts as plain lines after them.</summary>
/// <remarks>
/// One cause is one annotation, whatever number of subjects and variants it spoils. Concessions are not annotated. The service shows ten
/// of a level in a step and drops the rest without a word, so the worst ten are annotations and the rest are plain lines.
/// </remarks>
/// <param name="project">The folder of the project from the root of the repository, with forward slashes; empty when they are one.</param>
public sealed class AnnotationDocument(string project) : RunDocument
{
    /// <summary>What the service shows of a level in one step.</summary>
    public const int Most = 10;

    private readonly Places _places = new(project);
    private readonly Dictionary<(string, string, int, int), Note> _byCause = [];
    private readonly List<Note> _notes = [];
    private readonly StringBuilder _verdicts = new();

    private sealed class Note
    {
        public required SeverityWord Level { get; init; }

        public required string Code { get; init; }

        public required string Message { get; set; }

        public required PlaceRecord? Place { get; init; }

        /// <summary>Null stands before all numbers.</summary>
        public double? Margin { get; set; }

        /// <summary>The variants that it spoils beside the first.</summary>
        public List<string> Others { get; } = [];
    }

    public override void Complain(Diagnostic diagnostic)
    {
        ArgumentNullException.ThrowIfNull(diagnostic);
        var hint = diagnostic.Hint is { Length: > 0 } text ? "\nhint: " + SafeText.Line(text) : "";
        _notes.Add(new()
        {
            Level = Building.Words.Of(diagnostic.Severity),
            Code = diagnostic.Code,
            Message = SafeText.Line(diagnostic.Message) + hint,
            Place = Places.Of(diagnostic),
        });
    }

    public override void Add(SpecOutcome spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (spec.Defect is { } defect)
            _notes.Add(new() { Level = SeverityWord.Error, Code = "pawl/defect", Message = SafeText.Line(defect), Place = Places.Whole(spec.File) });
        if (spec.Record is not { } record)
            return;

        var rules = record.Rules.ToDictionary(r => r.Id, StringComparer.Ordinal);
        var failures = FailureList.Of(record);
        for (var i = 0; i < failures.Count; i++)
        {
            if (!failures[i].IsConsequence)
                Add(failures[i], failures.Skip(i + 1).TakeWhile(f => f.IsConsequence).Count(), record, rules.GetValueOrDefault(failures[i].Worst.Rule));
        }

        if (record.Verdict.Word == VerdictWord.Incomplete || (spec.Fails && failures.Count == 0))
            Incomplete(spec, record);
        using var text = new StringWriter { NewLine = "\n" };
        new TextReport(TextLevel.Quiet).Write(record, text);
        _verdicts.Append(text);
    }

    public override string Finish(RunEnd ended)
    {
        using var text = new StringWriter { NewLine = "\n" };
        var lines = new Lines(text);
        foreach (var level in (ReadOnlySpan<SeverityWord>)[SeverityWord.Error, SeverityWord.Warning, SeverityWord.Note])
        {
            var notes = _notes.Where(n => n.Level == level).OrderBy(n => n.Margin ?? double.NegativeInfinity).ToList();
            foreach (var note in notes.Take(Most))
                text.Write(Command(note) + "\n");
            foreach (var note in notes.Skip(Most))
                lines.Write($"{(note.Place is { } place ? SafeText.Line(place.ToString()) + ": " : "")}{Labels.Of(level)} {note.Code}: {note.Message.Split('\n')[0]}");
        }

        text.Write(_verdicts);
        return text.ToString();
    }

    private void Add(Failure failure, int consequences, ConformanceRecord record, RuleRecord? rule)
    {
        var finding = failure.Worst;
        var place = Places.Of(finding, record.Identity.File);
        var variant = SafeText.Line(record.Identity.Variant);

        // What the baseline lists is told, and alarms nobody.
        var level = finding.Known is { Holds: true } ? SeverityWord.Note : finding.Severity;
        if (_byCause.TryGetValue((finding.Rule, place.File, place.Line, place.Column), out var known) && known.Level == level)
        {
            if (!known.Others.Contains(variant))
                known.Others.Add(variant);
            if (finding.Margin < known.Margin)
                (known.Margin, known.Message) = (finding.Margin, Message(failure, consequences, variant, rule));
            return;
        }

        var note = new Note { Level = level, Code = finding.Rule, Message = Message(failure, consequences, variant, rule), Place = place, Margin = finding.Margin };
        note.Others.Add(variant);
        _notes.Add(note);
        _byCause.TryAdd((finding.Rule, place.File, place.Line, place.Column), note);
    }

    private static string Message(Failure failure, int consequences, string variant, RuleRecord? rule)
    {
        var finding = failure.Worst;
        List<string> lines = [$"{variant}: {FindingText.Head(finding)}: {FindingText.Measured(finding)}"];
        if (failure.Also(SafeText.Line) is { Length: > 0 } also)
            lines.Add(also);
        if (Labels.BaselineOf(finding) is { Length: > 0 } baseline)
            lines.Add($"{Labels.SeverityOf(finding)}, {baseline}");
        lines.AddRange(finding.Reasons.Select(SafeText.Line));
        if (consequences > 0)
            lines.Add($"{Phrase.Count(consequences, "other failure")} {Phrase.Verb(consequences, "follows", "follow")} from it");
        if (rule is not null)
        {
            lines.Add("why: " + SafeText.Line(rule.Why));
            lines.Add("mend: " + SafeText.Line(rule.Mend));
        }

        if (finding.Suggestion is { } suggestion)
            lines.Add("would do: " + SafeText.Line(suggestion));
        return string.Join('\n', lines);
    }

    private void Incomplete(SpecOutcome spec, ConformanceRecord record)
    {
        List<string> lines = [$"{SafeText.Line(record.Identity.Variant)}: {Labels.Of(record.Verdict)}. {SafeText.Line(record.Verdict.Statement)}"];
        lines.AddRange(record.Waiting.Take(Most).Select(w => $"waits for: {SafeText.Line(w.Reason)} ({Phrase.Count(w.Checks, "check")})"));
        if (record.Waiting.Length > Most)
            lines.Add($"and {Phrase.Count(record.Waiting.Length - Most, "other reason")}");
        _notes.Add(new()
        {
            Level = spec.Fails ? SeverityWord.Error : SeverityWord.Note,
            Code = "incomplete",
            Message = string.Join('\n', lines),
            Place = Places.Whole(record.Identity.File),
        });
    }

    private string Command(Note note)
    {
        // LogText first: what it puts in must be escaped as the rest.
        var message = LogText.Lines(note.Others.Count > 1 ? $"{note.Message}\nvariants: {string.Join(", ", note.Others)}" : note.Message);
        return WorkflowCommand.Of(note.Level == SeverityWord.Note ? "notice" : Labels.Of(note.Level), Properties(note), message);
    }

    private IEnumerable<(string Name, string Value)> Properties(Note note)
    {
        if (note.Place is { } place)
        {
            yield return ("file", LogText.Line(SafeText.Line(_places.Path(place.File))));
            yield return ("line", Phrase.Whole(place.Line));
            if (Places.HasExtent(place))
                yield return ("endLine", Phrase.Whole(place.EndColumn > 1 ? place.EndLine : place.EndLine - 1));
            yield return ("col", Phrase.Whole(Math.Max(1, place.Column)));

            // Columns are shown of one line only; ours end before the column, theirs on it.
            if (Places.HasExtent(place) && place.EndLine == place.Line)
                yield return ("endColumn", Phrase.Whole(place.EndColumn - 1));
        }

        yield return ("title", note.Code);
    }
}
