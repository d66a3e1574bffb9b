using CsCheck;
using Pawl.Mechanics.Lubrication;

namespace Pawl.Mechanics.Tests.Lubrication;

public class ViscosityTests
{
    // Two worked examples of ASTM D341 on a public page: 404 mm²/s at 40 °C and 28 at 100 °C make 132.126 at 60 °C; 68 at 40 °C
    // and 14.85 at 80 °C make 8.8 at 100 °C.
    [Theory]
    [InlineData(40, 404, 100, 28, 60, 132.126, 0.0005)]
    [InlineData(40, 68, 80, 14.85, 100, 8.8, 0.05)]
    public void Viscosity_at_a_temperature_follows_ASTM_D341(
        double temperature1, double viscosity1, double temperature2, double viscosity2, double at, double expected, double tolerance) =>
        Assert.Equal(expected, Viscosity.Kinematic(at, temperature1, viscosity1, temperature2, viscosity2), tolerance);

    [Fact]
    public void The_line_runs_through_both_points_and_thins_with_warmth() =>
        Gen.Select(Gen.Double[20, 1000], Gen.Double[0.05, 0.5], Gen.Double[0, 99]).Sample((thick, part, at) =>
        {
            var thin = Math.Max(2.1, thick * part);
            double At(double temperature) => Viscosity.Kinematic(temperature, 40, thick, 100, thin);
            return Math.Abs(At(40) / thick - 1) < 1e-9
                && Math.Abs(At(100) / thin - 1) < 1e-9
                && At(at) > At(at + 1)
                && Math.Abs(Viscosity.Kinematic(at, 100, thin, 40, thick) / At(at) - 1) < 1e-9;
        });

    // A third point of the line, measured anew, changes nothing.
    [Fact]
    public void Any_two_points_of_an_oil_give_the_same_line() =>
        Gen.Select(Gen.Double[0, 35], Gen.Double[45, 95], Gen.Double[0, 90]).Sample((first, second, at) =>
        {
            double Oil(double temperature) => Viscosity.Kinematic(temperature, 40, 220, 100, 19);
            return Math.Abs(Viscosity.Kinematic(at, first, Oil(first), second, Oil(second)) / Oil(at) - 1) < 1e-9;
        });

    // 68 mm²/s at 880 kg/m³: 59.84 mPa·s.
    [Fact]
    public void Dynamic_viscosity_is_kinematic_times_density() => Assert.Equal(59.84e-9, Viscosity.Dynamic(68, 880e-12), 1e-18);
}
