using CsCheck;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Rating;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Bearings;

public class InternalRatingTests
{
    private static readonly BearingType Deep = new(BearingKind.DeepGrooveBall);
    private static readonly BearingType Roller = new(BearingKind.CylindricalRoller);

    // Steps of the tables, so that a test meets rows and nothing between.
    private static readonly double[] Gammas =
        [0.05, 0.06, 0.07, 0.08, 0.09, 0.10, 0.12, 0.14, 0.16, 0.18, 0.20, 0.22, 0.24, 0.26, 0.28, 0.30, 0.32, 0.34, 0.36, 0.38, 0.40];

    // ISO/TR 1281-1, from memory: how f_c goes with γ for grooves of 0.52·D_w, where (2·r/(2·r − D_w))^0.41 = 26^0.41. The number in
    // front, 0.957·39.9, is fitted to the table, so that this finds a wrong row and not a wrong table; it prints three figures.
    [Fact]
    public void Every_factor_of_balls_follows_from_the_theory() =>
        Assert.All(Gammas, gamma =>
        {
            var part = 1.04 * Math.Pow((1 - gamma) / (1 + gamma), 1.72);
            var theory = 0.957 * 39.9 * Math.Pow(1 + Math.Pow(part, 10.0 / 3), -0.3)
                * Math.Pow(gamma, 0.3) * Math.Pow(1 - gamma, 1.39) / Math.Cbrt(1 + gamma) * Math.Pow(26, 0.41);
            Assert.Equal(theory, FactorOf(gamma), theory * 0.0015);
        });

    // ISO 281's table of f_c of rollers, from memory.
    [Theory]
    [InlineData(0.05, 74.1)]
    [InlineData(0.10, 84.2)]
    [InlineData(0.16, 88.5)]
    [InlineData(0.20, 88.7)]
    [InlineData(0.26, 86.4)]
    [InlineData(0.30, 83.8)]
    public void The_factor_of_rollers_gives_the_table(double gamma, double printed) =>
        Assert.Equal(printed, InternalRating.RollerFactor(gamma), 0.05);

    // ISO 76 means by C₀ a pressure of 4200 MPa under the ball that carries a fifth of the load over Z. Hertz's contact of a ball
    // in grooves of 0.52·D_w inside and 0.53·D_w outside, solved here from its ellipse; the lesser of both races counts. 1.5 %
    // are the rounding of the table and the modulus that ISO took, 207 000 MPa.
    [Fact]
    public void Every_static_factor_of_balls_is_a_pressure_of_4200_MPa() =>
        Assert.All(Enumerable.Range(1, 30).Select(step => step / 100.0), gamma =>
        {
            var inner = LoadAt(4200, 2 / (1 - gamma), 0.52);
            var outer = LoadAt(4200, 2 / (1 + gamma), 0.53);
            Assert.Equal(Math.Min(inner, outer) / 5, InternalRating.StaticBallFactor(gamma), InternalRating.StaticBallFactor(gamma) * 0.015);
        });

    // ISO 76 means by C₀ of rollers 4000 MPa of line contact and a fifth of the load over Z: with 1/R = (2/D)·1/(1 − γ), Q =
    // π·R·L·p²/E*.
    [Fact]
    public void The_static_factor_of_rollers_is_a_pressure_of_4000_MPa() =>
        Gen.Double[0.02, 0.3].Sample(gamma =>
        {
            RollerSet rollers = new(Roller, 10, 4, 8, 4 / gamma);
            var radius = 4.0 / 2 * (1 - gamma);
            var load = Math.PI * radius * 8 * 4000 * 4000 / Elastic.Reduced(new(207_000, 0.3), new(207_000, 0.3));
            return Math.Abs(InternalRating.Static(rollers) / (10 * load / 5) - 1) < 0.01;
        });

    // Internals of a bearing 20 × 47 × 14, 25 × 52 × 15 and 30 × 62 × 16, common practice; ratings that are usually stated, kN:
    // 12.8 and 6.65, 14.0 and 7.85, 19.5 and 11.3. Suppliers differ by some hundredths.
    [Theory]
    [InlineData(8, 7.938, 33.5, 12.8, 6.65)]
    [InlineData(9, 7.938, 39, 14.0, 7.85)]
    [InlineData(9, 9.525, 46, 19.5, 11.3)]
    public void Usual_bearings_have_their_usual_ratings(int count, double diameter, double pitch, double dynamic, double still)
    {
        BallSet balls = new(Deep, count, diameter, pitch);
        Assert.Equal(1, InternalRating.Stated(dynamic * 1000, InternalRating.Dynamic(balls)), 0.015);
        Assert.Equal(1, InternalRating.Stated(still * 1000, InternalRating.Static(balls)), 0.015);
    }

    // The same formulas in another language.
    [Fact]
    public void Ratings_were_computed_elsewhere()
    {
        BallSet balls = new(Deep, 8, 7.938, 33.5);
        Assert.Equal(12_794, InternalRating.Dynamic(balls), 1.0);
        Assert.Equal(6583.9, InternalRating.Static(balls), 0.5);
        RollerSet rollers = new(Roller, 12, 4, 10, 22);
        Assert.Equal(16_741, InternalRating.Dynamic(rollers, RollerMake.Machined), 1.0);
        Assert.Equal(16_741 / 1.1, InternalRating.Dynamic(rollers, RollerMake.DrawnCup), 1.0);
        Assert.Equal(17_280, InternalRating.Static(rollers), 0.5);
    }

    // 25.4^1.8 = 3.647·25.4^1.4: the two branches of ISO 281 meet at one inch.
    [Fact]
    public void Large_balls_join_the_small_ones_at_an_inch()
    {
        var below = InternalRating.Dynamic(new(Deep, 8, 25.4, 120));
        var above = InternalRating.Dynamic(new(Deep, 8, 25.4001, 120));
        Assert.Equal(below, above, below * 1e-4);
        Assert.Equal(Math.Pow(2, 1.4), InternalRating.Dynamic(new(Deep, 8, 60, 300)) / InternalRating.Dynamic(new(Deep, 8, 30, 150)), 1e-9);
    }

    // ISO 281: rows to the power 0.7 and 7/9; a double row of deep grooves is derated to 0.90/0.95.
    [Fact]
    public void A_second_row_adds_less_than_its_own()
    {
        var single = InternalRating.Dynamic(new(Deep, 9, 8, 40));
        Assert.Equal(Math.Pow(2, 0.7) * 0.9 / 0.95, InternalRating.Dynamic(new(new(BearingKind.DeepGrooveBall, 0, 2), 9, 8, 40)) / single, 1e-9);
        Assert.Equal(2, InternalRating.Static(new BallSet(new(BearingKind.DeepGrooveBall, 0, 2), 9, 8, 40)) / InternalRating.Static(new BallSet(Deep, 9, 8, 40)), 1e-9);
        BearingType slanted = new(BearingKind.AngularContactBall, Math.PI / 6);
        BearingType doubled = new(BearingKind.AngularContactBall, Math.PI / 6, 2);
        Assert.Equal(Math.Pow(2, 0.7), InternalRating.Dynamic(new(doubled, 9, 8, 40)) / InternalRating.Dynamic(new(slanted, 9, 8, 40)), 1e-9);
    }

    [Fact]
    public void What_cannot_be_or_is_not_covered_is_refused()
    {
        Refusal.Says("20 rolling elements of 8 mm do not fit", () => InternalRating.Dynamic(new BallSet(Deep, 20, 8, 40)));
        Refusal.Says("no factor f_c: γ is 0.04; the source covers 0.05 to 0.4", () => InternalRating.Dynamic(new BallSet(Deep, 9, 4, 100)));
        Refusal.Says("no factor f₀: γ is 0.31", () => InternalRating.StaticBallFactor(0.31));
        Refusal.Says("a deep groove ball bearing has balls", () => InternalRating.Dynamic(new RollerSet(Deep, 9, 4, 8, 30), RollerMake.Machined));
        Refusal.Says("a cylindrical roller bearing has rollers", () => InternalRating.Dynamic(new BallSet(Roller, 9, 4, 30)));
        Refusal.Says("the source covers up to 0.3", () => InternalRating.RollerFactor(0.31));
    }

    private static double FactorOf(double gamma)
    {
        // Three balls, large enough a circle for any γ of the table: C/(1.3·Z^(2/3)·D^1.8) is f_c.
        BallSet balls = new(Deep, 3, 10, 10 / gamma);
        return InternalRating.Dynamic(balls) / (1.3 * Math.Pow(3, 2.0 / 3) * Math.Pow(10, 1.8));
    }

    // Load over D_w² of a ball in a groove at which Hertz's pressure is p; lengths in D_w. Along the rolling direction the
    // curvatures of ball and race make 2/(1 ∓ γ), across 2 − 1/conformity. The ratio of the axes by bisection.
    private static double LoadAt(double pressure, double along, double conformity)
    {
        var across = 2 - 1 / conformity;
        var compliance = 2 * (1 - 0.3 * 0.3) / 207_000;

        // Semi-axes a across and b = k·a along. Hertz's ellipsoid of pressure p sinks the surface by a paraboloid whose
        // curvatures are 2·p·k·J/(E*·a), with J_a across and J_b along.
        double Ja(double k) => Integral(t => 1 / (Math.Pow(1 + t * t, 1.5) * Math.Sqrt(k * k + t * t)));
        double Jb(double k) => Integral(t => 1 / (Math.Pow(k * k + t * t, 1.5) * Math.Sqrt(1 + t * t)));
        var (low, high) = (1e-3, 1.0);
        for (var step = 0; step < 60; step++)
        {
            var middle = Math.Sqrt(low * high);
            (low, high) = Ja(middle) / Jb(middle) < across / along ? (middle, high) : (low, middle);
        }

        var ratio = low;
        var a = 2 * pressure * ratio * compliance * Ja(ratio) / across;
        return 2 * Math.PI / 3 * pressure * a * ratio * a;
    }

    private static double Integral(Func<double, double> function)
    {
        // t = s/(1 − s) maps the half line to 0…1.
        const int steps = 4000;
        var sum = 0.0;
        for (var step = 0; step < steps; step++)
        {
            var s = (step + 0.5) / steps;
            sum += function(s / (1 - s)) / ((1 - s) * (1 - s));
        }

        return sum / steps;
    }
}
