using System.Xml.Linq;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Drawing;

/// <summary>Checks as bars on scales of their own: the worst-case range, its nominal, what is permitted. What is broken and what is tightest, part by part.</summary>
internal static class RuleBars
{
    /// <summary>Broken checks of one part that are shown.</summary>
    public const int MostBroken = 8;

    /// <summary>Checks of one part that are shown where fewer are broken.</summary>
    public const int Least = 4;

    /// <summary>Checks that hold which are shown at least, if there are as many.</summary>
    public const int LeastTight = 2;

    private const double Width = 360, Row = 36, Track = 196, Left = 8, Legend = 16;

    public static IEnumerable<Figure> Of(ConformanceRecord record)
    {
        foreach (var domain in record.Findings.Where(static f => HasBar(f)).GroupBy(static f => f.Domain, StringComparer.Ordinal))
        {
            var broken = Broken(domain).ToList();
            var shown = broken.Take(MostBroken).Concat(Tightest(domain).Take(Math.Max(LeastTight, Least - broken.Count))).ToList();
            if (shown.Count > 0)
                yield return Draw(domain.Key, shown, broken.Count - Math.Min(broken.Count, MostBroken));
        }
    }

    /// <summary>Whether a finding is a number against limits in its own unit.</summary>
    public static bool HasBar(FindingRecord finding) => Limits(finding) is not null;

    private static IEnumerable<FindingRecord> Broken(IEnumerable<FindingRecord> findings) => findings
        .Where(static f => PartReader.IsBroken(f))
        .OrderByDescending(static f => f.Outcome == OutcomeWord.Fails).ThenByDescending(static f => f.Severity).ThenBy(static f => f.Margin ?? 0)
        .ThenBy(static f => f.Rule, StringComparer.Ordinal).ThenBy(static f => f.Subject, StringComparer.Ordinal);

    // What demands one value and has it has nothing in hand and needs nothing; what is merely plausible says nothing of a part.
    private static IEnumerable<FindingRecord> Tightest(IEnumerable<FindingRecord> findings) => findings
        .Where(static f => f is { Outcome: OutcomeWord.Conforms, Severity: SeverityWord.Error, Margin: not null, AbsoluteMargin: null }
            && !f.Rule.StartsWith("plausible/", StringComparison.Ordinal)
            && Limits(f) is var (least, most) && (least is null || least != most))
        .OrderBy(static f => f.Margin).ThenBy(static f => f.Rule, StringComparer.Ordinal).ThenBy(static f => f.Subject, StringComparer.Ordinal);

    /// <summary>The limits at the end that counts, in the unit of the value.</summary>
    private static (double? Least, double? Most)? Limits(FindingRecord finding)
    {
        if (finding.Measured?.Value is not { } value || PartReader.In(value, value.Unit) is null)
            return null;
        var least = PartReader.In(finding.AtLeast?.Value, value.Unit)?.High;
        var most = PartReader.In(finding.AtMost?.Value, value.Unit)?.Low;
        return least is null && most is null ? null : (least, most);
    }

    private static Figure Draw(string domain, List<FindingRecord> findings, int more)
    {
        var content = ImmutableArray.CreateBuilder<XElement>();
        var y = 0.0;
        foreach (var finding in findings)
            y = Add(content, finding, y);
        var end = y + 12;
        content.Add(Svg.Text("soft", Left, end, TextWidth.Fitted(
            $"bar: worst case; notch: nominal; light: permitted{(more == 0 ? "" : $"; {Phrase.Whole(more)} more broken")}", Width - (2 * Left), 11)));
        return new()
        {
            Id = $"rules-{domain}",
            Section = SectionOf(domain),
            Title = findings.Exists(static f => PartReader.IsBroken(f)) ? $"{domain}: what is broken and what is tightest" : $"{domain}: the tightest checks",
            Description = string.Join("; ", findings.Select(static f => $"{f.Rule} on {f.Subject} {Labels.Of(f.Outcome)}, margin {Figures.Margin(f)}")) + (more == 0 ? "." : $"; {Phrase.Whole(more)} more are broken."),
            Width = Width,
            Height = end + (Legend / 2),
            Content = content.DrainToImmutable(),
        };
    }

    private static double Add(ImmutableArray<XElement>.Builder content, FindingRecord finding, double top)
    {
        var value = finding.Measured!.Value;
        var (least, most) = Limits(finding)!.Value;
        var scale = RangeScale.Around(((double?[])[value.Low, value.High, least, most]).OfType<double>(), Left, Track);
        var (css, sign) = finding.Outcome switch
        {
            OutcomeWord.Fails => ("fails", "✕"),
            OutcomeWord.UnderConcession => ("conceded", "◐"),
            _ => ("conforms", "✓"),
        };
        var note = finding is { Outcome: OutcomeWord.Fails, Severity: not SeverityWord.Error } ? $"{Labels.Of(finding.Severity)} " : "";
        var label = PartReader.Label(
            PartReader.IsBroken(finding) ? PartReader.SignClass(finding) : "", $"{sign} {note}{finding.Rule}", finding.Subject, Left, top + 12, Width - (2 * Left));
        content.AddRange(label);
        top += (label.Length - 1) * PartReader.LineHeight;
        content.AddRange(scale.Limits(least, most, top + 17, 14));
        content.AddRange(scale.Bar($"range {(css == "fails" && finding.Severity == SeverityWord.Note ? "noted" : css)}", value, top + 20, 8));
        content.Add(Svg.Text("soft", Left + Track + 8, top + 28, TextWidth.Fitted($"{Shown(finding, value)}{Bounds(least, most)}", Width - Left - Track - 12, 11)));
        return top + Row;
    }

    /// <summary>The end that counts, or the nominal of what has no tolerance.</summary>
    private static string Shown(FindingRecord finding, ValueRecord value) =>
        PartReader.Plain(finding.Worst is { } worst && double.IsFinite(worst) ? worst : value.Nominal!.Value, value.Unit);

    private static string Bounds(double? least, double? most) => (least, most) switch
    {
        ({ } low, { } high) when low == high => $" = {PartReader.Plain(low, "")}",
        ({ } low, { } high) => $", {PartReader.Plain(low, "")}…{PartReader.Plain(high, "")}",
        ({ } low, _) => $" ≥ {PartReader.Plain(low, "")}",
        _ => $" ≤ {PartReader.Plain(most!.Value, "")}",
    };

    private static FigureSection SectionOf(string domain) => domain switch
    {
        "Train" => FigureSection.Train,
        "Gears" or "Meshes" => FigureSection.Meshes,
        "Bearings" => FigureSection.Bearings,
        "Seals" => FigureSection.Seals,
        "Joints" => FigureSection.Joints,
        "Fits" => FigureSection.Fits,
        "Stacks" => FigureSection.Stacks,
        _ => FigureSection.Others,
    };
}
