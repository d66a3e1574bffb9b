using System.Collections.Immutable;
using CsCheck;
using Pawl.Mechanics.Joints;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Joints;

public class ClampForceTests
{
    private const double Steel = 205_000;

    // lbf and in to N and mm, exactly.
    private const double Pound = 4.4482216152605;
    private const double Inch = 25.4;

    // Shigley, Mechanical Engineering Design, pages 442 and 443 on a public page: 5/8-11, grip 1.5 in, no. 25 cast iron of 14 Mpsi, heads
    // of 1.5·d, 30°: k_m = 8.95 Mlbf/in; bolt of 30 Mpsi, 0.75 in of shank and of thread: k_b = 5.21 Mlbf/in; C = 0.368.
    [Fact]
    public void Stiffness_of_a_textbook_joint()
    {
        const double psi = Pound / (Inch * Inch);
        var thread = Bolts.Thread("5/8-11");
        BearingFace head = new(1.5 * thread.Diameter, thread.Diameter);
        ClampedParts parts = new([new ClampedLayer(0.75 * Inch, 14e6 * psi), new ClampedLayer(0.75 * Inch, 14e6 * psi)], head, 100, false);
        var members = parts.ComplianceOf(Math.Tan(Math.PI / 6));
        var bolt = BoltCompliance.Shank(new ShankPiece(0.75 * Inch, thread.Diameter), 30e6 * psi)
            + BoltCompliance.Shank(new ShankPiece(0.75 * Inch, thread.StressDiameter), 30e6 * psi);

        Assert.Equal(8.95, Inch / (members * Pound) / 1e6, 0.005);
        Assert.Equal(5.21, Inch / (bolt * Pound) / 1e6, 0.005);
        Assert.Equal(0.368, ClampForce.LoadFactor(1, bolt, members), 0.0005);
    }

    // The same example: preload 14.4 kip, 6 kip a bolt, C = 0.368: n_0 = 14.4/(6·0.632) = 3.80 before it parts; example 8-3 on page 439:
    // k_b 6.50, k_m 13.8, 25 kip, 6 kip, 0.373 in²: C = 0.320, 72.17 kpsi.
    [Fact]
    public void Forces_of_textbook_joints()
    {
        Assert.Equal(3.80, ClampForce.SeparatingLoad(14.4, 0, 0, 0.368) / 6, 0.005);
        Assert.Equal(0.320, ClampForce.LoadFactor(1, 1 / 6.50, 1 / 13.8), 0.0005);
        Assert.Equal(72.17, ClampForce.BoltForce(25, 0, 0.320, 6) / 0.373, 0.01);
    }

    // A public exercise of a machine design course: plates clamped by 2250 lbf, the bolt twice as stiff as they are: 6075 lbf leave
    // 225 lbf, and the bolt then feels 6300 lbf.
    [Fact]
    public void Clamp_of_a_public_exercise()
    {
        var factor = ClampForce.LoadFactor(1, 1, 2);
        Assert.Equal(225, ClampForce.Residual(2250, 0, 0, factor, 6075), 1e-9);
        Assert.Equal(6300, ClampForce.BoltForce(2250, 0, factor, 6075), 1e-9);
    }

    // Bolt and parts as springs of many little pieces, pulled apart; the force in each found by balance, not by the load factor.
    [Fact]
    public void A_joint_is_two_springs_pulled_apart() =>
        Gen.Select(Gen.Double[1e-7, 1e-5], Gen.Double[1e-7, 1e-5], Gen.Double[1_000, 50_000], Gen.Double[-10_000, 10_000]).Sample(
            (bolt, parts, preload, axial) =>
            {
                // Longer by x: the bolt pulls F + x/δ_S, the parts push F − x/δ_P; the difference is the load. Halved until it fits.
                var (low, high) = (-1.0, 1.0);
                for (var turn = 0; turn < 200; turn++)
                {
                    var x = (low + high) / 2;
                    if (x / bolt + x / parts < axial)
                        low = x;
                    else
                        high = x;
                }

                var factor = ClampForce.LoadFactor(1, bolt, parts);
                return Math.Abs(ClampForce.BoltForce(preload, 0, factor, axial) - (preload + low / bolt)) < 1e-3
                    && Math.Abs(ClampForce.Residual(preload, 0, 0, factor, axial) - (preload - low / parts)) < 1e-3;
            });

    // dx/(E·A) added up along the cone, in thin slices, over layers of unlike material.
    [Fact]
    public void Compliance_of_the_parts_is_that_of_thin_slices() =>
        Gen.Select(Gen.Double[2, 30], Gen.Double[2, 30], Gen.Double[60_000, 210_000], Gen.Double[1.02, 5], Gen.Bool).Sample(
            (first, second, modulus, width, tapped) =>
            {
                BearingFace face = new(13, 9);
                ClampedParts parts = new([new ClampedLayer(first, modulus), new ClampedLayer(second, Steel)], face, 13 * width, tapped);
                const int slices = 20_000;
                var (length, sum) = (first + second, 0.0);
                for (var slice = 0; slice < slices; slice++)
                {
                    var place = (slice + 0.5) / slices * length;
                    var from = tapped ? place : Math.Min(place, length - place);
                    var wide = Math.Min(13 * width, 13 + 2 * from * parts.ConeTangent);
                    sum += length / slices / ((place < first ? modulus : Steel) * Math.PI / 4 * (wide * wide - 81));
                }

                return Math.Abs(parts.Compliance / sum - 1) < 1e-3;
            },
            iter: 200);

    // VDI 2230 Part 1, the closed forms of one material: cone only, and cone with sleeve; tapped, d_W 11.6, d_h 9, l_K 20, D_A 40,
    // E 70 000: tan φ = 0.59399, D_A,Gr = 35.360, δ_P = 1.3178·10⁻⁶.
    [Fact]
    public void Cone_of_a_tapped_joint_is_worked_by_the_closed_form()
    {
        ClampedParts parts = new([new ClampedLayer(20, 70_000)], new BearingFace(11.6, 9), 40, true);
        Assert.Equal(0.59399, parts.ConeTangent, 0.00001);
        Assert.Equal(1.3178e-6, parts.Compliance, 0.0001e-6);
    }

    // Parts no wider than the head: a tube. Without a hole the cone has a closed form of its own.
    [Fact]
    public void Tube_and_solid_cone_are_closed_forms()
    {
        ClampedParts tube = new([new ClampedLayer(30, Steel)], new BearingFace(16, 9), 15, false);
        Assert.Equal(30 / (Steel * Math.PI / 4 * (16 * 16 - 81)), new ClampedParts(tube.Layers, tube.Face, 16, false).Compliance, 1e-15);
        Assert.Equal(30 / (Steel * Math.PI / 4 * (15 * 15 - 81)), tube.Compliance, 1e-15);

        ClampedParts solid = new([new ClampedLayer(10, Steel)], new BearingFace(10, 0), 100, true);
        Assert.Equal(4 * 10 / (Steel * Math.PI * 10 * 20), solid.ComplianceOf(0.5), 1e-15);
    }

    // M8, hexagon, steel: (4 + 3.2)/A_N of head and nut, 10 of shank 8, 12 of thread and 4 engaged on d₃ = 6.466:
    // 17.2/50.27 + 16/32.84 = 0.34218 + 0.48726 → /205 000 = 4.0461·10⁻⁶. Tapped in aluminium: 2.64/(50.27·70 000) for the nut.
    [Fact]
    public void Compliance_of_a_bolt_is_worked_by_hand()
    {
        var thread = Bolts.Thread("M8");
        Assert.Equal(4.0461e-6, BoltCompliance.Whole(thread, BoltHead.Hexagon, [new ShankPiece(10, 8)], 12, Steel), 0.0005e-6);
        Assert.Equal(
            4.0461e-6 - 3.2 / 50.2655 / Steel + 2.64 / 50.2655 / 70_000 - 0.8 / 50.2655 / Steel,
            BoltCompliance.Whole(thread, BoltHead.SocketCap, [new ShankPiece(10, 8)], 12, Steel, 70_000),
            0.0005e-6);
    }

    // VDI 2230 Part 1, table 5, from memory: through bolt, Rz 16 µm, two faces, one interface: 3 + 6 + 2 = 11 µm; in shear
    // 3 + 9 + 2.5; fine faces with a pack of three shims, tapped: 3 + 2.5 + 4·1.5.
    [Fact]
    public void Embedding_is_added_up_by_hand()
    {
        Assert.Equal(0.011, Embedding.Amount(0.016, 2, 1), 1e-12);
        Assert.Equal(0.0145, Embedding.Amount(0.016, 2, 1, shear: true), 1e-12);
        Assert.Equal(0.0115, Embedding.Amount(0.0063, 1, 4), 1e-12);
        Assert.Equal(0.014, Embedding.Amount(0.040, 2, 1), 1e-12);
        Assert.Equal(2750, ClampForce.EmbeddingLoss(0.011, 3e-6, 1e-6), 1e-9);
        Refusal.Says("VDI 2230 has embedding up to Rz 160 µm; the faces have 160 µm", () => Embedding.Amount(0.16, 2, 1));
        Refusal.Says("a bolt has a face under its head", () => Embedding.Amount(0.01, 0, 1));
    }

    // 30 mm of aluminium under a bolt of steel, both 60 K warmer: 30·11.5·10⁻⁶·60 = 0.0207 mm over 4·10⁻⁶ mm/N = 5175 N; a steel
    // flange of 10 mm more counts for nothing.
    [Fact]
    public void Heat_changes_the_preload_as_worked_by_hand()
    {
        ImmutableArray<ClampedLayer> layers = [new(30, 70_000, 23e-6), new(10, Steel, 11.5e-6)];
        Assert.Equal(5175, ClampForce.ThermalChange(layers, 60, 11.5e-6, 60, 3e-6, 1e-6), 1e-6);
        Assert.Equal(-5175, ClampForce.ThermalChange(layers, -60, 11.5e-6, -60, 3e-6, 1e-6), 1e-6);
        Assert.Equal(40 * 11.5e-6 * 20 / 4e-6, ClampForce.ThermalChange([new ClampedLayer(40, Steel, 11.5e-6)], 60, 11.5e-6, 40, 3e-6, 1e-6), 1e-6);
    }

    // A hole tapped in a soft part counts with the parts; n scales.
    [Fact]
    public void Load_factor_has_its_bounds() =>
        Gen.Select(Gen.Double[0.05, 1], Gen.Double[1e-7, 1e-5], Gen.Double[1e-7, 1e-5], Gen.Double[0, 1e-6]).Sample((n, bolt, parts, tapped) =>
            ClampForce.LoadFactor(n, bolt, parts) is > 0 and < 1
            && ClampForce.LoadFactor(n, bolt, parts, tapped) >= ClampForce.LoadFactor(n, bolt, parts)
            && Math.Abs(ClampForce.LoadFactor(n, bolt, parts) - n * ClampForce.LoadFactor(1, bolt, parts)) < 1e-12);

    [Fact]
    public void Impossible_joints_are_refused()
    {
        Refusal.Says("the load introduction factor", () => ClampForce.LoadFactor(1.1, 1, 1));
        Refusal.Says("a load factor lies from 0 to 1", () => ClampForce.Residual(1, 0, 0, 1.5, 1));
        Refusal.Says("the parts never feel the load", () => ClampForce.SeparatingLoad(1, 0, 0, 1));
        Refusal.Says("needs parts wider than the head", () => new ClampedParts([new ClampedLayer(10, Steel)], new BearingFace(16, 9), 16, false).ConeTangent);
        Refusal.Says("wider than the hole", () => new ClampedParts([new ClampedLayer(10, Steel)], new BearingFace(16, 9), 9, false).Compliance);
        Refusal.Says("the thickness of a layer must be above zero", () => new ClampedParts([new ClampedLayer(0, Steel)], new BearingFace(16, 9), 20, false).Compliance);
    }

    [Fact]
    public void Cone_and_sleeve_of_a_through_bolt_are_the_closed_form_of_VDI_2230() =>
        Gen.Select(Gen.Double[20, 100], Gen.Double[1.1, 2]).Sample((length, width) =>
        {
            var (dw, dh, e) = (16.6, 13.5, 205_000.0);
            var outer = dw * width;
            ClampedParts parts = new([new ClampedLayer(length, e)], new BearingFace(dw, dh), outer, false);
            var tangent = parts.ConeTangent;

            // From this diameter on the cones of both sides meet before the edge.
            if (outer >= dw + (length * tangent))
                return true;
            var closed = (2 / (dh * tangent) * Math.Log((dw + dh) * (outer - dh) / ((dw - dh) * (outer + dh)))
                + 4 / (outer * outer - dh * dh) * (length - (outer - dw) / tangent)) / (e * Math.PI);
            return Math.Abs(parts.Compliance / closed - 1) < 1e-9;
        });
}
