using Pawl.Mechanics.Fits;

namespace Pawl.Mechanics.Tests.Fits;

public class Iso286Tests
{
    // ISO 286-2 classes in everyday use, µm; from memory, the values any fit table prints.
    [Theory]
    [InlineData("H", 7, 25, 0, 21)]
    [InlineData("g", 6, 25, -20, -7)]
    [InlineData("k", 6, 40, 2, 18)]
    [InlineData("p", 6, 40, 26, 42)]
    [InlineData("N", 7, 50, -33, -8)]
    [InlineData("K", 7, 80, -21, 9)]
    [InlineData("P", 7, 50, -42, -17)]
    [InlineData("s", 6, 20, 35, 48)]
    [InlineData("J", 7, 62, -12, 18)]
    [InlineData("f", 7, 60, -60, -30)]
    [InlineData("u", 6, 25, 48, 61)]
    [InlineData("m", 6, 50, 9, 25)]
    [InlineData("n", 6, 16, 12, 23)]
    [InlineData("R", 7, 40, -50, -25)]
    [InlineData("N", 7, 72, -39, -9)]
    [InlineData("j", 6, 30, -4, 9)]
    [InlineData("r", 6, 100, 51, 73)]
    [InlineData("M", 6, 280, -41, -9)]
    [InlineData("h", 6, 25, -13, 0)]
    [InlineData("js", 6, 30, -6.5, 6.5)]
    [InlineData("JS", 7, 30, -10.5, 10.5)]
    public void Everyday_classes_match_ISO_286_2(string letters, int grade, double size, double lower, double upper) =>
        Matches(letters, grade, size, lower, upper);

    // Textbook example of a hub press-fitted at 50 mm H7/s6: hub +0.025/0, shaft +0.059/+0.043 (a machine design textbook's data).
    [Fact]
    public void A_textbooks_press_fit_matches()
    {
        Matches("H", 7, 50, 0, 25);
        Matches("s", 6, 50, 43, 59);
    }

    // JIS B 0401:1999, the same values as ISO 286-2; tables of shafts in everyday use, reprinted on a public page. µm, upper/lower.
    [Theory]
    [InlineData(3, "d8 -20 -34; d9 -20 -45; e7 -14 -24; e8 -14 -28; e9 -14 -39; f6 -6 -12; f7 -6 -16; f8 -6 -20; g5 -2 -6; g6 -2 -8; k5 4 0; k6 6 0; m5 6 2; m6 8 2; n6 10 4; p6 12 6; r6 16 10; s6 20 14; u6 24 18")]
    [InlineData(6, "d8 -30 -48; d9 -30 -60; e7 -20 -32; e8 -20 -38; e9 -20 -50; f6 -10 -18; f7 -10 -22; f8 -10 -28; g5 -4 -9; g6 -4 -12; k5 6 1; k6 9 1; m5 9 4; m6 12 4; n6 16 8; p6 20 12; r6 23 15; s6 27 19; u6 31 23")]
    [InlineData(10, "d8 -40 -62; d9 -40 -76; e7 -25 -40; e8 -25 -47; e9 -25 -61; f6 -13 -22; f7 -13 -28; f8 -13 -35; g5 -5 -11; g6 -5 -14; k5 7 1; k6 10 1; m5 12 6; m6 15 6; n6 19 10; p6 24 15; r6 28 19; s6 32 23; u6 37 28")]
    [InlineData(18, "d8 -50 -77; d9 -50 -93; e7 -32 -50; e8 -32 -59; e9 -32 -75; f6 -16 -27; f7 -16 -34; f8 -16 -43; g5 -6 -14; g6 -6 -17; k5 9 1; k6 12 1; m5 15 7; m6 18 7; n6 23 12; p6 29 18; r6 34 23; s6 39 28; u6 44 33")]
    [InlineData(24, "d8 -65 -98; d9 -65 -117; e7 -40 -61; e8 -40 -73; e9 -40 -92; f6 -20 -33; f7 -20 -41; f8 -20 -53; g5 -7 -16; g6 -7 -20; k5 11 2; k6 15 2; m5 17 8; m6 21 8; n6 28 15; p6 35 22; r6 41 28; s6 48 35; u6 54 41")]
    [InlineData(30, "u6 61 48; s6 48 35")]
    [InlineData(40, "d8 -80 -119; d9 -80 -142; e7 -50 -75; e8 -50 -89; e9 -50 -112; f6 -25 -41; f7 -25 -50; f8 -25 -64; g5 -9 -20; g6 -9 -25; k5 13 2; k6 18 2; m5 20 9; m6 25 9; n6 33 17; p6 42 26; r6 50 34; s6 59 43; u6 76 60")]
    [InlineData(50, "u6 86 70; s6 59 43")]
    [InlineData(65, "d8 -100 -146; d9 -100 -174; e7 -60 -90; e8 -60 -106; e9 -60 -134; f6 -30 -49; f7 -30 -60; f8 -30 -76; g5 -10 -23; g6 -10 -29; k5 15 2; k6 21 2; m5 24 11; m6 30 11; n6 39 20; p6 51 32; r6 60 41; s6 72 53; u6 106 87")]
    [InlineData(80, "r6 62 43; s6 78 59; u6 121 102")]
    public void Shafts_match_a_reprint_of_the_table(double size, string classes) => MatchesAll(size, classes);

    // Tables of holes reprinted on a public page from ISO 286-2 values. µm, upper/lower.
    [Theory]
    [InlineData(3, "J6 2 -4; J7 4 -6; J8 6 -8; K6 0 -6; K7 0 -10; K8 0 -14; M6 -2 -8; M7 -2 -12; N6 -4 -10; N7 -4 -14; N8 -4 -18; R7 -10 -20")]
    [InlineData(6, "J6 5 -3; J7 6 -6; J8 10 -8; K6 2 -6; K7 3 -9; K8 5 -13; M6 -1 -9; M7 0 -12; M8 2 -16; N6 -5 -13; N7 -4 -16; N8 -2 -20; R7 -11 -23")]
    [InlineData(10, "J6 5 -4; J7 8 -7; J8 12 -10; K6 2 -7; K7 5 -10; K8 6 -16; M6 -3 -12; M7 0 -15; M8 1 -21; N6 -7 -16; N7 -4 -19; N8 -3 -25; R7 -13 -28")]
    [InlineData(18, "J6 6 -5; J7 10 -8; J8 15 -12; K6 2 -9; K7 6 -12; K8 8 -19; M6 -4 -15; M7 0 -18; M8 2 -25; N6 -9 -20; N7 -5 -23; N8 -3 -30; R7 -16 -34")]
    [InlineData(30, "J6 8 -5; J7 12 -9; J8 20 -13; K6 2 -11; K7 6 -15; K8 10 -23; M6 -4 -17; M7 0 -21; M8 4 -29; N6 -11 -24; N7 -7 -28; N8 -3 -36; R7 -20 -41")]
    [InlineData(50, "J6 10 -6; J7 14 -11; J8 24 -15; K6 3 -13; K7 7 -18; K8 12 -27; M6 -4 -20; M7 0 -25; M8 5 -34; N6 -12 -28; N7 -8 -33; N8 -3 -42; R7 -25 -50")]
    [InlineData(65, "J6 13 -6; J7 18 -12; J8 28 -18; K6 4 -15; K7 9 -21; K8 14 -32; M6 -5 -24; M7 0 -30; M8 5 -41; N6 -14 -33; N7 -9 -39; N8 -4 -50; R7 -30 -60")]
    [InlineData(80, "R7 -32 -62")]
    [InlineData(100, "J6 16 -6; J7 22 -13; J8 34 -20; K6 4 -18; K7 10 -25; K8 16 -38; M6 -6 -28; M7 0 -35; M8 6 -48; N6 -16 -38; N7 -10 -45; N8 -4 -58; R7 -38 -73")]
    [InlineData(120, "R7 -41 -76")]
    [InlineData(140, "J6 18 -7; J7 26 -14; J8 41 -22; K6 4 -21; K7 12 -28; K8 20 -43; M6 -8 -33; M7 0 -40; M8 8 -55; N6 -20 -45; N7 -12 -52; N8 -4 -67; R7 -48 -88")]
    [InlineData(160, "R7 -50 -90")]
    [InlineData(180, "R7 -53 -93")]
    [InlineData(200, "J6 22 -7; J7 30 -16; J8 47 -25; K6 5 -24; K7 13 -33; K8 22 -50; M6 -8 -37; M7 0 -46; M8 9 -63; N6 -22 -51; N7 -14 -60; N8 -5 -77; R7 -60 -106")]
    [InlineData(225, "R7 -63 -109")]
    [InlineData(250, "R7 -67 -113")]
    public void Holes_match_a_reprint_of_the_table(double size, string classes) => MatchesAll(size, classes);

    // ISO 286-2:1988/Cor 1:2006 put these right: E8 over 80 to 120, f9 over 250 to 315, R10 over 18 to 30.
    [Theory]
    [InlineData("E", 8, 100, 72, 126)]
    [InlineData("f", 9, 300, -186, -56)]
    [InlineData("R", 10, 25, -112, -28)]
    public void Values_put_right_in_the_corrigendum_are_right(string letters, int grade, double size, double lower, double upper) =>
        Matches(letters, grade, size, lower, upper);

    // ISO 286-1: a step holds over < D ≤ up to.
    [Fact]
    public void A_size_on_the_edge_belongs_to_the_smaller_step()
    {
        Matches("H", 7, 30, 0, 21);
        Matches("H", 7, 30.0001, 0, 25);
        Matches("H", 7, 500, 0, 63);
    }

    // Rule of ISO 286-1: a hole's deviation mirrors the shaft's of the same letter, H mirrors h.
    [Theory]
    [InlineData("D", "d", 9)]
    [InlineData("E", "e", 8)]
    [InlineData("F", "f", 7)]
    [InlineData("G", "g", 6)]
    [InlineData("H", "h", 11)]
    public void Clearance_holes_mirror_their_shafts(string hole, string shaft, int grade)
    {
        foreach (var size in new[] { 2, 5, 8, 12, 16, 20, 28, 35, 45, 60, 70, 90, 110, 130, 210, 300, 450 })
        {
            var forHole = Iso286.Limits(hole, grade, size);
            var forShaft = Iso286.Limits(shaft, grade, size);
            Assert.Equal(-forShaft.Upper, forHole.Lower, 1e-12);
            Assert.Equal(-forShaft.Lower, forHole.Upper, 1e-12);
        }
    }

    // ISO 286-1: interference of H7/p6 and P7/h6 is the same; that is what Δ is for.
    [Theory]
    [InlineData("p", "P")]
    [InlineData("r", "R")]
    [InlineData("s", "S")]
    [InlineData("u", "U")]
    public void Delta_makes_hole_and_shaft_basis_fits_alike(string shaft, string hole)
    {
        foreach (var size in new[] { 5, 12, 28, 60, 110, 210, 300 })
        {
            var hub = Iso286.Limits("H", 7, size);
            var pressed = Iso286.Limits(shaft, 6, size);
            var tightHub = Iso286.Limits(hole, 7, size);
            var bar = Iso286.Limits("h", 6, size);
            Assert.Equal(pressed.Upper - hub.Lower, bar.Upper - tightHub.Lower, 1e-12);
            Assert.Equal(pressed.Lower - hub.Upper, bar.Lower - tightHub.Upper, 1e-12);
        }
    }

    [Theory]
    [InlineData("z", 6, 25, "no deviation z")]
    [InlineData("", 6, 25, "no deviation")]
    [InlineData("js6", 6, 25, "no deviation js6")]
    [InlineData("DELTA", 6, 25, "no deviation DELTA")]
    [InlineData("+", 6, 25, "no deviation +")]
    [InlineData("й", 6, 25, "no deviation")]
    [InlineData("J", 9, 25, "no class J9 for 25 mm")]
    [InlineData("f", 3, 25, "no class f3")]
    [InlineData("H", 0, 25, "IT1 to IT18")]
    [InlineData("H", 19, 25, "IT1 to IT18")]
    [InlineData("H", 7, 501, "up to 500 mm; the size is 501 mm")]
    [InlineData("H", 7, 0, "above 0")]
    [InlineData("H", 7, double.NaN, "above 0")]
    [InlineData("H", 14, 1, "up to 1 mm")]
    public void A_class_the_tables_lack_gives_its_reason(string letters, int grade, double size, string reason)
    {
        Assert.False(Iso286.TryLimits(letters, grade, size, out _, out var given));
        Assert.Contains(reason, given, StringComparison.Ordinal);
        Assert.Equal(given, Assert.Throws<OutsideValidityException>(() => Iso286.Limits(letters, grade, size)).Message);
    }

    private static void MatchesAll(double size, string classes)
    {
        foreach (var item in classes.Split("; "))
        {
            var words = item.Split(' ');
            Matches(words[0][..1], Number(words[0][1..]), size, Number(words[2]), Number(words[1]));
        }
    }

    private static int Number(string text) => int.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    private static void Matches(string letters, int grade, double size, double lower, double upper)
    {
        var limits = Iso286.Limits(letters, grade, size);
        Assert.True(
            Math.Abs(lower / 1000 - limits.Lower) < 1e-12 && Math.Abs(upper / 1000 - limits.Upper) < 1e-12,
            $"{size} {letters}{grade}: expected {upper} {lower}, found {limits.Upper * 1000} {limits.Lower * 1000} µm");
    }

    // ISO 286-1: i = 0.45·∛D + 0.001·D µm with D the geometric mean of the step; IT6 10i, IT7 16i, IT8 25i, IT9 40i.
    [Theory]
    [InlineData(18, 30)]
    [InlineData(30, 50)]
    [InlineData(50, 80)]
    [InlineData(80, 120)]
    [InlineData(120, 180)]
    [InlineData(315, 400)]
    public void Standard_tolerances_follow_the_tolerance_factor(double over, double upTo)
    {
        var mean = Math.Sqrt(over * upTo);
        var factor = 0.45 * Math.Cbrt(mean) + 0.001 * mean;
        foreach (var (grade, multiple) in new[] { (6, 10), (7, 16), (8, 25), (9, 40), (10, 64), (11, 100) })
        {
            Assert.Equal(1, Iso286.Limits("H", grade, upTo).Upper * 1000 / (multiple * factor), 0.03);
        }
    }
}
