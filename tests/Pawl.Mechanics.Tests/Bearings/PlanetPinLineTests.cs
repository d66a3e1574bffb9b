using CsCheck;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Rating;
using Pawl.Mechanics.Shafts;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Bearings;

public class PlanetPinLineTests
{
    private const double Modulus = 206_000;

    private static readonly double Inertia = Math.PI * Math.Pow(10, 4) / 64;

    // Beam tables of every handbook: F·L³/(48·E·I) in the middle; F·L³/(3·E·I) and F·L²/(2·E·I) at the end of a cantilever.
    [Fact]
    public void Deflections_are_those_of_beam_tables()
    {
        var pin = new PlanetPin(10);

        Assert.Equal(3000 * Math.Pow(40, 3) / (48 * Modulus * Inertia), pin.StraddledDeflection(3000, 20, 20, 40, Modulus), 1e-12);
        Assert.Equal(0, pin.StraddledSlopeAtForce(3000, 20, 40, Modulus), 1e-15);
        Assert.Equal(3000 * Math.Pow(20, 3) / (3 * Modulus * Inertia), pin.OverhungDeflection(3000, 20, 20, Modulus), 1e-12);
        Assert.Equal(3000 * Math.Pow(20, 2) / (2 * Modulus * Inertia), pin.OverhungSlopeAtForce(3000, 20, Modulus), 1e-12);
        // Beyond the force a cantilever is straight.
        Assert.Equal(
            pin.OverhungDeflection(3000, 20, 20, Modulus) + (10 * pin.OverhungSlopeAtForce(3000, 20, Modulus)), pin.OverhungDeflection(3000, 20, 30, Modulus), 1e-12);
    }

    // The bent shaft of this library, which integrates piece by piece and was checked against tables of its own.
    [Fact]
    public void A_straddled_pin_bends_as_a_shaft_on_two_bearings() =>
        Gen.Select(Gen.Double[0.05, 0.95], Gen.Double[0.05, 0.95]).Sample((from, at) =>
        {
            var pin = new PlanetPin(10, 3);
            var shaft = BentShaft.Of(0, [new(40, new ShaftSection(10, 3))], Modulus, [new(0, false), new(40, false)], [new(from * 40, 2500, 0)]);
            return Math.Abs(shaft.DeflectionAt(at * 40).X - pin.StraddledDeflection(2500, from * 40, at * 40, 40, Modulus)) < 1e-9
                && Math.Abs(shaft.SlopeAt(from * 40).X - pin.StraddledSlopeAtForce(2500, from * 40, 40, Modulus)) < 1e-9;
        });

    // By hand: 10 × 20 mm, 30 mm long, E = 200 GPa, G = 80 GPa: I = 10·20³/12; bent 27 000/(12·E·I) = 1.6875·10⁻⁶ mm/N, sheared 1.2·30/(G·200) =
    // 2.25·10⁻⁶ mm/N; three at a radius of 50 mm: 3·2500/3.9375·10⁻⁶.
    [Fact]
    public void A_cage_twists_by_bending_and_shear_of_its_webs() =>
        Assert.Equal(7500 / 3.9375e-6, new CarrierCage(3, 100, 20, 10, 30).TorsionalStiffness(new(200_000, 0.25)), 1);

    // 400 N·m, of which half crosses a cage of 10⁹ N·mm/rad: 0.0002 rad; 60 mm out 0.012 mm over 40 mm.
    [Fact]
    public void Half_the_torque_crosses_the_cage() => Assert.Equal(0.0003, CarrierCage.Slope(400_000, 1e9, 60, 40), 1e-12);

    // ISO 1328-1:2013 by hand: 0.05·√100 + 0.35·√36 + 4 = 6.6 µm in class 5, √2 times that in class 6; f_ma of two such √2 times.
    [Theory]
    [InlineData(5, 6.6)]
    [InlineData(6, 9.33381)]
    [InlineData(3, 3.3)]
    public void A_class_allows_a_slope_of_the_helix(int grade, double micrometres) =>
        Assert.Equal(micrometres, FlankTolerance.HelixSlope(100, 2, 36, grade) * 1000, 1e-4);

    [Fact]
    public void Two_helices_make_the_root_of_their_squares() => Assert.Equal(5, FlankTolerance.MeshMisalignment(3, 4), 1e-12);

    [Fact]
    public void What_is_no_pin_and_no_cage_is_refused()
    {
        Refusal.Says("the place must lie between the cheeks", () => new PlanetPin(10).StraddledDeflection(1, 41, 20, 40, Modulus));
        Refusal.Says("the width of a web must be above zero", () => new CarrierCage(3, 100, 0, 10, 30).TorsionalStiffness(new(200_000, 0.3)));
        Refusal.Says("the number of webs must be 1 or more", () => new CarrierCage(0, 100, 20, 10, 30).TorsionalStiffness(new(200_000, 0.3)));
        Refusal.Says("face widths of 4 to 1200 mm", () => FlankTolerance.HelixSlope(100, 2, 3, 5));
    }
}
