using CsCheck;
using Pawl.Mechanics.Assembly;

namespace Pawl.Mechanics.Tests.Assembly;

public sealed class NeighboursTests
{
    private const double Degree = Math.PI / 180;

    // Geometry: six equal circles touch round a seventh.
    [Fact]
    public void Six_planets_that_just_touch_fit_with_no_clearance_required()
    {
        Assert.Equal(6, Neighbours.MaxNumberOnCircle(20, 20, 0));
        Assert.Equal(6, Neighbours.MaxNumber([new(0, 20, 0, 10)], 0));
        Assert.Equal(5, Neighbours.MaxNumberOnCircle(20, 20, 0.01));
    }

    // Brute force: least distance of points on the two tip circles.
    [Fact]
    public void Clearance_of_a_group_is_the_least_distance_of_tip_circles() =>
        Gen.Select(Gen.Double[20, 60], Gen.Double[20, 60], Gen.Double[0.5, 1.5], Gen.Double[0.5, 5.5]).Sample(
            (longRadius, shortRadius, place, gap) =>
            {
                PlanetDisc[] discs = [new(0, longRadius, 0, 1), new(1, shortRadius, place, 2)];
                double[] positions = [0.3, 0.3 + gap];
                var least = double.MaxValue;
                for (var i = 0; i < 4; i++)
                {
                    for (var j = i + 1; j < 4; j++)
                    {
                        least = Math.Min(least, CircleDistance(discs[i % 2], positions[i / 2], discs[j % 2], positions[j / 2]));
                    }
                }

                // 360 points on a circle of radius 2 leave 0.002 mm at most.
                var tightest = Neighbours.Tightest(discs, positions);
                Assert.Equal(least, tightest!.Value.Clearance, 0.005);
            },
            iter: 20);

    [Fact]
    public void Gears_that_mesh_that_turn_together_or_that_lie_apart_are_left_out()
    {
        PlanetDisc touching = new(1, 30, 0.2, 10, new(0, 10));
        PlanetDisc step = new(0, 30, 0, 6, new(0, 10));
        PlanetDisc otherStep = new(0, 30, 0, 9, new(12, 10));

        Assert.NotNull(Neighbours.Tightest([step, touching], [0]));
        Assert.Null(Neighbours.Tightest([step, touching], [0], [(1, 0)]));
        Assert.Null(Neighbours.Tightest([step, otherStep], [0]));
        Assert.Null(Neighbours.Tightest([otherStep, touching], [0]));
        Assert.Equal(0, Neighbours.MaxNumber([step, touching], 0));
    }

    // Closed form, cosine rule: cos δ = (36² + 40² − 30²)/(2·36·40).
    [Fact]
    public void A_meshed_pair_is_a_triangle_of_centres()
    {
        Assert.True(PairTriangle.TryCreate(36, 40, 30, out var triangle));

        Assert.Equal(46.1275281, triangle.Angle / Degree, 5e-8);

        PlanetDisc[] pair = [new(0, 36, 0, 15), new(1, 40, triangle.Angle, 17)];
        var tightest = Neighbours.Tightest(pair, PlanetPositions.Equal(3).Angles.AsSpan(), [(0, 1)]);
        Assert.Equal(13.7821412, tightest!.Value.Clearance, 5e-8);
    }

    // Geometry: three points in one line are no triangle.
    [Theory]
    [InlineData(36, 40, 4)]
    [InlineData(36, 40, 76)]
    [InlineData(36, 40, 3)]
    [InlineData(36, 40, 80)]
    [InlineData(0, 40, 40)]
    public void Centre_distances_that_do_not_close_are_no_triangle(double a, double b, double c)
    {
        Assert.False(PairTriangle.Exists(a, b, c));
        Assert.False(PairTriangle.TryCreate(a, b, c, out _));
    }

    // Geometry.
    [Fact]
    public void Axial_gap_is_negative_where_gears_overlap()
    {
        AxialSpan first = new(10, 12);

        Assert.Equal(1.5, first.GapTo(new(22.5, 10)), 12);
        Assert.Equal(-2, first.GapTo(new(-1, 14)), 12);
    }

    private static double CircleDistance(PlanetDisc first, double firstPosition, PlanetDisc second, double secondPosition)
    {
        var least = double.MaxValue;
        for (var i = 0; i < 360; i++)
        {
            var (x1, y1) = Point(first, firstPosition, i);
            for (var j = 0; j < 360; j++)
            {
                var (x2, y2) = Point(second, secondPosition, j);
                least = Math.Min(least, (x1 - x2) * (x1 - x2) + (y1 - y2) * (y1 - y2));
            }
        }

        // Crossing circles have points in common, so their clearance is taken from the centres.
        var (cx1, cy1) = Centre(first, firstPosition);
        var (cx2, cy2) = Centre(second, secondPosition);
        var centres = Math.Sqrt((cx1 - cx2) * (cx1 - cx2) + (cy1 - cy2) * (cy1 - cy2));
        return centres < first.TipRadius + second.TipRadius ? centres - first.TipRadius - second.TipRadius : Math.Sqrt(least);
    }

    private static (double X, double Y) Point(PlanetDisc disc, double position, int degree)
    {
        var (x, y) = Centre(disc, position);
        return (x + disc.TipRadius * Math.Cos(degree * Degree), y + disc.TipRadius * Math.Sin(degree * Degree));
    }

    private static (double X, double Y) Centre(PlanetDisc disc, double position) =>
        (disc.CentreRadius * Math.Cos(position + disc.Place), disc.CentreRadius * Math.Sin(position + disc.Place));

    // Brute force: planets are added until they touch.
    [Fact]
    public void Greatest_number_on_a_circle_is_the_last_that_clears() =>
        Gen.Select(Gen.Double[20, 100], Gen.Double[5, 60], Gen.Double[0, 5]).Sample((radius, tip, least) =>
        {
            var number = 1;
            while ((2 * radius * Math.Sin(Math.PI / (number + 1))) - tip >= least - 1e-9)
            {
                number++;
            }

            Assert.Equal(number, Neighbours.MaxNumberOnCircle(radius, tip, least));
            Assert.Equal(number, Neighbours.MaxNumber([new(0, radius, 0, tip / 2)], least));
        });
}
