using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Pawl.Quantities;

/// <summary>Reads hardness as drawings write it: a number or a window, and a scale before or behind.</summary>
internal static class HardnessNotation
{
    public static bool TryRead(
        ReadOnlySpan<char> text, [NotNullWhen(true)] out Hardness? hardness, [NotNullWhen(false)] out NotationError? error)
    {
        hardness = null;
        var pieces = new HardnessPieces(text).Cut(out error);
        if (error is not null) return false;

        if (pieces.Count == 0) error = HardnessErrors.Nothing(text);
        else if (TryTakeScale(text, pieces, out var scale, out error)) hardness = new HardnessReader(text, pieces, scale).Read(out error);
        return error is null;
    }

    /// <summary>How a hardness is written: <c>60 HRC</c>, <c>58..62 HRC</c>, or with a nominal beside the middle <c>60 HRC (58..61)</c>.</summary>
    public static string Write(Hardness hardness)
    {
        var symbol = Hardness.SymbolOf(hardness.Scale);
        var (nominal, least, most) = (hardness.Nominal, hardness.Min, hardness.Max);
        return nominal == least && nominal == most ? string.Create(CultureInfo.InvariantCulture, $"{nominal} {symbol}")
            : nominal == (least + most) / 2 ? string.Create(CultureInfo.InvariantCulture, $"{least}..{most} {symbol}")
            : string.Create(CultureInfo.InvariantCulture, $"{nominal} {symbol} ({least}..{most})");
    }

    /// <summary>Takes the scale out of the pieces. It leads, or stands behind a number; the same may stand behind each.</summary>
    private static bool TryTakeScale(
        ReadOnlySpan<char> text, List<HardnessPiece> pieces, out HardnessScale scale, [NotNullWhen(false)] out NotationError? error)
    {
        (scale, error) = (default, null);
        HardnessPiece? first = null;
        HardnessPiece? before = null;
        List<HardnessPiece> others = [];
        foreach (var piece in pieces)
        {
            if (piece.Kind != HardnessPieceKind.Scale)
                others.Add(piece);
            else if (first is not null && piece.Scale != first.Scale)
                error ??= HardnessErrors.TwoScales(text, first, piece);
            else if (before is not (null or { Kind: HardnessPieceKind.Number or HardnessPieceKind.Close }))
                error ??= HardnessErrors.Missing(before.End);
            else
                first ??= piece;
            before = piece;
        }

        error ??= first is null ? HardnessErrors.NoScale(text) : null;
        if (error is not null) return false;
        scale = first!.Scale;
        pieces.Clear();
        pieces.AddRange(others);
        return true;
    }
}
