using Pawl.Reports.Records;

namespace Pawl.Reports.Rendering;

/// <summary>Findings in the order in which a reader needs them.</summary>
internal static class FindingOrder
{
    /// <summary>The findings of one outcome: gravest severity first, then worst margin; a failure without a margin before all.</summary>
    public static List<FindingRecord> WorstFirst(ImmutableArray<FindingRecord> findings, OutcomeWord outcome)
    {
        List<FindingRecord> some = [];
        foreach (var finding in findings)
        {
            if (finding.Outcome == outcome)
                some.Add(finding);
        }

        some.Sort(Compare);
        return some;
    }

    private static int Compare(FindingRecord a, FindingRecord b)
    {
        var order = b.Severity.CompareTo(a.Severity);
        if (order == 0)
            order = (a.Margin ?? double.NegativeInfinity).CompareTo(b.Margin ?? double.NegativeInfinity);
        if (order == 0)
            order = string.CompareOrdinal(a.Rule, b.Rule);
        return order != 0 ? order : string.CompareOrdinal(a.Subject, b.Subject);
    }
}
