using Pawl.Reports.Records;

namespace Pawl.Reports.Rendering;

/// <summary>Words of the record for people, each with a symbol, so that no verdict hangs on a colour.</summary>
internal static class Labels
{
    public static string Of(OutcomeWord outcome) => outcome switch
    {
        OutcomeWord.Conforms => "conforms",
        OutcomeWord.Fails => "fails",
        OutcomeWord.UnderConcession => "under concession",
        OutcomeWord.NotEvaluated => "not evaluated",
        _ => "not applicable",
    };

    public static string Symbol(OutcomeWord outcome) => outcome switch
    {
        OutcomeWord.Conforms => "✓",
        OutcomeWord.Fails => "✗",
        OutcomeWord.UnderConcession => "◐",
        OutcomeWord.NotEvaluated => "?",
        _ => "·",
    };

    public static string Of(SeverityWord severity) => severity switch
    {
        SeverityWord.Error => "error",
        SeverityWord.Warning => "warning",
        _ => "note",
    };

    /// <summary><c>drawing T180-102 B, part 10-4182</c>; empty without numbers.</summary>
    public static string NumbersOf(string drawing, string revision, string part) => string.Join(
        ", ", ((string[])[drawing.Length == 0 ? revision : $"drawing {drawing} {revision}".TrimEnd(), part.Length == 0 ? "" : $"part {part}"]).Where(static each => each.Length > 0));

    /// <summary>The severity of a failure: one that the baseline lists is <c>known error</c>.</summary>
    public static string SeverityOf(FindingRecord finding) => (finding.Known is { Holds: true } ? "known " : "") + Of(finding.Severity);

    /// <summary>What the baseline says of a failure: <c>in the baseline down to −5 %</c>; empty where it says nothing.</summary>
    public static string BaselineOf(FindingRecord finding)
    {
        if (finding.Known is not { } known)
            return "";
        var listed = known.WorstMargin is { } margin ? $" down to {Figures.Margin(margin)}" : "";
        return known.Holds ? $"in the baseline{listed}" : listed.Length == 0 ? "in the baseline without a margin" : $"worse than the baseline, which lists it{listed}";
    }

    public static string Of(CertaintyWord certainty) => certainty switch
    {
        CertaintyWord.ClosedForm => "closed form",
        CertaintyWord.Published => "published",
        CertaintyWord.Memory => "from memory",
        CertaintyWord.CommonPractice => "common practice",
        _ => "declared",
    };

    public static string Of(EffectWord effect) => effect switch
    {
        EffectWord.Tightened => "tightened",
        EffectWord.Weakened => "weakened",
        _ => "changed, not comparable: counts as weakened",
    };

    public static string Of(VerdictRecord verdict) => verdict.Word switch
    {
        VerdictWord.Conforms => "conforms",
        VerdictWord.ConformsUnderConcession => "conforms under concession",
        VerdictWord.Incomplete => "incomplete",
        VerdictWord.DoesNotConform => "does not conform",
        _ => "not judged",
    };

    public static string Symbol(VerdictRecord verdict) => Symbol(Alike(verdict));

    /// <summary>The outcome whose symbol and colour stand for a verdict.</summary>
    public static OutcomeWord Alike(VerdictRecord verdict) => verdict.Word switch
    {
        VerdictWord.Conforms => OutcomeWord.Conforms,
        VerdictWord.ConformsUnderConcession => OutcomeWord.UnderConcession,
        VerdictWord.DoesNotConform => OutcomeWord.Fails,
        _ => OutcomeWord.NotEvaluated,
    };
}
