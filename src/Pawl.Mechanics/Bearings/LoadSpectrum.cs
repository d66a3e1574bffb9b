namespace Pawl.Mechanics.Bearings;

/// <summary>A part of a bearing's life under one load.</summary>
/// <param name="Load">Equivalent load P, N.</param>
/// <param name="RelativeSpeed">Speed of one ring against the other, rad/s; its sign does not matter.</param>
/// <param name="Share">Share of the time, 1.</param>
public sealed record LoadBin(double Load, double RelativeSpeed, double Share);

/// <summary>Loads that change.</summary>
public static class LoadSpectrum
{
    /// <summary>Mean speed ω_m, rad/s.</summary>
    /// <remarks>
    /// <code>ω_m = Σ q_i·|ω_i|</code>
    /// Symbols: q share of the time, 1; ω relative speed, rad/s.<br/>
    /// Source: definition.<br/>
    /// Valid for: shares that make up 1.
    /// </remarks>
    public static double MeanSpeed(IReadOnlyList<LoadBin> bins) => Checked(bins).Sum(bin => bin.Share * Math.Abs(bin.RelativeSpeed));

    /// <summary>One constant load that uses up the life as the bins do, P_m, N.</summary>
    /// <remarks>
    /// <code>P_m = ( Σ P_i^p·q_i·|ω_i| / Σ q_i·|ω_i| )^(1/p)</code>
    /// Symbols: P equivalent load, N; q share of the time, 1; ω relative speed, rad/s; p exponent of the life.<br/>
    /// Source: ISO/TR 1281-2; textbooks. Revolutions tire a bearing, not hours.<br/>
    /// Valid for: the basic rating life; where a_ISO differs from bin to bin, combine lives with <see cref="Duration"/>.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double MeanLoad(IReadOnlyList<LoadBin> bins, double exponent)
    {
        Guard.Positive(exponent, "the exponent of the life");
        var speed = Guard.Positive(MeanSpeed(bins), "the mean speed");
        return Math.Pow(bins.Sum(bin => Math.Pow(bin.Load, exponent) * bin.Share * Math.Abs(bin.RelativeSpeed)) / speed, 1 / exponent);
    }

    /// <summary>Life in time of parts that each have a life of their own, in their unit.</summary>
    /// <param name="parts">
    /// Share of the time, and the life in time if that part went on for ever; infinite where nothing tires.
    /// </param>
    /// <remarks>
    /// <code>1/L = Σ q_i/L_i</code>
    /// Symbols: q share of the time, L life in time.<br/>
    /// Source: linear damage, Palmgren and Miner; ISO/TR 1281-2.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Duration(IReadOnlyList<(double Share, double Life)> parts)
    {
        Shares(parts.Sum(part => part.Share), parts.All(part => part.Share >= 0));
        if (parts.Any(part => !(part.Life > 0)))
            throw Guard.Because($"every part needs a life above zero");

        return Guard.Finite(1 / parts.Sum(part => part.Share / part.Life), "the life");
    }

    private static IReadOnlyList<LoadBin> Checked(IReadOnlyList<LoadBin> bins)
    {
        Shares(bins.Sum(bin => bin.Share), bins.All(bin => bin.Share >= 0));
        foreach (var bin in bins)
        {
            DynamicLoad.NotNegative(bin.Load, "a load of the spectrum");
            Guard.Finite(bin.RelativeSpeed, "a speed of the spectrum");
        }

        return bins;
    }

    private static void Shares(double sum, bool notNegative)
    {
        if (!notNegative || !(Math.Abs(sum - 1) < 1e-6))
            throw Guard.Because($"the shares of the time must be zero or above and make up 1; they make up {sum:0.######}");
    }
}
