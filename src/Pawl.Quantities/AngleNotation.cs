namespace Pawl.Quantities;

/// <summary>Reads angles in degrees, minutes and seconds: <c>20° 30′ 15″</c>.</summary>
internal static class AngleNotation
{
    private const int NoMark = -1;

    /// <summary>
    /// Reads on after a number if it is the first part of such an angle. False with no error means: it is not.
    /// </summary>
    public static bool TryRead(
        ReadOnlySpan<char> text, ref int at, WrittenNumber lead, out Amount angle, out NotationError? error)
    {
        angle = default;
        error = null;
        var level = MarkAt(text, at);
        if (level is not (0 or 1)) return false;

        var end = at + 1;
        var divisor = 1.0;
        var magnitude = Math.Abs(lead.Value);
        var unit = level == 0 ? Units.Degree : Units.Arcminute;
        var previous = lead;
        var parts = 1;
        while (level < 2)
        {
            var next = Blanks.Skip(text, end);
            if (next == text.Length || !char.IsAsciiDigit(text[next])) break;
            if (!NumberNotation.TryRead(text, ref next, out var part, out _)) break;

            var mark = MarkAt(text, next);
            if (mark <= level) break;

            if (previous.Value != Math.Floor(previous.Value) || previous.IsFraction)
            {
                error = NotationErrors.BrokenAngle(text, previous.Start, previous.Length);
                return false;
            }

            if (part.Value >= 60 || part.IsFraction)
            {
                error = NotationErrors.AngleOverflow(text, part.Start, part.Length);
                return false;
            }

            divisor = mark - (unit == Units.Degree ? 0 : 1) == 2 ? 3600 : 60;
            magnitude += part.Value / divisor;
            level = mark;
            end = next + 1;
            previous = part;
            parts++;
        }

        if (parts == 1) return false;
        at = end;
        angle = new(lead.IsNegative ? -magnitude : magnitude, unit);
        return true;
    }

    /// <summary>0 for the mark of degrees, 1 of minutes, 2 of seconds.</summary>
    private static int MarkAt(ReadOnlySpan<char> text, int at) => at >= text.Length ? NoMark : text[at] switch
    {
        // Degrees Celsius and a speed in °/s begin with the same sign; neither has a digit after it.
        '°' or '\u00BA' or '\u02DA' => 0,
        '′' or '\'' or '\u2019' => 1,
        '″' or '"' or '\u201D' => 2,
        _ => NoMark,
    };
}
