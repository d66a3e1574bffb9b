using System.Globalization;
using CsCheck;

namespace Pawl.Quantities.Tests;

public class FormattingTests
{
    [Theory]
    [InlineData(0, 3, "0")]
    [InlineData(1, 3, "1")]
    [InlineData(2.50, 3, "2.5")]
    [InlineData(1234.5, 3, "1230")]
    [InlineData(99.96, 3, "100")]
    [InlineData(-0.012345, 3, "-0.0123")]
    [InlineData(1e-5, 3, "0.00001")]
    [InlineData(1.234e-6, 3, "1.23e-6")]
    [InlineData(1e-6, 3, "1e-6")]
    [InlineData(123456789, 12, "123456789")]
    [InlineData(999999999.9, 3, "1e9")]
    [InlineData(2.5e10, 3, "2.5e10")]
    [InlineData(0.1, 17, "0.10000000000000001")] // 0.1 in binary is 0.1000000000000000055…
    [InlineData(123.456, 0, "100")]
    [InlineData(double.NaN, 3, "NaN")]
    [InlineData(double.NegativeInfinity, 3, "-Infinity")]
    public void Significant_digits_without_needless_zeros(double value, int digits, string text) =>
        Assert.Equal(text, Formatting.Significant(value, digits));

    [Theory]
    [InlineData(20, "°", "20°")]
    [InlineData(4, "′", "4′")]
    [InlineData(15, "%", "15 %")]
    [InlineData(2.5, "mm", "2.5 mm")]
    [InlineData(80, "°C", "80 °C")]
    [InlineData(1.25, "", "1.25")]
    [InlineData(0.1, "in", "0.1 in")]
    public void A_unit_follows_its_number(double value, string symbol, string text) =>
        Assert.Equal(text, Formatting.WithUnit(value, Parse.Unit(symbol)));

    [Fact]
    public void A_coherent_number_is_shown_in_the_unit_asked_for()
    {
        Assert.Equal("190 N·m", Formatting.Coherent(190_000, Units.NewtonMetre, 3));
        Assert.Equal("400 °F", Formatting.Coherent(204.4444444, Units.Fahrenheit, 3));
        Assert.Equal("20°", Formatting.Coherent(Math.PI / 9, Units.Degree, 3));
    }

    [Fact]
    public void Text_reads_back_to_the_digits_shown()
    {
        Gen.Select(Generate.Number, Gen.Int[1, 17]).Sample((value, digits) =>
        {
            var text = Formatting.Significant(value, digits);
            var read = double.Parse(text, CultureInfo.InvariantCulture);

            // Half a unit of the last digit shown; a leading digit of 1 makes that 5·10^-digits of the number.
            return double.IsInfinity(read) || Math.Abs(read - value) <= 5.0 * Math.Pow(10, -digits) * Math.Abs(value);
        });
    }

    // The framework's own general format has as many digits; only the layout differs.
    [Fact]
    public void Digits_are_those_of_the_framework()
    {
        Gen.Select(Gen.Double[-1e8, 1e8], Gen.Int[1, 15]).Sample((value, digits) =>
            Read(Formatting.Significant(value, digits)).Equals(Read(value.ToString($"G{digits}", CultureInfo.InvariantCulture))));

        static double Read(string text) => double.Parse(text, CultureInfo.InvariantCulture);
    }

    [Fact]
    public void Numbers_that_differ_look_different()
    {
        Assert.Equal(("1.1999", "1.2"), Formatting.Apart(1.1999, 1.2, Units.One, 3));
        Assert.Equal(("1.5 mm", "1.2 mm"), Formatting.Apart(1.5, 1.2, Units.Millimetre, 3));
        Assert.Equal(("1.2 mm", "1.2 mm"), Formatting.Apart(1.2, 1.2, Units.Millimetre, 3));

        Gen.Select(Gen.Double[-1e6, 1e6], Gen.Double[-1, 1], Gen.Int[1, 12]).Sample((limit, part, digits) =>
        {
            var value = limit * (1 + (part * 1e-9));
            if (Math.Abs(value - limit) <= 1e-11 * Math.Abs(limit)) return true;
            var (a, b) = Formatting.Apart(value, limit, Units.NewtonMetre, digits);
            return a != b;
        });
    }

    [Theory]
    [InlineData("L", "length", "a length")]
    [InlineData("A", "angle", "an angle")]
    public void A_dimension_has_its_article(string which, string name, string withArticle)
    {
        var dimension = which == "L" ? Dimension.OfLength : Dimension.OfAngle;

        Assert.Equal((name, withArticle), (dimension.Name, dimension.NameWithArticle));
    }

    [Fact]
    public void Dimensions_have_everyday_names_each_its_own()
    {
        var names = Units.All.Select(unit => unit.Dimension).Distinct().Select(dimension => dimension.Name).ToArray();

        Assert.Equal(names.Length, names.Distinct().Count());
        Assert.All(names, name => Assert.DoesNotContain('·', name));
        Assert.Equal("torsional stiffness", Parse.Unit("N·m/rad").Dimension.Name);
        Assert.Equal("dynamic viscosity", Parse.Unit("Pa·s").Dimension.Name);
        Assert.Equal("temperature", Dimension.OfTemperature.Name);
        Assert.Equal("length⁷·time⁻²", new Dimension(Length: 7, Time: -2).Name);
        Assert.Equal("length⁻¹²⁷", new Dimension(Length: -1).Power(1000).Name);
    }

    [Theory]
    [InlineData("moduel", "module")]
    [InlineData("teeht", "teeth")]
    [InlineData("TEETH", "teeth")]
    [InlineData("face_widht", "face_width")]
    [InlineData("bore", null)]
    [InlineData("", null)]
    public void The_nearest_word_is_found(string written, string? nearest) =>
        Assert.Equal(nearest, Nearest.To(written, ["teeth", "module", "face_width", "profile_shift"]));

    [Theory]
    [InlineData("least_backlash", "min_backlash")]
    [InlineData("minimum_backlash", "min_backlash")]
    [InlineData("greatest_backlash", "max_backlash")]
    [InlineData("maximum_backlsh", "max_backlash")]
    [InlineData("most", "max")]
    [InlineData("min_speed", null)]
    public void A_minimum_is_never_proposed_for_a_maximum(string written, string? nearest) =>
        Assert.Equal(nearest, Nearest.To(written, ["max_backlash", "min_backlash", "max_speed", "max"]));

    [Fact]
    public void Of_equally_near_words_the_first_is_taken() => Assert.Equal("abd", Nearest.To("abc", ["abd", "abe", "xbc"]));
}
