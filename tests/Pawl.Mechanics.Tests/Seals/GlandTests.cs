using CsCheck;
using Pawl.Mechanics.Seals;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Seals;

public class GlandTests
{
    private const double Inch = ORing.Inch;

    // A public design guide for O-rings, inches: gland depth and the squeeze it gives with the tolerances of cord and depth.
    // Radial, at rest; in a face; moving. Its cord of 0.275 in has ± 0.006 in.
    [Theory]
    [InlineData(0.070, 0.003, 0.050, 0.055, 0.012, 0.023)]
    [InlineData(0.103, 0.003, 0.080, 0.086, 0.014, 0.026)]
    [InlineData(0.139, 0.004, 0.110, 0.116, 0.019, 0.033)]
    [InlineData(0.210, 0.005, 0.170, 0.176, 0.029, 0.045)]
    [InlineData(0.275, 0.006, 0.225, 0.235, 0.034, 0.056)]
    [InlineData(0.070, 0.003, 0.049, 0.054, 0.013, 0.024)]
    [InlineData(0.103, 0.003, 0.075, 0.081, 0.019, 0.031)]
    [InlineData(0.139, 0.004, 0.100, 0.108, 0.027, 0.043)]
    [InlineData(0.210, 0.005, 0.155, 0.165, 0.040, 0.060)]
    [InlineData(0.275, 0.006, 0.205, 0.215, 0.054, 0.076)]
    [InlineData(0.070, 0.003, 0.055, 0.057, 0.010, 0.018)]
    [InlineData(0.103, 0.003, 0.087, 0.090, 0.010, 0.019)]
    [InlineData(0.139, 0.004, 0.119, 0.123, 0.012, 0.024)]
    [InlineData(0.210, 0.005, 0.183, 0.188, 0.017, 0.032)]
    [InlineData(0.275, 0.006, 0.234, 0.240, 0.029, 0.047)]
    public void Squeeze_matches_the_tables_of_a_public_design_guide(
        double cord, double deviation, double shallow, double deep, double least, double greatest)
    {
        var squeeze = Plain(cord, deviation, shallow, deep).SqueezeLength;
        Assert.Equal(least, squeeze.Min / Inch, 1e-9);
        Assert.Equal(greatest, squeeze.Max / Inch, 1e-9);
    }

    // The same guide, squeeze in whole per cent of the free cord: 18 to 32 and 23 to 14 and so on. Half a per cent is its rounding.
    [Theory]
    [InlineData(0.070, 0.003, 0.050, 0.055, 18, 32)]
    [InlineData(0.103, 0.003, 0.080, 0.086, 14, 25)]
    [InlineData(0.139, 0.004, 0.110, 0.116, 14, 23)]
    [InlineData(0.210, 0.005, 0.170, 0.176, 14, 21)]
    [InlineData(0.275, 0.006, 0.225, 0.235, 13, 20)]
    public void Shares_of_squeeze_match_the_tables_of_a_public_design_guide(
        double cord, double deviation, double shallow, double deep, double least, double greatest)
    {
        var squeeze = Plain(cord, deviation, shallow, deep).Squeeze;
        Assert.Equal(least, squeeze.Min * 100, 0.5);
        Assert.Equal(greatest, squeeze.Max * 100, 0.5);
    }

    // Common practice, no source: about 0.020 in of squeeze on a medium cord (0.103 in) in a static radial gland.
    [Fact]
    public void A_medium_cord_at_rest_is_squeezed_by_about_twenty_thousandths()
    {
        var practice = GlandPractice.For(GlandKind.Static, 0.103 * Inch);
        Assert.Equal(0.020, (0.103 * Inch - practice.Height.Middle) / Inch, 0.0015);
    }

    // The windows of the same guide are wider than the trade's table and hold its radial glands.
    [Theory]
    [InlineData(GlandKind.Static, 0.070, 0.050, 0.055)]
    [InlineData(GlandKind.Static, 0.103, 0.080, 0.086)]
    [InlineData(GlandKind.Static, 0.139, 0.110, 0.116)]
    [InlineData(GlandKind.Static, 0.210, 0.170, 0.176)]
    [InlineData(GlandKind.Static, 0.275, 0.225, 0.235)]
    [InlineData(GlandKind.Dynamic, 0.070, 0.055, 0.057)]
    [InlineData(GlandKind.Dynamic, 0.103, 0.087, 0.090)]
    [InlineData(GlandKind.Dynamic, 0.139, 0.119, 0.123)]
    [InlineData(GlandKind.Dynamic, 0.210, 0.183, 0.188)]
    [InlineData(GlandKind.Dynamic, 0.275, 0.234, 0.240)]
    public void The_glands_of_the_trade_lie_within_a_public_design_guide(GlandKind kind, double cord, double shallow, double deep)
    {
        var height = GlandPractice.For(kind, cord * Inch).Height;
        Assert.InRange(height.Min / Inch, shallow - 1e-9, deep);
        Assert.InRange(height.Max / Inch, shallow, deep + 1e-9);
    }

    // A torus of a cord d on a centre line D holds π²·d²·D/4 of rubber, whatever it is pulled to.
    [Fact]
    public void Rubber_neither_comes_nor_goes() =>
        Gen.Select(Gen.Double[2, 200], Gen.Double[1, 6], Gen.Double[0.9, 1.2]).Sample((inside, cord, factor) =>
        {
            static double Volume(double cord, double line) => Math.PI * Math.PI / 4 * cord * cord * line;
            var free = Volume(cord, inside + cord);
            var over = inside * factor;
            var wall = (inside + 2 * cord) / factor;
            var stretched = Gland.StretchedCord(inside, cord, over);
            var compressed = Gland.CompressedCord(inside, cord, wall);
            return factor > 1
                ? Math.Abs(Volume(stretched, over + cord) / free - 1) < 1e-12
                    && Math.Abs(Volume(compressed, wall - cord) / free - 1) < 1e-12
                    && stretched < cord && compressed > cord
                : stretched == cord && compressed == cord;
        });

    // 44.12 mm over 45.65 mm: (45.65 − 44.12)/44.12 = 3.4678 %; cord 2.62·√(46.74/48.27) = 2.57814 mm; gland (50.015 − 45.65)/2 =
    // 2.1825 mm; squeeze 0.39564 mm, 15.346 %.
    [Fact]
    public void A_plug_groove_is_worked_by_hand()
    {
        Assert.Equal(0.034678, Gland.Stretch(44.12, 45.65), 1e-6);
        var cord = Gland.StretchedCord(44.12, 2.62, 45.65);
        Assert.Equal(2.57814, cord, 1e-5);
        var height = Gland.Height(50.015, 45.65);
        Assert.Equal(2.1825, height, 1e-12);
        Assert.Equal(0.39564, Gland.SqueezeLength(cord, height), 1e-5);
        Assert.Equal(0.15346, Gland.Squeeze(cord, height), 1e-5);
    }

    // Ring 30 × 3 in a groove of 35: compression (36 − 35)/36 = 2.7778 %; cord 3·√(33/32) = 3.04651 mm; on a rod of 30 it is not
    // stretched, on one of 31 it is 3·√(33/34) = 2.95555 mm.
    [Fact]
    public void A_rod_groove_is_worked_by_hand()
    {
        Assert.Equal(1.0 / 36, Gland.Compression(30, 3, 35), 1e-12);
        Assert.Equal(3.04651, Gland.CordOnRod(30, 3, 30, 35), 1e-5);
        Assert.Equal(2.95555, Gland.CordOnRod(30, 3, 31, 35), 1e-5);
        Assert.Equal(3, Gland.CordOnRod(30, 3, 30, 36.5));
    }

    // π/4·2.62²/(2.10·3.60) = 71.313 %; hot: 1 + 3·2.3·10⁻⁴·80 = 1.0552, swollen 1.05: 79.012 %.
    [Fact]
    public void Fill_is_worked_by_hand()
    {
        Assert.Equal(0.71313, Gland.Fill(2.62, 2.10, 3.60), 1e-5);
        Assert.Equal(0.79012, Gland.Fill(2.62, 2.10, 3.60, 2.3e-4, 80, 0.05), 1e-5);
    }

    // A round cord pressed to a height may spread; the share of the gland that is rubber is counted on a raster.
    [Fact]
    public void Fill_is_the_share_of_points_of_the_gland_that_lie_in_rubber()
    {
        var (cord, height, width) = (2.62, 2.7, 3.6);
        var hits = 0;
        const int Steps = 1000;
        for (var row = 0; row < Steps; row++)
        {
            for (var column = 0; column < Steps; column++)
            {
                var (x, y) = ((column + 0.5) / Steps * width - width / 2, (row + 0.5) / Steps * height - height / 2);
                hits += x * x + y * y <= cord * cord / 4 ? 1 : 0;
            }
        }

        Assert.Equal((double)hits / (Steps * Steps), Gland.Fill(cord, height, width), 1e-3);
    }

    // (51 − 50)/(2·tan 15°) = 1.8660 mm; a rod goes the other way: (30 − 29)/(2·tan 20°) = 1.3737 mm.
    [Fact]
    public void The_lead_in_is_worked_by_hand()
    {
        Assert.Equal(1.8660, Gland.LeadIn(51, 50, Math.PI / 12), 1e-4);
        Assert.Equal(1.3737, Gland.LeadIn(29, 30, Math.PI / 9), 1e-4);
    }

    // A plug of 49.9 in a bore of 50 touches at 0.05; a pilot may stop it sooner; run-out of 0.04 adds 0.02. Gap: all of 0.1 when it
    // touches, 0.05 + 0.01 when guided.
    [Fact]
    public void A_plug_lies_off_centre_as_far_as_it_touches()
    {
        Assert.Equal(0.05, Gland.Eccentricity(50, 49.9), 1e-12);
        Assert.Equal(0.01, Gland.Eccentricity(50, 49.9, 0.01), 1e-12);
        Assert.Equal(0.05, Gland.Eccentricity(50, 49.9, 0.5), 1e-12);
        Assert.Equal(0.07, Gland.Eccentricity(50, 49.9, runOut: 0.04), 1e-12);
        Assert.Equal(0, Gland.Eccentricity(50, 50.1));
        Assert.Equal(0.1, Gland.ExtrusionGap(50, 49.9), 1e-12);
        Assert.Equal(0.06, Gland.ExtrusionGap(50, 49.9, 0.01), 1e-12);
    }

    // A circle laid off centre in a bore: the distance between them, measured round about, is least and greatest as the heights say.
    [Fact]
    public void Heights_are_the_least_and_greatest_distance_of_two_circles_off_centre() =>
        Gen.Select(Gen.Double[20, 60], Gen.Double[2, 6], Gen.Double[0, 0.4]).Sample((bore, room, off) =>
        {
            var root = bore - room;
            var distances = Enumerable.Range(0, 720).Select(step =>
            {
                var (sine, cosine) = Math.SinCos(step * Math.PI / 360);
                return bore / 2 - Math.Sqrt(Math.Pow(off + root / 2 * cosine, 2) + Math.Pow(root / 2 * sine, 2));
            }).ToArray();
            return Math.Abs(distances.Max() - Gland.Height(bore, root, off)) < 1e-9
                && Math.Abs(distances.Min() - Gland.Height(bore, root, -off)) < 1e-9;
        });

    [Fact]
    public void Impossible_glands_are_refused()
    {
        Refusal.Says("no room is left", () => Gland.Height(50, 50));
        Refusal.Says("no ring of a cord of 3 mm goes into a diameter of 2.5 mm", () => Gland.CompressedCord(10, 3, 2.5));
        Refusal.Says("the cord must be above zero", () => Gland.StretchedCord(10, 0, 11));
        Refusal.Says("the run-out must not be below zero", () => Gland.Eccentricity(50, 49, runOut: -1));
        Refusal.Says("between 0° and 90°", () => Gland.LeadIn(51, 50, 0));
        Refusal.Says("the least of a value is not above its greatest", () => new Interval(2, 1).Min);
        Refusal.Says("no gland for a cord of 3 mm", () => GlandPractice.For(GlandKind.Static, 3).Cord);
    }

    private static GlandExtremes Plain(double cord, double deviation, double shallow, double deep) =>
        new FaceGland(
            new(shallow * Inch, deep * Inch), Interval.Exactly(0), Interval.Exactly(4), Interval.Exactly(1000), PressureInside: true)
            .Extremes(new(Interval.Exactly(50), Interval.About(cord * Inch, deviation * Inch)), RubberService.None);

    // 7.2 mm of groove less one ring of 1.4 mm, and less two.
    [Theory]
    [InlineData(1, 5.8)]
    [InlineData(2, 4.4)]
    public void Back_up_rings_take_their_thickness_from_the_width(int rings, double left) => Assert.Equal(left, Gland.RubberWidth(7.2, rings, 1.4), 1e-12);

    [Fact]
    public void Back_up_rings_that_fill_the_groove_leave_no_gland() =>
        Assert.Contains("leave no room", Assert.Throws<OutsideValidityException>(() => Gland.RubberWidth(2.8, 2, 1.4)).Message, StringComparison.Ordinal);
}
