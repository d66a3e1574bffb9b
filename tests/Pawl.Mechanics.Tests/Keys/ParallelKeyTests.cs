using Pawl.Mechanics.Keys;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Keys;

/// <summary>Parallel keys against DIN 6885-1 and a worked example of a textbook.</summary>
public sealed class ParallelKeyTests
{
    // DIN 6885-1, section and depths by diameter, as public trade pages print them: 6 to 58 mm one, 38 to 110 mm another.
    [Theory]
    [InlineData(8, 2, 2, 1.2, 1.0)]
    [InlineData(12, 4, 4, 2.5, 1.8)]
    [InlineData(17, 5, 5, 3.0, 2.3)]
    [InlineData(22, 6, 6, 3.5, 2.8)]
    [InlineData(22.1, 8, 7, 4.0, 3.3)]
    [InlineData(30, 8, 7, 4.0, 3.3)]
    [InlineData(38, 10, 8, 5.0, 3.3)]
    [InlineData(44, 12, 8, 5.0, 3.3)]
    [InlineData(50, 14, 9, 5.5, 3.8)]
    [InlineData(58, 16, 10, 6.0, 4.3)]
    [InlineData(65, 18, 11, 7.0, 4.4)]
    [InlineData(75, 20, 12, 7.5, 4.9)]
    [InlineData(85, 22, 14, 9.0, 5.4)]
    [InlineData(95, 25, 14, 9.0, 5.4)]
    [InlineData(110, 28, 16, 10.0, 6.4)]
    public void Sections_are_those_of_the_standard(double diameter, double width, double height, double shaft, double hub)
    {
        var key = ParallelKey.For(diameter);

        Assert.Equal((width, height, shaft, hub), (key.Width, key.Height, key.ShaftDepth, key.HubDepth));
    }

    // Closed form: a key fills both keyways but for a gap at its back, which no standard section lets vanish.
    [Fact]
    public void Both_keyways_together_are_deeper_than_the_key()
    {
        Assert.All(ParallelKey.All, key => Assert.InRange(key.ShaftDepth + key.HubDepth - key.Height, 0.15, 0.5));
        Assert.All(ParallelKey.All.Zip(ParallelKey.All.Skip(1)), pair => Assert.Equal(pair.First.UpTo, pair.Second.Above));
    }

    [Theory]
    [InlineData(6)]
    [InlineData(110.1)]
    [InlineData(0)]
    [InlineData(double.NaN)]
    public void A_diameter_outside_the_table_has_no_section(double diameter) => Assert.Throws<OutsideValidityException>(() => ParallelKey.For(diameter));

    // Shigley, Mechanical Engineering Design, example on keys, recalled: 4200 lbf·in on a shaft of 1 7/16 in, square key of 3/8 in, S_y = 65 kpsi,
    // design factor 1.5: F = 5850 lbf; l = 0.624 in for shear at 0.577·S_y, 0.720 in for crushing of half the height.
    [Fact]
    public void A_textbook_key_has_the_lengths_of_the_textbook()
    {
        const double Inch = 25.4, Pound = 4.4482216, Ksi = 6.894757;
        var force = ParallelKey.Force(4200 * Pound * Inch, 1.4375 * Inch);

        Assert.Equal(5850, force / Pound, 5850 * 0.002);
        Assert.Equal(0.577 * 65 / 1.5, ParallelKey.Stress(force, 0.624 * Inch, 0.375 * Inch, 1) / Ksi, 0.1);
        Assert.Equal(65 / 1.5, ParallelKey.Stress(force, 0.720 * Inch, 0.1875 * Inch, 1) / Ksi, 0.1);
    }

    // Closed form.
    [Theory]
    [InlineData(28, 8, 2, 30, 20)]
    [InlineData(28, 8, 1, 30, 24)]
    [InlineData(28, 8, 0, 30, 28)]
    [InlineData(60, 8, 2, 30, 39)]
    public void Round_ends_do_not_bear_and_neither_does_what_exceeds_1_3_diameters(double length, double width, int round, double diameter, double expected) =>
        Assert.Equal(expected, ParallelKey.BearingLength(length, width, round, diameter), 12);

    [Fact]
    public void A_key_no_longer_than_its_round_ends_bears_nothing() =>
        Assert.Throws<OutsideValidityException>(() => ParallelKey.BearingLength(8, 8, 2, 30));

    // DIN 6892, method C, from memory.
    [Fact]
    public void Two_keys_count_as_one_and_a_half()
    {
        Assert.Equal((1, 1.5), (ParallelKey.Effective(1), ParallelKey.Effective(2)));
        Assert.Throws<OutsideValidityException>(() => ParallelKey.Effective(3));
    }

    // Torsion of tubes in handbooks: W_p = π·(D⁴ − d⁴)/(16·D). A thin tube of mean radius r and wall t has τ = T/(2·π·r²·t), Bredt.
    [Fact]
    public void The_hub_beyond_its_keyway_is_a_tube()
    {
        Assert.Equal(8.7, ParallelKey.HubWall(54, 30, 3.3), 1e-12);
        Assert.Equal(120_000 / (Math.PI * (Math.Pow(54, 4) - Math.Pow(36.6, 4)) / (16 * 54)), ParallelKey.HubShear(120_000, 54, 30, 3.3), 1e-9);
        Assert.Equal(1e6 / (2 * Math.PI * 50 * 50 * 0.1), ParallelKey.HubShear(1e6, 100.1, 90, 4.95), 0.002 * 1e6 / (2 * Math.PI * 50 * 50 * 0.1));
        Refusal.Says("the wall of the hub", () => ParallelKey.HubShear(1, 36, 30, 3.3));
    }
}
