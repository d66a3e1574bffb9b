using CsCheck;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Bearings;

public class RingCreepTests
{
    // Cardano: a circle that rolls in one of twice its size turns once back for each turn of the point of contact.
    [Fact]
    public void Half_as_large_a_ring_turns_as_fast_as_its_load() => Assert.Equal(7, RingCreep.Speed(7, 40, 40), 1e-12);

    // A ring of radius r rolls in a bore of radius R: the point of contact goes round by θ in small steps, and its place on the ring
    // moves on by the same arc.
    [Fact]
    public void A_ring_rolls_off_in_its_bore_as_its_arcs_say() =>
        Gen.Select(Gen.Double[10, 100], Gen.Double[1e-4, 0.5]).Sample((diameter, play) =>
        {
            var (seat, ring, steps) = ((diameter + play) / 2, diameter / 2, 1000);
            var (angle, contact) = (0.0, 0.0);
            for (var step = 0; step < steps; step++)
            {
                var turn = Math.Tau / steps;
                // Arc on the seat: seat·turn; on the ring: ring·(turn − that by which the ring itself turns).
                angle += turn - (seat * turn / ring);
                contact += turn;
            }

            return Math.Abs((Math.Abs(angle) / contact * 3) - RingCreep.Speed(-3, play, diameter)) < 1e-9;
        });

    [Fact]
    public void A_tight_ring_does_not_roll() => Assert.Equal(0, RingCreep.Speed(100, -0.01, 40));

    // Coulomb by hand: 0.2·2500 N·20 mm.
    [Fact]
    public void A_held_ring_slides() => Assert.Equal(10_000, RingCreep.HoldingTorque(2500, 40, 0.2), 1e-9);

    // By hand: 0.08·√(40·2655/18) = 6.145 µm; at F_r/B = 16·d both branches meet: 0.08·√(16·40²) = 0.02·16·40 = 12.8 µm.
    [Theory]
    [InlineData(40, 18, 2655, 6.145)]
    [InlineData(40, 1, 640, 12.8)]
    [InlineData(40, 1, 6400, 128)]
    [InlineData(40, 18, 0, 0)]
    public void A_load_takes_overlap(double bore, double width, double radial, double micrometres) =>
        Assert.Equal(micrometres, RingCreep.LossUnderLoad(bore, width, radial) * 1000, 1e-3);

    [Fact]
    public void What_is_no_ring_is_refused()
    {
        Refusal.Says("the diameter of the seat must be above zero", () => RingCreep.Speed(1, 1, 0));
        Refusal.Says("the radial load must not be below zero", () => RingCreep.HoldingTorque(-1, 1, 0.2));
        Refusal.Says("the width of the ring must be above zero", () => RingCreep.LossUnderLoad(40, 0, 1));
    }
}
