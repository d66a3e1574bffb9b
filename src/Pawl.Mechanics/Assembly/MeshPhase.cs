namespace Pawl.Mechanics.Assembly;

/// <summary>How the meshes of one central gear with its planets follow each other in time.</summary>
public enum Phasing
{
    /// <summary>All planets at the same point of their tooth mesh: z mod N = 0 when equally spaced.</summary>
    InPhase,

    /// <summary>Neighbours half a tooth mesh apart: z mod N = N/2 when equally spaced.</summary>
    CounterPhased,

    /// <summary>Neighbours the same part of a tooth mesh apart.</summary>
    Sequential,

    /// <summary>No order, as with unequal spacing.</summary>
    Irregular,
}

/// <summary>Phase of the tooth meshes between one central gear and the planets round it.</summary>
public static class MeshPhase
{
    /// <summary>Phase of each planet's mesh with a central gear, as a fraction of a tooth mesh.</summary>
    /// <remarks>
    /// <code>γ_k = frac( z·θ_k/2π );  equally spaced: frac( z·k/N )</code>
    /// Symbols: z teeth of the central gear, positive also for a ring; θ_k position of planet k from the first, rad;
    /// γ_k phase, 1, 0 ≤ γ &lt; 1. The sense in which the phases pass in time is opposite at a sun and at a ring.<br/>
    /// Source: derived from the tooth pitch of the central gear.<br/>
    /// Valid for: alike planets, phases against the first planet in the same mesh.
    /// </remarks>
    public static ImmutableArray<double> Of(int centralTeeth, PlanetPositions positions)
    {
        var phases = ImmutableArray.CreateBuilder<double>(positions.Count);
        for (var planet = 0; planet < positions.Count; planet++)
        {
            phases.Add((double)StepsOf(centralTeeth, positions, planet) / positions.StepsPerTurn);
        }

        return phases.MoveToImmutable();
    }

    /// <inheritdoc cref="Of(int, PlanetPositions)"/>
    public static ImmutableArray<double> Of(int centralTeeth, int planets) => Of(centralTeeth, PlanetPositions.Equal(planets));

    /// <summary>Order of the phases round the central gear, in the order of the planets.</summary>
    public static Phasing Classify(int centralTeeth, PlanetPositions positions)
    {
        var stepsPerTurn = positions.StepsPerTurn;
        var first = Advance(centralTeeth, positions, 0);
        for (var planet = 1; planet < positions.Count; planet++)
        {
            if (Advance(centralTeeth, positions, planet) != first)
            {
                return Phasing.Irregular;
            }
        }

        return first == 0 ? Phasing.InPhase
            : 2 * (Int128)first == stepsPerTurn ? Phasing.CounterPhased
            : Phasing.Sequential;
    }

    /// <inheritdoc cref="Classify(int, PlanetPositions)"/>
    public static Phasing Classify(int centralTeeth, int planets) => Classify(centralTeeth, PlanetPositions.Equal(planets));

    private static long StepsOf(int centralTeeth, PlanetPositions positions, int planet)
    {
        Guard.Count(centralTeeth, 1, "the number of teeth of the central gear");
        var steps = positions.Steps[planet] - positions.Steps[0];
        var phase = (long)((Int128)centralTeeth * steps % positions.StepsPerTurn);
        return phase < 0 ? phase + positions.StepsPerTurn : phase;
    }

    // Phase from a planet to the next, the last followed by the first.
    private static long Advance(int centralTeeth, PlanetPositions positions, int planet)
    {
        var advance = StepsOf(centralTeeth, positions, (planet + 1) % positions.Count) - StepsOf(centralTeeth, positions, planet);
        return advance < 0 ? advance + positions.StepsPerTurn : advance;
    }
}
