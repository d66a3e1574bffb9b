using CsCheck;
using Pawl.Mechanics.Bearings;

namespace Pawl.Mechanics.Tests.Bearings;

public class RingSeatTests
{
    // Conditions of rotation as two public pages print them: speeds of inner ring, outer ring and load; which ring must be tight.
    [Theory]
    [InlineData(100, 0, 0, true, false)] // gearboxes, motors
    [InlineData(0, 100, 100, true, false)] // wheels greatly out of balance
    [InlineData(0, 100, 0, false, true)] // wheels and pulleys on an axle at rest
    [InlineData(100, 0, 100, false, true)] // shaker screens
    public void The_ring_that_the_load_goes_round_must_be_tight(double inner, double outer, double load, bool innerTight, bool outerTight)
    {
        Assert.Equal(innerTight, RingSeat.NeedsInterference(RingSeat.Of(inner, load)));
        Assert.Equal(outerTight, RingSeat.NeedsInterference(RingSeat.Of(outer, load)));
    }

    // The same pages: cranks, whose load swings, are tight.
    [Fact]
    public void A_load_that_swings_needs_a_tight_ring() => Assert.True(RingSeat.NeedsInterference(LoadOnRing.Indeterminate));

    // A planet's load turns with its carrier and the pin: the pin may be loose, the planet's ring not.
    [Fact]
    public void A_planet_needs_its_outer_ring_tight() =>
        Gen.Select(Gen.Double[-300, 300], Gen.Double[-900, 900]).Where((carrier, planet) => Math.Abs(carrier - planet) > 1).Sample((carrier, planet) =>
            RingSeat.Of(carrier, carrier) == LoadOnRing.Stationary && RingSeat.Of(planet, carrier) == LoadOnRing.Rotating);

    [Fact]
    public void Rounding_makes_no_load_go_round() => Assert.Equal(LoadOnRing.Stationary, RingSeat.Of(0.1 + 0.2, 0.3));
}
