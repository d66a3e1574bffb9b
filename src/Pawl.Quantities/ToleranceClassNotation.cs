using System.Diagnostics.CodeAnalysis;

namespace Pawl.Quantities;

/// <summary>Reads tolerance classes and fits of ISO 286: <c>H7</c>, <c>js6</c>, <c>H7/g6</c>.</summary>
internal static class ToleranceClassNotation
{
    private const int MaxGrade = 18;

    // ISO 286-1, fundamental deviations of holes; those of shafts are the same in small letters. From memory.
    private static readonly string[] KnownLetters =
    [
        "A", "B", "C", "CD", "D", "E", "EF", "F", "FG", "G", "H", "J", "JS", "K", "M", "N", "P", "R", "S", "T", "U", "V", "X",
        "Y", "Z", "ZA", "ZB", "ZC",
    ];

    /// <summary>Whether a word is one to three letters and digits, so that a tolerance class was meant.</summary>
    public static bool LooksLikeOne(ReadOnlySpan<char> word)
    {
        var slash = word.IndexOf('/');
        if (slash > 0) word = word[..slash];
        var letters = CountLetters(word);
        return letters is 1 or 2 && letters < word.Length && !word[letters..].ContainsAnyExceptInRange('0', '9');
    }

    public static bool TryRead(
        ReadOnlySpan<char> text, int start,
        [NotNullWhen(true)] out Tolerance? tolerance, [NotNullWhen(false)] out NotationError? error)
    {
        tolerance = null;
        var slash = text[start..].IndexOf('/');
        var end = slash < 0 ? text.Length : start + slash;
        if (!TryReadClass(text[..end], start, out var first, out error)) return false;
        if (slash < 0)
        {
            tolerance = first;
            return true;
        }

        if (!TryReadClass(text, end + 1, out var second, out error)) return false;
        if (first.IsHole && !second.IsHole)
        {
            tolerance = new Tolerance.Fit(first, second);
            return true;
        }

        error = first.IsHole == second.IsHole
            ? NotationErrors.OneKindOfPart(text, start, text.Length - start)
            : NotationErrors.HoleSecond(text, start, text.Length - start, $"{second}/{first}");
        return false;
    }

    /// <summary>Reads one class that fills the text from <paramref name="start"/> on.</summary>
    private static bool TryReadClass(
        ReadOnlySpan<char> text, int start,
        [NotNullWhen(true)] out Tolerance.ToleranceClass? toleranceClass, [NotNullWhen(false)] out NotationError? error)
    {
        toleranceClass = null;
        start = Blanks.Skip(text, start);
        var end = text.TrimEnd().Length;
        if (start >= end)
        {
            error = NotationErrors.Tolerance(text, start, 0);
            return false;
        }

        var count = CountLetters(text[start..end]);
        if (count == 0)
        {
            error = NotationErrors.Tolerance(text, start, end - start);
            return false;
        }

        var letters = text.Slice(start, count);
        if (letters.SequenceEqual("IT"))
        {
            error = NotationErrors.Letters(text, start, count, "A grade alone has no position: write H7, h7 or js7.");
            return false;
        }

        if (!IsFundamentalDeviation(letters))
        {
            error = NotationErrors.Letters(text, start, count, LetterHint(letters));
            return false;
        }

        var digits = start + count;
        var digitsEnd = digits;
        while (digitsEnd < end && char.IsAsciiDigit(text[digitsEnd])) digitsEnd++;
        if (!TryReadGrade(text[digits..digitsEnd], out var grade))
        {
            error = NotationErrors.Grade(text, digits, digitsEnd - digits);
            return false;
        }

        if (digitsEnd < end)
        {
            var rest = Blanks.Skip(text, digitsEnd);
            error = NotationErrors.Tolerance(text, rest, end - rest, $"End the dimension after {text[start..digitsEnd]}.");
            return false;
        }

        toleranceClass = new(letters.ToString(), grade);
        error = null;
        return true;
    }

    private static bool TryReadGrade(ReadOnlySpan<char> digits, out int grade)
    {
        grade = 0;
        if (digits.SequenceEqual("01"))
        {
            grade = -1;
            return true;
        }

        if (digits.Length is not (1 or 2) || (digits.Length == 2 && digits[0] == '0')) return false;
        foreach (var digit in digits) grade = (grade * 10) + digit - '0';
        return grade <= MaxGrade;
    }

    private static bool IsFundamentalDeviation(ReadOnlySpan<char> letters)
    {
        if (letters.Length == 2 && char.IsAsciiLetterUpper(letters[0]) != char.IsAsciiLetterUpper(letters[1])) return false;
        foreach (var known in KnownLetters)
        {
            if (letters.Equals(known, StringComparison.OrdinalIgnoreCase)) return true;
        }

        return false;
    }

    private static string LetterHint(ReadOnlySpan<char> letters)
    {
        foreach (var known in KnownLetters)
        {
            if (letters.Equals(known, StringComparison.OrdinalIgnoreCase))
            {
                return $"Write {known} for a hole or {known.ToLowerInvariant()} for a shaft.";
            }
        }

        return "ISO 286 has A to ZC for holes and a to zc for shafts, without I, L, O, Q and W.";
    }

    private static int CountLetters(ReadOnlySpan<char> text)
    {
        var count = 0;
        while (count < text.Length && char.IsAsciiLetter(text[count])) count++;
        return count;
    }
}
