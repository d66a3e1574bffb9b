using CsCheck;
using Pawl.Mechanics.Lubrication;
using Pawl.Mechanics.Rating;

namespace Pawl.Mechanics.Tests.Rating;

public class ContactStrengthTests
{
    // ISO 6336-5: the test gears behind σ_Hlim ran at 10 m/s in oil of 100 mm²/s at 50 °C (134/ν₄₀ stands for 80/ν₅₀, so 167.5
    // mm²/s at 40 °C) with flanks of Rz = 3 µm and a reduced radius of 10 mm; from memory. There every factor is 1, in any steel.
    [Fact]
    public void All_film_factors_are_1_under_the_conditions_of_the_test_gears() =>
        Gen.Double[300, 1700].Sample(limit =>
            Math.Abs(ContactStrength.Lubricant(167.5, limit) - 1) < 1e-12
            && Math.Abs(ContactStrength.Velocity(10_000, limit) - 1) < 1e-12
            && Math.Abs(ContactStrength.Roughness(0.003, 0.003, 10, limit) - 1) < 1e-12);

    // 220 mm²/s, 5 m/s, 1500 MPa: 0.91 + 0.36/(1.2 + 0.609091)² = 1.019997; 0.93 + 0.14/√7.2 = 0.982175. The same formulas in
    // another language.
    [Fact]
    public void A_case_hardened_pair_is_worked()
    {
        Assert.Equal(1.01999722, ContactStrength.Lubricant(220, 1500), 5e-9);
        Assert.Equal(0.982174919, ContactStrength.Velocity(5000, 1500), 5e-10);
        Assert.Equal(0.982174919, ContactStrength.Velocity(-5000, 1500), 5e-10);
    }

    // Soft steel, 600 MPa: 0.83 + 0.68/(1.2 + 1.34)² = 0.935400; 0.85 + 0.3/√(0.8 + 16) = 0.923193. Rz 6 and 4 µm, ρ_red 10 mm:
    // (3/5)^0.15 = 0.926238. At 1025 MPa, halfway: C = 0.87, 0.89 and 0.115.
    [Theory]
    [InlineData(600, 0.935400, 0.923193, 0.926238)]
    [InlineData(1025, 0.950600, 0.943675, 0.942947)]
    public void Softer_steels_are_worked_by_hand(double limit, double lubricant, double velocity, double roughness)
    {
        Assert.Equal(lubricant, ContactStrength.Lubricant(100, limit), 5e-7);
        Assert.Equal(velocity, ContactStrength.Velocity(2000, limit), 5e-7);
        Assert.Equal(roughness, ContactStrength.Roughness(0.006, 0.004, 10, limit), 5e-7);
    }

    // ∛(10/80) = ½: flanks of 80 mm with Rz = 6 µm are as smooth as those of the test gears; Rz 8 and 4 µm count as 6.
    [Fact]
    public void Roughness_counts_less_on_flatter_flanks()
    {
        Assert.Equal(1, ContactStrength.Roughness(0.006, 0.006, 80, 1000), 1e-12);
        Assert.Equal(1, ContactStrength.Roughness(0.008, 0.004, 80, 1000), 1e-12);
    }

    // ISO 6336-2 prints the coefficients as lines between 850 and 1200 MPa: σ/4375 + 0.6357, 0.85 + 0.08·(σ − 850)/350 and
    // 0.32 − 0.0002·σ; from memory. 1e-4 is what four digits allow.
    [Fact]
    public void The_coefficients_are_the_printed_lines() =>
        Gen.Double[850, 1200].Sample(limit =>
        {
            var lubricant = limit / 4375 + 0.6357;
            var velocity = 0.85 + 0.08 * (limit - 850) / 350;
            return Math.Abs(lubricant + (1 - lubricant) * 4 / Math.Pow(1.2 + 134 / 46.0, 2) - ContactStrength.Lubricant(46, limit)) < 1e-4
                && Math.Abs(velocity - ContactStrength.Velocity(0, limit)) < 1e-12
                && Math.Abs(Math.Pow(0.5, 0.32 - 0.0002 * limit) - ContactStrength.Roughness(0.006, 0.006, 10, limit)) < 1e-9;
        });

    // DIN 3990 has 80/ν₅₀ where ISO 6336-2 has 134/ν₄₀; from memory. Typical gear oils, mm²/s at 40 and 100 °C, from a public
    // table: by ASTM D341 both come to the same within a hundredth.
    [Theory]
    [InlineData(68, 8.5)]
    [InlineData(100, 11.4)]
    [InlineData(150, 14.5)]
    [InlineData(220, 19)]
    [InlineData(320, 24.5)]
    [InlineData(460, 32)]
    public void Viscosity_at_50_degrees_gives_the_same_lubricant_factor(double at40, double at100)
    {
        var at50 = Viscosity.Kinematic(50, 40, at40, 100, at100);

        Assert.Equal(0.83 + 4 * 0.17 / Math.Pow(1.2 + 80 / at50, 2), ContactStrength.Lubricant(at40, 800), 0.01);
    }

    [Fact]
    public void Thick_oil_speed_and_smooth_flanks_help_hard_steel_less() =>
        Gen.Select(Gen.Double[10, 160], Gen.Double[100, 9000], Gen.Double[0.0035, 0.02], Gen.Double[5, 10]).Sample(
            (viscosity, speed, roughness, curvature) =>
                ContactStrength.Lubricant(viscosity, 700) < ContactStrength.Lubricant(viscosity, 1500)
                && ContactStrength.Velocity(speed, 700) < ContactStrength.Velocity(speed, 1500)
                && ContactStrength.Roughness(roughness, roughness, curvature, 700)
                    < ContactStrength.Roughness(roughness, roughness, curvature, 1500)
                && ContactStrength.Lubricant(viscosity + 10, 700) > ContactStrength.Lubricant(viscosity, 700)
                && ContactStrength.Velocity(speed + 100, 700) > ContactStrength.Velocity(speed, 700));

    // ISO 6336-2:1996: 1.2 at 130 HB and softer, 1 at 470 HB and harder, a line between; from memory. 300 HB: 1.1.
    [Theory]
    [InlineData(110, 1.2)]
    [InlineData(130, 1.2)]
    [InlineData(300, 1.1)]
    [InlineData(470, 1)]
    [InlineData(600, 1)]
    public void A_smooth_hard_pinion_hardens_a_soft_wheel(double brinell, double factor) =>
        Assert.Equal(factor, ContactStrength.WorkHardening(brinell, 0.003), 1e-12);

    // 300 HB, R_zH = 6 µm: 1.1·(1/2)^0.15 = 0.991376. Rz 3 on 6 µm, ρ_red = 10 mm, v·ν₄₀ = 10·150 = 1500: 3·(1/2)^0.66 = 1.899
    // µm, which counts as 3.
    [Fact]
    public void A_rough_hard_pinion_files_the_soft_wheel()
    {
        Assert.Equal(0.991376, ContactStrength.WorkHardening(300, 0.006), 5e-7);
        Assert.Equal(0.003, ContactStrength.RoughnessOnSoftWheel(0.003, 0.006, 10, 10_000, 150), 1e-12);
        Assert.Equal(0.008, ContactStrength.RoughnessOnSoftWheel(0.008, 0.008, 10, 10_000, 150), 1e-12);
        Assert.Equal(0.016, ContactStrength.RoughnessOnSoftWheel(0.03, 0.006, 10, 10_000, 150), 1e-12);
    }

    // 1500·1.1·1.02 = 1683; the square of the safety is the reserve in load.
    [Fact]
    public void The_limit_is_a_product_and_the_stress_goes_by_the_root_of_the_load()
    {
        Assert.Equal(1683, ContactStrength.Limit(1500, 1.1, 1.02), 1e-9);
        Assert.Equal(1500, ContactStress.OfGear(1000, 1, 1.5 * 1.5), 1e-9);
        Assert.Equal(1, ContactStrength.Size(10));
        Refusal.Says("up to a normal module of 10 mm", () => ContactStrength.Size(10.1));
        Refusal.Says("viscosity at 40 °C", () => ContactStrength.Lubricant(0, 1500));
    }
}
