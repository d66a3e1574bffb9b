namespace Pawl.Rules.Expressions;

/// <summary>Expressions whose meaning does not hang on precedence.</summary>
internal static class SimpleForms
{
    public static Syntax? Read(List<Token> tokens) => Part(tokens, 0, tokens.Count) ?? Chain(tokens);

    private static Syntax? Part(List<Token> tokens, int from, int to) => (to - from) switch
    {
        1 when tokens[from].IsOperand => tokens[from].ToSyntax(),
        2 when tokens[from] is { Kind: TokenKind.Operator } sign && tokens[from + 1].IsOperand =>
            new Syntax.Unary(sign.Operator, tokens[from + 1].ToSyntax(), sign.Start, tokens[from + 1].End),
        3 when tokens[from + 1] is { Kind: TokenKind.Operator, Operator: not (Operator.In or Operator.NotIn) } op
            && tokens[from].IsOperand && tokens[from + 2].IsOperand =>
            new Syntax.Binary(op.Operator, tokens[from].ToSyntax(), tokens[from + 2].ToSyntax()),
        4 when tokens[from].Kind == TokenKind.Function && tokens[from + 2].IsOperand && tokens[from + 3].Kind == TokenKind.Close =>
            new Syntax.Call(tokens[from].Value, [tokens[from + 2].ToSyntax()], tokens[from].Start, tokens[from + 3].End),
        6 when tokens[from].Kind == TokenKind.Function && tokens[from + 2].IsOperand && tokens[from + 3].Kind == TokenKind.Comma
            && tokens[from + 4].IsOperand && tokens[from + 5].Kind == TokenKind.Close =>
            new Syntax.Call(
                tokens[from].Value, [tokens[from + 2].ToSyntax(), tokens[from + 4].ToSyntax()], tokens[from].Start, tokens[from + 5].End),
        _ => null,
    };

    private static Syntax? Chain(List<Token> tokens)
    {
        Syntax? chain = null;
        var connective = Operator.None;
        var from = 0;
        for (var i = 0; i <= tokens.Count; i++)
        {
            if (i < tokens.Count && !(tokens[i].Kind == TokenKind.Operator && tokens[i].Operator.IsConnective()))
                continue;
            if (i < tokens.Count)
            {
                if (connective != Operator.None && connective != tokens[i].Operator)
                    return null;
                connective = tokens[i].Operator;
            }

            if (Part(tokens, from, i) is not { } part)
                return null;
            chain = chain is null ? part : new Syntax.Binary(connective, chain, part);
            from = i + 1;
        }

        return chain;
    }
}
