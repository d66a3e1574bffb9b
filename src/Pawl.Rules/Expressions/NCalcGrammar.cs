using System.Globalization;
using System.Text;
using NCalc;

namespace Pawl.Rules.Expressions;

/// <summary>Precedence and nesting, by NCalc. It sees placeholders for operands and decides nothing but the shape of the tree.</summary>
internal static class NCalcGrammar
{
    public static Syntax? Read(List<Token> tokens, int length, out ExpressionError? error)
    {
        try
        {
            var tree = LogicalExpressionParser.Parse(Placeholders(tokens), null!, CultureInfo.InvariantCulture, CancellationToken.None);
            error = null;
            return Convert(tree, tokens);
        }
#pragma warning disable CA1031 // The parser throws several kinds of exception; whatever it is, the text is no expression.
        catch (Exception thrown) when (thrown is not OutOfMemoryException)
#pragma warning restore CA1031
        {
            error = new(RuleCodes.ExpressionSyntax, 0, length, "This is no expression.", "Put parentheses around the parts.");
            return null;
        }
    }

    private static string Placeholders(List<Token> tokens)
    {
        var text = new StringBuilder();
        for (var i = 0; i < tokens.Count; i++)
        {
            if (tokens[i].IsOperand)
            {
                text.Append('p').Append(i);
            }
            else
            {
                text.Append(tokens[i] switch
                {
                    { Kind: TokenKind.Open } => "(",
                    { Kind: TokenKind.Close } => ")",
                    { Kind: TokenKind.Comma } => ",",
                    { Kind: TokenKind.Function } => $"f{i}",
                    { Operator: Operator.Power } => "**",
                    var sign => sign.Operator.Text(),
                });
            }

            text.Append(' ');
        }

        return text.ToString();
    }

    private static Syntax Convert(LogicalExpression node, List<Token> tokens)
    {
        switch (node)
        {
            case Identifier { Name: ['p', .. var index] }:
                return tokens[int.Parse(index, CultureInfo.InvariantCulture)].ToSyntax();
            case UnaryExpression { Type: UnaryExpressionType.Not } not:
                var denied = Convert(not.Expression, tokens);
                return new Syntax.Unary(Operator.Not, denied, denied.Start, denied.End);
            case UnaryExpression { Type: UnaryExpressionType.Negate } negate:
                var negated = Convert(negate.Expression, tokens);
                return new Syntax.Unary(Operator.Minus, negated, negated.Start, negated.End);
            case BinaryExpression { Type: BinaryExpressionType.In or BinaryExpressionType.NotIn } within:
                var operand = Convert(within.LeftExpression, tokens);
                var words = Words(within.RightExpression, tokens);
                var end = words.IsEmpty ? operand.End : words[^1].End;
                return new Syntax.In(operand, words, within.Type == BinaryExpressionType.NotIn, operand.Start, end);
            case BinaryExpression binary:
                return new Syntax.Binary(OperatorOf(binary.Type), Convert(binary.LeftExpression, tokens), Convert(binary.RightExpression, tokens));
            case Function { Identifier.Name: ['f', .. var index] } call:
                var token = tokens[int.Parse(index, CultureInfo.InvariantCulture)];
                var arguments = ImmutableArray.CreateBuilder<Syntax>(call.Parameters.Count);
                foreach (var argument in call.Parameters)
                    arguments.Add(Convert(argument, tokens));
                return new Syntax.Call(token.Value, arguments.DrainToImmutable(), token.Start, token.End);
            default:
                throw new InvalidOperationException($"No meaning for {node.GetType().Name}.");
        }
    }

    private static ImmutableArray<Syntax> Words(LogicalExpression list, List<Token> tokens)
    {
        if (list is not LogicalExpressionList several)
            return [Convert(list, tokens)];
        var words = ImmutableArray.CreateBuilder<Syntax>(several.Count);
        foreach (var word in several)
            words.Add(Convert(word, tokens));
        return words.DrainToImmutable();
    }

    private static Operator OperatorOf(BinaryExpressionType type) => type switch
    {
        BinaryExpressionType.Plus => Operator.Plus,
        BinaryExpressionType.Minus => Operator.Minus,
        BinaryExpressionType.Times => Operator.Times,
        BinaryExpressionType.Div => Operator.Divide,
        BinaryExpressionType.Exponentiation => Operator.Power,
        BinaryExpressionType.Equal => Operator.Equal,
        BinaryExpressionType.NotEqual => Operator.NotEqual,
        BinaryExpressionType.Lesser => Operator.Less,
        BinaryExpressionType.LesserOrEqual => Operator.LessOrEqual,
        BinaryExpressionType.Greater => Operator.Greater,
        BinaryExpressionType.GreaterOrEqual => Operator.GreaterOrEqual,
        BinaryExpressionType.And => Operator.And,
        BinaryExpressionType.Or => Operator.Or,
        _ => throw new InvalidOperationException($"No meaning for {type}."),
    };
}
