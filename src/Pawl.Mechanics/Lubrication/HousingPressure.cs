namespace Pawl.Mechanics.Lubrication;

/// <summary>What a closed housing does when it warms.</summary>
public static class HousingPressure
{
    /// <summary>Pressure of the open air at sea level, MPa, absolute.</summary>
    public const double Atmosphere = 0.101325;

    private const double Kelvin = 273.15;

    /// <summary>Pressure inside a closed housing after warming, MPa above the pressure at filling.</summary>
    /// <remarks>
    /// <code>p₂ − p₁, p₂ = p₁ · (T₂/T₁) · V_air / (V_air − V_oil · β · (T₂ − T₁))</code>
    /// Symbols: p₁ absolute pressure at filling, MPa; T₁, T₂ absolute temperature at filling and in service, K; V_air = V − V_oil,
    /// V room inside the housing, V_oil oil, mm³; β expansion of the oil by volume, 1/K.<br/>
    /// Source: law of ideal gases.<br/>
    /// Valid for: a rigid housing without a breather; vapour is left out, which is on the unsafe side with water in the oil.
    /// </remarks>
    /// <param name="cold">Temperature at filling, °C.</param>
    /// <param name="hot">Temperature in service, °C.</param>
    /// <param name="room">Room inside the housing V, the parts taken off, mm³.</param>
    /// <param name="oil">Oil V_oil, mm³.</param>
    /// <param name="expansion">Expansion of the oil β, 1/K; about 7·10⁻⁴ for mineral oils (common practice, no source).</param>
    /// <param name="atFilling">Absolute pressure at filling p₁, MPa.</param>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Rise(
        double cold, double hot, double room, double oil, double expansion, double atFilling = Atmosphere)
    {
        var (start, end) = (Absolute(cold), Absolute(hot));
        var air = Guard.Positive(room, "the room inside the housing") - oil;
        var left = air - oil * Guard.NotNegative(expansion, "the expansion of the oil") * (end - start);
        if (!(oil >= 0) || !(air > 0) || !(left > 0))
            throw Guard.Because($"no air is left in a housing of {room:0.#} mm³ with {oil:0.#} mm³ of oil at {hot:0.#} °C");

        return Guard.Positive(atFilling, "the pressure at filling") * (end / start * air / left - 1);
    }

    /// <summary>Pressure below the atmosphere in a housing that closes hot and cools, MPa; positive: suction.</summary>
    /// <remarks>
    /// <code>p₁ − p₂, p₂ = p₁ · (T₂/T₁) · (V_air − V_oil · β · (T₁ − T₂)) / V_air</code>
    /// Symbols: p₁ absolute pressure at closing, MPa; T₁, T₂ absolute temperature at closing and after cooling, K; V_air = V − V_oil with
    /// the cold oil, V room inside the housing, V_oil oil, mm³; β expansion of the oil by volume, 1/K.<br/>
    /// Source: law of ideal gases.<br/>
    /// Valid for: a rigid housing that lets nothing in; vapour that condenses is left out, which is on the unsafe side.
    /// </remarks>
    /// <param name="hot">Temperature at closing, °C.</param>
    /// <param name="cold">Temperature after cooling, °C.</param>
    /// <param name="room">Room inside the housing V, the parts taken off, mm³.</param>
    /// <param name="oil">Oil V_oil, cold, mm³.</param>
    /// <param name="expansion">Expansion of the oil β, 1/K; about 7·10⁻⁴ for mineral oils (common practice, no source).</param>
    /// <param name="atClosing">Absolute pressure at closing p₁, MPa.</param>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Fall(
        double hot, double cold, double room, double oil, double expansion, double atClosing = Atmosphere)
    {
        var (start, end) = (Absolute(hot), Absolute(cold));
        var air = Guard.Positive(room, "the room inside the housing") - oil;
        var left = air - oil * Guard.NotNegative(expansion, "the expansion of the oil") * (start - end);
        if (!(oil >= 0) || !(air > 0) || !(left > 0) || !(start >= end))
            throw Guard.Because($"no air is left to cool in a housing of {room:0.#} mm³ with {oil:0.#} mm³ of oil from {hot:0.#} °C to {cold:0.#} °C");

        return Guard.Positive(atClosing, "the pressure at closing") * (1 - end / start * left / air);
    }

    private static double Absolute(double temperature) =>
        Guard.Positive(temperature + Kelvin, "the absolute temperature");
}
