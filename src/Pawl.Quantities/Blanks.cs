namespace Pawl.Quantities;

/// <summary>Blanks between the parts of a notation, the no-break and the thin ones too.</summary>
internal static class Blanks
{
    /// <summary>The first place from <paramref name="at"/> on that is not blank.</summary>
    public static int Skip(ReadOnlySpan<char> text, int at)
    {
        while (at < text.Length && char.IsWhiteSpace(text[at])) at++;
        return at;
    }
}
