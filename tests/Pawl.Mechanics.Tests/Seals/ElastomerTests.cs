using Pawl.Mechanics.Seals;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Seals;

public class ElastomerTests
{
    // Standard grades on a public trade page, °C. HNBR stands 150 °C there, 140 °C here; EPDM is the sulphur-cured one.
    [Theory]
    [InlineData("NBR", -30, 100)]
    [InlineData("HNBR", -30, 150)]
    [InlineData("EPDM", -45, 130)]
    [InlineData("VMQ", -55, 200)]
    [InlineData("FVMQ", -55, 175)]
    [InlineData("FKM", -15, 200)]
    [InlineData("FFKM", -15, 260)]
    public void Temperatures_match_a_public_trade_page_within_10_K(string code, double coldest, double hottest)
    {
        Assert.Equal(coldest, Find(code).Coldest, 10.0);
        Assert.InRange(Find(code).Hottest, hottest - 10, hottest);
    }

    // Common practice: FKM serves to 400 °F, 204 °C; a public selection guide prints −15 °F to 400 °F.
    [Fact]
    public void FKM_serves_to_about_four_hundred_fahrenheit() => Assert.Equal((400 - 32) / 1.8, Find("FKM").Hottest, 5.0);

    // The Tribology Handbook, table of lip seals, on a public page: nitrile to 100 °C, acrylate to 130 °C, fluoropolymer and
    // polysiloxane to 200 °C; mineral oil: the first three excellent, polysiloxane fair.
    [Theory]
    [InlineData("NBR", 100, Suitability.Suitable)]
    [InlineData("ACM", 130, Suitability.Suitable)]
    [InlineData("FKM", 200, Suitability.Suitable)]
    [InlineData("VMQ", 200, Suitability.Limited)]
    public void Lips_match_the_tribology_handbook(string code, double hottest, Suitability inMineralOil)
    {
        Assert.InRange(Find(code).Hottest, hottest, hottest + 20);
        Assert.Equal(inMineralOil, Find(code).In(SealedFluid.Mineral));
        Assert.NotNull(Find(code).LipSpeed);
    }

    // Public pages of design guides: ethylene propylene is the rubber for brake fluid and the wrong one for petroleum oil; nitrile is
    // destroyed by brake fluid; acrylate does not stand water.
    [Theory]
    [InlineData("EPDM", SealedFluid.BrakeFluid, Suitability.Suitable)]
    [InlineData("EPDM", SealedFluid.Mineral, Suitability.Unsuitable)]
    [InlineData("EPDM", SealedFluid.Polyalphaolefin, Suitability.Unsuitable)]
    [InlineData("EPDM", SealedFluid.WaterGlycol, Suitability.Suitable)]
    [InlineData("NBR", SealedFluid.BrakeFluid, Suitability.Unsuitable)]
    [InlineData("FKM", SealedFluid.BrakeFluid, Suitability.Unsuitable)]
    [InlineData("ACM", SealedFluid.WaterGlycol, Suitability.Unsuitable)]
    [InlineData("NBR", SealedFluid.Polyglycol, Suitability.Limited)]
    [InlineData("FKM", SealedFluid.Ester, Suitability.Suitable)]
    [InlineData("VMQ", SealedFluid.Polyalphaolefin, Suitability.Unsuitable)]
    public void Fluids_follow_the_trade(string code, SealedFluid fluid, Suitability suitability) =>
        Assert.Equal(suitability, Find(code).In(fluid));

    [Fact]
    public void Absent_values_stay_absent_and_present_ones_are_rubber()
    {
        Assert.All(Elastomer.All, rubber =>
        {
            Assert.InRange(rubber.Expansion ?? 2e-4, 1e-4, 3e-4);
            Assert.True(rubber.Coldest < -5 && rubber.Hottest > 90);
        });
        Assert.Null(Find("FFKM").Expansion);
        Assert.Null(Find("EPDM").LipSpeed);
        Assert.Equal(35_000, Find("FKM").LipSpeed);
    }

    [Fact]
    public void An_unknown_rubber_is_told_what_there_is()
    {
        Assert.False(Elastomer.TryFind("fkm", out _, out var reason));
        Assert.Equal("the table has no elastomer `fkm`; it has NBR, HNBR, FKM, FFKM, EPDM, VMQ, FVMQ, ACM", reason);
    }

    // The chart of a seller of seals, inches and psi, on a public page; 500 psi is 3.447 MPa.
    [Theory]
    [InlineData(0, 70, 0.016)]
    [InlineData(3.44, 70, 0.016)]
    [InlineData(3.45, 70, 0.010)]
    [InlineData(6.89, 70, 0.010)]
    [InlineData(10.3, 70, 0.006)]
    [InlineData(13.7, 70, 0.004)]
    [InlineData(20.6, 70, 0.002)]
    [InlineData(3.44, 90, 0.028)]
    [InlineData(6.89, 90, 0.024)]
    [InlineData(10.3, 90, 0.020)]
    [InlineData(13.7, 90, 0.016)]
    [InlineData(20.6, 90, 0.010)]
    [InlineData(3.44, 80, 0.022)]
    public void Gaps_match_a_public_chart(double pressure, double hardness, double inches) =>
        Assert.Equal(inches * 25.4, ExtrusionGapLimit.Clearance(pressure, hardness), 1e-9);

    // Another public chart reads: at 1000 psi and 0.016 in, 70 Shore A is pushed through and 80 Shore A is not.
    [Fact]
    public void Two_charts_agree_on_a_case_between()
    {
        Assert.True(ExtrusionGapLimit.Clearance(6.89, 70) < 0.016 * 25.4);
        Assert.True(ExtrusionGapLimit.Clearance(6.89, 80) >= 0.016 * 25.4);
    }

    [Fact]
    public void Gaps_off_the_chart_are_refused()
    {
        Refusal.Says("the chart covers 0 to 20.7 MPa", () => ExtrusionGapLimit.Clearance(21, 70));
        Refusal.Says("the chart covers 0 to 20.7 MPa", () => ExtrusionGapLimit.Clearance(-1, 70));
        Refusal.Says("the chart covers 70 to 90 Shore A", () => ExtrusionGapLimit.Clearance(1, 60));
    }

    private static Elastomer Find(string code) =>
        Elastomer.TryFind(code, out var rubber, out var reason) ? rubber : throw new InvalidOperationException(reason);
}
