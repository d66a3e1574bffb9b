namespace Pawl.Mechanics.Lubrication;

/// <summary>How viscous an oil is.</summary>
public static class Viscosity
{
    /// <summary>Least kinematic viscosity of the Walther line, mm²/s.</summary>
    public const double MinKinematic = 2;

    private const double Kelvin = 273.15;

    // 1 mPa·s, the unit of the source, is 1e-9 MPa·s.
    private const double MillipascalSeconds = 1e9;

    /// <summary>Kinematic viscosity ν at a temperature, mm²/s, from two measured points.</summary>
    /// <remarks>
    /// <code>lg lg (ν + 0.7) = A − B · lg T</code>
    /// Symbols: ν kinematic viscosity, mm²/s; T = θ + 273.15 absolute temperature, K; A and B of the oil, from two points.<br/>
    /// Source: ASTM D341 (Walther's equation).<br/>
    /// Valid for: mineral oils and similar, ν of 2 mm²/s and above, free of wax and boiling.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Kinematic(
        double temperature, double temperature1, double viscosity1, double temperature2, double viscosity2)
    {
        if (temperature1 == temperature2 || (temperature1 - temperature2) * (viscosity1 - viscosity2) >= 0)
        {
            throw Guard.Because(
                $"an oil thins as it warms: {viscosity1:0.###} mm²/s at {temperature1:0.#} °C and {viscosity2:0.###} mm²/s at {temperature2:0.#} °C do not fit");
        }

        var (first, second) = (Ordinate(viscosity1), Ordinate(viscosity2));
        var start = LogAbsolute(temperature1);
        var share = (LogAbsolute(temperature) - start) / (LogAbsolute(temperature2) - start);
        return Covered(Math.Pow(10, Math.Pow(10, first + (second - first) * share)) - 0.7);
    }

    /// <summary>Dynamic viscosity η, MPa·s (1 MPa·s = 10⁹ mPa·s).</summary>
    /// <remarks>
    /// <code>η = ν · ρ</code>
    /// Symbols: ν kinematic viscosity, mm²/s; ρ density at the same temperature, t/mm³ (1 kg/m³ = 10⁻¹² t/mm³).<br/>
    /// Source: definition.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Dynamic(double kinematic, double density) =>
        Guard.Positive(kinematic, "the kinematic viscosity") * Guard.Positive(density, "the density");

    private static double Ordinate(double viscosity) => Math.Log10(Math.Log10(Covered(viscosity) + 0.7));

    private static double LogAbsolute(double temperature) =>
        temperature > -Kelvin && double.IsFinite(temperature)
            ? Math.Log10(temperature + Kelvin)
            : throw Guard.Because($"no viscosity: {temperature:0.#} °C is not above absolute zero");

    private static double Covered(double viscosity) =>
        viscosity >= MinKinematic && double.IsFinite(viscosity)
            ? viscosity
            : throw Guard.Because(
                $"no viscosity: the Walther line holds from 2 mm²/s up; here it is {viscosity:0.###} mm²/s");
}
