using Quickenshtein;

namespace Pawl.Quantities;

/// <summary>The known word nearest to a misspelt one.</summary>
public static class Nearest
{
    // Nobody means anything known by a longer word, and the cost grows with the square.
    private const int LongestWord = 64;

    /// <summary>The best candidate within a third of the word's length in edits, or null. Ties go to the first.</summary>
    /// <remarks>
    /// Case does not count as an edit, it only decides between candidates equally near. Two neighbouring letters swapped count
    /// as one edit.
    /// </remarks>
    public static string? To(string word, IEnumerable<string> candidates)
    {
        ArgumentNullException.ThrowIfNull(word);
        ArgumentNullException.ThrowIfNull(candidates);
        if (word.Length is 0 or > LongestWord) return null;

        var sought = word.ToLowerInvariant();
        var allowed = word.Length / 3;
        string? best = null;
        var least = allowed + 1;
        foreach (var candidate in candidates)
        {
            if (Math.Abs(candidate.Length - word.Length) > allowed) continue;

            var edits = Edits(sought, candidate.ToLowerInvariant());
            if (edits > least || (edits == least && (best is null || Edits(word, candidate) >= Edits(word, best)))) continue;
            least = edits;
            best = candidate;
        }

        return best;
    }

    private static int Edits(string a, string b) =>
        string.Equals(a, b, StringComparison.Ordinal) ? 0
        : AreOneSwapApart(a, b) ? 1
        : Levenshtein.GetDistance(a, b);

    private static bool AreOneSwapApart(string a, string b)
    {
        if (a.Length != b.Length) return false;
        var i = a.AsSpan().CommonPrefixLength(b);
        return i + 1 < a.Length && a[i] == b[i + 1] && a[i + 1] == b[i]
            && a.AsSpan(i + 2).SequenceEqual(b.AsSpan(i + 2));
    }
}
