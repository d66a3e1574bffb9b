using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Bearings;

public class BoundaryDimensionsTests
{
    // ISO 15 and the numbers of deep groove ball bearings, reprinted on public pages.
    [Theory]
    [InlineData("6204", 20, 47, 14)]
    [InlineData("6205", 25, 52, 15)]
    [InlineData("6206", 30, 62, 16)]
    [InlineData("61800", 10, 19, 5)]
    [InlineData("61900", 10, 22, 6)]
    [InlineData("6000", 10, 26, 8)]
    [InlineData("6200", 10, 30, 9)]
    [InlineData("6300", 10, 35, 11)]
    [InlineData("61801", 12, 21, 5)]
    [InlineData("61901", 12, 24, 6)]
    [InlineData("6001", 12, 28, 8)]
    public void Dimensions_match_the_print(string designation, double bore, double outside, double width) => Is(designation, bore, outside, width);

    // ISO 15, from memory: bore codes 02 and 03, small bearings whose last digit is the bore, the far ends of the series.
    [Theory]
    [InlineData("608", 8, 22, 7)]
    [InlineData("625", 5, 16, 5)]
    [InlineData("6202", 15, 35, 11)]
    [InlineData("6303", 17, 47, 14)]
    [InlineData("61812", 60, 78, 10)]
    [InlineData("6312", 60, 130, 31)]
    [InlineData("6004-2RS", 20, 42, 12)]
    [InlineData("6205 C3", 25, 52, 15)]
    public void Dimensions_and_codes_match_the_standard(string designation, double bore, double outside, double width) => Is(designation, bore, outside, width);

    // How ISO 15 is made: at one bore a higher diameter series is larger; at one series a larger bore is in a larger ring.
    [Fact]
    public void Series_and_bores_stand_in_order()
    {
        string[] order = ["18", "19", "10", "02", "03"];
        Assert.Equal(5 * 13 + 16, BoundaryDimensions.All.Length);
        Assert.All(order, series =>
        {
            var rows = BoundaryDimensions.All.Where(row => row.Series == series).OrderBy(row => row.Bore).ToArray();
            Assert.All(rows.Zip(rows.Skip(1)), pair => Assert.True(pair.Second.Outside > pair.First.Outside && pair.Second.Width >= pair.First.Width));
        });
        Assert.All(order.Zip(order.Skip(1)), pair => Assert.All(
            BoundaryDimensions.All.Where(row => row.Series == pair.First && BoundaryDimensions.All.Any(other => other.Series == pair.Second && other.Bore == row.Bore)),
            row => Assert.True(BoundaryDimensions.Of(pair.Second, row.Bore).Outside > row.Outside)));
    }

    [Fact]
    public void Stated_dimensions_are_checked()
    {
        var bearing = BoundaryDimensions.Of("02", 20);
        Assert.Null(bearing.Contradiction(20, 47, 14));
        Assert.Equal("outside diameter 42 mm for 47 mm, width 12 mm for 14 mm", bearing.Contradiction(20, 42, 12));
        Assert.Equal("bore 25 mm for 20 mm", bearing.Contradiction(25, 47, 14));
    }

    [Theory]
    [InlineData("6299")]
    [InlineData("7204")]
    [InlineData("62")]
    [InlineData("NU204")]
    [InlineData("620411")]
    [InlineData("")]
    public void Unknown_designations_are_refused(string designation) =>
        Refusal.Says($"no deep groove ball bearing `{designation}`", () => BoundaryDimensions.OfDesignation(designation).Bore);

    [Fact]
    public void An_unknown_series_is_refused() =>
        Refusal.Says("no bearing of dimension series 04 with a bore of 20 mm", () => BoundaryDimensions.Of("04", 20).Bore);

    private static void Is(string designation, double bore, double outside, double width)
    {
        var found = BoundaryDimensions.OfDesignation(designation);
        Assert.Equal((bore, outside, width), (found.Bore, found.Outside, found.Width));
    }
}
