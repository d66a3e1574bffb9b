namespace Pawl.Quantities;

/// <summary>Brings the many characters for one sign in a unit to one, so that the table needs each name once.</summary>
internal static class UnitSpelling
{
    /// <summary>The longest unit worth reading, in characters.</summary>
    public const int Longest = 64;

    /// <summary>
    /// One character for micro, delta, degree, minute, minus, product and solidus; no blanks around operators or inside
    /// parentheses.
    /// </summary>
    /// <remarks><paramref name="origins"/> takes, for each character written, its index in <paramref name="text"/>.</remarks>
    public static bool TryNormalise(ReadOnlySpan<char> text, Span<char> spelling, Span<byte> origins, out int length)
    {
        length = 0;
        if (text.Length > Longest) return false;

        var blank = false;
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsWhiteSpace(text[i]))
            {
                blank = length > 0;
                continue;
            }

            var sign = Sign(text[i]);
            if (blank && !IsOperator(sign) && sign != ')' && !IsOperator(spelling[length - 1]) && spelling[length - 1] != '(')
            {
                origins[length] = (byte)(i - 1);
                spelling[length++] = ' ';
            }

            blank = false;
            origins[length] = (byte)i;
            spelling[length++] = sign;
        }

        return length > 0;
    }

    /// <summary>Whether a character, as normalised, joins two units.</summary>
    public static bool IsOperator(char sign) => sign is '·' or '/';

    /// <summary>The one character that stands for this one and its lookalikes.</summary>
    public static char Sign(char written) => written switch
    {
        '\u03BC' => '\u00B5', // Greek mu: the micro sign.
        '\u2206' => '\u0394', // Increment: the Greek delta.
        '\u00BA' or '\u02DA' => '°', // Ordinal indicator, ring above.
        '\'' or '\u2019' => '′',
        '\u2212' => '-',
        '*' or '.' or '×' or '\u22C5' or '\u2219' or '\u2022' => '·',
        '\u2044' or '\u2215' => '/',
        _ => written,
    };
}
