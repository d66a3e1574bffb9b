using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using Pawl.Mechanics.Rating;

namespace Pawl.Mechanics.Tests.Rating;

public class MeshResonanceTests
{
    private const double Steel = 7.85e-9;

    // A cylinder of mass m and radius r has ½·m·r²; a rim is one cylinder less another.
    [Fact]
    public void The_inertia_of_a_gear_is_that_of_a_cylinder_or_a_tube()
    {
        Assert.Equal(0.5 * Steel * Math.PI * 40 * 40 * 20 * 40 * 40, MeshResonance.Inertia(80, 0, 20, Steel), 1e-12);
        Assert.Equal(
            0.5 * Steel * Math.PI * 20 * (Math.Pow(40, 4) - Math.Pow(25, 4)), MeshResonance.Inertia(80, 50, 20, Steel), 1e-12);
        Refusal.Says("leaves nothing of 50 mm", () => MeshResonance.Inertia(50, 50, 20, Steel));
    }

    // ISO 6336-1, resonance speed of a pair of rims or discs, from memory; public calculations restate it for solid gears. It takes
    // both gears as alike in proportion: then it is exact.
    [Fact]
    public void The_reduced_mass_of_a_pair_is_that_of_ISO_6336_1() =>
        Gen.Select(Gen.Double[10, 200], Gen.Double[0.85, 0.98], Gen.Double[1, 8], Gen.Double[0, 0.9], Gen.Double[0, 0.9]).Sample(
            (mean, share, u, q1, q2) =>
            {
                var ground = share * mean;
                var expected = Math.PI / 8 * Math.Pow(mean / ground, 2) * mean * mean
                    / (1 / ((1 - Math.Pow(q1, 4)) * Steel) + 1 / ((1 - Math.Pow(q2, 4)) * Steel * u * u));
                var pinion = MeshResonance.MassAtBase(MeshResonance.Inertia(mean, q1 * mean, 20, Steel), 20, ground);
                var wheel = MeshResonance.MassAtBase(MeshResonance.Inertia(u * mean, q2 * u * mean, 20, Steel), 20, u * ground);
                return Near(expected, MeshResonance.ReducedMass(pinion, 1, wheel, 1));
            });

    // The same standard, planetary gears: J*_pla·J*_sun/(N·J*_pla·r_b,sun² + J*_sun·r_b,pla²), and (π/8)·d_m⁴/d_b²·(1 − q⁴)·ρ of
    // the planet alone against a ring that does not move.
    [Fact]
    public void The_reduced_mass_of_a_planetary_set_is_that_of_ISO_6336_1() =>
        Gen.Select(Gen.Double[1e-6, 1e-2], Gen.Double[1e-6, 1e-2], Gen.Double[5, 80], Gen.Double[5, 80], Gen.Int[2, 7]).Sample(
            (sun, planet, sunRadius, planetRadius, count) =>
            {
                var expected = planet * sun / (count * planet * sunRadius * sunRadius + sun * planetRadius * planetRadius);
                return Near(
                    expected,
                    MeshResonance.ReducedMass(
                        MeshResonance.MassAtBase(sun, 1, 2 * sunRadius), count, MeshResonance.MassAtBase(planet, 1, 2 * planetRadius), 1));
            });

    [Fact]
    public void Against_a_fixed_ring_a_planet_swings_alone()
    {
        var planet = MeshResonance.MassAtBase(MeshResonance.Inertia(50, 30, 20, Steel), 20, 46);

        Assert.Equal(Math.PI / 8 * Math.Pow(50, 4) / (46 * 46) * (1 - Math.Pow(0.6, 4)) * Steel, MeshResonance.MassAgainstFixed(planet, 1), 1e-16);
        Assert.Equal(planet, MeshResonance.ReducedMass(planet, 1, 1e12, 3), 1e-12 * planet);
    }

    // A sun and its planets as masses on springs: the greatest natural frequency, found as an eigenvalue, is the mesh frequency at the
    // resonance speed. With one planet it is a pair of gears, with masses N times as great a ring about its planets.
    [Fact]
    public void At_the_resonance_speed_the_mesh_frequency_is_the_natural_one() =>
        Gen.Select(Gen.Double[1e-7, 1e-4], Gen.Double[1e-7, 1e-4], Gen.Double[5000, 30_000], Gen.Int[1, 7], Gen.Int[12, 60]).Sample(
            (sun, planet, stiffness, count, teeth) =>
            {
                var matrix = Matrix<double>.Build.Dense(count + 1, count + 1);
                matrix[0, 0] = count * stiffness / sun;
                for (var i = 1; i <= count; i++)
                {
                    matrix[i, i] = stiffness / planet;
                    matrix[0, i] = matrix[i, 0] = -stiffness / Math.Sqrt(sun * planet);
                }

                var frequency = Math.Sqrt(matrix.Evd(Symmetricity.Symmetric).EigenValues.Max(value => value.Real));
                return Near(frequency, teeth * MeshResonance.Speed(stiffness, MeshResonance.ReducedMass(sun, count, planet, 1), teeth), 1e-9);
            },
            iter: 300);

    // In the units of the source: 20 N/(mm·µm), 0.01 kg/mm, 20 teeth: 30 000/(π·20)·√2000 = 21 352.7 1/min.
    [Fact]
    public void The_resonance_speed_in_the_units_of_the_source() =>
        Assert.Equal(30_000 / (Math.PI * 20) * Math.Sqrt(20 / 0.01), MeshResonance.Speed(20_000, 1e-5, 20) * 30 / Math.PI, 1e-6);

    // 0.5 + 0.35·√0.25 = 0.675; at 100 N/mm 0.85 from both sides.
    [Theory]
    [InlineData(500, 0.85)]
    [InlineData(100, 0.85)]
    [InlineData(25, 0.675)]
    [InlineData(1, 0.535)]
    public void The_main_resonance_range_begins_earlier_under_light_load(double load, double limit) =>
        Assert.Equal(limit, MeshResonance.LowerLimit(load), 1e-12);

    [Theory]
    [InlineData(0.3, 0.85, 0.55)]
    [InlineData(0.9, 0.85, -0.05)]
    [InlineData(1, 0.85, -0.15)]
    [InlineData(1.15, 0.85, 0)]
    [InlineData(2, 0.7, 0.85)]
    public void The_distance_from_resonance_is_counted_from_the_nearer_end(double ratio, double limit, double distance) =>
        Assert.Equal(distance, MeshResonance.Distance(ratio, limit), 1e-12);

    [Fact]
    public void A_speed_in_either_direction_has_the_same_ratio()
    {
        Assert.Equal(0.4, MeshResonance.Ratio(200, 500));
        Assert.Equal(0.4, MeshResonance.Ratio(-200, 500));
    }

    private static bool Near(double expected, double actual, double tolerance = 1e-12) => Math.Abs(actual / expected - 1) < tolerance;
}
