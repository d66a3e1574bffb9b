namespace Pawl.Mechanics.Rating;

/// <summary>Elastic constants of an isotropic material.</summary>
/// <param name="Modulus">Modulus of elasticity E, MPa.</param>
/// <param name="Poisson">Poisson's ratio ν.</param>
public readonly record struct Elastic(double Modulus, double Poisson)
{
    /// <summary>Steel as ISO 6336-2 has it.</summary>
    public static Elastic Steel => new(206_000, 0.3);

    /// <summary>(1 − ν²)/E, 1/MPa.</summary>
    public double Compliance => Poisson is > -1 and < 0.5
        ? (1 - Poisson * Poisson) / Guard.Positive(Modulus, "the modulus of elasticity")
        : throw Guard.Because($"Poisson's ratio must lie between −1 and 0.5; it is {Poisson:0.####}");

    /// <summary>Reduced modulus of two materials that touch, MPa.</summary>
    /// <remarks>
    /// <code>1/E_r = (1 − ν₁²)/E₁ + (1 − ν₂²)/E₂</code>
    /// Symbols: E moduli, MPa; ν Poisson's ratios.<br/>
    /// Source: Hertz; Johnson, Contact Mechanics, E*.<br/>
    /// Valid for: isotropic, linear-elastic flanks. Film formulas use twice this value.
    /// </remarks>
    public static double Reduced(Elastic first, Elastic second) => 1 / (first.Compliance + second.Compliance);
}
