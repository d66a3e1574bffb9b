using System.Xml.Linq;
using Pawl.Quantities;
using Pawl.Reports.Rendering;
using Pawl.Reports.Trials;

namespace Pawl.Reports.Drawing;

/// <summary>Margins over one or two values of a spec.</summary>
internal static class SweepFigure
{
    private const int Most = 8;
    private const double Width = 860, Left = 70, Right = 300, Top = 34, Plot = 300, Worst = -0.5, Best = 1;

    /// <summary>Margin against value: the rules that are the tightest somewhere, the first to fail marked; null for words and where nothing moves.</summary>
    public static Figure? Lines(SweepRecord sweep)
    {
        var x = sweep.First.Numbers;
        var drawn = Tightest(sweep);
        if (x.Length < 2 || drawn.IsEmpty || !(x[^1] > x[0]))
            return null;
        var content = ImmutableArray.CreateBuilder<XElement>();
        content.Add(Svg.Rectangle("ground", Left, Y(0), Width - Left - Right, Y(Worst) - Y(0)));
        foreach (var margin in (double[])[-0.5, 0, 0.5, 1])
        {
            content.Add(Svg.Line(margin == 0 ? "limit" : "grid", Left, Y(margin), Width - Right, Y(margin)));
            content.Add(Svg.Text("end soft", Left - 8, Y(margin) + 4, margin == 0 ? "limit" : Figures.Margin(margin)));
        }

        foreach (var at in (double[])[x[0], (x[0] + x[^1]) / 2, x[^1]])
            content.Add(Svg.Text("middle soft", X(at), Top + Plot + 18, Figures.Join(Formatting.Significant(at, 4), sweep.First.Unit)));
        content.Add(Svg.Text("middle", (Left + Width - Right) / 2, Top + Plot + 38, sweep.First.Path));
        content.Add(Svg.Text("", Left, 16, "Margin; −50 % and less, 100 % and more on the edge"));
        for (var i = 0; i < drawn.Length; i++)
        {
            content.Add(Svg.Path($"curve dash-{Phrase.Whole(i % 4)}", drawn[i].Findings.Select((f, at) => (f, at)).Where(p => p.f?.Margin is not null).Select(p => (X(x[p.at]), Y(p.f!.Margin!.Value)))));
            var last = drawn[i].Findings.LastIndexOf(drawn[i].Findings.LastOrDefault(static f => f?.Margin is not null));
            content.Add(Svg.Text("", X(x[last]) + 4, Y(drawn[i].Findings[last]!.Margin!.Value) + 4, Phrase.Whole(i + 1)));
            content.Add(Svg.Text("", Width - Right + 34, Top + 12 + (34 * i), $"{Phrase.Whole(i + 1)} {drawn[i].Rule}"));
            content.Add(Svg.Text("soft", Width - Right + 46, Top + 26 + (34 * i), Short(drawn[i].Subject)));
        }

        var firsts = Firsts(sweep);
        foreach (var (point, line) in firsts)
        {
            if (line.Findings[point]?.Margin is { } margin)
                content.Add(Svg.Text("middle fails", X(x[point]), Y(margin) + 5, "✕"));
        }

        var sentences = SweepReport.Ranges(sweep).ToArray();
        return new()
        {
            Id = "sweep",
            Section = FigureSection.Summary,
            Title = $"Margins over {sweep.First.Path}",
            Description = string.Join(". ", sentences) + ". Lines: " + string.Join("; ", drawn.Select((line, i) => $"{Phrase.Whole(i + 1)} {line.Rule} on {line.Subject}")) + ".",
            Width = Width,
            Height = Math.Max(Top + Plot + 50, Top + 20 + (34 * drawn.Length)),
            Content = content.DrainToImmutable(),
        };

        double X(double value) => Left + ((value - x[0]) / (x[^1] - x[0]) * (Width - Left - Right));
        static double Y(double margin) => Top + ((Best - Math.Clamp(margin, Worst, Best)) / (Best - Worst) * Plot);
    }

    /// <summary>Two values: a cell for each combination, with sign and least margin.</summary>
    public static Figure? Grid(SweepRecord sweep)
    {
        const double Row = 26, Cell = 92, Label = 150;
        var (columns, rows) = (sweep.First.Texts, sweep.Second!.Texts);
        if (columns.Length > 40 || rows.Length > 80)
            return null;
        var content = ImmutableArray.CreateBuilder<XElement>();
        content.Add(Svg.Text("", Label, 16, sweep.First.Path));
        content.Add(Svg.Text("", 4, 40, Short(sweep.Second.Path)));
        for (var column = 0; column < columns.Length; column++)
            content.Add(Svg.Text("middle soft", Label + (Cell * (column + 0.5)), 40, columns[column]));
        for (var row = 0; row < rows.Length; row++)
        {
            content.Add(Svg.Text("end soft", Label - 8, 54 + (Row * row) + 16, rows[row]));
            for (var column = 0; column < columns.Length; column++)
            {
                var point = (row * columns.Length) + column;
                var (sign, word) = SweepReport.OutcomeAt(sweep, point);
                var css = word switch { "conforms" => "conforms", "fails" => "fails", _ => "open" };
                content.Add(Svg.Rectangle($"cell {css}", Label + (Cell * column) + 1, 54 + (Row * row), Cell - 2, Row - 2));
                content.Add(Svg.Text("middle", Label + (Cell * (column + 0.5)), 54 + (Row * row) + 16, $"{sign} {(sweep.LeastAt(point) is { Finding.Margin: { } margin } ? Figures.Margin(margin) : "")}".TrimEnd()));
            }
        }

        return new()
        {
            Id = "sweep",
            Section = FigureSection.Summary,
            Title = $"Least margins over {sweep.First.Path} and {sweep.Second.Path}",
            Description = $"{Phrase.Whole(sweep.Points.Where((_, i) => SweepReport.OutcomeAt(sweep, i).Word == "conforms").Count())} of {Phrase.Whole(sweep.Points.Length)} combinations conform.",
            Width = Label + (Cell * columns.Length) + 4,
            Height = 60 + (Row * rows.Length),
            Content = content.DrainToImmutable(),
        };
    }

    /// <summary>The lower envelope: each line is the tightest at some point; those that fail first before the others.</summary>
    private static ImmutableArray<SweepLine> Tightest(SweepRecord sweep)
    {
        List<SweepLine> lines = [.. Firsts(sweep).Select(static f => f.Line).Where(static l => l.Findings.Any(static f => f?.Margin is not null))];
        for (var point = 0; point < sweep.Points.Length; point++)
        {
            if (sweep.LeastAt(point) is { Finding.Margin: not null, Line: var line })
                lines.Add(line);
        }

        return [.. lines.Distinct().Take(Most)];
    }

    /// <summary>The worst of the rules that fail where no rule failed one step before, or one step after.</summary>
    private static IEnumerable<(int Point, SweepLine Line)> Firsts(SweepRecord sweep)
    {
        for (var point = 0; point < sweep.Points.Length; point++)
        {
            if (!sweep.Points[point].IsJudged || !Beside(point - 1) && !Beside(point + 1))
                continue;
            if (sweep.FailingAt(point).Where(static l => !l.IsSame).MinBy(line => line.Findings[point]!.Margin ?? double.NegativeInfinity) is { } first)
                yield return (point, first);
        }

        bool Beside(int point) => point >= 0 && point < sweep.Points.Length && sweep.Points[point].IsJudged && !sweep.FailingAt(point).Any();
    }

    private static string Short(string text) => text.Length <= 36 ? text : "…" + text[^35..];
}
