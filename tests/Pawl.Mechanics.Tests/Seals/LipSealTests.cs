using CsCheck;
using Pawl.Mechanics.Fits;
using Pawl.Mechanics.Seals;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Seals;

public class LipSealTests
{
    private const double PerMinute = Math.PI / 30;

    // π·30·6000/60 = 9424.8 mm/s; the direction does not matter.
    [Fact]
    public void The_surface_speed_is_worked_by_hand()
    {
        Assert.Equal(9424.78, LipSeal.SurfaceSpeed(30, 6000 * PerMinute), 0.005);
        Assert.Equal(9424.78, LipSeal.SurfaceSpeed(30, -6000 * PerMinute), 0.005);
    }

    // Public trade pages: 45 HRC, 55 HRC in dirt or from 4 m/s.
    [Theory]
    [InlineData(1000, false, 45)]
    [InlineData(4000, false, 45)]
    [InlineData(4001, false, 55)]
    [InlineData(1000, true, 55)]
    public void The_shaft_is_as_hard_as_the_trade_asks(double speed, bool dirty, double hardness) =>
        Assert.Equal(hardness, LipSeal.MinHardness(speed, dirty));

    // Shaft tolerances that a seller of seals prints for DIN 3760, mm below nominal: h11.
    [Theory]
    [InlineData(8, 0.09)]
    [InlineData(15, 0.110)]
    [InlineData(25, 0.130)]
    [InlineData(45, 0.160)]
    [InlineData(65, 0.190)]
    [InlineData(100, 0.220)]
    public void The_shaft_tolerance_of_DIN_3760_is_the_class_h11(double diameter, double below)
    {
        var deviations = Iso286.Limits("h", 11, diameter);
        Assert.Equal(0, deviations.Upper, 1e-9);
        Assert.Equal(-below, deviations.Lower, 1e-9);
    }

    // DIN 3760, from memory. A public trade page gives 0.02 MPa to 0.05 MPa over all speeds.
    [Theory]
    [InlineData(1000, 0.05)]
    [InlineData(2800, 0.05)]
    [InlineData(3000, 0.035)]
    [InlineData(-3000, 0.035)]
    [InlineData(5600, 0.02)]
    public void Pressure_falls_with_speed(double speed, double pressure)
    {
        Assert.Equal(pressure, LipSeal.MaxPressure(speed));
        Assert.InRange(LipSeal.MaxPressure(speed), 0.02, 0.05);
    }

    [Fact]
    public void Faster_lips_have_no_limit_of_pressure_in_the_table() =>
        Refusal.Says("ends at 5.6 m/s; the shaft has 9.42 m/s: vent the housing", () => LipSeal.MaxPressure(9424.8));

    // A public page: at most 0.005 in (0.13 mm) of dynamic eccentricity.
    [Fact]
    public void Run_out_shrinks_with_speed_and_stays_below_what_a_maker_allows() =>
        Gen.Select(Gen.Double[0, 10_000], Gen.Double[0, 10_000]).Sample((one, other) =>
        {
            var (slow, fast) = (LipSeal.MaxRunOut(Math.Min(one, other) * PerMinute), LipSeal.MaxRunOut(-Math.Max(one, other) * PerMinute));
            return slow >= fast && slow <= 0.13 && fast >= 0.05 - 1e-12
                && Math.Abs(LipSeal.MaxRunOut(3000 * PerMinute) - 0.1) < 1e-12
                && Math.Abs(LipSeal.MaxRunOut(4500 * PerMinute) - 0.075) < 1e-12
                && Math.Abs(LipSeal.MaxRunOut(6000 * PerMinute) - 0.05) < 1e-12;
        });
}
