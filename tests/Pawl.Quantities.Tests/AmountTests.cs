using System.Globalization;
using CsCheck;

namespace Pawl.Quantities.Tests;

public class AmountTests
{
    [Theory]
    [InlineData("2.5 mm", 2.5, "mm")]
    [InlineData("2.5mm", 2.5, "mm")]
    [InlineData("  2.5\u00A0mm ", 2.5, "mm")]
    [InlineData("+2.5 mm", 2.5, "mm")]
    [InlineData("-15 °C", -15, "°C")]
    [InlineData("−15 °C", -15, "°C")]
    [InlineData(".020 in", 0.02, "in")]
    [InlineData("0.020\"", 0.02, "in")]
    [InlineData("8200 rpm", 8200, "rpm")]
    [InlineData("150 lbf·ft", 150, "lbf·ft")]
    [InlineData("150 lbf · ft", 150, "lbf·ft")]
    [InlineData("15 %", 15, "%")]
    [InlineData("15%", 15, "%")]
    [InlineData("400 °F", 400, "°F")]
    [InlineData("20°", 20, "°")]
    [InlineData("1.2e-5 1/K", 1.2e-5, "1/K")]
    [InlineData("1.2e-5/K", 1.2e-5, "1/K")]
    [InlineData("1.2E5 N", 1.2e5, "N")]
    [InlineData("5200 1/min", 5200, "1/min")]
    [InlineData("1 1/min", 1, "1/min")]
    [InlineData("1.25", 1.25, "")]
    [InlineData("0", 0, "")]
    [InlineData("1/2 in", 0.5, "in")]
    [InlineData("1-1/2 in", 1.5, "in")]
    [InlineData("1 1/2 in", 1.5, "in")]
    [InlineData("-1 1/2\"", -1.5, "in")]
    [InlineData("3/4 ft", 0.75, "ft")]
    [InlineData("VG 100", 100, "mm²/s")]
    [InlineData("ISO VG 46", 46, "mm²/s")]
    [InlineData("4 fl oz", 4, "fl oz")]
    [InlineData("20° 30′", 20.5, "°")]
    [InlineData("20°30'", 20.5, "°")]
    [InlineData("-0° 30′", -0.5, "°")]
    [InlineData("20° 30′ 18″", 20.505, "°")]
    [InlineData("20° 30' 18\"", 20.505, "°")]
    [InlineData("30′ 30″", 30.5, "′")]
    public void A_number_and_its_unit_are_read(string text, double value, string symbol)
    {
        var amount = Parse.Amount(text);

        Assert.Equal(value, amount.Value, tolerance: 1e-13 * Math.Abs(value));
        Assert.Equal(symbol, amount.Unit.Symbol);
    }

    [Theory]
    [InlineData("", NotationErrorKind.NotANumber, 0, 0, null)]
    [InlineData("   ", NotationErrorKind.NotANumber, 0, 3, null)]
    [InlineData("mm", NotationErrorKind.NotANumber, 0, 2, null)]
    [InlineData("2,5 mm", NotationErrorKind.NotANumber, 1, 1, "Write 2.5.")]
    [InlineData("8,200 rpm", NotationErrorKind.NotANumber, 1, 1, "Write 8.200 or 8200: the decimal mark is the point, thousands are not parted.")]
    [InlineData("8 200 rpm", NotationErrorKind.NotANumber, 1, 1, "Write 8200.")]
    [InlineData("8'200 rpm", NotationErrorKind.NotANumber, 1, 1, "Write 8200.")]
    [InlineData("8_200 rpm", NotationErrorKind.NotANumber, 1, 1, "Write 8200.")]
    [InlineData("2. mm", NotationErrorKind.NotANumber, 1, 1, "Write 2.")]
    [InlineData("1.2.3 mm", NotationErrorKind.NotANumber, 3, 1, "Write 1.2.")]
    [InlineData("2 5 mm", NotationErrorKind.NotANumber, 2, 1, null)]
    [InlineData("٢ mm", NotationErrorKind.NotANumber, 0, 1, null)]
    [InlineData("1/2 mm", NotationErrorKind.NotANumber, 0, 3, "Write 0.5 mm.")]
    [InlineData("1 1/3 mm", NotationErrorKind.NotANumber, 0, 5, "Write 1.33333333 mm.")]
    [InlineData("1 3/2 in", NotationErrorKind.NotANumber, 0, 5, null)]
    [InlineData("1/0 in", NotationErrorKind.NotFinite, 0, 3, null)]
    [InlineData("NaN", NotationErrorKind.NotFinite, 0, 3, null)]
    [InlineData(" -inf mm", NotationErrorKind.NotFinite, 1, 4, null)]
    [InlineData("Infinity N", NotationErrorKind.NotFinite, 0, 8, null)]
    [InlineData("∞ h", NotationErrorKind.NotFinite, 0, 1, null)]
    [InlineData("1e999 mm", NotationErrorKind.NotFinite, 0, 5, null)]
    [InlineData("1e308 m", NotationErrorKind.NotFinite, 0, 5, null)]
    [InlineData("12 rmp", NotationErrorKind.UnknownUnit, 3, 3, "Did you mean rpm?")]
    [InlineData("12 kn", NotationErrorKind.UnknownUnit, 3, 2, "Did you mean kN?")]
    [InlineData("12 foo", NotationErrorKind.UnknownUnit, 3, 3, null)]
    [InlineData("12 W/(m·Kk)", NotationErrorKind.UnknownUnit, 8, 2, null)]
    [InlineData("12 W/(mm * kelv)", NotationErrorKind.UnknownUnit, 11, 4, null)]
    [InlineData("12 W/m·K", NotationErrorKind.UnknownUnit, 3, 5, "Put the divisor in parentheses, as in W/(m·K).")]
    [InlineData("190 J", NotationErrorKind.UnknownUnit, 4, 1, "Write N·m.")]
    [InlineData("VG 90", NotationErrorKind.NotANumber, 3, 2, "The nearest is VG 100.")]
    [InlineData("20.5° 30′", NotationErrorKind.NotANumber, 0, 4, "Write 20° 30′ or 20.5°.")]
    [InlineData("20° 75′", NotationErrorKind.NotANumber, 4, 2, null)]
    [InlineData("60 mm H7", NotationErrorKind.ToleranceNotAllowed, 6, 2, "Write 60 mm alone.")]
    [InlineData("60 mm ±0.1", NotationErrorKind.ToleranceNotAllowed, 6, 4, "Write 60 mm alone.")]
    [InlineData("20° 30′ ±10′", NotationErrorKind.ToleranceNotAllowed, 8, 4, "Write 20° 30′ alone.")]
    public void What_is_no_amount_is_told_where_and_what_instead(
        string text, NotationErrorKind kind, int start, int length, string? hint)
    {
        var error = Parse.NoAmount(text);

        Assert.Equal((kind, start, length), (error.Kind, error.Start, error.Length));
        if (hint is not null) Assert.Equal(hint, error.Hint);
    }

    [Fact]
    public void What_is_written_reads_back_as_the_same_amount()
    {
        var units = Gen.OneOf(Units.All.ToArray());

        Gen.Select(Generate.Number, units).Where((value, unit) => double.IsFinite(unit.ToCoherent(value))).Sample((value, unit) =>
        {
            var written = new Amount(value, unit);
            return Parse.Amount(written.ToString()) == written;
        });
    }

    [Fact]
    public void There_and_back_between_units_of_a_dimension_is_no_change()
    {
        var pairs = Units.All.GroupBy(unit => unit.Dimension)
            .SelectMany(group => group.SelectMany(a => group.Select(b => (a, b)))).ToArray();

        Gen.Select(Gen.Double[-1e6, 1e6], Gen.OneOf(pairs)).Sample((value, pair) =>
        {
            var there = new Amount(value, pair.a).In(pair.b);
            var back = new Amount(there, pair.b).In(pair.a);
            return Math.Abs(back - value) <= 1e-12 * (Math.Abs(value) + 1000);
        });
    }

    [Fact]
    public void Points_and_differences_of_temperature_do_not_mix() =>
        Assert.Throws<ArgumentException>(() => Parse.Amount("80 °C").In(Units.Kelvin));

    [Fact]
    public void A_difference_of_points_converts_as_a_difference()
    {
        Gen.Select(Gen.Double[-100, 400], Gen.Double[-100, 400]).Sample((a, b) =>
        {
            var points = new Amount(a, Units.Fahrenheit).Coherent - new Amount(b, Units.Fahrenheit).Coherent;
            return Math.Abs(points - new Amount(a - b, Parse.Unit("Δ°F")).Coherent) < 1e-9;
        });
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void The_culture_of_the_desk_changes_nothing(string culture)
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
        try
        {
            Assert.Equal(-2.5, Parse.Amount("-2.5 mm").Value);
            Assert.Equal(1.2e-5, Parse.Amount("1.2e-5 1/K").Value);
            Assert.Equal(NotationErrorKind.NotANumber, Parse.NoAmount("2,5 mm").Kind);
            Assert.Equal(NotationErrorKind.NotFinite, Parse.NoAmount("INFINITY").Kind);
            Assert.Equal("-1234.5 mm", new Amount(-1234.5, Units.Millimetre).ToString());
            Assert.Equal("1.2e-7", Formatting.Significant(1.2e-7, 3));
            Assert.Equal("in", Units.Nearest("IN"));
            Assert.Equal("mil", Nearest.To("MIL", ["mil"]));
            Assert.Equal(new Tolerance.Deviations(-0.02, 0.01), Parse.Toleranced("25 mm +0.01/-0.02").Tolerance);
            Assert.Equal("js6", Parse.Toleranced("60 mm js6").Tolerance.ToString());
            Assert.Equal("1.5 mm", Parse.Amount("1.5 mm").ToString());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
