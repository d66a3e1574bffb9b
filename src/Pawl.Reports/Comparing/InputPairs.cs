using System.Globalization;
using Pawl.Reports.Records;

namespace Pawl.Reports.Comparing;

/// <summary>A declared value on both sides.</summary>
internal readonly record struct InputPair(string Path, InputRecord? Base, InputRecord? Head);

/// <summary>
/// Pairs declared values by path. Entries of a list are paired by what they say, so that one put in front does not change all that follow:
/// equal ones first, then those that have most in common, then what is left of plain values in order.
/// </summary>
internal static class InputPairs
{
    /// <summary>A value and the part of its path that is not walked yet.</summary>
    private readonly record struct Rest(string Path, InputRecord Input);

    public static List<InputPair> Of(ImmutableArray<InputRecord> @base, ImmutableArray<InputRecord> head)
    {
        List<InputPair> pairs = [];
        Pair("", [.. @base.Select(i => new Rest(i.Path, i))], [.. head.Select(i => new Rest(i.Path, i))], pairs);
        return pairs;
    }

    private static void Pair(string prefix, List<Rest> @base, List<Rest> head, List<InputPair> pairs)
    {
        var (plainBase, listsBase) = Split(@base);
        var (plainHead, listsHead) = Split(head);
        foreach (var (path, input) in plainHead)
            pairs.Add(new(prefix + path, plainBase.TryGetValue(path, out var before) ? before : null, input));
        foreach (var (path, input) in plainBase)
        {
            if (!plainHead.ContainsKey(path))
                pairs.Add(new(prefix + path, input, null));
        }

        foreach (var key in listsHead.Keys.Union(listsBase.Keys, StringComparer.Ordinal))
            Lists(prefix + key, listsBase.GetValueOrDefault(key) ?? [], listsHead.GetValueOrDefault(key) ?? [], pairs);
    }

    private static (OrderedDictionary<string, InputRecord> Plain, OrderedDictionary<string, SortedDictionary<int, List<Rest>>> Lists) Split(List<Rest> values)
    {
        var plain = new OrderedDictionary<string, InputRecord>(StringComparer.Ordinal);
        var lists = new OrderedDictionary<string, SortedDictionary<int, List<Rest>>>(StringComparer.Ordinal);
        foreach (var value in values)
        {
            var open = value.Path.IndexOf('[', StringComparison.Ordinal);
            var close = open < 0 ? -1 : value.Path.IndexOf(']', open);
            if (close < 0 || !int.TryParse(value.Path.AsSpan(open + 1, close - open - 1), NumberStyles.None, CultureInfo.InvariantCulture, out var number))
            {
                plain[value.Path] = value.Input;
                continue;
            }

            var key = value.Path[..open];
            if (!lists.TryGetValue(key, out var list))
                lists[key] = list = [];
            if (!list.TryGetValue(number, out var item))
                list[number] = item = [];
            item.Add(value with { Path = value.Path[(close + 1)..] });
        }

        return (plain, lists);
    }

    private static void Lists(string key, SortedDictionary<int, List<Rest>> @base, SortedDictionary<int, List<Rest>> head, List<InputPair> pairs)
    {
        var left = new SortedDictionary<int, List<Rest>>(@base);
        var partner = new SortedDictionary<int, int?>();
        foreach (var (number, _) in head)
            partner[number] = null;

        Match((mine, theirs) => mine.Count == theirs.Count && Common(mine, theirs) == mine.Count ? 1 : 0);
        Match(Common);
        Match((mine, theirs) => mine is [{ Path: "" }] && theirs is [{ Path: "" }] ? 1 : 0);
        foreach (var (number, item) in head)
            Pair(At(key, number), partner[number] is { } found ? @base[found] : [], item, pairs);
        foreach (var (number, item) in left)
            Pair(At(key, number), item, [], pairs);

        // The best there is for each in turn; among equals the one in the same place, else the first.
        void Match(Func<List<Rest>, List<Rest>, int> likeness)
        {
            foreach (var (number, item) in head)
            {
                if (partner[number] is not null)
                    continue;
                var (best, most) = (0, 0);
                foreach (var (candidate, other) in left)
                {
                    var like = likeness(item, other);
                    if (like > most || (like == most && like > 0 && candidate == number))
                        (best, most) = (candidate, like);
                }

                if (most == 0)
                    continue;
                partner[number] = best;
                left.Remove(best);
            }
        }
    }

    private static int Common(List<Rest> one, List<Rest> other)
    {
        var count = 0;
        foreach (var value in one)
            count += other.Exists(o => o.Path == value.Path && o.Input.Written == value.Input.Written) ? 1 : 0;
        return count;
    }

    private static string At(string key, int number) => string.Create(CultureInfo.InvariantCulture, $"{key}[{number}]");
}
