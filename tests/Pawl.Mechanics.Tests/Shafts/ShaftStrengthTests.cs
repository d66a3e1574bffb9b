using CsCheck;
using Pawl.Mechanics.Shafts;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Shafts;

public class ShaftStrengthTests
{
    private static readonly ShaftStrength Steel = new(900, 700);

    private static readonly Gen<ShaftStrength> Strength = Gen.Select(Gen.Double[500, 1200], Gen.Double[0.55, 0.95], Gen.Enum<ShaftSteel>())
        .Select((tensile, yield, steel) => new ShaftStrength(tensile, tensile * yield, steel));

    // Peterson, Stress Concentration Factors, shoulder fillet of a round bar, fitted curves as reprinted on public pages:
    // α = C1 + C2·(2h/D) + C3·(2h/D)² + C4·(2h/D)³, each C = a + b·√(h/r) + c·h/r. Both books drew from the same photoelastic tests.
    // Two fits to one set of curves: a tenth between them is what either claims.
    [Theory]
    [InlineData(44, 40, 2)]
    [InlineData(50, 40, 2)]
    [InlineData(50, 40, 5)]
    [InlineData(60, 40, 5)]
    [InlineData(60, 50, 2)]
    public void Shoulders_agree_with_Petersons_curves(double large, double small, double radius)
    {
        var form = NotchForm.Shoulder(large, small, radius);
        var (depth, share) = ((large - small) / 2, (large - small) / large);
        var ratio = depth / radius;
        var bending = ratio <= 2
            ? Peterson(ratio, share, [0.947, 1.206, -0.131, 0.022, -3.405, 0.915, 0.869, 1.777, -0.555, -0.810, 0.422, -0.260])
            : Peterson(ratio, share, [1.232, 0.832, -0.008, -3.813, 0.968, -0.260, 7.423, -4.868, 0.869, -3.839, 3.070, -0.600]);
        var torsion = Peterson(ratio, share, [0.905, 0.783, -0.075, -0.437, -1.969, 0.553, 1.557, 1.073, -0.578, -1.061, 0.171, 0.086]);
        var axial = ratio <= 2
            ? Peterson(ratio, share, [0.926, 1.157, -0.099, 0.012, -3.036, 0.961, -0.302, 3.977, -1.744, 0.365, -2.098, 0.878])
            : Peterson(ratio, share, [1.200, 0.860, -0.022, -1.805, -0.346, -0.038, 2.198, -0.486, 0.165, -0.593, -0.028, -0.106]);
        Assert.Equal(1, form.Bending / bending, 0.07);
        Assert.Equal(1, form.Torsion / torsion, 0.1);
        Assert.Equal(1, form.Axial / axial, 0.1);
    }

    // The same for a U-shaped groove all about.
    [Theory]
    [InlineData(44, 40, 2)]
    [InlineData(50, 40, 3)]
    [InlineData(50, 40, 5)]
    [InlineData(60, 50, 2)]
    public void Grooves_agree_with_Petersons_curves(double large, double small, double radius)
    {
        var form = NotchForm.RoundGroove(large, small, radius);
        var (ratio, share) = ((large - small) / 2 / radius, (large - small) / large);
        var bending = ratio <= 2
            ? Peterson(ratio, share, [0.594, 2.958, -0.520, 0.422, -10.545, 2.692, 0.501, 14.375, -4.486, -0.613, -6.573, 2.177])
            : Peterson(ratio, share, [0.965, 1.926, 0, -2.773, -4.414, -0.017, 4.785, 4.681, 0.096, -1.995, -2.241, -0.074]);
        var axial = ratio <= 2
            ? Peterson(ratio, share, [0.89, 2.208, -0.094, -0.923, -6.678, 1.638, 2.893, 6.448, -2.516, -1.912, -1.944, 0.963])
            : Peterson(ratio, share, [1.037, 1.967, 0.002, -2.679, -2.980, -0.053, 3.090, 2.124, 0.165, -0.424, -1.153, -0.106]);
        var torsion = ratio <= 2
            ? Peterson(ratio, share, [0.966, 1.056, -0.022, -0.192, -4.037, 0.674, 0.808, 5.321, -1.231, -0.567, -2.364, 0.566])
            : Peterson(ratio, share, [1.089, 0.924, 0.018, -1.504, -2.141, -0.047, 2.486, 2.289, 0.091, -1.056, -1.104, -0.059]);
        Assert.Equal(1, form.Bending / bending, 0.07);
        Assert.Equal(1, form.Axial / axial, 0.07);
        Assert.Equal(1, form.Torsion / torsion, 0.07);
    }

    // Neuber: a deep hyperbolic groove of radius r in torsion. As the groove gets shallow and sharp, Inglis: α − 1 → 2·√(t/r) in tension
    // and √(t/r) in torsion.
    [Fact]
    public void Shallow_sharp_grooves_tend_to_the_formula_of_Inglis()
    {
        var form = NotchForm.RoundGroove(1000, 979, 2);
        var root = Math.Sqrt(10.5 / 2);
        Assert.Equal(2 * root, form.Axial - 1, 0.15 * root * 2);
        Assert.Equal(root, form.Torsion - 1, 0.15 * root);
    }

    // Shigley, table 7-1, first guesses of Kt from memory: well-rounded shoulder r/d = 0.1: 1.7 bending, 1.5 torsion.
    [Fact]
    public void A_well_rounded_shoulder_is_near_the_first_guess_of_a_textbook()
    {
        var form = NotchForm.Shoulder(60, 40, 4);
        Assert.Equal(1.7, form.Bending, 0.1);
        Assert.Equal(1.5, form.Torsion, 0.2);
    }

    // Textbooks: σ = 32·M/(π·d³) = 79.577 MPa at 50 N·m and 18.566 mm; hollow by d⁴ − d_i⁴. Von Mises √(σ² + 3·τ²).
    [Fact]
    public void Nominal_stresses_are_worked_by_hand()
    {
        var solid = new ShaftSection(20).Stresses(1000, 50_000, 100_000);
        Assert.Equal(1000 / 314.159265, solid.Axial, 1e-6);
        Assert.Equal(63.6620, solid.Bending, 1e-4);
        Assert.Equal(63.6620, solid.Torsion, 1e-4);
        Assert.Equal(Math.Sqrt(66.8451 * 66.8451 + 3 * 63.6620 * 63.6620), solid.Equivalent, 1e-3);
        Assert.Equal(63.6620 / (1 - Math.Pow(0.6, 4)), new ShaftSection(20, 12).Stresses(0, 50_000, 0).Bending, 1e-4);
    }

    // DIN 743-2, from memory: the key 3.0·0.9^0.38 = 2.882 and the press fit 2.7·0.9^0.43 = 2.580 at the test shaft of 40 mm, where K₃
    // drops out; spline exp(0.42·0.81) = 1.4052: 1.1986 and 1.3039.
    [Fact]
    public void Measured_notches_are_worked_by_hand_at_the_test_diameter()
    {
        var key = ShaftNotch.Keyway(40, Steel);
        Assert.Equal(2.8823, key.Bending, 1e-3);
        Assert.Equal(0.56 * 2.8823 + 0.1, key.Torsion, 1e-3);
        var hub = ShaftNotch.PressedHub(40, Steel);
        Assert.Equal(2.5804, hub.Bending, 1e-3);
        Assert.Equal(0.65 * 2.5804, hub.Torsion, 1e-3);
        var spline = ShaftNotch.InvoluteSpline(40, Steel);
        Assert.Equal(1.1986, spline.Bending, 1e-3);
        Assert.Equal(1.3039, spline.Torsion, 1e-3);
    }

    // Public handbooks, pressed hub without relief: K_f of 2 to 3 in bending, keyway about 2 to 3; retaining ring groove sharp: 3 to 5
    // elastic (Shigley table 7-1: 5.0), less what a sharp root supports.
    [Fact]
    public void Notch_factors_lie_where_handbooks_have_them() =>
        Gen.Select(Gen.Double[600, 1000], Gen.Double[20, 80]).Sample((tensile, diameter) =>
        {
            var steel = new ShaftStrength(tensile, 0.75 * tensile);
            var ring = ShaftNotch.SquareGroove(diameter, diameter - 2, 1.4, 0.1, steel);
            return ShaftNotch.PressedHub(diameter, steel).Bending is > 1.8 and < 3.2 && ShaftNotch.Keyway(diameter, steel).Bending is > 2 and < 3.5
                && ring.Bending is > 2 and <= 4 && ring.Torsion is > 1.4 and <= 2.5;
        });

    // Square groove by hand: σ_S = 700: ρ* = 10^−1.578 = 0.02642; r_f = 0.1 + 0.07663 = 0.17663; t = 1: √(1/r_f) = 2.3794;
    // m/t = 1.4: wide. β_b = 0.9·(1.14 + 1.08·2.3794) = 3.3388; β_t = 1.48 + 0.45·2.3794 = 2.5507, at most 2.5.
    [Fact]
    public void A_ring_groove_is_worked_by_hand()
    {
        var notch = ShaftNotch.SquareGroove(40, 38, 1.4, 0.1, Steel);
        Assert.Equal(3.3388, notch.Bending, 1e-3);
        Assert.Equal(2.5, notch.Torsion, 1e-9);
        Assert.Equal(3.3388 * 1.08 * Math.Pow(0.7, -0.2), ShaftNotch.SquareGroove(40, 38, 0.7, 0.1, Steel).Bending, 1e-3);
    }

    // Shoulder 44/40, r = 2 by hand: φ = 1/(4·1 + 2); G' = 2.3·(7/6)/2 = 1.34167; n = 1 + 1.15831·10^−(0.33 + 700/712) = 1.0563.
    [Fact]
    public void A_shoulder_is_worked_by_hand()
    {
        var notch = ShaftNotch.Shoulder(44, 40, 2, Steel);
        Assert.Equal(1.8155 / 1.05632, notch.Bending, 1e-3);
        Assert.Equal(1.05, notch.Rise);
    }

    // K₂: 1 at 7.5 mm, 0.8 at 150 mm; K_F of Rz 10 µm and 900 MPa: 1 − 0.22·(lg 45 − 1) = 0.8563; torsion 0.9174.
    [Fact]
    public void Size_and_roughness_are_worked_by_hand()
    {
        Assert.Equal(1, ShaftFatigue.Size(7.5), 1e-12);
        Assert.Equal(0.8, ShaftFatigue.Size(150), 1e-12);
        Assert.Equal(0.9, ShaftFatigue.Size(7.5 * Math.Sqrt(20)), 1e-12);
        Assert.Equal(0.8563, ShaftFatigue.Roughness(10, 900), 1e-4);
        Assert.Equal(0.9174, ShaftFatigue.TorsionRoughness(0.8563), 1e-4);
        Assert.Equal(1 - 0.26, ShaftFatigue.Technological(ShaftSteel.Tempered, 160), 1e-12);
    }

    // A smooth shaft of 7.5 mm, polished, bent round with half of its strength's bar: σ_bWK = 450; 225 swing: safety 2. With torsion in step
    // (τ 135 of 270): 1/√(0.25 + 0.25).
    [Fact]
    public void A_smooth_bar_is_worked_by_hand()
    {
        var notched = ShaftFatigue.NotchedStrength(Steel, ShaftNotch.None, 7.5, 1);
        Assert.Equal((360, 450, 270), (notched.Axial, notched.Bending, notched.Torsion));
        Assert.Equal(2, ShaftFatigue.Safety(Steel, notched, default, new(0, 225, 0), ShaftOverload.MeanStays), 1e-9);
        Assert.Equal(Math.Sqrt(2), ShaftFatigue.Safety(Steel, notched, default, new(0, 225, 135), ShaftOverload.MeanStays), 1e-9);

        // ψ = 450/(1800 − 450) = 1/3; mean 150: 400 left, 225 swing.
        Assert.Equal(400.0 / 225, ShaftFatigue.Safety(Steel, notched, new(150, 0, 0), new(0, 225, 0), ShaftOverload.MeanStays), 1e-9);
        Assert.Equal(450 / (1 + 150.0 / 225 / 3) / 225, ShaftFatigue.Safety(Steel, notched, new(150, 0, 0), new(0, 225, 0), ShaftOverload.RatioStays), 1e-9);
    }

    // Yield by hand: 1.2·700/420 = 2 solid, 1.1·700/420 hollow; torsion alone 1.2·700/√3.
    [Fact]
    public void Static_safety_is_worked_by_hand()
    {
        Assert.Equal(2, ShaftFatigue.StaticSafety(Steel, ShaftNotch.None, new(0, 420, 0), hollow: false), 1e-9);
        Assert.Equal(1.1 / 0.6, ShaftFatigue.StaticSafety(Steel, ShaftNotch.None, new(0, 420, 0), hollow: true), 1e-9);
        Assert.Equal(1.2 * 700 / Math.Sqrt(3) / 200, ShaftFatigue.StaticSafety(Steel, ShaftNotch.None, new(0, 0, 200), hollow: false), 1e-9);
    }

    [Fact]
    public void A_blunter_fillet_never_hurts_more_and_a_notch_is_never_below_one() =>
        Gen.Select(Strength, Gen.Double[10, 100], Gen.Double[1.05, 1.6], Gen.Double[0.05, 0.8], Gen.Double[1.05, 2]).Sample((steel, small, ratio, blunt, more) =>
        {
            var large = small * ratio;
            var radius = (large - small) / 2 * blunt;
            try
            {
                var (one, other) = (ShaftNotch.Shoulder(large, small, radius, steel), ShaftNotch.Shoulder(large, small, radius * more, steel));
                return one.Bending >= other.Bending - 1e-9 && one.Torsion >= other.Torsion - 1e-9 && other.Axial >= 1 && other.Torsion >= 1;
            }
            catch (OutsideValidityException refusal)
            {
                return refusal.Message.Contains("form factors up to 6", StringComparison.Ordinal);
            }
        });

    [Fact]
    public void More_load_is_less_safety_and_the_mean_that_stays_is_the_kinder_overload() =>
        Gen.Select(Strength, Gen.Double[1, 100].Array[6], Gen.Double[1.01, 1.2]).Sample((steel, stress, more) =>
        {
            var notched = ShaftFatigue.NotchedStrength(steel, ShaftNotch.None, 30, 6.3);
            var (mean, swing) = (new ShaftStresses(stress[0] / 4, stress[1] / 4, stress[2] / 4), new ShaftStresses(stress[3] / 4, stress[4] / 4, stress[5] / 4));
            var grown = new ShaftStresses(swing.Axial * more, swing.Bending * more, swing.Torsion * more);
            var safety = ShaftFatigue.Safety(steel, notched, mean, swing, ShaftOverload.MeanStays);
            return safety > ShaftFatigue.Safety(steel, notched, mean, grown, ShaftOverload.MeanStays)
                && ShaftFatigue.StaticSafety(steel, ShaftNotch.None, swing, false) > ShaftFatigue.StaticSafety(steel, ShaftNotch.None, grown, false);
        });

    // Definition of the second overload with one stress alone: mean and swing times S lie on the line of the fatigue limit.
    [Fact]
    public void Mean_and_swing_times_the_safety_lie_on_the_limit() =>
        Gen.Select(Gen.Double[5, 200], Gen.Double[5, 200]).Sample((mean, swing) =>
        {
            var notched = ShaftFatigue.NotchedStrength(Steel, ShaftNotch.None, 30, 6.3);
            var safety = ShaftFatigue.Safety(Steel, notched, new(0, mean, 0), new(0, swing, 0), ShaftOverload.RatioStays);
            return Math.Abs(ShaftFatigue.Safety(Steel, notched, new(0, mean * safety, 0), new(0, swing * safety, 0), ShaftOverload.MeanStays) - 1) < 1e-9;
        });

    // d = 20, l = 100, G = 80 000, T = 100 N·m: 32·10⁵·100/(π·80 000·160 000) = 0.0079577; two in a row twice that. Hollow 12: /0.8704.
    [Fact]
    public void Wind_up_is_worked_by_hand()
    {
        var segment = new ShaftSegment(100, new(20));
        Assert.Equal(0.0079577, ShaftTwist.Angle([segment], 80_000, 100_000), 1e-7);
        Assert.Equal(2 * 0.0079577, ShaftTwist.Angle([segment, segment], 80_000, 100_000), 2e-7);
        Assert.Equal(0.0079577 / 0.8704, ShaftTwist.Angle([new(100, new(20, 12))], 80_000, 100_000), 1e-7);
        Assert.Equal(79_230.8, ShaftTwist.Rigidity(206_000, 0.3), 0.1);
    }

    [Fact]
    public void What_the_source_does_not_cover_is_refused()
    {
        Refusal.Says("a smaller and a larger diameter", () => NotchForm.Shoulder(40, 40, 1).Axial);
        Refusal.Says("r/t is 0.02", () => NotchForm.Shoulder(50, 40, 0.1).Axial);
        Refusal.Says("form factors up to 6", () => NotchForm.RoundGroove(100, 80, 0.4).Axial);
        Refusal.Says("400 MPa to 1200 MPa; this one has 1500 MPa", () => ShaftNotch.Keyway(40, new(1500, 1300)).Bending);
        Refusal.Says("in a hard case", () => ShaftNotch.SquareGroove(40, 38, 1, 0.1, new(900, 700, ShaftSteel.CaseHardened)).Bending);
        Refusal.Says("one or two keys", () => ShaftNotch.Keyway(40, Steel, 3).Bending);
        Refusal.Says("leaves no room for a swing", () => ShaftFatigue.Safety(
            Steel, ShaftFatigue.NotchedStrength(Steel, ShaftNotch.None, 30, 6.3), new(0, 2000, 0), new(0, 1, 0), ShaftOverload.MeanStays));
        Refusal.Says("up to 2000 MPa", () => ShaftFatigue.Roughness(10, 2001));
        Refusal.Says("up to 300 mm", () => ShaftFatigue.Technological(ShaftSteel.Tempered, 301));
    }

    private static double Peterson(double ratio, double share, double[] c)
    {
        var sum = 0.0;
        for (var power = 3; power >= 0; power--)
            sum = sum * share + c[3 * power] + c[3 * power + 1] * Math.Sqrt(ratio) + c[3 * power + 2] * ratio;
        return sum;
    }
}
