using System.Text;
using Pawl.Specs.Text;

namespace Pawl.Specs.Tests;

/// <summary>Shafts, splines and interfaces as a spec states them.</summary>
public sealed class ShaftInputTests
{
    private static readonly SpecLoader Loader = new(
        Sample.Repository(), ["specs/catalogue/materials.yaml", "specs/catalogue/lubricants.yaml", "specs/catalogue/bearings.yaml"],
        adapterPaths: ["specs/adapters/motor-flange-a.yaml", "specs/adapters/shaft-coupling-b.yaml", "specs/adapters/mount-c.yaml"]);

    private const string Head = """
        pawl: 1
        extends: r400.yaml
        gearbox: {variant: Test}

        """;

    private const string Spline = "splines: {x: {body: carrier, system: iso-4156, module: 2 mm, pressure_angle: 30°, root: flat, shaft: {teeth: 20}, hub: {teeth: 20}}}";

    private static SpecLoad Load(string text) => Loader.Load("specs/tarn-120/test.yaml", Encoding.UTF8.GetBytes(Head + text));

    [Fact]
    public void Every_key_of_a_shaft_reaches_the_model()
    {
        var load = Load(
            """
            shafts:
              x: {body: carrier, from: -5 mm, material: EN-42CrMo4, tensile: 900 MPa, yield: 700 MPa, steel: case-hardened, heat_treated_diameter: 60 mm,
                  static_safety: 2, fatigue_safety: 1.4, max_wind_up: 6′, sections: {
                    a: {length: 20 mm, outside: 40 mm k5, bore: 10 mm, roughness: 4 µm, carries_torque: false, at: 3 mm, notch: {kind: square-groove, large: 50 mm, bottom: 37 mm, radius: 0.2 mm, width: 1.85 mm, keys: 2}},
                    b: {length: 30 mm, outside: 38 mm}}}
            """);
        Assert.Empty(load.Diagnostics);
        var shaft = load.Spec!.Shafts.Find("x")!;
        var (first, notch) = (shaft.Sections.Find("a")!, shaft.Sections.Find("a")!.Notch!);

        Assert.Equal(("carrier", "EN-42CrMo4", "case-hardened"), (shaft.Body.Value, shaft.Material!.Value, shaft.Steel!.Value));
        Assert.Equal((-5, 900, 700, 60, 2, 1.4), (shaft.From!.Value.Coherent, shaft.Tensile!.Value.Coherent, shaft.Yield!.Value.Coherent, shaft.HeatTreatedDiameter!.Value.Coherent, shaft.StaticSafety!.Value, shaft.FatigueSafety!.Value));
        Assert.Equal("6′", shaft.MaxWindUp!.Text);
        Assert.Equal(["a", "b"], shaft.Sections.Entries.Select(section => section.Name.Value));
        Assert.Equal((20, "40 mm k5", "10 mm", "4 µm", false, 3), (first.Length.Value.Coherent, first.Outside.Text, first.Bore!.Text, first.Roughness!.Text, first.CarriesTorque!.Value, first.At!.Value.Coherent));
        Assert.Equal(("square-groove", 50, 37, 0.2, 1.85, 2), (notch.Kind.Value, notch.Large!.Value.Coherent, notch.Bottom!.Value.Nominal.Coherent, notch.Radius!.Value.Coherent, notch.Width!.Value.Coherent, notch.Keys!.Value));
    }

    [Fact]
    public void Every_key_of_a_spline_reaches_the_model()
    {
        var load = Load(
            """
            splines:
              x: {body: carrier, system: ansi-b92.1, diametral_pitch: 16, pressure_angle: 37.5°, root: fillet, length: 20 mm, chamfers: 0.2 mm, floating: true, crowned: true,
                  misalignment: 0.1 %, lubrication: dry, starts: 5000,
                  shaft: {teeth: 20, class: 5, fit: f, thickness: 2.4 mm -0.02/-0.05, minor: 28 mm, bore: 8 mm, hardness: 60 HRC, yield: 800 MPa},
                  hub: {teeth: 20, class: 7, space: 2.5 mm +0.05/0, outside: 44 mm, material: EN-42CrMo4, hardness: 50 HRC, yield: 600 MPa}}
            """);
        Assert.Empty(load.Diagnostics);
        var spline = load.Spec!.Splines.Find("x")!;

        Assert.Equal(("ansi-b92.1", 16, "37.5°", "fillet", "dry"), (spline.System.Value, spline.DiametralPitch!.Value, spline.PressureAngle.Text, spline.Root.Value, spline.Lubrication!.Value));
        Assert.Equal((20, 0.2, true, true, 0.001, 5000), (spline.Length!.Value.Nominal.Coherent, spline.Chamfers!.Value.Coherent, spline.Floating!.Value, spline.Crowned!.Value, Math.Round(spline.Misalignment!.Value.Coherent, 12), spline.Starts!.Value));
        Assert.Equal((20, 5, "f", "2.4 mm -0.02/-0.05", 28), (spline.Shaft.Teeth.Value, spline.Shaft.Class!.Value, spline.Shaft.Fit!.Value, spline.Shaft.Thickness!.Text, spline.Shaft.Minor!.Value.Coherent));
        Assert.Equal((8, "60 HRC", 800), (spline.Shaft.Bore!.Value.Nominal.Coherent, spline.Shaft.Hardness!.Text, spline.Shaft.Yield!.Value.Coherent));
        Assert.Equal((20, 7, "2.5 mm +0.05/0", 44, "EN-42CrMo4", "50 HRC", 600), (spline.Hub.Teeth.Value, spline.Hub.Class!.Value, spline.Hub.Space!.Text, spline.Hub.Outside!.Value.Nominal.Coherent, spline.Hub.Material!.Value, spline.Hub.Hardness!.Text, spline.Hub.Yield!.Value.Coherent));
    }

    [Fact]
    public void Every_key_of_an_interface_reaches_the_model()
    {
        var load = Load(
            """
            interfaces:
              x: {body: carrier, kind: flange, engagement: 20 mm, torque: 90 N·m, speed: 3000 rpm, max_eccentricity: 0.05 mm, adapters: [mount-c, shaft-coupling-b],
                  spline: {side: internal, system: iso-4156, module: 2 mm, pressure_angle: 45°, teeth: 19, root: fillet, class: 4, fit: d, length: 18 mm},
                  pilot: {side: spigot, diameter: 80 mm h7, depth: 4 mm ±0.1}, dowels: {side: pin, diameter: 6 mm m6, count: 3, circle: 100 mm, angle: 15°},
                  bolts: {thread: 3/8-16 UNC, holes: through, count: 5, circle: 101 mm, angle: 12°, grip: 9 mm, screw_length: 25 mm, thread_depth: 14 mm},
                  seal: {kind: groove, diameter: 90 mm, from: 85 mm, to: 95 mm}}
            """);
        Assert.Empty(load.Diagnostics);
        var found = load.Spec!.Interfaces.Find("x")!;

        Assert.Equal(("carrier", "flange", 20, 90_000, 0.05), (found.Body.Value, found.Kind.Value, found.Engagement!.Value.Coherent, found.Torque!.Value.Coherent, found.MaxEccentricity!.Value.Coherent));
        Assert.Equal(3000 * Math.PI / 30, found.Speed!.Value.Coherent, 1e-9);
        Assert.Equal(["mount-c", "shaft-coupling-b"], found.Adapters.Select(adapter => adapter.Value));
        Assert.Equal(("internal", 2, 19, 4, "d", 18), (found.Spline!.Side.Value, found.Spline.Module!.Value.Coherent, found.Spline.Teeth.Value, found.Spline.Class!.Value, found.Spline.Fit!.Value, found.Spline.Length!.Value.Coherent));
        Assert.Equal(("spigot", "80 mm h7", "4 mm ±0.1"), (found.Pilot!.Side.Value, found.Pilot.Diameter.Text, found.Pilot.Depth!.Text));
        Assert.Equal(("pin", "6 mm m6", 3, 100, "15°"), (found.Dowels!.Side.Value, found.Dowels.Diameter.Text, found.Dowels.Count.Value, found.Dowels.Circle.Value.Coherent, found.Dowels.Angle!.Text));
        Assert.Equal(("3/8-16 UNC", "through", 5, 101, "12°"), (found.Bolts!.Thread.Value, found.Bolts.Holes.Value, found.Bolts.Count.Value, found.Bolts.Circle.Value.Coherent, found.Bolts.Angle!.Text));
        Assert.Equal((9, 25, 14), (found.Bolts.Grip!.Value.Coherent, found.Bolts.ScrewLength!.Value.Coherent, found.Bolts.ThreadDepth!.Value.Coherent));
        Assert.Equal(("groove", 90, 85, 95), (found.Seal!.Kind.Value, found.Seal.Diameter!.Value.Coherent, found.Seal.From!.Value.Coherent, found.Seal.To!.Value.Coherent));
    }

    // Each row: the section, the code, the text at whose start the complaint stands, and a piece of message or hint.
    [Theory]
    [InlineData("shafts: {x: {body: carier}}", DiagnosticCodes.UnknownBody, "carier", "carrier")]
    [InlineData("shafts: {x: {from: 0 mm}}", DiagnosticCodes.MissingKey, "x: {from", "body")]
    [InlineData("shafts: {x: {body: carrier, material: EN-42CrMo5}}", DiagnosticCodes.NotInCatalogue, "EN-42CrMo5", "EN-42CrMo4")]
    [InlineData("shafts: {x: {body: carrier, tensile: 700 MPa, yield: 900 MPa}}", DiagnosticCodes.OutOfRange, "900 MPa", "tensile strength of 700 MPa")]
    [InlineData("shafts: {x: {body: carrier, sections: {a: {length: 0 mm, outside: 20 mm}}}}", DiagnosticCodes.OutOfRange, "0 mm", "more than zero")]
    [InlineData("shafts: {x: {body: carrier, sections: {a: {length: 9 mm, outside: 20 mm, bore: 21 mm}}}}", DiagnosticCodes.OutOfRange, "21 mm", "less than the outside of 20 mm")]
    [InlineData("shafts: {x: {body: carrier, sections: {a: {length: 9 mm}}}}", DiagnosticCodes.MissingKey, "a: {length", "outside")]
    [InlineData("shafts: {x: {body: carrier, sections: {a: {length: 9 mm, outside: 20 mm, notch: {kind: sholder}}}}}", DiagnosticCodes.UnknownWord, "sholder", "shoulder")]
    [InlineData("shafts: {x: {body: carrier, sections: {a: {length: 9 mm, outside: 20 mm, notch: {kind: shoulder, large: 18 mm}}}}}", DiagnosticCodes.OutOfRange, "18 mm", "more than the outside")]
    [InlineData("shafts: {x: {body: carrier, sections: {a: {length: 9 mm, outside: 20 mm, notch: {kind: round-groove, bottom: 22 mm}}}}}", DiagnosticCodes.OutOfRange, "22 mm", "less than the outside")]
    [InlineData("shafts: {x: {body: carrier, sections: {a: {length: 9 mm, outside: 20 mm, bore: 15 mm, notch: {kind: spline, bottom: 14 mm}}}}}", DiagnosticCodes.OutOfRange, "14 mm", "more than the bore")]
    [InlineData("splines: {x: {body: carrier, system: iso-4156, module: 2 mm, pressure_angle: 30°, root: flat, shaft: {teeth: 20}, hub: {teeth: 21}}}", DiagnosticCodes.OutOfRange, "21}", "20, as many teeth as the shaft has")]
    [InlineData("splines: {x: {body: carrier, system: iso-4156, module: 2 mm, diametral_pitch: 16, pressure_angle: 30°, root: flat, shaft: {teeth: 20}, hub: {teeth: 20}}}", DiagnosticCodes.ExclusiveKeys, "diametral_pitch", "module")]
    [InlineData("splines: {x: {body: carrier, system: din-5480, module: 2 mm, pressure_angle: 30°, root: flat, shaft: {teeth: 20}, hub: {teeth: 20}}}", DiagnosticCodes.UnknownWord, "din-5480", "iso-4156")]
    [InlineData("splines: {x: {body: carrier, system: iso-4156, module: 2 mm, pressure_angle: 95°, root: flat, shaft: {teeth: 20}, hub: {teeth: 20}}}", DiagnosticCodes.OutOfRange, "95°", "less than 90°")]
    [InlineData("splines: {x: {body: carrier, system: iso-4156, module: 2 mm, pressure_angle: 30°, root: flat, shaft: {teeth: 20, minor: 30 mm, bore: 31 mm}, hub: {teeth: 20}}}", DiagnosticCodes.OutOfRange, "31 mm", "less than the minor diameter")]
    [InlineData("splines: {x: {body: carrier, system: iso-4156, module: 2 mm, pressure_angle: 30°, root: flat, shaft: {teeth: 20, class: 3}, hub: {teeth: 20}}}", DiagnosticCodes.OutOfRange, "3}", "from 4 to 7")]
    [InlineData("interfaces: {x: {body: carrier, kind: mount, adapters: [mount-d]}}", DiagnosticCodes.NotInCatalogue, "mount-d", "Did you mean `mount-c`?")]
    [InlineData("interfaces: {x: {body: carrier, kind: mount, adapters: [zzz]}}", DiagnosticCodes.NotInCatalogue, "zzz", "under `adapters`")]
    [InlineData("interfaces: {x: {body: carrier, kind: mount, adapters: [mount-c, mount-c]}}", DiagnosticCodes.OutOfRange, "mount-c]", "there already")]
    [InlineData("interfaces: {x: {body: carier, kind: mount}}", DiagnosticCodes.UnknownBody, "carier", "carrier")]
    [InlineData("interfaces: {x: {body: carrier, kind: foot}}", DiagnosticCodes.UnknownWord, "foot", "mount")]
    [InlineData("interfaces: {x: {body: carrier, kind: mount, bolts: {thread: M8, holes: through, count: 6, circle: 90 mm, grip: 20 mm, screw_length: 20 mm}}}", DiagnosticCodes.OutOfRange, "20 mm}", "more than the grip")]
    [InlineData("interfaces: {x: {body: carrier, kind: mount, seal: {kind: face, from: 90 mm, to: 80 mm}}}", DiagnosticCodes.OutOfRange, "80 mm", "where the face begins")]
    public void What_is_wrong_is_told_at_its_place(string text, string code, string at, string says)
    {
        text += "\n";
        var diagnostic = Sample.Only(Load(text), code, Head + text, at);

        Assert.Contains(says, $"{diagnostic.Message} {diagnostic.Hint}", StringComparison.Ordinal);
    }

    [Fact]
    public void The_least_spline_is_taken() => Assert.Empty(Load(Spline + "\n").Diagnostics);
}
