using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Bearings;

/// <summary>How long a grease filling of a rolling bearing serves.</summary>
/// <remarks>Source: rule of the lubrication literature, common practice; table <c>grease-renewal</c>.</remarks>
public static class GreaseRenewal
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "grease-renewal";

    // Grease ages at rest too: some five years.
    private const double Longest = 40_000;

    private static ImmutableArray<(string Kind, double Factor)> _rows;

    /// <summary>Interval after which the grease is renewed, h, at most 40 000 h.</summary>
    /// <param name="factor">Factor k by the kind of bearing: <see cref="FactorOf"/>.</param>
    /// <param name="bore">Bore d, mm.</param>
    /// <param name="speed">Speed n of one ring against the other, rad/s, of either sense.</param>
    /// <param name="temperature">Temperature T of the bearing, °C.</param>
    /// <param name="ratio">Equivalent load over the dynamic rating, P/C.</param>
    /// <remarks>
    /// <code>
    /// t = k·(14·10⁶/(n·√d) − 4·d)·f_T·f_P, never below 0
    /// f_T = 1 up to 70 °C, else 2^(−(T − 70)/15);  f_P = 1 for P/C ≤ 0.1, 0.5 up to 0.2, 0.25 above
    /// </code>
    /// Symbols: n in 1/min, d bore in mm, k by kind of bearing, t in h.<br/>
    /// Source: as the class; f_T and f_P common practice, no source.<br/>
    /// Valid for: lithium soap and mineral oil, horizontal shaft, clean surroundings; n above zero. At 0 the bearing is too fast for
    /// grease.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double IntervalInHours(double factor, double bore, double speed, double temperature, double ratio)
    {
        var turns = Guard.Positive(Math.Abs(speed), "the speed of the bearing", "rad/s") * 30 / Math.PI;
        var size = Guard.Positive(bore, "the bore", "mm");
        var warmth = Math.Pow(2, -Math.Max(0, Guard.Celsius(temperature, "the temperature of the bearing") - 70) / 15);
        var load = Guard.NotNegative(ratio, "the load over the rating") switch { <= 0.1 => 1, <= 0.2 => 0.5, _ => 0.25 };
        return Math.Clamp(Guard.Positive(factor, "the factor of the kind of bearing") * (14e6 / (turns * Math.Sqrt(size)) - 4 * size) * warmth * load, 0, Longest);
    }

    /// <summary>Factor k of a kind of bearing, 1.</summary>
    /// <param name="kind">Kind of bearing, as the catalogue words it.</param>
    /// <remarks>
    /// Source: as the class.<br/>
    /// Valid for: the kinds of the table.
    /// </remarks>
    /// <exception cref="OutsideValidityException">The table does not have the kind.</exception>
    public static double FactorOf(string kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        var known = kind.StartsWith("needle", StringComparison.Ordinal) ? "needle" : kind;
        foreach (var row in _rows.IsDefault ? _rows = Read() : _rows)
        {
            if (row.Kind == known)
                return row.Factor;
        }

        throw Guard.Because($"the rule of the grease renewal has no factor of {kind}");
    }

    private static ImmutableArray<(string, double)> Read()
    {
        var read = ImmutableArray.CreateBuilder<(string, double)>();
        var rows = StandardTable.Read(TableId).Rows();
        while (rows.NextRow())
        {
            var kind = rows.NextField().ToString();
            read.Add((kind, rows.NextNumber()));
        }

        return read.ToImmutable();
    }
}
