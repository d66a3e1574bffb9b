using CsCheck;
using Pawl.Mechanics.Rating;
using Pawl.Mechanics.Tests.Gears;

namespace Pawl.Mechanics.Tests.Rating;

public class MeshForceTests
{
    // Three planets whose carrier and central gears are all guided: the heaviest bears a tenth more than the mean.
    // Equilibrium: all planets together carry N times the mean.
    [Theory]
    [InlineData(2, 1.1, 0.9)]
    [InlineData(3, 1.2, 0.9)]
    [InlineData(5, 1.35, 0.9125)]
    [InlineData(3, 3, 0)]
    public void The_others_carry_what_the_heaviest_planet_leaves(int planets, double heaviest, double expected) =>
        Assert.Equal(expected, PlanetLoadSharing.OfTheOthers(planets, heaviest), 1e-12);

    [Fact]
    public void No_planet_carries_more_than_all_or_less_than_its_share()
    {
        Refusal.Says("the mesh load factor must lie from 1 to 3", () => PlanetLoadSharing.OfTheOthers(3, 3.1));
        Refusal.Says("the number of planets must be 2 or more", () => PlanetLoadSharing.OfTheOthers(1, 1));
    }

    [Fact]
    public void The_heaviest_planet_bears_more_than_the_mean() => Assert.Equal(550, 500 * PlanetLoadSharing.Factor(3, floating: false), 1e-9);

    // One force along the line of action: its moment about the axis is the torque, its part across the centre line and its part
    // along it make F_t·d/d_w and F_r.
    [Fact]
    public void Tangential_and_radial_force_are_parts_of_one_force_along_the_line_of_action() =>
        Gen.Select(Gen.Double[15, 30], Gen.Double[12, 35], Gen.Double[10, 200], Gen.Double[1, 1e6]).Sample((alpha, working, d, torque) =>
        {
            var (reference, angle) = (Degrees.Rad(alpha), Degrees.Rad(working));
            var baseRadius = d / 2 * Math.Cos(reference);
            var force = torque / baseRadius;
            var tangential = 2 * torque / d;
            var radial = MeshForce.Radial(tangential, reference, angle);
            var workingRadius = baseRadius / Math.Cos(angle);
            return Near(force * Math.Sin(angle), radial)
                && Near(force * force, Math.Pow(torque / workingRadius, 2) + radial * radial);
        });

    // tan 30° = 0.5773503; the working circle gives the same: tan β_w/d_w = tan β/d.
    [Fact]
    public void A_helix_pushes_along_the_axis_alike_on_both_circles()
    {
        Assert.Equal(577.3503, MeshForce.Axial(1000, Degrees.Rad(30)), 5e-5);
        Assert.Equal(577.3503, MeshForce.Axial(1000, Degrees.Rad(-30)), 5e-5);
        Assert.Equal(
            MeshForce.Axial(1000, Degrees.Rad(30)), 1000 / 1.1 * Math.Tan(Math.Atan(Math.Tan(Degrees.Rad(30)) * 1.1)), 1e-9);
    }

    // Sun 20, planet 25, ring 70 held, sun at 1500/min: carrier 1500/4.5 = 333.33/min, planet relative to it
    // −1166.67·20/25 = −933.33/min. An hour: sun 3·1166.67·60, planet 933.33·60, ring 3·333.33·60.
    [Theory]
    [InlineData(3, 1500 - 1500 / 4.5, 210_000)]
    [InlineData(1, -(1500 - 1500 / 4.5) * 20 / 25, 56_000)]
    [InlineData(3, -1500 / 4.5, 60_000)]
    public void A_flank_is_loaded_once_a_contact(int contacts, double perMinute, double anHour) =>
        Assert.Equal(anHour, MeshForce.FlankCycles(contacts, perMinute * 2 * Math.PI / 60, 3600), 1e-6);

    [Fact]
    public void Without_a_mesh_or_a_life_there_is_no_answer()
    {
        Refusal.Says("no load cycles", () => MeshForce.FlankCycles(0, 1, 1));
        Refusal.Says("no load cycles", () => MeshForce.FlankCycles(1, 1, -1));
        Refusal.Says("not a finite number", () => MeshForce.FlankCycles(1, double.NaN, 1));
    }

    // IEC 61400-4, mesh load factor by the number of planets; from memory.
    [Theory]
    [InlineData(1, false, 1)]
    [InlineData(2, true, 1)]
    [InlineData(3, false, 1.1)]
    [InlineData(3, true, 1.05)]
    [InlineData(4, false, 1.25)]
    [InlineData(4, true, 1.25)]
    [InlineData(5, false, 1.35)]
    [InlineData(6, true, 1.44)]
    [InlineData(7, false, 1.47)]
    public void More_planets_share_less_evenly(int planets, bool floating, double factor) =>
        Assert.Equal(factor, PlanetLoadSharing.Factor(planets, floating), 1e-12);

    // Class rules of marine gears: 1 + 0.25·√(N − 3) from four planets up; from memory. Another source, the same size: within
    // 0.04.
    [Theory]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    public void A_rule_of_thumb_says_about_the_same(int planets) =>
        Assert.Equal(1 + 0.25 * Math.Sqrt(planets - 3), PlanetLoadSharing.Factor(planets, false), 0.04);

    [Theory]
    [InlineData(2, false, "without a floating member")]
    [InlineData(8, true, "the source ends at 7")]
    [InlineData(0, true, "must have planets")]
    [InlineData(-1, false, "must have planets")]
    public void Where_the_source_is_silent_the_share_is_to_be_stated(int planets, bool floating, string reason) =>
        Refusal.Says(reason, () => PlanetLoadSharing.Factor(planets, floating));

    private static bool Near(double expected, double actual) => Math.Abs(expected - actual) <= 1e-9 * Math.Abs(expected);
}
