using Pawl.Mechanics.Materials;
using Pawl.Quantities;
using Pawl.Specs;
using Pawl.Specs.Model;

namespace Pawl.Analysis.Tests;

/// <summary>Hardness in the catalogue of steels that ships inside, against the tables of hardness and of strength.</summary>
public class ShippedSteelStrengthTests
{
    private static readonly IReadOnlyList<MaterialSpec> Steels = new SpecLoader(SpecText.Root, []).Catalogue.Materials.Entries;

    public static TheoryData<string, string> Everything()
    {
        var all = new TheoryData<string, string>();
        foreach (var steel in Steels)
        {
            foreach (var treatment in steel.Treatments.Entries)
                all.Add(steel.Name.Value, treatment.Name.Value);
        }

        return all;
    }

    private static TreatmentSpec Treatment(string steel, string treatment) =>
        Steels.Single(each => each.Name.Value == steel).Treatments.Find(treatment)!;

    private static (double Min, double Max) Vickers(Hardness hardness) => hardness.Scale switch
    {
        HardnessScale.RockwellC => (HardnessConversion.VickersOfRockwell(hardness.Min), HardnessConversion.VickersOfRockwell(hardness.Max)),
        HardnessScale.Brinell => (HardnessConversion.VickersOfBrinell(hardness.Min), HardnessConversion.VickersOfBrinell(hardness.Max)),
        _ => (hardness.Min, hardness.Max),
    };

    // Softer than the class begins, there would be no strength. What is harder than it ends counts as its upper end; a quarter harder, it
    // would be another class.
    [Theory]
    [MemberData(nameof(Everything))]
    public void The_hardness_of_a_treatment_lies_where_its_class_has_strength(string steel, string treatment)
    {
        var entry = Treatment(steel, treatment);
        var (softest, hardest) = Vickers(entry.SurfaceHardness!.Value);
        if (AllowableStress.Find(entry.Class.Value) is not { } material)
        {
            Assert.Equal("none", entry.Class.Value);
            return;
        }

        var (least, most) = AllowableStress.Hardness(material, MaterialQuality.Ml);
        Assert.InRange(softest, least, most);
        Assert.InRange(hardest, least, 1.25 * most);
        Assert.True(AllowableStress.Contact(material, MaterialQuality.Ml, softest) > 0);
    }

    // A spec may ask for MQ with the window as it stands; only unalloyed steel, nitrocarburised, stays below the 450 HV of MQ.
    [Theory]
    [MemberData(nameof(Everything))]
    public void Nearly_every_treatment_reaches_quality_MQ(string steel, string treatment)
    {
        var entry = Treatment(steel, treatment);
        if (AllowableStress.Find(entry.Class.Value) is not { } material)
            return;

        var reaches = Vickers(entry.SurfaceHardness!.Value).Min >= AllowableStress.Hardness(material, MaterialQuality.Mq).Min;
        Assert.Equal((steel, treatment) is not ("EN-C45", Treatments.Nitrocarburised), reaches);
    }

    [Theory]
    [MemberData(nameof(Everything))]
    public void A_core_is_softer_than_its_case_in_the_scale_of_both(string steel, string treatment)
    {
        var entry = Treatment(steel, treatment);
        if (entry.CoreHardness is { } core)
            Assert.True(Vickers(core.Value).Max < Vickers(entry.SurfaceHardness!.Value).Min);
    }

    // Silicon-modified 4340 at 52 to 56 HRC is far above the 390 HV where class V-alloy ends: no line may be stretched to it.
    [Fact]
    public void What_is_harder_than_its_class_has_none() => Assert.All(
        Steels.SelectMany(steel => steel.Treatments.Entries).Where(entry => entry.Class.Value == "none"),
        entry => Assert.True(
            Vickers(entry.SurfaceHardness!.Value).Min >= AllowableStress.Hardness(MaterialClass.AlloyThroughHardened, MaterialQuality.Me).Most));
}
