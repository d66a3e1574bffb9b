using System.Globalization;

namespace Pawl.Quantities;

/// <summary>Numbers as text, the same on every desk.</summary>
public static class Formatting
{
    private const int MostDigits = 17;
    private const int MostDigitsApart = 12;

    private static readonly string[] Scientific =
        ["E0", "E1", "E2", "E3", "E4", "E5", "E6", "E7", "E8", "E9", "E10", "E11", "E12", "E13", "E14", "E15", "E16"];

    /// <summary>Up to this many significant digits, no exponent between 1e-5 and 1e9, no trailing zeros after the point.</summary>
    public static string Significant(double value, int digits)
    {
        if (!double.IsFinite(value)) return double.IsNaN(value) ? "NaN" : value > 0 ? "Infinity" : "-Infinity";
        if (value == 0) return "0";

        // d.ddddE+xxx: rounding is the framework's, the layout ours.
        var count = Math.Clamp(digits, 1, MostDigits);
        Span<char> scientific = stackalloc char[32];
        value.TryFormat(scientific, out var length, Scientific[count - 1], CultureInfo.InvariantCulture);
        scientific = scientific[..length];

        var mark = scientific.IndexOf('E');
        var exponent = int.Parse(scientific[(mark + 1)..], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        Span<char> figures = stackalloc char[MostDigits];
        var kept = 0;
        foreach (var c in scientific[..mark])
        {
            if (char.IsAsciiDigit(c)) figures[kept++] = c;
        }

        return Lay(figures[..kept].TrimEnd('0'), exponent, value < 0);
    }

    /// <summary>A number and its unit, in full: <c>2.5 mm</c>, <c>20°</c>, <c>15 %</c>.</summary>
    public static string WithUnit(double value, Unit unit) => Join(InFull(value), unit);

    /// <summary>A number in coherent units, shown in another unit with up to this many significant digits.</summary>
    public static string Coherent(double coherent, Unit unit, int digits)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return Join(Significant(unit.FromCoherent(coherent), digits), unit);
    }

    /// <summary>A value and the limit it is set against, with digits enough that two different numbers look different.</summary>
    /// <remarks>
    /// Up to 12 digits; numbers closer than that count as equal. So a report never says that 1.20 fails to reach 1.20.
    /// </remarks>
    /// <param name="value">The value, in coherent units.</param>
    /// <param name="limit">The limit, in coherent units.</param>
    /// <param name="unit">The unit both are shown in.</param>
    /// <param name="digits">Significant digits where these suffice.</param>
    public static (string Value, string Limit) Apart(double value, double limit, Unit unit, int digits)
    {
        ArgumentNullException.ThrowIfNull(unit);
        var shown = unit.FromCoherent(value);
        var bound = unit.FromCoherent(limit);
        while (true)
        {
            var (a, b) = (Significant(shown, digits), Significant(bound, digits));
            if (a != b || value.Equals(limit) || digits >= MostDigitsApart) return (Join(a, unit), Join(b, unit));
            digits++;
        }
    }

    /// <summary>The fewest digits that read back as the same number.</summary>
    private static string InFull(double value)
    {
        for (var digits = 15; digits < MostDigits; digits++)
        {
            var text = Significant(value, digits);
            if (double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture).Equals(value)) return text;
        }

        return Significant(value, MostDigits);
    }

    private static string Lay(ReadOnlySpan<char> figures, int exponent, bool negative)
    {
        var sign = negative ? "-" : "";
        if (exponent is < -5 or >= 9)
        {
            var power = exponent.ToString(CultureInfo.InvariantCulture);
            return figures.Length == 1 ? $"{sign}{figures}e{power}" : $"{sign}{figures[..1]}.{figures[1..]}e{power}";
        }

        if (exponent < 0) return $"{sign}0.{new string('0', -exponent - 1)}{figures}";

        var whole = exponent + 1;
        return figures.Length <= whole
            ? $"{sign}{figures}{new string('0', whole - figures.Length)}"
            : $"{sign}{figures[..whole]}.{figures[whole..]}";
    }

    private static string Join(string number, Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);

        // ISO 80000-1: a space before every unit but the degree, the minute and the second of an angle.
        return unit.Symbol.Length == 0 ? number
            : unit.Symbol is "°" or "′" or "″" ? number + unit.Symbol
            : $"{number} {unit.Symbol}";
    }
}
