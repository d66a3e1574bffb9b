using Pawl.Analysis.Trains;

namespace Pawl.Analysis.Tests;

/// <summary>Circles of planets as a spec gets them, against closed forms.</summary>
public class PlanetSetOfSpecsTests
{
    // m 2, z 20/24/70, x 0.3/0.2: the sun mesh closes at inv α_w = inv 20° + 2·tan 20°·0.5/44, a_w = 44·cos 20°/cos α_w. The ring without
    // shift asks for 46·cos 20°/cos α_w, inv α_w = inv 20° − 2·tan 20°·0.2/46. Solved here by halving.
    [Fact]
    public void A_ring_that_leaves_the_centre_distance_to_the_sun_still_asks_for_its_own()
    {
        var sun = CentreDistance(44, 0.5 / 44);
        var ring = CentreDistance(46, -0.2 / 46);

        var analysis = SpecText.Analyse(Shifted(FormattableString.Invariant($", centre_distance: {sun:0.000000} mm"), ""));

        Assert.Equal(Math.Abs(ring - sun), analysis.Value("planets.planet", "coaxial_spread"), 5);

        static double CentreDistance(double reference, double shiftPerTeeth)
        {
            var rack = 20 * Math.PI / 180;
            var involute = Math.Tan(rack) - rack + (2 * Math.Tan(rack) * shiftPerTeeth);
            var (low, high) = (0.01, 1.0);
            for (var round = 0; round < 60; round++)
            {
                var middle = (low + high) / 2;
                (low, high) = Math.Tan(middle) - middle < involute ? (middle, high) : (low, middle);
            }

            return reference * Math.Cos(rack) / Math.Cos(low);
        }
    }

    // A ring held, N = 3: (z_s + z_r) mod 3 = 0 and i = 1 + z_r/z_s. 21 + 70 = 91 leaves 1. By hand: of all changes of one or two of
    // the numbers by up to 3 those nearest to the ratio, 1 + 70/21 = 4.3333, whose reference centre distances, (z_s + 25)/2 and
    // (z_r − 25)/2, part by half a module at most, |z_s + 50 − z_r| ≤ 1: 20/70 and 1 + 70/20 = 4.5, 21/72 and 4.4286, 22/71 and 4.2273, 23/73 and 4.1739, 19/68 and 4.5789.
    [Theory]
    [InlineData(21, 70, "", "sun 21, ring 72 (ratio 4.429); sun 22, ring 71 (ratio 4.227); sun 23, ring 73 (ratio 4.174)")]
    [InlineData(21, 70, "ratio: {target: 4.5}", "sun 20, ring 70 (ratio 4.5); sun 21, ring 72 (ratio 4.429); sun 19, ring 68 (ratio 4.579)")]
    [InlineData(20, 70, "", null)]
    public void Central_tooth_numbers_nearby_space_the_planets_equally(int sun, int ring, string ratio, string? neighbours)
    {
        var analysis = SpecText.Analyse(SpecText.Simple(sun: sun, ring: ring).Replace(SpecText.Duty, SpecText.Duty + "\n" + ratio, StringComparison.Ordinal));

        Assert.Equal(neighbours, analysis.Subject("planets.planet").Find(PlanetSetQuantities.SpacingNeighbour)?.Text);
    }

    // By hand: 45.10 − 45.00.
    [Fact]
    public void Meshes_that_state_different_centre_distances_are_not_coaxial()
    {
        var analysis = SpecText.Analyse(SpecText.Simple()
            .Replace("[sun, planet_gear]", "[sun, planet_gear], centre_distance: 45 mm ±0", StringComparison.Ordinal)
            .Replace("[planet_gear, ring]", "[planet_gear, ring], centre_distance: 45.1 mm ±0", StringComparison.Ordinal));

        Assert.Equal(0.1, analysis.Value("planets.planet", "coaxial_spread"), 9);
    }

    // A planet stands at one radius, whichever of its meshes states it.
    [Theory]
    [InlineData(", centre_distance: 45.2 mm js6", "")]
    [InlineData("", ", centre_distance: 45.2 mm js6")]
    public void Either_mesh_of_a_planet_may_state_its_radius(string atSun, string atRing)
    {
        var analysis = SpecText.Analyse(Shifted(atSun, atRing));

        var (sun, ring) = (
            analysis.Quantity("meshes.sun~planet_gear", "centre_distance").Value, analysis.Quantity("meshes.planet_gear~ring", "centre_distance").Value);
        Assert.Equal((45.2, sun), (ring.Nominal, ring));
        Assert.True(ring.Max > ring.Min);
    }

    // D = (20·20 + 70·30)/gcd(30, 20) = 250; by room 2·50·sin(π/N) > 64 admits four. Of two and four only two divides 250, but steps
    // that are clamped in place go in anywhere.
    [Theory]
    [InlineData("identical", 2)]
    [InlineData("individual", 4)]
    public void Steps_clamped_in_place_leave_only_room_to_limit_the_planets(string steps, int most)
    {
        var analysis = SpecText.Analyse($$"""
            pawl: 1
            gearbox: {family: Test, variant: Stepped}
            train:
              input: input
              output: carrier
              fixed: [housing]
              planets:
                planet: {carrier: carrier, count: 2, steps: {{steps}}}
              gears:
                sun: {on: input, teeth: 20, module: 2 mm, profile_shift: 0}
                large: {on: planet, teeth: 30, module: 2 mm, profile_shift: 0}
                small: {on: planet, teeth: 20, module: 2 mm, profile_shift: 0}
                ring: {on: housing, teeth: 70, internal: true, module: 2 mm, profile_shift: 0}
              meshes:
                - {gears: [sun, large]}
                - {gears: [small, ring]}
            """);

        Assert.Equal(most, analysis.Value("planets.planet", "most_planets"));
    }

    [Fact]
    public void A_planet_by_itself_has_no_neighbour()
    {
        var analysis = SpecText.Analyse(SpecText.Simple(count: 1));

        Assert.Null(analysis.Subject("planets.planet").Find(PlanetSetQuantities.NeighbourClearance));
    }

    // Statics by hand: all gears of 20 teeth, m 2, give three centre distances of 40 mm, so that the planets of a pair stand 60° apart.
    // D = 20 + 20; two pairs at 0° and 117° lie 13 of 40 steps apart: |1 + e^{i·117°}| = 2·cos 58.5°. Each pair: √3·0.5 kg·40 mm.
    [Fact]
    public void Both_planets_of_a_pair_pull_on_the_carrier()
    {
        var analysis = SpecText.Analyse("""
            pawl: 1
            gearbox: {family: Test, variant: Pairs}
            duty: {input: {speed: 1000 rpm, torque: 30 N·m}}
            train:
              input: input
              output: carrier
              fixed: [housing]
              planets:
                long: {carrier: carrier, count: 2, mass: 0.5 kg, positions: [0°, 117°]}
                short: {carrier: carrier, count: 2, mass: 0.5 kg}
              gears:
                sun: {on: input, teeth: 20, module: 2 mm, profile_shift: 0}
                long_gear: {on: long, teeth: 20, module: 2 mm, profile_shift: 0}
                short_gear: {on: short, teeth: 20, module: 2 mm, profile_shift: 0}
                held_sun: {on: housing, teeth: 20, module: 2 mm, profile_shift: 0}
              meshes:
                - {gears: [sun, long_gear]}
                - {gears: [long_gear, short_gear]}
                - {gears: [short_gear, held_sun]}
            """);

        // i = 1 + 20/20, so that the carrier makes 500 rpm.
        var carrier = 500 * Math.PI / 30;
        Assert.Equal(
            2 * Math.Cos(58.5 * Math.PI / 180) * Math.Sqrt(3) * 0.5 * 0.040 * carrier * carrier,
            analysis.Value("planets.long~short", "unbalance_force"), 6);
    }

    private static string Shifted(string atSun, string atRing) => SpecText.Simple(planet: 24)
        .Replace("teeth: 20, module: 2 mm, profile_shift: 0", "teeth: 20, module: 2 mm, profile_shift: 0.3", StringComparison.Ordinal)
        .Replace("teeth: 24, module: 2 mm, profile_shift: 0", "teeth: 24, module: 2 mm, profile_shift: 0.2", StringComparison.Ordinal)
        .Replace("[sun, planet_gear]", "[sun, planet_gear]" + atSun, StringComparison.Ordinal)
        .Replace("[planet_gear, ring]", "[planet_gear, ring]" + atRing, StringComparison.Ordinal);
}
