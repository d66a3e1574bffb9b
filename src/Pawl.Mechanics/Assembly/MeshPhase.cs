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

/// <summary>What a harmonic of the tooth mesh frequency does to a central gear.</summary>
[Flags]
public enum HarmonicEffect
{
    /// <summary>The planets' contributions cancel in torque and in force.</summary>
    Cancels = 0,

    /// <summary>It drives the central gear round its axis.</summary>
    Torsional = 1,

    /// <summary>It shakes the central gear sideways.</summary>
    Translational = 2,
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

    /// <summary>What a harmonic of the mesh does to the central gear, planets equally spaced.</summary>
    /// <remarks>
    /// <code>q = h·z mod N;  q = 0: torsional;  q = 1 or N − 1: translational;  other q: cancels</code>
    /// Symbols: h harmonic of the mesh frequency, from 1; z teeth of the central gear; N number of planets.<br/>
    /// Source: sums of N equal mesh forces, Σ e^(ihzθ_k) for the torque and Σ e^(i(hz ± 1)θ_k) for the force.<br/>
    /// Valid for: alike, equally loaded, equally spaced planets. A single planet does both.
    /// </remarks>
    public static HarmonicEffect Effect(int centralTeeth, int planets, int harmonic)
    {
        Guard.Count(centralTeeth, 1, "the number of teeth of the central gear");
        Guard.Count(planets, 1, "the number of planets");
        Guard.Count(harmonic, 1, "the harmonic");
        var order = (long)harmonic * centralTeeth;
        var effect = HarmonicEffect.Cancels;
        if (order % planets == 0)
        {
            effect |= HarmonicEffect.Torsional;
        }

        if ((order + 1) % planets == 0 || (order - 1) % planets == 0)
        {
            effect |= HarmonicEffect.Translational;
        }

        return effect;
    }

    private static double Share(PlanetPositions positions, Int128 order)
    {
        var angles = new double[positions.Count];
        for (var planet = 0; planet < angles.Length; planet++)
        {
            // Whole turns are taken away in integers: cos and sin of large angles would lose the last digits.
            var steps = order % positions.StepsPerTurn * positions.Steps[planet] % positions.StepsPerTurn;
            angles[planet] = Math.Tau * (double)steps / positions.StepsPerTurn;
        }

        return Balance.Unbalance(angles) / positions.Count;
    }

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
