namespace Pawl.Reports.Records.Stored;

/// <summary>Things that stand once and are referred to by number.</summary>
internal sealed class Pool<T>
    where T : notnull
{
    private readonly List<T> _all = [];
    private readonly Dictionary<T, int> _numbers;

    public Pool(IEqualityComparer<T>? equality = null) => _numbers = new(equality);

    public ImmutableArray<T> All => [.. _all];

    public int Add(T item)
    {
        if (_numbers.TryGetValue(item, out var number))
            return number;
        _all.Add(item);
        return _numbers[item] = _all.Count - 1;
    }
}

/// <summary>The texts that places and sources refer to while a record is written or read.</summary>
/// <param name="files">Files of places.</param>
/// <param name="texts">Sources of rules.</param>
internal sealed class References(ImmutableArray<string> files, ImmutableArray<string> texts)
{
    public Pool<string> Files { get; } = new(StringComparer.Ordinal);

    public Pool<string> Texts { get; } = new(StringComparer.Ordinal);

    /// <summary>File of that number; null without one.</summary>
    public string? File(int number) => number >= 0 && number < files.Length ? files[number] : null;

    /// <summary>Text of that number; null without one.</summary>
    public string? Text(int number) => number >= 0 && number < texts.Length ? texts[number] : null;
}
