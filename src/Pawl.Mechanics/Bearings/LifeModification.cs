namespace Pawl.Mechanics.Bearings;

/// <summary>What lubrication, dirt and a light load make of the life: a_ISO.</summary>
public static class LifeModification
{
    private const double Max = 50;

    /// <summary>Viscosity ν₁ that the lubricant should have when warm, mm²/s.</summary>
    /// <remarks>
    /// <code>n &lt; 1000: ν₁ = 45 000·n^−0.83·D_pw^−0.5;  else ν₁ = 4500·n^−0.5·D_pw^−0.5</code>
    /// Symbols: n speed of one ring against the other, 1/min: the formula is not homogeneous, so the speed in rad/s is turned
    /// into it here; D_pw pitch diameter, mm, for which (d + D)/2 may stand.<br/>
    /// Source: ISO 281:2007, reference kinematic viscosity.<br/>
    /// Valid for: mineral oils; the branches part by 2.3 % at 1000 1/min.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ReferenceViscosity(double relativeSpeed, double pitchDiameter)
    {
        var n = Math.Abs(Guard.NotZero(relativeSpeed, "the speed of one ring against the other")) * 30 / Math.PI;
        var root = Math.Sqrt(Guard.Positive(pitchDiameter, "the pitch diameter"));

        // A speed stated as 1000 1/min may come back from rad/s a hair below.
        return (n < 1000 * (1 - 1e-9) ? 45_000 * Math.Pow(n, -0.83) : 4500 / Math.Sqrt(n)) / root;
    }

    /// <summary>Viscosity ratio κ = ν/ν₁, 1: above 1 a film parts the surfaces.</summary>
    /// <remarks>
    /// <code>κ = ν/ν₁</code>
    /// Symbols: ν kinematic viscosity at the temperature of the bearing, ν₁ reference viscosity, mm²/s.<br/>
    /// Source: ISO 281:2007, viscosity ratio.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ViscosityRatio(double viscosity, double referenceViscosity) =>
        Guard.Positive(viscosity, "the viscosity") / Guard.Positive(referenceViscosity, "the reference viscosity");

    /// <summary>Life modification factor a_ISO, 1, from 0.1 to 50.</summary>
    /// <param name="type">Balls or rollers.</param>
    /// <param name="viscosityRatio">κ; above 4 it counts as 4.</param>
    /// <param name="fatigueRatio">e_C·C_u/P.</param>
    /// <remarks>
    /// <code>balls: a = 0.1·(1 − (2.5671 − A)^0.83 · x^(1/3))^−9.3;  rollers: a = 0.1·(1 − (1.5859 − A)·x^0.4)^−9.185</code>
    /// <code>A: κ &lt; 0.4: 2.2649, 1.3993 over κ^0.054381;  κ &lt; 1: 1.9987, 1.2348 over κ^0.19087;  else over κ^0.071739</code>
    /// Symbols: x = e_C·C_u/P; e_C contamination factor; C_u fatigue load limit, P equivalent load, N.<br/>
    /// Source: ISO 281:2007, life modification factor of radial bearings.<br/>
    /// Valid for: κ from 0.1.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Factor(BearingType type, double viscosityRatio, double fatigueRatio)
    {
        if (!(viscosityRatio >= 0.1) || !double.IsFinite(viscosityRatio))
            throw Guard.Because($"no modified life: the viscosity ratio κ is {viscosityRatio:0.###}; the source begins at 0.1");

        DynamicLoad.NotNegative(fatigueRatio, "e_C·C_u/P");
        var kappa = Math.Min(viscosityRatio, 4);
        var power = kappa switch { < 0.4 => 0.054381, < 1 => 0.19087, _ => 0.071739 };
        var ball = type.IsBall;
        var a = (kappa < 0.4 ? ball ? 2.2649 : 1.3993 : ball ? 1.9987 : 1.2348) / Math.Pow(kappa, power);

        // At κ = 0.1 the rounded constants of rollers would fall a hair below 0.1.
        var bracket = ball
            ? 1 - Math.Pow(2.5671 - a, 0.83) * Math.Cbrt(fatigueRatio)
            : 1 - Math.Max(0, 1.5859 - a) * Math.Pow(fatigueRatio, 0.4);
        return bracket <= 0 ? Max : Math.Min(Max, 0.1 * Math.Pow(bracket, ball ? -9.3 : -9.185));
    }

    /// <summary>Life modification factor with proven additives, 1.</summary>
    /// <remarks>
    /// <code>κ &lt; 1 and e_C ≥ 0.2: a = max(a(κ), min(3, a(κ = 1)))</code>
    /// Source: ISO 281:2007, additives; from memory.<br/>
    /// Valid for: additives whose effect is shown; else as <see cref="Factor"/>.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double FactorWithAdditives(BearingType type, double viscosityRatio, double contamination, double fatigueRatio)
    {
        var plain = Factor(type, viscosityRatio, fatigueRatio);
        Guard.Between(contamination, 0, 1, "the contamination factor");
        return viscosityRatio < 1 && contamination >= 0.2 ? Math.Max(plain, Math.Min(3, Factor(type, 1, fatigueRatio))) : plain;
    }

    /// <summary>Fatigue load limit C_u where the supplier states none, N: a rough estimate.</summary>
    /// <remarks>
    /// <code>balls: C_u = C₀/22, above D_pw = 100 mm times (100/D_pw)^0.5;  rollers: C₀/8.2, times (100/D_pw)^0.3</code>
    /// Symbols: C₀ basic static load rating, N; D_pw pitch diameter, mm.<br/>
    /// Source: ISO 281:2007, annex B, simplified estimation; from memory.<br/>
    /// Valid for: bearings of common steels; the fuller method of the annex may differ by a third.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double FatigueLoadLimit(BearingType type, double staticRating, double pitchDiameter) =>
        Guard.Positive(staticRating, "the basic static load rating") / (type.IsBall ? 22 : 8.2)
        * Math.Min(1, Math.Pow(100 / Guard.Positive(pitchDiameter, "the pitch diameter"), type.IsBall ? 0.5 : 0.3));
}
