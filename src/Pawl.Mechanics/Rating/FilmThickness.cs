namespace Pawl.Mechanics.Rating;

/// <summary>The oil film between flanks.</summary>
public static class FilmThickness
{
    /// <summary>Least film thickness h_min of a line contact, mm.</summary>
    /// <remarks>
    /// <code>h_min/ρ_red = 2.65 · G^0.54 · U^0.7 · W^−0.13</code>
    /// <code>G = α·E′,  U = η·u/(E′·ρ_red),  W = w/(E′·ρ_red),  E′ = 2·E_r</code>
    /// Symbols: ρ_red reduced radius of curvature in the normal section, mm; α pressure–viscosity coefficient, 1/MPa; η dynamic
    /// viscosity at the temperature of the teeth, MPa·s; u mean of the rolling velocities, mm/s; w line load, N/mm; E_r reduced
    /// modulus, MPa.<br/>
    /// Source: Dowson and Higginson, exponents of 1968 (Dowson, Elastohydrodynamics).<br/>
    /// Valid for: smooth, flooded, hard flanks that stay cool; grease films are thinner when starved.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Min(
        double pressureViscosity,
        double dynamicViscosity,
        double rollingVelocity,
        double lineLoad,
        double reducedCurvature,
        double reducedModulus)
    {
        var modulus = 2 * Guard.Positive(reducedModulus, "the reduced modulus");
        var stiffness = modulus * Guard.Positive(reducedCurvature, "the reduced curvature");
        var material = Guard.Positive(pressureViscosity, "the pressure–viscosity coefficient") * modulus;
        var speed = Guard.Positive(dynamicViscosity, "the dynamic viscosity")
            * Guard.Positive(rollingVelocity, "the rolling velocity") / stiffness;
        var load = Guard.Positive(lineLoad, "the line load") / stiffness;
        return Guard.Finite(
            reducedCurvature * 2.65 * Math.Pow(material, 0.54) * Math.Pow(speed, 0.7) * Math.Pow(load, -0.13),
            "the film thickness");
    }

    /// <summary>Film thickness ratio λ.</summary>
    /// <remarks>
    /// <code>λ = h_min / √( Ra₁² + Ra₂² )</code>
    /// Symbols: h_min least film thickness, Ra arithmetical mean roughness of the flanks, mm.<br/>
    /// Source: definition, with Ra; books that use Rq get about a fifth less.<br/>
    /// Valid for: a comparison; as common practice, no source, above 1 is good and below 0.4 the flanks touch.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Ratio(double least, double roughness1, double roughness2)
    {
        var first = Guard.Positive(roughness1, "the flank roughness");
        var second = Guard.Positive(roughness2, "the flank roughness");
        return Guard.Positive(least, "the film thickness") / Math.Sqrt(first * first + second * second);
    }
}
