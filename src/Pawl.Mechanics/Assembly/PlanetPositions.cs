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

    /// <summary>Unbalance factor of the planets; see <see cref="Balance.Unbalance"/>.</summary>
    public double Unbalance => Balance.Unbalance(Angles.AsSpan());
}
