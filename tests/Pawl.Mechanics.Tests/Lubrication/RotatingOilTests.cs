using CsCheck;
using Pawl.Mechanics.Lubrication;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Lubrication;

public class RotatingOilTests
{
    // Laboratory practice on public pages: relative centrifugal force = 1.118·10⁻⁵ · r in cm · (rev/min)²; 10 cm at 3000 1/min make 1006,
    // 8 cm at 10 000 1/min 8944.
    [Theory]
    [InlineData(100, 3000, 1006)]
    [InlineData(80, 10_000, 8944)]
    public void A_centrifuge_has_its_published_multiple_of_free_fall(double radius, double revolutions, double multiple) =>
        Assert.Equal(multiple, RotatingOil.AccelerationOverFreeFall(revolutions * Math.PI / 30, radius), multiple * 5e-4);

    // A cylinder of 12 cm with water at 300 1/min: the paraboloid is ω²·r²/(2·g) = 18.11 cm deep (Bansal, Fluid Mechanics, vortex flow; from
    // memory, with g = 9.81 m/s²).
    [Fact]
    public void Water_in_a_turning_cylinder_stands_as_high_as_a_textbook_says()
    {
        var pressure = RotatingOil.PressureGain(1000e-12, 300 * Math.PI / 30, 0, 60);
        Assert.Equal(181.1, pressure / (1000e-12 * 9810), 0.1);
    }

    // Along a passage the gains add up, and the way back takes what the way out gave.
    [Fact]
    public void Gains_add_up_along_a_passage() =>
        Gen.Select(Gen.Int[0, 10_000], Gen.Int[0, 10_000], Gen.Int[0, 10_000], Gen.Int[-5000, 5000]).Select((a, b, c, n) => (a / 100.0, b / 100.0, c / 100.0, n / 10.0)).Sample((a, b, c, speed) =>
        {
            double Gain(double from, double to) => RotatingOil.PressureGain(870e-12, speed, from, to);
            return Math.Abs(Gain(a, b) + Gain(b, c) - Gain(a, c)) < 1e-9 && Gain(a, b) == -Gain(b, a) && Math.Sign(Gain(a, b)) == (speed == 0 ? 0 : Math.Sign(b - a));
        });

    [Fact]
    public void A_radius_below_zero_is_refused()
    {
        Refusal.Says("the radius of the inlet must not be below zero", () => RotatingOil.PressureGain(870e-12, 100, -1, 30));
        Refusal.Says("the density of the oil must be above zero", () => RotatingOil.PressureGain(0, 100, 1, 30));
        Refusal.Says("the radius must not be below zero", () => RotatingOil.AccelerationOverFreeFall(100, -1));
    }
}
