namespace Pawl.Mechanics.Stacks;

/// <summary>How the sizes of many parts lie between their limits.</summary>
public enum SizeDistribution
{
    /// <summary>A bell about the middle; what lies beyond the limits is not cut off.</summary>
    Normal,

    /// <summary>All sizes between the limits alike.</summary>
    Rectangular,

    /// <summary>Most in the middle, falling straight to nothing at the limits.</summary>
    Triangular,
}

/// <summary>One size in a chain that makes a gap.</summary>
public sealed record Contributor
{
    /// <param name="name">What it is, for lists.</param>
    /// <param name="coefficient">Coefficient c: 1 opens the gap, −1 closes it; other values for angles and cones.</param>
    /// <param name="lower">Least size, mm.</param>
    /// <param name="upper">Greatest size, mm.</param>
    /// <param name="distribution">How the sizes lie between the limits.</param>
    /// <param name="capability">Process capability C_p of a normal distribution: 1 has the limits at three sigma.</param>
    /// <param name="expansion">Expansion α, 1/K; zero where temperature plays no part.</param>
    /// <param name="temperature">Temperature θ in service, °C.</param>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public Contributor(
        string name, double coefficient, double lower, double upper, SizeDistribution distribution = SizeDistribution.Normal,
        double capability = 1, double expansion = 0, double temperature = 20)
    {
        if (!double.IsFinite(lower) || !double.IsFinite(upper) || lower > upper)
            throw Guard.Because($"the least of {name} must not be above its greatest; they are {lower:0.####} mm and {upper:0.####} mm");

        (Name, Lower, Upper, Distribution) = (name, lower, upper, distribution);
        Coefficient = Guard.Finite(coefficient, "the coefficient of a chain");
        Capability = Guard.Positive(capability, "the process capability");
        Expansion = Guard.Finite(expansion, "the expansion");
        Temperature = Guard.Finite(temperature, "the temperature");
    }

    public string Name { get; }

    public double Coefficient { get; }

    public double Lower { get; }

    public double Upper { get; }

    public SizeDistribution Distribution { get; }

    public double Capability { get; }

    public double Expansion { get; }

    public double Temperature { get; }

    /// <summary>Middle of the limits at 20 °C, mm: the mean size, whatever the nominal is.</summary>
    public double Middle => (Lower + Upper) / 2;

    /// <summary>Half of the tolerance h, mm.</summary>
    public double HalfTolerance => (Upper - Lower) / 2;

    /// <summary>Standard deviation of the size σ, mm.</summary>
    /// <remarks>
    /// <code>normal: h/(3·C_p);  rectangular: h/√3;  triangular: h/√6</code>
    /// Symbols: h half of the tolerance, mm; C_p process capability.<br/>
    /// Source: variances of the distributions; C_p = (upper − lower)/(6·σ).<br/>
    /// Valid for: a process in the middle of its limits.
    /// </remarks>
    public double StandardDeviation => Distribution switch
    {
        SizeDistribution.Normal => HalfTolerance / (3 * Capability),
        SizeDistribution.Rectangular => HalfTolerance / Math.Sqrt(3),
        SizeDistribution.Triangular => HalfTolerance / Math.Sqrt(6),
        _ => throw Guard.Because($"a size is distributed normally, rectangularly or triangularly"),
    };

    /// <summary>What its temperature adds to the gap, mm.</summary>
    /// <remarks>
    /// <code>Δ = c·α·m·(θ − 20)</code>
    /// Symbols: c coefficient; α expansion, 1/K; m middle size, mm; θ temperature, °C.<br/>
    /// Source: thermal expansion; ISO 1 for the 20 °C.<br/>
    /// Valid for: a size that is a length of one material.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double WarmthAt(double temperature) =>
        Guard.Finite(Coefficient * Expansion * Middle * (Guard.Celsius(temperature, "the temperature") - 20), "the change by heat");

    /// <summary>The size of a share of all parts, mm.</summary>
    /// <remarks>
    /// <code>
    /// the inverse of the distribution: normal m + σ·Φ⁻¹(u);  rectangular m + h·(2u − 1);
    /// triangular m ∓ h·(1 − √(2·min(u, 1 − u)))
    /// </code>
    /// Symbols: u share below, from 0 to 1; m middle, h half of the tolerance, σ standard deviation, mm.<br/>
    /// Source: definitions of the distributions.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double Quantile(double share) => !(share > 0 && share < 1)
        ? throw Guard.Because($"a share must lie between 0 and 1; it is {share:0.######}")
        : Distribution switch
        {
            SizeDistribution.Normal => Middle + StandardDeviation * NormalDistribution.Quantile(share),
            SizeDistribution.Rectangular => Middle + HalfTolerance * (2 * share - 1),
            SizeDistribution.Triangular => share < 0.5
                ? Middle - HalfTolerance * (1 - Math.Sqrt(2 * share))
                : Middle + HalfTolerance * (1 - Math.Sqrt(2 * (1 - share))),
            _ => throw Guard.Because($"a size is distributed normally, rectangularly or triangularly"),
        };
}
