using Pawl.Specs.Files;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>A baseline as read.</summary>
/// <param name="Baseline">Null when anything is wrong with it.</param>
/// <param name="Read">The file with its hash; null when there was nothing to hash.</param>
/// <param name="Diagnostics">What is wrong.</param>
public sealed record BaselineLoad(BaselineFile? Baseline, FileRead? Read, ImmutableArray<Diagnostic> Diagnostics);

/// <summary>Reads the file of known findings.</summary>
public static partial class BaselineReader
{
    /// <summary>Reads a baseline of a project.</summary>
    /// <param name="root">The project root: nothing is read from outside of it.</param>
    /// <param name="path">From the root.</param>
    public static BaselineLoad Load(string root, string path)
    {
        ArgumentNullException.ThrowIfNull(root);
        ArgumentNullException.ThrowIfNull(path);
        if (new ProjectRoot(root, FileSource.Disk).Find(path, out var complaint) is not { } source)
            return new(null, null, [complaint!]);

        var file = new FileStore(FileSource.Disk).Read(source);
        List<Diagnostic> diagnostics = [.. file.Diagnostics];
        if (file.Unreadable is { } unreadable)
            diagnostics.Add(unreadable(SourceSpan.Whole(source.Shown), source.Shown));
        var baseline = file.Tree is null ? null : Read(file.Tree, diagnostics);
        return new(diagnostics.Exists(diagnostic => diagnostic.Severity == Severity.Error) ? null : baseline, file.Read, SpecLoader.InFileOrder(diagnostics));
    }

    /// <summary>Reads a baseline's tree.</summary>
    public static BaselineFile? Read(YamlNode tree, ICollection<Diagnostic> diagnostics)
    {
        var reader = new MapReader(tree, "", diagnostics);
        return Read(reader, new(reader));
    }
}
