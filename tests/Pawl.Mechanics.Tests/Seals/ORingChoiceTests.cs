using CsCheck;
using Pawl.Mechanics.Seals;

namespace Pawl.Mechanics.Tests.Seals;

public class ORingChoiceTests
{
    private static readonly RubberService Cool = new(1.6e-4, new(-40, 20), new(0, 0));
    private static readonly RubberService Oil = new(1.6e-4, new(-40, 80), new(0, 0.05));

    // Every size is tried by the plain definitions and counted in or out; the order falls with the reserve.
    [Fact]
    public void What_fits_a_given_gland_is_what_the_windows_let_through() =>
        Gen.Select(Gen.Double[12, 120], Gen.Double[0.7, 0.9], Gen.Int[0, 3]).Sample((root, height, series) =>
        {
            var cord = new[] { 0.070, 0.103, 0.139, 0.210 }[series] * ORing.Inch;
            var bore = root + 2 * height * cord;
            var gland = new PistonGland(
                Interval.About(bore, 0.01), Interval.About(root, 0.02), Interval.About(bore - 0.1, 0.01), Interval.Exactly(1.45 * cord), 0.02);
            var windows = GlandWindows.For(GlandKind.Static);
            var found = ORingChoice.For(gland.Extremes, windows, Oil);
            foreach (var ring in ORingTable.All)
            {
                var inside = Lies(ring);
                if (inside is { } known && known != found.Any(fit => fit.Ring == ring))
                    return false;
            }

            return found.Zip(found.Skip(1)).All(pair => pair.First.Reserve >= pair.Second.Reserve)
                && found.SequenceEqual(ORingChoice.For(gland.Extremes, windows, Oil));

            bool? Lies(ORing ring)
            {
                // A ring thicker or thinner by a third is out whatever the windows.
                if (Math.Abs(ring.Cord / cord - 1) > 0.1)
                    return false;
                var e = gland.Extremes(ring.Extents, Oil);
                return e.Squeeze.Min >= 0.10 && e.Squeeze.Max <= 0.30 && e.SqueezeLength.Min >= 0.10
                    && e.Stretch!.Min >= -0.02 && e.Stretch.Max <= 0.05 && e.Fill.Max <= 0.85;
            }
        });

    [Fact]
    public void A_rod_and_a_face_find_sizes_too_and_each_lies_in_its_windows()
    {
        var rod = ORingChoice.Rod(new(24.98, 25), new(25.02, 25.05), 0.05, GlandKind.Dynamic, Cool);
        var face = ORingChoice.Face(new(60, 60.1), Interval.Exactly(0), pressureInside: true, Cool);
        var outside = ORingChoice.Face(new(60, 60.1), Interval.Exactly(0), pressureInside: false, Cool);
        Assert.NotEmpty(rod);
        Assert.NotEmpty(face);
        Assert.NotEmpty(outside);
        Assert.All(rod, found => Assert.InRange(found.Fit.Extremes.Squeeze.Min, 0.06, 0.25));
        Assert.All(face, found => Assert.InRange(found.Fit.Extremes.Compression!.Max, -0.02, 0.05));
        Assert.All(outside, found => Assert.InRange(found.Fit.Extremes.Stretch!.Max, -0.02, 0.08));

        // Inside pressure wants the outside diameter at the wall, outside pressure the inside diameter.
        Assert.All(face, found => Assert.Equal(60, found.Fit.Ring.OutsideDiameter, 3.0));
        Assert.All(outside, found => Assert.Equal(60, found.Fit.Ring.InsideDiameter, 5.0));
    }

    // Squeeze 12 % to 25 % in 10 % to 30 %: 0.02/0.2 from below; stretch −1 % to 4 % in −2 % to 5 %: 0.01/0.07; length 0.3 mm of 0.1;
    // fill 0.80 of 0.85: 0.0588 is the least.
    [Fact]
    public void The_reserve_is_the_least_share_left()
    {
        var extremes = new GlandExtremes(
            new(2, 2.1), new(0.3, 0.5), new(0.12, 0.25), new(0.6, 0.80), new(-0.01, 0.04), null, new(0, 0.1));
        Assert.Equal(1 - 0.80 / 0.85, GlandWindows.For(GlandKind.Static).Reserve(extremes), 1e-12);
        Assert.Equal(0.1, GlandWindows.For(GlandKind.Static).Reserve(extremes with { Fill = new(0.5, 0.6) }), 1e-12);
        Assert.Equal(-0.5, GlandWindows.For(GlandKind.Static).Reserve(extremes with { SqueezeLength = new(0.05, 0.5) }), 1e-12);
        Assert.Equal(0.005 / 0.05, GlandWindows.For(GlandKind.Static).Reserve(extremes with { Fill = new(0.5, 0.6), Compression = new(0, 0.025) }), 1e-12);
    }
}
