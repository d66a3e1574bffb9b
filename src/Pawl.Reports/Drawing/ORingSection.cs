using System.Xml.Linq;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Drawing;

/// <summary>O-rings in their grooves, at least and at greatest squeeze.</summary>
internal static class ORingSection
{
    private const double Width = 360, Panel = 172, Top = 26, Wall = 14, Room = 150, Highest = 96;

    public static IEnumerable<Figure> Of(ConformanceRecord record) => PartReader.Drawn(record, "o_ring").Select(Draw).OfType<Figure>();

    private static Figure? Draw(PartReader ring)
    {
        if (Glands(ring) is not var (least, greatest))
            return null;

        // One scale for both, so that they can be held against each other.
        var tall = Math.Max(Math.Max(least.Height, least.FreeCord), Math.Max(greatest.Height, greatest.FreeCord));
        var wide = Math.Max(Math.Max(least.Width, least.FreeCord), Math.Max(greatest.Width, greatest.FreeCord));
        var scale = Math.Min((Room - 28) / wide, Highest / tall);
        var bottom = Top + (tall * scale) + Wall;
        var content = ImmutableArray.CreateBuilder<XElement>();
        content.AddRange(Section("least squeeze", least, 4, bottom, scale));
        content.AddRange(Section("greatest squeeze", greatest, Width - Panel - 4, bottom, scale));

        var fill = ring.Number("gland_fill", "%");
        var y = bottom + Wall + 17;
        var step = RangeScale.Nice(40 / scale);
        content.Add(Svg.Line("scale", 12, y - 4, 12 + (step * scale), y - 4));
        content.Add(Svg.Text("soft", 12 + (step * scale) + 6, y, $"{PartReader.Plain(step, "mm")}; thin: cord before; dashed: hot, swollen"));
        y += 18;
        foreach (var (label, name, unit) in (ReadOnlySpan<(string, string, string)>)[("Squeeze", "squeeze", "%"), ("Fill", "gland_fill", "%"), ("Gap", "extrusion_gap", "mm")])
        {
            if (ring.Number(name, unit) is not { } value)
                continue;
            content.AddRange(PartReader.Row($"{label} {Figures.Limits(value)}", ring.LimitWords(name, unit), y, Width));
            y += 16;
        }

        y -= 16;
        content.AddRange(ring.Signs(8, y + 17, Width - 16));
        y += ring.SignsHeight();
        return new()
        {
            Id = $"o-ring-{ring.Name}",
            Section = FigureSection.Seals,
            Title = $"O-ring {ring.Name} in its groove, to scale",
            Description = $"Section of {ring.Path}, {ring.Text("gland")}. At least squeeze {Words(least)}; at greatest squeeze {Words(greatest)}."
                + (fill is null ? "" : $" Fill hot and swollen {Figures.Limits(fill)}.")
                + Limited("squeeze", ring.LimitWords("squeeze", "%")) + Limited("fill", ring.LimitWords("gland_fill", "%")) + ring.SignWords(),
            Width = Width,
            Height = y + 10,
            Content = content.DrainToImmutable(),
        };
    }

    private static string Limited(string what, string limits) => limits.Length == 0 ? "" : $" Limits of {what}: {limits}.";

    private static string Words(Gland gland) =>
        $"{Percent(gland.Squeeze)} in a gland {PartReader.Plain(Math.Round(gland.Height, 3), "mm")} high and {PartReader.Plain(Math.Round(gland.Width, 3), "mm")} wide, gap {PartReader.Plain(Math.Round(gland.Gap, 3), "mm")}";

    private static string Percent(double squeeze) => Figures.Of(new() { Nominal = Math.Round(squeeze * 100, 2), Unit = "%" });

    private static IEnumerable<XElement> Section(string title, Gland gland, double left, double bottom, double scale)
    {
        var (middle, right) = (left + (Panel / 2), left + Panel);
        var (height, width, gap) = (gland.Height * scale, gland.Width * scale, Math.Min(gland.Gap, gland.Height) * scale);
        var ceiling = bottom - height;
        var land = ceiling + gap;
        var (from, to) = (middle - (width / 2), middle + (width / 2));
        yield return Svg.Text("middle", middle, 14, $"{title} {Percent(gland.Squeeze)}");
        yield return Svg.Rectangle("metal", left, ceiling - Wall, Panel, Wall);
        yield return Svg.Path("metal", [(left, land), (from, land), (from, bottom), (to, bottom), (to, land), (right, land), (right, bottom + Wall), (left, bottom + Wall)], closed: true);
        var rubber = gland.RubberWidth * scale;
        var centre = gland.BackUps == 1 ? from + (rubber / 2) : middle;
        if (gland.BackUps > 0)
            yield return Svg.Rectangle("solid", centre + (rubber / 2), ceiling, (width - rubber) / gland.BackUps, height);
        if (gland.BackUps > 1)
            yield return Svg.Rectangle("solid", from, ceiling, (width - rubber) / 2, height);
        if (gland.Squeeze > 0)
            yield return Svg.Path("rubber", Outline(gland.Area, gland.Height, gland.RubberWidth, centre, bottom, scale));
        else
            yield return Svg.Circle("rubber", centre, bottom - (gland.FreeCord * scale / 2), gland.FreeCord * scale / 2);
        yield return Svg.Circle("thin", centre, bottom - (gland.FreeCord * scale / 2), gland.FreeCord * scale / 2);
        if (gland.Swollen is { } swollen && swollen > gland.Area && gland.Squeeze > 0)
            yield return Svg.Path("hidden", Outline(swollen, gland.Height, gland.RubberWidth, centre, bottom, scale));
        if (gland.Area > gland.Height * gland.RubberWidth || gland.Swollen > gland.Height * gland.RubberWidth)
            yield return Svg.Text("middle fails", middle, bottom - (height / 2) + 4, "✕ overfilled");
        else if (gland.Squeeze <= 0)
            yield return Svg.Text("middle fails", middle, bottom - (height / 2) + 4, "✕ no contact");
    }

    /// <summary>A rectangle with round corners of the area of the rubber: half circles where the walls of the groove leave them room.</summary>
    private static string Outline(double area, double height, double width, double centre, double bottom, double scale)
    {
        var free = height + Math.Max(0, (area - (Math.PI * height * height / 4)) / height);
        var wide = Math.Min(free, width);
        var corner = free <= width ? height / 2 : Math.Min(Math.Min(height, width) / 2, Math.Sqrt(Math.Max(0, (height * width) - area) / (4 - Math.PI)));
        var (left, right, top) = (centre - (wide * scale / 2), centre + (wide * scale / 2), bottom - (height * scale));
        var r = corner * scale;
        var arc = $"A{Svg.Number(r)} {Svg.Number(r)} 0 0 1 ";
        string Point(double x, double y) => $"{Svg.Number(x)} {Svg.Number(y)}";
        return $"M{Point(left + r, top)}L{Point(right - r, top)}{arc}{Point(right, top + r)}L{Point(right, bottom - r)}{arc}{Point(right - r, bottom)}"
            + $"L{Point(left + r, bottom)}{arc}{Point(left, bottom - r)}L{Point(left, top + r)}{arc}{Point(left + r, top)}Z";
    }

    /// <summary>The gland at both ends of the squeeze; null where a number is missing or no such gland can be.</summary>
    private static (Gland Least, Gland Greatest)? Glands(PartReader ring)
    {
        if (ring.Number("squeeze", "%") is not { } squeeze || ring.Number("squeeze_length", "mm") is not { } length
            || ring.Number("cord", "mm") is not { } cord || ring.Number("width", "mm") is not { } width)
        {
            return null;
        }

        var clearance = ring.Number("plug_clearance", "mm");
        var offset = ring.Number("eccentricity", "mm");
        var backUps = (ring.Text("back_up_rings"), ring.Number("back_up_thickness", "mm")) switch
        {
            ("one", not null) => 1,
            ("two", not null) => 2,
            _ => 0,
        };
        var thickness = ring.Number("back_up_thickness", "mm")?.Nominal ?? 0;

        Gland? At(double share, double taken, double free, double wide, double gap, double? growth)
        {
            // Squeeze as a share and as a length: between them they say how thick the stretched cord is.
            var stretched = share != 0 && taken / share > 0 ? taken / share : free;
            var height = stretched - taken;
            var area = Math.PI * stretched * stretched / 4;
            var rubber = wide - (backUps * thickness);
            var gland = new Gland(share, stretched, height, wide, rubber, Math.Max(0, gap), area, growth * height * rubber, backUps);
            return height > 0 && rubber > 0 && stretched > 0 && wide < 40 * stretched && stretched < 40 * wide && height < 40 * stretched ? gland : null;
        }

        var guided = Math.Max(0, (clearance?.Low / 2) - offset?.Nominal ?? 0);
        var least = At(squeeze.Low!.Value / 100, length.Low!.Value, cord.Low!.Value, width.High!.Value, ring.Number("extrusion_gap", "mm")?.High ?? 0, null);
        var greatest = At(squeeze.High!.Value / 100, length.High!.Value, cord.High!.Value, width.Low!.Value, guided, ring.Number("gland_fill", "%")?.High / 100);
        return least is { } first && greatest is { } second ? (first, second) : null;
    }

    /// <summary>A gland and its ring. Lengths in mm, areas in mm², squeeze as a ratio.</summary>
    /// <param name="Squeeze">Squeeze of the cross-section.</param>
    /// <param name="FreeCord">Thickness of the cord as stretched over its groove.</param>
    /// <param name="Height">From the bottom of the groove to the other part.</param>
    /// <param name="Width">Width of the groove.</param>
    /// <param name="RubberWidth">What of it back-up rings leave.</param>
    /// <param name="Gap">Gap between the parts beside the groove.</param>
    /// <param name="Area">Section of the cord.</param>
    /// <param name="Swollen">Its section hot and swollen; null where it is not known.</param>
    /// <param name="BackUps">Number of back-up rings.</param>
    private sealed record Gland(double Squeeze, double FreeCord, double Height, double Width, double RubberWidth, double Gap, double Area, double? Swollen, int BackUps);
}
