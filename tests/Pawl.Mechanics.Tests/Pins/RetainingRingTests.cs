using Pawl.Mechanics.Pins;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Pins;

public class RetainingRingTests
{
    // DIN 471 on a public trade page: load of the groove F_N, kN, for a yield of 200 MPa, and least land n, mm. The page rounds, and the
    // smallest lie up to 7 % off; from 6 mm up 4 %, from 10 mm 2 %.
    [Theory]
    [InlineData(6, 0.46, 0.5)]
    [InlineData(7, 0.54, 0.5)]
    [InlineData(8, 0.81, 0.6)]
    [InlineData(9, 0.92, 0.6)]
    [InlineData(10, 1.01, 0.6)]
    [InlineData(11, 1.40, 0.8)]
    [InlineData(12, 1.53, 0.8)]
    [InlineData(13, 2.00, 0.9)]
    [InlineData(14, 2.15, 0.9)]
    [InlineData(15, 2.66, 1.1)]
    [InlineData(16, 3.26, 1.2)]
    [InlineData(17, 3.46, 1.2)]
    [InlineData(18, 4.58, 1.5)]
    [InlineData(19, 4.84, 1.5)]
    public void Groove_loads_of_shafts_are_those_of_DIN_471(double shaft, double kilonewtons, double land)
    {
        Assert.True(RetainingRing.TryFindShaft(shaft, out var ring, out _));
        Assert.Equal(kilonewtons, ring.GrooveLoad(200, 3 * ring.GrooveDepth) / 1000, kilonewtons * (shaft < 10 ? 0.04 : 0.02));
        Assert.InRange(land, 3 * ring.GrooveDepth - 0.06, 3 * ring.GrooveDepth + 0.06);
    }

    // DIN 472 on a public trade page, the same.
    [Theory]
    [InlineData(8, 0.86)]
    [InlineData(9, 0.96)]
    [InlineData(10, 1.08)]
    [InlineData(11, 1.17)]
    [InlineData(12, 1.60)]
    [InlineData(13, 2.10)]
    [InlineData(14, 2.25)]
    [InlineData(15, 2.80)]
    [InlineData(16, 3.40)]
    public void Groove_loads_of_bores_are_those_of_DIN_472(double bore, double kilonewtons)
    {
        Assert.True(RetainingRing.TryFindBore(bore, out var ring, out _));
        Assert.Equal(kilonewtons, ring.GrooveLoad(200, 3 * ring.GrooveDepth) / 1000, kilonewtons * 0.02);
    }

    // DIN 471 on another trade page: thickness, groove, width of the groove, mm.
    [Theory]
    [InlineData(20, 1.2, 19, 1.3)]
    [InlineData(22, 1.2, 21, 1.3)]
    [InlineData(45, 1.75, 42.5, 1.85)]
    [InlineData(50, 2, 47, 2.15)]
    [InlineData(60, 2, 57, 2.15)]
    [InlineData(65, 2.5, 62, 2.65)]
    [InlineData(72, 2.5, 69, 2.65)]
    public void Grooves_of_shafts_are_those_of_DIN_471(double shaft, double thickness, double groove, double width)
    {
        Assert.True(RetainingRing.TryFindShaft(shaft, out var ring, out _));
        Assert.Equal((thickness, groove, width), (ring.Thickness, ring.Groove, ring.GrooveWidth));
    }

    // Shaft of 25, groove of 23.9: π/4·(625 − 571.21)·350/1.2 = 12 322 N. A trade page: 7.0 kN at 200 MPa.
    [Fact]
    public void Groove_of_a_25_mm_shaft_is_worked_by_hand()
    {
        Assert.True(RetainingRing.TryFindShaft(25, out var ring, out _));

        Assert.Equal(0.55, ring.GrooveDepth, 1e-9);
        Assert.Equal(12_322, ring.GrooveLoad(350, 2), 1.0);
        Assert.Equal(7.0, ring.GrooveLoad(200, 2) / 1000, 0.05);
        Assert.Equal(4, ring.EdgeRatio(2.2), 1e-9);
        Assert.Equal(0.1, ring.Play, 1e-9);
    }

    // DIN 471, 18 mm: 17 kN sharp, 3.75 kN with a corner of 1.5 mm, 39 000 1/min; twice the lever, half the load.
    [Fact]
    public void Ring_loads_go_down_with_the_corner()
    {
        Assert.True(RetainingRing.TryFindShaft(18, out var ring, out _));

        Assert.Equal(17_000, ring.RingLoad(0));
        Assert.Equal(3750, ring.RingLoad(1.5), 1e-9);
        Assert.Equal(3000, ring.RingLoad(1.875), 1e-9);
        Assert.Equal(17_000, ring.RingLoad(0.1));
        Assert.Equal(39_000 * Math.PI / 30, ring.DetachingSpeed!.Value, 1e-9);
        Refusal.Says("put a support washer between", () => ring.RingLoad(2.5));
        Refusal.Says("no load for a land below 3 depths of the groove; it has 2", () => ring.GrooveLoad(200, 2 * ring.GrooveDepth));
        Refusal.Says("state what the supplier gives", () => new RetainingRing(25, 23.9, 1.3, 1.2).RingLoad(0));
        Refusal.Says("against a corner is not known", () => new RetainingRing(25, 23.9, 1.3, 1.2, 16_000).RingLoad(1));
    }

    // Shaft grooves lie inside the shaft, bore grooves outside the bore; depth grows with size; a groove is wider than its ring.
    [Fact]
    public void Tables_of_rings_are_in_order()
    {
        foreach (var rings in new[] { RetainingRing.OnShafts, RetainingRing.InBores })
        {
            for (var index = 1; index < rings.Length; index++)
            {
                Assert.True(rings[index].Diameter > rings[index - 1].Diameter);
                Assert.True(rings[index].GrooveDepth >= rings[index - 1].GrooveDepth - 1e-9);
                Assert.True(rings[index].Thickness >= rings[index - 1].Thickness);
                Assert.InRange(rings[index].Play, 0.0999, 0.1501);
            }
        }

        Assert.All(RetainingRing.OnShafts, ring => Assert.True(ring.Groove < ring.Diameter));
        Assert.All(RetainingRing.InBores, ring => Assert.True(ring.Groove > ring.Diameter));
        Assert.False(RetainingRing.TryFindShaft(23, out _, out var reason));
        Assert.Equal("the table of DIN 471 has no ring for a shaft of 23 mm; it goes from 3 mm to 100 mm: state ring and groove", reason);
    }
}
