using CsCheck;
using Pawl.Analysis.Core;
using Pawl.Analysis.Trains;
using Pawl.Mechanics;
using Pawl.Quantities;

namespace Pawl.Analysis.Tests;

/// <summary>Worst case over tolerances: against sampling inside the box and against hand-worked corners.</summary>
public class CornerTests
{
    private static readonly QuantityKind Number = SubjectKinds.Mesh.Quantities.First(kind => kind.ValueKind == ValueKind.Number);

    private static Quantity Leaf(int serial, double nominal, double below, double above) => Quantity.Leaf(
        Number, new Origin.Assumed("test"), new(nominal, nominal - below, nominal + above), serial);

    [Fact]
    public void A_leaf_that_enters_twice_is_counted_once()
    {
        var a = Leaf(0, 60, 0.1, 0.2);

        var twice = Quantity.Compute(Number, [a, a], x => x[0] - x[1]);

        Assert.Equal(Extent.Exactly(0), twice.Value);
    }

    // By hand: (10 ± 1) · (5 ± 0.5) is 9·4.5 = 40.5 to 11·5.5 = 60.5; then less the first factor again: 31.5 to 49.5.
    [Fact]
    public void Corners_follow_a_chain_of_quantities()
    {
        var (a, b) = (Leaf(0, 10, 1, 1), Leaf(1, 5, 0.5, 0.5));

        var product = Quantity.Compute(Number, [a, b], x => x[0] * x[1]);
        var rest = Quantity.Compute(Number, [product, a], x => x[0] - x[1]);

        Assert.Equal(new Extent(50, 40.5, 60.5), product.Value);
        Assert.Equal(new Extent(40, 31.5, 49.5), rest.Value);
    }

    // A shaft of 40 k5 is 40.002 to 40.013 mm (ISO 286-2) and never 40: in a bore of 40.01 exactly it has −0.003 to 0.008 mm of play.
    [Fact]
    public void A_nominal_outside_of_its_limits_is_no_worst_case()
    {
        var shaft = Leaf(0, 40, -0.002, 0.013);

        var play = Quantity.Compute(Number, [shaft], x => 40.01 - x[0]).Value;

        Assert.Equal((-0.003, 0.008), (Math.Round(play.Min, 9), Math.Round(play.Max, 9)));
        Assert.Equal(0.01, play.Nominal, 1e-9);
    }

    [Fact]
    public void Leaves_in_any_order_give_the_same_bounds()
    {
        var (a, b, c) = (Leaf(0, 3, 0.1, 0.2), Leaf(1, 7, 0.3, 0.1), Leaf(2, 2, 0.05, 0.05));
        var early = Quantity.Compute(Number, [Quantity.Compute(Number, [c, a], x => x[0] * x[1]), b], x => x[0] / x[1]);
        var late = Quantity.Compute(Number, [a, Quantity.Compute(Number, [b, c], x => x[0] / x[1])], x => x[0] / x[1]);

        Assert.Equal(early.Value.Min, late.Value.Min, 12);
        Assert.Equal(early.Value.Max, late.Value.Max, 12);
    }

    [Fact]
    public void No_sample_inside_the_tolerances_leaves_the_bounds()
    {
        Gen.Select(Gen.Double[1, 10].Array[3], Gen.Double[0, 0.5].Array[6], Gen.Double[0, 1].Array[3]).Sample((nominal, deviation, place) =>
        {
            var leaves = Enumerable.Range(0, 3).Select(k => Leaf(k, nominal[k], deviation[2 * k], deviation[(2 * k) + 1])).ToArray();
            // Monotonic in each leaf: rises with the first two, falls with the third.
            static double Formula(ReadOnlySpan<double> x) => Math.Sqrt(x[0]) * x[1] / x[2];
            var result = Quantity.Compute(Number, [.. leaves], Formula).Value;

            var sample = leaves.Select((leaf, k) => leaf.Value.Min + (place[k] * (leaf.Value.Max - leaf.Value.Min))).ToArray();
            var value = Formula(sample);

            Assert.InRange(value, result.Min - 1e-9, result.Max + 1e-9);
        });
    }

    [Fact]
    public void Too_many_leaves_widen_the_bounds_and_say_so()
    {
        var leaves = Enumerable.Range(0, 12).Select(k => Leaf(k, 10, 0.1, 0.1)).ToImmutableArray();
        var left = Quantity.Compute(Number, leaves[..6], x => Sum(x));
        var right = Quantity.Compute(Number, leaves[6..], x => Sum(x));

        var all = Quantity.Compute(Number, [left, right], x => x[0] + x[1]);

        Assert.False(left.IsBounded);
        Assert.True(all.IsBounded);
        Assert.Equal(120 - 1.2, all.Value.Min, 9);
        Assert.Equal(120 + 1.2, all.Value.Max, 9);

        static double Sum(ReadOnlySpan<double> x)
        {
            var sum = 0.0;
            foreach (var each in x)
                sum += each;
            return sum;
        }
    }

    [Fact]
    public void What_builds_on_widened_bounds_is_never_narrower_than_they()
    {
        var leaves = Enumerable.Range(0, 9).Select(k => Leaf(k, 10, 0.1, 0.1)).ToImmutableArray();
        var wide = Quantity.Compute(Number, leaves, x => x[0] + x[8]);

        var half = Quantity.Compute(Number, [wide], x => x[0] / 2);

        Assert.Equal(wide.Value.Min / 2, half.Value.Min, 12);
        Assert.Equal(wide.Value.Max / 2, half.Value.Max, 12);
    }

    [Fact]
    public void A_formula_without_a_value_at_one_corner_is_not_evaluated()
    {
        var a = Leaf(0, 0.5, 1, 1);

        var root = Quantity.Compute(Number, [a], x => Math.Sqrt(x[0]));
        var refused = Quantity.Compute(Number, [a], x => x[0] < 0 ? throw new OutsideValidityException("no root of a negative number") : Math.Sqrt(x[0]));

        Assert.False(root.IsEvaluated);
        Assert.Equal("no root of a negative number", Assert.Single(refused.Reasons));
    }

    [Fact]
    public void Reasons_of_missing_inputs_pass_through_each_once()
    {
        var missing = Quantity.NotEvaluated(Number, [], "train.gears.a.module is not stated");
        var above = Quantity.Compute(Number, [missing, Leaf(0, 1, 0, 0)], x => x[0]);

        var top = Quantity.Compute(Number, [above, missing], x => x[0] + x[1]);

        Assert.Equal("train.gears.a.module is not stated", Assert.Single(top.Reasons));
    }

    // A value that a solver gives without end is no value; it says so instead of reaching a report.
    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_number_without_end_is_not_evaluated(double value)
    {
        Assert.False(Quantity.Computed(TrainQuantities.Mobility, value, []).IsEvaluated);
        Assert.False(Quantity.WithLimits(TrainQuantities.Mobility, new(1, 1, value), []).IsEvaluated);
        Assert.False(Quantity.Compute(TrainQuantities.Mobility, [], _ => value).IsEvaluated);
    }

    // 1e307 mm is 1e310 µm, which is no double.
    [Fact]
    public void A_number_that_its_unit_cannot_show_is_not_evaluated()
    {
        Assert.True(Quantity.Computed(Pins.Dowels.Circle, 1e307, []).IsEvaluated);
        Assert.False(Quantity.Computed(Pins.Dowels.Play, 1e307, []).IsEvaluated);
        Assert.False(Quantity.Compute(Pins.Dowels.Play, [], static _ => -1e307).IsEvaluated);
    }
}
