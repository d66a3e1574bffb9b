using System.Runtime.InteropServices;
using Pawl.Quantities;

namespace Pawl.Analysis.Core;

/// <summary>Worst case of a formula that is not monotonic in its tolerances: searched for between the corners as well.</summary>
/// <remarks>What lies between the leaves and the result is laid out once as a row of steps, so that a point costs little.</remarks>
internal sealed class InsideTheBox
{
    private const int Steps = 8;
    private const int Sweeps = 3;
    private const int Halvings = 28;
    private const double Near = 1e-3;

    private readonly ImmutableArray<Quantity> _leaves;
    private readonly Dictionary<Quantity, int> _places = [];
    private readonly List<double> _values = [];
    private readonly List<(Formula Formula, int[] Inputs, int Place)> _steps = [];

    private InsideTheBox(ImmutableArray<Quantity> leaves, ImmutableArray<Quantity> inputs, Formula formula)
    {
        _leaves = leaves;
        foreach (var leaf in leaves)
            Place(leaf, leaf.Value.Nominal);
        var places = inputs.Select(LayOut).ToArray();
        _steps.Add((formula, places, Result));
    }

    // The last step leaves its value aside.
    private const int Result = -1;

    /// <summary>The extent widened by what was found; null when the corners are the worst.</summary>
    public static Extent? Search(ImmutableArray<Quantity> inputs, Formula formula, CornerAlgebra.Result corners)
    {
        ImmutableArray<Quantity> leaves = corners.IsBounded ? [.. inputs.Where(input => !input.Value.IsExact).Distinct()] : corners.Leaves;
        if (leaves.IsEmpty)
            return null;
        var box = new InsideTheBox(leaves, inputs, formula);
        var least = -box.Climb(-1, -corners.Extent.Min, corners);
        var greatest = box.Climb(1, corners.Extent.Max, corners);
        return least < corners.Extent.Min || greatest > corners.Extent.Max ? new(corners.Extent.Nominal, least, greatest) : null;
    }

    private int Place(Quantity quantity, double value)
    {
        _places.Add(quantity, _values.Count);
        _values.Add(value);
        return _values.Count - 1;
    }

    /// <summary>Where the value of a quantity will stand; what it is computed from is laid out before it.</summary>
    private int LayOut(Quantity quantity)
    {
        if (_places.TryGetValue(quantity, out var known))
            return known;
        if (quantity.Formula is not { } formula)
            return Place(quantity, quantity.Value.Nominal);
        var inputs = quantity.Inputs.Select(LayOut).ToArray();
        var place = Place(quantity, quantity.Value.Nominal);
        if (inputs.Any(Moves))
            _steps.Add((formula, inputs, place));
        return place;
    }

    private bool Moves(int place) => place < _leaves.Length || _steps.Exists(step => step.Place == place);

    private double At(double[] point)
    {
        var values = CollectionsMarshal.AsSpan(_values);
        point.CopyTo(values);
        Span<double> x = stackalloc double[_steps.Max(static step => step.Inputs.Length)];
        var result = 0.0;
        foreach (var (formula, inputs, place) in _steps)
        {
            for (var i = 0; i < inputs.Length; i++)
                x[i] = values[inputs[i]];
            result = formula(x[..inputs.Length]);
            if (place != Result)
                values[place] = result;
        }

        return result;
    }

    // From the best corner and from nominal, leaf by leaf to the best of a row of points.
    private double Climb(int sign, double best, CornerAlgebra.Result corners)
    {
        var starts = new List<double[]> { _leaves.Select(static leaf => leaf.Value.Nominal).ToArray() };
        if (!corners.IsBounded)
        {
            var mask = 0;
            for (var i = 1; i < corners.Corners.Length; i++)
            {
                if (sign * corners.Corners[i] > sign * corners.Corners[mask])
                    mask = i;
            }

            starts.Add([.. _leaves.Select((leaf, k) => ((mask >> k) & 1) == 0 ? leaf.Value.Min : leaf.Value.Max)]);
        }

        foreach (var point in starts)
        {
            var reached = double.NegativeInfinity;
            for (var sweep = 0; sweep < Sweeps; sweep++)
            {
                var before = reached;
                for (var along = 0; along < point.Length; along++)
                    reached = Line(sign, point, along);
                if (reached <= before)
                    break;
            }

            best = Math.Max(best, reached);
        }

        return best;
    }

    /// <summary>Moves the point along one leaf to the best place, and gives the value there.</summary>
    private double Line(int sign, double[] point, int along)
    {
        var (least, greatest) = (_leaves[along].Value.Min, _leaves[along].Value.Max);
        var (place, best) = (point[along], sign * At(point));
        for (var i = 0; i <= Steps; i++)
            Try(least + (greatest - least) * i / Steps);

        // A limit that is better than what lies just inside of it is the best.
        var width = (greatest - least) / Steps;
        if (place == least || place == greatest)
        {
            var limit = place;
            Try(limit == least ? least + Near * width : greatest - Near * width);
            if (place == limit)
                width = 0;
        }

        for (var i = 0; i < Halvings && width > 0; i++, width /= 2)
        {
            var centre = place;
            Try(Math.Max(least, centre - width));
            Try(Math.Min(greatest, centre + width));
        }

        point[along] = place;
        return best;

        void Try(double at)
        {
            point[along] = at;
            var value = sign * At(point);
            if (value > best)
                (best, place) = (value, at);
        }
    }
}
