namespace Pawl.Mechanics.Stacks;

/// <summary>The normal distribution, by additions, products, quotients and roots alone, so that every machine gives the same bits.</summary>
public static class NormalDistribution
{
    private static readonly double Ln2 = 0.693147180559945309417232121458;

    /// <summary>Value that a share of the standard normal distribution lies below.</summary>
    /// <remarks>
    /// Source: Wichura, Algorithm AS 241 (PPND16), Applied Statistics 37 (1988), coefficients from memory; checked against a
    /// general-purpose library to 1e-14.<br/>
    /// Valid for: 0 &lt; share &lt; 1.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Quantile(double share)
    {
        if (!(share > 0 && share < 1))
            throw Guard.Because($"a share must lie between 0 and 1; it is {share:0.######}");

        var q = share - 0.5;
        if (Math.Abs(q) <= 0.425)
        {
            var r = 0.180625 - q * q;
            return q * Ratio(r, Centre, CentreBelow);
        }

        var tail = Math.Sqrt(-Logarithm(q < 0 ? share : 1 - share));
        var value = tail <= 5 ? Ratio(tail - 1.6, Middle, MiddleBelow) : Ratio(tail - 5, Far, FarBelow);
        return q < 0 ? -value : value;
    }

    /// <summary>Share of the standard normal distribution below a value.</summary>
    /// <remarks>
    /// <code>Φ(x) = ½·erfc(−x/√2)</code>
    /// Source: the series x·Σ x²ᵏ/(1·3·5…) within 6 and the continued fraction of Laplace beyond; Abramowitz and Stegun 26.2.11,
    /// 26.2.14.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Share(double value)
    {
        Guard.Number(value, "the distance from the middle in standard deviations");

        var x = Math.Abs(value);
        if (x > 38)
            return value < 0 ? 0 : 1;

        var density = Math.Exp(-x * x / 2) / Math.Sqrt(2 * Math.PI);
        double above;
        if (x < 3)
        {
            var (term, sum) = (x, x);
            for (var k = 3; term > 1e-17 * sum; k += 2)
            {
                term *= x * x / k;
                sum += term;
            }

            above = 0.5 - density * sum;
        }
        else
        {
            var fraction = 0.0;
            for (var k = 200; k > 0; k--)
                fraction = k / (x + fraction);
            above = density / (x + fraction);
        }

        return value < 0 ? above : 1 - above;
    }

    /// <summary>Natural logarithm: the power of two from the bits, the rest by the series of atanh.</summary>
    internal static double Logarithm(double value)
    {
        var bits = BitConverter.DoubleToInt64Bits(value);
        var power = (int)(bits >> 52 & 0x7FF) - 1023;
        var part = BitConverter.Int64BitsToDouble(bits & 0xFFFFFFFFFFFFF | 0x3FF0000000000000);
        if (part > 1.4142135623730951)
        {
            part /= 2;
            power++;
        }

        var s = (part - 1) / (part + 1);
        var square = s * s;
        var sum = 0.0;
        for (var k = 25; k >= 1; k -= 2)
            sum = sum * square + 1.0 / k;
        return power * Ln2 + 2 * s * sum;
    }

    private static double Ratio(double r, ReadOnlySpan<double> above, ReadOnlySpan<double> below) => Sum(r, above) / (Sum(r, below) * r + 1);

    private static double Sum(double r, ReadOnlySpan<double> coefficients)
    {
        var sum = 0.0;
        for (var index = coefficients.Length - 1; index >= 0; index--)
            sum = sum * r + coefficients[index];
        return sum;
    }

    private static readonly double[] Centre =
    [
        3.3871328727963666080, 133.14166789178437745, 1971.5909503065514427, 13731.693765509461125,
        45921.953931549871457, 67265.770927008700853, 33430.575583588128105, 2509.0809287301226727,
    ];

    private static readonly double[] CentreBelow =
    [
        42.313330701600911252, 687.18700749205790830, 5394.1960214247511077, 21213.794301586595867,
        39307.895800092710610, 28729.085735721942674, 5226.4952788528545610,
    ];

    private static readonly double[] Middle =
    [
        1.42343711074968357734, 4.63033784615654529590, 5.76949722146069140550, 3.64784832476320460504,
        1.27045825245236838258, 0.241780725177450611770, 0.0227238449892691845833, 7.74545014278341407640e-4,
    ];

    private static readonly double[] MiddleBelow =
    [
        2.05319162663775882187, 1.67638483018380384940, 0.689767334985100004550, 0.148103976427480074590,
        0.0151986665636164571966, 5.47593808499534494600e-4, 1.05075007164441684324e-9,
    ];

    private static readonly double[] Far =
    [
        6.65790464350110377720, 5.46378491116411436990, 1.78482653991729133580, 0.296560571828504891230,
        0.0265321895265761230930, 0.00124266094738807843860, 2.71155556874348757815e-5, 2.01033439929228813265e-7,
    ];

    private static readonly double[] FarBelow =
    [
        0.599832206555887937690, 0.136929880922735805310, 0.0148753612908506148525, 7.86869131145613259100e-4,
        1.84631831751005468180e-5, 1.42151175831644588870e-7, 2.04426310338993978564e-15,
    ];
}
