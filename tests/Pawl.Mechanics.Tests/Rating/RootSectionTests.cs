using CsCheck;
using Pawl.Mechanics.Gears;
using Pawl.Mechanics.Rating;
using Pawl.Mechanics.Tests.Gears;

namespace Pawl.Mechanics.Tests.Rating;

public class RootSectionTests
{
    private static readonly double Angle = Degrees.Rad(20);
    private static readonly RackTool Rack = new(1.25, 0.38);

    // Table of Y_Fa and Y_Sa of machine design textbooks, reprinted on a public page: load at the tip, 20°, x = 0, ρ_fP = 0.38·m,
    // dedendum 1.25·m. Its numbers were read off a chart: Y_F falls short of the formula by up to 0.017, Y_S by up to 0.007.
    [Theory]
    [InlineData(17, 2.97, 1.52)]
    [InlineData(18, 2.91, 1.53)]
    [InlineData(19, 2.85, 1.54)]
    [InlineData(20, 2.80, 1.55)]
    [InlineData(21, 2.76, 1.56)]
    [InlineData(22, 2.72, 1.57)]
    [InlineData(23, 2.69, 1.575)]
    [InlineData(24, 2.65, 1.58)]
    [InlineData(25, 2.62, 1.59)]
    [InlineData(26, 2.60, 1.595)]
    [InlineData(27, 2.57, 1.60)]
    [InlineData(28, 2.55, 1.61)]
    [InlineData(29, 2.53, 1.62)]
    [InlineData(30, 2.52, 1.625)]
    [InlineData(35, 2.45, 1.65)]
    [InlineData(40, 2.40, 1.67)]
    [InlineData(45, 2.35, 1.68)]
    [InlineData(50, 2.32, 1.70)]
    [InlineData(60, 2.28, 1.73)]
    [InlineData(70, 2.24, 1.75)]
    [InlineData(80, 2.22, 1.77)]
    [InlineData(90, 2.20, 1.78)]
    [InlineData(100, 2.18, 1.79)]
    [InlineData(150, 2.14, 1.83)]
    [InlineData(200, 2.12, 1.865)]
    [InlineData(1_000_000, 2.06, 1.97)]
    public void Form_and_stress_correction_at_the_tip_match_the_textbooks_table(int teeth, double form, double correction)
    {
        var section = RootSections.ByRack(Spur(teeth), Rack, 1);

        Assert.Equal(form, RootFactors.Form(section, 1, Angle), 0.018);
        Assert.Equal(correction, RootFactors.StressCorrection(section), 0.008);
    }

    // Spur pair 20/60, m = 2, x = 0: the equations of ISO 6336-3 in another language, 8 digits.
    [Fact]
    public void The_spur_pair_matches_the_same_equations_in_another_language()
    {
        var tooth = Spur(20, module: 2);
        var section = RootSections.ByRack(tooth, Rack, new Pair(2, 20, 60).ContactRatio);

        Assert.Equal(3.88949709, section.Chord, 1e-8);
        Assert.Equal(1.91492477, section.LeverArm, 1e-8);
        Assert.Equal(1.14590546, section.FilletRadius, 1e-8);
        Assert.Equal(1.69712827, section.NotchParameter, 1e-8);
        Assert.Equal(46.1752051, Degrees.Deg(section.FilletAngle), 1e-7);
        var (form, correction) = (RootFactors.Form(section, 2, Angle), RootFactors.StressCorrection(section));
        Assert.Equal(1.54215728, form, 1e-8);
        Assert.Equal(1.83495447, correction, 1e-8);
        Assert.Equal(141.48942, RootStress.Nominal(2000, 20, 2, form, correction), 1e-5);

        var atTip = RootSections.ByRack(tooth, Rack, 1);
        Assert.Equal(2.79999042, RootFactors.Form(atTip, 2, Angle), 1e-8);
        Assert.Equal(1.55251459, RootFactors.StressCorrection(atTip), 1e-8);
    }

    // A rack drawn and rolled; the tolerance is that of the steps.
    [Theory]
    [InlineData(20, 0, 20, 1.25, 0.38, 0)]
    [InlineData(17, 0.3, 20, 1.25, 0.38, 0)]
    [InlineData(60, -0.4, 20, 1.25, 0.25, 0)]
    [InlineData(25, 0.1, 20, 1.4, 0.35, 0)]
    [InlineData(12, 0.5, 25, 1.25, 0.2, 0)]
    [InlineData(40, 1.0, 20, 1.25, 0.38, 0)]
    [InlineData(30, 0.1, 20, 1.4, 0.3, 0.03)]
    [InlineData(14, 0.0, 20, 1.25, 0.38, 0)]
    public void Chord_height_and_radius_are_those_of_a_rolled_rack(
        int teeth, double shift, double degrees, double dedendum, double radius, double undercut)
    {
        var tooth = Spur(teeth, shift, 2, degrees);
        var rack = new RackTool(dedendum, radius, undercut);
        var section = RootSections.ByRack(tooth, rack, 1);
        var drawn = FilletDrawing.Rack(tooth, rack).Where(Math.PI / 6);

        Assert.Equal(drawn.Chord, section.Chord, 1e-6);
        Assert.Equal(drawn.Radius, section.FilletRadius, 1e-5);
        Assert.Equal(ArmOfDrawnForce(tooth, tooth.TipDiameter / 2, drawn.Height), section.LeverArm, 1e-5);
    }

    // z_n = z/(cos² β_b·cos β) is exactly 30 for 20 teeth at this angle: the helical gear has the root of a spur gear of 30
    // teeth.
    [Fact]
    public void A_helical_gear_has_the_root_section_of_its_virtual_spur_gear()
    {
        double low = 0, high = 1;
        for (var round = 0; round < 200; round++)
        {
            var middle = (low + high) / 2;
            var cosine = Math.Cos(ToothGeometry.BaseHelixAngle(Angle, middle));
            (low, high) = 20 / (cosine * cosine * Math.Cos(middle)) < 30 ? (middle, high) : (low, middle);
        }

        var helical = new RatedTooth(20, 3, Angle, low, 0.2, 20 * 3 / Math.Cos(low) + 2.4 * 3);
        var cosineSquare = Math.Pow(Math.Cos(ToothGeometry.BaseHelixAngle(Angle, low)), 2);
        var section = RootSections.ByRack(helical, Rack, 1.4);
        var spur = RootSections.ByRack(Spur(30, 0.2, 3), Rack, 1.4 / cosineSquare);

        Assert.Equal(spur.Chord, section.Chord, 1e-9);
        Assert.Equal(spur.LeverArm, section.LeverArm, 1e-9);
        Assert.Equal(spur.FilletRadius, section.FilletRadius, 1e-9);
        Assert.Equal(spur.LoadAngle, section.LoadAngle, 1e-9);
    }

    // The string that draws the flank is shorter by one base pitch when the tooth ahead still touches at its tip; on a ring
    // longer.
    [Fact]
    public void The_outer_single_contact_point_lies_part_of_a_base_pitch_from_the_tip() =>
        Gen.Select(Gen.Int[18, 90], Gen.Bool, Gen.Double[1, 1.9]).Sample((teeth, ring, ratio) =>
        {
            var (sign, tip) = (ring ? -1 : 1, ring ? teeth + 30 - 2 : teeth + 2);
            var count = ring ? teeth + 30 : teeth;
            var baseRadius = count * Math.Cos(Angle) / 2;
            var atTip = Math.Sqrt(Math.Pow(tip / 2.0 / baseRadius, 2) - 1);
            var expected = Drawing.Unwound(baseRadius, atTip - sign * (ratio - 1) * 2 * Math.PI / count).Radius;
            var found = RootSections.OuterSingleContactDiameter(
                sign * tip, sign * 2 * baseRadius, ratio, Math.PI * Math.Cos(Angle));
            return Math.Abs(found - sign * 2 * expected) < 1e-9;
        }, iter: 1000);

    [Fact]
    public void More_teeth_or_more_shift_never_weaken_the_tooth_loaded_at_its_tip() =>
        Gen.Select(Gen.Int[18, 80], Gen.Double[0, 0.4], Gen.Double[0.01, 0.1]).Sample((teeth, shift, more) =>
        {
            var form = FormAtTip(Spur(teeth, shift));
            return FormAtTip(Spur(teeth + 1, shift)) < form && FormAtTip(Spur(teeth, shift + more)) < form;
        }, iter: 500);

    [Fact]
    public void The_section_grows_with_the_module_and_its_factors_stay() =>
        Gen.Select(Gen.Int[18, 80], Gen.Double[0.5, 8], Gen.Double[1, 1.8]).Sample((teeth, module, ratio) =>
        {
            var (one, other) = (RootSections.ByRack(Spur(teeth), Rack, ratio), RootSections.ByRack(Spur(teeth, 0, module), Rack, ratio));
            return Math.Abs(other.Chord / module - one.Chord) < 1e-9
                && Math.Abs(RootFactors.Form(other, module, Angle) - RootFactors.Form(one, 1, Angle)) < 1e-9
                && Math.Abs(other.NotchParameter - one.NotchParameter) < 1e-9;
        }, iter: 500);

    [Theory]
    [InlineData(-60, 0, 0.38, 1.5, "a rack cannot cut an internal gear")]
    [InlineData(13, 0, 0.38, 1.5, "undercut")]
    [InlineData(20, 0, 0.5, 1.5, "root radius 0.5·m is greater")]
    [InlineData(20, 0, 0.38, 0.99, "contact ratio must be at least 1")]
    [InlineData(400, -0.2, 0.02, 1.5, "notch parameter q_s must lie from 1 to below 8")]
    [InlineData(14, 1.2, 0.38, 1, "runs to a point")]
    [InlineData(0, 0, 0.38, 1.5, "must have teeth")]
    public void A_root_outside_of_the_method_says_why(int teeth, double shift, double radius, double ratio, string reason)
    {
        var tooth = new RatedTooth(teeth, 1, Angle, 0, shift, teeth + 2 + 2 * shift);

        Assert.Contains(
            reason,
            Assert.Throws<OutsideValidityException>(() => RootSections.ByRack(tooth, new RackTool(1.25, radius), ratio)).Message,
            StringComparison.Ordinal);
    }

    /// <summary>Arm of a force square to the drawn flank at a radius, to the chord at a height over the axis.</summary>
    internal static double ArmOfDrawnForce(RatedTooth tooth, double radius, double height)
    {
        var (isInternal, work) = (tooth.Teeth < 0, Math.Abs(tooth.Teeth) * tooth.NormalModule / 2);
        var thick = tooth.NormalModule * (Math.PI / 2 + 2 * tooth.ProfileShift * Math.Tan(tooth.NormalPressureAngle));
        (double X, double Y) Flank(double r)
        {
            var half = Drawing.HalfToothAngle(isInternal, work * Math.Cos(tooth.NormalPressureAngle), work, thick, r);
            return (-r * Math.Sin(half), r * Math.Cos(half));
        }

        var step = 1e-4 * tooth.NormalModule;
        var (low, at, high) = (Flank(radius - step), Flank(radius), Flank(radius + step));
        var (tx, ty) = (high.X - low.X, high.Y - low.Y);

        // From the flank along its normal (ty, −tx) to x = 0.
        var middle = at.Y - at.X / ty * -tx;
        return isInternal ? height - middle : middle - height;
    }

    private static double FormAtTip(RatedTooth tooth) =>
        RootFactors.Form(RootSections.ByRack(tooth, Rack, 1), tooth.NormalModule, Angle);

    private static RatedTooth Spur(int teeth, double shift = 0, double module = 1, double degrees = 20) =>
        new(teeth, module, Degrees.Rad(degrees), 0, shift, module * (teeth + 2 + 2 * shift));
}
