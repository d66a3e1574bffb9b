using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Rules.Expressions;

/// <summary>The text of an expression and where it stands.</summary>
internal readonly record struct ExpressionSource(string Text, SourceSpan Span)
{
    public ExpressionSource(YamlScalar scalar)
        : this(scalar.Value, scalar.Span)
    {
    }

    /// <summary>The place of some characters; the whole scalar where quotes, folds or escapes move them.</summary>
    public SourceSpan SpanOf(int start, int end)
    {
        if (Span.Start.Line != Span.End.Line)
            return Span;
        var shift = Span.End.Column - Span.Start.Column - Text.Length;
        if (shift is not (0 or 2))
            return Span;

        var from = Span.Start.Column + (shift / 2);
        return Span with { Start = new(Span.Start.Line, from + start), End = new(Span.Start.Line, from + Math.Max(end, start)) };
    }
}
