using CsCheck;
using Fractions;
using Pawl.Mechanics.Trains;

namespace Pawl.Mechanics.Tests.Trains;

/// <summary>Closed forms over random tooth numbers.</summary>
/// <remarks>
/// Ratios: the Willis equation solved by hand. Efficiencies: rolling power in the frame of the carrier, as in H. W. Müller,
/// Epicyclic Drive Trains (from memory). R = z_r/z_s; η0 is the product of the mesh efficiencies with the carrier held.
/// </remarks>
public sealed class ClosedFormTests
{
    private static readonly Gen<int> Teeth = Gen.Int[12, 90];
    private static readonly Gen<int> More = Gen.Int[1, 60];
    private static readonly Gen<double> Efficiency = Gen.Double[0.9, 1];

    [Fact]
    public void Simple_planetary() => Gen.Select(Teeth, Teeth, More, Efficiency, Efficiency).Sample((sun, planet, more, outer, inner) =>
    {
        var ring = Math.Max(sun, planet) + more;
        var train = TrainBuilder.Simple(sun, planet, ring, outer, inner);
        var exact = new Fraction(ring, sun);
        var (r, eta) = (exact.ToDouble(), outer * inner);

        Check(train.Solve("sun", "carrier", "ring"), 1 + exact, (1 + eta * r) / (1 + r));
        Check(train.Solve("carrier", "sun", "ring"), 1 / (1 + exact), eta * (1 + r) / (eta + r));
        Check(train.Solve("ring", "carrier", "sun"), 1 + 1 / exact, (r + eta) / (r + 1));
        Check(train.Solve("sun", "ring", "carrier"), -exact, eta);
    });

    [Fact]
    public void Stepped_planets() => Gen.Select(Teeth, Teeth, Teeth, More, Efficiency, Efficiency).Sample((sun, p1, p2, more, outer, inner) =>
    {
        var ring = p2 + more;
        var train = new TrainBuilder().Planet("planet", "carrier").Outer("sun", sun, "planet", p1, outer).Inner("ring", ring, "planet", p2, inner);
        var exact = new Fraction(ring, sun) * new Fraction(p1, p2);
        var (r, eta) = (exact.ToDouble(), outer * inner);

        Check(train.Solve("sun", "carrier", "ring"), 1 + exact, (1 + eta * r) / (1 + r));
    });

    [Fact]
    public void Meshed_pairs_between_two_suns() => Gen.Select(Teeth, Teeth, Teeth, Teeth, Teeth, Efficiency).Sample((s1, l1, l2, s, s2, eta) =>
    {
        var exact = new Fraction(s2, s1) * new Fraction(l1, l2);
        var (r, eta0) = (exact.ToDouble(), eta * eta * eta);

        Check(TrainBuilder.TwoSuns(s1, l1, l2, s, s2, eta).Solve("sun1", "carrier", "sun2"), 1 + exact, (1 + eta0 * r) / (1 + r));
    });

    [Fact]
    public void Meshed_pairs_between_sun_and_ring() => Gen.Select(Teeth, Teeth, Teeth, More, Efficiency, Efficiency).Sample((sun, p1, p2, more, outer, inner) =>
    {
        var ring = p2 + more;
        var train = TrainBuilder.PairWithRing(sun, p1, p2, ring, outer, inner);
        var exact = new Fraction(ring, sun);
        var (r, eta) = (exact.ToDouble(), outer * outer * inner);

        Check(train.Solve("sun", "ring", "carrier"), exact, eta);
        if (ring != sun)
            Check(train.Solve("sun", "carrier", "ring"), 1 - exact, r > 1 ? (eta * r - 1) / (r - 1) : (1 - r / eta) / (1 - r));
    });

    // i = 1 − i0 and η = (1 − i0·η0^w)/(1 − i0) with i0 = z_s2·z_p1/(z_p2·z_s1); w = 1 for i0 > 1, else −1.
    [Fact]
    public void Stepped_planets_between_two_suns() => Gen.Select(Teeth, Teeth, Teeth, Teeth, Efficiency).Sample((s1, p1, p2, s2, eta) =>
    {
        var exact = new Fraction(s2, s1) * new Fraction(p1, p2);
        if (exact == 1) return;
        var train = new TrainBuilder().Planet("planet", "carrier").Outer("s1", s1, "planet", p1, eta).Outer("s2", s2, "planet", p2, eta);
        var (i0, eta0) = (exact.ToDouble(), eta * eta);

        Check(train.Solve("s1", "carrier", "s2"), 1 - exact, (1 - i0 * (i0 > 1 ? eta0 : 1 / eta0)) / (1 - i0));
        Check(train.Solve("carrier", "s1", "s2"), 1 / (1 - exact), (1 - i0) / (1 - i0 * (i0 > 1 ? 1 / eta0 : eta0)));
    });

    // k = z_r1·z_p2/(z_p1·z_r2). Both signs of 1 − k.
    [Fact]
    public void Two_rings_driven_by_one_sun() =>
        Gen.Select(Teeth, Teeth, Teeth, More, More).Select(Gen.Select(Efficiency, Efficiency, Efficiency)).Sample((teeth, losses) =>
    {
        var (sun, p1, p2, more1, more2) = teeth;
        var (outer, inner1, inner2) = losses;
        var (ring1, ring2) = (p1 + more1, p2 + more2);
        var k = new Fraction(ring1, p1) * new Fraction(p2, ring2);
        var solution = TrainBuilder.Wolfrom(sun, p1, ring1, p2, ring2, outer, inner1, inner2).Solve("sun", "ring2", "ring1");
        if (k == 1)
        {
            Assert.IsType<TrainProblem.SingularRatio>(Assert.Single(solution.Problems));
            return;
        }

        var exact = new Fraction(ring1, sun);
        var (r, kd) = (exact.ToDouble(), k.ToDouble());
        var eta = kd < 1
            ? (1 + outer * inner1 * r) / (1 + r) * (1 - kd) / (1 - kd * inner1 * inner2)
            : (1 + r * outer / inner1) / (1 + r) * (kd - 1) / (kd / (inner1 * inner2) - 1);
        Check(solution, (1 + exact) / (1 - k), eta);
    });

    private static void Check(TrainSolution solution, Fraction ratio, double efficiency)
    {
        Assert.Equal(ratio, solution.Speeds!.Ratio);
        Assert.Equal(ratio.ToDouble() < 0 ? RotationSense.Reversed : RotationSense.Same, solution.Speeds.Sense);

        // Right at the border of self-locking the last bits decide.
        if (Math.Abs(efficiency) < 1e-9) return;
        if (efficiency > 0)
        {
            Assert.NotNull(solution.Torques);
            Assert.Equal(efficiency, solution.Torques.Efficiency, tolerance: 1e-9);
        }
        else
        {
            Assert.IsType<TrainProblem.SelfLocking>(Assert.Single(solution.Problems));
            Assert.Null(solution.Torques);
            Assert.NotNull(solution.Lossless);
        }
    }
}
