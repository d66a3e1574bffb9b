using Pawl.Specs.Files;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>A project file as read.</summary>
/// <param name="Project">Null when anything is wrong with it.</param>
/// <param name="Diagnostics">What is wrong.</param>
public sealed record ProjectLoad(ProjectFile? Project, ImmutableArray<Diagnostic> Diagnostics)
{
    /// <summary>The file with its hash; null when there was nothing to hash.</summary>
    public FileRead? Read { get; init; }
}

/// <summary>Finds and reads <c>pawl.yaml</c>.</summary>
public static partial class ProjectReader
{
    /// <summary>The nearest project file from a folder upwards, or null. The folder that holds <c>.git</c> is the last one looked at.</summary>
    /// <param name="folder">Where to begin.</param>
    /// <param name="source">Where files are read from; null: the disk.</param>
    public static string? Find(string folder, FileSource? source = null)
    {
        source ??= FileSource.Disk;
        for (var at = Path.GetFullPath(folder); at is not null; at = Path.GetDirectoryName(at))
        {
            var file = Path.Combine(at, ProjectFile.FileName);
            if (source.IsFile(file))
                return file;

            // A work tree of its own has a file of that name, a repository a folder.
            var git = Path.Combine(at, ".git");
            if (source.IsFolder(git) || source.IsFile(git))
                return null;
        }

        return null;
    }

    /// <summary>Reads a project file.</summary>
    /// <param name="path">Where it is.</param>
    /// <param name="shown">The path that messages carry.</param>
    /// <param name="source">Where files are read from; null: the disk.</param>
    public static ProjectLoad Read(string path, string shown, FileSource? source = null)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(shown);
        if (Path.GetDirectoryName(Path.GetFullPath(path)) is { } folder && !ProjectGuard.IsInside(folder, path, source))
            return new(null, [SpecDiagnostics.OutsideRoot(SourceSpan.Whole(shown), shown, "leads outside the project by a symbolic link")]);

        var file = new FileStore(source ?? FileSource.Disk).Read(new(path, shown));
        List<Diagnostic> diagnostics = [.. file.Diagnostics];
        if (file.Unreadable is { } unreadable)
            diagnostics.Add(unreadable(SourceSpan.Whole(shown), shown));

        var project = file.Tree is null ? null : Read(file.Tree, diagnostics);
        return new(diagnostics.Exists(diagnostic => diagnostic.Severity == Severity.Error) ? null : project, SpecLoader.InFileOrder(diagnostics)) { Read = file.Read };
    }

    /// <summary>Reads a project file's tree.</summary>
    public static ProjectFile? Read(YamlNode tree, ICollection<Diagnostic> diagnostics)
    {
        var reader = new MapReader(tree, "", diagnostics);
        return Read(reader, new(reader));
    }
}
