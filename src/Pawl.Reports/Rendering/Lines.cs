namespace Pawl.Reports.Rendering;

/// <summary>Lines of a log, none of which is a command to the runner that prints it.</summary>
/// <param name="to">Where they go.</param>
/// <param name="width">Cells of the terminal that shows them; null: they are not broken.</param>
internal sealed class Lines(TextWriter to, int? width = null)
{
    /// <summary>One line, ended by a line feed on every machine.</summary>
    /// <param name="line">The line.</param>
    /// <param name="hang">On a terminal, how much deeper the rest of a line stands that is too long.</param>
    public void Write(string line, int hang = 2)
    {
        if (width is not { } cells)
        {
            One(line);
            return;
        }

        foreach (var piece in Wrap.Pieces(line, cells, hang))
            One(piece);
    }

    private void One(string line)
    {
        to.Write(LogText.Line(line));
        to.Write('\n');
    }
}
