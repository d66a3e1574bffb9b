using Quickenshtein;

namespace Pawl.Quantities;

/// <summary>The known word nearest to a misspelt one.</summary>
public static class Nearest
{
    // Nobody means anything known by a longer word, and the cost grows with the square.
    private const int LongestWord = 64;

    private static readonly Dictionary<string, string> Extremes = new(StringComparer.Ordinal)
    {
        ["least"] = "min", ["minimum"] = "min", ["minimal"] = "min", ["smallest"] = "min", ["lowest"] = "min",
        ["greatest"] = "max", ["maximum"] = "max", ["maximal"] = "max", ["largest"] = "max", ["highest"] = "max", ["most"] = "max",
    };

    /// <summary>The best candidate within a third of the word's length in edits, or null. Ties go to the first.</summary>
    /// <remarks>
    /// Case does not count as an edit, it only decides between candidates equally near. Two neighbouring letters swapped count
    /// as one edit. Words for a minimum count as <c>min</c> and those for a maximum as <c>max</c>; the one is never proposed for the other.
    /// </remarks>
    public static string? To(string word, IEnumerable<string> candidates)
    {
        ArgumentNullException.ThrowIfNull(word);
        ArgumentNullException.ThrowIfNull(candidates);
        if (word.Length is 0 or > LongestWord) return null;

        var sought = WithShortExtremes(word.ToLowerInvariant());
        var allowed = word.Length / 3;
        string? best = null;
        var least = allowed + 1;
        foreach (var candidate in candidates)
        {
            if (Math.Abs(candidate.Length - sought.Length) > allowed) continue;

            var known = candidate.ToLowerInvariant();
            if (AreOpposite(sought, known)) continue;
            var edits = Edits(sought, known);
            if (edits > least || (edits == least && (best is null || Edits(word, candidate) >= Edits(word, best)))) continue;
            least = edits;
            best = candidate;
        }

        return best;
    }

    private static string WithShortExtremes(string word) => string.Join('_', word.Split('_').Select(part => Extremes.GetValueOrDefault(part, part)));

    private static bool AreOpposite(string one, string other) => (Has(one, "min") && Has(other, "max")) || (Has(one, "max") && Has(other, "min"));

    private static bool Has(string word, string part) => word.Split('_').Contains(part, StringComparer.Ordinal);

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
