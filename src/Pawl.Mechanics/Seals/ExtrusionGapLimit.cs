using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Seals;

/// <summary>How much room pressure may find beside an O-ring before it pushes the rubber through.</summary>
/// <remarks>Source: table <c>o-ring-extrusion-gaps</c>; common practice of the trade.</remarks>
public static class ExtrusionGapLimit
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "o-ring-extrusion-gaps";

    /// <summary>What silicone stands of the others' clearance, 1. Common practice, no source.</summary>
    public const double SiliconeShare = 0.5;

    // 1 psi is 1 lbf/in².
    private const double Psi = 4.4482216152605 / (ORing.Inch * ORing.Inch);

    private static (double UpTo, double Soft, double Hard)[]? _rows;

    /// <summary>Greatest diametral clearance, mm; parts that touch on one side have all of it on the other.</summary>
    /// <remarks>
    /// <code>the row of the pressure; between 70 and 90 Shore A in proportion</code>
    /// Source: as above.<br/>
    /// Valid for: up to 20.7 MPa (3000 psi), 70 to 90 Shore A or IRHD, no back-up ring; the row of 90 serves behind one, which is harder.
    /// </remarks>
    /// <param name="pressure">Pressure over the ring, MPa.</param>
    /// <param name="hardness">Hardness, Shore A.</param>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Clearance(double pressure, double hardness)
    {
        if (hardness is not (>= 70 and <= 90))
            throw Guard.Because($"no limit of the gap: the chart covers 70 to 90 Shore A; the rubber has {hardness:0.#}");
        var rows = _rows ??= Read();
        foreach (var (upTo, soft, hard) in rows)
        {
            if (pressure >= 0 && pressure <= upTo)
                return soft + (hard - soft) * (hardness - 70) / 20;
        }

        throw Guard.Because($"no limit of the gap: the chart covers 0 to {rows[^1].UpTo:0.#} MPa; the pressure is {pressure:0.###} MPa");
    }

    private static (double UpTo, double Soft, double Hard)[] Read()
    {
        var read = new List<(double UpTo, double Soft, double Hard)>(5);
        var rows = StandardTable.Read(TableId).Rows();
        while (rows.NextRow())
            read.Add((rows.NextNumber() * Psi, rows.NextNumber() * ORing.Inch, rows.NextNumber() * ORing.Inch));
        return [.. read];
    }
}
