namespace Pawl.Analysis.Tests;

/// <summary>Steel, treatment and strength of a gear as its spec and the catalogue state them.</summary>
public class MaterialOfSpecsTests
{
    private const string Teeth = "teeth: 20, module: 2 mm, profile_shift: 0";

    private static GearboxAnalysis Gear(string more) => SpecText.Analyse(SpecText.Pair($"{Teeth}, {more}", Teeth));

    private static string CaseHardened(string more) =>
        $"material: EN-18CrNiMo7-6, heat_treatment: {{treatment: case-hardened, {more}}}";

    // ISO 6336-5, from memory: Eh, MQ: σ_Hlim 1500; core of 30 HRC: σ_Flim 500. 58 HRC lies between 650 and 660 HV:
    // 650 + 10·(58 − 57.8)/(58.3 − 57.8) = 654.
    [Fact]
    public void A_case_hardened_gear_of_quality_MQ_has_the_numbers_of_class_Eh()
    {
        var analysis = Gear(CaseHardened("quality: MQ, surface_hardness: 59..62 HRC, core_hardness: 31..40 HRC"));

        Assert.Equal("Eh", analysis.Quantity("gears.pinion", "material_class").Text);
        Assert.Equal(1500, analysis.Value("gears.pinion", "contact_limit"));
        Assert.Equal(500, analysis.Value("gears.pinion", "bending_limit"));
        Assert.Equal("case-hardened", analysis.Quantity("gears.pinion", "surface").Text);
    }

    // A flank that is not hardened takes the imprint of its mate.
    [Theory]
    [InlineData("EN-18CrNiMo7-6", "case-hardened", "EN-18CrNiMo7-6", "case-hardened", false)]
    [InlineData("EN-18CrNiMo7-6", "case-hardened", "EN-31CrMoV9", "gas-nitrided", false)]
    [InlineData("EN-18CrNiMo7-6", "case-hardened", "EN-42CrMo4", "induction-hardened", false)]
    [InlineData("EN-18CrNiMo7-6", "case-hardened", "EN-42CrMo4", "through-hardened", true)]
    [InlineData("EN-42CrMo4", "through-hardened", "EN-42CrMo4", "through-hardened", true)]
    public void A_flank_without_a_hard_case_is_soft(string first, string treatment, string second, string other, bool isSoft) => Assert.Equal(
        isSoft,
        SpecText.Analyse(SpecText.Pair(
            $"{Teeth}, material: {first}, heat_treatment: {{treatment: {treatment}}}", $"{Teeth}, material: {second}, heat_treatment: {{treatment: {other}}}"))
            .Quantity("meshes.pinion~wheel", "soft_flank").Truth);

    [Fact]
    public void Whether_a_flank_is_soft_waits_for_the_treatment_of_both() =>
        Assert.Equal(
            ["train.gears.wheel.heat_treatment is not stated"],
            Gear(CaseHardened("quality: MQ")).Quantity("meshes.pinion~wheel", "soft_flank").Reasons);
}
