using System.Diagnostics.CodeAnalysis;

namespace Pawl.Quantities;

/// <summary>How a dimension's limits were written.</summary>
public abstract record Tolerance
{
    private Tolerance()
    {
    }

    /// <summary>No tolerance was written: the general tolerance applies.</summary>
    public sealed record General : Tolerance
    {
        public static readonly General Instance = new();
    }

    /// <summary>Deviations from the nominal, in coherent units: <c>±0.10</c>, <c>+0.021/0</c>, <c>(2.85..2.95)</c>.</summary>
    public sealed record Deviations(double Lower, double Upper) : Tolerance;

    /// <summary>A tolerance class of ISO 286 for one part: <c>H7</c> (hole), <c>js6</c> (shaft).</summary>
    /// <param name="Letters">Fundamental deviation, capital for a hole.</param>
    /// <param name="Grade">Standard tolerance grade, the number after IT; −1 stands for IT01.</param>
    public sealed record ToleranceClass(string Letters, int Grade) : Tolerance
    {
        public bool IsHole => char.IsUpper(Letters[0]);

        public override string ToString() => Grade == -1 ? $"{Letters}01" : $"{Letters}{Grade}";
    }

    /// <summary>A fit of ISO 286: hole class and shaft class, <c>H7/g6</c>.</summary>
    public sealed record Fit(ToleranceClass Hole, ToleranceClass Shaft) : Tolerance;
}

/// <summary>A dimension with its tolerance as on a drawing.</summary>
/// <param name="Nominal">The nominal size.</param>
/// <param name="Tolerance">The limits, as written.</param>
public sealed record Toleranced(Amount Nominal, Tolerance Tolerance)
{
    /// <summary>
    /// Reads a dimension as on a drawing: <c>60 mm H7</c>, <c>3.53 mm ±0.10</c>, <c>25 mm +0.021/0</c>,
    /// <c>2.90 mm (2.85..2.95)</c>, <c>25 mm H7/g6</c>, <c>60 mm</c>. Deviations without a unit take that of the nominal.
    /// </summary>
    /// <remarks>
    /// Of two deviations the upper comes first, of two limits the lower; both signs may be the same and the nominal may lie
    /// outside its limits. A nominal without a unit takes that of its tolerance: <c>3.53 ±0.10 mm</c>. A deviation in per cent is
    /// of the nominal, <c>60 kN ±5 %</c>, unless the nominal itself is a percentage. Deviations of a temperature are differences.
    /// </remarks>
    public static bool TryParse(
        ReadOnlySpan<char> text, [NotNullWhen(true)] out Toleranced? dimension, [NotNullWhen(false)] out NotationError? error) =>
        Notation.TryParseToleranced(text, out dimension, out error);
}

/// <summary>Why a text is no amount or no toleranced dimension.</summary>
/// <param name="Kind">Which diagnostic it becomes.</param>
/// <param name="Start">Index of the first offending character in the text.</param>
/// <param name="Length">Number of offending characters.</param>
/// <param name="Message">What is wrong, in a sentence, with the text found.</param>
/// <param name="Hint">What to write instead, where known.</param>
public sealed record NotationError(NotationErrorKind Kind, int Start, int Length, string Message, string? Hint = null);

/// <summary>The ways in which a text fails to be an amount.</summary>
public enum NotationErrorKind
{
    NotANumber,
    NotFinite,
    UnknownUnit,
    MalformedTolerance,
    ToleranceNotAllowed,
    MissingUnit,
    OutOfRange,
}
