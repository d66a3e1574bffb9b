using CsCheck;
using Pawl.Mechanics.Lubrication;
using Pawl.Mechanics.Tests.Rating;

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

    // (0.6 + 0.965·lg 100)·10⁻⁸ /Pa = 2.53·10⁻⁸ /Pa = 0.0253 /MPa.
    [Theory]
    [InlineData(100, 0.0253)]
    [InlineData(10, 0.01565)]
    [InlineData(1, 0.006)]
    public void The_pressure_coefficient_is_worked_by_hand(double millipascalSeconds, double expected) =>
        Assert.Equal(expected, Viscosity.PressureCoefficient(millipascalSeconds * 1e-9), 1e-12);

    // Stachowiak and Batchelor, Engineering Tribology, table of mineral oils at 30, 60 and 100 °C, mPa·s and 10⁻⁹/Pa, as
    // reprinted on a public page: from light machine oil to cylinder oil the estimate lies between a third too low and a fifth
    // too high.
    [Theory]
    [InlineData(12.1, 18.4)]
    [InlineData(5.3, 13.4)]
    [InlineData(153, 23.7)]
    [InlineData(34, 20.5)]
    [InlineData(9.1, 15.8)]
    [InlineData(250, 25.0)]
    [InlineData(50.5, 21.3)]
    [InlineData(12.6, 17.6)]
    [InlineData(810, 34)]
    [InlineData(135, 28)]
    [InlineData(26.8, 22)]
    [InlineData(18.6, 20)]
    [InlineData(6.3, 16)]
    [InlineData(2.4, 13)]
    [InlineData(107, 29.6)]
    [InlineData(23.3, 22.8)]
    [InlineData(6.4, 17.8)]
    [InlineData(3.1, 15.4)]
    [InlineData(310, 34.6)]
    [InlineData(2000, 41.5)]
    public void The_pressure_coefficient_of_measured_oils_is_met_as_an_estimate_can(double millipascalSeconds, double perGigapascal) =>
        Assert.InRange(
            Viscosity.PressureCoefficient(millipascalSeconds * 1e-9) / (perGigapascal * 1e-3), 2.0 / 3, 1.2);

    [Fact]
    public void What_no_oil_does_is_refused()
    {
        Refusal.Says("an oil thins as it warms", () => Viscosity.Kinematic(60, 40, 28, 100, 404));
        Refusal.Says("an oil thins as it warms", () => Viscosity.Kinematic(60, 40, 28, 40, 20));
        Refusal.Says("from 2 mm²/s up", () => Viscosity.Kinematic(200, 40, 22, 100, 4));
        Refusal.Says("absolute zero", () => Viscosity.Kinematic(-300, 40, 220, 100, 19));
        Refusal.Says("1 mPa·s and above", () => Viscosity.PressureCoefficient(0.5e-9));
    }
}
