using CsCheck;
using Pawl.Mechanics.Materials;
using Pawl.Mechanics.Rating;

namespace Pawl.Mechanics.Tests.Rating;

public class DamageTests
{
    private static readonly LifeCurve Bending = LifeCurves.Root(MaterialClass.CaseHardened);

    private static readonly Gen<DamageBin[]> Bins = Gen.Select(Gen.Double[100, 1500], Gen.Double[1, 9])
        .Select((stress, log) => new DamageBin(stress, Math.Pow(10, log))).Array[1, 12];

    // A textbook exercise on public pages: one run is 1 cycle at 480 MPa (10⁴ cycles endured) and 4 at 400 MPa (10⁵): 7142 runs.
    [Fact]
    public void Runs_of_two_stresses_match_a_textbook_exercise()
    {
        var curve = new LifeCurve((1e4, 480), (1e5, 400));
        var run = Damage.Sum([new(480, 1), new(400, 4)], curve, 1);

        Assert.Equal(0.00014, run, 1e-12);
        Assert.Equal(7142, Math.Floor(1 / run));
    }

    // A fatigue primer on public pages: 10 %, 30 % and 60 % of n cycles at three stresses last n = 1/(0.1/N₁ + 0.3/N₂ + 0.6/N₃).
    [Fact]
    public void Shares_of_a_life_at_three_stresses_match_the_closed_form()
    {
        var curve = new LifeCurve((1e4, 600), (2e5, 400), (3e6, 300));
        var life = 1 / (0.1 / 1e4 + 0.3 / 2e5 + 0.6 / 3e6);

        Assert.Equal(1, Damage.Sum([new(600, 0.1 * life), new(400, 0.3 * life), new(300, 0.6 * life)], curve, 1), 1e-9);
    }

    // 10⁵ cycles at 1.3 and 10⁷ at 1.1 on the curve of case-hardened flanks: the same in another language, 9 decimals.
    [Fact]
    public void The_sum_matches_the_same_rule_in_another_language() =>
        Assert.Equal(
            0.769466468,
            Damage.Sum([new(1.3, 1e5), new(1.1, 1e7)], LifeCurves.Flank(MaterialClass.CaseHardened), 1),
            1e-9);

    [Fact]
    public void Damage_adds_up_and_never_falls_with_stress_or_cycles() =>
        Gen.Select(Bins, Bins, Gen.Double[1, 1.5]).Sample((one, other, more) =>
        {
            double Sum(IEnumerable<DamageBin> bins) => Damage.Sum([.. bins], Bending, 900);
            var (a, b) = (Sum(one), Sum(other));
            var both = Sum(one.Concat(other));
            return (double.IsInfinity(both) ? double.IsInfinity(a + b) : Math.Abs(both - a - b) <= 1e-12 * both)
                && Sum(one.Select(bin => bin with { Stress = bin.Stress * more })) >= a
                && Sum(one.Select(bin => bin with { Cycles = bin.Cycles * more })) >= a;
        }, iter: 1000);

    [Fact]
    public void One_bin_is_as_safe_as_strength_over_stress() =>
        Gen.Select(Gen.Double[50, 3000], Gen.Double[0, 11], Gen.Enum<MaterialClass>(), Gen.Bool).Sample(
            (stress, log, material, full) =>
            {
                var curve = LifeCurves.Root(material, full);
                var cycles = Math.Pow(10, log);
                var expected = 900 * curve.FactorAt(cycles) / stress;
                return Math.Abs(Damage.Safety([new(stress, cycles)], curve, 900) - expected) < 1e-11 * expected;
            },
            iter: 1000);

    // At S the life is just used up: a little less is within 1, a little more is not, jumps of the curve included.
    [Fact]
    public void Stresses_times_the_safety_factor_use_up_the_life() =>
        Gen.Select(Bins, Gen.Enum<MaterialClass>(), Gen.Bool).Sample((bins, material, full) =>
        {
            var curve = LifeCurves.Root(material, full);
            var safety = Damage.Safety(bins, curve, 900);
            double At(double factor) => Damage.Sum([.. bins.Select(bin => bin with { Stress = bin.Stress * factor })], curve, 900);
            return At(safety * (1 - 1e-10)) <= 1 && At(safety * (1 + 1e-10)) > 1;
        }, iter: 3000);

    [Fact]
    public void The_static_strength_bounds_the_safety_of_a_rare_peak()
    {
        // One cycle cannot use up the life of 10³, yet above 2.5 it breaks the tooth.
        Assert.Equal(2.5 * 900 / 1500, Damage.Safety([new(1500, 1), new(10, 1e6)], Bending, 900), 1e-9);
        Assert.Equal(double.PositiveInfinity, Damage.Sum([new(2251, 1)], Bending, 900));
        Assert.Equal(1e-3, Damage.Sum([new(2250, 1)], Bending, 900), 1e-9);
    }

    [Fact]
    public void Bins_without_stress_or_cycles_do_nothing()
    {
        Assert.Equal(
            Damage.Safety([new(700, 1e6)], Bending, 900),
            Damage.Safety([new(700, 1e6), new(0, 1e9), new(5000, 0)], Bending, 900));
        Assert.Equal(0, Damage.Sum([new(0, 1e9), new(5000, 0)], Bending, 900));
    }

    [Fact]
    public void A_spectrum_that_cannot_be_says_why()
    {
        Assert.Throws<OutsideValidityException>(() => Damage.Safety([], Bending, 900));
        Assert.Throws<OutsideValidityException>(() => Damage.Safety([new(0, 100)], Bending, 900));
        Assert.Throws<OutsideValidityException>(() => Damage.Sum([new(-1, 100)], Bending, 900));
        Assert.Throws<OutsideValidityException>(() => Damage.Sum([new(double.NaN, 100)], Bending, 900));
        Assert.Throws<OutsideValidityException>(() => Damage.Sum([new(1, 100)], Bending, 0));
    }
}
