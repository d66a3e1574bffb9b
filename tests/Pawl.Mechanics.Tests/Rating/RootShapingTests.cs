using Pawl.Mechanics.Rating;
using Pawl.Mechanics.Tests.Gears;

namespace Pawl.Mechanics.Tests.Rating;

public class RootShapingTests
{
    private static readonly double Angle = Degrees.Rad(20);

    // A cutter drawn and rolled, in a ring (z < 0) or along a gear; the tolerances are those of the steps.
    [Theory]
    [InlineData(-70, 0, 20, 0.1, 1.25, 0.2)]
    [InlineData(-40, 0.3, 20, 0.1, 1.25, 0.2)]
    [InlineData(-60, -0.4, 25, 0, 1.25, 0.3)]
    [InlineData(-60, 0, 34, -0.15, 1.25, 0.25)]
    [InlineData(-120, 0.2, 50, 0.2, 1.25, 0.1)]
    [InlineData(-84, 0, 16, 0.3, 1.2, 0.1)]
    [InlineData(30, 0, 20, 0.1, 1.25, 0.2)]
    [InlineData(24, 0.3, 40, -0.1, 1.25, 0.3)]
    public void The_root_is_that_of_a_rolled_cutter(
        int teeth, double shift, int cutterTeeth, double cutterShift, double addendum, double tipRadius)
    {
        const double Module = 1.5;
        var tooth = new RatedTooth(teeth, Module, Angle, 0, shift, Module * (teeth + 1.2 + 2 * shift));
        var cutter = Cutter(cutterTeeth, Module, addendum * Module, tipRadius * Module, cutterShift);
        var section = RootSections.ByPinionCutter(tooth, cutter, 1.4);
        var shaping = new RootShaping(tooth, cutter);
        var drawing = FilletDrawing.Cutter(tooth, cutter);
        var drawn = drawing.Where(teeth > 0 ? Math.PI / 6 : Math.PI / 3);

        Assert.Equal(drawn.Chord, section.Chord, 1e-5);
        Assert.Equal(drawn.Radius, section.FilletRadius, 1e-4);
        Assert.Equal(Math.Sign(teeth) * 2 * drawing.RootRadius, shaping.RootDiameter, 1e-9);

        // The drawn rounding touches the drawn flank; where, is known less well than how close.
        Assert.Equal(cutter.TipRadius, drawing.Touch, 1e-4);
        Assert.Equal(Math.Sign(teeth) * 2 * drawing.FormRadius, shaping.FormDiameter, 0.02 * Module);

        var load = RootSections.OuterSingleContactDiameter(
            tooth.TipDiameter, teeth * Module * Math.Cos(Angle), 1.4, Math.PI * Module * Math.Cos(Angle));
        Assert.Equal(
            RootSectionTests.ArmOfDrawnForce(tooth, Math.Abs(load) / 2, drawn.Height), section.LeverArm, 1e-5);
    }

    // A cutter of very many teeth is a rack. What is left falls as 1/z₀.
    [Theory]
    [InlineData(20, 0, 0.38)]
    [InlineData(35, 0.4, 0.25)]
    [InlineData(80, -0.3, 0.3)]
    public void A_cutter_of_very_many_teeth_leaves_the_root_of_a_rack(int teeth, double shift, double radius)
    {
        var tooth = new RatedTooth(teeth, 2, Angle, 0, shift, 2 * (teeth + 2 + 2 * shift));
        var byRack = RootSections.ByRack(tooth, new RackTool(1.25, radius), 1.5);
        var byCutter = RootSections.ByPinionCutter(
            tooth, Cutter(20_000_000, 2, 2.5, 2 * radius, 0), 1.5);

        Assert.Equal(byRack.Chord, byCutter.Chord, 1e-5);
        Assert.Equal(byRack.LeverArm, byCutter.LeverArm, 1e-5);
        Assert.Equal(byRack.FilletRadius, byCutter.FilletRadius, 1e-5);
        Assert.Equal(byRack.LoadAngle, byCutter.LoadAngle, 1e-12);
    }

    // x + x₀ = 0: work and cutter stand at the reference centre distance, so d_f = d − 2·h_a0 and h_a0 is measured from d₀.
    [Fact]
    public void A_cutter_without_shift_makes_the_root_of_its_addendum()
    {
        var shaping = new RootShaping(
            new RatedTooth(-70, 2, Angle, 0, 0, -136), Cutter(25, 2, 2.5, 0.4, 0));

        Assert.Equal(-145, shaping.RootDiameter, 1e-9);
        Assert.Equal(-45, shaping.CentreDistance, 1e-9);
        Assert.Equal(20, Degrees.Deg(shaping.WorkingAngle), 1e-9);
    }

    [Theory]
    [InlineData(-60, 15, 20, 2.25, 0.2, "covers spur gears only")]
    [InlineData(-60, 0, 60, 2.25, 0.2, "cannot work in a gear of 60 teeth")]
    [InlineData(-60, 0, 20, 2.25, 0.6, "tip radius of 0.6 mm is greater")]
    [InlineData(-60, 0, 20, 2.25, -0.1, "must not be below zero")]
    [InlineData(-60, 0, 20, -1.5, 0.2, "no involute that its rounding could meet")]
    [InlineData(14, 0, 60, 2.5, 0.1, "undercuts")]
    public void A_root_that_cannot_be_shaped_says_why(
        int teeth, double helix, int cutterTeeth, double depth, double radius, string reason)
    {
        var tooth = new RatedTooth(teeth, 1, Angle, Degrees.Rad(helix), 0, teeth + 2);
        var cutter = new PinionCutter(cutterTeeth, cutterTeeth + depth, radius, 0);

        Assert.Contains(
            reason,
            Assert.Throws<OutsideValidityException>(() => RootSections.ByPinionCutter(tooth, cutter, 1.5)).Message,
            StringComparison.Ordinal);
    }

    /// <summary>d_a0 = m·(z_0 + 2·x_0) + 2·h_a0.</summary>
    private static PinionCutter Cutter(int teeth, double module, double addendum, double radius, double shift) =>
        new(teeth, (module * (teeth + (2 * shift))) + (2 * addendum), radius, shift);
}
