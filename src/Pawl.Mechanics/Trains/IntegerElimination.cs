using System.Numerics;

namespace Pawl.Mechanics.Trains;

/// <summary>What a row did to a linear system.</summary>
internal enum RowOutcome
{
    Independent,
    Redundant,
    Contradiction,
}

/// <summary>Gauss–Jordan elimination of integer rows, one row at a time, without any rounding.</summary>
/// <remarks>
/// A row is the coefficients, then the right side, then tags that only record how the row was combined. Rows stay integer:
/// instead of dividing, both rows are scaled, and the common divisor is taken out. After every row the system is fully reduced.
/// </remarks>
internal sealed class IntegerElimination(int columns, int[] pivotPreference)
{
    private readonly List<BigInteger[]> _rows = new(columns);
    private readonly List<int> _pivots = new(columns);

    /// <summary>Adds a row. A row that is not independent is left as what remained of it; its tags name the rows that form the loop.</summary>
    public RowOutcome Add(BigInteger[] row)
    {
        for (var k = 0; k < _rows.Count; k++) Eliminate(row, _rows[k], _pivots[k]);

        var pivot = -1;
        foreach (var column in pivotPreference)
        {
            if (row[column].IsZero) continue;
            pivot = column;
            break;
        }

        if (pivot < 0) return row[columns].IsZero ? RowOutcome.Redundant : RowOutcome.Contradiction;

        foreach (var earlier in _rows) Eliminate(earlier, row, pivot);
        _rows.Add(row);
        _pivots.Add(pivot);
        return RowOutcome.Independent;
    }

    /// <summary>Whether the rows so far fix the unknown, and at which fraction.</summary>
    public bool TryValue(int column, out BigInteger numerator, out BigInteger denominator)
    {
        (numerator, denominator) = (default, BigInteger.One);
        var position = _pivots.IndexOf(column);
        if (position < 0) return false;

        var row = _rows[position];
        for (var c = 0; c < columns; c++)
            if (c != column && !row[c].IsZero) return false;

        (numerator, denominator) = (row[columns], row[column]);
        return true;
    }

    public bool IsPivot(int column) => _pivots.Contains(column);

    private static void Eliminate(BigInteger[] row, BigInteger[] by, int pivot)
    {
        if (row[pivot].IsZero) return;

        var common = BigInteger.GreatestCommonDivisor(row[pivot], by[pivot]);
        var scale = by[pivot] / common;
        var times = row[pivot] / common;
        var content = BigInteger.Zero;
        for (var c = 0; c < row.Length; c++)
        {
            if (by[c].IsZero)
            {
                if (row[c].IsZero) continue;
                row[c] *= scale;
            }
            else
            {
                row[c] = row[c] * scale - by[c] * times;
            }

            if (!content.IsOne) content = BigInteger.GreatestCommonDivisor(content, row[c]);
        }

        if (content.IsOne || content.IsZero) return;
        for (var c = 0; c < row.Length; c++)
            if (!row[c].IsZero) row[c] /= content;
    }
}
