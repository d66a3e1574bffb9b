using Pawl.Specs.Text;

namespace Pawl.Specs.Yaml;

/// <summary>Reads YAML text into a tree with positions, within bounds.</summary>
public static class YamlReader
{
    /// <summary>Reads one document; every complaint goes into <paramref name="diagnostics"/>, reading goes on where it can.</summary>
    /// <param name="file">The path that spans carry.</param>
    /// <param name="bytes">The file's content; must be UTF-8.</param>
    /// <param name="diagnostics">Receives complaints.</param>
    /// <returns>The root, or null when nothing could be read.</returns>
    public static YamlNode? Read(string file, ReadOnlyMemory<byte> bytes, ICollection<Diagnostic> diagnostics) =>
        throw new NotImplementedException();
}
