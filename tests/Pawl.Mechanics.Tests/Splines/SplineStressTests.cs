using CsCheck;
using Pawl.Mechanics.Splines;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Splines;

public class SplineStressTests
{
    private const double Inch = 25.4;
    private const double Psi = 0.006894757;
    private const double PoundInch = 4.4482216 * 25.4;

    // Dudley's formula by hand, inches: 6000 lbf·in, D = 1.25, 20 teeth, 1 in long, t = π/32: 4·6000/(1.25·20·1·π/32) = 9778 psi; flanks
    // 0.0625 high: 2·6000/(1.25·20·1·0.0625) = 7680 psi.
    [Fact]
    public void Stresses_in_inches_are_worked_by_hand()
    {
        var stress = new SplineStress(6000 * PoundInch, 1.25 * Inch, 20, Inch);
        Assert.Equal(9778, stress.ToothShear(Math.PI / 32 * Inch) / Psi, 1.0);
        Assert.Equal(7680, stress.FlankPressure(0.0625 * Inch) / Psi, 1.0);

        // Root 1.125 in, bore 0.5: 16·6000·1.125/(π·(1.60181 − 0.0625)) = 22 333 psi. Bending of internal teeth 4·6000/(1.5625·1.5).
        Assert.Equal(22_333, stress.RootTorsion(1.125 * Inch, 0.5 * Inch) / Psi, 5.0);
        Assert.Equal(10_240, stress.ToothBending() / Psi, 2.0);
    }

    // Dudley: 1.656·n²·(D_o² + 0.212·D_ri²)/10⁶ psi of steel, inches and rev/min; from memory. 0.283 lb/in³.
    [Fact]
    public void Spinning_sleeves_match_Dudleys_formula() =>
        Gen.Select(Gen.Double[1000, 20_000], Gen.Double[0.5, 3], Gen.Double[1.1, 2]).Sample((speed, major, ratio) =>
        {
            var outside = major * ratio;
            var expected = 1.656e-6 * speed * speed * (outside * outside + 0.212 * major * major);
            var found = SplineStress.CentrifugalHoop(speed * Math.PI / 30, 0.283 * 0.45359237e-3 / (Inch * Inch * Inch), 0.3, major * Inch, outside * Inch) / Psi;
            return Math.Abs(found / expected - 1) < 2e-3;
        });

    // Dudley's thin sleeve, T·tan α/(π·D·t_w·L), is what a thin wall comes to; a thick one is pulled more at its bore.
    [Fact]
    public void A_thin_sleeve_is_a_hoop()
    {
        var stress = new SplineStress(100_000, 40, 20, 30);
        var thin = 100_000 * Math.Tan(Math.PI / 6) / (Math.PI * 40 * 0.05 * 30);
        Assert.Equal(1, stress.BurstingHoop(Math.PI / 6, 43, 43.1) / thin, 3e-3);
        Assert.True(stress.BurstingHoop(Math.PI / 6, 43, 63) > 100_000 * Math.Tan(Math.PI / 6) / (Math.PI * 40 * 10 * 30));
    }

    // Equilibrium: the flank forces of all teeth at the pitch circle make the torque.
    [Fact]
    public void Flank_pressures_carry_the_torque() =>
        Gen.Select(Gen.Double[1e4, 1e7], Gen.Double[10, 100], Gen.Int[10, 60], Gen.Double[0.5, 4]).Sample((torque, diameter, teeth, height) =>
            Math.Abs(new SplineStress(torque, diameter, teeth, 20).FlankPressure(height) * height * 20 * teeth * diameter / 2 / torque - 1) < 1e-9);

    // Dudley's tables, reprinted on a public page: life factors, shear stresses. The rest from memory.
    [Fact]
    public void Factors_match_a_reprint_of_the_tables()
    {
        Assert.Equal(1.8, SplineFactors.Life(500, false), 1e-9);
        Assert.Equal(0.5, SplineFactors.Life(1e5, false), 1e-9);
        Assert.Equal(0.2, SplineFactors.Life(1e7, true), 1e-9);
        Assert.Equal(30_000, SplineFactors.OfTempered(245).Shear / Psi, 1.0);
        Assert.Equal(30_000, SplineFactors.OfTempered(290).Shear / Psi, 1.0);
        Assert.Equal(50_000, SplineFactors.OfHard(60).Shear / Psi, 1.0);
        Assert.Equal(40_000, SplineFactors.OfHard(55).Shear / Psi, 1.0);
    }

    // The same tables, from memory.
    [Fact]
    public void Factors_of_wear_and_misalignment_match_the_tables()
    {
        Assert.Equal(1.4, SplineFactors.Wear(1e7), 1e-9);
        Assert.Equal(1.5, SplineFactors.Misalignment(0.002, 2 * Inch), 1e-9);
        Assert.Equal(1.5, SplineFactors.Misalignment(0.004, Inch), 1e-9);
        Assert.Equal(1.25, SplineFactors.Misalignment(0.001, 3 * Inch), 1e-9);
        Assert.Equal(1, SplineFactors.Misalignment(0, 5), 1e-9);
        Assert.Equal((3000, 12_000, 45_000), (
            Math.Round(SplineFactors.OfTempered(320).StraightPressure / Psi), Math.Round(SplineFactors.OfTempered(320).CrownedPressure / Psi),
            Math.Round(SplineFactors.OfTempered(320).Tension / Psi)));
    }

    [Fact]
    public void Longer_lives_and_worse_misalignments_never_help() =>
        Gen.Select(Gen.Double[3, 7], Gen.Double[0, 0.008], Gen.Double[1, 100], Gen.Double[0, 1]).Sample((life, slope, length, share) =>
            SplineFactors.Life(Math.Pow(10, 3 + (life - 3) * share), true) >= SplineFactors.Life(Math.Pow(10, life), true) - 1e-12
            && SplineFactors.Life(Math.Pow(10, life), true) <= SplineFactors.Life(Math.Pow(10, life), false) + 1e-12
            && SplineFactors.Misalignment(slope * share, length) <= SplineFactors.Misalignment(slope, length) + 1e-12
            && SplineFactors.Misalignment(slope, length * Math.Max(share, 0.01)) <= SplineFactors.Misalignment(slope, length) + 1e-12);

    [Fact]
    public void What_the_source_does_not_cover_is_refused()
    {
        Refusal.Says("160 HB to 351 HB; this is 400 HB", () => SplineFactors.OfTempered(400).Shear);
        Refusal.Says("48 HRC to 63 HRC", () => SplineFactors.OfHard(40).Shear);
        Refusal.Says("covers up to 1E+7 starts and stops", () => SplineFactors.Life(2e7, false));
        Refusal.Says("up to 101.6 mm long", () => SplineFactors.Misalignment(0.001, 102));
        Refusal.Says("a wall about its spline", () => new SplineStress(1, 40, 20, 30).BurstingHoop(0.5, 43, 43));
        Refusal.Says("the height of the flanks in contact", () => SplineStress.ContactHeight(40, 38, 1));
        Refusal.Says("above 0 and up to 1", () => new SplineStress(1, 40, 20, 30).FlankPressure(1, 1.1));
    }
}
