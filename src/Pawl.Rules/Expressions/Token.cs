using Pawl.Quantities;

namespace Pawl.Rules.Expressions;

internal enum TokenKind
{
    Name,
    Number,
    Text,
    Truth,
    Function,
    Operator,
    Open,
    Close,
    Comma,
}

/// <summary>A word of an expression.</summary>
internal readonly record struct Token(TokenKind Kind, int Start, int End)
{
    /// <summary>A name, a function's name, or a text without its quotes.</summary>
    public string Value { get; init; } = "";

    /// <summary>A number with its unit.</summary>
    public Amount Amount { get; init; }

    public bool Truth { get; init; }

    public Operator Operator { get; init; }

    public bool IsOperand => Kind is TokenKind.Name or TokenKind.Number or TokenKind.Text or TokenKind.Truth;

    public Syntax ToSyntax() => Kind switch
    {
        TokenKind.Name => new Syntax.Name(Value, Start, End),
        TokenKind.Number => new Syntax.Number(Amount, Start, End),
        TokenKind.Text => new Syntax.Text(Value, Start, End),
        TokenKind.Truth => new Syntax.Truth(Truth, Start, End),
        _ => throw new InvalidOperationException($"{Kind} is no operand."),
    };
}

/// <summary>Why a text is no expression.</summary>
/// <param name="Code">The diagnostic that it becomes.</param>
/// <param name="Start">First offending character.</param>
/// <param name="End">One past the last.</param>
/// <param name="Message">What is wrong, in a sentence.</param>
/// <param name="Hint">What to write instead, where known.</param>
internal sealed record ExpressionError(string Code, int Start, int End, string Message, string? Hint = null);
