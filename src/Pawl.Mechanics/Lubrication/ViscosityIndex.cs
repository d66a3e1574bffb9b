using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Lubrication;

/// <summary>How little an oil thins with warmth, and the viscosity at 100 °C that follows from it.</summary>
/// <remarks>Source: ASTM D2270, ISO 2909; table <c>astm-d2270-coefficients</c>.</remarks>
public static class ViscosityIndex
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "astm-d2270-coefficients";

    private static Piece[]? _pieces;

    /// <summary>Viscosity index VI, 1.</summary>
    /// <remarks>
    /// <code>
    /// U ≥ H: VI = 100 · (L − U)/(L − H)
    /// U &lt; H: VI = 100 + (10^N − 1)/0.00715, N = lg(H/U)/lg Y
    /// </code>
    /// Symbols: U, Y kinematic viscosity at 40 °C and 100 °C; L, H viscosity at 40 °C of oils of index 0 and 100 and the same Y, both
    /// mm²/s, quadratic in Y.<br/>
    /// Source: ASTM D2270, procedures A and B.<br/>
    /// Valid for: Y of 2 mm²/s and above. L and H are taken from quadratics that fit the table of the standard within 0.2 %.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Of(double viscosity40, double viscosity100)
    {
        if (!(viscosity100 < Guard.Positive(viscosity40, "the viscosity at 40 °C", "mm²/s")))
        {
            throw Guard.Because(
                $"an oil thins as it warms: {viscosity40:0.###} mm²/s at 40 °C and {viscosity100:0.###} mm²/s at 100 °C do not fit");
        }

        var (low, high) = References(viscosity100);
        if (viscosity40 >= high)
            return 100 * (low - viscosity40) / (low - high);
        var exponent = Math.Log10(high / viscosity40) / Math.Log10(viscosity100);
        return 100 + (Math.Pow(10, exponent) - 1) / 0.00715;
    }

    /// <summary>Kinematic viscosity at 100 °C of an oil of which the index is stated, mm²/s.</summary>
    /// <remarks>
    /// <code>VI(ν₄₀, ν₁₀₀) = VI, solved for ν₁₀₀ by halving</code>
    /// Symbols: ν₄₀, ν₁₀₀ kinematic viscosity at 40 °C and 100 °C, mm²/s; VI viscosity index, 1.<br/>
    /// Source: as <see cref="Of"/>.<br/>
    /// Valid for: indices from 0 to 400, ν₁₀₀ of 2 mm²/s and above.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double KinematicAt100(double viscosity40, double index)
    {
        var (low, high) = (Viscosity.MinKinematic, Guard.Positive(viscosity40, "the viscosity at 40 °C"));
        if (index is not (>= 0 and <= 400) || high <= low || Of(high, low) > index)
        {
            throw Guard.Because(
                $"no viscosity at 100 °C: an index of {index:0.#} and {viscosity40:0.###} mm²/s at 40 °C do not lead to 2 mm²/s or more");
        }

        for (var round = 0; round < 100 && high - low > 1e-12 * high; round++)
        {
            var middle = (low + high) / 2;
            if (middle < viscosity40 && Of(viscosity40, middle) <= index)
                low = middle;
            else
                high = middle;
        }

        return low;
    }

    /// <summary>L and H: viscosity at 40 °C of the oils of index 0 and 100 with this viscosity at 100 °C, mm²/s.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static (double Low, double High) References(double viscosity100)
    {
        var pieces = _pieces ??= Read();
        for (var index = pieces.Length - 1; index >= 0; index--)
        {
            if (viscosity100 >= pieces[index].From && double.IsFinite(viscosity100))
                return pieces[index].At(viscosity100);
        }

        throw Guard.Because(
            $"no viscosity index: it is defined from 2 mm²/s at 100 °C up; here it is {viscosity100:0.###} mm²/s");
    }

    private static Piece[] Read()
    {
        var pieces = new List<Piece>(16);
        var rows = StandardTable.Read(TableId).Rows();
        while (rows.NextRow())
        {
            pieces.Add(new Piece(
                rows.NextNumber(), rows.NextNumber(), rows.NextNumber(), rows.NextNumber(),
                rows.NextNumber(), rows.NextNumber(), rows.NextNumber()));
        }

        return [.. pieces];
    }

    private sealed record Piece(double From, double A, double B, double C, double D, double E, double F)
    {
        public (double Low, double High) At(double y) => ((A * y + B) * y + C, (D * y + E) * y + F);
    }
}
