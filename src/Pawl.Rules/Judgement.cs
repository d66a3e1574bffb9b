using Pawl.Analysis;
using Pawl.Analysis.Core;

namespace Pawl.Rules;

/// <summary>How much of what applies was evaluated.</summary>
public sealed record Coverage(int Conforms, int Fails, int UnderConcession, int NotEvaluated, int NotApplicable)
{
    public int Applicable => Conforms + Fails + UnderConcession + NotEvaluated;

    public int Evaluated => Conforms + Fails + UnderConcession;

    /// <summary>Counts outcomes.</summary>
    public static Coverage Of(ImmutableArray<Finding> findings)
    {
        Span<int> counts = stackalloc int[5];
        foreach (var finding in findings)
            counts[(int)finding.Outcome]++;
        return new(counts[0], counts[1], counts[2], counts[3], counts[4]);
    }
}

/// <summary>The judgement of one spec by one set of rules on one day.</summary>
public sealed record Judgement
{
    public required GearboxAnalysis Analysis { get; init; }

    public required RuleSet Rules { get; init; }

    public required DateOnly AsOf { get; init; }

    /// <summary>Every rule put to every subject of its kind, by pack, rule and subject in order.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    public required Coverage Coverage { get; init; }

    /// <summary>The concessions of the spec as subjects; they are judged too and stand beside those of the analysis.</summary>
    public ImmutableArray<Subject> Concessions { get; init; } = [];

    /// <summary>The known findings that it was held against; null without a baseline.</summary>
    public Baseline? Baseline { get; init; }

    /// <summary>Entries of the baseline for this spec that nothing fails for.</summary>
    public ImmutableArray<Unneeded> Unneeded { get; init; } = [];
}
