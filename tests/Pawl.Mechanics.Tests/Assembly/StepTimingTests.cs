using CsCheck;
using Pawl.Mechanics.Assembly;

namespace Pawl.Mechanics.Tests.Assembly;

public sealed class StepTimingTests
{
    private static readonly Gen<(PlanetGroup Group, int Step, int Seed)> AtPermittedPosition =
        Gen.Select(Groups.Any, Gen.Int[0, 1000], Gen.Int);

    private static PlanetPositions Permitted(PlanetGroup group, int step)
    {
        var perTurn = MinMeshAngle.Of(group).PositionsPerTurn;
        return perTurn == 0 ? new PlanetPositions(997, [0, step]) : new PlanetPositions(perTurn, [0, step]);
    }

    // Brute force: every seating of the teeth, see Toothing.
    [Fact]
    public void As_many_seatings_fit_as_the_trials_leave() =>
        AtPermittedPosition.Sample(
            test =>
            {
                var toothing = new Toothing(test.Group, test.Seed);
                var position = Permitted(test.Group, test.Step).Angle(1);

                var fitting = toothing.Fitting(position);

                Assert.Equal(toothing.Tried, fitting * StepTiming.InsertionTrials(test.Group, toothing.Seats));
            },
            iter: 1000);

    // Brute force: teeth placed at the mark angles, see Toothing.
    [Fact]
    public void Teeth_meet_when_the_marks_stand_at_their_angles() =>
        AtPermittedPosition.Sample(
            test =>
            {
                var marks = StepTiming.Marks(test.Group, Permitted(test.Group, test.Step));
                var toothing = new Toothing(test.Group, test.Seed);

                Assert.All(marks, mark => Assert.True(toothing.Fits(mark.Position, mark.MarkAngles.AsSpan())));
                Assert.All(marks[0].MarkAngles, angle => Assert.Equal(0, angle));
            },
            iter: 1000);

    // Brute force: a body may be turned by its common factor, and by nothing less, while the others stay.
    [Fact]
    public void A_body_may_be_turned_on_by_its_common_factor() =>
        Gen.Select(Groups.Any, Gen.Int).Sample((group, seed) =>
        {
            var toothing = new Toothing(group, seed);
            for (var body = 0; body < group.Bodies; body++)
            {
                var turned = new double[group.Bodies];
                turned[body] = Math.Tau / group.CommonFactor(body);
                Assert.True(toothing.Fits(0, turned));
                turned[body] /= 2;
                Assert.False(toothing.Fits(0, turned));
            }
        });

    // Brute force: bodies not turned on the carrier at all.
    [Fact]
    public void The_same_mark_points_outward_where_unturned_planets_fit() =>
        (from theGroup in Groups.Any
         from planets in Gen.Int[1, 6]
         from seed in Gen.Int
         select (theGroup, planets, seed)).Sample(
            test =>
            {
                var toothing = new Toothing(test.theGroup, test.seed);
                var fits = true;
                for (var planet = 0; planet < test.planets; planet++)
                {
                    fits &= toothing.Fits(Math.Tau * planet / test.planets, new double[test.theGroup.Bodies]);
                }

                Assert.Equal(fits, StepTiming.SameMarkOutward(test.theGroup, test.planets));
            },
            iter: 1000);

    // Closed form: 24 and 84 teeth pass whole in 2/12, 5/12 and 9/12 of a turn from the first planet; 84 do not in 1/24.
    [Fact]
    public void The_same_mark_may_point_outward_at_unequal_positions_too()
    {
        var group = Groups.SteppedSunRing(24, 40, 20, 84);

        Assert.True(StepTiming.SameMarkOutward(group, new PlanetPositions(24, [1, 5, 11, 19])));
        Assert.False(StepTiming.SameMarkOutward(group, new PlanetPositions(24, [1, 2])));
    }

    // Closed form: trials = z_p1/g and z_p2/g with g = 20; 3 divides 24 and 84.
    [Fact]
    public void One_step_count_that_divides_the_other_makes_marks_needless()
    {
        var group = Groups.SteppedSunRing(24, 40, 20, 84);

        Assert.Equal(2, StepTiming.InsertionTrials(group, 0));
        Assert.Equal(1, StepTiming.InsertionTrials(group, 1));
        Assert.Equal(1, StepTiming.FewestInsertionTrials(group));
        Assert.True(StepTiming.SameMarkOutward(group, 3));
        Assert.False(StepTiming.SameMarkOutward(group, 5));
    }

    // Closed form: g = gcd(21, 14) = 7, so 3 and 2 trials.
    [Fact]
    public void Step_counts_that_do_not_divide_each_other_need_marks()
    {
        var group = Groups.SteppedSunRing(24, 21, 14, 84);

        Assert.Equal(3, StepTiming.InsertionTrials(group, 0));
        Assert.Equal(2, StepTiming.InsertionTrials(group, 1));
    }

    // Worked by hand, in turns, planet 1 at 1/3: 20·u = 25/3 + n and 10·u = −85/3 + m. So u = (25 + 3·n)/60, and 10·u ends in
    // 2/3 for odd n only: u = 28/60 = 7/15, less 4/10 is 1/15. Planet 2: twice as much, 2/15, less 1/10 is 1/30.
    [Fact]
    public void Mark_angle_of_a_stepped_planet_matches_hand_calculation()
    {
        var group = Groups.SteppedSunRing(25, 20, 10, 85);
        Assert.Equal(0, MinMeshAngle.Of(group).Remainder(3));

        var marks = StepTiming.Marks(group, PlanetPositions.Equal(3));

        Assert.Equal(1.0 / 15, marks[1].MarkAngles[0] / Math.Tau, 12);
        Assert.Equal(1.0 / 30, marks[2].MarkAngles[0] / Math.Tau, 12);
    }

    [Fact]
    public void Positions_that_do_not_fit_have_no_mark_angles() =>
        Assert.Throws<OutsideValidityException>(() => StepTiming.Marks(Groups.Simple(20, 25, 70), PlanetPositions.Equal(4)));

    [Fact]
    public void Meshes_that_leave_a_body_free_cannot_seat_a_group()
    {
        var group = Groups.PairTwoSunsRing(48, 21, 18, 30, 90);

        Assert.Throws<OutsideValidityException>(() => StepTiming.InsertionTrials(group, 0));
        Assert.Throws<OutsideValidityException>(() => StepTiming.InsertionTrials(group, 0, 2));
        Assert.Throws<OutsideValidityException>(() => StepTiming.InsertionTrials(group, 0, 4));
        Assert.Equal(1, StepTiming.InsertionTrials(group, 0, 3));
    }
}
