namespace Pawl.Reports.Rendering;

/// <summary>Lines of a log, none of which is a command to the runner that prints it.</summary>
internal sealed class Lines(TextWriter to)
{
    /// <summary>One line, ended by a line feed on every machine.</summary>
    public void Write(string line)
    {
        to.Write(LogText.Line(line));
        to.Write('\n');
    }
}
