using Pawl.Specs.Files;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Rules.Packs;

/// <summary>Finds the pack files of a project, inside its root.</summary>
internal static class HouseFolders
{
    private const int MostPacks = 200;

    /// <summary>Every <c>*.yaml</c> directly in the folders, by path from the root, in order.</summary>
    public static List<(string Path, byte[] Bytes)> Read(string root, ImmutableArray<string> folders, FileSource source, List<Diagnostic> diagnostics)
    {
        var packs = new List<(string Path, byte[] Bytes)>();
        var top = Path.TrimEndingDirectorySeparator(Path.GetFullPath(root));
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var folder in folders)
        {
            var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(Path.Combine(top, folder)));
            if (Path.IsPathRooted(folder) || !ProjectGuard.IsInside(top, full))
            {
                diagnostics.Add(Outside(folder));
                continue;
            }

            if (!source.IsFolder(full))
            {
                diagnostics.Add(RuleDiagnostics.Error(
                    RuleCodes.MissingFolder, SourceSpan.Whole(folder),
                    $"There is no folder `{RuleDiagnostics.Short(folder)}` with rule packs.",
                    "Folders are named from the project root."));
                continue;
            }

            if (Files(full, folder, source, diagnostics) is not { } files)
                continue;
            foreach (var file in files)
            {
                var shown = Path.GetRelativePath(top, file).Replace('\\', '/');
                if (!seen.Add(shown))
                    continue;
                if (packs.Count == MostPacks)
                {
                    diagnostics.Add(Unreadable(shown, $"More than {MostPacks} packs are in the rule folders."));
                    return packs;
                }

                if (!ProjectGuard.IsInside(top, file, source))
                    diagnostics.Add(Outside(shown));
                else if (Bytes(file, shown, source, diagnostics) is { } bytes)
                    packs.Add((shown, bytes));
            }
        }

        return packs;
    }

    /// <summary>The pack files of a folder in order, or null with the reason: a folder that adds no rule is never a pass.</summary>
    private static string[]? Files(string full, string folder, FileSource source, List<Diagnostic> diagnostics)
    {
        try
        {
            string[] files = [.. from entry in source.Entries(full) where !entry.IsFolder && entry.Name.EndsWith(".yaml", StringComparison.Ordinal) select Path.Combine(full, entry.Name)];
            Array.Sort(files, StringComparer.Ordinal);
            if (files.Length > 0)
                return files;

            diagnostics.Add(RuleDiagnostics.Error(
                RuleCodes.EmptyFolder, SourceSpan.Whole(folder), $"The folder `{RuleDiagnostics.Short(folder)}` holds no rule pack.",
                "Packs are *.yaml files directly in it. Name the folder that holds them."));
        }
        catch (Exception denied) when (denied is IOException or UnauthorizedAccessException)
        {
            diagnostics.Add(Unreadable(folder, "The folder cannot be read."));
        }

        return null;
    }

    private static byte[]? Bytes(string file, string shown, FileSource source, List<Diagnostic> diagnostics)
    {
        try
        {
            var bytes = source.Read(file, YamlReader.MostBytes, out _);
            if (bytes is null)
                diagnostics.Add(Unreadable(shown, $"The file has more than {YamlReader.MostBytes / 1_000_000} MB."));
            else if (bytes.Length == 0)
                diagnostics.Add(Unreadable(shown, "The file is empty, or it is a pipe or a device."));
            else
                return bytes;
        }
        catch (Exception denied) when (denied is IOException or UnauthorizedAccessException)
        {
            diagnostics.Add(Unreadable(shown, "The file cannot be read."));
        }

        return null;
    }

    private static Diagnostic Outside(string path) => RuleDiagnostics.Error(
        RuleCodes.OutsideRoot, SourceSpan.Whole(path), $"`{RuleDiagnostics.Short(path)}` lies outside the project.",
        "Rule packs stay inside the project root.");

    private static Diagnostic Unreadable(string path, string message) =>
        RuleDiagnostics.Error(RuleCodes.UnreadableFile, SourceSpan.Whole(path), message);
}
