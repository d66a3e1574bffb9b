using Pawl.Specs.Tests.Files;
using Pawl.Specs.Text;

namespace Pawl.Specs.Tests;

/// <summary>Lubrication, lip seals and oils as a spec and its catalogue state them.</summary>
public sealed class LubricationInputTests
{
    private const string Wet = """

        lubrication:
          supply: splash
          cleanliness: -/17/14
          filtered: true
          extreme_pressure: true
          mounting_position: vertical
          lowest_wetted: true
          top_bearing: grease
          oil_before: gear-oil-vg100
          flushed: true
          ambient: 35 °C
          cooling_area: 0.18 m²
          heat_transfer: 20 W/(m²·K)
          other_losses: 25 W
          free_volume: 1.4 L
          fill: 0.6 L
          min_fill: 0.5 L
          max_fill: 0.7 L
          level: -40 mm
          min_level: -42 mm
          max_level: -37 mm
          lowest_opening: 60 mm
          cooler: {capacity: 300 W, at: 40 K, coolant: 25 °C}
          vent: {bore: 3 mm, opening_pressure: 20 mbar, intake_pressure: 5 mbar, one_way: false}
          pump: {driven_by: input, reversible: true, min_speed: 60 rad/s}
          warm_up: 20 min
          cool_down: 5 min
          ports: {fill: true, drain: true, vent: true, level: false}
        lip_seals:
          input:
            shaft: input_shaft
            housing: housing
            diameter: 40 mm h11
            bore: 55 mm H8
            elastomer: FKM
            hardness: 58..62 HRC
            roughness_ra: 0.4 µm ±0.2
            twist_free: true
            runout: 0.05 mm
            offset: 0.08 mm
            lip_faces: oil
            max_pressure: 0.05 MPa
            max_suction: 15 kPa
            max_speed: 14 m/s
            pressure: 0.02 MPa
            lead_in: {angle: 20°, length: 3 mm}
            loss: 12 W

        """;

    private static readonly string WholeText = Sample.Text + Wet;

    [Fact]
    public void Every_key_reaches_the_model()
    {
        var load = Sample.Load(WholeText);
        Assert.Empty(load.Diagnostics);
        var (oil, seal) = (load.Spec!.Lubrication!, load.Spec.LipSeals.Find("input")!);

        Assert.Equal(("splash", "-/17/14", "vertical", "grease", "gear-oil-vg100"), (oil.Supply!.Value, oil.Cleanliness!.Value, oil.MountingPosition!.Value, oil.TopBearing!.Value, oil.OilBefore!.Value));
        Assert.True(oil.Filtered!.Value && oil.ExtremePressure!.Value && oil.LowestWetted!.Value && oil.Flushed!.Value);
        Assert.Equal((35, 0.18e6, 0.020, 25e3), (oil.Ambient!.Value.Coherent, oil.CoolingArea!.Value.Coherent, oil.HeatTransfer!.Value.Coherent, oil.OtherLosses!.Value.Coherent));
        Assert.Equal((1.4e6, 0.6e6, 0.5e6, 0.7e6), (oil.FreeVolume!.Value.Coherent, oil.Fill!.Value.Coherent, oil.MinFill!.Value.Coherent, oil.MaxFill!.Value.Coherent));
        Assert.Equal((-40, -42, -37, 60), (oil.Level!.Value.Coherent, oil.MinLevel!.Value.Coherent, oil.MaxLevel!.Value.Coherent, oil.LowestOpening!.Value.Coherent));
        Assert.Equal((300e3, 40, 25), (oil.Cooler!.Capacity!.Value.Coherent, oil.Cooler.At!.Value.Coherent, oil.Cooler.Coolant.Value.Coherent));
        Assert.Equal((3, 0.002, 0.0005, 1200, 300), (oil.Vent!.Bore!.Value.Coherent, oil.Vent.OpeningPressure!.Value.Coherent, oil.Vent.IntakePressure!.Value.Coherent, oil.WarmUp!.Value.Coherent, oil.CoolDown!.Value.Coherent));
        Assert.False(oil.Vent.OneWay!.Value);
        Assert.Equal(("input", true, 60), (oil.Pump!.DrivenBy!.Value, oil.Pump.Reversible!.Value, oil.Pump.MinSpeed!.Value.Coherent));
        Assert.Equal((true, true, true, false), (oil.Ports!.Fill!.Value, oil.Ports.Drain!.Value, oil.Ports.Vent!.Value, oil.Ports.Level!.Value));
        Assert.Equal(("input_shaft", "housing", "FKM", "oil"), (seal.Shaft.Value, seal.Housing.Value, seal.Elastomer!.Value, seal.LipFaces!.Value));
        Assert.Equal(("40 mm h11", "55 mm H8", "58..62 HRC", "0.4 µm ±0.2"), (seal.Diameter!.Text, seal.Bore!.Text, seal.Hardness!.Text, seal.RoughnessRa!.Text));
        Assert.Equal((0.05, 0.08, 0.05, 14e3, 0.02, 12e3), (seal.Runout!.Value.Coherent, seal.Offset!.Value.Coherent, seal.MaxPressure!.Value.Coherent, seal.MaxSpeed!.Value.Coherent, seal.Pressure!.Value.Coherent, seal.Loss!.Value.Coherent));
        Assert.Equal(0.015, seal.MaxSuction!.Value.Coherent, 1e-12);
        Assert.True(seal.TwistFree!.Value);
        Assert.Equal(3, seal.LeadIn!.Length.Value.Coherent);
    }

    // Each row: what is replaced, by what, the code, the text at whose start the complaint stands, and a piece of message or hint.
    [Theory]
    [InlineData("supply: splash", "supply: spray", DiagnosticCodes.UnknownWord, "spray", "splash")]
    [InlineData("cleanliness: -/17/14", "cleanliness: dirty", DiagnosticCodes.UnknownWord, "dirty", null)]
    [InlineData("mounting_position: vertical", "mounting_position: upright", DiagnosticCodes.UnknownWord, "upright", "vertical")]
    [InlineData("top_bearing: grease", "top_bearing: greese", DiagnosticCodes.UnknownWord, "greese", "grease")]
    [InlineData("oil_before: gear-oil-vg100", "oil_before: gear-oil-vg10", DiagnosticCodes.NotInCatalogue, "gear-oil-vg10", "gear-oil-vg100")]
    [InlineData("fill: 0.6 L", "fill: 1.6 L", DiagnosticCodes.OutOfRange, "1.6 L", "less than the free volume of 1.4 L")]
    [InlineData("fill: 0.6 L", "fill: 1.4 L", DiagnosticCodes.OutOfRange, "1.4 L\n  min", "less than the free volume of 1.4 L")]
    [InlineData("min_fill: 0.5 L", "min_fill: 0.8 L", DiagnosticCodes.OutOfRange, "0.8 L", "not above the greatest fill of 0.7 L")]
    [InlineData("min_level: -42 mm", "min_level: -39 mm", DiagnosticCodes.OutOfRange, "-39 mm", "not above the level of -40 mm")]
    [InlineData("max_level: -37 mm", "max_level: -41 mm", DiagnosticCodes.OutOfRange, "-41 mm", "not below the level of -40 mm")]
    [InlineData("capacity: 300 W, at: 40 K", "transfer: 12 W/m", DiagnosticCodes.UnitMismatch, "W/m", null)]
    [InlineData("capacity: 300 W, at: 40 K", "transfer: 12 W/K, capacity: 300 W, at: 40 K", DiagnosticCodes.ExclusiveKeys, "capacity", "transfer")]
    [InlineData("capacity: 300 W, at: 40 K", "capacity: 300 W", DiagnosticCodes.MissingKey, "cooler", "at")]
    [InlineData("capacity: 300 W, at: 40 K", "at: 40 K", DiagnosticCodes.MissingKey, "cooler", "capacity")]
    [InlineData("at: 40 K, coolant: 25 °C", "at: 40 K", DiagnosticCodes.MissingKey, "cooler", "coolant")]
    [InlineData("fill: 0.6 L", "fill: 0.6", DiagnosticCodes.MissingUnit, "0.6\n", "0.6 L")]
    [InlineData("cooling_area: 0.18 m²", "cooling_area: 0.18 m", DiagnosticCodes.UnitMismatch, "m\n  heat", null)]
    [InlineData("heat_transfer: 20 W/(m²·K)", "heat_transfer: 20 W/(m·K)", DiagnosticCodes.UnitMismatch, "W/(m·K)", null)]
    [InlineData("ambient: 35 °C", "ambient: -300 °C", DiagnosticCodes.OutOfRange, "-300 °C", null)]
    [InlineData("vent: true", "vent: nope", DiagnosticCodes.NotATruthValue, "nope", null)]
    [InlineData("vent: true", "breather: true", DiagnosticCodes.UnknownKey, "breather", null)]
    [InlineData("vent: true", "vent: false", DiagnosticCodes.ExclusiveKeys, "false, level", "ports.vent: false")]
    [InlineData("driven_by: input", "driven_by: engine", DiagnosticCodes.UnknownWord, "engine", "machine")]
    [InlineData("one_way: false", "one_way: true", DiagnosticCodes.ExclusiveKeys, "intake_pressure", "one_way")]
    [InlineData("bore: 3 mm, open", "bore: 0 mm, open", DiagnosticCodes.OutOfRange, "0 mm, open", null)]
    [InlineData("shaft: input_shaft", "shaft: input_shart", DiagnosticCodes.UnknownBody, "input_shart", "input_shaft")]
    [InlineData("housing: housing", "housing: lid", DiagnosticCodes.UnknownBody, "lid", null)]
    [InlineData("housing: housing", "housing: input_shaft", DiagnosticCodes.SelfCarried, "input_shaft\n    diameter", "cannot be the shaft and the housing of a seal")]
    [InlineData("    shaft: input_shaft\n", "", DiagnosticCodes.MissingKey, "input:", "shaft")]
    [InlineData("elastomer: FKM", "elastomer: EPDM", DiagnosticCodes.UnknownWord, "EPDM", "FKM")]
    [InlineData("lip_faces: oil", "lip_faces: air", DiagnosticCodes.UnknownWord, "air", "oil")]
    [InlineData("hardness: 58..62 HRC", "hardness: 58 HRX", null, "58 HRX", null)]
    [InlineData("max_speed: 14 m/s", "max_speed: 14 rpm", DiagnosticCodes.UnitMismatch, "rpm", null)]
    [InlineData("angle: 20°", "angle: 90°", DiagnosticCodes.OutOfRange, "90°", null)]
    [InlineData("loss: 12 W", "loss: -12 W", DiagnosticCodes.OutOfRange, "-12 W", null)]
    public void A_wrong_word_is_refused_at_its_place(string right, string wrong, string? code, string at, string? told)
    {
        var begin = Wet.IndexOf(right, StringComparison.Ordinal);
        Assert.True(begin >= 0, right);
        var wet = Wet[..begin] + wrong + Wet[(begin + right.Length)..];

        var found = Assert.Single(Sample.Load(Sample.Text + wet).Diagnostics);

        Assert.Equal(code ?? found.Code, found.Code);
        var (line, column) = Sample.Place(wet, at);
        Assert.Equal(Sample.Text.Count(c => c == '\n') + line, found.Span.Start.Line);
        Assert.Equal(code is null ? found.Span.Start.Column : column, found.Span.Start.Column);
        Assert.Contains(told ?? "", $"{found.Message} {found.Hint}", StringComparison.Ordinal);
    }

    // Water and glycol are no oils: the catalogue has no such base.
    [Theory]
    [InlineData("base: PAG, viscosity_index: 220", null, null)]
    [InlineData("base: water-glycol", DiagnosticCodes.UnknownWord, "mineral")]
    [InlineData("base: pag", DiagnosticCodes.UnknownWord, "PAG")]
    [InlineData("viscosity_index: 900", DiagnosticCodes.OutOfRange, "400")]
    [InlineData("viscosity_index: 95 mm", DiagnosticCodes.NotANumber, null)]
    [InlineData("viscosity_40: VG 101", null, "VG 100")]
    public void An_oil_states_its_base_and_index(string keys, string? code, string? told)
    {
        using var project = new Project()
            .With("oils.yaml", $"pawl: 1\ncatalogue: A\nlubricants:\n  thin: {{title: T, source: S, certainty: invented, {keys}}}\n")
            .With("v.yaml", "pawl: 1\ngearbox: {family: F, variant: V}\nduty: {oil: {lubricant: thin}}\n");
        var load = project.Loader("oils.yaml").Load("v.yaml");

        if (code is null && told is null)
        {
            var oil = load.Spec!.Catalogue.Lubricants.Find("thin")!;
            Assert.Equal(("PAG", 220), (oil.Base!.Value, oil.ViscosityIndex!.Value));
            return;
        }

        var found = Assert.Single(load.Diagnostics);
        Assert.Equal(code ?? found.Code, found.Code);
        Assert.Equal("oils.yaml:4", found.Span.ToString()[..11]);
        Assert.Contains(told ?? "", $"{found.Message} {found.Hint}", StringComparison.Ordinal);
    }
}
