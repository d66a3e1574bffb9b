using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Seals;

/// <summary>What a gland is for.</summary>
public enum GlandKind
{
    /// <summary>Radial, at rest.</summary>
    Static,

    /// <summary>Radial, going to and fro or turning a little.</summary>
    Dynamic,

    /// <summary>In a face.</summary>
    Face,
}

/// <summary>Height and width that the trade gives the gland of a cord.</summary>
/// <param name="Kind">What the gland is for.</param>
/// <param name="Cord">Cord, mm.</param>
/// <param name="Height">Height of a radial gland or depth of a groove in a face, mm.</param>
/// <param name="Width">Width of the groove, mm.</param>
/// <remarks>Source: common practice of the trade; table <c>o-ring-glands</c>.</remarks>
public sealed record GlandPractice(GlandKind Kind, double Cord, Interval Height, Interval Width)
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "o-ring-glands";

    private static ImmutableArray<GlandPractice> _all;

    public static ImmutableArray<GlandPractice> All => _all.IsDefault ? _all = Read() : _all;

    /// <summary>The gland of a cord.</summary>
    /// <remarks>Valid for: cords within 0.02 mm of a row; between them nobody vouched for a gland.</remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static GlandPractice For(GlandKind kind, double cord) =>
        All.FirstOrDefault(row => row.Kind == kind && Math.Abs(row.Cord - cord) <= 0.02)
        ?? throw Guard.Because($"the trade's table has no gland for a cord of {cord:0.###} mm");

    internal static GlandKind KindOf(ReadOnlySpan<char> name) => Enum.Parse<GlandKind>(name, ignoreCase: true);

    private static ImmutableArray<GlandPractice> Read()
    {
        var read = ImmutableArray.CreateBuilder<GlandPractice>(15);
        var rows = StandardTable.Read(TableId).Rows();
        while (rows.NextRow())
        {
            read.Add(new GlandPractice(
                KindOf(rows.NextField()),
                rows.NextNumber() * ORing.Inch,
                new(rows.NextNumber() * ORing.Inch, rows.NextNumber() * ORing.Inch),
                new(rows.NextNumber() * ORing.Inch, rows.NextNumber() * ORing.Inch)));
        }

        return read.ToImmutable();
    }
}
