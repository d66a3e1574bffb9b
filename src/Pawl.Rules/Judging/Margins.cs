using Pawl.Analysis.Core;

namespace Pawl.Rules.Judging;

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

    private static readonly QuantityKind Margin = new() { Name = "margin", Title = "Margin" };

    public static double Snap(double margin) => Math.Abs(margin) < Nothing ? 0 : margin;

    /// <summary>The worst margin above a least value; null when some corner has none.</summary>
    public static double? Above(Quantity value, Quantity limit, double scale) =>
        limit.Value.IsExact
            ? Snap(Fraction(value.Value.Min - limit.Value.Nominal, limit.Value.Nominal, scale))
            : Worst(value, limit, x => Fraction(x[0] - x[1], x[1], scale));

    /// <summary>The worst margin below a greatest value; null when some corner has none.</summary>
    public static double? Below(Quantity value, Quantity limit, double scale) =>
        limit.Value.IsExact
            ? Snap(Fraction(limit.Value.Nominal - value.Value.Max, limit.Value.Nominal, scale))
            : Worst(value, limit, x => Fraction(x[1] - x[0], x[1], scale));

    /// <summary>Zero where value and limit agree, negative elsewhere; null when some corner has none.</summary>
    public static double? Equal(Quantity value, Quantity limit, double scale) =>
        Worst(value, limit, x => -Math.Abs(Fraction(x[0] - x[1], x[1], scale)));

    private static double? Worst(Quantity value, Quantity limit, Formula margin) =>
        Quantity.Compute(Margin, [value, limit], margin) is { IsEvaluated: true } worst ? Snap(worst.Value.Min) : null;

    private static double Fraction(double distance, double limit, double scale) => distance / (limit == 0 ? scale : Math.Abs(limit));
}
