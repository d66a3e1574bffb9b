using CsCheck;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Bearings;

public class EquivalentLoadTests
{
    private static readonly BearingType Deep = new(BearingKind.DeepGrooveBall);

    private static BearingType Angular(double degrees, int rows = 1) => new(BearingKind.AngularContactBall, degrees * Math.PI / 180, rows);

    private static BearingType Roller(double degrees, int rows = 1) => new(BearingKind.AngledRoller, degrees * Math.PI / 180, rows);

    // Faires, Design of Machine Elements, problem 601, on a public page: F_a/C₀ = 0.0340 gives e = 0.2286 and Y = 1.93, and
    // 0.56·1500 + 1.93·1000 = 2770 lb. The older table goes by F_a/C₀; f₀ = 12.3 turns its rows into those of ISO 281.
    [Fact]
    public void A_textbook_bearing_has_the_factors_of_its_table()
    {
        var factors = DynamicLoad.Factors(Deep, 12.3 * 0.0340);
        Assert.Equal(0.2286, factors.Limit, 0.0005);
        Assert.Equal(1.93, factors.AxialAbove, 0.005);
        Assert.Equal(2770, DynamicLoad.Equivalent(Deep, 1500, 1000, 12.3 * 0.0340), 5.0);
    }

    // Shigley, Mechanical Engineering Design, an example on a public page: F_r = 7 kN times 1.2 for a turning outer ring, F_a = 3
    // kN, C₀ = 34 kN: Y = 1.53, 9.294 kN. Rounding Y there is worth 0.015 kN.
    [Fact]
    public void A_textbook_load_is_met() =>
        Assert.Equal(9.294, DynamicLoad.Equivalent(Deep, 1.2 * 7, 3, 12.3 * 3 / 34), 0.015);

    // Table of ABMA in Rules of Thumb for Mechanical Engineers, on a public page: F_a/(i·Z·D_w²) in lb/in², e and Y, the same for
    // one row and two. 1 lb/in² = 0.0068948 MPa; ISO's ratio f₀·F_a/C₀ is the same number in MPa, rounded to three figures.
    [Theory]
    [InlineData(24.92, 0.19, 2.30)]
    [InlineData(50.03, 0.22, 1.99)]
    [InlineData(99.91, 0.26, 1.71)]
    [InlineData(149.35, 0.28, 1.55)]
    [InlineData(200.10, 0.30, 1.45)]
    [InlineData(300.15, 0.34, 1.31)]
    [InlineData(500.25, 0.38, 1.15)]
    [InlineData(749.65, 0.42, 1.04)]
    [InlineData(999.05, 0.44, 1.00)]
    public void Factors_of_deep_groove_balls_match_the_print(double poundsPerSquareInch, double limit, double factor)
    {
        foreach (var rows in new[] { 1, 2 })
        {
            var factors = DynamicLoad.Factors(new(BearingKind.DeepGrooveBall, 0, rows), poundsPerSquareInch * 0.0068948);
            Assert.Equal(limit, factors.Limit, 0.001);
            Assert.Equal(factor, factors.AxialAbove, 0.005);
            Assert.Equal((1, 0, 0.56), (factors.RadialUpTo, factors.AxialUpTo, factors.RadialAbove));
        }
    }

    // Halfway between two rows lies halfway between their factors.
    [Fact]
    public void Between_rows_the_factors_follow_straight_lines()
    {
        var factors = DynamicLoad.Factors(Deep, (1.38 + 2.07) / 2);
        Assert.Equal((0.32, 1.38), (Math.Round(factors.Limit, 12), Math.Round(factors.AxialAbove, 12)));
        Assert.Null(factors.Remark);
    }

    // Khurmi and Gupta, Machine Design, table 27.4 on a public page: 40°, one row 0.35, 0.57, two back to back 1, 0.55, 0.57,
    // 0.93, e = 1.14.
    [Fact]
    public void Factors_of_a_textbook_for_forty_degrees_are_met()
    {
        Assert.Equal(new LoadFactors(1.14, 1, 0, 0.35, 0.57), DynamicLoad.Factors(Angular(40)));
        Assert.Equal(new LoadFactors(1.14, 1, 0.55, 0.57, 0.93), DynamicLoad.Factors(Angular(40, 2)));
    }

    // At F_a ≤ 0.19·F_r no row lets the thrust count, so the ratio need not be known.
    [Fact]
    public void A_little_thrust_needs_no_ratio()
    {
        Assert.Equal(1000, DynamicLoad.Equivalent(Deep, 1000, 190));
        Assert.Equal(1000, DynamicLoad.Equivalent(Angular(15), 1000, 380));
        Refusal.Says("which is not stated", () => DynamicLoad.Equivalent(Deep, 1000, 191));
        Refusal.Says("which is not stated", () => DynamicLoad.Equivalent(Angular(15, 2), 1000, 100));
    }

    // Worked with the rows above: 0.56·2000 + 1.45·1000 = 2570; below e the radial load counts alone.
    [Fact]
    public void Loads_are_worked_by_hand()
    {
        Assert.Equal(2570, DynamicLoad.Equivalent(Deep, 2000, 1000, DynamicLoad.AxialRatio(Deep, 13.8, 1000, 10_000)), 1e-9);
        Assert.Equal(2000, DynamicLoad.Equivalent(Deep, 2000, 200, DynamicLoad.AxialRatio(Deep, 13.8, 200, 10_000)), 1e-9);
        Assert.Equal(0.35 * 2000 + 0.57 * 3000, DynamicLoad.Equivalent(Angular(40), 2000, 3000), 1e-9);
        Assert.Equal(0.57 * 3000, DynamicLoad.Equivalent(Angular(40), 0, 3000), 1e-9);
        Assert.Equal(1500, DynamicLoad.Equivalent(new(BearingKind.NeedleRoller), 1500, 0), 1e-9);
    }

    // ISO 281: the thrust counts from F_a/F_r = e on, 0.80 at 30°, and in two rows with Y₁ = 0.78 before.
    [Fact]
    public void Thrust_begins_to_count_at_the_limit()
    {
        Assert.Equal(1000, DynamicLoad.Equivalent(Angular(30), 1000, 799), 1e-9);
        Assert.Equal(0.39 * 1000 + 0.76 * 900, DynamicLoad.Equivalent(Angular(30), 1000, 900), 1e-9);
        Assert.Equal(1000 + 0.78 * 799, DynamicLoad.Equivalent(Angular(30, 2), 1000, 799), 1e-9);
        Assert.Equal(0.63 * 1000 + 1.24 * 801, DynamicLoad.Equivalent(Angular(30, 2), 1000, 801), 1e-9);
    }

    // A data sheet of a bearing of 40°, on a public page: e = 1.14, X = 0.35, Y = 0.57, Y₀ = 0.26. Other angles of ISO 281 from
    // memory.
    [Theory]
    [InlineData(40, 1.14, 0.35, 0.57)]
    [InlineData(25, 0.68, 0.41, 0.87)]
    [InlineData(30, 0.80, 0.39, 0.76)]
    public void Angular_contact_has_the_factors_of_its_angle(double angle, double limit, double radial, double axial) =>
        Assert.Equal(new LoadFactors(limit, 1, 0, radial, axial), DynamicLoad.Factors(Angular(angle)));

    // Both branches of P must meet at F_a = e·F_r, or a hair more thrust would change the life by a jump. The table is rounded to
    // a hundredth in each of three factors: 0.015.
    [Fact]
    public void The_branches_meet_at_the_limit_in_every_row()
    {
        var deep = new[] { 0.172, 0.345, 0.689, 1.03, 1.38, 2.07, 3.45, 5.17, 6.89 }.Select(ratio => DynamicLoad.Factors(Deep, ratio));
        var light = new[] { 0.178, 0.357, 0.714, 1.07, 1.43, 2.14, 3.57, 5.35, 7.14 };
        var steady = new[] { 20.0, 25, 30, 35, 40, 45 };
        LoadFactors[] all =
        [
            .. deep,
            .. light.SelectMany(ratio => new[] { DynamicLoad.Factors(Angular(15), ratio), DynamicLoad.Factors(Angular(15, 2), ratio) }),
            .. steady.SelectMany(angle => new[] { DynamicLoad.Factors(Angular(angle)), DynamicLoad.Factors(Angular(angle, 2)) }),
        ];
        Assert.Equal(9 + 18 + 12, all.Length);
        Assert.All(all, factors => Assert.Equal(
            factors.RadialUpTo + factors.AxialUpTo * factors.Limit, factors.RadialAbove + factors.AxialAbove * factors.Limit, 0.015));
    }

    // The same at any angle of rollers: 1 = 0.4 + 0.4·1.5 and 1 + 0.45·1.5 = 0.67 + 0.67·1.5.
    [Fact]
    public void The_branches_of_rollers_meet_at_any_angle() =>
        Gen.Select(Gen.Double[5, 40], Gen.Int[1, 2]).Sample((angle, rows) =>
        {
            var factors = DynamicLoad.Factors(Roller(angle, rows));
            return Math.Abs(factors.RadialUpTo + factors.AxialUpTo * factors.Limit - factors.RadialAbove - factors.AxialAbove * factors.Limit) < 1e-9;
        });

    [Fact]
    public void More_axial_load_never_eases_a_bearing_beyond_rounding() =>
        Gen.Select(Gen.Double[100, 5000], Gen.Double[0, 4000], Gen.Double[0, 1000]).Sample((radial, axial, more) =>
        {
            double Load(double thrust) => DynamicLoad.Equivalent(Deep, radial, thrust, DynamicLoad.AxialRatio(Deep, 13, thrust, 8000));
            return Load(axial + more) >= Load(axial) * 0.985;
        });

    [Fact]
    public void Load_scales_when_loads_and_rating_do() =>
        Gen.Select(Gen.Double[1, 5000], Gen.Double[1, 5000], Gen.Double[0.1, 10]).Sample((radial, axial, scale) =>
            Math.Abs(
                DynamicLoad.Equivalent(Deep, scale * radial, scale * axial, DynamicLoad.AxialRatio(Deep, 13, scale * axial, scale * 8000))
                - scale * DynamicLoad.Equivalent(Deep, radial, axial, DynamicLoad.AxialRatio(Deep, 13, axial, 8000))) < 1e-6);

    [Fact]
    public void Outside_the_table_the_nearest_row_holds_and_is_told()
    {
        Assert.Equal(2.30, DynamicLoad.Factors(Deep, 0.01).AxialAbove, 1e-12);
        Assert.Contains("outside the table of ISO 281", DynamicLoad.Factors(Deep, 0.01).Remark, StringComparison.Ordinal);
        Assert.Equal(1.00, DynamicLoad.Factors(Deep, 9).AxialAbove, 1e-12);
        Assert.NotNull(DynamicLoad.Factors(Deep, 9).Remark);
    }

    // ISO 281: two rows of an angular contact bearing carry thrust with one of them, so their ratio takes i·F_a.
    [Fact]
    public void Two_rows_double_the_ratio_of_angular_contact_only()
    {
        Assert.Equal(2 * 13 * 500 / 8000.0, DynamicLoad.AxialRatio(Angular(15, 2), 13, 500, 8000), 1e-12);
        Assert.Equal(13 * 500 / 8000.0, DynamicLoad.AxialRatio(new(BearingKind.DeepGrooveBall, 0, 2), 13, 500, 8000), 1e-12);
    }

    // ISO 76 as reprinted on a public page: single 15° 0.46, 25° 0.38, 40° 0.26; pairs 0.92, 0.76, 0.52; double row at 30° 0.66.
    [Theory]
    [InlineData(15, 1, 0.5, 0.46)]
    [InlineData(25, 1, 0.5, 0.38)]
    [InlineData(40, 1, 0.5, 0.26)]
    [InlineData(15, 2, 1, 0.92)]
    [InlineData(25, 2, 1, 0.76)]
    [InlineData(40, 2, 1, 0.52)]
    [InlineData(30, 2, 1, 0.66)]
    public void Static_factors_of_angular_contact_match_the_print(double angle, int rows, double radial, double axial) =>
        Assert.Equal(radial * 1000 + axial * 9000, StaticLoad.Equivalent(Angular(angle, rows), 1000, 9000), 1e-9);

    // ISO 76, reprinted on public pages: P₀ = 0.6·F_r + 0.5·F_a, not below F_r.
    [Theory]
    [InlineData(3000, 500, 3000)]
    [InlineData(1000, 2000, 1600)]
    [InlineData(0, 2000, 1000)]
    public void Static_load_of_deep_groove_balls_is_never_below_the_radial(double radial, double axial, double expected) =>
        Assert.Equal(expected, StaticLoad.Equivalent(Deep, radial, axial), 1e-9);

    [Fact]
    public void Static_safety_and_rollers_are_worked_by_hand()
    {
        Assert.Equal(2.6, StaticLoad.Safety(7800, 3000), 1e-12);
        var cotangent = 1 / Math.Tan(15 * Math.PI / 180);
        Assert.Equal(500 + 0.22 * cotangent * 3000, StaticLoad.Equivalent(Roller(15), 1000, 3000), 1e-9);
        Assert.Equal(1000 + 0.44 * cotangent * 3000, StaticLoad.Equivalent(Roller(15, 2), 1000, 3000), 1e-9);
    }

    // Rollers: F_r/(2·Y) with Y = 0.4·cot α is 1.25·tan α·F_r.
    [Fact]
    public void A_radial_load_on_a_slanted_contact_pushes_along_the_axis()
    {
        Assert.Equal(1140, InducedThrust.Of(Angular(40), 1000), 1e-9);
        Assert.Equal(1250 * Math.Tan(0.2), InducedThrust.Of(new(BearingKind.AngledRoller, 0.2), 1000), 1e-9);
        Assert.Equal(0, InducedThrust.Of(Deep, 1000));
        Assert.Equal(0, InducedThrust.Of(Angular(40, 2), 1000));
    }

    // Shaft in balance, no bearing below its own thrust, and at least one at exactly that: this has one solution.
    [Fact]
    public void A_pair_balances_its_shaft_and_none_is_below_its_own_thrust() =>
        Gen.Select(Gen.Double[0, 5000], Gen.Double[0, 5000], Gen.Double[-8000, 8000]).Sample((first, second, external) =>
        {
            var pair = InducedThrust.OfPair(first, second, external);
            return Math.Abs(pair.First - pair.Second - external) < 1e-9
                && pair.First >= first - 1e-9 && pair.Second >= second - 1e-9
                && (Math.Abs(pair.First - first) < 1e-9 || Math.Abs(pair.Second - second) < 1e-9);
        });

    [Fact]
    public void What_the_source_does_not_cover_is_refused()
    {
        Refusal.Says("no axial load on its raceways", () => DynamicLoad.Equivalent(new(BearingKind.NeedleRoller), 100, 1));
        Refusal.Says("no axial load on its raceways", () => StaticLoad.Equivalent(new(BearingKind.CylindricalRoller), 100, 1));
        Refusal.Says("no factors for a contact angle of 33°, only for 15°, 20°", () => DynamicLoad.Equivalent(Angular(33), 100, 1));
        Refusal.Says("no factors for a contact angle of 33°", () => StaticLoad.Equivalent(Angular(33), 100, 1));
        Refusal.Says("depend on f₀·F_a/C₀, which is not stated", () => DynamicLoad.Equivalent(Deep, 100, 50));
        Refusal.Says("the radial load must not be below zero", () => DynamicLoad.Equivalent(Deep, -1, 0));
        Refusal.Says("has no contact angle", () => new BearingType(BearingKind.DeepGrooveBall, 0.1).ContactAngle);
        Refusal.Says("the contact angle must lie between", () => new BearingType(BearingKind.AngledRoller).ContactAngle);
        Refusal.Says("one or two rows; it has 3", () => new BearingType(BearingKind.DeepGrooveBall, 0, 3).Rows);
    }
}
