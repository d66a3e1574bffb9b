using System.Text;
using Pawl.Reports.Building;
using Pawl.Specs;

namespace Pawl.Reports.Tests;

public sealed class DeclaredInputsTests
{
    private const string Spec = """
        pawl: 1
        gearbox: {family: Works, variant: R400}
        train:
          input: sun_shaft
          output: carrier
          fixed: [housing]
          planets: {planet: {carrier: carrier, count: 3, positions: [0°, 120°, 240°]}}
          gears:
            sun: {on: sun_shaft, teeth: 24, module: 2.0 mm}
            wheel: {on: planet, teeth: 24, module: 2.0 mm}
          meshes:
            - {gears: [sun, wheel], centre_distance: 48 mm js7}
        """;

    [Fact]
    public void Every_scalar_of_the_spec_is_listed_as_written_with_its_place()
    {
        var load = new SpecLoader(Path.GetTempPath(), []).Load("r400.yaml", Encoding.UTF8.GetBytes(Spec));
        Assert.True(load.Spec is not null, string.Join('\n', load.Diagnostics));

        var listed = DeclaredInputs.Of(load.Spec, new());

        Assert.Equal(
            [
                ("pawl", "1", 1), ("gearbox.family", "Works", 2), ("gearbox.variant", "R400", 2),
                ("train.input", "sun_shaft", 4), ("train.output", "carrier", 5), ("train.fixed[1]", "housing", 6),
                ("train.planets.planet.carrier", "carrier", 7), ("train.planets.planet.count", "3", 7),
                ("train.planets.planet.positions[1]", "0°", 7), ("train.planets.planet.positions[2]", "120°", 7),
                ("train.planets.planet.positions[3]", "240°", 7),
                ("train.gears.sun.on", "sun_shaft", 9), ("train.gears.sun.teeth", "24", 9), ("train.gears.sun.module", "2.0 mm", 9),
                ("train.gears.wheel.on", "planet", 10), ("train.gears.wheel.teeth", "24", 10), ("train.gears.wheel.module", "2.0 mm", 10),
                ("train.meshes[1].gears[1]", "sun", 12), ("train.meshes[1].gears[2]", "wheel", 12),
                ("train.meshes[1].centre_distance", "48 mm js7", 12),
            ],
            listed.Select(input => (input.Path, input.Written, input.Place.Line)));
    }
}
