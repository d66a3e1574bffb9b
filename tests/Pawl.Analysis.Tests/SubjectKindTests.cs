using Pawl.Analysis.Core;

namespace Pawl.Analysis.Tests;

public class SubjectKindTests
{
    [Fact]
    public void Names_are_snake_case_and_unique()
    {
        Assert.Equal(SubjectKinds.All.Length, SubjectKinds.All.Select(kind => kind.Name).Distinct().Count());
        Assert.All(SubjectKinds.All.SelectMany(kind => kind.Quantities), quantity =>
            Assert.Matches("^[a-z][a-z0-9]*(_[a-z0-9]+)*$", quantity.Name));
    }

    [Fact]
    public void Every_kind_that_is_not_declared_has_formula_and_source()
    {
        Assert.All(SubjectKinds.All.SelectMany(kind => kind.Quantities).Where(kind => kind.Certainty != Certainty.Declared), quantity =>
        {
            Assert.NotEmpty(quantity.Formula);
            Assert.NotEmpty(quantity.Source);
            Assert.NotEmpty(quantity.Title);
        });
    }

    [Fact]
    public void Roles_reach_registered_kinds() =>
        Assert.All(SubjectKinds.All.SelectMany(kind => kind.Relations), role => Assert.Contains(role.Value, SubjectKinds.All));

    // The carrier of a planet set is a body of the train; every other role has its subject by construction. None is optional.
    [Theory]
    [MemberData(nameof(Shipped))]
    public void Every_subject_of_the_shipped_specs_has_the_roles_that_its_kind_declares(string path) =>
        Assert.All(SpecText.AnalyseFile(path).Subjects, subject =>
        {
            Assert.Equal(subject.Kind.Relations.Select(role => role.Key).Order(), subject.Related.Keys.Order());
            Assert.All(subject.Kind.Relations, role => Assert.Same(role.Value, subject.Related[role.Key].Kind));
        });

    [Fact]
    public void The_shipped_specs_and_one_with_features_have_every_kind_of_subject()
    {
        var seen = Shipped.SelectMany(path => SpecText.AnalyseFile(path.Data).Subjects).Select(subject => subject.Kind)
            .Append(SubjectKinds.PartFeature).ToHashSet();

        Assert.Equal(SubjectKinds.All.ToHashSet(), seen);
    }

    public static TheoryData<string> Shipped =>
        [.. Directory.EnumerateFiles(Path.Combine(SpecText.Root, "specs"), "*.yaml", SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(SpecText.Root, path).Replace('\\', '/'))
            .Where(path => !path.Contains("/catalogue/", StringComparison.Ordinal) && !path.Contains("/adapters/", StringComparison.Ordinal) && !path.EndsWith("/family.yaml", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)];
}
