namespace Pawl.Mechanics.Rating;

/// <summary>One level of a load spectrum as the tooth feels it.</summary>
/// <param name="Stress">Stress with all load factors, MPa.</param>
/// <param name="Cycles">Load cycles at this stress.</param>
public readonly record struct DamageBin(double Stress, double Cycles);

/// <summary>Damage of a load spectrum, added up by Miner's rule.</summary>
public static class Damage
{
    /// <summary>Damage sum D; above 1 the life is used up. +∞ when a stress is above the static strength.</summary>
    /// <remarks>
    /// <code>D = Σ n_i / N_i,  N_i from the life curve at the factor σ_i/σ_P</code>
    /// Symbols: n_i cycles, σ_i stress of a bin, MPa; N_i cycles endured at that stress; σ_P permissible stress at life factor 1,
    /// MPa, with its safety factor if there is one.<br/>
    /// Source: ISO 6336-6, damage sum after Palmgren and Miner.<br/>
    /// Valid for: order of loads without influence. Bins without cycles or stress do no damage.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Sum(ReadOnlySpan<DamageBin> bins, LifeCurve curve, double permissible)
    {
        Guard.Positive(permissible, "the permissible stress");
        var sum = 0.0;
        foreach (var bin in bins)
        {
            if (Counts(bin))
            {
                sum += bin.Cycles / Math.Exp(curve.LogCyclesAt(Math.Log(bin.Stress / permissible)));
            }
        }

        return sum;
    }

    /// <summary>Safety factor on stress: all stresses times this factor make the damage sum 1.</summary>
    /// <remarks>
    /// <code>D( S·σ_i ) = 1</code>
    /// Where D jumps past 1 (static strength, level end of a curve) it is the greatest S with D ≤ 1. With one bin of n cycles it
    /// is σ_P·Y(n)/σ.<br/>
    /// Symbols: as <see cref="Sum"/>.<br/>
    /// Source: ISO 6336-6, safety factor of a load spectrum.<br/>
    /// Valid for: at least one bin with stress and cycles. D never falls when S rises; each bin alone must stay within D = 1, and
    /// S is safe when each of k bins stays within 1/k, so the root lies between the two; Newton's method on ln D over ln S,
    /// halving where it leaves the bracket.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Safety(ReadOnlySpan<DamageBin> bins, LifeCurve curve, double permissible)
    {
        Guard.Positive(permissible, "the permissible stress");
        var count = 0;
        foreach (var bin in bins)
        {
            count += Counts(bin) ? 1 : 0;
        }

        if (count == 0)
        {
            throw Guard.Because($"no safety factor: the load spectrum has no bin with stress and cycles");
        }

        double low = double.PositiveInfinity, high = double.PositiveInfinity;
        foreach (var bin in bins)
        {
            if (Counts(bin))
            {
                var (ratio, cycles) = (Math.Log(permissible / bin.Stress), Math.Log(bin.Cycles));
                low = Math.Min(low, ratio + curve.LogFactorAt(cycles + Math.Log(count)));
                high = Math.Min(high, ratio + curve.LogFactorAt(cycles));
            }
        }

        return Math.Exp(Root(bins, curve, Math.Log(permissible), low, high));
    }

    // The greatest ln S in the bracket with ln D ≤ 0.
    private static double Root(ReadOnlySpan<DamageBin> bins, LifeCurve curve, double logPermissible, double low, double high)
    {
        var at = high;
        for (var round = 0; round < 100 && high - low > 1e-13; round++)
        {
            var damage = LogSum(bins, curve, at - logPermissible, out var slope);
            if (Math.Abs(damage) <= 1e-13 * slope)
            {
                return at;
            }

            (low, high) = damage > 0 ? (low, at) : (at, high);
            var next = at - damage / slope;
            at = next > low && next < high ? next : (low + high) / 2;
        }

        return high - low > 1e-13 ? at : low;
    }

    private static double LogSum(ReadOnlySpan<DamageBin> bins, LifeCurve curve, double logScale, out double slope)
    {
        double sum = 0, weighted = 0;
        foreach (var bin in bins)
        {
            if (Counts(bin))
            {
                var part = bin.Cycles / Math.Exp(curve.LogCyclesAt(Math.Log(bin.Stress) + logScale, out var steepness));
                sum += part;
                weighted += steepness * part;
            }
        }

        slope = weighted / sum;
        return Math.Log(sum);
    }

    private static bool Counts(DamageBin bin) => bin switch
    {
        { Stress: >= 0 and < double.PositiveInfinity, Cycles: >= 0 and < double.PositiveInfinity } =>
            bin is { Stress: > 0, Cycles: > 0 },
        _ => throw Guard.Because(
            $"a bin of a load spectrum has stress {bin.Stress:0.###} MPa and {bin.Cycles:0.###} cycles; neither may be below zero"),
    };
}
