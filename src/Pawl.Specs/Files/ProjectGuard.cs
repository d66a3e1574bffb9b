namespace Pawl.Specs.Files;

/// <summary>Whether a path stays in the project, links followed: asked of everything that a file of the project names.</summary>
public static class ProjectGuard
{
    /// <summary>Whether a file or folder, there or not yet, lies in the project or is its root; a circle of links does not.</summary>
    /// <param name="root">The project root.</param>
    /// <param name="path">Absolute, or from the root.</param>
    /// <param name="source">Where the files are read from; absent: the disk.</param>
    public static bool IsInside(string root, string path, FileSource? source = null)
    {
        ArgumentNullException.ThrowIfNull(root);
        ArgumentNullException.ThrowIfNull(path);
        if (path.Contains('\0', StringComparison.Ordinal))
            return false;
        var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(path, root));
        return full == Path.TrimEndingDirectorySeparator(Path.GetFullPath(root)) || new ProjectRoot(root, source ?? FileSource.Disk).Find(full, out _) is not null;
    }
}
