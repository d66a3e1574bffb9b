using CsCheck;
using Pawl.Mechanics.Materials;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Materials;

public class HydrogenBakeTests
{
    // ASTM B850-98 (reapproved 2009), bake at 190 °C to 220 °C, reprinted on the page of a plating shop. Both ends of every row.
    [Theory]
    [InlineData(1001, 1100, 8)]
    [InlineData(1101, 1200, 10)]
    [InlineData(1201, 1300, 12)]
    [InlineData(1301, 1400, 14)]
    [InlineData(1401, 1500, 16)]
    [InlineData(1501, 1600, 18)]
    [InlineData(1601, 1700, 20)]
    [InlineData(1701, 1800, 22)]
    public void The_bake_lasts_as_long_as_ASTM_B850_says(double from, double to, double hours)
    {
        Assert.Equal(hours * 3600, HydrogenBake.MinDuration(from));
        Assert.Equal(hours * 3600, HydrogenBake.MinDuration(to));
    }

    [Fact]
    public void Up_to_1000_MPa_there_is_no_bake() =>
        Gen.Double[0, HydrogenBake.DangerousStrength].Sample(strength => HydrogenBake.MinDuration(strength) == 0);

    // Two hours more for every 100 MPa, read off the table: 8 h + 2 h·⌈(R_m − 1100)/100⌉.
    [Fact]
    public void Every_hundred_megapascals_cost_two_hours() =>
        Gen.Double[1000.001, 1800].Sample(strength =>
            HydrogenBake.MinDuration(strength) == 3600 * (8 + (2 * Math.Ceiling((strength - 1100) / 100))));

    // ISO 18265, table A.1: 400 HV is 1290 MPa, 550 HV is 1810 MPa. A nitrided case is measured to the one, a case-hardened to the other.
    [Theory]
    [InlineData(400, 1290)]
    [InlineData(550, 1810)]
    public void Every_case_is_hard_enough_to_crack(double vickers, double strength)
    {
        Assert.Equal(strength, HardnessConversion.TensileStrength(vickers));
        Assert.True(strength > HydrogenBake.DangerousStrength);
    }

    [Fact]
    public void Above_1800_MPa_there_is_no_bake_that_helps() =>
        Refusal.Says("ASTM B850 gives no bake for 1801 MPa: it ends at 1800 MPa", () => HydrogenBake.MinDuration(1801));
}
