using Pawl.Mechanics.Gears;

namespace Pawl.Mechanics.Tests.Gears;

public class BacklashTests
{
    private static readonly double Twenty = Degrees.Rad(20);

    // By hand: square to the flanks, thinning counts with cos 20°: 0.1 mm · 0.939692621; along the circle it is the thinning itself.
    [Fact]
    public void Thinning_alone_is_the_play_along_the_circle()
    {
        var normal = Backlash.Normal(-0.1, 60, Twenty, Twenty, Twenty, Twenty, 0);

        Assert.Equal(0.0939692621, normal, 5e-11);
        Assert.Equal(0.1, Backlash.Circumferential(normal, Twenty, 0), 1e-15);
    }

    // A steel pair, 60 mm, in an aluminium housing, all at 70 °C. By hand: 60 · 1.00115 / 1.000575. For a small change of distance
    // the backlash is 2·Δa·sin α_wt, here 0.0235858 mm, as handbooks have it; the next term, Δa²/(a·tan α_wt)·cos α_wt, is 0.00005 mm.
    [Fact]
    public void Heat_opens_a_steel_pair_in_aluminium()
    {
        var distance = Backlash.OperatingCentreDistance(60, 23e-6, 50, 11.5e-6, 50);

        Assert.Equal(60 * 1.00115 / 1.000575, distance, 1e-12);
        Assert.Equal(2 * (distance - 60) * Math.Sin(Twenty), Opened(60, distance), 1e-4);
    }

    // An internal pair closes as its axes part; the sign rule has a greater magnitude as a negative distance.
    [Fact]
    public void Heat_closes_an_internal_pair_in_aluminium() =>
        Assert.True(Opened(-20, Backlash.OperatingCentreDistance(-20, 23e-6, 50, 11.5e-6, 50)) < 0);

    private static double Opened(double reference, double distance) => Backlash.Normal(
        0, reference, Twenty, MeshGeometry.WorkingPressureAngleFromCentreDistance(reference, Twenty, distance), Twenty, Twenty, 0);

    // Brute force, outside the formulas: tooth and space are drawn by the equation of the involute in the transverse section, the
    // gears are set at the actual centre distance, and the wheel is turned until a point of the flank touches.
    [Theory]
    [InlineData(20, 60, 0, 0, 0, 0.03)]
    [InlineData(20, 60, 0, 0.4, 0.1, 0.5)]
    [InlineData(30, 45, 25, 0.2, -0.1, 0.03)]
    [InlineData(30, 45, 25, 0, 0, 0.8)]
    [InlineData(17, 32, 0, 0.5, 0.6, -0.02)]
    [InlineData(20, -60, 0, 0, 0, 0.03)]
    [InlineData(24, -72, 0, 0.3, -0.5, -0.4)]
    public void Backlash_is_how_far_the_wheel_turns_between_its_flanks(
        int z1, int z2, double helix, double shift1, double shift2, double change)
    {
        const double Thinning1 = -0.05, Thinning2 = -0.08;
        var pair = new Pair(2, z1, z2, shift1, shift2, Degrees.Rad(helix));
        var moved = pair with { CentreDistance = pair.Centre + change };
        var (distance, beta) = (Math.Abs(pair.Centre + change), Degrees.Rad(helix));
        var transverse = Math.Atan(Math.Tan(Twenty) / Math.Cos(beta));
        var m = 2 / Math.Cos(beta);
        var (half1, half2) = (HalfTooth(z1, shift1, Thinning1), HalfTooth(Math.Abs(z2), shift2, Thinning2));
        var (base1, base2) = (m * z1 / 2 * Math.Cos(transverse), m * Math.Abs(z2) / 2 * Math.Cos(transverse));

        var turned = 2 * Min(Gap, base1 + 1e-9, (m * z1 / 2) + (3 * m));
        var pitch = distance * Math.Abs(z2) / Math.Abs(z1 + z2);

        var normal = Backlash.Normal(
            Thinning1 + Thinning2, pair.Reference, pair.TransverseAngle, moved.WorkingAngle, pair.WorkingAngle, Twenty, pair.BaseHelix);
        Assert.Equal(turned * pitch, Backlash.Circumferential(normal, moved.WorkingAngle, pair.BaseHelix), 1e-7);

        // Half the angle of a tooth on the reference circle, its thickness that of ISO 21771 with the allowance.
        double HalfTooth(int z, double x, double thinning) =>
            ((Math.PI / 2) + (2 * x * Math.Tan(Twenty)) + (thinning / 2)) * 2 / Math.Cos(beta) / (m * z);

        double Inv(double radius, double ground) => Math.Tan(Math.Acos(ground / radius)) - Math.Acos(ground / radius);

        // From a point of the flank of gear 1, a tooth of which stands in the middle of a space of gear 2, to the flank of that space.
        double Gap(double radius)
        {
            var angle = half1 + Inv(m * z1 / 2, base1) - Inv(radius, base1);
            var (x, y) = (radius * Math.Cos(angle), radius * Math.Sin(angle));
            var along = z2 > 0 ? distance - x : distance + x;
            var radius2 = Math.Sqrt((along * along) + (y * y));
            if (radius2 <= base2)
                return double.PositiveInfinity;
            var grown = Inv(radius2, base2) - Inv(m * Math.Abs(z2) / 2, base2);
            var tooth = z2 > 0 ? half2 - grown : half2 + grown;
            return (Math.PI / Math.Abs(z2)) - tooth - Math.Atan2(y, along);
        }

        static double Min(Func<double, double> of, double from, double to)
        {
            var best = from;
            for (var width = (to - from) / 2000; width > 1e-10; width /= 20)
            {
                var start = best;
                for (var k = width > 1e-3 ? 0 : -40; k <= (width > 1e-3 ? 2000 : 40); k++)
                {
                    var at = Math.Clamp((width > 1e-3 ? from : start) + (k * width), from, to);
                    if (of(at) < of(best))
                        best = at;
                }
            }

            return of(best);
        }
    }
}
