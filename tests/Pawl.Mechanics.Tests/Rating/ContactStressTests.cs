using CsCheck;
using Pawl.Mechanics.Gears;
using Pawl.Mechanics.Rating;
using Pawl.Mechanics.Tests.Gears;

namespace Pawl.Mechanics.Tests.Rating;

public class ContactStressTests
{
    private static readonly Gen<Pair> External =
        Gen.Select(Gen.Int[20, 60], Gen.Int[20, 90], Gen.Double[0, 0.4], Gen.Double[0, 0.4], Gen.Double[0, 25]).Select(
            (z1, z2, x1, x2, helix) => new Pair(2, z1, z2, x1, x2, Degrees.Rad(helix), Shorten: true));

    private static readonly Gen<Pair> Internal =
        Gen.Select(Gen.Int[20, 40], Gen.Int[25, 90], Gen.Double[0, 0.3], Gen.Double[-0.2, 0.2], Gen.Double[0, 20]).Select(
            (z1, more, x1, x2, helix) => new Pair(2, z1, -z1 - more, x1, x2, Degrees.Rad(helix), Addendum: 0.8));

    private static readonly Gen<Pair> Any = Gen.OneOf(External, Internal);

    // ISO 6336-2, table of the elasticity factor, √MPa; from memory. E: steel 206 000, cast steel 202 000, nodular iron 173 000,
    // grey iron 118 000 to 126 000 MPa, ν = 0.3. Half of the last digit.
    [Theory]
    [InlineData(206_000, 206_000, 189.8)]
    [InlineData(206_000, 202_000, 188.9)]
    [InlineData(206_000, 173_000, 181.4)]
    [InlineData(206_000, 126_000, 165.4)]
    [InlineData(206_000, 118_000, 162.0)]
    [InlineData(202_000, 202_000, 188.0)]
    [InlineData(202_000, 173_000, 180.5)]
    [InlineData(173_000, 173_000, 173.9)]
    [InlineData(126_000, 126_000, 148.4)]
    [InlineData(118_000, 118_000, 143.7)]
    public void The_elasticity_factor_matches_the_table_of_ISO_6336_2(double first, double second, double factor) =>
        Assert.Equal(factor, ContactFactors.Elasticity(new Elastic(first, 0.3), new Elastic(second, 0.3)), 0.0501);

    // Shigley's Mechanical Engineering Design, table of the elastic coefficient C_p, √psi, E in psi, ν = 0.30; from memory. The
    // table is rounded to 10 and here and there to 50.
    [Theory]
    [InlineData(30e6, 30e6, 2300)]
    [InlineData(30e6, 25e6, 2180)]
    [InlineData(30e6, 24e6, 2160)]
    [InlineData(30e6, 22e6, 2100)]
    [InlineData(30e6, 17.5e6, 1950)]
    [InlineData(30e6, 16e6, 1900)]
    [InlineData(24e6, 24e6, 2050)]
    [InlineData(22e6, 22e6, 1960)]
    public void The_elasticity_factor_is_the_elastic_coefficient_of_textbooks(double first, double second, double factor) =>
        Assert.Equal(factor, ContactFactors.Elasticity(new Elastic(first, 0.3), new Elastic(second, 0.3)), 17.0);

    // Every textbook that follows ISO 6336 or DIN 3990: 2.495 for 20°, x = 0, spur; √(2/(cos 20°·sin 20°)) = 2.494573.
    [Fact]
    public void The_zone_factor_of_standard_spur_gears_is_2_495()
    {
        var angle = Degrees.Rad(20);

        Assert.Equal(2.495, ContactFactors.Zone(angle, angle, 0), 5e-4);
        Assert.Equal(2.494573, ContactFactors.Zone(angle, angle, 0), 5e-7);
    }

    // AGMA 908 and Shigley: I = cos φ·sin φ/2 · m_G/(m_G + 1), for internal gears m_G/(m_G − 1); σ = C_p·√(W/(d·b·I)).
    [Fact]
    public void The_zone_factor_agrees_with_the_geometry_factor_I() =>
        Gen.Select(Gen.Double[14.5, 25], Gen.Double[1.1, 8], Gen.Bool).Sample((degrees, ratio, isInternal) =>
        {
            var angle = Degrees.Rad(degrees);
            var factorI = Math.Cos(angle) * Math.Sin(angle) / 2 * ratio / (isInternal ? ratio - 1 : ratio + 1);
            var stress = ContactStress.Nominal(
                ContactFactors.Zone(angle, angle, 0) * 190, 1000, 50, 20, isInternal ? -ratio : ratio);
            return Near(190 * Math.Sqrt(1000 / (50 * 20 * factorI)), stress);
        });

    // Shigley's Mechanical Engineering Design, example 14-4, in pounds and inches, which the formula does not mind; from memory:
    // 17 and 52 teeth, 20°, d = 1.7 in, b = 1.5 in, W = 164.8 lbf, factors 1.377, 1.043 and 1.22, C_p = 2300: σ_c = 70 360 psi.
    // The book rounds I to 0.121, which is 0.05 %.
    [Fact]
    public void The_contact_stress_of_a_textbook_example_is_found()
    {
        var angle = Degrees.Rad(20);
        var nominal = ContactStress.Nominal(ContactFactors.Zone(angle, angle, 0) * 2300, 164.8, 1.7, 1.5, 52.0 / 17);

        Assert.Equal(70_360, ContactStress.OfGear(nominal, 1, 1.377 * 1.043 * 1.22), 50.0);
    }

    // Two cylinders with the curvature of the flanks at the pitch point, pressed together by the whole tooth force.
    [Fact]
    public void The_nominal_stress_is_the_pressure_between_two_cylinders() =>
        Gen.Select(Any, Gen.Double[10, 1e4]).Sample((pair, force) =>
        {
            var factors = ContactFactors.Zone(pair.TransverseAngle, pair.WorkingAngle, pair.BaseHelix)
                * ContactFactors.Elasticity(Elastic.Steel, new Elastic(170_000, 0.28));
            var stress = ContactStress.Nominal(factors, force, pair.D1, pair.FaceWidth, (double)pair.Teeth2 / pair.Teeth1);

            // Flanks at the pitch point, in the plane across the line of contact; the hollow of a ring is negative.
            var (pitch1, pitch2) = (pair.Base1 / Math.Cos(pair.WorkingAngle), pair.Base2 / Math.Cos(pair.WorkingAngle));
            var curvature1 = PathOfContact.CurvatureAt(pitch1, pair.Base1) / Math.Cos(pair.BaseHelix);
            var curvature2 = PathOfContact.CurvatureAt(pitch2, pair.Base2) / Math.Cos(pair.BaseHelix);
            var normalForce = force / Math.Cos(pair.TransverseAngle) / Math.Cos(pair.BaseHelix);
            var length = pair.FaceWidth / Math.Cos(pair.BaseHelix);
            var modulus = 1 / (0.91 / 206_000 + (1 - 0.28 * 0.28) / 170_000);
            var pressure = Math.Sqrt(normalForce / length * modulus / Math.PI * (1 / curvature1 + 1 / curvature2));
            return Near(pressure, stress);
        });

    [Fact]
    public void A_ring_is_pressed_less_than_a_wheel_of_as_many_teeth() =>
        Gen.Select(Gen.Double[1.05, 9], Gen.Double[1, 1e4]).Sample((ratio, force) =>
            ContactStress.Nominal(470, force, 40, 20, -ratio) < ContactStress.Nominal(470, force, 40, 20, ratio));

    [Fact]
    public void Stress_rises_with_the_root_of_the_force_and_falls_with_that_of_the_face_width() =>
        Gen.Select(Gen.Double[1, 1e4], Gen.Double[1.1, 9], Gen.Double[0.1, 10]).Sample((force, ratio, times) =>
        {
            var stress = ContactStress.Nominal(470, force, 40, 20, ratio);
            return Near(stress * Math.Sqrt(times), ContactStress.Nominal(470, force * times, 40, 20, ratio))
                && Near(stress / Math.Sqrt(times), ContactStress.Nominal(470, force, 40, 20 * times, ratio))
                && Near(stress * Math.Sqrt(times), ContactStress.OfGear(stress, 1, times));
        });

    // Seen from either gear: d₂ = u·d₁ and 1/u in place of u.
    [Fact]
    public void Either_gear_may_be_called_the_pinion() =>
        Gen.Select(Gen.Double[0.2, 9], Gen.Double[1, 1e4]).Sample((ratio, force) =>
            Near(
                ContactStress.Nominal(470, force, 40, 20, ratio),
                ContactStress.Nominal(470, force, 40 * ratio, 20, 1 / ratio)));

    // Lines of contact in the plane of action, one base pitch apart, leaning by β_b: their length, in the mean of a mesh, against
    // the face width. From an overlap of 1 the source takes just that.
    [Theory]
    [InlineData(1.2)]
    [InlineData(1.5)]
    [InlineData(1.9)]
    public void The_contact_ratio_factor_of_helical_gears_is_the_length_of_the_lines_of_contact(double ratio)
    {
        const int Steps = 2000;
        var sum = 0.0;
        for (var turn = 0; turn < Steps; turn++)
        {
            for (var line = -3; line <= 3; line++)
            {
                // Unit base pitch, overlap 1: across the face the line moves by one base pitch, from `start` to `start + 1`.
                var start = line + (turn + 0.5) / Steps;
                sum += Math.Max(0, Math.Min(start + 1, ratio) - Math.Max(start, 0)) / Steps;
            }
        }

        Assert.Equal(Math.Sqrt(1 / sum), ContactFactors.ContactRatio(ratio, 1), 1e-9);
        Assert.Equal(Math.Sqrt(1 / ratio), ContactFactors.ContactRatio(ratio, 3), 1e-12);
    }

    // √((4 − 1.67)/3) = 0.881287; ε_β = 0.5: √(0.776667·0.5 + 0.5/1.67) = 0.829298.
    [Theory]
    [InlineData(1.67, 0, 0.881287)]
    [InlineData(1.67, 0.5, 0.829298)]
    [InlineData(1, 0, 1)]
    public void The_contact_ratio_factor_follows_ISO_6336_2(double transverse, double overlap, double factor) =>
        Assert.Equal(factor, ContactFactors.ContactRatio(transverse, overlap), 5e-7);

    // Edition of 2019, and 2006 with its corrigendum: 1/√cos 30° = 1.074570; that of 1996 had 0.930605.
    [Fact]
    public void The_helix_angle_factor_is_that_of_2019() =>
        Assert.Equal(1.074570, ContactFactors.HelixAngle(Degrees.Rad(-30)), 5e-7);

    // The whole force on cylinders at B, one base pitch before the end of contact, against the pitch point; D likewise.
    [Fact]
    public void The_single_pair_factor_is_the_rise_in_pressure_from_the_pitch_point() =>
        Any.Where(pair => pair.ContactRatio is >= 1 and <= 2 && pair.TipCurvature1 > pair.BasePitch && pair.CurvatureA1 > 0)
            .Sample(pair =>
            {
                double Pressure(double curvature1) => Math.Sqrt(
                    1 / curvature1 + 1 / (pair.Centre * Math.Sin(pair.WorkingAngle) - curvature1));
                var atPitchPoint = Pressure(pair.Base1 / 2 * Math.Tan(pair.WorkingAngle));
                return Near(Pressure(pair.TipCurvature1 - pair.BasePitch) / atPitchPoint, M1(pair))
                    && Near(Pressure(pair.CurvatureA1 + pair.BasePitch) / atPitchPoint, M2(pair));
            });

    [Fact]
    public void Overlap_relieves_the_point_of_single_contact()
    {
        Assert.Equal(1.2, ContactFactors.SinglePair(1.2, 0), 1e-12);
        Assert.Equal(1.1, ContactFactors.SinglePair(1.2, 0.5), 1e-12);
        Assert.Equal(1, ContactFactors.SinglePair(1.2, 1.7), 1e-12);
        Assert.Equal(1, ContactFactors.SinglePair(0.9, 0));
    }

    [Fact]
    public void Equal_gears_are_stressed_alike() =>
        Gen.Select(Gen.Int[18, 80], Gen.Double[0, 0.4]).Sample((teeth, shift) =>
        {
            var pair = new Pair(2, teeth, teeth, shift, shift);
            return Near(M1(pair), M2(pair));
        });

    // 20 and 60 teeth of 2 mm, 20 mm wide, 40 N·m on the pinion; steel. The same formulas in another language.
    [Fact]
    public void A_worked_pair_is_rated()
    {
        var pair = new Pair(2, 20, 60);
        var force = 2 * 40_000 / pair.D1;
        var contactRatio = ContactFactors.ContactRatio(pair.ContactRatio, pair.Overlap);
        var factors = ContactFactors.Zone(pair.TransverseAngle, pair.WorkingAngle, 0)
            * ContactFactors.Elasticity(Elastic.Steel, Elastic.Steel) * contactRatio * ContactFactors.HelixAngle(0);
        var nominal = ContactStress.Nominal(factors, force, pair.D1, pair.FaceWidth, 3);
        var stress = ContactStress.OfGear(nominal, ContactFactors.SinglePair(M1(pair), 0), 1);

        Assert.Equal(2000, force, 1e-9);
        Assert.Equal(0.881140089, contactRatio, 5e-10);
        Assert.Equal(761.734385, nominal, 5e-6);
        Assert.Equal(1.07813804, M1(pair), 5e-9);
        Assert.Equal(0.971715263, M2(pair), 5e-9);
        Assert.Equal(821.25482, stress, 5e-5);
        Assert.Equal(1.8264733, 1500 / stress, 5e-7);
    }

    [Fact]
    public void What_the_source_does_not_cover_is_refused()
    {
        Refusal.Says("below −1 for an internal pair", () => ContactStress.Nominal(470, 1000, 40, 20, -1));
        Refusal.Says("below −1 for an internal pair", () => ContactStress.Nominal(470, 1000, 40, 20, -0.4));
        Refusal.Says("below −1 for an internal pair", () => ContactStress.Nominal(470, 1000, 40, 20, double.NaN));
        Refusal.Says("must not be below zero", () => ContactStress.Nominal(470, -1, 40, 20, 3));
        Refusal.Says("contact ratios of 1 and above", () => ContactFactors.ContactRatio(0.98, 0));
        Refusal.Says("ends at a transverse contact ratio of 4", () => ContactFactors.ContactRatio(4, 0));
        Refusal.Says("no pair of teeth is ever alone", () => ContactFactors.SinglePairRatio(0.35, 44, 37.6, 20, 124, 113, 60, 2.1));
        Refusal.Says("involute interference", () => ContactFactors.SinglePairRatio(0.35, 20, 18.8, 10, 124, 112.8, 60, 1.5));
        Refusal.Says("Poisson", () => new Elastic(206_000, 0.5).Compliance);
    }

    private static double M1(Pair pair) => ContactFactors.SinglePairRatio(
        pair.WorkingAngle, pair.Tip1, pair.Base1, pair.Teeth1, pair.Tip2, pair.Base2, pair.Teeth2, pair.ContactRatio);

    private static double M2(Pair pair) => ContactFactors.SinglePairRatio(
        pair.WorkingAngle, pair.Tip2, pair.Base2, pair.Teeth2, pair.Tip1, pair.Base1, pair.Teeth1, pair.ContactRatio);

    private static bool Near(double expected, double actual) => Math.Abs(expected - actual) <= 1e-9 * Math.Abs(expected);
}
