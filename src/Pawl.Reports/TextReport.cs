using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports;

/// <summary>How much the text says.</summary>
public enum TextLevel
{
    /// <summary>The summary.</summary>
    Quiet,

    /// <summary>Failures with why and how to mend, concessions, what is not evaluated, the summary.</summary>
    Normal,

    /// <summary>As normal, with everything that conforms and every assumption.</summary>
    Verbose,
}

/// <summary>Text for people and for editors that read <c>file:line:column: severity rule: message</c>.</summary>
/// <param name="level">How much it says.</param>
/// <param name="colour">Whether to colour it with escape sequences.</param>
/// <param name="width">Cells of the terminal that shows it, to break lines at; null where a program reads it: each finding has its line then.</param>
public sealed class TextReport(TextLevel level = TextLevel.Normal, bool colour = false, int? width = null)
{
    /// <summary>Cells from the start of a label to its text: <c>why:  </c>, <c>mend: </c>.</summary>
    private const int Label = 6;

    private readonly Paint _paint = new(colour);

    /// <summary>One spec: the verdict first, then the findings, the worst before all but what follows under its cause.</summary>
    public void Write(ConformanceRecord record, TextWriter to)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(to);
        var lines = new Lines(to, width);
        lines.Write(Summary(record));
        if (level != TextLevel.Quiet)
        {
            var rules = record.Rules.ToDictionary(r => r.Id, StringComparer.Ordinal);
            HashSet<string> told = new(StringComparer.Ordinal);
            foreach (var failure in width is null ? FailureList.Of(record) : SameWords(FailureList.Of(record)))
                Write(failure, rules, told, lines);
            Concessions(record, lines);
            Waiting(record, lines);
        }

        if (level == TextLevel.Verbose)
        {
            foreach (var finding in FindingOrder.WorstFirst(record.Findings, OutcomeWord.Conforms))
                lines.Write($"{Place(finding)} {_paint.Green("conforms")} {Head(finding)}: {FindingText.Measured(finding)}");
            foreach (var deviation in record.Deviations)
            {
                lines.Write($"{Safe(deviation.Place.ToString())}: {_paint.Yellow("deviation")} {Safe(deviation.Rule)}: {Safe(deviation.What)} "
                    + $"{Safe(deviation.House)}, shipped {Safe(deviation.Shipped)}: {Labels.Of(deviation.Effect)}");
                lines.Write($"  approved by {Safe(deviation.ApprovedBy)}: {Safe(deviation.Reason)}");
            }

            foreach (var part in record.Parts)
                lines.Write($"{Safe(record.Identity.File)}: {_paint.Dim("part")} {Safe(part.Subject)}: {Safe(Labels.NumbersOf(part.Drawing, part.Revision, part.PartNumber))}");

            foreach (var assumption in record.Assumptions)
            {
                lines.Write($"{Safe(record.Identity.File)}: {_paint.Dim("assumed")} {Safe(assumption.Quantity)}: "
                    + $"{Safe(Figures.Of(assumption.Value))}, {Safe(assumption.Basis)}");
            }
        }
    }

    /// <summary>Causes of one rule with the same words as one entry; what has consequences stays by itself, above them.</summary>
    private static List<Failure> SameWords(List<Failure> failures)
    {
        List<Failure> merged = [];
        Dictionary<(string, string, bool?), int> places = [];
        for (var i = 0; i < failures.Count; i++)
        {
            var failure = failures[i];
            var isAlone = !failure.IsConsequence && (i + 1 == failures.Count || !failures[i + 1].IsConsequence);
            var key = (failure.Worst.Rule, FindingText.Measured(failure.Worst), failure.Worst.Known?.Holds);
            if (isAlone && places.TryGetValue(key, out var at))
            {
                merged[at] = merged[at] with { Others = [.. merged[at].Others, failure.Worst, .. failure.Others] };
                continue;
            }

            if (isAlone)
                places.Add(key, merged.Count);
            merged.Add(failure);
        }

        return merged;
    }

    private void Write(Failure failure, Dictionary<string, RuleRecord> rules, HashSet<string> told, Lines lines)
    {
        var (finding, indent, also) = (failure.Worst, failure.IsConsequence ? "  " : "", failure.Also(Safe));
        var severity = Labels.SeverityOf(finding);
        var baseline = Labels.BaselineOf(finding);
        var painted = finding.Severity switch
        {
            _ when finding.Known is { Holds: true } => _paint.Yellow(severity),
            SeverityWord.Error => _paint.Red(severity),
            SeverityWord.Warning => _paint.Yellow(severity),
            _ => _paint.Blue(severity),
        };
        lines.Write($"{indent}{Place(finding)} {painted} {Head(finding)}: {FindingText.Measured(finding)}");
        if (also.Length > 0)
            lines.Write($"{indent}  {also}", Label);
        if (baseline.Length > 0)
            lines.Write($"{indent}  {baseline}, {Safe(finding.Known!.Place.ToString())}");
        foreach (var reason in finding.Reasons)
            lines.Write($"{indent}  {Safe(reason)}");
        if (failure.IsConsequence)
            lines.Write($"{indent}  follows from {Safe(finding.FollowsFrom!.Rule)} on {Safe(finding.FollowsFrom.Subject)}");

        // Whoever mends the cause needs no advice on what follows from it, and of what is known it was read before.
        if ((failure.IsConsequence || finding.Known is { Holds: true }) && level != TextLevel.Verbose)
            return;
        if (!rules.TryGetValue(finding.Rule, out var rule))
            return;

        // The same advice again is noise.
        if (told.Add(rule.Id))
        {
            lines.Write($"{indent}  {_paint.Dim("why:")}  {Safe(rule.Why)}", Label);
            lines.Write($"{indent}  {_paint.Dim("mend:")} {Safe(rule.Mend)}", Label);
        }

        if (finding.Suggestion is { } suggestion)
            lines.Write($"{indent}  {_paint.Dim("would do:")} {Safe(suggestion)}");
    }

    private void Concessions(ConformanceRecord record, Lines lines)
    {
        foreach (var finding in FindingOrder.WorstFirst(record.Findings, OutcomeWord.UnderConcession))
        {
            lines.Write($"{Place(finding)} {_paint.Yellow("concession")} {Head(finding)}: {FindingText.Measured(finding)}");
            if (finding.Concession is { } concession)
                lines.Write($"  {FindingText.Of(concession)}");
        }
    }

    private void Waiting(ConformanceRecord record, Lines lines)
    {
        if (record.Coverage.Overall.NotEvaluated == 0)
            return;
        lines.Write($"{Safe(record.Identity.File)}: {_paint.Blue("not evaluated")}: "
            + $"{Phrase.Count(record.Coverage.Overall.NotEvaluated, "check")}");
        foreach (var wait in record.Waiting)
        {
            var alone = wait.Alone == wait.Checks ? "" : wait.Alone == 0 ? ", each for others too" : $", {Phrase.Whole(wait.Alone)} of them for this alone";
            lines.Write($"  {Safe(wait.Reason)} ({Phrase.Count(wait.Checks, "check")}{alone}): {Safe(string.Join(", ", wait.Rules))}");
        }
    }

    private string Summary(ConformanceRecord record)
    {
        var verdict = Labels.Of(record.Verdict);
        var painted = Labels.Alike(record.Verdict) switch
        {
            OutcomeWord.Conforms => _paint.Green(verdict),
            OutcomeWord.Fails => _paint.Red(verdict),
            OutcomeWord.UnderConcession => _paint.Yellow(verdict),
            _ => _paint.Blue(verdict),
        };
        var revision = record.Identity.Revision.Length == 0 ? "" : $" revision {Safe(record.Identity.Revision)}";
        if (Labels.NumbersOf(record.Identity.Drawing, "", record.Identity.PartNumber) is { Length: > 0 } numbers)
            revision += $" ({Safe(numbers)})";
        return $"{Safe(record.Identity.File)}: {Safe(record.Identity.Variant)}{revision} {painted}. {record.Verdict.Statement}";
    }

    private static string Place(FindingRecord finding) => Safe(finding.Place.ToString()) + ":";

    private static string Head(FindingRecord finding) => $"{Safe(finding.Rule)}: {FindingText.Head(finding)}";

    private static string Safe(string text) => SafeText.Line(text);
}
