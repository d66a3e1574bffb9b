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
public sealed class TextReport(TextLevel level = TextLevel.Normal, bool colour = false)
{
    private readonly Paint _paint = new(colour);

    /// <summary>One spec: findings first, the worst before all but what follows under its cause; a summary line last.</summary>
    public void Write(ConformanceRecord record, TextWriter to)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(to);
        var lines = new Lines(to);
        if (level != TextLevel.Quiet)
        {
            var rules = record.Rules.ToDictionary(r => r.Id, StringComparer.Ordinal);
            foreach (var failure in FailureList.Of(record))
                Write(failure, rules, lines);
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

        lines.Write(Summary(record));
    }

    private void Write(Failure failure, Dictionary<string, RuleRecord> rules, Lines lines)
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
            lines.Write($"{indent}  {also}");
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
        lines.Write($"{indent}  {_paint.Dim("why:")} {Safe(rule.Why)}");
        lines.Write($"{indent}  {_paint.Dim("mend:")} {Safe(rule.Mend)}");
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
