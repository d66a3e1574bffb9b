using Pawl.Reports.Records;

namespace Pawl.Reports.Building;

/// <summary>Counts outcomes, overall and by domain.</summary>
internal static class CoverageCount
{
    public static CoverageRecord Of(ImmutableArray<FindingRecord> findings)
    {
        var overall = new Tally();
        List<(string Domain, Tally Tally)> domains = [];
        foreach (var finding in findings)
        {
            overall.Add(finding);
            var at = domains.FindIndex(d => d.Domain == finding.Domain);
            if (at < 0)
            {
                at = domains.Count;
                domains.Add((finding.Domain, new()));
            }

            domains[at].Tally.Add(finding);
        }

        return new()
        {
            Overall = overall.Counts,
            Domains =
            [
                .. domains.Select(d =>
                    new DomainRecord { Domain = d.Domain, Counts = d.Tally.Counts, WorstMargin = d.Tally.WorstMargin }),
            ],
        };
    }

    private sealed class Tally
    {
        private readonly int[] _count = new int[5];

        public double? WorstMargin { get; private set; }

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
            if (finding.Margin is { } margin && (WorstMargin is not { } worst || margin < worst))
                WorstMargin = margin;
        }
    }
}
