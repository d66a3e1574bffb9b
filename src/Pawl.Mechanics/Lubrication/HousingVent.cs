namespace Pawl.Mechanics.Lubrication;

/// <summary>Air that a housing breathes through its vent while it warms or cools.</summary>
public static class HousingVent
{
    /// <summary>Discharge coefficient of a sharp-edged orifice; textbooks of fluid mechanics give 0.60 to 0.62.</summary>
    public const double Discharge = 0.6;

    /// <summary>Specific gas constant of dry air, mm²/(s²·K): 287.05 J/(kg·K), ISO 2533.</summary>
    public const double GasConstant = 287.05e6;

    /// <summary>Pressure drop up to which air may be taken as incompressible, MPa: a tenth of the atmosphere.</summary>
    public const double GreatestDrop = HousingPressure.Atmosphere / 10;

    private const double Kelvin = 273.15;

    /// <summary>Density of the air, t/mm³.</summary>
    /// <remarks>
    /// <code>ρ = p / (R · T)</code>
    /// Symbols: p pressure, MPa absolute; R = 287.05·10⁶ mm²/(s²·K); T absolute temperature, K.<br/>
    /// Source: law of ideal gases; constant of ISO 2533.<br/>
    /// Valid for: dry air near the pressure of the atmosphere.
    /// </remarks>
    /// <param name="temperature">Temperature, °C.</param>
    /// <param name="pressure">Absolute pressure, MPa.</param>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double AirDensity(double temperature, double pressure = HousingPressure.Atmosphere) =>
        Guard.Finite(Guard.Positive(pressure, "the pressure", "MPa") / (GasConstant * Absolute(temperature)), "the density of the air");

    /// <summary>Flow of air out of a vented housing that warms, or into one that cools, mm³/s.</summary>
    /// <remarks>
    /// <code>q = ΔT/t · (V_air/T + β · V_oil), V_air = V − V_oil</code>
    /// Symbols: ΔT = T_hot − T_cold, K, over the time t, s; T absolute temperature at the cold end, where the flow is greatest, K;
    /// V room inside the housing, V_oil oil, mm³; β expansion of the oil by volume, 1/K.<br/>
    /// Source: derivative of the law of ideal gases at constant pressure.<br/>
    /// Valid for: temperature that changes evenly over the time, the same for air and oil.
    /// </remarks>
    /// <param name="cold">Coldest temperature, °C.</param>
    /// <param name="hot">Hottest temperature, °C.</param>
    /// <param name="time">Time between them, s.</param>
    /// <param name="room">Room inside the housing, mm³.</param>
    /// <param name="oil">Oil, mm³.</param>
    /// <param name="expansion">Expansion of the oil, 1/K.</param>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Flow(double cold, double hot, double time, double room, double oil, double expansion)
    {
        var (start, end) = (Absolute(cold), Absolute(hot));
        var air = Guard.Positive(room, "the room inside the housing", "mm³") - Guard.NotNegative(oil, "the oil", "mm³");
        if (!(end >= start) || !(air > 0))
            throw Guard.Because($"a housing of {room:0.#} mm³ with {oil:0.#} mm³ of oil does not breathe from {cold:0.#} °C to {hot:0.#} °C");
        return Guard.Finite(
            (end - start) / Guard.Positive(time, "the time", "s") * (air / start + Guard.NotNegative(expansion, "the expansion of the oil", "1/K") * oil),
            "the flow of air");
    }

    /// <summary>Pressure that a flow through an orifice takes, MPa.</summary>
    /// <remarks>
    /// <code>Δp = ρ/2 · (q / (C_d · π/4 · d²))²</code>
    /// Symbols: ρ density of the air, t/mm³; q flow, mm³/s; C_d = 0.6; d bore, mm.<br/>
    /// Source: orifice equation, as in textbooks of fluid mechanics.<br/>
    /// Valid for: flow well below the speed of sound; above <see cref="GreatestDrop"/> the closed housing is the bound. Friction of a long bore and
    /// of a filter is left out.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double PressureDrop(double flow, double bore, double density)
    {
        var speed = Guard.NotNegative(flow, "the flow", "mm³/s") / (Discharge * Math.PI / 4 * Guard.Positive(bore, "the bore of the vent", "mm") * bore);
        return Guard.Finite(Guard.Positive(density, "the density of the air", "t/mm³") / 2 * speed * speed, "the pressure drop");
    }

    /// <summary>Pressure that a vent leaves over or under that of the atmosphere, MPa.</summary>
    /// <remarks>
    /// <code>p = p_o + Δp, no more than p_c of the closed housing; p_c where Δp exceeds a tenth of the atmosphere</code>
    /// Symbols: p_o pressure at which the vent opens, Δp drop of the flow, p_c pressure of the closed housing, MPa.<br/>
    /// Source: a vented housing never holds more than a closed one.<br/>
    /// Valid for: a vent that opens and passes its flow as stated.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double PressureLeft(double opening, double drop, double closed)
    {
        var bound = Guard.NotNegative(closed, "the pressure of the closed housing", "MPa");
        var vented = Guard.NotNegative(opening, "the pressure at which the vent opens", "MPa") + Guard.NotNegative(drop, "the pressure drop of the vent", "MPa");
        return drop > GreatestDrop ? bound : Math.Min(vented, bound);
    }

    private static double Absolute(double temperature) => Guard.Positive(temperature + Kelvin, "the absolute temperature", "K");
}
