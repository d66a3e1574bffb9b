using Pawl.Analysis.Core;
using Pawl.Specs.Text;

namespace Pawl.Rules.Judging;

/// <summary>Tells failures that follow from others by what the rules say of each other.</summary>
internal static class Causes
{
    /// <summary>Names the cause of each failure that has one: the first in the order of the findings.</summary>
    public static void Trace(Finding[] findings)
    {
        List<int> failing = [];
        for (var i = 0; i < findings.Length; i++)
        {
            if (findings[i].Outcome == Outcome.Fails)
                failing.Add(i);
        }

        foreach (var at in failing)
        {
            var cause = findings[at];
            if (cause.Rule.Explains.IsEmpty)
                continue;
            var name = new FindingName(cause.Rule.Id, cause.Subject.Path);
            var compared = cause.Rule.Explains.Contains(Rule.Everything) ? Compared(cause) : null;
            foreach (var other in failing)
            {
                var finding = findings[other];
                if (finding.FollowsFrom is null && finding.Rule != cause.Rule && Covers(cause, compared, finding) && !IsBehind(finding, findings[at], findings))
                    findings[other] = finding with { FollowsFrom = name };
            }
        }
    }

    private static bool Covers(Finding cause, HashSet<SourceSpan>? compared, Finding finding) =>
        compared?.Contains(finding.Span) == true
        || (cause.Rule.Explains.Contains(finding.Rule.Id) && (IsOfTheSame(cause.Subject, finding.Subject) || IsComputedOf(finding, cause.Subject)));

    /// <summary>The same thing, or one that is related to it: a mesh, and a gear in that mesh.</summary>
    private static bool IsOfTheSame(Subject cause, Subject other) => other == cause || other.Related.Values.Contains(cause);

    /// <summary>Whether a quantity of the cause's subject is beneath the value: the centre distance beneath the lash at the output.</summary>
    private static bool IsComputedOf(Finding finding, Subject cause) =>
        finding.Subject.Kind != cause.Kind && Derivation.IsBeneath(finding.Measured, quantity => quantity.Subject == cause.Path);

    /// <summary>Whether the chain of causes above a finding holds another, so that no two follow from each other.</summary>
    private static bool IsBehind(Finding wanted, Finding finding, Finding[] findings)
    {
        while (finding.FollowsFrom is { } name)
        {
            if (name.Rule == wanted.Rule.Id && name.Subject == wanted.Subject.Path)
                return true;
            finding = Array.Find(findings, each => each.Rule.Id == name.Rule && each.Subject.Path == name.Subject)!;
        }

        return false;
    }

    private static HashSet<SourceSpan> Compared(Finding cause) =>
        [.. Derivation.DeclaredBeneath(cause.Measured).Select(static value => ((Origin.Declared)value.Origin).Span)];
}
