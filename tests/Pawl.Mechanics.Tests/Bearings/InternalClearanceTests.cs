using CsCheck;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Bearings;

public class InternalClearanceTests
{
    // ISO 5753, radial internal clearance of deep groove ball bearings, µm: C2, normal, C3, C4, C5, each least and greatest;
    // reprinted on two public pages. Where one of them is misprinted, the other has the number.
    [Theory]
    [InlineData(10, new[] { 0, 7, 2, 13, 8, 23, 14, 29, 20, 37 })]
    [InlineData(18, new[] { 0, 9, 3, 18, 11, 25, 18, 33, 25, 45 })]
    [InlineData(20, new[] { 0, 10, 5, 20, 13, 28, 20, 36, 28, 48 })]
    [InlineData(30, new[] { 1, 11, 5, 20, 13, 28, 23, 41, 30, 53 })]
    [InlineData(35, new[] { 1, 11, 6, 20, 15, 33, 28, 46, 40, 64 })]
    [InlineData(45, new[] { 1, 11, 6, 23, 18, 36, 30, 51, 45, 73 })]
    [InlineData(65, new[] { 1, 15, 8, 28, 23, 43, 38, 61, 55, 90 })]
    [InlineData(80, new[] { 1, 15, 10, 30, 25, 51, 46, 71, 65, 105 })]
    [InlineData(100, new[] { 1, 18, 12, 36, 30, 58, 53, 84, 75, 120 })]
    public void Clearances_of_deep_groove_balls_match_the_print(double bore, int[] printed) =>
        Assert.Equal(printed.Select(micrometres => micrometres / 1000.0), Row(BearingKind.DeepGrooveBall, bore));

    // The same standard, cylindrical roller bearings with a cylindrical bore; reprinted on a public page.
    [Theory]
    [InlineData(24, new[] { 0, 25, 20, 45, 35, 60, 50, 75, 65, 90 })]
    [InlineData(25, new[] { 0, 25, 20, 45, 35, 60, 50, 75, 70, 95 })]
    [InlineData(40, new[] { 5, 30, 25, 50, 45, 70, 60, 85, 80, 105 })]
    [InlineData(50, new[] { 5, 35, 30, 60, 50, 80, 70, 100, 95, 125 })]
    [InlineData(60, new[] { 10, 40, 40, 70, 60, 90, 80, 110, 110, 140 })]
    [InlineData(70, new[] { 10, 45, 40, 75, 65, 100, 90, 125, 130, 165 })]
    [InlineData(90, new[] { 15, 50, 50, 85, 75, 110, 105, 140, 155, 190 })]
    public void Clearances_of_rollers_match_the_print(double bore, int[] printed)
    {
        Assert.Equal(printed.Select(micrometres => micrometres / 1000.0), Row(BearingKind.CylindricalRoller, bore));
        Assert.Equal(Row(BearingKind.CylindricalRoller, bore), Row(BearingKind.NeedleRoller, bore));
    }

    [Fact]
    public void A_higher_class_has_more_play() =>
        Gen.Select(Gen.OneOf(Gen.Const(BearingKind.DeepGrooveBall), Gen.Const(BearingKind.NeedleRoller)), Gen.Double[6.01, 100], Gen.Int[0, 3]).Sample((kind, bore, index) =>
        {
            var (lower, higher) = (InternalClearance.New(kind, (ClearanceClass)index, bore), InternalClearance.New(kind, (ClearanceClass)(index + 1), bore));
            return higher.Min > lower.Min && higher.Max > lower.Max && lower.Min < lower.Max;
        });

    // Raceways of 25 mm and 41 mm, 90 °C inside, 70 °C outside: balls as warm as the inner ring 12e-6·41·20; at 80 °C 12e-6·16·10
    // less.
    [Fact]
    public void Losses_by_warmth_are_worked_by_hand()
    {
        Assert.Equal(0.00984, InternalClearance.ThermalLoss(25, 41, 90, 70, 90), 1e-9);
        Assert.Equal(0.00792, InternalClearance.ThermalLoss(25, 41, 90, 70, 80), 1e-9);
    }

    // A body of one material and one warmth grows in proportion and keeps its clearances; ceramic balls grow less, and play
    // comes.
    [Fact]
    public void Even_warmth_loses_nothing_unless_the_balls_are_ceramic() =>
        Gen.Select(Gen.Double[10, 60], Gen.Double[4, 40], Gen.Double[30, 150]).Sample((inner, more, hot) =>
            Math.Abs(InternalClearance.ThermalLoss(inner, inner + more, hot, hot, hot)) < 1e-12
            && Math.Abs(
                InternalClearance.ThermalLoss(
                    inner, inner + more, hot, hot, hot, elementExpansion: InternalClearance.SiliconNitrideExpansion)
                + (12e-6 - 3.2e-6) * more * (hot - 20)) < 1e-12);

    // Clearance measured: every part drawn at its warm size, E − F − 2·D_w before and after.
    [Fact]
    public void The_loss_is_that_of_warm_parts_measured() =>
        Gen.Select(Gen.Double[10, 60], Gen.Double[2, 20], Gen.Double[-30, 150], Gen.Double[-30, 150], Gen.Double[-30, 150]).Sample(
            (inner, element, innerHot, outerHot, elementHot) =>
            {
                static double Warm(double size, double temperature) => size * (1 + 12e-6 * (temperature - 20));
                var outer = inner + 2 * element;
                var clearance = Warm(outer, outerHot) - Warm(inner, innerHot) - 2 * Warm(element, elementHot);
                return Math.Abs(InternalClearance.ThermalLoss(inner, outer, innerHot, outerHot, elementHot) + clearance) < 1e-9;
            });

    // Normal class at 20 mm, 5…20 µm; shaft takes 2…9, housing 0…3, warmth 0…6: least 5 − 9 − 3 − 6 = −13, greatest 20 − 2 = 18.
    [Fact]
    public void Operating_clearance_takes_all_worst_cases_at_once()
    {
        var operating = InternalClearance.Operating(new(0.005, 0.020), new(0.002, 0.009), new(0, 0.003), new(0, 0.006));
        Assert.Equal(-0.013, operating.Min, 1e-12);
        Assert.Equal(0.018, operating.Max, 1e-12);
    }

    [Fact]
    public void No_bearing_within_its_tolerances_leaves_the_operating_clearance() =>
        Gen.Select(Range(0, 0.05), Range(0, 0.02), Range(0, 0.02), Range(-0.01, 0.02), Gen.Double[0, 1], Gen.Double[0, 1]).Sample(
            (fresh, inner, outer, thermal, one, other) =>
            {
                static double In(Interval extent, double place) => extent.Min + place * (extent.Max - extent.Min);
                var operating = InternalClearance.Operating(fresh, inner, outer, thermal);
                var some = In(fresh, one) - In(inner, other) - In(outer, one * other) - In(thermal, 1 - one);
                return some >= operating.Min - 1e-12 && some <= operating.Max + 1e-12;
            });

    // Internals of a bearing 20 × 47 × 14, common practice: raceways of 25.6 mm and 41.4 mm.
    [Fact]
    public void Raceways_are_guessed_within_some_hundredths()
    {
        var (inner, outer) = InternalClearance.Raceways(new(BearingKind.DeepGrooveBall), 20, 47);
        Assert.Equal(33.5 - 7.938, inner, 0.01 * inner);
        Assert.Equal(33.5 + 7.938, outer, 0.01 * outer);
        Assert.Equal((26.75, 40.25), InternalClearance.Raceways(new(BearingKind.CylindricalRoller), 20, 47));
    }

    [Fact]
    public void What_the_standard_does_not_cover_is_refused()
    {
        Refusal.Says("bore of 101 mm; it covers over 6 mm to 100 mm", () => InternalClearance.New(BearingKind.DeepGrooveBall, ClearanceClass.C3, 101).Min);
        Refusal.Says("bore of 6 mm", () => InternalClearance.New(BearingKind.DeepGrooveBall, ClearanceClass.C3, 6).Min);
        Refusal.Says("no classes of clearance for angular contact ball", () => InternalClearance.New(BearingKind.AngularContactBall, ClearanceClass.C3, 20).Min);
        Refusal.Says("the outer raceway must be above the inner", () => InternalClearance.ThermalLoss(30, 30, 20, 20, 20));
    }

    private static double[] Row(BearingKind kind, double bore) =>
        [.. Enum.GetValues<ClearanceClass>().Select(@class => InternalClearance.New(kind, @class, bore)).SelectMany(extent => new[] { extent.Min, extent.Max })];

    private static Gen<Interval> Range(double from, double to) =>
        Gen.Select(Gen.Double[from, to], Gen.Double[from, to]).Select((one, other) => new Interval(Math.Min(one, other), Math.Max(one, other)));
}
