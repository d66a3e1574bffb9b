using CsCheck;
using Pawl.Mechanics.Materials;
using Pawl.Mechanics.Rating;

namespace Pawl.Mechanics.Tests.Rating;

public class LifeCurveTests
{
    // ISO 6336-6, exponents p of the life curves for torque, from memory: bending N ~ T^-p from its static end to 3·10⁶ cycles,
    // pitting, where stress goes with the root of torque, to 5·10⁷ (2·10⁶ nitrided). 3 decimals; 15.715 is rounded down there.
    [Theory]
    [InlineData(MaterialClass.AlloyThroughHardened, 6.225, 6.610)]
    [InlineData(MaterialClass.CaseHardened, 8.738, 6.610)]
    [InlineData(MaterialClass.InductionHardened, 8.738, 6.610)]
    [InlineData(MaterialClass.NitridingSteelNitrided, 17.035, 5.709)]
    [InlineData(MaterialClass.ThroughHardeningSteelNitrided, 17.035, 5.709)]
    [InlineData(MaterialClass.Nitrocarburised, 84.003, 15.715)]
    public void The_slopes_of_limited_life_match_the_exponents_of_ISO_6336_6(MaterialClass material, double bending, double pitting)
    {
        Assert.Equal(bending, Slope(LifeCurves.Root(material), 2e4, 2e6), 0.001);
        Assert.Equal(pitting, Slope(LifeCurves.Flank(material), 2e5, 1e6) / 2, 0.0015);
    }

    // ISO 6336-2 and -3, life factors at the corners, from memory.
    [Theory]
    [InlineData(MaterialClass.CaseHardened, 2.5, 1e3, 1.6, 1e5)]
    [InlineData(MaterialClass.InductionHardened, 2.5, 1e3, 1.6, 1e5)]
    [InlineData(MaterialClass.AlloyThroughHardened, 2.5, 1e4, 1.6, 1e5)]
    [InlineData(MaterialClass.CarbonThroughHardened, 2.5, 1e4, 1.6, 1e5)]
    [InlineData(MaterialClass.Normalised, 2.5, 1e4, 1.6, 1e5)]
    [InlineData(MaterialClass.NitridingSteelNitrided, 1.6, 1e3, 1.3, 1e5)]
    [InlineData(MaterialClass.ThroughHardeningSteelNitrided, 1.6, 1e3, 1.3, 1e5)]
    [InlineData(MaterialClass.Nitrocarburised, 1.1, 1e3, 1.1, 1e5)]
    public void Static_and_long_life_factors_match_ISO_6336(
        MaterialClass material, double root, double rootCycles, double flank, double flankCycles)
    {
        var (bending, pitting) = (LifeCurves.Root(material), LifeCurves.Flank(material));

        Assert.Equal(root, bending.StaticFactor, 1e-12);
        Assert.Equal(root, bending.FactorAt(1), 1e-12);
        Assert.Equal(root, bending.FactorAt(rootCycles), 1e-12);
        Assert.True(bending.FactorAt(1.01 * rootCycles) < root);
        Assert.Equal(1, bending.FactorAt(3e6), 1e-12);
        Assert.Equal(0.85, bending.FactorAt(1e10), 1e-12);
        Assert.Equal(1, LifeCurves.Root(material, fullAtLongLife: true).FactorAt(1e10), 1e-12);
        Assert.Equal(flank, pitting.StaticFactor, 1e-12);
        Assert.Equal(flank, pitting.FactorAt(flankCycles), 1e-12);
        Assert.True(pitting.FactorAt(1.01 * flankCycles) < flank);
        Assert.Equal(0.85, pitting.FactorAt(1e10), 1e-12);
    }

    // The same polylines in another language, 8 decimals.
    [Fact]
    public void Factors_at_a_million_cycles_match_the_same_lines_in_another_language()
    {
        Assert.Equal(1.34428434, LifeCurves.Flank(MaterialClass.CaseHardened).FactorAt(1e6), 1e-8);
        Assert.Equal(1.13397704, LifeCurves.Root(MaterialClass.InductionHardened).FactorAt(1e6), 1e-8);
    }

    // ISO 6336-2: 1.6 to 6·10⁵, 1.3 at 10⁷, 1 at 10⁹ cycles where limited pitting is allowed, from memory; up to 10¹⁰
    // never below the other.
    [Fact]
    public void Limited_pitting_allows_more_and_only_on_some_steels()
    {
        var (limited, none) = (LifeCurves.Flank(MaterialClass.CaseHardened, limitedPitting: true), LifeCurves.Flank(MaterialClass.CaseHardened));

        Assert.Equal(1.6, limited.FactorAt(6e5), 1e-12);
        Assert.Equal(1.3, limited.FactorAt(1e7), 1e-12);
        Assert.Equal(1, limited.FactorAt(1e9), 1e-12);
        Gen.Double[3, 10].Sample(log => limited.FactorAt(Math.Pow(10, log)) >= none.FactorAt(Math.Pow(10, log)) - 1e-12);
        Assert.Contains(
            "no curve with limited pitting for NT steels",
            Assert.Throws<OutsideValidityException>(
                () => LifeCurves.Flank(MaterialClass.NitridingSteelNitrided, limitedPitting: true)).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Strength_never_rises_with_cycles() =>
        Gen.Select(Gen.Enum<MaterialClass>(), Gen.Double[0, 12], Gen.Double[0, 3], Gen.Bool).Sample((material, log, more, full) =>
            LifeCurves.Root(material, full).FactorAt(Math.Pow(10, log + more))
                <= LifeCurves.Root(material, full).FactorAt(Math.Pow(10, log)), iter: 1000);

    [Fact]
    public void Beyond_the_ends_the_curve_goes_on_as_stated()
    {
        var curve = LifeCurves.Root(MaterialClass.CaseHardened);
        var level = LifeCurves.Root(MaterialClass.CaseHardened, fullAtLongLife: true);

        // As far past 10¹⁰ as 3·10⁶ lies before it: 0.85² of the endurance.
        Assert.Equal(0.85 * 0.85, curve.FactorAt(1e10 * 1e10 / 3e6), 1e-12);
    }

    [Fact]
    public void Another_static_factor_moves_what_lies_above_the_endurance()
    {
        var curve = LifeCurves.Root(MaterialClass.CaseHardened).WithStaticFactor(2);

        Assert.Equal(2, curve.FactorAt(100), 1e-12);
        Assert.Equal(Math.Sqrt(2), curve.FactorAt(Math.Sqrt(1e3 * 3e6)), 1e-12);
        Assert.Equal(0.85, curve.FactorAt(1e10), 1e-12);

        // 1.3 of 1.6 becomes 1.3^(ln 1.3/ln 1.6) of 1.3.
        var pitting = LifeCurves.Flank(MaterialClass.CaseHardened, limitedPitting: true).WithStaticFactor(1.3);
        Assert.Equal(Math.Pow(1.3, Math.Log(1.3) / Math.Log(1.6)), pitting.FactorAt(1e7), 1e-12);
        Assert.Equal(1, pitting.FactorAt(1e9), 1e-12);

        // A static strength below the endurance is the strength, until the curve has come down to it.
        var weak = LifeCurves.Root(MaterialClass.Nitrocarburised).WithStaticFactor(0.9);
        Assert.Equal(0.9, weak.FactorAt(1), 1e-12);
        Assert.Equal(0.9, weak.FactorAt(2e6), 1e-12);
        Assert.Equal(0.85, weak.FactorAt(1e10), 1e-12);
    }

    [Fact]
    public void A_curve_that_rises_is_refused()
    {
        Assert.Throws<OutsideValidityException>(() => new LifeCurve((1e3, 1), (1e6, 2)));
        Assert.Throws<OutsideValidityException>(() => new LifeCurve((1e6, 2), (1e3, 1)));
        Assert.Throws<OutsideValidityException>(() => new LifeCurve((1e6, 2)));
        Assert.Throws<OutsideValidityException>(() => LifeCurves.Root((MaterialClass)99));
    }

    private static double Slope(LifeCurve curve, double from, double to) =>
        Math.Log(to / from) / Math.Log(curve.FactorAt(from) / curve.FactorAt(to));

    [Fact]
    public void Cycles_and_factor_are_inverse_on_every_falling_line() =>
        Gen.Select(Gen.Enum<MaterialClass>(), Gen.Double[5.1, 12], Gen.Bool).Sample((material, log, flank) =>
        {
            var curve = flank ? LifeCurves.Flank(material) : LifeCurves.Root(material);
            return Math.Abs((curve.LogCyclesAt(Math.Log(curve.FactorAt(Math.Pow(10, log)))) / Math.Log(10)) - log) < 1e-9;
        }, iter: 1000);
}
