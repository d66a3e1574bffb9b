using Pawl.Specs.Model;
using Pawl.Specs.Reading;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs;

/// <summary>Something stated of a gland outside a file, as a spec would write it.</summary>
/// <param name="Key">A key of <c>o_rings</c>, or of <c>duty.oil</c> with <c>oil.</c> in front: <c>bore</c>, <c>oil.hottest</c>.</param>
/// <param name="Text">The value as written.</param>
/// <param name="Place">Where it was written, for complaints: <c>--bore</c>.</param>
public readonly record struct StatedWord(string Key, string Text, string Place);

/// <summary>A spec of one O-ring and its oil, from words that stand in no file.</summary>
public static class ORingStatement
{
    private const string Oil = "oil.";

    /// <summary>Reads the words as a spec is read, with the same complaints; null when a required one is missing.</summary>
    public static GearboxSpec? Read(string ring, ImmutableArray<StatedWord> words, ICollection<Diagnostic> diagnostics)
    {
        var all = At("pawl");
        var tree = Map(
            ("pawl", new YamlScalar(all, "1", IsQuoted: false)),
            ("gearbox", Map(("family", new YamlScalar(all, ring, IsQuoted: true)), ("variant", new YamlScalar(all, ring, IsQuoted: true)))),
            ("duty", Map(("oil", Words(words.Where(word => word.Key.StartsWith(Oil, StringComparison.Ordinal)), Oil.Length)))),
            ("o_rings", Map((ring, Words(words.Where(word => !word.Key.StartsWith(Oil, StringComparison.Ordinal)), 0)))));
        return GearboxReader.Read(tree, all.File, [], catalogue: null, diagnostics);
    }

    // Line 0: a place that has a name and no lines.
    private static SourceSpan At(string place) => new(place, default, default);

    private static YamlMap Words(IEnumerable<StatedWord> words, int prefix) => new(At("pawl"),
    [
        .. words.Select(word => new KeyValuePair<YamlScalar, YamlNode>(
            new(At(word.Place), word.Key[prefix..], IsQuoted: false), new YamlScalar(At(word.Place), word.Text.Trim(), IsQuoted: false))),
    ]);

    private static YamlMap Map(params (string Key, YamlNode Value)[] entries) => new(At("pawl"),
    [
        .. entries.Select(entry => new KeyValuePair<YamlScalar, YamlNode>(new(At("pawl"), entry.Key, IsQuoted: false), entry.Value)),
    ]);
}
