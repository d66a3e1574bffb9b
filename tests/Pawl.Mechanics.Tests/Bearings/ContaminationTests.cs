using CsCheck;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Bearings;

public class ContaminationTests
{
    private static readonly string[] BathCodes = ["-/13/10", "-/15/12", "-/17/14", "-/19/16", "-/21/18"];

    // 0.0133·1^0.68·50^0.55 = 0.11438; 1 − 1.67/∛50 = 0.54668. Filtered: 0.0288·8.600 = 0.24768; 1 − 1.6329/3.6840 = 0.55676.
    [Fact]
    public void Contamination_of_oil_is_worked_by_hand()
    {
        Assert.Equal(0.11438 * 0.54668, Contamination.Factor(LubricantSupply.Bath, "-/17/14", 1, 50), 5e-5);
        Assert.Equal(0.24768 * 0.55676, Contamination.Factor(LubricantSupply.Filtered, "20/17/14", 1, 50), 5e-5);
    }

    // ISO 281:2007, from memory; a public page on ISO 281 prints 1 for a laboratory, 0.6 to 0.5 for normal, 0.1 and 0 for the
    // worst.
    [Theory]
    [InlineData("extreme cleanliness", 1, 1, 1, 1)]
    [InlineData("normal cleanliness", 0.5, 0.6, 0.6, 0.8)]
    [InlineData("typical contamination", 0.1, 0.3, 0.2, 0.4)]
    [InlineData("very severe contamination", 0, 0, 0, 0)]
    public void Classes_in_words_give_ranges(string words, double least, double greatest, double leastLarge, double greatestLarge)
    {
        Assert.Equal((least, greatest), (Contamination.OfClass(words, 99).Min, Contamination.OfClass(words, 99).Max));
        Assert.Equal((leastLarge, greatestLarge), (Contamination.OfClass(words, 100).Min, Contamination.OfClass(words, 100).Max));
    }

    [Fact]
    public void Dirtier_oil_is_never_better_and_the_factor_stays_from_zero_to_one() =>
        Gen.Select(Gen.Double[0.1, 4], Gen.Double[10, 400], Gen.Int[0, 3]).Sample((kappa, diameter, index) =>
        {
            var cleaner = Contamination.Factor(LubricantSupply.Bath, BathCodes[index], kappa, diameter);
            return cleaner is >= 0 and <= 1 && Contamination.Factor(LubricantSupply.Bath, BathCodes[index + 1], kappa, diameter) <= cleaner;
        });

    [Fact]
    public void A_filter_in_the_line_helps() =>
        Gen.Select(Gen.Double[0.1, 4], Gen.Double[10, 400], Gen.Int[0, 3]).Sample((kappa, diameter, index) =>
            Contamination.Factor(LubricantSupply.Filtered, BathCodes[index], kappa, diameter)
                >= Contamination.Factor(LubricantSupply.Bath, BathCodes[index], kappa, diameter));

    [Fact]
    public void A_code_between_two_takes_the_dirtier()
    {
        Assert.Equal(
            Contamination.Factor(LubricantSupply.Bath, "-/17/14", 1, 50), Contamination.Factor(LubricantSupply.Bath, "18/16/12", 1, 50));
        Assert.Equal(
            Contamination.Factor(LubricantSupply.Bath, "-/19/16", 1, 50), Contamination.Factor(LubricantSupply.Bath, "15/15", 1, 50));
        Assert.Equal(
            Contamination.Factor(LubricantSupply.Bath, "-/13/10", 1, 50), Contamination.Factor(LubricantSupply.Bath, "10/8/5", 1, 50));
    }

    [Fact]
    public void Unknown_codes_and_words_are_refused()
    {
        Refusal.Says("as dirty as `-/24/20`", () => Contamination.Factor(LubricantSupply.Bath, "-/24/20", 1, 50));
        Refusal.Says("as dirty as `-/21/18`", () => Contamination.Factor(LubricantSupply.Filtered, "-/21/18", 1, 50));
        Refusal.Says("`clean` is no cleanliness code", () => Contamination.Factor(LubricantSupply.Bath, "clean", 1, 50));
        Refusal.Says("`x/17/14` is no cleanliness code", () => Contamination.Factor(LubricantSupply.Bath, "x/17/14", 1, 50));
        Refusal.Says("grease has no code", () => Contamination.Factor(LubricantSupply.Grease, "-/17/14", 1, 50));
        Refusal.Says("no class of contamination `dirty`", () => Contamination.OfClass("dirty", 50).Min);
    }
}
