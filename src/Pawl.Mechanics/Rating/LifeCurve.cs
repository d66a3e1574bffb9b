namespace Pawl.Mechanics.Rating;

/// <summary>Strength over life: straight lines between corners when cycles and factor are both drawn to logarithms.</summary>
/// <remarks>
/// <code>ln Y = ln Y₁ + (ln Y₂ − ln Y₁) · ln(N/N₁) / ln(N₂/N₁)</code>
/// Symbols: N load cycles; Y factor of strength.<br/>
/// Source: ISO 6336-2 and ISO 6336-3, life factor, method B.<br/>
/// Valid for: any N above zero. Below the first corner the first factor holds: the static strength. Past the last corner the last
/// line goes on, which is more cautious than to call the life endless; if that line is level, so is what follows.
/// </remarks>
public sealed class LifeCurve
{
    private readonly double[] _cycles; // ln N of the corners
    private readonly double[] _factors; // ln Y

    /// <summary>A curve through corners of rising cycles and factors that never rise.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public LifeCurve(params ReadOnlySpan<(double Cycles, double Factor)> corners)
    {
        if (corners.Length < 2)
        {
            throw Guard.Because($"a life curve needs at least two corners; it has {corners.Length}");
        }

        (_cycles, _factors) = (new double[corners.Length], new double[corners.Length]);
        for (var i = 0; i < corners.Length; i++)
        {
            _cycles[i] = Math.Log(Guard.Positive(corners[i].Cycles, "a number of cycles"));
            _factors[i] = Math.Log(Guard.Positive(corners[i].Factor, "a life factor"));
            if (i > 0 && !(_cycles[i] > _cycles[i - 1] && _factors[i] <= _factors[i - 1]))
            {
                throw Guard.Because(
                    $"the corners of a life curve must have rising cycles and factors that do not rise; corner {i + 1} does not");
            }
        }
    }

    private LifeCurve(double[] cycles, double[] factors) => (_cycles, _factors) = (cycles, factors);

    /// <summary>Factor up to the first corner: static strength.</summary>
    public double StaticFactor => Math.Exp(_factors[0]);

    /// <summary>Factor of strength for a number of cycles.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double FactorAt(double cycles) => Math.Exp(LogFactorAt(Math.Log(Guard.Positive(cycles, "the number of cycles"))));

    /// <summary>The same curve with another static factor.</summary>
    /// <remarks>
    /// Static strength and endurance have different factors of surface, size, notch and mean stress; ISO 6336 joins the two
    /// strengths by the straight line. Pass the static life factor times the ratio of the other factors, static to endurance.
    /// Corners between static strength and factor 1 move with it, ln Y in proportion; no strength stays above the static one.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public LifeCurve WithStaticFactor(double factor)
    {
        var first = Math.Log(Guard.Positive(factor, "a life factor"));
        var factors = new double[_factors.Length];
        for (var i = 0; i < factors.Length; i++)
        {
            var moved = i == 0 ? first : _factors[i] > 0 ? _factors[i] * first / _factors[0] : _factors[i];
            factors[i] = Math.Min(moved, first);
        }

        return new(_cycles, factors);
    }

    /// <summary>ln Y at ln N.</summary>
    internal double LogFactorAt(double logCycles)
    {
        if (logCycles <= _cycles[0])
        {
            return _factors[0];
        }

        var i = 1;
        while (i < _cycles.Length - 1 && logCycles > _cycles[i])
        {
            i++;
        }

        return _factors[i] + (logCycles - _cycles[i]) * (_factors[i] - _factors[i - 1]) / (_cycles[i] - _cycles[i - 1]);
    }

    /// <summary>ln N at ln Y: −∞ above the static factor, +∞ on and below a level last line.</summary>
    internal double LogCyclesAt(double logFactor) => LogCyclesAt(logFactor, out _);

    /// <summary>As above, with the slope −d ln N / d ln Y there.</summary>
    internal double LogCyclesAt(double logFactor, out double slope)
    {
        slope = 0;
        // Half a unit of the fifteenth digit: a stress exactly at the strength is not above it.
        if (logFactor > _factors[0] + 1e-14)
        {
            return double.NegativeInfinity;
        }

        var last = _cycles.Length - 1;
        var i = 1;
        while (i < last && logFactor <= _factors[i])
        {
            i++;
        }

        var fall = _factors[i - 1] - _factors[i];
        if (fall == 0)
        {
            return double.PositiveInfinity;
        }

        slope = (_cycles[i] - _cycles[i - 1]) / fall;
        return _cycles[i] + (_factors[i] - logFactor) * slope;
    }
}
