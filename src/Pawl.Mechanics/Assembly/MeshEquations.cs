using System.Numerics;

namespace Pawl.Mechanics.Assembly;

/// <summary>The conditions for the teeth of a group to meet, brought to triangular form over the integers.</summary>
/// <remarks>
/// <code>A·u = c·θ + n</code>
/// Symbols: u rotation of each body relative to the carrier, against the reference group, turns; θ position of the group
/// against the reference group, turns; n any integers; a row of A holds a mesh's planet teeth, c is +z for a sun, −z for a
/// ring, 0 for a pair of planets.<br/>
/// Row operations by a unimodular U give H·u = (U·c)·θ + n′ with H upper triangular, and n′ = U·n again runs over
/// <em>all</em> integer vectors. So the rows below the triangle, 0 = (U·c)ᵢ·θ + n′ᵢ, are the whole condition on θ, and the
/// rows of the triangle can then always be satisfied.<br/>
/// Source: derived from rolling without slip in the frame of the carrier; Hermite normal form.<br/>
/// Valid for: fixed centre distances, alike groups, central gears turned to suit the reference group only.
/// </remarks>
internal sealed class MeshEquations
{
    private readonly BigInteger[][] _rows;
    private readonly int _bodies;

    private MeshEquations(BigInteger[][] rows, int bodies)
    {
        _rows = rows;
        _bodies = bodies;
        Triangulate();
    }

    public static MeshEquations Of(PlanetGroup group)
    {
        var rows = new BigInteger[group.Meshes][];
        for (var mesh = 0; mesh < rows.Length; mesh++)
        {
            rows[mesh] = Row(group, mesh);
        }

        return new MeshEquations(rows, group.Bodies);
    }

    /// <summary>Only the chosen meshes of a group.</summary>
    public static MeshEquations Of(PlanetGroup group, ReadOnlySpan<int> meshes)
    {
        var rows = new BigInteger[meshes.Length][];
        for (var i = 0; i < rows.Length; i++)
        {
            rows[i] = Row(group, meshes[i]);
        }

        return new MeshEquations(rows, group.Bodies);
    }

    /// <summary>D: a group may sit at every multiple of 1/D turn; 0 when it may sit anywhere.</summary>
    public BigInteger PositionsPerTurn()
    {
        var positions = BigInteger.Zero;
        for (var row = _bodies; row < _rows.Length; row++)
        {
            positions = BigInteger.GreatestCommonDivisor(positions, _rows[row][_bodies]);
        }

        return positions;
    }

    /// <summary>Ways to turn the bodies by less than a turn each so that all teeth meet again; 0 if one is free.</summary>
    public BigInteger Seatings()
    {
        if (_rows.Length < _bodies)
        {
            return 0;
        }

        var seatings = BigInteger.One;
        for (var body = 0; body < _bodies; body++)
        {
            seatings *= _rows[body][body];
        }

        return seatings;
    }

    /// <summary>Rotation of each body at θ = step/steps turn, turns: the least that is not negative, last body first.</summary>
    public double[] Rotations(long step, long steps)
    {
        // Over the denominator steps·∏H every rotation is an integer, so a rotation of nothing comes out as nothing.
        var denominator = steps * Seatings();
        var rotations = new BigInteger[_bodies];
        for (var body = _bodies - 1; body >= 0; body--)
        {
            var row = _rows[body];
            var right = row[_bodies] * step * (denominator / steps);
            for (var other = body + 1; other < _bodies; other++)
            {
                right -= row[other] * rotations[other];
            }

            var tooth = denominator / row[body];
            rotations[body] = Modulo(right / row[body], tooth);
        }

        return Array.ConvertAll(rotations, rotation => Quotient(rotation, denominator));
    }

    private static BigInteger[] Row(PlanetGroup group, int mesh)
    {
        var row = new BigInteger[group.Bodies + 1];
        if (mesh < group.CentralMeshes.Length)
        {
            var central = group.CentralMeshes[mesh];
            row[central.PlanetBody] = central.PlanetTeeth;
            row[^1] = central.CentralIsInternal ? -central.CentralTeeth : central.CentralTeeth;
        }
        else
        {
            var pair = group.PairMeshes[mesh - group.CentralMeshes.Length];
            row[pair.FirstBody] = pair.FirstTeeth;
            row[pair.SecondBody] = pair.SecondTeeth;
        }

        return row;
    }

    private static BigInteger Modulo(BigInteger value, BigInteger modulus)
    {
        var rest = value % modulus;
        return rest.Sign < 0 ? rest + modulus : rest;
    }

    private static double Quotient(BigInteger numerator, BigInteger denominator)
    {
        var factor = BigInteger.GreatestCommonDivisor(numerator, denominator);
        return (double)(numerator / factor) / (double)(denominator / factor);
    }

    private void Triangulate()
    {
        for (var body = 0; body < Math.Min(_bodies, _rows.Length); body++)
        {
            while (BringLeastUp(body))
            {
                for (var row = body + 1; row < _rows.Length; row++)
                {
                    Subtract(_rows[row], _rows[body], _rows[row][body] / _rows[body][body]);
                }
            }
        }
    }

    // Whether there is still something below the diagonal to take away.
    private bool BringLeastUp(int body)
    {
        var least = -1;
        var filled = 0;
        for (var row = body; row < _rows.Length; row++)
        {
            if (_rows[row][body].IsZero)
            {
                continue;
            }

            filled++;
            if (least < 0 || BigInteger.Abs(_rows[row][body]) < BigInteger.Abs(_rows[least][body]))
            {
                least = row;
            }
        }

        if (least < 0)
        {
            return false;
        }

        (_rows[body], _rows[least]) = (_rows[least], _rows[body]);
        if (_rows[body][body].Sign < 0)
        {
            Subtract(_rows[body], _rows[body], 2);
        }

        return filled > 1;
    }

    private static void Subtract(BigInteger[] row, BigInteger[] other, BigInteger factor)
    {
        for (var i = 0; i < row.Length; i++)
        {
            row[i] -= factor * other[i];
        }
    }
}
