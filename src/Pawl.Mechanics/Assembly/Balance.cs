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
    public static double Unbalance(ReadOnlySpan<double> positions)
    {
        ArgumentOutOfRangeException.ThrowIfZero(positions.Length, nameof(positions));
        var (x, y) = (0.0, 0.0);
        foreach (var position in positions)
        {
            x += Math.Cos(position);
            y += Math.Sin(position);
        }

        var sum = Math.Sqrt(x * x + y * y);
        return sum < Rounding * positions.Length ? 0 : sum;
    }

    /// <summary>Resulting centrifugal force F, N, of equal planets with a given unbalance factor.</summary>
    /// <inheritdoc cref="Unbalance" path="/remarks"/>
    public static double UnbalanceForce(double unbalance, double planetMass, double centreDistance, double carrierSpeed) =>
        unbalance * planetMass * centreDistance * carrierSpeed * carrierSpeed;
}
