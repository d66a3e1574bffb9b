using CsCheck;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Bearings;

public class ShaftReactionsTests
{
    private static readonly ShaftSupport[] Two = [new(0, true), new(100, false)];

    private static readonly Gen<ShaftLoad> Load = Gen.Select(
        Gen.Double[-100, 300], Gen.Double[-2000, 2000], Gen.Double[-2000, 2000], Gen.Double[-500, 500], Gen.Double[-20_000, 20_000], Gen.Double[-20_000, 20_000])
        .Select((position, x, y, axial, coupleX, coupleY) => new ShaftLoad(position, x, y, axial, coupleX, coupleY));

    // Every textbook: a load at three quarters of the span leaves a quarter to the far bearing; overhung by half of the span it
    // lays one and a half of itself on the near one and lifts the far one by half.
    [Theory]
    [InlineData(75, -250, -750)]
    [InlineData(50, -500, -500)]
    [InlineData(150, 500, -1500)]
    [InlineData(-20, -1200, 200)]
    public void Loads_between_and_overhung_are_worked_by_hand(double position, double first, double second)
    {
        var reactions = ShaftReactions.Of(Two, [new(position, 1000, 0)]);
        Assert.Equal((first, 0), (reactions[0].X, reactions[0].Y));
        Assert.Equal((second, 0), (reactions[1].X, reactions[1].Y));
    }

    // Force at a radius: 300 N along the axis at y = 40 mm turns the shaft about x by 12 000 N·mm: ±120 N at 100 mm.
    [Fact]
    public void An_axial_force_off_the_axis_bends_and_is_held_by_the_locating_bearing()
    {
        var reactions = ShaftReactions.Of(Two, [ShaftLoad.AtPoint(0, 40, 50, 0, 0, 300)]);
        Assert.Equal(120, Math.Abs(reactions[1].Y), 1e-9);
        Assert.Equal(-reactions[0].Y, reactions[1].Y, 1e-9);
        Assert.Equal((-300, 0), (reactions[0].Axial, reactions[1].Axial));
        Assert.Equal(0, reactions[1].X);
    }

    // Newton: all forces, and all moments r × F about any point whatever, add up to nothing. Moments by the vector product in
    // space.
    [Fact]
    public void Nothing_is_left_over_about_any_point() =>
        Gen.Select(Load.Array[1, 6], Gen.Double[-50, 50], Gen.Double[60, 200], Gen.Double[-500, 500], Gen.Bool).Sample((loads, one, other, point, locating) =>
        {
            ShaftSupport[] supports = [new(one, locating), new(other, !locating)];
            var reactions = ShaftReactions.Of(supports, loads);
            var all = loads.Select(load => (load.Position, load.X, load.Y, load.Axial, load.CoupleX, load.CoupleY))
                .Concat(supports.Zip(reactions, (support, reaction) => (support.Position, reaction.X, reaction.Y, reaction.Axial, 0.0, 0.0)))
                .ToArray();
            var moment = (X: 0.0, Y: 0.0);
            foreach (var (position, x, y, _, coupleX, coupleY) in all)
            {
                // r = (0, 0, z) × F = (−z·F_y, z·F_x, 0).
                moment.X += coupleX - (position - point) * y;
                moment.Y += coupleY + (position - point) * x;
            }

            return Math.Abs(all.Sum(force => force.X)) < 1e-6 && Math.Abs(all.Sum(force => force.Y)) < 1e-6
                && Math.Abs(all.Sum(force => force.Axial)) < 1e-9
                && Math.Abs(moment.X) < 1e-4 && Math.Abs(moment.Y) < 1e-4
                && reactions[locating ? 1 : 0].Axial == 0;
        });

    // A pitch point anywhere about the shaft: the couple is the vector product of its place and the force.
    [Fact]
    public void A_force_at_a_point_has_the_couple_of_the_vector_product() =>
        Gen.Select(Gen.Double[-50, 50], Gen.Double[-50, 50], Gen.Double[-500, 500], Gen.Double[-500, 500], Gen.Double[-500, 500]).Sample((x, y, fx, fy, fz) =>
        {
            var load = ShaftLoad.AtPoint(x, y, 30, fx, fy, fz);

            // r × F with r = (x, y, 0): (y·F_z − 0·F_y, 0·F_x − x·F_z, …).
            return load == new ShaftLoad(30, fx, fy, fz, y * fz - 0 * fy, 0 * fx - x * fz);
        });

    [Fact]
    public void Turning_the_plane_turns_the_reactions() =>
        Gen.Select(Load.Array[1, 5], Gen.Double[0, 7]).Sample((loads, angle) =>
        {
            var (cosine, sine) = (Math.Cos(angle), Math.Sin(angle));
            var turned = loads.Select(load => new ShaftLoad(
                load.Position, cosine * load.X - sine * load.Y, sine * load.X + cosine * load.Y, load.Axial,
                cosine * load.CoupleX - sine * load.CoupleY, sine * load.CoupleX + cosine * load.CoupleY)).ToArray();
            var (before, after) = (ShaftReactions.Of(Two, loads), ShaftReactions.Of(Two, turned));
            return Math.Abs(before[0].Radial - after[0].Radial) < 1e-6 && Math.Abs(before[1].Radial - after[1].Radial) < 1e-6;
        });

    [Fact]
    public void What_statics_cannot_tell_is_refused()
    {
        Refusal.Says("three bearings need the stiffness of the shaft", () => ShaftReactions.Of([new(0, true), new(50, false), new(100, false)], [])[0].X);
        Refusal.Says("a shaft on 1 bearing is not held", () => ShaftReactions.Of([new(0, true)], [])[0].X);
        Refusal.Says("the distance of the bearings must not be zero", () => ShaftReactions.Of([new(5, true), new(5, false)], [])[0].X);
        Refusal.Says("two locating bearings", () => ShaftReactions.Of([new(0, true), new(5, true)], [])[0].X);
        Refusal.Says("no bearing holds the shaft against its axial load of 7 N", () => ShaftReactions.Of([new(0, false), new(5, false)], [new(1, 1, 1, 7)])[0].X);
        Assert.Equal(0, ShaftReactions.Of([new(0, false), new(5, false)], [new(1, 1, 1)])[0].Axial);
    }
}
