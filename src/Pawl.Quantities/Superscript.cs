using System.Text;

namespace Pawl.Quantities;

/// <summary>Raised digits, as in <c>mm²</c> and <c>s⁻¹</c>.</summary>
internal static class Superscript
{
    public const char Minus = '⁻';

    private const string Digits = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    /// <summary>The digit that a raised character stands for, or −1.</summary>
    public static int DigitOf(char raised) => Digits.IndexOf(raised, StringComparison.Ordinal);

    /// <summary>Appends an exponent; 1 is not written.</summary>
    public static void Append(StringBuilder text, int exponent)
    {
        if (exponent == 1) return;
        if (exponent < 0) text.Append(Minus);

        var size = Math.Abs(exponent);
        if (size >= 100) text.Append(Digits[size / 100]);
        if (size >= 10) text.Append(Digits[size / 10 % 10]);
        text.Append(Digits[size % 10]);
    }
}
