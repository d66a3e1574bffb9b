using Pawl.Specs.Text;

namespace Pawl.Specs.Tests;

/// <summary>O-rings as a spec states them.</summary>
public sealed class ORingInputTests
{
    private const string Rings = """

        o_rings:
          joint:
            as568: 242
            elastomer: FKM
            hardness: 70
            gland: plug
            motion: static
            bore: 110 mm H8
            plug: 110 mm f7
            groove: 104.4 mm h9
            width: 5.2 mm +0.2/0
            land: 12 mm
            eccentricity: 0.02 mm
            lead_in: {angle: 20°, length: 3.5 mm}
            roughness_ra: 1.6 µm
            pressure: 0.03 MPa
            swell: 5 %
          cap: {inside: 50 mm ±0.4, cord: 3 mm ±0.1, gland: face-outside, groove: 50.5 mm, depth: 2.25 mm ±0.05}

        """;

    private static readonly string WholeText = Sample.Text + Rings;

    [Fact]
    public void Every_key_reaches_the_model()
    {
        var load = Sample.Load(WholeText);
        Assert.Empty(load.Diagnostics);
        var (joint, cap) = (load.Spec!.ORings.Find("joint")!, load.Spec.ORings.Find("cap")!);

        Assert.Equal((242, "FKM", 70, "plug", "static"), (joint.As568!.Value, joint.Elastomer!.Value, joint.Hardness!.Value, joint.Gland.Value, joint.Motion!.Value));
        Assert.Equal(("110 mm H8", "110 mm f7", "104.4 mm h9", "5.2 mm +0.2/0"), (joint.Bore!.Text, joint.Plug!.Text, joint.Groove!.Text, joint.Width!.Text));
        Assert.Equal((12, 0.02, 3.5), (joint.Land!.Value.Coherent, joint.Eccentricity!.Value.Coherent, joint.LeadIn!.Length.Value.Coherent));
        Assert.Equal(20 * Math.PI / 180, joint.LeadIn.Angle.Value.Coherent, 1e-12);
        Assert.Equal((0.0016, 0.03, 0.05), (joint.RoughnessRa!.Value.Coherent, joint.Pressure!.Value.Coherent, joint.Swell!.Value.Coherent));
        Assert.Equal(("50 mm ±0.4", "3 mm ±0.1", "2.25 mm ±0.05"), (cap.Inside!.Text, cap.Cord!.Text, cap.Depth!.Text));
    }

    // Each row: what is replaced, by what, the code, the text at whose start the complaint stands, and a piece of the hint.
    [Theory]
    [InlineData("as568: 242", "as568: 999", DiagnosticCodes.OutOfRange, "999", null)]
    [InlineData("as568: 242", "as568: -242", DiagnosticCodes.OutOfRange, "-242", null)]
    [InlineData("as568: 242", "as568: 242\n    cord: 3 mm", DiagnosticCodes.ExclusiveKeys, "242\n", "Keep one")]
    [InlineData("elastomer: FKM", "elastomer: rubber", DiagnosticCodes.UnknownWord, "rubber", "FKM")]
    [InlineData("gland: plug", "gland: piston", DiagnosticCodes.UnknownWord, "piston", "plug")]
    [InlineData("    gland: plug\n", "", DiagnosticCodes.MissingKey, "joint:", "gland")]
    [InlineData("motion: static", "motion: still", DiagnosticCodes.UnknownWord, "still", "static")]
    [InlineData("plug: 110 mm f7", "plug: 111 mm f7", DiagnosticCodes.OutOfRange, "111 mm f7", "would not go")]
    [InlineData("groove: 104.4 mm h9", "groove: 110 mm h9", DiagnosticCodes.OutOfRange, "110 mm h9", "cut into the plug")]
    [InlineData("groove: 104.4 mm h9", "groove: 104.4", DiagnosticCodes.MissingUnit, "104.4\n", "104.4 mm")]
    [InlineData("gland: plug", "gland: bore", DiagnosticCodes.OutOfRange, "104.4 mm h9", "cut into the bore")]
    [InlineData("width: 5.2 mm", "width: -5.2 mm", DiagnosticCodes.OutOfRange, "-5.2 mm", null)]
    [InlineData("gland: plug", "gland: face-outside\n    back_up_rings: two", DiagnosticCodes.ExclusiveKeys, "two\n", "Keep one")]
    [InlineData("land: 12 mm", "land: 12 mm\n    back_up_thickness: 5.5 mm", DiagnosticCodes.OutOfRange, "5.5 mm", "beside the O-ring")]
    [InlineData("land: 12 mm", "land: 5 mm", DiagnosticCodes.OutOfRange, "5.2 mm +0.2/0", "nothing of the land")]
    [InlineData("width: 5.2", "widht: 5.2", DiagnosticCodes.UnknownKey, "widht", "width")]
    [InlineData("angle: 20°", "angle: 90°", DiagnosticCodes.OutOfRange, "90°", "15° to 30°")]
    [InlineData("angle: 20°", "angle: 0°", DiagnosticCodes.OutOfRange, "0°", null)]
    [InlineData("{angle: 20°, length", "{length", DiagnosticCodes.MissingKey, "lead_in:", "angle")]
    [InlineData("pressure: 0.03 MPa", "pressure: 0.03 N", DiagnosticCodes.UnitMismatch, "N\n", null)]
    [InlineData("roughness_ra: 1.6 µm", "roughness_ra: N7", DiagnosticCodes.MalformedAmount, "N7", null)]
    public void A_wrong_ring_is_refused_at_its_place(string right, string wrong, string code, string at, string? hint)
    {
        var begin = Rings.IndexOf(right, StringComparison.Ordinal);
        Assert.True(begin >= 0, right);
        var rings = Rings[..begin] + wrong + Rings[(begin + right.Length)..];
        var text = Sample.Text + rings;

        var found = Assert.Single(Sample.Load(text).Diagnostics);

        Assert.Equal(code, found.Code);
        var (line, column) = Sample.Place(rings, at);
        Assert.Equal((Sample.Text.Count(c => c == '\n') + line, column), (found.Span.Start.Line, found.Span.Start.Column));
        Assert.Contains(hint ?? "", $"{found.Message} {found.Hint}", StringComparison.Ordinal);
    }
}
