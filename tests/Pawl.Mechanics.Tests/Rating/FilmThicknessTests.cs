using CsCheck;
using Pawl.Mechanics.Rating;

namespace Pawl.Mechanics.Tests.Rating;

public class FilmThicknessTests
{
    // Pan and Hamrock 1989, line contact: H_min = 1.714·W^−0.128·U^0.694·G^0.568, another fit to other computations; from memory.
    // Over the range of gears the two stay within a sixth.
    [Fact]
    public void Another_fit_gives_about_the_same_film() =>
        Gen.Select(Gen.Double[3500, 6500], Gen.Double[-12, -10], Gen.Double[-4.5, -3.5]).Sample((g, logU, logW) =>
        {
            var (u, w) = (Math.Pow(10, logU), Math.Pow(10, logW));
            return Math.Abs(Film(g, u, w) / (1.714 * Math.Pow(w, -0.128) * Math.Pow(u, 0.694) * Math.Pow(g, 0.568)) - 1) < 1.0 / 6;
        });

    // Dowson and Higginson's first formula, 1959: H_min = 1.6·G^0.6·U^0.7·W^−0.13; from memory. At G = 5000, where both were
    // fitted, they agree within a hundredth.
    [Fact]
    public void The_first_formula_of_the_same_authors_gives_the_same_film_on_steel() =>
        Gen.Select(Gen.Double[-12, -10], Gen.Double[-4.5, -3.5]).Sample((logU, logW) =>
        {
            var (u, w) = (Math.Pow(10, logU), Math.Pow(10, logW));
            return Math.Abs(Film(5000, u, w) / (1.6 * Math.Pow(5000, 0.6) * Math.Pow(u, 0.7) * Math.Pow(w, -0.13)) - 1) < 0.01;
        });

    // G = 5000, U = 1e-11, W = 1e-4: 2.65·99.43·1.9953e-8·3.3113 = 1.741e-5.
    [Fact]
    public void A_film_is_worked_by_hand() => Assert.Equal(1.741e-5, Film(5000, 1e-11, 1e-4), 2e-8);

    // Twice as fast: 2^0.7; twice the load only 2^−0.13; in the usual form the radius has 0.43, the modulus −0.03.
    [Fact]
    public void Speed_makes_the_film_and_load_hardly_thins_it() =>
        Gen.Select(Gen.Double[100, 9000], Gen.Double[5, 900], Gen.Double[1, 50], Gen.Double[0.2, 5]).Sample((speed, load, radius, times) =>
        {
            double Min(double u, double w, double r, double e) => FilmThickness.Min(0.02, 50e-9, u, w, r, e);
            var film = Min(speed, load, radius, 113_000);
            return Near(film * Math.Pow(times, 0.7), Min(speed * times, load, radius, 113_000))
                && Near(film * Math.Pow(times, -0.13), Min(speed, load * times, radius, 113_000))
                && Near(film * Math.Pow(times, 0.43), Min(speed, load, radius * times, 113_000))
                && Near(film * Math.Pow(times, -0.03), Min(speed, load, radius, 113_000 * times));
        });

    // 0.5 µm over Ra 0.3 and 0.4 µm: 0.5/0.5 = 1. Halving both roughnesses doubles λ.
    [Fact]
    public void The_film_is_set_against_the_roughness()
    {
        Assert.Equal(1, FilmThickness.Ratio(0.0005, 0.0003, 0.0004), 1e-12);
        Assert.Equal(2, FilmThickness.Ratio(0.0005, 0.00015, 0.0002), 1e-12);
        Refusal.Says("flank roughness", () => FilmThickness.Ratio(0.0005, 0, 0.0004));
        Refusal.Says("rolling velocity", () => FilmThickness.Min(0.02, 50e-9, 0, 100, 10, 113_000));
    }

    // ρ_red 1 mm and E′ = 2·50 000 MPa, so that the groups can be set one by one.
    private static double Film(double g, double u, double w) =>
        FilmThickness.Min(g / 1e5, u * 1e5, 1, w * 1e5, 1, 5e4);

    private static bool Near(double expected, double actual) => Math.Abs(expected - actual) <= 1e-9 * Math.Abs(expected);

    // Steel gear of ρ_red 10 mm, 5 m/s, 100 N/mm, oil of 40 mPa·s and 20/GPa: textbooks speak of a few tenths of a micrometre to a
    // micrometre.
    [Fact]
    public void A_gear_has_a_film_of_the_usual_size()
    {
        var film = FilmThickness.Min(0.020, 40e-9, 1710, 100, 10, 113_187);

        Assert.InRange(film, 0.0002, 0.001);
    }
}
