using CsCheck;
using Pawl.Mechanics.Fits;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Fits;

public class RegisterTests
{
    // 120 H7/g6: +35/0 and −12/−34: play up to 0.069 mm, off centre up to 0.0345 mm.
    [Fact]
    public void A_pilot_is_off_centre_by_half_its_play()
    {
        var fit = Fitted.Of(Iso286.Limits("H", 7, 120), Iso286.Limits("g", 6, 120));
        Assert.Equal(0.0345, Register.OfPilot(fit.Max), 1e-9);
        Assert.Equal(0, Register.OfPilot(-0.01));
    }

    // Midway between two dowels: both give way to one side, (C₁ + C₂)/4. Turn: both give way against each other, over 100 mm.
    [Fact]
    public void Two_dowels_are_worked_by_hand()
    {
        Assert.Equal(0.015, Register.OnDowels(0.02, 0.04, 100, 50, 0), 1e-9);
        Assert.Equal(0.01, Register.OnDowels(0.02, 0.04, 100, 0, 0), 1e-9);
        Assert.Equal(0.02, Register.OnDowels(0.02, 0.04, 100, 100, 0), 1e-9);

        // Far out on the line: 0.02 + 100/100·(0.01 + 0.02).
        Assert.Equal(0.05, Register.OnDowels(0.02, 0.04, 100, 200, 0), 1e-9);
    }

    // The plate shifted and turned at random, kept where both dowels are within their play: never further than the bound, and the
    // best of many comes near it.
    [Fact]
    public void Random_shifts_stay_within_the_bound_and_reach_it() =>
        Gen.Select(Gen.Double[0.005, 0.05], Gen.Double[0.005, 0.05], Gen.Double[-150, 150], Gen.Double[-150, 150], Gen.Int[0, 1_000_000]).Sample((one, other, p, q, seed) =>
        {
            var random = new Random(seed);
            var bound = Register.OnDowels(one, other, 100, p, q);
            var best = 0.0;
            for (var trial = 0; trial < 4000; trial++)
            {
                // Ends across, on or inside their circles, and what shift along is left.
                var (a, b) = (one / 2 * (2 * random.NextDouble() - 1), other / 2 * (2 * random.NextDouble() - 1));
                var room = Math.Sqrt(Math.Min(one * one / 4 - a * a, other * other / 4 - b * b));
                var shift = room * (random.Next(3) - 1);
                var turn = (b - a) / 100;
                best = Math.Max(best, double.Hypot(shift - q * turn, a + p * turn));
            }

            return best <= bound + 1e-12 && best > 0.9 * bound;
        }, iter: 200);

    [Fact]
    public void Dowels_on_one_spot_are_refused() => Refusal.Says("the distance of the dowels", () => Register.OnDowels(0.01, 0.01, 0, 0, 0));
}
