using Pawl.Mechanics.Gears;
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

    // At this helix z_n = 1.5·z: −60 and 20 teeth have the root of −90 and 30 spur teeth, whose cutter reaches as far beyond its reference circle.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(-0.3, 0.1)]
    public void A_helical_ring_has_the_root_section_of_its_virtual_spur_ring(double shift, double cutterShift)
    {
        const double Module = 2;
        var helix = HelixOf(1.5);
        var (own, cut) = (60 * Module / Math.Cos(helix), 20 * Module / Math.Cos(helix));
        var depth = 2 * Module * (1.25 + cutterShift);
        var helical = RootSections.ByPinionCutter(
            new(-60, Module, Angle, helix, shift, -own + 2 * Module), new(20, cut + depth, 0.4, cutterShift), 1.3);
        var spur = RootSections.ByPinionCutter(
            new(-90, Module, Angle, 0, shift, -90 * Module + 2 * Module), new(30, 30 * Module + depth, 0.4, cutterShift),
            1.3 / Math.Pow(Math.Cos(ToothGeometry.BaseHelixAngle(Angle, helix)), 2));

        Assert.Equal(spur.Chord, helical.Chord, 1e-9);
        Assert.Equal(spur.LeverArm, helical.LeverArm, 1e-9);
        Assert.Equal(spur.FilletRadius, helical.FilletRadius, 1e-9);
        Assert.Equal(spur.FilletAngle, helical.FilletAngle, 1e-9);
        Assert.Equal(spur.LoadAngle, helical.LoadAngle, 1e-9);
    }

    // In the transverse section the tooth of the cutter fills the space of the ring where their pitch circles roll; found here by
    // moving the cutter out until it does, from transverse thicknesses s_t = d·(π/2 + 2·x·tan α_n)/z (ISO 21771).
    [Theory]
    [InlineData(-70, 0.2, 20, 0.1, 15)]
    [InlineData(-85, -0.5, 25, 0, 25)]
    [InlineData(30, 0.3, 40, -0.1, 20)]
    public void A_helical_cutter_stands_without_backlash(int teeth, double shift, int cutterTeeth, double cutterShift, double degrees)
    {
        const double Module = 1.25;
        var helix = Degrees.Rad(degrees);
        var transverse = Math.Atan(Math.Tan(Angle) / Math.Cos(helix));
        var (side, count) = (Math.Sign(teeth), Math.Abs(teeth));
        double Base(int z) => z * Module / Math.Cos(helix) / 2 * Math.Cos(transverse);
        double Half(int z, double x, int sign, double at)
        {
            var pressure = Math.Acos(Base(z) / at);
            return (Math.PI / 2 + sign * 2 * x * Math.Tan(Angle)) / z + sign * (Math.Tan(transverse) - transverse - Math.Tan(pressure) + pressure);
        }

        // Space of the work and tooth of the cutter on pitch circles of the ratio of the teeth. For a ring x counts outward, away from its axis.
        var (low, high) = (Base(cutterTeeth) * 1.0000001, 1.3 * Base(cutterTeeth));
        for (var round = 0; round < 100; round++)
        {
            var middle = (low + high) / 2;
            var there = middle * count / cutterTeeth;
            var full = middle * 2 * Half(cutterTeeth, cutterShift, 1, middle) > there * (2 * Math.PI / count - 2 * Half(count, side * shift, side, there));
            (low, high) = full == (side > 0) ? (middle, high) : (low, middle);
        }

        var cutter = new PinionCutter(cutterTeeth, cutterTeeth * Module / Math.Cos(helix) + 2.5 * Module, 0.2, cutterShift);
        var shaping = new RootShaping(new(teeth, Module, Angle, helix, shift, 0), cutter);
        var centres = low * count / cutterTeeth + side * low;

        Assert.Equal(side * centres, shaping.CentreDistance, 1e-6);
        Assert.Equal(2 * side * centres - cutter.TipDiameter, shaping.RootDiameter, 1e-6);
    }

    // A helical cutter of very many teeth is a helical rack: the closed form of ISO 21771 for the end of the involute.
    [Theory]
    [InlineData(30, 0.2, 20)]
    [InlineData(60, -0.3, 12)]
    public void A_helical_cutter_of_very_many_teeth_ends_the_involute_as_a_rack_does(int teeth, double shift, double degrees)
    {
        const double Module = 2;
        var helix = Degrees.Rad(degrees);
        var transverse = ToothGeometry.TransversePressureAngle(Angle, helix);
        var diameter = teeth * Module / Math.Cos(helix);
        var byRack = Root.FormDiameter(diameter, diameter * Math.Cos(transverse), transverse, Angle, Module, shift, 1.25, 0.2);
        var shaping = new RootShaping(
            new(teeth, Module, Angle, helix, shift, 0), new(2_000_000, 2_000_000 * Module / Math.Cos(helix) + 2.5 * Module, 0.2 * Module, 0));

        Assert.Equal(byRack, shaping.FormDiameter, 1e-4);
    }

    // The straight ring is where the helix ends: nothing jumps there.
    [Fact]
    public void A_helix_of_next_to_nothing_leaves_the_spur_root()
    {
        var cutter = Cutter(20, 2, 2.5, 0.4, 0.1);
        var (spur, helical) = (new RootShaping(new(-70, 2, Angle, 0, 0.1, -136), cutter), new RootShaping(new(-70, 2, Angle, 1e-6, 0.1, -136), cutter));

        Assert.Equal(spur.RootDiameter, helical.RootDiameter, 1e-8);
        Assert.Equal(spur.FormDiameter, helical.FormDiameter, 1e-8);
        Assert.Equal(spur.WorkingAngle, helical.WorkingAngle, 1e-8);
    }

    [Theory]
    [InlineData(-60, 0, 60, 2.25, 0.2, "cannot work in a gear of 60 teeth")]
    [InlineData(-60, 0, 20, 2.25, 0.6, "tip radius of 0.6 mm is greater")]
    [InlineData(-60, 0, 20, 2.25, -0.1, "must not be below zero")]
    [InlineData(-60, 0, 20, -1.5, 0.2, "no involute that its rounding could meet")]
    [InlineData(14, 0, 60, 2.5, 0.1, "undercuts")]
    [InlineData(-60, 95, 20, 2.25, 0.2, "helix angle must lie between")]
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

    /// <summary>The helix angle at which cos² β_b·cos β = 1/ratio.</summary>
    private static double HelixOf(double ratio)
    {
        double low = 0, high = 1;
        for (var round = 0; round < 200; round++)
        {
            var middle = (low + high) / 2;
            var cosine = Math.Cos(ToothGeometry.BaseHelixAngle(Angle, middle));
            (low, high) = 1 / (cosine * cosine * Math.Cos(middle)) < ratio ? (middle, high) : (low, middle);
        }

        return low;
    }

    /// <summary>d_a0 = m·(z_0 + 2·x_0) + 2·h_a0.</summary>
    private static PinionCutter Cutter(int teeth, double module, double addendum, double radius, double shift) =>
        new(teeth, (module * (teeth + (2 * shift))) + (2 * addendum), radius, shift);
}
