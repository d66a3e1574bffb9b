using CsCheck;
using Pawl.Mechanics.Gears;

namespace Pawl.Mechanics.Tests.Gears;

public class PathOfContactTests
{
    private static readonly Gen<Pair> External =
        Gen.Select(Gen.Int[20, 60], Gen.Int[20, 90], Gen.Double[0, 0.4], Gen.Double[0, 0.4], Gen.Double[0, 25]).Select(
            (z1, z2, x1, x2, helix) => new Pair(2, z1, z2, x1, x2, Degrees.Rad(helix), Shorten: true));

    private static readonly Gen<Pair> Internal =
        Gen.Select(Gen.Int[20, 40], Gen.Int[25, 90], Gen.Double[0, 0.3], Gen.Double[-0.2, 0.2]).Select(
            (z1, more, x1, x2) => new Pair(2, z1, -z1 - more, x1, x2, Addendum: 0.8));

    // Two drawn gears turned together: the flanks of one tooth pair are watched from first to last contact, and the angle in between
    // is set against the pitch.
    [Theory]
    [InlineData(20, 60, 0, 0)]
    [InlineData(12, 24, 0.6, 0.36)]
    [InlineData(20, -60, 0.3, 0.1)]
    [InlineData(25, -70, 0, 0)]
    public void The_contact_ratio_is_the_angle_a_tooth_pair_stays_in_contact(int z1, int z2, double x1, double x2)
    {
        var pair = new Pair(1, z1, z2, x1, x2, Shorten: z2 > 0, Addendum: z2 > 0 ? 1 : 0.8);
        double angle = pair.WorkingAngle, radius = pair.Base1 / 2, centre = pair.Centre;
        double tip1 = pair.Tip1 / 2, tip2 = Math.Abs(pair.Tip2) / 2;
        double step = 1e-5, inContact = 0;
        for (var unwound = 0.0; unwound < 2; unwound += step)
        {
            // The point of contact on gear 1 is the end of a string unwound by this angle along the common tangent.
            var x = radius * Math.Cos(angle) + radius * unwound * Math.Sin(angle);
            var y = radius * Math.Sin(angle) - radius * unwound * Math.Cos(angle);
            var fromMate = Math.Sqrt(Math.Pow(x - centre, 2) + y * y);
            var withinTip1 = Math.Sqrt(x * x + y * y) <= tip1;
            var withinTip2 = z2 > 0 ? fromMate <= tip2 : fromMate >= tip2;
            inContact += withinTip1 && withinTip2 ? step : 0;
        }

        Assert.Equal(inContact / (2 * Math.PI / z1), pair.ContactRatio, 1e-4);
    }

    [Fact]
    public void The_contact_ratio_falls_as_the_axes_of_an_external_pair_part() =>
        External.Sample(pair =>
        {
            var apart = pair with { Shorten = false, CentreDistance = pair.Centre + 0.05 };
            var further = pair with { Shorten = false, CentreDistance = pair.Centre + 0.06 };
            return further.ContactRatio < apart.ContactRatio;
        });

    [Fact]
    public void Lengths_scale_with_the_module_and_ratios_do_not() =>
        Gen.Select(Gen.OneOf(External, Internal), Gen.Double[0.1, 10]).Sample((pair, factor) =>
        {
            var scaled = pair with { NormalModule = factor * pair.NormalModule, FaceWidth = factor * pair.FaceWidth };
            return Near(scaled.PathLength, factor * pair.PathLength)
                && Near(scaled.Centre, factor * pair.Centre)
                && Near(scaled.Tip2, factor * pair.Tip2)
                && Near(scaled.TipThickness2, factor * pair.TipThickness2)
                && Near(scaled.ContactRatio, pair.ContactRatio)
                && Near(scaled.Overlap, pair.Overlap);
        });

    [Fact]
    public void Swapping_the_gears_of_an_external_pair_changes_neither_contact_ratio_nor_loss() =>
        External.Sample(pair =>
        {
            var swapped = pair with
            {
                Teeth1 = pair.Teeth2,
                Teeth2 = pair.Teeth1,
                Shift1 = pair.Shift2,
                Shift2 = pair.Shift1,
            };
            return Near(swapped.ContactRatio, pair.ContactRatio)
                && (pair.CurvatureA1 <= 0 || pair.CurvatureE2 <= 0 || Near(swapped.LossFactor, pair.LossFactor));
        });

    [Fact]
    public void The_mates_tip_touches_at_the_start_of_the_active_profile() =>
        Gen.OneOf(External, Internal).Where(pair => pair.CurvatureA1 > 0).Sample(pair =>
        {
            var start = PathOfContact.CurvatureAt(pair.ActiveStart1, pair.Base1);
            return Near(start + pair.TipCurvature2, pair.Centre * Math.Sin(pair.WorkingAngle));
        });

    // A ring's active profile begins near its root, beyond the reach of the pinion's tip: |d_Nf2| > |d_a2|, and negative.
    [Fact]
    public void The_start_of_a_rings_active_profile_is_negative_and_outside_of_its_tip() =>
        Internal.Sample(pair =>
        {
            var start = PathOfContact.ActiveProfileStart(pair.Base2, pair.Centre, pair.WorkingAngle, pair.TipCurvature1);
            return start < pair.Tip2 && start > pair.Root2;
        });

    [Fact]
    public void Tips_that_do_not_reach_each_other_have_no_path_of_contact()
    {
        var pair = new Pair(1, 20, 60, CentreDistance: 42.5);

        Assert.Contains(
            "no path of contact",
            Assert.Throws<OutsideValidityException>(() => pair.PathLength).Message,
            StringComparison.Ordinal);
    }

    // At the pitch point flanks only roll: ρ₁/ρ₂ = z₁/z₂.
    [Fact]
    public void Flanks_do_not_slide_at_the_pitch_point() =>
        Gen.OneOf(External, Internal).Sample(pair =>
        {
            var tangent = Math.Tan(pair.WorkingAngle) / 2;
            return Math.Abs(Sliding.Specific(pair.Base1 * tangent, pair.Base2 * tangent, pair.Teeth1, pair.Teeth2)) < 1e-9;
        });

    // Sliding velocity over the path, load halved where two pairs share it, integrated in small steps.
    [Theory]
    [InlineData(20, 60, 0, 0)]
    [InlineData(24, 30, 0.3, 0.2)]
    [InlineData(30, -70, 0, 0)]
    [InlineData(15, 60, 0.7, -0.7)] // The pitch point in double contact: ε₁ above 1.
    [InlineData(60, 15, -0.7, 0.7)]
    public void The_loss_factor_is_the_mean_sliding_under_shared_load(int z1, int z2, double x1, double x2)
    {
        var pair = new Pair(1, z1, z2, x1, x2, Shorten: z2 > 0, Addendum: z2 > 0 ? 1 : 0.8);
        double start = pair.CurvatureA1, end = pair.TipCurvature1;
        var atPitchPoint = pair.Base1 / 2 * Math.Tan(pair.WorkingAngle);
        const int Steps = 200_000;
        double step = (end - start) / Steps, sum = 0;
        for (var i = 0; i < Steps; i++)
        {
            var place = start + (i + 0.5) * step;
            var shared = place < end - pair.BasePitch || place > start + pair.BasePitch;
            sum += (shared ? 0.5 : 1) * Math.Abs(place - atPitchPoint) * step;
        }

        var sliding = 2 / pair.Base1 + 2 / pair.Base2;
        Assert.Equal(sum * sliding / pair.BasePitch, pair.LossFactor, 1e-5);
        Assert.Equal(1 - 0.05 * pair.LossFactor, Sliding.MeshEfficiency(0.05, pair.LossFactor), 1e-15);
        Assert.Throws<OutsideValidityException>(() => Sliding.MeshEfficiency(20, 0.2));
    }

    // The closed form of ISO/TR 14179-2 and of Niemann and Winter, Maschinenelemente II, with the pitch point in single contact.
    [Fact]
    public void In_single_contact_the_loss_factor_is_the_closed_form_of_the_source()
    {
        var pair = new Pair(1, 24, 30, 0.1, 0.2);
        var tip1 = Sliding.TipContactRatio(24, pair.TipAngle1, pair.WorkingAngle);
        var tip2 = Sliding.TipContactRatio(30, pair.TipAngle2, pair.WorkingAngle);
        Assert.True(tip1 < 1 && tip2 < 1);
        Assert.Equal(Math.PI * (1 / 24.0 + 1 / 30.0) * (1 - tip1 - tip2 + tip1 * tip1 + tip2 * tip2), pair.LossFactor, 1e-14);
    }

    // Beyond single contact the closed form takes the load at the pitch point for whole, where it is halved.
    [Fact]
    public void With_the_pitch_point_in_double_contact_the_closed_form_would_be_too_high()
    {
        var pair = new Pair(1, 15, 60, 0.7, -0.7);
        var tip1 = Sliding.TipContactRatio(15, pair.TipAngle1, pair.WorkingAngle);
        var tip2 = Sliding.TipContactRatio(60, pair.TipAngle2, pair.WorkingAngle);
        var closed = Math.PI * (1 / 15.0 + 1 / 60.0) * (1 - tip1 - tip2 + tip1 * tip1 + tip2 * tip2);
        Assert.True(tip1 > 1 || tip2 > 1);
        Assert.True(closed > 1.01 * pair.LossFactor, $"{closed} {pair.LossFactor}");
    }

    private static bool Near(double expected, double actual) =>
        Math.Abs(expected - actual) <= 1e-9 * Math.Max(1, Math.Abs(expected));
}
