using Pawl.Reports.Records;

namespace Pawl.Reports.Trials;

/// <summary>A value of a spec that was varied.</summary>
/// <param name="Path">Its key.</param>
/// <param name="Unit">Symbol of its unit; empty for words and bare numbers.</param>
/// <param name="Texts">What was tried, as a spec writes it.</param>
/// <param name="Numbers">The same in <paramref name="Unit"/>; empty for words.</param>
public sealed record SweepAxis(string Path, string Unit, ImmutableArray<string> Texts, ImmutableArray<double> Numbers);

/// <summary>What a rule said of a subject at one point.</summary>
/// <param name="Outcome">How it came out.</param>
/// <param name="Margin">Its margin, a share of the limit; null where there is none.</param>
/// <param name="Value">The measured value at its worst, in the unit of the line; null where it is no number.</param>
public sealed record SweepFinding(OutcomeWord Outcome, double? Margin, double? Value);

/// <summary>One rule on one subject over all points.</summary>
public sealed record SweepLine
{
    public required string Rule { get; init; }

    public required string Subject { get; init; }

    public required string Title { get; init; }

    public required SeverityWord Severity { get; init; }

    /// <summary>Unit of the values.</summary>
    public required string Unit { get; init; }

    /// <summary>By point; null where the rule was not put.</summary>
    public required ImmutableArray<SweepFinding?> Findings { get; init; }

    /// <summary>Whether it says the same at every point that could be judged.</summary>
    public required bool IsSame { get; init; }

    /// <summary>Whether it bears the same margin wherever it has one, so that it says nothing of the value.</summary>
    internal bool IsStill => IsSame || (Findings.All(static f => f is not { Outcome: OutcomeWord.Fails, Margin: null }) && Findings.Where(static f => f?.Margin is not null).Select(static f => f!.Margin).Distinct().Count() == 1);

    internal bool FailsAt(int point) => Severity == SeverityWord.Error && Findings[point] is { Outcome: OutcomeWord.Fails };
}

/// <summary>One combination of values.</summary>
/// <param name="Refusal">Why it could not be judged; empty when it could.</param>
/// <param name="IsJudged">Whether it was reached before an interruption, and could be read.</param>
public sealed record SweepPoint(string Refusal, bool IsJudged);

/// <summary>A spec judged over a range of one or two of its values.</summary>
public sealed record SweepRecord
{
    /// <summary>The spec, from the project root.</summary>
    public required string SpecFile { get; init; }

    /// <summary>The first value varied.</summary>
    public required SweepAxis First { get; init; }

    /// <summary>The second; null for one alone.</summary>
    public SweepAxis? Second { get; init; }

    /// <summary>All combinations, the first value fastest.</summary>
    public required ImmutableArray<SweepPoint> Points { get; init; }

    /// <summary>Every rule on every subject, in ordinal order.</summary>
    public required ImmutableArray<SweepLine> Lines { get; init; }

    /// <summary>The finding with the least margin at a point among rules of severity error that do not say the same everywhere; a failure without a margin is less than all.</summary>
    public (SweepLine Line, SweepFinding Finding)? LeastAt(int point)
    {
        (SweepLine, SweepFinding)? least = null;
        var margin = double.PositiveInfinity;
        foreach (var line in Lines)
        {
            if (line.IsStill || line.Severity != SeverityWord.Error || line.Findings[point] is not { Outcome: not (OutcomeWord.NotApplicable or OutcomeWord.NotEvaluated) } finding)
                continue;
            var its = finding.Margin ?? (finding.Outcome == OutcomeWord.Fails ? double.NegativeInfinity : double.PositiveInfinity);
            if (its < margin)
                (least, margin) = ((line, finding), its);
        }

        return least;
    }

    /// <summary>Rules of severity error that fail at a point.</summary>
    public IEnumerable<SweepLine> FailingAt(int point) => Lines.Where(line => line.FailsAt(point));

    /// <summary>Rules of severity error that wait for an input at a point.</summary>
    public int OpenAt(int point) => Lines.Count(line => line.Severity == SeverityWord.Error && line.Findings[point] is { Outcome: OutcomeWord.NotEvaluated });
}
