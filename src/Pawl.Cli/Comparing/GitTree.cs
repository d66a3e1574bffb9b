using LibGit2Sharp;
using Pawl.Specs.Files;

namespace Pawl.Cli.Comparing;

/// <summary>The files of one revision, read from the object database: no checkout is looked at and none is changed.</summary>
/// <remarks>Paths are those that the files have, or would have, in the working tree. The library is for one thread, hence the lock.</remarks>
internal sealed class GitTree : FileSource, IDisposable
{
    private const int MostLinks = 40;
    private readonly Repository _repository;
    private readonly Tree _tree;
    private readonly string _top;
    private readonly Lock _lock = new();
    private readonly Dictionary<string, TreeEntry?> _entries = new(StringComparer.Ordinal);

    /// <param name="repository">The repository; disposed of with this.</param>
    /// <param name="tree">What the revision holds.</param>
    /// <param name="top">The folder that stands for the top of the tree, absolute.</param>
    public GitTree(Repository repository, Tree tree, string top)
    {
        _repository = repository;
        _tree = tree;
        _top = Path.TrimEndingDirectorySeparator(top);
    }

    public void Dispose() => _repository.Dispose();

    public override bool IsFile(string path)
    {
        lock (_lock)
            return Followed(path) is { TargetType: TreeEntryTargetType.Blob };
    }

    public override bool IsFolder(string path)
    {
        lock (_lock)
            return Followed(path, out var isTop) is { TargetType: TreeEntryTargetType.Tree } || isTop;
    }

    public override byte[]? Read(string path, int most, out long length)
    {
        lock (_lock)
        {
            if (Followed(path) is not { TargetType: TreeEntryTargetType.Blob, Target: Blob blob })
                throw new FileNotFoundException("There is no such file in the revision.", path);
            length = blob.Size;
            if (length > most)
                return null;
            using var content = blob.GetContentStream();
            var bytes = new byte[length];
            content.ReadExactly(bytes);
            return bytes;
        }
    }

    public override string? LinkTarget(string path)
    {
        lock (_lock)
            return Target(Entry(path, out _));
    }

    public override IEnumerable<FileEntry> Entries(string folder)
    {
        List<FileEntry> entries = [];
        lock (_lock)
        {
            var tree = Followed(folder, out var isTop) is { TargetType: TreeEntryTargetType.Tree, Target: Tree below } ? below : isTop ? _tree : null;
            foreach (var entry in tree ?? Enumerable.Empty<TreeEntry>())
            {
                var isLink = entry.Mode == Mode.SymbolicLink;
                if (entry.TargetType != TreeEntryTargetType.GitLink)
                    entries.Add(new(entry.Name, isLink ? IsFolder(Path.Combine(folder, entry.Name)) : entry.TargetType == TreeEntryTargetType.Tree, isLink));
            }
        }

        return entries;
    }

    private static string? Target(TreeEntry? entry) =>
        entry is { Mode: Mode.SymbolicLink, Target: Blob { Size: < 4096 } blob } ? blob.GetContentText() : null;

    private TreeEntry? Followed(string path) => Followed(path, out _);

    /// <summary>The entry with every link on the way followed; null outside of the tree.</summary>
    private TreeEntry? Followed(string path, out bool isTop)
    {
        path = Path.TrimEndingDirectorySeparator(path);
        for (var links = 0; links <= MostLinks; links++)
        {
            var entry = Entry(path, out isTop);
            if (isTop)
                return null;
            if (Target(entry) is { } target)
                path = Path.GetFullPath(target, Path.GetDirectoryName(path)!);
            else if (entry is not null || LinkAbove(path) is not { } real)
                return entry;
            else
                path = real;
        }

        isTop = false;
        return null;
    }

    /// <summary>The path with the first folder on the way that is a link replaced by what it names; null without one.</summary>
    private string? LinkAbove(string path)
    {
        for (var at = Path.GetDirectoryName(path); at is not null && at.Length > _top.Length; at = Path.GetDirectoryName(at))
        {
            if (Target(Entry(at, out _)) is { } target)
                return Path.GetFullPath(target, Path.GetDirectoryName(at)!) + path[at.Length..];
        }

        return null;
    }

    private TreeEntry? Entry(string path, out bool isTop)
    {
        path = Path.TrimEndingDirectorySeparator(path);
        isTop = path == _top;
        if (isTop || !path.StartsWith(_top, StringComparison.Ordinal) || path[_top.Length] != Path.DirectorySeparatorChar)
            return null;

        var inTree = path[(_top.Length + 1)..].Replace(Path.DirectorySeparatorChar, '/');
        if (!_entries.TryGetValue(inTree, out var entry))
            _entries[inTree] = entry = _tree[inTree];
        return entry;
    }
}
