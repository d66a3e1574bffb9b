using CsCheck;
using Pawl.Mechanics.Rating;
using Pawl.Mechanics.Tests.Gears;

namespace Pawl.Mechanics.Tests.Rating;

public class FlashTemperatureTests
{
    private static readonly double Modulus = Elastic.Reduced(Elastic.Steel, Elastic.Steel);

    private static readonly Gen<Pair> Spur = Gen.OneOf(
        Gen.Select(Gen.Int[22, 60], Gen.Int[22, 90], Gen.Double[0, 0.3]).Select(
            (z1, z2, shift) => new Pair(2, z1, z2, shift, shift, Shorten: true)),
        Gen.Select(Gen.Int[22, 40], Gen.Int[30, 90]).Select((z1, more) => new Pair(2, z1, -z1 - more, 0.2, Addendum: 0.8)));

    private static readonly Gen<Pair> Walkable = Spur.Where(pair => pair.ContactRatio <= 2 && pair.CurvatureA1 > 0.1);

    // μ = 0.05, 200 N/mm, 3 and 2 m/s, 2·b_H = 0.4 mm, steel. The same formula in another language, in SI units.
    [Fact]
    public void A_contact_is_worked() =>
        Assert.Equal(13.0666423, FlashTemperature.OfContact(0.05, 200, 3000, 2000, 0.2, 13.5, 13.5), 5e-8);

    // Stolarski, Tribology in Machine Design, after Blok: three forms with the factors 1.11, 0.62 and 2.45. The page shows the
    // factors; the forms by load and radius and by pressure and radius, with E′ = E/(1 − ν²) of equal bodies, are written from
    // memory.
    [Fact]
    public void The_three_forms_of_Bloks_formula_agree() =>
        Gen.Select(Gen.Double[5, 1000], Gen.Double[1, 50], Gen.Double[500, 9000], Gen.Double[100, 400]).Sample(
            (load, radius, first, second) =>
            {
                var rise = FlashTemperature.OfContact(
                    0.06, load, first, second, LineContact.HalfWidth(load, radius, Modulus), 13.5, 13.5);
                var sliding = 0.06 * Math.Abs(Math.Sqrt(first) - Math.Sqrt(second)) / 13.5;
                var byLoad = 0.62 * sliding * Math.Pow(load, 0.75) * Math.Pow(2 * Modulus / radius, 0.25);
                var byPressure = 2.45 * sliding * Math.Pow(LineContact.Pressure(load, radius, Modulus), 1.5)
                    * Math.Sqrt(radius / (2 * Modulus));
                return Math.Abs(byLoad / rise - 1) < 0.008 && Math.Abs(byPressure / rise - 1) < 0.008;
            });

    // Heat q(x) of elliptical shape moves over a half space so fast that it flows straight down: at x the surface is warmer by
    // 1/(B_M·√(π·v))·∫ q(s)/√(x − s) ds over what passed before. Its greatest value, by numbers: 1.11·Q/(B_M·√v·√(2·b)).
    [Fact]
    public void The_factor_1_11_is_heat_flowing_straight_down()
    {
        const int Parts = 4000;
        var greatest = 0.0;
        for (var place = 0; place <= 100; place++)
        {
            // b = 1, Q = 1; s = x − t² takes the root out of the integral.
            var x = -1 + place * 0.02;
            var reach = Math.Sqrt(x + 1);
            var sum = 0.0;
            for (var i = 0; i < Parts; i++)
            {
                var t = reach * (i + 0.5) / Parts;
                var s = x - t * t;
                sum += 2 / Math.PI * Math.Sqrt(Math.Max(0, 1 - s * s)) * 2 * reach / Parts;
            }

            greatest = Math.Max(greatest, sum / Math.Sqrt(Math.PI));
        }

        Assert.Equal(1.11, greatest * Math.Sqrt(2), 0.005);
    }

    // All of the heat goes into two bodies whose surfaces must be equally warm: 1/Δθ = 1/Δθ₁ + 1/Δθ₂.
    [Fact]
    public void Two_bodies_share_the_heat_so_that_both_are_as_warm() =>
        Gen.Select(Gen.Double[100, 9000], Gen.Double[100, 9000], Gen.Double[5, 14], Gen.Double[5, 14]).Sample(
            (first, second, b1, b2) =>
            {
                var heat = 1.11 * 0.05 * 200 * Math.Abs(first - second) / Math.Sqrt(0.4);
                var rise = FlashTemperature.OfContact(0.05, 200, first, second, 0.2, b1, b2);
                return Math.Abs(rise * (b1 * Math.Sqrt(first) + b2 * Math.Sqrt(second)) - heat) <= 1e-9 * heat;
            });

    [Fact]
    public void Flanks_that_only_roll_stay_cool() =>
        Assert.Equal(0, FlashTemperature.OfContact(0.05, 200, 3000, 3000, 0.2, 13.5, 13.5));

    // What one pair of teeth does not carry the other does: a base pitch apart the shares add up to 1.
    [Fact]
    public void Shares_of_two_pairs_in_contact_add_up_to_all_of_the_load() =>
        Gen.Select(Walkable, Gen.Double[0.001, 0.999]).Sample((pair, part) =>
        {
            var path = Path(pair);
            var place = path.Start + part * (path.End - path.Start - path.BasePitch);
            return Math.Abs(FlashTemperature.LoadShare(path, place) + FlashTemperature.LoadShare(path, place + path.BasePitch) - 1)
                < 1e-9;
        });

    [Fact]
    public void Load_is_shared_as_the_trapezoid_says()
    {
        var path = Path(new Pair(2, 30, 50));

        Assert.Equal(1.0 / 3, FlashTemperature.LoadShare(path, path.Start), 1e-12);
        Assert.Equal(1.0 / 3, FlashTemperature.LoadShare(path, path.End), 1e-12);
        Assert.Equal(2.0 / 3, FlashTemperature.LoadShare(path, path.End - path.BasePitch - 1e-9), 1e-6);
        Assert.Equal(1 / path.ContactRatio, FlashTemperature.LoadShare(path with { OverlapRatio = 1 }, path.Start), 1e-12);
        Assert.True(Max(path with { BasePitch = path.End - path.Start }) > 0);
    }

    // Flanks traced point by point: the pressure of Hertz from the drawn radii, velocities from turning, Blok in the form with
    // pressure.
    [Fact]
    public void The_greatest_flash_temperature_is_found_along_the_path() =>
        Gen.Select(Walkable, Gen.Double[10, 500], Gen.Double[20, 800]).Sample(
            (pair, speed, load) =>
            {
                var path = Path(pair);
                var found = FlashTemperature.Along(path, speed, load, 0.06, Modulus, 13.5, 13.5).Max;
                var length = pair.Centre * Math.Sin(pair.WorkingAngle);
                var greatest = 0.0;
                const int Places = 4001;
                for (var i = 0; i < Places; i++)
                {
                    var first = path.Start + (path.End - path.Start) * i / (Places - 1);
                    var second = length - first;
                    var radius = 1 / (1 / first + 1 / second);
                    var share = load * FlashTemperature.LoadShare(path, first);
                    var pressure = Math.Sqrt(share * Modulus / (Math.PI * radius));
                    var width = 4 * share / (Math.PI * pressure);
                    var (v1, v2) = (speed * first, speed * pair.Teeth1 / Math.Abs(pair.Teeth2) * Math.Abs(second));
                    greatest = Math.Max(
                        greatest, 1.11 * 0.06 * share * Math.Abs(Math.Sqrt(v1) - Math.Sqrt(v2)) / (13.5 * Math.Sqrt(width)));
                }

                return found.Rise / greatest - 1 is > -1e-6 and < 2e-3
                    && found.Curvature1 >= path.Start && found.Curvature1 <= path.End;
            },
            iter: 300);

    // Δθ grows with w^(3/4) and √ω, since w, the width √w and the velocities each enter by their power.
    [Fact]
    public void Flash_temperature_rises_with_load_and_speed() =>
        Gen.Select(Walkable, Gen.Double[10, 500], Gen.Double[20, 800], Gen.Double[0.1, 10]).Sample((pair, speed, load, times) =>
        {
            var path = Path(pair);
            var rise = FlashTemperature.Along(path, speed, load, 0.06, Modulus, 13.5, 13.5).Max.Rise;
            var loaded = FlashTemperature.Along(path, speed, load * times, 0.06, Modulus, 13.5, 13.5).Max.Rise;
            var faster = FlashTemperature.Along(path, -speed * times, load, 0.06, Modulus, 13.5, 13.5).Max.Rise;
            return Near(rise * Math.Pow(times, 0.75), loaded) && Near(rise * Math.Sqrt(times), faster);
        });

    [Fact]
    public void A_path_that_cannot_be_walked_is_refused()
    {
        var path = Path(new Pair(2, 30, 50));

        Refusal.Says("involute interference", () => Max(path with { TipCurvature2 = path.CurvatureSum + 0.1 }));
        Refusal.Says("contact ratio of 2", () => Max(path with { BasePitch = path.BasePitch * 0.7 }));
        Refusal.Says("contact ratios of 1", () => Max(path with { BasePitch = path.BasePitch * 2 }));
        Refusal.Says("must not be below zero", () => FlashTemperature.OfContact(-0.1, 200, 3000, 2000, 0.2, 13.5, 13.5));
        Assert.True(Max(path with { BasePitch = path.BasePitch * 0.7, OverlapRatio = 1 }) > 0);
    }

    private static double Max(ContactPath path) =>
        FlashTemperature.Along(path, 100, 200, 0.06, Modulus, 13.5, 13.5).Max.Rise;

    private static ContactPath Path(Pair pair) => new(
        pair.Base1, pair.Base2, pair.WorkingAngle, pair.TipCurvature1, pair.TipCurvature2, pair.BasePitch, pair.BaseHelix, pair.Overlap);

    private static bool Near(double expected, double actual) => Math.Abs(expected - actual) <= 1e-9 * Math.Abs(expected);
}
