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
}
