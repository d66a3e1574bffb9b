using Pawl.Reports.Records;

namespace Pawl.Reports.Rendering;

/// <summary>Failures of one rule with one cause: the worst of them, and the other subjects.</summary>
/// <param name="Worst">The finding with the worst margin; its value is shown.</param>
/// <param name="Others">The others, worst first.</param>
/// <param name="IsConsequence">Whether it follows from an entry above it.</param>
internal sealed record Failure(FindingRecord Worst, ImmutableArray<FindingRecord> Others, bool IsConsequence)
{
    /// <summary>The other subjects: <c>also: bearings.b, bearings.c (3 in all)</c>; empty without any.</summary>
    public string Also(Func<string, string> show) => Others.IsEmpty
        ? ""
        : $"also: {string.Join(", ", Others.Select(other => show(other.Subject)))} ({Phrase.Whole(Others.Length + 1)} in all)";
}

/// <summary>What fails, as a reader needs it: gravest first, a cause before what follows from it, one entry for one cause.</summary>
/// <remarks>
/// Failures of one rule that one place governs are one entry. What the baseline lists comes last. An entry counts as grave as the gravest that follows from it, so that
/// a cause stands before its consequences whatever its own severity; among equals those of rules that explain others come first.
/// </remarks>
internal sealed class FailureList
{
    private readonly List<Entry> _entries = [];
    private readonly Dictionary<(string Rule, string Subject), Entry> _bySubject = [];

    private FailureList(ConformanceRecord record)
    {
        var basic = record.Rules.Where(static rule => !rule.Explains.IsEmpty).Select(static rule => rule.Id).ToHashSet(StringComparer.Ordinal);
        var failing = FindingOrder.WorstFirst(record.Findings, OutcomeWord.Fails);
        var known = failing.ToDictionary(static finding => (finding.Rule, finding.Subject));
        var byKey = new Dictionary<Key, Entry>();
        foreach (var finding in failing)
        {
            var cause = finding.FollowsFrom is { } name ? known.GetValueOrDefault((name.Rule, name.Subject)) : null;
            var key = new Key(finding.Rule, Spot(finding), Words(finding), finding.Known?.Holds, cause?.Rule, cause is null ? null : Spot(cause));
            if (byKey.TryGetValue(key, out var entry))
                entry.Others.Add(finding);
            else
                _entries.Add(byKey[key] = entry = new(finding, basic.Contains(finding.Rule)));
            _bySubject[(finding.Rule, finding.Subject)] = entry;
        }

        foreach (var entry in _entries)
        {
            if (entry.Worst.FollowsFrom is { } name && _bySubject.GetValueOrDefault((name.Rule, name.Subject)) is { } cause)
                (entry.Cause = cause).Consequences.Add(entry);
        }
    }

    private sealed record Key(string Rule, (string, int, int) Spot, string? Words, bool? IsKnown, string? Cause, (string, int, int)? CauseSpot);

    private sealed class Entry(FindingRecord worst, bool isBasic)
    {
        public FindingRecord Worst { get; } = worst;

        public bool IsBasic { get; } = isBasic;

        public List<FindingRecord> Others { get; } = [];

        public List<Entry> Consequences { get; } = [];

        public Entry? Cause { get; set; }

        /// <summary>Whether it and all that follows from it is in the baseline.</summary>
        public bool IsKnown => Worst.Known is { Holds: true } && Consequences.TrueForAll(static each => each.IsKnown);

        public SeverityWord Gravity => Consequences.Aggregate(Worst.Severity, static (most, each) => each.Gravity > most ? each.Gravity : most);
    }

    public static List<Failure> Of(ConformanceRecord record)
    {
        var list = new FailureList(record);

        // The entries are in order already, and sorting by keys keeps the order of equals.
        List<Failure> failures = [];
        foreach (var entry in list._entries.Where(static e => e.Cause is null).OrderBy(static e => e.IsKnown).ThenByDescending(static e => e.Gravity).ThenByDescending(static e => e.IsBasic))
            Add(entry, false, failures);
        return failures;
    }

    private static void Add(Entry entry, bool isConsequence, List<Failure> failures)
    {
        failures.Add(new(entry.Worst, [.. entry.Others], isConsequence));
        foreach (var consequence in entry.Consequences)
            Add(consequence, true, failures);
    }

    private static (string, int, int) Spot(FindingRecord finding) => (finding.Place.File, finding.Place.Line, finding.Place.Column);

    // A text says what is wrong: two that differ are two findings.
    private static string? Words(FindingRecord finding) => finding.Measured?.Value.Text;
}
