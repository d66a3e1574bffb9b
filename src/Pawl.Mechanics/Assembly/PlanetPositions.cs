namespace Pawl.Mechanics.Assembly;

/// <summary>Where the planets of one carrier stand, in whole steps of a divided turn, so exactly.</summary>
public sealed record PlanetPositions
{
    /// <exception cref="OutsideValidityException">No planets, or no steps.</exception>
    public PlanetPositions(long stepsPerTurn, ImmutableArray<long> steps)
    {
        Guard.Count(stepsPerTurn, 1, "the number of steps in a turn");
        Guard.Count(steps.IsDefault ? 0 : steps.Length, 1, "the number of planets");
        StepsPerTurn = stepsPerTurn;
        var within = ImmutableArray.CreateBuilder<long>(steps.Length);
        foreach (var step in steps)
        {
            within.Add((step % stepsPerTurn + stepsPerTurn) % stepsPerTurn);
        }

        Steps = within.MoveToImmutable();
    }

    /// <summary>N planets equally spaced.</summary>
    public static PlanetPositions Equal(int planets)
    {
        Guard.Count(planets, 1, "the number of planets");
        var steps = ImmutableArray.CreateBuilder<long>(planets);
        for (var planet = 0; planet < planets; planet++)
        {
            steps.Add(planet);
        }

        return new PlanetPositions(planets, steps.MoveToImmutable());
    }

    public long StepsPerTurn { get; }

    /// <summary>Steps of each planet, 0 ≤ k &lt; <see cref="StepsPerTurn"/>.</summary>
    public ImmutableArray<long> Steps { get; }

    public int Count => Steps.Length;

    /// <summary>Position of a planet, rad, 0 ≤ θ &lt; 2π.</summary>
    public double Angle(int planet) => Math.Tau * Steps[planet] / StepsPerTurn;

    /// <summary>All positions, rad.</summary>
    public ImmutableArray<double> Angles
    {
        get
        {
            var angles = ImmutableArray.CreateBuilder<double>(Count);
            for (var planet = 0; planet < Count; planet++)
            {
                angles.Add(Angle(planet));
            }

            return angles.MoveToImmutable();
        }
    }

    /// <summary>Largest angle between a planet and its place in equal spacing from the first planet on, rad.</summary>
    public double LargestDeviationFromEqual
    {
        get
        {
            Int128 largest = 0;
            for (var planet = 0; planet < Count; planet++)
            {
                var deviation = (Int128)(Steps[planet] - Steps[0]) * Count - (Int128)planet * StepsPerTurn;
                var turn = (Int128)StepsPerTurn * Count;
                var within = (deviation % turn + turn) % turn;
                largest = Int128.Max(largest, Int128.Min(within, turn - within));
            }

            return Math.Tau * ((double)largest / ((double)StepsPerTurn * Count));
        }
    }

    /// <summary>Smallest angle between a planet and the next, rad; a whole turn for one planet, 0 for two in one place.</summary>
    public double SmallestGap
    {
        get
        {
            var sorted = Steps.Sort();
            var smallest = sorted[0] + StepsPerTurn - sorted[^1];
            for (var planet = 1; planet < Count; planet++)
            {
                smallest = Math.Min(smallest, sorted[planet] - sorted[planet - 1]);
            }

            return Math.Tau * smallest / StepsPerTurn;
        }
    }

    /// <summary>Whether every planet has another exactly opposite, so that the set balances wherever the pairs stand.</summary>
    public bool StandsInOppositePairs
    {
        get
        {
            if (StepsPerTurn % 2 != 0)
            {
                return false;
            }

            foreach (var step in Steps)
            {
                if (CountAt(step) != CountAt((step + StepsPerTurn / 2) % StepsPerTurn))
                {
                    return false;
                }
            }

            return true;
        }
    }

    /// <summary>Unbalance factor of the planets; see <see cref="Balance.Unbalance"/>.</summary>
    public double Unbalance => Balance.Unbalance(Angles.AsSpan());

    private int CountAt(long step)
    {
        var count = 0;
        foreach (var other in Steps)
        {
            count += other == step ? 1 : 0;
        }

        return count;
    }
}
