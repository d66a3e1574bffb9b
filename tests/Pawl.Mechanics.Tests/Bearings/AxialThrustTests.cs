using CsCheck;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Bearings;

public class AxialThrustTests
{
    // Statics of a helical gear, F_a = F_t·tan β: 1000 N at 15° push with 267.95 N. Driven by the load with half the torque they pull back with half of
    // it; 50 N of a coupled machine act either way.
    [Theory]
    [InlineData(1, 0, 0, 267.949)]
    [InlineData(-1, 0, 0, 0)]
    [InlineData(-1, 0.5, 0, 133.975)]
    [InlineData(1, 0.5, 50, 317.949)]
    [InlineData(-1, 0, 50, 50)]
    public void The_thrust_of_helical_teeth_turns_with_the_torque(double way, double reverse, double lasting, double along) =>
        Assert.Equal(along, AxialThrust.Along(way * 1000 * Math.Tan(Math.PI / 12), reverse, lasting), 1e-3);

    // Both ways together: what pushes one way in the drive pushes the other way by its share, and nothing is lost.
    [Fact]
    public void Both_directions_share_the_thrust() =>
        Gen.Select(Gen.Double[-5000, 5000], Gen.Double[0, 1]).Sample((teeth, reverse) =>
            Math.Abs(AxialThrust.Along(teeth, reverse, 0) + AxialThrust.Along(-teeth, reverse, 0) - Math.Abs(teeth) * (1 + reverse)) < 1e-9);

    [Fact]
    public void A_ratio_below_zero_is_refused()
    {
        Refusal.Says("the ratio of the torques must not be below zero", () => AxialThrust.Along(100, -0.5, 0));
        Refusal.Says("the lasting axial force must not be below zero", () => AxialThrust.Along(100, 0.5, -1));
    }
}
