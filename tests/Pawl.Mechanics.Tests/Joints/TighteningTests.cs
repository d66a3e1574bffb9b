using CsCheck;
using Pawl.Mechanics.Joints;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Joints;

public class TighteningTests
{
    // VDI 2230 Part 1, table A1, as a public trade page prints it for fine threads (edition of 2001): greatest preload, kN, and torque,
    // N·m, at 90 % of the yield, of 8.8, 10.9, 12.9. Heads as ISO 4014 on holes of ISO 273. Preloads within 0.2 % of what it prints (whole kN
    // from M18 up), torques within 1 %: the guideline rounds its diameters.
    [Theory]
    [InlineData("M8x1", 0.10, 10.3, new[] { 20.7, 30.4, 35.6 }, new[] { 22.8, 33.5, 39.2 })]
    [InlineData("M8x1", 0.12, 10.3, new[] { 20.2, 29.7, 34.7 }, new[] { 26.1, 38.3, 44.9 })]
    [InlineData("M8x1", 0.14, 10.3, new[] { 19.7, 28.9, 33.9 }, new[] { 29.2, 42.8, 50.1 })]
    [InlineData("M10x1.25", 0.10, 12.8, new[] { 32.4, 47.5, 55.6 }, new[] { 44.0, 65, 76 })]
    [InlineData("M10x1.25", 0.12, 12.8, new[] { 31.6, 46.4, 54.3 }, new[] { 51.0, 75, 87 })]
    [InlineData("M12x1.25", 0.12, 15.05, new[] { 48.0, 70.5, 82.5 }, new[] { 90.0, 133, 155 })]
    [InlineData("M12x1.25", 0.14, 15.05, new[] { 46.8, 68.7, 80.4 }, new[] { 101.0, 149, 174 })]
    [InlineData("M14x1.5", 0.12, 17.55, new[] { 64.8, 95.2, 111.4 }, new[] { 142.0, 209, 244 })]
    [InlineData("M16x1.5", 0.10, 20, new[] { 89.6, 131.6, 154.0 }, new[] { 189.0, 278, 325 })]
    [InlineData("M16x1.5", 0.14, 20, new[] { 85.5, 125.5, 146.9 }, new[] { 244.0, 359, 420 })]
    [InlineData("M18x1.5", 0.12, 22.65, new[] { 117.0, 167, 196 }, new[] { 327.0, 465, 544 })]
    [InlineData("M20x1.5", 0.12, 25.1, new[] { 148.0, 211, 246 }, new[] { 454.0, 646, 756 })]
    [InlineData("M22x1.5", 0.14, 27.6, new[] { 178.0, 253, 296 }, new[] { 692.0, 985, 1153 })]
    [InlineData("M24x2", 0.12, 29.8, new[] { 209.0, 297, 348 }, new[] { 769.0, 1095, 1282 })]
    public void Preloads_and_torques_of_fine_threads_are_those_of_VDI_2230(
        string designation, double friction, double meanDiameter, double[] preloads, double[] torques)
    {
        string[] classes = ["8.8", "10.9", "12.9"];
        var thread = Bolts.Thread(designation);
        for (var column = 0; column < classes.Length; column++)
        {
            var preload = Tightening.PermittedPreload(thread, friction, Bolts.Strength(classes[column], designation).Yield);
            var torque = Tightening.Torque(thread, new JointFriction(friction, friction), Face(meanDiameter), preload);
            Assert.Equal(preloads[column], preload / 1000, preloads[column] >= 115 ? 0.6 : 0.002 * preloads[column] + 0.05);
            Assert.Equal(torques[column], torque / 1000, 0.01 * torques[column]);
        }
    }

    // The same table for coarse threads, 8.8: preloads from memory; M12 at 0.14, 41.9 kN, stands in an example on a public trade page.
    [Theory]
    [InlineData("M6", new[] { 10.7, 10.4, 10.2, 9.9 })]
    [InlineData("M8", new[] { 19.5, 19.1, 18.6, 18.1 })]
    [InlineData("M10", new[] { 31.0, 30.3, 29.6, 28.8 })]
    [InlineData("M12", new[] { 45.2, 44.1, 43.0, 41.9 })]
    [InlineData("M16", new[] { 84.7, 82.9, 80.9, 78.8 })]
    [InlineData("M20", new[] { 136.0, 134, 130, 127 })]
    public void Preloads_of_coarse_threads_are_those_of_VDI_2230(string designation, double[] preloads)
    {
        double[] frictions = [0.08, 0.10, 0.12, 0.14];
        var yield = Bolts.Strength("8.8", designation).Yield;
        for (var column = 0; column < frictions.Length; column++)
        {
            var preload = Tightening.PermittedPreload(Bolts.Thread(designation), frictions[column], yield);
            Assert.Equal(preloads[column], preload / 1000, preloads[column] >= 115 ? 0.6 : 0.002 * preloads[column] + 0.05);
        }
    }

    // Shigley, Mechanical Engineering Design, example 8-3: 3/4-16, 25 kip, f = 0.15, collar 1.25·d: 3551 lbf·in (from memory); the book
    // has tan(λ + ρ) in full, 0.4 % more.
    [Fact]
    public void Torque_of_a_textbook_bolt()
    {
        var thread = Bolts.Thread("3/4-16");
        BearingFace face = new(1.5 * thread.Diameter, thread.Diameter);

        Assert.Equal(1.25 * thread.Diameter, face.MeanDiameter, 1e-9);
        Assert.Equal(3551, Tightening.Torque(thread, new JointFriction(0.15, 0.15), face, 25_000) / 25.4, 18.0);
    }

    // A part of the turn without friction: the work 2π·M lifts F by P.
    [Fact]
    public void Without_friction_all_the_work_goes_into_the_pitch()
    {
        var thread = Bolts.Thread("M10");
        BearingFace face = new(15, 11);
        JointFriction none = new(0, 0);

        Assert.Equal(20_000 * 1.5, 2 * Math.PI * Tightening.Torque(thread, none, face, 20_000), 1e-6);
        Assert.Equal(-20_000 * 1.5, 2 * Math.PI * Tightening.LooseningTorque(thread, none, face, 20_000), 1e-6);
    }

    // A permitted preload put back: tension and fully plastic torsion, τ = 12·M/(π·d³), by von Mises, is ν·R_p again.
    [Fact]
    public void The_permitted_preload_strains_the_bolt_to_its_share() =>
        Gen.Select(Gen.Int[0, ThreadTable.All.Length - 1], Gen.Double[0.05, 0.3], Gen.Double[300, 1200], Gen.Double[0.5, 1], Gen.Double[0.7, 1]).Sample(
            (index, friction, yield, share, thin) =>
            {
                var thread = ThreadTable.All[index];
                var section = thread.StressDiameter * thin;
                var preload = Tightening.PermittedPreload(thread, friction, yield, share, section);
                var tension = preload / (Math.PI / 4 * section * section);
                var shear = 12 * Tightening.ThreadTorque(thread, friction, preload) / (Math.PI * Math.Pow(section, 3));
                var elastic = Tightening.Utilisation(thread, friction, yield, preload, section);
                return Math.Abs(Math.Sqrt(tension * tension + 3 * shear * shear) / (share * yield) - 1) < 1e-9
                    && elastic > share && elastic < share * 4 / 3;
            });

    // M10 of 8.8, 29 kN, µ = 0.12: A_s 57.99 mm², d_s 8.593 mm: σ = 500.1; M_G = 29 000·(0.23873 + 0.62535) = 25 058 N·mm:
    // τ = 16·25 058/(π·634.5) = 201.1; √(500.1² + 3·201.1²) = 609.4 and, with half of τ, 529.7 MPa.
    [Fact]
    public void Utilisation_and_service_stress_are_worked_by_hand()
    {
        var thread = Bolts.Thread("M10");
        var torque = Tightening.ThreadTorque(thread, 0.12, 29_000);

        Assert.Equal(25_058, torque, 3.0);
        Assert.Equal(609.4 / 640, Tightening.Utilisation(thread, 0.12, 640, 29_000), 0.0005);
        Assert.Equal(529.7, Tightening.ServiceStress(thread, torque, 29_000), 0.3);
    }

    // A public trade page: tightening factors with the scatter of the preload they stand for, ± per cent: α = (1 + p)/(1 − p).
    [Theory]
    [InlineData("yield controlled", 9, 17)]
    [InlineData("hydraulic", 9, 23)]
    [InlineData("torque wrench with friction measured", 17, 23)]
    [InlineData("torque wrench with friction estimated", 23, 33)]
    [InlineData("power driver with friction estimated", 26, 43)]
    [InlineData("impact wrench", 43, 60)]
    public void Tightening_factors_stand_for_their_scatter(string name, double least, double greatest)
    {
        Assert.True(TighteningMethod.TryFind(name, out var method, out _));
        Assert.Equal((100 + least) / (100 - least), method.Min, 0.06);
        Assert.Equal((100 + greatest) / (100 - greatest), method.Max!.Value, 0.06);
    }

    // VDI 2230 Part 1, table A5, on three public trade pages.
    [Theory]
    [InlineData("A", 0.04, 0.10)]
    [InlineData("B", 0.08, 0.16)]
    [InlineData("C", 0.14, 0.24)]
    [InlineData("d", 0.20, 0.35)]
    public void Friction_classes_are_those_of_VDI_2230(string name, double least, double greatest)
    {
        Assert.True(FrictionClass.TryFind(name, out var found, out _));
        Assert.Equal((least, greatest), (found.Min, found.Max));
    }

    [Fact]
    public void What_the_tables_lack_gives_its_reason()
    {
        Assert.Null(FrictionClass.All[^1].Max);
        Assert.Null(TighteningMethod.All[^1].Max);
        Assert.False(FrictionClass.TryFind("F", out _, out var friction));
        Assert.Equal("the table has no class of friction `F`; it has A, B, C, D, E", friction);
        Assert.False(TighteningMethod.TryFind("hope", out _, out var method));
        Assert.StartsWith("the table has no way to tighten `hope`; it has yield controlled", method, StringComparison.Ordinal);
        Assert.False(LockingElement.TryFind("glue", out _, out var locker));
        Assert.StartsWith("the table has no locking element `glue`", locker, StringComparison.Ordinal);
    }

    // ISO 2320:2015 by its public scope: −50 °C to 150 °C for nuts of metal, to 120 °C with a non-metallic insert. Encyclopaedias give
    // threadlockers −54 °C to 149 °C (−65 °F to 300 °F); the usual ratings round it.
    [Theory]
    [InlineData("prevailing torque of metal", "friction", -50, 150, 0)]
    [InlineData("prevailing torque of polyamide", "friction", -50, 120, 0)]
    [InlineData("anaerobic medium strength", "adhesive", -54, 149, 1)]
    [InlineData("anaerobic high strength", "adhesive", -54, 149, 1)]
    public void Locking_elements_have_their_published_temperatures(string name, string method, double coldest, double hottest, double rounding)
    {
        Assert.True(LockingElement.TryFind(name, out var element, out _));
        Assert.Equal(method, element.Method);
        Assert.Equal(coldest, element.Coldest!.Value, rounding);
        Assert.Equal(hottest, element.Hottest!.Value, rounding);
    }

    // A public trade page: M12, 8.8, 41.9 kN at µ = 0.14, α_A = 1.8: F_min = 23.3 kN.
    [Fact]
    public void The_least_preload_of_a_trade_pages_example()
    {
        var greatest = Tightening.PermittedPreload(Bolts.Thread("M12"), 0.14, 640);
        Assert.Equal(23.3, PreloadRange.ByTighteningFactor(greatest, 1.8).Min / 1000, 0.05);
    }

    // Every friction and error inside the window gives a preload inside the range.
    [Fact]
    public void The_range_holds_every_bolt_of_the_window() =>
        Gen.Select(Gen.Double[0, 1], Gen.Double[0, 1], Gen.Double[-1, 1], Gen.Double[0, 0.1]).Sample((thread, head, error, wrench) =>
        {
            var m8 = Bolts.Thread("M8");
            BearingFace face = new(11.6, 9);
            var range = PreloadRange.ByFriction(m8, face, 25_000, wrench, new JointFriction(0.1, 0.08), new JointFriction(0.16, 0.14), 500);
            var one = Tightening.Preload(m8, new JointFriction(0.1 + 0.06 * thread, 0.08 + 0.06 * head), face, 25_000 * (1 + error * wrench), 500);
            return one >= range.Min * (1 - 1e-12) && one <= range.Max * (1 + 1e-12);
        });

    [Fact]
    public void The_ends_of_the_range_are_corners_of_the_window()
    {
        var m8 = Bolts.Thread("M8");
        BearingFace face = new(11.6, 9);
        var corners =
            from thread in new[] { 0.1, 0.16 }
            from head in new[] { 0.08, 0.14 }
            from error in new[] { -0.04, 0.04 }
            select Tightening.Preload(m8, new JointFriction(thread, head), face, 25_000 * (1 + error), 500);
        var range = PreloadRange.ByFriction(m8, face, 25_000, 0.04, new JointFriction(0.1, 0.08), new JointFriction(0.16, 0.14), 500);

        Assert.Equal(corners.Min(), range.Min, 1e-6);
        Assert.Equal(corners.Max(), range.Max, 1e-6);
    }

    [Fact]
    public void Impossible_tightening_is_refused()
    {
        var thread = Bolts.Thread("M8");
        BearingFace face = new(11.6, 9);
        JointFriction friction = new(0.12, 0.12);
        Refusal.Says("the tightening torque must be above the prevailing torque", () => Tightening.Preload(thread, friction, face, 1, 2));
        Refusal.Says("the hole under a head must be narrower", () => new BearingFace(9, 9).MeanDiameter);
        Refusal.Says("the share of the yield", () => Tightening.PermittedPreload(thread, 0.1, 640, 1.1));
        Refusal.Says("the friction in the thread must not be below zero", () => Tightening.Torque(thread, new JointFriction(-0.1, 0.1), face, 1));
        Refusal.Says("a tightening factor is never below 1", () => PreloadRange.ByTighteningFactor(1000, 0.9).Min);
        Refusal.Says("the error of a wrench", () => PreloadRange.ByFriction(thread, face, 1, 1, friction, friction).Min);
        Refusal.Says("the least friction must not be above", () => PreloadRange.ByFriction(thread, face, 1, 0, friction, new JointFriction(0.1, 0.12)).Min);
        Refusal.Says("the preload has no value", () => Tightening.Preload(thread, friction, face, double.PositiveInfinity));
    }

    private static BearingFace Face(double mean) => new(mean + 1, mean - 1);

    // The thread unrolled as a wedge: a block of F pushed up an incline of φ by a friction of µ/cos 30°, by its balance of forces.
    [Fact]
    public void The_thread_is_a_wedge() =>
        Gen.Select(Gen.Int[0, ThreadTable.All.Length - 1], Gen.Double[0.05, 0.3], Gen.Double[100, 1e5]).Sample((index, friction, preload) =>
        {
            var thread = ThreadTable.All[index];
            var wedge = friction / Math.Cos(Math.PI / 6);
            var (sin, cos) = Math.SinCos(Math.Atan2(thread.Pitch, Math.PI * thread.PitchDiameter));
            var up = preload * (sin + wedge * cos) / (cos - wedge * sin) * thread.PitchDiameter / 2;
            var torque = Tightening.ThreadTorque(thread, friction, preload);
            return torque <= up && torque >= up * 0.97;
        });

    [Fact]
    public void Torque_and_preload_undo_each_other() =>
        Gen.Select(Gen.Int[0, ThreadTable.All.Length - 1], Gen.Double[0.04, 0.4], Gen.Double[0.04, 0.4], Gen.Double[1, 1e6], Gen.Double[0, 1e4]).Sample(
            (index, inThread, under, preload, prevailing) =>
            {
                var thread = ThreadTable.All[index];
                JointFriction friction = new(inThread, under);
                BearingFace face = new(1.6 * thread.Diameter, 1.1 * thread.Diameter);
                var torque = Tightening.Torque(thread, friction, face, preload);
                return Math.Abs(Tightening.Preload(thread, friction, face, torque + prevailing, prevailing) / preload - 1) < 1e-9;
            });
}
