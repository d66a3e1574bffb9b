using CsCheck;
using Pawl.Mechanics.Assembly;

namespace Pawl.Mechanics.Tests.Assembly;

public sealed class BalanceTests
{
    // Statics: forces at equal angles cancel; two at a right angle give √2.
    [Fact]
    public void Equal_spacing_balances_and_a_right_angle_does_not()
    {
        Assert.Equal(0, PlanetPositions.Equal(3).Unbalance);
        Assert.Equal(0, PlanetPositions.Equal(7).Unbalance);
        Assert.Equal(Math.Sqrt(2), Balance.Unbalance([0, Math.PI / 2]), 12);
        Assert.Equal(1, PlanetPositions.Equal(1).Unbalance, 12);
    }

    // Law: turning the carrier leaves the unbalance.
    [Fact]
    public void Unbalance_does_not_depend_on_where_the_carrier_stands() =>
        Gen.Select(Gen.Double[0, 6].Array[1, 6], Gen.Double[0, 6]).Sample((positions, turned) =>
            Assert.Equal(
                Balance.Unbalance(positions), Balance.Unbalance(Array.ConvertAll(positions, angle => angle + turned)), 9));

    // Units by hand: 0.07 · 0.5 kg · 45 mm · (10/s)² = 0.07 · 0.5 · 0.045 · 100 N = 0.1575 N; 0.5 kg = 0.0005 t.
    [Fact]
    public void Unbalance_force_is_in_newtons() =>
        Assert.Equal(0.1575, Balance.UnbalanceForce(0.07, 0.0005, 45, 10), 12);

    // By hand: the moments of a pair add up in line, cancel opposite each other, and make the long side of 3-4-5 at a right angle.
    [Theory]
    [InlineData(0, 7)]
    [InlineData(Math.PI / 2, 5)]
    [InlineData(Math.PI, 1)]
    public void The_planets_of_a_pair_pull_together(double angle, double moment) =>
        Assert.Equal(2 * moment * 9, Balance.PairUnbalanceForce(2, 0.1, 30, 0.1, 40, angle, 3), 9);
}
