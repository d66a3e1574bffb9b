namespace Pawl.Quantities;

/// <summary>Units by name, looked up by span without allocation.</summary>
/// <remarks>
/// Open addressing over immutable entries that are never removed: reading takes no lock, and a full index takes no more, so that
/// a hostile file cannot make it grow. Written out because the framework's dictionaries would have to be compiled at start-up
/// for lookup by span.
/// </remarks>
internal sealed class UnitIndex
{
    private readonly Entry?[] _slots;
    private readonly int _most;
    private readonly Lock _writing = new();
    private int _count;

    /// <param name="most">How many names it takes.</param>
    public UnitIndex(int most)
    {
        _most = most;
        var slots = 4;
        while (slots < 2 * most) slots *= 2;
        _slots = new Entry?[slots];
    }

    public int Count => Volatile.Read(ref _count);

    public Unit? Find(ReadOnlySpan<char> name)
    {
        var slot = FirstSlot(name);
        while (Volatile.Read(ref _slots[slot]) is { } entry)
        {
            if (name.SequenceEqual(entry.Name)) return entry.Unit;
            slot = (slot + 1) & (_slots.Length - 1);
        }

        return null;
    }

    /// <summary>Adds a name unless it is known already or the index is full.</summary>
    public bool TryAdd(string name, Unit unit)
    {
        lock (_writing)
        {
            if (_count == _most) return false;

            var slot = FirstSlot(name);
            while (_slots[slot] is { } entry)
            {
                if (entry.Name == name) return false;
                slot = (slot + 1) & (_slots.Length - 1);
            }

            Volatile.Write(ref _slots[slot], new Entry(name, unit));
            _count++;
            return true;
        }
    }

    // FNV-1a over UTF-16 code units; the same on every run, which string.GetHashCode is not.
    private int FirstSlot(ReadOnlySpan<char> name)
    {
        var hash = 2166136261u;
        foreach (var c in name) hash = unchecked((hash ^ c) * 16777619u);
        return (int)(hash & (uint)(_slots.Length - 1));
    }

    private sealed class Entry(string name, Unit unit)
    {
        public string Name => name;

        public Unit Unit => unit;
    }
}
