using CsCheck;
using Pawl.Mechanics.Gears;

namespace Pawl.Mechanics.Tests.Gears;

public class BacklashTests
{
    private static readonly double Twenty = Degrees.Rad(20);

    // Worked out by an independent program.
    [Fact]
    public void Backlash_from_thinning_and_centre_distance_matches_an_independent_program()
    {
        var normal = Backlash.Normal(-0.1, 0.02, Twenty, Twenty, 0);

        Assert.Equal(0.107650068, normal, 5e-10);
        Assert.Equal(0.114558809, Backlash.Circumferential(normal, Twenty, 0), 5e-10);
    }

    // A steel pair, 60 mm, in an aluminium housing, all at 70 °C; worked out by an independent program.
    [Fact]
    public void Heat_opens_a_steel_pair_in_aluminium()
    {
        var change = Backlash.ThermalCentreDistanceDeviation(60, 23e-6, 50, 11.5e-6, 50);

        Assert.Equal(0.0345, change, 1e-12);
        Assert.Equal(0.0235993899, Backlash.Normal(0, change, Twenty, Twenty, 0), 5e-11);
    }

    // An internal pair closes as its axes part; the sign rule has a greater magnitude as a negative change.
    [Fact]
    public void Heat_closes_an_internal_pair_in_aluminium() =>
        Assert.True(Backlash.Normal(0, Backlash.ThermalCentreDistanceDeviation(-20, 23e-6, 50, 11.5e-6, 50), Twenty, Twenty, 0) < 0);

    [Fact]
    public void The_allowance_sum_gives_back_the_backlash() =>
        Gen.Select(Gen.Double[-0.3, 0], Gen.Double[-0.05, 0.05], Gen.Double[15, 30], Gen.Double[-30, 30])
            .Sample((sum, change, working, helix) =>
            {
                var (angle, atBase) = (Degrees.Rad(working), Degrees.Rad(helix));
                var normal = Backlash.Normal(sum, change, Twenty, angle, atBase);
                var circumferential = Backlash.Circumferential(normal, angle, atBase);
                return Math.Abs(Backlash.ThicknessAllowanceSum(normal, change, Twenty, angle, atBase) - sum) < 1e-12
                    && Math.Abs(Backlash.NormalFromCircumferential(circumferential, angle, atBase) - normal) < 1e-12;
            });

    // Exact: the play is what tooth and mating tooth leave of the pitch at the new pitch circles.
    [Theory]
    [InlineData(20, 60, 25, 0.03)]
    [InlineData(20, -60, 0, -0.03)]
    [InlineData(30, 45, 15, 0.03)]
    public void Backlash_is_the_room_left_on_the_pitch_circles(int z1, int z2, double helix, double change)
    {
        var pair = new Pair(2, z1, z2, HelixAngle: Degrees.Rad(helix));
        const double Thinning = -0.08;
        var moved = pair with { CentreDistance = pair.Centre + change };
        var pitch1 = MeshGeometry.WorkingPitchDiameter(pair.Base1, moved.WorkingAngle);
        var pitch2 = MeshGeometry.WorkingPitchDiameter(pair.Base2, moved.WorkingAngle);
        var shift = ToothGeometry.GeneratingProfileShift(0, Thinning / 2, 2, Twenty);
        double Thickness(double diameter, double baseDiameter, int teeth) => ToothGeometry.TransverseThicknessAt(
            diameter, baseDiameter, teeth, shift, Twenty, pair.TransverseAngle);
        var room = ToothGeometry.TransverseSpaceWidthAt(pitch2, z2, Thickness(pitch2, pair.Base2, z2))
            - Thickness(pitch1, pair.Base1, z1);

        var normal = Backlash.Normal(Thinning, change, Twenty, moved.WorkingAngle, pair.BaseHelix);
        Assert.Equal(room, Backlash.Circumferential(normal, moved.WorkingAngle, pair.BaseHelix), 5e-4);
    }

    // Moving the axes in by j_r takes the backlash away.
    [Fact]
    public void Radial_backlash_closes_the_circumferential()
    {
        var circumferential = Backlash.Circumferential(Backlash.Normal(-0.1, 0, Twenty, Twenty, 0), Twenty, 0);
        var radial = Backlash.Radial(circumferential, Twenty);

        Assert.Equal(0, Backlash.Normal(-0.1, -radial, Twenty, Twenty, 0), 1e-15);
    }

    [Fact]
    public void Lash_is_the_play_over_the_pitch_radius() =>
        Assert.Equal(0.1 / 20, Backlash.AngularLash(0.1, -40), 1e-15);

    // Planet of equal pitch circles in both meshes: (j₁ + j₂)/(2a).
    [Fact]
    public void Carrier_lash_with_equal_pitch_circles_is_the_mean_play_over_the_carrier_radius() =>
        Assert.Equal((0.08 + 0.12) / (2 * 45), Backlash.CarrierLash(0.08, 0.12, 50, 50, -45), 1e-15);

    // Carrier and planet moved in small steps until a flank touches on either side.
    [Theory]
    [InlineData(50, 50)]
    [InlineData(60, 35)]
    public void Carrier_lash_is_how_far_the_carrier_turns_between_the_stops(double atSun, double atRing)
    {
        double most = 0;
        for (var planet = -0.02; planet <= 0.02; planet += 1e-7)
        {
            // 0 ≤ a·φ − r₁·ψ ≤ j₁ and 0 ≤ a·φ + r₂·ψ ≤ j₂.
            var upper = Math.Min((0.08 + atSun / 2 * planet) / 45, (0.12 - atRing / 2 * planet) / 45);
            most = Math.Max(most, upper);
        }

        Assert.Equal(most, Backlash.CarrierLash(0.08, 0.12, atSun, atRing, 45), 1e-6);
    }
}
