using System.Text.RegularExpressions;
using CsCheck;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Schema;

namespace Pawl.Specs.Tests.Schema;

/// <summary>The patterns of the schemas against the parser of quantities: two ways to tell what a text measures.</summary>
public sealed class QuantityPatternTests
{
    private static readonly string[] Numbers = ["24", "0.5", ".5", "-3.25", "−7", "+1", "1e3", "2.5e-3", "007"];

    /// <summary>The dimensions that keys of specs, catalogues and adapters measure.</summary>
    private static readonly Dimension[] Dimensions =
    [
        .. typeof(GearboxSpec).Assembly.GetTypes().SelectMany(type => type.GetProperties())
            .Select(property => (MeasuresAttribute?)Attribute.GetCustomAttribute(property, typeof(MeasuresAttribute)))
            .OfType<MeasuresAttribute>().Select(measures => measures.Dimension).Distinct()
            .Select(name => (Dimension)typeof(Dimension).GetField(name)!.GetValue(null)!),
    ];

    [Fact]
    public void Every_spelling_of_every_unit_matches_its_own_dimension_and_no_other()
    {
        foreach (var (dimension, pattern) in Patterns())
        {
            foreach (var (_, spelling) in Units.Spellings())
            {
                foreach (var text in Numbers.Select(number => $"{number} {spelling}"))
                {
                    var isOfIt = Amount.TryParse(text, out var amount, out _) && amount.Dimension == dimension;
                    Assert.True(isOfIt == pattern.IsMatch(text), $"{dimension}: {text}");
                }
            }
        }
    }

    [Theory]
    [InlineData("190 N.m")]
    [InlineData("190 N × m")]
    [InlineData("190N*m")]
    [InlineData("1 1/2 in")]
    [InlineData("1/2\"")]
    [InlineData("-1/2 ft")]
    [InlineData("1/2 mm")]
    [InlineData("9/5")]
    [InlineData("1/2 N·m")]
    [InlineData("20° 30′ 15″")]
    [InlineData("-20°30'")]
    [InlineData("30’ 10”")]
    [InlineData("VG 100")]
    [InlineData("ISO VG 46")]
    [InlineData("20 W/(m² K)")]
    [InlineData("20 W/(m²·K)")]
    [InlineData("12 1/K")]
    [InlineData(" 5 µm ")]
    [InlineData("5 μm")]
    [InlineData("24 apples")]
    [InlineData("24 mm apples")]
    [InlineData("24,5 mm")]
    [InlineData("1 000 mm")]
    [InlineData("mm")]
    [InlineData("24")]
    [InlineData("24 mm H7")]
    public void Ways_to_write_an_amount_match_where_the_parser_takes_them(string text)
    {
        var isAmount = Amount.TryParse(text, out var amount, out _);
        foreach (var (dimension, pattern) in Patterns())
            Assert.True((isAmount && amount.Unit.Symbol.Length > 0 && amount.Dimension == dimension) == pattern.IsMatch(text), $"{dimension}: {text}");
    }

    // What a compound measures that is in no table, a pattern cannot tell.
    [Theory]
    [InlineData("0.19 kN·m")]
    [InlineData("3 kgf/cm²")]
    [InlineData("3 kgf/cm^2")]
    [InlineData("3 lbf/ft2")]
    [InlineData("20 W / ( m2 * K )")]
    [InlineData("12 K^-1")]
    [InlineData("12 K⁻¹")]
    [InlineData("0.1 mm/m")]
    [InlineData("7 kg·m/s²")]
    [InlineData("7 (kN·mm)/m")]
    [InlineData("3 /s")]
    public void Compounds_match_where_the_parser_takes_them(string text)
    {
        Assert.True(Amount.TryParse(text, out var amount, out _));
        foreach (var (dimension, pattern) in Patterns().Where(each => each.Dimension == amount.Dimension))
            Assert.True(pattern.IsMatch(text), $"{dimension}: {text}");
        foreach (var simple in (Dimension[])[Dimension.OfLength, Dimension.OfMass, Dimension.OfTime, Dimension.OfAngle, Dimension.OfTemperature])
            Assert.DoesNotMatch(QuantityPatterns.Of(simple, toleranced: false), text);
    }

    [Theory]
    [InlineData("24 mm")]
    [InlineData("24mm±0.1")]
    [InlineData("24 mm ±0.1")]
    [InlineData("24 mm +/-0.1")]
    [InlineData("24 ±0.1 mm")]
    [InlineData("24 mm ±0.1 mm")]
    [InlineData("24 mm ±5 %")]
    [InlineData("24 mm +0.021/0")]
    [InlineData("24 mm +0.021 / -0.01")]
    [InlineData("24 mm 0/-0.1")]
    [InlineData("24 0/-0.1 mm")]
    [InlineData("24 +0.1/0 mm")]
    [InlineData("24 mm +5 µm/-2 µm")]
    [InlineData("24 mm (23.9..24.1)")]
    [InlineData("24 (23.9..24.1 mm)")]
    [InlineData("24 (23.9 mm..24.1)")]
    [InlineData("24 mm (23.9 to 24.1)")]
    [InlineData("24 mm(23.9…24.1)")]
    [InlineData("24 mm H7")]
    [InlineData("24 mm js6")]
    [InlineData("24 mm H7/g6")]
    [InlineData("1 1/2 in ±0.01")]
    [InlineData("1-1/2\" ±0.01")]
    [InlineData("1/2 ±0.01 in")]
    [InlineData("1/2 mm H7")]
    [InlineData("2.5 in +0.001/0")]
    [InlineData("24 apples")]
    [InlineData("24 apples H7")]
    [InlineData("24 kg ±0.1")]
    [InlineData("24 N·mm")]
    [InlineData("24 m/s")]
    [InlineData("24 ±0.1")]
    [InlineData("24 ±0.1 kg")]
    [InlineData("24 ±0.1 m/s")]
    [InlineData("H7")]
    [InlineData("±0.1 mm")]
    public void Ways_to_write_a_tolerance_match_where_the_parser_takes_them(string text)
    {
        var pattern = new Regex(QuantityPatterns.Of(Dimension.OfLength, toleranced: true), RegexOptions.CultureInvariant);
        var isLength = Toleranced.TryParse(text, out var size, out _) && size.Nominal.Dimension == Dimension.OfLength;
        if (isLength)
            Assert.Matches(pattern, text);
        else
            Assert.DoesNotMatch(pattern, text);
    }

    [Fact]
    public void The_sign_is_that_of_the_value()
    {
        foreach (var sign in (string[])["", "-", "+", "−"])
        {
            foreach (var number in (string[])["0", "0.0", "00", "3", "0.5", ".25", "1e3", "0e5", "2.5e-7", "1/2", "1 1/2"])
            {
                foreach (var unit in (string[])["in", " in", " in ±0.1"])
                {
                    var text = sign + number + unit;
                    Assert.True(Toleranced.TryParse(text, out var size, out _), text);
                    var value = size.Nominal.Value;
                    Assert.True(Matches(QuantityPatterns.Positive, text) == value > 0, $"{text} positive");
                    Assert.True(Matches(QuantityPatterns.NotNegative, text) == value >= 0, $"{text} zero or more");
                    Assert.True(Matches(QuantityPatterns.NotPositive, text) == value <= 0, $"{text} zero or less");
                }
            }
        }

        static bool Matches((string Name, string Pattern) pattern, string text) => Regex.IsMatch(text, pattern.Pattern, RegexOptions.CultureInvariant);
    }

    // Nothing that a reader takes may be refused by a schema.
    [Fact]
    public void What_is_put_together_from_the_pieces_of_notation_matches_where_the_parser_takes_it()
    {
        string[] pieces =
        [
            "24", "0.5", "1/2", "1 1/2", "-", "+", "±", "/", "(23.9..24.1)", "(23 to 25 mm)", " ", "mm", "in", "\"", "µm", "ft", "H7", "js6", "H7/g6", "%", "°", "′", "″", "m²", "N", "kN", "·m", "1/min", "rpm", "0", "+0.1", "-0.2", "±0.05", "5 %", "°C",
        ];
        var patterns = Patterns().ToDictionary(each => each.Dimension, each => each.Pattern);
        var toleranced = new Regex(QuantityPatterns.Of(Dimension.OfLength, toleranced: true), RegexOptions.CultureInvariant);
        var taken = 0;
        Gen.Int[0, pieces.Length - 1].Array[1, 7].Sample(
            choices =>
            {
                var text = string.Concat(choices.Select(choice => pieces[choice]));
                if (Amount.TryParse(text, out var amount, out _) && amount.Unit.Symbol.Length > 0 && IsSensible(amount) && patterns.TryGetValue(amount.Dimension, out var pattern))
                {
                    Interlocked.Increment(ref taken);
                    Assert.True(pattern.IsMatch(text), $"{amount.Dimension}: {text}");
                }

                if (Toleranced.TryParse(text, out var size, out _) && IsSensible(size.Nominal) && size.Nominal.Dimension == Dimension.OfLength)
                    Assert.True(toleranced.IsMatch(text), text);
            },
            iter: 200_000);
        Assert.True(taken > 1000, $"Only {taken} amounts among them.");

        // A length in %·m is nothing that a schema must know.
        static bool IsSensible(Amount amount) => amount.Unit.Symbol.Length == 0 || Units.All.Any(unit => unit.Symbol == amount.Unit.Symbol);
    }

    private static IEnumerable<(Dimension Dimension, Regex Pattern)> Patterns() =>
        Dimensions.Select(dimension => (dimension, new Regex(QuantityPatterns.Of(dimension, toleranced: false), RegexOptions.CultureInvariant)));
}
