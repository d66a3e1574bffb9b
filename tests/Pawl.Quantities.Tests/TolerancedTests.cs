namespace Pawl.Quantities.Tests;

public class TolerancedTests
{
    [Theory]
    [InlineData("3.53 mm ±0.10", 3.53, -0.10, 0.10)]
    [InlineData("3.53 mm ±0.10 mm", 3.53, -0.10, 0.10)]
    [InlineData("3.53 ±0.10 mm", 3.53, -0.10, 0.10)]
    [InlineData("3.53 mm ± 100 µm", 3.53, -0.10, 0.10)]
    [InlineData("3.53mm±0.10", 3.53, -0.10, 0.10)]
    [InlineData("3.53 mm +/-0.10", 3.53, -0.10, 0.10)]
    [InlineData("3.53 mm +-0.10", 3.53, -0.10, 0.10)]
    [InlineData("3.53 mm ±0", 3.53, 0, 0)]
    [InlineData("25 mm +0.021/-0.000", 25, 0, 0.021)]
    [InlineData("25 mm +0.021/0", 25, 0, 0.021)]
    [InlineData("25 mm+0.021/0", 25, 0, 0.021)]
    [InlineData("25 mm -0.007/-0.020", 25, -0.020, -0.007)]
    [InlineData("25 mm −0.007/−0.020", 25, -0.020, -0.007)]
    [InlineData("25 mm-0.007/-0.020", 25, -0.020, -0.007)]
    [InlineData("25 mm 0/-0.1", 25, -0.1, 0)]
    [InlineData("25 0/-0.1 mm", 25, -0.1, 0)]
    [InlineData("25 mm +0.05 / +0.01 mm", 25, 0.01, 0.05)]
    [InlineData("25 mm +21 µm/0", 25, 0, 0.021)]
    [InlineData("25 mm +21/-5 µm", 25, -0.005, 0.021)]
    [InlineData("1 in +0.001/0", 25.4, 0, 0.0254)]
    [InlineData("1-1/2 in ±1/64 in", 38.1, -25.4 / 64, 25.4 / 64)]
    [InlineData("2.90 mm (2.85..2.95)", 2.90, -0.05, 0.05)]
    [InlineData("2.90 mm (2.85...2.95 mm)", 2.90, -0.05, 0.05)]
    [InlineData("2.90 mm(2.85…2.95)", 2.90, -0.05, 0.05)]
    [InlineData("2.90 mm ( 2.85 to 2.95 )", 2.90, -0.05, 0.05)]
    [InlineData("2.90 (2.85..2.95 mm)", 2.90, -0.05, 0.05)]
    [InlineData("2.90 mm (2.95..3.05)", 2.90, 0.05, 0.15)]
    [InlineData("60 kN ±5 %", 60_000, -3000, 3000)]
    [InlineData("60 kN +10 %/-5 %", 60_000, -3000, 6000)]
    [InlineData("-60 kN ±5 %", -60_000, -3000, 3000)]
    [InlineData("1.25 ±4 %", 1.25, -0.05, 0.05)]
    [InlineData("15 % ±2 %", 0.15, -0.02, 0.02)]
    [InlineData("15 % ±2", 0.15, -0.02, 0.02)]
    [InlineData("80 °C ±5", 80, -5, 5)]
    [InlineData("80 °C ±5 K", 80, -5, 5)]
    [InlineData("80 ±5 °C", 80, -5, 5)]
    [InlineData("80 °C (75..90)", 80, -5, 10)]
    [InlineData("80 °C (75 °C..90 °C)", 80, -5, 10)]
    [InlineData("212 °F ±9", 100, -5, 5)]
    [InlineData("212 °F ±9 °F", 100, -5, 5)]
    [InlineData("212 °F ±9 Δ°F", 100, -5, 5)]
    [InlineData("212 °F ±5 K", 100, -5, 5)]
    [InlineData("212 °F (203..221)", 100, -5, 5)]
    [InlineData("212 °F (95 °C..105 °C)", 100, -5, 5)]
    [InlineData("5200 1/min ±10 1/min", 5200 * Math.PI / 30, -Math.PI / 3, Math.PI / 3)]
    [InlineData("5000 min-1 +10/-10", 5000 * Math.PI / 30, -Math.PI / 3, Math.PI / 3)]
    [InlineData("150 lbf · ft ±0", 150 * 1355.8179483314004, 0, 0)]
    [InlineData("4 fl oz ±0", 4 * 29573.5295625, 0, 0)]
    [InlineData("20° ±0°30′", 20 * Math.PI / 180, -Math.PI / 360, Math.PI / 360)]
    [InlineData("20° 30′ ±30′", 20.5 * Math.PI / 180, -Math.PI / 360, Math.PI / 360)]
    [InlineData("VG 100 ±10 %", 100, -10, 10)]
    public void Deviations_and_limits_are_read_in_coherent_units(string text, double nominal, double lower, double upper)
    {
        var dimension = Parse.Toleranced(text);

        var deviations = Assert.IsType<Tolerance.Deviations>(dimension.Tolerance);
        Assert.Equal(nominal, dimension.Nominal.Coherent, tolerance: 1e-12 * Math.Abs(nominal));
        Assert.Equal(lower, deviations.Lower, tolerance: 1e-12 * Math.Abs(lower));
        Assert.Equal(upper, deviations.Upper, tolerance: 1e-12 * Math.Abs(upper));
    }

    [Fact]
    public void Limits_give_the_deviations_of_the_paper_not_of_binary_numbers() =>
        Assert.Equal(new Tolerance.Deviations(-0.05, 0.05), Parse.Toleranced("2.90 mm (2.85..2.95)").Tolerance);

    [Fact]
    public void A_deviation_of_minus_zero_is_zero()
    {
        var deviations = Assert.IsType<Tolerance.Deviations>(Parse.Toleranced("25 mm +0.021/-0.000").Tolerance);

        Assert.False(double.IsNegative(deviations.Lower));
    }

    [Theory]
    [InlineData("60 mm H7", "H", 7, "H7")]
    [InlineData("60 mm js6", "js", 6, "js6")]
    [InlineData("60 mm JS7", "JS", 7, "JS7")]
    [InlineData("60mm h0", "h", 0, "h0")]
    [InlineData("60 mm h01", "h", -1, "h01")]
    [InlineData("60 mm ZC18", "ZC", 18, "ZC18")]
    [InlineData("2.5 in cd10", "cd", 10, "cd10")]
    public void A_tolerance_class_is_read(string text, string letters, int grade, string written)
    {
        var tolerance = Assert.IsType<Tolerance.ToleranceClass>(Parse.Toleranced(text).Tolerance);

        Assert.Equal(new Tolerance.ToleranceClass(letters, grade), tolerance);
        Assert.Equal(written, tolerance.ToString());
    }

    [Theory]
    [InlineData("25 mm H7/g6")]
    [InlineData("25 mm H7 / g6")]
    public void A_fit_is_read_hole_first(string text) => Assert.Equal(
        new Tolerance.Fit(new("H", 7), new("g", 6)), Parse.Toleranced(text).Tolerance);

    [Theory]
    [InlineData("60 mm")]
    [InlineData("60")]
    [InlineData("1-1/2 in")]
    [InlineData("20° 30′")]
    [InlineData("12 W/(m·K)")]
    public void Without_a_tolerance_the_general_one_applies(string text) =>
        Assert.Same(Tolerance.General.Instance, Parse.Toleranced(text).Tolerance);

    // ISO 286-1, fundamental deviations A to ZC and a to zc (28 each), grades IT01 to IT18; from memory.
    [Fact]
    public void Exactly_the_letters_of_ISO_286_are_fundamental_deviations()
    {
        string[] published =
            ["A", "B", "C", "CD", "D", "E", "EF", "F", "FG", "G", "H", "J", "JS", "K", "M", "N", "P", "R", "S", "T", "U", "V",
             "X", "Y", "Z", "ZA", "ZB", "ZC"];
        var letters = Enumerable.Range('A', 26).Concat(Enumerable.Range('a', 26)).Select(c => ((char)c).ToString()).ToArray();
        var tried = letters.Concat(letters.SelectMany(a => letters.Select(b => a + b)));

        var taken = tried.Where(written => Toleranced.TryParse($"60 mm {written}7", out _, out _)).ToHashSet();

        Assert.Equal(published.Concat(published.Select(l => l.ToLowerInvariant())).ToHashSet(), taken);
    }

    [Theory]
    [InlineData("60 mm Q7", NotationErrorKind.MalformedTolerance, 6, 1, "ISO 286 has A to ZC for holes and a to zc for shafts, without I, L, O, Q and W.")]
    [InlineData("60 mm Js6", NotationErrorKind.MalformedTolerance, 6, 2, "Write JS for a hole or js for a shaft.")]
    [InlineData("60 mm IT7", NotationErrorKind.MalformedTolerance, 6, 2, "A grade alone has no position: write H7, h7 or js7.")]
    [InlineData("60 mm H19", NotationErrorKind.MalformedTolerance, 7, 2, "The grades are 01, 0 and 1 to 18.")]
    [InlineData("60 mm H07", NotationErrorKind.MalformedTolerance, 7, 2, null)]
    [InlineData("60 mm H", NotationErrorKind.MalformedTolerance, 7, 0, null)]
    [InlineData("60 mm H7 x", NotationErrorKind.MalformedTolerance, 9, 1, "End the dimension after H7.")]
    [InlineData("25 mm g6/H7", NotationErrorKind.MalformedTolerance, 6, 5, "Write H7/g6: the hole comes first.")]
    [InlineData("25 mm H7/H6", NotationErrorKind.MalformedTolerance, 6, 5, null)]
    [InlineData("25 mm H7/", NotationErrorKind.MalformedTolerance, 9, 0, null)]
    [InlineData("60 H7", NotationErrorKind.MissingUnit, 0, 2, "Which fit: 60 mm H7, 60 µm H7, 60 in H7, 60 m H7.")]
    [InlineData(" 104.4 h9 ", NotationErrorKind.MissingUnit, 1, 5, "Which fit: 104.4 mm h9, 104.4 µm h9, 104.4 in h9, 104.4 m h9.")]
    [InlineData("60 H7/g6", NotationErrorKind.MissingUnit, 0, 2, null)]
    [InlineData("60h6", NotationErrorKind.MissingUnit, 0, 2, null)]
    [InlineData("1 H7", NotationErrorKind.MissingUnit, 0, 1, null)]
    [InlineData("60 N H7", NotationErrorKind.ToleranceNotAllowed, 5, 2, null)]
    [InlineData("25 mm +0.1", NotationErrorKind.MalformedTolerance, 6, 4, "Write both deviations: +0.1/0.")]
    [InlineData("25 mm -0.1", NotationErrorKind.MalformedTolerance, 6, 4, "Write both deviations: 0/-0.1.")]
    [InlineData("25 mm -0.1/+0.2", NotationErrorKind.MalformedTolerance, 6, 9, "Write +0.2/-0.1.")]
    [InlineData("25 mm 0.2/0.1", NotationErrorKind.MalformedTolerance, 6, 3, "Write +0.2 or -0.2.")]
    [InlineData("25 mm +0.2/", NotationErrorKind.MalformedTolerance, 11, 0, null)]
    [InlineData("25 mm ±-0.1", NotationErrorKind.MalformedTolerance, 7, 4, null)]
    [InlineData("25 mm ±", NotationErrorKind.MalformedTolerance, 7, 0, null)]
    [InlineData("25 mm ±0,1", NotationErrorKind.NotANumber, 8, 1, "Write 0.1.")]
    [InlineData("25 mm ±NaN", NotationErrorKind.NotFinite, 7, 3, null)]
    [InlineData("25 mm ±0.1 N", NotationErrorKind.MalformedTolerance, 7, 5, null)]
    [InlineData("25 mm ±0.1 mn", NotationErrorKind.UnknownUnit, 11, 2, null)]
    [InlineData("25 mn ±0.1", NotationErrorKind.UnknownUnit, 3, 2, null)]
    [InlineData("2.90 mm (2.95..2.85)", NotationErrorKind.MalformedTolerance, 8, 12, "Write (2.85..2.95).")]
    [InlineData("2.90 mm (2.85-2.95)", NotationErrorKind.MalformedTolerance, 8, 11, "Write limits as in (2.85..2.95).")]
    [InlineData("2.90 mm (2.85..2.95", NotationErrorKind.MalformedTolerance, 8, 11, null)]
    [InlineData("2.90 mm (..2.95)", NotationErrorKind.NotANumber, 9, 6, null)]
    [InlineData("2.90 mm (2.85..2.95) x", NotationErrorKind.MalformedTolerance, 21, 1, null)]
    [InlineData("2.90 mm 3", NotationErrorKind.MalformedTolerance, 8, 1, null)]
    [InlineData("80 °C ±5 %", NotationErrorKind.ToleranceNotAllowed, 7, 3, "Write the deviation as in ±5 K.")]
    [InlineData("80 °C (75 K..85 K)", NotationErrorKind.MalformedTolerance, 7, 4, null)]
    [InlineData("60 mm #", NotationErrorKind.MalformedTolerance, 6, 1, null)]
    public void What_is_no_tolerance_is_told_where_and_what_instead(
        string text, NotationErrorKind kind, int start, int length, string? hint)
    {
        var error = Parse.NotToleranced(text);

        Assert.Equal((kind, start, length), (error.Kind, error.Start, error.Length));
        if (hint is not null) Assert.Equal(hint, error.Hint);
    }

    [Fact]
    public void What_an_error_tells_to_write_for_swapped_deviations_is_right()
    {
        foreach (var text in new[] { "-0.1/+0.2", "(2.95..2.85)", "g6/H7", "-10 µm/+0.2 mm" })
        {
            var hint = Parse.NotToleranced($"2.90 mm {text}").Hint;
            Assert.NotNull(hint);
            Parse.Toleranced($"2.90 mm {hint["Write ".Length..].Split(':')[0].TrimEnd('.')}");
        }
    }
}
