using System.Numerics;

namespace Pawl.Mechanics.Assembly;

/// <summary>How a planet group must be turned when it is put in at its pin.</summary>
/// <param name="Planet">Index of the planet on the carrier, from 0; 0 is the reference.</param>
/// <param name="Position">Position of the planet on the carrier, rad.</param>
/// <param name="MarkAngles">
/// For each body, angle from the radius that points outward at its pin to its mark, rad, positive as the positions count,
/// when the marks of the reference planet point outward.
/// </param>
public sealed record PlanetMark(int Planet, double Position, ImmutableArray<double> MarkAngles);

/// <summary>Which tooth goes where when a planet with several meshes is put in.</summary>
/// <remarks>
/// At a permitted position the teeth of all meshes can meet, but not at every seating in the first mesh. Marks save the trials.
/// </remarks>
public static class StepTiming
{
    /// <summary>Number of distinct ways to seat a group in some of its meshes, of which one lets the others meet too.</summary>
    /// <remarks>
    /// <code>trials = |det A_F| / |det H|;  stepped planet seated on step i: z_i / gcd(z_1, z_2, …)</code>
    /// Symbols: A planet teeth of each mesh (row) by body (column); A_F its rows of the meshes seated first, as many as there
    /// are bodies; H the Hermite normal form of A, so |det H| counts the seatings that all meshes accept.<br/>
    /// Source: derived; index of one lattice in another.<br/>
    /// Valid for: groups at a permitted position; 1 means that every seating fits.
    /// </remarks>
    /// <param name="group">The planet group.</param>
    /// <param name="seatedFirst">
    /// Meshes seated first, central ones numbered before pairs; as many as bodies, tying every body.
    /// </param>
    public static long InsertionTrials(PlanetGroup group, params ReadOnlySpan<int> seatedFirst)
    {
        if (seatedFirst.Length != group.Bodies)
            throw Guard.Because($"as many meshes are seated first as there are planet bodies, {group.Bodies}; there are {seatedFirst.Length}");
        foreach (var mesh in seatedFirst)
        {
            if (mesh < 0 || mesh >= group.Meshes)
                throw Guard.Because($"the group has meshes 0 to {group.Meshes - 1}; mesh {mesh} is none of them");
        }

        var seatings = MeshEquations.Of(group, seatedFirst).Seatings();
        if (seatings.IsZero)
            throw Guard.Because($"the meshes seated first do not tie every planet body");
        return checked((long)(seatings / MeshEquations.Of(group).Seatings()));
    }

    /// <summary>Fewest trials over every choice of meshes to seat first.</summary>
    public static long FewestInsertionTrials(PlanetGroup group)
    {
        var accepted = MeshEquations.Of(group).Seatings();
        var fewest = BigInteger.Zero;
        var chosen = new int[group.Bodies];

        void Choose(int depth, int from)
        {
            if (depth == chosen.Length)
            {
                var seatings = MeshEquations.Of(group, chosen).Seatings();
                if (!seatings.IsZero && (fewest.IsZero || seatings < fewest))
                {
                    fewest = seatings;
                }

                return;
            }

            for (var mesh = from; mesh <= group.Meshes - chosen.Length + depth; mesh++)
            {
                chosen[depth] = mesh;
                Choose(depth + 1, mesh + 1);
            }
        }

        Choose(0, 0);
        return checked((long)(fewest / accepted));
    }

    /// <summary>Whether N equally spaced planets can all go in with the same mark outward: N | z of every central gear.</summary>
    public static bool SameMarkOutward(PlanetGroup group, int planets) =>
        SameMarkOutward(group, PlanetPositions.Equal(planets));

    /// <summary>Whether planets can all go in with the same mark pointing radially outward.</summary>
    /// <remarks>
    /// <code>z_c·θ_k/2π whole, for every central gear c and planet k</code>
    /// Symbols: z_c teeth of the central gear; θ_k position of planet k from the first, rad.<br/>
    /// Source: derived: a body not turned on its radius meets a central gear again after whole teeth of that gear only.<br/>
    /// Valid for: alike groups.
    /// </remarks>
    public static bool SameMarkOutward(PlanetGroup group, PlanetPositions positions)
    {
        foreach (var mesh in group.CentralMeshes)
        {
            foreach (var step in positions.Steps)
            {
                if ((Int128)mesh.CentralTeeth * (step - positions.Steps[0]) % positions.StepsPerTurn != 0)
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>The mark angles of every planet for the build sheet.</summary>
    /// <remarks>
    /// <code>A·u = c·θ + n</code>
    /// Symbols as in <see cref="MinMeshAngle"/>. Of all rotations that let the teeth meet, the one returned is the least that
    /// is not negative, for the last body first. Every body may further be turned by whole multiples of 2π over its
    /// <see cref="PlanetGroup.CommonFactor"/>.<br/>
    /// Source: derived.<br/>
    /// Valid for: permitted positions of alike groups.
    /// </remarks>
    /// <exception cref="OutsideValidityException">A position is not a multiple of the least mesh angle.</exception>
    public static ImmutableArray<PlanetMark> Marks(PlanetGroup group, PlanetPositions positions)
    {
        var equations = MeshEquations.Of(group);
        var perTurn = equations.PositionsPerTurn();
        var marks = ImmutableArray.CreateBuilder<PlanetMark>(positions.Count);
        for (var planet = 0; planet < positions.Count; planet++)
        {
            var step = positions.Steps[planet] - positions.Steps[0];
            if (perTurn * step % positions.StepsPerTurn != BigInteger.Zero)
                throw Guard.Because($"planet {planet + 1} does not stand at a multiple of the least mesh angle");
            var rotations = equations.Rotations(step, positions.StepsPerTurn);
            marks.Add(new PlanetMark(
                planet,
                positions.Angle(planet),
                ImmutableArray.Create(Array.ConvertAll(rotations, rotation => rotation * Math.Tau))));
        }

        return marks.MoveToImmutable();
    }
}
