using System.Xml.Linq;
using Pawl.Reports.Records;

namespace Pawl.Reports.Drawing;

/// <summary>Fits as tolerance zones after ISO 286-1 on one scale in µm: hole and shaft about the nominal diameter, and the clearances that they leave.</summary>
internal static class FitZones
{
    /// <summary>Fits of one figure.</summary>
    public const int Most = 8;

    private const double Width = 360, Left = 10, Plot = 340, Row = 76, Top = 10;

    public static IEnumerable<Figure> Of(ConformanceRecord record)
    {
        var fits = PartReader.Drawn(record, "fit").Select(Read).OfType<Fit>().ToList();
        var sheets = fits.Chunk(Most).ToList();
        for (var i = 0; i < sheets.Count; i++)
            yield return Draw(sheets[i], sheets.Count == 1 ? "" : $" ({Phrase.Whole(i + 1)} of {Phrase.Whole(sheets.Count)})", i + 1);
    }

    private static Fit? Read(PartReader part)
    {
        if (part.Number("diameter", "mm") is not { Nominal: > 0 and var nominal }
            || part.Number("hole", "mm") is not { } hole || part.Number("shaft", "mm") is not { } shaft)
        {
            return null;
        }

        return new(part, nominal, Deviations(hole, nominal), Deviations(shaft, nominal), part.Number("clearance_20", "µm"), part.Number("clearance", "µm"));
    }

    /// <summary>Deviations from the nominal diameter, µm; its own nominal is the middle of the zone.</summary>
    private static ValueRecord Deviations(ValueRecord diameter, double nominal)
    {
        double Deviation(double? at) => Math.Round((at!.Value - nominal) * 1000, 3);
        return new() { Nominal = Deviation(diameter.Nominal), Min = Deviation(diameter.Low), Max = Deviation(diameter.High), Unit = "µm" };
    }

    private static Figure Draw(Fit[] fits, string which, int number)
    {
        var scale = RangeScale.Around(
            [0, .. fits.SelectMany(static f => ((ValueRecord?[])[f.Hole, f.Shaft, f.Room, f.Service]).OfType<ValueRecord>()).SelectMany(static v => (double[])[v.Low!.Value, v.High!.Value])],
            Left, Plot, 0.03);
        var content = ImmutableArray.CreateBuilder<XElement>();
        var y = Top;
        foreach (var fit in fits)
            y = Add(content, fit, scale, y);
        var step = RangeScale.Nice(80 / scale.PerUnit);
        content.Add(Svg.Line("scale", Left, y + 2, Left + (step * scale.PerUnit), y + 2));
        content.Add(Svg.Text("soft", Left + (step * scale.PerUnit) + 6, y + 6, $"{PartReader.Plain(step, "µm")}; line: nominal size, left of it interference"));
        return new()
        {
            Id = $"fits-{Phrase.Whole(number)}",
            Section = FigureSection.Fits,
            Title = $"Fits as tolerance zones{which}",
            Description = string.Concat(fits.Select(Words)).TrimStart(),
            Width = Width,
            Height = y + 14,
            Content = content.DrainToImmutable(),
        };
    }

    private static double Add(ImmutableArray<XElement>.Builder content, Fit fit, RangeScale scale, double top)
    {
        content.Add(Svg.Text("", Left, top + 4, TextWidth.Fitted(
            $"{fit.Part.Name} ⌀ {PartReader.Plain(fit.Nominal, "mm")}{(fit.Part.Text("function") is { } function ? $", {function}" : "")}", Width - (2 * Left))));
        content.Add(Svg.Rectangle("hole", scale.At(fit.Hole.Min!.Value), top + 9, Math.Max(1, scale.At(fit.Hole.Max!.Value) - scale.At(fit.Hole.Min.Value)), 11));
        content.Add(Svg.Rectangle("pin", scale.At(fit.Shaft.Min!.Value), top + 22, Math.Max(1, scale.At(fit.Shaft.Max!.Value) - scale.At(fit.Shaft.Min.Value)), 11));
        content.Add(Svg.Line("", scale.At(0), top + 7, scale.At(0), top + 51));
        content.Add(Svg.Text("soft", Left, top + 63, TextWidth.Fitted($"hole {Signed(fit.Hole)}, shaft {Signed(fit.Shaft)} µm", 190, 11)));
        if (Limited(fit.Part) is { Length: > 0 } limits)
            content.Add(Svg.Text("end soft", Width - 8, top + 63, TextWidth.Fitted(limits, 162, 11)));
        Put(fit.Hole, "hole", top + 18);
        Put(fit.Shaft, "shaft", top + 31);
        var broken = fit.Part.Broken;
        var css = broken.IsEmpty ? "range" : "range " + PartReader.SignClass(broken[0]);
        if (fit.Room is { } cold)
            content.AddRange(scale.Bar(fit.Service is null ? css : "range", cold, top + 36, 5));
        if (fit.Service is { } service)
            content.AddRange(scale.Bar(css, service, top + 43, 5));
        foreach (var (least, most) in fit.Part.Limits("clearance", "µm").Select(static l => (l.Least, l.Most))
            .Concat(fit.Part.Limits("interference", "µm").Select(static l => (-l.Most, -l.Least))))
        {
            foreach (var limit in ((double?[])[least, most]).OfType<double>())
                content.Add(Svg.Line("limit", scale.At(limit), top + 36, scale.At(limit), top + 49));
        }

        if (fit.Service is not null || fit.Room is not null)
        {
            content.Add(Svg.Text("soft", Left, top + 77, TextWidth.Fitted(
                $"clearance{(fit.Room is { } room ? $" at 20 °C {Signed(room)}" : "")}{(fit.Service is { } hot ? $" in service {Signed(hot)}" : "")} µm", Width - (2 * Left), 11)));
        }

        content.AddRange(fit.Part.Signs(Left, top + 92, Width - (2 * Left), 2));
        return top + Row + 22 + fit.Part.SignsHeight(2);

        // Beside its zone, on the side that has more room.
        void Put(ValueRecord zone, string word, double y)
        {
            var (from, to) = (scale.At(zone.Min!.Value), scale.At(zone.Max!.Value));
            var right = to < Width / 2 || from < 44;
            content.Add(Svg.Text(right ? "soft" : "end soft", right ? to + 4 : from - 4, y, word));
        }
    }

    private static string Limited(PartReader part)
    {
        var clearance = part.LimitWords("clearance", "µm");
        var interference = part.LimitWords("interference", "µm");
        return clearance.Length > 0 ? $"clearance {clearance}" : interference.Length > 0 ? $"interference {interference}" : "";
    }

    private static string Words(Fit fit) =>
        $" {fit.Part.Path}, ⌀ {PartReader.Plain(fit.Nominal, "mm")}: hole {Signed(fit.Hole)} µm, shaft {Signed(fit.Shaft)} µm"
        + (fit.Room is { } cold ? $", clearance at 20 °C {Signed(cold)} µm" : "") + (fit.Service is { } service ? $", in service {Signed(service)} µm" : "") + "." + fit.Part.SignWords();

    /// <summary>Both ends with their signs: <c>−34/−16</c>.</summary>
    private static string Signed(ValueRecord value) => $"{Signed(value.Low!.Value)}/{Signed(value.High!.Value)}";

    private static string Signed(double value)
    {
        var rounded = Math.Round(value, 1, MidpointRounding.AwayFromZero);
        return (rounded > 0 ? "+" : "") + PartReader.Plain(rounded == 0 ? 0 : rounded, "");
    }

    /// <summary>A fit: deviations and clearances in µm.</summary>
    private sealed record Fit(PartReader Part, double Nominal, ValueRecord Hole, ValueRecord Shaft, ValueRecord? Room, ValueRecord? Service);
}
