namespace Pawl.Rules.Expressions;

/// <summary>Turns the text of an expression into a tree.</summary>
/// <remarks>
/// Most rules need no grammar: a name, an amount, one operator between two of them, a function of them, or comparisons joined by
/// one and the same connective. These are read here. Everything else goes to NCalc, whose first use costs about 24 ms.
/// </remarks>
internal static class ExpressionParser
{
    private const int MostTokens = 120;
    private const int MostDepth = 16;

    public static Syntax? Parse(string text, out ExpressionError? error)
    {
        if (Tokeniser.Read(text, out error) is not { } tokens)
            return null;
        error = Check(tokens, text.Length);
        if (error is not null)
            return null;
        return SimpleForms.Read(tokens) ?? NCalcGrammar.Read(tokens, text.Length, out error);
    }

    /// <summary>Whether words follow each other as they may; finds the place that is wrong, which the grammar cannot.</summary>
    internal static ExpressionError? Check(List<Token> tokens, int length)
    {
        if (tokens.Count == 0)
            return Error(0, length, "The expression is empty.", "Give a quantity, an amount, or a formula of them.");
        if (tokens.Count > MostTokens)
        {
            return new(
                RuleCodes.ExpressionTooLong, tokens[MostTokens].Start, length,
                $"The expression has {tokens.Count} words; {MostTokens} are read at most.", "Let the analysis compute a quantity and name that.");
        }

        var open = new Stack<Token>();
        var wantsOperand = true;
        for (var i = 0; i < tokens.Count; i++)
        {
            var token = tokens[i];
            if (wantsOperand)
            {
                switch (token)
                {
                    case { IsOperand: true }:
                        wantsOperand = false;
                        continue;
                    case { Kind: TokenKind.Function } or { Kind: TokenKind.Operator, Operator: Operator.Not or Operator.Minus }:
                        continue;
                    case { Kind: TokenKind.Open }:
                        open.Push(token);
                        if (open.Count > MostDepth)
                        {
                            return new(
                                RuleCodes.ExpressionTooLong, token.Start, token.End,
                                $"Parentheses are nested deeper than {MostDepth} levels.", "Let the analysis compute a quantity and name that.");
                        }

                        continue;
                    default:
                        return Error(token.Start, token.End, "A value is missing before this.", null);
                }
            }

            switch (token.Kind)
            {
                case TokenKind.Operator when token.Operator != Operator.Not:
                case TokenKind.Comma when open.Count > 0:
                    wantsOperand = true;
                    continue;
                case TokenKind.Close when open.Count > 0:
                    open.Pop();
                    continue;
                case TokenKind.Close:
                    return Error(token.Start, token.End, "This parenthesis was not opened.", null);
                default:
                    return Error(token.Start, token.End, "An operator is missing before this.", token.IsOperand ? "A text stands in quotes: 'internal'." : null);
            }
        }

        if (wantsOperand)
            return Error(tokens[^1].Start, tokens[^1].End, "A value is missing after this.", null);
        return open.TryPeek(out var unclosed) ? Error(unclosed.Start, unclosed.End, "This parenthesis is not closed.", null) : null;
    }

    private static ExpressionError Error(int start, int end, string message, string? hint) =>
        new(RuleCodes.ExpressionSyntax, start, end, message, hint);
}
