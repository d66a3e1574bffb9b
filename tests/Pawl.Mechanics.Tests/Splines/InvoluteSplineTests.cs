using CsCheck;
using Pawl.Mechanics.Splines;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Splines;

public class InvoluteSplineTests
{
    private const double Inch = 25.4;
    private static readonly InvoluteSpline MetricSpline = Metric(20, 2, 30);
    private static readonly InvoluteSpline InchSpline =
        new(SplineSystem.AnsiB921, 20, InvoluteSpline.ModuleOf(16), Math.PI / 6, SplineRoot.Fillet);

    private static readonly Gen<InvoluteSpline> Any = Gen.Select(Gen.Int[10, 60], Gen.Double[0.5, 5], Gen.OneOf(Gen.Const(30.0), Gen.Const(37.5), Gen.Const(45.0)))
        .Select((teeth, module, degrees) => Metric(teeth, module, degrees));

    // ISO 4156-1, from memory: m = 2, z = 20, 30°: D = 40, D_b = 40·cos 30° = 34.641, D_EE = 42, D_EI = 43 flat, 43.6 fillet, D_IE = 37
    // and 36.4, p = 6.2832, E = 3.1416, D_FI = 42.4.
    [Fact]
    public void A_metric_spline_has_the_dimensions_of_the_standard()
    {
        Assert.Equal(40, MetricSpline.PitchDiameter);
        Assert.Equal(34.6410, MetricSpline.BaseDiameter, 5e-5);
        Assert.Equal((42, 43, 37), (MetricSpline.ExternalMajor, MetricSpline.InternalMajor, MetricSpline.ExternalMinor));
        Assert.Equal(6.2832, MetricSpline.CircularPitch, 5e-5);
        Assert.Equal(3.1416, MetricSpline.BasicSpaceWidth, 5e-5);
        var fillet = new InvoluteSpline(SplineSystem.Iso4156, 20, 2, Math.PI / 6, SplineRoot.Fillet);
        Assert.Equal(43.6, fillet.InternalMajor, 1e-9);
        Assert.Equal(36.4, fillet.ExternalMinor, 1e-9);
    }

    // The same, 37.5° and 45°: D_EE m·(z + 0.9) and m·(z + 0.8), D_EI m·(z + 1.4) and m·(z + 1.2).
    [Theory]
    [InlineData(37.5, 41.8, 42.8, 37.2)]
    [InlineData(45, 41.6, 42.4, 37.6)]
    public void Steeper_flanks_have_the_diameters_of_the_standard(double degrees, double major, double internalMajor, double minor)
    {
        var spline = Metric(20, 2, degrees);
        Assert.Equal(major, spline.ExternalMajor, 1e-9);
        Assert.Equal(internalMajor, spline.InternalMajor, 1e-9);
        Assert.Equal(minor, spline.ExternalMinor, 1e-9);
    }

    // ANSI B92.1 by handbooks, from memory, inches: 16/32: p = 0.1963, s_v = 0.0982; 20 teeth: D = 1.2500, D_b = 1.0825, D_o = 21/16,
    // D_ri = 21.8/16 fillet, D_i = 19/16, D_re = 18/16; c_F = 0.002 (0.001·D is less). 8/16: p = 0.3927, D_re = (N − 1.8)/8.
    [Fact]
    public void An_inch_spline_has_the_dimensions_of_handbooks()
    {
        Assert.Equal(0.1963, InchSpline.CircularPitch / Inch, 5e-5);
        Assert.Equal(0.0982, InchSpline.BasicSpaceWidth / Inch, 5e-5);
        Assert.Equal(1.2500, InchSpline.PitchDiameter / Inch, 5e-5);
        Assert.Equal(1.0825, InchSpline.BaseDiameter / Inch, 5e-5);
        Assert.Equal(1.3125, InchSpline.ExternalMajor / Inch, 5e-5);
        Assert.Equal(1.3625, InchSpline.InternalMajor / Inch, 5e-5);
        Assert.Equal(1.1875, InchSpline.InternalMinor / Inch, 5e-5);
        Assert.Equal(1.1250, InchSpline.ExternalMinor / Inch, 5e-5);
        Assert.Equal(1.1875 - 0.004, InchSpline.ExternalForm(0) / Inch, 5e-5);
        var coarse = new InvoluteSpline(SplineSystem.AnsiB921, 20, InvoluteSpline.ModuleOf(8), Math.PI / 6, SplineRoot.Fillet);
        Assert.Equal(0.3927, coarse.CircularPitch / Inch, 5e-5);
        Assert.Equal(18.2 / 8, coarse.ExternalMinor / Inch, 5e-5);
    }

    // The generating rack drawn: its corner h_s below the pitch line touches where the line of action passes, h_s/tan α beside the
    // middle and h_s below the pitch point.
    [Fact]
    public void The_form_diameter_is_where_the_racks_corner_cuts_last() =>
        Gen.Select(Any, Gen.Double[-0.1, 0]).Where((spline, _) => spline.Teeth > 12).Sample((spline, allowance) =>
        {
            var reach = Math.Round(spline.PressureAngle * 180 / Math.PI, 1) switch { 30 => 0.6, 37.5 => 0.55, _ => 0.5 };
            var deep = reach * spline.Module - allowance / 2 / Math.Tan(spline.PressureAngle);
            var corner = 2 * double.Hypot(deep / Math.Tan(spline.PressureAngle), spline.PitchDiameter / 2 - deep);
            return Math.Abs(spline.ExternalForm(allowance) - corner) < 1e-9 * corner;
        });

    [Fact]
    public void Splines_of_no_standard_are_refused()
    {
        Refusal.Says("30°, 37.5° and 45°; this one has 20°", () => Metric(20, 2, 20).Module);
        Refusal.Says("6 teeth or more", () => Metric(5, 2, 30).Module);
        Refusal.Says("fillet roots only", () => new InvoluteSpline(SplineSystem.Iso4156, 20, 2, Math.PI / 4, SplineRoot.Flat).Module);
        Refusal.Says("ANSI B92.1 at 30° only", () =>
            new InvoluteSpline(SplineSystem.AnsiB921, 20, 2, Math.PI / 4, SplineRoot.Fillet).ExternalMajor);
    }

    private static InvoluteSpline Metric(int teeth, double module, double degrees) => new(
        SplineSystem.Iso4156, teeth, module, degrees * Math.PI / 180, degrees == 30 ? SplineRoot.Flat : SplineRoot.Fillet);

    // External inside internal, all diameters in order.
    [Fact]
    public void Diameters_stand_in_order() =>
        Any.Where(spline => spline.Teeth > 12).Sample(spline =>
            spline.ExternalMinor < spline.ExternalForm(0) && spline.ExternalForm(0) < spline.InternalMinor && spline.InternalMinor < spline.PitchDiameter
            && spline.PitchDiameter < spline.ExternalMajor && spline.ExternalMajor < spline.InternalMajor);
}
