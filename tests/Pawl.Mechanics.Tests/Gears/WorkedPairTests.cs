using Pawl.Mechanics.Gears;

namespace Pawl.Mechanics.Tests.Gears;

/// <summary>Whole pairs against numbers printed elsewhere or worked out by an independent program.</summary>
public class WorkedPairTests
{
    private static readonly Pair ExternalShifted = new(3, 12, 24, 0.6, 0.36, Shorten: true);
    private static readonly Pair ExternalHelical =
        new(3, 12, 60, 0.09809, HelixAngle: Degrees.Rad(30), FaceWidth: 30, Shorten: true);

    private static readonly Pair ExternalStandard = new(1, 20, 60, FaceWidth: 10);
    private static readonly Pair InternalStandard = new(1, 20, -60, FaceWidth: 10);
    private static readonly Pair InternalShifted = new(3, 16, -24, 0, -0.5);

    // A handbook's example of a profile-shifted spur pair, reprinted on public pages: m 3, α 20°, z 12 and 24, x 0.6 and 0.36,
    // a_w 56.5 given. It prints α_w 26.0888°, d_b 33.8289 and 67.6579, d_w 37.667 and 75.333, d_a 44.840 and 79.400,
    // d_f 32.100 and 66.660, contact ratio 1.202.
    [Fact]
    public void A_shifted_spur_pair_matches_the_handbook_that_starts_from_the_centre_distance()
    {
        var pair = ExternalShifted with { CentreDistance = 56.5 };

        Assert.Equal(26.0888, Degrees.Deg(pair.WorkingAngle), 0.00005);
        Assert.Equal(33.8289, pair.Base1, 0.00005);
        Assert.Equal(67.6579, pair.Base2, 0.00005);
        Assert.Equal(37.667, MeshGeometry.WorkingPitchDiameter(pair.Base1, pair.WorkingAngle), 0.0005);
        Assert.Equal(75.333, MeshGeometry.WorkingPitchDiameter(pair.Base2, pair.WorkingAngle), 0.0005);
        Assert.Equal(44.840, pair.Tip1, 0.0005);
        Assert.Equal(79.400, pair.Tip2, 0.0005);
        Assert.Equal(32.100, pair.Root1, 0.0005);
        Assert.Equal(66.660, pair.Root2, 0.0005);
        Assert.Equal(1.202, pair.ContactRatio, 0.0005);
        Assert.Equal(
            0.960,
            ClosedForms.ProfileShiftSum(pair.WorkingAngle, pair.TransverseAngle, pair.NormalAngle, 12, 24),
            0.0005);
        Assert.Equal(0.960, MeshGeometry.ProfileShiftSum(pair.WorkingAngle, pair.TransverseAngle, pair.NormalAngle, 12, 24), 0.0005);
    }

    // The same handbook's pairs, from memory: spur with x given, helical 12/60 at 30°, internal 16/24 with 0.5 outward on the ring.
    [Fact]
    public void Shifted_spur_helical_and_internal_pairs_match_the_handbook()
    {
        Assert.Equal(26.0886, Degrees.Deg(ExternalShifted.WorkingAngle), 0.00005);
        Assert.Equal(56.4999, ExternalShifted.Centre, 0.00005);
        Assert.Equal(23.1126, Degrees.Deg(ExternalHelical.WorkingAngle), 0.00005);
        Assert.Equal(125.000, ExternalHelical.Centre, 0.0005);
        // The handbook looks the angle up from inv = 0.060401; half of that last digit is 0.00008°.
        Assert.Equal(31.0937, Degrees.Deg(InternalShifted.WorkingAngle), 0.0001);
        Assert.Equal(13.1683, -InternalShifted.Centre, 0.00005);
    }

    // The rest of each pair: ISO 21771 formulas, worked out by an independent program in another language.
    [Fact]
    public void The_shifted_spur_pair_matches_an_independent_program()
    {
        var pair = ExternalShifted;

        Near(20, Degrees.Deg(pair.TransverseAngle));
        Near(54, pair.Reference);
        Near(56.4998697, pair.Centre);
        Near(26.0885634, Degrees.Deg(pair.WorkingAngle));
        Near(-0.126710093, pair.TipAlteration);
        Near(44.8397394, pair.Tip1);
        Near(79.3997394, pair.Tip2);
        Near(1.26402007, pair.TipThickness1);
        Near(2.21324639, pair.TipThickness2);
        Near(0.75, MeshGeometry.TipClearance(pair.Centre, pair.Tip1, pair.Root2));
        Near(0.75, MeshGeometry.TipClearance(pair.Centre, pair.Tip2, pair.Root1));
        Near(1.20210157, pair.ContactRatio);
        Near(0, pair.Overlap);
        Near(10.6462855, pair.PathLength);
        Near(34.2410007, pair.FormDiameter1);
        Near(34.7942067, pair.ActiveStart1);
        NearSliding(pair, -1.55283164, 0.608278123, 0.655785846, -1.90516816);
        Near(0.216716036, pair.LossFactor);
    }

    [Fact]
    public void The_helical_pair_matches_an_independent_program()
    {
        var pair = ExternalHelical;

        Near(22.7958773, Degrees.Deg(pair.TransverseAngle));
        Near(28.0243207, Degrees.Deg(pair.BaseHelix));
        Near(124.707658, pair.Reference);
        Near(125.000001, pair.Centre);
        Near(23.1126336, Degrees.Deg(pair.WorkingAngle));
        Assert.Equal(-0.000642321847, pair.TipAlteration, 1e-9);
        Near(41.5692194, pair.D1);
        Near(207.846097, pair.D2);
        Near(38.3222906, pair.Base1);
        Near(191.611453, pair.Base2);
        Near(48.1539055, pair.Tip1);
        Near(213.842243, pair.Tip2);
        Near(34.6577594, pair.Root1);
        Near(200.346097, pair.Root2);
        Near(41.6666671, MeshGeometry.WorkingPitchDiameter(pair.Base1, pair.WorkingAngle));
        Near(208.333335, MeshGeometry.WorkingPitchDiameter(pair.Base2, pair.WorkingAngle));
        Near(1.95395396, pair.TipThickness1);
        Near(2.41553173, pair.TipThickness2);
        Near(1.29391052, pair.ContactRatio);
        Near(1.59154943, pair.Overlap);
        Near(2.88545995, PathOfContact.TotalContactRatio(pair.ContactRatio, pair.Overlap));
        Near(12.9814837, pair.PathLength);
        Near(38.3819716, pair.FormDiameter1);
        Near(38.4552658, pair.ActiveStart1);
        NearSliding(pair, -4.94258672, 0.831723112, 0.526879021, -1.1136243);
        Near(0.193371976, pair.LossFactor);
    }

    [Fact]
    public void The_standard_spur_pair_matches_an_independent_program()
    {
        var pair = ExternalStandard;

        Near(40, pair.Centre);
        Near(18.7938524, pair.Base1);
        Near(56.3815572, pair.Base2);
        Near(22, pair.Tip1);
        Near(62, pair.Tip2);
        Near(17.5, pair.Root1);
        Near(57.5, pair.Root2);
        Near(0.694879985, pair.TipThickness1);
        Near(0.785661904, pair.TipThickness2);
        Near(0.25, MeshGeometry.TipClearance(pair.Centre, pair.Tip1, pair.Root2));
        Near(1.67077643, pair.ContactRatio);
        Near(4.93235163, pair.PathLength);
        Near(18.8200665, pair.FormDiameter1);
        Near(18.8594565, pair.ActiveStart1);
        NearSliding(pair, -4.46967609, 0.817173817, 0.535832213, -1.15439336);
        Near(0.15319693, pair.LossFactor);
    }

    [Fact]
    public void The_standard_internal_pair_matches_an_independent_program_and_names_its_interference()
    {
        var pair = InternalStandard;

        Near(-20, pair.Reference);
        Near(-20, pair.Centre);
        Near(-60, pair.D2);
        Near(-56.3815572, pair.Base2);
        Near(-58, pair.Tip2);
        Near(-62.5, pair.Root2);
        Near(0.694879985, pair.TipThickness1);
        Near(0.916558121, pair.TipThickness2);
        Near(0.25, MeshGeometry.TipClearance(pair.Centre, pair.Tip1, pair.Root2));
        Near(0.25, MeshGeometry.TipClearance(pair.Centre, pair.Tip2, pair.Root1));
        Near(1.9496623, pair.ContactRatio);
        Near(5.75565936, pair.PathLength);
        Near(18.8200665, pair.FormDiameter1);
        Near(
            -0.037462282, InternalInterference.InvoluteSlack(pair.Centre, pair.WorkingAngle, pair.Tip2, pair.Base2));
        Near(0.0148073788, Assert.IsType<Interference.Slack>(pair.TipInterference).Radians);
        Near(0.0292387832, Assert.IsType<Interference.Slack>(pair.Trimming).Radians);
        Near(0.267916106, Sliding.Specific(pair.TipCurvature1, pair.CurvatureE2, 20, -60));
        Near(-0.365963667, Sliding.Specific(pair.CurvatureE2, pair.TipCurvature1, -60, 20));
        RefusesTheStartOfContact(pair);
    }

    [Fact]
    public void The_shifted_internal_pair_matches_an_independent_program_and_names_its_interference()
    {
        var pair = InternalShifted;

        Near(-12, pair.Reference);
        Near(-13.1682677, pair.Centre);
        Near(31.0936207, Degrees.Deg(pair.WorkingAngle));
        Near(-69, pair.Tip2);
        Near(-82.5, pair.Root2);
        Near(52.6730708, MeshGeometry.WorkingPitchDiameter(pair.Base1, pair.WorkingAngle));
        Near(-79.0096062, MeshGeometry.WorkingPitchDiameter(pair.Base2, pair.WorkingAngle));
        Near(1.99710254, pair.TipThickness1);
        Near(2.62137739, pair.TipThickness2);
        Near(1.08173229, MeshGeometry.TipClearance(pair.Centre, pair.Tip1, pair.Root2));
        Near(1.67949487, pair.ContactRatio);
        Near(14.8742688, pair.PathLength);
        Near(
            -0.0290945278, InternalInterference.InvoluteSlack(pair.Centre, pair.WorkingAngle, pair.Tip2, pair.Base2));
        Near(0.0400974877, Assert.IsType<Interference.Slack>(pair.TipInterference).Radians);
        Near(0.00812795418, Assert.IsType<Interference.Slack>(pair.Trimming).Radians);
        Near(0.0279324651, Sliding.Specific(pair.TipCurvature1, pair.CurvatureE2, 16, -24));
        Near(-0.0287351075, Sliding.Specific(pair.CurvatureE2, pair.TipCurvature1, -24, 16));
        RefusesTheStartOfContact(pair);
        Assert.Contains(
            "undercut", Assert.Throws<OutsideValidityException>(() => pair.FormDiameter1).Message, StringComparison.Ordinal);
    }

    // Generation limit of the rack, worked out by an independent program.
    [Theory]
    [InlineData(12, 1.25, 0.38, 0.298100984)]
    [InlineData(17, 1.0, 0.0, 0.00568888326)]
    public void The_least_profile_shift_follows_the_rack(int teeth, double dedendum, double radius, double expected) =>
        Assert.Equal(
            expected,
            Root.MinProfileShift(teeth, 0, Degrees.Rad(20), Degrees.Rad(20), dedendum, radius),
            1e-8);

    private static void NearSliding(Pair pair, double first1, double first2, double last1, double last2)
    {
        Near(first1, Sliding.Specific(pair.CurvatureA1, pair.TipCurvature2, pair.Teeth1, pair.Teeth2));
        Near(first2, Sliding.Specific(pair.TipCurvature2, pair.CurvatureA1, pair.Teeth2, pair.Teeth1));
        Near(last1, Sliding.Specific(pair.TipCurvature1, pair.CurvatureE2, pair.Teeth1, pair.Teeth2));
        Near(last2, Sliding.Specific(pair.CurvatureE2, pair.TipCurvature1, pair.Teeth2, pair.Teeth1));
    }

    private static void RefusesTheStartOfContact(Pair pair)
    {
        Refuses(() => pair.ActiveStart1);
        Refuses(() => pair.LossFactor);
        Refuses(() => Sliding.Specific(pair.CurvatureA1, pair.TipCurvature2, pair.Teeth1, pair.Teeth2));
    }

    private static void Refuses(Func<double> formula) => Assert.Contains(
        "involute interference",
        Assert.Throws<OutsideValidityException>(() => formula()).Message,
        StringComparison.Ordinal);

    private static void Near(double expected, double actual) =>
        Assert.Equal(expected, actual, 5e-9 * Math.Max(1, Math.Abs(expected)) * 10);
}
