using CsCheck;
using Pawl.Mechanics.Assembly;

namespace Pawl.Mechanics.Tests.Assembly;

public sealed class MeshPhaseTests
{
    // Closed form: frac(20k/3) and frac(70k/3).
    [Fact]
    public void Phases_of_three_planets_are_the_fractions_of_teeth_between_them()
    {
        Assert.Equal([0, 2.0 / 3, 1.0 / 3], MeshPhase.Of(20, 3), Near);
        Assert.Equal([0, 1.0 / 3, 2.0 / 3], MeshPhase.Of(70, 3), Near);
    }

    // Closed form: 20 teeth, 92° of 360°: 20·92/360 = 5 + 1/9.
    [Fact]
    public void Phases_at_unequal_positions_follow_the_angle()
    {
        var positions = new PlanetPositions(90, [1, 24, 46, 69]);

        Assert.Equal([0, 1.0 / 9, 0, 1.0 / 9], MeshPhase.Of(20, positions), Near);
        Assert.Equal(Phasing.Irregular, MeshPhase.Classify(20, positions));
    }

    // Law: in a simple train the phases at sun and ring add to whole teeth at every permitted position.
    [Fact]
    public void Phases_at_sun_and_ring_of_a_simple_planet_are_opposite() =>
        Gen.Select(Groups.Teeth, Groups.Teeth, Gen.Int[1, 8]).Sample((sun, ring, planets) =>
        {
            var positions = MinMeshAngle.Of(Groups.Simple(sun, 20, ring)).NearestToEqual(planets);
            var (atSun, atRing) = (MeshPhase.Of(sun, positions), MeshPhase.Of(ring, positions));
            for (var planet = 0; planet < planets; planet++)
            {
                var sum = atSun[planet] + atRing[planet];
                Assert.Equal(Math.Round(sum), sum, 9);
            }
        });

    // Closed form: z mod N = 0, N/2, other.
    [Theory]
    [InlineData(24, 3, Phasing.InPhase)]
    [InlineData(22, 4, Phasing.CounterPhased)]
    [InlineData(21, 4, Phasing.Sequential)]
    [InlineData(20, 3, Phasing.Sequential)]
    [InlineData(20, 6, Phasing.Sequential)]
    [InlineData(21, 1, Phasing.InPhase)]
    public void Equally_spaced_planets_are_classed_by_the_remainder(int teeth, int planets, Phasing phasing) =>
        Assert.Equal(phasing, MeshPhase.Classify(teeth, planets));

    private static bool Near(double expected, double actual) => Math.Abs(expected - actual) < 1e-12;
}
