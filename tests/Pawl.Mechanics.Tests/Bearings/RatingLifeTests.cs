using CsCheck;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Bearings;

public class RatingLifeTests
{
    private const double Rpm = Math.PI / 30;
    private const double Hour = 3600;

    private static readonly BearingType Ball = new(BearingKind.DeepGrooveBall);
    private static readonly BearingType Roller = new(BearingKind.CylindricalRoller);

    // A public examination question: 2500 N radial, 1000 N axial, X = 0.56, Y = 1.6, C = 7350 N, 720 1/min: 340.419 h.
    [Fact]
    public void A_textbook_ball_bearing_lives_340_hours() =>
        Assert.Equal(340.419, RatingLife.Duration(RatingLife.Basic(Ball, 7350, 0.56 * 2500 + 1.6 * 1000), 720 * Rpm) / Hour, 0.001);

    // Shigley, Mechanical Engineering Design, problem 11-3, solution on a public page: a straight roller bearing under 10.279 kN
    // needs 91.1 kN for 1440 million revolutions.
    [Fact]
    public void A_textbook_roller_bearing_lives_1440_million_revolutions() =>
        Assert.Equal(1440e6, RatingLife.Basic(Roller, 91.1, 10.279), 1440e6 * 0.002);

    // The number 16 667 of every textbook: hours at 1000 1/min of a thousand million revolutions.
    [Fact]
    public void Lives_are_worked_by_hand()
    {
        Assert.Equal(1e9, RatingLife.Basic(Ball, 14_000, 1400), 1.0);
        Assert.Equal(16_667, RatingLife.Duration(1e9, 1000 * Rpm) / Hour, 0.5);
        Assert.Equal(1e6 * Math.Pow(5, 10.0 / 3), RatingLife.Basic(Roller, 22_000, 4400), 1.0);
        Assert.Equal(RatingLife.Duration(1e9, 100), RatingLife.Duration(1e9, -100));
        Assert.Equal(0.64 * 2 * 1e9, RatingLife.Modified(1e9, RatingLife.ReliabilityFactor(0.95), 2), 1.0);
    }

    // ISO 281:2007, a₁, from memory.
    [Theory]
    [InlineData(0.90, 1)]
    [InlineData(0.95, 0.64)]
    [InlineData(0.96, 0.55)]
    [InlineData(0.97, 0.47)]
    [InlineData(0.98, 0.37)]
    [InlineData(0.99, 0.25)]
    [InlineData(0.9995, 0.077)]
    public void Reliability_shortens_the_life_as_ISO_281_has_it(double reliability, double factor) =>
        Assert.Equal(factor, RatingLife.ReliabilityFactor(reliability));

    // ISO/TR 1281-2, from memory: a Weibull distribution of three parameters, a₁ = 0.05 + 0.95·(ln(1/S)/ln(1/0.9))^(2/3); the
    // table gives two or three decimals of it.
    [Fact]
    public void Every_factor_follows_from_the_distribution_of_lives() =>
        Assert.All(
            new[] { 0.90, 0.95, 0.96, 0.97, 0.98, 0.99, 0.992, 0.994, 0.996, 0.998, 0.999, 0.9992, 0.9994, 0.9995 },
            reliability => Assert.Equal(
                0.05 + 0.95 * Math.Pow(Math.Log(1 / reliability) / Math.Log(1 / 0.9), 2.0 / 3),
                RatingLife.ReliabilityFactor(reliability),
                reliability < 0.999 ? 0.0051 : 0.00051));

    [Fact]
    public void A_reliability_between_the_listed_is_refused() =>
        Refusal.Says("there is no factor for a reliability of 92 %; there are those of 90 %, 95 %", () => RatingLife.ReliabilityFactor(0.92));

    // The Tribology Handbook on a public page: a bearing of 340 mm bore at 500 1/min needs 13.2 mm²/s. Its outside is 420 mm (ISO
    // 15).
    [Fact]
    public void The_reference_viscosity_of_a_handbook_is_met() =>
        Assert.Equal(13.2, LifeModification.ReferenceViscosity(500 * Rpm, BearingSpeed.MeanDiameter(340, 420)), 0.1);

    // 45 000·500^−0.83/√40 and 4500/√3000/√40.
    [Theory]
    [InlineData(500, 40.93)]
    [InlineData(3000, 12.99)]
    [InlineData(1000, 22.50)]
    [InlineData(999.999, 23.02)]
    public void Reference_viscosities_are_worked_beside(double speed, double expected) =>
        Assert.Equal(expected, LifeModification.ReferenceViscosity(speed * Rpm, 40), 0.005);

    // The same formulas in another language.
    [Theory]
    [InlineData(true, 1, 0.1, 2.4305)]
    [InlineData(true, 0.3, 0.05, 0.20825)]
    [InlineData(false, 2, 0.2, 0.93368)]
    public void Life_modification_was_computed_elsewhere(bool ball, double kappa, double fatigue, double expected) =>
        Assert.Equal(expected, LifeModification.Factor(ball ? Ball : Roller, kappa, fatigue), expected * 1e-4);

    // ISO 281's diagrams: every curve begins at 0.1, none goes above 50; they bend at κ = 0.4 and 1 without a jump. 0.1 % is what
    // rounded constants leave of the exponent, ten times that in the factor.
    [Fact]
    public void Life_modification_has_no_jump_where_its_pieces_meet() =>
        Gen.Select(Gen.Bool, Gen.OneOf(Gen.Const(0.4), Gen.Const(1.0)), Gen.Double[0.001, 0.1]).Sample((ball, kappa, fatigue) =>
        {
            var type = ball ? Ball : Roller;
            var below = LifeModification.Factor(type, kappa * (1 - 1e-9), fatigue);
            return Math.Abs(below / LifeModification.Factor(type, kappa, fatigue) - 1) < 0.01;
        });

    [Fact]
    public void Life_modification_lies_between_a_tenth_and_fifty_and_rises_with_film_and_cleanliness() =>
        Gen.Select(Gen.Bool, Gen.Double[0.1, 6], Gen.Double[0, 1], Gen.Double[0, 5], Gen.Double[0, 1]).Sample((ball, kappa, more, fatigue, cleaner) =>
        {
            var type = ball ? Ball : Roller;
            var factor = LifeModification.Factor(type, kappa, fatigue);
            // Where pieces meet, rounded constants may step down by a hundredth.
            return factor is >= 0.1 and <= 50
                && LifeModification.Factor(type, kappa + more, fatigue) >= factor * 0.99
                && LifeModification.Factor(type, kappa, fatigue + cleaner) >= factor;
        });

    [Fact]
    public void A_film_above_four_and_dirt_without_end_are_at_their_limits()
    {
        Assert.Equal(LifeModification.Factor(Ball, 4, 0.3), LifeModification.Factor(Ball, 9, 0.3));
        Assert.Equal(0.1, LifeModification.Factor(Ball, 1, 0), 1e-12);
        Assert.Equal(0.1, LifeModification.Factor(Roller, 0.1, 3), 1e-3);
        Assert.Equal(50, LifeModification.Factor(Ball, 4, 5));
        Refusal.Says("κ is 0.09; the source begins at 0.1", () => LifeModification.Factor(Ball, 0.09, 0.1));
    }

    [Fact]
    public void Additives_help_only_a_thin_film_in_clean_oil_and_up_to_three()
    {
        Assert.Equal(LifeModification.Factor(Ball, 1, 0.1), LifeModification.FactorWithAdditives(Ball, 0.5, 0.2, 0.1));
        Assert.Equal(LifeModification.Factor(Ball, 0.5, 0.1), LifeModification.FactorWithAdditives(Ball, 0.5, 0.19, 0.1));
        Assert.Equal(LifeModification.Factor(Ball, 1.5, 0.1), LifeModification.FactorWithAdditives(Ball, 1.5, 0.5, 0.1));
        Assert.Equal(3, LifeModification.FactorWithAdditives(Ball, 0.3, 0.5, 0.5));
        Assert.True(LifeModification.Factor(Ball, 0.9, 1) > 3);
        Assert.Equal(LifeModification.Factor(Ball, 0.9, 1), LifeModification.FactorWithAdditives(Ball, 0.9, 0.5, 1));
    }

    // ISO 281 annex B, from memory: a ball bearing of C₀ = 7800 N has about 7800/22 = 355 N; data sheets of that size say 335 N.
    [Fact]
    public void The_fatigue_load_limit_is_a_twentieth_of_the_static_rating()
    {
        Assert.Equal(335, LifeModification.FatigueLoadLimit(Ball, 7800, 39), 25.0);
        Assert.Equal(8200 / 8.2, LifeModification.FatigueLoadLimit(Roller, 8200, 100), 1e-9);
        Assert.Equal(2200 / 22 / Math.Sqrt(4), LifeModification.FatigueLoadLimit(Ball, 2200, 400), 1e-9);
    }
}
