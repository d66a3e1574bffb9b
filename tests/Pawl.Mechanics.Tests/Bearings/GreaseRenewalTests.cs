using Pawl.Mechanics.Bearings;

namespace Pawl.Mechanics.Tests.Bearings;

public class GreaseRenewalTests
{
    private static double Hours(string kind, double bore, double speed, double temperature = 60, double share = 0.05) =>
        GreaseRenewal.IntervalInHours(GreaseRenewal.FactorOf(kind), bore, speed * Math.PI / 30, temperature, share);

    // 14·10⁶/(1800·√45) − 180 = 979.4 h by hand: ten times that for a ball bearing, five times for a cylindrical roller bearing, once for a tapered one.
    [Theory]
    [InlineData("deep-groove-ball", 9794.4)]
    [InlineData("angular-contact-ball", 9794.4)]
    [InlineData("cylindrical-roller", 4897.2)]
    [InlineData("needle-cage", 4897.2)]
    [InlineData("tapered-roller", 979.44)]
    public void The_interval_goes_by_the_kind(string kind, double hours) => Assert.Equal(hours, Hours(kind, 45, 1800), 0.1);

    // Halved each 15 K above 70 °C, and by the load.
    [Theory]
    [InlineData(70, 0.1, 1)]
    [InlineData(85, 0.1, 0.5)]
    [InlineData(100, 0.1, 0.25)]
    [InlineData(60, 0.15, 0.5)]
    [InlineData(85, 0.25, 0.125)]
    public void Heat_and_load_shorten_it(double temperature, double share, double part) =>
        Assert.Equal(part * Hours("deep-groove-ball", 45, 1800), Hours("deep-groove-ball", 45, 1800, temperature, share), 1e-6);

    // Next to standing still some five years; where 14·10⁶/(n·√d) falls below 4·d no grease serves.
    [Fact]
    public void It_ends_at_five_years_and_at_nothing()
    {
        Assert.Equal(40_000, Hours("deep-groove-ball", 20, 10));
        Assert.Equal(0, Hours("deep-groove-ball", 100, 5000));
    }

    [Fact]
    public void A_kind_that_the_rule_does_not_know_is_refused() =>
        Assert.Contains("no factor of toroidal", Assert.Throws<OutsideValidityException>(() => Hours("toroidal", 45, 1800)).Message, StringComparison.Ordinal);
}
