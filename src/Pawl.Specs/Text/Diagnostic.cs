namespace Pawl.Specs.Text;

/// <summary>How bad: as in SARIF 2.1.0.</summary>
public enum Severity
{
    Note,
    Warning,
    Error,
}

/// <summary>Something wrong with what was written, at the place it was written.</summary>
/// <param name="Code">Stable identifier, <c>area/kebab-name</c>; never reused, never renamed.</param>
/// <param name="Severity">An error means that the spec could not be judged.</param>
/// <param name="Span">The offending text, as narrow as we can make it.</param>
/// <param name="Message">What is wrong, in one sentence, with the text found.</param>
/// <param name="Hint">What to write instead, when we know.</param>
public sealed record Diagnostic(string Code, Severity Severity, SourceSpan Span, string Message, string? Hint = null);
