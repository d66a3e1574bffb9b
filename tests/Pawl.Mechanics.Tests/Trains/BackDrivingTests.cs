using CsCheck;
using Pawl.Mechanics.Tests.Rating;
using Pawl.Mechanics.Trains;

namespace Pawl.Mechanics.Tests.Trains;

public class BackDrivingTests
{
    // Textbooks of machine design: what has an efficiency of one half or less locks itself. 90 % forward leave 8/9 = 88.9 % back.
    [Theory]
    [InlineData(1, 1)]
    [InlineData(0.9, 0.888889)]
    [InlineData(0.5, 0)]
    [InlineData(0.4, -0.5)]
    public void Half_the_power_lost_is_the_limit(double forward, double back) => Assert.Equal(back, BackDriving.Efficiency(forward), 1e-6);

    [Fact]
    public void The_loss_is_the_same_in_both_directions() =>
        Gen.Double[0.51, 1].Sample(forward =>
        {
            // Forward: 1 in, η out. Back: η in at the output, less the same loss 1 − η, is what the input gives.
            var given = forward - (1 - forward);
            return Math.Abs(given / forward - BackDriving.Efficiency(forward)) < 1e-12;
        });

    [Fact]
    public void An_efficiency_above_one_is_refused()
    {
        Refusal.Says("the efficiency must lie above 0 and up to 1", () => BackDriving.Efficiency(1.1));
        Refusal.Says("the efficiency must lie above 0 and up to 1", () => BackDriving.Efficiency(0));
    }
}
