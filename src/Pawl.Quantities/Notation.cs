using System.Diagnostics.CodeAnalysis;

namespace Pawl.Quantities;

/// <summary>Reads amounts and toleranced dimensions as drawings and bench sheets write them.</summary>
internal static class Notation
{
    public static bool TryParseAmount(ReadOnlySpan<char> text, out Amount amount, [NotNullWhen(false)] out NotationError? error)
    {
        if (!TryReadHead(text, out var at, out var number, out amount, out var complete, out error)) return false;
        if (complete && IsBlank(text, at)) return true;

        var unitText = text[at..].Trim();
        UnitFailure failure = default;
        if (!complete && TryReadUnit(unitText, out var unit, out failure))
        {
            return TryMake(text, number, unit, out amount, out error);
        }

        amount = default;
        if (TryParseToleranced(text, out var dimension, out _, out var toleranceAt)
            && dimension.Tolerance is not Tolerance.General)
        {
            error = NotationErrors.ToleranceHere(text, toleranceAt);
            return false;
        }

        at = Blanks.Skip(text, at);
        error = complete
            ? NotationErrors.SecondNumber(text, at, text.TrimEnd().Length - at)
            : NotationErrors.Unit(text, at, unitText.Length, failure);
        return false;
    }

    public static bool TryParseToleranced(
        ReadOnlySpan<char> text, [NotNullWhen(true)] out Toleranced? dimension, [NotNullWhen(false)] out NotationError? error) =>
        TryParseToleranced(text, out dimension, out error, out _);

    private static bool TryParseToleranced(
        ReadOnlySpan<char> text,
        [NotNullWhen(true)] out Toleranced? dimension,
        [NotNullWhen(false)] out NotationError? error,
        out int toleranceAt)
    {
        dimension = null;
        toleranceAt = text.Length;
        if (!TryReadHead(text, out var at, out var number, out var nominal, out var complete, out error)) return false;

        Unit? unit = complete ? nominal.Unit : null;
        if (!complete && TryReadUnit(text[at..].Trim(), out var whole, out _))
        {
            unit = whole;
            at = text.Length;
        }
        else if (!complete && !TryReadLeadingUnit(text, ref at, out unit, out error))
        {
            return false;
        }

        toleranceAt = Blanks.Skip(text, at);
        var body = text[..Math.Max(toleranceAt, text.TrimEnd().Length)];
        Tolerance tolerance = Tolerance.General.Instance;
        if (toleranceAt < body.Length)
        {
            var value = complete ? nominal.Value : number.Value;
            if (!ToleranceNotation.TryRead(body, toleranceAt, value, ref unit, out var read, out error)) return false;
            tolerance = read;
        }

        if (!complete && !TryMake(text, number, unit ?? Units.One, out nominal, out error)) return false;
        dimension = new(nominal, tolerance);
        return true;
    }

    /// <summary>Reads the number, and the unit too where the two are one thing, as in VG 100 and 20° 30′.</summary>
    private static bool TryReadHead(
        ReadOnlySpan<char> text, out int at, out WrittenNumber number, out Amount amount, out bool complete,
        [NotNullWhen(false)] out NotationError? error)
    {
        number = default;
        amount = default;
        complete = false;
        at = Blanks.Skip(text, 0);
        if (at == text.Length)
        {
            error = NotationErrors.Nothing(text);
            return false;
        }

        if (ViscosityGrade.TryRead(text, ref at, out amount, out error))
        {
            complete = true;
            return true;
        }

        if (error is not null || !NumberNotation.TryRead(text, ref at, out number, out error)) return false;

        complete = AngleNotation.TryRead(text, ref at, number, out amount, out error);
        return error is null;
    }

    /// <summary>Reads the unit of a nominal before its tolerance; none when the tolerance follows the number at once.</summary>
    private static bool TryReadLeadingUnit(
        ReadOnlySpan<char> text, ref int at, out Unit? unit, [NotNullWhen(false)] out NotationError? error)
    {
        unit = null;
        error = null;
        var start = Blanks.Skip(text, at);
        if (BeginsTolerance(text, start)) return true;

        var end = EndOfUnit(text, start);
        if (UnitText.TryParse(text[start..end], out unit, out var failure))
        {
            at = end;
            return true;
        }

        var cut = start + CutBeforeTolerance(text[start..end]);
        if (cut < end && UnitText.TryParse(text[start..cut], out unit, out failure))
        {
            at = cut;
            return true;
        }

        if (ToleranceClassNotation.LooksLikeOne(text[start..end]))
        {
            at = start;
            return true;
        }

        error = NotationErrors.Unit(text, start, cut - start, failure);
        return false;
    }

    private static bool BeginsTolerance(ReadOnlySpan<char> text, int at)
    {
        var first = text[at];
        if (first is '±' or '(' || NumberNotation.IsSign(first)) return true;

        // 0/-0.1 begins with a digit as 1/min does.
        return char.IsAsciiDigit(first) && !(first == '1' && at + 2 < text.Length && text[at + 1] == '/'
            && char.IsLetter(text[at + 2]));
    }

    /// <summary>The end of the word at <paramref name="start"/>, and of those that operators join to it.</summary>
    private static int EndOfUnit(ReadOnlySpan<char> text, int start)
    {
        var end = start;
        while (true)
        {
            while (end < text.Length && !char.IsWhiteSpace(text[end])) end++;
            var next = Blanks.Skip(text, end);
            if (next == text.Length) return end;

            if (IsOperator(text[next])) next = Blanks.Skip(text, next + 1);
            else if (!IsOpen(text[end - 1]) && text[next] != ')' && !text[start..end].SequenceEqual("fl")) return end;
            end = next;
        }
    }

    /// <summary>Where a tolerance begins that follows its unit without a blank: <c>mm±0.1</c>, <c>mm(2..3)</c>.</summary>
    private static int CutBeforeTolerance(ReadOnlySpan<char> word)
    {
        for (var i = 1; i < word.Length; i++)
        {
            var begins = word[i] switch
            {
                '±' => true,
                '+' => word[i - 1] != '^',
                '(' => !IsOperator(word[i - 1]),
                '-' or '\u2212' => word[i - 1] != '^' && i + 1 < word.Length
                    && (char.IsAsciiDigit(word[i + 1]) || word[i + 1] == '.'),
                _ => false,
            };
            if (begins) return i;
        }

        return word.Length;
    }

    private static bool IsOpen(char written) => written == '(' || IsOperator(written);

    private static bool IsOperator(char written) => UnitSpelling.IsOperator(UnitSpelling.Sign(written));

    private static bool TryReadUnit(ReadOnlySpan<char> text, [NotNullWhen(true)] out Unit? unit, out UnitFailure failure)
    {
        failure = default;
        unit = text.IsEmpty ? Units.One : null;
        return unit is not null || UnitText.TryParse(text, out unit, out failure);
    }

    private static bool TryMake(
        ReadOnlySpan<char> text, WrittenNumber number, Unit unit,
        out Amount amount, [NotNullWhen(false)] out NotationError? error)
    {
        amount = new(number.Value, unit);
        error = number.IsFraction && unit != Units.Inch && unit != Units.Foot && unit.Symbol != "yd"
            ? NotationErrors.FractionOfOther(text, number, unit)
            : !double.IsFinite(amount.Coherent) ? NotationErrors.NotFinite(text, number.Start, number.Length)
            : null;
        return error is null;
    }

    private static bool IsBlank(ReadOnlySpan<char> text, int at) => Blanks.Skip(text, at) == text.Length;
}
