using Pawl.Reports.Records;

namespace Pawl.Reports.Building;

/// <summary>Why checks wait, and what would release the most of them.</summary>
internal static class WaitingList
{
    public static ImmutableArray<WaitRecord> Of(ImmutableArray<FindingRecord> findings)
    {
        List<Wait> waits = [];
        Dictionary<string, Wait> byReason = new(StringComparer.Ordinal);
        foreach (var finding in findings)
        {
            if (finding.Outcome != OutcomeWord.NotEvaluated)
                continue;
            foreach (var reason in finding.Reasons)
            {
                if (!byReason.TryGetValue(reason, out var wait))
                {
                    wait = new(reason, waits.Count);
                    waits.Add(wait);
                    byReason.Add(reason, wait);
                }

                wait.Add(finding);
            }
        }

        waits.Sort();
        return [.. waits.Select(w => w.ToRecord())];
    }

    private sealed class Wait(string reason, int order) : IComparable<Wait>
    {
        private readonly List<string> _rules = [];
        private int _checks;
        private int _alone;

        public void Add(FindingRecord finding)
        {
            _checks++;
            if (finding.Reasons.Length == 1)
                _alone++;
            if (!_rules.Contains(finding.Rule))
                _rules.Add(finding.Rule);
        }

        public int CompareTo(Wait? other)
        {
            if (other is null)
                return 1;
            var byAlone = other._alone.CompareTo(_alone);
            var byChecks = other._checks.CompareTo(_checks);
            return byAlone != 0 ? byAlone : byChecks != 0 ? byChecks : order.CompareTo(other.Order);
        }

        public WaitRecord ToRecord() => new() { Reason = reason, Checks = _checks, Alone = _alone, Rules = [.. _rules] };

        private int Order => order;
    }
}
