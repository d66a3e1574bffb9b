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
    private readonly Dictionary<Quantity, int> _places = [];
    private readonly List<double> _values = [];
    private readonly List<Step> _steps = [];
    private readonly Step[] _all;
    private readonly Step[][] _beneath;
    private readonly double[] _x;
    private double _result;

    private InsideTheBox(ImmutableArray<Quantity> leaves, ImmutableArray<Quantity> inputs, Formula formula)
    {
        _leaves = leaves;
        foreach (var leaf in leaves)
            Place(leaf, leaf.Value.Nominal);
        _steps.Add(new(formula, [.. inputs.Select(LayOut)], Result));
        _all = [.. _steps];
        _x = new double[_all.Max(static step => step.Inputs.Length)];
        _beneath = [.. leaves.Select((_, place) => MovedBy(place))];
    }

    private sealed record Step(Formula Formula, int[] Inputs, int Place);

    /// <summary>The steps that have to be taken again when one leaf moves.</summary>
    private Step[] MovedBy(int leaf)
    {
        var moved = new HashSet<int> { leaf };
        return Array.FindAll(_all, step => Array.Exists(step.Inputs, moved.Contains) && moved.Add(step.Place));
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
            _steps.Add(new(formula, inputs, place));
        return place;
    }

    private bool Moves(int place) => place < _leaves.Length || _steps.Exists(step => step.Place == place);

    private double At(double[] point)
    {
        point.CopyTo(CollectionsMarshal.AsSpan(_values));
        return Take(_all);
    }

    /// <summary>The value where one leaf has moved since the last call and the others have not.</summary>
    private double Moved(int leaf, double to)
    {
        CollectionsMarshal.AsSpan(_values)[leaf] = to;
        return Take(_beneath[leaf]);
    }

    private double Take(Step[] steps)
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
