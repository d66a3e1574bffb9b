namespace Pawl.Mechanics.Bearings;

/// <summary>Bearings that must all live: a gearbox stops with the first that fails.</summary>
/// <remarks>
/// <code>R(t) = Π 0.9^((t/L_i)^e_i)</code>
/// Symbols: R share of gearboxes in which no bearing has failed by the time t; L_i life that 90 % of bearings like the i-th
/// reach, in the unit of t; e_i its Weibull exponent, 1.<br/>
/// Source: product of the reliabilities of a series system, Weibull's distribution of two parameters.<br/>
/// Valid for: lives that depend on nothing in common; without a least life before which nothing fails, which is cautious.
/// </remarks>
public static class SetLife
{
    /// <summary>Weibull exponent e of the lives of like bearings, 1: 10/9 balls, 9/8 rollers.</summary>
    /// <remarks>Source: ISO 281 and ISO/TR 1281-1: 10/9 for point contact, 9/8 for line contact.</remarks>
    public static double Exponent(BearingType type) => type.IsBall ? 10.0 / 9 : 9.0 / 8;

    /// <summary>Share R of gearboxes in which every bearing lives to a time, 1.</summary>
    /// <param name="time">t, in the unit of the lives.</param>
    /// <param name="lives">L_i and e_i of each.</param>
    /// <remarks>As the class.</remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Reliability(double time, IReadOnlyList<(double Life, double Exponent)> lives)
    {
        Check(lives);
        return Math.Pow(0.9, Used(Guard.NotNegative(time, "the time"), lives));
    }

    /// <summary>Time to which every bearing lives in a share R of gearboxes, in the unit of the lives.</summary>
    /// <param name="lives">L_i and e_i of each.</param>
    /// <param name="reliability">R, 1.</param>
    /// <remarks>
    /// <code>Σ (t/L_i)^e_i = ln R/ln 0.9;  of one exponent e:  t = (ln R/ln 0.9)^(1/e)·(Σ L_i^−e)^(−1/e)</code>
    /// Symbols: as the class. Of several exponents t is searched between bounds until it stands still.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Time(IReadOnlyList<(double Life, double Exponent)> lives, double reliability = 0.9)
    {
        Check(lives);
        if (!(reliability is > 0 and < 1))
            throw Guard.Because($"a reliability lies above 0 and below 1; it is {reliability:0.######}");

        var whole = Math.Log(reliability) / Math.Log(0.9);
        // The shortest life leads, so that no power overflows.
        if (lives.All(each => each.Exponent == lives[0].Exponent))
        {
            var least = lives.Min(static each => each.Life);
            var exponent = lives[0].Exponent;
            return least * Math.Pow(whole / lives.Sum(each => Math.Pow(each.Life / least, -exponent)), 1 / exponent);
        }

        // No part may use up more than the whole; where every part uses up its n-th, the sum is at most the whole.
        var high = lives.Min(each => each.Life * Math.Pow(whole, 1 / each.Exponent));
        var low = lives.Min(each => each.Life * Math.Pow(whole / lives.Count, 1 / each.Exponent));
        while (true)
        {
            var middle = (low + high) / 2;
            if (!(middle > low && middle < high))
                return low;
            (low, high) = Used(middle, lives) < whole ? (middle, high) : (low, middle);
        }
    }

    private static double Used(double time, IReadOnlyList<(double Life, double Exponent)> lives) => lives.Sum(each => Math.Pow(time / each.Life, each.Exponent));

    private static void Check(IReadOnlyList<(double Life, double Exponent)> lives)
    {
        if (lives.Count == 0)
            throw Guard.Because($"a group needs bearings");
        foreach (var (life, exponent) in lives)
        {
            Guard.Positive(life, "the life of a bearing");
            Guard.Positive(exponent, "the Weibull exponent");
        }
    }
}
