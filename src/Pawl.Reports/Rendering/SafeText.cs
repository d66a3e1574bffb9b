using System.Globalization;
using System.Text;

namespace Pawl.Reports.Rendering;

/// <summary>Text of others, fit for one line of a report.</summary>
internal static class SafeText
{
    /// <summary>
    /// The text with nothing in it that a terminal or a page obeys: line breaks and tabs become spaces; other control
    /// characters, marks that turn the direction of reading, and invisible characters become their code, <c>&lt;U+202E&gt;</c>.
    /// </summary>
    public static string Line(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return IsPlain(text) ? text : Cleaned(text);
    }

    private static bool IsPlain(string text)
    {
        foreach (var c in text)
        {
            if (c is < ' ' or > '~' && !IsVisible(c))
                return false;
        }

        return true;
    }

    private static bool IsVisible(char c) => !char.IsSurrogate(c) && IsVisible(char.GetUnicodeCategory(c));

    private static bool IsVisible(UnicodeCategory category) => category is not (
        UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
        or UnicodeCategory.Surrogate or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned);

    private static string Cleaned(string text)
    {
        var clean = new StringBuilder(text.Length + 16);
        foreach (var rune in text.EnumerateRunes())
        {
            if (IsVisible(Rune.GetUnicodeCategory(rune)))
                clean.Append(rune);
            else if (rune.Value is '\t' or '\n' or '\r' or 0x85 or 0x2028 or 0x2029)
                clean.Append(' ');
            else
                clean.Append(CultureInfo.InvariantCulture, $"<U+{rune.Value:X4}>");
        }

        return clean.ToString();
    }
}
