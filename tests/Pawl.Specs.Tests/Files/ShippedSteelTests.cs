using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Specs.Tests.Files;

/// <summary>The steels that ship inside, and treatments in the catalogues of a project.</summary>
public sealed class ShippedSteelTests
{
    private const string Steel = "EN-18CrNiMo7-6";

    private const string Spec =
        "pawl: 1\ngearbox: {family: F, variant: V}\ntrain:\n  input: a\n  output: b\n  fixed: [housing]\n  meshes: [{gears: [g, h]}]\n  gears:\n    g: {on: a, teeth: 20, module: 2 mm, material: " + Steel + "}\n    h: {on: b, teeth: 20, module: 2 mm}\n";

    private const string Head = "pawl: 1\ncatalogue: C\nmaterials:\n";

    private static SpecLoad Catalogued(string entry)
    {
        using var project = new Project().With("c.yaml", Head + entry).With("v.yaml", Spec);
        return project.Loader("c.yaml").Load("v.yaml");
    }

    [Fact]
    public void A_steel_that_ships_inside_needs_no_catalogue_of_the_project()
    {
        using var project = new Project().With("v.yaml", Spec);

        var load = project.Loader().Load("v.yaml");

        Assert.Empty(load.Diagnostics);
        Assert.Equal("Eh", load.Spec!.Catalogue.Materials.Find(Steel)!.Treatments.Find("case-hardened")!.Class.Value);
        Assert.Equal(["shipped:catalogue/steels.yaml", "v.yaml"], load.FilesRead.Select(file => file.Path));
    }

    [Fact]
    public void A_project_replaces_a_steel_as_a_whole_and_a_note_says_so()
    {
        var load = Catalogued($"  {Steel}: {{title: Ours, source: S, certainty: invented}}\n");

        var note = Assert.Single(load.Diagnostics);
        Assert.Equal((DiagnosticCodes.CatalogueOverride, Severity.Note, "c.yaml:4:3"), (note.Code, note.Severity, note.Span.ToString()));
        Assert.Contains("shipped:catalogue/steels.yaml, line ", note.Message, StringComparison.Ordinal);
        var steel = load.Spec!.Catalogue.Materials.Find(Steel)!;
        Assert.Equal(("Ours", null, null, 0), (steel.Title.Value, steel.ElasticModulus, steel.Carbon, steel.Treatments.Entries.Length));
    }

    [Fact]
    public void Every_steel_that_ships_inside_can_be_rated_and_says_what_its_numbers_are_worth()
    {
        using var project = new Project();
        var steels = project.Loader().Catalogue.Materials.Entries;

        Assert.NotEmpty(steels);
        Assert.All(steels, steel =>
        {
            Assert.True(steel is { ElasticModulus: not null, PoissonRatio: not null, ThermalExpansion: not null, Density: not null, Carbon: not null }, steel.Name.Value);
            Assert.NotEqual("invented", steel.Certainty.Value);
            Assert.NotEmpty(steel.Treatments.Entries);
            Assert.All(steel.Treatments.Entries, treatment => Assert.NotNull(treatment.SurfaceHardness));
            Assert.All(
                steel.Treatments.Entries.Where(treatment => Treatments.HasCase(treatment.Name.Value)), treatment => Assert.NotNull(treatment.CoreHardness));
        });
    }

    [Fact]
    public void Every_key_of_a_treatment_reaches_the_model()
    {
        var catalogue = Sample.Loader().Catalogue;

        var steel = catalogue.Materials.Find("carburised-9310")!;
        Assert.Equal((0.0008, 0.0013), (Math.Round(steel.Carbon!.Min.Value.Coherent, 12), Math.Round(steel.Carbon.Max.Value.Coherent, 12)));
        Assert.Equal(["case-hardened", "through-hardened"], steel.Treatments.Entries.Select(treatment => treatment.Name.Value));
        var treatment = steel.Treatments.Find("case-hardened")!;
        Assert.Equal(("Eh", "58..62 HRC", "34..42 HRC"), (treatment.Class.Value, treatment.SurfaceHardness!.Text, treatment.CoreHardness!.Text));
        Assert.Equal(new(HardnessScale.RockwellC, 38, 34, 42), treatment.CoreHardness.Value);
        Assert.Equal((150, 190), (treatment.Tempering!.Min.Value.Coherent, treatment.Tempering.Max.Value.Coherent));
        Assert.Equal((1550, 500), (treatment.ContactLimit!.Value.Coherent, treatment.BendingLimit!.Value.Coherent));
        var oil = catalogue.Lubricants.Find("gear-oil-vg100")!;
        Assert.Equal((880e-12, 0.018, 250), (Math.Round(oil.Density!.Value.Coherent, 15), Math.Round(oil.PressureViscosity!.Value.Coherent, 12), oil.ScuffingTemperature!.Value.Coherent));
    }

    // Each row: a line of a steel, the code, the text at whose start the complaint stands, and a piece of the hint.
    [Theory]
    [InlineData("carbon: {min: 0.21 %, max: 0.15 %}", DiagnosticCodes.OutOfRange, "0.15 %", "Exchange")]
    [InlineData("carbon: {min: 0.15, max: 0.21 %}", DiagnosticCodes.MissingUnit, "0.15,", "Write `0.15 %` or `15 %`, whichever is meant.")]
    [InlineData("carbon: {min: -0.1 %, max: 0.21 %}", DiagnosticCodes.OutOfRange, "-0.1 %", null)]
    [InlineData("carbon: {min: 0.1 %, max: 2.1 %}", DiagnosticCodes.OutOfRange, "2.1 %", null)]
    [InlineData("carbon: {max: 0.21 %}", DiagnosticCodes.MissingKey, "carbon:", "min")]
    [InlineData("carbon: 0.2 %", DiagnosticCodes.NotAMap, "0.2 %", null)]
    [InlineData("treatments: {case-hardend: {class: Eh}}", DiagnosticCodes.UnknownWord, "case-hardend:", "`case-hardened`")]
    [InlineData("treatments: {carburised: {class: Eh}}", DiagnosticCodes.UnknownWord, "carburised:", "case-hardened")]
    [InlineData("treatments: {case-hardened: {}}", DiagnosticCodes.MissingKey, "case-hardened:", "class")]
    [InlineData("treatments: {case-hardened: {class: eh}}", DiagnosticCodes.UnknownWord, "eh}", "Eh")]
    [InlineData("treatments: {through-hardened: {class: Eh}}", DiagnosticCodes.UnknownWord, "Eh}", "V-alloy")]
    [InlineData("treatments: {precipitation-hardened: {class: NT}}", DiagnosticCodes.UnknownWord, "NT}", "none")]
    [InlineData("treatments: {case-hardened: {class: Eh, surface_hardness: 62..58 HRC}}", DiagnosticCodes.MalformedTolerance, "62..58", "58..62")]
    [InlineData("treatments: {case-hardened: {class: Eh, core_hardness: 35}}", DiagnosticCodes.MissingUnit, "35}", "58..62 HRC")]
    [InlineData("treatments: {case-hardened: {class: Eh, tempering: {min: 200 °C, max: 150 °C}}}", DiagnosticCodes.OutOfRange, "150 °C", "Exchange")]
    [InlineData("treatments: {case-hardened: {class: Eh, tempering: 170 °C}}", DiagnosticCodes.NotAMap, "170 °C", null)]
    [InlineData("treatments: {case-hardened: {class: Eh, contact_limit: 0 MPa}}", DiagnosticCodes.OutOfRange, "0 MPa", null)]
    [InlineData("treatments: {case-hardened: {class: Eh, bending_limit: 500}}", DiagnosticCodes.MissingUnit, "500}", "MPa")]
    [InlineData("treatments: {case-hardened: {class: Eh, bending: 500 MPa}}", DiagnosticCodes.UnknownKey, "bending:", null)]
    [InlineData("treatments: [case-hardened]", DiagnosticCodes.NotAMap, "[case-hardened]", null)]
    public void A_fault_of_a_steel_is_named_at_its_place(string line, string code, string at, string? hint)
    {
        var entry = $"  x: {{title: T, source: S, certainty: invented, {line}}}\n";

        var load = Catalogued(entry);

        var diagnostic = Sample.Only(load, code, Head + entry, at);
        Assert.Equal("c.yaml", diagnostic.Span.File);
        if (hint is not null)
            Assert.Contains(hint, diagnostic.Hint, StringComparison.Ordinal);
    }

    // Every word for a treatment leads to a class or to none.
    [Fact]
    public void Every_treatment_may_be_outside_of_the_standard() => Assert.All(
        Treatments.Words, word => Assert.Empty(Catalogued($"  x: {{title: T, source: S, certainty: invented, treatments: {{{word}: {{class: none}}}}}}\n").Diagnostics));

    [Theory]
    [InlineData("density: 0 kg/m³", DiagnosticCodes.OutOfRange, "0 kg")]
    [InlineData("density: 0.88", DiagnosticCodes.MissingUnit, "0.88")]
    [InlineData("pressure_viscosity: 18 GPa", DiagnosticCodes.UnitMismatch, "GPa")]
    [InlineData("pressure_viscosity: -18 1/GPa", DiagnosticCodes.OutOfRange, "-18")]
    [InlineData("scuffing_temperature: 250 K", DiagnosticCodes.UnitMismatch, "K}")]
    public void A_fault_of_a_lubricant_is_named_at_its_place(string line, string code, string at)
    {
        var text = $"pawl: 1\ncatalogue: C\nlubricants:\n  x: {{title: T, source: S, certainty: invented, {line}}}\n";
        using var project = new Project().With("c.yaml", text).With("v.yaml", Spec);

        Sample.Only(project.Loader("c.yaml").Load("v.yaml"), code, text, at);
    }
}
