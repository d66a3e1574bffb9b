using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Fits;

/// <summary>Which part a bearing's ring sits on.</summary>
public enum SeatPart
{
    Shaft,
    Housing,
}

/// <summary>How heavy the load on a bearing is.</summary>
public enum SeatDuty
{
    /// <summary>Equivalent load up to a fifteenth of the dynamic rating.</summary>
    Light,

    /// <summary>From a fifteenth to an eighth.</summary>
    Normal,

    /// <summary>Above an eighth, or shocks.</summary>
    Heavy,
}

/// <summary>Tolerance classes in use for the seats of rolling bearings.</summary>
/// <param name="Loosest">Loosest class, such as <c>k5</c>.</param>
/// <param name="Tightest">Tightest class, such as <c>k6</c>.</param>
/// <remarks>Source: common practice, no source; table <c>bearing-seat-classes</c>.</remarks>
public sealed record SeatClasses(string Loosest, string Tightest)
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "bearing-seat-classes";

    private static ImmutableArray<Row> _rows;

    /// <summary>How heavy a load counts as.</summary>
    /// <remarks>
    /// <code>light: P/C ≤ 1/15;  normal: up to 1/8;  heavy: above</code>
    /// Symbols: P dynamic equivalent load, C basic dynamic load rating, N.<br/>
    /// Source: common practice, no source; textbooks part at 0.06 to 0.07 and 0.12 to 0.15.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static SeatDuty Duty(double equivalentLoad, double dynamicRating)
    {
        var share = DynamicLoad.NotNegative(equivalentLoad, "the load on the bearing")
            / Guard.Positive(dynamicRating, "the dynamic load rating");
        return share <= 1.0 / 15 ? SeatDuty.Light : share <= 1.0 / 8 ? SeatDuty.Normal : SeatDuty.Heavy;
    }

    /// <summary>Loosest and tightest class for a ring.</summary>
    /// <param name="part">What the ring sits on.</param>
    /// <param name="load">How the load lies to the ring.</param>
    /// <param name="kind">Kind of bearing; what has balls is a ball bearing here.</param>
    /// <param name="duty">How heavy the load is.</param>
    /// <param name="diameter">Diameter of the seat, mm.</param>
    /// <remarks>
    /// Source: common practice, no source; table <c>bearing-seat-classes</c>.<br/>
    /// Valid for: steel shafts up to 200 mm under a rotating load; roller bearings lightly loaded to 140 mm. Light metal and hollow
    /// shafts go tighter.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static SeatClasses For(SeatPart part, LoadOnRing load, BearingKind kind, SeatDuty duty, double diameter)
    {
        Guard.Positive(diameter, "the diameter of the seat");
        var balls = kind is BearingKind.DeepGrooveBall or BearingKind.AngularContactBall;
        if (part == SeatPart.Shaft && load == LoadOnRing.Indeterminate)
            load = LoadOnRing.Rotating;

        foreach (var row in _rows.IsDefault ? _rows = Read() : _rows)
        {
            if (row.Part == part && row.Load == load && (row.Balls ?? balls) == balls && (row.Duty ?? duty) == duty && diameter <= row.UpTo)
                return new(row.Loosest, row.Tightest);
        }

        throw Guard.Because(
            $"the source has no class of a {(part == SeatPart.Shaft ? "shaft" : "housing")} seat of {diameter:0.###} mm for this load");
    }

    private static ImmutableArray<Row> Read()
    {
        var read = ImmutableArray.CreateBuilder<Row>();
        var rows = StandardTable.Read(TableId).Rows();
        while (rows.NextRow())
        {
            var part = rows.NextField() is "shaft" ? SeatPart.Shaft : SeatPart.Housing;
            var load = Enum.Parse<LoadOnRing>(rows.NextField(), ignoreCase: true);
            var elements = rows.NextField();
            bool? balls = elements is "any" ? null : elements is "ball";
            var duty = rows.NextField();
            SeatDuty? heavy = duty is "any" ? null : Enum.Parse<SeatDuty>(duty, ignoreCase: true);
            var upTo = rows.NextNumber();
            read.Add(new(
                part, load, balls, heavy, double.IsNaN(upTo) ? double.PositiveInfinity : upTo, rows.NextField().ToString(), rows.NextField().ToString()));
        }

        return read.ToImmutable();
    }

    private sealed record Row(SeatPart Part, LoadOnRing Load, bool? Balls, SeatDuty? Duty, double UpTo, string Loosest, string Tightest);
}
