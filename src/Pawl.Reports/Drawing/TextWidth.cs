using System.Text;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Drawing;

/// <summary>About how wide a text is, so that it stays inside of its figure.</summary>
internal static class TextWidth
{
    /// <summary>The size that bold text of the usual size is measured at.</summary>
    public const double Bold = 13.4;

    /// <summary>Width of a text in the units of a drawing area, rather too wide than too narrow.</summary>
    /// <remarks>Widths of sans-serif letters, 12 units high; measured on common faces, no source.</remarks>
    public static double Of(string text, double size = 12) => text.EnumerateRunes().Sum(Of) * size / 12;

    /// <summary>The text, or as much of it as fits, with an ellipsis in its middle: rules begin alike, and so do subjects.</summary>
    public static string Fitted(string text, double width, double size = 12)
    {
        var line = SafeText.Line(text);
        if (Of(line, size) <= width)
            return line;
        var runes = line.EnumerateRunes().ToArray();
        var (first, last, left) = (0, runes.Length, (width * 12 / size) - Of(new Rune('…')));
        for (var takesFirst = true; first < last; takesFirst = !takesFirst)
        {
            var next = takesFirst ? runes[first] : runes[last - 1];
            if (Of(next) > left)
                break;
            left -= Of(next);
            if (takesFirst)
                first++;
            else
                last--;
        }

        return string.Concat(runes.Take(first)) + "…" + string.Concat(runes.Skip(last));
    }

    private static double Of(Rune rune) => rune.Value switch
    {
        'i' or 'j' or 'l' or 'I' or '.' or ',' or ':' or ';' or '\'' or '|' or '!' or '(' or ')' or '[' or ']' or ' ' or 'f' or 't' or 'r' or '/' => 4.4,
        'm' or 'w' or 'M' or 'W' or '%' or '@' or '…' or '✕' or '◐' => 11,
        >= 'A' and <= 'Z' => 8.6,
        >= 0x1100 => 13,
        _ => 7.3,
    };
}
