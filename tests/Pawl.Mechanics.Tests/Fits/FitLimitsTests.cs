using CsCheck;
using Pawl.Mechanics.Fits;

namespace Pawl.Mechanics.Tests.Fits;

public class FitLimitsTests
{
    private static readonly Gen<LimitDeviations> AnyLimits =
        Gen.Select(Gen.Double[-0.1, 0.1], Gen.Double[0, 0.1], (lower, width) => new LimitDeviations(lower, lower + width));

    // ISO 286-1: C_min = EI − es, C_max = ES − ei, with the deviations of ISO 286-2 any fit table prints. µm.
    [Theory]
    [InlineData(25, "H", 7, "g", 6, 7, 41, FitKind.Clearance)]
    [InlineData(40, "H", 7, "p", 6, -42, -1, FitKind.Interference)]
    [InlineData(40, "H", 7, "k", 6, -18, 23, FitKind.Transition)]
    [InlineData(50, "N", 7, "h", 6, -33, 8, FitKind.Transition)]
    [InlineData(50, "H", 7, "s", 6, -59, -18, FitKind.Interference)]
    [InlineData(30, "H", 7, "h", 6, 0, 34, FitKind.Clearance)]
    public void Everyday_fits_have_the_clearances_of_their_limits(
        double size, string hole, int holeGrade, string shaft, int shaftGrade, double least, double greatest, FitKind kind)
    {
        var fit = Fitted.Of(Iso286.Limits(hole, holeGrade, size), Iso286.Limits(shaft, shaftGrade, size));
        Assert.Equal(least / 1000, fit.Min, 1e-9);
        Assert.Equal(greatest / 1000, fit.Max, 1e-9);
        Assert.Equal(kind, fit.Kind);
    }

    // Normal class of ISO 492, from memory: bore of 25 mm 0/−10 µm, outside of 62 mm 0/−13 µm. On k5 (+11/+2): overlap 2 to 21 µm; in
    // H7 (+30/0): play 0 to 43 µm.
    [Fact]
    public void Rings_of_bearings_make_tighter_fits_than_an_H7_hole_would()
    {
        var inner = Fitted.Of(new(-0.010, 0), Iso286.Limits("k", 5, 25));
        var outer = Fitted.Of(Iso286.Limits("H", 7, 62), new(-0.013, 0));
        Assert.Equal((0, 0.043), (Math.Round(outer.Min, 9), Math.Round(outer.Max, 9)));
    }

    // Seat of 62 mm in aluminium (23e-6), steel ring (12e-6), both 60 K warmer: 62·11e-6·60 = 0.04092 mm looser.
    [Fact]
    public void Aluminium_about_steel_is_worked_by_hand()
    {
        var hot = new FitLimits(0, 0.043).At(62, 23e-6, 80, 12e-6, 80);
        Assert.Equal(0.04092, hot.Min, 1e-9);
        Assert.Equal(0.08392, hot.Max, 1e-9);
    }

    [Fact]
    public void Any_pair_of_parts_has_a_clearance_within_the_limits() =>
        Gen.Select(AnyLimits, AnyLimits, Gen.Double[0, 1], Gen.Double[0, 1]).Sample((hole, shaft, one, other) =>
        {
            var fit = Fitted.Of(hole, shaft);
            var clearance = hole.Lower + one * (hole.Upper - hole.Lower) - shaft.Lower - other * (shaft.Upper - shaft.Lower);
            return clearance >= fit.Min - 1e-12 && clearance <= fit.Max + 1e-12;
        });

    [Fact]
    public void Like_parts_at_one_temperature_change_only_as_the_play_itself_does() =>
        Gen.Select(AnyLimits, AnyLimits, Gen.Double[-60, 150]).Sample((hole, shaft, temperature) =>
        {
            var fit = Fitted.Of(hole, shaft);
            return fit.At(50, 11.5e-6, temperature, 11.5e-6, temperature) == fit;
        });
}
