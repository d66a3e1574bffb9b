namespace Pawl.Mechanics.Lubrication;

/// <summary>How warm the oil becomes.</summary>
public static class HeatBalance
{
    /// <summary>Temperature of the sump of a housing that gives off its loss to still air, °C.</summary>
    /// <remarks>
    /// <code>θ_S = θ_a + P / (k · A)</code>
    /// Symbols: θ_a temperature around, °C; P loss, N·mm/s (1 W = 1000 N·mm/s); k heat transmittance, N/(mm·s·K) (1 W/(m²·K) =
    /// 10⁻³ N/(mm·s·K)); A area of the housing in the open, mm².<br/>
    /// Source: balance of heat, as in textbooks of machine design.<br/>
    /// Valid for: steady running, one temperature of the whole housing.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double SumpTemperature(double loss, double transmittance, double area, double ambient) =>
        Guard.Celsius(ambient, "the temperature around") + NotNegative(loss) / Conductance(transmittance, area);

    /// <summary>Temperature of the sump of a housing with a cooler, °C.</summary>
    /// <remarks>
    /// <code>θ_S = (P + k·A · θ_a + G_c · θ_c) / (k·A + G_c)</code>
    /// Symbols: as above; G_c conductance of the cooler, N·mm/(s·K) (1 W/K = 1000 N·mm/(s·K)); θ_c temperature of the coolant as it enters, °C.<br/>
    /// Source: balance of heat, as in textbooks of machine design: P = k·A·(θ_S − θ_a) + G_c·(θ_S − θ_c).<br/>
    /// Valid for: steady running, one temperature of the whole housing and of the oil that enters the cooler.
    /// </remarks>
    /// <param name="loss">Loss P.</param>
    /// <param name="transmittance">Heat transmittance k.</param>
    /// <param name="area">Area A.</param>
    /// <param name="ambient">Temperature around.</param>
    /// <param name="cooler">Conductance of the cooler G_c.</param>
    /// <param name="coolant">Temperature of the coolant θ_c.</param>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double SumpTemperature(double loss, double transmittance, double area, double ambient, double cooler, double coolant)
    {
        var housing = Conductance(transmittance, area);
        var both = housing + Guard.NotNegative(cooler, "the conductance of the cooler", "N·mm/(s·K)");
        return Guard.Finite(
            (NotNegative(loss) + housing * Guard.Celsius(ambient, "the temperature around") + cooler * Guard.Celsius(coolant, "the temperature of the coolant")) / both,
            "the sump temperature");
    }

    /// <summary>The same where the loss falls or rises with the temperature of the oil, °C.</summary>
    /// <remarks>
    /// <code>θ_S = θ_a + P(θ_S) / (k · A), solved by halving</code>
    /// Symbols: as above; P(θ) loss at the temperature θ, N·mm/s.<br/>
    /// Source: as above.<br/>
    /// Valid for: a loss that stays finite; with several balances, which a loss that rises with warmth can have, one of them.
    /// </remarks>
    /// <param name="loss">Loss by the temperature of the oil.</param>
    /// <param name="transmittance">Heat transmittance k.</param>
    /// <param name="area">Area A.</param>
    /// <param name="ambient">Temperature around.</param>
    /// <param name="highest">Temperature above which nobody looks for a balance.</param>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double SumpTemperature(
        Func<double, double> loss, double transmittance, double area, double ambient, double highest = 200)
    {
        ArgumentNullException.ThrowIfNull(loss);
        Guard.Celsius(ambient, "the temperature around");
        Guard.Celsius(highest, "the highest temperature");
        var conductance = Conductance(transmittance, area);
        double Surplus(double temperature) => NotNegative(loss(temperature)) - conductance * (temperature - ambient);

        var (cool, hot) = (ambient, highest);
        if (!(ambient < highest) || Surplus(highest) > 0)
            throw Guard.Because($"no sump temperature: at {highest:0.#} °C the housing still takes in more heat than it gives off");

        // Above the balance the housing gives off more than it takes in.
        for (var round = 0; round < 200 && hot - cool > 1e-10; round++)
        {
            var middle = (cool + hot) / 2;
            if (Surplus(middle) > 0)
                cool = middle;
            else
                hot = middle;
        }

        return (cool + hot) / 2;
    }

    private static double Conductance(double transmittance, double area) =>
        Guard.Positive(transmittance, "the heat transmittance") * Guard.Positive(area, "the area of the housing");

    private static double NotNegative(double loss) =>
        loss >= 0 && double.IsFinite(loss) ? loss : throw Guard.Because($"the loss must not be below zero; it is {loss:0.###} N·mm/s");
}
