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

        var plan = new EvaluationPlan(rules.Rules, analysis.Subjects, analysis.Spec.Concessions.Length);
        plan.JudgeDesign();
        var concessions = analysis.Spec.Concessions.IsEmpty
            ? []
            : new ConcessionMatcher(plan, asOf).Apply(analysis.Spec.Concessions);
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
