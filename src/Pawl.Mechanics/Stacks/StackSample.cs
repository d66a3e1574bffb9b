namespace Pawl.Mechanics.Stacks;

/// <summary>Gaps of many assemblies put together from random parts.</summary>
/// <remarks>
/// <code>
/// state ← state + 0x9E3779B97F4A7C15, from the seed on;  z = state
/// z = (z ⊕ z≫30)·0xBF58476D1CE4E5B9;  z = (z ⊕ z≫27)·0x94D049BB133111EB;  z ⊕ z≫31
/// u = (top 52 bits + ½)/2⁵²;  size = quantile of its distribution at u
/// </code>
/// Draws go assembly by assembly, in each by the order of the contributors, on one thread. Only additions, products, quotients and
/// roots are used, which IEEE 754 rounds alike everywhere: one seed gives the same bits on every machine.<br/>
/// Source: SplitMix64 (Steele, Lea, Flood 2014); inversion of the distributions.
/// </remarks>
public sealed class StackSample
{
    /// <summary>Draws that are enough for a share of 0.001 within a tenth of it.</summary>
    public const int UsualDraws = 100_000;

    private const int MostDraws = 10_000_000;

    private readonly double[] _sorted;

    private StackSample(double[] sorted, double mean, double deviation, int draws, ulong seed) =>
        (_sorted, Mean, StandardDeviation, Draws, Seed) = (sorted, mean, deviation, draws, seed);

    /// <summary>How many assemblies.</summary>
    public int Draws { get; }

    /// <summary>What the generator began with.</summary>
    public ulong Seed { get; }

    /// <summary>Mean gap, mm.</summary>
    public double Mean { get; }

    /// <summary>Standard deviation of the gaps, mm.</summary>
    public double StandardDeviation { get; }

    /// <summary>Puts assemblies together.</summary>
    /// <param name="stack">The chain.</param>
    /// <param name="seed">Start of the generator, to be told with the result.</param>
    /// <param name="draws">Number of assemblies.</param>
    /// <param name="warmth">What temperature adds to every gap, mm.</param>
    /// <inheritdoc cref="StackSample" path="/remarks"/>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static StackSample Of(SizeChain stack, ulong seed, int draws = UsualDraws, double warmth = 0)
    {
        if (draws is < 100 or > MostDraws)
            throw Guard.Because($"a sample needs from 100 to {MostDraws} assemblies; {draws} were asked for");

        _ = Guard.Finite(stack.Middle + warmth, "the gap");
        var parts = stack.Contributors;
        var gaps = new double[draws];
        var state = seed;
        for (var draw = 0; draw < draws; draw++)
        {
            var gap = warmth;
            foreach (var part in parts)
                gap += part.Coefficient * part.Quantile(Share(ref state));
            gaps[draw] = gap;
        }

        // Sums before sorting, in the order of the draws.
        var mean = 0.0;
        foreach (var gap in gaps)
            mean += gap;
        mean /= draws;
        var squares = 0.0;
        foreach (var gap in gaps)
            squares += (gap - mean) * (gap - mean);

        Array.Sort(gaps);
        return new(gaps, mean, Math.Sqrt(squares / (draws - 1)), draws, seed);
    }

    /// <summary>Gap that a share of the assemblies lies below, mm.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double Quantile(double share)
    {
        if (!(share >= 0 && share <= 1))
            throw Guard.Because($"a share must lie from 0 to 1; it is {share:0.######}");

        return _sorted[(int)Math.Min(share * Draws, Draws - 1)];
    }

    /// <summary>Share of the assemblies whose gap lies outside a window.</summary>
    public double ShareOutside(Interval window)
    {
        var outside = 0;
        foreach (var gap in _sorted)
        {
            if (!window.Contains(gap))
                outside++;
        }

        return (double)outside / Draws;
    }

    /// <summary>Standard error of a share found by drawing.</summary>
    /// <remarks>
    /// <code>√(q·(1 − q)/N)</code>
    /// Symbols: q share; N draws.<br/>
    /// Source: binomial distribution.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double Error(double share) =>
        Math.Sqrt(Guard.ZeroToOne(share, "the share") * (1 - share) / Draws);

    /// <summary>The next number of SplitMix64, and its next state.</summary>
    public static ulong Next(ref ulong state)
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15;
            var z = state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }

    private static double Share(ref ulong state) => ((Next(ref state) >> 12) + 0.5) / (1UL << 52);
}
