namespace Pawl.Specs.Text;

/// <summary>A place in a text. Lines and columns count from 1, columns in UTF-16 code units.</summary>
public readonly record struct Position(int Line, int Column);

/// <summary>Where a piece of a spec was written. The end is exclusive.</summary>
/// <param name="File">Path from the project root with forward slashes; <c>-</c> for standard input.</param>
/// <param name="Start">First character.</param>
/// <param name="End">One past the last character.</param>
public readonly record struct SourceSpan(string File, Position Start, Position End)
{
    /// <summary>The file as a whole, for complaints that have no better place.</summary>
    public static SourceSpan Whole(string file) => new(file, new(1, 1), new(1, 1));

    public override string ToString() => $"{File}:{Start.Line}:{Start.Column}";
}

/// <summary>A value together with the place that stated it: the variant, its base, or a catalogue.</summary>
/// <param name="Value">What was stated.</param>
/// <param name="Span">Where.</param>
/// <param name="Text">The scalar as written.</param>
public sealed record Stated<T>(T Value, SourceSpan Span, string Text);
