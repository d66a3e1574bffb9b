using Pawl.Reports.Records;

namespace Pawl.Reports.Rendering;

/// <summary>A finding in words, the same in every format that has no table for it.</summary>
internal static class FindingText
{
    /// <summary>Subject and what the rule demands of it.</summary>
    public static string Head(FindingRecord finding) => $"{SafeText.Line(finding.Subject)} {SafeText.Line(finding.Title)}";

    /// <summary>Value, limit and margin.</summary>
    public static string Measured(FindingRecord finding)
    {
        // A list of faults that should be empty: what is in it says all, and "limit none" would read as no limit.
        if (finding.OneOf is ["none"] && finding.Measured?.Value.Text is { } faults && faults != "none")
            return SafeText.Line(faults);

        var (value, limit) = Figures.Apart(finding);
        var margin = finding.Margin is null ? ""
            : $", margin {(finding.Outcome == OutcomeWord.UnderConcession ? Figures.ConcededMargin(finding) : Figures.Margin(finding))}";
        return $"value {SafeText.Line(value)}, limit {SafeText.Line(limit)}{margin}";
    }

    /// <summary>Until when, how far, for whom and by whom a concession holds, and why.</summary>
    public static string Of(ConcessionRecord concession)
    {
        var variants = concession.Variants.IsEmpty ? "" : $", for {SafeText.Line(string.Join(", ", concession.Variants))}";
        return $"until {Day(concession.Expires)}, down to {Figures.Margin(concession.WorstMargin)}{variants}, "
            + $"approved by {SafeText.Line(concession.ApprovedBy)}: {SafeText.Line(concession.Reason)}";
    }

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
