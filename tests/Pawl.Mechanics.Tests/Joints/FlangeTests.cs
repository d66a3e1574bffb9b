using CsCheck;
using Pawl.Mechanics.Joints;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Joints;

public class FlangeTests
{
    // 8 bolts of 16 kN, µ = 0.12, on 120 mm: 8·16 000·0.12·60 = 921 600 N·mm.
    [Fact]
    public void Slip_of_a_flange_is_worked_by_hand()
    {
        Assert.Equal(921_600, Flange.FrictionTorque(8, 16_000, 0.12, 120), 1e-6);
        Assert.Equal(2 * 921_600, Flange.FrictionTorque(8, 16_000, 0.12, 120, 2), 1e-6);
        Assert.Equal(0, Flange.FrictionTorque(8, -100, 0.12, 120));
        Refusal.Says("a flange has bolts", () => Flange.FrictionTorque(0, 1, 0.1, 100));
        Refusal.Says("a flange has an interface", () => Flange.FrictionTorque(4, 1, 0.1, 100, 0));
    }

    // Vectors of the torque's share, tangent to the circle, and of the force's share, added at each of many places.
    [Fact]
    public void The_force_across_a_bolt_is_the_worst_of_all_places() =>
        Gen.Select(Gen.Int[3, 16], Gen.Double[0, 1e6], Gen.Double[0, 1e4], Gen.Double[30, 200]).Sample((bolts, torque, across, circle) =>
        {
            var worst = 0.0;
            for (var place = 0; place < 3600; place++)
            {
                var angle = place * Math.PI / 1800;
                var (x, y) = (-Math.Sin(angle) * 2 * torque / (bolts * circle), Math.Cos(angle) * 2 * torque / (bolts * circle) + across / bolts);
                worst = Math.Max(worst, Math.Sqrt(x * x + y * y));
            }

            return Math.Abs(Flange.ForceAcross(bolts, torque, across, circle) - worst) < 1e-5 * worst + 1e-9;
        },
        iter: 200);

    // A public page on slewing rings: F = 2·M/(n·R). Brute force: forces as the distance from an axis at any angle, that balance the moment.
    [Fact]
    public void The_force_of_a_moment_is_that_of_the_worst_bolt()
    {
        Assert.Equal(2 * 1.2e6 / (24 * 300), Flange.ForceOfMoment(24, 1.2e6, 600), 1e-9);
        Gen.Select(Gen.Int[3, 24], Gen.Double[0, 1e6], Gen.Double[30, 400], Gen.Double[0, 3]).Sample((bolts, moment, circle, turned) =>
        {
            var arms = Enumerable.Range(0, bolts).Select(i => circle / 2 * Math.Sin(2 * Math.PI * i / bolts + turned)).ToArray();
            var worst = moment * (circle / 2) / arms.Sum(arm => arm * arm);
            return Math.Abs(Flange.ForceOfMoment(bolts, moment, circle) - worst) < 1e-9 * worst + 1e-9;
        },
        iter: 200);
        Refusal.Says("three bolts", () => Flange.ForceOfMoment(2, 1, 100));
    }

    // Pressure F/A + c·y over a ring, summed over cells: no pressure at the edge, and the moment about the middle.
    [Theory]
    [InlineData(160, 110)]
    [InlineData(212, 152)]
    [InlineData(100, 20)]
    public void An_edge_opens_where_the_summed_pressure_says(double outside, double inside)
    {
        const int cells = 1200;
        var (force, moment, step) = (0.0, 0.0, outside / cells);
        for (var i = 0; i < cells; i++)
        {
            for (var k = 0; k < cells; k++)
            {
                var (x, y) = ((i + 0.5) * step - outside / 2, (k + 0.5) * step - outside / 2);
                if (Math.Sqrt(x * x + y * y) is var r && r <= outside / 2 && r >= inside / 2)
                {
                    force += (y + outside / 2) * step * step;
                    moment += (y + outside / 2) * y * step * step;
                }
            }
        }

        Assert.Equal(force, Flange.OpeningForce(moment, outside, inside), 2e-3 * force);
    }

    [Theory]
    [InlineData(100, 120, 0, TorquePath.Friction)]
    [InlineData(100, 120, 150, TorquePath.Friction)]
    [InlineData(100, 80, 110, TorquePath.Dowels)]
    [InlineData(100, 80, 80, TorquePath.Neither)]
    [InlineData(100, 0, 0, TorquePath.Neither)]
    public void Friction_and_dowels_never_add_up(double needed, double friction, double dowels, TorquePath path)
    {
        Assert.Equal(path, Flange.Path(needed, friction, dowels));
    }

    // ASME PCC-1, star of the legacy pattern, for 4, 8, 12 and 16 bolts, from memory; five as on a wheel, from memory.
    [Theory]
    [InlineData(4, new[] { 1, 3, 2, 4 })]
    [InlineData(8, new[] { 1, 5, 3, 7, 2, 6, 4, 8 })]
    [InlineData(12, new[] { 1, 7, 4, 10, 2, 8, 5, 11, 3, 9, 6, 12 })]
    [InlineData(16, new[] { 1, 9, 5, 13, 3, 11, 7, 15, 2, 10, 6, 14, 4, 12, 8, 16 })]
    [InlineData(5, new[] { 1, 3, 5, 2, 4 })]
    [InlineData(6, new[] { 1, 4, 2, 5, 3, 6 })]
    public void Bolts_are_tightened_as_a_star(int bolts, int[] order)
    {
        Assert.Equal(order, TighteningSequence.Crosswise(bolts));
    }

    [Fact]
    public void Every_bolt_has_its_turn_and_its_opposite_comes_next() =>
        Gen.Int[2, 60].Sample(bolts =>
        {
            var order = TighteningSequence.Crosswise(bolts);
            var all = order.Order().SequenceEqual(Enumerable.Range(1, bolts));
            return all && (bolts % 2 == 1 || Enumerable.Range(0, bolts / 2).All(pair => order[2 * pair + 1] - order[2 * pair] == bolts / 2));
        });

    // A spacer 30 × 20 of 40 mm, a ring 40 × 30 of 12 mm, steel of 206 000; shaft of 20 with a bore of 8, 52 mm:
    // 40/(206 000·392.70) + 12/(206 000·549.78) = 4.9447e-7 + 1.0596e-7; 52/(206 000·263.89) = 9.5655e-7.
    [Fact]
    public void Stack_and_shaft_of_a_central_nut_are_worked_by_hand()
    {
        var stack = CentralNut.StackCompliance([new StackedRing(40, 30, 20, 206_000), new StackedRing(12, 40, 30, 206_000)]);
        var shaft = CentralNut.ShaftCompliance([new ShankPiece(52, 20)], 8, 206_000);

        Assert.Equal(6.0043e-7, stack, 0.0005e-7);
        Assert.Equal(9.5655e-7, shaft, 0.0005e-7);
    }

    // Even pressure over the ring: µ·p·r·dA added up.
    [Fact]
    public void Friction_of_a_ring_face_is_that_of_its_pieces() =>
        Gen.Select(Gen.Double[1, 1e5], Gen.Double[0.05, 0.3], Gen.Double[10, 60], Gen.Double[0, 0.95]).Sample((clamp, friction, outer, share) =>
        {
            var inner = outer * share;
            const int rings = 5000;
            var (torque, pressure) = (0.0, clamp / (Math.PI / 4 * (outer * outer - inner * inner)));
            for (var ring = 0; ring < rings; ring++)
            {
                var radius = (inner + (outer - inner) * (ring + 0.5) / rings) / 2;
                torque += friction * pressure * radius * 2 * Math.PI * radius * (outer - inner) / (2 * rings);
            }

            return Math.Abs(CentralNut.FaceTorque(clamp, friction, outer, inner) / torque - 1) < 1e-5;
        },
        iter: 200);

    // M20x1.5 has A_s = 271.5 mm²; a 4 mm hole across takes 4·18.59 of it, a bore of 8 mm 50.27 and a shorter hole.
    [Fact]
    public void Section_of_a_drilled_thread_is_worked_by_hand()
    {
        var thread = Bolts.Thread("M20x1.5");
        Assert.Equal(thread.StressDiameter, CentralNut.SectionDiameter(thread, 0), 1e-9);
        Assert.Equal(Math.Sqrt(4 * (271.5 - 74.37) / Math.PI), CentralNut.SectionDiameter(thread, 4), 0.01);
        Assert.Equal(Math.Sqrt(4 * (271.5 - 50.27 - 42.37) / Math.PI), CentralNut.SectionDiameter(thread, 4, 8), 0.01);
        Refusal.Says("the holes leave nothing", () => CentralNut.SectionDiameter(thread, 15));
        Refusal.Says("the holes leave nothing", () => CentralNut.SectionDiameter(thread, 0, 19));
    }

    // 150 lbf·ft with T = 0.2·F·d: 14 400 lbf on 5/8-18, 47 % of the proof load of grade 8; 18 000 lbf on 1/2-20, 94 %.
    [Theory]
    [InlineData("5/8-18", 14_400, 0.47)]
    [InlineData("1/2-20", 18_000, 0.94)]
    [InlineData("3/4-16", 12_000, 0.27)]
    public void The_clamp_of_a_torque_goes_with_the_thread(string designation, double pounds, double share)
    {
        const double poundForce = 4.4482216152605;
        var thread = Bolts.Thread(designation);

        // Frictions under which the nut factor is 0.2: the face has no drag but what is missing.
        var inThread = new JointFriction(0.15, 0);
        BearingFace face = new(1.5 * thread.Diameter, thread.Diameter);
        var head = (0.2 - (Tightening.Torque(thread, inThread, face, 1) / thread.Diameter)) * thread.Diameter * 2 / face.MeanDiameter;
        var clamp = Tightening.Preload(thread, new JointFriction(0.15, head), face, 150 * 12 * poundForce * 25.4);

        Assert.Equal(pounds, clamp / poundForce, 1.0);
        Assert.Equal(share, clamp / Bolts.Strength("8", designation).ProofLoad(thread), 0.005);
    }
}
