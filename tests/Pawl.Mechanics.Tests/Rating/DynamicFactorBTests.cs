using CsCheck;
using Pawl.Mechanics.Rating;

namespace Pawl.Mechanics.Tests.Rating;

/// <summary>K_v by method B of ISO 6336-1.</summary>
/// <remarks>
/// Formulas and coefficients from memory. Several calculations of students and researchers in public repositories restate C_v1 to
/// C_v7, B_p, B_f, B_k, N_S, the line between 1.15 and 1.5, and C_ay, each on its own; they agree with each other and with what stands here.
/// </remarks>
public class DynamicFactorBTests
{
    // B_p = 1, B_f = 0.8, B_k = 0.5; ε_γ = 1.6: C_v7 = 0.875 − 0.125·sin 72° = 0.756118.
    // N = 0.5: 1 + 0.5·(0.32 + 0.272 + 0.115). N = 1: 1 + 0.32 + 0.272 + 0.45. N = 2: 0.47 + 0.376 + C_v7 = 1.602118.
    // N = 1.3: 1.602118 + (2.042 − 1.602118)·0.2/0.35.
    // ε_γ = 2.4: 0.57/2.1, 0.096/0.84, 0.45/0.96, 0.12/0.66, C_v7 = 0.875 + 0.125·sin 72° = 0.993882.
    // N = 0.5: 1 + 0.5·(0.32 + 0.217143 + 0.057143); N = 1: 1 + 0.32 + 0.217143 + 0.234375; N = 2: 0.47 + 0.145455 + 0.993882.
    [Theory]
    [InlineData(0, 1.6, 1)]
    [InlineData(0.5, 1.6, 1.3535)]
    [InlineData(1, 1.6, 2.042)]
    [InlineData(1.3, 1.6, 1.853479)]
    [InlineData(2, 1.6, 1.602118)]
    [InlineData(0.5, 2.4, 1.297143)]
    [InlineData(1, 2.4, 1.771518)]
    [InlineData(2, 2.4, 1.609336)]
    [InlineData(2, 1.2, 1.596)]
    [InlineData(2, 3, 1.546190)]
    public void The_four_ranges_of_method_B(double ratio, double total, double factor) =>
        Assert.Equal(factor, DynamicFactorB.Factor(ratio, 0.85, 1, 0.8, 0.5, total), 1e-6);

    // The table written once more, as rows over ε_γ.
    [Fact]
    public void Over_all_speeds_it_is_the_table_of_the_standard() =>
        Gen.Select(Gen.Double[0, 3], Gen.Double[0.5, 0.85], Gen.Double[0, 3], Gen.Double[0, 3], Gen.Double[0, 2], Gen.Double[1.01, 4]).Sample(
            (n, ns, bp, bf, bk, e) =>
            {
                double[] cv = e <= 2
                    ? [0.32, 0.34, 0.23, 0.9, 0.47, 0.47]
                    : [0.32, 0.57 / (e - 0.3), 0.096 / (e - 1.56), (0.57 - 0.05 * e) / (e - 1.44), 0.47, 0.12 / (e - 1.74)];
                var cv7 = e <= 1.5 ? 0.75 : e > 2.5 ? 1 : 0.125 * Math.Sin(Math.PI * (e - 2)) + 0.875;
                var at115 = cv[0] * bp + cv[1] * bf + cv[3] * bk + 1;
                var at15 = cv[4] * bp + cv[5] * bf + cv7;
                var expected = n <= ns ? n * (cv[0] * bp + cv[1] * bf + cv[2] * bk) + 1
                    : n <= 1.15 ? at115
                    : n >= 1.5 ? at15
                    : at15 + (at115 - at15) / 0.35 * (1.5 - n);
                return Math.Abs(Math.Max(1, expected) - DynamicFactorB.Factor(n, ns, bp, bf, bk, e)) < 1e-12;
            });

    // Just beside each end of the intermediate range the factor moves by no more than its slope.
    [Theory]
    [InlineData(1.15)]
    [InlineData(1.5)]
    public void The_intermediate_range_meets_its_neighbours(double ratio) =>
        Deviations.Sample((pitch, profile, stiffness, total) =>
            Math.Abs(DynamicFactorB.Factor(ratio - 1e-9, 0.85, pitch, profile, stiffness, total)
                - DynamicFactorB.Factor(ratio + 1e-9, 0.85, pitch, profile, stiffness, total)) < 1e-7);

    // At N_S the source has a step: C_v4·B_k in place of N·C_v3·B_k, and the deviations whole in place of N times.
    [Fact]
    public void At_the_start_of_the_main_resonance_range_the_factor_steps_up() =>
        Deviations.Sample((pitch, profile, stiffness, total) =>
            DynamicFactorB.Factor(Math.BitIncrement(0.85), 0.85, pitch, profile, stiffness, total)
                > DynamicFactorB.Factor(0.85, 0.85, pitch, profile, stiffness, total));

    [Fact]
    public void Below_resonance_it_grows_with_speed_and_within_it_stays() =>
        Deviations.Sample((pitch, profile, stiffness, total) =>
        {
            double At(double ratio) => DynamicFactorB.Factor(ratio, 0.85, pitch, profile, stiffness, total);
            return Math.Abs((At(0.8) - 1) / (At(0.4) - 1) - 2) < 1e-9 && At(0.9) == At(1.1) && At(1.5) == At(5);
        });

    // Fast and true gears: 0.47·0.1 + 0.47·0.1 + 0.75 = 0.844.
    [Fact]
    public void Far_above_resonance_it_is_never_below_one() => Assert.Equal(1, DynamicFactorB.Factor(3, 0.85, 0.1, 0.1, 0.5, 1.4));

    // 14 N/(mm·µm)·5 µm/140 N/mm. |1 − 14·12/140| = 0.2; from grade 7 on at least 1. |1 − 14·25/140| = 1.5.
    [Fact]
    public void Deviations_and_relief_count_as_forces()
    {
        Assert.Equal(0.5, DynamicFactorB.Deviation(14_000, 0.005, 140), 1e-12);
        Assert.Equal(0.2, DynamicFactorB.Relief(14_000, 0.012, 140, 6), 1e-12);
        Assert.Equal(1, DynamicFactorB.Relief(14_000, 0.012, 140, 7), 1e-12);
        Assert.Equal(1.5, DynamicFactorB.Relief(14_000, 0.025, 140, 6), 1e-12);
        Assert.Equal(1.5, DynamicFactorB.Relief(14_000, 0.025, 140, 9), 1e-12);
        Assert.Equal(1, DynamicFactorB.Relief(14_000, 0, 140, 5), 1e-12);
    }

    // (1500/97 − 18.45)²/18 + 1.5 = 2.986082²/18 + 1.5; (600/97 − 18.45)²/18 + 1.5 = 12.264433²/18 + 1.5.
    [Theory]
    [InlineData(1500, 1.995372)]
    [InlineData(600, 9.856462)]
    public void Running_in_leaves_more_relief_on_soft_gears(double limit, double micrometres) =>
        Assert.Equal(micrometres, DynamicFactorB.RunningInRelief(limit) * 1000, 1e-6);

    [Fact]
    public void Without_full_contact_or_with_a_negative_deviation_there_is_no_factor()
    {
        Refusal.Says("transverse contact ratios of 1 and above", () => DynamicFactorB.Factor(0.5, 0.85, 1, 1, 1, 0.9));
        Refusal.Says("the deviation must not be below zero", () => DynamicFactorB.Deviation(14_000, -0.001, 100));
        Refusal.Says("the resonance ratio must not be below zero", () => DynamicFactorB.Factor(-0.1, 0.85, 1, 1, 1, 1.5));
    }

    private static Gen<(double Pitch, double Profile, double Stiffness, double Total)> Deviations =>
        Gen.Select(Gen.Double[0.5, 3], Gen.Double[0.5, 3], Gen.Double[0.1, 2], Gen.Double[1.01, 4]);
}
