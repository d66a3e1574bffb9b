using CsCheck;
using Pawl.Mechanics.Rating;
using Pawl.Mechanics.Tests.Gears;

namespace Pawl.Mechanics.Tests.Rating;

public class RootStressTests
{
    // ISO 6336-3: Y_B meets 1 at s_R/h_t = 1.2 and s_R/m_n = 3.5, within the digits of its constants.
    [Fact]
    public void The_rim_factor_is_1_from_its_limit_on_and_falls_to_it()
    {
        Assert.Equal(1, RootFactors.RimOfExternal(1.2, 1));
        Assert.Equal(1, RootFactors.RimOfExternal(1.19999, 1), 1e-3);
        Assert.Equal(1, RootFactors.RimOfInternal(3.5, 1));
        Assert.Equal(1, RootFactors.RimOfInternal(3.49999, 1), 5e-3);

        // By hand: 1.6·ln 2.242 and 1.15·ln 4.162.
        Assert.Equal(1.29178, RootFactors.RimOfExternal(4.5, 4.5), 1e-5);
        Assert.Equal(1.63990, RootFactors.RimOfInternal(4, 2), 1e-5);
        Gen.Select(Gen.Double[0.51, 2], Gen.Double[0, 1]).Sample((ratio, more) =>
            RootFactors.RimOfExternal(ratio + more, 1) <= RootFactors.RimOfExternal(ratio, 1)
            && RootFactors.RimOfInternal((ratio + more) * 3.5, 1) <= RootFactors.RimOfInternal(ratio * 3.5, 1) + 4e-3);
        Assert.Throws<OutsideValidityException>(() => RootFactors.RimOfExternal(0.5, 1));
        Assert.Throws<OutsideValidityException>(() => RootFactors.RimOfInternal(1.75, 1));
    }

    // ISO 6336-3:2006, Y_β: 0.75 is its least, at ε_β ≥ 1 and β ≥ 30°. The edition of 2019 divides by cos³ β.
    [Theory]
    [InlineData(0, 20, 1)]
    [InlineData(0.5, 24, 0.9)]
    [InlineData(1.4, 30, 0.75)]
    [InlineData(2, -40, 0.75)]
    public void The_helix_factor_by_hand(double overlap, double degrees, double expected)
    {
        var helix = Degrees.Rad(degrees);

        Assert.Equal(expected, RootFactors.HelixAngle(overlap, helix, RootEdition.Iso2006), 1e-12);
        Assert.Equal(
            expected / Math.Pow(Math.Cos(helix), 3), RootFactors.HelixAngle(overlap, helix, RootEdition.Iso2019), 1e-12);
    }

    // ISO 6336-3:2019, f_ε: its branches meet where they should.
    [Fact]
    public void The_load_distribution_factor_joins_its_cases()
    {
        Assert.Equal(1, RootFactors.LoadDistribution(0, 1.99));
        Assert.Equal(0.7, RootFactors.LoadDistribution(0, 2));
        Assert.Equal(1, RootFactors.LoadDistribution(1e-12, 1.6), 1e-9);
        Assert.Equal(0.7, RootFactors.LoadDistribution(1e-12, 2.2), 0.008);
        Gen.Double[1, 2.8].Sample(ratio =>
            Math.Abs(RootFactors.LoadDistribution(1 - 1e-12, ratio) - RootFactors.LoadDistribution(1, ratio)) < 1e-9
            && Math.Abs(RootFactors.LoadDistribution(1, ratio) - 1 / Math.Sqrt(ratio)) < 1e-12);
        Assert.Throws<OutsideValidityException>(() => RootFactors.LoadDistribution(0.5, 0.9));
        Assert.Throws<OutsideValidityException>(() => RootFactors.LoadDistribution(-0.5, 1.5));
    }

    [Fact]
    public void A_root_counts_at_most_a_module_more_than_the_common_width_at_each_end()
    {
        Assert.Equal(20, RootStress.FaceWidth(20, 20, 2));
        Assert.Equal(23, RootStress.FaceWidth(23, 20, 2));
        Assert.Equal(24, RootStress.FaceWidth(30, 20, 2));
        Assert.Throws<OutsideValidityException>(() => RootStress.FaceWidth(19, 20, 2));
    }

    // By hand: 1000/(20·2)·1.5·1.8 = 67.5 MPa; with 1.25·1.1·1.05·1.2·1.1: 128.638; strength 430·2·0.99·0.98·1 = 834.372.
    [Fact]
    public void Stress_and_strength_by_hand()
    {
        var nominal = RootStress.Nominal(1000, 20, 2, 1.5, 1.8);

        Assert.Equal(67.5, nominal, 1e-12);
        Assert.Equal(54, RootStress.Nominal(1000, 20, 2, 1.5, 1.8, helixAngle: 0.8), 1e-12);
        Assert.Equal(128.638, RootStress.WithLoadFactors(nominal, 1.25, 1.1, 1.05, 1.2, 1.1), 0.001);
        Assert.Equal(834.372, RootStress.Permissible(430, 1, 0.99, 0.98, 1), 1e-9);
        Assert.Equal(834.372 / 1.4 * 0.7, RootStress.Permissible(430, 1, 0.99, 0.98, 1, 0.7, 1.4), 1e-9);
    }
}
