using CsCheck;
using Pawl.Mechanics.Stacks;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Stacks;

public class StackSampleTests
{
    // SplitMix64 from seed 1234567, as printed in public collections of the generator.
    [Fact]
    public void The_generator_gives_the_numbers_in_print()
    {
        var state = 1234567UL;
        ulong[] printed = [6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821];
        foreach (var number in printed)
            Assert.Equal(number, StackSample.Next(ref state));
    }

    // Closed form of two equal rectangles: a triangle; of two equal normals: a normal. N = 200 000; four standard errors.
    [Theory]
    [InlineData(SizeDistribution.Rectangular)]
    [InlineData(SizeDistribution.Normal)]
    [InlineData(SizeDistribution.Triangular)]
    public void Drawing_meets_mean_deviation_and_share_of_the_closed_form(SizeDistribution kind)
    {
        var stack = new SizeChain([new("one", 1, 9.9, 10.1, kind), new("other", -1, 8.9, 9.1, kind)]);
        var sample = StackSample.Of(stack, 42, 200_000);
        var error = stack.StandardDeviation / Math.Sqrt(sample.Draws);
        Assert.Equal(1, sample.Mean, 4 * error);
        Assert.Equal(stack.StandardDeviation, sample.StandardDeviation, 4 * error);

        // Outside ±0.05 of the middle: rectangles (1 − 0.05/0.2)²; normals by the table of the normal distribution; triangles of
        // half width 0.1, b = 0.05/0.1: the sum of four rectangles (Irwin-Hall of 4), 1 − P.
        var window = Interval.About(1, 0.05);
        var outside = kind switch
        {
            SizeDistribution.Rectangular => 0.75 * 0.75,
            SizeDistribution.Normal => 0.288844, // 2·(1 − Φ(1.06066))
            _ => 2 * IrwinHallOfFour(2 - 0.05 / 0.1),
        };
        Assert.Equal(outside, sample.ShareOutside(window), 4 * sample.Error(outside));
    }

    // Quartiles of a rectangle from 0 to 1.
    [Fact]
    public void Quantiles_of_a_single_rectangle_are_its_shares()
    {
        var sample = StackSample.Of(new SizeChain([new("one", 1, 0, 1, SizeDistribution.Rectangular)]), 7);
        foreach (var share in new[] { 0.01, 0.25, 0.5, 0.9 })
            Assert.Equal(share, sample.Quantile(share), 4 * sample.Error(share));
    }

    // The documented order of draws written once more in Python, whose numbers are IEEE 754 too: the same bits, on every machine and
    // on any number of threads.
    [Fact]
    public void A_seed_gives_the_same_bits_everywhere()
    {
        var chain = new SizeChain(
        [
            new("one", 1, 9.9, 10.1), new("other", -1, 8.9, 9.1, SizeDistribution.Triangular), new("third", -1, 0.45, 0.55, SizeDistribution.Rectangular),
        ]);
        Assert.All(Enumerable.Range(0, 8).AsParallel().Select(_ => StackSample.Of(chain, 2026, 1000)).ToArray(), sample =>
        {
            Assert.Equal(0x3fdfe1c2fdd9bfc5, BitConverter.DoubleToInt64Bits(sample.Mean));
            Assert.Equal(0x3fadd8c885fc97ad, BitConverter.DoubleToInt64Bits(sample.StandardDeviation));
            Assert.Equal(0x3fdd4f9c3395d579, BitConverter.DoubleToInt64Bits(sample.Quantile(0.25)));
        });
        Assert.NotEqual(0x3fdfe1c2fdd9bfc5, BitConverter.DoubleToInt64Bits(StackSample.Of(chain, 2027, 1000).Mean));
    }

    [Fact]
    public void Warmth_moves_every_gap()
    {
        var stack = new SizeChain([new("one", 1, 0, 1)]);
        Assert.Equal(StackSample.Of(stack, 3).Mean + 0.5, StackSample.Of(stack, 3, warmth: 0.5).Mean, 1e-9);
    }

    [Fact]
    public void Too_few_draws_are_refused() =>
        Refusal.Says("from 100 to 10000000 assemblies", () => StackSample.Of(new SizeChain([new("one", 1, 0, 1)]), 3, 99).Mean);

    // Sum of four rectangles from 0 to 1 below x, 1 ≤ x ≤ 2: (x⁴ − 4·(x − 1)⁴)/24.
    private static double IrwinHallOfFour(double x) => (Math.Pow(x, 4) - 4 * Math.Pow(x - 1, 4)) / 24;
}
