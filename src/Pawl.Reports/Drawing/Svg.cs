using System.Globalization;
using System.Text;
using System.Xml.Linq;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Drawing;

/// <summary>Elements of a figure. Coordinates in the units of its drawing area, x to the right and y downwards.</summary>
internal static class Svg
{
    /// <summary>A number with two decimals at most, the same on every machine.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is not finite: a figure is drawn of finite values alone.</exception>
    public static string Number(double value)
    {
        if (!double.IsFinite(value))
            throw new ArgumentOutOfRangeException(nameof(value), value, "A coordinate is finite.");
        var rounded = Math.Round(value, 2, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("0.##", CultureInfo.InvariantCulture);
    }

    public static XElement Group(string css, params ReadOnlySpan<XElement> content)
    {
        var group = new XElement("g", new XAttribute("class", css));
        foreach (var element in content)
            group.Add(element);
        return group;
    }

    public static XElement Line(string css, double x1, double y1, double x2, double y2) => Element(
        "line", css, ("x1", x1), ("y1", y1), ("x2", x2), ("y2", y2));

    public static XElement Rectangle(string css, double x, double y, double width, double height) => Element(
        "rect", css, ("x", x), ("y", y), ("width", Math.Max(0, width)), ("height", Math.Max(0, height)));

    public static XElement Circle(string css, double x, double y, double radius) => Element(
        "circle", css, ("cx", x), ("cy", y), ("r", Math.Max(0, radius)));

    /// <summary>An open or closed line through points.</summary>
    public static XElement Path(string css, IEnumerable<(double X, double Y)> points, bool closed = false) =>
        new("path", new XAttribute("class", css), new XAttribute("d", Data(points, closed)));

    /// <summary>A path by its data, made of <see cref="Number"/>s.</summary>
    public static XElement Path(string css, string data) => new("path", new XAttribute("class", css), new XAttribute("d", data));

    /// <summary>A path that takes its colours from where it is used.</summary>
    public static XElement Path(string data) => new("path", new XAttribute("d", data));

    /// <summary>Data of a path through points.</summary>
    public static string Data(IEnumerable<(double X, double Y)> points, bool closed)
    {
        var data = new StringBuilder();
        foreach (var (x, y) in points)
            data.Append(data.Length == 0 ? 'M' : 'L').Append(Number(x)).Append(' ').Append(Number(y));
        if (closed && data.Length > 0)
            data.Append('Z');
        return data.ToString();
    }

    /// <summary>Data of a path through points, each from the one before it: half as long as <see cref="Data"/>; roundings do not add up.</summary>
    /// <param name="points">The points.</param>
    /// <param name="closed">Whether the last is joined to the first.</param>
    public static string Relative(IEnumerable<(double X, double Y)> points, bool closed)
    {
        var data = new StringBuilder();
        var (atX, atY) = (0.0, 0.0);
        foreach (var (x, y) in points)
        {
            var (dx, dy) = (Math.Round(x - atX, 2, MidpointRounding.AwayFromZero), Math.Round(y - atY, 2, MidpointRounding.AwayFromZero));
            if (data.Length == 0)
                data.Append('M').Append(Short(dx)).Append(' ').Append(Short(dy)).Append('l');
            else if (dx == 0 && dy == 0)
                continue;
            else
            {
                if (data[^1] != 'l' && dx >= 0)
                    data.Append(' ');
                data.Append(Short(dx)).Append(dy < 0 ? "" : " ").Append(Short(dy));
            }

            (atX, atY) = (atX + dx, atY + dy);
        }

        if (data.Length > 0 && data[^1] == 'l')
            data.Length--;
        if (closed && data.Length > 0)
            data.Append('Z');
        return data.ToString();
    }

    /// <summary>Points of a line without those that lie within a tolerance of the straight line through their neighbours.</summary>
    /// <remarks>Source: the algorithm of Ramer, Douglas and Peucker.</remarks>
    public static ImmutableArray<(double X, double Y)> Thinned(ReadOnlySpan<(double X, double Y)> points, double tolerance)
    {
        if (points.Length <= 2)
            return [.. points];
        var (first, last) = (points[0], points[^1]);
        var (dx, dy) = (last.X - first.X, last.Y - first.Y);
        var length = Math.Sqrt((dx * dx) + (dy * dy));
        var (worst, at) = (0.0, 0);
        for (var k = 1; k < points.Length - 1; k++)
        {
            var (px, py) = (points[k].X - first.X, points[k].Y - first.Y);
            var distance = length > 0 ? Math.Abs((px * dy) - (py * dx)) / length : Math.Sqrt((px * px) + (py * py));
            if (distance > worst)
                (worst, at) = (distance, k);
        }

        return worst <= tolerance
            ? [first, last]
            : [.. Thinned(points[..(at + 1)], tolerance)[..^1], .. Thinned(points[at..], tolerance)];
    }

    /// <summary>A circle as data of a path, so that it can be a hole in another.</summary>
    public static string CircleData(double x, double y, double radius) =>
        $"M{Number(x + radius)} {Number(y)}A{Number(radius)} {Number(radius)} 0 1 0 {Number(x - radius)} {Number(y)}"
        + $"A{Number(radius)} {Number(radius)} 0 1 0 {Number(x + radius)} {Number(y)}Z";

    /// <summary>Part of a circle, from one direction to another, rad, towards the side of +y upwards.</summary>
    public static XElement Arc(string css, double x, double y, double radius, double from, double to) => Path(
        css, Enumerable.Range(0, 25).Select(k => from + ((to - from) * k / 24)).Select(a => (x + (radius * Math.Cos(a)), y - (radius * Math.Sin(a)))));

    /// <summary>Something drawn once and shown in many places.</summary>
    public static XElement Definition(string id, XElement element)
    {
        ArgumentNullException.ThrowIfNull(element);
        element.SetAttributeValue("id", id);
        return new XElement("defs", element);
    }

    /// <summary>A definition shown; move it with <see cref="Moved"/>.</summary>
    /// <remarks>Its class stands here, and what is defined takes its colours from it: rules of a style sheet do not reach into it from outside.</remarks>
    public static XElement Use(string css, string id) => new("use", new XAttribute("class", css), new XAttribute("href", "#" + id));

    /// <summary>A line with an arrow head at its end.</summary>
    public static XElement Arrow(string css, double x1, double y1, double x2, double y2, double head = 6)
    {
        var angle = Math.Atan2(y2 - y1, x2 - x1);
        (double, double) Wing(double by) => (x2 - (head * Math.Cos(angle + by)), y2 - (head * Math.Sin(angle + by)));
        return Group(css, Path("shaft", [(x1, y1), (x2, y2)]), Path("head", [Wing(0.38), (x2, y2), Wing(-0.38)], closed: true));
    }

    /// <summary>The sign of a broken rule with a few words: never told by colour alone.</summary>
    public static XElement Cross(double x, double y, double size = 6) => Group(
        "fails", Path("cross", $"M{Number(x - size)} {Number(y - size)}L{Number(x + size)} {Number(y + size)}M{Number(x - size)} {Number(y + size)}L{Number(x + size)} {Number(y - size)}"));

    /// <summary>A text of one line; characters that no XML holds, or that turn the reading direction, are shown as such.</summary>
    /// <param name="css">Its classes; <c>middle</c> and <c>end</c> anchor it there.</param>
    /// <param name="x">Where its start is, or its middle or end by its class.</param>
    /// <param name="y">Its base line.</param>
    /// <param name="text">The text, of ours or of a spec.</param>
    public static XElement Text(string css, double x, double y, string text)
    {
        var element = Element("text", css, ("x", x), ("y", y));
        element.Add(SafeText.Line(text));
        return element;
    }

    /// <summary>An element moved, turned or both.</summary>
    /// <param name="element">The element.</param>
    /// <param name="x">Shift to the right.</param>
    /// <param name="y">Shift downwards.</param>
    /// <param name="degrees">Turn about its own origin, clockwise, before the shift.</param>
    public static XElement Moved(XElement element, double x, double y, double degrees = 0)
    {
        ArgumentNullException.ThrowIfNull(element);
        var turn = degrees == 0 ? "" : $" rotate({Number(degrees)})";
        element.SetAttributeValue("transform", $"translate({Number(x)} {Number(y)}){turn}");
        return element;
    }

    /// <summary>A number with two decimals at most, without the nought before its point.</summary>
    private static string Short(double value)
    {
        var text = Number(value);
        return text.StartsWith("0.", StringComparison.Ordinal) ? text[1..] : text.StartsWith("-0.", StringComparison.Ordinal) ? "-" + text[2..] : text;
    }

    private static XElement Element(string name, string css, params ReadOnlySpan<(string Name, double Value)> attributes)
    {
        var element = new XElement(name, new XAttribute("class", css));
        foreach (var (attribute, value) in attributes)
            element.SetAttributeValue(attribute, Number(value));
        return element;
    }
}
