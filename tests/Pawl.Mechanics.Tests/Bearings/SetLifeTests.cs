using CsCheck;
using MathNet.Numerics.Distributions;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Bearings;

public class SetLifeTests
{
    private const double Ball = 10.0 / 9;
    private const double Roller = 9.0 / 8;

    private static readonly Gen<(double Life, double Exponent)> Bearing = Gen.Select(Gen.Double[10, 1e5], Gen.Bool.Select(static ball => ball ? Ball : Roller));

    // ISO 281 and ISO/TR 1281-1: e = 10/9 for point contact, 9/8 for line contact.
    [Theory]
    [InlineData(BearingKind.DeepGrooveBall, Ball)]
    [InlineData(BearingKind.CylindricalRoller, Roller)]
    [InlineData(BearingKind.NeedleRoller, Roller)]
    public void Exponents_are_those_of_ISO(BearingKind kind, double expected) => Assert.Equal(expected, SetLife.Exponent(new(kind)));

    // Lundberg and Palmgren, as every textbook of rolling bearings has it: n like bearings of life L reach L·n^(−1/e): two of balls
    // 0.5359·L, two of rollers 0.5400·L; 1/e = 0.9 and 8/9.
    [Theory]
    [InlineData(2, Ball, 0.53589)]
    [InlineData(2, Roller, 0.54003)]
    [InlineData(8, Ball, 0.15389)]
    [InlineData(6, Roller, 0.20338)]
    public void Like_bearings_live_shorter_by_their_number(int count, double exponent, double expected) =>
        Assert.Equal(expected, SetLife.Time([.. Enumerable.Repeat((1.0, exponent), count)]), 1e-5);

    // Closed form by hand: 10 000 h and 20 000 h of balls: (1 + 2^(−10/9))^(−0.9)·10 000 = 1.46294^(−0.9)·10 000 = 7101 h.
    [Fact]
    public void Two_unlike_ball_bearings_by_hand() => Assert.Equal(7100.6, SetLife.Time([(10_000, Ball), (20_000, Ball)]), 0.5);

    // The Weibull distribution of MathNet.Numerics, whose series for small exponents end some 10⁻⁸ short: scale λ from 1 − CDF(L₁₀) = 0.9; all live with the product of what each has.
    [Fact]
    public void Survivors_are_the_product_of_Weibull_distributions() =>
        Gen.Select(Bearing.Array[1, 8], Gen.Double[1, 1e5]).Sample((lives, time) =>
        {
            var expected = Survivors(lives, time);
            return Math.Abs(SetLife.Reliability(time, lives) - expected) <= 1e-6;
        });

    [Fact]
    public void The_life_of_balls_and_rollers_leaves_the_share_that_was_asked_for() =>
        Gen.Select(Bearing.Array[1, 8], Gen.Double[0.05, 0.9999]).Sample((lives, reliability) =>
            Math.Abs(Survivors(lives, SetLife.Time(lives, reliability)) - reliability) <= 1e-6);

    // e = 10/9 and 9/8 of like lives: between the closed forms of two of either kind.
    [Fact]
    public void A_mixed_pair_lies_between_its_kinds() =>
        Assert.InRange(SetLife.Time([(1, Ball), (1, Roller)]), 0.53589, 0.54003);

    [Fact]
    public void Another_bearing_never_lengthens_the_life() =>
        Gen.Select(Bearing.Array[1, 6], Bearing).Sample((lives, more) => SetLife.Time([.. lives, more]) <= SetLife.Time(lives) * (1 + 1e-12));

    [Fact]
    public void What_is_no_life_is_refused()
    {
        Refusal.Says("a group needs bearings", () => SetLife.Time([]));
        Refusal.Says("the life of a bearing must be above zero", () => SetLife.Time([(1, Ball), (0, Ball)]));
        Refusal.Says("the Weibull exponent must be above zero", () => SetLife.Reliability(1, [(1, double.NaN)]));
        Refusal.Says("a reliability lies above 0 and below 1; it is 1", () => SetLife.Time([(1, Ball)], 1));
        Refusal.Says("the time must not be below zero", () => SetLife.Reliability(-1, [(1, Ball)]));
    }

    private static double Survivors((double Life, double Exponent)[] lives, double time) => lives.Aggregate(1.0, (all, each) =>
        all * (1 - Weibull.CDF(each.Exponent, each.Life / Math.Pow(-Math.Log(0.9), 1 / each.Exponent), time)));
}
