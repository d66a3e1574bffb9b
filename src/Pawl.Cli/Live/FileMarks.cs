namespace Pawl.Cli.Live;

/// <summary>How some files stood at one moment: enough to tell that one of them was saved since.</summary>
internal sealed class FileMarks : IEquatable<FileMarks>
{
    public static readonly FileMarks None = new([]);

    private readonly ImmutableSortedDictionary<string, (long Length, DateTime Written)> _marks;

    private FileMarks(IEnumerable<KeyValuePair<string, (long Length, DateTime Written)>> marks) =>
        _marks = marks.ToImmutableSortedDictionary(StringComparer.Ordinal);

    /// <summary>Looks at files, absolute; one that is not there is noted as such, so that its coming is a change too.</summary>
    public static FileMarks Of(IEnumerable<string> files)
    {
        var marks = new Dictionary<string, (long, DateTime)>(StringComparer.Ordinal);
        foreach (var file in files)
            marks[file] = Look(file);
        return new(marks);
    }

    /// <summary>These and others.</summary>
    public FileMarks With(FileMarks others) => new(_marks.SetItems(others._marks));

    /// <summary>The files of others, as noted here where they are.</summary>
    public FileMarks Of(FileMarks others) =>
        new(others._marks.Select(mark => KeyValuePair.Create(mark.Key, _marks.TryGetValue(mark.Key, out var here) ? here : mark.Value)));

    /// <summary>The same files as they stand now.</summary>
    public FileMarks Again() => Of(_marks.Keys);

    public bool Equals(FileMarks? other) => other is not null && _marks.SequenceEqual(other._marks);

    public override bool Equals(object? obj) => Equals(obj as FileMarks);

    public override int GetHashCode() => _marks.Count;

    private static (long, DateTime) Look(string file)
    {
        try
        {
            var info = new FileInfo(file);
            return info.Exists ? (info.Length, info.LastWriteTimeUtc) : (-1, default);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return (-2, default);
        }
    }
}
