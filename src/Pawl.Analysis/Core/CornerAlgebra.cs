using System.Runtime.InteropServices;
using Pawl.Quantities;

namespace Pawl.Analysis.Core;

/// <summary>Worst-case evaluation: a formula at nominal and at every corner of the tolerances beneath its inputs.</summary>
internal static class CornerAlgebra
{
    /// <summary>More leaves than this, and the inputs are taken as independent instead.</summary>
    private const int MostLeaves = 8;

    public static Result Evaluate(ImmutableArray<Quantity> inputs, Formula formula)
    {
        Span<double> x = stackalloc double[inputs.Length];
        for (var i = 0; i < inputs.Length; i++)
            x[i] = inputs[i].Value.Nominal;
        var nominal = formula(x);

        var leaves = Union(inputs);
        if (leaves.IsEmpty)
            return new(Extent.Exactly(nominal), [], [], false);
        if (leaves.Length > MostLeaves)
            return AsIndependent(inputs, formula, nominal, x);

        var places = new int[inputs.Length][];
        for (var i = 0; i < inputs.Length; i++)
            places[i] = PlacesOf(inputs[i].Leaves, leaves);

        var corners = new double[1 << leaves.Length];
        for (var mask = 0; mask < corners.Length; mask++)
        {
            for (var i = 0; i < inputs.Length; i++)
                x[i] = AtCorner(inputs[i], places[i], mask);
            corners[mask] = formula(x);
        }

        // The overlap of spur gears is 0 whatever their width: what does not move with its leaves has none.
        var bounds = Bounds(nominal, corners, leaves);
        return bounds.IsExact
            ? new(bounds, [], [], false)
            : new(bounds, leaves, ImmutableCollectionsMarshal.AsImmutableArray(corners), false);
    }

    /// <summary>Values of the inputs at nominal and at every corner of the tolerances beneath them.</summary>
    public static IEnumerable<double[]> Points(ImmutableArray<Quantity> inputs)
    {
        yield return [.. inputs.Select(input => input.Value.Nominal)];
        var leaves = Union(inputs);
        if (leaves.IsEmpty)
            yield break;
        if (leaves.Length > MostLeaves)
        {
            yield return [.. inputs.Select(input => input.Value.Min)];
            yield return [.. inputs.Select(input => input.Value.Max)];
            yield break;
        }

        var places = inputs.Select(input => PlacesOf(input.Leaves, leaves)).ToArray();
        for (var mask = 0; mask < 1 << leaves.Length; mask++)
            yield return [.. inputs.Select((input, i) => AtCorner(input, places[i], mask))];
    }

    private static double AtCorner(Quantity input, int[] places, int mask)
    {
        if (places.Length == 0)
            return input.Value.Nominal;

        var index = 0;
        for (var k = 0; k < places.Length; k++)
            index |= ((mask >> places[k]) & 1) << k;
        return input.Corners[index];
    }

    /// <summary>Too many leaves for all corners: each input goes to the limit that moves the result furthest, as if it were alone.</summary>
    private static Result AsIndependent(ImmutableArray<Quantity> inputs, Formula formula, double nominal, Span<double> x)
    {
        Span<double> low = stackalloc double[x.Length];
        Span<double> high = stackalloc double[x.Length];
        for (var i = 0; i < x.Length; i++)
        {
            var value = inputs[i].Value;
            x[i] = value.Min;
            var atMin = formula(x);
            x[i] = value.Max;
            var rises = formula(x) >= atMin;
            x[i] = value.Nominal;
            (low[i], high[i]) = rises ? (value.Min, value.Max) : (value.Max, value.Min);
        }

        return new(Bounds(nominal, [Descend(inputs, formula, low, 1), Descend(inputs, formula, high, -1)], inputs), [], [], true);
    }

    /// <summary>From a corner on to its neighbours as long as one is lower, for inputs whose direction depends on the others.</summary>
    private static double Descend(ImmutableArray<Quantity> inputs, Formula formula, Span<double> corner, int sign)
    {
        var best = sign * formula(corner);
        for (var moved = true; moved && double.IsFinite(best);)
        {
            moved = false;
            for (var i = 0; i < corner.Length; i++)
            {
                var (here, value) = (corner[i], inputs[i].Value);
                if (value.IsExact)
                    continue;
                corner[i] = here == value.Min ? value.Max : value.Min;
                var there = sign * formula(corner);
                if (there < best)
                    (best, moved) = (there, true);
                else
                    corner[i] = here;
            }
        }

        return sign * best;
    }

    /// <summary>Least and greatest of the corners, and of nominal where it lies within the tolerances: 40 k5 is never 40.</summary>
    private static Extent Bounds(double nominal, ReadOnlySpan<double> corners, ImmutableArray<Quantity> toleranced)
    {
        var (least, greatest) = (corners[0], corners[0]);
        if (!toleranced.Any(static each => each.Value.Nominal < each.Value.Min || each.Value.Nominal > each.Value.Max))
            (least, greatest) = (nominal, nominal);
        foreach (var corner in corners)
        {
            // Math.Min keeps NaN, so that a corner without a value is not lost.
            least = Math.Min(least, corner);
            greatest = Math.Max(greatest, corner);
        }

        return new(nominal, least, greatest);
    }

    public static ImmutableArray<Quantity> Union(ImmutableArray<Quantity> inputs)
    {
        ImmutableArray<Quantity> union = [];
        foreach (var input in inputs)
        {
            var leaves = input.Leaves;
            if (leaves.IsEmpty || leaves.Equals(union))
                continue;
            union = union.IsEmpty ? leaves : Merge(union, leaves);
        }

        return union;
    }

    /// <summary>Both lists in one, each leaf once; one of the two itself where it holds the other.</summary>
    private static ImmutableArray<Quantity> Merge(ImmutableArray<Quantity> a, ImmutableArray<Quantity> b)
    {
        var common = 0;
        for (int i = 0, j = 0; i < a.Length && j < b.Length;)
        {
            var order = a[i].Serial.CompareTo(b[j].Serial);
            common += order == 0 ? 1 : 0;
            i += order <= 0 ? 1 : 0;
            j += order >= 0 ? 1 : 0;
        }

        if (common == b.Length)
            return a;
        if (common == a.Length)
            return b;
        var merged = new Quantity[a.Length + b.Length - common];
        for (int i = 0, j = 0, k = 0; k < merged.Length; k++)
        {
            var order = i == a.Length ? 1 : j == b.Length ? -1 : a[i].Serial.CompareTo(b[j].Serial);
            merged[k] = order <= 0 ? a[i] : b[j];
            i += order <= 0 ? 1 : 0;
            j += order >= 0 ? 1 : 0;
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(merged);
    }

    private static int[] PlacesOf(ImmutableArray<Quantity> some, ImmutableArray<Quantity> all)
    {
        if (some.IsEmpty)
            return [];
        var places = new int[some.Length];
        var at = 0;
        for (var k = 0; k < some.Length; k++)
        {
            while (!ReferenceEquals(all[at], some[k]))
                at++;
            places[k] = at;
        }

        return places;
    }

    public readonly record struct Result(
        Extent Extent, ImmutableArray<Quantity> Leaves, ImmutableArray<double> Corners, bool IsBounded);
}
