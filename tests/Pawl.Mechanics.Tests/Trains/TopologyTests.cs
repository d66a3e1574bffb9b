using Pawl.Mechanics.Trains;

namespace Pawl.Mechanics.Tests.Trains;

/// <summary>Trains built as textbooks draw them, and the textbook's name for each.</summary>
public sealed class TopologyTests
{
    [Fact]
    public void Simple_planetary() => Is(
        TrainBuilder.Simple().Graph("sun", "carrier", "ring"), StageLayout.SunAndRing, StageArrangement.RingHeld,
        "simple planetary: sun_20 in, ring_ring_70 held, carrier out");

    [Fact]
    public void Solar() => Is(
        TrainBuilder.Simple().Graph("ring", "carrier", "sun"), StageLayout.SunAndRing, StageArrangement.SunHeld,
        "simple planetary in solar arrangement: ring_ring_70 in, sun_20 held, carrier out");

    [Fact]
    public void Star() => Is(
        TrainBuilder.Simple().Graph("sun", "ring", "carrier"), StageLayout.SunAndRing, StageArrangement.CarrierHeld,
        "simple planetary as a star: sun_20 in, carrier held, ring_ring_70 out");

    [Fact]
    public void Differential() => Is(
        TrainBuilder.Simple().Graph("sun", "carrier"), StageLayout.SunAndRing, StageArrangement.NothingHeld,
        "simple planetary as a differential: sun_20 in, ring_ring_70 free, carrier out");

    [Fact]
    public void Stepped_planets() => Is(
        new TrainBuilder().Planet("p", "carrier").Outer("sun", 24, "p", 40).Inner("ring", 84, "p", 20).Graph("sun", "carrier", "ring"),
        StageLayout.SunAndRing, StageArrangement.RingHeld,
        "stepped planets between sun and ring: sun_24 in, ring_ring_84 held, carrier out", stepped: true);

    [Fact]
    public void Stepped_planets_between_two_suns() => Is(
        new TrainBuilder().Planet("p", "carrier").Outer("s1", 24, "p", 40).Outer("s2", 30, "p", 34).Graph("carrier", "s1", "s2"),
        StageLayout.TwoSuns, StageArrangement.SunHeld,
        "stepped planets between two suns: carrier in, s2_30 held, s1_24 out", stepped: true);

    [Fact]
    public void Stepped_planets_between_two_rings() => Is(
        new TrainBuilder().Planet("p", "carrier").Inner("r1", 64, "p", 24).Inner("r2", 60, "p", 20).Graph("carrier", "r2", "r1"),
        StageLayout.TwoRings, StageArrangement.RingHeld,
        "stepped planets between two rings: carrier in, r1_ring_64 held, r2_ring_60 out", stepped: true);

    // Two suns that differ by a tooth on one plain planet: a paradox gear.
    [Fact]
    public void Plain_planets_between_two_suns() => Is(
        new TrainBuilder().Planet("p", "carrier").Outer("s1", 99, "p", 20).Outer("s2", 100, "p", 20).Graph("carrier", "s1", "s2"),
        StageLayout.TwoSuns, StageArrangement.SunHeld,
        "planets between two suns: carrier in, s2_100 held, s1_99 out");

    [Fact]
    public void Meshed_pairs_between_two_suns() => Is(
        TrainBuilder.TwoSuns(48, 21, 21, 18, 30).Graph("sun1", "carrier", "sun2"),
        StageLayout.PairedTwoSuns, StageArrangement.SunHeld,
        "meshed-pair planets between two suns: sun1_48 in, sun2_30 held, carrier out");

    [Fact]
    public void Meshed_pairs_with_a_stepped_long_pinion() => Is(
        TrainBuilder.TwoSuns(48, 21, 20, 18, 30).Graph("sun1", "carrier", "sun2"),
        StageLayout.PairedTwoSuns, StageArrangement.SunHeld,
        "stepped meshed-pair planets between two suns: sun1_48 in, sun2_30 held, carrier out", stepped: true);

    [Fact]
    public void Meshed_pairs_between_sun_and_ring() => Is(
        TrainBuilder.PairWithRing(24, 18, 20, 84).Graph("sun", "carrier", "ring"),
        StageLayout.PairedSunAndRing, StageArrangement.RingHeld,
        "meshed-pair planets between sun and ring: sun_24 in, ring_ring_84 held, carrier out");

    [Fact]
    public void Two_rings_driven_by_one_sun() => Is(
        TrainBuilder.Wolfrom(15, 30, 75, 27, 72).Graph("sun", "ring2", "ring1"),
        StageLayout.SunAndTwoRings, StageArrangement.RingHeld,
        "stepped planets between a sun and two rings (Wolfrom set): sun_15 in, ring1_ring_75 held, carrier free, ring2_ring_72 out",
        stepped: true);

    [Fact]
    public void Two_suns_and_a_ring_on_pairs() => Is(
        new TrainBuilder().Planet("long", "carrier").Planet("short", "carrier")
            .Outer("small", 28, "short", 17).Outer("short", 17, "long", 19).Outer("large", 36, "long", 19).Inner("ring", 74, "long", 19)
            .Graph("small", "ring", "large"),
        StageLayout.PairedTwoSunsAndRing, StageArrangement.SunHeld,
        "meshed-pair planets between two suns and a ring (Ravigneaux set): small_28 in, large_36 held, carrier free, ring_ring_74 out");

    [Fact]
    public void Parallel_shafts() => Is(
        new TrainBuilder().Outer("a", 20, "idler", 30).Outer("idler", 30, "b", 40).Graph("a", "b"),
        StageLayout.ParallelShafts, StageArrangement.InHousing,
        "parallel shafts: a in, idler free, b out");

    [Fact]
    public void Stages_in_series()
    {
        var graph = new TrainBuilder().Planet("p1", "c1").Planet("p2", "c2")
            .Outer("c1", 24, "p2", 24).Inner("r2", 72, "p2", 24)
            .Outer("s1", 18, "p1", 36).Inner("r1", 90, "p1", 36)
            .Graph("s1", "c2", "r1", "r2");

        Assert.Equal(StageCoupling.Series, Topology.Recognise(graph)!.Coupling);
        Assert.Equal(
            "two stages in series: simple planetary (s1_18 in, r1_ring_90 held, c1 out); "
            + "then simple planetary (c1_24 in, r2_ring_72 held, c2 out)",
            Topology.Describe(graph));
    }

    [Fact]
    public void Parallel_shafts_then_a_planetary_stage() => Assert.Equal(
        "two stages in series: parallel shafts (shaft in, sun out); then simple planetary (sun_20 in, ring_ring_70 held, carrier out)",
        Topology.Describe(TrainBuilder.Simple().Outer("shaft", 20, "sun", 50).Graph("shaft", "carrier", "ring")));

    // Two sets that share the carrier and a compound sun: power can split.
    [Fact]
    public void Coupled_stages()
    {
        var graph = new TrainBuilder().Planet("E", "G").Planet("F", "G")
            .Inner("A", 64, "E", 18).Outer("CD", 28, "E", 18).Outer("CD", 26, "F", 18).Inner("B", 62, "F", 18)
            .Graph("G", "B", "A");

        var topology = Topology.Recognise(graph)!;
        Assert.Equal(StageCoupling.Coupled, topology.Coupling);
        Assert.All(topology.Stages, s => Assert.Equal(StageLayout.SunAndRing, s.Layout));
        Assert.StartsWith("two coupled stages: simple planetary (G in, A_ring_64 held, CD_28 out); with ", Topology.Describe(graph));
    }

    [Fact]
    public void An_unsound_graph_is_not_recognised() => Assert.Equal(
        "not recognised: the train has unresolved problems", Topology.Describe(TrainBuilder.Simple().Graph("nobody", "carrier")));

    private static void Is(TrainGraph graph, StageLayout layout, StageArrangement arrangement, string text, bool stepped = false)
    {
        var topology = Topology.Recognise(graph)!;
        var stage = Assert.Single(topology.Stages);
        Assert.Equal(StageCoupling.Single, topology.Coupling);
        Assert.Equal(layout, stage.Layout);
        Assert.Equal(arrangement, stage.Arrangement);
        Assert.Equal(stepped, stage.Stepped);
        Assert.Equal(text, Topology.Describe(graph));
    }
}
