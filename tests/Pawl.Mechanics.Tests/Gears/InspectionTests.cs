using CsCheck;
using Pawl.Mechanics.Gears;

namespace Pawl.Mechanics.Tests.Gears;

public class InspectionTests
{
    private static readonly double Twenty = Degrees.Rad(20);

    private static readonly Gen<Gear> External =
        Gen.Select(Gen.Int[14, 90], Gen.Double[0.5, 8], Gen.Double[0, 35], Gen.Double[-0.1, 0.6]).Select(
            (teeth, module, helix, shift) => new Gear(teeth, module, Degrees.Rad(helix), shift + (teeth < 20 ? 0.3 : 0)));

    private static readonly Gen<Gear> Any = Gen.OneOf(
        External,
        Gen.Select(Gen.Int[50, 150], Gen.Double[0.5, 8], Gen.Double[0, 35], Gen.Double[-0.4, 0.4]).Select(
            (teeth, module, helix, shift) => new Gear(-teeth, module, Degrees.Rad(helix), shift)));

    // W_k/m at 20°, from tables of base tangent lengths in gear handbooks, from memory; 7.6604 = cos 20° · (2.5π + 20·inv 20°).
    // Helical m 3, z 24, β 25°, x 0.4 over 5 teeth: 42.0085, a handbook example, from memory.
    [Fact]
    public void Base_tangent_lengths_match_the_handbooks()
    {
        Assert.Equal(7.6604, Inspection.BaseTangentLength(3, 20, 1, Twenty, Twenty, 0), 0.00005);
        Assert.Equal(7.66043938, Inspection.BaseTangentLength(3, 20, 1, Twenty, Twenty, 0), 5e-9);

        var helical = new Gear(24, 3, Degrees.Rad(25), 0.4);
        Assert.Equal(42.0085, helical.Span(5), 0.00005);
        Assert.Equal(42.0084718, helical.Span(5), 5e-8);
        Assert.Equal(5, helical.BestSpan);
        Assert.Equal(3, new Gear(20, 1, 0, 0).BestSpan);
    }

    // Numbers of teeth to span at 20°, x = 0, from tables of base tangent lengths in gear handbooks, from memory: z/9 + ½ rounded.
    [Theory]
    [InlineData(17, 2)]
    [InlineData(25, 3)]
    [InlineData(30, 4)]
    [InlineData(40, 5)]
    [InlineData(60, 7)]
    [InlineData(100, 12)]
    public void The_number_of_teeth_to_span_matches_the_handbooks(int teeth, int span) =>
        Assert.Equal(span, new Gear(teeth, 1, 0, 0).BestSpan);

    [Fact]
    public void One_more_tooth_spanned_adds_one_normal_base_pitch() =>
        External.Sample(gear =>
        {
            var k = gear.BestSpan;
            return k == gear.Teeth
                || Near(gear.Span(k + 1) - gear.Span(k), Math.PI * gear.Module * Math.Cos(Twenty), gear.Module);
        });

    [Fact]
    public void The_best_span_touches_nearest_the_V_circle() =>
        External.Sample(gear =>
        {
            var middle = gear.Diameter + 2 * gear.Shift * gear.Module;
            var best = gear.BestSpan;
            var off = Math.Abs(Across(gear, best) - AcrossAt(gear, middle));
            return (best <= 2 || off <= Math.Abs(Across(gear, best - 1) - AcrossAt(gear, middle)) + 1e-9)
                && (best == gear.Teeth || off <= Math.Abs(Across(gear, best + 1) - AcrossAt(gear, middle)) + 1e-9);
        });

    // A drawn spur gear: the outermost point of the involute is where the anvil touches.
    [Theory]
    [InlineData(20, 0, 3)]
    [InlineData(20, 0.4, 3)]
    [InlineData(37, -0.2, 5)]
    public void The_span_of_a_drawn_gear_is_the_base_tangent_length(int teeth, double shift, int k)
    {
        var gear = new Gear(teeth, 2, 0, shift);
        var drawn = Drawing.Span(teeth, gear.BaseDiameter / 2, gear.Diameter / 2, gear.Thickness, k);

        Assert.Equal(drawn.Length, gear.Span(k), 1e-6);
    }

    [Fact]
    public void A_narrow_helical_gear_cannot_be_spanned()
    {
        var gear = new Gear(24, 3, Degrees.Rad(25), 0.4);
        var needed = gear.Span(5) * Math.Sin(gear.BaseHelix);

        Assert.Equal(0, Inspection.BaseTangentFaceWidthReserve(needed, gear.Span(5), gear.BaseHelix), 1e-12);
        Assert.Equal(-1, Inspection.BaseTangentFaceWidthReserve(needed - 1, gear.Span(5), -gear.BaseHelix), 1e-12);
    }

    // Pins of 1.728/DP on gears of one diametral pitch at 20°: the classic table gives M·DP = 22.3900 for 20 teeth and 23.3321 for
    // 21. From memory; agrees with an independent program (22.3900182, 23.332122).
    [Theory]
    [InlineData(20, 22.3900, 22.3900182, 24.5519984)]
    [InlineData(21, 23.3321, 23.332122, 24.3753033)]
    public void The_dimension_over_pins_matches_the_classic_table(int teeth, double table, double exact, double degrees)
    {
        var gear = new Gear(teeth, 1, 0, 0);

        Assert.Equal(table, gear.OverBalls(1.728), 0.00005);
        Assert.Equal(exact, gear.OverBalls(1.728), 5e-8);
        Assert.Equal(degrees, Degrees.Deg(gear.BallAngle(1.728)), 5e-8);
    }

    // A handbook example, from memory: m 1, z 20, x 0, pins of 1.7: M = 22.2941. Helical m_n 1, z 20, β 15°, x 0.4, balls of 2:
    // M = 24.5696.
    [Fact]
    public void The_dimension_over_balls_matches_handbook_examples()
    {
        Assert.Equal(22.2941, new Gear(20, 1, 0, 0).OverBalls(1.7), 0.00005);
        Assert.Equal(24.5696, new Gear(20, 1, Degrees.Rad(15), 0.4).OverBalls(2), 0.00005);
    }

    // ISO 21771 formula worked out by an independent program.
    [Fact]
    public void The_dimension_between_balls_of_a_ring_matches_an_independent_program()
    {
        var ring = new Gear(-60, 1, 0, 0);

        Assert.Equal(57.698493, ring.OverBalls(1.68), 5e-7);
        Assert.Equal(18.2812351, Degrees.Deg(ring.BallAngle(1.68)), 5e-8);
    }

    // A ball laid into a drawn space: the centre moves until the nearest flank point is half a ball away.
    [Theory]
    [InlineData(20, 0, 1.728)]
    [InlineData(27, 0.3, 1.9)]
    [InlineData(-60, 0, 1.68)]
    [InlineData(-45, -0.2, 1.8)]
    public void A_ball_in_a_drawn_space_lies_where_the_formula_says(int teeth, double shift, double ball)
    {
        var gear = new Gear(teeth, 1, 0, shift);
        var drawn = Drawing.BallCentreRadius(
            teeth, Math.Abs(gear.BaseDiameter) / 2, Math.Abs(gear.Diameter) / 2, gear.Thickness, ball);

        Assert.Equal(drawn.Centre, BallInspection.CentreDiameter(gear.BaseDiameter, gear.BallAngle(ball)) / 2, 1e-6);
    }

    [Fact]
    public void A_measured_dimension_gives_back_the_thickness_allowance() =>
        Gen.Select(Any, Gen.Double[-0.05, 0]).Sample((gear, factor) =>
        {
            var allowance = factor * gear.Module;
            var ball = gear.ClassicPin;
            var reading = gear.OverBalls(ball, allowance);
            var found = BallInspection.ThicknessAllowance(
                reading, ball, gear.Teeth, gear.BaseDiameter, gear.Module, Twenty, gear.TransverseAngle, gear.Shift);
            return Math.Abs(found - allowance) <= 1e-9 * gear.Module;
        });

    [Fact]
    public void Span_and_balls_read_the_same_thickness_from_the_same_gear() =>
        Gen.Select(External, Gen.Double[-0.05, 0]).Sample((gear, factor) =>
        {
            // Thinning by E_sn is the same gear as one generated with x_E.
            var allowance = factor * gear.Module;
            var thin = gear with
            {
                Shift = ClosedForms.GeneratingProfileShift(gear.Shift, allowance, gear.Module, Twenty),
            };
            var ball = gear.ClassicPin;
            return Near(gear.OverBalls(ball, allowance), thin.OverBalls(ball), gear.Diameter)
                && Near(gear.Span(gear.BestSpan, allowance), thin.Span(gear.BestSpan), gear.Diameter);
        });

    // The classic pin is 1.728/DP outside and 1.68/DP in a ring; the ideal one at the reference circle lies close to both.
    [Fact]
    public void The_ideal_ball_lies_near_the_classic_pin()
    {
        Assert.Equal(1.728, new Gear(20, 1, 0, 0).ClassicPin, 0.03);
        Assert.Equal(1.68, new Gear(-60, 1, 0, 0).ClassicPin, 0.03);
    }

    [Fact]
    public void A_thicker_tooth_lifts_the_balls_of_an_external_gear_and_pushes_those_of_a_ring_in() =>
        Any.Sample(gear =>
        {
            var ball = gear.ClassicPin;
            var change = gear.OverBalls(ball) - gear.OverBalls(ball, -0.001 * gear.Module);
            return gear.Teeth > 0 ? change > 0 : change < 0;
        });

    [Fact]
    public void A_larger_ball_reads_more_outside_and_less_inside() =>
        Any.Sample(gear =>
        {
            var ball = gear.ClassicPin;
            var change = gear.OverBalls(1.01 * ball) - gear.OverBalls(ball);
            return gear.Teeth > 0 ? change > 0 : change < 0;
        });

    [Theory]
    [InlineData(20)]
    [InlineData(-60)]
    public void The_classic_pin_stands_proud_and_clears_the_root(int teeth)
    {
        var gear = new Gear(teeth, 1, 0, 0);
        var ball = teeth > 0 ? 1.728 : 1.68;
        var centre = BallInspection.CentreDiameter(gear.BaseDiameter, gear.BallAngle(ball));

        // Even teeth: the reading itself shows how far the ball stands over the tip circle |z ± 2|.
        Assert.Equal(
            Math.Abs(gear.OverBalls(ball) - Math.Abs(teeth + 2)) / 2,
            BallInspection.StandsProud(centre, ball, teeth + 2),
            1e-12);
        Assert.True(BallInspection.StandsProud(centre, ball, teeth + 2) > 0);
        Assert.True(BallInspection.RootClearance(centre, ball, teeth - 2.5) > 0);
        Assert.True(BallInspection.StandsProud(centre, 1.2, teeth + 2) < BallInspection.StandsProud(centre, ball, teeth + 2));
        Assert.True(BallInspection.RootClearance(centre, 3.5, teeth - 2.5) < 0);
    }

    [Fact]
    public void A_ball_that_does_not_fit_is_refused_in_plain_words()
    {
        Refuses("too small", () => new Gear(20, 1, 0, 0).OverBalls(1.1));
        Refuses("too large", () => new Gear(-20, 1, 0, 0).OverBalls(2));
        Refuses("internal gear", () => new Gear(-20, 1, 0, 0).Span(3));
        Refuses("cannot be spanned", () => new Gear(20, 1, 0, 0).Span(21));
        Refuses(
            "inside the base circle",
            () => BallInspection.ThicknessAllowance(20, 1.728, 20, new Gear(20, 1, 0, 0).BaseDiameter, 1, Twenty, Twenty, 0));
    }

    private static double Across(Gear gear, int k) => gear.Span(k) * Math.Cos(gear.BaseHelix);

    private static double AcrossAt(Gear gear, double diameter) => diameter <= gear.BaseDiameter
        ? 0
        : Math.Sqrt(diameter * diameter - gear.BaseDiameter * gear.BaseDiameter);

    private static void Refuses(string reason, Func<double> formula) => Assert.Contains(
        reason, Assert.Throws<OutsideValidityException>(() => formula()).Message, StringComparison.Ordinal);

    private static bool Near(double expected, double actual, double scale) => Math.Abs(expected - actual) <= 1e-9 * scale;

    private sealed record Gear(int Teeth, double Module, double Helix, double Shift)
    {
        public double TransverseAngle => ToothGeometry.TransversePressureAngle(Twenty, Helix);

        public double BaseHelix => ToothGeometry.BaseHelixAngle(Twenty, Helix);

        public double Diameter =>
            ToothGeometry.ReferenceDiameter(Teeth, ToothGeometry.TransverseModule(Module, Helix));

        public double BaseDiameter => ToothGeometry.BaseDiameter(Diameter, TransverseAngle);

        public double Thickness => ClosedForms.NormalThickness(Module, Shift, Twenty);

        public int BestSpan =>
            Inspection.BestTeethSpanned(Teeth, Module, Twenty, TransverseAngle, BaseHelix, Shift);

        public double ClassicPin =>
            (Teeth > 0 ? 1.728 : 1.68) * Module;

        public double Span(int k, double allowance = 0) =>
            Inspection.BaseTangentLength(k, Teeth, Module, Twenty, TransverseAngle, Shift, allowance);

        public double BallAngle(double ball, double allowance = 0) =>
            BallInspection.CentrePressureAngle(ball, Teeth, Module, Twenty, TransverseAngle, Shift, allowance);

        public double OverBalls(double ball, double allowance = 0) => BallInspection.Dimension(
            Teeth, BallInspection.CentreDiameter(BaseDiameter, BallAngle(ball, allowance)), ball);
    }
}
