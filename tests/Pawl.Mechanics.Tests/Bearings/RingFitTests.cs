using CsCheck;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Rating;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Bearings;

public class RingFitTests
{
    private static readonly Elastic Steel = new(206_000, 0.3);
    private static readonly Elastic Aluminium = new(70_000, 0.33);

    // A public page on press fits: shaft of 50 mm in a hub of 80 mm outside, interference 0.04 mm, E = 200 000 MPa: 48.8 MPa.
    [Fact]
    public void The_pressure_of_a_public_example_is_met() =>
        Assert.Equal(48.8, RingFit.Pressure(0.04, 50, 0, 80, new(200_000, 0.3), new(200_000, 0.3)), 0.05);

    // Textbooks of rolling bearings, steel on steel: inner ring I·(d/F)·(1 − (h/d)²)/(1 − (h/F)²), outer ring I·(E/D)·(1 −
    // (D/D₀)²)/(1 − (E/D₀)²).
    [Fact]
    public void Steel_on_steel_gives_the_short_formulas_of_textbooks() =>
        Gen.Select(Gen.Double[0.001, 0.05], Gen.Double[10, 60], Gen.Double[1.05, 1.6], Gen.Double[0, 0.9], Gen.Double[1.05, 4]).Sample(
            (interference, seat, ring, hollow, housing) =>
            {
                var (race, hole) = (seat * ring, seat * hollow);
                var inner = interference * seat / race * (1 - hollow * hollow) / (1 - hole * hole / (race * race));
                var (outside, bore, about) = (seat * ring, seat, seat * ring * housing);
                var outer = interference * bore / outside * (1 - outside * outside / (about * about)) / (1 - bore * bore / (about * about));
                return Math.Abs(RingFit.InnerRacewayGrowth(interference, seat, race, hole, Steel, Steel) - inner) < 1e-9
                    && Math.Abs(RingFit.OuterRacewayContraction(interference, outside, bore, about, Steel, Steel) - outer) < 1e-9;
            });

    // The rings solved as thin shells in a row: equilibrium σ_t = d(r·σ_r)/dr and Hooke, radial displacement u, marched by
    // midpoint steps from the free surfaces, so that Lamé's closed form is not used. Shaft of steel, housing of aluminium.
    [Fact]
    public void An_aluminium_housing_squeezes_a_ring_as_its_shells_say()
    {
        const double interference = 0.03;
        var (bore, joint, about) = (41.4, 47.0, 70.0);
        var ring = March(bore / 2, joint / 2, Steel);
        var housing = March(about / 2, joint / 2, Aluminium);

        // Both scaled to one pressure at the joint; their displacements make up half of the interference.
        var pressure = interference / 2 / (housing.Joint / -housing.Stress - ring.Joint / -ring.Stress);
        Assert.Equal(pressure, RingFit.Pressure(interference, joint, bore, about, Steel, Aluminium), pressure * 1e-3);
        var contraction = -2 * ring.Free * pressure / -ring.Stress;
        Assert.Equal(contraction, RingFit.OuterRacewayContraction(interference, joint, bore, about, Aluminium, Steel), contraction * 1e-3);
    }

    // Interference 10 µm, seat 20 mm, raceway 25 mm, solid shaft: 10·20/25 = 8 µm.
    [Fact]
    public void A_solid_shaft_is_worked_by_hand() =>
        Assert.Equal(0.008, RingFit.InnerRacewayGrowth(0.010, 20, 25, 0, Steel, Steel), 1e-9);

    [Fact]
    public void A_hollow_shaft_and_a_soft_housing_press_less() =>
        Gen.Select(Gen.Double[0.001, 0.05], Gen.Double[0, 15], Gen.Double[50, 200]).Sample((interference, hole, about) =>
            RingFit.InnerRacewayGrowth(interference, 20, 25, hole, Steel, Steel)
                <= RingFit.InnerRacewayGrowth(interference, 20, 25, 0, Steel, Steel) + 1e-12
            && RingFit.OuterRacewayContraction(interference, 47, 41, about, Aluminium, Steel)
                < RingFit.OuterRacewayContraction(interference, 47, 41, about, Steel, Steel));

    // A ring about whose joint nothing yields gives all of its interference: infinite block, infinite stiffness.
    [Fact]
    public void A_rigid_block_leaves_the_ring_all_of_the_change() =>
        Assert.Equal(
            0.01 * RatioOfBore(41, 47), RingFit.OuterRacewayContraction(0.01, 47, 41, double.PositiveInfinity, new(1e15, 0.3), Steel), 1e-9);

    [Fact]
    public void A_loose_seat_presses_nothing()
    {
        Assert.Equal(0, RingFit.InnerRacewayGrowth(-0.01, 20, 25, 0, Steel, Steel));
        Assert.Equal(0, RingFit.Effective(0.002, 0.004));
        Assert.Equal(0.006, RingFit.Effective(0.010, 0.004), 1e-12);
    }

    // Seat of 62 mm, ring of steel 12e-6, housing of aluminium 23e-6, 60 K warmer: 62·11e-6·60 = 0.0409 mm looser; 40 K colder
    // 0.0273 tighter.
    [Fact]
    public void A_ring_in_aluminium_loosens_hot_and_tightens_cold()
    {
        Assert.Equal(0.010 - 0.04092, RingFit.Warm(0.010, 62, 12e-6, 80, 23e-6, 80), 1e-9);
        Assert.Equal(0.010 + 0.02728, RingFit.Warm(0.010, 62, 12e-6, -20, 23e-6, -20), 1e-9);
        Assert.Equal(0.010 + 62 * 12e-6 * 15, RingFit.Warm(0.010, 62, 12e-6, 75, 12e-6, 60), 1e-12);
    }

    [Fact]
    public void Impossible_seats_are_refused()
    {
        Refusal.Says("a joint between hole and outside", () => RingFit.Pressure(0.01, 20, 20, 30, Steel, Steel));
        Refusal.Says("a joint between hole and outside", () => RingFit.InnerRacewayGrowth(0.01, 20, 20, 0, Steel, Steel));
        Refusal.Says("the smoothing must not be below zero", () => RingFit.Effective(0.01, -1));
        Refusal.Says("Poisson's ratio", () => RingFit.Pressure(0.01, 20, 0, 30, new(1, 0.5), Steel));
    }

    // Lamé, tube pressed from outside with u given there: 2·E·D over the share that Poisson leaves at the rim.
    private static double RatioOfBore(double bore, double outside)
    {
        var square = bore * bore / (outside * outside);
        return 2 * (bore / outside) / (1 - square) / ((1 + square) / (1 - square) - 0.3);
    }

    // Displacement at the free surface and at the joint, and the radial stress there, for a displacement of 1 at the free
    // surface.
    private static (double Free, double Joint, double Stress) March(double free, double joint, Elastic material)
    {
        const int steps = 4000;
        var (e, v) = (material.Modulus, material.Poisson);
        var (step, u, s) = ((joint - free) / steps, 1.0, 0.0);
        (double Du, double Ds) Slopes(double r, double displacement, double stress)
        {
            var hoop = e * displacement / r + v * stress;
            return ((stress - v * hoop) / e, (hoop - stress) / r);
        }

        for (var index = 0; index < steps; index++)
        {
            var r = free + index * step;
            var first = Slopes(r, u, s);
            var middle = Slopes(r + step / 2, u + first.Du * step / 2, s + first.Ds * step / 2);
            (u, s) = (u + middle.Du * step, s + middle.Ds * step);
        }

        return (1, u, s);
    }
}
