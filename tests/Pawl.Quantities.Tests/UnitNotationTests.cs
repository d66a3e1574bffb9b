using System.Globalization;
using CsCheck;

namespace Pawl.Quantities.Tests;

public class UnitNotationTests
{
    [Theory]
    [InlineData("Nm", "N·m")]
    [InlineData("N.m", "N·m")]
    [InlineData("N*m", "N·m")]
    [InlineData("N × m", "N·m")]
    [InlineData("N ⋅ m", "N·m")]
    [InlineData("ft·lbf", "lbf·ft")]
    [InlineData("lbf*ft", "lbf·ft")]
    [InlineData("ft-lb", "lbf·ft")]
    [InlineData("lb·ft", "lbf·ft")]
    [InlineData("in·lb", "lbf·in")]
    [InlineData("\"", "in")]
    [InlineData("um", "µm")]
    [InlineData("μm", "µm")] // Greek mu
    [InlineData("µm", "µm")] // micro sign
    [InlineData("deg", "°")]
    [InlineData("'", "′")]
    [InlineData("degC", "°C")]
    [InlineData("ºF", "°F")]
    [InlineData("∆°C", "Δ°C")]
    [InlineData("delta_degF", "Δ°F")]
    [InlineData("r/min", "rpm")]
    [InlineData("rev/min", "rpm")]
    [InlineData("rev·min^-1", "rpm")]
    [InlineData("min⁻¹", "1/min")]
    [InlineData("min^-1", "1/min")]
    [InlineData("min-1", "1/min")]
    [InlineData("/min", "1/min")]
    [InlineData("s⁻¹", "1/s")]
    [InlineData("mm^2", "mm²")]
    [InlineData("mm2", "mm²")]
    [InlineData("mm2/s", "mm²/s")]
    [InlineData("N/mm^2", "N/mm²")]
    [InlineData("N·mm⁻²", "N/mm²")]
    [InlineData("kg/m^3", "kg/m³")]
    [InlineData("µm/m/K", "µm/(m·K)")]
    [InlineData("W/(m*K)", "W/(m·K)")]
    [InlineData("W·m^-1·K^-1", "W/(m·K)")]
    [InlineData("W / ( m · K )", "W/(m·K)")]
    [InlineData("J/kg/K", "J/(kg·K)")]
    [InlineData("Nm/arcmin", "N·m/′")]
    [InlineData("(N)*((m))", "N·m")]
    [InlineData("fl oz", "fl oz")]
    public void A_spelling_comes_back_as_the_canonical_symbol(string written, string symbol) =>
        Assert.Equal(symbol, Parse.Unit(written).Symbol);

    [Theory]
    [InlineData("W/m·K", "a product after a solidus needs parentheses, ISO 80000-1")]
    [InlineData("MN m", "a blank is no product")]
    [InlineData("N·", "nothing after the product")]
    [InlineData("·m", "nothing before the product")]
    [InlineData("N··m", "two operators")]
    [InlineData("(N·m", "open parenthesis")]
    [InlineData("N·m)", "stray parenthesis")]
    [InlineData("()", "nothing inside")]
    [InlineData("mm^", "power missing")]
    [InlineData("mm^0", "power of zero")]
    [InlineData("mm^13", "absurd power")]
    [InlineData("mm⁻", "raised minus alone")]
    [InlineData("(mm^4)^4", "absurd power in two steps")]
    [InlineData("Nm²", "N·m² or (N·m)²")]
    [InlineData("h6", "a tolerance class")]
    [InlineData("mm·1", "a number in the middle")]
    [InlineData("1", null)]
    [InlineData("J", "energy is not asked for anywhere; alone it is a mistake for a torque")]
    [InlineData("Mm", "case counts")]
    [InlineData("kn", "case counts")]
    [InlineData("furlong", "no unit of the trade")]
    public void What_is_built_wrongly_is_no_unit(string written, string? because)
    {
        if (because is null) Assert.Same(Units.One, Parse.Unit(written));
        else Assert.False(Units.TryParse(written, out _), because);
    }

    [Fact]
    public void A_rotation_is_told_from_a_frequency()
    {
        Assert.Equal(Dimension.OfAngularSpeed, Parse.Unit("1/min").Dimension);
        Assert.Equal(Dimension.OfAngularSpeed, Parse.Unit("rpm").Dimension);
        Assert.Equal(Dimension.OfFrequency, Parse.Unit("1/s").Dimension);
        Assert.Equal(Dimension.OfFrequency, Parse.Unit("Hz").Dimension);
    }

    [Fact]
    public void A_point_on_a_scale_is_told_from_a_difference()
    {
        Assert.True(Parse.Unit("°F").Dimension.IsPoint);
        Assert.Equal(Dimension.OfTemperatureDifference, Parse.Unit("Δ°F").Dimension);
        Assert.Equal(Dimension.OfTemperatureDifference, Parse.Unit("K").Dimension);

        var perFahrenheit = Parse.Unit("W/(m·°F)");
        Assert.False(perFahrenheit.Dimension.IsPoint);
        Assert.Equal(0, perFahrenheit.Offset);
        Assert.Equal(1.8, perFahrenheit.Factor, tolerance: 1e-14);
    }

    [Fact]
    public void The_dimension_of_a_product_is_the_product_of_dimensions()
    {
        // lb·ft and oz·in are torques by the habit of the trade.
        var units = Gen.OneOf(Units.All.Where(unit => unit.Symbol.Length > 0 && unit.Symbol is not ("fl oz" or "lb" or "oz")
            && !unit.Symbol.AsSpan().ContainsAny("·/²³")).ToArray());

        Gen.Select(units, units).Sample((a, b) =>
        {
            var product = Parse.Unit($"{a.Symbol}*{b.Symbol}");
            var quotient = Parse.Unit($"{a.Symbol}/{b.Symbol}");
            return product.Dimension == a.Dimension * b.Dimension && IsNear(product.Factor, a.Factor * b.Factor)
                && quotient.Dimension == a.Dimension / b.Dimension && IsNear(quotient.Factor, a.Factor / b.Factor);
        });

        static bool IsNear(double a, double b) => Math.Abs(a - b) <= 1e-14 * b;
    }

    [Fact]
    public void The_symbol_of_any_compound_reads_back_as_the_same_unit()
    {
        var name = Gen.OneOf("mm", "N", "lbf", "ft", "°C", "Nm", "fpm", "µin", "rad", "%", "J", "kg", "min");
        // Three squares of a force stay within the twelfth power of time, the highest that is read.
        var power = Gen.OneOf("", "²", "^-1", "^2", "⁻²");
        var factor = Gen.Select(name, power, (n, p) => n + (n is "Nm" or "fpm" ? "" : p));
        var compound = Gen.Select(factor, factor, factor, Gen.OneOf("·", "/"), Gen.Bool, (a, b, c, op, nested) =>
            nested ? $"{a}/({b}{op}{c})" : $"{a}{op}{b}/{c}");

        compound.Sample(text =>
        {
            if (!Units.TryParse(text, out var unit)) return text.Contains('J');
            var again = Parse.Unit(unit.Symbol);
            return again.Symbol == unit.Symbol && again.Dimension == unit.Dimension
                && Math.Abs((again.Factor / unit.Factor) - 1) < 1e-13;
        });
    }

    [Fact]
    public void The_store_of_compounds_is_bounded_and_full_or_not_reads_the_same()
    {
        for (var i = 0; i < 4000; i++)
        {
            var text = $"mm^{1 + (i % 4)}·N^{1 + (i / 4 % 4)}·K^{1 + (i / 16 % 4)}·s^{1 + (i / 64 % 4)}"
                + $"·rad^{1 + (i / 256 % 4)}·g^{1 + (i / 1024)}";
            var unit = Parse.Unit(text);
            Assert.Equal(1 + (i / 4 % 4) + (i / 1024) + 1, unit.Dimension.Mass);
        }

        Assert.InRange(UnitText.CompoundsKept, 1, 256);
    }

    [Fact]
    public void Many_threads_read_the_same_compounds()
    {
        Parallel.For(0, 20_000, i =>
        {
            var power = (i % 10) + 2;
            Assert.Equal(power, Parse.Unit(string.Create(CultureInfo.InvariantCulture, $"thou^{power}·µrad")).Dimension.Length);
        });
    }

    [Theory]
    [InlineData("rmp", "rpm")]
    [InlineData("MM", "mm")]
    [InlineData("kn", "kN")]
    [InlineData("mn", "mN")]
    [InlineData("mPA", "MPa")]
    [InlineData("Nmn", "N·m")]
    [InlineData("inchs", "in")]
    [InlineData("lbf*fd", "lbf·ft")]
    [InlineData("xyzzy", null)]
    [InlineData("", null)]
    public void The_nearest_symbol_is_offered(string written, string? nearest) => Assert.Equal(nearest, Units.Nearest(written));
}
