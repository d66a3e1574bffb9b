using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Bearings;

/// <summary>How far bore and outside diameter of a radial bearing may lie below their nominal size.</summary>
/// <remarks>Source: ISO 492, normal tolerance class; table <c>iso492-normal</c>.</remarks>
public static class RingTolerance
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "iso492-normal";

    private static ImmutableArray<(bool Bore, double Over, double UpTo, double Lower)> _rows;

    /// <summary>Bore, least and greatest, mm.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static Interval Bore(double nominal) => Of(true, nominal, "bore");

    /// <summary>Outside diameter, least and greatest, mm.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static Interval Outside(double nominal) => Of(false, nominal, "outside diameter");

    private static Interval Of(bool bore, double nominal, string name)
    {
        Guard.Positive(nominal, $"the {name}");
        foreach (var row in _rows.IsDefault ? _rows = Read() : _rows)
        {
            if (row.Bore == bore && nominal > row.Over && nominal <= row.UpTo)
                return new(nominal - row.Lower, nominal);
        }

        throw Guard.Because($"the source has no tolerance of a bearing with this {name}: {nominal:0.###} mm");
    }

    private static ImmutableArray<(bool Bore, double Over, double UpTo, double Lower)> Read()
    {
        var read = ImmutableArray.CreateBuilder<(bool Bore, double Over, double UpTo, double Lower)>();
        var rows = StandardTable.Read(TableId).Rows();
        while (rows.NextRow())
            read.Add((rows.NextField().ToString() == "bore", rows.NextNumber(), rows.NextNumber(), rows.NextNumber() / 1000));
        return read.ToImmutable();
    }
}
