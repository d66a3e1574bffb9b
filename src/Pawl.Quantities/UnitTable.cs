namespace Pawl.Quantities;

/// <summary>The units with names of their own, by every spelling.</summary>
internal static class UnitTable
{
    private static readonly UnitIndex Known = new(most: 512);
    private static readonly UnitIndex WithinCompounds = new(most: 8);

    static UnitTable()
    {
        var all = ImmutableArray.CreateBuilder<Unit>(UnitRows.Named.Length);
        foreach (var row in UnitRows.Named)
        {
            all.Add(row.Unit);
            Add(Known, row);
        }

        foreach (var row in UnitRows.OnlyInCompounds) Add(WithinCompounds, row);
        All = all.ToImmutable();
    }

    /// <summary>Every named unit once, the usual ones of a dimension first.</summary>
    public static ImmutableArray<Unit> All { get; }

    /// <summary>The unit of this name, spelt as <see cref="UnitSpelling"/> leaves it.</summary>
    public static Unit? Find(ReadOnlySpan<char> name) => Known.Find(name);

    /// <summary>The unit of this name as part of a compound, where a few more are known than alone.</summary>
    public static Unit? FindPart(ReadOnlySpan<char> name) => Known.Find(name) ?? WithinCompounds.Find(name);

    public static string? NearestSymbol(ReadOnlySpan<char> text)
    {
        Span<char> spelling = stackalloc char[UnitSpelling.Longest];
        Span<byte> origins = stackalloc byte[UnitSpelling.Longest];
        if (!UnitSpelling.TryNormalise(text, spelling, origins, out var length)) return null;

        var names = new List<string>(512);
        foreach (var row in UnitRows.Named)
        {
            if (row.Unit.Symbol.Length > 0) names.Add(row.Unit.Symbol);
            if (row.Aliases.Length > 0) names.AddRange(row.Aliases.Split(' '));
        }

        var nearest = Nearest.To(spelling[..length].ToString(), names);
        return nearest is null ? null : Find(nearest)?.Symbol;
    }

    private static void Add(UnitIndex index, UnitRow row)
    {
        if (row.Unit.Symbol.Length > 0) index.TryAdd(row.Unit.Symbol, row.Unit);
        if (row.Aliases.Length == 0) return;
        foreach (var alias in row.Aliases.Split(' ')) index.TryAdd(alias, row.Unit);
    }
}
