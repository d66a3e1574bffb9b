using System.Text;
using Pawl.Specs.Text;

namespace Pawl.Specs.Tests;

/// <summary>Bearings as a spec and a catalogue state them.</summary>
public sealed class BearingInputTests
{
    private static readonly SpecLoader Loader = new(
        Sample.Repository(), ["specs/catalogue/materials.yaml", "specs/catalogue/lubricants.yaml", "specs/catalogue/bearings.yaml"],
        adapterPaths: ["specs/adapters/motor-flange-a.yaml", "specs/adapters/shaft-coupling-b.yaml", "specs/adapters/mount-c.yaml"]);

    private const string Head = """
        pawl: 1
        extends: r400.yaml
        gearbox: {variant: Test}
        bearings:

        """;

    private static SpecLoad Load(string bearing) => Loader.Load("specs/tarn-120/test.yaml", Encoding.UTF8.GetBytes(Head + bearing));

    [Fact]
    public void Every_key_reaches_the_model()
    {
        var load = Load(
            """
              spigot: {bearing: ball-6008, shaft: input_shaft, housing: carrier, axial_position: 12 mm, axial: plus, shaft_seat: 40 mm k5, housing_seat: 68 mm H7,
                       shaft_bore: 10 mm, housing_outside: 90 mm, clearance: C3, max_clearance: 40 µm, preloaded: true, inner_warmer: 5 K, float: 0.3 mm,
                       fillet: 0.6 mm, raceway_hardness: 60 HRC, running: 70 °C, lubricated_by: grease, static_safety: 1.5, rows: 2}
            """);
        Assert.Empty(load.Diagnostics);
        var found = load.Spec!.Bearings.Find("spigot")!;

        Assert.Equal(("ball-6008", "input_shaft", "carrier", "plus", "C3", "grease"), (found.Bearing.Value, found.Shaft.Value, found.Housing.Value, found.Axial!.Value, found.Clearance!.Value, found.LubricatedBy!.Value));
        Assert.Equal((12, 10, 90, 0.04, 5), (found.AxialPosition!.Value.Coherent, found.ShaftBore!.Value.Coherent, found.HousingOutside!.Value.Coherent, Math.Round(found.MaxClearance!.Value.Coherent, 12), found.InnerWarmer!.Value.Coherent));
        Assert.Equal((0.3, 0.6, 70, 1.5, 2, true), (found.Float!.Value.Coherent, found.Fillet!.Value.Coherent, found.Running!.Value.Coherent, found.StaticSafety!.Value, found.Rows!.Value, found.Preloaded!.Value));
        Assert.Equal(("40 mm k5", "68 mm H7", "60 HRC"), (found.ShaftSeat!.Text, found.HousingSeat!.Text, found.RacewayHardness!.Text));
        Assert.Equal(16_300, load.Spec.Catalogue.Bearings.Find("ball-6008")!.DynamicRating!.Value.Coherent, tolerance: 2000.0);
    }

    // Each row: the bearing, the code, the text at whose start the complaint stands, and a piece of message or hint.
    [Theory]
    [InlineData("x: {bearing: ball-6209, shaft: carrier, housing: housing}", DiagnosticCodes.NotInCatalogue, "ball-6209", "ball-6")]
    [InlineData("x: {bearing: ball-6208, shaft: carier, housing: housing}", DiagnosticCodes.UnknownBody, "carier", "carrier")]
    [InlineData("x: {bearing: ball-6208, shaft: carrier, housing: carrier}", DiagnosticCodes.SelfCarried, "carrier}", "both rings")]
    [InlineData("x: {bearing: ball-6208, shaft: carrier}", DiagnosticCodes.MissingKey, "x: {bearing", "housing")]
    [InlineData("x: {bearing: ball-6208, shaft: carrier, housing: housing, axial: fixed}", DiagnosticCodes.UnknownWord, "fixed", "locating")]
    [InlineData("x: {bearing: ball-6208, shaft: carrier, housing: housing, clearance: C6}", DiagnosticCodes.UnknownWord, "C6", "C5")]
    [InlineData("x: {bearing: ball-6208, shaft: carrier, housing: housing, shaft_seat: 45 mm k5}", DiagnosticCodes.OutOfRange, "45 mm k5", "the bore of ball-6208, 40 mm")]
    [InlineData("x: {bearing: ball-6208, shaft: carrier, housing: housing, housing_seat: 68 mm H7}", DiagnosticCodes.OutOfRange, "68 mm H7", "the outside diameter of ball-6208, 80 mm")]
    [InlineData("x: {bearing: ball-6208, shaft: carrier, housing: housing, shaft_seat: 40 mm k5, shaft_bore: 40 mm}", DiagnosticCodes.OutOfRange, "40 mm}", "less than the seat")]
    [InlineData("x: {bearing: ball-6208, shaft: carrier, housing: housing, housing_seat: 80 mm H7, housing_outside: 70 mm}", DiagnosticCodes.OutOfRange, "70 mm", "more than the seat")]
    [InlineData("x: {bearing: ball-6208, shaft: carrier, housing: housing, shaft_seat: 40}", DiagnosticCodes.MissingUnit, "40}", "mm")]
    [InlineData("x: {bearing: needles-12, shaft: input_shaft, housing: planet}", DiagnosticCodes.OutOfRange, "input_shaft", "the carrier of planet")]
    [InlineData("x: {bearing: ball-6208, shaft: carrier, housing: housing, inner_warmer: -273 K}", DiagnosticCodes.OutOfRange, "-273 K", "-50 K")]
    [InlineData("x: {bearing: ball-6208, shaft: carrier, housing: housing, rows: 0}", DiagnosticCodes.OutOfRange, "0}", null)]
    [InlineData("x: {bearing: ball-6208, shaft: carrier, housing: housing, seat: 40 mm}", DiagnosticCodes.UnknownKey, "seat", "shaft_seat")]
    public void A_wrong_bearing_is_told(string bearing, string code, string at, string? says)
    {
        var text = $"  {bearing}\n";
        var diagnostic = Sample.Only(Load(text), code, Head + text, at);

        if (says is not null)
            Assert.Contains(says, $"{diagnostic.Message} {diagnostic.Hint}", StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("bore: 40 mm", "bore: 90 mm", "more than the bore")]
    [InlineData("width: 18 mm", "width: -18 mm", "width")]
    [InlineData("kind: deep-groove-ball", "kind: ball", "deep-groove-ball")]
    [InlineData("dynamic_rating: 29.1 kN", "dynamic_rating: 29.1 mm", "force")]
    [InlineData("dynamic_rating: 29.1 kN", "dynamic_rating: 29.1 kN\n    contact_angle: 90°", "less than 90°")]
    [InlineData("pitch_diameter: 60 mm", "pitch_diameter: 90 mm", "between the bore")]
    [InlineData("certainty: invented", "certainty: certain", "invented")]
    public void A_wrong_catalogue_entry_is_told(string old, string @new, string says)
    {
        const string Entry = """
            pawl: 1
            catalogue: bearings
            bearings:
              ball:
                title: A ball bearing
                kind: deep-groove-ball
                bore: 40 mm
                outside: 80 mm
                width: 18 mm
                dynamic_rating: 29.1 kN
                elements: {count: 9, diameter: 12 mm, pitch_diameter: 60 mm}
                source: a test
                certainty: invented

            """;
        Assert.Contains(old, Entry, StringComparison.Ordinal);
        var folder = Directory.CreateTempSubdirectory("pawl-bearings-");
        try
        {
            File.WriteAllText(Path.Combine(folder.FullName, "bearings.yaml"), Entry.Replace(old, @new, StringComparison.Ordinal));
            var load = new SpecLoader(folder.FullName, ["bearings.yaml"]).Load("spec.yaml", "pawl: 1\ngearbox: {family: F, variant: V}\n"u8.ToArray());

            Assert.Contains(load.Diagnostics, told => told.Span.File == "bearings.yaml" && $"{told.Message} {told.Hint}".Contains(says, StringComparison.Ordinal));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
