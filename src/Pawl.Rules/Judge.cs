using Pawl.Analysis;
using Pawl.Rules.Judging;

namespace Pawl.Rules;

/// <summary>Puts rules to subjects.</summary>
public static class Judge
{
    /// <summary>Judges one analysis. Thread-safe; the same input gives the same findings.</summary>
    public static Judgement Of(GearboxAnalysis analysis, RuleSet rules, DateOnly asOf)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        ArgumentNullException.ThrowIfNull(rules);

        // One that a family file grants to other variants says nothing of this one.
        var granted = analysis.Spec.Concessions;
        if (!granted.IsEmpty)
            granted = granted.RemoveAll(concession => !concession.Covers(analysis.Spec.Gearbox.Variant.Value));

        var plan = new EvaluationPlan(rules.Rules, analysis.Subjects, granted.Length);
        plan.JudgeDesign();
        var concessions = granted.IsEmpty ? [] : new ConcessionMatcher(plan, asOf).Apply(granted);
        plan.JudgeConcessions(concessions);
        plan.Place(analysis.Spec.File);

        var findings = plan.Findings;
        return new()
        {
            Analysis = analysis,
            Rules = rules,
            AsOf = asOf,
            Findings = findings,
            Coverage = Coverage.Of(findings),
            Concessions = ConcessionMatcher.SubjectsOf(concessions),
        };
    }
}
