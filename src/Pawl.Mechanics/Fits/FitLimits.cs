namespace Pawl.Mechanics.Fits;

/// <summary>What a hole and a shaft make together.</summary>
public enum FitKind
{
    /// <summary>Play at every pair of parts.</summary>
    Clearance,

    /// <summary>Play at some pairs, overlap at others.</summary>
    Transition,

    /// <summary>Overlap at every pair of parts.</summary>
    Interference,
}

/// <summary>Play of a hole about a shaft, of diameters, mm: positive play, negative overlap.</summary>
/// <param name="Min">Least clearance C_min: smallest hole, largest shaft.</param>
/// <param name="Max">Greatest clearance C_max: largest hole, smallest shaft.</param>
public readonly record struct FitLimits(double Min, double Max)
{
    /// <summary>Clearance where both parts are in the middle of their tolerances, mm.</summary>
    public double Middle => Guard.Finite((Min + Max) / 2, "the clearance");

    /// <summary>What kind of fit it is.</summary>
    /// <remarks>
    /// <code>C_min ≥ 0 clearance;  C_max ≤ 0 interference;  else transition</code>
    /// Source: ISO 286-1:2010, definitions.
    /// </remarks>
    public FitKind Kind => Min >= 0 ? FitKind.Clearance : Max <= 0 ? FitKind.Interference : FitKind.Transition;

    /// <summary>The same fit, warm or cold.</summary>
    /// <param name="diameter">Nominal diameter d, mm.</param>
    /// <param name="holeExpansion">Expansion of the part with the hole, 1/K.</param>
    /// <param name="holeTemperature">Its temperature, °C.</param>
    /// <param name="shaftExpansion">Expansion of the shaft, 1/K.</param>
    /// <param name="shaftTemperature">Its temperature, °C.</param>
    /// <remarks>
    /// <code>C_θ = C + d·(α_h·(θ_h − 20) − α_s·(θ_s − 20))</code>
    /// Symbols: C clearance at 20 °C, d diameter, mm; α expansions, 1/K; θ temperatures, °C; h hole, s shaft.<br/>
    /// Source: thermal expansion; ISO 1 for the 20 °C.<br/>
    /// Valid for: parts that expand freely and alike all round.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public FitLimits At(double diameter, double holeExpansion, double holeTemperature, double shaftExpansion, double shaftTemperature)
    {
        if (!(Min <= Max))
            throw Guard.Because($"the least clearance of a fit must not be above the greatest; they are {Min:0.####} mm and {Max:0.####} mm");

        var change = Guard.Finite(
            Guard.Positive(diameter, "the diameter of the fit")
                * (holeExpansion * (Guard.Celsius(holeTemperature, "the temperature") - 20)
                    - shaftExpansion * (Guard.Celsius(shaftTemperature, "the temperature") - 20)),
            "the change of the fit");
        return new(Guard.Finite(Min + change, "the clearance"), Guard.Finite(Max + change, "the clearance"));
    }
}
