namespace Pawl.Mechanics.Stacks;

/// <summary>How much one contributor has to say about the gap.</summary>
/// <param name="Name">Name of the contributor.</param>
/// <param name="OfVariance">Its share of the variance, from 0 to 1.</param>
/// <param name="OfWorstCase">Its share of the worst case, from 0 to 1.</param>
public sealed record StackShare(string Name, double OfVariance, double OfWorstCase);

/// <summary>A chain of sizes that ends in a gap: end play, float, clearance.</summary>
/// <param name="Contributors">The sizes in the order of the loop.</param>
/// <remarks>The sign of each stands in its coefficient: +1 opens the gap, −1 closes it.</remarks>
public sealed record SizeChain(ImmutableArray<Contributor> Contributors)
{
    /// <summary>Middle of the gap at 20 °C, mm.</summary>
    /// <remarks>
    /// <code>g = Σ c·m</code>
    /// Symbols: c coefficients; m middles of the limits, mm.<br/>
    /// Source: the loop closes.
    /// </remarks>
    public double Middle => Sum(part => part.Coefficient * part.Middle);

    /// <summary>Least and greatest gap of any parts within their limits, at 20 °C, mm.</summary>
    /// <remarks>
    /// <code>g ± Σ |c|·h</code>
    /// Symbols: h halves of the tolerances, mm.<br/>
    /// Source: arithmetic tolerancing.
    /// </remarks>
    public Interval WorstCase => Interval.About(Middle, Sum(part => Math.Abs(part.Coefficient) * part.HalfTolerance));

    /// <summary>Standard deviation of the gap, mm.</summary>
    /// <remarks>
    /// <code>σ = √Σ (c·σ_i)²</code>
    /// Symbols: σ_i standard deviations of the contributors, mm.<br/>
    /// Source: variances of independent sizes add up.
    /// </remarks>
    public double StandardDeviation => Math.Sqrt(Sum(part => Square(part.Coefficient * part.StandardDeviation)));

    /// <summary>Least and greatest gap by the root of the sum of squares, mm.</summary>
    /// <param name="inflation">Factor on the half width; 1.5 for processes not proven (Bender).</param>
    /// <remarks>
    /// <code>g ± f·√Σ (c·h)²</code>
    /// Symbols: f inflation; h halves of the tolerances, mm.<br/>
    /// Source: statistical tolerancing, textbooks; f = 1.5 Bender, from memory.<br/>
    /// Valid for: four or more independent contributors in the middle of their limits, none much greater than the rest. The gap is
    /// as certain as the limits are: three sigma in, three sigma out.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public Interval RootSumSquare(double inflation = 1)
    {
        if (!(inflation >= 1) || double.IsInfinity(inflation))
            throw Guard.Because($"the inflation of a root sum of squares must be 1 or more; it is {inflation:0.###}");

        return Interval.About(Middle, inflation * Math.Sqrt(Sum(part => Square(part.Coefficient * part.HalfTolerance))));
    }

    /// <summary>Whose tolerance makes the gap wide, the greatest share of the variance first.</summary>
    /// <remarks>
    /// <code>(c·σ_i)²/Σ;  |c|·h/Σ</code>
    /// Source: sensitivities of a sum. Nothing has a share where no contributor has a tolerance.
    /// </remarks>
    public ImmutableArray<StackShare> Shares
    {
        get
        {
            var variance = Square(StandardDeviation);
            var worst = (WorstCase.Max - WorstCase.Min) / 2;
            return
            [
                .. Contributors
                    .Select(part => new StackShare(
                        part.Name,
                        variance > 0 ? Square(part.Coefficient * part.StandardDeviation) / variance : 0,
                        worst > 0 ? Math.Abs(part.Coefficient) * part.HalfTolerance / worst : 0))
                    .OrderByDescending(share => share.OfVariance),
            ];
        }
    }

    /// <summary>What one temperature of all adds to the gap, mm.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double WarmthAt(double temperature) => Sum(part => part.WarmthAt(temperature));

    /// <summary>Process capability of the gap against a window.</summary>
    /// <remarks>
    /// <code>C_pk = min(w_2 − g, g − w_1)/(3·σ)</code>
    /// Source: definition of C_pk.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double Capability(Interval window, double warmth = 0)
    {
        var middle = Guard.Finite(Middle + warmth, "the gap");
        return Math.Min(window.Max - middle, middle - window.Min)
            / (3 * Guard.Positive(StandardDeviation, "the standard deviation of the gap"));
    }

    private double Sum(Func<Contributor, double> part)
    {
        if (Contributors.IsDefaultOrEmpty)
            throw Guard.Because($"a chain needs at least one size");

        var sum = 0.0;
        foreach (var contributor in Contributors)
            sum += part(contributor);
        return Guard.Finite(sum, "the gap");
    }

    private static double Square(double value) => value * value;
}
