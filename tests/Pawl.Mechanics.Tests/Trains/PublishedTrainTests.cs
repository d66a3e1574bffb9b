using Fractions;

namespace Pawl.Mechanics.Tests.Trains;

/// <summary>Worked examples that were printed elsewhere, and a textbook gear set whose ratios are closed forms.</summary>
public sealed class PublishedTrainTests
{
    // R. S. Khurmi and J. K. Gupta, Theory of Machines, chapter "Gear Trains", example 13.4 (attribution from memory; printed in many
    // collections): an arm turns at 150 rpm and carries gears A (36 teeth, on the arm's axis) and B (45). A held: B makes 270 rpm.
    // A at −300 rpm: B makes 510 rpm.
    [Theory]
    [InlineData(0, 270)]
    [InlineData(-300, 510)]
    public void A_gear_carried_round_another_turns_as_printed(int speedOfA, int printed)
    {
        var graph = new TrainBuilder().Planet("B", "arm").Outer("A", 36, "B", 45).Graph("arm", "B", "A");

        var speeds = SpeedsOf.Given(graph, [new GivenSpeed("arm", 150), new GivenSpeed("A", speedOfA)]).Speeds;

        Assert.Equal(printed, speeds!.Of("B")!.Speed);
    }

    // Same book (attribution from memory; printed in many collections):
    // ring A of 72 teeth held, sun C of 32, arm at 18 rpm. Answers: C 58.5 rpm, B 46.8 rpm the other way, z_B = 20.
    [Fact]
    public void A_simple_planetary_turns_as_printed()
    {
        var graph = new TrainBuilder().Planet("B", "arm").Inner("A", 72, "B", 20).Outer("C", 32, "B", 20).Graph("arm", "C", "A");

        var speeds = SpeedsOf.Given(graph, [new GivenSpeed("arm", 18), new GivenSpeed("A", 0)]).Speeds;

        Assert.Equal(new Fraction(585, 10), speeds!.Of("C")!.Speed);
        Assert.Equal(new Fraction(-468, 10), speeds.Of("B")!.Speed);
    }

    // Same book (tooth counts as published, answers from memory): rings A and B, compound suns C-D (28, 26) between, planets E and F of
    // 18 on one arm, so z_A = 64 and z_B = 62. Arm at 100 rpm: with A held B makes 4.2 rpm; with A at −10 rpm, −5.4 rpm.
    [Theory]
    [InlineData(0, 4.2)]
    [InlineData(-10, -5.4)]
    public void Two_coupled_planetary_sets_on_one_arm_turn_as_printed(int speedOfA, double printed)
    {
        var graph = new TrainBuilder().Planet("E", "G").Planet("F", "G")
            .Inner("A", 64, "E", 18).Outer("CD", 28, "E", 18)
            .Outer("CD", 26, "F", 18).Inner("B", 62, "F", 18)
            .Graph("G", "B", "A");

        var speeds = SpeedsOf.Given(graph, [new GivenSpeed("G", 100), new GivenSpeed("A", speedOfA)]).Speeds;

        // The book rounds on the way: one unit of its last digit.
        Assert.Equal(printed, speeds!.Of("B")!.Speed.ToDouble(), tolerance: 0.1);
    }

    // A quiz of public agricultural-engineering questions: sun 20, planet 40, ring 100 held, sun at 60 rpm: the arm makes 10 rpm.
    [Fact]
    public void A_reducer_of_six_turns_as_printed() =>
        Assert.Equal(6, TrainBuilder.Simple(20, 40, 100).Solve("sun", "carrier", "ring").Speeds!.Ratio!.Value);

    // Two suns, long and short pinions in mesh, one ring (a Ravigneaux set); the small sun meshes with the short pinions, the large
    // sun and the ring with the long ones; the ring drives. Willis for either sun, with r1 = z_r/z_small and r2 = z_r/z_large:
    // n_small − n_c = r1·(n_r − n_c) and n_large − n_c = −r2·(n_r − n_c). Solved by hand for the member held:
    // carrier held: r1 and −r2; large sun held, small sun in: (r1 + r2)/(1 + r2); large sun held, carrier in: r2/(1 + r2).
    [Theory]
    [InlineData(28, 36, 74)]
    [InlineData(24, 33, 69)]
    [InlineData(31, 38, 85)]
    public void A_set_with_two_suns_and_a_ring_has_four_ratios(int small, int large, int ring)
    {
        var train = new TrainBuilder().Planet("long", "carrier", 3).Planet("short", "carrier", 3)
            .Outer("small", small, "short", 17).Outer("short", 17, "long", 19)
            .Outer("large", large, "long", 19).Inner("ring", ring, "long", 19);
        var (r1, r2) = (new Fraction(ring, small), new Fraction(ring, large));

        Assert.Equal(r1, Ratio("small", "carrier"));
        Assert.Equal(-r2, Ratio("large", "carrier"));
        Assert.Equal((r1 + r2) / (1 + r2), Ratio("small", "large"));
        Assert.Equal(r2 / (1 + r2), Ratio("carrier", "large"));

        Fraction Ratio(string input, string held) => train.Solve(input, "ring", held).Speeds!.Ratio!.Value;
    }
}
