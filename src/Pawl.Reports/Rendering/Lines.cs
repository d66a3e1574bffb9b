namespace Pawl.Reports.Rendering;

/// <summary>Lines of a log, none of which is a command to the runner that prints it.</summary>
internal sealed class Lines(TextWriter to)
{
    /// <summary>One line, ended by a line feed on every machine.</summary>
    public void Write(string line)
    {
        to.Write(Harmless(line));
        to.Write('\n');
    }

    /// <summary>A runner obeys lines that begin with <c>::</c> after any spaces, and <c>##[</c> anywhere in a line.</summary>
    private static string Harmless(string line)
    {
        var start = line.AsSpan().TrimStart();
        if (start.StartsWith("::", StringComparison.Ordinal))
            line = string.Concat(line.AsSpan(0, line.Length - start.Length), ": :", start[2..]);
        return line.Contains("##[", StringComparison.Ordinal) ? line.Replace("##[", "## [", StringComparison.Ordinal) : line;
    }
}
