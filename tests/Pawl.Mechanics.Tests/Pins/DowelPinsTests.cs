using CsCheck;
using Pawl.Mechanics.Pins;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Pins;

public class DowelPinsTests
{
    // 300 N·m on two pins of 8 mm at a radius of 40 mm: 3750 N, 74.60 MPa; in a fork half; 12 mm in the part: 39.06 MPa.
    [Fact]
    public void Forces_and_stresses_of_two_pins_are_worked_by_hand()
    {
        var force = DowelPins.Force(300_000, DowelPins.Effective(2, false), 40);

        Assert.Equal(3750, force, 1e-9);
        Assert.Equal(74.60, DowelPins.ShearStress(force, 8), 0.005);
        Assert.Equal(37.30, DowelPins.ShearStress(force, 8, planes: 2), 0.005);
        Assert.Equal(3750 / (Math.PI / 4 * (64 - 16)), DowelPins.ShearStress(force, 8, hole: 4), 1e-9);
        Assert.Equal(39.0625, DowelPins.Pressure(force, 8, 12), 1e-9);
    }

    [Theory]
    [InlineData(0, true, 0)]
    [InlineData(1, true, 0)]
    [InlineData(2, false, 2)]
    [InlineData(4, false, 2)]
    [InlineData(4, true, 4)]
    public void Pins_that_were_not_reamed_together_count_as_two(int pins, bool together, int effective)
    {
        Assert.Equal(effective, DowelPins.Effective(pins, together));
    }

    // Circles by themselves: the room is the least over the bolts of the distance of two points less both radii, and midway is farthest.
    [Fact]
    public void Midway_between_two_bolts_a_dowel_has_the_most_room() =>
        Gen.Select(Gen.Double[50, 200], Gen.Double[50, 200], Gen.Int[2, 24], Gen.Double[0, 1]).Sample((circle, boltCircle, bolts, turn) =>
        {
            double RoomAt(double angle) => Enumerable.Range(0, bolts).Min(i =>
            {
                var bolt = 2 * Math.PI * i / bolts;
                return Math.Sqrt(
                    Math.Pow(circle / 2 * Math.Cos(angle) - boltCircle / 2 * Math.Cos(bolt), 2)
                    + Math.Pow(circle / 2 * Math.Sin(angle) - boltCircle / 2 * Math.Sin(bolt), 2)) - 7.5;
            });
            var room = DowelPins.FromBolts(circle, 6, boltCircle, bolts, 9);
            Assert.Equal(RoomAt(Math.PI / bolts), room, 1e-9);
            Assert.True(RoomAt(turn * 2 * Math.PI) <= room + 1e-9);
        });

    // Two pins and two holes, each centre moved within its tolerance; the parts slide and the pins go in if some shift lets both in.
    // With room they always do. Without it there are centres that do not: both pins apart, both holes together, at the limit.
    [Fact]
    public void With_room_every_pair_of_pins_goes_in() =>
        Gen.Select(Gen.Double[0, 0.1], Gen.Double[0, 0.1], Gen.Double[0, 0.3], Gen.Double[0, 2 * Math.PI].Array[4], Gen.Double[0, 1].Array[4]).Sample(
            (positionOfPins, positionOfHoles, play, angles, shares) =>
            {
                // Centres of the two pins and of the two holes against their true places; no shift is even needed.
                var worst = 0.0;
                for (var pair = 0; pair < 2; pair++)
                {
                    var x = positionOfPins / 2 * shares[pair] * Math.Cos(angles[pair]) - positionOfHoles / 2 * shares[pair + 2] * Math.Cos(angles[pair + 2]);
                    var y = positionOfPins / 2 * shares[pair] * Math.Sin(angles[pair]) - positionOfHoles / 2 * shares[pair + 2] * Math.Sin(angles[pair + 2]);
                    worst = Math.Max(worst, Math.Sqrt(x * x + y * y));
                }

                return DowelPins.Room(play, positionOfPins, positionOfHoles) < 0 || worst <= play / 2 + 1e-12;
            });

    [Fact]
    public void Without_room_some_pair_does_not_go_in()
    {
        // Pins 0.05 too far apart each way, holes 0.05 too close: 0.1 on either side, and half the play of 0.19 is 0.095.
        Assert.Equal(-0.01, DowelPins.Room(0.19, 0.1, 0.1), 1e-12);
        Assert.True(0.05 + 0.05 > 0.19 / 2);
    }

    // Parts turned by the play: the pin goes from one side of its hole to the other, a way of S at the radius.
    [Fact]
    public void Turn_and_shift_are_geometry()
    {
        Assert.Equal(0.02 / 40, DowelPins.Turn(0.02, 40), 1e-15);
    }

    [Fact]
    public void Impossible_pins_are_refused()
    {
        Refusal.Says("a torque needs two pins", () => DowelPins.Force(1, 0, 10));
        Refusal.Says("one plane or two", () => DowelPins.ShearStress(1, 8, 3));
        Refusal.Says("the hole of a pin", () => DowelPins.ShearStress(1, 8, 1, 8));
        Refusal.Says("the number of pins", () => DowelPins.Effective(-1, true));
        Refusal.Says("the position tolerance must not be below zero", () => DowelPins.Room(0.1, -1, 0));
    }
}
