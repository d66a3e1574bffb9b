using Pawl.Specs.Text;

namespace Pawl.Specs.Yaml;

/// <summary>Reads YAML text into a tree with positions, within bounds.</summary>
public static class YamlReader
{
    /// <summary>Longest file that is read.</summary>
    public const int MostBytes = 10_000_000;

    /// <summary>Deepest nesting of maps and lists, aliases written out.</summary>
    public const int MostDepth = 64;

    /// <summary>Most values in a file, aliases written out.</summary>
    public const int MostNodes = 200_000;

    /// <summary>Reads one document; every complaint goes into <paramref name="diagnostics"/>, reading goes on where it can.</summary>
    /// <param name="file">The path that spans carry.</param>
    /// <param name="bytes">The file's content; must be UTF-8.</param>
    /// <param name="diagnostics">Receives complaints.</param>
    /// <returns>The root, or null when nothing could be read.</returns>
    public static YamlNode? Read(string file, ReadOnlyMemory<byte> bytes, ICollection<Diagnostic> diagnostics)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(diagnostics);

        var text = Utf8Text.Decode(file, bytes.Span, diagnostics);
        return text is null ? null : new TreeBuilder(file, text, diagnostics).Build();
    }
}
