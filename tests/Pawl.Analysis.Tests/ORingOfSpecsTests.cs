using System.Globalization;
using CsCheck;
using Pawl.Quantities;

namespace Pawl.Analysis.Tests;

/// <summary>O-rings in their glands as a spec states them.</summary>
public class ORingOfSpecsTests
{
    private const string Teeth = "teeth: 20, module: 2 mm, profile_shift: 0";
    private const string Ring = "o_rings.joint";

    private const string Plug =
        "as568: 242, elastomer: FKM, gland: plug, bore: 110 mm +0.054/0, plug: 110 mm -0.036/-0.071, groove: 104.4 mm 0/-0.087, width: 5.2 mm +0.2/0, "
        + "lead_in: {angle: 20°, length: 3.5 mm}, roughness_ra: 1.6 µm";

    private const string Bore =
        "as568: 226, elastomer: NBR, gland: bore, bore: 50 mm +0.039/0, plug: 50 mm -0.025/-0.050, groove: 55.6 mm +0.074/0, width: 5 mm +0.2/0, "
        + "lead_in: {angle: 20°, length: 3.5 mm}, roughness_ra: 1.6 µm";

    private const string Face =
        "inside: 50 mm ±0.4, cord: 3 mm ±0.1, elastomer: FKM, gland: face-outside, groove: 50.5 mm ±0.1, depth: 2.25 mm ±0.05, width: 4.2 mm +0.2/0, "
        + "roughness_ra: 1.6 µm";

    private static GearboxAnalysis Of(string ring) => SpecText.Analyse(SpecText.Pair(Teeth, Teeth, more: $"o_rings: {{joint: {{{ring}}}}}"));

    private static Extent In(GearboxAnalysis analysis, string quantity)
    {
        var found = analysis.Quantity(Ring, quantity);
        Assert.True(found.IsEvaluated, $"{quantity}: {string.Join("; ", found.Reasons)}");
        var unit = found.Kind.Unit;
        return new(unit.FromCoherent(found.Value.Nominal), unit.FromCoherent(found.Value.Min), unit.FromCoherent(found.Value.Max));
    }

    private static void Holds(Extent found, double nominal, double least, double greatest, double tolerance)
    {
        Assert.Equal(nominal, found.Nominal, tolerance);
        Assert.Equal(least, found.Min, tolerance);
        Assert.Equal(greatest, found.Max, tolerance);
    }

    // Every corner of ring, gland and offset walked apart from this code. -242 is 3.984 ± 0.028 in by 0.139 ± 0.004 in (AS568).
    [Theory]
    [InlineData("inside_diameter", 101.1936, 100.4824, 101.9048, 1e-9)]
    [InlineData("cord", 3.5306, 3.429, 3.6322, 1e-9)]
    [InlineData("gland_height", 2.8, 2.7645, 2.933, 1e-9)]
    [InlineData("stretch", 3.1685798, 2.3631860, 3.8987922, 1e-6)]
    [InlineData("squeeze", 19.4884321, 12.9025387, 22.9946183, 1e-6)]
    [InlineData("extrusion_gap", 0, 0.036, 0.125, 1e-9)]
    public void A_ring_of_a_plug_at_its_corners(string quantity, double nominal, double least, double greatest, double tolerance) =>
        Holds(In(Of(Plug), quantity), nominal, least, greatest, tolerance);

    [Fact]
    public void A_ring_is_computed_without_a_train_as_with_one()
    {
        var with = Of(Plug);
        var without = SpecText.Analyse($$$"""
            pawl: 1
            gearbox: {family: Test, variant: Lid}
            duty: {oil: {running: 70 °C, coldest: 20 °C, hottest: 70 °C}}
            o_rings: {joint: { {{{Plug}}} }}
            """);

        Assert.All(SubjectKinds.ORing.Quantities, kind => Assert.Equal(
            with.Subjects.Single(s => s.Path == Ring).Find(kind)?.Value, without.Subjects.Single(s => s.Path == Ring).Find(kind)?.Value));
        Assert.True(without.Quantity(Ring, "gland_fill").IsEvaluated);
    }

    // A guide that holds the plug within 0.02 mm: half the play, 0.018 to 0.0625 mm, cut off there. By the same walk.
    [Theory]
    [InlineData("gland_height", 2.8, 2.78, 2.8905)]
    [InlineData("squeeze", 19.4884321, 14.1646056, 22.5628645)]
    [InlineData("extrusion_gap", 0, 0.036, 0.0825)]
    public void A_guide_narrows_the_corners(string quantity, double nominal, double least, double greatest) =>
        Holds(In(Of($"{Plug}, eccentricity: 0.02 mm"), quantity), nominal, least, greatest, 1e-6);

    // (104.4 + 2·3.4777611 − 110)/(2·tan 20°); π/4·3.4777611²·(1 + 3·160·10⁻⁶·50)/(2.8·5.2), unswollen, at 70 °C.
    [Fact]
    public void The_chamfer_and_the_fill_by_hand()
    {
        var analysis = Of(Plug);

        Assert.Equal(1.8621334, In(analysis, "required_lead_in").Nominal, 1e-6);
        Assert.Equal(100 * Math.PI / 4 * 3.4777611 * 3.4777611 * 1.024 / (2.8 * 5.2), In(analysis, "gland_fill").Nominal, 1e-5);
    }

    // A face pressed from outside: the ring lies on the inner wall of 50.5 mm. d₂′ = 3·√(53/53.5); depth without offset.
    [Fact]
    public void A_ring_in_a_face_by_hand()
    {
        var analysis = Of(Face);

        Assert.Equal("axial", analysis.Quantity(Ring, "direction").Text);
        Assert.Equal(1, In(analysis, "stretch").Nominal, 1e-9);
        Assert.Equal(100 * (1 - (2.25 / (3 * Math.Sqrt(53 / 53.5)))), In(analysis, "squeeze").Nominal, 1e-9);
        Holds(In(analysis, "gland_height"), 2.25, 2.20, 2.30, 1e-9);
        Assert.DoesNotContain(analysis.Subject(Ring).Quantities, quantity => quantity.Kind.Name is "extrusion_gap" or "required_lead_in");
    }

    // The rod type: the ring of 1.984 in sits on a rod of 50 mm, which it clears by 0.39 mm, pushed into a groove of 55.6 mm.
    [Fact]
    public void A_ring_in_a_bore_by_hand()
    {
        var analysis = Of(Bore);
        var (inside, cord) = (1.984 * 25.4, 0.139 * 25.4);
        var pushed = cord * Math.Sqrt((inside + cord) / (55.6 - cord));

        Assert.Equal(100 * (inside + (2 * cord) - 55.6) / (inside + (2 * cord)), In(analysis, "outside_compression").Nominal, 1e-9);
        Assert.Equal(100 * (1 - (2.8 / pushed)), In(analysis, "squeeze").Nominal, 1e-9);
    }

    [Fact]
    public void Inch_and_metric_give_the_same_ring()
    {
        var table = Of(Plug);
        var stated = Of(Plug.Replace("as568: 242", "inside: 3.984 in ±0.028, cord: 0.139 in ±0.004", StringComparison.Ordinal));

        foreach (var quantity in (ReadOnlySpan<string>)["squeeze", "gland_fill", "stretch", "gland_height"])
        {
            var (one, other) = (In(table, quantity), In(stated, quantity));
            Holds(one, other.Nominal, other.Min, other.Max, 1e-9);
        }
    }

    [Theory]
    [InlineData("groove: 104.4 mm 0/-0.087, ", "squeeze", "o_rings.joint.groove is not stated")]
    [InlineData("width: 5.2 mm +0.2/0, ", "gland_fill", "o_rings.joint.width is not stated")]
    [InlineData("as568: 242, ", "squeeze", "o_rings.joint.as568 or o_rings.joint.inside is not stated")]
    [InlineData("elastomer: FKM, ", "max_elastomer_temperature", "o_rings.joint.elastomer is not stated")]
    [InlineData("bore: 110 mm +0.054/0, ", "extrusion_gap", "o_rings.joint.bore is not stated")]
    [InlineData("lead_in: {angle: 20°, length: 3.5 mm}, ", "lead_in_length", "o_rings.joint.lead_in is not stated")]
    public void What_is_missing_is_named(string left, string quantity, string reason)
    {
        Assert.Contains(left, Plug, StringComparison.Ordinal);
        var found = Of(Plug.Replace(left, "", StringComparison.Ordinal)).Quantity(Ring, quantity);

        Assert.False(found.IsEvaluated);
        Assert.Contains(reason, found.Reasons);
    }

    [Fact]
    public void A_size_that_the_table_lacks_is_said()
    {
        var found = Of(Plug.Replace("242", "399", StringComparison.Ordinal)).Quantity(Ring, "squeeze");

        Assert.False(found.IsEvaluated);
        Assert.Contains(found.Reasons, reason => reason.Contains("no O-ring `399`", StringComparison.Ordinal));
    }

    // The chart of table o-ring-extrusion-gaps: 0.016 in of clearance at 70 Shore A up to 500 psi, 0.028 in at 90; silicones half.
    [Theory]
    [InlineData("", 0.016)]
    [InlineData(", hardness: 90, pressure: 3 MPa", 0.028)]
    [InlineData(", hardness: 80, pressure: 3 MPa", 0.022)]
    [InlineData(", hardness: 70, pressure: 20 MPa", 0.002)]
    public void The_gap_that_the_rubber_bridges(string more, double inches)
    {
        Assert.Equal(inches * 25.4, In(Of($"{Plug}{more}"), "permitted_gap").Nominal, 1e-9);
        Assert.Equal(inches * 12.7, In(Of($"{Plug.Replace("FKM", "VMQ", StringComparison.Ordinal)}{more}"), "permitted_gap").Nominal, 1e-9);
    }

    [Theory]
    [InlineData(", pressure: 50 MPa", "20.7 MPa")]
    [InlineData(", hardness: 60", "70 to 90 Shore A")]
    public void Beyond_the_chart_no_gap_is_permitted(string more, string reason)
    {
        var found = Of($"{Plug}{more}").Quantity(Ring, "permitted_gap");

        Assert.False(found.IsEvaluated);
        Assert.Contains(found.Reasons, each => each.Contains(reason, StringComparison.Ordinal));
    }

    // Monotonic laws: a deeper groove squeezes less and gives more room, a wider one gives more room.
    [Fact]
    public void Depth_and_width_move_squeeze_and_fill_the_way_they_must() => Gen.Select(Gen.Int[0, 12], Gen.Int[0, 20]).Sample(
        (deeper, wider) =>
        {
            var plain = Of(Plug);
            var changed = Of(Plug
                .Replace("104.4", (104.4m - (deeper * 0.1m)).ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal)
                .Replace("5.2", (5.2m + (wider * 0.1m)).ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal));

            Assert.True(In(changed, "squeeze").Min <= In(plain, "squeeze").Min + 1e-12);
            Assert.True(In(changed, "squeeze").Max <= In(plain, "squeeze").Max + 1e-12);
            Assert.True(In(changed, "gland_fill").Max <= In(plain, "gland_fill").Max + 1e-12);
        },
        iter: 60);

    [Fact]
    public void Swell_raises_the_greatest_fill_only()
    {
        var (dry, swollen) = (In(Of($"{Plug}, swell: 0 %"), "gland_fill"), In(Of($"{Plug}, swell: 20 %"), "gland_fill"));

        Assert.Equal(dry.Nominal, swollen.Nominal, 1e-12);
        Assert.Equal(dry.Min, swollen.Min, 1e-12);
        Assert.Equal(dry.Max * 1.2, swollen.Max, 1e-9);
    }

    // The groove must be wider by the rings: 5.2 + 1.4 and 5.2 + 2·1.4 mm leave the gland of the ring without them, less what their tolerance takes.
    [Theory]
    [InlineData("one, back_up_side: low-pressure", "6.6", 5.1, 5.5)]
    [InlineData("two", "8.0", 5.0, 5.6)]
    public void A_groove_widened_by_its_back_up_rings_is_filled_as_before(string rings, string width, double least, double greatest)
    {
        var plain = Of(Plug);
        var backed = Of($"{Plug.Replace("width: 5.2 mm", $"width: {width} mm", StringComparison.Ordinal)}, back_up_rings: {rings}, back_up_thickness: 1.4 mm ±0.1");

        Holds(In(backed, "rubber_width"), 5.2, least, greatest, 1e-9);
        Assert.Equal(In(plain, "dry_fill").Nominal, In(backed, "dry_fill").Nominal, 1e-9);
        Assert.Equal(In(plain, "dry_fill").Max * 5.2 / least, In(backed, "dry_fill").Max, 1e-9);
    }

    // Chart, 0 to 500 psi: 0.016 in at 70 IRHD, 0.028 in at 90, which stands for the back-up ring where one protects.
    [Theory]
    [InlineData("two", "both", true)]
    [InlineData("one, back_up_side: low-pressure", "one", true)]
    [InlineData("one, back_up_side: high-pressure", "one", false)]
    [InlineData("one, back_up_side: low-pressure", "both", false)]
    public void A_back_up_ring_protects_on_the_side_away_from_the_pressure(string rings, string from, bool isProtected)
    {
        var analysis = Of($"{Plug.Replace("5.2 mm", "8.0 mm", StringComparison.Ordinal)}, back_up_rings: {rings}, back_up_thickness: 1.4 mm, pressure_from: {from}");

        Assert.Equal(isProtected, analysis.Quantity(Ring, "back_up_protects").Truth);
        Assert.Equal((isProtected ? 0.028 : 0.016) * 25.4, In(analysis, "permitted_gap").Nominal, 1e-9);
    }

    [Theory]
    [InlineData("back_up_rings: one, back_up_side: low-pressure", "gland_fill", "o_rings.joint.back_up_thickness is not stated")]
    [InlineData("back_up_rings: one, back_up_thickness: 1.4 mm", "back_up_protects", "o_rings.joint.back_up_side is not stated")]
    [InlineData("back_up_rings: two, back_up_thickness: 3 mm", "gland_fill", "leave no room for the O-ring")]
    public void What_a_back_up_ring_lacks_is_named(string more, string quantity, string reason) =>
        Assert.Contains(Of($"{Plug}, {more}").Quantity(Ring, quantity).Reasons, said => said.Contains(reason, StringComparison.Ordinal));

    [Fact]
    public void Without_back_up_rings_nothing_of_them_is_asked()
    {
        var analysis = Of($"{Plug}, back_up_rings: none");

        Assert.False(analysis.Has(Ring, "back_up_protects"));
        Assert.False(analysis.Has(Ring, "back_up_thickness"));
        Holds(In(analysis, "rubber_width"), 5.2, 5.2, 5.4, 1e-9);
    }
}
