using CsCheck;
using Pawl.Mechanics.Fits;
using Pawl.Mechanics.Splines;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Splines;

public class SplineToleranceTests
{
    private static readonly InvoluteSpline Spline = new(SplineSystem.Iso4156, 20, 2, Math.PI / 6, SplineRoot.Flat);

    // By hand, class 5, m = 2, z = 20, 25 long: i* = 1.57898, i** = 0.66221: T + λ = 67.645 µm. L = 62.832: F_p = 37.14; φ = 2.5:
    // F_α = 22.25; F_β = 10: λ = 0.6·√(1379.4 + 495.1 + 100) = 26.66 µm.
    [Fact]
    public void Class_5_is_worked_by_hand()
    {
        Assert.Equal(0.067645, SplineTolerance.Total(Spline, 5), 1e-6);
        Assert.Equal(0.02666, SplineTolerance.Effect(Spline, 5, 25), 5e-6);
        var spaces = SplineTolerance.Spaces(Spline, 5, 25);
        Assert.Equal(Math.PI, spaces.EffectiveMin, 1e-9);
        Assert.Equal(Math.PI + 0.067645, spaces.ActualMax, 1e-6);
        Assert.Equal(Math.PI + 0.02666, spaces.ActualMin, 5e-6);
        Assert.Equal(Math.PI + 0.04099, spaces.EffectiveMax, 1e-5);
    }

    // ISO 286-2 at 40 mm, in print: d9 −80, e8 −50, f7 −25 µm.
    [Theory]
    [InlineData("d", -0.080)]
    [InlineData("e", -0.050)]
    [InlineData("f", -0.025)]
    [InlineData("h", 0)]
    public void Allowances_are_those_of_the_letters(string letter, double allowance) =>
        Assert.Equal(allowance, SplineTolerance.Deviation(Spline, letter, 5), 1e-9);

    // H/h: effective clearance from nothing to twice T; looser letters add their allowance; k takes the play away.
    [Fact]
    public void Fits_have_the_clearance_of_their_allowance() =>
        Gen.Select(Gen.Int[4, 7], Gen.Int[20, 60], Gen.Double[1, 5], Gen.Double[10, 60], Gen.OneOf(Gen.Const("d"), Gen.Const("e"), Gen.Const("f"), Gen.Const("h"))).Sample((@class, teeth, module, length, letter) =>
        {
            var spline = new InvoluteSpline(SplineSystem.Iso4156, teeth, module, Math.PI / 6, SplineRoot.Flat);
            var fit = SplineTolerance.Clearance(SplineTolerance.Spaces(spline, @class, length), SplineTolerance.Teeth(spline, letter, @class, length));
            var (play, width) = (-SplineTolerance.Deviation(spline, letter, @class), SplineTolerance.Total(spline, @class) - SplineTolerance.Effect(spline, @class, length));
            return Math.Abs(fit.Min - play) < 1e-9 && Math.Abs(fit.Max - play - 2 * width) < 1e-9;
        });

    [Fact]
    public void A_coarser_class_is_wider_in_all() =>
        Gen.Select(Gen.Int[4, 6], Gen.Int[10, 60], Gen.Double[0.5, 5], Gen.Double[5, 100]).Sample((@class, teeth, module, length) =>
        {
            var spline = new InvoluteSpline(SplineSystem.Iso4156, teeth, module, Math.PI / 6, SplineRoot.Flat);
            return SplineTolerance.Total(spline, @class) < SplineTolerance.Total(spline, @class + 1)
                && SplineTolerance.Effect(spline, @class, length) < SplineTolerance.Effect(spline, @class + 1, length);
        });

    [Fact]
    public void What_the_standard_does_not_have_is_refused()
    {
        Refusal.Says("classes 4, 5, 6 and 7; 3 is none", () => SplineTolerance.Total(Spline, 3));
        Refusal.Says("`g` is none of them", () => SplineTolerance.Deviation(Spline, "g", 5));
        Refusal.Says("no tolerances of ANSI B92.1", () =>
            SplineTolerance.Total(new(SplineSystem.AnsiB921, 20, 2, Math.PI / 6, SplineRoot.Flat), 5));
    }

    // The multiples of the classes are those of two grades of ISO 286-1, that of the space width three above that of the pitch diameter:
    // where both sizes are the means of their steps (97.2 of 80 to 120, 4.24 of 3 to 6), the rounded grades of the table add up to it.
    [Theory]
    [InlineData(4, 6)]
    [InlineData(5, 7)]
    [InlineData(6, 8)]
    [InlineData(7, 9)]
    public void Total_tolerances_are_the_sum_of_two_grades(int @class, int grade)
    {
        var spline = new InvoluteSpline(SplineSystem.Iso4156, 36, 2.7009, Math.PI / 6, SplineRoot.Flat);
        var ofDiameter = Iso286.Limits("H", grade, spline.PitchDiameter).Upper;
        var ofSpace = Iso286.Limits("H", grade + 3, spline.BasicSpaceWidth).Upper;
        Assert.Equal(1, SplineTolerance.Total(spline, @class) / (ofDiameter + ofSpace), 0.025);
    }
}
