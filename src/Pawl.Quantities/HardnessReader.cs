using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Pawl.Quantities;

/// <summary>Reads numbers and marks in the forms of the trade.</summary>
internal ref struct HardnessReader(ReadOnlySpan<char> text, List<HardnessPiece> pieces, HardnessScale scale)
{
    private readonly ReadOnlySpan<char> _text = text;
    private int _at;
    private NotationError? _error;

    public Hardness? Read(out NotationError? error)
    {
        // (60 +4/0) HRC: brackets about value and deviations, a habit of drawings.
        var enclosed = Take(HardnessPieceKind.Open) is not null;
        var hardness = Number() is { } nominal ? Behind(nominal) : null;
        if (enclosed) Demand(HardnessPieceKind.Close);
        if (_at < pieces.Count) Fail();
        error = _error;
        return error is null ? hardness : null;
    }

    private Hardness? Behind(HardnessPiece nominal)
    {
        if (_at == pieces.Count || pieces[_at].Kind == HardnessPieceKind.Close) return Make(nominal.Value, nominal, nominal.Value, nominal, nominal.Value, nominal);
        if (Take(HardnessPieceKind.Range) is not null) return Number() is { } top ? Window(nominal, top, nominal: null) : null;
        if (Take(HardnessPieceKind.PlusMinus) is not null)
            return Number() is { } both ? Deviate(nominal, both, -both.Value, both, both.Value) : null;

        if (Take(HardnessPieceKind.Open) is not null)
        {
            if (Number() is not { } low || !IsRange() || Number() is not { } high) return null;
            Demand(HardnessPieceKind.Close);
            return Window(low, high, nominal);
        }

        return Pair(nominal);
    }

    /// <summary><c>60 +2/-2</c>, <c>60 +4</c> for +4/0, and <c>58-62</c>, which begins like a pair.</summary>
    private Hardness? Pair(HardnessPiece nominal)
    {
        if (!TrySigned(out var first, out var upper)) return null;
        var slash = Take(HardnessPieceKind.Slash) is not null;
        if (!slash && (_at == pieces.Count || pieces[_at].Kind == HardnessPieceKind.Close))
        {
            return upper < 0 ? Window(nominal, first, nominal: null)
                : upper > 0 ? Deviate(nominal, first, 0, first, upper)
                : Failed(first);
        }

        if (!TrySigned(out var second, out var lower)) return null;
        if (lower <= upper) return Deviate(nominal, second, lower, first, upper);
        _error ??= HardnessErrors.Backwards(_text, first, second, "The upper deviation comes first: 60 +2/-2 HRC.");
        return null;
    }

    /// <summary>A deviation: a sign and a number, or a bare zero.</summary>
    private bool TrySigned([NotNullWhen(true)] out HardnessPiece? number, out double deviation)
    {
        var plus = Take(HardnessPieceKind.Plus) is not null;
        var minus = !plus && Take(HardnessPieceKind.Minus) is not null;
        number = Number();
        deviation = minus ? -number?.Value ?? 0 : number?.Value ?? 0;
        if (number is not null && !plus && !minus && deviation != 0) Failed(number);
        return number is not null && _error is null;
    }

    private Hardness? Window(HardnessPiece low, HardnessPiece high, HardnessPiece? nominal)
    {
        if (low.Value > high.Value)
        {
            _error ??= HardnessErrors.Backwards(
                _text, low, high,
                nominal is null && high.Value < Hardness.RangeOf(scale).Min
                    ? string.Create(CultureInfo.InvariantCulture, $"Write both deviations: {low.Value} 0/-{high.Value}.")
                    : string.Create(CultureInfo.InvariantCulture, $"The lower end comes first: {high.Value}..{low.Value}."));
            return null;
        }

        return nominal is null
            ? Make((low.Value + high.Value) / 2, low, low.Value, low, high.Value, high)
            : Make(nominal.Value, nominal, low.Value, low, high.Value, high);
    }

    // Rounded, so that 60.1 +0.2 ends at 60.3 and not beside it.
    private Hardness? Deviate(HardnessPiece nominal, HardnessPiece lowerAt, double lower, HardnessPiece upperAt, double upper) => Make(
        nominal.Value, nominal, Math.Round(nominal.Value + lower, 9), lowerAt, Math.Round(nominal.Value + upper, 9), upperAt);

    private Hardness? Make(
        double nominal, HardnessPiece nominalAt, double least, HardnessPiece leastAt, double greatest, HardnessPiece greatestAt)
    {
        var (lowest, highest) = Hardness.RangeOf(scale);
        _error ??= !(nominal >= lowest && nominal <= highest) && nominalAt != leastAt ? HardnessErrors.OutOfRange(nominalAt, nominal, scale)
            : !(least >= lowest && least <= highest) ? HardnessErrors.OutOfRange(leastAt, least, scale)
            : !(greatest >= lowest && greatest <= highest) ? HardnessErrors.OutOfRange(greatestAt, greatest, scale)
            : null;
        return _error is null ? new(scale, nominal, least, greatest) : null;
    }

    private bool IsRange()
    {
        if (Take(HardnessPieceKind.Range) is not null || Take(HardnessPieceKind.Minus) is not null) return true;
        Fail();
        return false;
    }

    private HardnessPiece? Take(HardnessPieceKind kind) => _at < pieces.Count && pieces[_at].Kind == kind ? pieces[_at++] : null;

    private HardnessPiece? Number() => Demand(HardnessPieceKind.Number);

    private HardnessPiece? Demand(HardnessPieceKind kind)
    {
        if (Take(kind) is { } piece) return piece;
        Fail();
        return null;
    }

    private Hardness? Failed(HardnessPiece piece)
    {
        _error ??= HardnessErrors.Misplaced(_text, piece.Start, piece.Length);
        return null;
    }

    private void Fail() => _error ??= _at < pieces.Count
        ? HardnessErrors.Misplaced(_text, pieces[_at].Start, pieces[_at].Length)
        : HardnessErrors.Missing(_at > 0 ? pieces[_at - 1].End : _text.TrimEnd().Length);
}
