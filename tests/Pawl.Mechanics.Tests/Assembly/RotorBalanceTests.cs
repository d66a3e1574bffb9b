using Pawl.Mechanics.Assembly;

namespace Pawl.Mechanics.Tests.Assembly;

public class RotorBalanceTests
{
    private static double Turns(double perMinute) => perMinute * Math.PI / 30;

    // Diagram of permissible residual specific unbalance, ISO 21940-11 (before: ISO 1940-1), as read off it: µm at 1/min, from memory.
    [Theory]
    [InlineData(6.3, 3000, 20, 0.3)]
    [InlineData(2.5, 3000, 8, 0.1)]
    [InlineData(16, 1500, 100, 3)]
    [InlineData(1, 9500, 1, 0.01)]
    public void The_permissible_eccentricity_is_that_of_the_diagram(double grade, double speed, double micrometres, double tolerance) =>
        Assert.Equal(micrometres, 1000 * RotorBalance.PermittedEccentricity(grade, Turns(speed)), tolerance);

    // A tool catalogue's worked example of the formula U_per = 9549·G·m/n of ISO 1940-1, in print: 2 kg, G 6.3, 10 000 1/min: 12 g·mm.
    [Fact]
    public void A_rotor_of_2_kg_at_10_000_turns_may_keep_12_gram_millimetres()
    {
        var permitted = RotorBalance.PermittedEccentricity(6.3, Turns(10_000));

        Assert.Equal(12, 2000 * permitted, tolerance: 0.05);
        Assert.Equal(9549 * 6.3 * 2 / 10_000, 2000 * permitted, tolerance: 0.001);
    }

    // The sense of rotation does not matter.
    [Fact]
    public void A_reversed_rotor_is_judged_alike() =>
        Assert.Equal(RotorBalance.PermittedEccentricity(2.5, 300), RotorBalance.PermittedEccentricity(2.5, -300));

    // A ring of 0.5 kg off by 40 µm on a shaft that makes 2 kg with it: (0.5·40)/2 = 10 µm beside 5 µm of its own; 2 kg·15 µm·(100 rad/s)² = 0.3 N.
    [Fact]
    public void A_part_off_centre_counts_by_its_share_of_the_mass()
    {
        var eccentricity = RotorBalance.Eccentricity(0.005, 0.040, 0.25);

        Assert.Equal(0.015, eccentricity, 1e-12);
        Assert.Equal(0.3, RotorBalance.Force(0.002, eccentricity, 100), 1e-12);
    }

    [Fact]
    public void A_part_heavier_than_its_body_is_refused() =>
        Assert.Contains("heavier than the body", Assert.Throws<OutsideValidityException>(() => RotorBalance.Eccentricity(0, 0.01, 1.2)).Message, StringComparison.Ordinal);

    // ISO 21940-11, table 1, from memory: gears stand with machinery in general.
    [Fact]
    public void Gears_are_balanced_to_6_3() => Assert.Equal(6.3, RotorBalance.GradeOfGears());
}
