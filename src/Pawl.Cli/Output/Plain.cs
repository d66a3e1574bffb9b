using System.Buffers;
using System.Globalization;
using System.Text;
using Pawl.Reports.Rendering;

namespace Pawl.Cli.Output;

/// <summary>Text that came from a spec or a path, made harmless for a terminal or a log.</summary>
internal static class Plain
{
    /// <summary>One line: control characters, line ends and direction overrides become visible escapes.</summary>
    public static string Line(string text)
    {
        var i = 0;
        while (i < text.Length && IsHarmless(text, i))
            i++;
        if (i == text.Length)
            return text;

        var clean = new StringBuilder(text.Length + 16).Append(text, 0, i);
        for (; i < text.Length; i++)
        {
            if (IsHarmless(text, i))
                clean.Append(text[i]);
            else
                clean.Append(CultureInfo.InvariantCulture, $"\\u{(int)text[i]:x4}");
        }

        return clean.ToString();
    }

    // "##[" and "##name[" start a command in the logs of some build services, wherever they stand in a line.
    private static bool IsHarmless(string text, int i) => text[i] switch
    {
        < ' ' or '\u007f' => false,
        < '\u0080' => text[i] != '[' || !LogText.EndsMark(text.AsSpan(0, i)),
        _ => !Unsafe.Contains(text[i]) && !IsLoneSurrogate(text, i),
    };

    private static readonly SearchValues<char> Unsafe = SearchValues.Create(
        string.Concat(Enumerable.Range(0x80, 0x20).Select(c => (char)c)) + "\u2028\u2029\u200e\u200f\u061c\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069");

    private static bool IsLoneSurrogate(string text, int i) =>
        char.IsHighSurrogate(text[i])
            ? i + 1 >= text.Length || !char.IsLowSurrogate(text[i + 1])
            : char.IsLowSurrogate(text[i]) && (i == 0 || !char.IsHighSurrogate(text[i - 1]));
}
