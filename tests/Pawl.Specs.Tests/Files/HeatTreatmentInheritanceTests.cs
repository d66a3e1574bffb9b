using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Specs.Tests.Files;

/// <summary>A family states the heat treatment once; a variant changes what differs.</summary>
public sealed class HeatTreatmentInheritanceTests
{
    private const string Family = """
        pawl: 1
        gearbox: {family: Tarn}
        duty:
          input: {torque: 190 N·m, direction: both, peak_torque: 400 N·m}
          spectrum:
            - {share: 20 %, torque: 190 N·m, speed: 5200 rpm}
            - {share: 80 %, torque: 95 N·m, speed: 8200 rpm}
        train:
          input: shaft
          output: carrier
          fixed: [housing]
          meshes: [{gears: [sun, planet]}]
          gears:
            sun:
              on: shaft
              teeth: 30
              module: 2.5 mm
              material: EN-18CrNiMo7-6
              heat_treatment:
                treatment: case-hardened
                quality: MQ
                surface_hardness: 58..62 HRC
                case_depth: 0.40 mm +0.20/0
                later_heat:
                  - {process: coating, temperature: 150 °C}
                  - {process: shrink-fit, temperature: 160 °C}
                features: [{feature: raceway, hardness: 59..63 HRC}]
                peening: {intensity: 0.30 mm, coverage: 200 %}
              roughness: {flank_rz: 3 µm, root_rz: 10 µm}
            planet: {on: carrier, teeth: 20, module: 2.5 mm}

        """;

    private const string Variant = "pawl: 1\nextends: family.yaml\ngearbox: {variant: R1}\n";

    private static SpecLoad Load(string gear)
    {
        using var project = new Project().With("family.yaml", Family).With("r1.yaml", Variant + gear);
        return project.Loader().Load("r1.yaml");
    }

    private static GearSpec Sun(string change)
    {
        var load = Load("train: {gears: {sun: {" + change + "}}}\n");
        Assert.Empty(load.Diagnostics);
        return load.Spec!.Train!.Gears.Find("sun")!;
    }

    [Fact]
    public void A_family_without_a_variant_is_a_base_without_a_complaint()
    {
        using var project = new Project().With("family.yaml", Family);

        var load = project.Loader().Load("family.yaml");

        Assert.True(load.IsBase);
        Assert.Empty(load.Diagnostics);
    }

    [Fact]
    public void A_variant_overrides_one_key_and_keeps_the_others_with_their_places()
    {
        var treatment = Sun("heat_treatment: {surface_hardness: 59..61 HRC}").HeatTreatment!;

        Assert.Equal(("59..61 HRC", "r1.yaml"), (treatment.SurfaceHardness!.Text, treatment.SurfaceHardness.Span.File));
        Assert.Equal(("case-hardened", "family.yaml"), (treatment.Treatment.Value, treatment.Treatment.Span.File));
        Assert.Equal(("MQ", "0.40 mm +0.20/0", 2), (treatment.Quality!.Value, treatment.CaseDepth!.Text, treatment.LaterHeat.Length));
    }

    [Fact]
    public void A_map_within_merges_by_its_keys()
    {
        var sun = Sun("heat_treatment: {peening: {coverage: 125 %}}, roughness: {flank_rz: 2 µm}");

        Assert.Equal(("125 %", "0.30 mm"), (sun.HeatTreatment!.Peening!.Coverage!.Text, sun.HeatTreatment.Peening.Intensity!.Text));
        Assert.Equal(("2 µm", "10 µm"), (sun.Roughness!.FlankRz!.Text, sun.Roughness.RootRz!.Text));
    }

    [Fact]
    public void Null_removes_a_key_a_map_and_the_whole_treatment()
    {
        var less = Sun("heat_treatment: {quality: null, peening: ~, features: null}").HeatTreatment!;
        Assert.Equal((null, null, 0), (less.Quality, less.Peening, less.Features.Length));
        Assert.NotNull(less.CaseDepth);

        var none = Sun("heat_treatment: null, surface: case-hardened");
        Assert.Equal((null, "case-hardened"), (none.HeatTreatment, none.Surface!.Value));
    }

    [Fact]
    public void A_list_replaces_the_list_of_the_family()
    {
        var treatment = Sun("heat_treatment: {later_heat: [{process: curing, temperature: 120 °C}], features: []}").HeatTreatment!;

        Assert.Equal("curing", Assert.Single(treatment.LaterHeat).Process.Value);
        Assert.Empty(treatment.Features);

        var load = Load("duty: {spectrum: [{share: 100 %, torque: 150 N·m, speed: 6000 rpm}]}\n");
        Assert.Equal(["150 N·m"], load.Spec!.Duty!.Spectrum.Select(bin => bin.Torque.Text));
    }

    [Fact]
    public void A_change_that_contradicts_the_family_is_named_where_the_contradiction_stands()
    {
        var softer = Load("train: {gears: {sun: {heat_treatment: {treatment: through-hardened}}}}\n");
        Assert.Equal([(DiagnosticCodes.NoCase, "family.yaml:23:21")], softer.Diagnostics.Select(d => (d.Code, d.Span.ToString())));

        var both = Load("train: {gears: {sun: {surface: case-hardened}}}\n");
        Assert.Equal([(DiagnosticCodes.ExclusiveKeys, "r1.yaml:4:23")], both.Diagnostics.Select(d => (d.Code, d.Span.ToString())));

        var untreated = Load("train: {gears: {sun: {heat_treatment: {treatment: null}}}}\n");
        Assert.Equal([(DiagnosticCodes.MissingKey, "r1.yaml:4:23")], untreated.Diagnostics.Select(d => (d.Code, d.Span.ToString())));

        var weaker = Load("duty: {input: {peak_torque: 150 N·m}}\n");
        Assert.Equal("r1.yaml:4:29", Assert.Single(weaker.Diagnostics, d => d.Span.File == "r1.yaml").Span.ToString());

        var oneWay = Load("duty: {input: {direction: one, reverse_torque: 100 N·m}}\n");
        Assert.Equal([(DiagnosticCodes.OneWay, "r1.yaml:4:48")], oneWay.Diagnostics.Select(d => (d.Code, d.Span.ToString())));
    }
}
