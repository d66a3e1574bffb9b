using System.Xml.Linq;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Drawing;

/// <summary>A part as figures read it: its numbers, its limits, and the rules that it breaks.</summary>
internal sealed class PartReader
{
    // Beyond it differences of coordinates would not be finite, or nothing of a part could be seen.
    private const double Greatest = 1e12;

    // More figures of one kind make a report longer, not clearer.
    private const int MostDrawn = 40;

    /// <summary>From one line of text to the next.</summary>
    public const double LineHeight = 14;

    private readonly Dictionary<string, ValueRecord> _values = new(StringComparer.Ordinal);
    private readonly ImmutableArray<FindingRecord> _findings;

    private PartReader(SubjectRecord subject, ImmutableArray<FindingRecord> findings)
    {
        Subject = subject;
        _findings = findings;
        foreach (var quantity in subject.Quantities)
            _values.TryAdd(quantity.Name, quantity.Value);
    }

    /// <summary>The part in the record.</summary>
    public SubjectRecord Subject { get; }

    /// <summary>Its path.</summary>
    public string Path => Subject.Path;

    /// <summary>The last part of its path, which is what the spec calls it.</summary>
    public string Name => Path[(Path.LastIndexOf('.') + 1)..];

    /// <summary>What is put to it and fails, or is under concession: the worst first.</summary>
    public ImmutableArray<FindingRecord> Broken =>
        [.. _findings.Where(static f => IsBroken(f)).OrderByDescending(static f => f.Severity).ThenBy(static f => f.Margin ?? double.NegativeInfinity).ThenBy(static f => f.Rule, StringComparer.Ordinal)];

    /// <summary>The parts of one kind that are drawn, in the order of the record: of very many those first that break a rule.</summary>
    public static IEnumerable<PartReader> Drawn(ConformanceRecord record, string kind)
    {
        var parts = All(record, kind).ToList();
        return parts.Count <= MostDrawn ? parts : parts.OrderByDescending(static p => p._findings.Any(IsBroken)).Take(MostDrawn);
    }

    /// <summary>All parts of one kind, in the order of the record.</summary>
    public static IEnumerable<PartReader> All(ConformanceRecord record, string kind)
    {
        var findings = record.Findings.ToLookup(static f => f.Subject, StringComparer.Ordinal);
        return record.Subjects.Where(s => s.Kind == kind).Select(s => new PartReader(s, [.. findings[s.Path]]));
    }

    /// <summary>Whether a finding breaks its rule, permitted or not.</summary>
    public static bool IsBroken(FindingRecord finding) => finding.Outcome is OutcomeWord.Fails or OutcomeWord.UnderConcession;

    /// <summary>A number in a unit; null where the part has none, or one that cannot be drawn.</summary>
    public ValueRecord? Number(string name, string unit = "") =>
        _values.TryGetValue(name, out var value) ? Sane(value, unit) : null;

    /// <summary>A word; null where the part has none.</summary>
    public string? Text(string name) => _values.GetValueOrDefault(name)?.Text;

    /// <summary>Whether the part has a truth that is so.</summary>
    public bool Is(string name) => _values.GetValueOrDefault(name)?.Truth is true;

    /// <summary>The rules that set limits to one quantity, in the unit of the quantity; the gravest first.</summary>
    public IEnumerable<LimitMark> Limits(string name, string unit = "")
    {
        var path = $"{Path}.{name}";
        return _findings
            .Where(f => f.Measured?.Quantity == path && f.Outcome is not (OutcomeWord.NotEvaluated or OutcomeWord.NotApplicable))
            .OrderByDescending(static f => f.Severity).ThenBy(static f => f.Rule, StringComparer.Ordinal)
            .Select(f => new LimitMark(f, In(f.AtLeast?.Value, unit)?.High, In(f.AtMost?.Value, unit)?.Low))
            .Where(static l => l.Least is not null || l.Most is not null);
    }

    /// <summary>Whether a rule that demands one of some quantities fails, by more than a note and without a concession.</summary>
    public bool Breaks(params ReadOnlySpan<string> names)
    {
        foreach (var name in names)
        {
            if (_findings.Any(f => f.Outcome == OutcomeWord.Fails && f.Severity != SeverityWord.Note && f.Measured?.Quantity == $"{Path}.{name}"))
                return true;
        }

        return false;
    }

    /// <summary>The limits in words: <c>8…35, warning 10…30 %</c>; empty without any.</summary>
    public string LimitWords(string name, string unit = "")
    {
        List<string> words = [];
        foreach (var group in Limits(name, unit).GroupBy(static l => l.Finding.Severity))
        {
            var least = group.Max(static l => l.Least);
            var most = group.Min(static l => l.Most);
            var range = (least, most) switch
            {
                ({ } low, { } high) => $"{Plain(low, "")}…{Plain(high, "")}",
                ({ } low, _) => "≥ " + Plain(low, ""),
                _ => "≤ " + Plain(most!.Value, ""),
            };
            words.Add(group.Key == SeverityWord.Error ? range : $"{Labels.Of(group.Key)} {range}");
        }

        return words.Count == 0 ? "" : Figures.Join(string.Join(", ", words), unit);
    }

    /// <summary>A value at the left and its limits at the right of one line.</summary>
    public static ImmutableArray<XElement> Row(string value, string limits, double y, double width)
    {
        const double Left = 8, Middle = 164;
        var titled = $"limits {limits}";
        return limits.Length == 0
            ? [Svg.Text("", Left, y, TextWidth.Fitted(value, width - (2 * Left)))]
            : [
                Svg.Text("", Left, y, TextWidth.Fitted(value, Middle - Left - 4)),
                Svg.Text("soft", Middle, y, TextWidth.Fitted(TextWidth.Of(titled, 11) < width - Middle ? titled : limits, width - Middle - 2, 11)),
            ];
    }

    /// <summary>The broken rules as lines below each other: a sign, the rule, the margin. The last line says how many more there are.</summary>
    public ImmutableArray<XElement> Signs(double x, double y, double width, int most = 3)
    {
        var broken = Broken;
        var lines = ImmutableArray.CreateBuilder<XElement>();
        for (var i = 0; i < Math.Min(most, broken.Length); i++)
        {
            var finding = broken[i];
            var more = i == most - 1 && broken.Length > most ? $" (+{Phrase.Whole(broken.Length - most)} more)" : "";
            lines.Add(Svg.Text(SignClass(finding), x, y + (15 * i), TextWidth.Fitted($"{Sign(finding)}{more}", width, TextWidth.Bold)));
        }

        return lines.DrainToImmutable();
    }

    /// <summary>How high <see cref="Signs"/> is.</summary>
    public double SignsHeight(int most = 3) => 15 * Math.Min(most, Broken.Length);

    /// <summary>The broken rules in words, for who does not see the figure.</summary>
    public string SignWords()
    {
        const int Most = 4;
        var broken = Broken;
        return broken.IsEmpty ? "" : " Broken: " + string.Join("; ", broken.Take(Most).Select(static f => $"{f.Rule} ({Labels.Of(f.Outcome)}, {Labels.Of(f.Severity)})")) + (broken.Length > Most ? $" and {Phrase.Whole(broken.Length - Most)} more." : ".");
    }

    /// <summary>A rule and its subject: on one line where the rule holds, the subject below a rule that is broken.</summary>
    /// <param name="css">Class of the rule; empty where it holds.</param>
    /// <param name="rule">The rule, with its sign.</param>
    /// <param name="subject">The subject.</param>
    /// <param name="x">Where they begin.</param>
    /// <param name="y">Base line of the first.</param>
    /// <param name="width">Room for each.</param>
    public static ImmutableArray<XElement> Label(string css, string rule, string subject, double x, double y, double width) => css.Length == 0
        ? [Svg.Text(css, x, y, TextWidth.Fitted($"{rule} · {subject}", width))]
        : [Svg.Text(css, x, y, TextWidth.Fitted(rule, width, TextWidth.Bold)), Svg.Text("soft", x + 12, y + LineHeight, TextWidth.Fitted(subject, width - 12, 11))];

    /// <summary>The class of figure.css for the outcome of a finding.</summary>
    public static string SignClass(FindingRecord finding) => finding.Outcome == OutcomeWord.UnderConcession ? "conceded" : finding.Severity == SeverityWord.Note ? "noted" : "fails";

    private static string Sign(FindingRecord finding)
    {
        var (symbol, word) = finding.Outcome == OutcomeWord.UnderConcession ? ("◐", " conceded") : finding.Severity == SeverityWord.Error ? ("✕", "") : ("✕", " " + Labels.Of(finding.Severity));
        return $"{symbol}{word} {finding.Rule} {(finding.Margin is null ? "fails" : Figures.Margin(finding))}";
    }

    /// <summary>A number and its unit, rounded.</summary>
    public static string Plain(double value, string unit) => Figures.Of(new() { Nominal = value, Unit = unit });

    /// <summary>The value in another unit; null where it is no number that can be drawn, or of another kind.</summary>
    public static ValueRecord? In(ValueRecord? value, string unit)
    {
        if (value is null || Sane(value, value.Unit) is not { } sane)
            return null;
        double? factor = (sane.Unit, unit) switch
        {
            var (from, to) when from == to => 1,
            ("%", "") or ("N", "kN") or ("µm", "mm") => From(sane.Unit),
            ("", "%") => 100,
            ("kN", "N") or ("mm", "µm") => 1000,
            _ => null,
        };
        return factor is { } f ? Scaled(sane, f, unit) : null;
    }

    /// <summary>A value times a factor.</summary>
    public static ValueRecord Scaled(ValueRecord value, double factor, string unit) =>
        new() { Nominal = value.Nominal * factor, Min = value.Min * factor, Max = value.Max * factor, Unit = unit };

    private static double From(string unit) => unit == "%" ? 0.01 : 0.001;

    private static ValueRecord? Sane(ValueRecord value, string unit) =>
        value.Nominal is { } nominal && value.Unit == unit && IsDrawable(nominal)
        && value.Low is { } low && IsDrawable(low) && value.High is { } high && IsDrawable(high) && low <= high
            ? value
            : null;

    private static bool IsDrawable(double value) => Math.Abs(value) <= Greatest;
}

/// <summary>What a rule permits of a quantity.</summary>
/// <param name="Finding">The finding.</param>
/// <param name="Least">The least that is permitted; null: no lower limit.</param>
/// <param name="Most">The most that is permitted; null: no upper limit.</param>
internal sealed record LimitMark(FindingRecord Finding, double? Least, double? Most);
