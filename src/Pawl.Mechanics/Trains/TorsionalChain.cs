namespace Pawl.Mechanics.Trains;

/// <summary>Natural frequencies of three masses on two springs, Hz.</summary>
/// <param name="First">The lower, with one node.</param>
/// <param name="Second">The higher, with two nodes.</param>
public readonly record struct TorsionalFrequencies(double First, double Second);

/// <summary>An excitation and the natural frequency that it comes nearest to.</summary>
/// <param name="Share">Distance of the two by the natural frequency.</param>
/// <param name="Speed">Index of the speed of the input.</param>
/// <param name="Order">Index of the order of the excitation.</param>
/// <param name="Natural">Index of the natural frequency.</param>
public readonly record struct NearestExcitation(double Share, int Speed, int Order, int Natural);

/// <summary>Free torsional vibration of motor, gearbox and load, all reduced to the input.</summary>
/// <remarks>
/// A first model: meshes, splines and keys as rigid, the gearbox as one mass between the spring of its input side and that of its output
/// side, no damping, no play.
/// </remarks>
public static class TorsionalChain
{
    /// <summary>Moment of inertia of a set of planets, reduced to the input, t·mm².</summary>
    /// <param name="count">Planets N of the set; 1 for a body on the common axis.</param>
    /// <param name="inertia">Moment of inertia J of one about its own axis, t·mm².</param>
    /// <param name="speedRatio">Its speed over that of the input.</param>
    /// <param name="mass">Mass m of one, t; 0 on the common axis.</param>
    /// <param name="orbitRadius">Radius a of its path, mm; 0 on the common axis.</param>
    /// <param name="carrierRatio">Speed of its carrier over that of the input.</param>
    /// <remarks>
    /// <code>J_red = N·(J·(ω/ω_in)² + m·a²·(ω_c/ω_in)²)</code>
    /// Source: equal kinetic energy, closed form.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Reduced(int count, double inertia, double speedRatio, double mass = 0, double orbitRadius = 0, double carrierRatio = 0)
    {
        var own = Guard.Positive(inertia, "the moment of inertia") * Math.Pow(Guard.Number(speedRatio, "the speed ratio"), 2);
        var path = Guard.NotNegative(mass, "the mass of a planet") * Math.Pow(Guard.NotNegative(orbitRadius, "the radius of the path", "mm"), 2)
            * Math.Pow(Guard.Number(carrierRatio, "the speed ratio of the carrier"), 2);
        return Guard.Finite(Guard.Count(count, 1, "the number of planets") * (own + path), "the reduced moment of inertia");
    }

    /// <summary>Stiffness of springs in a row, N·mm/rad.</summary>
    /// <remarks><code>1/k = Σ 1/k_i</code> Source: closed form.</remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double InSeries(IReadOnlyList<double> stiffnesses)
    {
        var compliance = 0.0;
        foreach (var stiffness in stiffnesses)
            compliance += 1 / Guard.Positive(stiffness, "a torsional stiffness");
        return compliance > 0 ? Guard.Finite(1 / compliance, "the torsional stiffness") : throw Guard.Because($"no torsional stiffness is known");
    }

    /// <summary>Natural frequencies of motor, gearbox and load, Hz.</summary>
    /// <param name="motor">Moment of inertia J_1, t·mm².</param>
    /// <param name="inputStiffness">Torsional stiffness k_1 between motor and gears, N·mm/rad.</param>
    /// <param name="gears">Moment of inertia J_2, t·mm².</param>
    /// <param name="outputStiffness">Torsional stiffness k_2 between gears and load, N·mm/rad.</param>
    /// <param name="load">Moment of inertia J_3, t·mm².</param>
    /// <remarks>
    /// <code>
    /// ω⁴ − (A + B)·ω² + k_1·k_2·(J_1 + J_2 + J_3)/(J_1·J_2·J_3) = 0,  A = k_1·(1/J_1 + 1/J_2),  B = k_2·(1/J_2 + 1/J_3),  f = ω/(2π)
    /// </code>
    /// Source: closed form; in every textbook of vibration, for instance Den Hartog, Mechanical Vibrations. The load may also be far
    /// heavier than the motor: the lower root is taken without a difference of near numbers.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static TorsionalFrequencies Frequencies(double motor, double inputStiffness, double gears, double outputStiffness, double load)
    {
        var (j1, j2, j3) = (Inertia(motor, "motor"), Inertia(gears, "gears"), Inertia(load, "load"));
        var k1 = Guard.Positive(inputStiffness, "the torsional stiffness of the input side");
        var k2 = Guard.Positive(outputStiffness, "the torsional stiffness of the output side");
        var (a, b, shared) = (k1 * (1 / j1 + 1 / j2), k2 * (1 / j2 + 1 / j3), k1 / j2 * (k2 / j2));
        var higher = (a + b + Math.Sqrt((a - b) * (a - b) + 4 * shared)) / 2;
        var lower = k1 / j1 * (k2 / j2 / j3) * (j1 + j2 + j3) / higher;
        return new(Guard.Finite(Math.Sqrt(lower) / Math.Tau, "the natural frequency"), Guard.Finite(Math.Sqrt(higher) / Math.Tau, "the natural frequency"));

        static double Inertia(double value, string of) => Guard.Positive(value, $"the moment of inertia of the {of}");
    }

    /// <summary>The excitation that comes nearest to a natural frequency.</summary>
    /// <param name="natural">Natural frequencies f, Hz.</param>
    /// <param name="speeds">Speeds ω of the input, rad/s.</param>
    /// <param name="orders">Orders o: vibrations a turn of the input, such as 1, 2 and the teeth that pass a mesh.</param>
    /// <remarks>
    /// <code>min |o·|ω|/(2π) − f| / f</code>
    /// Source: definition.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static NearestExcitation Nearest(IReadOnlyList<double> natural, IReadOnlyList<double> speeds, IReadOnlyList<double> orders)
    {
        var nearest = new NearestExcitation(double.PositiveInfinity, 0, 0, 0);
        for (var k = 0; k < natural.Count; k++)
        {
            var frequency = Guard.Positive(natural[k], "a natural frequency", "Hz");
            for (var s = 0; s < speeds.Count; s++)
            {
                for (var o = 0; o < orders.Count; o++)
                {
                    var excitation = Guard.NotNegative(orders[o], "an order") * Math.Abs(Guard.Number(speeds[s], "a speed")) / Math.Tau;
                    var share = Math.Abs(excitation - frequency) / frequency;
                    if (share < nearest.Share)
                        nearest = new(share, s, o, k);
                }
            }
        }

        return double.IsFinite(nearest.Share) ? nearest : throw Guard.Because($"no natural frequency, speed or order is given");
    }
}
