using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using Pawl.Mechanics.Trains;

namespace Pawl.Mechanics.Tests.Trains;

/// <summary>Torsional vibration of motor, gears and load.</summary>
public class TorsionalChainTests
{
    // kg·m² in t·mm² and N·m/rad in N·mm/rad are the same number.
    private const double Kilo = 1e3;

    // Khurmi and Gupta, Theory of Machines, chapter on torsional vibrations, engine, flywheel and pump: 0.15, 0.3 and 0.09 kg·m² on a shaft of
    // 70 mm, 1.5 m and 1 m between them, G = 84 GPa: 171 Hz with one node, 277 Hz with two. The task stands in public lectures; the answers are
    // from memory, to 1 Hz.
    [Fact]
    public void Engine_flywheel_and_pump_of_a_textbook()
    {
        var rigidity = 84_000 * Math.PI / 32 * Math.Pow(70, 4);

        var found = TorsionalChain.Frequencies(0.15 * Kilo, rigidity / 1500, 0.3 * Kilo, rigidity / 1000, 0.09 * Kilo);

        Assert.Equal(171, found.First, 0.5);
        Assert.Equal(277, found.Second, 0.5);
    }

    // Same book: a motor of 400 kg·m² drives an impeller of 1500 kg·m² at a third of its speed, through gears without mass; shafts of 60 mm by
    // 300 mm and 100 mm by 600 mm, G = 84 GPa: 4.8 Hz. From memory, to 0.1 Hz.
    [Fact]
    public void Geared_motor_and_pump_of_a_textbook()
    {
        const double Third = 1 / 3.0;
        var motorShaft = 84_000 * Math.PI / 32 * Math.Pow(60, 4) / 300;
        var impellerShaft = 84_000 * Math.PI / 32 * Math.Pow(100, 4) / 600;

        var found = TorsionalChain.Frequencies(
            400 * Kilo, motorShaft, 1e-6 * Kilo, impellerShaft * Third * Third, TorsionalChain.Reduced(1, 1500 * Kilo, Third));

        Assert.Equal(4.8, found.First, 0.05);
    }

    // Two equal masses at the ends of equal springs: ω₁² = k/J (the middle stands still), ω₂² = k·(1/J + 2/J_2). Closed form.
    [Fact]
    public void A_symmetric_chain_has_roots_without_a_quadratic()
    {
        var found = TorsionalChain.Frequencies(2, 50, 3, 50, 2);

        Assert.Equal(Math.Sqrt(50 / 2.0) / Math.Tau, found.First, 1e-12);
        Assert.Equal(Math.Sqrt(50 * (1 / 2.0 + 2 / 3.0)) / Math.Tau, found.Second, 1e-12);
    }

    // Two masses on one spring: ω² = k·(1/J_1 + 1/J_2). A third mass on a spring too soft to matter leaves it as it is.
    [Fact]
    public void A_load_on_a_very_soft_spring_leaves_motor_and_gears_to_themselves() =>
        Assert.Equal(Math.Sqrt(80 * (1 / 5.0 + 1 / 2.0)) / Math.Tau, TorsionalChain.Frequencies(5, 80, 2, 1e-9, 7).Second, 1e-9);

    // The lower root must survive a load that is heavier than the motor by many powers of ten: then motor and gears swing on two springs
    // against a wall: J₁·J₂·ω⁴ − (k₁·J₂ + (k₁ + k₂)·J₁)·ω² + k₁·k₂ = 0.
    [Fact]
    public void A_load_without_end_is_a_wall()
    {
        var found = TorsionalChain.Frequencies(3, 40, 2, 60, 1e18);

        foreach (var square in new[] { Math.Pow(found.First * Math.Tau, 2), Math.Pow(found.Second * Math.Tau, 2) })
            Assert.Equal(0, 3 * 2 * square * square - (40 * 2 + (40 + 60) * 3) * square + 40 * 60, 1e-8);
    }

    // Math.NET Numerics: eigenvalues of M^−½·K·M^−½, the first of which is the free turning.
    [Fact]
    public void Random_chains_have_the_eigenvalues_of_a_library()
    {
        var positive = Gen.Double[-3, 3].Select(static exponent => Math.Pow(10, exponent));
        Gen.Select(positive, positive, positive, positive, positive).Sample((j1, k1, j2, k2, j3) =>
        {
            var found = TorsionalChain.Frequencies(j1, k1, j2, k2, j3);

            var (r1, r2, r3) = (Math.Sqrt(j1), Math.Sqrt(j2), Math.Sqrt(j3));
            var eigenvalues = Matrix<double>.Build.DenseOfArray(new[,]
            {
                { k1 / j1, -k1 / (r1 * r2), 0 },
                { -k1 / (r1 * r2), (k1 + k2) / j2, -k2 / (r2 * r3) },
                { 0, -k2 / (r2 * r3), k2 / j3 },
            }).Evd(Symmetricity.Symmetric).EigenValues.Select(static value => value.Real).Order().ToArray();

            // The library loses the small ones beside the greatest.
            var room = 1e-12 * eigenvalues[2];
            Assert.Equal(eigenvalues[1], Math.Pow(found.First * Math.Tau, 2), room);
            Assert.Equal(eigenvalues[2], Math.Pow(found.Second * Math.Tau, 2), room);
        }, iter: 500);
    }

    // Kinetic energy of three planets of J and m at radius a: ½·3·(J·ω² + m·a²·ω_c²), with ω = −2 and ω_c = ½ of the input: 3·(4·4 + 0.5·100·0.25).
    [Fact]
    public void Planets_count_with_their_spin_and_their_path() =>
        Assert.Equal(3 * (16 + 12.5), TorsionalChain.Reduced(3, 4, -2, 0.5, 10, 0.5), 1e-12);

    [Fact]
    public void Springs_in_a_row_are_softer_than_the_softest() =>
        Assert.Equal(1 / (1 / 3.0 + 1 / 6.0), TorsionalChain.InSeries([3, 6]), 1e-12);

    // 100 Hz at 6000 1/min; the double is 200 Hz: 210 Hz is 10/210 away, the first order of 3000 1/min 40/90 from 90 Hz.
    [Fact]
    public void The_nearest_excitation_is_found_over_speeds_and_orders()
    {
        var turn = Math.Tau * 50;

        var nearest = TorsionalChain.Nearest([90, 210], [turn, -2 * turn], [1, 2]);

        Assert.Equal(10 / 210.0, nearest.Share, 1e-12);
        Assert.Equal((1, 1, 1), (nearest.Speed, nearest.Order, nearest.Natural));
    }

    [Fact]
    public void Nothing_to_compare_is_told() =>
        Assert.Contains("no natural frequency", Assert.Throws<OutsideValidityException>(() => TorsionalChain.Nearest([], [1], [1])).Message, StringComparison.Ordinal);

    [Fact]
    public void No_spring_is_told() => Assert.Throws<OutsideValidityException>(() => TorsionalChain.InSeries([]));
}
