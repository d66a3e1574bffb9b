using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Seals;

/// <summary>A radial lip seal of a turning shaft, after ISO 6194-1 and DIN 3760.</summary>
/// <remarks>Limits are common practice, no source, unless they name one.</remarks>
public static class LipSeal
{
    /// <summary>The id of the table of pressures.</summary>
    public const string PressureTableId = "lip-seal-pressure";

    /// <summary>How much the lip is warmer than the oil near its limit of speed, K: from 20 K to this.</summary>
    public const double MaxLipRise = 40;

    private static ImmutableArray<(double UpTo, double Pressure)> _pressures;

    /// <summary>Speed of the surface of the shaft v, mm/s.</summary>
    /// <remarks>
    /// <code>v = |ω| · d / 2</code>
    /// Symbols: ω speed of the shaft against the seal, rad/s; d diameter of the shaft under the lip, mm.<br/>
    /// Source: kinematics.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double SurfaceSpeed(double diameter, double relativeSpeed) =>
        Guard.Positive(diameter, "the diameter of the shaft") / 2 * Math.Abs(Guard.Number(relativeSpeed, "the speed", "rad/s"));

    /// <summary>Least hardness of the shaft under the lip, HRC.</summary>
    /// <remarks>
    /// <code>45 HRC; 55 HRC above 4 m/s, in dirt or with poor lubrication</code>
    /// Source: public trade pages, of which one asks 55 HRC at 10 m/s only.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double MinHardness(double surfaceSpeedInMillimetresPerSecond, bool dirtyOrDry = false) =>
        Math.Abs(Guard.Number(surfaceSpeedInMillimetresPerSecond, "the surface speed", "mm/s")) > 4000 || dirtyOrDry ? 55 : 45;

    /// <summary>Greatest pressure on an ordinary lip, MPa above the open air.</summary>
    /// <remarks>
    /// <code>table by the surface speed</code>
    /// Source: DIN 3760, from memory; table <c>lip-seal-pressure</c>.<br/>
    /// Valid for: up to 5.6 m/s; faster lips run without pressure, or the supplier states what they stand.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double MaxPressure(double surfaceSpeedInMillimetresPerSecond)
    {
        var surfaceSpeed = Math.Abs(Guard.Number(surfaceSpeedInMillimetresPerSecond, "the surface speed", "mm/s"));
        var rows = _pressures.IsDefault ? _pressures = Read() : _pressures;
        foreach (var (upTo, pressure) in rows)
        {
            if (surfaceSpeed <= upTo)
                return pressure;
        }

        throw Guard.Because(
            $"no limit of pressure: the table of lip seals ends at {rows[^1].UpTo / 1000:0.#} m/s; the shaft has {surfaceSpeed / 1000:0.##} m/s: vent the housing or state what the supplier allows");
    }

    /// <summary>Greatest dynamic run-out of the shaft under the lip, mm, full indicator reading.</summary>
    /// <remarks>
    /// <code>0.1 mm up to 3000 1/min, 0.05 mm from 6000 1/min, in proportion between</code>
    /// Source: common practice, no source; public trade pages allow up to 0.13 mm at best.
    /// </remarks>
    /// <param name="relativeSpeed">Speed of the shaft against the seal, rad/s.</param>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double MaxRunOut(double relativeSpeed)
    {
        var perMinute = Math.Abs(Guard.Number(relativeSpeed, "the speed", "rad/s")) * 30 / Math.PI;
        return 0.1 - 0.05 * Math.Clamp((perMinute - 3000) / 3000, 0, 1);
    }

    private static ImmutableArray<(double UpTo, double Pressure)> Read()
    {
        var read = ImmutableArray.CreateBuilder<(double UpTo, double Pressure)>();
        var rows = StandardTable.Read(PressureTableId).Rows();
        while (rows.NextRow())
            read.Add((rows.NextNumber() * 1000, rows.NextNumber()));
        return read.ToImmutable();
    }
}
