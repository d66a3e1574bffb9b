using System.Globalization;
using CsCheck;
using Pawl.Mechanics.Materials;
using Pawl.Mechanics.Rating;
using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Tests.Rating;

public class LoadFactorTests
{
    // 5 m/s, 20 teeth, u = 3: s = 5·0.2·√0.9 = 0.948683 m/s. Grade 6, 100 N/mm: 1 + (0.149 + 0.0193)·s·(2.071 − 0.357·s) = 1.276588.
    [Fact]
    public void The_dynamic_factor_follows_method_C()
    {
        var parameter = DynamicFactor.Parameter(5000, 20, 3);

        Assert.Equal(948.6833, parameter, 5e-5);
        Assert.Equal(parameter, DynamicFactor.Parameter(-5000, 20, -3), 1e-12);
        Assert.Equal(1.27658811, DynamicFactor.MethodC(parameter, 100, 6, 0), 5e-9);
        Assert.Equal(1.276588, DynamicFactor.MethodC(parameter, 20, 6, 0), 5e-7);
    }

    // Helical, ε_β ≥ 1: 1 + (0.133 + 0.0087)·0.948683·1.732320 = 1.232873; halfway between both at ε_β = 0.5.
    [Theory]
    [InlineData(1, 1.232873)]
    [InlineData(2.5, 1.232873)]
    [InlineData(0.5, 1.254731)]
    public void Overlap_leads_from_spur_to_helical(double overlap, double factor) =>
        Assert.Equal(factor, DynamicFactor.MethodC(948.6833, 100, 6, overlap), 1e-6);

    // 2 at s = 0.2 m/s against 2.071 − 0.0714 = 1.9996: the two branches of K₃ meet, as a printed line must.
    [Fact]
    public void The_branches_of_the_speed_factor_meet() =>
        Assert.Equal(
            DynamicFactor.MethodC(200, 150, 8, 0), DynamicFactor.MethodC(Math.BitIncrement(200.0), 150, 8, 0), 1e-4);

    // A common factor ties the rows of spur and helical gears; what it is may be lost, but a misprint would break it. The two
    // smallest values have one decimal on some 2, so rounding leaves them 0.88 to 0.93.
    [Fact]
    public void Helical_gears_have_nine_tenths_of_the_coefficient_in_every_grade()
    {
        var rows = StandardTable.Read(DynamicFactor.TableId).Text.Split('\n')
            .Where(line => line.Length > 0 && char.IsDigit(line[0]))
            .Select(line => line.Split(',').Select(field => double.Parse(field, CultureInfo.InvariantCulture)).ToArray())
            .ToList();

        Assert.Equal(8, rows.Count);
        Assert.All(rows, row => Assert.InRange(row[2] / row[1], 0.883, 0.91));
        Assert.All(rows.Zip(rows.Skip(1)), pair => Assert.InRange(pair.Second[1] / pair.First[1], 1.3, 2.05));
    }

    [Fact]
    public void Coarser_grades_faster_gears_and_lighter_loads_have_more_dynamics() =>
        Gen.Select(Gen.Double[10, 2500], Gen.Double[100, 900], Gen.Int[3, 9], Gen.Double[0, 1]).Sample((s, load, grade, overlap) =>
        {
            var factor = DynamicFactor.MethodC(s, load, grade, overlap);
            return factor > 1
                && DynamicFactor.MethodC(s, load, grade + 1, overlap) > factor
                && DynamicFactor.MethodC(s + 100, load, grade, overlap) > factor
                && DynamicFactor.MethodC(s, load + 50, grade, overlap) < factor;
        });

    [Theory]
    [InlineData(3010, 100, 6, 0, "ends at a speed parameter of 3 m/s")]
    [InlineData(1000, 100, 2, 0, "grades 3 to 10; this one is 2")]
    [InlineData(1000, 100, 11, 0, "grades 3 to 10; this one is 11")]
    [InlineData(1000, 0, 6, 0, "the line load must be above zero")]
    [InlineData(1000, 100, 6, -0.1, "overlap ratio")]
    public void Outside_of_method_C_there_is_no_dynamic_factor(double s, double load, int grade, double overlap, string reason) =>
        Refusal.Says(reason, () => DynamicFactor.MethodC(s, load, grade, overlap));

    // 14 N/(mm·µm); ε_α = 1.6: 0.75·1.6 + 0.25 = 1.45. 16 N/mm: ⁴√0.16 = 0.632456.
    [Fact]
    public void Teeth_are_as_stiff_as_method_C_has_it()
    {
        Assert.Equal(14_000, MeshStiffness.SinglePair(100), 1e-9);
        Assert.Equal(14_000, MeshStiffness.SinglePair(500), 1e-9);
        Assert.Equal(14_000 * 0.632456, MeshStiffness.SinglePair(16), 0.01);
        Assert.Equal(20_300, MeshStiffness.Transverse(14_000, 1.6), 1e-9);
        Assert.Equal(17_255, MeshStiffness.AlongFace(20_300), 1e-9);
        Refusal.Says("transverse contact ratios of 1 and above", () => MeshStiffness.Transverse(14_000, 0.9));
    }

    // F_βx = 20 µm, σ_Hlim = 640 MPa: half of it, at most 25.6/640 = 40 µm above 5 m/s and 20 µm above 10 m/s.
    [Theory]
    [InlineData(MaterialClass.CaseHardened, 1500, 5000, 0.02, 0.003)]
    [InlineData(MaterialClass.CaseHardened, 1500, 5000, 0.04, 0.006)]
    [InlineData(MaterialClass.Nitrocarburised, 900, 20_000, 0.08, 0.006)]
    [InlineData(MaterialClass.InductionHardened, 1100, 5000, 0.02, 0.003)]
    [InlineData(MaterialClass.AlloyThroughHardened, 640, 5000, 0.02, 0.01)]
    [InlineData(MaterialClass.AlloyThroughHardened, 640, 5000, 0.2, 0.1)]
    [InlineData(MaterialClass.AlloyThroughHardened, 640, 8000, 0.2, 0.04)]
    [InlineData(MaterialClass.CarbonThroughHardened, 640, -12_000, 0.2, 0.02)]
    [InlineData(MaterialClass.Normalised, 300, 1000, 0.02, 0.02)]
    public void A_misalignment_wears_away_in_part(
        MaterialClass material, double limit, double speed, double misalignment, double expected) =>
        Assert.Equal(expected, RunningIn.AlongFace(material, limit, speed, misalignment), 1e-12);

    [Theory]
    [InlineData(MaterialClass.CaseHardened, 1500, 5000, 0.02, 0.0015)]
    [InlineData(MaterialClass.NitridingSteelNitrided, 1250, 5000, 0.05, 0.003)]
    [InlineData(MaterialClass.AlloyThroughHardened, 640, 5000, 0.02, 0.005)]
    [InlineData(MaterialClass.AlloyThroughHardened, 640, 8000, 0.2, 0.02)]
    [InlineData(MaterialClass.AlloyThroughHardened, 640, 12_000, 0.2, 0.01)]
    public void A_pitch_deviation_wears_away_in_part(
        MaterialClass material, double limit, double speed, double deviation, double expected) =>
        Assert.Equal(expected, RunningIn.AlongProfile(material, limit, speed, deviation), 1e-12);

    [Fact]
    public void Running_in_never_takes_more_than_there_is() =>
        Gen.Select(Gen.Enum<MaterialClass>(), Gen.Double[150, 1600], Gen.Double[0, 20_000], Gen.Double[0, 0.3])
            .Sample((material, limit, speed, deviation) =>
                RunningIn.AlongFace(material, limit, speed, deviation) is >= 0 and var face && face <= deviation
                && RunningIn.AlongProfile(material, limit, speed, deviation) is >= 0 and var profile && profile <= deviation);

    [Fact]
    public void Unlike_gears_have_the_mean_allowance()
    {
        Assert.Equal(0.004, RunningIn.OfPair(0.003, 0.005), 1e-15);
        Refusal.Says("must not be below zero", () => RunningIn.OfPair(-0.001, 0.005));
    }

    // 10 µm, 14 N/(mm·µm), 100 N/mm: q = 0.7. b/h = 20/4.5: N_F = 1/(1 + 0.225 + 0.050625) = 0.783929; 1.7^0.783929 = 1.515848.
    [Fact]
    public void The_face_load_factors_follow_method_C()
    {
        Assert.Equal(1.7, FaceLoadFactor.Contact(0.01, 14_000, 100), 1e-12);
        Assert.Equal(1.51584814, FaceLoadFactor.Root(1.7, 20, 4.5), 5e-9);
        Assert.Equal(Math.Pow(1.7, 9.0 / 13), FaceLoadFactor.Root(1.7, 4.5, 4.5), 1e-12);
        Refusal.Says("1 or more", () => FaceLoadFactor.Root(0.9, 20, 4.5));
    }

    // Springs side by side along the face, pressed until they carry the load; those out of contact carry none.
    [Fact]
    public void The_face_load_factor_is_that_of_springs_side_by_side() =>
        Gen.Select(Gen.Double[0, 0.1], Gen.Double[5000, 20_000], Gen.Double[20, 500]).Sample(
            (misalignment, stiffness, load) =>
            {
                const int Springs = 4000;
                double Mean(double approach)
                {
                    var sum = 0.0;
                    for (var i = 0; i < Springs; i++)
                    {
                        sum += Math.Max(0, stiffness * (approach - misalignment * (i + 0.5) / Springs));
                    }

                    return sum / Springs;
                }

                var (low, high) = (0.0, misalignment + load / stiffness);
                for (var step = 0; step < 60; step++)
                {
                    var middle = (low + high) / 2;
                    (low, high) = Mean(middle) < load ? (middle, high) : (low, middle);
                }

                // The spring at the end of the face has no misalignment.
                var expected = stiffness * low / load;
                return Math.Abs(FaceLoadFactor.Contact(misalignment, stiffness, load) - expected) < 2e-3 * expected;
            },
            iter: 300);

    // ε = 1.67, Z_ε = 0.8812, 20 N/(mm·µm), 10 µm run in by 0.75 µm, 100 N/mm: q = 1.85, K = 0.835·1.64 = 1.3694; all on one pair
    // would be 1/Z_ε² = 1.287808 for contact and 1.67/1.1675 = 1.430407 for the root.
    [Fact]
    public void The_transverse_load_factors_follow_method_B()
    {
        var factor = TransverseLoadFactor.Unlimited(20_000, 0.01, 0.00075, 100, 1.67);

        Assert.Equal(1.3694, factor, 1e-12);
        Assert.Equal(1.28780772, TransverseLoadFactor.Contact(factor, 1.67, 1.67, 0.8812), 5e-9);
        Assert.Equal(1.3694, TransverseLoadFactor.Root(factor, 1.67, 1.67), 1e-12);
        Assert.Equal(1.430407, TransverseLoadFactor.Root(9, 1.67, 1.67), 5e-7);
        Assert.Equal(1, TransverseLoadFactor.Contact(0.7, 1.67, 1.67, 0.8812));
    }

    [Fact]
    public void The_branches_for_contact_ratios_meet_at_two() =>
        Gen.Double[0, 0.05].Sample(deviation =>
            Math.Abs(TransverseLoadFactor.Unlimited(20_000, deviation, 0, 100, 2)
                - TransverseLoadFactor.Unlimited(20_000, deviation, 0, 100, Math.BitIncrement(2.0))) < 1e-9);

    // At its limit K_Hα puts all of the load on one pair: together with Z_ε as if there were no sharing.
    [Fact]
    public void At_its_limit_one_pair_of_spur_teeth_carries_all() =>
        Gen.Double[1, 2].Sample(ratio =>
        {
            var share = ContactFactors.ContactRatio(ratio, 0);
            return Math.Abs(TransverseLoadFactor.Contact(99, ratio, ratio, share) * share * share - 1) < 1e-12;
        });

    [Fact]
    public void Running_in_beyond_the_deviation_is_refused() =>
        Refusal.Says("running in", () => TransverseLoadFactor.Unlimited(20_000, 0.001, 0.002, 100, 1.6));
}
