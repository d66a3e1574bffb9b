using System.Diagnostics.CodeAnalysis;
using System.Text;

namespace Pawl.Quantities;

/// <summary>A compound unit: products, quotients and whole powers of named units.</summary>
/// <remarks>
/// <code>
/// quotient = [ "1" ] "/" factor | product { "/" factor }
/// product  = factor { "·" factor }
/// factor   = ( name | "(" quotient ")" ) [ power ]
/// power    = "^" [ "-" | "+" ] digits | raised digits | "2" | "3" | "4"
/// </code>
/// A plain digit is a power only up to 4: <c>mm2</c> is an area, but <c>h6</c> a tolerance class.
/// </remarks>
internal ref struct UnitExpression(ReadOnlySpan<char> spelling)
{
    private const int MostTerms = 12;
    private const int DeepestNesting = 8;
    private const int MaxExponent = 12;

    private readonly ReadOnlySpan<char> _text = spelling;
    private readonly Term[] _terms = new Term[MostTerms];
    private int _count;
    private int _at;
    private UnitFailure? _failure;

    public bool TryEvaluate([NotNullWhen(true)] out Unit? unit, out UnitFailure failure)
    {
        unit = null;
        if (Quotient(0) && (_at == _text.Length || Fail(UnitFault.Malformed, _at, _text.Length - _at))) unit = Compose();
        failure = unit is null ? _failure ?? new(UnitFault.Malformed, 0, _text.Length) : default;
        return unit is not null;
    }

    private bool Quotient(int depth)
    {
        if (Next() == '1' && Next(1) == '/') _at++;
        if (Next() != '/' && !Product(depth)) return false;

        while (Take('/'))
        {
            var first = _count;
            if (!Factor(depth)) return false;
            if (!Raise(first, -1)) return false;

            // ISO 80000-1: no product after a solidus without parentheses.
            if (Next() == '·') return Fail(UnitFault.AmbiguousDivisor, 0, _text.Length);
        }

        return true;
    }

    private bool Product(int depth)
    {
        do
        {
            if (!Factor(depth)) return false;
        }
        while (Take('·'));

        return true;
    }

    private bool Factor(int depth)
    {
        var first = _count;
        var parentheses = Take('(');
        if (parentheses)
        {
            if (depth == DeepestNesting) return Fail(UnitFault.Malformed, 0, _text.Length);
            if (!Quotient(depth + 1)) return false;
            if (!Take(')')) return Fail(UnitFault.Malformed, _at, 0);
        }
        else if (!Name())
        {
            return false;
        }

        var start = _at;
        if (!Power(out var exponent, out var wellFormed)) return wellFormed;

        // Nm² is meant as N·m² by some and as (N·m)² by none.
        return parentheses || _count == first + 1 ? Raise(first, exponent) : Fail(UnitFault.Malformed, start, _at - start);
    }

    private bool Name()
    {
        var start = _at;
        while (_at < _text.Length && IsOfName(_text[_at])) _at++;
        if (_at == start) return Fail(UnitFault.Malformed, start, Math.Min(1, _text.Length - start));

        var unit = UnitTable.FindPart(_text[start.._at]);
        if (unit is null) return Fail(UnitFault.UnknownName, start, _at - start);
        return unit.Symbol.AsSpan().ContainsAny('·', '/') ? AddParts(unit.Symbol) : Add(new(unit, 1));
    }

    /// <summary>Adds the parts of a compound that has a name in one piece, as Nm and fpm have.</summary>
    private bool AddParts(string symbol)
    {
        var inner = new UnitExpression(symbol);
        if (!inner.Quotient(0)) return Fail(UnitFault.Malformed, 0, _text.Length);
        for (var i = 0; i < inner._count; i++)
        {
            if (!Add(inner._terms[i])) return false;
        }

        return true;
    }

    private bool Add(Term term)
    {
        if (_count == MostTerms) return Fail(UnitFault.Malformed, 0, _text.Length);
        _terms[_count++] = term;
        return true;
    }

    private static bool IsOfName(char c) =>
        !UnitSpelling.IsOperator(c) && c is not ('(' or ')' or '^' or ' ' or Superscript.Minus)
        && !char.IsAsciiDigit(c) && Superscript.DigitOf(c) < 0;

    /// <summary>Reads a power, if there is one.</summary>
    private bool Power(out int exponent, out bool wellFormed)
    {
        exponent = 1;
        wellFormed = true;
        var start = _at;
        var negative = false;
        var raised = false;
        if (Take('^'))
        {
            negative = Take('-');
            if (!negative) Take('+');
        }
        else if (Next() == Superscript.Minus || Superscript.DigitOf(Next()) >= 0)
        {
            raised = true;
            negative = Take(Superscript.Minus);
        }
        else if (Next() is >= '2' and <= '4' && !char.IsAsciiDigit(Next(1)))
        {
            exponent = _text[_at++] - '0';
            return true;
        }
        else
        {
            return false;
        }

        var size = 0;
        var digits = _at;
        while (Digit(Next(), raised) is >= 0 and var digit && size <= MaxExponent)
        {
            size = (size * 10) + digit;
            _at++;
        }

        if (_at == digits || size is 0 or > MaxExponent)
        {
            wellFormed = Fail(UnitFault.Malformed, start, Math.Max(1, _at - start));
            return false;
        }

        exponent = negative ? -size : size;
        return true;
    }

    private static int Digit(char c, bool raised) =>
        raised ? Superscript.DigitOf(c) : char.IsAsciiDigit(c) ? c - '0' : -1;

    private bool Raise(int first, int exponent)
    {
        for (var i = first; i < _count; i++)
        {
            var raised = _terms[i].Exponent * exponent;
            if (Math.Abs(raised) > MaxExponent) return Fail(UnitFault.Malformed, 0, _text.Length);
            _terms[i] = _terms[i] with { Exponent = raised };
        }

        return true;
    }

    private Unit? Compose()
    {
        if (_count == 1 && _terms[0].Exponent == 1)
        {
            var alone = UnitTable.Find(_terms[0].Unit.Symbol);
            if (alone is null) Fail(UnitFault.UnknownName, 0, _text.Length);
            return alone;
        }

        var symbol = Symbol();
        if (UnitTable.Find(symbol) is { } named) return named;

        int length = 0, mass = 0, time = 0, temperature = 0, angle = 0, hardness = 0;
        var factor = 1.0;
        for (var term = 0; term < _count; term++)
        {
            var (unit, exponent) = _terms[term];
            length += unit.Dimension.Length * exponent;
            mass += unit.Dimension.Mass * exponent;
            time += unit.Dimension.Time * exponent;
            temperature += unit.Dimension.Temperature * exponent;
            angle += unit.Dimension.Angle * exponent;
            hardness += unit.Dimension.Hardness * exponent;
            for (var i = 0; i < Math.Abs(exponent); i++) factor = exponent > 0 ? factor * unit.Factor : factor / unit.Factor;
        }

        return IsSane(length) && IsSane(mass) && IsSane(time) && IsSane(temperature) && IsSane(angle)
            && IsSane(hardness) && double.IsNormal(factor)
            ? new Unit(symbol, new((sbyte)length, (sbyte)mass, (sbyte)time, (sbyte)temperature, (sbyte)angle, Hardness: (sbyte)hardness), factor)
            : null;
    }

    private static bool IsSane(int exponent) => Math.Abs(exponent) <= MaxExponent;

    /// <summary>The compound as reports write it: products with a dot, the divisor in parentheses where it needs them.</summary>
    private readonly string Symbol()
    {
        var text = new StringBuilder(UnitSpelling.Longest);
        var divisors = 0;
        for (var i = 0; i < _count; i++)
        {
            var term = _terms[i];
            if (term.Exponent < 0)
            {
                divisors++;
                continue;
            }

            if (text.Length > 0) text.Append('·');
            term.AppendTo(text, term.Exponent);
        }

        if (divisors == 0) return text.ToString();

        if (text.Length == 0) text.Append('1');
        text.Append('/');
        if (divisors > 1) text.Append('(');
        var first = true;
        for (var i = 0; i < _count; i++)
        {
            var term = _terms[i];
            if (term.Exponent > 0) continue;
            if (!first) text.Append('·');
            first = false;
            term.AppendTo(text, -term.Exponent);
        }

        if (divisors > 1) text.Append(')');
        return text.ToString();
    }

    private readonly char Next(int ahead = 0) => _at + ahead < _text.Length ? _text[_at + ahead] : '\0';

    private bool Take(char sign)
    {
        if (_at == _text.Length || _text[_at] != sign) return false;
        _at++;
        return true;
    }

    private bool Fail(UnitFault fault, int start, int length)
    {
        _failure ??= new(fault, start, length);
        return false;
    }

    private readonly record struct Term(Unit Unit, int Exponent)
    {
        public void AppendTo(StringBuilder text, int exponent)
        {
            text.Append(Unit.Symbol);
            Superscript.Append(text, exponent);
        }
    }
}
