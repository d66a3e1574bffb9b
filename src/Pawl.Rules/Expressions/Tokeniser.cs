using System.Globalization;
using Pawl.Quantities;

namespace Pawl.Rules.Expressions;

/// <summary>Cuts an expression into words. A number takes the unit behind it with it: <c>0.05 mm</c>, <c>8200 1/min</c>.</summary>
internal ref struct Tokeniser(string text)
{
    /// <summary>A longer expression belongs into a formula of the analysis, where it can be tested.</summary>
    public const int MostCharacters = 400;

    private const int LongestUnit = 24;

    private readonly string _text = text;
    private readonly List<Token> _tokens = [];
    private int _at;

    public static List<Token>? Read(string text, out ExpressionError? error)
    {
        if (text.Length > MostCharacters)
        {
            error = new(
                RuleCodes.ExpressionTooLong, 0, text.Length,
                $"The expression has {text.Length} characters; {MostCharacters} are read at most.",
                "Let the analysis compute a quantity and name that.");
            return null;
        }

        var tokeniser = new Tokeniser(text);
        error = tokeniser.Run();
        return error is null ? tokeniser._tokens : null;
    }

    private ExpressionError? Run()
    {
        while (true)
        {
            while (_at < _text.Length && char.IsWhiteSpace(_text[_at]))
                _at++;
            if (_at == _text.Length)
                return null;

            var c = _text[_at];
            var error =
                IsLetter(c) ? Word() :
                char.IsAsciiDigit(c) || (c == '.' && _at + 1 < _text.Length && char.IsAsciiDigit(_text[_at + 1])) ? Number() :
                c is '\'' or '"' ? Quoted(c) :
                Sign(c);
            if (error is not null)
                return error;
        }
    }

    private ExpressionError? Word()
    {
        var start = _at;
        while (_at < _text.Length && (IsLetter(_text[_at]) || char.IsAsciiDigit(_text[_at])))
        {
            _at++;
            if (_at + 1 < _text.Length && _text[_at] == '.' && IsLetter(_text[_at + 1]))
                _at++;
        }

        var word = _text[start.._at];
        switch (word)
        {
            case "and":
                return Add(Operator.And, start);
            case "or":
                return Add(Operator.Or, start);
            case "not":
                return Add(Operator.Not, start);
            case "in" when _tokens is [.., { Kind: TokenKind.Operator, Operator: Operator.Not } not]:
                _tokens.RemoveAt(_tokens.Count - 1);
                return Add(Operator.NotIn, not.Start);
            case "in":
                return Add(Operator.In, start);
            case "true" or "false":
                _tokens.Add(new(TokenKind.Truth, start, _at) { Truth = word == "true" });
                return null;
        }

        _tokens.Add(new(NextIs('(') ? TokenKind.Function : TokenKind.Name, start, _at) { Value = word });
        return null;
    }

    private ExpressionError? Number()
    {
        var start = _at;
        while (_at < _text.Length && (char.IsAsciiDigit(_text[_at]) || _text[_at] == '.'))
            _at++;
        if (_at < _text.Length && _text[_at] is 'e' or 'E')
        {
            var sign = _at + 1 < _text.Length && _text[_at + 1] is '+' or '-' ? 1 : 0;
            if (_at + 1 + sign < _text.Length && char.IsAsciiDigit(_text[_at + 1 + sign]))
            {
                _at += 1 + sign;
                while (_at < _text.Length && char.IsAsciiDigit(_text[_at]))
                    _at++;
            }
        }

        var digits = _text.AsSpan(start, _at - start);
        if (!double.TryParse(digits, NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out var value)
            || !double.IsFinite(value))
        {
            return Error(start, _at, $"`{digits}` is not a number.");
        }

        if (Unit(out var unit) is { } error)
            return error;

        // x ^ -1: NCalc knows no sign behind its power operator.
        if (_tokens is [.., { Operator: Operator.Power }, { Operator: Operator.Minus }])
        {
            (start, value) = (_tokens[^1].Start, -value);
            _tokens.RemoveAt(_tokens.Count - 1);
        }

        _tokens.Add(new(TokenKind.Number, start, _at) { Amount = new(value, unit) });
        return null;
    }

    /// <summary>The longest unit that stands behind a number; none makes it a ratio.</summary>
    private ExpressionError? Unit(out Unit unit)
    {
        unit = Units.One;
        var start = _at;
        while (start < _text.Length && _text[start] == ' ')
            start++;

        // 8200 1/min: the one belongs to the unit.
        var isReciprocal = start + 2 < _text.Length && _text[start] == '1' && _text[start + 1] == '/' && IsUnitLetter(_text[start + 2]);
        var from = isReciprocal ? start + 2 : start;
        var wordEnd = from;
        while (wordEnd < _text.Length && IsUnitLetter(_text[wordEnd]))
            wordEnd++;
        if (wordEnd == from)
            return null;

        var word = _text.AsSpan(start, wordEnd - start);
        if (word is "and" or "or" or "not" || (word is "in" && NextIs('(', wordEnd)))
            return null;

        var end = wordEnd;
        while (end < _text.Length && end - start < LongestUnit
            && (IsUnitLetter(_text[end]) || char.IsAsciiDigit(_text[end]) || _text[end] is '*' or '/' or '^' or '(' or ')'))
        {
            end++;
        }

        for (; end >= wordEnd; end--)
        {
            // Not in the middle of a word: the m of `mm*module` is no metre.
            if (end < _text.Length && (IsUnitLetter(_text[end]) || char.IsAsciiDigit(_text[end]) || _text[end] == '_'))
                continue;
            if (!Units.TryParse(_text.AsSpan(start, end - start), out var found))
                continue;
            unit = found;
            _at = end;
            return null;
        }

        var nearest = Units.Nearest(word);
        return new(
            RuleCodes.UnknownUnit, start, wordEnd, $"`{word}` is no unit.",
            nearest is null ? "Put a `*` between a number and a quantity." : $"Did you mean `{nearest}`?");
    }

    private ExpressionError? Quoted(char quote)
    {
        var end = _text.IndexOf(quote, _at + 1);
        if (end < 0)
            return Error(_at, _text.Length, "The text has no closing quote.");
        _tokens.Add(new(TokenKind.Text, _at, end + 1) { Value = _text[(_at + 1)..end] });
        _at = end + 1;
        return null;
    }

    private ExpressionError? Sign(char c)
    {
        var start = _at++;
        var next = _at < _text.Length ? _text[_at] : '\0';
        switch (c, next)
        {
            case ('=', '='):
                return AddTwo(Operator.Equal, start);
            case ('!', '='):
                return AddTwo(Operator.NotEqual, start);
            case ('<', '='):
                return AddTwo(Operator.LessOrEqual, start);
            case ('>', '='):
                return AddTwo(Operator.GreaterOrEqual, start);
            case ('&', '&'):
                return AddTwo(Operator.And, start);
            case ('|', '|'):
                return AddTwo(Operator.Or, start);
        }

        switch (c)
        {
            case '<':
                return Add(Operator.Less, start);
            case '>':
                return Add(Operator.Greater, start);
            case '!':
                return Add(Operator.Not, start);
            case '+':
                return Add(Operator.Plus, start);
            case '-':
                return Add(Operator.Minus, start);
            case '*':
                return Add(Operator.Times, start);
            case '/':
                return Add(Operator.Divide, start);
            case '^':
                return Add(Operator.Power, start);
            case '(':
                _tokens.Add(new(TokenKind.Open, start, _at));
                return null;
            case ')':
                _tokens.Add(new(TokenKind.Close, start, _at));
                return null;
            case ',':
                _tokens.Add(new(TokenKind.Comma, start, _at));
                return null;
            default:
                return Error(start, _at, $"`{(char.IsSurrogate(c) ? '\uFFFD' : c)}` has no meaning in an expression.", Meant(c));
        }
    }

    private static string? Meant(char c) => c switch
    {
        '=' => "Equality is `==`.",
        '\u2212' or '\u2013' => "Write the minus as `-`.",
        '×' or '·' => "Write `*` for times.",
        '÷' or ':' => "Write `/` for divided by.",
        '≤' => "Write `<=`.",
        '≥' => "Write `>=`.",
        '≠' => "Write `!=`.",
        '&' => "Write `and`.",
        '|' => "Write `or`; for a magnitude `abs(…)`.",
        _ => null,
    };

    private ExpressionError? AddTwo(Operator op, int start)
    {
        _at = start + 2;
        return Add(op, start);
    }

    private readonly ExpressionError? Add(Operator op, int start)
    {
        _tokens.Add(new(TokenKind.Operator, start, _at) { Operator = op });
        return null;
    }

    private readonly bool NextIs(char expected) => NextIs(expected, _at);

    private readonly bool NextIs(char expected, int from)
    {
        while (from < _text.Length && _text[from] == ' ')
            from++;
        return from < _text.Length && _text[from] == expected;
    }

    private static ExpressionError Error(int start, int end, string message, string? hint = null) =>
        new(RuleCodes.ExpressionSyntax, start, end, message, hint);

    private static bool IsLetter(char c) => char.IsAsciiLetter(c) || c == '_';

    private static bool IsUnitLetter(char c) =>
        char.IsAsciiLetter(c) || c is '°' or '%' or '‰' or '′' or '″' or 'µ' or 'μ' or 'Ω' or '·' or '⋅' or '²' or '³' or '⁴' or '⁻' or '¹';
}
