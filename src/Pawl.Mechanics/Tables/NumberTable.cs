
namespace Pawl.Mechanics.Tables;

/// <summary>Rows of numbers, and straight lines between them.</summary>
internal static class NumberTable
{
    /// <summary>All rows of a table that has numbers only; NaN where a field is empty.</summary>
    public static ImmutableArray<ImmutableArray<double>> Read(string id, int columns)
    {
        var read = ImmutableArray.CreateBuilder<ImmutableArray<double>>();
        var rows = StandardTable.Read(id).Rows();
        while (rows.NextRow())
        {
            var row = ImmutableArray.CreateBuilder<double>(columns);
            for (var column = 0; column < columns; column++)
                row.Add(rows.NextNumber());
            read.Add(row.MoveToImmutable());
        }

        return read.ToImmutable();
    }

    /// <summary>The value of a column at a place between the first and the last row; the first column rises.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double At(ImmutableArray<ImmutableArray<double>> rows, double place, int column, int key = 0)
    {
        var upper = 1;
        while (upper < rows.Length - 1 && rows[upper][key] < place)
            upper++;

        var (below, above) = (rows[upper - 1], rows[upper]);
        return below[column] + (above[column] - below[column]) * (place - below[key]) / (above[key] - below[key]);
    }
}
