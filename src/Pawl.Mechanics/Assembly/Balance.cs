namespace Pawl.Mechanics.Assembly;

/// <summary>Balance of equal planets about the carrier axis.</summary>
public static class Balance
{
    // Sums of unit vectors that ought to vanish leave some 1e-16 a vector.
    private const double Rounding = 1e-14;

    /// <summary>Unbalance factor: the centrifugal forces of equal planets add up to this many times that of one.</summary>
    /// <remarks>
    /// <code>u = |Σ e^(iθ_k)|, F = u·m·a·ω_c²</code>
    /// Symbols: θ_k position of planet k, rad; u unbalance factor, 1; m planet mass, t; a distance from the carrier axis, mm;
    /// ω_c speed of the carrier, rad/s; F resulting force, N.<br/>
    /// Source: statics, sum of equal radial forces.<br/>
    /// Valid for: planets of one mass on one circle.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Unbalance(ReadOnlySpan<double> positions)
    {
        Guard.Count(positions.Length, 1, "the number of planets");
        var (x, y) = (0.0, 0.0);
        foreach (var position in positions)
        {
            x += Math.Cos(Guard.Number(position, "the position of a planet", "rad"));
            y += Math.Sin(position);
        }

        var sum = Math.Sqrt(x * x + y * y);
        return sum < Rounding * positions.Length ? 0 : sum;
    }

    /// <summary>Resulting centrifugal force F, N, of equal planets with a given unbalance factor.</summary>
    /// <inheritdoc cref="Unbalance" path="/remarks"/>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double UnbalanceForce(double unbalance, double planetMass, double centreDistance, double carrierSpeed) =>
        Guard.NotNegative(unbalance, "the unbalance factor") * Guard.NotNegative(planetMass, "the mass of a planet", "t")
        * Guard.Positive(centreDistance, "the centre distance", "mm") * Guard.Finite(carrierSpeed * carrierSpeed, "the speed");

    /// <summary>Resulting centrifugal force F, N, of equal pairs of planets.</summary>
    /// <remarks>
    /// <code>F = u·|m_1·a_1 + m_2·a_2·e^(iδ)|·ω_c²</code>
    /// Symbols: u unbalance factor of the pairs, 1; m masses, t; a distances from the carrier axis, mm; δ angle at the axis between
    /// the two planets of a pair, rad; ω_c speed of the carrier, rad/s; F in N.<br/>
    /// Source: statics, sum of radial forces.<br/>
    /// Valid for: pairs that are all alike.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double PairUnbalanceForce(
        double unbalance,
        double firstMass,
        double firstDistance,
        double secondMass,
        double secondDistance,
        double pairAngle,
        double carrierSpeed)
    {
        var (first, second) = (
            Guard.NotNegative(firstMass, "the mass of a planet", "t") * Guard.Positive(firstDistance, "the centre distance", "mm"),
            Guard.NotNegative(secondMass, "the mass of a planet", "t") * Guard.Positive(secondDistance, "the centre distance", "mm"));
        Guard.NotNegative(unbalance, "the unbalance factor");
        Guard.Number(pairAngle, "the angle of the pair", "rad");
        var moment = Math.Sqrt(first * first + second * second + 2 * first * second * Math.Cos(pairAngle));
        return Guard.Finite(unbalance * moment * carrierSpeed * carrierSpeed, "the centrifugal force");
    }
}
