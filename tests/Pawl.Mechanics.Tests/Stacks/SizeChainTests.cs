using CsCheck;
using Pawl.Mechanics.Stacks;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Stacks;

public class SizeChainTests
{
    // Housing 50 ± 0.1, bearing 20 ± 0.05, spacer 29.8 ± 0.05: the gap of the textbooks' box with parts in it.
    private static readonly SizeChain Box = new(
    [
        new("housing", 1, 49.9, 50.1), new("bearing", -1, 19.95, 20.05), new("spacer", -1, 29.75, 29.85),
    ]);

    private static readonly Gen<Contributor> Part = Gen.Select(
        Gen.Double[-2, 2], Gen.Double[1, 100], Gen.Double[0.001, 0.3], Gen.Enum<SizeDistribution>(), Gen.Double[0.7, 2], Gen.Double[0, 25e-6])
        .Select((c, size, width, kind, capability, expansion) => new Contributor("part", c, size, size + width, kind, capability, expansion));

    // 0.2 ± 0.2 worst case; √(0.1² + 2·0.05²) = 0.1225.
    [Fact]
    public void A_box_with_parts_is_worked_by_hand()
    {
        Assert.Equal(0.2, Box.Middle, 1e-9);
        Assert.Equal(0.0, Box.WorstCase.Min, 1e-9);
        Assert.Equal(0.4, Box.WorstCase.Max, 1e-9);
        Assert.Equal(0.2 - 0.12247, Box.RootSumSquare().Min, 1e-5);
        Assert.Equal(0.2 + 1.5 * 0.12247, Box.RootSumSquare(1.5).Max, 1e-5);
        Assert.Equal(0.040825, Box.StandardDeviation, 1e-6);
    }

    // 0.1²/(0.1² + 2·0.05²) = 2/3 of the variance and half of the worst case.
    [Fact]
    public void The_widest_part_comes_first()
    {
        var shares = Box.Shares;
        Assert.Equal("housing", shares[0].Name);
        Assert.Equal(2.0 / 3, shares[0].OfVariance, 1e-9);
        Assert.Equal(0.5, shares[0].OfWorstCase, 1e-9);
    }

    // One-sided limits: a ring of 20 0/−0.12 has its middle at 19.94.
    [Fact]
    public void The_middle_is_that_of_the_limits_not_the_nominal() => Assert.Equal(19.94, new Contributor("ring", -1, 19.88, 20).Middle, 1e-12);

    // Variances: rectangular ±0.05: 0.05/√3; triangular ±0.06: 0.06/√6; together 0.03786.
    [Fact]
    public void Deviations_of_the_distributions_add_up() =>
        Assert.Equal(0.03786, new SizeChain(
        [
            new("one", 1, -0.05, 0.05, SizeDistribution.Rectangular), new("other", 1, -0.06, 0.06, SizeDistribution.Triangular),
        ]).StandardDeviation, 5e-6);

    // Aluminium 60 mm at 70 °C, steel 59.98 at 70 °C: 60·23e-6·50 − 59.98·11.5e-6·50 = 0.034512.
    [Fact]
    public void A_hot_box_is_worked_by_hand()
    {
        var stack = new SizeChain(
        [
            new("housing", 1, 60, 60, expansion: 23e-6, temperature: 70), new("shaft", -1, 59.98, 59.98, expansion: 11.5e-6, temperature: 70),
        ]);
        Assert.Equal(0.02, stack.Middle, 1e-9);
        Assert.Equal(-0.8 * 0.034512, stack.WarmthAt(-20), 1e-6);
    }

    // Tables of the normal distribution, in every book of statistics: 0.27 % beyond ±3σ, 4.55 % beyond ±2σ, 31.73 % beyond ±σ.
    [Theory]
    [InlineData(1, 0.317311)]
    [InlineData(2, 0.0455003)]
    [InlineData(3, 0.00269980)]
    [InlineData(4, 6.33425e-5)]
    public void Shares_outside_match_the_table(int sigmas, double outside)
    {
        var reach = sigmas * Box.StandardDeviation;
        Assert.Equal(1, 2 * NormalDistribution.Share(-sigmas) / outside, 2e-6);
        Assert.Equal(sigmas / 3.0, Box.Capability(Interval.About(Box.Middle, reach)), 1e-9);
    }

    // Math.NET Numerics, inverse of the cumulative normal distribution.
    [Fact]
    public void Quantiles_are_those_of_a_library() =>
        Gen.OneOf(Gen.Double[1e-12, 1 - 1e-9], Gen.Double[1e-300, 1e-6]).Sample(share =>
        {
            var expected = MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, share);
            return Math.Abs(NormalDistribution.Quantile(share) - expected) <= 1e-9 * Math.Max(1, Math.Abs(expected));
        }, iter: 5000);

    [Fact]
    public void Shares_are_those_of_a_library() =>
        Gen.Double[-9, 9].Sample(value => Math.Abs(NormalDistribution.Share(value) / MathNet.Numerics.Distributions.Normal.CDF(0, 1, value) - 1) < 1e-9, iter: 5000);

    [Fact]
    public void Shares_and_quantiles_undo_each_other() =>
        Gen.Double[-8, 5].Sample(value => Math.Abs(NormalDistribution.Quantile(NormalDistribution.Share(value)) - value) < 1e-9, iter: 5000);

    [Fact]
    public void The_worst_case_holds_the_root_sum_of_squares_and_any_pick_of_parts() =>
        Gen.Select(Part.Where(part => part.Coefficient != 0).Array[1, 6], Gen.Double[0, 1].Array[6]).Sample((parts, picks) =>
        {
            var stack = new SizeChain([.. parts]);
            var gap = parts.Select((part, index) => part.Coefficient * (part.Lower + picks[index] * (part.Upper - part.Lower))).Sum();
            var worst = new Interval(stack.WorstCase.Min - 1e-9, stack.WorstCase.Max + 1e-9);
            return worst.Contains(gap) && worst.Contains(stack.RootSumSquare())
                && Math.Abs(stack.Shares.Sum(share => share.OfVariance) - 1) < 1e-9
                && Math.Abs(stack.Shares.Sum(share => share.OfWorstCase) - 1) < 1e-9;
        });

    [Fact]
    public void Chains_that_are_none_are_refused()
    {
        Refusal.Says("at least one size", () => new SizeChain([]).Middle);
        Refusal.Says("must not be above its greatest", () => new Contributor("ring", 1, 2, 1).Middle);
        Refusal.Says("the process capability must be above zero", () => new Contributor("ring", 1, 1, 2, capability: 0).Middle);
        Refusal.Says("must be 1 or more", () => Box.RootSumSquare(0.9).Min);
        Refusal.Says("between 0 and 1", () => NormalDistribution.Quantile(1));
    }
}
