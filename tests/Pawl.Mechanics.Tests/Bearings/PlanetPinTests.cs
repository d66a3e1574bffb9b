using CsCheck;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Bearings;

public class PlanetPinTests
{
    private const double Modulus = 206_000;

    // 4000 N on 16 mm in a span of 24 mm: 2000·(12 − 4) = 16 000 N·mm; 32·16 000/(π·12³) = 94.31 MPa. Overhung by 2 mm: 4000·10.
    [Fact]
    public void Moments_and_stresses_are_worked_by_hand()
    {
        PlanetPin pin = new(12);
        Assert.Equal(16_000, PlanetPin.StraddledMoment(4000, 24, 16), 1e-9);
        Assert.Equal(94.314, pin.BendingStress(16_000), 0.001);
        Assert.Equal(40_000, PlanetPin.OverhungMoment(4000, 2, 16), 1e-9);
        Assert.Equal(2000 / (12.0 * 6), pin.CheekPressure(2000, 6), 1e-12);
    }

    // The pin as 20 000 slices: reactions by statics, shear summed to the moment, the moment to the slope.
    [Fact]
    public void A_straddled_pin_bends_as_its_slices_do() =>
        Gen.Select(Gen.Double[100, 8000], Gen.Double[15, 60], Gen.Double[0.2, 1]).Sample(
            (force, span, share) =>
            {
                PlanetPin pin = new(12, 4);
                var width = span * share;
                var (moment, slope) = March(force / 2, (span - width) / 2, width, span, force / width, pin);
                return Math.Abs(PlanetPin.StraddledMoment(force, span, width) / moment - 1) < 1e-3
                    && Math.Abs(pin.StraddledSlope(force, span, width, Modulus) / slope - 1) < 5e-3;
            },
            iter: 200);

    // A cantilever: everything beyond a slice bends it; the slopes add up from the cheek.
    [Fact]
    public void An_overhung_pin_bends_as_its_slices_do() =>
        Gen.Select(Gen.Double[100, 8000], Gen.Double[0, 10], Gen.Double[5, 40]).Sample(
            (force, gap, width) =>
            {
                PlanetPin pin = new(12, 4);
                const int slices = 2000;
                var inertia = Math.PI / 64 * (Math.Pow(12, 4) - Math.Pow(4, 4));
                var (slope, atCheek) = (0.0, 0.0);
                var step = (gap + width) / slices;
                for (var slice = 0; slice < slices; slice++)
                {
                    var place = (slice + 0.5) * step;
                    var from = Math.Max(place, gap);
                    var beyond = force / width * (gap + width - from) * ((gap + width + from) / 2 - place);
                    slope += beyond * step / (Modulus * inertia);
                    atCheek = Math.Max(atCheek, beyond);
                }

                return Math.Abs(PlanetPin.OverhungMoment(force, gap, width) / atCheek - 1) < 2e-3
                    && Math.Abs(pin.OverhungSlope(force, gap, width, Modulus) / slope - 1) < 1e-3;
            },
            iter: 200);

    // Textbooks: shear of a solid round 4/3 of the mean, of a thin tube twice the mean; between, V·S/(I·b) of the half section,
    // with S the moment of half a disc less that of its hole.
    [Fact]
    public void Shear_is_that_of_the_half_section() =>
        Gen.Select(Gen.Double[1, 1000], Gen.Double[5, 40], Gen.Double[0, 0.95]).Sample((shear, diameter, hollow) =>
        {
            var hole = diameter * hollow;
            var moment = (Math.Pow(diameter, 3) - Math.Pow(hole, 3)) / 12;
            var inertia = Math.PI / 64 * (Math.Pow(diameter, 4) - Math.Pow(hole, 4));
            var stress = shear * moment / (inertia * (diameter - hole));
            return Math.Abs(new PlanetPin(diameter, hole).ShearStress(shear) / stress - 1) < 1e-9;
        });

    [Fact]
    public void Impossible_pins_are_refused()
    {
        Refusal.Says("the load must lie between the cheeks", () => PlanetPin.StraddledMoment(1, 10, 11));
        Refusal.Says("the hole of a pin must be below its diameter", () => new PlanetPin(10, 10).BendingStress(1));
        Refusal.Says("the force must not be below zero", () => PlanetPin.OverhungMoment(-1, 0, 1));
    }

    private static (double Moment, double Slope) March(double reaction, double start, double width, double span, double line, PlanetPin pin)
    {
        const int slices = 20_000;
        var inertia = Math.PI / 64 * (Math.Pow(pin.Diameter, 4) - Math.Pow(pin.Hole, 4));
        var (shear, moment, slope, greatest) = (reaction, 0.0, 0.0, 0.0);
        var step = span / 2 / slices;
        for (var slice = 0; slice < slices; slice++)
        {
            var place = (slice + 0.5) * step;
            moment += shear * step;
            if (place > start)
                shear -= line * step;
            greatest = Math.Max(greatest, moment);

            // By symmetry the middle has no slope: what lies between the load's edge and the middle makes the slope at the edge.
            if (place > start)
                slope += moment * step / (Modulus * inertia);
        }

        return (greatest, slope);
    }
}
