using Fractions;
using Pawl.Mechanics.Trains;

namespace Pawl.Mechanics.Tests.Trains;

/// <summary>One train of every common kind, worked by hand.</summary>
/// <remarks>
/// Speeds and lossless torques follow from the closed forms of the Willis equation, efficiencies from the rolling-power method
/// (R. Willis, Principles of Mechanism, 1870; H. W. Müller, Epicyclic Drive Trains; from memory). Each test states its closed form.
/// The digits were worked out apart from this code; tolerance is half of their last place.
/// </remarks>
public sealed class WorkedTrainTests
{
    // i = 1 + z_r/z_s, η = (1 + η0·R)/(1 + R), R = z_r/z_s.
    [Fact]
    public void Simple_planetary_with_the_ring_held() => Check(
        TrainBuilder.Simple().Solve("sun", "carrier", "ring"),
        new Fraction(9, 2),
        [("sun", 1), ("planet", -0.4), ("ring", 0), ("carrier", 0.222222222)],
        [("sun", 1), ("carrier", -4.5), ("ring", 3.5)],
        [0.777777778, 0.76615],
        0.988372222,
        [("sun", 1), ("carrier", -4.447675), ("ring", 3.447675)]);

    // i = 1 + z_s/z_r, η = (R + η0)/(R + 1).
    [Fact]
    public void Simple_planetary_with_the_sun_held() => Check(
        TrainBuilder.Simple().Solve("ring", "carrier", "sun"),
        new Fraction(9, 7),
        [("sun", 0), ("planet", 1.4), ("ring", 1), ("carrier", 0.777777778)],
        [("ring", 1), ("carrier", -1.28571429), ("sun", 0.285714286)],
        [0.2189, 0.222222222],
        0.996677778,
        [("ring", 1), ("carrier", -1.28144286), ("sun", 0.281442857)]);

    // i = −z_r/z_s, η = η0.
    [Fact]
    public void Simple_planetary_with_the_carrier_held() => Check(
        TrainBuilder.Simple().Solve("sun", "ring", "carrier"),
        new Fraction(-7, 2),
        [("sun", 1), ("planet", -0.8), ("ring", -0.285714286), ("carrier", 0)],
        [("sun", 1), ("ring", 3.5), ("carrier", -4.5)],
        [1, 0.98505],
        0.98505,
        [("sun", 1), ("ring", 3.447675), ("carrier", -4.447675)]);

    // i = 1/(1 + R), η = η0·(1 + R)/(η0 + R).
    [Fact]
    public void Simple_planetary_that_speeds_up() => Check(
        TrainBuilder.Simple().Solve("carrier", "sun", "ring"),
        new Fraction(2, 9),
        [("sun", 4.5), ("planet", -1.8), ("ring", 0), ("carrier", 1)],
        [("carrier", 1), ("sun", -0.222222222), ("ring", -0.777777778)],
        [0.768703805, 0.780370341],
        0.988333463,
        [("carrier", 1), ("sun", -0.219629659), ("ring", -0.780370341)]);

    // i = 1 + z_r·z_p1/(z_s·z_p2).
    [Fact]
    public void Stepped_planets_between_sun_and_ring() => Check(
        new TrainBuilder().Planet("planet", "carrier", 3)
            .Outer("sun", 24, "planet", 40, 0.99)
            .Inner("ring", 84, "planet", 20, 0.995)
            .Solve("sun", "carrier", "ring"),
        new Fraction(8),
        [("sun", 1), ("planet", -0.4), ("ring", 0), ("carrier", 0.125)],
        [("sun", 1), ("carrier", -8), ("ring", 7)],
        [0.875, 0.86191875],
        0.98691875,
        [("sun", 1), ("carrier", -7.89535), ("ring", 6.89535)]);

    // i = 1 + z_s2/z_s1, η = (z_s1 + η0·z_s2)/(z_s1 + z_s2), η0 of all three meshes.
    [Fact]
    public void Meshed_pairs_between_two_suns() => Check(
        TrainBuilder.TwoSuns(48, 21, 21, 18, 30).Solve("sun1", "carrier", "sun2"),
        new Fraction(13, 8),
        [("sun1", 1), ("sun2", 0), ("long", -0.263736264), ("short", 1.64102564), ("carrier", 0.615384615)],
        [("sun1", 1), ("carrier", -1.625), ("sun2", 0.625)],
        [0.384615385, 0.380769231, 0.373191923],
        0.988576538,
        [("sun1", 1), ("carrier", -1.60643687), ("sun2", 0.606436875)]);

    // i = 1 + z_L1·z_s2/(z_s1·z_L2): the long pinion has z_L1 on the sun, z_L2 on the short pinion.
    [Fact]
    public void Meshed_pairs_with_a_stepped_long_pinion_between_two_suns() => Check(
        TrainBuilder.TwoSuns(48, 21, 20, 18, 30).Solve("sun1", "carrier", "sun2"),
        new Fraction(53, 32),
        [("sun1", 1), ("sun2", 0), ("long", -0.301886792), ("short", 1.61006289), ("carrier", 0.603773585)],
        [("sun1", 1), ("carrier", -1.65625), ("sun2", 0.65625)],
        [0.396226415, 0.392264151, 0.384458094],
        0.988231679,
        [("sun1", 1), ("carrier", -1.63675872), ("sun2", 0.636758719)]);

    // i = 1 − z_r/z_s.
    [Fact]
    public void Meshed_pairs_between_sun_and_ring_with_the_ring_held() => Check(
        TrainBuilder.PairWithRing(24, 18, 20, 84).Solve("sun", "carrier", "ring"),
        new Fraction(-5, 2),
        [("sun", 1), ("p1", -2.26666667), ("p2", 1.28), ("ring", 0), ("carrier", -0.4)],
        [("sun", 1), ("carrier", 2.5), ("ring", -3.5)],
        [1.4, 1.386, 1.3652793],
        0.9652793,
        [("sun", 1), ("carrier", 2.41319825), ("ring", -3.41319825)]);

    // i = +z_r/z_s, η = η0 of all three meshes.
    [Fact]
    public void Meshed_pairs_between_sun_and_ring_with_the_carrier_held() => Check(
        TrainBuilder.PairWithRing(24, 18, 20, 84).Solve("sun", "ring", "carrier"),
        new Fraction(7, 2),
        [("sun", 1), ("p1", -1.33333333), ("p2", 1.2), ("ring", 0.285714286), ("carrier", 0)],
        [("sun", 1), ("ring", -3.5), ("carrier", 2.5)],
        [1, 0.99, 0.9751995],
        0.9751995,
        [("sun", 1), ("ring", -3.41319825), ("carrier", 2.41319825)]);

    // i = (1 + z_r1/z_s)/(1 − z_r1·z_p2/(z_p1·z_r2)).
    [Fact]
    public void Two_rings_driven_by_one_sun() => Check(
        TrainBuilder.Wolfrom(15, 30, 75, 27, 72).Solve("sun", "ring2", "ring1"),
        new Fraction(96),
        [("sun", 1), ("planet", -0.25), ("ring1", 0), ("ring2", 0.0104166667), ("carrier", 0.166666667)],
        [("sun", 1), ("ring2", -96), ("ring1", 95)],
        [0.833333333, 13.5775253, 12.8851799],
        0.859011997,
        [("sun", 1), ("ring2", -82.4651517), ("ring1", 81.4651517)]);

    // Ratios and efficiencies of stages in series multiply.
    [Fact]
    public void Two_planetary_stages_in_series() => Check(
        new TrainBuilder().Planet("planet1", "c1s2", 3).Planet("planet2", "carrier2", 4)
            .Outer("sun1", 18, "planet1", 36, 0.99).Inner("ring1", 90, "planet1", 36, 0.995)
            .Outer("c1s2", 24, "planet2", 24, 0.99).Inner("ring2", 72, "planet2", 24, 0.995)
            .Solve("sun1", "carrier2", "ring1", "ring2"),
        new Fraction(24),
        [("sun1", 1), ("planet1", -0.25), ("ring1", 0), ("c1s2", 0.166666667), ("planet2", -0.0833333333), ("ring2", 0), ("carrier2", 0.0416666667)],
        [("sun1", 1), ("carrier2", -24), ("ring1", 5), ("ring2", 18)],
        [0.833333333, 0.820875, 0.74065625, 0.729583439],
        0.976468856,
        [("sun1", 1), ("carrier2", -23.4352525), ("ring1", 4.92525), ("ring2", 17.5100025)]);

    // i = −(z_b/z_a)·(1 + z_r/z_s); the housing takes −T_a − T_b of the first mesh: 1 + 2.5, lossless.
    [Fact]
    public void Parallel_shafts_before_a_planetary_stage()
    {
        var solution = new TrainBuilder().Planet("planet", "carrier", 3)
            .Outer("shaft", 20, "sun", 50, 0.99)
            .Outer("sun", 20, "planet", 25, 0.99)
            .Inner("ring", 70, "planet", 25, 0.995)
            .Solve("shaft", "carrier", "ring");

        Check(
            solution,
            new Fraction(-45, 4),
            [("shaft", 1), ("sun", -0.4), ("planet", 0.16), ("ring", 0), ("carrier", -0.0888888889)],
            [("shaft", 1), ("carrier", 11.25), ("ring", -8.75)],
            [1, 0.77, 0.7584885],
            0.9784885,
            [("shaft", 1), ("carrier", 11.0079956), ("ring", -8.53299562)]);
        Assert.Equal(-3.5, solution.Lossless!.HousingTorque, 9);
        Assert.Equal(RotationSense.Reversed, solution.Speeds!.Sense);
    }

    // n_c = (z_s·n_s + z_r·n_r)/(z_s + z_r); f = z_s·|n_s − n_c|/60.
    [Fact]
    public void Differential_with_two_given_speeds()
    {
        var solution = SpeedsOf.Given(
            TrainBuilder.Simple().Graph("sun", "carrier", "ring"), [new GivenSpeed("sun", 1450), new GivenSpeed("ring", 200)]);

        var speeds = Assert.IsType<TrainSpeeds>(solution.Speeds);
        Assert.Equal(new Fraction(4300, 9), speeds.Of("carrier")!.Speed);
        Assert.Equal(-300, speeds.Of("planet")!.Speed);
        Assert.Equal(-777.777778, speeds.Of("planet")!.RelativeToCarrier!.Value.ToDouble(), 6);
        Assert.Equal(324.074074, speeds.Meshes[0].RollingSpeed.ToDouble() / 60, 6);
        Assert.Equal(speeds.Meshes[0].RollingSpeed, speeds.Meshes[1].RollingSpeed);
    }

    private static void Check(
        TrainSolution solution,
        Fraction ratio,
        (string Body, double Speed)[] speeds,
        (string Body, double Torque)[] lossless,
        double[] firstPowers,
        double efficiency,
        (string Body, double Torque)[] torques)
    {
        Assert.Empty(solution.Problems);
        Assert.Equal(ratio, solution.Speeds!.Ratio);
        Assert.Equal(speeds.Length, solution.Speeds.Bodies.Length);
        Assert.All(speeds, s => Near(s.Speed, solution.Speeds.Of(s.Body)!.Speed.ToDouble()));
        Assert.Equal(lossless.Length, solution.Lossless!.Bodies.Length);
        Assert.All(lossless, t => Near(t.Torque, solution.Lossless.Of(t.Body)!.External));
        Assert.Equal(1, solution.Lossless.Efficiency);
        Assert.Equal(firstPowers.Length, solution.Torques!.Meshes.Length);
        Assert.All(firstPowers.Zip(solution.Torques.Meshes), p => Near(p.First, Math.Abs(p.Second.FirstPower)));
        Near(efficiency, solution.Torques.Efficiency);
        Assert.All(torques, t => Near(t.Torque, solution.Torques.Of(t.Body)!.External));
    }

    // Nine digits are given.
    private static void Near(double expected, double actual) =>
        Assert.Equal(expected, actual, tolerance: Math.Max(Math.Abs(expected), 0.1) * 5.1e-9);
}
