using System.Globalization;
using CsCheck;
using Pawl.Mechanics.Gears;

namespace Pawl.Mechanics.Tests.Gears;

public class MeshGeometryTests
{
    private static readonly Gen<Pair> Any = Gen.OneOf(
        Gen.Select(Gen.Int[12, 60], Gen.Int[20, 90]),
        Gen.Select(Gen.Int[12, 40], Gen.Int[8, 90]).Select((z1, more) => (z1, -z1 - more)))
        .Select(Gen.Double[0, 30], Gen.Double[0.5, 10], (teeth, helix, module) =>
            new Pair(module, teeth.Item1, teeth.Item2, HelixAngle: Degrees.Rad(helix)));

    [Fact]
    public void Shifts_that_cancel_leave_the_centre_distance_alone() =>
        Gen.Select(Any, Gen.Double[-0.5, 0.5]).Sample((pair, shift) =>
            Math.Abs((pair with { Shift1 = shift, Shift2 = -shift }).Centre - pair.Reference) <= 1e-9 * Math.Abs(pair.Reference));

    // Thicker teeth push external axes apart; in a ring they force the pinion closer to the ring's axis, until at 0.164 modules for
    // 8 teeth of difference no pressure angle is left: inv 20° = 2·tan 20°·0.164/8.
    [Fact]
    public void More_shift_makes_the_signed_centre_distance_greater() =>
        Gen.Select(Any, Gen.Double[0.001, 0.16]).Sample((pair, shift) => (pair with { Shift1 = shift }).Centre > pair.Reference);

    [Fact]
    public void The_angle_from_the_shifts_and_from_the_centre_distance_are_one() =>
        Gen.Select(Any, Gen.Double[-0.05, 0.3]).Sample((pair, shift) =>
        {
            var shifted = pair with { Shift1 = pair.Teeth2 > 0 ? shift : -shift };
            var fromCentre = MeshGeometry.WorkingPressureAngleFromCentreDistance(
                pair.Reference, pair.TransverseAngle, shifted.Centre);
            var back = ClosedForms.ProfileShiftSum(
                fromCentre, pair.TransverseAngle, pair.NormalAngle, pair.Teeth1, pair.Teeth2);
            return Math.Abs(fromCentre - shifted.WorkingAngle) < 1e-9 && Math.Abs(back - shifted.Shift1) < 1e-7;
        });

    // The shifts that made the angle come back from it, external and internal.
    [Fact]
    public void The_sum_of_the_shifts_follows_from_the_working_pressure_angle() =>
        Gen.Select(Any, Gen.Double[-0.05, 0.3]).Sample((pair, shift) =>
        {
            var shifted = pair with { Shift1 = pair.Teeth2 > 0 ? shift : -shift };
            var sum = MeshGeometry.ProfileShiftSum(shifted.WorkingAngle, pair.TransverseAngle, pair.NormalAngle, pair.Teeth1, pair.Teeth2);
            return Math.Abs(sum - shifted.Shift1) < 1e-7;
        });

    [Fact]
    public void Working_pitch_circles_meet_at_the_working_centre_distance() =>
        Gen.Select(Any, Gen.Double[0, 0.05]).Sample((pair, shift) =>
        {
            var shifted = pair with { Shift1 = shift };
            var sum = MeshGeometry.WorkingPitchDiameter(pair.Base1, shifted.WorkingAngle)
                + MeshGeometry.WorkingPitchDiameter(pair.Base2, shifted.WorkingAngle);
            return Math.Abs(sum / 2 - shifted.Centre) <= 1e-9 * Math.Abs(shifted.Centre);
        });

    // No backlash: the tooth of one fills the space of the other at the working pitch circle.
    [Fact]
    public void The_teeth_fill_the_spaces_at_the_working_pitch_circle() =>
        Gen.Select(Any, Gen.Double[-0.02, 0.3]).Sample((pair, shift) =>
        {
            var shifted = pair with { Shift1 = pair.Teeth2 > 0 ? shift : -shift / 10 };
            var pitch1 = MeshGeometry.WorkingPitchDiameter(pair.Base1, shifted.WorkingAngle);
            var pitch2 = MeshGeometry.WorkingPitchDiameter(pair.Base2, shifted.WorkingAngle);
            var tooth = ToothGeometry.TransverseThicknessAt(
                pitch1, pair.Base1, pair.Teeth1, shifted.Shift1, pair.NormalAngle, pair.TransverseAngle);
            var space = ClosedForms.TransverseSpaceWidthAt(pitch2, pair.Teeth2, ToothGeometry.TransverseThicknessAt(
                pitch2, pair.Base2, pair.Teeth2, 0, pair.NormalAngle, pair.TransverseAngle));
            return Math.Abs(tooth - space) <= 1e-9 * pair.NormalModule;
        });

    [Fact]
    public void A_shortened_tip_keeps_the_clearance_of_the_rack() =>
        Gen.Select(Any.Where(pair => pair.Teeth2 > 0), Gen.Double[0, 0.5], Gen.Double[0, 0.5]).Sample((pair, first, second) =>
        {
            var shifted = pair with { Shift1 = first, Shift2 = second, Shorten = true };
            return shifted.TipAlteration <= 1e-12
                && Math.Abs(MeshGeometry.TipClearance(shifted.Centre, shifted.Tip1, shifted.Root2) - 0.25 * pair.NormalModule) < 1e-9
                && Math.Abs(MeshGeometry.TipClearance(shifted.Centre, shifted.Tip2, shifted.Root1) - 0.25 * pair.NormalModule) < 1e-9;
        });

    [Fact]
    public void An_impossible_centre_distance_is_told_with_the_least_possible_one()
    {
        // a = 40 mm, α = 20°: 40·cos 20° = 37.5877 mm.
        var message = Message(() => MeshGeometry.WorkingPressureAngleFromCentreDistance(40, Degrees.Rad(20), 37.5));

        Assert.Equal(
            "no working pressure angle: the centre distance 37.5 mm is not above the least possible 37.5877 mm", message);
        Assert.Contains(
            "differ in sign",
            Message(() => MeshGeometry.WorkingPressureAngleFromCentreDistance(-40, Degrees.Rad(20), 40)),
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_message_reads_the_same_in_every_culture()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            An_impossible_centre_distance_is_told_with_the_least_possible_one();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void An_impossible_sum_of_shifts_is_told_with_its_limit()
    {
        // inv 20°·80/(2·tan 20°) = 1.638.
        Assert.Contains("below the least possible -1.638", Message(() => Sum(-2, 20, 60)), StringComparison.Ordinal);
        Assert.Contains("above the greatest possible 0.819", Message(() => Sum(1, 20, -60)), StringComparison.Ordinal);
        Assert.Contains("same number of teeth", Message(() => Sum(0, 40, -40)), StringComparison.Ordinal);
        Assert.False(MeshGeometry.TryWorkingPressureAngleFromShift(
            Degrees.Rad(20), Degrees.Rad(20), -2, 20, 60, out _));
        Assert.False(MeshGeometry.TryWorkingPressureAngleFromCentreDistance(40, Degrees.Rad(20), 37.5, out _));
    }

    [Fact]
    public void Face_width_is_set_against_the_pinions_diameter() =>
        Assert.Equal(0.75, MeshGeometry.FaceWidthRatio(30, 40), 1e-15);

    private static double Sum(double shiftSum, int teeth1, int teeth2) =>
        MeshGeometry.WorkingPressureAngleFromShift(Degrees.Rad(20), Degrees.Rad(20), shiftSum, teeth1, teeth2);

    private static string Message(Func<double> formula) =>
        Assert.Throws<OutsideValidityException>(() => formula()).Message;
}
