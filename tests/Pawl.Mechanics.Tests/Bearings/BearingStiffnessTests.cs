using CsCheck;
using Pawl.Mechanics.Bearings;

namespace Pawl.Mechanics.Tests.Bearings;

public class BearingStiffnessTests
{
    // A ball bearing of bore 45 mm in a textbook of rolling bearings, from memory: 9 balls of 12.7 mm, 8900 N, no play; Hertz's contacts give
    // 4.536 kN on the heaviest ball and an approach of 0.0605 mm. Palmgren's constants are rounder.
    [Fact]
    public void The_approach_of_balls_is_near_that_of_hertz() =>
        Assert.InRange(BearingStiffness.BallApproach(8900, 9, 12.7) / 0.0605, 0.85, 1.15);

    // 5·1000/10 = 500 N; 4.36e-4·(250 000/10)^(1/3) = 0.012748 mm; 1500/0.012748 = 117 660 N/mm.
    [Fact]
    public void Balls_are_worked_by_hand()
    {
        Assert.Equal(0.0127485, BearingStiffness.BallApproach(1000, 10, 10), 1e-6);
        Assert.Equal(117_661, BearingStiffness.OfBalls(1000, 10, 10), 10.0);
    }

    // 500 N on a roller of 10 mm: 7.68e-5·500^0.9/10^0.8 = 7.68e-5·268.57/6.3096 = 0.0032690 mm; 1000/(0.9·0.003269) = 339 890 N/mm.
    [Fact]
    public void Rollers_are_worked_by_hand()
    {
        Assert.Equal(0.0032690, BearingStiffness.RollerApproach(1000, 10, 10), 1e-6);
        Assert.Equal(339_900, BearingStiffness.OfRollers(1000, 10, 10), 100.0);
    }

    [Fact]
    public void Stiffness_is_the_slope_of_load_over_approach() =>
        Gen.Select(Gen.Double[10, 1e5], Gen.Double[5, 30], Gen.Double[2, 30], Gen.Double[0, 0.7]).Sample((load, elements, size, angle) =>
        {
            var step = load * 1e-5;
            Assert.Equal(
                1,
                BearingStiffness.OfBalls(load, elements, size, angle)
                    * (BearingStiffness.BallApproach(load + step, elements, size, angle) - BearingStiffness.BallApproach(load - step, elements, size, angle)) / (2 * step),
                1e-6);
            Assert.Equal(
                1,
                BearingStiffness.OfRollers(load, elements, size, angle)
                    * (BearingStiffness.RollerApproach(load + step, elements, size, angle) - BearingStiffness.RollerApproach(load - step, elements, size, angle)) / (2 * step),
                1e-6);
        });
}
