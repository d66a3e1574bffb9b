using System.Globalization;
using System.Text;

namespace Pawl.Rules.Expressions;

/// <summary>An expression as text of one spelling, to tell whether two say the same: without blanks, units and superfluous parentheses.</summary>
internal static class SyntaxText
{
    /// <summary>The text; that of the characters themselves where they are no expression.</summary>
    public static string Of(string expression) => ExpressionParser.Parse(expression, out _) is { } syntax ? Of(syntax) : expression;

    public static string Of(Syntax syntax)
    {
        var text = new StringBuilder();
        Write(text, syntax);
        return text.ToString();
    }

    private static void Write(StringBuilder text, Syntax syntax)
    {
        if (Constants.Of(syntax) is { } constant)
        {
            text.Append(constant.ToString("R", CultureInfo.InvariantCulture));
            return;
        }

        switch (syntax)
        {
            case Syntax.Name name:
                text.Append(name.Path);
                break;
            case Syntax.Text word:
                text.Append('\'').Append(word.Value).Append('\'');
                break;
            case Syntax.Truth truth:
                text.Append(truth.Value ? "true" : "false");
                break;
            case Syntax.Unary unary:
                text.Append('(').Append(unary.Operator.Text()).Append(' ');
                Write(text, unary.Operand);
                text.Append(')');
                break;
            case Syntax.Binary binary:
                text.Append('(');
                Write(text, binary.Left);
                text.Append(' ').Append(binary.Operator.Text()).Append(' ');
                Write(text, binary.Right);
                text.Append(')');
                break;
            case Syntax.Call call:
                text.Append(call.Function);
                Write(text, call.Arguments);
                break;
            case Syntax.In within:
                Write(text, within.Operand);
                text.Append(within.Negated ? " not in " : " in ");
                Write(text, within.Words);
                break;
        }
    }

    private static void Write(StringBuilder text, ImmutableArray<Syntax> list)
    {
        text.Append('(');
        for (var i = 0; i < list.Length; i++)
        {
            text.Append(i == 0 ? "" : ", ");
            Write(text, list[i]);
        }

        text.Append(')');
    }
}

/// <summary>The values of expressions that name no quantity.</summary>
internal static class Constants
{
    /// <summary>The value in coherent units, or null when a quantity or a function takes part.</summary>
    public static double? Of(Syntax syntax) => syntax switch
    {
        Syntax.Number number => number.Amount.Coherent,
        Syntax.Unary { Operator: Operator.Minus } negative => -Of(negative.Operand),
        Syntax.Binary binary when Of(binary.Left) is { } left && Of(binary.Right) is { } right => binary.Operator switch
        {
            Operator.Plus => left + right,
            Operator.Minus => left - right,
            Operator.Times => left * right,
            Operator.Divide => left / right,
            Operator.Power => Math.Pow(left, right),
            _ => null,
        },
        _ => null,
    };
}
