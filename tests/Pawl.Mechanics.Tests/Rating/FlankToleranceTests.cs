using Pawl.Mechanics.Rating;
using Pawl.Mechanics.Tests.Gears;

namespace Pawl.Mechanics.Tests.Rating;

public class FlankToleranceTests
{
    // ISO 1328-1:1995, single pitch deviation, grade 5, µm, reference diameters over 50 up to 125 mm; from memory. The edition of
    // 2013 has other formulas, but kept the level of a grade: at the geometric means of the steps both agree within a fifth.
    [Theory]
    [InlineData(0.5, 2, 5.5)]
    [InlineData(2, 3.5, 6)]
    [InlineData(3.5, 6, 6.5)]
    [InlineData(6, 10, 7.5)]
    [InlineData(10, 16, 9)]
    [InlineData(16, 25, 11)]
    public void A_class_means_about_what_the_grade_meant_in_1995(double over, double upTo, double micrometres)
    {
        var tolerance = FlankTolerance.SinglePitch(Math.Sqrt(50 * 125), Math.Sqrt(over * upTo), 5);

        Assert.Equal(micrometres, tolerance * 1000, micrometres / 5);
    }

    // 0.001·50 + 0.4·2 + 5 = 5.85 µm in class 5; two classes coarser are twice as much.
    [Theory]
    [InlineData(5, 5.85)]
    [InlineData(7, 11.7)]
    [InlineData(3, 2.925)]
    [InlineData(6, 8.273149)]
    public void Two_classes_make_a_factor_of_two(int toleranceClass, double micrometres)
    {
        Assert.Equal(micrometres, FlankTolerance.SinglePitch(50, 2, toleranceClass) * 1000, 5e-7);
        Assert.Equal(micrometres, FlankTolerance.SinglePitch(-50, 2, toleranceClass) * 1000, 5e-7);
    }

    // Profile form deviation of ISO 1328-1:1995, grade 5: 2.5·√m_n + 0.17·√d + 0.5 µm, as a public calculation restates it. The
    // edition of 2013 dropped the diameter; over usual gears both agree within a fifth.
    [Theory]
    [InlineData(50, 2.5)]
    [InlineData(100, 3)]
    [InlineData(150, 5)]
    [InlineData(300, 8)]
    public void A_class_allows_about_the_profile_of_1995(double diameter, double module)
    {
        var earlier = 2.5 * Math.Sqrt(module) + 0.17 * Math.Sqrt(diameter) + 0.5;

        Assert.Equal(earlier, FlankTolerance.ProfileForm(diameter, module, 5) * 1000, earlier / 5);
    }

    // 0.55·2 + 5 = 6.1 µm in class 5; √2 a class.
    [Theory]
    [InlineData(5, 6.1)]
    [InlineData(7, 12.2)]
    [InlineData(6, 8.626703)]
    public void The_profile_form_has_no_diameter(int toleranceClass, double micrometres)
    {
        Assert.Equal(micrometres, FlankTolerance.ProfileForm(50, 2, toleranceClass) * 1000, 5e-7);
        Assert.Equal(micrometres, FlankTolerance.ProfileForm(-500, 2, toleranceClass) * 1000, 5e-7);
        Refusal.Says("no profile tolerance: ISO 1328-1 has the flank tolerance classes 1 to 11; this one is 12", () => FlankTolerance.ProfileForm(50, 2, 12));
    }

    // cos 20° = 0.9396926.
    [Fact]
    public void The_base_pitch_is_the_pitch_seen_along_the_line_of_action() =>
        Assert.Equal(0.01 * 0.9396926, FlankTolerance.BasePitch(0.01, Degrees.Rad(20)), 1e-9);

    [Theory]
    [InlineData(50, 2, 12, "this one is 12")]
    [InlineData(50, 2, 0, "this one is 0")]
    [InlineData(50, 0.4, 6, "normal modules of 0.5 to 70 mm")]
    [InlineData(4, 0.5, 6, "reference diameters of 5 to 15000 mm")]
    [InlineData(double.NaN, 2, 6, "reference diameters")]
    public void What_the_standard_leaves_out_has_no_tolerance(double diameter, double module, int toleranceClass, string reason) =>
        Refusal.Says(reason, () => FlankTolerance.SinglePitch(diameter, module, toleranceClass));
}
