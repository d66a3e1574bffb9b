using Pawl.Quantities;

namespace Pawl.Analysis.Core;

/// <summary>Looks between the corners of the tolerances for values beyond those at the corners.</summary>
internal static class InsideTheBox
{
    private const int Steps = 12;
    private const int Sweeps = 3;
    private const int Halvings = 30;
    private const double Near = 1e-3;

    /// <summary>The extent widened by what was found; null when the corners are the worst.</summary>
    public static Extent? Search(ImmutableArray<Quantity> inputs, Formula formula, CornerAlgebra.Result corners)
    {
        if (corners.Leaves.IsEmpty || !Turns(inputs, formula, corners.Leaves))
            return null;
        var least = -Climb(inputs, x => -formula(x), corners.Leaves, -corners.Extent.Least);
        var greatest = Climb(inputs, formula, corners.Leaves, corners.Extent.Greatest);
        return least < corners.Extent.Least || greatest > corners.Extent.Greatest
            ? new(corners.Extent.Nominal, Math.Min(least, corners.Extent.Least), Math.Max(greatest, corners.Extent.Greatest))
            : null;
    }

    /// <summary>Whether the value turns along an edge of the box: it does not move at both ends as it does from end to end.</summary>
    /// <remarks>A look at each edge spares the search for most; one turn along an edge shows itself in the ends.</remarks>
    private static bool Turns(ImmutableArray<Quantity> inputs, Formula formula, ImmutableArray<Quantity> leaves)
    {
        ReadOnlySpan<double> shares = [0, Near, 0.5, 1 - Near, 1];
        Span<double> values = stackalloc double[shares.Length];
        var point = new Dictionary<Quantity, double>();
        for (var along = 0; along < leaves.Length; along++)
        {
            for (var mask = 0; mask < 1 << leaves.Length; mask++)
            {
                if (((mask >> along) & 1) != 0)
                    continue;
                for (var k = 0; k < leaves.Length; k++)
                    point[leaves[k]] = ((mask >> k) & 1) == 0 ? leaves[k].Value.Least : leaves[k].Value.Greatest;
                var limits = leaves[along].Value;
                for (var i = 0; i < shares.Length; i++)
                {
                    point[leaves[along]] = limits.Least + shares[i] * (limits.Greatest - limits.Least);
                    values[i] = At(inputs, formula, point);
                }

                var (rises, falls) = (false, false);
                for (var i = 1; i < values.Length; i++)
                {
                    rises |= values[i] > values[i - 1];
                    falls |= values[i] < values[i - 1];
                }

                if (rises && falls)
                    return true;
            }
        }

        return false;
    }

    private static double At(ImmutableArray<Quantity> inputs, Formula formula, Dictionary<Quantity, double> point)
    {
        // What stands at the point is taken from there, a value of its own tolerance that has a formula as well.
        var known = new Dictionary<Quantity, double>(point);
        Span<double> x = new double[inputs.Length];
        for (var i = 0; i < x.Length; i++)
            x[i] = inputs[i].At(each => each.Value.Nominal, known);
        return formula(x);
    }

    // From every corner, leaf by leaf to the best of a row of points, then narrower about it.
    private static double Climb(ImmutableArray<Quantity> inputs, Formula formula, ImmutableArray<Quantity> leaves, double best)
    {
        for (var mask = 0; mask < 1 << leaves.Length; mask++)
        {
            var point = new Dictionary<Quantity, double>();
            for (var k = 0; k < leaves.Length; k++)
                point[leaves[k]] = ((mask >> k) & 1) == 0 ? leaves[k].Value.Least : leaves[k].Value.Greatest;
            for (var sweep = 0; sweep < Sweeps; sweep++)
            {
                foreach (var leaf in leaves)
                    best = Math.Max(best, Line(inputs, formula, point, leaf));
            }
        }

        return best;
    }

    private static double Line(ImmutableArray<Quantity> inputs, Formula formula, Dictionary<Quantity, double> point, Quantity leaf)
    {
        var (least, greatest) = (leaf.Value.Least, leaf.Value.Greatest);
        var (place, best) = (point[leaf], double.NegativeInfinity);
        for (var i = 0; i <= Steps; i++)
            Try(least + (greatest - least) * i / Steps);
        var width = (greatest - least) / Steps;
        for (var i = 0; i < Halvings; i++, width /= 2)
        {
            var centre = place;
            Try(Math.Max(least, centre - width));
            Try(Math.Min(greatest, centre + width));
        }

        point[leaf] = place;
        return best;

        void Try(double at)
        {
            point[leaf] = at;
            var value = At(inputs, formula, point);
            if (value > best)
                (best, place) = (value, at);
        }
    }
}
