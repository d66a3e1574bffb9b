using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Fits;

/// <summary>The rows of the standard tolerances, µm.</summary>
internal sealed class StandardToleranceTable
{
    public const string Id = "iso286-standard-tolerances";

    // IT01 and IT0 stand before IT1.
    private const int GradesBeforeIt1 = 2;
    private const int Grades = 20;

    private static StandardToleranceTable? _current;

    private readonly double[] _upTo;
    private readonly double[] _values;

    private StandardToleranceTable()
    {
        var upTo = new List<double>(16);
        var values = new List<double>(16 * Grades);
        var rows = StandardTable.Read(Id).Rows();
        while (rows.NextRow())
        {
            rows.NextField();
            upTo.Add(rows.NextNumber());
            for (var grade = 0; grade < Grades; grade++)
            {
                values.Add(rows.NextNumber());
            }
        }

        _upTo = [.. upTo];
        _values = [.. values];
    }

    // Two threads may both read it at first; they read the same.
    public static StandardToleranceTable Current => _current ??= new StandardToleranceTable();

    /// <summary>IT of a grade from 1 to 18 for a size within the table.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double Find(int grade, double nominal)
    {
        var step = 0;
        while (nominal > _upTo[step])
        {
            step++;
        }

        return _values[step * Grades + GradesBeforeIt1 + grade - 1];
    }
}
