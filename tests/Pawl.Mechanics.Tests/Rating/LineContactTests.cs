using CsCheck;
using Pawl.Mechanics.Rating;
using Pawl.Mechanics.Tests.Gears;

namespace Pawl.Mechanics.Tests.Rating;

public class LineContactTests
{
    // A pressure p_H·√(1 − (x/b_H)²) over the width 2·b_H is the load, π/2·p_H·b_H.
    [Fact]
    public void Pressure_over_the_width_carries_the_load() =>
        Gen.Select(Gen.Double[1, 2000], Gen.Double[0.5, 200], Gen.Double[5e4, 2e5]).Sample((load, radius, modulus) =>
            Math.Abs(
                Math.PI / 2 * LineContact.Pressure(load, radius, modulus) * LineContact.HalfWidth(load, radius, modulus) / load - 1)
            < 1e-12);

    // Half planes under that pressure sink by −2/(π·E_r)·∫ p(s)·ln|x − s| ds (Flamant): within the contact they must close the
    // gap x²/(2·ρ_red) between the cylinders.
    [Fact]
    public void Surfaces_close_the_gap_between_the_cylinders()
    {
        const double Load = 300, Radius = 8, Modulus = 113_000;
        const int Parts = 200_000;
        var half = LineContact.HalfWidth(Load, Radius, Modulus);
        var pressure = LineContact.Pressure(Load, Radius, Modulus);

        double Sinks(double x)
        {
            var sum = 0.0;
            for (var i = 0; i < Parts; i++)
            {
                var s = -half + 2 * half * (i + 0.5) / Parts;
                sum += pressure * Math.Sqrt(1 - s * s / (half * half)) * Math.Log(Math.Abs(x - s) / half) * 2 * half / Parts;
            }

            return -2 / (Math.PI * Modulus) * sum;
        }

        foreach (var place in new[] { 0.25, 0.5, 0.75, 0.9 })
        {
            var x = place * half;
            var gap = x * x / (2 * Radius);
            Assert.Equal(gap, Sinks(0) - Sinks(x), gap * 1e-3);
        }
    }

    // Steel on steel, 100 N/mm, 10 mm against a flat: E_r = 113 187 MPa, b_H = √(4000/(π·113 187)) = 0.10606 mm, p_H =
    // √(11 318 700/(31.41593)) = 600.2 MPa.
    [Fact]
    public void A_roller_on_a_flat_is_worked_by_hand()
    {
        var modulus = Elastic.Reduced(Elastic.Steel, Elastic.Steel);

        Assert.Equal(113_187, modulus, 0.5);
        Assert.Equal(0.10606, LineContact.HalfWidth(100, 10, modulus), 5e-6);
        Assert.Equal(600.2, LineContact.Pressure(100, 10, modulus), 0.05);
    }

    [Fact]
    public void A_hollow_flank_fits_closer_than_a_flat_and_a_round_one_less() =>
        Gen.Select(Gen.Double[1, 30], Gen.Double[31, 100]).Sample((round, other) =>
            LineContact.ReducedCurvature(round, -other) > round && LineContact.ReducedCurvature(round, other) < round
            && Math.Abs(1 / LineContact.ReducedCurvature(round, -other) - (1 / round - 1 / other)) < 1e-12);

    // 20 and 60 teeth of 2 mm, external: ρ = 6.8404 and 20.5212, 1/(1/6.8404 + 1/20.5212) = 5.1303; internal 10.2606 mm.
    [Theory]
    [InlineData(112.7631145, 5.13030)]
    [InlineData(-112.7631145, 10.26060)]
    public void The_curvature_at_the_pitch_point_is_worked_by_hand(double base2, double reduced) =>
        Assert.Equal(reduced, LineContact.ReducedCurvatureAtPitchPoint(37.5877048, base2, Degrees.Rad(20)), 5e-5);

    [Fact]
    public void A_round_flank_wider_than_its_hollow_is_refused()
    {
        Refusal.Says("do not touch along a line", () => LineContact.ReducedCurvature(10, -9));
        Refusal.Says("do not touch along a line", () => LineContact.ReducedCurvature(10, -10));
        Refusal.Says("the line load must be above zero", () => LineContact.Pressure(0, 10, 1e5));
    }
}
