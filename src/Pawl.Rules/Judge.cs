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

        var docket = new Docket(rules.Rules, analysis.Subjects, analysis.Spec.Concessions.Length);
        docket.JudgeDesign();
        var concessions = analysis.Spec.Concessions.IsEmpty
            ? []
            : new ConcessionBoard(docket, asOf).Apply(analysis.Spec.Concessions);
        docket.JudgeConcessions(concessions);
        docket.Place(analysis.Spec.File);

        var findings = docket.Findings;
        return new()
        {
            Analysis = analysis,
            Rules = rules,
            AsOf = asOf,
            Findings = findings,
            Coverage = Coverage.Of(findings),
            Concessions = ConcessionBoard.SubjectsOf(concessions),
        };
    }
}
