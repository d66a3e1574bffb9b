using CsCheck;
using Pawl.Reports.Comparing;
using Pawl.Reports.Records;

namespace Pawl.Reports.Tests.Comparing;

public sealed class InputPairsTests
{
    private static InputRecord At(string path, string written, int line = 1) =>
        new() { Path = path, Written = written, Place = new() { File = "s.yaml", Line = line, Column = 1, EndLine = line, EndColumn = 2 } };

    private static List<(string Path, string? Base, string? Head)> Differing(InputRecord[] @base, InputRecord[] head) =>
        [.. InputPairs.Of([.. @base], [.. head]).Select(p => (p.Path, p.Base?.Written, p.Head?.Written)).Where(p => p.Item2 != p.Item3).Order()];

    private static InputRecord[] List(params string[][] items) =>
        [.. items.SelectMany((item, i) => item.Select((text, k) => At($"train.meshes[{i + 1}].{(k == 0 ? "gears[1]" : $"k{k}")}", text)))];

    [Fact]
    public void A_plain_value_is_changed_added_or_removed()
    {
        Assert.Equal(
            [("a", "1 mm", "2 mm"), ("b", "x", null), ("c", null, "y")],
            Differing([At("a", "1 mm"), At("b", "x")], [At("a", "2 mm"), At("c", "y")]));
    }

    [Fact]
    public void An_entry_in_front_changes_none_that_follow()
    {
        Assert.Equal(
            [("train.meshes[1].gears[1]", null, "idler"), ("train.meshes[1].k1", null, "5 mm")],
            Differing(List(["sun", "1 mm"], ["ring", "2 mm"]), List(["idler", "5 mm"], ["sun", "1 mm"], ["ring", "2 mm"])));
    }

    [Fact]
    public void A_changed_entry_that_moves_is_known_by_what_it_keeps()
    {
        Assert.Equal(
            [("train.meshes[2].k1", "1 mm", "3 mm")],
            Differing(List(["sun", "1 mm", "js7"], ["ring", "2 mm", "h9"]), List(["ring", "2 mm", "h9"], ["sun", "3 mm", "js7"])));
    }

    [Fact]
    public void Plain_values_of_a_list_are_paired_in_order_where_none_is_the_same() =>
        Assert.Equal([("steps[1]", "30 %", "40 %")], Differing([At("steps[1]", "30 %"), At("steps[2]", "60 %")], [At("steps[1]", "40 %"), At("steps[2]", "60 %")]));

    // Whatever the order of a list, nothing that it says has changed.
    [Fact]
    public void Reordering_changes_nothing() =>
        Gen.Select(Gen.Int[0, 9].Array[0, 6], Gen.Int).Sample((numbers, seed) =>
        {
            string[][] items = [.. numbers.Select(n => (string[])[$"g{n}", $"{n} mm"])];
            string[][] other = [.. items];
            new Random(seed).Shuffle(other);
            return Differing(List(items), List(other)).Count == 0;
        }, seed: "0000KOIPe036", iter: 300);

    // Every value of both sides is in just one pair.
    [Fact]
    public void Every_value_is_in_one_pair() =>
        Gen.Select(Gen.Int[0, 4].Array[0, 5], Gen.Int[0, 4].Array[0, 5]).Sample((one, other) =>
        {
            var (@base, head) = (List([.. one.Select(n => (string[])[$"g{n}", "x"])]), List([.. other.Select(n => (string[])[$"g{n}", "y"])]));
            var pairs = InputPairs.Of([.. @base], [.. head]);
            return pairs.Count(p => p.Base is not null) == @base.Length && pairs.Count(p => p.Head is not null) == head.Length
                && pairs.Select(p => p.Head).OfType<InputRecord>().Distinct().Count() == head.Length;
        }, seed: "0000KOIPe036", iter: 300);
}
