using System.Globalization;

namespace Pawl.Mechanics.Tables;

/// <summary>Walks the fields of a table: plain text and numbers, commas between, no quotes, <c>#</c> before the head.</summary>
internal ref struct TableReader
{
    private ReadOnlySpan<char> _rest;
    private ReadOnlySpan<char> _line;

    public TableReader(string text)
    {
        _rest = text;
        _line = default;

        // The first line that is no head names the columns.
        while (NextLine() && _line.StartsWith("#"))
        {
        }
    }

    /// <summary>Goes to the next row; false at the end.</summary>
    public bool NextRow()
    {
        while (NextLine())
        {
            if (!_line.IsEmpty && !_line.StartsWith("#"))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The next field of the row; empty past the last.</summary>
    public ReadOnlySpan<char> NextField()
    {
        var comma = _line.IndexOf(',');
        var field = comma < 0 ? _line : _line[..comma];
        _line = comma < 0 ? default : _line[(comma + 1)..];
        return field;
    }

    /// <summary>The next field as a number; NaN when it is empty.</summary>
    public double NextNumber()
    {
        var field = NextField();
        return field.IsEmpty ? double.NaN : double.Parse(field, NumberStyles.Float, CultureInfo.InvariantCulture);
    }

    private bool NextLine()
    {
        if (_rest.IsEmpty)
        {
            _line = default;
            return false;
        }

        var end = _rest.IndexOf('\n');
        _line = (end < 0 ? _rest : _rest[..end]).TrimEnd('\r');
        _rest = end < 0 ? default : _rest[(end + 1)..];
        return true;
    }
}
