using CsCheck;
using Pawl.Mechanics.Lubrication;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Lubrication;

public class OilTests
{
    // The worked examples of ASTM D2270 in a public reprint: 92.43, reported 92; 156.37, reported 156; the third, 111, from memory.
    // The standard reads L and H from its table; the quadratics differ by up to 0.1 of an index.
    [Theory]
    [InlineData(73.30, 8.86, 92.43)]
    [InlineData(22.83, 5.05, 156.37)]
    [InlineData(53.47, 7.80, 111.3)]
    public void The_index_follows_the_worked_examples_of_ASTM_D2270(double viscosity40, double viscosity100, double index) =>
        Assert.Equal(index, ViscosityIndex.Of(viscosity40, viscosity100), 0.1);

    // The same reprint, table 1 by interpolation: L = 119.94 and H = 69.48 at 8.86 mm²/s, H = 28.97 at 5.05.
    [Fact]
    public void References_match_the_table_of_ASTM_D2270()
    {
        Assert.Equal(119.94, ViscosityIndex.References(8.86).Low, 0.02);
        Assert.Equal(69.48, ViscosityIndex.References(8.86).High, 0.02);
        Assert.Equal(28.97, ViscosityIndex.References(5.05).High, 0.02);
    }

    // The same reprint above 70 mm²/s: L = 0.8353·Y² + 14.67·Y − 216, H = 0.1684·Y² + 11.85·Y − 97. Its rounding is a thousandth.
    [Fact]
    public void References_of_thick_oils_match_the_equations_of_ASTM_D2270() =>
        Gen.Double[70, 500].Sample(y =>
        {
            var (low, high) = ViscosityIndex.References(y);
            return Math.Abs(low / (0.8353 * y * y + 14.67 * y - 216) - 1) < 1e-3
                && Math.Abs(high / (0.1684 * y * y + 11.85 * y - 97) - 1) < 1e-3;
        });

    [Fact]
    public void The_pieces_of_the_references_meet() =>
        Assert.All([3.8, 4.4, 5.0, 6.4, 7.0, 7.7, 9, 12, 15, 18, 22, 28, 40, 55, 70.0], at =>
        {
            var (before, after) = (ViscosityIndex.References(at - 1e-9), ViscosityIndex.References(at));
            Assert.Equal(1, before.Low / after.Low, 0.003);
            Assert.Equal(1, before.High / after.High, 0.003);
        });

    // L is the oil of index 0, H that of 100, by definition.
    [Fact]
    public void The_reference_oils_have_the_indices_nought_and_a_hundred() =>
        Gen.Double[2, 200].Sample(viscosity100 =>
        {
            var (low, high) = ViscosityIndex.References(viscosity100);
            return Math.Abs(ViscosityIndex.Of(low, viscosity100)) < 1e-9
                && Math.Abs(ViscosityIndex.Of(high, viscosity100) - 100) < 1e-9
                && Math.Abs(ViscosityIndex.Of(high * 0.999999, viscosity100) - 100) < 0.01;
        });

    // Where two pieces do not quite meet, the index jumps by up to two; elsewhere it is given back.
    [Fact]
    public void The_viscosity_at_100_degrees_gives_back_the_index() =>
        Gen.Select(Gen.Double[30, 1500], Gen.Double[60, 250]).Sample((viscosity40, index) =>
        {
            var viscosity100 = ViscosityIndex.KinematicAt100(viscosity40, index);
            return viscosity100 < viscosity40
                && Math.Abs(ViscosityIndex.Of(viscosity40, viscosity100) - index) < 2
                && ViscosityIndex.Of(viscosity40, viscosity100 * 0.995) < index
                && ViscosityIndex.Of(viscosity40, viscosity100 * 1.005) > index;
        });

    // Index 95 as a public table of grades prints it for mineral oils, mm²/s at 40 °C and 100 °C: 100 and 11.4, 150 and 14.5 to 15,
    // 220 and 19, 320 and 24.5, 460 and 32. Typical values; a twentieth.
    [Theory]
    [InlineData(100, 11.4)]
    [InlineData(150, 14.5)]
    [InlineData(220, 19.0)]
    [InlineData(320, 24.5)]
    [InlineData(460, 32.0)]
    public void Gear_oils_of_the_usual_index_thin_as_tables_say(double viscosity40, double viscosity100) =>
        Assert.Equal(1, ViscosityIndex.KinematicAt100(viscosity40, 97) / viscosity100, 0.05);

    [Fact]
    public void Indices_without_an_oil_are_refused()
    {
        Refusal.Says("an oil thins as it warms", () => ViscosityIndex.Of(10, 10));
        Refusal.Says("defined from 2 mm²/s at 100 °C up", () => ViscosityIndex.Of(5, 1.9));
        Refusal.Says("do not lead to 2 mm²/s", () => ViscosityIndex.KinematicAt100(100, -20));
        Refusal.Says("do not lead to 2 mm²/s", () => ViscosityIndex.KinematicAt100(3, 95));
    }

    // ISO 3448, two public reprints: least, middle, greatest, mm²/s at 40 °C.
    [Theory]
    [InlineData(2, 1.98, 2.2, 2.42)]
    [InlineData(3, 2.88, 3.2, 3.52)]
    [InlineData(5, 4.14, 4.6, 5.06)]
    [InlineData(7, 6.12, 6.8, 7.48)]
    [InlineData(10, 9.0, 10, 11.0)]
    [InlineData(15, 13.5, 15, 16.5)]
    [InlineData(22, 19.8, 22, 24.2)]
    [InlineData(32, 28.8, 32, 35.2)]
    [InlineData(46, 41.4, 46, 50.6)]
    [InlineData(68, 61.2, 68, 74.8)]
    [InlineData(100, 90, 100, 110)]
    [InlineData(150, 135, 150, 165)]
    [InlineData(220, 198, 220, 242)]
    [InlineData(320, 288, 320, 352)]
    [InlineData(460, 414, 460, 506)]
    [InlineData(680, 612, 680, 748)]
    [InlineData(1000, 900, 1000, 1100)]
    [InlineData(1500, 1350, 1500, 1650)]
    public void Grades_match_ISO_3448(int number, double least, double middle, double greatest)
    {
        Assert.True(OilGrade.TryFind(number, out var grade, out _));
        Assert.Equal(least, grade.Min, 1e-9);
        Assert.Equal(middle, grade.MidPoint, 1e-9);
        Assert.Equal(greatest, grade.Max, 1e-9);
        Assert.Equal(grade, OilGrade.Of(middle));
    }

    // ISO 3448 builds them so: each middle about half as much again as the one before.
    [Fact]
    public void Grades_rise_by_about_a_half_and_leave_gaps()
    {
        Assert.Equal(20, OilGrade.All.Length);
        Assert.All(OilGrade.All.Zip(OilGrade.All.Skip(1)), pair =>
        {
            Assert.InRange(pair.Second.MidPoint / pair.First.MidPoint, 1.39, 1.51);
            Assert.Null(OilGrade.Of((pair.First.Max + pair.Second.Min) / 2));
        });
        Assert.False(OilGrade.TryFind(90, out _, out var reason));
        Assert.Contains("ISO 3448 has no grade 90", reason, StringComparison.Ordinal);
    }
}
