using Pawl.Cli.Checking;

namespace Pawl.Cli.Output;

/// <summary>Records one after the other in one stream: a JSON list when several were asked for, else end to end.</summary>
/// <param name="to">The stream.</param>
/// <param name="format">What the records are written as.</param>
/// <param name="many">Whether several were asked for.</param>
/// <param name="spaced">Whether an empty line stands between two.</param>
internal sealed class Sequence(TextWriter to, Format format, bool many, bool spaced = true)
{
    private readonly bool _list = many && format == Format.Json;

    /// <summary>Records so far.</summary>
    public int Count { get; private set; }

    public void Add(string text)
    {
        if (_list)
            to.Write(Count == 0 ? "[\n" : ",\n");
        else if (Count > 0 && spaced)
            to.Write('\n');

        to.Write(text.AsSpan().TrimEnd('\n'));
        if (!_list)
            to.Write('\n');
        Count++;
    }

    public void Finish()
    {
        if (_list)
            to.Write(Count == 0 ? "[]\n" : "\n]\n");
    }
}
