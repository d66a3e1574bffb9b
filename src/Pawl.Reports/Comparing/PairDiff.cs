using Pawl.Reports.Records;

namespace Pawl.Reports.Comparing;

/// <summary>One spec on both sides, as records; either may be absent, not both.</summary>
/// <param name="Base">In the base.</param>
/// <param name="Head">In the head.</param>
public sealed record RecordPair(ConformanceRecord? Base, ConformanceRecord? Head)
{
    /// <summary>Whether the base holds it and cannot be judged, so that all of the head counts as new.</summary>
    public bool BaseIsRefused { get; init; }
}

/// <summary>What differs in one variant; small, so that the records need not be kept.</summary>
public sealed record PairDiff
{
    /// <summary>Which variant.</summary>
    public required IdentityRecord Identity { get; init; }

    /// <summary>Its verdicts.</summary>
    public required VariantChange Variant { get; init; }

    internal ImmutableArray<InputPair> Inputs { get; init; } = [];

    internal ImmutableArray<CheckDiff> Checks { get; init; } = [];

    internal ImmutableArray<RuleChange> Rules { get; init; } = [];

    internal ImmutableArray<ConcessionChange> Concessions { get; init; } = [];

    internal ImmutableArray<SubjectChange> Subjects { get; init; } = [];

    internal ImmutableArray<QuantityChange> Quantities { get; init; } = [];

    /// <summary>Compares two records of one variant.</summary>
    public static PairDiff Of(RecordPair pair)
    {
        ArgumentNullException.ThrowIfNull(pair);
        var (@base, head) = (pair.Base, pair.Head);
        var identity = (head ?? @base ?? throw new ArgumentException("A pair has at least one side.", nameof(pair))).Identity;
        var inputs = @base is null || head is null ? [] : DifferingInputs(@base, head);
        return new()
        {
            Identity = identity,
            Variant = new()
            {
                Variant = identity.Variant,
                Presence = pair.BaseIsRefused ? PresenceWord.Both : @base is null ? PresenceWord.Added : head is null ? PresenceWord.Removed : PresenceWord.Both,
                BaseFile = @base?.Identity.File,
                HeadFile = head?.Identity.File,
                BaseVerdict = @base?.Verdict.Word,
                HeadVerdict = head?.Verdict.Word,
                BaseCounts = @base?.Coverage.Overall,
                HeadCounts = head?.Coverage.Overall,
                IsWorse = head is not null && !pair.BaseIsRefused && head.Verdict.Word > (@base?.Verdict.Word ?? VerdictWord.Conforms),
            },
            Inputs = inputs,
            Checks = DifferingChecks(@base, head, inputs),
            Rules = @base is null || head is null ? [] : RuleDiff.Of(@base.Rules, head.Rules),
            Concessions = ConcessionDiff.Of(@base?.Inputs ?? [], head?.Inputs ?? [], identity.Variant),
            Subjects = @base is null || head is null ? [] : DifferingSubjects(@base, head),
            Quantities = @base is null || head is null ? [] : DifferingQuantities(@base, head),
        };
    }

    /// <summary>What the specs declare, and what catalogues and adapters declare for them.</summary>
    private static ImmutableArray<InputPair> DifferingInputs(ConformanceRecord @base, ConformanceRecord head)
    {
        List<InputPair> pairs = InputPairs.Of(@base.Inputs, head.Inputs);
        pairs.RemoveAll(static p => p.Base?.Written == p.Head?.Written || p.Path.StartsWith(ConcessionDiff.Section, StringComparison.Ordinal));

        // Another entry of a catalogue is no change of the catalogue: that stands in the spec.
        var changed = head.Files.Where(f => @base.Files.Any(b => b.Path == f.Path && b.Sha256 != f.Sha256)).Select(f => f.Path).ToHashSet(StringComparer.Ordinal);
        var own = head.Inputs.Select(static i => i.Place.File).ToHashSet(StringComparer.Ordinal);
        HashSet<PlaceRecord> seen = [];
        var before = new Dictionary<string, InputRecord>(StringComparer.Ordinal);
        foreach (var was in Declared(@base))
            before[was.Path] = was;
        foreach (var now in Declared(head))
        {
            if (changed.Contains(now.Place.File) && !own.Contains(now.Place.File) && before.TryGetValue(now.Path, out var was)
                && was.Place.File == now.Place.File && was.Written != now.Written && seen.Add(now.Place))
            {
                pairs.Add(new(now.Path, was, now));
            }
        }

        return [.. pairs];
    }

    private static IEnumerable<InputRecord> Declared(ConformanceRecord record)
    {
        foreach (var subject in record.Subjects)
        {
            foreach (var quantity in subject.Quantities)
            {
                if (quantity is { Written: { } written, Place: { } place })
                    yield return new() { Path = $"{subject.Path}.{quantity.Name}", Written = written, Place = place };
            }
        }
    }

    private static ImmutableArray<CheckDiff> DifferingChecks(ConformanceRecord? @base, ConformanceRecord? head, ImmutableArray<InputPair> inputs)
    {
        // A spec that goes is said once, not check by check.
        if (head is null)
            return [];
        var before = new Dictionary<(string, string), FindingRecord>();
        foreach (var was in @base?.Findings ?? [])
            before[(was.Rule, was.Subject)] = was;
        var beneath = (Base: new Beneath(@base, [.. inputs.Select(static i => i.Base?.Place)]), Head: new Beneath(head, [.. inputs.Select(static i => i.Head?.Place)]));
        List<CheckDiff> checks = [];

        // Speeds, torques, reactions and places of planets are solved for the train as a whole: their derivation names no single value.
        ImmutableArray<int> untraced = inputs.Length == 1 ? [0] : [.. Enumerable.Range(0, inputs.Length).Where(i => IsOfTheTrain(inputs[i].Path))];
        foreach (var finding in head.Findings)
        {
            before.Remove((finding.Rule, finding.Subject), out var was);
            Add(was, finding);
        }

        foreach (var finding in @base?.Findings ?? [])
        {
            if (before.ContainsKey((finding.Rule, finding.Subject)))
                Add(finding, null);
        }

        return [.. checks];

        void Add(FindingRecord? was, FindingRecord? now)
        {
            if (EffectKinds.Of(was, now) is not { } kind || (@base is null && kind is EffectKind.NewlyJudged))
                return;
            var causes = beneath.Base.Of(was).Union(beneath.Head.Of(now));
            checks.Add(new(kind, was, now, EffectKinds.Lost(was, now), causes.Count == 0 ? untraced : [.. causes]));
        }
    }

    private static bool IsOfTheTrain(string path) =>
        path.StartsWith("train.", StringComparison.Ordinal) || path.StartsWith("duty.", StringComparison.Ordinal);

    private static ImmutableArray<SubjectChange> DifferingSubjects(ConformanceRecord @base, ConformanceRecord head)
    {
        var before = @base.Subjects.Select(static s => s.Path).ToHashSet(StringComparer.Ordinal);
        var after = head.Subjects.Select(static s => s.Path).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. from s in head.Subjects where !before.Contains(s.Path) select Change(s, PresenceWord.Added),
            .. from s in @base.Subjects where !after.Contains(s.Path) select Change(s, PresenceWord.Removed),
        ];

        SubjectChange Change(SubjectRecord subject, PresenceWord presence) =>
            new() { Subject = subject.Path, Kind = subject.Title, Presence = presence, Place = subject.Place, Variants = [head.Identity.Variant] };
    }

    private static ImmutableArray<QuantityChange> DifferingQuantities(ConformanceRecord @base, ConformanceRecord head)
    {
        var before = new Dictionary<(string, string), QuantityRecord>();
        foreach (var subject in @base.Subjects)
        {
            foreach (var quantity in subject.Quantities)
                before[(subject.Path, quantity.Name)] = quantity;
        }

        var moved = ImmutableArray.CreateBuilder<QuantityChange>();
        foreach (var subject in head.Subjects)
        {
            foreach (var now in subject.Quantities)
            {
                if (!before.TryGetValue((subject.Path, now.Name), out var was) || !HasMoved(was.Value, now.Value)
                    || (was.Origin == OriginWord.Declared && now.Origin == OriginWord.Declared))
                {
                    continue;
                }

                moved.Add(new()
                {
                    Quantity = $"{subject.Path}.{now.Name}",
                    Title = now.Symbol.Length == 0 ? now.Title : $"{now.Title} {now.Symbol}",
                    Variants = [new() { Variant = head.Identity.Variant, Base = was.Value, Head = now.Value, Share = Share(was.Value, now.Value) }],
                });
            }
        }

        return moved.DrainToImmutable();
    }

    private static bool HasMoved(ValueRecord was, ValueRecord now) =>
        was.Text != now.Text || was.Truth != now.Truth || was.Unit != now.Unit
        || Moved(was.Nominal, now.Nominal) || Moved(was.Low, now.Low) || Moved(was.High, now.High);

    private static bool Moved(double? was, double? now) =>
        was is { } a && now is { } b ? !EffectKinds.AreAlike(a, b) : was is null != now is null;

    private static double? Share(ValueRecord was, ValueRecord now) =>
        was.Unit == now.Unit && was.Nominal is { } a and not 0 && now.Nominal is { } b ? (b - a) / Math.Abs(a) : null;
}

/// <summary>A check that came out otherwise in one variant.</summary>
/// <param name="Kind">What became of it.</param>
/// <param name="Base">In the base.</param>
/// <param name="Head">In the head.</param>
/// <param name="Lost">Share of the margin that is lost.</param>
/// <param name="Causes">Numbers of the changed inputs of the variant.</param>
internal sealed record CheckDiff(EffectKind Kind, FindingRecord? Base, FindingRecord? Head, double? Lost, ImmutableArray<int> Causes);

/// <summary>Names what became of a check.</summary>
internal static class EffectKinds
{
    /// <summary>What is no more than the rounding of another order of sums.</summary>
    private const double Noise = 1e-9;

    public static bool AreAlike(double a, double b) => Math.Abs(a - b) <= Noise * Math.Max(1e-3, Math.Max(Math.Abs(a), Math.Abs(b)));

    /// <summary>Null when nothing that matters became of it.</summary>
    public static EffectKind? Of(FindingRecord? was, FindingRecord? now) => (was?.Outcome, now?.Outcome) switch
    {
        (OutcomeWord.Fails, OutcomeWord.Fails) => ByMargin(was!, now!),
        (_, OutcomeWord.Fails) => EffectKind.NewlyFails,
        (OutcomeWord.Fails, OutcomeWord.Conforms or OutcomeWord.UnderConcession) => EffectKind.Mended,
        (OutcomeWord.UnderConcession, OutcomeWord.Conforms) => EffectKind.Mended,
        (OutcomeWord.NotEvaluated, OutcomeWord.NotEvaluated) => null,
        (OutcomeWord.Conforms or OutcomeWord.Fails or OutcomeWord.UnderConcession, OutcomeWord.NotEvaluated) => EffectKind.NoLongerEvaluated,
        (_, OutcomeWord.NotEvaluated) => EffectKind.NewlyOpen,
        (OutcomeWord.Conforms or OutcomeWord.Fails or OutcomeWord.UnderConcession, null or OutcomeWord.NotApplicable) => EffectKind.NoLongerJudged,
        (OutcomeWord.UnderConcession, OutcomeWord.UnderConcession) or (OutcomeWord.Conforms, OutcomeWord.Conforms) => ByMargin(was!, now!),
        (_, OutcomeWord.UnderConcession) => EffectKind.NewlyConceded,
        (_, OutcomeWord.Conforms) => EffectKind.NewlyJudged,
        _ => null,
    };

    /// <summary>Share of the margin of the base that is lost; null without margins.</summary>
    public static double? Lost(FindingRecord? was, FindingRecord? now) => (was?.Margin, now?.Margin) switch
    {
        ({ } a, { } b) when AreAlike(a, b) => 0,
        (0, { } b) => b < 0 ? 1 : -1,
        ({ } a, { } b) => (a - b) / Math.Abs(a),
        _ => null,
    };

    private static EffectKind? ByMargin(FindingRecord was, FindingRecord now) => Lost(was, now) switch
    {
        > 0 => EffectKind.MarginLost,
        < 0 => EffectKind.MarginGained,
        _ => null,
    };
}
