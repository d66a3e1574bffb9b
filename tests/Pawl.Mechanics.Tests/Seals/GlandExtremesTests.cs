using CsCheck;
using Pawl.Mechanics.Seals;

namespace Pawl.Mechanics.Tests.Seals;

/// <summary>Least and greatest against all corners and places between, with formulas written anew.</summary>
public class GlandExtremesTests
{
    private static readonly Gen<Interval> Small = Gen.Double[0, 0.1].Select(spread => new Interval(-spread, spread));

    // Cord 2.62 ± 0.08, inside 44.12 ± 0.38, bore 50.00 to 50.03, root 45.60 to 45.70, plug 49.93 to 49.96, worked by hand: the highest
    // gland is 50.03 − (45.60 + 49.93)/2 = 2.265, the lowest (49.93 − 45.70)/2 = 2.115.
    [Fact]
    public void A_piston_gland_is_worked_by_hand()
    {
        var extremes = new PistonGland(new(50, 50.03), new(45.6, 45.7), new(49.93, 49.96), Interval.Exactly(3.6))
            .Extremes(new(Interval.About(44.12, 0.38), Interval.About(2.62, 0.08)), RubberService.None);
        Assert.Equal(2.115, extremes.Height.Min, 1e-9);
        Assert.Equal(2.265, extremes.Height.Max, 1e-9);
        Assert.Equal(0.090525, extremes.Squeeze.Min, 1e-6);
        Assert.Equal(0.20677, extremes.Squeeze.Max, 1e-5);
        Assert.Equal(0.1, extremes.Gap.Max, 1e-9);
    }

    // Bore 30.00 to 30.03, rod 29.96 to 29.98, groove 34.20 to 34.30: (34.30 + 30.03)/2 − 29.96 = 2.205, (34.20 − 30.03)/2 = 2.085.
    [Fact]
    public void A_rod_gland_is_worked_by_hand()
    {
        var extremes = new RodGland(new(34.2, 34.3), new(29.96, 29.98), new(30, 30.03), Interval.Exactly(3.6))
            .Extremes(new(Interval.About(29.82, 0.3), Interval.About(2.62, 0.08)), RubberService.None);
        Assert.Equal(2.085, extremes.Height.Min, 1e-9);
        Assert.Equal(2.205, extremes.Height.Max, 1e-9);
        Assert.Equal(0.07, extremes.Gap.Max, 1e-9);
    }

    [Fact]
    public void No_corner_of_a_piston_gland_lies_outside_and_some_reach_the_ends() =>
        Gen.Select(Gen.Double[1.5, 100], Gen.Double[1.7, 5.4], Gen.Double[-0.02, 0.06], Gen.Double[0.65, 0.95], Gen.Select(Small, Small, Small, Small, Small), Guide)
            .Sample((inside, cord, stretch, height, spreads, guide) =>
            {
                var root = inside * (1 + stretch);
                var bore = root + 2 * height * cord;
                var ring = new RingExtents(Around(inside, spreads.Item1), Around(cord, spreads.Item2));
                var gland = new PistonGland(
                    Around(bore, spreads.Item3), Around(root, spreads.Item4), Around(bore - 0.25, spreads.Item5),
                    Around(1.4 * cord, spreads.Item1), guide.Guided, guide.RunOut);
                var service = new RubberService(2e-4, new(-40, 80), new(-0.03, 0.08));

                var found = new Seen();
                foreach (var (d1, d2, b, g, p, w) in Corners(ring.InsideDiameter, ring.Cord, gland.Bore, gland.Root, gland.Plug, gland.Width))
                {
                    var play = Math.Max(0, (b - p) / 2);
                    var off = Math.Min(guide.Guided ?? play, play) + guide.RunOut / 2;
                    var lying = g > d1 ? d2 * Math.Sqrt((d1 + d2) / (g + d2)) : d2;
                    foreach (var side in new[] { -1, 1 })
                        found.Add((b - g) / 2 + side * off, lying, w, service);
                }

                // The fill of stubby rings turns between the corners; a test of their own walks them.
                return found.Agrees(gland.Extremes(ring, service), reached: 2 * cord < inside ? 0 : 1);
            }, iter: 500);

    [Fact]
    public void No_corner_of_a_rod_gland_lies_outside_and_some_reach_the_ends() =>
        Gen.Select(Gen.Double[3, 100], Gen.Double[1.7, 5.4], Gen.Double[-0.04, 0.04], Gen.Double[0.65, 0.95], Gen.Select(Small, Small, Small, Small, Small), Guide)
            .Sample((rod, cord, stretch, height, spreads, guide) =>
            {
                var ring = new RingExtents(Around(rod * (1 - stretch), spreads.Item1), Around(cord, spreads.Item2));
                var gland = new RodGland(
                    Around(rod + 2 * height * cord, spreads.Item3), Around(rod, spreads.Item4), Around(rod + 0.25, spreads.Item5),
                    Around(1.4 * cord, spreads.Item1), guide.Guided, guide.RunOut);
                var service = new RubberService(2e-4, new(-40, 80), new(-0.03, 0.08));
                var extremes = gland.Extremes(ring, service);

                // The rod turns some of the values between its ends, so it is walked; and the ends are reached only nearly. Where it
                // just fits the ring, the cord jumps from thickened to free; where the bore takes over from the guide, the gland stops closing.
                var found = new Seen();
                foreach (var (d1, d2, g, b, w) in Corners(ring.InsideDiameter, ring.Cord, gland.Groove, gland.Bore, gland.Width))
                {
                    foreach (var r in Walk(gland.Rod, 40).Concat(new[] { d1, b - 2 * (guide.Guided ?? 0) }.Select(turn => Math.Clamp(turn, gland.Rod.Min, gland.Rod.Max))))
                    {
                        var play = Math.Max(0, (b - r) / 2);
                        var off = Math.Min(guide.Guided ?? play, play) + guide.RunOut / 2;
                        var thin = d1 < r ? d2 * Math.Sqrt((d1 + d2) / (r + d2)) : d2;
                        var thick = d1 < r ? thin : g < d1 + 2 * d2 ? d2 * Math.Sqrt((d1 + d2) / (g - d2)) : d2;
                        found.Add((g - r) / 2 + off, thin, w, service);
                        found.Add((g - r) / 2 - off, thick, w, service);
                    }
                }

                return found.Agrees(extremes, reached: 0.01);
            }, iter: 300);

    [Fact]
    public void No_corner_of_a_face_gland_lies_outside_and_some_reach_the_ends() =>
        Gen.Select(Gen.Double[5, 100], Gen.Double[1.7, 5.4], Gen.Double[-0.03, 0.05], Gen.Double[0.6, 0.95], Gen.Select(Small, Small, Small, Small), Gen.Bool)
            .Sample((inside, cord, hold, depth, spreads, within) =>
            {
                var ring = new RingExtents(Around(inside, spreads.Item1), Around(cord, spreads.Item2));
                var wall = within ? (inside + 2 * cord) * (1 - hold) : inside * (1 + hold);
                var gland = new FaceGland(
                    Around(depth * cord, spreads.Item3), new(0, spreads.Item4.Max), Around(1.4 * cord, spreads.Item2), Around(wall, spreads.Item4), within);
                var service = new RubberService(2e-4, new(-40, 80), new(-0.03, 0.08));
                var found = new Seen();
                foreach (var (d1, d2, h, gap, w, at) in Corners(ring.InsideDiameter, ring.Cord, gland.Depth, gland.Gap, gland.Width, gland.Wall))
                {
                    var stretched = !within && at > d1 ? d2 * Math.Sqrt((d1 + d2) / (at + d2)) : d2;
                    found.Add(h + gap, stretched, w, service);
                    if (within && at < d1 + 2 * d2)
                        found.AddTight(h + gap, d2 * Math.Sqrt((d1 + d2) / (at - d2)), w, service);
                }

                return found.Agrees(gland.Extremes(ring, service), reached: 0);
            }, iter: 500);

    // A cord of 2.6 mm round a root of 1.25 mm is no slender ring: a bigger root closes the gland, and thins the cord even more. The root
    // is walked; the fill is greatest where it begins to stretch the ring, and least half-way.
    [Theory]
    [InlineData(0.9, 1.6)]
    [InlineData(1.27, 1.75)]
    public void The_fill_of_a_stubby_ring_turns_within_the_tolerance_of_the_root(double least, double greatest)
    {
        var gland = new PistonGland(Interval.Exactly(5.6), new(least, greatest), Interval.Exactly(5.6), Interval.Exactly(3.6));
        var extremes = gland.Extremes(new(Interval.Exactly(1.25), Interval.Exactly(2.6)), RubberService.None);
        var walked = Walk(gland.Root, 10_000).Select(g =>
            Math.PI / 4 * 2.6 * 2.6 * Math.Min(1, 3.85 / (g + 2.6)) / ((5.6 - g) / 2 * 3.6)).ToArray();
        Assert.Equal(walked.Max(), extremes.Fill.Max, 1e-5);
        Assert.Equal(walked.Min(), extremes.Fill.Min, 1e-7);
    }

    // The same on a rod, guided to 0.02 mm and by the bore alone.
    [Theory]
    [InlineData(5.6, 3.0, 0.02)]
    [InlineData(9.7, 1.75, null)]
    public void The_fill_of_a_stubby_ring_turns_within_the_tolerance_of_the_rod(double groove, double bore, double? guided)
    {
        var gland = new RodGland(Interval.Exactly(groove), new(1.3, 1.75), Interval.Exactly(bore), Interval.Exactly(3.6), guided);
        var extremes = gland.Extremes(new(Interval.Exactly(1.25), Interval.Exactly(2.6)), RubberService.None);
        var walked = Walk(gland.Rod, 10_000).Select(r =>
            Math.PI / 4 * 2.6 * 2.6 * 3.85 / (r + 2.6) / (((groove - r) / 2 + (guided ?? (bore - r) / 2)) * 3.6)).ToArray();
        Assert.Equal(walked.Min(), extremes.Fill.Min, 1e-7);
    }

    // A guide of 0.08 mm stops the rod until it is thicker than 30.1 − 2·0.08 = 29.94; from there the bore does. Up to that place the
    // gland closes, beyond it only the ring is thinned.
    [Fact]
    public void The_squeeze_of_a_guided_rod_is_greatest_where_guide_and_bore_take_turns()
    {
        var gland = new RodGland(Interval.Exactly(34.2), new(29.9, 30), Interval.Exactly(30.1), Interval.Exactly(3.6), 0.08);
        var extremes = gland.Extremes(new(Interval.Exactly(29.5), Interval.Exactly(2.62)), RubberService.None);
        var walked = Walk(gland.Rod, 1000).Select(r =>
            2.62 * Math.Sqrt(32.12 / (r + 2.62)) - ((34.2 - r) / 2 - Math.Min(0.08, (30.1 - r) / 2))).ToArray();
        Assert.Equal(walked.Max(), extremes.SqueezeLength.Max, 1e-9);
        Assert.Equal(400, Array.IndexOf(walked, walked.Max()), 1.0);
    }

    // The rod is the bore's mirror image: hold the ring by neither and both glands are one.
    [Fact]
    public void A_loose_ring_does_not_know_where_the_groove_is() =>
        Gen.Select(Gen.Double[20, 60], Gen.Double[0.7, 0.9]).Sample((inner, height) =>
        {
            var outer = inner + 2 * height * 2.62;
            var ring = new RingExtents(Interval.Exactly(inner), Interval.Exactly(2.62));
            var piston = new PistonGland(Interval.Exactly(outer), Interval.Exactly(inner), Interval.Exactly(outer - 0.1), Interval.Exactly(3.6), 0.02)
                .Extremes(ring, RubberService.None);
            var rod = new RodGland(Interval.Exactly(outer), Interval.Exactly(inner), Interval.Exactly(inner + 0.1), Interval.Exactly(3.6), 0.02)
                .Extremes(ring, RubberService.None);
            return Math.Abs(piston.Squeeze.Min - rod.Squeeze.Min) < 1e-12
                && Math.Abs(piston.Gap.Max - rod.Gap.Max) < 1e-12
                && rod.Squeeze.Max > piston.Squeeze.Max; // the rod's groove also pushes the ring together
        });

    [Fact]
    public void More_play_never_gives_a_surer_seal() =>
        Gen.Select(Gen.Double[0, 0.1], Gen.Double[0, 0.1]).Sample((less, more) =>
        {
            var (low, high) = (Math.Min(less, more), Math.Max(less, more));
            var ring = new RingExtents(Interval.About(44.12, 0.38), Interval.About(2.62, 0.08));
            GlandExtremes With(double guided) =>
                new PistonGland(new(50, 50.03), new(45.6, 45.7), new(49.75, 49.8), Interval.Exactly(3.6), guided).Extremes(ring, RubberService.None);
            var (tight, loose) = (With(low), With(high));
            return loose.Squeeze.Min <= tight.Squeeze.Min
                && loose.Squeeze.Max >= tight.Squeeze.Max
                && loose.Fill.Max >= tight.Fill.Max
                && loose.Gap.Max >= tight.Gap.Max;
        });

    private static Gen<(double? Guided, double RunOut)> Guide =>
        Gen.Select(Gen.Bool, Gen.Double[0, 0.2], Gen.Double[0, 0.04]).Select((has, guided, runOut) => (has ? guided : (double?)null, runOut));

    private static Interval Around(double nominal, Interval spread) => new(nominal + spread.Min, nominal + spread.Max);

    private static double[] Ends(Interval extent) => [extent.Min, extent.Max];

    private static IEnumerable<double> Walk(Interval extent, int steps) =>
        Enumerable.Range(0, steps + 1).Select(step => extent.Min + (extent.Max - extent.Min) * step / steps);

    private static IEnumerable<(double, double, double, double, double)> Corners(Interval a, Interval b, Interval c, Interval d, Interval e) =>
        from x in Ends(a) from y in Ends(b) from z in Ends(c) from u in Ends(d) from v in Ends(e) select (x, y, z, u, v);

    private static IEnumerable<(double, double, double, double, double, double)> Corners(
        Interval a, Interval b, Interval c, Interval d, Interval e, Interval f) =>
        from rest in Corners(a, b, c, d, e) from w in Ends(f) select (rest.Item1, rest.Item2, rest.Item3, rest.Item4, rest.Item5, w);

    private sealed class Seen
    {
        private readonly List<double> _length = [];
        private readonly List<double> _squeeze = [];
        private readonly List<double> _fill = [];

        public void Add(double height, double cord, double width, RubberService service)
        {
            AddTight(height, cord, width, service);
            _fill.Add(Share(height, cord, width) * (1 + 3 * service.Expansion * service.Rise.Min) * (1 + service.Swell.Min));
        }

        // A thickened cord is no help to the least.
        public void AddTight(double height, double cord, double width, RubberService service)
        {
            _length.Add(cord - height);
            _squeeze.Add(1 - height / cord);
            _fill.Add(Share(height, cord, width) * (1 + 3 * service.Expansion * service.Rise.Max) * (1 + service.Swell.Max));
        }

        public bool Agrees(GlandExtremes extremes, double reached) =>
            Holds(extremes.SqueezeLength, _length, reached) && Holds(extremes.Squeeze, _squeeze, reached) && Holds(extremes.Fill, _fill, reached);

        private static double Share(double height, double cord, double width) => Math.PI / 4 * cord * cord / (height * width);

        // Inside to rounding, and reached to a share of the spread: at corners 0.
        private static bool Holds(Interval extent, List<double> values, double reached)
        {
            var slack = reached * (extent.Max - extent.Min) + 1e-9;
            return values.Min() >= extent.Min - 1e-9 && values.Max() <= extent.Max + 1e-9
                && values.Min() <= extent.Min + slack && values.Max() >= extent.Max - slack;
        }
    }
}
