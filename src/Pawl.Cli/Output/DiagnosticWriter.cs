using Pawl.Specs.Text;

namespace Pawl.Cli.Output;

/// <summary>Writes diagnostics as <c>file:line:column: error code: message</c>, the form that editors parse.</summary>
internal static class DiagnosticWriter
{
    public static void Write(TextWriter to, Diagnostic diagnostic)
    {
        var span = diagnostic.Span;

        // A line that begins with two colons is a command to some build logs.
        var file = Plain.Line(span.File);
        if (file.StartsWith("::", StringComparison.Ordinal))
            to.Write("./");
        to.Write(file);
        to.Write(':');
        if (span.Start.Line > 0)
        {
            Write(to, span.Start.Line);
            Write(to, span.Start.Column);
        }

        to.Write(' ');
        to.Write(Word(diagnostic.Severity));
        to.Write(' ');
        to.Write(diagnostic.Code);
        to.Write(": ");
        to.WriteLine(Plain.Line(diagnostic.Message));
        if (diagnostic.Hint is { Length: > 0 } hint)
        {
            to.Write("  hint: ");
            to.WriteLine(Plain.Line(hint));
        }
    }

    public static string Word(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "note",
    };

    private static void Write(TextWriter to, int number)
    {
        Span<char> digits = stackalloc char[11];
        number.TryFormat(digits, out var length, default, System.Globalization.CultureInfo.InvariantCulture);
        to.Write(digits[..length]);
        to.Write(':');
    }
}
