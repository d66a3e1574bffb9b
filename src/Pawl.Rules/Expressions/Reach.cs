using Pawl.Analysis.Core;

namespace Pawl.Rules.Expressions;

/// <summary>Between which values an expression lies, whatever the subject: what its functions and quantities say of themselves.</summary>
/// <param name="Min">Least, in coherent units; minus infinity when nothing bounds it.</param>
/// <param name="Max">Greatest.</param>
internal readonly record struct Reach(double Min, double Max)
{
    private static readonly Reach All = new(double.NegativeInfinity, double.PositiveInfinity);
    private static readonly Reach NotNegative = new(0, double.PositiveInfinity);

    public static Reach Of(SubjectKind kind, Syntax syntax)
    {
        if (Constants.Of(syntax) is { } constant)
            return double.IsNaN(constant) ? All : new(constant, constant);
        switch (syntax)
        {
            case Syntax.Name name:
                return Paths.TryFind(kind, name.Path) is { Kind.IsNeverNegative: true } ? NotNegative : All;
            case Syntax.Unary { Operator: Operator.Minus } negative:
                var operand = Of(kind, negative.Operand);
                return new(-operand.Max, -operand.Min);
            case Syntax.Binary binary:
                return Of(binary, Of(kind, binary.Left), Of(kind, binary.Right));
            case Syntax.Call call:
                return Of(call.Function, [.. call.Arguments.Select(argument => Of(kind, argument))]);
            default:
                return All;
        }
    }

    private static Reach Of(Syntax.Binary binary, Reach left, Reach right)
    {
        switch (binary.Operator)
        {
            case Operator.Plus:
                return new(left.Min + right.Min, left.Max + right.Max);
            case Operator.Minus:
                return new(left.Min - right.Max, left.Max - right.Min);
            case Operator.Times when SyntaxText.Of(binary.Left) == SyntaxText.Of(binary.Right):
                return NotNegative;
            case Operator.Times or Operator.Divide when left.Min >= 0 && right.Min >= 0:
                return NotNegative;
            case Operator.Power when right.Min == right.Max && right.Min % 2 == 0:
                return NotNegative;
            case Operator.Power when left.Min >= 0:
                return NotNegative;
            default:
                return All;
        }
    }

    private static Reach Of(string function, ImmutableArray<Reach> arguments) => function switch
    {
        "abs" or "sqrt" => NotNegative,
        "sin" or "cos" => new(-1, 1),
        "min" => new(arguments.Min(a => a.Min), arguments.Min(a => a.Max)),
        "max" => new(arguments.Max(a => a.Min), arguments.Max(a => a.Max)),
        "round" or "floor" or "nominal" when arguments is [{ Min: >= 0 }] => NotNegative,
        _ => All,
    };
}
