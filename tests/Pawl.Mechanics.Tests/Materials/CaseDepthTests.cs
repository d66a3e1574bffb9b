using CsCheck;
using Pawl.Mechanics.Materials;
using Pawl.Mechanics.Rating;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Materials;

public class CaseDepthTests
{
    private const double Degree = Math.PI / 180;

    // E_r of steel on steel: 206 000/(2·(1 − 0.3²)) MPa.
    private const double ReducedModulus = 206_000 / 1.82;

    // By hand: max(0.1·m_n, 0.3 mm) and min(0.4·m_n, 6 mm).
    [Theory]
    [InlineData(1, 0.3, 0.4)]
    [InlineData(2, 0.3, 0.8)]
    [InlineData(4, 0.4, 1.6)]
    [InlineData(10, 1, 4)]
    [InlineData(16, 1.6, 6)]
    public void The_window_by_the_module(double module, double least, double most)
    {
        Assert.Equal(least, CaseDepth.Min(module), 12);
        Assert.Equal(most, CaseDepth.Most(module), 12);
    }

    // 0.4·m_n = 0.3 mm at m_n = 0.75 mm, and 0.1·m_n = 6 mm at m_n = 60 mm: beyond, no depth is both enough and not too much.
    [Fact]
    public void A_case_fits_modules_from_three_quarters_of_a_millimetre_to_sixty() =>
        Gen.Double[0.1, 100].Sample(module =>
            CaseDepth.Min(module) <= CaseDepth.Most(module) == module is >= 0.75 and <= 60);

    // A public thread of gear engineers gives 0.15·m_n as the depth of ISO 6336-5 for modules of 2 mm to 10 mm.
    [Fact]
    public void The_usual_depth_lies_in_the_window() =>
        Gen.Double[2, 10].Sample(module => 0.15 * module >= CaseDepth.Min(module) - 1e-12 && 0.15 * module < CaseDepth.Most(module));

    [Fact]
    public void What_grinding_takes_is_ordered_besides() => Assert.Equal(0.48, CaseDepth.Ordered(0.40, 0.08), 12);

    // By hand: 2·0.3/0.8.
    [Fact]
    public void Two_cases_share_the_tip() => Assert.Equal(0.75, CaseDepth.TipShare(0.3, 0.8), 12);

    // By hand, spur pair, u = 3: 1500·40·0.342020/66 000·0.75; internal mate, u = −3: the last factor is −3/−2.
    [Theory]
    [InlineData(3, 0.233196)]
    [InlineData(-3, 0.466391)]
    public void The_depth_for_a_contact_by_hand(double ratio, double depth) =>
        Assert.Equal(depth, CaseDepth.ForContact(1500, 40, 20 * Degree, 0, ratio, 66_000), 6);

    // 2·σ_H·ρ_red/U_H in the normal section is b_H·E_r/U_H by Hertz: pressure and width of a contact of any load give the same depth.
    [Fact]
    public void The_depth_is_in_proportion_to_the_width_of_Hertzs_contact()
    {
        var pairs = Gen.Select(Gen.Double[10, 200], Gen.Double[15, 30], Gen.Double[0, 30], Gen.Double[1.2, 8], Gen.Bool, Gen.Double[20, 2000]);
        pairs.Sample((diameter, angle, helix, size, isInternal, load) =>
        {
            var ratio = isInternal ? -size : size;
            var (working, baseHelix) = (angle * Degree, helix * Degree);
            var baseDiameter = diameter * Math.Cos(working);
            var curvature = LineContact.ReducedCurvatureAtPitchPoint(baseDiameter, ratio * baseDiameter, working) / Math.Cos(baseHelix);
            var pressure = LineContact.Pressure(load, curvature, ReducedModulus);
            var width = LineContact.HalfWidth(load, curvature, ReducedModulus);

            var depth = CaseDepth.ForContact(pressure, diameter, working, baseHelix, ratio, 66_000);

            return Math.Abs(depth - (width * ReducedModulus / 66_000)) < 1e-9 * depth;
        });
    }

    // A thread of gear engineers on a public page: the case is twice to three times as deep as the greatest shear. U_H is from memory; a
    // slip of a digit or of a unit would throw it far out of this band.
    [Theory]
    [InlineData(MaterialQuality.Ml, 3.0, 3.5)]
    [InlineData(MaterialQuality.Mq, 2.0, 2.5)]
    [InlineData(MaterialQuality.Me, 2.0, 2.5)]
    public void The_depth_is_two_to_three_times_that_of_the_greatest_shear(MaterialQuality quality, double least, double most)
    {
        // u so great that the mate is flat: ρ_red = ½·d_w1·sin α_wt. By Hertz b_H = 2·σ_H·ρ_red/E_r.
        var width = 1500 * 40 * Math.Sin(20 * Degree) / ReducedModulus;
        var shear = Enumerable.Range(1, 3000).Select(step => step * width / 1000).MaxBy(depth => Shear(depth / width));

        Assert.InRange(CaseDepth.ForContact(1500, 40, 20 * Degree, 0, 1e9, CaseDepth.ShearStrength(quality)) / shear, least, most);

        // Principal stresses below the middle of a line contact, as parts of p_H: Johnson, Contact Mechanics.
        static double Shear(double z)
        {
            var root = Math.Sqrt(1 + (z * z));
            return Math.Abs(((1 + (2 * z * z)) / root) - (2 * z) - (1 / root)) / 2;
        }
    }

    [Fact]
    public void An_internal_mate_asks_for_a_deeper_case() =>
        Gen.Double[1.1, 20].Sample(size =>
            CaseDepth.ForContact(1000, 30, 0.4, 0, -size, 66_000) > CaseDepth.ForContact(1000, 30, 0.4, 0, size, 66_000));

    [Fact]
    public void The_impossible_is_refused_with_a_reason()
    {
        Refusal.Says("the module must be above zero; it is 0", () => CaseDepth.Min(0));
        Refusal.Says("the module must be above zero; it is -1", () => CaseDepth.Most(-1));
        Refusal.Says("the tip is pointed: its thickness is 0 mm", () => CaseDepth.TipShare(0.3, 0));
        Refusal.Says("the gear ratio must be above zero, or below −1", () => CaseDepth.ForContact(1000, 30, 0.4, 0, -1, 66_000));
        Refusal.Says("U_H must be above zero", () => CaseDepth.ForContact(1000, 30, 0.4, 0, 3, 0));
        Refusal.Says("the working pressure angle must lie between", () => CaseDepth.ForContact(1000, 30, 0, 0, 3, 66_000));
        Refusal.Says("the contact stress must not be below zero; it is NaN", () => CaseDepth.ForContact(double.NaN, 30, 0.4, 0, 3, 66_000));
    }
}
