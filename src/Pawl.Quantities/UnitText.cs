using System.Diagnostics.CodeAnalysis;

namespace Pawl.Quantities;

/// <summary>Why a text is no unit.</summary>
internal enum UnitFault
{
    /// <summary>A name that stands for no unit.</summary>
    UnknownName,

    /// <summary>A product after a solidus, which can be read in two ways.</summary>
    AmbiguousDivisor,

    /// <summary>Operators, powers or parentheses out of place.</summary>
    Malformed,
}

/// <summary>Where and why a text is no unit.</summary>
internal readonly record struct UnitFailure(UnitFault Fault, int Start, int Length);

/// <summary>Reads units as written: by name where there is one, as a compound otherwise.</summary>
internal static class UnitText
{
    // Enough for any project; bounded, so that a hostile file cannot fill the memory.
    private static readonly UnitIndex Compounds = new(most: 256);

    internal static int CompoundsKept => Compounds.Count;

    public static bool TryParse(ReadOnlySpan<char> text, [NotNullWhen(true)] out Unit? unit, out UnitFailure failure)
    {
        Span<char> buffer = stackalloc char[UnitSpelling.Longest];
        Span<byte> origins = stackalloc byte[UnitSpelling.Longest];
        if (!UnitSpelling.TryNormalise(text, buffer, origins, out var length))
        {
            unit = null;
            failure = new(UnitFault.UnknownName, 0, text.Length);
            return false;
        }

        var spelling = buffer[..length];
        unit = UnitTable.Find(spelling) ?? Compounds.Find(spelling);
        if (unit is not null)
        {
            failure = default;
            return true;
        }

        var expression = new UnitExpression(spelling);
        if (expression.TryEvaluate(out unit, out failure))
        {
            Compounds.TryAdd(spelling.ToString(), unit);
            return true;
        }

        var start = failure.Start < length ? origins[failure.Start] : origins[length - 1] + 1;
        var end = failure.Length == 0 ? start : origins[failure.Start + failure.Length - 1] + 1;
        failure = failure with { Start = start, Length = end - start };
        return false;
    }
}
