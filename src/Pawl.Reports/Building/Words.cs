using Pawl.Analysis.Core;
using Pawl.Reports.Records;
using Pawl.Rules;
using Pawl.Specs.Text;

namespace Pawl.Reports.Building;

/// <summary>Words of the engines as words of the record. The record keeps its words when the engines change theirs.</summary>
internal static class Words
{
    public static CertaintyWord Of(Certainty certainty) => certainty switch
    {
        Certainty.ClosedForm => CertaintyWord.ClosedForm,
        Certainty.Published => CertaintyWord.Published,
        Certainty.Memory => CertaintyWord.Memory,
        Certainty.CommonPractice => CertaintyWord.CommonPractice,
        Certainty.Declared => CertaintyWord.Declared,
        _ => throw new ArgumentOutOfRangeException(nameof(certainty)),
    };

    public static SeverityWord Of(Severity severity) => severity switch
    {
        Severity.Note => SeverityWord.Note,
        Severity.Warning => SeverityWord.Warning,
        Severity.Error => SeverityWord.Error,
        _ => throw new ArgumentOutOfRangeException(nameof(severity)),
    };

    public static EffectWord Of(DeviationEffect effect) => effect switch
    {
        DeviationEffect.Tightened => EffectWord.Tightened,
        DeviationEffect.Weakened => EffectWord.Weakened,
        DeviationEffect.NotComparable => EffectWord.NotComparable,
        _ => throw new ArgumentOutOfRangeException(nameof(effect)),
    };

    public static OutcomeWord Of(Outcome outcome) => outcome switch
    {
        Outcome.Conforms => OutcomeWord.Conforms,
        Outcome.Fails => OutcomeWord.Fails,
        Outcome.UnderConcession => OutcomeWord.UnderConcession,
        Outcome.NotEvaluated => OutcomeWord.NotEvaluated,
        Outcome.NotApplicable => OutcomeWord.NotApplicable,
        _ => throw new ArgumentOutOfRangeException(nameof(outcome)),
    };
}
