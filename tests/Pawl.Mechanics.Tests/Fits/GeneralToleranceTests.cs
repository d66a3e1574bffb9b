using Pawl.Mechanics.Fits;
using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Tests.Fits;

public class GeneralToleranceTests
{
    // ISO 2768-1, linear dimensions, as reprinted on public pages: one size in each step, the edge in the smaller step.
    [Theory]
    [InlineData("f", 0.5, 0.05)]
    [InlineData("f", 30, 0.1)]
    [InlineData("f", 2000, 0.5)]
    [InlineData("m", 3, 0.1)]
    [InlineData("m", 6, 0.1)]
    [InlineData("m", 6.1, 0.2)]
    [InlineData("m", 30, 0.2)]
    [InlineData("m", 120, 0.3)]
    [InlineData("m", 400, 0.5)]
    [InlineData("m", 1000, 0.8)]
    [InlineData("m", 2000, 1.2)]
    [InlineData("m", 4000, 2)]
    [InlineData("c", 3, 0.2)]
    [InlineData("c", 5, 0.3)]
    [InlineData("c", 100, 0.8)]
    [InlineData("v", 5, 0.5)]
    [InlineData("v", 4000, 8)]
    public void Linear_dimensions_match_ISO_2768_1(string toleranceClass, double size, double expected)
    {
        Assert.True(GeneralTolerance.TryLinear(toleranceClass, size, out var deviation, out _));
        Assert.Equal(expected, deviation);
    }

    [Theory]
    [InlineData("f", 2001, "none in class f for a size of 2001 mm")]
    [InlineData("v", 3, "none in class v")]
    [InlineData("m", 4001, "none in class m")]
    [InlineData("m", 0.4, "below 0.5 mm")]
    [InlineData("m", double.NaN, "none in class m")]
    [InlineData("k", 20, "`k` is none of them")]
    [InlineData("fm", 20, "`fm` is none of them")]
    public void A_size_without_a_general_tolerance_gives_its_reason(string toleranceClass, double size, string reason)
    {
        Assert.False(GeneralTolerance.TryLinear(toleranceClass, size, out _, out var given));
        Assert.Contains(reason, given, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_shipped_table_names_its_source_and_certainty()
    {
        var ids = StandardTable.Ids;

        foreach (var id in ids)
        {
            var table = StandardTable.Read(id);
            Assert.NotEmpty(table.Title);
            Assert.NotEmpty(table.Source);
            Assert.NotEmpty(table.Certainty);
            Assert.StartsWith("# title: " + table.Title + "\n", table.Text, StringComparison.Ordinal);
        }

        Assert.Throws<OutsideValidityException>(() => StandardTable.Read("no-such-table"));
    }
}
