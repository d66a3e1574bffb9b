using System.Runtime.InteropServices;
using Pawl.Quantities;

namespace Pawl.Analysis.Core;

/// <summary>Worst case of a formula that is not monotonic in its tolerances: searched for between the corners as well.</summary>
/// <remarks>What lies between the leaves and the result is laid out once as a row of steps, so that a point costs little.</remarks>
internal sealed class InsideTheBox
{
    private const int Steps = 4;
    private const int MaxSweeps = 3;
    private const int Halvings = 24;
    private const double Near = 1e-3;

    // The last step leaves its value aside.
    private const int Result = -1;

    private readonly ImmutableArray<Quantity> _leaves;
    private readonly Dictionary<Quantity, int> _places = new(64, ReferenceEqualityComparer.Instance);
    private readonly List<double> _values = new(64);

    // Which leaves move what stands at a place: bit k for leaf k, the last bit for all that are left.
    private readonly List<ulong> _movers = new(64);
    private readonly List<Step> _steps = new(32);
    private readonly Step[] _all;
    private readonly Step[] _along;
    private readonly double[] _x;
    private ulong _alongLeaf;
    private int _alongCount;
    private double _result;

    private InsideTheBox(ImmutableArray<Quantity> leaves, ImmutableArray<Quantity> inputs, Formula formula)
    {
        _leaves = leaves;
        for (var k = 0; k < leaves.Length; k++)
            Place(leaves[k], leaves[k].Value.Nominal, BitOf(k));
        var (places, movers) = LayOut(inputs);
        _steps.Add(new(formula, places, Result, movers));
        _all = [.. _steps];
        _along = new Step[_all.Length];
        var most = 0;
        foreach (var step in _all)
            most = Math.Max(most, step.Inputs.Length);
        _x = new double[most];
    }

    private sealed record Step(Formula Formula, int[] Inputs, int Place, ulong Movers);

    private static ulong BitOf(int leaf) => 1UL << Math.Min(leaf, 63);

    /// <summary>The steps that have to be taken again when one leaf moves.</summary>
    private ReadOnlySpan<Step> MovedBy(int leaf)
    {
        if (_alongLeaf != BitOf(leaf))
        {
            (_alongLeaf, _alongCount) = (BitOf(leaf), 0);
            foreach (var step in _all)
            {
                if ((step.Movers & _alongLeaf) != 0)
                    _along[_alongCount++] = step;
            }
        }

        return _along.AsSpan(0, _alongCount);
    }

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

    private int Place(Quantity quantity, double value, ulong movers)
    {
        _places.Add(quantity, _values.Count);
        _values.Add(value);
        _movers.Add(movers);
        return _values.Count - 1;
    }

    /// <summary>Where the value of a quantity will stand; what it is computed from is laid out before it.</summary>
    private int LayOut(Quantity quantity)
    {
        if (_places.TryGetValue(quantity, out var known))
            return known;
        if (quantity.Formula is not { } formula)
            return Place(quantity, quantity.Value.Nominal, 0);
        var (inputs, movers) = LayOut(quantity.Inputs);
        var place = Place(quantity, quantity.Value.Nominal, movers);
        if (movers != 0)
            _steps.Add(new(formula, inputs, place, movers));
        return place;
    }

    private (int[] Places, ulong Movers) LayOut(ImmutableArray<Quantity> inputs)
    {
        var places = new int[inputs.Length];
        var movers = 0UL;
        for (var i = 0; i < places.Length; i++)
        {
            places[i] = LayOut(inputs[i]);
            movers |= _movers[places[i]];
        }

        return (places, movers);
    }

    private double At(double[] point)
    {
        point.CopyTo(CollectionsMarshal.AsSpan(_values));
        return Take(_all);
    }

    /// <summary>The value where one leaf has moved since the last call and the others have not.</summary>
    private double Moved(int leaf, double to)
    {
        CollectionsMarshal.AsSpan(_values)[leaf] = to;
        return Take(MovedBy(leaf));
    }

    private double Take(ReadOnlySpan<Step> steps)
    {
        var values = CollectionsMarshal.AsSpan(_values);
        foreach (var step in steps)
        {
            var inputs = step.Inputs;
            for (var i = 0; i < inputs.Length; i++)
                _x[i] = values[inputs[i]];
            var result = step.Formula(_x.AsSpan(0, inputs.Length));
            if (step.Place == Result)
                _result = result;
            else
                values[step.Place] = result;
        }

        return _result;
    }

    // From the best corner, or from nominal where no corners are known: leaf by leaf to the best of a row of points, until none moves.
    private double Climb(int sign, double best, CornerAlgebra.Result corners)
    {
        var point = corners.IsBounded ? _leaves.Select(static leaf => leaf.Value.Nominal).ToArray() : BestCorner(sign, corners);
        var reached = sign * At(point);
        for (var (line, still) = (0, 0); line < MaxSweeps * point.Length && still < point.Length; line++)
        {
            var along = line % point.Length;
            var before = point[along];
            reached = Line(sign, point, along, reached);
            still = point[along] == before ? still + 1 : 1;
        }

        return Math.Max(best, reached);
    }

    private double[] BestCorner(int sign, CornerAlgebra.Result corners)
    {
        var mask = 0;
        for (var i = 1; i < corners.Corners.Length; i++)
        {
            if (sign * corners.Corners[i] > sign * corners.Corners[mask])
                mask = i;
        }

        return [.. _leaves.Select((leaf, k) => ((mask >> k) & 1) == 0 ? leaf.Value.Min : leaf.Value.Max)];
    }

    /// <summary>Moves the point along one leaf to the best place, and gives the value there.</summary>
    private double Line(int sign, double[] point, int along, double best)
    {
        var (least, greatest) = (_leaves[along].Value.Min, _leaves[along].Value.Max);
        var place = point[along];
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
        Moved(along, place);
        return best;

        void Try(double at)
        {
            var value = sign * Moved(along, at);
            if (value > best)
                (best, place) = (value, at);
        }
    }
}
