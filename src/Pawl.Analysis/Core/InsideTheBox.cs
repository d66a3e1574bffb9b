using Pawl.Quantities;

namespace Pawl.Analysis.Core;

/// <summary>Looks between the corners of the tolerances for values beyond those at the corners.</summary>
internal static class InsideTheBox
{
    private const int Steps = 12;
    private const int Sweeps = 3;
    private const int Halvings = 30;

    /// <summary>The extent widened by what was found; null when the corners are the worst.</summary>
    public static Extent? Search(ImmutableArray<Quantity> inputs, Formula formula, CornerAlgebra.Result corners)
    {
        if (corners.Leaves.IsEmpty)
            return null;
        var least = -Climb(inputs, x => -formula(x), corners.Leaves, -corners.Extent.Least);
        var greatest = Climb(inputs, formula, corners.Leaves, corners.Extent.Greatest);
        return least < corners.Extent.Least || greatest > corners.Extent.Greatest
            ? new(corners.Extent.Nominal, Math.Min(least, corners.Extent.Least), Math.Max(greatest, corners.Extent.Greatest))
            : null;
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
            var known = new Dictionary<Quantity, double>();
            Span<double> x = new double[inputs.Length];
            for (var i = 0; i < x.Length; i++)
                x[i] = inputs[i].At(each => point.TryGetValue(each, out var value) ? value : each.Value.Nominal, known);
            var value2 = formula(x);
            if (value2 > best)
                (best, place) = (value2, at);
        }
    }
}
