using Microsoft.Extensions.FileSystemGlobbing;

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
    public static string[] Files(string folder, string pattern, ImmutableArray<string> exclude)
    {
        // A plain name needs no matcher, and most projects list few files.
        if (!IsPattern(pattern) && exclude.IsEmpty)
            return File.Exists(Path.Combine(folder, pattern)) ? [Path.GetFullPath(pattern, folder)] : [];

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

        if (!Directory.Exists(start))
            return [];

        var matcher = new Matcher(StringComparison.Ordinal).AddInclude(rest).AddExclude("**/.*/**");
        foreach (var excluded in exclude)
            matcher.AddExclude(excluded);
        string[] files = [.. matcher.GetResultsInFullPath(start).Select(Path.GetFullPath)];
        Array.Sort(files, StringComparer.Ordinal);
        return files;
    }
}
