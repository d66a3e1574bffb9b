using System.Globalization;

namespace Pawl.Specs.Yaml;

/// <summary>What a plain scalar is by the core schema of YAML 1.2.</summary>
public enum ScalarKind
{
    Text,
    Null,
    Truth,
    Whole,
    Real,
    NotFinite,
}

/// <summary>The core schema of YAML 1.2, without the notations that YAML 1.1 reads otherwise.</summary>
/// <remarks>
/// Source: YAML 1.2.2, 10.3.2 tag resolution. Left out on purpose, so that no editor and no reader take a value for another one:
/// octal and hexadecimal numbers (<c>0o17</c>, <c>0x1F</c>) and whole numbers with leading zeros (<c>010</c>) count as text.
/// </remarks>
public static class CoreSchema
{
    public static ScalarKind KindOf(YamlScalar scalar)
    {
        ArgumentNullException.ThrowIfNull(scalar);
        if (scalar.IsQuoted)
            return ScalarKind.Text;
        if (scalar.IsNull)
            return ScalarKind.Null;

        var text = scalar.Value;
        if (text is "true" or "True" or "TRUE" or "false" or "False" or "FALSE")
            return ScalarKind.Truth;
        if (IsWhole(text))
            return ScalarKind.Whole;
        return IsReal(text) ? ScalarKind.Real : IsNotFinite(text) ? ScalarKind.NotFinite : ScalarKind.Text;
    }

    /// <summary>A finite number written in digits.</summary>
    public static bool TryNumber(YamlScalar scalar, out double number)
    {
        number = 0;
        return KindOf(scalar) is ScalarKind.Whole or ScalarKind.Real
            && double.TryParse(scalar.Value, NumberStyles.Float, Invariant, out number) && double.IsFinite(number);
    }

    /// <summary>[-+]? then digits without a leading zero.</summary>
    private static bool IsWhole(string text)
    {
        var at = AfterSign(text);
        if (at == text.Length || (text[at] == '0' && at + 1 < text.Length))
            return false;
        for (; at < text.Length; at++)
        {
            if (!char.IsAsciiDigit(text[at]))
                return false;
        }

        return true;
    }

    /// <summary>[-+]? ( \. [0-9]+ | [0-9]+ ( \. [0-9]* )? ) ( [eE] [-+]? [0-9]+ )?</summary>
    private static bool IsReal(string text)
    {
        var at = AfterSign(text);
        var whole = Digits(text, at);
        var end = at + whole;
        if (whole > 1 && text[at] == '0' && (end == text.Length || text[end] != '.'))
            return false;

        if (end < text.Length && text[end] == '.')
        {
            var fraction = Digits(text, end + 1);
            if (whole + fraction == 0)
                return false;
            end += 1 + fraction;
        }
        else if (whole == 0)
        {
            return false;
        }

        if (end < text.Length && text[end] is 'e' or 'E')
        {
            end++;
            if (end < text.Length && text[end] is '+' or '-')
                end++;
            var exponent = Digits(text, end);
            if (exponent == 0)
                return false;
            end += exponent;
        }

        return end == text.Length;
    }

    private static bool IsNotFinite(string text) =>
        text is ".nan" or ".NaN" or ".NAN" || text[AfterSign(text)..] is ".inf" or ".Inf" or ".INF";

    private static int AfterSign(string text) => text.Length > 0 && text[0] is '+' or '-' ? 1 : 0;

    private static int Digits(string text, int from)
    {
        var at = from;
        while (at < text.Length && char.IsAsciiDigit(text[at]))
            at++;
        return at - from;
    }
}
