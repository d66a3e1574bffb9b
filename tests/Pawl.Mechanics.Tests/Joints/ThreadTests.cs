using CsCheck;
using Pawl.Mechanics.Joints;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Joints;

public class ThreadTests
{
    private const double Inch = 25.4;

    private static readonly string[] Drawn = ["M6", "M10", "M8x1", "M30x1.5", "1/2-13", "3/4-16"];

    // ISO 898-1, nominal stress areas of coarse threads, mm², in public reprints; rounded to three figures.
    [Theory]
    [InlineData("M3", 5.03)]
    [InlineData("M3.5", 6.78)]
    [InlineData("M4", 8.78)]
    [InlineData("M5", 14.2)]
    [InlineData("M6", 20.1)]
    [InlineData("M7", 28.9)]
    [InlineData("M8", 36.6)]
    [InlineData("M10", 58.0)]
    [InlineData("M12", 84.3)]
    [InlineData("M14", 115)]
    [InlineData("M16", 157)]
    [InlineData("M18", 192)]
    [InlineData("M20", 245)]
    [InlineData("M22", 303)]
    [InlineData("M24", 353)]
    [InlineData("M27", 459)]
    [InlineData("M30", 561)]
    [InlineData("M33", 694)]
    [InlineData("M36", 817)]
    public void Stress_areas_of_coarse_threads_are_those_of_ISO_898_1(string designation, double area)
    {
        Assert.Equal(area, Bolts.Thread(designation).StressArea, area >= 100 ? 0.5 : area >= 10 ? 0.05 : 0.005);
    }

    // A table of ISO 724 fine threads on a public page: P, d₂, d₃, D₁ and the area of those rows that agree with themselves.
    [Theory]
    [InlineData("M8x1", 7.350, 6.773, 6.917, 39.2)]
    [InlineData("M10x1", 9.350, 8.773, 8.917, 64.5)]
    [InlineData("M10x1.25", 9.188, 8.466, 8.647, 61.2)]
    [InlineData("M12x1.25", 11.188, 10.466, 10.647, 92.1)]
    [InlineData("M12x1.5", 11.026, 10.160, 10.376, 88.1)]
    [InlineData("M14x1.5", 13.026, 12.160, 12.376, 125)]
    [InlineData("M16x1.5", 15.026, 14.160, 14.376, 167)]
    public void Diameters_of_fine_threads_are_those_of_ISO_724(string designation, double pitch, double root, double nut, double area)
    {
        var thread = Bolts.Thread(designation);

        Assert.Equal(pitch, thread.PitchDiameter, 0.0006);
        Assert.Equal(root, thread.RootDiameter, 0.0006);
        Assert.Equal(nut, thread.NutMinorDiameter, 0.0006);
        Assert.Equal(area, thread.StressArea, 0.0045 * area);
    }

    // Shigley, Mechanical Engineering Design, table 8-2, on a public page: tensile stress area and minor diameter area, in².
    [Theory]
    [InlineData("#6-32 UNC", 0.00909, 0.00745)]
    [InlineData("#6-40 UNF", 0.01015, 0.00874)]
    [InlineData("#8-32 UNC", 0.0140, 0.01196)]
    [InlineData("#8-36 UNF", 0.01474, 0.01285)]
    [InlineData("#10-24 UNC", 0.0175, 0.01450)]
    [InlineData("#10-32 UNF", 0.0200, 0.0175)]
    [InlineData("#12-24 UNC", 0.0242, 0.0206)]
    [InlineData("#12-28 UNF", 0.0258, 0.0226)]
    [InlineData("1/4-20 UNC", 0.0318, 0.0269)]
    [InlineData("1/4-28 UNF", 0.0364, 0.0326)]
    [InlineData("5/16-18 UNC", 0.0524, 0.0454)]
    [InlineData("5/16-24 UNF", 0.0580, 0.0524)]
    [InlineData("3/8-16 UNC", 0.0775, 0.0678)]
    [InlineData("3/8-24 UNF", 0.0878, 0.0809)]
    [InlineData("7/16-14 UNC", 0.1063, 0.0933)]
    [InlineData("7/16-20 UNF", 0.1187, 0.1090)]
    [InlineData("1/2-13 UNC", 0.1419, 0.1257)]
    [InlineData("1/2-20 UNF", 0.1599, 0.1486)]
    [InlineData("9/16-12 UNC", 0.182, 0.162)]
    [InlineData("9/16-18 UNF", 0.203, 0.189)]
    [InlineData("5/8-11 UNC", 0.226, 0.202)]
    [InlineData("5/8-18 UNF", 0.256, 0.240)]
    [InlineData("3/4-10 UNC", 0.334, 0.302)]
    [InlineData("3/4-16 UNF", 0.373, 0.351)]
    [InlineData("7/8-9 UNC", 0.462, 0.419)]
    [InlineData("7/8-14 UNF", 0.509, 0.480)]
    [InlineData("1-8 UNC", 0.606, 0.551)]
    [InlineData("1-12 UNF", 0.663, 0.625)]
    [InlineData("1-1/4-7 UNC", 0.969, 0.890)]
    [InlineData("1-1/4-12 UNF", 1.073, 1.024)]
    [InlineData("1-1/2-6 UNC", 1.405, 1.294)]
    [InlineData("1-1/2-12 UNF", 1.581, 1.521)]
    public void Areas_of_unified_threads_are_those_of_a_textbook(string designation, double stress, double minor)
    {
        var thread = Bolts.Thread(designation);

        Assert.Equal(stress, thread.StressArea / (Inch * Inch), 0.0025 * stress + 0.00005);
        Assert.Equal(minor, Math.PI / 4 * Math.Pow(thread.RootDiameter / Inch, 2), 0.0045 * minor);
    }

    // A public list of UNF threads: pitch diameters, inches.
    [Theory]
    [InlineData("1/4-28", 0.2268)]
    [InlineData("1/2-20", 0.4675)]
    [InlineData("1-1/8-12", 1.0709)]
    [InlineData("1-3/8-12", 1.3209)]
    public void Pitch_diameters_of_unified_threads_are_those_of_a_list(string designation, double pitch)
    {
        Assert.Equal(pitch, Bolts.Thread(designation).PitchDiameter / Inch, 0.00006);
    }

    [Theory]
    [InlineData("M8", "M8")]
    [InlineData("m8", "M8")]
    [InlineData("M8x1.25", "M8")]
    [InlineData("M8×1", "M8x1")]
    [InlineData(" M 30 x 1.5 ", "M30x1.5")]
    [InlineData("1/2-20 UNF", "1/2-20 UNF")]
    [InlineData("1/2-20unf", "1/2-20 UNF")]
    [InlineData("1/2–13", "1/2-13 UNC")]
    [InlineData("10-24", "#10-24 UNC")]
    [InlineData("#10-32", "#10-32 UNF")]
    [InlineData("1-14", "1-14 UNS")]
    [InlineData("1-1/2-18 UNEF", "1-1/2-18 UNEF")]
    public void A_thread_is_found_as_drawings_write_it(string written, string designation)
    {
        Assert.Equal(designation, Bolts.Thread(written).Designation);
    }

    [Theory]
    [InlineData("M9", "they have M3 to M60")]
    [InlineData("M8x0.8", "of this diameter they have M8, M8x1")]
    [InlineData("1/2-14", "of this diameter they have 1/2-13 UNC, 1/2-20 UNF, 1/2-28 UNEF")]
    [InlineData("1-13", "1-8 UNC, 1-12 UNF, 1-14 UNS, 1-20 UNEF")]
    [InlineData("1/2-20 UNC", "of this diameter they have")]
    [InlineData("", "they have M3 to M60")]
    [InlineData("-", "they have M3 to M60")]
    [InlineData("UNF", "they have M3 to M60")]
    public void An_unknown_thread_gives_its_reason(string written, string reason)
    {
        Assert.False(ThreadTable.TryFind(written, out _, out var given));
        Assert.Contains(reason, given, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_thread_is_found_by_its_own_name_and_every_name_is_one_thread()
    {
        foreach (var thread in ThreadTable.All)
        {
            Assert.Same(thread, Bolts.Thread(thread.Designation));
            Assert.InRange(thread.RootDiameter, 0.7 * thread.Diameter, thread.PitchDiameter);
        }

        Assert.Equal(ThreadTable.All.Length, ThreadTable.All.Select(thread => thread.Designation).Distinct().Count());
    }

    // ISO 965-1, 6g, limits on a public trade page: least major and pitch diameter. The tables round; 4 µm.
    [Theory]
    [InlineData("M3", 2.874, 2.580)]
    [InlineData("M4", 3.838, 3.433)]
    [InlineData("M5", 4.826, 4.361)]
    [InlineData("M6", 5.794, 5.212)]
    public void Least_bolts_are_those_of_ISO_965(string designation, double major, double pitch)
    {
        var limits = ThreadLimits.Usual(Bolts.Thread(designation));

        Assert.Equal(major, limits.BoltMajor, 0.004);
        Assert.Equal(pitch, limits.BoltPitch, 0.004);
    }

    // ISO 965-1, pitch diameter tolerance of 6H nuts in a list of taps, µm; and M10, D₁ up to 8.676 and D₂ up to 9.206, from memory.
    [Theory]
    [InlineData("M3", 100)]
    [InlineData("M4", 118)]
    [InlineData("M5", 125)]
    [InlineData("M6", 150)]
    [InlineData("M8", 160)]
    [InlineData("M10", 180)]
    public void Widest_nuts_are_those_of_ISO_965(string designation, double micrometres)
    {
        var thread = Bolts.Thread(designation);
        Assert.Equal(micrometres, (ThreadLimits.Usual(thread).NutPitch - thread.PitchDiameter) * 1000, 9.0);
        Assert.Equal(8.676, ThreadLimits.Usual(Bolts.Thread("M10")).NutMinor, 0.007);
    }

    // ASME B1.1 limits: 2B pitch diameters, mm, in a list of taps; the 2A and 2B limits of 1/4-20, 3/8-16 and 1/2-13 from memory.
    [Theory]
    [InlineData("1/4-28", 5.870)]
    [InlineData("3/8-24", 8.961)]
    [InlineData("1/2-20", 12.017)]
    [InlineData("5/8-18", 15.110)]
    [InlineData("3/4-16", 18.184)]
    [InlineData("#10-32", 4.409)]
    public void Widest_unified_nuts_are_those_of_a_list(string designation, double pitch)
    {
        Assert.Equal(pitch, ThreadLimits.Usual(Bolts.Thread(designation)).NutPitch, 0.003);
    }

    [Theory]
    [InlineData("1/4-20", 0.2408, 0.2127, 0.2224, 0.207)]
    [InlineData("3/8-16", 0.3643, 0.3287, 0.3401, 0.321)]
    [InlineData("1/2-13", 0.4876, 0.4435, 0.4565, 0.434)]
    public void Limits_of_unified_threads_are_those_of_ASME_B1_1(string designation, double major, double pitch, double nutPitch, double nutMinor)
    {
        var limits = ThreadLimits.Usual(Bolts.Thread(designation));

        Assert.Equal(major, limits.BoltMajor / Inch, 0.00011);
        Assert.Equal(pitch, limits.BoltPitch / Inch, 0.00011);
        Assert.Equal(nutPitch, limits.NutPitch / Inch, 0.00011);
        Assert.Equal(nutMinor, limits.NutMinor / Inch, 0.0006);
    }

    // Every thread of the tables still engages when bolt and nut are as far apart as they may be.
    [Fact]
    public void Threads_at_their_limits_engage()
    {
        foreach (var thread in ThreadTable.All)
        {
            var limits = ThreadLimits.Usual(thread);
            ThreadStripping engaged = new(thread, limits, thread.Diameter);
            Assert.InRange(engaged.NutArea / (Math.PI * thread.Diameter * thread.Diameter), 0.5, 0.875);
            Assert.InRange(engaged.BoltArea / (Math.PI * thread.Diameter * thread.Diameter), 0.35, 0.75);
            Assert.InRange(limits.BoltMajor, thread.Diameter - 0.5 * thread.Pitch, thread.Diameter);
        }
    }

    // The nut's triangle drawn as points: what of a pitch lies in its thread, at the least major diameter of the bolt.
    [Fact]
    public void Shear_areas_are_those_of_drawn_threads() =>
        Gen.Select(Gen.Int[0, Drawn.Length - 1], Gen.Double[3, 40]).Sample(
            (index, length) =>
            {
                var thread = Bolts.Thread(Drawn[index]);
                var limits = ThreadLimits.Usual(thread);
                ThreadStripping engaged = new(thread, limits, length);
                const int points = 20_000;
                var (nut, bolt) = (0, 0);
                for (var point = 0; point < points; point++)
                {
                    // Half a pitch of thread at the pitch diameter; each flank leaves 30° to the normal of the axis.
                    var place = ((point + 0.5) / points - 0.5) * thread.Pitch;
                    var flankOfNut = limits.NutPitch / 2 + (Math.Abs(place) - thread.Pitch / 4) / Math.Tan(Math.PI / 6);
                    var flankOfBolt = limits.BoltPitch / 2 - (Math.Abs(place) - thread.Pitch / 4) / Math.Tan(Math.PI / 6);
                    nut += limits.BoltMajor / 2 >= flankOfNut ? 1 : 0;
                    bolt += limits.NutMinor / 2 <= flankOfBolt ? 1 : 0;
                }

                return Math.Abs(engaged.NutArea / (Math.PI * limits.BoltMajor * length * nut / points) - 1) < 5e-4
                    && Math.Abs(engaged.BoltArea / (Math.PI * limits.NutMinor * length * bolt / points) - 1) < 5e-4;
            },
            iter: 200);

    // M10, 15 mm engaged, at the limits of ISO 965-1: 322.15 and 233.69 mm², the same formula with pencil and paper; with 201.5 and
    // 644.8 MPa R_S = 0.4308, C₃ = 1.056 as the polynomial has it, 1 here: 201.5 · 322.15 = 64 914 N.
    [Fact]
    public void Stripping_of_an_M10_in_aluminium_is_worked_by_hand()
    {
        ThreadStripping engaged = new(Bolts.Thread("M10"), new ThreadLimits(9.732, 8.862, 9.206, 8.676), 15);

        Assert.Equal(322.15, engaged.NutArea, 0.01);
        Assert.Equal(233.69, engaged.BoltArea, 0.01);
        Assert.Equal(64_914, engaged.Strength(644.8, 201.5, 3), 2.0);
    }

    // Alexander's factors meet at the ends of their ranges: a slip in a constant would make them jump.
    [Fact]
    public void Factors_of_bending_and_widening_do_not_jump()
    {
        Assert.Equal(0.897, ThreadStripping.BoltBending(1 + 1e-9), 0.001);
        Assert.Equal(0.897, ThreadStripping.NutBending(1 - 1e-9), 0.001);
        Assert.Equal(1, ThreadStripping.BoltBending(2.2 - 1e-9), 1e-9);
        Assert.Equal(0.9626, ThreadStripping.BoltBending(1.2), 0.0001);
        Assert.Equal(0.9533, ThreadStripping.NutBending(0.8), 0.0001);
        Assert.Equal(1, ThreadStripping.Widening(1.9 - 1e-9), 0.001);
        Assert.Equal(0.75, ThreadStripping.Widening(1.4), 0.001);
        Refusal.Says("narrower than 1.4 diameters", () => ThreadStripping.Widening(1.3));
        Refusal.Says("do not engage", () => new ThreadStripping(Bolts.Thread("M10"), new ThreadLimits(8, 7, 9.5, 9), 10).NutArea);
    }

    [Fact]
    public void Longer_engagement_and_stronger_metal_never_strip_sooner() =>
        Gen.Select(Gen.Double[5, 30], Gen.Double[100, 700], Gen.Double[100, 700], Gen.Double[1, 1.5]).Sample((length, bolt, nut, more) =>
        {
            var thread = Bolts.Thread("M10");
            ThreadStripping one = new(thread, ThreadLimits.Usual(thread), length);
            var strength = one.Strength(bolt, nut, 1.6);
            return (one with { Engagement = length * more }).Strength(bolt, nut, 1.6) >= strength
                && one.Strength(bolt * more, nut * more, 1.6) >= strength;
        });
}
