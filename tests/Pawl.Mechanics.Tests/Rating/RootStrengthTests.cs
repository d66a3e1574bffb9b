using CsCheck;
using Pawl.Mechanics.Materials;
using Pawl.Mechanics.Rating;

namespace Pawl.Mechanics.Tests.Rating;

public class RootStrengthTests
{
    private static readonly MaterialClass[] All = Enum.GetValues<MaterialClass>();

    // ISO 6336-3: the factors are relative to the test gear, q_s = 2.5, Y_S = 2, Rz = 10 µm, m ≤ 5 mm, pulsating load: there each
    // is 1. The surface factor's printed digits leave 0.006 at the nitrided steels.
    [Fact]
    public void Every_factor_is_1_at_the_test_gear()
    {
        foreach (var material in All)
        {
            Assert.Equal(1, RootStrength.NotchSensitivity(2.5, RootStrength.SlipLayer(material, 700)), 1e-12);
            Assert.Equal(1, RootStrength.NotchSensitivityStatic(material, 2, 700), 1e-12);
            Assert.Equal(1, RootStrength.Surface(material, 10), 0.006);
            Assert.Equal(1, RootStrength.Size(material, 5));
            Assert.Equal(1, RootStrength.MeanStress(0, RootStrength.MeanStressRatio(material, 2, false, false)));
        }
    }

    // ISO 6336-3, slip-layer thickness ρ', mm, by yield, MPa, from memory.
    [Theory]
    [InlineData(MaterialClass.Normalised, 300.0, 0.0833)]
    [InlineData(MaterialClass.Normalised, 400.0, 0.0445)]
    [InlineData(MaterialClass.CarbonThroughHardened, 500.0, 0.0281)]
    [InlineData(MaterialClass.AlloyThroughHardened, 600.0, 0.0194)]
    [InlineData(MaterialClass.AlloyThroughHardened, 800.0, 0.0064)]
    [InlineData(MaterialClass.AlloyThroughHardened, 1000.0, 0.0014)]
    [InlineData(MaterialClass.AlloyThroughHardened, 1400.0, 0.0014)]
    [InlineData(MaterialClass.CaseHardened, null, 0.0030)]
    [InlineData(MaterialClass.InductionHardened, null, 0.0030)]
    [InlineData(MaterialClass.NitridingSteelNitrided, null, 0.1005)]
    [InlineData(MaterialClass.ThroughHardeningSteelNitrided, 900.0, 0.1005)]
    [InlineData(MaterialClass.Nitrocarburised, null, 0.1005)]
    public void Slip_layers_match_ISO_6336_3(MaterialClass material, double? yield, double expected) =>
        Assert.Equal(expected, RootStrength.SlipLayer(material, yield), 1e-12);

    // Half way in yield between two rows, ln ρ' is half way too.
    [Fact]
    public void Between_two_rows_the_slip_layer_is_their_geometric_mean() =>
        Assert.Equal(
            Math.Sqrt(0.0194 * 0.0064), RootStrength.SlipLayer(MaterialClass.AlloyThroughHardened, 700), 1e-12);

    // (1 + √(0.003·0.2·5))/(1 + √0.0036) = 1.0547723/1.06 at q_s = 2; sharper notches weigh more on steels with a thick slip
    // layer.
    [Fact]
    public void Notch_sensitivity_for_endurance_by_hand()
    {
        Assert.Equal(1.0547723 / 1.06, RootStrength.NotchSensitivity(2, 0.003), 1e-7);
        Assert.True(RootStrength.NotchSensitivity(4, 0.1005) > RootStrength.NotchSensitivity(4, 0.003));
        Assert.Equal(0.95, RootStrength.NotchSensitivitySimplified(1.49));
        Assert.Equal(1, RootStrength.NotchSensitivitySimplified(1.5));
    }

    // Static, by hand: Eh 0.44·1.5 + 0.12; NT 0.2·1.5 + 0.6; V at σ_0.2 = 300: (1 + 0.82·0.5)/1.82; St at σ_S = 200: (1 +
    // 0.93·0.5)/1.93.
    [Theory]
    [InlineData(MaterialClass.CaseHardened, null, 0.78)]
    [InlineData(MaterialClass.InductionHardened, null, 0.78)]
    [InlineData(MaterialClass.Nitrocarburised, null, 0.90)]
    [InlineData(MaterialClass.AlloyThroughHardened, 300.0, 1.41 / 1.82)]
    [InlineData(MaterialClass.Normalised, 200.0, 1.465 / 1.93)]
    public void Static_notch_sensitivity_by_hand(MaterialClass material, double? yield, double expected) =>
        Assert.Equal(expected, RootStrength.NotchSensitivityStatic(material, 1.5, yield), 1e-12);

    // ISO 6336-3, R = −1.2 and M = 0.3: the same equation in another language; and by hand 1/(1 + 1.2·0.7/1.3).
    [Fact]
    public void The_mean_stress_factor_matches_the_same_equation_in_another_language()
    {
        Assert.Equal(0.607476636, RootStrength.MeanStress(-1.2, 0.3), 1e-9);
        Assert.Equal(1 / (1 + 1.2 * 0.7 / 1.3), RootStrength.MeanStress(RootStrength.StressRatio(1), 0.3), 1e-15);
    }

    // ISO 6336-5: 0.7 of σ_Flim for idlers, from memory; the annex comes near it for case-hardened steel with Y_S about 2.
    [Fact]
    public void A_case_hardened_idler_keeps_about_seven_tenths() =>
        Assert.Equal(
            0.7, RootStrength.MeanStress(-1.2, RootStrength.MeanStressRatio(MaterialClass.CaseHardened, 2, false, false)), 0.03);

    // ISO 6336-3, annex on mean stress, M, from memory.
    [Theory]
    [InlineData(MaterialClass.CaseHardened, false, 0.5, 0.7)]
    [InlineData(MaterialClass.CaseHardened, true, 0.4, 0.6)]
    [InlineData(MaterialClass.NitridingSteelNitrided, false, 0.3, 0.3)]
    [InlineData(MaterialClass.Nitrocarburised, true, 0.3, 0.3)]
    [InlineData(MaterialClass.InductionHardened, false, 0.4, 0.6)]
    [InlineData(MaterialClass.AlloyThroughHardened, false, 0.3, 0.5)]
    [InlineData(MaterialClass.Normalised, false, 0.3, 0.5)]
    public void The_ratio_of_mean_stress_matches_ISO_6336_3(
        MaterialClass material, bool peened, double endurance, double staticStrength)
    {
        Assert.Equal(endurance, RootStrength.MeanStressRatio(material, 2, peened, false), 1e-12);
        Assert.Equal(staticStrength, RootStrength.MeanStressRatio(material, 2, peened, true), 1e-12);
    }

    // Rz below 1 µm: 1.12, 1.07, 1.025; the curves come within 0.015 of them at 1 µm, from either side.
    [Fact]
    public void Rougher_roots_and_larger_teeth_are_never_stronger()
    {
        foreach (var material in All)
        {
            Assert.Equal(RootStrength.Surface(material, 0.99), RootStrength.Surface(material, 1), 0.015);
        }

        Gen.Select(Gen.Enum<MaterialClass>(), Gen.Double[1, 35], Gen.Double[0, 5]).Sample((material, value, more) =>
            RootStrength.Surface(material, value + more) <= RootStrength.Surface(material, value)
            && RootStrength.Size(material, value + more) <= RootStrength.Size(material, value), iter: 1000);
    }

    // ISO 6336-3, size factor at 10 mm and its floors, from memory.
    [Theory]
    [InlineData(MaterialClass.AlloyThroughHardened, 10.0, 0.97)]
    [InlineData(MaterialClass.AlloyThroughHardened, 40.0, 0.85)]
    [InlineData(MaterialClass.CaseHardened, 10.0, 0.95)]
    [InlineData(MaterialClass.Nitrocarburised, 40.0, 0.80)]
    public void Size_factors_match_ISO_6336_3(MaterialClass material, double module, double expected) =>
        Assert.Equal(expected, RootStrength.Size(material, module), 1e-12);

    [Fact]
    public void What_the_standard_does_not_cover_says_why()
    {
        void Refused(string reason, Func<double> call) =>
            Assert.Contains(reason, Assert.Throws<OutsideValidityException>(() => call()).Message, StringComparison.Ordinal);

        Refused("yield strength of the steel is not stated", () => RootStrength.SlipLayer(MaterialClass.Normalised, null));
        Refused("yield strength of the steel is not stated", () =>
            RootStrength.NotchSensitivityStatic(MaterialClass.AlloyThroughHardened, 2, null));
        Refused("Rz of the root must lie above 0 and up to 40 µm", () => RootStrength.Surface(MaterialClass.CaseHardened, 41));
        Refused("R must lie from −1.2 to 0", () => RootStrength.MeanStress(-1.3, 0.3));
        Refused("must lie from 0 to 1", () => RootStrength.StressRatio(1.1));
        Refused("Y_S must lie from 1 to 5", () => RootStrength.MeanStressRatio(MaterialClass.CaseHardened, 6, false, false));
        Refused("q_s must be at least 1", () => RootStrength.NotchSensitivity(0.9, 0.003));
        Refused("stress correction factor must be at least 1", () =>
            RootStrength.NotchSensitivityStatic(MaterialClass.CaseHardened, 0.9, null));
    }
}
