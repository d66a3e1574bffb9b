using System.Xml.Linq;
using Pawl.Reports.Records;

namespace Pawl.Reports.Drawing;

/// <summary>A scale along a line, on which ranges are drawn with their limits.</summary>
/// <param name="least">The value at its left end.</param>
/// <param name="most">The value at its right end; above the least.</param>
/// <param name="left">Where the left end is.</param>
/// <param name="width">How long it is.</param>
internal sealed class RangeScale(double least, double most, double left, double width)
{
    private const double Narrowest = 4;

    /// <summary>A scale that holds all values and a little beside them; of equal values a little about them.</summary>
    public static RangeScale Around(IEnumerable<double> values, double left, double width, double beside = 0.06)
    {
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var value in values)
            (low, high) = (Math.Min(low, value), Math.Max(high, value));
        if (low > high)
            (low, high) = (0, 0);
        var room = Math.Max((high - low) * beside, Math.Max(Math.Max(Math.Abs(low), Math.Abs(high)) * 1e-6, 1e-9));
        return new(low - room, high + room, left, width);
    }

    /// <summary>Units of the drawing area for a unit of the value.</summary>
    public double PerUnit => width / (most - least);

    /// <summary>Where a value is; what is beyond an end is drawn at it.</summary>
    public double At(double value) => left + (Math.Clamp((value - least) / (most - least), 0, 1) * width);

    /// <summary>The greatest of 1, 2 and 5 times a power of ten that is no greater.</summary>
    public static double Nice(double value)
    {
        if (value is not (> 0 and < 1e300))
            return 1;
        var power = Math.Pow(10, Math.Floor(Math.Log10(value)));
        return power * (value / power >= 5 ? 5 : value / power >= 2 ? 2 : 1);
    }

    /// <summary>A worst-case range as a bar with its nominal as a mark.</summary>
    public ImmutableArray<XElement> Bar(string css, ValueRecord value, double top, double height)
    {
        if (value is not { Nominal: { } nominal, Low: { } low, High: { } high })
            return [];
        var (from, to) = (At(low), At(high));
        if (to - from < Narrowest)
            (from, to) = (((from + to - Narrowest) / 2), ((from + to + Narrowest) / 2));
        var bar = Svg.Rectangle(css, from, top, to - from, height);
        return to - from < 6 || nominal <= low || nominal >= high ? [bar] : [bar, Svg.Line("mark", At(nominal), top, At(nominal), top + height)];
    }

    /// <summary>What is permitted as a light field with its limits as lines.</summary>
    public ImmutableArray<XElement> Limits(double? least, double? most, double top, double height)
    {
        var (from, to) = (least is { } low ? At(low) : left, most is { } high ? At(high) : left + width);
        var marks = ImmutableArray.CreateBuilder<XElement>();
        if (to > from)
            marks.Add(Svg.Rectangle("permitted", from, top, to - from, height));
        if (least is not null)
            marks.Add(Svg.Line("limit", from, top, from, top + height));
        if (most is not null && (to > from || least is null))
            marks.Add(Svg.Line("limit", to, top, to, top + height));
        return marks.DrainToImmutable();
    }
}
