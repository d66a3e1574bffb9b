using System.Diagnostics.CodeAnalysis;

namespace Pawl.Quantities;

/// <summary>Reads what follows a nominal: deviations, limits, a tolerance class or a fit.</summary>
internal static class ToleranceNotation
{
    /// <summary>Reads a tolerance that fills the text from <paramref name="start"/> on.</summary>
    /// <remarks>
    /// The nominal is given in <paramref name="unit"/>. That is null when none was written: then the unit of the tolerance counts
    /// for both, as in <c>3.53 ±0.10 mm</c>.
    /// </remarks>
    public static bool TryRead(
        ReadOnlySpan<char> text, int start, double nominal, ref Unit? unit,
        [NotNullWhen(true)] out Tolerance? tolerance, [NotNullWhen(false)] out NotationError? error)
    {
        tolerance = null;
        var length = text.Length - start;
        if (SymmetricMark(text[start..]) is > 0 and var mark)
        {
            return TryReadSymmetric(text, start, mark, nominal, ref unit, out tolerance, out error);
        }

        if (text[start] == '(') return TryReadLimits(text, start, nominal, ref unit, out tolerance, out error);
        if (NumberNotation.IsSign(text[start]) || char.IsAsciiDigit(text[start]) || text[start] == '.')
        {
            return TryReadPair(text, start, nominal, ref unit, out tolerance, out error);
        }

        if (!char.IsAsciiLetter(text[start]))
        {
            error = NotationErrors.Tolerance(text, start, length);
            return false;
        }

        if (!ToleranceClassNotation.TryRead(text, start, out tolerance, out error)) return false;
        if (unit is { Dimension: var dimension } && dimension == Dimension.OfLength) return true;
        error = unit is null
            ? NotationErrors.ClassWithoutUnit(text, start)
            : NotationErrors.ClassOfOther(text, start, length, unit.Dimension);
        tolerance = null;
        return false;
    }

    /// <summary>±0.10, +/-0.10, +-0.10.</summary>
    private static bool TryReadSymmetric(
        ReadOnlySpan<char> text, int start, int mark, double nominal, ref Unit? unit,
        [NotNullWhen(true)] out Tolerance? tolerance, [NotNullWhen(false)] out NotationError? error)
    {
        tolerance = null;
        if (!TryReadBound(text, start + mark, text.Length, out var bound, out error)) return false;
        if (bound.Number.IsSigned)
        {
            error = NotationErrors.SignTwice(text, bound.Number);
            return false;
        }

        unit ??= NominalUnit(bound.Unit);
        if (!TryDeviate(text, bound, bound.Unit, nominal, unit, out var deviation, out error)) return false;
        tolerance = new Tolerance.Deviations(0 - deviation, deviation);
        return true;
    }

    /// <summary>+0.021/0, -0.007/-0.020, +0.05 / +0.01 mm: upper deviation first, as on a drawing.</summary>
    private static bool TryReadPair(
        ReadOnlySpan<char> text, int start, double nominal, ref Unit? unit,
        [NotNullWhen(true)] out Tolerance? tolerance, [NotNullWhen(false)] out NotationError? error)
    {
        tolerance = null;
        var at = start;
        if (!NumberNotation.TryRead(text, ref at, out var number, out error)) return false;

        var slash = PairSlash(text, at);
        if (slash < 0)
        {
            error = number.IsSigned
                ? NotationErrors.OneSided(text, start, number.Length)
                : NotationErrors.Tolerance(text, start, text.Length - start);
            return false;
        }

        if (!TryReadBound(text, start, slash, out var upper, out error)) return false;
        if (!TryReadBound(text, slash + 1, text.Length, out var lower, out error)) return false;
        if ((Unsigned(upper) ?? Unsigned(lower)) is { } unsigned)
        {
            error = NotationErrors.SignMissing(text, unsigned);
            return false;
        }

        unit ??= NominalUnit(upper.Unit ?? lower.Unit);
        if (!TryDeviate(text, upper, upper.Unit ?? lower.Unit, nominal, unit, out var above, out error)) return false;
        if (!TryDeviate(text, lower, lower.Unit ?? upper.Unit, nominal, unit, out var below, out error)) return false;
        if (below > above)
        {
            error = NotationErrors.Swapped(text, start, text.Length - start, $"{lower.Quote(text)}/{upper.Quote(text)}");
            return false;
        }

        tolerance = new Tolerance.Deviations(below, above);
        return true;

        static WrittenNumber? Unsigned(Bound bound) => bound.Number is { IsSigned: false, Value: not 0 } number ? number : null;
    }

    /// <summary>(2.85..2.95), (2.85...2.95 mm), (2.85 to 2.95): lower limit first.</summary>
    private static bool TryReadLimits(
        ReadOnlySpan<char> text, int start, double nominal, ref Unit? unit,
        [NotNullWhen(true)] out Tolerance? tolerance, [NotNullWhen(false)] out NotationError? error)
    {
        const string Form = "Write limits as in (2.85..2.95).";
        tolerance = null;
        var close = text[start..].IndexOf(')') + start;
        if (text[^1] != ')' && close > start)
        {
            var rest = Blanks.Skip(text, close + 1);
            error = NotationErrors.Tolerance(text, rest, text.Length - rest, "End the dimension after the limits.");
            return false;
        }

        var inside = text[..(text[^1] == ')' ? text.Length - 1 : text.Length)];
        var at = Blanks.Skip(inside, start + 1);
        if (!NumberNotation.TryRead(inside, ref at, out _, out error)) return false;
        if (inside.Length == text.Length || !FindRange(inside, at, out var end, out var next))
        {
            error = NotationErrors.Tolerance(text, start, text.Length - start, Form);
            return false;
        }

        if (!TryReadBound(inside, start + 1, end, out var lower, out error)) return false;
        if (!TryReadBound(inside, next, inside.Length, out var upper, out error)) return false;

        unit ??= NominalUnit(lower.Unit ?? upper.Unit);
        if (!TryPlace(text, lower, lower.Unit ?? upper.Unit, nominal, unit, out var below, out error)) return false;
        if (!TryPlace(text, upper, upper.Unit ?? lower.Unit, nominal, unit, out var above, out error)) return false;
        if (below > above)
        {
            error = NotationErrors.Swapped(text, start, text.Length - start, $"({upper.Quote(text)}..{lower.Quote(text)})");
            return false;
        }

        tolerance = new Tolerance.Deviations(below, above);
        return true;
    }

    /// <summary>Reads a number with or without a unit that fills the text between two places.</summary>
    private static bool TryReadBound(
        ReadOnlySpan<char> text, int start, int end, out Bound bound, [NotNullWhen(false)] out NotationError? error)
    {
        bound = default;
        start = Blanks.Skip(text[..end], start);
        end = Math.Max(start, text[..end].TrimEnd().Length);
        if (start == end)
        {
            error = NotationErrors.Tolerance(text, start, 0);
            return false;
        }

        var at = start;
        var part = text[..end];
        if (!NumberNotation.TryRead(part, ref at, out var number, out error)) return false;
        if (AngleNotation.TryRead(part, ref at, number, out var angle, out error))
        {
            bound = new(number with { Value = angle.Value }, angle.Unit, start, end - start);
            if (at == end) return true;
            error = NotationErrors.Tolerance(text, at, end - at);
            return false;
        }

        if (error is not null) return false;
        at = Blanks.Skip(part, at);
        Unit? unit = null;
        if (at < end && !UnitText.TryParse(text[at..end], out unit, out var failure))
        {
            error = NotationErrors.Unit(text, at, end - at, failure);
            return false;
        }

        bound = new(number, unit, start, end - start);
        if (!number.IsFraction || unit == Units.Inch) return true;
        error = NotationErrors.FractionOfOther(text, number, unit ?? Units.One);
        return false;
    }

    /// <summary>The unit that a tolerance lends to a nominal without one. A percentage lends nothing.</summary>
    private static Unit NominalUnit(Unit? unit) => unit is null || unit.Dimension == Dimension.Ratio ? Units.One : unit;

    /// <summary>A deviation in coherent units.</summary>
    private static bool TryDeviate(
        ReadOnlySpan<char> text, Bound bound, Unit? written, double nominal, Unit unit,
        out double deviation, [NotNullWhen(false)] out NotationError? error)
    {
        var scale = written ?? unit;
        deviation = 0;
        error = null;

        // A percentage is relative to the nominal, unless the nominal itself is a percentage: 15 % ±2 % ends at 17 %.
        if (scale.Dimension == Dimension.Ratio && scale != Units.One
            && (unit.Dimension != Dimension.Ratio || unit == Units.One))
        {
            if (unit.Dimension.IsPoint)
            {
                error = NotationErrors.PercentOfTemperature(bound.Start, bound.Length);
                return false;
            }

            deviation = bound.Number.Value * scale.Factor * Math.Abs(nominal * unit.Factor);
        }
        else if ((scale.Dimension with { IsPoint = false }) == (unit.Dimension with { IsPoint = false }))
        {
            deviation = bound.Number.Value * scale.Factor;
        }
        else
        {
            error = NotationErrors.Deviation(text, bound.Start, bound.Length, scale, unit.Dimension);
            return false;
        }

        return TryFinish(text, bound, ref deviation, out error);
    }

    /// <summary>The deviation, in coherent units, that leads from the nominal to a limit.</summary>
    private static bool TryPlace(
        ReadOnlySpan<char> text, Bound bound, Unit? written, double nominal, Unit unit,
        out double deviation, [NotNullWhen(false)] out NotationError? error)
    {
        var scale = written ?? unit;
        deviation = 0;
        if (scale.Dimension != unit.Dimension)
        {
            error = NotationErrors.Deviation(text, bound.Start, bound.Length, scale, unit.Dimension);
            return false;
        }

        var limit = scale == unit ? bound.Number.Value : unit.FromCoherent(scale.ToCoherent(bound.Number.Value));
        deviation = DecimalDifference(limit, nominal) * unit.Factor;
        return TryFinish(text, bound, ref deviation, out error);
    }

    private static bool TryFinish(
        ReadOnlySpan<char> text, Bound bound, ref double deviation, [NotNullWhen(false)] out NotationError? error)
    {
        deviation += 0.0; // −0 becomes 0.
        error = double.IsFinite(deviation) ? null : NotationErrors.NotFinite(text, bound.Start, bound.Length);
        return error is null;
    }

    // 2.85 − 2.90 is −0.05 on paper and not quite in binary.
    private static double DecimalDifference(double a, double b) =>
        IsEveryday(a) && IsEveryday(b) ? (double)((decimal)a - (decimal)b) : a - b;

    private static bool IsEveryday(double value) => value == 0 || Math.Abs(value) is > 1e-9 and < 1e9;

    private static int SymmetricMark(ReadOnlySpan<char> text) =>
        text[0] == '±' ? 1
        : text[0] != '+' ? 0
        : text.Length > 1 && NumberNotation.IsSign(text[1]) && text[1] != '+' ? 2
        : text.Length > 2 && text[1] == '/' && NumberNotation.IsSign(text[2]) && text[2] != '+' ? 3
        : 0;

    /// <summary>The solidus between two deviations: a number follows it, as after none inside a unit.</summary>
    private static int PairSlash(ReadOnlySpan<char> text, int at)
    {
        for (; at < text.Length; at++)
        {
            if (text[at] != '/') continue;
            var next = Blanks.Skip(text, at + 1);
            if (next == text.Length || NumberNotation.IsSign(text[next]) || char.IsAsciiDigit(text[next]) || text[next] == '.')
            {
                return at;
            }
        }

        return -1;
    }

    private static bool FindRange(ReadOnlySpan<char> text, int at, out int end, out int next)
    {
        for (end = at; end < text.Length; end++)
        {
            next = end + MarkLength(text[end..]);
            if (next > end) return true;
        }

        next = end;
        return false;

        static int MarkLength(ReadOnlySpan<char> text) => text[0] switch
        {
            '.' => text.StartsWith("...", StringComparison.Ordinal) ? 3 : text.StartsWith("..", StringComparison.Ordinal) ? 2 : 0,
            '…' => 1,
            't' => text.StartsWith("to ", StringComparison.Ordinal) ? 3 : 0,
            _ => 0,
        };
    }

    /// <summary>A deviation or a limit as written.</summary>
    private readonly record struct Bound(WrittenNumber Number, Unit? Unit, int Start, int Length)
    {
        public string Quote(ReadOnlySpan<char> text) => NotationErrors.Clip(text.Slice(Start, Length));
    }
}
