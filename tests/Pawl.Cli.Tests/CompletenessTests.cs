using System.ComponentModel.DataAnnotations;
using System.Reflection;
using System.Runtime.CompilerServices;
using Pawl.Analysis.Completeness;
using Pawl.Cli.Checking;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Cli.Tests;

/// <summary>What is not stated does not conform: the verdict is incomplete, and says what is missing.</summary>
public sealed class CompletenessTests
{
    private static readonly string Root = Path.GetFullPath("../..", Path.GetDirectoryName(Here())!);

    private static readonly string[] ReadBeforeAnySection = ["pawl", "extends", "gearbox", "required_sections", "parts", "concessions"];

    private static string Here([CallerFilePath] string file = "") => file;

    /// <summary>A variant of the R400 with what is added.</summary>
    private static Ran Check(string added, string project = "", params string[] options)
    {
        using var place = new Workplace { Engine = Engine.Shipped };
        foreach (var file in Directory.EnumerateFiles(Path.Combine(Root, "specs"), "*.yaml", SearchOption.AllDirectories))
            place.With(Path.GetRelativePath(Root, file).Replace('\\', '/'), File.ReadAllText(file));
        var (folder, variant) = added.Contains("shims", StringComparison.Ordinal) ? ("beck-90", "r760") : ("tarn-120", "r400");
        place.With($"specs/{folder}/odd.yaml", $"pawl: 1\nextends: {variant}.yaml\ngearbox: {{variant: ODD}}\n{added}\n");
        place.With("pawl.yaml", "pawl: 1\ncatalogues: [specs/catalogue/*.yaml]\nadapters: [specs/adapters/*.yaml]\n" + project);
        return place.Run(["check", $"specs/{folder}/odd.yaml", .. options]);
    }

    [Theory]
    [InlineData("bearings: null\nretaining_rings: null", "completeness/bearings", "bearings is not stated")]
    [InlineData("lubrication: null", "completeness/lubrication", "lubrication.supply is not stated")]
    [InlineData("lip_seals: null", "completeness/exit-seal", "no lip seal stands on ")]
    [InlineData("joints: null\ndowels: null", "completeness/reaction", "no joint, dowels, fit, spline or key names housing")]
    public void A_product_without_what_it_must_have_is_incomplete(string added, string rule, string reason)
    {
        var ran = Check(added);

        Assert.Equal(1, ran.Code);
        Assert.Contains(" incomplete. ", ran.Out, StringComparison.Ordinal);
        Assert.Contains(ran.OutLines, line => line.Contains(reason, StringComparison.Ordinal) && line.Contains(rule, StringComparison.Ordinal));
        Assert.Contains("(1 is incomplete)", ran.OutLines[^1], StringComparison.Ordinal);
        Assert.Equal(0, Check(added, "", "--allow-incomplete").Code);
        Assert.Equal(0, Check(added, "allow_incomplete: true\n").Code);
    }

    [Fact]
    public void An_open_exit_is_a_finding_and_another_seal_is_none()
    {
        var open = Check("lip_seals: null\ntrain: {bodies: {carrier: {exit_sealed_by: none}, input_shaft: {exit_sealed_by: flange of the motor}}}");

        Assert.Equal(1, open.Code);
        Assert.Contains(open.OutLines, line => line.Contains("error completeness/exit-seal: bodies.carrier", StringComparison.Ordinal));
        Assert.DoesNotContain(open.OutLines, line => line.Contains("completeness/exit-seal: bodies.input_shaft", StringComparison.Ordinal));
    }

    [Fact]
    public void A_section_that_the_project_or_the_spec_requires_must_be_stated()
    {
        var byProject = Check("dowels: null", "required_sections: [bearings, dowels]\n");
        var bySpec = Check("required_sections: [dowels]\ndowels: null");
        var emptied = Check("required_sections: [shims]   # the family says that there are none");

        Assert.Equal((1, 1, 1), (byProject.Code, bySpec.Code, emptied.Code));
        Assert.Contains("pawl.yaml:4:31 requires `dowels`, which is not stated", byProject.Out, StringComparison.Ordinal);
        Assert.Matches(@"odd\.yaml:4:21 requires `dowels`, which is not stated", bySpec.Out);
        Assert.Contains("requires `shims`, which is empty", emptied.Out, StringComparison.Ordinal);
        Assert.Equal(0, Check("", "required_sections: [bearings]\n").Code);
    }

    [Fact]
    public void What_is_not_stated_stands_beside_the_verdict_and_an_empty_section_is_stated()
    {
        var verdict = Check("dowels: null").OutLines.Single(line => line.Contains(" conforms. ", StringComparison.Ordinal));
        var without = Check("# shims: none, says the family").OutLines.Single(line => line.Contains(" conforms. ", StringComparison.Ordinal));

        Assert.Matches("Not stated, so not judged: .*dowels", verdict);
        Assert.DoesNotContain("shims", without, StringComparison.Ordinal);
    }

    [Fact]
    public void A_misspelt_section_is_refused()
    {
        var ran = Check("", "required_sections: [bearing]\n");

        Assert.Equal(2, ran.Code);
        Assert.Contains("Did you mean `bearings`?", ran.Error, StringComparison.Ordinal);
    }

    // The list of sections stands in three places: the model's keys, what may be required, and what is looked for.
    [Fact]
    public void Every_section_of_the_model_can_be_required_and_is_looked_for()
    {
        var keys = typeof(GearboxSpec).GetProperties()
            .Where(property => property.GetCustomAttribute<DisplayAttribute>() is not null)
            .Select(property => PropertyName.Of(property.Name)).Except(ReadBeforeAnySection).Order().ToArray();
        var spec = new GearboxSpec
        {
            File = "a.yaml",
            FilesRead = [],
            Catalogue = Catalogue.Empty,
            Pawl = new(1, SourceSpan.Whole("a.yaml"), "1"),
            Gearbox = new() { Family = new("F", SourceSpan.Whole("a.yaml"), "F"), Variant = new("V", SourceSpan.Whole("a.yaml"), "V") },
        };

        Assert.Equal(keys, SectionInSpec.Of(spec).Select(section => section.Name).Order());
        foreach (var owner in (Type[])[typeof(GearboxSpec), typeof(ProjectFile)])
            Assert.Equal(keys, owner.GetProperty("RequiredSections")!.GetCustomAttribute<OneOfAttribute>()!.Words.Order());
    }
}
