using CsCheck;
using Pawl.Quantities;

namespace Pawl.Analysis.Tests;

/// <summary>Radial lip seals as a spec states them.</summary>
public class LipSealOfSpecsTests
{
    private const string S = "lip_seals.one";

    private const string Input =
        "shaft: input, housing: housing, diameter: 30 mm h11, bore: 42 mm H8, elastomer: NBR, hardness: 58..62 HRC, roughness_ra: 0.4 µm ±0.2, twist_free: true, "
        + "runout: 0.05 mm, offset: 0.06 mm, lip_faces: oil, pressure: 0.01 MPa, lead_in: {angle: 20°, length: 3 mm}";

    private static GearboxAnalysis Of(string seal, string more = "", string duty = "") =>
        OilText.Analyse(OilText.Spec($"{more}\nlip_seals: {{one: {{{seal}}}}}", duty: duty));

    private static Extent In(GearboxAnalysis analysis, string quantity)
    {
        var found = analysis.Quantity(S, quantity);
        Assert.True(found.IsEvaluated, $"{quantity}: {string.Join("; ", found.Reasons)}");
        var unit = found.Kind.Unit;
        return new(unit.FromCoherent(found.Value.Nominal), unit.FromCoherent(found.Value.Min), unit.FromCoherent(found.Value.Max));
    }

    // π·30 mm·1450/min; h11 at 30 mm is 0/−130 µm (ISO 286-2). NBR lips stand 12 m/s: common practice, no source.
    [Fact]
    public void Speed_and_share_by_hand()
    {
        var analysis = Of(Input);
        double At(double diameter) => Math.PI * diameter * 1450 / 60 / 1000;

        Assert.Equal(1450, In(analysis, "relative_speed").Nominal, 1e-9);
        Assert.Equal(At(30), In(analysis, "surface_speed").Max, 1e-9);
        Assert.Equal(At(29.87), In(analysis, "surface_speed").Min, 1e-9);
        Assert.Equal(At(30) / 12 * 100, In(analysis, "speed_share").Max, 1e-9);
        Assert.Equal(At(30) / 6 * 100, In(Of($"{Input}, max_speed: 6 m/s"), "speed_share").Max, 1e-9);
    }

    // Between input and carrier, which turns the same way at 1450/4.5 1/min, the lip sees the difference: 1450·3.5/4.5.
    [Fact]
    public void A_seal_between_two_turning_bodies_sees_their_difference() =>
        Assert.Equal(1450 * 3.5 / 4.5, In(Of(Input.Replace("housing: housing", "housing: carrier", StringComparison.Ordinal)), "relative_speed").Nominal, 1e-9);

    [Fact]
    public void The_fastest_share_of_the_spectrum_counts() => Assert.Equal(
        2000, In(Of(Input, duty: "  spectrum:\n    - {share: 60 %, torque: 10 N·m, speed: 2000 rpm}\n    - {share: 40 %, torque: 10 N·m, speed: 900 rpm}"), "relative_speed").Nominal, 1e-9);

    // ISO 286-2 at 30 mm and 42 mm: h11 0/−130 µm, h9 0/−52 µm, f7 −20/−41 µm, H8 +39/0 µm, H9 +62/0 µm.
    [Theory]
    [InlineData("diameter: 30 mm h11", "shaft_beyond_h11", 0)]
    [InlineData("diameter: 30 mm h9", "shaft_beyond_h11", 0)]
    [InlineData("diameter: 30 mm f7", "shaft_beyond_h11", -0.020)]
    [InlineData("diameter: 30 mm +0.05/0", "shaft_beyond_h11", 0.050)]
    [InlineData("diameter: 30 mm -0.10/-0.20", "shaft_beyond_h11", 0.070)]
    [InlineData("bore: 42 mm H8", "bore_beyond_h8", 0)]
    [InlineData("bore: 42 mm H9", "bore_beyond_h8", 0.023)]
    [InlineData("bore: 42 mm +0.02/+0.01", "bore_beyond_h8", -0.010)]
    public void Limits_are_held_against_h11_and_H8(string size, string quantity, double excess)
    {
        var stated = size.StartsWith('d') ? "diameter: 30 mm h11" : "bore: 42 mm H8";

        Assert.Equal(excess, In(Of(Input.Replace(stated, size, StringComparison.Ordinal)), quantity).Nominal, 1e-9);
    }

    // ISO 18265, table A.1, from memory: 45 HRC is 446 HV, 55 HRC 595 HV, each within a unit of rounding. The step at 4 m/s is common practice.
    [Theory]
    [InlineData("30 mm h11", 446)]
    [InlineData("60 mm h11", 595)]
    public void A_fast_lip_asks_for_a_harder_shaft(string diameter, double vickers) => Assert.Equal(
        vickers, In(Of(Input.Replace("30 mm h11", diameter, StringComparison.Ordinal).Replace("42 mm", "80 mm", StringComparison.Ordinal)), "required_hardness").Nominal, 1.5);

    // DIN 3760, from memory: 0.05 MPa to 2.8 m/s; 0.1 mm of runout to 3000 1/min, common practice.
    [Fact]
    public void Pressure_and_runout_are_limited_by_speed()
    {
        var analysis = Of(Input);

        Assert.Equal(0.05, In(analysis, "permitted_pressure").Min, 1e-9);
        Assert.Equal(0.1, In(analysis, "permitted_runout").Min, 1e-9);
        Assert.Equal(0.2, In(Of($"{Input}, max_pressure: 0.2 MPa"), "permitted_pressure").Min, 1e-9);
    }

    [Fact]
    public void Beyond_the_table_of_pressures_the_maker_is_asked()
    {
        var found = Of(Input.Replace("30 mm h11", "90 mm h11", StringComparison.Ordinal).Replace("42 mm", "110 mm", StringComparison.Ordinal)).Quantity(S, "permitted_pressure");

        Assert.False(found.IsEvaluated);
        Assert.Contains(found.Reasons, reason => reason.Contains("5.6 m/s", StringComparison.Ordinal));
    }

    // At the whole speed 20 K to 40 K, so at the share of it; the hottest oil is 80 °C. NBR −30 °C and 15 K for the motion.
    [Fact]
    public void The_lip_is_warmer_than_the_oil_and_stiffer_than_rubber_at_rest()
    {
        var analysis = Of(Input);
        var share = Math.PI * 30 * 1450 / 60 / 1000 / 12;

        Assert.Equal(80 + (40 * share), In(analysis, "lip_temperature").Max, 1e-9);
        Assert.Equal(20 * share * 29.87 / 30, In(analysis, "lip_temperature_rise").Min, 1e-9);
        Assert.Equal(-15, In(analysis, "min_lip_temperature").Nominal, 1e-9);
        Assert.Equal(20, In(analysis, "oil_temperature").Min, 1e-9);
    }

    // Table elastomers, common practice: what the trade says of the families in the three bases of the catalogue.
    [Theory]
    [InlineData("NBR", "gear-oil-vg220", "suitable")]
    [InlineData("NBR", "gear-oil-pag-220", "limited")]
    [InlineData("ACM", "gear-oil-pag-220", "unsuitable")]
    [InlineData("FKM", "gear-oil-pao-150", "suitable")]
    [InlineData("VMQ", "gear-oil-pao-150", "unsuitable")]
    public void What_an_elastomer_makes_of_an_oil(string elastomer, string oil, string suitability)
    {
        var text = OilText.Spec($"lip_seals: {{one: {{{Input.Replace("NBR", elastomer, StringComparison.Ordinal)}}}}}")
            .Replace("gear-oil-vg220", oil, StringComparison.Ordinal);

        Assert.Equal(suitability, OilText.Analyse(text).Quantity(S, "suitability").Text);
    }

    // Fluid of automatic transmissions is of mineral oil or PAO, and the worse counts: silicone stands the one in part, the other not.
    [Theory]
    [InlineData("mineral", "limited")]
    [InlineData("PAO", "unsuitable")]
    [InlineData("ATF", "unsuitable")]
    public void Of_two_bases_the_worse_counts(string oil, string suitability) => Assert.Equal(
        suitability,
        OilText.Analyse(
            OilText.Spec($"lip_seals: {{one: {{{Input.Replace("NBR", "VMQ", StringComparison.Ordinal)}}}}}"),
            each => each with { Base = OilText.Said(oil) }).Quantity(S, "suitability").Text);

    [Fact]
    public void A_ring_is_held_against_the_oil_as_well()
    {
        const string Ring = "as568: 242, elastomer: EPDM, gland: plug, bore: 110 mm H8, plug: 110 mm f7, groove: 104.4 mm h9, width: 5.2 mm +0.2/0";
        var text = OilText.Spec($"o_rings: {{joint: {{{Ring}}}}}");

        Assert.Equal("unsuitable", OilText.Analyse(text).Quantity("o_rings.joint", "suitability").Text);
        Assert.Equal(
            ["lubricants.gear-oil-vg220.base is not stated"],
            OilText.Analyse(text, oil => oil with { Base = null }).Quantity("o_rings.joint", "suitability").Reasons);
    }

    // The housing is closed: its pressure is at the lip where the seal states none.
    [Fact]
    public void The_pressure_of_the_housing_comes_to_the_lip()
    {
        const string Closed = "lubrication: {supply: splash, free_volume: 0.5 L, fill: 0.2 L, ports: {vent: false}}";
        var silent = Input.Replace("pressure: 0.01 MPa, ", "", StringComparison.Ordinal);
        var analysis = Of(silent, Closed);

        Assert.Equal(analysis.Value("lubrication", "housing_pressure"), In(analysis, "pressure").Max, 1e-12);
        Assert.Equal(In(analysis, "permitted_pressure").Min, analysis.Value("lubrication", "permitted_pressure"), 1e-12);
        Assert.Equal(0.01, In(Of(Input, Closed), "pressure").Max, 1e-12);
        Assert.Equal(["lip_seals.one.pressure or lubrication is not stated"], Of(silent).Quantity(S, "pressure").Reasons);
    }

    // The general tolerance of lengths would be 0.1 mm: nobody means that of a roughness.
    [Fact]
    public void Roughness_takes_no_general_tolerance()
    {
        var text = OilText.Spec($"tolerances: {{general: m}}\nlip_seals: {{one: {{{Input.Replace("0.4 µm ±0.2", "0.4 µm", StringComparison.Ordinal)}}}}}");

        Assert.Equal(new Extent(0.4, 0.4, 0.4), In(OilText.Analyse(text), "roughness_ra"));
    }

    [Theory]
    [InlineData("diameter: 30 mm h11, ", "surface_speed", "lip_seals.one.diameter is not stated")]
    [InlineData("bore: 42 mm H8, ", "bore_beyond_h8", "lip_seals.one.bore is not stated")]
    [InlineData("elastomer: NBR, ", "speed_share", "lip_seals.one.elastomer is not stated")]
    [InlineData("hardness: 58..62 HRC, ", "hardness", "lip_seals.one.hardness is not stated")]
    [InlineData("roughness_ra: 0.4 µm ±0.2, ", "roughness_ra", "lip_seals.one.roughness_ra is not stated")]
    [InlineData("twist_free: true, ", "twist_free", "lip_seals.one.twist_free is not stated")]
    [InlineData("runout: 0.05 mm, ", "runout", "lip_seals.one.runout is not stated")]
    [InlineData("lip_faces: oil, ", "lip_faces", "lip_seals.one.lip_faces is not stated")]
    [InlineData(", lead_in: {angle: 20°, length: 3 mm}", "lead_in_angle", "lip_seals.one.lead_in is not stated")]
    public void What_is_missing_is_named(string left, string quantity, string reason)
    {
        Assert.Contains(left, Input, StringComparison.Ordinal);
        var found = Of(Input.Replace(left, "", StringComparison.Ordinal)).Quantity(S, quantity);

        Assert.False(found.IsEvaluated);
        Assert.Contains(reason, found.Reasons);
    }

    [Fact]
    public void A_thicker_shaft_is_faster_and_warmer_under_its_lip() => Gen.Int[10, 60].Sample(
        diameter =>
        {
            GearboxAnalysis At(int d) => Of(Input.Replace("42 mm", "80 mm", StringComparison.Ordinal).Replace("30 mm", $"{d} mm", StringComparison.Ordinal));

            foreach (var quantity in (ReadOnlySpan<string>)["surface_speed", "speed_share", "lip_temperature"])
                Assert.True(In(At(diameter + 1), quantity).Max > In(At(diameter), quantity).Max);
            Assert.True(In(At(diameter + 1), "required_hardness").Max >= In(At(diameter), "required_hardness").Max);
        },
        iter: 40);
}
