using System.Globalization;

namespace Pawl.Quantities;

/// <summary>Every complaint about a hardness, worded once.</summary>
internal static class HardnessErrors
{
    private const string Example = "Write a number or a window and its scale: 58..62 HRC, 700 HV, 280..320 HBW.";
    private const string TwoEnds = "A window has two ends: write 58..62 HRC.";
    private const string Scales = "Scales: HRC, HV, HBW.";

    private static readonly string[] OneSided = ["min", "max", "least", "most", "≥", "≤", ">", "<"];

    public static NotationError Nothing(ReadOnlySpan<char> text) =>
        new(NotationErrorKind.NotANumber, 0, text.Length, "Nothing is written here.", Example);

    public static NotationError NoScale(ReadOnlySpan<char> text)
    {
        var start = Blanks.Skip(text, 0);
        return new(
            NotationErrorKind.MissingUnit, start, text.Trim().Length, $"{NotationErrors.Quote(text.Trim())} names no hardness scale.", Example);
    }

    public static NotationError UnknownScale(ReadOnlySpan<char> text, int start, int length)
    {
        var word = text.Slice(start, length);
        if (IsOneSided(word)) return Misplaced(text, start, length);

        var nearest = word.Equals("hrc", StringComparison.OrdinalIgnoreCase) ? "HRC"
            : word.Equals("hv", StringComparison.OrdinalIgnoreCase) ? "HV"
            : word.Equals("hbw", StringComparison.OrdinalIgnoreCase) || word.Equals("hb", StringComparison.OrdinalIgnoreCase) ? "HBW"
            : null;
        return new(
            NotationErrorKind.UnknownUnit, start, length, $"{NotationErrors.Quote(word)} is not a hardness scale that can be converted.",
            nearest is null ? Scales : $"Did you mean {nearest}?");
    }

    public static NotationError TwoScales(ReadOnlySpan<char> text, HardnessPiece first, HardnessPiece second) => new(
        NotationErrorKind.UnknownUnit, second.Start, second.Length,
        $"{NotationErrors.Quote(text.Slice(second.Start, second.Length))} is a second scale beside {Hardness.SymbolOf(first.Scale)}.",
        "State one scale.");

    public static NotationError Misplaced(ReadOnlySpan<char> text, int start, int length)
    {
        var piece = text.Slice(start, length);
        return new(
            NotationErrorKind.NotANumber, start, length, $"{NotationErrors.Quote(piece)} has no place in a hardness.",
            IsOneSided(piece) ? TwoEnds : Example);
    }

    public static NotationError Missing(int at) =>
        new(NotationErrorKind.NotANumber, at, 0, "A number is missing here.", Example);

    public static NotationError Backwards(ReadOnlySpan<char> text, HardnessPiece from, HardnessPiece to, string hint) => new(
        NotationErrorKind.MalformedTolerance, from.Start, to.End - from.Start,
        $"{NotationErrors.Quote(text[from.Start..to.End])} has its upper end below its lower.", hint);

    public static NotationError OutOfRange(HardnessPiece piece, double value, HardnessScale scale)
    {
        var (least, most) = Hardness.RangeOf(scale);
        return new(
            NotationErrorKind.OutOfRange, piece.Start, piece.Length,
            string.Create(CultureInfo.InvariantCulture, $"{value} {Hardness.SymbolOf(scale)} is beyond the scale, which goes from {least} to {most}."),
            scale == HardnessScale.RockwellC ? "State a soft or a very hard material in HV or HBW." : null);
    }

    private static bool IsOneSided(ReadOnlySpan<char> word)
    {
        foreach (var known in OneSided)
        {
            if (word.Equals(known, StringComparison.OrdinalIgnoreCase)) return true;
        }

        return false;
    }
}
