using System.Globalization;

namespace Pawl.Quantities;

/// <summary>Reads a viscosity grade of an industrial oil: <c>VG 100</c> is 100 mm²/s at 40 °C.</summary>
/// <remarks>Source: ISO 3448; the number is the midpoint of the class, whose limits are 10 % apart from it.</remarks>
internal static class ViscosityGrade
{
    // ISO 3448, from memory.
    private static readonly int[] Grades =
        [2, 3, 5, 7, 10, 15, 22, 32, 46, 68, 100, 150, 220, 320, 460, 680, 1000, 1500, 2200, 3200];

    /// <summary>Reads a grade, if there is one. False with no error means: there is none.</summary>
    public static bool TryRead(ReadOnlySpan<char> text, ref int at, out Amount viscosity, out NotationError? error)
    {
        viscosity = default;
        error = null;
        var digits = at;
        if (text[digits..].StartsWith("ISO ", StringComparison.Ordinal)) digits = Blanks.Skip(text, digits + 3);
        if (!text[digits..].StartsWith("VG", StringComparison.Ordinal)) return false;

        digits = Blanks.Skip(text, digits + 2);
        var end = digits;
        while (end < text.Length && char.IsAsciiDigit(text[end])) end++;
        if (end == digits) return false;

        var number = double.Parse(text[digits..end], NumberStyles.None, CultureInfo.InvariantCulture);
        var nearest = Grades[0];
        foreach (var grade in Grades)
        {
            if (Math.Abs(grade - number) < Math.Abs(nearest - number)) nearest = grade;
        }

        if (nearest != number)
        {
            error = NotationErrors.UnknownGrade(text, digits, end - digits, nearest);
            return false;
        }

        viscosity = new(number, Units.SquareMillimetrePerSecond);
        at = end;
        return true;
    }
}
