using System.Collections.Immutable;
using CsCheck;
using Pawl.Mechanics.Assembly;

namespace Pawl.Mechanics.Tests.Assembly;

public sealed class MeshPhaseTests
{
    // Closed form: frac(20k/3) and frac(70k/3).
    [Fact]
    public void Phases_of_three_planets_are_the_fractions_of_teeth_between_them()
    {
        Assert.Equal([0, 2.0 / 3, 1.0 / 3], MeshPhase.Of(20, 3), Near);
        Assert.Equal([0, 1.0 / 3, 2.0 / 3], MeshPhase.Of(70, 3), Near);
    }

    // Closed form: 20 teeth, 92° of 360°: 20·92/360 = 5 + 1/9.
    [Fact]
    public void Phases_at_unequal_positions_follow_the_angle()
    {
        var positions = new PlanetPositions(90, [1, 24, 46, 69]);

        Assert.Equal([0, 1.0 / 9, 0, 1.0 / 9], MeshPhase.Of(20, positions), Near);
        Assert.Equal(Phasing.Irregular, MeshPhase.Classify(20, positions));
    }

    // Law: in a simple train the phases at sun and ring add to whole teeth at every permitted position.
    [Fact]
    public void Phases_at_sun_and_ring_of_a_simple_planet_are_opposite() =>
        Gen.Select(Groups.Teeth, Groups.Teeth, Gen.Int[1, 8]).Sample((sun, ring, planets) =>
        {
            var positions = LeastMeshAngle.Of(Groups.Simple(sun, 20, ring)).NearestToEqual(planets);
            var (atSun, atRing) = (MeshPhase.Of(sun, positions), MeshPhase.Of(ring, positions));
            for (var planet = 0; planet < planets; planet++)
            {
                var sum = atSun[planet] + atRing[planet];
                Assert.Equal(Math.Round(sum), sum, 9);
            }
        });

    // Closed form: z mod N = 0, N/2, other.
    [Theory]
    [InlineData(24, 3, Phasing.InPhase)]
    [InlineData(22, 4, Phasing.CounterPhased)]
    [InlineData(21, 4, Phasing.Sequential)]
    [InlineData(20, 3, Phasing.Sequential)]
    [InlineData(20, 6, Phasing.Sequential)]
    [InlineData(21, 1, Phasing.InPhase)]
    public void Equally_spaced_planets_are_classed_by_the_remainder(int teeth, int planets, Phasing phasing) =>
        Assert.Equal(phasing, MeshPhase.Classify(teeth, planets));

    // Closed form: q = h·20 mod 3.
    [Fact]
    public void Harmonics_of_a_sequential_set_shake_but_for_every_third() =>
        Assert.Equal(
            [HarmonicEffect.Translational, HarmonicEffect.Translational, HarmonicEffect.Torsional, HarmonicEffect.Translational],
            MeshPhase.Effects(20, 3, 4));

    // Brute force: forces of the planets added up over one tooth mesh.
    [Fact]
    public void Effects_are_those_of_mesh_forces_added_up() =>
        Gen.Select(Groups.Teeth, Gen.Int[1, 8], Gen.Int[1, 8]).Sample((teeth, planets, harmonic) =>
        {
            var phases = MeshPhase.Of(teeth, planets);
            var (torque, force) = (0.0, 0.0);
            for (var instant = 0; instant < 64; instant++)
            {
                var (sum, x, y) = (0.0, 0.0, 0.0);
                for (var planet = 0; planet < planets; planet++)
                {
                    var mesh = Math.Cos(Math.Tau * harmonic * (instant / 64.0 + phases[planet]));
                    sum += mesh;
                    x += mesh * Math.Cos(Math.Tau * planet / planets);
                    y += mesh * Math.Sin(Math.Tau * planet / planets);
                }

                torque = Math.Max(torque, Math.Abs(sum));
                force = Math.Max(force, Math.Sqrt(x * x + y * y));
            }

            var effect = MeshPhase.Effect(teeth, planets, harmonic);
            var positions = PlanetPositions.Equal(planets);
            Assert.Equal(torque > 1e-6, effect.HasFlag(HarmonicEffect.Torsional));
            Assert.Equal(force > 1e-6, effect.HasFlag(HarmonicEffect.Translational));
            Assert.Equal(torque > 1e-6, MeshPhase.TorsionalShare(teeth, positions, harmonic) > 1e-6);
            Assert.Equal(force > 1e-6, MeshPhase.TranslationalShare(teeth, positions, harmonic) > 1e-6);
        });

    // Brute force: the amplitude of the summed torque at unequal positions.
    [Fact]
    public void Torsional_share_is_the_amplitude_of_the_summed_torque() =>
        Gen.Select(Groups.Teeth, Gen.Long[0, 89].Array[1, 6], Gen.Int[1, 4]).Sample((teeth, steps, harmonic) =>
        {
            var positions = new PlanetPositions(90, ImmutableArray.Create(steps));
            var (cosine, sine) = (0.0, 0.0);
            foreach (var phase in MeshPhase.Of(teeth, positions))
            {
                cosine += Math.Cos(Math.Tau * harmonic * phase);
                sine += Math.Sin(Math.Tau * harmonic * phase);
            }

            var amplitude = Math.Sqrt(cosine * cosine + sine * sine) / steps.Length;
            Assert.Equal(amplitude, MeshPhase.TorsionalShare(teeth, positions, harmonic), 9);
        });

    private static bool Near(double expected, double actual) => Math.Abs(expected - actual) < 1e-12;
}
