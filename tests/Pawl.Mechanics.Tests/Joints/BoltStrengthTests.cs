using Pawl.Mechanics.Joints;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Joints;

public class BoltStrengthTests
{
    // ISO 898-1, proof loads and least ultimate loads, N, in public reprints, by class 4.6, 4.8, 5.6, 5.8, 6.8, 8.8, 9.8, 10.9, 12.9; the
    // reprints round the area first and the load after: half a per cent.
    [Theory]
    [InlineData("M3", new double[] { 1130, 1560, 1410, 1910, 2210, 2920, 3270, 4180, 4880 }, new double[] { 2010, 2110, 2510, 2620, 3020, 4020, 4530, 5230, 6140 })]
    [InlineData("M5", new double[] { 3200, 4400, 3980, 5400, 6250, 8230, 9230, 11800, 13800 }, new double[] { 5680, 5960, 7100, 7380, 8520, 11350, 12800, 14800, 17300 })]
    [InlineData("M8", new double[] { 8240, 11400, 10200, 13900, 16100, 21200, 23800, 30400, 35500 }, new double[] { 14600, 15400, 18300, 19000, 22000, 29200, 32900, 38100, 44600 })]
    [InlineData("M10", new double[] { 13000, 18000, 16200, 22000, 25500, 33700, 37700, 48100, 56300 }, new double[] { 23200, 24400, 29000, 30200, 34800, 46400, 52200, 60300, 70800 })]
    [InlineData("M12", new double[] { 19000, 26100, 23600, 32000, 37100, 48900, 54800, 70000, 81800 }, new double[] { 33700, 35400, 42200, 43800, 50600, 67400, 75900, 87700, 103000 })]
    [InlineData("M16", new double[] { 35300, 48700, 44000, 59700, 69100, 91000, 102000, 130000, 152000 }, new double[] { 62800, 65900, 78500, 81600, 94000, 125000, 141000, 163000, 192000 })]
    [InlineData("M20", new double[] { 55100, 76000, 68600, 93100, 108000, 147000, 0, 203000, 238000 }, new double[] { 98000, 103000, 122000, 127000, 147000, 203000, 0, 255000, 299000 })]
    [InlineData("M27", new double[] { 103000, 142000, 128000, 174000, 202000, 275000, 0, 381000, 445000 }, new double[] { 184000, 193000, 230000, 239000, 275000, 381000, 0, 477000, 560000 })]
    public void Loads_of_property_classes_are_those_of_ISO_898_1(string designation, double[] proof, double[] ultimate)
    {
        string[] classes = ["4.6", "4.8", "5.6", "5.8", "6.8", "8.8", "9.8", "10.9", "12.9"];
        for (var column = 0; column < classes.Length; column++)
        {
            if (proof[column] == 0)
            {
                Assert.False(BoltStrength.TryFind(classes[column], Bolts.Thread(designation), out _, out _));
                continue;
            }

            var strength = Bolts.Strength(classes[column], designation);
            Assert.Equal(proof[column], strength.ProofLoad(Bolts.Thread(designation)), 0.006 * proof[column]);
            Assert.Equal(ultimate[column], strength.Tensile * Bolts.Thread(designation).StressArea, 0.006 * ultimate[column]);
        }
    }

    // What the classes are called, ISO 898-1: hundredths of R_m, and tenths of R_p over R_m; the minima lie at or a little above.
    [Theory]
    [InlineData("4.6")]
    [InlineData("5.8")]
    [InlineData("6.8")]
    [InlineData("8.8")]
    [InlineData("10.9")]
    [InlineData("12.9")]
    public void Names_of_property_classes_tell_their_strength(string name)
    {
        var strength = Bolts.Strength(name, "M8");
        var digits = name.Split('.').Select(part => double.Parse(part, System.Globalization.CultureInfo.InvariantCulture)).ToArray();

        Assert.InRange(strength.Tensile, digits[0] * 100, digits[0] * 105);
        Assert.InRange(strength.Yield, digits[0] * digits[1] * 10, digits[0] * digits[1] * 10.6);
        Assert.InRange(strength.Proof / strength.Yield, 0.87, 0.95);
    }

    // SAE J429 on two public trade pages, ksi; 1 ksi = 6.894757 MPa.
    [Theory]
    [InlineData("grade 2", "1/4-20", 55, 57, 74)]
    [InlineData("2", "3/4-10", 55, 57, 74)]
    [InlineData("2", "7/8-9", 33, 36, 60)]
    [InlineData("SAE 5", "1-8", 85, 92, 120)]
    [InlineData("SAE J429 Grade 5", "1-1/8-7", 74, 81, 105)]
    [InlineData("8", "1/2-20", 120, 130, 150)]
    [InlineData("8", "1-1/2-6", 120, 130, 150)]
    public void Strengths_of_grades_are_those_of_SAE_J429(string grade, string designation, double proof, double yield, double tensile)
    {
        var strength = Bolts.Strength(grade, designation);

        Assert.Equal(proof * 6.894757, strength.Proof, 0.001);
        Assert.Equal(yield * 6.894757, strength.Yield, 0.001);
        Assert.Equal(tensile * 6.894757, strength.Tensile, 0.001);
    }

    [Theory]
    [InlineData("8.8", "M8", 640)]
    [InlineData("8.8", "M16", 640)]
    [InlineData("8.8", "M18", 660)]
    public void Size_counts_for_8_8(string name, string designation, double yield)
    {
        Assert.Equal(yield, Bolts.Strength(name, designation).Yield);
    }

    [Theory]
    [InlineData("9.8", "M20", "ISO 898-1 has property class 9.8 from 1.6 mm to 16 mm; M20 lies outside")]
    [InlineData("8.8", "1/2-13", "SAE J429 has no grade `8.8`")]
    [InlineData("14.9", "M8", "there are 4.6, 4.8, 5.6, 5.8, 6.8, 8.8, 9.8, 10.9, 12.9")]
    [InlineData("8", "#10-24", "SAE J429 has grade 8 from 6.35 mm")]
    [InlineData("10.9", "M42x1.5", "M42x1.5 lies outside")]
    public void A_strength_that_no_standard_has_gives_its_reason(string name, string designation, string reason)
    {
        Assert.False(BoltStrength.TryFind(name, Bolts.Thread(designation), out _, out var given));
        Assert.Contains(reason, given, StringComparison.Ordinal);
    }

    // DIN EN 20898-2 (ISO 898-2:1992) on two public pages: proof loads of nuts, N. The page rounds the area first.
    [Theory]
    [InlineData("M3", "5", NutStyle.Regular, 2600)]
    [InlineData("M4", "6", NutStyle.Regular, 5250)]
    [InlineData("M5", "8", NutStyle.Regular, 12140)]
    [InlineData("M8", "8", NutStyle.Regular, 31800)]
    [InlineData("M10", "8", NutStyle.Regular, 50500)]
    [InlineData("M12", "8", NutStyle.Regular, 74200)]
    [InlineData("M16", "8", NutStyle.Regular, 138200)]
    [InlineData("M20", "8", NutStyle.Regular, 225400)]
    [InlineData("M20", "8", NutStyle.High, 218100)]
    [InlineData("M6", "10", NutStyle.Regular, 20900)]
    [InlineData("M12", "10", NutStyle.Regular, 88500)]
    [InlineData("M24", "10", NutStyle.Regular, 374200)]
    [InlineData("M8", "12", NutStyle.Regular, 41700)]
    [InlineData("M16", "12", NutStyle.Regular, 183700)]
    [InlineData("M10", "12", NutStyle.High, 67300)]
    [InlineData("M36", "12", NutStyle.High, 980400)]
    public void Proof_loads_of_nuts_are_those_of_ISO_898_2(string designation, string name, NutStyle style, double load)
    {
        var thread = Bolts.Thread(designation);
        Assert.True(NutStrength.TryFind(name, style, thread, out var nut, out _));
        Assert.Equal(load, nut.ProofLoad(thread), 0.007 * load);
    }

    // A public reprint: "a bolt of property class 8.8 must be paired with a nut of property class 8 or higher".
    [Theory]
    [InlineData("8", NutStyle.Regular, "8.8", true)]
    [InlineData("10", NutStyle.Regular, "8.8", true)]
    [InlineData("8", NutStyle.Regular, "10.9", false)]
    [InlineData("05", NutStyle.Thin, "4.6", false)]
    [InlineData("12", NutStyle.High, "grade 8", false)]
    public void A_nut_carries_a_bolt_of_no_higher_class(string name, NutStyle style, string bolt, bool carries)
    {
        Assert.True(NutStrength.TryFind(name, style, Bolts.Thread("M8"), out var nut, out _));
        Assert.Equal(carries, nut.Carries(bolt));
    }

    [Theory]
    [InlineData("8", NutStyle.Thin, "M8", "no thin nut of class `8`")]
    [InlineData("12", NutStyle.Regular, "M20", "no regular nut of class `12` for M20")]
    [InlineData("8", NutStyle.Regular, "M8x1", "M8x1 is none")]
    [InlineData("8", NutStyle.Regular, "1/2-13", "state the proof load of the nut")]
    public void A_nut_that_the_standard_lacks_gives_its_reason(string name, NutStyle style, string designation, string reason)
    {
        Assert.False(NutStrength.TryFind(name, style, Bolts.Thread(designation), out _, out var given));
        Assert.Contains(reason, given, StringComparison.Ordinal);
    }

    // ASTM B850: 1000 to 1100 MPa 8 h, 1200 to 1300 MPa 12 h. ISO 898-1: 10.9 up to 380 HV, 12.9 up to 435 HV; ISO 4042:2018: 390 HV.
    [Fact]
    public void Plated_10_9_and_12_9_want_a_bake()
    {
        Assert.True(FastenerCoating.TryFind("electroplated zinc", out var zinc, out _));
        Assert.True(FastenerCoating.TryFind("zinc flake", out var flake, out _));
        Assert.False(FastenerCoating.TryFind("gold", out _, out var reason));
        Assert.Contains("the table has no coating `gold`; it has none, black oxide", reason, StringComparison.Ordinal);
    }

    // VDI 2230: 0.85·(150/12 + 45) = 48.875 MPa; with a mean of 0.6 of the yield 1.4 times that; at 250 000 cycles twice, or √2 times.
    [Fact]
    public void Fatigue_of_an_M12_is_worked_by_hand()
    {
        var thread = Bolts.Thread("M12");

        Assert.Equal(48.875, BoltFatigue.RolledBeforeTreatment(thread), 1e-9);
        Assert.Equal(68.425, BoltFatigue.RolledAfterTreatment(thread, 0.6), 1e-9);
        Assert.Equal(2 * 48.875, BoltFatigue.RolledBeforeTreatment(thread, 250_000), 1e-9);
        Assert.Equal(Math.Sqrt(2) * 68.425, BoltFatigue.RolledAfterTreatment(thread, 0.6, 250_000), 1e-9);
        Assert.Equal(48.875, BoltFatigue.RolledBeforeTreatment(thread, 1e9), 1e-9);
        Assert.Equal(0.2 * 10_000 / (2 * thread.StressArea), BoltFatigue.Amplitude(thread, 0.2, 8_000, -2_000), 1e-9);
        Refusal.Says("from 0.3 to below 1", () => BoltFatigue.RolledAfterTreatment(thread, 0.2));
        Refusal.Says("from 6 mm to 40 mm", () => BoltFatigue.RolledBeforeTreatment(Bolts.Thread("M5")));
        Refusal.Says("from 10000 cycles", () => BoltFatigue.RolledBeforeTreatment(thread, 10));
        Refusal.Says("the greatest load must not be below the least", () => BoltFatigue.Amplitude(thread, 0.2, -1, 1));
    }
}
