using CsCheck;
using Pawl.Mechanics.Gears;

namespace Pawl.Mechanics.Tests.Gears;

public class ToothGeometryTests
{
    private static readonly double Twenty = Degrees.Rad(20);

    // The flank drawn as the end of a string unwound from the base circle.
    [Fact]
    public void The_thickness_at_any_diameter_is_that_of_the_drawn_tooth() =>
        Gen.Select(Gen.Int[20, 80], Gen.Bool, Gen.Double[-0.3, 0.5], Gen.Double[-0.5, 1]).Sample((count, isInternal, shift, up) =>
        {
            var teeth = isInternal ? -count - 20 : count;
            var reference = ToothGeometry.ReferenceDiameter(teeth, 1);
            var baseDiameter = ToothGeometry.BaseDiameter(reference, Twenty);
            var diameter = reference + up;
            if (Math.Abs(diameter) < Math.Abs(baseDiameter))
            {
                return true;
            }

            var drawn = 2 * Math.Abs(diameter / 2) * Drawing.HalfToothAngle(
                isInternal,
                Math.Abs(baseDiameter) / 2,
                Math.Abs(reference) / 2,
                Math.PI / 2 + 2 * shift * Math.Tan(Twenty),
                Math.Abs(diameter) / 2);
            return Math.Abs(drawn - ToothGeometry.TransverseThicknessAt(
                diameter, baseDiameter, teeth, shift, Twenty, Twenty)) < 1e-9;
        });

    [Theory]
    [InlineData(30)]
    [InlineData(-60)]
    public void Tooth_and_space_share_the_pitch(int teeth)
    {
        var reference = ToothGeometry.ReferenceDiameter(teeth, 3);
        var baseDiameter = ToothGeometry.BaseDiameter(reference, Twenty);
        var thickness = ToothGeometry.TransverseThicknessAt(reference, baseDiameter, teeth, 0.2, Twenty, Twenty);

        Assert.Equal(3 * (Math.PI / 2 + 0.4 * Math.Tan(Twenty)), thickness, 1e-12);
        Assert.Equal(ClosedForms.NormalThickness(3, 0.2, Twenty), thickness, 1e-12);
        Assert.Equal(
            3 * Math.PI, thickness + ClosedForms.TransverseSpaceWidthAt(reference, teeth, thickness), 1e-12);
    }

    // cos α_n · cos β = cos α_t · cos β_b, and one lead at every diameter: tan β_b = tan β · cos α_t.
    [Fact]
    public void Helix_and_pressure_angles_agree_in_both_sections() =>
        Gen.Select(Gen.Double[14, 28], Gen.Double[-45, 45]).Sample((degrees, helixDegrees) =>
        {
            var (normal, helix) = (Degrees.Rad(degrees), Degrees.Rad(helixDegrees));
            var transverse = ToothGeometry.TransversePressureAngle(normal, helix);
            var atBase = ToothGeometry.BaseHelixAngle(normal, helix);
            return Math.Abs(Math.Cos(normal) * Math.Cos(helix) - Math.Cos(transverse) * Math.Cos(atBase)) < 1e-12
                && Math.Abs(ToothGeometry.HelixAngleAt(helix, 10 * Math.Cos(transverse), 10) - atBase) < 1e-12;
        });

    // ISO 53: h = h_aP + h_fP = 2.25 m for both kinds of gear, whatever the profile shift.
    [Theory]
    [InlineData(30, 0.3)]
    [InlineData(-60, -0.2)]
    public void Full_teeth_are_two_and_a_quarter_modules_deep(int teeth, double shift)
    {
        var reference = ToothGeometry.ReferenceDiameter(teeth, 2);

        Assert.Equal(
            4.5,
            ToothGeometry.ToothDepth(
                ToothGeometry.TipDiameter(reference, 2, shift, 1, 0), ToothGeometry.RootDiameter(reference, 2, shift, 1.25)),
            1e-12);
    }

    // A rack's straight flank reaches down to h_fP − ρ_fP·(1 − sin α); its foot cuts the lowest involute point where the line of
    // action, from the pitch point, has sunk by that depth.
    [Theory]
    [InlineData(20, 0)]
    [InlineData(30, 0.3)]
    public void The_root_form_circle_is_cut_by_the_foot_of_the_racks_straight_flank(int teeth, double shift)
    {
        var pair = new Pair(1, teeth, 60, shift);
        var depth = 1.25 - 0.38 * (1 - Math.Sin(Twenty)) - shift;
        var x = depth / Math.Tan(Twenty);
        var y = teeth / 2.0 - depth;

        Assert.Equal(2 * Math.Sqrt(x * x + y * y), pair.FormDiameter1, 1e-9);
    }

    // At x_min the form circle is the base circle.
    [Fact]
    public void The_involute_reaches_its_base_circle_at_the_limit_of_undercut() =>
        Gen.Select(Gen.Int[8, 16], Gen.Double[0, 30]).Sample((teeth, helix) =>
        {
            var pair = new Pair(1, teeth, 60, HelixAngle: Degrees.Rad(helix));
            var least = Root.MinProfileShift(
                teeth, pair.HelixAngle, pair.NormalAngle, pair.TransverseAngle, pair.Dedendum, pair.RootRadius);
            var above = pair with { Shift1 = least + 1e-9 };
            return Math.Abs(above.FormDiameter1 - above.Base1) < 1e-6
                && Refuses(() => (pair with { Shift1 = least - 1e-6 }).FormDiameter1);
        });

    [Fact]
    public void Thinning_sets_the_tool_deeper() =>
        Assert.Equal(
            -0.1, (ClosedForms.GeneratingProfileShift(0.2, -0.1, 2, Twenty) - 0.2) * 2 * 2 * Math.Tan(Twenty), 1e-12);

    [Theory]
    [InlineData(HelixHand.Right, HelixHand.Left, false, true)]
    [InlineData(HelixHand.Right, HelixHand.Right, false, false)]
    [InlineData(HelixHand.Left, HelixHand.Left, true, true)]
    [InlineData(HelixHand.Left, HelixHand.Right, true, false)]
    [InlineData(HelixHand.None, HelixHand.None, false, true)]
    [InlineData(HelixHand.None, HelixHand.Right, true, false)]
    public void Hands_are_opposite_outside_and_alike_inside(HelixHand first, HelixHand second, bool isInternal, bool agree) =>
        Assert.Equal(agree, Helix.HandsAgree(first, second, isInternal));

    [Fact]
    public void No_result_is_ever_a_number_without_meaning()
    {
        Assert.True(Refuses(() => ToothGeometry.TransverseModule(double.NaN, 0)));
        Assert.True(Refuses(() => ToothGeometry.TransverseModule(-1, 0)));
        Assert.True(Refuses(() => ToothGeometry.ReferenceDiameter(0, 1)));
        Assert.True(Refuses(() => ToothGeometry.TipDiameter(20, 1, double.NaN, 1, 0)));
        Assert.True(Refuses(() => ToothGeometry.TipDiameter(-4, 2, 0, 1, 0.5)));
        Assert.True(Refuses(() => ToothGeometry.RootDiameter(4, 2, 0, 1.25)));
        Assert.True(Refuses(() => ToothGeometry.PressureAngleAt(18, 18.8)));
        Assert.True(Refuses(() => ToothGeometry.PressureAngleAt(-20, 18.8)));
        Assert.True(Refuses(() => ToothGeometry.PressureAngleAt(20, double.NaN)));
        Assert.True(Refuses(() => ToothGeometry.TransversePressureAngle(Twenty, Math.PI / 2)));
        Assert.True(Refuses(() => PathOfContact.OverlapRatio(0, 0.1, 1)));
        Assert.True(Refuses(() => MeshGeometry.TipClearance(40, double.NaN, 57)));
        Assert.True(Refuses(() => Backlash.Normal(double.NaN, 60, Twenty, Twenty, Twenty, Twenty, 0)));
    }

    private static bool Refuses(Func<double> formula)
    {
        var exception = Assert.Throws<OutsideValidityException>(() => formula());
        return exception.Message.Length > 0 && !exception.Message.Contains("Parameter", StringComparison.Ordinal);
    }
}
