using System.Globalization;

namespace Pawl.Rules.Packs;

/// <summary>Whether a text that a reader is owed says something.</summary>
internal static class Substance
{
    /// <summary>As many words as a reason has at least.</summary>
    public const int FewestWords = 4;

    /// <summary>As many of them as do not repeat the rule.</summary>
    private const int FewestOwnWords = 2;

    private static readonly HashSet<string> Fillers = new(
        ["n", "a", "na", "nil", "none", "tbd", "tba", "tbc", "todo", "fixme", "xxx", "ok", "okay", "yes", "no", "test", "see", "above", "unknown", "nobody", "anybody", "someone"],
        StringComparer.OrdinalIgnoreCase);

    /// <summary>What a reason lacks, or null: enough words, of its own.</summary>
    public static string? LackOfReason(string reason, string id, string title)
    {
        var words = Words(reason);
        if (words.Count < FewestWords)
            return "says too little";
        words.ExceptWith(Words(title));
        words.ExceptWith(Words(id));
        return words.Count < FewestOwnWords ? "repeats the rule" : null;
    }

    /// <summary>Whether a text names somebody: two letters at least, and no filler.</summary>
    public static bool IsSomebody(string text) => Words(text).Any(word => word.Length > 1 || char.GetUnicodeCategory(word[0]) == UnicodeCategory.OtherLetter);

    /// <summary>Words that are no fillers, each once. Where words are not parted, every letter counts as one.</summary>
    private static HashSet<string> Words(string text)
    {
        var words = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        var start = -1;
        for (var i = 0; i <= text.Length; i++)
        {
            var isLetter = i < text.Length && char.IsLetter(text[i]);
            var isWhole = isLetter && char.GetUnicodeCategory(text[i]) == UnicodeCategory.OtherLetter;
            if (start >= 0 && (!isLetter || isWhole))
            {
                words.Add(text[start..i]);
                start = -1;
            }

            if (isWhole)
                words.Add(text[i..(i + 1)]);
            else if (isLetter && start < 0)
                start = i;
        }

        words.ExceptWith(Fillers);
        return words;
    }
}
