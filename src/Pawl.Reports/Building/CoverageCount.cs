using Pawl.Analysis.Core;
using Pawl.Reports.Records;

namespace Pawl.Reports.Building;

/// <summary>Counts outcomes, overall and by domain, the domains in the order of their subjects.</summary>
internal static class CoverageCount
{
    public static CoverageRecord Of(ImmutableArray<FindingRecord> findings, ImmutableArray<Subject> subjects)
    {
        var overall = new Tally();
        List<(string Domain, Tally Tally)> domains = [];
        foreach (var subject in subjects)
            TallyOf(domains, subject.Kind.Domain);
        foreach (var finding in findings)
        {
            overall.Add(finding);
            TallyOf(domains, finding.Domain).Add(finding);
        }

        domains.RemoveAll(d => d.Tally.IsEmpty);

        return new()
        {
            Overall = overall.Counts,
            Domains =
            [
                .. domains.Select(d =>
                    new DomainRecord
                    {
                        Domain = d.Domain,
                        Counts = d.Tally.Counts,
                        WorstMargin = d.Tally.Worst?.Margin,
                        WorstAbsoluteMargin = d.Tally.Worst?.AbsoluteMargin,
                        WorstErrorMargin = d.Tally.WorstError?.Margin,
                        WorstErrorAbsoluteMargin = d.Tally.WorstError?.AbsoluteMargin,
                        FailingErrors = d.Tally.FailingErrors,
                    }),
            ],
        };
    }

    private static Tally TallyOf(List<(string Domain, Tally Tally)> domains, string name)
    {
        foreach (var (domain, known) in domains)
        {
            if (domain == name)
                return known;
        }

        var tally = new Tally();
        domains.Add((name, tally));
        return tally;
    }

    private sealed class Tally
    {
        private readonly int[] _count = new int[5];

        /// <summary>The finding of the least margin.</summary>
        public FindingRecord? Worst { get; private set; }

        /// <summary>The same among those of severity error.</summary>
        public FindingRecord? WorstError { get; private set; }

        public int FailingErrors { get; private set; }

        public bool IsEmpty => !_count.AsSpan().ContainsAnyExcept(0);

        public CountsRecord Counts => new()
        {
            Conforms = _count[(int)OutcomeWord.Conforms],
            Fails = _count[(int)OutcomeWord.Fails],
            UnderConcession = _count[(int)OutcomeWord.UnderConcession],
            NotEvaluated = _count[(int)OutcomeWord.NotEvaluated],
            NotApplicable = _count[(int)OutcomeWord.NotApplicable],
        };

        public void Add(FindingRecord finding)
        {
            _count[(int)finding.Outcome]++;
            if (IsWorse(finding, Worst))
                Worst = finding;
            if (finding.Severity != SeverityWord.Error)
                return;
            FailingErrors += finding.Outcome == OutcomeWord.Fails ? 1 : 0;
            if (IsWorse(finding, WorstError))
                WorstError = finding;
        }

        private static bool IsWorse(FindingRecord finding, FindingRecord? known) =>
            finding.Margin is { } margin && (known?.Margin is not { } worst || margin < worst);
    }
}
