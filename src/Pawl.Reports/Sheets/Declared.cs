using Pawl.Reports.Records;

namespace Pawl.Reports.Sheets;

/// <summary>What the spec of a record declares, by its path.</summary>
internal sealed class Declared
{
    private readonly Dictionary<string, InputRecord> _inputs = new(StringComparer.Ordinal);
    private readonly ImmutableArray<InputRecord> _all;

    public Declared(ConformanceRecord record)
    {
        _all = record.Inputs;
        foreach (var input in _all)
            _inputs.TryAdd(input.Path, input);
    }

    /// <summary>The text at a path; empty where the spec is silent.</summary>
    public string this[string path] => _inputs.TryGetValue(path, out var input) ? input.Written : "";

    /// <summary>Names of the entries of a section, in the order of the spec.</summary>
    public ImmutableArray<string> Names(string section) =>
        [.. _all.Where(i => i.Path.StartsWith(section + ".", StringComparison.Ordinal)).Select(i => First(i.Path[(section.Length + 1)..])).Distinct(StringComparer.Ordinal)];

    /// <summary>The texts of a list, in order.</summary>
    public ImmutableArray<string> List(string path)
    {
        var list = ImmutableArray.CreateBuilder<string>();
        while (_inputs.TryGetValue($"{path}[{Phrase.Whole(list.Count + 1)}]", out var input))
            list.Add(input.Written);
        return list.DrainToImmutable();
    }

    private static string First(string path) => path.IndexOfAny(['.', '[']) is > 0 and var end ? path[..end] : path;
}
