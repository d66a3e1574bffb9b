using CsCheck;
using Pawl.Mechanics.Fits;
using Pawl.Mechanics.Rating;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Fits;

public class PressFitTests
{
    private const double Density = 7.85e-9;
    private static readonly Elastic Steel = new(207_000, 0.3);
    private static readonly PressFit Plain = new(50, 0, 80, 40, Steel, Steel);

    private static readonly Gen<PressFit> Any = Gen.Select(
        Gen.Double[10, 100], Gen.Double[0, 0.9], Gen.Double[1.1, 3], Gen.Double[60_000, 220_000], Gen.Double[60_000, 220_000], Gen.Double[0.2, 0.4])
        .Select((d, hollow, hub, one, other, poisson) => new PressFit(d, d * hollow, d * hub, d, new(one, poisson), new(other, 0.3)));

    // Textbooks of machine design, one steel and a solid shaft: p = U·E·(1 − Q²)/(2·d) = 0.06·207 000·(1 − 0.390625)/100 = 75.684.
    [Fact]
    public void One_steel_and_a_solid_shaft_give_the_short_formula() => Assert.Equal(75.684, Plain.Pressure(0.06), 0.001);

    // Shigley, Mechanical Engineering Design, problems 3-64 and 3-66 in a solution manual on a public page: fits H7/s6 and H7/u6 of 40 mm in a
    // collar of 80 mm, E = 207 GPa: 114.5 and 34.9 MPa, 147.5 and 67.9 MPa.
    [Theory]
    [InlineData("s", 114.5, 34.9)]
    [InlineData("u", 147.5, 67.9)]
    public void Fits_of_a_solution_manual_have_its_pressures(string letter, double most, double least)
    {
        var limits = Fitted.Of(Iso286.Limits("H", 7, 40), Iso286.Limits(letter, 6, 40));
        var fit = new PressFit(40, 0, 80, 40, Steel, Steel);
        Assert.Equal(most, fit.Pressure(-limits.Min), 0.05);
        Assert.Equal(least, fit.Pressure(-limits.Max), 0.05);
    }

    // The same, problem 3-68, inches: 0.001 in of the radius on a solid shaft of 1 in in a ring of 2 in, E = 30 Mpsi, ν = 0.292: 22 500 psi, hoop
    // stress of the ring 37 500 psi.
    [Fact]
    public void A_ring_of_a_solution_manual_has_its_stresses()
    {
        Elastic steel = new(30e6, 0.292);
        var fit = new PressFit(1, 0, 2, 1, steel, steel);
        Assert.Equal(22_500, fit.Pressure(0.002), 1e-6);
    }

    // Same textbooks, hollow shaft of one steel: p = E·U/(2·d³)·(D² − d²)·(d² − d_i²)/(D² − d_i²); Shigley's equation for like
    // materials.
    [Fact]
    public void One_steel_and_a_hollow_shaft_give_the_equation_of_textbooks() =>
        Gen.Select(Gen.Double[10, 100], Gen.Double[0.05, 0.9], Gen.Double[1.1, 3], Gen.Double[0.001, 0.1]).Sample((d, hollow, hub, u) =>
        {
            var (i, o) = (d * hollow, d * hub);
            var expected = Steel.Modulus * u / (2 * d * d * d) * (o * o - d * d) * (d * d - i * i) / (o * o - i * i);
            return Math.Abs(new PressFit(d, i, o, d, Steel, Steel).Pressure(u) / expected - 1) < 1e-9;
        });

    // Lamé's limits: a thin hub is a hoop, σ = p·d/(2·t) at its mean; a hub of endless thickness has σ_t = p and σ_v = √3·p.
    [Fact]
    public void Thin_and_endless_hubs_meet_their_limits()
    {
        var thin = new PressFit(100, 0, 100.2, 10, Steel, Steel);
        var thick = new PressFit(100, 0, 1e7, 10, Steel, Steel);
        Assert.Equal(Math.Sqrt(3), thick.HubStress(1), 1e-6);
    }

    // Lamé by hand, d/D = 0.625 at 75.684 MPa: σ_t = 75.684·1.390625/0.609375 = 172.72; √(σ_t² + σ_t·p + p²) = 220.52.
    [Fact]
    public void Hub_stresses_are_worked_by_hand()
    {
        var p = Plain.Pressure(0.06);
        Assert.Equal(220.52, Plain.HubStress(p), 0.01);
        Assert.Equal(-p, Plain.ShaftHoopStress(p), 1e-9);
    }

    // DIN 7190-1, from memory: 0.8·(6 + 4) = 8 µm of 60 µm.
    [Fact]
    public void Smoothing_takes_eight_tenths_of_both_roughnesses() => Assert.Equal(0.008, PressFit.Smoothing(0.006, 0.004), 1e-12);

    // µ = 0.12, p = 50 MPa, d = 50, l = 40: F = 0.12·50·π·2000 = 37 699 N; T = F·25 = 942 478 N·mm.
    [Fact]
    public void Force_and_torque_are_worked_by_hand()
    {
        Assert.Equal(37_699.1, Plain.AxialCapacity(50, 0.12), 0.1);
        Assert.Equal(942_478, Plain.TorqueCapacity(50, 0.12), 1.0);
        Assert.Equal(2, Plain.SlipSafety(50, 0.12, 942_477.8 / 2, 0), 1e-6);

        // 3-4-5: forces at the circle 3 and 4 parts, together 5.
        Assert.Equal(1, Plain.SlipSafety(50, 0.12, 37_699.11 * 0.6 * 25, 37_699.11 * 0.8), 1e-6);
    }

    // Ring cut into shells and marched by midpoint steps: equilibrium d(r·σ_r)/dr = σ_t − ρ·ω²·r², Hooke; the start displacement is
    // found from the free outside. Nothing of the closed form is used.
    [Fact]
    public void Growth_at_speed_is_that_of_shells_in_a_row()
    {
        const double speed = 2000;
        var fit = new PressFit(50, 20, 90, 40, new(110_000, 0.26), new(206_000, 0.3));
        var hub = Growth(25, 45, 206_000, 0.3, Density, speed, 25);
        var shaft = Growth(10, 25, 110_000, 0.26, 7.2e-9, speed, 25);
        Assert.Equal(2 * (hub - shaft), fit.CentrifugalLoss(speed, 7.2e-9, Density), 2e-7);
    }

    // d = 50, U = 0.06, play 0.05, 11.5e-6: 0.11/(11.5e-6·50) = 191.3 K above 20 °C. With the shaft at −78 °C it shrinks by
    // 98·11.5e-6·50 = 0.05635: 93.3 K.
    [Fact]
    public void Joining_temperatures_are_worked_by_hand()
    {
        Assert.Equal(211.3, Plain.HubTemperature(0.06, 0.05, 11.5e-6, 11.5e-6), 0.05);
        Assert.Equal(113.3, Plain.HubTemperature(0.06, 0.05, 11.5e-6, 11.5e-6, -78), 0.05);
    }

    // At the temperature found, the play is the play asked for.
    [Fact]
    public void A_hub_at_its_joining_temperature_has_the_play() =>
        Gen.Select(Any, Gen.Double[0, 0.1], Gen.Double[0, 0.1], Gen.Double[8e-6, 24e-6], Gen.Double[-60, 20]).Sample((fit, u, s, expansion, cold) =>
        {
            var hub = fit.HubTemperature(u, s, expansion, 11.5e-6, cold);
            return Math.Abs(new FitLimits(-u, -u).At(fit.Diameter, expansion, hub, 11.5e-6, cold).Min - s) < 1e-9;
        });

    [Fact]
    public void More_interference_is_more_of_everything() =>
        Gen.Select(Any, Gen.Double[0.001, 0.05], Gen.Double[0.001, 0.05]).Sample((fit, less, more) =>
        {
            var (one, other) = (fit.Pressure(less), fit.Pressure(less + more));
            return one < other && fit.TorqueCapacity(one, 0.1) < fit.TorqueCapacity(other, 0.1)
                && fit.HubStress(one) < fit.HubStress(other) && fit.ShaftStress(one) < fit.ShaftStress(other);
        });

    [Fact]
    public void Play_and_impossible_parts_are_told()
    {
        Assert.Equal(0, Plain.Pressure(-0.01));
        Refusal.Says("a joint between hole and outside", () => (Plain with { Outside = 50 }).HubStress(1));
        Refusal.Says("a joint between hole and outside", () => (Plain with { Hole = 51 }).ShaftStress(1));
        Refusal.Says("the friction must be above zero", () => Plain.TorqueCapacity(1, 0));
        Refusal.Says("the load on the joint must be above zero", () => Plain.SlipSafety(1, 0.1, 0, 0));
    }

    // Displacement at radius `at` of a ring that turns freely.
    private static double Growth(double inner, double outer, double e, double v, double density, double speed, double at)
    {
        // Two marches with different starts; the right one is the mix whose outside is free.
        var (one, other) = (March(0), March(0.01));
        var share = -one.Outside / (other.Outside - one.Outside);
        return one.At + share * (other.At - one.At);

        (double Outside, double At) March(double start)
        {
            const int steps = 20_000;
            var (step, u, s, found) = ((outer - inner) / steps, start, 0.0, start);
            for (var index = 0; index < steps; index++)
            {
                var r = inner + index * step;
                var (du, ds) = Slopes(r, u, s);
                (du, ds) = Slopes(r + step / 2, u + du * step / 2, s + ds * step / 2);
                (u, s) = (u + du * step, s + ds * step);
                if (Math.Abs(r + step - at) < step / 2)
                    found = u;
            }

            return (s, found);
        }

        (double Du, double Ds) Slopes(double r, double u, double s)
        {
            var hoop = e * u / r + v * s;
            return ((s - v * hoop) / e, (hoop - s) / r - density * speed * speed * r);
        }
    }

    [Fact]
    public void Von_Mises_of_the_hub_is_that_of_its_principal_stresses() =>
        Gen.Select(Any, Gen.Double[1, 300]).Sample((fit, p) =>
        {
            var hoop = HubHoop(fit, p);
            return Math.Abs(fit.HubStress(p) / Math.Sqrt(hoop * hoop + hoop * p + p * p) - 1) < 1e-9;
        });

    // The hoop stress as strain: both parts move by what Hooke says, and the movements make up the interference.
    [Fact]
    public void The_parts_move_together_by_the_interference() =>
        Gen.Select(Any, Gen.Double[0.001, 0.1]).Sample((fit, interference) =>
        {
            var p = fit.Pressure(interference);
            var hub = fit.Diameter * (HubHoop(fit, p) + fit.Hub.Poisson * p) / fit.Hub.Modulus;

            // Balance of the half shaft, hole against joint: hoop at the joint and at the bore differ by p (σ_t + σ_r is constant).
            var hoop = fit.Hole > 0 ? fit.ShaftHoopStress(p) + p : -p;
            var shaft = fit.Diameter * (hoop + fit.Shaft.Poisson * p) / fit.Shaft.Modulus;
            return Math.Abs((hub - shaft) / interference - 1) < 1e-9 && Math.Abs(fit.Interference(p) / interference - 1) < 1e-9;
        });

    // Lamé at the bore of the hub: σ_t = p·(D² + D_F²)/(D² − D_F²).
    private static double HubHoop(PressFit fit, double pressure)
    {
        var (bore, outer) = (fit.Diameter * fit.Diameter, fit.Outside * fit.Outside);
        return pressure * (outer + bore) / (outer - bore);
    }
}
