using Pawl.Quantities;

namespace Pawl.Rules.Expressions;

/// <summary>A piece of an expression as written, by its place in the text.</summary>
internal abstract record Syntax(int Start, int End)
{
    public sealed record Name(string Path, int Start, int End) : Syntax(Start, End);

    public sealed record Number(Amount Amount, int Start, int End) : Syntax(Start, End);

    public sealed record Text(string Value, int Start, int End) : Syntax(Start, End);

    public sealed record Truth(bool Value, int Start, int End) : Syntax(Start, End);

    /// <summary><c>-x</c> or <c>not x</c>.</summary>
    public sealed record Unary(Operator Operator, Syntax Operand, int Start, int End) : Syntax(Start, End);

    public sealed record Binary(Operator Operator, Syntax Left, Syntax Right) : Syntax(Left.Start, Right.End);

    public sealed record Call(string Function, ImmutableArray<Syntax> Arguments, int Start, int End) : Syntax(Start, End);

    /// <summary><c>kind in ('internal', 'external')</c>.</summary>
    public sealed record In(Syntax Operand, ImmutableArray<Syntax> Words, bool Negated, int Start, int End) : Syntax(Start, End);
}

/// <summary>What joins pieces of an expression.</summary>
internal enum Operator
{
    None,
    Plus,
    Minus,
    Times,
    Divide,
    Power,
    Equal,
    NotEqual,
    Less,
    LessOrEqual,
    Greater,
    GreaterOrEqual,
    And,
    Or,
    Not,
    In,
    NotIn,
}

internal static class Operators
{
    public static bool IsComparison(this Operator op) => op is >= Operator.Equal and <= Operator.GreaterOrEqual;

    public static bool IsConnective(this Operator op) => op is Operator.And or Operator.Or;

    public static string Text(this Operator op) => op switch
    {
        Operator.Plus => "+",
        Operator.Minus => "-",
        Operator.Times => "*",
        Operator.Divide => "/",
        Operator.Power => "^",
        Operator.Equal => "==",
        Operator.NotEqual => "!=",
        Operator.Less => "<",
        Operator.LessOrEqual => "<=",
        Operator.Greater => ">",
        Operator.GreaterOrEqual => ">=",
        Operator.And => "and",
        Operator.Or => "or",
        Operator.Not => "not",
        Operator.In => "in",
        Operator.NotIn => "not in",
        _ => "",
    };
}
