using Pawl.Analysis.Core;

namespace Pawl.Rules.Judging;

/// <summary>The margin of a value against one limit.</summary>
/// <param name="Share">Signed share of the limit at the worst case.</param>
/// <param name="Worst">The end of the value that it is taken at, coherent; null for a value without tolerances, and where no one end governs.</param>
/// <param name="Distance">The margin as a distance, coherent, where the limit is zero and a share of it says nothing.</param>
internal readonly record struct Margin(double Share, double? Worst, double? Distance);

/// <summary>The signed distance of a value from its limit, as a fraction of the limit, at the worst case.</summary>
/// <remarks>
/// <code>lower: m = (v − l)/|l|; upper: m = (l − v)/|l|; equal: m = −|v − l|/|l|</code>
/// Symbols: v value; l limit; where l = 0 the quantity's declared scale stands for |l|. Zero is on the limit, negative fails.<br/>
/// Source: definition.<br/>
/// Valid for: a limit that depends on toleranced inputs is compared at every corner of the tolerances, together with the value.
/// </remarks>
internal static class Margins
{
    /// <summary>70.000 − 69.990 is not quite 0.010 in binary; a part exactly at its limit passes.</summary>
    private const double Nothing = 1e-9;

    private static readonly QuantityKind Kind = new() { Name = "margin", Title = "Margin" };

    public static double Snap(double margin) => Math.Abs(margin) < Nothing ? 0 : margin;

    /// <summary>The worst margin above a least value; null when some corner has none.</summary>
    public static Margin? Above(Quantity value, Quantity limit, double scale) =>
        limit.Value.IsExact
            ? At(value, value.Value.Min, limit, value.Value.Min - limit.Value.Nominal, scale)
            : Worst(value, limit, x => Fraction(x[0] - x[1], x[1], scale), value.Value.Min, limit.Value.Max, scale);

    /// <summary>The worst margin below a greatest value; null when some corner has none.</summary>
    public static Margin? Below(Quantity value, Quantity limit, double scale) =>
        limit.Value.IsExact
            ? At(value, value.Value.Max, limit, limit.Value.Nominal - value.Value.Max, scale)
            : Worst(value, limit, x => Fraction(x[1] - x[0], x[1], scale), value.Value.Max, limit.Value.Min, scale);

    /// <summary>Zero where value and limit agree, negative elsewhere; null when some corner has none.</summary>
    public static Margin? Equal(Quantity value, Quantity limit, double scale)
    {
        if (!limit.Value.IsExact)
            return Worst(value, limit, x => -Math.Abs(Fraction(x[0] - x[1], x[1], scale)), double.NaN, double.NaN, scale);
        var (low, high, wanted) = (value.Value.Min, value.Value.Max, limit.Value.Nominal);
        var end = high - wanted >= wanted - low ? high : low;
        return At(value, end, limit, -Math.Abs(end - wanted), scale);
    }

    private static Margin At(Quantity value, double end, Quantity limit, double distance, double scale)
    {
        var share = Snap(Fraction(distance, limit.Value.Nominal, scale));
        double? absolute = limit.Value.Nominal != 0 ? null : share == 0 ? 0 : distance;
        return new(share, value.Value.IsExact ? null : end, absolute);
    }

    /// <summary>Over all corners; the end is told where value and limit are at their worst together.</summary>
    private static Margin? Worst(Quantity value, Quantity limit, Formula margin, double end, double against, double scale)
    {
        if (Quantity.Compute(Kind, [value, limit], margin) is not { IsEvaluated: true } worst)
            return null;
        var share = Snap(worst.Value.Min);
        var together = Fraction(-Math.Abs(end - against), against, scale);
        return new(share, !value.Value.IsExact && Math.Abs(Math.Abs(together) - Math.Abs(share)) <= Nothing * (1 + Math.Abs(share)) ? end : null, null);
    }

    private static double Fraction(double distance, double limit, double scale) => distance / (limit == 0 ? scale : Math.Abs(limit));
}
