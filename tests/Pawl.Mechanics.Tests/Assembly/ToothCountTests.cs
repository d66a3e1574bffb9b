using CsCheck;
using Pawl.Mechanics.Assembly;

namespace Pawl.Mechanics.Tests.Assembly;

public sealed class ToothCountTests
{
    // Closed form: lcm(24, 60) = 120.
    [Fact]
    public void Teeth_with_a_common_factor_meet_again_early()
    {
        ToothHunting pair = new(24, 60);

        Assert.Equal(12, pair.Factor);
    }

    // Geometry; a ring's centre distance is negative by the sign convention of ISO 21771.
    [Fact]
    public void Spread_of_centre_distances_takes_their_amounts()
    {
        Assert.Equal(0.02, Coaxiality.Spread([45, -44.99, 45.01]), 9);
        Assert.Equal(0, Coaxiality.Spread([45]), 12);
        Assert.Throws<OutsideValidityException>(() => Coaxiality.Spread([]));
    }

    // Brute force: teeth are counted round until the first pair meets again, and the pairs that ever meet.
    [Fact]
    public void Hunting_is_what_counting_teeth_gives() =>
        Gen.Select(Gen.Int[1, 60], Gen.Int[1, 60]).Sample((pinion, wheel) =>
        {
            var meshes = 0;
            HashSet<(int, int)> met = [];
            while (met.Add((meshes % pinion, meshes % wheel)))
            {
                meshes++;
            }

            ToothHunting pair = new(pinion, wheel);
            Assert.Equal(pinion * wheel / meshes, pair.Factor);
        });
}
