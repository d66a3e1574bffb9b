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

    private static XElement Element(string name, string css, params ReadOnlySpan<(string Name, double Value)> attributes)
    {
        var element = new XElement(name, new XAttribute("class", css));
        foreach (var (attribute, value) in attributes)
            element.SetAttributeValue(attribute, Number(value));
        return element;
    }
}
