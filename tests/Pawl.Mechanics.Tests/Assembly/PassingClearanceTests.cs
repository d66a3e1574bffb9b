using Pawl.Mechanics.Assembly;

namespace Pawl.Mechanics.Tests.Assembly;

public sealed class PassingClearanceTests
{
    // Closed form.
    [Theory]
    [InlineData(34.5, 11.5, 16, 7)]
    [InlineData(24, 10, 25, -11)]
    public void A_pinion_clears_a_sun_by_what_the_tip_radii_leave(
        double centreDistance, double pinion, double sun, double clearance) =>
        Assert.Equal(clearance, PassingClearance.Sun(centreDistance, pinion, sun), 12);

    // Closed form; a ring's radius counts the same when its sign is negative.
    [Theory]
    [InlineData(60)]
    [InlineData(-60)]
    public void A_pinion_clears_a_ring_from_inside(double ring) =>
        Assert.Equal(5, PassingClearance.Ring(40, 15, ring), 12);
}
