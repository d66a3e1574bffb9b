using CsCheck;
using Pawl.Mechanics.Gears;

namespace Pawl.Mechanics.Tests.Gears;

public class InternalInterferenceTests
{
    // Pinion of 40 teeth, full addendum, 20°. The corner of the pinion's tip is rolled through the ring, or pushed in radially,
    // and its deepest overlap with a drawn ring tooth is noted.
    [Theory]
    [InlineData(40, 45)]
    [InlineData(40, 47)]
    [InlineData(40, 48)]
    [InlineData(30, 36)]
    [InlineData(60, 66)]
    public void Tips_that_collide_overlap_by_the_negative_slack(int pinion, int ring)
    {
        var pair = new Pair(1, pinion, -ring);
        var slack = Assert.IsType<Interference.Slack>(pair.TipInterference).Radians;

        Assert.True(slack < 0);
        Assert.Equal(-slack, Rolled(pair), 1e-5);
    }

    [Theory]
    [InlineData(40, 50)]
    [InlineData(40, 52)]
    [InlineData(20, 60)]
    public void Tips_with_slack_roll_free(int pinion, int ring)
    {
        var pair = new Pair(1, pinion, -ring);

        Assert.True(Assert.IsType<Interference.Slack>(pair.TipInterference).Radians > 0);
        Assert.Equal(0, Rolled(pair), 1e-9);
    }

    [Theory]
    [InlineData(40, 50)]
    [InlineData(40, 53)]
    [InlineData(40, 55)]
    [InlineData(25, 38)]
    public void A_pinion_pushed_in_radially_overlaps_by_the_negative_slack_of_trimming(int pinion, int ring)
    {
        var pair = new Pair(1, pinion, -ring);
        var slack = Assert.IsType<Interference.Slack>(pair.Trimming).Radians;

        Assert.True(slack < 0);
        // 1e-5: the steps of the search.
        Assert.Equal(-slack * pinion / ring, Pushed(pair), 1e-5);
    }

    [Theory]
    [InlineData(40, 60)]
    [InlineData(20, 60)]
    public void A_pinion_with_slack_of_trimming_goes_in_radially(int pinion, int ring)
    {
        var pair = new Pair(1, pinion, -ring);

        Assert.True(Assert.IsType<Interference.Slack>(pair.Trimming).Radians > 0);
        Assert.Equal(0, Pushed(pair), 1e-9);
    }

    // Handbooks: full depth at 20° needs a difference of about 9 or 10 teeth, and about 17 to go in radially.
    [Fact]
    public void Slack_changes_sign_at_the_handbooks_difference_of_teeth()
    {
        int FirstFree(Func<Pair, Interference> check)
        {
            var difference = 3;
            while (check(new Pair(1, 40, -40 - difference)) is not Interference.Slack { Radians: >= 0 })
            {
                difference++;
            }

            return difference;
        }

        Assert.InRange(FirstFree(pair => pair.TipInterference), 9, 10);
        Assert.InRange(FirstFree(pair => pair.Trimming), 16, 18);
    }

    // |ρ_A1| = √(r_a2² − r_b2²) − a·sin α_w, in magnitudes as textbooks have it.
    [Fact]
    public void Involute_slack_is_the_ring_tips_distance_past_the_pinions_tangent_point() =>
        Gen.Select(Gen.Int[15, 40], Gen.Int[20, 80], Gen.Double[-0.3, 0.3]).Sample((pinion, more, shift) =>
        {
            var pair = new Pair(2, pinion, -pinion - more, shift, -shift, Addendum: 0.8);
            var expected = Math.Sqrt(Math.Pow(pair.Tip2 / 2, 2) - Math.Pow(pair.Base2 / 2, 2))
                - Math.Abs(pair.Centre) * Math.Sin(pair.WorkingAngle);
            return Math.Abs(
                InternalInterference.InvoluteSlack(pair.Centre, pair.WorkingAngle, pair.Tip2, pair.Base2) - expected) < 1e-9;
        });

    [Fact]
    public void Tip_circles_that_do_not_cross_leave_every_tip_free()
    {
        var pair = new Pair(1, 20, -60, Addendum: 0.9);
        var short2 = pair.Centre * 2 - pair.Tip1 - 0.01;

        Assert.IsType<Interference.TipCirclesApart>(InternalInterference.Tip(
            20, -60, pair.Tip1, pair.Base1, short2, pair.Base2, pair.Centre, pair.WorkingAngle));
        Assert.IsType<Interference.TipCirclesApart>(InternalInterference.Trimming(
            20, -60, pair.Tip1, pair.Base1, short2, pair.Base2, pair.Centre, pair.WorkingAngle));
    }

    [Fact]
    public void A_pair_outside_of_the_formulas_is_not_called_free()
    {
        var pair = new Pair(1, 55, -60);

        // A ring whose tips reach in past the pinion's own tip circle.
        Assert.IsType<Interference.NotEvaluable>(InternalInterference.Tip(
            55, -60, 62, pair.Base1, -56.5, pair.Base2, pair.Centre, pair.WorkingAngle));
        Assert.Contains(
            "radially",
            Assert.IsType<Interference.NotEvaluable>(InternalInterference.Trimming(
                55, -60, 62, pair.Base1, -56.5, pair.Base2, pair.Centre, pair.WorkingAngle)).Reason,
            StringComparison.Ordinal);

        // A ring so far shifted that its tip has the greater pressure angle.
        Assert.Contains(
            "does not cover",
            Assert.IsType<Interference.NotEvaluable>(InternalInterference.Trimming(
                40, -60, 40.4, pair.Base1 * 40 / 55, -61.2, pair.Base2, -10.5, pair.WorkingAngle)).Reason,
            StringComparison.Ordinal);
    }

    [Fact]
    public void An_external_pair_is_refused()
    {
        var pair = new Pair(1, 20, 60);

        Assert.Contains(
            "not an internal pair",
            Assert.Throws<OutsideValidityException>(() => pair.TipInterference).Message,
            StringComparison.Ordinal);
    }

    private static double Rolled(Pair pair)
    {
        var collision = new Collision(pair);
        double deepest = 0, at = 0;
        void Roll(double from, double to, double step)
        {
            for (var turn = from; turn <= to; turn += step)
            {
                var overlap = collision.Overlap(turn, collision.Centre);
                (deepest, at) = overlap > deepest ? (overlap, turn) : (deepest, at);
            }
        }

        Roll(-2.5, 2.5, 1e-4);
        Roll(at - 1e-4, at + 1e-4, 1e-6);
        return deepest;
    }

    private static double Pushed(Pair pair)
    {
        var collision = new Collision(pair);
        double deepest = 0, atTurn = 0, atPart = 0;
        void Push(double fromTurn, double toTurn, double turnStep, double fromPart, double toPart, double partStep)
        {
            for (var turn = fromTurn; turn <= toTurn; turn += turnStep)
            {
                for (var part = fromPart; part <= toPart; part += partStep)
                {
                    var overlap = collision.Overlap(turn, collision.Centre * part);
                    (deepest, atTurn, atPart) = overlap > deepest ? (overlap, turn, part) : (deepest, atTurn, atPart);
                }
            }
        }

        Push(-1.6, 1.6, 4e-3, 0, 1, 2e-3);
        Push(atTurn - 8e-3, atTurn + 8e-3, 5e-5, Math.Max(0, atPart - 4e-3), Math.Min(1, atPart + 4e-3), 2e-5);
        return deepest;
    }

    /// <summary>A pinion tooth in a ring at the origin, both drawn; the pinion lies on the x axis.</summary>
    private sealed class Collision(Pair pair)
    {
        private readonly double _tip = pair.Tip1 / 2;
        private readonly double _ringTip = -pair.Tip2 / 2;
        private readonly double _ringBase = -pair.Base2 / 2;
        private readonly double _ringReference = -pair.D2 / 2;
        private readonly double _ringThickness = ClosedForms.NormalThickness(1, pair.Shift2, pair.NormalAngle);
        private readonly double _pitch = 2 * Math.PI / -pair.Teeth2;
        private readonly double _ratio = (double)pair.Teeth1 / -pair.Teeth2;
        private readonly double _halfTip = Drawing.HalfToothAngle(
            false,
            pair.Base1 / 2,
            pair.D1 / 2,
            ClosedForms.NormalThickness(1, pair.Shift1, pair.NormalAngle),
            pair.Tip1 / 2);

        public double Centre { get; } = -pair.Centre;

        /// <summary>
        /// How deep the corners of a pinion tooth, turned off the x axis, lie in a ring tooth, rad of the ring, which has turned along
        /// from where a space faced the tooth.
        /// </summary>
        public double Overlap(double turn, double distance) =>
            Math.Max(CornerOverlap(turn - _halfTip, turn, distance), CornerOverlap(turn + _halfTip, turn, distance));

        private double CornerOverlap(double corner, double turn, double distance)
        {
            var x = distance + _tip * Math.Cos(corner);
            var y = _tip * Math.Sin(corner);
            var radius = Math.Sqrt(x * x + y * y);
            if (radius < _ringTip)
            {
                return 0;
            }

            var angle = Math.Atan2(y, x) - turn * _ratio - _pitch / 2;
            var fromTooth = Math.Abs(angle - _pitch * Math.Round(angle / _pitch));
            var overlap = Drawing.HalfToothAngle(true, _ringBase, _ringReference, _ringThickness, radius) - fromTooth;
            return overlap < 1e-12 ? 0 : overlap;
        }
    }
}
