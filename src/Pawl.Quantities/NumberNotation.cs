using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Pawl.Quantities;

/// <summary>A number as written.</summary>
/// <param name="Value">Its value.</param>
/// <param name="IsNegative">Whether a minus stands before it, also before zero.</param>
/// <param name="IsSigned">Whether a sign stands before it.</param>
/// <param name="IsFraction">Whether it was written as the inch trade does, 1-1/2.</param>
/// <param name="Start">Index of its first character, the sign included.</param>
/// <param name="Length">Number of its characters.</param>
internal readonly record struct WrittenNumber(
    double Value, bool IsNegative, bool IsSigned, bool IsFraction, int Start, int Length);

/// <summary>Reads numbers: digits, one point, an exponent; fractions as the inch trade writes them. No culture.</summary>
internal static class NumberNotation
{
    private const char MinusSign = '\u2212';

    // As people, YAML and other programs write them.
    private static readonly string[] NoNumbers = ["infinity", "nan", "inf", ".nan", ".inf", "∞"];

    public static bool IsSign(char c) => c is '+' or '-' or MinusSign;

    public static bool TryRead(
        ReadOnlySpan<char> text, ref int at, out WrittenNumber number, [NotNullWhen(false)] out NotationError? error)
    {
        number = default;
        error = null;
        var start = at;
        var signed = at < text.Length && IsSign(text[at]);
        var negative = signed && text[at] != '+';
        if (signed) at++;

        var magnitude = at;
        if (IsNotFiniteWord(text[at..], out var word))
        {
            error = NotationErrors.NotFinite(text, start, at + word - start);
            return false;
        }

        if (!SkipDigits(text, ref at, out var plain))
        {
            error = NotationErrors.NotANumber(text, start);
            return false;
        }

        if (IsParted(text, at, plain, out var parted))
        {
            error = parted;
            return false;
        }

        if (plain && TryReadFraction(text, magnitude, ref at, out var fraction, out error))
        {
            number = new(negative ? -fraction : fraction, negative, signed, true, start, at - start);
            return true;
        }

        if (error is not null) return false;

        var value = double.Parse(text[magnitude..at], NumberStyles.Float, CultureInfo.InvariantCulture);
        if (!double.IsFinite(value))
        {
            error = NotationErrors.NotFinite(text, start, at - start);
            return false;
        }

        number = new(negative ? -value : value, negative, signed, false, start, at - start);
        return true;
    }

    /// <summary>Skips digits, point and exponent; <paramref name="plain"/> when there are digits alone.</summary>
    private static bool SkipDigits(ReadOnlySpan<char> text, ref int at, out bool plain)
    {
        var start = at;
        SkipRun(text, ref at);
        plain = at > start;
        if (at + 1 < text.Length && text[at] == '.' && char.IsAsciiDigit(text[at + 1]))
        {
            plain = false;
            at++;
            SkipRun(text, ref at);
        }

        if (at == start) return false;

        if (at < text.Length && text[at] is 'e' or 'E')
        {
            var digits = at + 1 < text.Length && IsSign(text[at + 1]) && text[at + 1] != MinusSign ? at + 2 : at + 1;
            if (digits < text.Length && char.IsAsciiDigit(text[digits]))
            {
                plain = false;
                at = digits;
                SkipRun(text, ref at);
            }
        }

        return true;
    }

    /// <summary>Whether a comma, a second point or a separator of thousands follows the digits.</summary>
    private static bool IsParted(ReadOnlySpan<char> text, int at, bool plain, [NotNullWhen(true)] out NotationError? error)
    {
        error = null;
        if (at + 1 >= text.Length) return false;

        var (mark, next) = (text[at], text[at + 1]);
        if (mark == ',' && char.IsAsciiDigit(next))
        {
            error = NotationErrors.Comma(text, at, thousandsPossible: plain && IsGroupOfThree(text, at + 1));
        }
        else if (mark == '.' && next != '.')
        {
            error = NotationErrors.Point(text, at);
        }
        else if (plain && IsSeparator(mark) && IsGroupOfThree(text, at + 1))
        {
            error = NotationErrors.Thousands(text, at);
        }

        return error is not null;
    }

    private static bool IsSeparator(char c) => c is '\'' or '\u2019' or '_' || char.IsWhiteSpace(c);

    private static bool IsGroupOfThree(ReadOnlySpan<char> text, int at)
    {
        var end = at;
        SkipRun(text, ref end);

        // 1 125/1000 in is a fraction, 20' 300" an angle.
        return end - at == 3 && (end == text.Length || text[end] is not ('/' or '"' or '″'));
    }

    /// <summary>Reads on in 1/2, 1-1/2 or 1 1/2 after the digits that began at <paramref name="magnitude"/>.</summary>
    private static bool TryReadFraction(
        ReadOnlySpan<char> text, int magnitude, ref int at, out double value, out NotationError? error)
    {
        value = 0;
        error = null;
        var first = text[magnitude..at];
        if (TryReadDivisor(text, at, out var end))
        {
            return Divide(text, magnitude, 0, first, text[(at + 1)..end], end, ref at, out value, out error);
        }

        var numerator = at;
        if (numerator < text.Length && text[numerator] == '-')
        {
            numerator++;
        }
        else
        {
            numerator = Blanks.Skip(text, numerator);
        }

        var slash = numerator;
        SkipRun(text, ref slash);
        if (numerator == at || slash == numerator || !TryReadDivisor(text, slash, out end)) return false;

        var whole = double.Parse(first, NumberStyles.None, CultureInfo.InvariantCulture);
        return Divide(text, magnitude, whole, text[numerator..slash], text[(slash + 1)..end], end, ref at, out value, out error);
    }

    private static bool TryReadDivisor(ReadOnlySpan<char> text, int at, out int end)
    {
        end = at + 1;
        if (at >= text.Length || text[at] is not ('/' or '\u2044')) return false;
        SkipRun(text, ref end);
        return end > at + 1 && (end == text.Length || text[end] != '.');
    }

    private static bool Divide(
        ReadOnlySpan<char> text, int start, double whole, ReadOnlySpan<char> numerator, ReadOnlySpan<char> divisor, int end,
        ref int at, out double value, out NotationError? error)
    {
        var above = double.Parse(numerator, NumberStyles.None, CultureInfo.InvariantCulture);
        var below = double.Parse(divisor, NumberStyles.None, CultureInfo.InvariantCulture);
        value = whole + (above / below);
        error = below == 0 || !double.IsFinite(value) ? NotationErrors.NotFinite(text, start, end - start)
            : whole > 0 && above >= below ? NotationErrors.ImproperFraction(text, start, end - start)
            : null;
        if (error is not null) return false;
        at = end;
        return true;
    }

    private static void SkipRun(ReadOnlySpan<char> text, ref int at)
    {
        while (at < text.Length && char.IsAsciiDigit(text[at])) at++;
    }

    private static bool IsNotFiniteWord(ReadOnlySpan<char> text, out int length)
    {
        foreach (var word in NoNumbers)
        {
            length = word.Length;
            if (text.StartsWith(word, StringComparison.OrdinalIgnoreCase)
                && (text.Length == length || !char.IsLetterOrDigit(text[length])))
            {
                return true;
            }
        }

        length = 0;
        return false;
    }
}
