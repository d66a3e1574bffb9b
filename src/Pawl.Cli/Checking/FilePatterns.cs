using Microsoft.Extensions.FileSystemGlobbing;
using Pawl.Specs.Files;

namespace Pawl.Cli.Checking;

/// <summary>Files that match a pattern: <c>*</c> within a name, <c>**</c> over folders.</summary>
internal static class FilePatterns
{
    public static bool IsPattern(string path) => path.AsSpan().ContainsAny('*', '?');

    /// <summary>The folders before the first wildcard.</summary>
    public static string FixedPart(string pattern)
    {
        var star = pattern.AsSpan().IndexOfAny('*', '?');
        if (star < 0)
            return pattern;
        var slash = pattern.AsSpan(0, star).LastIndexOfAny('/', '\\');
        return slash < 0 ? "." : pattern[..(slash + 1)];
    }

    /// <summary>Absolute paths in ordinal order; nothing from hidden folders.</summary>
    public static string[] Files(FileSource source, string folder, string pattern, ImmutableArray<string> exclude)
    {
        // A plain name needs no matcher, and most projects list few files.
        if (!IsPattern(pattern) && exclude.IsEmpty)
            return source.IsFile(Path.Combine(folder, pattern)) ? [Path.GetFullPath(pattern, folder)] : [];

        if (exclude.IsEmpty && EndingOfOneFolder(pattern) is { } ending)
            return InOneFolder(source, Path.GetFullPath(FixedPart(pattern), folder), ending);

        var start = folder;
        var rest = pattern.StartsWith("./", StringComparison.Ordinal) ? pattern[2..] : pattern;
        if (Path.IsPathRooted(pattern))
        {
            start = FixedPart(pattern);
            rest = pattern[start.Length..];
        }

        // Folders above are taken off: the matcher knows none.
        while (rest.StartsWith("../", StringComparison.Ordinal))
        {
            start = Path.GetFullPath("..", start);
            rest = rest[3..];
        }

        if (!source.IsFolder(start))
            return [];

        var matcher = new Matcher(StringComparison.Ordinal).AddInclude(rest).AddExclude("**/.*/**");
        foreach (var excluded in exclude)
            matcher.AddExclude(excluded);
        string[] files = [.. matcher.Match(start, All(source, start)).Files.Select(match => Path.GetFullPath(match.Path, start))];
        Array.Sort(files, StringComparer.Ordinal);
        return files;
    }

    /// <summary>Every file below, but for folders that are hidden or links, which may lead in a circle or out of the project.</summary>
    private static IEnumerable<string> All(FileSource source, string folder)
    {
        foreach (var entry in source.Entries(folder))
        {
            var path = Path.Combine(folder, entry.Name);
            if (!entry.IsFolder)
                yield return path;
            else if (!entry.IsLink && !entry.Name.StartsWith('.'))
                foreach (var below in All(source, path))
                    yield return below;
        }
    }

    /// <summary>The files of a pattern, or none with the reason why they cannot be listed.</summary>
    public static string[] Readable(FileSource source, string folder, string pattern, out string? problem)
    {
        problem = null;
        try
        {
            return Files(source, folder, pattern, []);
        }
        catch (Exception denied) when (denied is IOException or UnauthorizedAccessException)
        {
            problem = denied.Message;
            return [];
        }
    }

    // "folder/*.yaml", the commonest pattern of all: the matcher costs more time to load than all else that a start does here.
    private static string? EndingOfOneFolder(string pattern)
    {
        var slash = pattern.LastIndexOf('/');
        var name = pattern.AsSpan(slash + 1);
        return FixedPart(pattern).Length == (slash < 0 ? 1 : slash + 1) && name.StartsWith("*.") && !name[1..].ContainsAny('*', '?')
            ? name[1..].ToString()
            : null;
    }

    private static string[] InOneFolder(FileSource source, string folder, string ending)
    {
        string[] files = [.. from entry in source.Entries(folder) where !entry.IsFolder && entry.Name.EndsWith(ending, StringComparison.Ordinal) select Path.Combine(folder, entry.Name)];
        Array.Sort(files, StringComparer.Ordinal);
        return files;
    }
}
