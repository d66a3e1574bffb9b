using System.Text;
using Pawl.Specs.Text;

namespace Pawl.Specs.Tests;

/// <summary>Fits and the chains that they make, as a spec states them.</summary>
public sealed class FitInputTests
{
    private static readonly SpecLoader Loader = new(
        Sample.Repository(), ["specs/catalogue/materials.yaml", "specs/catalogue/lubricants.yaml", "specs/catalogue/bearings.yaml"],
        adapterPaths: ["specs/adapters/motor-flange-a.yaml", "specs/adapters/shaft-coupling-b.yaml", "specs/adapters/mount-c.yaml"]);

    private const string Head = """
        pawl: 1
        extends: r400.yaml
        gearbox: {variant: Test}

        """;

    private static SpecLoad Load(string text) => Loader.Load("specs/tarn-120/test.yaml", Encoding.UTF8.GetBytes(Head + text));

    [Fact]
    public void Every_key_reaches_the_model()
    {
        var load = Load(
            """
            fits:
              flange: {size: 40 mm H7/u6, function: press, hole_part: flange, shaft_part: carrier, hole_material: wrought-6082, shaft_material: EN-42CrMo4,
                       hole_running: 70 °C, shaft_running: 80 °C, min_clearance: -90 µm, max_clearance: 0 µm, length: 50 mm, shaft_bore: 8 mm,
                       hub_outside: 70 mm, hole_rz: 6 µm, shaft_rz: 4 µm, min_friction: 0.1, max_friction: 0.16, carries: carrier, axial_force: 300 N,
                       slip_safety: 2, speed: 900 rpm, hub_yield: 250 MPa, shaft_yield: 650 MPa, joined: warm, max_joining: 150 °C,
                       max_press_force: 60 kN}
              spare: {hole: 20 mm H7, shaft: 20 mm g6, function: slide, torque: 3 N·m}
            """);
        Assert.Empty(load.Diagnostics);
        var found = load.Spec!.Fits.Find("flange")!;

        Assert.Equal(("40 mm H7/u6", "press", "flange", "carrier", "wrought-6082", "EN-42CrMo4", "carrier", "warm"), (found.Size!.Text, found.Function.Value, found.HolePart!.Value, found.ShaftPart!.Value, found.HoleMaterial!.Value, found.ShaftMaterial!.Value, found.Carries!.Value, found.Joined!.Value));
        Assert.Equal((70, 80, -0.09, 0, 50, 8, 70), (found.HoleRunning!.Value.Coherent, found.ShaftRunning!.Value.Coherent, Math.Round(found.MinClearance!.Value.Coherent, 12), found.MaxClearance!.Value.Coherent, found.Length!.Value.Nominal.Coherent, found.ShaftBore!.Value.Nominal.Coherent, found.HubOutside!.Value.Nominal.Coherent));
        Assert.Equal((0.006, 0.004, 0.1, 0.16, 300, 2), (Math.Round(found.HoleRz!.Value.Coherent, 12), Math.Round(found.ShaftRz!.Value.Coherent, 12), found.MinFriction!.Value, found.MaxFriction!.Value, found.AxialForce!.Value.Coherent, found.SlipSafety!.Value));
        Assert.Equal((250, 650, 150, 60_000), (found.HubYield!.Value.Coherent, found.ShaftYield!.Value.Coherent, found.MaxJoining!.Value.Coherent, found.MaxPressForce!.Value.Coherent));
        Assert.Equal(30 * Math.PI, found.Speed!.Value.Coherent, 9);
        var spare = load.Spec.Fits.Find("spare")!;
        Assert.Equal(("20 mm H7", "20 mm g6", 3000), (spare.Hole!.Text, spare.Shaft!.Text, spare.Torque!.Value.Coherent));
    }

    // Each row: the fit, the code, the text at whose start the complaint stands, and a piece of message or hint.
    [Theory]
    [InlineData("x: {size: 25 mm Q7/g6, function: slide}", DiagnosticCodes.MalformedTolerance, "Q7", "without I, L, O, Q and W")]
    [InlineData("x: {hole: 25 mm Q7, shaft: 25 mm g6, function: slide}", DiagnosticCodes.MalformedTolerance, "Q7", "without I, L, O, Q and W")]
    [InlineData("x: {size: 25 mm g6/H7, function: slide}", DiagnosticCodes.MalformedTolerance, "g6/H7", "H7/g6")]
    [InlineData("x: {size: 25 mm H7, function: slide}", DiagnosticCodes.MalformedTolerance, "25 mm H7", "both")]
    [InlineData("x: {size: 25 mm, function: slide}", DiagnosticCodes.MalformedTolerance, "25 mm,", "both")]
    [InlineData("x: {hole: 25 mm g6, shaft: 25 mm g6, function: slide}", DiagnosticCodes.MalformedTolerance, "25 mm g6", "capital")]
    [InlineData("x: {hole: 25 mm H7, shaft: 25 mm H7, function: slide}", DiagnosticCodes.MalformedTolerance, "25 mm H7, func", "small")]
    [InlineData("x: {hole: 25 mm H7, shaft: 52 mm g6, function: slide}", DiagnosticCodes.OutOfRange, "52 mm g6", "same nominal size")]
    [InlineData("x: {size: 25 mm H7/g6, shaft: 25 mm g6, function: slide}", DiagnosticCodes.ExclusiveKeys, "25 mm g6", "size")]
    [InlineData("x: {size: 25 mm H7/g6}", DiagnosticCodes.MissingKey, "x: {size", "function")]
    [InlineData("x: {size: 25 mm H7/g6, function: slides}", DiagnosticCodes.UnknownWord, "slides", "slide")]
    [InlineData("x: {size: 25 H7/g6, function: slide}", DiagnosticCodes.MissingUnit, "25 H7/g6", "mm")]
    [InlineData("x: {size: 25 mm H7/g6, function: slide, hole_part: a, shaft_part: a}", DiagnosticCodes.SelfCarried, "a}", "other part")]
    [InlineData("x: {size: 25 mm H7/s6, function: press, carries: carrier, torque: 3 N·m}", DiagnosticCodes.ExclusiveKeys, "3 N·m", "carries")]
    [InlineData("x: {size: 25 mm H7/s6, function: press, carries: carier}", DiagnosticCodes.UnknownBody, "carier", "carrier")]
    [InlineData("x: {size: 25 mm H7/s6, function: press, hole_material: wrought-6083}", DiagnosticCodes.NotInCatalogue, "wrought-6083", "wrought-6082")]
    [InlineData("x: {size: 25 mm H7/g6, function: slide, min_clearance: 30 µm, max_clearance: 10 µm}", DiagnosticCodes.OutOfRange, "10 µm", "Exchange")]
    [InlineData("x: {size: 25 mm H7/s6, function: press, min_friction: 0.2, max_friction: 0.1}", DiagnosticCodes.OutOfRange, "0.1}", "least friction")]
    [InlineData("x: {size: 25 mm H7/s6, function: press, shaft_bore: 25 mm}", DiagnosticCodes.OutOfRange, "25 mm}", "less than the diameter")]
    [InlineData("x: {size: 25 mm H7/s6, function: press, hub_outside: 20 mm}", DiagnosticCodes.OutOfRange, "20 mm}", "more than the diameter")]
    public void A_wrong_fit_is_told(string fit, string code, string at, string says)
    {
        var text = $"fits:\n  {fit}\n";
        var diagnostic = Sample.Only(Load(text), code, Head + text, at);

        Assert.Contains(says, $"{diagnostic.Message} {diagnostic.Hint}", StringComparison.Ordinal);
    }

    // The family has a register from the ring housing to the housing.
    [Theory]
    [InlineData("{from: housing, to: cover, links: [{fit: ring_register}], limit: 1 mm}", DiagnosticCodes.OpenChain, "cover", "end at `ring_housing`")]
    [InlineData("{from: carrier, to: ring_housing, links: [{fit: ring_register}], limit: 1 mm}", DiagnosticCodes.OpenChain, "ring_register", "come to `carrier`")]
    [InlineData("{from: housing, to: ring_housing, links: [{runout: 0.1 mm, of: carrier}, {fit: ring_register}], limit: 1 mm}", DiagnosticCodes.OpenChain, "carrier", "come to `housing`")]
    [InlineData("{from: housing, to: ring_housing, links: [{fit: ring_regster}], limit: 1 mm}", DiagnosticCodes.UnknownName, "ring_regster", "ring_register")]
    [InlineData("{from: housing, to: carrier, links: [{bearing: carrier_frnt}], limit: 1 mm}", DiagnosticCodes.UnknownName, "carrier_frnt", "carrier_front")]
    [InlineData("{from: housing, to: ring_housing, links: [{fit: ring_register, runout: 0.1 mm}], limit: 1 mm}", DiagnosticCodes.ExclusiveKeys, "runout", "fit")]
    [InlineData("{from: housing, to: ring_housing, links: [{runout: 0.1 mm}], limit: 1 mm}", DiagnosticCodes.MissingKey, "{runout", "of")]
    [InlineData("{from: housing, to: ring_housing, links: [{}], limit: 1 mm}", DiagnosticCodes.MissingKey, "{}", "fit")]
    [InlineData("{from: housing, to: ring_housing, links: [], limit: 1 mm}", DiagnosticCodes.WrongCount, "[]", "one link")]
    [InlineData("{from: housing, to: ring_housing, links: [{fit: ring_register}], mesh: [sun, ring]}", DiagnosticCodes.UnknownName, "sun, ring", "sun, ring")]
    [InlineData("{from: housing, to: ring_housing, links: [{dowels: {first: ring_register}}], limit: 1 mm}", DiagnosticCodes.MissingKey, "dowels", "distance")]
    public void A_chain_that_does_not_close_is_told(string chain, string code, string at, string says)
    {
        var text = $"centring:\n  x: {chain}\n";
        var diagnostic = Sample.Only(Load(text), code, Head + text, at);

        Assert.Contains(says, $"{diagnostic.Message} {diagnostic.Hint}", StringComparison.Ordinal);
    }

    [Fact]
    public void A_body_names_a_chain_that_there_is()
    {
        const string Text = "train: {bodies: {carrier: {centred_by: couplr}}}\ncentring:\n  coupler: {from: a, to: a, links: [{runout: 0.1 mm, of: a}], limit: 1 mm}\n";

        Assert.Contains("coupler", Sample.Only(Load(Text), DiagnosticCodes.UnknownName, Head + Text, "couplr}").Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fit_without_parts_joins_nothing()
    {
        const string Text = "fits:\n  loose: {size: 20 mm H7/h6, function: register}\ncentring:\n  x: {from: a, to: b, links: [{fit: loose}], limit: 1 mm}\n";

        Assert.Contains("which parts", Sample.Only(Load(Text), DiagnosticCodes.OpenChain, Head + Text, "loose}]").Message, StringComparison.Ordinal);
    }
}
