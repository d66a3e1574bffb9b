using Microsoft.Extensions.FileSystemGlobbing.Abstractions;

namespace Pawl.Cli.Checking;

/// <summary>A folder as the file matcher sees it: without the folders that are links, which may lead in a circle or out of the project.</summary>
internal sealed class PlainFolder(DirectoryInfo folder) : DirectoryInfoBase
{
    public override string Name => folder.Name;

    public override string FullName => folder.FullName;

    public override DirectoryInfoBase? ParentDirectory => folder.Parent is { } parent ? new PlainFolder(parent) : null;

    public override IEnumerable<FileSystemInfoBase> EnumerateFileSystemInfos()
    {
        if (!folder.Exists)
            yield break;
        foreach (var entry in folder.EnumerateFileSystemInfos())
        {
            if (entry is FileInfo file)
                yield return new FileInfoWrapper(file);
            else if (entry is DirectoryInfo below && !below.Attributes.HasFlag(FileAttributes.ReparsePoint))
                yield return new PlainFolder(below);
        }
    }

    public override DirectoryInfoBase GetDirectory(string path) => new PlainFolder(new(Path.Combine(folder.FullName, path)));

    public override FileInfoBase GetFile(string path) => new FileInfoWrapper(new(Path.Combine(folder.FullName, path)));
}
