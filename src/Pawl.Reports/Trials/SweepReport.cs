using System.Globalization;
using System.Text;
using System.Text.Json;
using Pawl.Quantities;
using Pawl.Reports.Drawing;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Trials;

/// <summary>A sweep in the forms in which people and programs read it.</summary>
public static class SweepReport
{
    /// <summary>A table for a terminal, and where each range begins and ends.</summary>
    public static void Write(SweepRecord sweep, TextWriter to)
    {
        ArgumentNullException.ThrowIfNull(sweep);
        ArgumentNullException.ThrowIfNull(to);
        to.WriteLine($"{SafeText.Line(sweep.SpecFile)}: {Said(sweep.First)}{(sweep.Second is { } second ? $", by {Said(second)}" : "")}");
        foreach (var line in sweep.Lines.Where(static l => l.IsSame && l.Severity == SeverityWord.Error && l.Findings.Any(static f => f is { Outcome: OutcomeWord.Fails })))
            to.WriteLine($"  fails whatever the value: {line.Rule} on {SafeText.Line(line.Subject)}");
        to.WriteLine();
        if (sweep.Second is not null)
            Matrix(sweep, to);
        else
            Table(sweep, to);
    }

    /// <summary>Every evaluated rule at every point, one a line, as comma-separated values (RFC 4180).</summary>
    public static string Csv(SweepRecord sweep)
    {
        ArgumentNullException.ThrowIfNull(sweep);
        var csv = new StringBuilder();
        csv.Append(Field(sweep.First.Path)).Append(',');
        if (sweep.Second is { } second)
            csv.Append(Field(second.Path)).Append(',');
        csv.Append("rule,subject,severity,outcome,value,unit,margin\r\n");
        for (var point = 0; point < sweep.Points.Length; point++)
        {
            foreach (var line in sweep.Lines)
            {
                if (line.Findings[point] is not { Outcome: not OutcomeWord.NotApplicable } finding)
                    continue;
                csv.Append(Field(TextAt(sweep, point).First)).Append(',');
                if (sweep.Second is not null)
                    csv.Append(Field(TextAt(sweep, point).Second)).Append(',');
                csv.Append(CultureInfo.InvariantCulture, $"{Field(line.Rule)},{Field(line.Subject)},{Labels.Of(line.Severity)},{Labels.Of(finding.Outcome)},{Number(finding.Value)},{Field(finding.Value is null ? "" : line.Unit)},{Number(finding.Margin)}\r\n");
            }
        }

        return csv.ToString();
    }

    /// <summary>The record as JSON.</summary>
    public static string Json(SweepRecord sweep)
    {
        ArgumentNullException.ThrowIfNull(sweep);
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, new() { Indented = true, NewLine = "\n", Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteString("spec", sweep.SpecFile);
            json.WriteStartArray("values");
            Axis(json, sweep.First);
            if (sweep.Second is { } second)
                Axis(json, second);
            json.WriteEndArray();
            json.WriteStartArray("points");
            foreach (var point in sweep.Points)
            {
                json.WriteStartObject();
                json.WriteBoolean("judged", point.IsJudged);
                if (point.Refusal.Length > 0)
                    json.WriteString("refusal", point.Refusal);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartArray("rules");
            foreach (var line in sweep.Lines)
                Line(json, line);
            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray()) + "\n";
    }

    /// <summary>Margins over the value as a figure; null where there is nothing to draw.</summary>
    public static string? Svg(SweepRecord sweep)
    {
        ArgumentNullException.ThrowIfNull(sweep);
        return (sweep.Second is null ? SweepFigure.Lines(sweep) : SweepFigure.Grid(sweep))?.File();
    }

    /// <summary>A margin as all outputs write it.</summary>
    public static string Margin(double margin) => Figures.Margin(margin);

    internal static (string First, string Second) TextAt(SweepRecord sweep, int point) =>
        (sweep.First.Texts[point % sweep.First.Texts.Length], sweep.Second?.Texts[point / sweep.First.Texts.Length] ?? "");

    /// <summary>How a point came out, in a sign and a word.</summary>
    internal static (string Sign, string Word) OutcomeAt(SweepRecord sweep, int point) => sweep.Points[point] switch
    {
        { Refusal.Length: > 0 } => ("–", "cannot be judged"),
        { IsJudged: false } => ("–", "not reached"),
        _ when sweep.FailingAt(point).Any() => (Labels.Symbol(OutcomeWord.Fails), "fails"),
        _ when sweep.OpenAt(point) > 0 => (Labels.Symbol(OutcomeWord.NotEvaluated), "incomplete"),
        _ => (Labels.Symbol(OutcomeWord.Conforms), "conforms"),
    };

    private static string Said(SweepAxis axis) =>
        $"{SafeText.Line(axis.Path)}, {Phrase.Whole(axis.Texts.Length)} {(axis.Texts.Length == 1 ? "value" : "values")} from {SafeText.Line(axis.Texts[0])} to {SafeText.Line(axis.Texts[^1])}";

    private static void Table(SweepRecord sweep, TextWriter to)
    {
        List<(string Value, string Outcome, string Margin, string Rule)> rows = [("value", "outcome", "least margin", "of")];
        for (var point = 0; point < sweep.Points.Length; point++)
        {
            var (sign, word) = OutcomeAt(sweep, point);
            var least = sweep.LeastAt(point);
            rows.Add((
                SafeText.Line(sweep.First.Texts[point]), $"{sign} {word}",
                least is { Finding.Margin: { } margin } ? Figures.Margin(margin) : "",
                sweep.Points[point].Refusal is { Length: > 0 } refusal ? SafeText.Line(refusal)
                : least is { Line: var line } ? $"{line.Rule} on {SafeText.Line(line.Subject)}" : ""));
        }

        var widths = (rows.Max(static r => r.Value.Length), rows.Max(static r => r.Outcome.Length), rows.Max(static r => r.Margin.Length));
        foreach (var (value, outcome, margin, rule) in rows)
            to.WriteLine($"  {value.PadRight(widths.Item1)}  {outcome.PadRight(widths.Item2)}  {margin.PadLeft(widths.Item3)}  {rule}".TrimEnd());
        to.WriteLine();
        foreach (var sentence in Ranges(sweep))
            to.WriteLine(sentence);
    }

    /// <summary>Where it conforms, and what fails first beyond.</summary>
    internal static IEnumerable<string> Ranges(SweepRecord sweep)
    {
        var texts = sweep.First.Texts;
        var any = false;
        for (var from = 0; from < texts.Length; from++)
        {
            if (!Holds(from))
                continue;
            any = true;
            var to = from;
            while (to + 1 < texts.Length && Holds(to + 1))
                to++;
            var below = from > 0 ? $"; at {SafeText.Line(texts[from - 1])} {Blocked(sweep, from - 1)}" : "";
            var above = to + 1 < texts.Length ? $"; at {SafeText.Line(texts[to + 1])} {Blocked(sweep, to + 1)}" : "";
            yield return $"no rule fails {(from == to ? "at " + SafeText.Line(texts[from]) : $"from {SafeText.Line(texts[from])} to {SafeText.Line(texts[to])}")}{below}{above}";
            from = to;
        }

        if (!any)
            yield return "at no value do all rules hold";

        bool Holds(int point) => sweep.Points[point].IsJudged && !sweep.FailingAt(point).Any();
    }

    private static string Blocked(SweepRecord sweep, int point)
    {
        if (sweep.Points[point].Refusal is { Length: > 0 } refusal)
            return $"the spec cannot be judged: {SafeText.Line(refusal.TrimEnd('.'))}";
        ImmutableArray<SweepLine> failing = [.. sweep.FailingAt(point).OrderBy(line => line.Findings[point]!.Margin ?? double.NegativeInfinity)];
        return failing switch
        {
            [] => "it was not reached",
            [var one] => $"{one.Rule} fails on {SafeText.Line(one.Subject)}",
            _ => $"{failing[0].Rule} fails on {SafeText.Line(failing[0].Subject)}, and {Phrase.Whole(failing.Length - 1)} more",
        };
    }

    private static void Matrix(SweepRecord sweep, TextWriter to)
    {
        var (columns, rows) = (sweep.First.Texts, sweep.Second!.Texts);
        var cells = new string[rows.Length + 1, columns.Length + 1];
        cells[0, 0] = "";
        for (var column = 0; column < columns.Length; column++)
            cells[0, column + 1] = SafeText.Line(columns[column]);
        for (var row = 0; row < rows.Length; row++)
        {
            cells[row + 1, 0] = SafeText.Line(rows[row]);
            for (var column = 0; column < columns.Length; column++)
            {
                var point = (row * columns.Length) + column;
                cells[row + 1, column + 1] = $"{OutcomeAt(sweep, point).Sign} {(sweep.LeastAt(point) is { Finding.Margin: { } margin } ? Figures.Margin(margin) : "")}".TrimEnd();
            }
        }

        for (var row = 0; row <= rows.Length; row++)
        {
            var line = new StringBuilder(" ");
            for (var column = 0; column <= columns.Length; column++)
                line.Append(' ').Append(cells[row, column].PadRight(Width(column)));
            to.WriteLine(line.ToString().TrimEnd());
        }

        to.WriteLine();
        to.WriteLine("each cell: outcome, least margin of the rules that the values move");

        int Width(int column)
        {
            var width = 0;
            for (var row = 0; row <= rows.Length; row++)
                width = Math.Max(width, cells[row, column].Length + 1);
            return width;
        }
    }

    private static void Axis(Utf8JsonWriter json, SweepAxis axis)
    {
        json.WriteStartObject();
        json.WriteString("path", axis.Path);
        json.WriteString("unit", axis.Unit);
        json.WriteStartArray("texts");
        foreach (var text in axis.Texts)
            json.WriteStringValue(text);
        json.WriteEndArray();
        json.WriteStartArray("numbers");
        foreach (var number in axis.Numbers)
            json.WriteNumberValue(number);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Line(Utf8JsonWriter json, SweepLine line)
    {
        json.WriteStartObject();
        json.WriteString("rule", line.Rule);
        json.WriteString("subject", line.Subject);
        json.WriteString("severity", Labels.Of(line.Severity));
        json.WriteString("unit", line.Unit);
        json.WriteBoolean("same_everywhere", line.IsSame);
        List("outcomes", static f => f is null ? null : Labels.Of(f.Outcome));
        Numbers("values", static f => f?.Value);
        Numbers("margins", static f => f?.Margin);
        json.WriteEndObject();

        void List(string name, Func<SweepFinding?, string?> of)
        {
            json.WriteStartArray(name);
            foreach (var finding in line.Findings)
                json.WriteStringValue(of(finding));
            json.WriteEndArray();
        }

        void Numbers(string name, Func<SweepFinding?, double?> of)
        {
            json.WriteStartArray(name);
            foreach (var finding in line.Findings)
            {
                if (of(finding) is { } number && double.IsFinite(number))
                    json.WriteNumberValue(number);
                else
                    json.WriteNullValue();
            }

            json.WriteEndArray();
        }
    }

    private static string Number(double? value) => value is { } number && double.IsFinite(number) ? Formatting.Significant(number, 12) : "";

    // What begins like a formula is text to a spreadsheet too.
    private static string Field(string text)
    {
        var safe = text is ['=' or '+' or '-' or '@' or '\t' or '\r', ..] && !double.TryParse(text, CultureInfo.InvariantCulture, out _) ? "'" + text : text;
        return safe.AsSpan().ContainsAny(",\"\r\n") ? $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : safe;
    }
}
