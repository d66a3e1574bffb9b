using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Shafts;

/// <summary>Slopes of a shaft that bearings and teeth stand, rad.</summary>
/// <remarks>Source: Budynas and Nisbett, Shigley's Mechanical Engineering Design, table 7-2; table <c>shaft-slope-limits</c>.</remarks>
public static class SlopeLimits
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "shaft-slope-limits";

    private static ImmutableArray<(string Bearing, double Min)> _rows;

    /// <summary>Slope that a bearing of a kind stands for sure: the lower end of its range.</summary>
    /// <remarks>
    /// Source: as the class.<br/>
    /// Valid for: deep groove ball, cylindrical and tapered roller bearings; the source has no other.
    /// </remarks>
    public static double OfBearing(BearingKind kind)
    {
        var name = kind switch
        {
            BearingKind.AngledRoller => "tapered-roller",
            BearingKind.CylindricalRoller => "cylindrical-roller",
            BearingKind.DeepGrooveBall => "deep-groove-ball",
            _ => throw Guard.Because($"the source has slopes of deep groove ball, cylindrical and tapered roller bearings only"),
        };
        foreach (var row in _rows.IsDefault ? _rows = Read() : _rows)
        {
            if (row.Bearing == name)
                return row.Min;
        }

        throw Guard.Because($"the table has no slope of {name}");
    }

    private static ImmutableArray<(string, double)> Read()
    {
        var read = ImmutableArray.CreateBuilder<(string, double)>();
        var rows = StandardTable.Read(TableId).Rows();
        while (rows.NextRow())
        {
            var bearing = rows.NextField().ToString();
            read.Add((bearing, rows.NextNumber()));
            rows.NextNumber();
        }

        return read.ToImmutable();
    }
}
