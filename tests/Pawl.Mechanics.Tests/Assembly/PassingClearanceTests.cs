using CsCheck;
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

    // Closed form: radii of full-addendum unshifted gears, ISO 53 profile (h_a* = 1).
    [Fact]
    public void The_pinion_cancels_from_the_clearance_of_an_unshifted_wide_pinion() =>
        Gen.Select(Groups.Teeth, Groups.Teeth, Groups.Teeth, Gen.Double[0, 0.6]).Sample((own, passed, pinion, helix) =>
        {
            var transverse = 2 / Math.Cos(helix);
            var clearance = PassingClearance.Sun(
                transverse * (own + pinion) / 2, transverse * pinion / 2 + 2, transverse * passed / 2 + 2);

            Assert.Equal(clearance, PassingClearance.UnshiftedWidePinion(2, own, passed, helix), 9);
            Assert.Equal(own - passed - 4, PassingClearance.UnshiftedWidePinion(2, own, passed), 9);
        });

    // Closed form: i = 1 + z_s2/z_s1, sun 1 driving, sun 2 held, carrier driven.
    [Fact]
    public void Two_planes_close_only_the_ratios_about_two() =>
        Gen.Select(Groups.Teeth, Groups.Teeth).Sample((sun1, sun2) =>
        {
            var ratio = 1 + (double)sun2 / sun1;
            var wideOnSun1 = PassingClearance.UnshiftedWidePinion(1, sun1, sun2) > 0;
            var wideOnSun2 = PassingClearance.UnshiftedWidePinion(1, sun2, sun1) > 0;

            Assert.True(!wideOnSun1 || ratio < 2);
            Assert.True(!wideOnSun2 || ratio > 2);
            Assert.Equal(Math.Abs(sun1 - sun2) <= 4, !wideOnSun1 && !wideOnSun2);
        });
}
