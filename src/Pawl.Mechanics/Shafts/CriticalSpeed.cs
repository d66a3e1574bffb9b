using Pawl.Mechanics.Bearings;

namespace Pawl.Mechanics.Shafts;

/// <summary>A mass on a shaft.</summary>
/// <param name="Position">Place along the shaft, mm.</param>
/// <param name="Mass">Mass m, t (a kilogram is 0.001).</param>
public sealed record ShaftMass(double Position, double Mass);

/// <summary>A bearing that gives way.</summary>
/// <param name="Position">Place along the shaft, mm.</param>
/// <param name="Stiffness">Radial stiffness c, N/mm.</param>
public sealed record ShaftSpring(double Position, double Stiffness);

/// <summary>Speeds at which a shaft whirls in bending, rad/s.</summary>
/// <remarks>
/// Without the gyroscopic moment of discs, and with stiff bearings unless they are given as springs: soft housings whirl earlier. Keep well away.
/// </remarks>
public static class CriticalSpeed
{
    /// <summary>Critical speed with one mass alone.</summary>
    /// <remarks>
    /// <code>ω = 1/√(δ·m)</code>
    /// Symbols: δ deflection at the mass under 1 N there, mm/N; m mass, t.<br/>
    /// Source: oscillator of one mass.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Alone(double influence, double mass) =>
        1 / Math.Sqrt(Guard.Positive(influence, "the influence of the mass") * Guard.Positive(mass, "the mass"));

    /// <summary>Deflections at all masses under 1 N at each, mm/N.</summary>
    /// <param name="start">Where the first segment begins, mm.</param>
    /// <param name="segments">Segments of the shaft.</param>
    /// <param name="modulus">Modulus of elasticity E, MPa.</param>
    /// <param name="supports">Its two bearings.</param>
    /// <param name="masses">The masses.</param>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double[][] Influences(
        double start, IReadOnlyList<ShaftSegment> segments, double modulus,
        IReadOnlyList<ShaftSupport> supports, IReadOnlyList<ShaftMass> masses) =>
    [
        .. masses.Select(mass =>
        {
            var bent = BentShaft.Of(start, segments, modulus, supports, [new(mass.Position, 1, 0)]);
            return masses.Select(other => bent.DeflectionAt(other.Position).X).ToArray();
        }),
    ];

    /// <summary>Deflections at all masses under 1 N at each, mm/N, of a shaft whose two bearings give way.</summary>
    /// <param name="stiff">The same on stiff bearings, mm/N.</param>
    /// <param name="masses">The masses.</param>
    /// <param name="one">One bearing.</param>
    /// <param name="other">The other.</param>
    /// <remarks>
    /// <code>δ_ij = δ_ij,stiff + (1 − s_i)·(1 − s_j)/c_1 + s_i·s_j/c_2,  s = (z − z_1)/(z_2 − z_1)</code>
    /// Source: statics; a shaft on two bearings is determinate, so that bending and tilt on the springs add.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double[][] OnSprings(
        IReadOnlyList<double[]> stiff, IReadOnlyList<ShaftMass> masses, ShaftSpring one, ShaftSpring other)
    {
        var (c1, c2) = (Guard.Positive(one.Stiffness, "the stiffness of a bearing"), Guard.Positive(other.Stiffness, "the stiffness of a bearing"));
        var distance = Guard.NotZero(Guard.Number(other.Position, "the place of a bearing") - Guard.Number(one.Position, "the place of a bearing"), "the distance of the bearings");
        double[] shares = [.. masses.Select(mass => (mass.Position - one.Position) / distance)];
        return [.. stiff.Select((row, i) => row.Select((influence, j) => influence + (1 - shares[i]) * (1 - shares[j]) / c1 + shares[i] * shares[j] / c2).ToArray())];
    }

    /// <summary>Lowest critical speed of the masses together.</summary>
    /// <param name="influences">Deflections at all masses under 1 N at each, mm/N.</param>
    /// <param name="masses">Masses m, t.</param>
    /// <remarks>
    /// <code>u ← (δ_ij·m_j)·u, scaled, until it keeps its shape;  ω² = u/(δ·m·u)</code>
    /// Source: Stodola's iteration; exact for masses at points.<br/>
    /// Valid for: any place of the masses, overhung ones as well; lumps of the shaft's own mass are masses.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Lowest(IReadOnlyList<double[]> influences, IReadOnlyList<double> masses)
    {
        var count = masses.Count;
        if (count == 0 || influences.Count != count)
            throw Guard.Because($"a critical speed needs at least one mass, and an influence for every one");

        // No start that could be square to the lowest shape: the matrix is symmetric but for the masses, and squared it is positive.
        var shape = Enumerable.Range(0, count).Select(index => 1 + 0.37 * index).ToArray();
        var last = 0.0;
        for (var round = 0; round < 100_000; round++)
        {
            var next = new double[count];
            double along = 0, own = 0;
            for (var row = 0; row < count; row++)
            {
                for (var column = 0; column < count; column++)
                    next[row] += influences[row][column] * Guard.Positive(masses[column], "the mass") * shape[column];
                along += masses[row] * next[row] * shape[row];
                own += masses[row] * shape[row] * shape[row];
            }

            var quotient = Guard.Positive(along / own, "the influence of the masses");
            var norm = Math.Sqrt(next.Sum(value => value * value));
            shape = [.. next.Select(value => value / norm)];
            if (Math.Abs(quotient - last) <= 1e-14 * quotient)
                return 1 / Math.Sqrt(quotient);
            last = quotient;
        }

        throw Guard.Because($"no critical speed: two shapes of whirl lie too close together to part them");
    }

    /// <summary>The shaft's own mass as masses at points.</summary>
    /// <param name="start">Where the first segment begins, mm.</param>
    /// <param name="segments">Segments of the shaft.</param>
    /// <param name="density">Density ρ, t/mm³: 7.85e-9 for steel.</param>
    /// <param name="slice">Greatest length of a slice, mm.</param>
    /// <remarks>
    /// <code>m = ρ·A·l/n in the middle of each of n slices</code>
    /// Source: lumped masses.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static ImmutableArray<ShaftMass> OwnMass(double start, IReadOnlyList<ShaftSegment> segments, double density, double slice)
    {
        Guard.Positive(slice, "the length of a slice");
        var masses = ImmutableArray.CreateBuilder<ShaftMass>();
        var from = Guard.Number(start, "the start of the shaft", "mm");
        foreach (var (length, section) in segments)
        {
            var count = (int)Math.Min(1000, Math.Ceiling(Guard.Positive(length, "the length of a segment") / slice));
            for (var index = 0; index < count; index++)
                masses.Add(new(from + length * (index + 0.5) / count, Guard.Positive(density, "the density") * section.Area * length / count));
            from += length;
        }

        return masses.ToImmutable();
    }
}
