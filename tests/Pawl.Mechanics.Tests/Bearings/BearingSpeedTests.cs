using CsCheck;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Bearings;

public class BearingSpeedTests
{
    private const double Rpm = Math.PI / 30;

    // A lubricant guide on a public page: bore 100 mm, outside 130 mm, 1000 1/min: nD = 115 000.
    [Fact]
    public void The_speed_number_of_a_public_guide_is_met() =>
        Assert.Equal(115_000, BearingSpeed.Number(1000 * Rpm, BearingSpeed.MeanDiameter(100, 130)), 1e-6);

    // Common practice: open balls in grease about half a million; cages of needles less; rollers without a cage least; jets a
    // million.
    [Fact]
    public void Guides_stand_in_the_order_the_trade_has_them()
    {
        Assert.Equal(500_000, BearingSpeed.Guide("deep groove ball", "grease").Max);
        Assert.True(BearingSpeed.Guide("deep groove ball", "contact seals").Max < BearingSpeed.Guide("deep groove ball", "grease").Max);
        Assert.True(BearingSpeed.Guide("needle roller", "bath").Max <= BearingSpeed.Guide("deep groove ball", "bath").Max);
        Assert.True(BearingSpeed.Guide("needle roller full complement", "bath").Max < BearingSpeed.Guide("needle roller", "bath").Min);
        Assert.Equal(1e6, BearingSpeed.Guide("angular contact ball", "jet").Min);
        Refusal.Says("no guide to the speed of a tapered roller bearing with jet", () => BearingSpeed.Guide("tapered roller", "jet").Min);
    }

    // Rolling without slip: where a ball touches a ring, both have the speed of that ring. Inner radius (D_pw − D_w)/2, outer
    // (D_pw + D_w)/2; the ball's centre has the mean of both.
    [Fact]
    public void The_cage_runs_at_the_mean_of_what_the_rings_do_to_a_ball() =>
        Gen.Select(Gen.Double[-500, 500], Gen.Double[-500, 500], Gen.Double[20, 100], Gen.Double[2, 15]).Sample((inner, outer, pitch, ball) =>
            Math.Abs(BearingSpeed.Cage(inner, outer, ball / pitch) * pitch / 2
                - (inner * (pitch - ball) / 2 + outer * (pitch + ball) / 2) / 2) < 1e-6);

    // A ball of 7.938 mm weighs 7850 kg/m³ · 0.2619 cm³ = 2.056 g; on 33.5 mm at 15 000 1/min of the inner ring: 12.37 N and 5.12
    // N.
    [Theory]
    [InlineData(BearingSpeed.SteelDensity, 12.368)]
    [InlineData(BearingSpeed.SiliconNitrideDensity, 5.1205)]
    public void The_centrifugal_force_of_a_ball_is_worked_beside(double density, double expected)
    {
        var cage = BearingSpeed.Cage(15_000 * Rpm, 0, 7.938 / 33.5);
        Assert.Equal(expected, BearingSpeed.Centrifugal(BearingSpeed.BallMass(7.938, density), 33.5, cage), expected * 1e-3);
    }

    [Fact]
    public void A_ball_of_steel_is_weighed() => Assert.Equal(2.056e-6, BearingSpeed.BallMass(7.938, BearingSpeed.SteelDensity), 0.001e-6);

    [Fact]
    public void Impossible_bearings_are_refused()
    {
        Refusal.Says("the outside diameter must be above the bore", () => BearingSpeed.MeanDiameter(20, 20));
        Refusal.Says("γ must lie from 0 to below 1", () => BearingSpeed.Cage(1, 0, 1));
    }
}
