using System.Xml.Linq;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Drawing;

/// <summary>The tightest checks as bars: how much is in hand, the limit as a line.</summary>
internal static class MarginBars
{
    /// <summary>Checks that are shown.</summary>
    public const int Most = 10;

    private const double RowHeight = 24, Left = 330, Right = 90, Width = 720;

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

        var scale = (Width - Left - Right) / 2;
        var height = (RowHeight * findings.Length) + 34;
        var zero = Left + scale;
        var content = ImmutableArray.CreateBuilder<XElement>();
        for (var i = 0; i < findings.Length; i++)
            content.Add(Row(findings[i], 8 + (RowHeight * i), zero, scale));
        content.Add(Svg.Line("limit", zero, 4, zero, height - 26));
        content.Add(Svg.Text("middle soft", zero, height - 10, "limit"));
        content.Add(Svg.Text("middle soft", zero - scale, height - 10, "−100 %"));
        content.Add(Svg.Text("middle soft", zero + scale, height - 10, "100 %"));
        yield return new()
        {
            Id = "tightest-margins",
            Section = FigureSection.Summary,
            Title = "The tightest margins",
            Description = string.Join("; ", findings.Select(static f => $"{f.Rule} on {f.Subject}: {Figures.Margin(f)}")) + ".",
            Width = Width,
            Height = height,
            Content = content.DrainToImmutable(),
        };
    }

    private static XElement Row(FindingRecord finding, double top, double zero, double scale)
    {
        var margin = Math.Clamp(finding.Margin ?? 0, -1, 1);
        var css = finding.Outcome switch
        {
            OutcomeWord.Fails => "fails",
            OutcomeWord.UnderConcession => "conceded",
            _ => "conforms",
        };
        var end = zero + (margin * scale);
        return Svg.Group(
            "bar",
            Svg.Text("end", Left - 10, top + 13, $"{finding.Rule} · {Short(finding.Subject)}"),
            Svg.Rectangle(css, Math.Min(zero, end), top + 3, Math.Max(1.5, Math.Abs(end - zero)), RowHeight - 10),
            Svg.Text("", Width - Right + 8, top + 13, Figures.Margin(finding)));
    }

    private static string Short(string subject) => subject.Length <= 26 ? subject : "…" + subject[^25..];
}
