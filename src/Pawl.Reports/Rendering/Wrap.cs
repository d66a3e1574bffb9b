using System.Globalization;
using System.Text;

namespace Pawl.Reports.Rendering;

/// <summary>Lines broken at the width of a terminal, counted in its cells.</summary>
internal static class Wrap
{
    private const int Least = 20;

    /// <summary>Wide characters by Unicode Standard Annex #11, in ranges; those that are not assigned count as wide too, which breaks a line early, never late.</summary>
    private static readonly (int From, int To)[] Wide =
    [
        (0x1100, 0x115F), (0x231A, 0x231B), (0x2329, 0x232A), (0x23E9, 0x23F3), (0x25FD, 0x25FE), (0x2614, 0x2615), (0x2648, 0x2653), (0x267F, 0x267F), (0x2693, 0x2693),
        (0x26A1, 0x26A1), (0x26AA, 0x26AB), (0x26BD, 0x26BE), (0x26C4, 0x26C5), (0x26CE, 0x26CE), (0x26D4, 0x26D4), (0x26EA, 0x26EA), (0x26F2, 0x26F5), (0x26FA, 0x26FD),
        (0x2705, 0x2705), (0x270A, 0x270B), (0x2728, 0x2728), (0x274C, 0x274E), (0x2753, 0x2757), (0x2795, 0x2797), (0x27B0, 0x27BF), (0x2B1B, 0x2B1C), (0x2B50, 0x2B55),
        (0x2E80, 0x303E), (0x3041, 0x4DBF), (0x4E00, 0xA4CF), (0xA960, 0xA97F), (0xAC00, 0xD7A3), (0xF900, 0xFAFF), (0xFE10, 0xFE19), (0xFE30, 0xFE6F), (0xFF01, 0xFF60),
        (0xFFE0, 0xFFE6), (0x16FE0, 0x18DFF), (0x1AFF0, 0x1B2FF), (0x1F004, 0x1F004), (0x1F0CF, 0x1F0CF), (0x1F18E, 0x1F19A), (0x1F200, 0x1F64F), (0x1F680, 0x1F6FF),
        (0x1F7E0, 0x1F7EB), (0x1F900, 0x1FAFF), (0x20000, 0x3FFFD),
    ];

    /// <summary>The pieces of a line. What follows the first stands deeper than it; a word longer than a line stays whole, so that a path can be followed.</summary>
    /// <param name="line">The line, with the escape sequences of <see cref="Paint"/>.</param>
    /// <param name="width">Cells of the terminal; fewer than 20 count as 20.</param>
    /// <param name="hang">How much deeper the later pieces stand than the first.</param>
    public static IEnumerable<string> Pieces(string line, int width, int hang)
    {
        width = Math.Max(width, Least);
        var indent = line.Length - line.AsSpan().TrimStart(' ').Length;
        var piece = new StringBuilder().Append(' ', indent);
        var (cells, words) = (indent, 0);
        foreach (var word in line[indent..].Split(' '))
        {
            var length = Cells(word);
            if (words > 0 && cells + 1 + length > width)
            {
                yield return piece.ToString().TrimEnd(' ');
                piece.Clear().Append(' ', Math.Min(indent + hang, width / 2));
                (cells, words) = (piece.Length, 0);
            }

            if (words++ > 0)
            {
                piece.Append(' ');
                cells++;
            }

            piece.Append(word);
            cells += length;
        }

        yield return piece.ToString();
    }

    /// <summary>The cells that a text takes: two for a wide character, none for an accent or an escape sequence.</summary>
    public static int Cells(string text)
    {
        var cells = 0;
        var isEscape = false;
        foreach (var rune in text.EnumerateRunes())
        {
            if (isEscape)
                isEscape = rune.Value != 'm';
            else if (rune.Value == 0x1B)
                isEscape = true;
            else
                cells += CellsOf(rune);
        }

        return cells;
    }

    private static int CellsOf(Rune rune) => rune.Value < 0x300 ? 1
        : Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark ? 0
        : Array.Exists(Wide, range => rune.Value >= range.From && rune.Value <= range.To) ? 2
        : 1;
}
