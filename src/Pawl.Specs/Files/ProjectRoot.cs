using System.Collections.Concurrent;
using Pawl.Specs.Text;

namespace Pawl.Specs.Files;

/// <summary>The folder that nothing is read from outside of, symbolic links followed.</summary>
internal sealed class ProjectRoot
{
    private const int MostLinks = 40;
    private readonly FileSource _source;
    private readonly string _written;
    private readonly string _real;
    private readonly ConcurrentDictionary<string, string> _realFolders = new(StringComparer.Ordinal);

    public ProjectRoot(string folder, FileSource source)
    {
        _source = source;
        _written = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder));
        var links = 0;
        _real = RealPath(_written, ref links) ?? _written;
    }

    /// <summary>The folder as it was given, in full.</summary>
    public string Folder => _written;

    /// <summary>A path that a person gave: absolute, or from the root.</summary>
    public SourcePath? Find(string path, out Diagnostic? complaint)
    {
        complaint = null;
        if (path.Length == 0 || path.Contains('\0', StringComparison.Ordinal))
        {
            complaint = SpecDiagnostics.MissingFile(SourceSpan.Whole(path), path, null);
            return null;
        }

        var full = Path.GetFullPath(path, _written);
        var shown = Shown(full);
        if (shown is null)
        {
            complaint = SpecDiagnostics.OutsideRoot(SourceSpan.Whole(Slashes(path)), path, "lies outside the project");
            return null;
        }

        return Checked(full, shown, SourceSpan.Whole(shown), shown, out complaint);
    }

    /// <summary>A path that a file names, from that file's folder.</summary>
    public SourcePath? Find(Stated<string> reference, string fromFolder, out Diagnostic? complaint)
    {
        var path = reference.Value;
        complaint = null;
        if (path.Contains('\0', StringComparison.Ordinal))
        {
            complaint = SpecDiagnostics.MissingFile(reference.Span, path, null);
            return null;
        }

        if (Path.IsPathRooted(path) || path.StartsWith('\\') || (path.Length > 1 && char.IsAsciiLetter(path[0]) && path[1] == ':'))
        {
            complaint = SpecDiagnostics.OutsideRoot(reference.Span, path, "is an absolute path, which holds on one machine only");
            return null;
        }

        var full = Path.GetFullPath(path, fromFolder);
        if (Shown(full) is { } shown)
            return Checked(full, shown, reference.Span, path, out complaint);

        complaint = SpecDiagnostics.OutsideRoot(reference.Span, path, "lies outside the project");
        return null;
    }

    private SourcePath? Checked(string full, string shown, SourceSpan span, string path, out Diagnostic? complaint)
    {
        complaint = null;
        try
        {
            var links = 0;
            var real = RealPath(full, ref links);
            if (real is null)
                complaint = SpecDiagnostics.UnreadableFile(span, path, "its symbolic links lead in a circle");
            else if (!IsBelow(real, _real))
                complaint = SpecDiagnostics.OutsideRoot(span, path, "leads outside the project by a symbolic link");
            else
                return new(full, shown);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            complaint = SpecDiagnostics.UnreadableFile(span, path, FileStore.Reason(exception));
        }

        return null;
    }

    private string? Shown(string full)
    {
        if (IsBelow(full, _written))
            return Slashes(full[_written.Length..].TrimStart(Path.DirectorySeparatorChar));
        return IsBelow(full, _real) ? Slashes(full[_real.Length..].TrimStart(Path.DirectorySeparatorChar)) : null;
    }

    private static bool IsBelow(string path, string folder) =>
        path.Length > folder.Length && path.StartsWith(folder, StringComparison.Ordinal)
        && (Path.EndsInDirectorySeparator(folder) || path[folder.Length] == Path.DirectorySeparatorChar);

    private static string Slashes(string path) =>
        Path.DirectorySeparatorChar == '/' ? path : path.Replace(Path.DirectorySeparatorChar, '/');

    /// <summary>The path with every symbolic link on the way replaced by its target; null for a circle of links.</summary>
    private string? RealPath(string full, ref int links)
    {
        var parent = Path.GetDirectoryName(full);
        if (parent is null)
            return full;

        if (!_realFolders.TryGetValue(parent, out var realParent))
        {
            realParent = RealPath(parent, ref links);
            if (realParent is null)
                return null;
            _realFolders[parent] = realParent;
        }

        var path = Path.Combine(realParent, Path.GetFileName(full));
        if (_source.LinkTarget(path) is not { } target)
            return path;
        return ++links > MostLinks ? null : RealPath(Path.TrimEndingDirectorySeparator(Path.GetFullPath(target, realParent)), ref links);
    }
}
