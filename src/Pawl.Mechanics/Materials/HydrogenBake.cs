using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Materials;

/// <summary>The bake that drives hydrogen out of plated, phosphated or pickled steel.</summary>
/// <remarks>
/// Source: ASTM B850 (ISO 9588 is of one mind with it); table <c>astm-b850-bake</c>. What holds for surface-hardened parts is from
/// memory.<br/>
/// Valid for: steel up to 1800 MPa. The bake lowers the danger; it does not take it away.
/// </remarks>
public static class HydrogenBake
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "astm-b850-bake";

    /// <summary>Tensile strength above which steel cracks by hydrogen, MPa.</summary>
    public const double DangerousStrength = 1000;

    /// <summary>Least temperature of the bake, °C.</summary>
    public const double MinTemperature = 190;

    /// <summary>Least temperature of the bake of a surface-hardened part, which must not lose its hardness, °C.</summary>
    public const double MinTemperatureOfCase = 130;

    /// <summary>Least duration of the bake of a surface-hardened part at its lower temperature, s.</summary>
    public const double MinDurationOfCase = 8 * 3600;

    private static (double UpTo, double Hours)[]? _rows;

    /// <summary>Least duration of the bake at 190 °C to 220 °C, s.</summary>
    /// <param name="strength">Tensile strength R_m, MPa.</param>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double MinDuration(double strength)
    {
        if (Guard.NotNegative(strength, "the tensile strength", "MPa") <= DangerousStrength)
            return 0;
        foreach (var (upTo, hours) in Rows())
        {
            if (strength <= upTo)
                return hours * 3600;
        }

        throw Guard.Because($"ASTM B850 gives no bake for {strength:0} MPa: it ends at {Rows()[^1].UpTo:0} MPa");
    }

    // Two threads may both read it at first; they read the same.
    private static (double UpTo, double Hours)[] Rows()
    {
        if (_rows is { } kept)
            return kept;

        var read = new List<(double UpTo, double Hours)>(8);
        var rows = StandardTable.Read(TableId).Rows();
        while (rows.NextRow())
        {
            _ = rows.NextNumber();
            read.Add((rows.NextNumber(), rows.NextNumber()));
        }

        return _rows = [.. read];
    }
}
