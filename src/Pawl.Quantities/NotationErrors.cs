using System.Globalization;

namespace Pawl.Quantities;

/// <summary>Every complaint about an amount or a toleranced dimension, worded once.</summary>
internal static class NotationErrors
{
    private const int LongestQuote = 40;
    private const string NumberHint = "Write digits and, at need, a point, as in 2.5.";
    private const string UnitHint = "Write the unit after the number, as in 2.5 mm.";
    private const string ToleranceHint = "Write H7, ±0.1, +0.1/0 or (2.85..2.95).";

    public static NotationError Nothing(ReadOnlySpan<char> text) =>
        new(
        NotationErrorKind.NotANumber, 0, text.Length, "Nothing is written here.", "Write a number with its unit, as in 2.5 mm.");

    public static NotationError NotANumber(ReadOnlySpan<char> text, int start)
    {
        var end = start;
        while (end < text.Length && !char.IsWhiteSpace(text[end])) end++;
        return end == start
            ? new(NotationErrorKind.NotANumber, start, 0, "A number is missing.", NumberHint)
            : new(
                NotationErrorKind.NotANumber, start, end - start, $"{Quote(text[start..end])} does not begin with a number.",
                NumberHint);
    }

    public static NotationError NotFinite(ReadOnlySpan<char> text, int start, int length) =>
        new(NotationErrorKind.NotFinite, start, length, $"{Quote(text.Slice(start, length))} is no finite number.");

    public static NotationError Comma(ReadOnlySpan<char> text, int at, bool thousandsPossible)
    {
        var (before, after) = Around(text, at);
        var hint = thousandsPossible
            ? $"Write {before}.{after} or {before}{after}: the decimal mark is the point, thousands are not parted."
            : $"Write {before}.{after}.";
        return new(NotationErrorKind.NotANumber, at, 1, "The decimal mark is a point, not a comma.", hint);
    }

    public static NotationError Point(ReadOnlySpan<char> text, int at)
    {
        var (before, _) = Around(text, at);
        return new(
            NotationErrorKind.NotANumber, at, 1, "A number has one point, with a digit on both sides.", $"Write {before}.");
    }

    public static NotationError Thousands(ReadOnlySpan<char> text, int at)
    {
        var (before, after) = Around(text, at);
        return new(
            NotationErrorKind.NotANumber, at, 1, "The digits of a number are written without a gap.", $"Write {before}{after}.");
    }

    public static NotationError ImproperFraction(ReadOnlySpan<char> text, int start, int length) => new(
        NotationErrorKind.NotANumber, start, length, $"{Quote(text.Slice(start, length))} has a fraction of one or more.",
        "Write it as in 1-1/2 in.");

    public static NotationError FractionOfOther(ReadOnlySpan<char> text, WrittenNumber number, Unit unit) => new(
        NotationErrorKind.NotANumber, number.Start, number.Length,
        $"{Quote(text.Slice(number.Start, number.Length))} is a fraction, which only inches, feet and yards take.",
        $"Write {Formatting.WithUnit(Rounded(number.Value), unit)}.");

    public static NotationError BrokenAngle(ReadOnlySpan<char> text, int start, int length) => new(
        NotationErrorKind.NotANumber, start, length,
        $"{Quote(text.Slice(start, length))} is not whole, but a smaller part of the angle follows.",
        "Write 20° 30′ or 20.5°.");

    public static NotationError AngleOverflow(ReadOnlySpan<char> text, int start, int length) => new(
        NotationErrorKind.NotANumber, start, length,
        $"{Quote(text.Slice(start, length))} is too many: minutes and seconds of an angle stay below 60.");

    public static NotationError SecondNumber(ReadOnlySpan<char> text, int start, int length) => new(
        NotationErrorKind.NotANumber, start, length,
        $"A second number, {Quote(text.Slice(start, length))}, follows the first.", UnitHint);

    public static NotationError UnknownGrade(ReadOnlySpan<char> text, int start, int length, int nearest) => new(
        NotationErrorKind.NotANumber, start, length, $"{Quote(text.Slice(start, length))} is no viscosity grade of ISO 3448.",
        $"The nearest is VG {nearest.ToString(CultureInfo.InvariantCulture)}.");

    public static NotationError Unit(ReadOnlySpan<char> text, int start, int length, UnitFailure failure)
    {
        var unit = text.Slice(start, length);
        if (char.IsAsciiDigit(unit[0])) return SecondNumber(text, start, TokenLength(unit));

        var offence = unit.Slice(failure.Start, failure.Length);
        switch (failure.Fault)
        {
            case UnitFault.AmbiguousDivisor:
                return new(NotationErrorKind.UnknownUnit, start, length, $"{Quote(unit)} can be read in two ways.",
                    "Put the divisor in parentheses, as in W/(m·K).");
            case UnitFault.Malformed:
                return new(NotationErrorKind.UnknownUnit, start + failure.Start, failure.Length,
                    $"{Quote(unit)} is not built as a unit.", "Write a unit as in N·m, mm²/s or W/(m·K).");
            case UnitFault.UnknownName:
            default:
                var nearest = Units.Nearest(offence);
                return new(NotationErrorKind.UnknownUnit, start + failure.Start, failure.Length,
                    $"There is no unit {Quote(offence)}{(offence.SequenceEqual("J") ? " for a torque" : "")}.",
                    offence.SequenceEqual("J") ? "Write N·m." : nearest is null ? null : $"Did you mean {nearest}?");
        }
    }

    public static NotationError ToleranceHere(ReadOnlySpan<char> text, int start) => new(
        NotationErrorKind.ToleranceNotAllowed, start, text.Length - start,
        $"{Quote(text[start..])} is a tolerance, and none is taken here.", $"Write {Clip(text[..start].Trim())} alone.");

    public static NotationError ClassOfOther(ReadOnlySpan<char> text, int start, int length, Dimension dimension) => new(
        NotationErrorKind.ToleranceNotAllowed, start, length,
        $"{Quote(text.Slice(start, length))} is a tolerance class, which only a length takes, not {dimension.NameWithArticle}.",
        "Write the unit before the class, as in 60 mm H7, or deviations, as in ±0.1.");

    public static NotationError ClassWithoutUnit(ReadOnlySpan<char> text, int start)
    {
        var number = text[..start].Trim();
        var (written, tolerance) = (Clip(number), Clip(text[start..]));
        return new(
            NotationErrorKind.MissingUnit, Blanks.Skip(text, 0), number.Length, $"`{written}` has no unit before `{tolerance}`.",
            $"Which fit: {string.Join(", ", Units.Fitting(Dimension.OfLength).Select(unit => $"{written} {unit.Symbol} {tolerance}"))}.");
    }

    public static NotationError PercentOfTemperature(int start, int length) => new(
        NotationErrorKind.ToleranceNotAllowed, start, length,
        "A temperature on a scale has no percentage.", "Write the deviation as in ±5 K.");

    public static NotationError Deviation(ReadOnlySpan<char> text, int start, int length, Unit unit, Dimension nominal) => new(
        NotationErrorKind.MalformedTolerance, start, length,
        $"{Quote(text.Slice(start, length))} measures {unit.Dimension.NameWithArticle}, the nominal {nominal.NameWithArticle}.",
        "Leave the unit of the tolerance away, or give one that fits.");

    public static NotationError Tolerance(ReadOnlySpan<char> text, int start, int length, string? hint = null) => new(
        NotationErrorKind.MalformedTolerance, start, length,
        length == 0 ? "A tolerance is cut short here." : $"{Quote(text.Slice(start, length))} is no tolerance.",
        hint ?? ToleranceHint);

    public static NotationError OneSided(ReadOnlySpan<char> text, int start, int length) => Tolerance(
        text, start, length,
        text[start] == '+'
            ? $"Write both deviations: {Clip(text.Slice(start, length))}/0."
            : $"Write both deviations: 0/{Clip(text.Slice(start, length))}.");

    public static NotationError SignMissing(ReadOnlySpan<char> text, WrittenNumber number)
    {
        var written = Clip(text.Slice(number.Start, number.Length));
        return new(NotationErrorKind.MalformedTolerance, number.Start, number.Length,
            $"The deviation `{written}` has no sign.", $"Write +{written} or -{written}.");
    }

    public static NotationError SignTwice(ReadOnlySpan<char> text, WrittenNumber number) => Tolerance(
        text, number.Start, number.Length, "Write ± before a number without a sign.");

    public static NotationError Swapped(ReadOnlySpan<char> text, int start, int length, string swapped) => new(
        NotationErrorKind.MalformedTolerance, start, length,
        $"{Quote(text.Slice(start, length))} has its upper limit below its lower.", $"Write {swapped}.");

    public static NotationError HoleSecond(ReadOnlySpan<char> text, int start, int length, string swapped) => new(
        NotationErrorKind.MalformedTolerance, start, length,
        $"{Quote(text.Slice(start, length))} names the shaft first.", $"Write {swapped}: the hole comes first.");

    public static NotationError OneKindOfPart(ReadOnlySpan<char> text, int start, int length) => new(
        NotationErrorKind.MalformedTolerance, start, length,
        $"{Quote(text.Slice(start, length))} is no fit of a hole and a shaft.",
        "A fit has a hole in capitals and a shaft in small letters, as in H7/g6.");

    public static NotationError Letters(ReadOnlySpan<char> text, int start, int length, string hint) => new(
        NotationErrorKind.MalformedTolerance, start, length,
        $"ISO 286 has no fundamental deviation {Quote(text.Slice(start, length))}.", hint);

    public static NotationError Grade(ReadOnlySpan<char> text, int start, int length) => new(
        NotationErrorKind.MalformedTolerance, start, length,
        length == 0 ? "A tolerance grade is missing." : $"ISO 286 has no tolerance grade {Quote(text.Slice(start, length))}.",
        "The grades are 01, 0 and 1 to 18.");

    /// <summary>Text as a message quotes it: short, on one line.</summary>
    internal static string Quote(ReadOnlySpan<char> text) => $"`{Clip(text)}`";

    internal static string Clip(ReadOnlySpan<char> text)
    {
        var clipped = text.Length > LongestQuote;
        if (clipped) text = text[..(char.IsHighSurrogate(text[LongestQuote - 1]) ? LongestQuote - 1 : LongestQuote)];
        Span<char> shown = stackalloc char[LongestQuote];
        for (var i = 0; i < text.Length; i++) shown[i] = char.IsControl(text[i]) ? '\uFFFD' : text[i];
        return clipped ? $"{shown[..text.Length]}…" : shown[..text.Length].ToString();
    }

    private static int TokenLength(ReadOnlySpan<char> text)
    {
        var end = 0;
        while (end < text.Length && !char.IsWhiteSpace(text[end])) end++;
        return end;
    }

    private static double Rounded(double value) => double.Parse(Formatting.Significant(value, 9), CultureInfo.InvariantCulture);

    /// <summary>The digits on both sides of a mark.</summary>
    private static (string Before, string After) Around(ReadOnlySpan<char> text, int at)
    {
        var start = at;
        while (start > 0 && (char.IsAsciiDigit(text[start - 1]) || text[start - 1] is '.' or '-' or '+')) start--;
        var end = at + 1;
        while (end < text.Length && char.IsAsciiDigit(text[end])) end++;
        return (Clip(text[start..at]), Clip(text[(at + 1)..end]));
    }
}
