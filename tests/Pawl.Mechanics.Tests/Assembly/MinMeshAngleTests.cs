using System.Numerics;
using CsCheck;
using Pawl.Mechanics.Assembly;

namespace Pawl.Mechanics.Tests.Assembly;

public sealed class MinMeshAngleTests
{
    private const double Degree = Math.PI / 180;

    private static long PerTurn(PlanetGroup group) => MinMeshAngle.Of(group).PositionsPerTurn;

    private static int Gcd(int a, int b) => (int)BigInteger.GreatestCommonDivisor(a, b);

    // Brute force: every seating of the teeth, see Toothing.
    [Fact]
    public void A_group_fits_exactly_at_the_multiples_of_the_least_mesh_angle() =>
        (from theGroup in Groups.Any
         from step in Gen.Int[1, 400]
         from division in Gen.Int[1, 60]
         from kind in Gen.Int[0, 2]
         from seed in Gen.Int
         select (theGroup, step, division, kind, seed)).Sample(
            test =>
            {
                var perTurn = PerTurn(test.theGroup);
                var steps = test.kind == 0 || perTurn == 0 ? test.division : perTurn * test.kind;

                var fits = new Toothing(test.theGroup, test.seed).Fitting(Math.Tau * test.step / steps) > 0;

                Assert.Equal(perTurn * test.step % steps == 0, fits);
            },
            iter: 2000);

    // Brute force: the finest division of the turn by which a planet fits. 2·12·12 bounds D for one body with two meshes.
    [Fact]
    public void The_finest_division_that_fits_is_the_least_mesh_angle() =>
        (from teeth in Groups.FewTeeth.Array[4]
         from internals in Gen.Bool.Array[2]
         from seed in Gen.Int
         select (teeth, internals, seed)).Sample(
            test =>
            {
                var group = new PlanetGroup(
                    1,
                    [
                        new(0, test.teeth[0], test.teeth[1], test.internals[0]),
                        new(0, test.teeth[2], test.teeth[3], test.internals[1]),
                    ]);
                var toothing = new Toothing(group, test.seed);
                var finest = 289;
                while (finest > 0 && toothing.Fitting(Math.Tau / finest) == 0)
                {
                    finest--;
                }

                var perTurn = PerTurn(group);
                Assert.Equal(perTurn == 0 ? 289 : perTurn, finest);
            },
            iter: 100);

    // Closed form, taught in every text on epicyclic gears: (z_s + z_r)/N whole.
    [Fact]
    public void Simple_planets_sit_at_multiples_of_a_turn_over_sun_plus_ring() =>
        Groups.Teeth.Array[3].Sample(z => Assert.Equal(z[0] + z[2], PerTurn(Groups.Simple(z[0], z[1], z[2]))));

    // Closed form: elimination of the planet's rotation by hand.
    [Fact]
    public void Stepped_planets_between_sun_and_ring_add_the_products_over_the_common_factor() =>
        Groups.Teeth.Array[4].Sample(z =>
        {
            var sum = z[0] * z[2] + z[3] * z[1];
            Assert.Equal(sum / Gcd(z[1], z[2]), PerTurn(Groups.SteppedSunRing(z[0], z[1], z[2], z[3])));
        });

    // Closed form: elimination of the planet's rotation by hand.
    [Fact]
    public void Stepped_planets_between_two_suns_or_two_rings_subtract_the_products() =>
        Groups.Teeth.Array[4].Sample(z =>
        {
            var difference = Math.Abs(z[0] * z[2] - z[3] * z[1]) / Gcd(z[1], z[2]);
            Assert.Equal(difference, PerTurn(Groups.SteppedTwoSuns(z[0], z[1], z[2], z[3])));
            Assert.Equal(difference, PerTurn(Groups.SteppedTwoRings(z[0], z[1], z[2], z[3])));
        });

    // Closed form: both conditions of the single meshes with the sun, taken together.
    [Fact]
    public void A_sun_and_two_rings_need_the_common_factor_of_both_conditions() =>
        Groups.Teeth.Array[5].Sample(z =>
        {
            var (sun, planet1, ring1, planet2, ring2) = (z[0], z[1], z[2], z[3], z[4]);
            var stepped = (sun * planet2 + ring2 * planet1) / Gcd(planet1, planet2);
            Assert.Equal(Gcd(sun + ring1, stepped), PerTurn(Groups.SunTwoRings(sun, planet1, ring1, planet2, ring2)));
        });

    // Closed form: the pinions' teeth cancel; two suns add, sun and ring subtract.
    [Fact]
    public void Meshed_pairs_do_not_depend_on_their_pinions() =>
        Groups.Teeth.Array[4].Sample(z =>
        {
            Assert.Equal(z[0] + z[3], PerTurn(Groups.PairTwoSuns(z[0], z[1], z[2], z[3])));
            Assert.Equal(Math.Abs(z[3] - z[0]), PerTurn(Groups.PairSunRing(z[0], z[1], z[2], z[3])));
        });

    // Closed form: as a stepped planet, only the long pinion's steps count.
    [Fact]
    public void A_stepped_long_pinion_brings_its_steps_and_their_common_factor_in() =>
        Groups.Teeth.Array[5].Sample(z =>
        {
            var (sun1, long1, long2, shortTeeth, sun2) = (z[0], z[1], z[2], z[3], z[4]);
            var sum = long2 * sun1 + long1 * sun2;
            Assert.Equal(sum / Gcd(long1, long2), PerTurn(Groups.PairSteppedLong(sun1, long1, long2, shortTeeth, sun2)));
        });

    // Closed form: both conditions together.
    [Fact]
    public void A_ring_on_the_long_pinion_adds_the_condition_of_a_simple_planet() =>
        Groups.Teeth.Array[5].Sample(z =>
        {
            var (sun1, longTeeth, shortTeeth, sun2, ring) = (z[0], z[1], z[2], z[3], z[4]);
            Assert.Equal(
                Gcd(sun1 + sun2, sun1 + ring),
                PerTurn(Groups.PairTwoSunsRing(sun1, longTeeth, shortTeeth, sun2, ring)));
        });

    // Closed form, 360°/D.
    [Fact]
    public void Least_angles_of_worked_trains_come_out()
    {
        Assert.Equal(4, Degrees(Groups.Simple(20, 25, 70)), 9);
        Assert.Equal(1.875, Degrees(Groups.SteppedSunRing(24, 40, 20, 84)), 9);
        Assert.Equal(360.0 / 78, Degrees(Groups.PairTwoSuns(48, 21, 18, 30)), 9);
        Assert.Equal(360.0 / 1590, Degrees(Groups.PairSteppedLong(48, 21, 20, 18, 30)), 9);
        Assert.Equal(6, Degrees(Groups.PairSunRing(24, 18, 20, 84)), 9);

        static double Degrees(PlanetGroup group) => MinMeshAngle.Of(group).Angle / Degree;
    }

    // Closed form: a single mesh, equal products, and steps clamped in place leave no condition.
    [Fact]
    public void Groups_without_a_condition_may_sit_anywhere()
    {
        Assert.True(MinMeshAngle.Of(new PlanetGroup(1, [new(0, 20, 30, false)])).IsAnyAngle);
        Assert.True(MinMeshAngle.Of(Groups.SteppedTwoSuns(30, 20, 40, 60)).IsAnyAngle);

        var clamped = MinMeshAngle.Of(Groups.SteppedSunRing(24, 40, 20, 84).WithStepClampedInPlace(0, 20));
        Assert.True(clamped.IsAnyAngle);
        Assert.True(clamped.CanSpaceEqually(7));
        Assert.Equal(0, clamped.Misfit(1.234));
    }

    // Closed form: the step that meshes sun and ring keeps its own condition when the other is clamped.
    [Fact]
    public void A_clamped_step_frees_its_own_mesh_only() =>
        Assert.Equal(90, PerTurn(Groups.SunTwoRings(20, 25, 70, 23, 68).WithStepClampedInPlace(0, 23)));

    [Fact]
    public void Only_a_step_beside_another_can_be_clamped()
    {
        var simple = Groups.Simple(20, 25, 70);
        Assert.Throws<OutsideValidityException>(() => simple.WithStepClampedInPlace(0, 25));
        Assert.Throws<OutsideValidityException>(() => simple.WithStepClampedInPlace(0, 24));
    }

    // Closed form: D = 90, divisors up to 10.
    [Fact]
    public void Equally_spaced_counts_are_the_divisors()
    {
        var angle = MinMeshAngle.Of(Groups.Simple(20, 25, 70));
        Assert.Equal(2, angle.Remainder(4));
    }

    // Closed form: 90/4 = 22.5 steps of 4°. Both 88° and 92° are nearest; 92° leaves the pairs opposite.
    [Fact]
    public void Four_planets_in_ninety_positions_stand_in_opposite_pairs()
    {
        var positions = MinMeshAngle.Of(Groups.Simple(20, 25, 70)).NearestToEqual(4);

        Assert.Equal([0, 92, 180, 272], InDegrees(positions), Near);
        Assert.Equal(0, positions.Unbalance);
    }

    // Closed form: multiples of 360°/76 nearest to thirds.
    [Fact]
    public void Three_pairs_that_cannot_be_spaced_equally_take_the_nearest_places()
    {
        var angle = MinMeshAngle.Of(Groups.PairTwoSuns(46, 20, 18, 30));
        var positions = angle.NearestToEqual(3);

        Assert.False(angle.CanSpaceEqually(3));
        Assert.Equal([0, 360.0 * 25 / 76, 360.0 * 51 / 76], InDegrees(positions), Near);
    }

    // Closed form: θ₀ = 4°, so 119° is 1° short of 120° and 121.5° is 1.5° past it.
    [Theory]
    [InlineData(119, -1)]
    [InlineData(121.5, 1.5)]
    [InlineData(-120, 0)]
    public void Misfit_is_the_signed_angle_from_the_nearest_permitted_position(double declared, double misfit) =>
        Assert.Equal(misfit, MinMeshAngle.Of(Groups.Simple(20, 25, 70)).Misfit(declared * Degree) / Degree, 9);

    // Closed form: multiples of 4°, counted from the first position.
    [Fact]
    public void Declared_positions_go_to_the_nearest_permitted_ones()
    {
        double[] declared = [10 * Degree, 101.9 * Degree, 191 * Degree, 369 * Degree];

        var positions = MinMeshAngle.Of(Groups.Simple(20, 25, 70)).NearestTo(declared);

        Assert.Equal([0, 92, 180, 0], InDegrees(positions), Near);
        Assert.Equal(1.2, new MinMeshAngle(0).NearestTo([0, 1.2]).Angle(1), 1e-11);
    }

    [Fact]
    public void Impossible_groups_are_refused()
    {
        Assert.Throws<OutsideValidityException>(() => new PlanetGroup(0, []));
        Assert.Throws<OutsideValidityException>(() => new PlanetGroup(1, []));
        Assert.Throws<OutsideValidityException>(() => new PlanetGroup(1, [new(0, 0, 20, false)]));
        Assert.Throws<OutsideValidityException>(() => new PlanetGroup(1, [new(1, 20, 20, false)]));
        Assert.Throws<OutsideValidityException>(() => new PlanetGroup(2, [new(0, 20, 20, false)]));
        Assert.Throws<OutsideValidityException>(() => new PlanetGroup(3, [new(0, 20, 20, false)], [new(1, 20, 2, 20)]));
        Assert.Throws<OutsideValidityException>(() => new MinMeshAngle(90).CanSpaceEqually(0));
    }

    private static double[] InDegrees(PlanetPositions positions) =>
        [.. positions.Angles.Select(angle => angle / Degree)];

    private static bool Near(double expected, double actual) => Math.Abs(expected - actual) < 1e-9;

    // Brute force over all multiples.
    [Fact]
    public void No_permitted_position_is_nearer_than_the_one_chosen() =>
        Gen.Select(Gen.Long[1, 300], Gen.Int[1, 12]).Sample((perTurn, planets) =>
        {
            var positions = new MinMeshAngle(perTurn).NearestToEqual(planets);
            var worst = 0.0;
            for (var planet = 0; planet < planets; planet++)
            {
                var nearest = double.MaxValue;
                for (var step = 0; step <= perTurn; step++)
                {
                    nearest = Math.Min(nearest, Math.Abs(Math.Tau * step / perTurn - Math.Tau * planet / planets));
                }

                var chosen = Math.Abs(positions.Angle(planet) - Math.Tau * planet / planets);
                Assert.Equal(nearest, Math.Min(chosen, Math.Tau - chosen), 9);
                worst = Math.Max(worst, nearest);
            }

            Assert.True(worst <= Math.PI / perTurn + 1e-12);
        });
}
