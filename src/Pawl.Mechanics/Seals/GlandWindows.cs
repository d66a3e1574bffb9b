using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Seals;

/// <summary>Within what a gland should hold its ring, worst case.</summary>
/// <param name="Squeeze">Squeeze as a share of the cord, 1.</param>
/// <param name="MinSqueezeLength">Least squeeze in length, mm.</param>
/// <param name="Stretch">Stretch of the inside diameter, 1.</param>
/// <param name="Compression">Compression of the outside diameter, 1.</param>
/// <param name="MaxFill">Greatest fill in service, 1.</param>
/// <remarks>Source: common practice, no source; table <c>o-ring-windows</c>.</remarks>
public sealed record GlandWindows(
    Interval Squeeze, double MinSqueezeLength, Interval Stretch, Interval Compression, double MaxFill)
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "o-ring-windows";

    /// <summary>How loose a ring may lie at one end of its tolerances, 1: at the other it is held. Common practice, no source.</summary>
    public const double LooseShare = 0.02;

    private static ImmutableArray<(GlandKind Kind, bool Wide, GlandWindows Windows)> _all;

    /// <summary>The windows of the trade for a kind of gland.</summary>
    /// <param name="kind">What the gland is for.</param>
    /// <param name="wide">Whether to take what is borne rather than what is recommended.</param>
    public static GlandWindows For(GlandKind kind, bool wide = false) =>
        (_all.IsDefault ? _all = Read() : _all).First(row => row.Kind == kind && row.Wide == wide).Windows;

    private static ImmutableArray<(GlandKind Kind, bool Wide, GlandWindows Windows)> Read()
    {
        var read = ImmutableArray.CreateBuilder<(GlandKind Kind, bool Wide, GlandWindows Windows)>(6);
        var rows = StandardTable.Read(TableId).Rows();
        while (rows.NextRow())
        {
            var kind = GlandPractice.KindOf(rows.NextField());
            var wide = rows.NextField() is "wide";
            var squeeze = new Interval(rows.NextNumber(), rows.NextNumber());
            var length = rows.NextNumber();
            var stretch = new Interval(-LooseShare, rows.NextNumber());
            var compression = new Interval(-LooseShare, rows.NextNumber());
            read.Add((kind, wide, new GlandWindows(squeeze, length, stretch, compression, rows.NextNumber())));
        }

        return read.ToImmutable();
    }
}
