namespace Pawl.Specs.Files;

/// <summary>An entry of a folder.</summary>
/// <param name="Name">Its last part.</param>
/// <param name="IsFolder">Whether it is a folder; a link to one is.</param>
/// <param name="IsLink">Whether it is a symbolic link.</param>
public readonly record struct FileEntry(string Name, bool IsFolder, bool IsLink);

/// <summary>Where the files of a project are read from. Paths are absolute. Safe for use by several threads.</summary>
public abstract class FileSource
{
    /// <summary>The file system.</summary>
    public static FileSource Disk { get; } = new DiskFiles();

    /// <summary>Whether there is a file, links followed.</summary>
    public abstract bool IsFile(string path);

    /// <summary>Whether there is a folder, links followed.</summary>
    public abstract bool IsFolder(string path);

    /// <summary>The content, null when it is longer than asked for; links are followed.</summary>
    /// <exception cref="FileNotFoundException">There is none; <see cref="IOException"/> and <see cref="UnauthorizedAccessException"/>: it cannot be read.</exception>
    public abstract byte[]? Read(string path, int most, out long length);

    /// <summary>What a symbolic link says; null of anything else.</summary>
    public abstract string? LinkTarget(string path);

    /// <summary>What a folder holds, in no order; nothing where there is no folder.</summary>
    public abstract IEnumerable<FileEntry> Entries(string folder);

    private sealed class DiskFiles : FileSource
    {
        public override bool IsFile(string path) => File.Exists(path);

        public override bool IsFolder(string path) => Directory.Exists(path);

        public override byte[]? Read(string path, int most, out long length) => WholeFile.Read(path, most, out length);

        public override string? LinkTarget(string path) => new FileInfo(path).LinkTarget;

        public override IEnumerable<FileEntry> Entries(string folder)
        {
            if (!Directory.Exists(folder))
                yield break;
            foreach (var entry in new DirectoryInfo(folder).EnumerateFileSystemInfos())
                yield return new(entry.Name, entry is DirectoryInfo, entry.Attributes.HasFlag(FileAttributes.ReparsePoint));
        }
    }
}
