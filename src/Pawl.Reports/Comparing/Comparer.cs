using Pawl.Reports.Records;

namespace Pawl.Reports.Comparing;

/// <summary>Joins what differs in each variant: one cause is one change, one effect of it is one entry, with the variants.</summary>
public static class Comparer
{
    /// <summary>The comparison of several variants.</summary>
    /// <param name="base">What is compared with.</param>
    /// <param name="head">What is compared.</param>
    /// <param name="pairs">The variants that are not the same on both sides.</param>
    /// <param name="unchanged">How many are.</param>
    public static ComparisonRecord Join(SideRecord @base, SideRecord head, ImmutableArray<PairDiff> pairs, int unchanged)
    {
        var names = Names(pairs);
        var (changes, numbers) = Changes(pairs, names);
        var effects = Effects(pairs, names, numbers);

        // The gravest first; a number of a change is its place in that order.
        var gravity = Enumerable.Range(0, changes.Count).ToDictionary(static i => i, i => effects.FirstOrDefault(e => e.Causes.Contains(i)));
        int[] order =
        [
            .. Enumerable.Range(0, changes.Count)
                .OrderBy(i => gravity[i] is null)
                .ThenBy(i => gravity[i], Comparer<Effect?>.Create(EffectOrder.Compare))
                .ThenBy(i => Place(changes[i]).File, StringComparer.Ordinal).ThenBy(i => Place(changes[i]).Line).ThenBy(i => Place(changes[i]).Column),
        ];
        var place = new int[order.Length];
        for (var i = 0; i < order.Length; i++)
            place[order[i]] = i;
        var counts = new int[order.Length];
        foreach (var cause in effects.SelectMany(static e => e.Causes))
            counts[place[cause]]++;

        return new()
        {
            Format = ComparisonRecord.CurrentFormat,
            Tool = RecordBuilder.Tool,
            Base = @base,
            Head = head,
            Variants =
            [
                .. pairs.Select((p, i) => p.Variant with { Variant = names[i] })
                    .OrderByDescending(static v => v.IsWorse).ThenByDescending(static v => v.HeadVerdict ?? VerdictWord.NotJudged)
                    .ThenBy(static v => v.HeadFile ?? v.BaseFile, StringComparer.Ordinal),
            ],
            Unchanged = unchanged,
            Changes = [.. order.Select(i => changes[i])],
            Effects = [.. effects.Select(e => e with { Causes = [.. e.Causes.Select(c => place[c]).OrderBy(c => counts[c]).ThenBy(static c => c)] })],
            Rules = [.. pairs.SelectMany(static p => p.Rules).Distinct()],
            Concessions = Joined(pairs, names, static p => p.Concessions, static c => c with { Variants = [] }, static (c, v) => c with { Variants = v }),
            Subjects = Joined(pairs, names, static p => p.Subjects, static s => s with { Variants = [] }, static (s, v) => s with { Variants = v }),
            Quantities = Quantities(pairs, names),
        };
    }

    /// <summary>The variant alone where that is clear, else with its family, else with its file.</summary>
    internal static ImmutableArray<string> Names(IReadOnlyList<IdentityRecord> identities)
    {
        var names = identities.Select(static i => i.Variant).ToArray();
        Lengthen(static i => $"{i.Family} {i.Variant}");
        Lengthen(static i => $"{i.Family} {i.Variant} ({i.File})");
        return [.. names];

        void Lengthen(Func<IdentityRecord, string> name)
        {
            var twice = names.GroupBy(static n => n, StringComparer.Ordinal).Where(static g => g.Count() > 1).Select(static g => g.Key).ToHashSet(StringComparer.Ordinal);
            for (var i = 0; i < names.Length; i++)
                names[i] = twice.Contains(names[i]) ? name(identities[i]) : names[i];
        }
    }

    private static ImmutableArray<string> Names(ImmutableArray<PairDiff> pairs) => Names([.. pairs.Select(static p => p.Identity)]);

    private static PlaceRecord Place(ValueChange change) => (change.Head ?? change.Base)!.Place;

    private static (List<ValueChange> Changes, List<int[]> Numbers) Changes(ImmutableArray<PairDiff> pairs, ImmutableArray<string> names)
    {
        List<ValueChange> changes = [];
        List<int[]> numbers = [];
        var known = new Dictionary<(PlaceRecord?, PlaceRecord?, string?, string?), int>();
        for (var p = 0; p < pairs.Length; p++)
        {
            var own = new int[pairs[p].Inputs.Length];
            for (var i = 0; i < own.Length; i++)
            {
                var (path, was, now) = pairs[p].Inputs[i];
                var key = (was?.Place, now?.Place, was?.Written, now?.Written);
                if (!known.TryGetValue(key, out own[i]))
                {
                    known[key] = own[i] = changes.Count;
                    changes.Add(new() { Path = path, Base = was, Head = now, Variants = [] });
                }

                var change = changes[own[i]];
                if (!change.Variants.Contains(names[p]))
                    changes[own[i]] = change with { Variants = change.Variants.Add(names[p]) };
            }

            numbers.Add(own);
        }

        return (changes, numbers);
    }

    private static List<Effect> Effects(ImmutableArray<PairDiff> pairs, ImmutableArray<string> names, List<int[]> numbers)
    {
        var known = new Dictionary<(EffectKind, string, string, string, PlaceRecord), Effect>();
        for (var p = 0; p < pairs.Length; p++)
        {
            foreach (var check in pairs[p].Checks)
            {
                var finding = (check.Head ?? check.Base)!;
                ImmutableArray<int> causes = [.. check.Causes.Select(c => numbers[p][c]).Distinct().Order()];
                var key = (check.Kind, finding.Rule, finding.Subject, string.Join(',', causes.Select(Phrase.Whole)), finding.Place);
                if (!known.TryGetValue(key, out var effect))
                {
                    effect = new()
                    {
                        Kind = check.Kind,
                        Rule = finding.Rule,
                        Subject = finding.Subject,
                        Title = finding.Title,
                        Severity = finding.Severity,
                        Causes = causes,
                        Place = finding.Place,
                        Variants = [],
                    };
                }

                known[key] = effect with
                {
                    Variants = effect.Variants.Add(new() { Variant = names[p], Base = Short(check.Base), Head = Short(check.Head), Lost = check.Lost }),
                };
            }
        }

        List<Effect> effects = [.. known.Values];
        effects.Sort(EffectOrder.Compare);
        return effects;
    }

    private static FindingRecord? Short(FindingRecord? finding) =>
        finding is null ? null : finding with { Governing = [], Measured = Short(finding.Measured), AtLeast = Short(finding.AtLeast), AtMost = Short(finding.AtMost) };

    private static MeasureRecord? Short(MeasureRecord? measure) => measure is null ? null : measure with { Terms = [] };

    private static ImmutableArray<T> Joined<T>(
        ImmutableArray<PairDiff> pairs, ImmutableArray<string> names, Func<PairDiff, ImmutableArray<T>> of, Func<T, T> bare, Func<T, ImmutableArray<string>, T> with)
        where T : class
    {
        var known = new OrderedDictionary<T, ImmutableArray<string>>();
        for (var p = 0; p < pairs.Length; p++)
        {
            foreach (var one in of(pairs[p]))
            {
                var key = bare(one);
                known[key] = known.TryGetValue(key, out var variants) ? variants.Add(names[p]) : [names[p]];
            }
        }

        return [.. known.Select(k => with(k.Key, k.Value))];
    }

    private static ImmutableArray<QuantityChange> Quantities(ImmutableArray<PairDiff> pairs, ImmutableArray<string> names)
    {
        var known = new OrderedDictionary<string, QuantityChange>(StringComparer.Ordinal);
        for (var p = 0; p < pairs.Length; p++)
        {
            foreach (var moved in pairs[p].Quantities)
            {
                var value = moved.Variants[0] with { Variant = names[p] };
                known[moved.Quantity] = known.TryGetValue(moved.Quantity, out var all) ? all with { Variants = all.Variants.Add(value) } : moved with { Variants = [value] };
            }
        }

        return [.. known.Values.OrderByDescending(static q => q.Most)];
    }
}

/// <summary>Effects in the order of how much they matter.</summary>
internal static class EffectOrder
{
    public static int Compare(Effect? a, Effect? b)
    {
        if (a is null || b is null)
            return (a is null).CompareTo(b is null);
        var order = Rank(a).CompareTo(Rank(b));
        if (order == 0)
            order = (b.Lost ?? double.PositiveInfinity).CompareTo(a.Lost ?? double.PositiveInfinity);
        if (order == 0)
            order = string.CompareOrdinal(a.Rule, b.Rule);
        if (order == 0)
            order = string.CompareOrdinal(a.Subject, b.Subject);
        return order != 0 ? order : string.CompareOrdinal(a.Variants[0].Variant, b.Variants[0].Variant);
    }

    // What fails or is no longer known, errors before the rest; then lost margin; then what is better.
    private static (int, EffectKind, int) Rank(Effect effect) =>
        (effect.Kind switch
        {
            <= EffectKind.NewlyOpen => effect.Severity == SeverityWord.Error ? 0 : 1,
            EffectKind.MarginLost => 2,
            _ => 3,
        }, effect.Kind, SeverityWord.Error - effect.Severity);
}
