using CsCheck;
using Pawl.Mechanics.Bearings;

namespace Pawl.Mechanics.Tests.Bearings;

/// <summary>Bodies of one axis that lean on each other.</summary>
public class SupportedBodiesTests
{
    private static readonly BodySupport Front = new("front", "shaft", null, 0);
    private static readonly BodySupport Spigot = new("spigot", "shaft", "carrier", 100);
    private static readonly BodySupport Near = new("near", "carrier", null, 120);
    private static readonly BodySupport Far = new("far", "carrier", null, 200);

    private static readonly SupportedBodies Two = new(["shaft", "carrier"], [Front, Spigot, Near, Far]);

    private static Dictionary<string, IReadOnlyList<ShaftLoad>> On(string body, params ShaftLoad[] loads) =>
        new(StringComparer.Ordinal) { [body] = loads };

    // Closed form: 1000 N at the middle of the shaft gives 500 N to the spigot; that loads the carrier 20 mm before its near bearing:
    // near 500·100/80 = 625 N, far −125 N.
    [Fact]
    public void A_shaft_that_sits_in_a_carrier_loads_it()
    {
        var found = Two.Solve(On("shaft", new ShaftLoad(50, -1000, 0)));

        Assert.Equal(500, found[Front].X, 1e-9);
        Assert.Equal(500, found[Spigot].X, 1e-9);
        Assert.Equal(625, found[Near].X, 1e-9);
        Assert.Equal(-125, found[Far].X, 1e-9);
        Assert.Equal("shaft", Two.HeldBy(Spigot));
        Assert.Equal("carrier", Two.HeldBy(Near));
    }

    // Statics of the whole: what the ground gives balances all loads, in force and in moment about the datum.
    [Fact]
    public void The_ground_balances_every_load() => Gen.Select(Loads, Loads, Gen.Double[-300, -10], Gen.Double[10, 300]).Sample((shaft, carrier, a, b) =>
    {
        BodySupport front = new("front", "shaft", null, a), spigot = new("spigot", "shaft", "carrier", b), near = new("near", null, "carrier", b + 15);
        BodySupport far = new("far", "carrier", null, b + 90);
        var system = new SupportedBodies(["shaft", "carrier"], [front, spigot, near, far]);
        var found = system.Solve(new Dictionary<string, IReadOnlyList<ShaftLoad>>(StringComparer.Ordinal) { ["shaft"] = shaft, ["carrier"] = carrier });

        (Reaction Force, double Position)[] ground = [(found[front], a), (found[near], b + 15), (found[far], b + 90)];
        ShaftLoad[] loads = [.. shaft, .. carrier];
        Assert.Equal(0, ground.Sum(each => each.Force.X) + loads.Sum(load => load.X), 1e-6);
        Assert.Equal(0, ground.Sum(each => each.Force.Y) + loads.Sum(load => load.Y), 1e-6);
        Assert.Equal(0, ground.Sum(each => -each.Position * each.Force.Y) + loads.Sum(load => load.CoupleX - (load.Position * load.Y)), 1e-4);
        Assert.Equal(0, ground.Sum(each => each.Position * each.Force.X) + loads.Sum(load => load.CoupleY + (load.Position * load.X)), 1e-4);
    });

    private static Gen<ShaftLoad[]> Loads => Gen.Select(
        Gen.Double[-200, 400], Gen.Double[-1e3, 1e3], Gen.Double[-1e3, 1e3], Gen.Double[-1e4, 1e4],
        (at, x, y, couple) => new ShaftLoad(at, x, y, 0, couple, -couple / 2)).Array[1, 4];

    [Fact]
    public void Three_bearings_on_one_shaft_need_its_stiffness()
    {
        var system = new SupportedBodies(["shaft"], [Front, new("middle", "shaft", null, 50), new("end", "shaft", null, 100)]);

        Assert.False(system.Holds("shaft", out var reason));
        Assert.Equal("3 bearings hold shaft: their loads need the stiffness of the shaft, which is not computed", reason);
        Assert.Null(system.HeldBy(Front));
    }

    [Fact]
    public void A_body_that_leans_on_one_that_swings_is_not_held_either()
    {
        var system = new SupportedBodies(["shaft", "carrier"], [Front, Spigot, Near]);

        Assert.False(system.Holds("carrier", out var carrier));
        Assert.Contains("carrier is not held", carrier, StringComparison.Ordinal);
        Assert.False(system.Holds("shaft", out var shaft));
        Assert.Equal("shaft leans on carrier, which is not held", shaft);
    }

    // ISO 492, normal class, from memory; a public table of washers of the same class has the same bores.
    [Theory]
    [InlineData(25, 0.010)]
    [InlineData(30, 0.010)]
    [InlineData(40, 0.012)]
    [InlineData(80, 0.015)]
    public void Bores_lie_below_their_nominal_size(double nominal, double lower)
    {
        Assert.Equal(nominal - lower, RingTolerance.Bore(nominal).Min, 1e-12);
        Assert.Equal(nominal, RingTolerance.Bore(nominal).Max, 1e-12);
    }

    [Theory]
    [InlineData(52, 0.013)]
    [InlineData(62, 0.013)]
    [InlineData(90, 0.015)]
    public void Outside_diameters_lie_below_their_nominal_size(double nominal, double lower) =>
        Assert.Equal(nominal - lower, RingTolerance.Outside(nominal).Min, 1e-12);

    [Fact]
    public void A_bearing_beyond_the_table_has_no_tolerance() =>
        Assert.Throws<OutsideValidityException>(() => RingTolerance.Outside(400));
}
