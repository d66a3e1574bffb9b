using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Rating;

/// <summary>How unevenly planets share a load.</summary>
public static class PlanetLoadSharing
{
    /// <summary>The table by number of planets.</summary>
    public const string TableId = "planet-load-sharing";

    /// <summary>Allowance on the equal shares of three planets about a floating member.</summary>
    public const double ThreeAboutAFloatingMember = 1.05;

    private const int Min = 3;

    private static ImmutableArray<double> _factors;

    /// <summary>Mesh load factor K_γ: the heaviest loaded planet's share over the mean.</summary>
    /// <remarks>
    /// <code>N = 1: 1;  N = 2, floating: 1;  N = 3, floating: 1.05;  else by the table planet-load-sharing, 3 to 7</code>
    /// Symbols: N planets of one carrier; floating: sun, ring or carrier is free to find its centre.<br/>
    /// Source: table: IEC 61400-4, from memory. Two or three planets about a floating member are statically determinate and
    /// share evenly; the 1.05 for friction and for the weight of the floating member is common practice, no source.<br/>
    /// Valid for: equal planets spaced evenly. Two planets about fixed members, and more than seven, are not covered: what each
    /// carries depends on tolerances and stiffness.
    /// </remarks>
    public static double Factor(int planets, bool floating)
    {
        var factors = Factors();
        return (planets, floating) switch
        {
            (1, _) or (2, true) => 1,
            (2, false) => throw Guard.Because(
                $"no load sharing of 2 planets: without a floating member it depends on tolerances; state the mesh load factor"),
            (3, true) => ThreeAboutAFloatingMember,
            ( >= Min, _) when planets - Min < factors.Length => factors[planets - Min],
            ( > Min, _) => throw Guard.Because(
                $"no load sharing of {planets} planets: the source ends at {Min + factors.Length - 1}; state the mesh load factor"),
            _ => throw Guard.Because($"no load sharing: a carrier must have planets; the number of planets is {planets}"),
        };
    }

    /// <summary>Load of each of the other planets over the mean, where one carries K_γ times the mean, 1.</summary>
    /// <param name="planets">N, two or more.</param>
    /// <param name="heaviest">K_γ, from 1 to N.</param>
    /// <remarks>
    /// <code>K_o = (N − K_γ)/(N − 1)</code>
    /// Source: equilibrium: the planets together carry N times the mean.<br/>
    /// Valid for: the rest shared evenly by the others.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double OfTheOthers(int planets, double heaviest)
    {
        Guard.Count(planets, 2, "the number of planets");
        return (planets - Guard.Between(heaviest, 1, planets, "the mesh load factor")) / (planets - 1);
    }

    // Two threads may both read it at first; they read the same.
    private static ImmutableArray<double> Factors()
    {
        if (_factors.IsDefault)
        {
            var factors = ImmutableArray.CreateBuilder<double>();
            var rows = StandardTable.Read(TableId).Rows();
            while (rows.NextRow())
            {
                if ((int)rows.NextNumber() != Min + factors.Count)
                {
                    throw new InvalidOperationException($"The rows of {TableId} do not follow each other.");
                }

                factors.Add(rows.NextNumber());
            }

            _factors = factors.ToImmutable();
        }

        return _factors;
    }
}
