using System.Globalization;
using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Bearings;

/// <summary>Bore, outside diameter and width of a radial bearing.</summary>
/// <param name="Number">First digits of the number of a deep groove ball bearing of this series, such as 62.</param>
/// <param name="Series">Dimension series of ISO 15, such as 02.</param>
/// <param name="Bore">Bore d, mm.</param>
/// <param name="Outside">Outside diameter D, mm.</param>
/// <param name="Width">Width B, mm.</param>
/// <remarks>Source: ISO 15; table <c>iso15-dimensions</c>.</remarks>
public sealed record BoundaryDimensions(string Number, string Series, double Bore, double Outside, double Width)
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "iso15-dimensions";

    private static ImmutableArray<BoundaryDimensions> _all;

    public static ImmutableArray<BoundaryDimensions> All => _all.IsDefault ? _all = Read() : _all;

    /// <summary>Dimensions by the series of ISO 15 and the bore, mm.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static BoundaryDimensions Of(string series, double bore) =>
        All.FirstOrDefault(row => row.Series == series && row.Bore == bore)
        ?? throw Guard.Because($"the table has no bearing of dimension series {series} with a bore of {bore:0.###} mm");

    /// <summary>Dimensions by a designation such as 6204, 61804, 608 or 6204-2RS.</summary>
    /// <remarks>
    /// <code>last two digits: 00 10 mm, 01 12 mm, 02 15 mm, 03 17 mm, from 04 five times the number; one last digit: the bore itself</code>
    /// Source: ISO 15 for the dimensions; the numbers of deep groove ball bearings are common to the trade.<br/>
    /// Valid for: deep groove ball bearings of the series 618, 619, 60, 62 and 63 that the table has. What follows the digits
    /// says nothing of the size and is not read.
    /// </remarks>
    public static BoundaryDimensions OfDesignation(string designation)
    {
        var digits = designation.AsSpan().TrimStart();
        var length = 0;
        while (length < digits.Length && char.IsAsciiDigit(digits[length]))
            length++;
        digits = digits[..length];

        var series = digits.StartsWith("618") || digits.StartsWith("619") ? 3 : 2;
        var code = digits.Length > series ? digits[series..] : default;
        if (code.Length is 1 or 2)
        {
            var number = digits[..series].ToString();
            var bore = BoreOf(code);
            if (All.FirstOrDefault(row => row.Number == number && row.Bore == bore) is { } found)
                return found;
        }

        throw Guard.Because($"the table has no deep groove ball bearing `{designation}`");
    }

    /// <summary>What of stated dimensions contradicts these, in words; null if nothing does.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public string? Contradiction(double bore, double outside, double width)
    {
        var wrong = new List<string>();
        Compare("bore", bore, Bore);
        Compare("outside diameter", outside, Outside);
        Compare("width", width, Width);
        return wrong.Count == 0 ? null : string.Join(", ", wrong);

        // Metric bearings come in whole millimetres and halves.
        void Compare(string name, double stated, double table)
        {
            if (!(Math.Abs(Guard.Positive(stated, $"the {name}", "mm") - Guard.Positive(table, $"the {name}", "mm")) < 1e-6))
                wrong.Add(FormattableString.Invariant($"{name} {stated:0.###} mm for {table:0.###} mm"));
        }
    }

    private static double BoreOf(ReadOnlySpan<char> code) => (code.Length, int.Parse(code, CultureInfo.InvariantCulture)) switch
    {
        (1, var millimetres) => millimetres,
        (_, 0) => 10,
        (_, 1) => 12,
        (_, 2) => 15,
        (_, 3) => 17,
        (_, var number) => 5 * number,
    };

    private static ImmutableArray<BoundaryDimensions> Read()
    {
        var read = ImmutableArray.CreateBuilder<BoundaryDimensions>();
        var rows = StandardTable.Read(TableId).Rows();
        while (rows.NextRow())
            read.Add(new(rows.NextField().ToString(), rows.NextField().ToString(), rows.NextNumber(), rows.NextNumber(), rows.NextNumber()));
        return read.ToImmutable();
    }
}
