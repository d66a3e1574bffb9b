using System.Reflection;
using Pawl.Analysis.Core;
using Pawl.Specs;
using Pawl.Specs.Model;

namespace Pawl.Analysis.Tests;

/// <summary>What quantities say of their values, held against every shipped spec and against the words that the spec accepts.</summary>
public class VocabularyTests
{
    private static readonly List<GearboxAnalysis> Analyses = [.. All()];

    private static IEnumerable<GearboxAnalysis> All()
    {
        var loader = new SpecLoader(
            SpecText.Root, ["specs/catalogue/materials.yaml", "specs/catalogue/lubricants.yaml", "specs/catalogue/bearings.yaml"],
            adapterPaths: ["specs/adapters/motor-flange-a.yaml", "specs/adapters/shaft-coupling-b.yaml", "specs/adapters/mount-c.yaml"]);
        foreach (var file in Directory.EnumerateFiles(Path.Combine(SpecText.Root, "specs"), "*.yaml", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
        {
            if (loader.Load(file).Spec is { } spec)
                yield return GearboxAnalyser.Analyse(spec);
        }
    }

    [Fact]
    public void What_is_never_negative_is_not_negative_in_any_shipped_spec()
    {
        var seen = new HashSet<QuantityKind>();
        foreach (var subject in Analyses.SelectMany(a => a.Subjects))
        {
            foreach (var kind in subject.Kind.Quantities.Where(q => q.IsNeverNegative))
            {
                if (subject.Find(kind) is not { IsEvaluated: true } quantity)
                    continue;
                seen.Add(kind);
                Assert.True(quantity.Value.Min >= 0, $"{kind} of {subject.Path} is {quantity.Value.Min}");
            }
        }

        Assert.True(seen.Count > 40, $"{seen.Count}");
    }

    [Fact]
    public void A_text_is_one_of_the_words_that_it_lists_in_every_shipped_spec()
    {
        var seen = new HashSet<QuantityKind>();
        foreach (var subject in Analyses.SelectMany(a => a.Subjects))
        {
            foreach (var kind in subject.Kind.Quantities.Where(q => !q.Words.IsEmpty))
            {
                Assert.Equal(ValueKind.Text, kind.ValueKind);
                if (subject.Find(kind) is not { IsEvaluated: true } quantity)
                    continue;
                seen.Add(kind);
                Assert.Contains(quantity.Text!, kind.Words);
            }
        }

        Assert.True(seen.Count > 20, $"{seen.Count}");
    }

    // Every list of words of the model, by the name of its key; one key may have a list in several sections.
    private static readonly ILookup<string, string> WordsOfTheSpec = typeof(GearboxSpec).Assembly.GetTypes()
        .SelectMany(type => type.GetProperties())
        .Select(property => (property.Name, Words: property.GetCustomAttribute<OneOfAttribute>()?.Words))
        .Where(each => each.Words is not null)
        .ToLookup(each => PropertyName.Of(each.Name), each => string.Join(' ', each.Words!.Order(StringComparer.Ordinal)));

    // Named as their keys are; `axial` and `effect` stand in reports under clearer names.
    [Theory]
    [InlineData("gear", "hand")]
    [InlineData("o_ring", "gland")]
    [InlineData("o_ring", "motion")]
    [InlineData("lip_seal", "lip_faces")]
    [InlineData("fit", "function")]
    [InlineData("dowel", "purpose")]
    [InlineData("retaining_ring", "sits")]
    [InlineData("planet_pin", "held")]
    [InlineData("planet_pin", "secured")]
    [InlineData("lubrication", "supply")]
    [InlineData("lubrication", "mounting_position")]
    [InlineData("stack", "method")]
    [InlineData("mesh", "insertion")]
    [InlineData("part_feature", "feature")]
    [InlineData("bearing", "axial_duty", "axial")]
    [InlineData("stack", "shim_effect", "effect")]
    [InlineData("train", "target_sense", "sense")]
    public void The_words_of_a_stated_text_are_those_that_the_spec_accepts(string subject, string quantity, string? key = null)
    {
        var kind = SubjectKinds.All.Single(k => k.Name == subject).Find(quantity)!;

        Assert.Contains(string.Join(' ', kind.Words.Order(StringComparer.Ordinal)), WordsOfTheSpec[key ?? quantity]);
    }
}
