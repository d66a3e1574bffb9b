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

    // 100 N/mm, steel on steel, needle of 3 mm on a pin of 15 mm: R = 1.25 mm; √(100·113 187/(π·1.25)) = 1697.7 MPa.
    [Fact]
    public void The_pressure_on_a_pin_is_worked_by_hand() =>
        Assert.Equal(1697.7, PlanetBearing.PinPressure(1000, 10, 3, 15, new(206_000, 0.3), new(206_000, 0.3)), 0.1);

    [Fact]
    public void Impossible_planets_are_refused()
    {
        Refusal.Says("at least three rollers", () => PlanetBearing.HeaviestRoller(1, 2));
        Refusal.Says("the mass of the planet must not be below zero", () => PlanetBearing.Centrifugal(-1, 1, 1));
    }
}
