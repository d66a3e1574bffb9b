using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Fits;

/// <summary>The rows of the fundamental deviations, µm.</summary>
internal sealed class FundamentalDeviationTable
{
    public const string Id = "iso286-fundamental-deviations";

    // The helper rows DELTA are filed under a sign that is no letter of a class.
    private const char Delta = '+';

    private static FundamentalDeviationTable? _current;

    private readonly Row[] _rows;
    private readonly int[] _first = new int[128];
    private readonly int[] _count = new int[128];

    private FundamentalDeviationTable()
    {
        var found = new List<Row>(1200);
        var rows = StandardTable.Read(Id).Rows();
        while (rows.NextRow())
        {
            rows.NextField();
            var letters = rows.NextField();
            var letter = letters.Length == 1 ? letters[0] : Delta;
            var row = new Row(
                letter,
                (int)rows.NextNumber(),
                (int)rows.NextNumber(),
                rows.NextNumber(),
                rows.NextNumber(),
                rows.NextField() is "es" or "ES",
                rows.NextNumber(),
                rows.NextField() is "1");
            if (_count[letter]++ == 0)
            {
                _first[letter] = found.Count;
            }
            else if (found[^1].Letter != letter)
            {
                throw new InvalidOperationException($"The rows of {letter} in {Id} do not stand together.");
            }

            found.Add(row);
        }

        _rows = [.. found];
    }

    // Two threads may both read it at first; they read the same.
    public static FundamentalDeviationTable Current => _current ??= new FundamentalDeviationTable();

    public bool Knows(char letter) => letter != Delta && letter < _count.Length && _count[letter] > 0;

    public bool TryFind(char letter, int grade, double nominal, out Row row)
    {
        row = default;
        return Knows(letter) && TryFindRow(letter, grade, nominal, out row);
    }

    public bool TryFindDelta(int grade, double nominal, out double delta)
    {
        var found = TryFindRow(Delta, grade, nominal, out var row);
        delta = row.Value;
        return found;
    }

    private bool TryFindRow(char letter, int grade, double nominal, out Row row)
    {
        foreach (ref readonly var candidate in _rows.AsSpan(_first[letter], _count[letter]))
        {
            if (grade >= candidate.GradeMin && grade <= candidate.GradeMax
                && nominal > candidate.Over && nominal <= candidate.UpTo)
            {
                row = candidate;
                return true;
            }
        }

        row = default;
        return false;
    }

    /// <summary>One deviation over a range of grades and sizes.</summary>
    public readonly record struct Row(
        char Letter, int GradeMin, int GradeMax, double Over, double UpTo, bool IsUpper, double Value, bool AddDelta);
}
