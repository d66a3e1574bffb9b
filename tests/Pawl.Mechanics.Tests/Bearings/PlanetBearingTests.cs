using CsCheck;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Bearings;

public class PlanetBearingTests
{
    private const double Rpm = Math.PI / 30;

    // 0.2 kg on 40 mm at 1000 1/min: 0.2·0.04·104.72² = 87.73 N; two meshes of 1500 N: √(3000² + 87.73²) = 3001.3 N.
    [Fact]
    public void The_load_of_a_planet_is_worked_by_hand()
    {
        var centrifugal = PlanetBearing.Centrifugal(0.2e-3, 40, 1000 * Rpm);
        Assert.Equal(87.73, centrifugal, 0.005);
    }

    [Fact]
    public void The_bearing_sees_the_difference_of_the_speeds()
    {
        Assert.Equal(350, PlanetBearing.RelativeSpeed(-250, 100));
        Assert.Equal(0, PlanetBearing.RelativeSpeed(100, 100));
        Assert.Equal(40 * 100 * 100, PlanetBearing.Acceleration(40, -100), 1e-9);
    }

    // 1500 N at 20°: 1500·tan 20° = 545.96 N up at one side and down at the other, 30 mm apart.
    [Fact]
    public void The_couple_of_a_helical_planet_is_worked_by_hand()
    {
        var axial = 1500 * Math.Tan(20 * Math.PI / 180);
        Assert.Equal(16_379, PlanetBearing.TiltCouple(axial, axial, 30, 30), 0.5);
        Assert.Equal(axial * (28 + 32) / 2, PlanetBearing.TiltCouple(axial, axial, 28, -32), 1e-9);
    }

    // Statics of the planet on two bearings: their forces add up to the force, and their couple about the middle to the tilt.
    [Fact]
    public void Two_bearings_hold_force_and_couple() =>
        Gen.Select(Gen.Double[-5000, 5000], Gen.Double[-2000, 2000], Gen.Double[0, 40_000], Gen.Double[5, 60]).Sample((along, outward, couple, spacing) =>
        {
            var (first, second) = PlanetBearing.Split(new(along, outward), couple, spacing);
            // From the sizes back to the outward parts, whose sum is the force and whose difference the couple.
            var difference = first * first - second * second;
            return Math.Abs(difference - 2 * outward * couple / spacing) < 1e-3
                && Math.Abs(first * first + second * second - (along * along + outward * outward) / 2 - 2 * couple * couple / (spacing * spacing)) < 1e-2;
        });

    // 100 N/mm, steel on steel, needle of 3 mm on a pin of 15 mm: R = 1.25 mm; √(100·113 187/(π·1.25)) = 1697.7 MPa.
    [Fact]
    public void The_pressure_on_a_pin_is_worked_by_hand() =>
        Assert.Equal(1697.7, PlanetBearing.PinPressure(1000, 10, 3, 15, new(206_000, 0.3), new(206_000, 0.3)), 0.1);

    [Fact]
    public void Impossible_planets_are_refused()
    {
        Refusal.Says("at least three rollers", () => PlanetBearing.HeaviestRoller(1, 2));
        Refusal.Says("the distance of the bearings must be above zero", () => PlanetBearing.Split(new(1, 1), 1, 0).First);
        Refusal.Says("the mass of the planet must not be below zero", () => PlanetBearing.Centrifugal(-1, 1, 1));
    }

    // The planet drawn: forces as vectors at both pitch points along the lines of action, the pin holds what is left over.
    [Fact]
    public void The_force_on_the_pin_balances_both_meshes() =>
        Gen.Select(Gen.Double[100, 5000], Gen.Double[0.2, 0.5], Gen.Double[0.2, 0.5], Gen.Double[0, 500]).Sample(
            (tangential, sunAngle, ringAngle, centrifugal) =>
            {
                // x outwards, y along the path. Normal forces at the angle from the path: the sun pushes out, the ring in.
                (double X, double Y) sun = (tangential * Math.Tan(sunAngle), tangential);
                (double X, double Y) ring = (-tangential * Math.Tan(ringAngle), tangential);
                var force = PlanetBearing.Force(tangential, tangential, sun.X, -ring.X, centrifugal);
                return Math.Abs(double.Hypot(force.Tangential, force.Outward) - double.Hypot(sun.X + ring.X + centrifugal, sun.Y + ring.Y)) < 1e-9
                    && Math.Abs(force.Outward - (sun.X + ring.X + centrifugal)) < 1e-9;
            });
}
