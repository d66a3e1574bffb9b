namespace Pawl.Analysis.Core;

/// <summary>Puts a formula of the mechanics to quantities, argument by argument.</summary>
internal static class Derive
{
    public static Quantity From(QuantityKind kind, Quantity a, Func<double, double> formula) =>
        Quantity.Compute(kind, [a], x => formula(x[0]));

    public static Quantity From(QuantityKind kind, Quantity a, Quantity b, Func<double, double, double> formula) =>
        Quantity.Compute(kind, [a, b], x => formula(x[0], x[1]));

    public static Quantity From(QuantityKind kind, Quantity a, Quantity b, Quantity c, Func<double, double, double, double> formula) =>
        Quantity.Compute(kind, [a, b, c], x => formula(x[0], x[1], x[2]));

    public static Quantity From(
        QuantityKind kind, Quantity a, Quantity b, Quantity c, Quantity d, Func<double, double, double, double, double> formula) =>
        Quantity.Compute(kind, [a, b, c, d], x => formula(x[0], x[1], x[2], x[3]));

    public static Quantity From(
        QuantityKind kind, Quantity a, Quantity b, Quantity c, Quantity d, Quantity e,
        Func<double, double, double, double, double, double> formula) =>
        Quantity.Compute(kind, [a, b, c, d, e], x => formula(x[0], x[1], x[2], x[3], x[4]));

    public static Quantity From(
        QuantityKind kind, Quantity a, Quantity b, Quantity c, Quantity d, Quantity e, Quantity f,
        Func<double, double, double, double, double, double, double> formula) =>
        Quantity.Compute(kind, [a, b, c, d, e, f], x => formula(x[0], x[1], x[2], x[3], x[4], x[5]));
}
