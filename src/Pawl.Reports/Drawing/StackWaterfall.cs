using System.Xml.Linq;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Drawing;

/// <summary>Stacks of sizes: how sizes and tolerances add up to the gap, how the gap is spread, and the gap as assembled and in service.</summary>
internal static class StackWaterfall
{
    private const double Width = 360, Names = 96, Sizes = 132, Spread = 112, Row = 30, Top = 22;
    private const int MostRows = 24;

    public static IEnumerable<Figure> Of(ConformanceRecord record)
    {
        var sizes = PartReader.All(record, "contributor").ToLookup(static p => p.Subject.Related.FirstOrDefault(static r => r.Role == "stack")?.Subject, StringComparer.Ordinal);
        return PartReader.Drawn(record, "stack").Select(stack => Draw(stack, [.. sizes[stack.Path]])).OfType<Figure>();
    }

    private static Figure? Draw(PartReader stack, ImmutableArray<PartReader> parts)
    {
        if (stack.Number("worst_case", "mm") is not { } gap || parts.IsEmpty)
            return null;
        var sizes = parts.Select(Read).OfType<Size>().ToList();
        if (sizes.Count != parts.Length)
            return null;

        var content = ImmutableArray.CreateBuilder<XElement>();
        var y = Top;
        if (sizes.Count <= MostRows)
            y = Waterfall(content, sizes, gap);
        y = Distribution(content, stack, gap, y + 8);
        y = InService(content, stack, y + 8);
        content.AddRange(stack.Signs(8, y + 12, Width - 16));
        y += stack.SignsHeight();
        return new()
        {
            Id = $"stack-{stack.Name}",
            Section = FigureSection.Stacks,
            Title = $"Stack {stack.Name}: sizes, gap and end play",
            Description = $"{stack.Path}: {string.Join(", ", sizes.Take(MostRows).Select(static s => $"{s.Name} {Signed(s.Share)} ±{Figures.Of(Length(s.Half))}"))}"
                + $" make a gap of {Figures.Of(gap)}"
                + string.Concat(Stages(stack).Select(static s => $", {s.Words} {Figures.Limits(s.Value)}"))
                + (stack.LimitWords("end_play", "mm") is { Length: > 0 } limits ? $"; limits as assembled {limits}." : ".") + stack.SignWords(),
            Width = Width,
            Height = y + 10,
            Content = content.DrainToImmutable(),
        };
    }

    /// <summary>Sizes one after the other at the left, to scale; their tolerances at the right, much larger.</summary>
    private static double Waterfall(ImmutableArray<XElement>.Builder content, List<Size> sizes, ValueRecord gap)
    {
        List<double> sums = [0];
        foreach (var size in sizes)
            sums.Add(sums[^1] + size.Share);
        var scale = RangeScale.Around(sums, Names, Sizes, 0.02);
        var half = Math.Max(sizes.Sum(static s => s.Half), 1e-9);
        var spread = new RangeScale(-half, half, Width - Spread - 8, Spread);
        content.Add(Svg.Text("soft", Names, 12, "sizes"));
        content.Add(Svg.Text("middle soft", spread.At(0), 12, $"tolerances, {Phrase.Whole((int)Math.Clamp(Math.Round(spread.PerUnit / scale.PerUnit), 0, 1e6))} ×"));
        var taken = 0.0;
        for (var i = 0; i <= sizes.Count; i++)
        {
            var y = Top + (Row * i);
            var size = i < sizes.Count ? sizes[i] : new Size("gap", gap.Nominal!.Value, half, "");
            var (from, to) = i < sizes.Count ? (scale.At(sums[i]), scale.At(sums[i + 1])) : (scale.At(0), scale.At(sums[^1]));
            content.Add(Svg.Text("", 8, y + 11, TextWidth.Fitted(size.Name, Names - 14)));
            content.Add(Svg.Text("soft", 8, y + 24, $"{Signed(size.Share)}"));
            content.Add(Svg.Rectangle(i == sizes.Count ? "sum" : size.Share < 0 ? "closes" : "opens", Math.Min(from, to), y + 4, Math.Max(1.5, Math.Abs(to - from)), 14));
            if (i < sizes.Count)
                content.Add(Svg.Line("thin", to, y + 18, to, y + Row + 4));
            taken += size.Half;
            var whole = i == sizes.Count ? half : taken;
            content.Add(Svg.Line("thin", spread.At(-whole), y + 11, spread.At(whole), y + 11));
            content.Add(Svg.Rectangle(i == sizes.Count ? "sum" : "opens", spread.At(-size.Half), y + 6, spread.At(size.Half) - spread.At(-size.Half), 10));
            content.Add(Svg.Text("middle soft", spread.At(0), y + 27, $"±{PartReader.Plain(Math.Round(size.Half, 4), "mm")}"));
        }

        return Top + (Row * (sizes.Count + 1));
    }

    /// <summary>The gap without shims: the worst case as a bar, a normal distribution of the standard deviation as a curve, most of the random assemblies.</summary>
    private static double Distribution(ImmutableArray<XElement>.Builder content, PartReader stack, ValueRecord gap, double top)
    {
        const double Tall = 44;
        var sampled = stack.Number("sampled", "mm");
        var deviation = stack.Number("standard_deviation", "mm")?.Nominal;
        var shimmed = stack.Is("shimmed");
        List<double> ends = [gap.Low!.Value, gap.High!.Value];
        if (sampled is not null)
            ends.AddRange([sampled.Low!.Value, sampled.High!.Value]);
        var (least, most) = (stack.Number("window_min", "mm")?.Nominal, stack.Number("window_max", "mm")?.Nominal);
        if (!shimmed)
            ends.AddRange(((double?[])[least, most]).OfType<double>());
        var scale = RangeScale.Around(ends, 8, Width - 16);
        content.Add(Svg.Text("", 8, top + 10, TextWidth.Fitted($"Gap {(shimmed ? "without shims " : "")}{Figures.Limits(gap)}", Width - 16)));
        var floor = top + 18 + Tall;
        if (!shimmed)
            content.AddRange(scale.Limits(least, most, top + 18, Tall + 12));
        if (deviation is > 0 and var sigma && gap.Nominal is { } mean)
        {
            content.Add(Svg.Path("curve", Enumerable.Range(-14, 29).Select(i => i / 4.0)
                .Where(i => Inside(mean + (i * sigma), scale)).Select(i => (scale.At(mean + (i * sigma)), floor - (Tall * Math.Exp(-i * i / 2)))), closed: true));
        }

        content.AddRange(scale.Bar("range", gap, floor + 1, 4));
        if (sampled is not null)
            content.AddRange(scale.Bar("range conforms", sampled, floor + 6, 4));
        content.Add(Svg.Text("soft", 8, floor + 24, TextWidth.Fitted(
            $"upper bar: worst case{(sampled is null ? "" : $"; lower: 99.73 %, {Figures.Limits(sampled)}")}", Width - 16, 11)));
        return floor + 30;
    }

    private static bool Inside(double value, RangeScale scale) => scale.At(value) is > 8.01 and < Width - 8.01;

    /// <summary>The gap as assembled and in service, on one scale with the limits.</summary>
    private static double InService(ImmutableArray<XElement>.Builder content, PartReader stack, double top)
    {
        var stages = Stages(stack).ToList();
        if (stages.Count == 0)
            return top;
        var limits = stages.SelectMany(s => stack.Limits(s.Name, "mm")).SelectMany(static l => (double?[])[l.Least, l.Most]).OfType<double>();
        var scale = RangeScale.Around([0, .. stages.SelectMany(static s => (double[])[s.Value.Low!.Value, s.Value.High!.Value]), .. limits], 108, Width - 116);
        var y = top;
        foreach (var stage in stages)
        {
            var marks = stack.Limits(stage.Name, "mm").ToList();
            var broken = marks.Find(static m => PartReader.IsBroken(m.Finding));
            if (marks.Count > 0)
                content.AddRange(scale.Limits(marks.Max(static m => m.Least), marks.Min(static m => m.Most), y, 18));
            var css = marks.Count == 0 ? "range" : broken is null ? "range conforms" : $"range {PartReader.SignClass(broken.Finding)}";
            content.AddRange(scale.Bar(css, stage.Value, y + 5, 8));
            content.Add(Svg.Text(broken is null ? "" : PartReader.SignClass(broken.Finding), 8, y + 13, $"{(broken is null ? "" : "✕ ")}{stage.Words}"));
            y += 20;
        }

        content.Add(Svg.Line("thin", scale.At(0), top, scale.At(0), y));
        content.Add(Svg.Text("middle soft", scale.At(0), y + 11, "0"));
        var step = RangeScale.Nice(90 / scale.PerUnit);
        content.Add(Svg.Line("scale", Width - 8 - (step * scale.PerUnit), y + 4, Width - 8, y + 4));
        content.Add(Svg.Text("end soft", Width - 14 - (step * scale.PerUnit), y + 10, PartReader.Plain(step, "mm")));
        return y + 16;
    }

    private static IEnumerable<(string Name, string Words, ValueRecord Value)> Stages(PartReader stack) =>
        from stage in (ImmutableArray<(string Name, string Words)>)
        [
            ("end_play", "as assembled"), ("end_play_cold", "coldest start"), ("end_play_running", "running"), ("end_play_hot", "hottest oil"),
            ("end_play_warm_up", "warming up"), ("end_play_in_service", "in service"),
        ]
        let value = stack.Number(stage.Name, "mm")
        where value is not null
        select (stage.Name, stage.Words, value);

    private static Size? Read(PartReader part)
    {
        if (part.Number("size", "mm") is not { Low: { } low, High: { } high } || part.Number("coefficient") is not { Nominal: { } factor })
            return null;

        // The middle of the limits, as the gap is computed: g = Σ c·m ± Σ |c|·h.
        return new(part.Text("name") ?? part.Name, factor * (low + high) / 2, Math.Abs(factor) * (high - low) / 2, part.Path);
    }

    private static ValueRecord Length(double value) => new() { Nominal = Math.Round(value, 6), Unit = "mm" };

    private static string Signed(double value) => (value > 0 ? "+" : "") + Figures.Of(Length(value));

    /// <summary>What a size takes part with, mm: its middle with its sign in the gap, and half of its tolerance.</summary>
    private sealed record Size(string Name, double Share, double Half, string Path);
}
