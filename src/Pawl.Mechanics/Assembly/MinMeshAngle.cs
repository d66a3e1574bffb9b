namespace Pawl.Mechanics.Assembly;

/// <summary>Least mesh angle θ₀ of a planet group: beside the reference group, others may sit only at its multiples.</summary>
/// <remarks>
/// <code>θ₀ = 2π/D, D = gcd( yₖ·c ), yₖ a primitive integer basis of yᵀ·A = 0</code>
/// Symbols: A planet teeth of each mesh (row) by body (column); c central teeth of each mesh, +z sun, −z ring, 0 between
/// planets; D positions per turn, 0 when any angle will do; θ₀ in rad.<br/>
/// Source: derived, see <see cref="MeshEquations"/>. For a simple planet D = z_s + z_r.<br/>
/// Valid for: alike groups, identical in the angle between the steps of a body; exact in integers.
/// </remarks>
/// <param name="PositionsPerTurn">D; 0 when any angle will do.</param>
public readonly record struct MinMeshAngle(long PositionsPerTurn)
{
    private const long FineStepsPerTurn = 1L << 40;

    public static MinMeshAngle Of(PlanetGroup group) => new(checked((long)MeshEquations.Of(group).PositionsPerTurn()));

    /// <summary>Whether a group may sit at any angle, as a planet with only one mesh or a clamped step.</summary>
    public bool IsAnyAngle => PositionsPerTurn == 0;

    /// <summary>θ₀, rad; 0 when any angle will do.</summary>
    public double Angle => IsAnyAngle ? 0 : Math.Tau / PositionsPerTurn;

    /// <summary>Whether N groups can be spaced equally: D/N must be whole.</summary>
    public bool CanSpaceEqually(int planets) => Remainder(planets) == 0;

    /// <summary>D mod N, 0 when N groups can be spaced equally.</summary>
    public long Remainder(int planets)
    {
        Guard.Count(planets, 1, "the number of planets");
        return PositionsPerTurn % planets;
    }

    /// <summary>The permitted positions nearest to equal spacing.</summary>
    /// <remarks>
    /// <code>k_j = ⌊D·j/N + 1/2⌋, θ_j = k_j·θ₀</code>
    /// Symbols: j planet from 0; N number of planets. A tie goes to the greater angle: rounding every tie the same way
    /// keeps opposite planets opposite wherever D is even, which rounding to even does not.<br/>
    /// Source: derived.<br/>
    /// Valid for: all N; with N greater than D two planets fall on one place and the smallest gap is 0.
    /// </remarks>
    public PlanetPositions NearestToEqual(int planets)
    {
        Guard.Count(planets, 1, "the number of planets");
        if (IsAnyAngle)
        {
            return PlanetPositions.Equal(planets);
        }

        var steps = ImmutableArray.CreateBuilder<long>(planets);
        for (var planet = 0; planet < planets; planet++)
        {
            steps.Add((long)((2 * (Int128)PositionsPerTurn * planet + planets) / (2 * planets)));
        }

        return new PlanetPositions(PositionsPerTurn, steps.MoveToImmutable());
    }

    /// <summary>Misfit of a position: angle from the nearest permitted one to it, rad, positive when it is too far on.</summary>
    /// <param name="position">Position against the reference group, rad.</param>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double Misfit(double position)
    {
        Guard.Number(position, "the position of a planet", "rad");
        if (IsAnyAngle)
        {
            return 0;
        }

        var steps = position / Math.Tau * PositionsPerTurn;
        return (steps - Math.Round(steps)) * Angle;
    }

    /// <summary>The permitted positions nearest to declared ones, rad, counted from the first of them.</summary>
    /// <remarks>Where any angle will do, the declared angles are kept to 2⁻⁴⁰ of a turn.</remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public PlanetPositions NearestTo(ReadOnlySpan<double> positions)
    {
        Guard.Count(positions.Length, 1, "the number of planets");
        var stepsPerTurn = IsAnyAngle ? FineStepsPerTurn : PositionsPerTurn;
        var steps = ImmutableArray.CreateBuilder<long>(positions.Length);
        foreach (var position in positions)
        {
            Guard.Number(position, "the position of a planet", "rad");
            var turns = (position - positions[0]) / Math.Tau;
            steps.Add((long)Math.Floor((turns - Math.Floor(turns)) * stepsPerTurn + 0.5));
        }

        return new PlanetPositions(stepsPerTurn, steps.MoveToImmutable());
    }
}
