using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Rules.Expressions;

/// <summary>Sums, products and powers, with their dimensions.</summary>
internal sealed partial class Binder
{
    private Bound.Number? Arithmetic(Syntax.Binary syntax, List<QuantityPath> scope)
    {
        var (left, right) = (Number(syntax.Left, scope), Number(syntax.Right, scope));
        if (left is null || right is null)
            return null;
        return syntax.Operator switch
        {
            Operator.Plus or Operator.Minus => Sum(syntax, left, right),
            Operator.Power => Power(syntax, left, right),
            _ => Product(syntax, left, right),
        };
    }

    private Bound.Number? Sum(Syntax.Binary syntax, Bound.Number left, Bound.Number right)
    {
        var minus = syntax.Operator == Operator.Minus;
        var dimension = (left.Dimension.IsPoint, right.Dimension.IsPoint) switch
        {
            // 80 °C − 20 °C is a difference; 20 °C + 60 K is a point.
            (true, true) when minus => left.Dimension with { IsPoint = false },
            (true, false) when left.Dimension with { IsPoint = false } == right.Dimension => left.Dimension,
            (false, true) when !minus && right.Dimension with { IsPoint = false } == left.Dimension => right.Dimension,
            (false, false) when left.FitsWith(right) => left.Dimension,
            _ => (Dimension?)null,
        };
        if (dimension is not { } found)
        {
            report(RuleDiagnostics.Dimension(Span(syntax), minus ? "`-` takes from" : "`+` adds to", left.Dimension, right.Dimension));
            return null;
        }

        var (a, b) = (left.Formula, right.Formula);
        return Combined(syntax, minus ? x => a(x) - b(x) : x => a(x) + b(x), found, left, right);
    }

    private Bound.Number? Product(Syntax.Binary syntax, Bound.Number left, Bound.Number right)
    {
        if (IsPoint(left) || IsPoint(right))
            return null;

        var times = syntax.Operator == Operator.Times;
        if (!Exponents.TryCombine(left.Dimension, right.Dimension, times ? 1 : -1, MostExponent, out var dimension))
        {
            Report(syntax, "The dimension of this product has no meaning.", null, RuleCodes.DimensionMismatch);
            return null;
        }

        var (a, b) = (left.Formula, right.Formula);
        var mixes = times
            ? (left.Dimension.Angle != 0 && right.Dimension != Dimension.Ratio) || (right.Dimension.Angle != 0 && left.Dimension != Dimension.Ratio)
            : right.Dimension.Angle != 0;
        var product = Combined(syntax, times ? x => a(x) * b(x) : x => a(x) / b(x), dimension, left, right);
        return product with { IsLoose = product.IsLoose || mixes };
    }

    private Bound.Number? Power(Syntax.Binary syntax, Bound.Number left, Bound.Number right)
    {
        if (IsPoint(left))
            return null;
        if (right is not { Constant: { } power } || right.Dimension != Dimension.Ratio || power != Math.Floor(power) || Math.Abs(power) > 9)
        {
            Report(syntax.Right, "An exponent is a whole number from -9 to 9.", "For a root write `sqrt(…)`.", RuleCodes.ExpressionSyntax);
            return null;
        }

        if (!Exponents.TryCombine(Dimension.Ratio, left.Dimension, (int)power, MostExponent, out var dimension))
        {
            Report(syntax, "The dimension of this power has no meaning.", null, RuleCodes.DimensionMismatch);
            return null;
        }

        var a = left.Formula;
        return Combined(syntax, x => Math.Pow(a(x), power), dimension, left, right);
    }

    /// <summary>A number made of two; folded at once when both are constants.</summary>
    private static Bound.Number Combined(Syntax syntax, Formula formula, Dimension dimension, Bound.Number left, Bound.Number right)
    {
        var shown = left.Dimension == dimension && left.Unit is not null && left.Constant is null ? left
            : right.Dimension == dimension && right.Unit is not null ? right
            : left;
        var constant = left.Constant is not null && right.Constant is not null ? formula([]) : (double?)null;
        return new(syntax, constant is { } value ? Constant(value) : formula, dimension)
        {
            IsLoose = left.IsLoose || right.IsLoose,
            Constant = constant,
            Unit = shown.Dimension == dimension ? shown.Unit : null,
            Scale = shown.Dimension == dimension ? shown.Scale : 1,
        };
    }
}
