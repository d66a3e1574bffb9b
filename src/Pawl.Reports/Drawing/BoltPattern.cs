using System.Xml.Linq;
using Pawl.Reports.Records;

namespace Pawl.Reports.Drawing;

/// <summary>Clamped faces from the front: bolts on their circle in the order of tightening, and dowels.</summary>
internal static class BoltPattern
{
    private const double Width = 360, Middle = 180, Radius = 150, Top = 8;
    private const int MostBolts = 120;

    public static IEnumerable<Figure> Of(ConformanceRecord record)
    {
        var dowels = PartReader.All(record, "dowel").ToList();
        return PartReader.Drawn(record, "joint").Select(joint => Draw(joint, dowels.Find(d => Holds(d, joint)))).OfType<Figure>();
    }

    private static Figure? Draw(PartReader joint, PartReader? dowels)
    {
        if (joint.Number("bolts") is not { Nominal: >= 1 and <= MostBolts and var bolts } || joint.Number("bolt_circle", "mm") is not { Nominal: > 1e-6 and var circle })
            return null;
        var count = (int)Math.Round(bolts);
        var face = joint.Number("face", "mm")?.Nominal ?? 0;
        var hole = joint.Number("hole", "mm")?.Nominal ?? 0;
        var outside = joint.Number("outside", "mm")?.Nominal;
        var inside = joint.Number("inside", "mm")?.Nominal;
        var dowelCircle = dowels?.Number("circle", "mm")?.Nominal ?? circle;
        var pin = dowels?.Number("diameter", "mm")?.Nominal ?? 0;
        var scale = Radius / (Math.Max(Math.Max(outside ?? 0, circle + Math.Max(face, hole)), Math.Max(inside ?? 0, dowelCircle + pin)) / 2);
        var centre = Top + Radius;
        var content = ImmutableArray.CreateBuilder<XElement>();
        if (outside is > 0 and var wide)
            content.Add(Svg.Circle("metal", Middle, centre, wide / 2 * scale));
        if (inside is > 0 and var narrow)
            content.Add(Svg.Circle("void", Middle, centre, narrow / 2 * scale));
        content.Add(Svg.Circle("centre", Middle, centre, circle / 2 * scale));
        content.Add(Svg.Line("centre", Middle - 10, centre, Middle + 10, centre));
        content.Add(Svg.Line("centre", Middle, centre - 10, Middle, centre + 10));
        var order = Order(joint.Text("tightening_sequence"), count);
        for (var i = 0; i < count; i++)
        {
            var (x, y) = At(circle, (double)i / count);
            if (face > 0)
                content.Add(Svg.Circle("solid", x, y, face / 2 * scale));
            if (hole > 0)
                content.Add(Svg.Circle("thin", x, y, hole / 2 * scale));
            if (order is not null && face * scale >= 13)
                content.Add(Svg.Text("middle", x, y + 4, Phrase.Whole(order[i])));
        }

        var places = DowelPlaces(dowels, count);
        foreach (var place in places)
        {
            var (x, y) = At(dowelCircle, place);
            content.Add(Svg.Circle("dowel", x, y, Math.Max(1.5, pin / 2 * scale)));
        }

        var text = Top + (2 * Radius) + 22;
        content.Add(Svg.Text("middle", Middle, centre - 24, TextWidth.Fitted($"{Phrase.Whole(count)} × {joint.Text("thread") ?? "bolt"}", 150)));
        content.Add(Svg.Text("middle soft", Middle, centre + 28, $"circle {PartReader.Plain(circle, "mm")}"));
        if (!places.IsEmpty)
            content.Add(Svg.Text("middle soft", Middle, centre + 43, $"{Phrase.Whole(places.Length)} dowels {PartReader.Plain(pin, "mm")}"));
        content.Add(Svg.Text("soft", 8, text, order is null ? "Bolts spread evenly" : "Bolts spread evenly, numbered in the order of tightening"));
        if (!places.IsEmpty)
            content.Add(Svg.Text("soft", 8, text += 14, "Filled: dowels, drawn midway between bolts"));
        text += 16;
        content.AddRange(dowels?.Signs(8, text, Width - 16) ?? []);
        text += dowels?.SignsHeight() ?? 0;
        return new()
        {
            Id = $"bolts-{joint.Name}",
            Section = FigureSection.Joints,
            Title = $"Bolts of {joint.Name}",
            Description = $"{Phrase.Count(count, "bolt")} {joint.Text("thread")} on a circle of {PartReader.Plain(circle, "mm")}"
                + (outside is { } o ? $", face to {PartReader.Plain(o, "mm")}" : "") + (inside is { } n ? $" from {PartReader.Plain(n, "mm")}" : "")
                + (order is null ? "" : $"; in the order of tightening, numbered round the circle: {joint.Text("tightening_sequence")}")
                + (places.IsEmpty ? "" : $"; {Phrase.Whole(places.Length)} dowels of {PartReader.Plain(pin, "mm")} on a circle of {PartReader.Plain(dowelCircle, "mm")}, drawn midway between bolts")
                + "." + dowels?.SignWords(),
            Width = Width,
            Height = text,
            Content = content.DrainToImmutable(),
        };

        (double X, double Y) At(double diameter, double turn) => (
            Middle + (diameter / 2 * scale * Math.Sin(2 * Math.PI * turn)), centre - (diameter / 2 * scale * Math.Cos(2 * Math.PI * turn)));
    }

    /// <summary>Places of the dowels as shares of a turn: in gaps between bolts that are spread as evenly as there are gaps.</summary>
    private static ImmutableArray<double> DowelPlaces(PartReader? dowels, int bolts)
    {
        if (dowels?.Number("count") is not { Nominal: >= 1 and <= MostBolts and var stated })
            return [];
        var count = (int)Math.Round(stated);
        return [.. Enumerable.Range(0, count).Select(i => count <= bolts ? (Math.Floor((double)i * bolts / count) + 0.5) / bolts : ((double)i / count) + (0.5 / bolts))];
    }

    /// <summary>For each bolt, counted round the circle, its turn in tightening; null where the sequence is none of these bolts.</summary>
    private static int[]? Order(string? sequence, int count)
    {
        var words = sequence?.Split(' ', StringSplitOptions.RemoveEmptyEntries) ?? [];
        if (words.Length != count)
            return null;
        var order = new int[count];
        for (var turn = 0; turn < count; turn++)
        {
            if (!int.TryParse(words[turn], System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var bolt)
                || bolt < 1 || bolt > count || order[bolt - 1] != 0)
            {
                return null;
            }

            order[bolt - 1] = turn + 1;
        }

        return order;
    }

    /// <summary>Whether dowels hold the parts of a joint: something of theirs is computed of it.</summary>
    private static bool Holds(PartReader dowels, PartReader joint) => dowels.Subject.Quantities
        .SelectMany(static q => q.Terms).Any(t => t.Quantity?.StartsWith(joint.Path + ".", StringComparison.Ordinal) == true);
}
