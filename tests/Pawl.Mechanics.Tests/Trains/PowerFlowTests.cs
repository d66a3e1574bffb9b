namespace Pawl.Mechanics.Tests.Trains;

/// <summary>Power flow worked by hand.</summary>
public sealed class PowerFlowTests
{
    // Two rings driven by one sun, 15-30, 75-30, 72-27, lossless, unit input: ω_c = 1/6, planet on its pin −0.25 − 1/6 = −5/12.
    // Ring 2 gets 96 of torque from its mesh while it turns backwards against the carrier: it gives 96·(1/6 − 1/96) = 15 to the planet.
    // The sun gives 5/6 more. The planet passes both, 95/6, to ring 1.
    [Fact]
    public void Circulating_power_of_two_rings_driven_by_one_sun()
    {
        var torques = TrainBuilder.Wolfrom(15, 30, 75, 27, 72).Solve("sun", "ring2", "ring1").Lossless!;

        Assert.Equal(5 / 6.0, torques.Meshes[0].RollingPower, tolerance: 1e-9);
        Assert.Equal(95 / 6.0, torques.Meshes[1].RollingPower, tolerance: 1e-9);
        Assert.Equal(15, torques.Meshes[2].RollingPower, tolerance: 1e-9);
        Assert.Equal(95 / 6.0, torques.MaxRollingPower, tolerance: 1e-9);
        Assert.Equal(["sun_15", "planet_30", "ring2_ring_72"], torques.Meshes.Select(m => m.Driver));
    }

    // Simple planetary 20-25-70, ring held, lossless: the sun takes 1, so F = −1/20 a tooth; the planet +25/20 − 25/20; ring 3.5.
    [Fact]
    public void Tooth_forces_of_a_simple_planetary()
    {
        var solution = TrainBuilder.Simple().Solve("sun", "carrier", "ring");
        var loads = solution.Lossless!.Meshes;

        Assert.Equal(-1 / 20.0, loads[0].ToothForce, tolerance: 1e-12);
        Assert.Equal(-25 / 20.0, loads[0].SecondTorque, tolerance: 1e-12);
        Assert.Equal(-70 / 20.0, loads[1].FirstTorque, tolerance: 1e-12);
        Assert.Equal(25 / 20.0, loads[1].SecondTorque, tolerance: 1e-12);
        Assert.All(loads, m => Assert.Equal(3, m.Paths));
    }

    // Rings A 64 and B 62, compound sun 28-26, planets of 18, arm in, A held, B out: i0 = (64/28)·(26/62) = 208/217, i = 1/(1 − i0) = 217/9.
    // T_A = i − 1, so the compound sun passes 28/64·(217/9 − 1) = 91/9 of torque at ω = 1 + 64/28 = 23/7: 299/9 of circulating power.
    [Fact]
    public void Shaft_power_circulates_between_coupled_sets()
    {
        var solution = new TrainBuilder().Planet("E", "G").Planet("F", "G")
            .Inner("A", 64, "E", 18).Outer("CD", 28, "E", 18).Outer("CD", 26, "F", 18).Inner("B", 62, "F", 18)
            .Solve("G", "B", "A");

        Assert.Equal(217 / 9.0, solution.Speeds!.Ratio!.Value.ToDouble(), tolerance: 1e-12);
        var branches = solution.Lossless!.Branches.Where(b => b.Body == "CD").ToList();
        Assert.Equal(["CD_28", "CD_26"], branches.Select(b => b.Gear));
        Assert.All(branches, b => Assert.Equal(299 / 9.0, Math.Abs(b.Power), tolerance: 1e-9));
    }

    // Sun and ring are geared one to one over an idler in the housing, so sun, ring, planet and carrier turn as one.
    [Fact]
    public void A_mesh_that_does_not_roll_loses_nothing()
    {
        var solution = new TrainBuilder().Planet("planet", "carrier", 3)
            .Outer("sun", 20, "planet", 25, 0.9).Inner("ring", 70, "planet", 25, 0.9)
            .Outer("sun", 40, "idler", 40).Outer("idler", 40, "ring", 40)
            .Solve("sun", "carrier");

        Assert.Empty(solution.Problems);
        Assert.Equal(1, solution.Speeds!.Ratio!.Value);
        Assert.Equal(1, solution.Torques!.Efficiency);
        Assert.Equal([null, null], solution.Torques.Meshes.Take(2).Select(m => m.Driver));
    }
}
