using System.Xml.Linq;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Drawing;

/// <summary>The tightest checks as bars: how much is in hand, the limit as a line.</summary>
internal static class MarginBars
{
    /// <summary>Checks that are shown.</summary>
    public const int Most = 10;

    private const double RowHeight = 34, Left = 8, Right = 84, Width = 360;

    /// <summary>
    /// The checks of severity error with the least margins, the worst first. Those without a margin as a share are left out, and those that
    /// demand one value and have it: nothing can be in hand there.
    /// </summary>
    public static ImmutableArray<FindingRecord> Tightest(ConformanceRecord record) =>
    [
        .. record.Findings
            .Where(static f => f is { Margin: not null, AbsoluteMargin: null, Severity: SeverityWord.Error } && !IsExact(f))
            .OrderBy(static f => f.Margin)
            .ThenBy(static f => f.Rule, StringComparer.Ordinal)
            .ThenBy(static f => f.Subject, StringComparer.Ordinal)
            .Take(Most),
    ];

    private static bool IsExact(FindingRecord finding) =>
        finding is { Margin: 0, Outcome: OutcomeWord.Conforms, AtLeast.Value: var least, AtMost.Value: var most } && least == most;

    public static IEnumerable<Figure> Of(ConformanceRecord record)
    {
        var findings = Tightest(record);
        if (findings.IsEmpty)
            yield break;

        // As far to either side as the bars reach, and never beyond the limit itself.
        var worst = Math.Clamp(Math.Max(0, -findings[0].Margin!.Value), 0, 1);
        var best = Math.Clamp(findings[^1].Margin!.Value, 0, 1);
        var scale = new RangeScale(-worst, Math.Max(best, 0.01), Left + 2, Width - Left - Right);
        var content = ImmutableArray.CreateBuilder<XElement>();
        var height = 0.0;
        foreach (var finding in findings)
            height = Add(content, finding, height, scale);
        content.Add(Svg.Text("soft", Left + 2, height + 14, "bar: margin, right of the limit; fails: left of it"));
        yield return new()
        {
            Id = "tightest-margins",
            Section = FigureSection.Summary,
            Title = "The tightest margins",
            Description = string.Join("; ", findings.Select(static f => $"{f.Rule} on {f.Subject}: {Figures.Margin(f)}")) + ".",
            Width = Width,
            Height = height + 20,
            Content = content.DrainToImmutable(),
        };
    }

    private static double Add(ImmutableArray<XElement>.Builder content, FindingRecord finding, double top, RangeScale scale)
    {
        var margin = Math.Clamp(finding.Margin ?? 0, -1, 1);
        var (css, sign) = finding.Outcome switch
        {
            OutcomeWord.Fails => ("fails", "✕ "),
            OutcomeWord.UnderConcession => ("conceded", "◐ "),
            _ => ("conforms", ""),
        };
        var (from, to) = (scale.At(Math.Min(0, margin)), scale.At(Math.Max(0, margin)));
        var label = PartReader.Label(sign.Length == 0 ? "" : css, sign + finding.Rule, finding.Subject, Left + 2, top + 13, Width - (2 * Left));
        content.AddRange(label);
        top += (label.Length - 1) * PartReader.LineHeight;
        content.Add(Svg.Rectangle($"range {css}", from, top + 17, Math.Max(2, to - from), 10));
        content.Add(Svg.Line("limit", scale.At(0), top + 15, scale.At(0), top + 29));
        content.Add(Svg.Text("", Width - Right + 8, top + 26, Figures.Margin(finding)));
        return top + RowHeight;
    }
}
