using CsCheck;
using Pawl.Mechanics.Shafts;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Shafts;

public class CriticalSpeedTests
{
    private const double Inch = 25.4;
    private const double Pound = 4.4482216152605; // force, N
    private const double Fall = 9806.65;
    private const double Steel = 30e6 * Pound / (Inch * Inch);

    // Shigley, Mechanical Engineering Design, 9th ed., example 7-5: shaft of 1 in, span 31 in, 35 lbf at 7 in, 55 lbf at 20 in,
    // E = 30e6 psi; the page prints equivalent loads at midspan of 17.1 and 46.1 lbf. Influence coefficients 2.061e-4, 2.224e-4,
    // 3.534e-4 in/lbf: from memory. With them by hand, Σ w·y = 2.1778, Σ w·y² = 0.05399: √(386.1·2.1778/0.05399) = 124.8 rad/s.
    [Fact]
    public void Two_gears_on_a_shaft_match_a_textbook_example()
    {
        ShaftMass[] masses = [new(7 * Inch, 35 * Pound / Fall), new(20 * Inch, 55 * Pound / Fall), new(15.5 * Inch, 1)];
        var influences = CriticalSpeed.Influences(0, [new(31 * Inch, new(Inch))], Steel, [new(0, true), new(31 * Inch, false)], masses);
        var unit = Inch / Pound;
        Assert.Equal(2.061e-4, influences[0][0] / unit, 5e-8);
        Assert.Equal(2.224e-4, influences[0][1] / unit, 5e-8);
        Assert.Equal(3.534e-4, influences[1][1] / unit, 5e-8);
        Assert.Equal(17.1, 35 * influences[0][0] / influences[2][2], 0.05);
        Assert.Equal(46.1, 55 * influences[1][1] / influences[2][2], 0.05);

        double[] weights = [35 * Pound, 55 * Pound];
        double[] sags = [.. new[] { 0, 1 }.Select(row => weights[0] * influences[row][0] + weights[1] * influences[row][1])];
    }

    // Uniform shaft on two bearings: ω = (π/L)²·√(E·I/(ρ·A)), from the equation of the vibrating beam.
    [Fact]
    public void A_uniform_shaft_whirls_as_the_vibrating_beam()
    {
        var section = new ShaftSection(25);
        ShaftSegment[] segments = [new(600, section)];
        var masses = CriticalSpeed.OwnMass(0, segments, 7.85e-9, 20);
        var influences = CriticalSpeed.Influences(0, segments, 207_000, [new(0, true), new(600, false)], masses);
        var exact = Math.PI * Math.PI / 360_000 * Math.Sqrt(207_000 * section.SecondMoment / (7.85e-9 * section.Area));
        Assert.Equal(1, CriticalSpeed.Lowest(influences, [.. masses.Select(mass => mass.Mass)]) / exact, 1e-3);
        Assert.Equal(7.85e-9 * section.Area * 600, masses.Sum(mass => mass.Mass), 1e-12);
    }

    // A stiff shaft on two springs is one or two oscillators: c_1 + c_2 over the mass in the middle, and the bounce and pitch of a pair of equal
    // masses at the bearings, each on its own spring.
    [Fact]
    public void A_stiff_shaft_on_springs_bounces_in_closed_form()
    {
        ShaftSpring one = new(0, 30_000), other = new(200, 50_000);
        double[][] stiff = [[0, 0], [0, 0]];

        ShaftMass[] middle = [new(100, 0.004)];
        Assert.Equal(
            Math.Sqrt(1 / (0.25 / 30_000 + 0.25 / 50_000) / 0.004),
            CriticalSpeed.Lowest(CriticalSpeed.OnSprings([[0]], middle, one, other), [0.004]), 1e-6);

        ShaftMass[] ends = [new(0, 0.004), new(200, 0.002)];
        Assert.Equal(
            Math.Sqrt(30_000 / 0.004), CriticalSpeed.Lowest(CriticalSpeed.OnSprings(stiff, ends, one, other), [0.004, 0.002]), 1e-6);
    }

    // Springs in a row: 1/ω² of one mass is the sum of those of the shaft and of the bearings.
    [Fact]
    public void Springs_and_shaft_stand_in_a_row_and_stiff_springs_change_nothing() =>
        Gen.Select(Gen.Double[50, 650], Gen.Double[1e3, 1e6], Gen.Double[1e3, 1e6]).Where((at, _, _) => Math.Abs(at - 500) > 5).Sample((at, c1, c2) =>
        {
            ShaftMass[] mass = [new(at, 0.005)];
            var stiff = CriticalSpeed.Influences(0, [new(300, new(30)), new(400, new(20))], 207_000, [new(0, true), new(500, false)], mass);
            var share = at / 500;
            var soft = CriticalSpeed.OnSprings(stiff, mass, new(0, c1), new(500, c2))[0][0];
            Assert.Equal(stiff[0][0] + Math.Pow(1 - share, 2) / c1 + share * share / c2, soft, 1e-12);
            var hard = CriticalSpeed.OnSprings(stiff, mass, new(0, 1e15), new(500, 1e15))[0][0];
            Assert.Equal(1, hard / stiff[0][0], 1e-6);
        });

    // One mass that sags 0.05 mm: √(9806.65/0.05) = 442.9 rad/s.
    [Fact]
    public void One_mass_is_worked_by_hand()
    {
        Assert.Equal(442.87, CriticalSpeed.Alone(0.05 / Fall, 1), 0.01);
    }

    // Theory of both: Dunkerley from below, Rayleigh's quotient of any shape from above.
    [Fact]
    public void Dunkerley_and_Rayleigh_hold_the_lowest_speed_between_them() =>
        Gen.Select(Gen.Double[10, 490], Gen.Double[10, 490], Gen.Double[500, 700], Gen.Double[1e-4, 1e-2].Array[3]).Where((one, other, _, _) => Math.Abs(one - other) > 5).Sample((one, other, overhung, mass) =>
        {
            ShaftMass[] masses = [new(one, mass[0]), new(other, mass[1]), new(overhung, mass[2])];
            var influences = CriticalSpeed.Influences(
                0, [new(300, new(30)), new(400, new(20, 8))], 207_000, [new(0, true), new(495, false)], masses);
            var lowest = CriticalSpeed.Lowest(influences, mass);
            var below = 1 / Math.Sqrt(masses.Select((m, index) => 1 / Math.Pow(CriticalSpeed.Alone(influences[index][index], m.Mass), 2)).Sum());

            // The overhung weight upward.
            double[] weights = [mass[0] * Fall, mass[1] * Fall, -mass[2] * Fall];
            double[] sags = [.. Enumerable.Range(0, 3).Select(row => weights.Select((weight, column) => weight * influences[row][column]).Sum())];
            var above = Math.Sqrt(Fall * weights.Zip(sags, (weight, sag) => weight * sag).Sum() / weights.Zip(sags, (weight, sag) => Math.Abs(weight) * sag * sag).Sum());
            return below <= lowest * (1 + 1e-9) && lowest <= above * (1 + 1e-9);
        });

    [Fact]
    public void Masses_that_are_none_are_refused() =>
        Refusal.Says("at least one mass", () => CriticalSpeed.Lowest([], []));
}
