using System.Collections.Immutable;
using CsCheck;
using Pawl.Mechanics.Trains;

namespace Pawl.Mechanics.Tests.Trains;

/// <summary>What the solver says of trains that cannot be solved. Counting degrees of freedom by hand tells what it must say.</summary>
public sealed class TrainProblemTests
{
    // Four bodies, two meshes, one given speed: one degree of freedom too many.
    [Fact]
    public void A_planetary_set_with_nothing_held_is_undetermined()
    {
        var solution = TrainBuilder.Simple().Solve("sun", "carrier");

        var problem = Assert.IsType<TrainProblem.Undetermined>(Assert.Single(solution.Problems));
        Assert.Null(solution.Speeds);
        Assert.Equal(["carrier", "planet", "ring"], problem.Bodies.Order());
        Assert.Contains(Assert.Single(problem.Pins), new[] { "carrier", "ring" });
    }

    // Only the second stage is free, and its planet is never offered for holding.
    [Fact]
    public void Only_the_bodies_that_are_free_are_named()
    {
        var solution = new TrainBuilder().Planet("p1", "c1").Planet("p2", "c2")
            .Outer("s1", 20, "p1", 20).Inner("r1", 60, "p1", 20)
            .Outer("c1", 20, "p2", 20).Inner("r2", 60, "p2", 20)
            .Solve("s1", "c2", "r1");

        var problem = Assert.IsType<TrainProblem.Undetermined>(Assert.Single(solution.Problems));
        Assert.Equal(["c2", "p2", "r2"], problem.Bodies.Order());
        Assert.DoesNotContain("p2", problem.Pins);
    }

    [Fact]
    public void Following_the_advice_determines_the_train()
    {
        var train = new TrainBuilder().Planet("p1", "c1").Planet("p2", "c2")
            .Outer("s1", 20, "p1", 20).Inner("r1", 60, "p1", 20)
            .Outer("s2", 20, "p2", 20).Inner("r2", 60, "p2", 20)
            .Outer("c1", 20, "s2", 30);
        var problem = Assert.IsType<TrainProblem.Undetermined>(Assert.Single(train.Solve("s1", "c2").Problems));
        Assert.Equal(2, problem.Pins.Length);

        // The output may be among the pins; then it is driven, not held.
        var given = problem.Pins.Select(pin => new GivenSpeed(pin, 2)).Append(new GivenSpeed("s1", 1));
        Assert.NotNull(SpeedsOf.Given(train.Graph("s1", "c2"), [.. given]).Speeds);
    }

    [Fact]
    public void An_output_that_the_input_does_not_reach_is_undetermined()
    {
        var solution = new TrainBuilder().Outer("in", 20, "idler", 30).Outer("other", 20, "out", 30).Solve("in", "out");

        Assert.Equal(["other", "out"], Assert.IsType<TrainProblem.Undetermined>(Assert.Single(solution.Problems)).Bodies.Order());
    }

    // A second planetary set on the same sun and carrier with another ring: holding both rings stops everything.
    [Fact]
    public void Two_rings_that_hold_against_each_other_lock_the_train()
    {
        var solution = new TrainBuilder().Planet("planet", "carrier")
            .Outer("sun", 20, "planet", 25).Inner("ring", 70, "planet", 25).Inner("ring2", 72, "planet", 24)
            .Solve("sun", "carrier", "ring", "ring2");

        var problem = Assert.IsType<TrainProblem.Locked>(Assert.Single(solution.Problems));
        Assert.Null(solution.Speeds);
        Assert.Equal(["ring", "ring2", "sun"], problem.Bodies.Order());
        Assert.Equal(["m1", "m2", "m3"], problem.Meshes.Order());
    }

    // Three external gears in a triangle cannot turn; the fourth, outside the loop, is not to blame.
    [Fact]
    public void Only_the_meshes_that_contradict_are_named()
    {
        var solution = new TrainBuilder()
            .Outer("a", 20, "b", 30).Outer("b", 30, "c", 40).Outer("c", 40, "a", 20).Outer("a", 20, "d", 50)
            .Solve("a", "d");

        var problem = Assert.IsType<TrainProblem.Locked>(Assert.Single(solution.Problems));
        Assert.Equal(["m1", "m2", "m3"], problem.Meshes);
        Assert.Equal(["a"], problem.Bodies);
    }

    [Fact]
    public void Holding_sun_ring_and_driving_the_carrier_is_locked()
    {
        var problem = Assert.IsType<TrainProblem.Locked>(Assert.Single(
            TrainBuilder.Simple().Body("out").Outer("carrier", 20, "out", 20).Solve("carrier", "out", "sun", "ring").Problems));

        Assert.Equal(["carrier", "ring", "sun"], problem.Bodies.Order());
        Assert.DoesNotContain("m3", problem.Meshes);
    }

    // A second, equal ring in parallel runs, but how the two share the load is a matter of stiffness.
    [Fact]
    public void A_second_equal_ring_runs_but_shares_the_load_nobody_knows_how()
    {
        var solution = new TrainBuilder().Planet("planet", "carrier")
            .Outer("sun", 20, "planet", 25).Inner("ring", 70, "planet", 25).Inner("ring2", 70, "planet", 25)
            .Solve("sun", "carrier", "ring", "ring2");

        var problem = Assert.IsType<TrainProblem.LoadShareIndeterminate>(Assert.Single(solution.Problems));
        Assert.Equal(["ring", "ring2"], problem.Bodies.Order());
        Assert.Equal(["m2", "m3"], problem.Meshes.Order());
        Assert.Equal(4.5, solution.Speeds!.Ratio!.Value.ToDouble());
        Assert.Null(solution.Torques);
        Assert.Null(solution.Lossless);
    }

    // Closed form: equal z_p1/z_r1 and z_p2/z_r2 make 1 − k = 0.
    [Fact]
    public void A_set_of_two_equal_rings_has_an_infinite_ratio()
    {
        var solution = TrainBuilder.Wolfrom(15, 30, 75, 28, 70).Solve("sun", "ring2", "ring1");

        Assert.Equal(["sun", "ring2"], Assert.IsType<TrainProblem.SingularRatio>(Assert.Single(solution.Problems)).Bodies);
        Assert.NotNull(solution.Speeds);
        Assert.Null(solution.Speeds.Ratio);
        Assert.Null(solution.Speeds.Sense);
        Assert.Null(solution.Torques);
    }

    // i0 = 100·100/(99·101) just above 1, driven at the sun: η = (1 − i0·η0)/(1 − i0) is far below zero.
    [Fact]
    public void A_train_whose_losses_exceed_the_input_is_self_locking()
    {
        var train = new TrainBuilder().Planet("planet", "carrier")
            .Outer("s1", 99, "planet", 100, 0.99).Outer("s2", 100, "planet", 101, 0.99);
        var i0 = 100.0 * 100 / (99 * 101);

        var problem = Assert.IsType<TrainProblem.SelfLocking>(Assert.Single(train.Solve("s1", "carrier", "s2").Problems));

        Assert.Equal((1 - i0 * 0.99 * 0.99) / (1 - i0), problem.Efficiency!.Value, tolerance: 1e-6);
        Assert.NotNull(train.Solve("carrier", "s1", "s2").Torques);
    }

    [Fact]
    public void A_body_that_nothing_touches_is_pointed_out_and_harms_nothing()
    {
        var solution = TrainBuilder.Simple().Body("flange").Solve("sun", "carrier", "ring");

        Assert.Equal(["flange"], Assert.IsType<TrainProblem.IdleBody>(Assert.Single(solution.Problems)).Bodies);
        Assert.NotNull(solution.Torques);
        Assert.Null(solution.Speeds!.Of("flange"));
    }

    [Fact]
    public void A_held_housing_without_gears_is_no_idle_body() =>
        Assert.Empty(new TrainBuilder().Body("housing").Outer("a", 20, "b", 30).Solve("a", "b", "housing").Problems);

    [Fact]
    public void A_body_held_twice_is_held() =>
        Assert.Empty(TrainBuilder.Simple().Solve("sun", "carrier", "ring", "ring").Problems);

    public static TheoryData<string, Func<TrainSolution>> Unsound => new()
    {
        { "unknown-name", () => TrainBuilder.Simple().Solve("sunn", "carrier", "ring") },
        { "unknown-name", () => TrainBuilder.Simple().Solve("sun", "carrier", "rng") },
        { "unknown-name", () => TrainBuilder.Simple().Mesh("sun_20", "nothing").Solve("sun", "carrier", "ring") },
        { "unknown-name", () => With(g => g with { Gears = g.Gears.Add(new TrainGear("x", "nobody", 20)) }) },
        { "duplicate-name", () => With(g => g with { Bodies = g.Bodies.Add(new TrainBody("sun")) }) },
        { "duplicate-name", () => With(g => g with { Gears = g.Gears.Add(g.Gears[0]) }) },
        { "duplicate-name", () => With(g => g with { Meshes = g.Meshes.Add(g.Meshes[0]) }) },
        { "invalid-teeth", () => With(g => g with { Gears = g.Gears.SetItem(0, g.Gears[0] with { Teeth = 0 }) }) },
        { "invalid-count", () => TrainBuilder.Simple().Planet("more", "carrier", 0).Solve("sun", "carrier", "ring") },
        { "invalid-count", () => With(g => g with { Bodies = g.Bodies.Add(new TrainBody("two", null, 2)) }) },
        { "mesh-within-body", () => TrainBuilder.Simple().Mesh("sun_20", "sun_20").Solve("sun", "carrier", "ring") },
        { "mesh-within-body", () => TrainBuilder.Simple().Outer("sun", 20, "sun", 30).Solve("sun", "carrier", "ring") },
        { "two-internal-gears", () => With(g => g with
            {
                Gears = [.. g.Gears.Select(x => x.Body == "planet" ? x with { IsInternal = true } : x)],
            })
        },
        { "ring-too-small", () => TrainBuilder.Simple(20, 25, 25).Solve("sun", "carrier", "ring") },
        { "input-is-output", () => TrainBuilder.Simple().Solve("sun", "sun", "ring") },
        { "shaft-fixed", () => TrainBuilder.Simple().Solve("sun", "carrier", "ring", "sun") },
        { "shaft-fixed", () => TrainBuilder.Simple().Solve("sun", "carrier", "ring", "carrier") },
        { "carrier-missing", () => With(g => g with { Bodies = g.Bodies.Add(new TrainBody("lost", "nowhere")) }) },
        { "carrier-is-planet", () => TrainBuilder.Simple().Planet("moon", "planet").Solve("sun", "carrier", "ring") },
        { "mesh-with-own-carrier", () => TrainBuilder.Simple().Outer("carrier", 30, "planet", 25).Solve("sun", "carrier", "ring") },
        { "different-carriers", () => TrainBuilder.Simple().Planet("far", "arm", 3).Outer("far", 20, "planet", 25).Solve("sun", "carrier", "ring") },
        { "planet-counts-differ", () => TrainBuilder.Simple().Planet("near", "carrier", 4).Outer("near", 20, "planet", 25).Solve("sun", "carrier", "ring") },
    };

    [Theory]
    [MemberData(nameof(Unsound), DisableDiscoveryEnumeration = true)]
    public void An_unsound_graph_is_reported_and_never_thrown(string kind, Func<TrainSolution> solve)
    {
        var solution = solve();

        Assert.Contains(solution.Problems, p => p.Kind == kind && p.Blocks == TrainStep.Speeds);
        Assert.All(solution.Problems, p => Assert.EndsWith(".", p.Sentence));
        Assert.Null(solution.Speeds);
        Assert.Null(solution.Torques);
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(-0.5)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void An_impossible_efficiency_leaves_the_speeds(double efficiency)
    {
        var solution = TrainBuilder.Simple(outer: efficiency).Solve("sun", "carrier", "ring");

        Assert.Equal(["m1"], Assert.IsType<TrainProblem.InvalidEfficiency>(Assert.Single(solution.Problems)).Meshes);
        Assert.NotNull(solution.Speeds);
        Assert.Null(solution.Torques);
    }

    // A planet may be held or drive by a coupling that only passes its rotation: with z_r − z_p = 1 the ratio is −z_p.
    [Fact]
    public void A_planet_may_be_the_output() =>
        Assert.Equal(-40, new TrainBuilder().Planet("planet", "crank").Inner("ring", 41, "planet", 40)
            .Solve("crank", "planet", "ring").Speeds!.Ratio!.Value);

    // Graphs thrown together at random: carriers, teeth and names may all be wrong.
    [Fact]
    public void No_graph_however_odd_throws()
    {
        string[] names = ["a", "b", "c", "d", "e", "nobody"];
        Gen.Int.Sample(seed =>
        {
            var random = new Random(seed);
            var bodies = Some(n => new TrainBody(names[n], random.Next(3) == 0 ? Any() : null, random.Next(8) == 0 ? random.Next(-1, 4) : 1));
            var gears = Some(n => new TrainGear(names[n], Any(), random.Next(8) == 0 ? random.Next(-2, 2) : random.Next(12, 60), random.Next(4) == 0));
            var meshes = Some(n => new TrainMesh(names[n], Any(), Any(), random.Next(8) == 0 ? 2 : 0.98));
            TrainGraph graph = new(bodies, gears, meshes, Any(), Any(), Some(_ => Any()));

            var solution = TrainSolver.Solve(graph);

            Assert.True(solution.Speeds is not null || solution.Problems.Any(p => p.Blocks == TrainStep.Speeds));
            Assert.True(solution.Torques is not null || solution.Problems.Any(p => p.Blocks >= TrainStep.Torques));
            Assert.NotEqual("", Topology.Describe(graph));

            string Any() => names[random.Next(12) == 0 ? 5 : random.Next(5)];
            ImmutableArray<T> Some<T>(Func<int, T> make) => [.. Enumerable.Range(0, random.Next(1, 6)).Select(make)];
        }, iter: 20_000);
    }

    private static TrainSolution With(Func<TrainGraph, TrainGraph> change) =>
        TrainSolver.Solve(change(TrainBuilder.Simple().Graph("sun", "carrier", "ring")));
}
