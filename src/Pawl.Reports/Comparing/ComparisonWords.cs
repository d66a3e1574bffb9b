using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Comparing;

/// <summary>A comparison in words; nothing is cleaned or escaped here.</summary>
internal static class ComparisonWords
{
    public static string Of(EffectKind kind) => kind switch
    {
        EffectKind.NewlyFails => "newly fails",
        EffectKind.NoLongerEvaluated => "no longer evaluated",
        EffectKind.NoLongerJudged => "no longer judged",
        EffectKind.NewlyConceded => "newly under concession",
        EffectKind.NewlyOpen => "not evaluated",
        EffectKind.MarginLost => "margin lost",
        EffectKind.MarginGained => "margin gained",
        EffectKind.NewlyJudged => "newly judged, conforms",
        _ => "mended",
    };

    public static string Symbol(EffectKind kind) => kind switch
    {
        EffectKind.NewlyFails => Labels.Symbol(OutcomeWord.Fails),
        EffectKind.NoLongerEvaluated or EffectKind.NewlyOpen => Labels.Symbol(OutcomeWord.NotEvaluated),
        EffectKind.NoLongerJudged => Labels.Symbol(OutcomeWord.NotApplicable),
        EffectKind.NewlyConceded => Labels.Symbol(OutcomeWord.UnderConcession),
        EffectKind.MarginLost => "▼",
        EffectKind.MarginGained => "▲",
        _ => Labels.Symbol(OutcomeWord.Conforms),
    };

    /// <summary>A verdict with its sign; a word of its own where there is none.</summary>
    public static string Verdict(VerdictWord? verdict, string none) => verdict is { } word
        ? new VerdictRecord { Word = word, Complete = true, WeakenedRules = 0, Statement = "" } is var record ? $"{Labels.Symbol(record)} {Labels.Of(record)}" : ""
        : none;

    /// <summary><c>✓ conforms → ✗ does not conform</c>; one word where nothing changed.</summary>
    public static string Verdicts(VariantChange variant)
    {
        var (was, now) = (Verdict(variant.BaseVerdict, variant.Presence == PresenceWord.Added ? "new" : "could not be judged"), Verdict(variant.HeadVerdict, "removed"));
        return was == now ? $"{now}, as before" : $"{was} → {now}";
    }

    /// <summary>Written before and after: <c>134.3 mm → 135.4 mm</c>.</summary>
    public static string Values(ValueChange change) => (change.Base, change.Head) switch
    {
        ({ } was, { } now) => $"{Quoted(was.Written)} → {Quoted(now.Written)}",
        (null, { } now) => $"added, {Quoted(now.Written)}",
        ({ } was, null) => $"removed, was {Quoted(was.Written)}",
        _ => "",
    };

    public static string Concession(ConcessionChange change) => (change.Base, change.Head) switch
    {
        (null, { } now) => $"came: {now}",
        ({ } was, null) => $"went: {was}",
        _ => $"changed: {change.Base} → {change.Head}",
    };

    public static string Rule(RuleChange change) => change switch
    {
        { What: "rule", Base: null } => $"added: {change.Head}",
        { What: "rule", Head: null } => $"removed: {change.Base}",
        _ => $"{change.What}: {Or(change.Base)} → {Or(change.Head)}",
    };

    /// <summary>What became of the values, by variant, those alike together: <c>margin +12 % → −3 % (R400, R525)</c>.</summary>
    public static string Outcomes(Effect effect, int ofVariants)
    {
        List<(string Says, List<string> Variants)> groups = [];
        foreach (var variant in effect.Variants)
        {
            var says = Says(effect.Kind, variant);
            if (groups.Find(g => g.Says == says) is { Variants: { } variants })
                variants.Add(variant.Variant);
            else
                groups.Add((says, [variant.Variant]));
        }

        return string.Join("; ", groups.Select(g => ofVariants == 1 ? g.Says : $"{g.Says} ({string.Join(", ", g.Variants)})"));
    }

    /// <summary>How many effects of each kind there are, in words: <c>2 newly fail, 1 no longer evaluated</c>.</summary>
    public static string Counts(IEnumerable<EffectKind> kinds)
    {
        var counts = new SortedDictionary<EffectKind, int>();
        foreach (var kind in kinds)
            counts[kind] = counts.GetValueOrDefault(kind) + 1;
        List<string> parts = [];
        foreach (var (kind, count) in counts)
        {
            var number = Phrase.Whole(count);
            parts.Add(kind switch
            {
                EffectKind.NewlyFails => $"{number} newly {Phrase.Verb(count, "fails", "fail")}",
                EffectKind.MarginLost => $"{number} {Phrase.Verb(count, "loses", "lose")} margin",
                EffectKind.MarginGained => $"{number} {Phrase.Verb(count, "gains", "gain")} margin",
                EffectKind.NewlyJudged => $"{number} newly judged",
                _ => $"{number} {Of(kind)}",
            });
        }

        return parts.Count == 0 ? "no check comes out otherwise" : string.Join(", ", parts);
    }

    /// <summary>The effects of each change, each under the first of its causes; those without a cause last, under null.</summary>
    public static IEnumerable<(ValueChange? Change, List<Effect> Effects)> ByCause(ComparisonRecord comparison)
    {
        var under = comparison.Effects.ToLookup(static e => e.Causes is [var first, ..] ? first : -1);
        for (var i = 0; i < comparison.Changes.Length; i++)
            yield return (comparison.Changes[i], [.. under[i]]);
        if (under[-1].Any())
            yield return (null, [.. under[-1]]);
    }

    /// <summary>The line to stand on: that of the head, of the base when the value is gone.</summary>
    public static PlaceRecord Place(ValueChange change) => (change.Head ?? change.Base)!.Place;

    public static string Side(SideRecord side) =>
        (side.Commit.Length == 0 ? side.Name : $"{side.Name} ({side.Commit[..12]})") + (side.ToolVersion.Length == 0 ? "" : $", judged by version {side.ToolVersion}");

    public static string Values(MovedValue value) =>
        $"{Figures.Of(value.Base)} → {Figures.Of(value.Head)}{(value.Share is { } share ? $", {Figures.Margin(share)}" : "")}";

    private static string Says(EffectKind kind, VariantEffect effect) => (kind, effect.Base, effect.Head) switch
    {
        (EffectKind.MarginLost or EffectKind.MarginGained, { } was, { } now) =>
            $"margin {Figures.Margin(was)} → {Figures.Margin(now)}{(effect.Lost is { } lost && was.Margin != 0 ? $", {(lost > 0 ? $"{Lost(lost)} of it lost" : $"{Figures.Share(-lost)} of it gained")}" : "")}",
        (EffectKind.NoLongerEvaluated or EffectKind.NewlyOpen, _, { } now) => string.Join("; ", now.Reasons.DefaultIfEmpty("no reason is given")),
        (EffectKind.NoLongerJudged, _, null) => "its subject or rule is gone",
        (EffectKind.NoLongerJudged, _, { } now) => "does not apply: " + string.Join("; ", now.Reasons.DefaultIfEmpty("its condition does not hold")),
        (_, _, { } now) => Now(now) + (effect.Base is { Margin: not null } was ? $", margin {Figures.Margin(was)} → {Figures.Margin(now)}"
            : now.Margin is null ? "" : $", margin {Figures.Margin(now)}"),
        _ => "",
    };

    // All but a trace is not all.
    private static string Lost(double share) => share is > 0.99 and < 1 ? "more than 99 %" : Figures.Share(share);

    private static string Now(FindingRecord finding)
    {
        if (finding.OneOf is ["none"] && finding.Measured?.Value.Text is { } faults && faults != "none")
            return faults;
        var (value, limit) = Figures.Apart(finding);
        return $"value {value}, limit {limit}";
    }

    private static string Or(string? text) => string.IsNullOrEmpty(text) ? "none" : text;

    private static string Quoted(string text) => text.Length == 0 ? "nothing" : text;
}
