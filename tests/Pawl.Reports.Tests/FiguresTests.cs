using System.Globalization;
using CsCheck;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Tests;

public sealed class FiguresTests
{
    [Theory]
    [InlineData(0.12, 0.10, 0.14, "mm", "0.12 mm (0.10…0.14)")]
    [InlineData(60.0, 59.9905, 60.0095, "mm", "60.0000 mm (59.9905…60.0095)")]
    [InlineData(-0.08, -0.1, -0.06, "mm", "−0.08 mm (−0.10…−0.06)")]
    [InlineData(0.0, -0.0004, 0.0004, "mm", "0.0000 mm (−0.0004…0.0004)")]
    [InlineData(1200.0, 1100.0, 1300.0, "N", "1200 N (1100…1300)")]
    public void A_toleranced_value_shows_its_bounds_to_one_decimal_place(
        double nominal, double least, double greatest, string unit, string text) =>
        Assert.Equal(text, Figures.Of(new() { Nominal = nominal, Min = least, Max = greatest, Unit = unit }));

    [Theory]
    [InlineData(8200, "1/min", "8200 1/min")]
    [InlineData(123456, "N", "123456 N")]
    [InlineData(20, "°", "20°")]
    [InlineData(27.68351234, "mm", "27.684 mm")]
    [InlineData(1.23456, "", "1.235")]
    [InlineData(0, "mm", "0 mm")]
    public void A_number_is_rounded_and_a_whole_number_is_not(double nominal, string unit, string text) =>
        Assert.Equal(text, Figures.Of(new() { Nominal = nominal, Unit = unit }));

    [Theory]
    [InlineData(0, "on the limit")]
    [InlineData(-0.2, "−20 %")]
    [InlineData(0.1234, "+12 %")]
    [InlineData(12.34, "+12 times the limit")]
    [InlineData(-0.00013, "−0.013 %")]
    public void A_margin_is_a_signed_percentage(double margin, string text) => Assert.Equal(text, Figures.Margin(margin));

    // The least against a lower limit, the greatest against an upper one; what conforms has its nominal first.
    [Theory]
    [InlineData(OutcomeWord.Fails, 1.84, "1.84 mm at worst (nominal 2.08, 1.84…2.32)")]
    [InlineData(OutcomeWord.Fails, 2.32, "2.32 mm at worst (nominal 2.08, 1.84…2.32)")]
    [InlineData(OutcomeWord.UnderConcession, 1.84, "1.84 mm at worst (nominal 2.08, 1.84…2.32)")]
    [InlineData(OutcomeWord.Fails, null, "2.08 mm (1.84…2.32)")]
    [InlineData(OutcomeWord.Conforms, 1.84, "2.08 mm (1.84…2.32)")]
    public void The_end_that_breaks_a_rule_stands_first(OutcomeWord outcome, double? worst, string text)
    {
        var finding = Finding(new() { Nominal = 2.08, Min = 1.84, Max = 2.32, Unit = "mm" }, new() { Nominal = 2, Unit = "mm" });

        Assert.Equal(text, Figures.Apart(finding with { Outcome = outcome, Worst = worst }).Value);
    }

    // −5 mm against a scale of 1 mm; a limit that is not zero; on the limit; a ratio; none.
    [Theory]
    [InlineData(-5d, -5d, "mm", "−5 mm")]
    [InlineData(4d, 0.4, "mm", "+0.4 mm")]
    [InlineData(-0.873, -0.5, "°", "−0.5°")]
    [InlineData(-1d, -1d, "", "−1")]
    [InlineData(0d, 0d, "mm", "on the limit")]
    [InlineData(-0.2, null, "mm", "−20 %")]
    [InlineData(null, null, "mm", "–")]
    public void A_margin_to_a_limit_of_zero_is_a_distance(double? share, double? distance, string unit, string text) =>
        Assert.Equal(text, Figures.Margin(share, distance is { } d ? new() { Nominal = d, Unit = unit } : null));

    [Fact]
    public void What_fails_never_looks_equal_to_its_limit()
    {
        // 1.1999 against 1.2, both 1.20 to three digits.
        var (value, limit) = Figures.Apart(Finding(new() { Nominal = 1.19996 }, new() { Nominal = 1.2 }));

        Assert.Equal(("1.19996", "at least 1.2"), (value, limit));
    }

    [Fact]
    public void Value_and_limit_look_different_wherever_they_differ() =>
        Gen.Select(Gen.Double[0.001, 1000], Gen.Double[-1e-6, 1e-6]).Sample((limit, share) =>
        {
            var worst = limit * (1 + share);
            if (Math.Abs(share) < 1e-9)
                return;
            var spread = Finding(
                new() { Nominal = worst * 1.01, Min = worst, Max = worst * 1.02, Unit = "mm" }, new() { Nominal = limit, Unit = "mm" });
            var (value, shown) = Figures.Apart(spread);
            var least = value[(value.IndexOf('(', StringComparison.Ordinal) + 1)..value.IndexOf('…', StringComparison.Ordinal)];

            Assert.NotEqual(
                double.Parse(least, CultureInfo.InvariantCulture),
                double.Parse(shown["at least ".Length..^" mm".Length], CultureInfo.InvariantCulture));
        });

    private static FindingRecord Finding(ValueRecord value, ValueRecord least) => new()
    {
        Rule = "a/b",
        Subject = "s",
        Domain = "D",
        Title = "t",
        Outcome = OutcomeWord.Fails,
        Severity = SeverityWord.Error,
        Measured = new() { Value = value },
        AtLeast = new() { Value = least },
        Place = new() { File = "f", Line = 1, Column = 1, EndLine = 1, EndColumn = 1 },
    };
}
