using Pawl.Mechanics.Trains;

namespace Pawl.Mechanics.Tests.Trains;

/// <summary>Definitions, counted by hand in turns a minute.</summary>
public sealed class MeshRatesTests
{
    private const double PerMinute = Math.Tau / 60;

    // Sun 20 of 40 mm at 1500 1/min, planet 25, ring 70 held, three planets: carrier 1500/4.5 = 333.33 1/min, planet on its pin
    // −(20/25)·1166.67 = −933.33 1/min. Cycles an hour: 3·60·1166.67, 60·933.33, 3·60·333.33; speed π·40·1166.67/60 mm/s.
    [Fact]
    public void Cycles_and_pitch_line_speed_count_in_the_frame_of_the_carrier()
    {
        var speeds = TrainBuilder.Simple().Solve("sun", "carrier", "ring").Speeds!;
        var (sun, carrier, planet) = (Speed("sun"), Speed("carrier"), Speed("planet"));

        Assert.Equal(-933.333333, (planet - carrier) / PerMinute, tolerance: 5e-7);
        Assert.Equal(2443.46095, MeshRates.PitchLineSpeed(40, sun, carrier), tolerance: 5e-6);
        Assert.Equal(2443.46095, MeshRates.PitchLineSpeed(-50, planet, carrier), tolerance: 5e-6);

        double Speed(string body) => speeds.Of(body)!.Speed.ToDouble() * 1500 * PerMinute;
    }

    // f = 20·|1450 − 477.778|/60 = 324.074 Hz, the same from either gear of the mesh, whatever the sign of its teeth.
    [Fact]
    public void Mesh_frequency_is_the_same_from_either_gear()
    {
        Assert.Equal(324.074074, MeshRates.MeshFrequency(20, 1450 * PerMinute, 4300 / 9.0 * PerMinute), tolerance: 5e-7);
        Assert.Equal(324.074074, MeshRates.MeshFrequency(-70, 200 * PerMinute, 4300 / 9.0 * PerMinute), tolerance: 5e-7);
    }
}
