using Pawl.Rules;
using Pawl.Specs;
using Pawl.Specs.Text;

namespace Pawl.Cli.Trials;

/// <summary>One rule on one subject in a trial: what is kept of a finding, so that thousands of trials fit the memory.</summary>
/// <param name="Outcome">How it came out.</param>
/// <param name="Margin">The margin; not a number where there is none.</param>
/// <param name="Value">The measured value at its worst, in the unit of its kind; not a number where it is no number.</param>
internal readonly record struct TrialFinding(Outcome Outcome, double Margin, double Value);

/// <summary>A rule on a subject, as it is the same in every trial.</summary>
internal sealed record TrialRule(string Rule, string Subject, string Title, Severity Severity, string Unit);

/// <summary>The spec with some values changed, as the rules judge it.</summary>
internal sealed record Trial
{
    public required ImmutableArray<ValueChange> Changes { get; init; }

    /// <summary>Why it could not be read with these values; empty when it could.</summary>
    public ImmutableArray<Diagnostic> Refusals { get; init; } = [];

    /// <summary>By the number of the rule in <see cref="TrialBench.Rules"/>; shorter where later trials met further rules.</summary>
    public ImmutableArray<TrialFinding?> Findings { get; init; } = [];

    public bool IsRefused => !Refusals.IsEmpty;

    /// <summary>The finding of a rule; null where it was not put.</summary>
    public TrialFinding? this[int rule] => rule < Findings.Length ? Findings[rule] : null;
}
