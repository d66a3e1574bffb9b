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
        var scale = new RangeScale(-worst, Math.Max(best, 0.01), Left, Width - Left - Right);
        var height = RowHeight * findings.Length;
        var content = ImmutableArray.CreateBuilder<XElement>();
        for (var i = 0; i < findings.Length; i++)
            content.AddRange(Row(findings[i], RowHeight * i, scale));
        content.Add(Svg.Line("limit", scale.At(0), 2, scale.At(0), height + 6));
        content.Add(Svg.Text(worst > 0.4 * (worst + best) ? "middle soft" : "soft", Math.Max(Left, scale.At(0)), height + 18, "limit"));
        content.Add(Svg.Text("end soft", Width - Right, height + 18, Figures.Margin(Math.Max(best, 0.01))));
        yield return new()
        {
            Id = "tightest-margins",
            Section = FigureSection.Summary,
            Title = "The tightest margins",
            Description = string.Join("; ", findings.Select(static f => $"{f.Rule} on {f.Subject}: {Figures.Margin(f)}")) + ".",
            Width = Width,
            Height = height + 24,
            Content = content.DrainToImmutable(),
        };
    }

    private static ImmutableArray<XElement> Row(FindingRecord finding, double top, RangeScale scale)
    {
        var margin = Math.Clamp(finding.Margin ?? 0, -1, 1);
        var (css, sign) = finding.Outcome switch
        {
            OutcomeWord.Fails => ("fails", "✕ "),
            OutcomeWord.UnderConcession => ("conceded", "◐ "),
            _ => ("conforms", ""),
        };
        var (from, to) = (scale.At(Math.Min(0, margin)), scale.At(Math.Max(0, margin)));
        return
        [
            Svg.Rectangle($"range {css}", from, top + 17, Math.Max(2, to - from), 10),
            Svg.Text(sign.Length == 0 ? "" : css, Left + 2, top + 13, TextWidth.Fitted($"{sign}{finding.Rule} · {finding.Subject}", Width - (2 * Left), sign.Length == 0 ? 12 : TextWidth.Bold)),
            Svg.Text("", Width - Right + 8, top + 26, Figures.Margin(finding)),
        ];
    }
}
