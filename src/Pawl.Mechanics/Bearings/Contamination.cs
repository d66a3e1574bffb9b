using System.Globalization;
using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Bearings;

/// <summary>How the lubricant comes to the bearing.</summary>
public enum LubricantSupply
{
    /// <summary>Oil bath or splash, or circulating oil without a filter in the line.</summary>
    Bath,

    /// <summary>Circulating oil through a filter in the line.</summary>
    Filtered,

    /// <summary>Grease.</summary>
    Grease,
}

/// <summary>What particles in the lubricant make of the life: e_C.</summary>
public static class Contamination
{
    /// <summary>The id of the table of constants.</summary>
    public const string TableId = "iso281-contamination";

    /// <summary>The id of the table of classes in words.</summary>
    public const string ClassTableId = "iso281-contamination-classes";

    private static ImmutableArray<Row> _rows;
    private static ImmutableArray<(string Name, Interval Small, Interval Large)> _classes;

    /// <summary>Contamination factor e_C of oil by its code of ISO 4406, 1.</summary>
    /// <param name="supply">Bath or filtered.</param>
    /// <param name="code">Such as <c>-/17/14</c>, <c>20/17/14</c> or <c>17/14</c>.</param>
    /// <param name="viscosityRatio">κ.</param>
    /// <param name="pitchDiameter">D_pw, mm.</param>
    /// <remarks>
    /// <code>e_C = a·(1 − b/∛D_pw) ≥ 0;  a = min(1, a₀·κ^0.68·D_pw^0.55)</code>
    /// Symbols: κ viscosity ratio, 1; D_pw pitch diameter, mm: the constants are for mm; a₀, b by cleanliness.<br/>
    /// Source: ISO 281:2007, annex A; table <c>iso281-contamination</c>.<br/>
    /// Valid for: codes of the table; one between takes the next dirtier, one dirtier than all has no value.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Factor(LubricantSupply supply, string code, double viscosityRatio, double pitchDiameter)
    {
        if (supply == LubricantSupply.Grease)
            throw Guard.Because($"grease has no code of ISO 4406; say how clean it is in words");

        var (six, fourteen) = Code(code);
        foreach (var row in Rows())
        {
            if (row.Supply == supply && six <= row.Six && fourteen <= row.Fourteen)
                return row.Factor(viscosityRatio, pitchDiameter);
        }

        throw Guard.Because($"the source has no contamination factor for oil as dirty as `{code}`");
    }

    /// <summary>Least and greatest contamination factor e_C of a class in words, 1; a cautious reader takes the least.</summary>
    /// <param name="class">Such as <c>typical contamination</c>.</param>
    /// <param name="pitchDiameter">D_pw, mm.</param>
    /// <remarks>
    /// Source: ISO 281:2007, values of the contamination factor; table <c>iso281-contamination-classes</c>.<br/>
    /// Valid for: a guide only. Oil that the gears' own wear has gone into is of typical contamination unless changed after
    /// running in (common practice, no source).
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static Interval OfClass(string @class, double pitchDiameter)
    {
        Guard.Positive(pitchDiameter, "the pitch diameter");
        var classes = _classes.IsDefault ? _classes = ReadClasses() : _classes;
        foreach (var row in classes)
        {
            if (row.Name == @class)
                return pitchDiameter < 100 ? row.Small : row.Large;
        }

        throw Guard.Because(
            $"there is no class of contamination `{@class}`; there are {string.Join(", ", classes.Select(row => row.Name))}");
    }

    private static (int Six, int Fourteen) Code(string code)
    {
        var parts = code.Split('/');
        return parts.Length is 2 or 3
            && int.TryParse(parts[^2], NumberStyles.None, CultureInfo.InvariantCulture, out var six)
            && int.TryParse(parts[^1], NumberStyles.None, CultureInfo.InvariantCulture, out var fourteen)
            && (parts.Length == 2
                || parts[0] is "-" or "–" or "—"
                || int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out _))
            ? (six, fourteen)
            : throw Guard.Because($"`{code}` is no cleanliness code of ISO 4406; write it like -/17/14");
    }

    private static ImmutableArray<Row> Rows() => _rows.IsDefault ? _rows = ReadRows() : _rows;

    private static ImmutableArray<Row> ReadRows()
    {
        var read = ImmutableArray.CreateBuilder<Row>();
        var rows = StandardTable.Read(TableId).Rows();
        while (rows.NextRow())
        {
            read.Add(new(
                Enum.Parse<LubricantSupply>(rows.NextField(), ignoreCase: true),
                rows.NextNumber(), rows.NextNumber(), rows.NextField().ToString(), rows.NextNumber(), rows.NextNumber()));
        }

        return read.ToImmutable();
    }

    private static ImmutableArray<(string Name, Interval Small, Interval Large)> ReadClasses()
    {
        var read = ImmutableArray.CreateBuilder<(string Name, Interval Small, Interval Large)>();
        var rows = StandardTable.Read(ClassTableId).Rows();
        while (rows.NextRow())
            read.Add((rows.NextField().ToString(), new(rows.NextNumber(), rows.NextNumber()), new(rows.NextNumber(), rows.NextNumber())));
        return read.ToImmutable();
    }

    private sealed record Row(LubricantSupply Supply, double Six, double Fourteen, string Class, double Scale, double Offset)
    {
        public double Factor(double viscosityRatio, double pitchDiameter)
        {
            var a = Scale * Math.Pow(Guard.Positive(viscosityRatio, "the viscosity ratio"), 0.68)
                * Math.Pow(Guard.Positive(pitchDiameter, "the pitch diameter"), 0.55);
            return Math.Max(0, Math.Min(1, a) * (1 - Offset / Math.Cbrt(pitchDiameter)));
        }
    }
}
