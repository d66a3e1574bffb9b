using Pawl.Reports.Records;

namespace Pawl.Reports.Building;

/// <summary>The verdict on a variant, worded once.</summary>
internal static class Verdicts
{
    public static VerdictRecord Of(ImmutableArray<FindingRecord> findings, CountsRecord counts, int weakened, ImmutableArray<string> notStated)
    {
        var (errors, open, known, worse) = (0, 0, 0, 0);
        foreach (var finding in findings)
        {
            known += finding.Known is { Holds: true } ? 1 : 0;
            worse += finding.Known is { Holds: false } ? 1 : 0;
            if (finding.Severity != SeverityWord.Error)
                continue;
            errors += finding.Outcome == OutcomeWord.Fails ? 1 : 0;
            open += finding.Outcome == OutcomeWord.NotEvaluated ? 1 : 0;
        }

        var word = counts.Evaluated == 0 ? VerdictWord.NotJudged
            : errors > 0 ? VerdictWord.DoesNotConform
            : open > 0 ? VerdictWord.Incomplete
            : counts.UnderConcession > 0 ? VerdictWord.ConformsUnderConcession
            : VerdictWord.Conforms;
        return new()
        {
            Word = word,
            Complete = word != VerdictWord.NotJudged && counts.NotEvaluated == 0,
            WeakenedRules = weakened,
            KnownFindings = known,
            Statement = Statement(word, (errors, open), (known, worse), counts, weakened, notStated),
            NotStated = notStated,
        };
    }

    private static string Statement(
        VerdictWord word, (int Fail, int Open) errors, (int Known, int Worse) listed, CountsRecord counts, int weakened, ImmutableArray<string> notStated)
    {
        List<string> sentences = [];
        if (word == VerdictWord.NotJudged)
            sentences.Add("No check was evaluated.");
        else if (errors.Fail > 0)
            sentences.Add($"{Phrase.Count(errors.Fail, "check")} of {Phrase.Whole(counts.Evaluated)} evaluated {Phrase.Verb(errors.Fail, "fails", "fail")} at severity error.");
        else
            sentences.Add($"None of {Phrase.Count(counts.Evaluated, "evaluated check")} fails at severity error.");

        var lesser = counts.Fails - errors.Fail;
        if (lesser > 0)
            sentences.Add($"{Phrase.Count(lesser, "check")} {Phrase.Verb(lesser, "fails", "fail")} at severity warning or note.");
        if (listed.Known > 0)
            sentences.Add($"{Phrase.Count(listed.Known, "known finding")} in the baseline.");
        if (listed.Worse > 0)
            sentences.Add($"{Phrase.Count(listed.Worse, "finding")} {Phrase.Verb(listed.Worse, "is", "are")} worse than the baseline.");
        if (counts.UnderConcession > 0)
            sentences.Add($"{Phrase.Count(counts.UnderConcession, "check")} {Phrase.Verb(counts.UnderConcession, "stands", "stand")} under concession.");
        if (counts.NotEvaluated > 0)
        {
            sentences.Add($"{Phrase.Count(counts.NotEvaluated, "check")} that {Phrase.Verb(counts.NotEvaluated, "applies is", "apply are")} not evaluated"
                + (errors.Open == 0 ? "." : $", {Phrase.Whole(errors.Open)} of them at severity error."));
        }

        if (!notStated.IsEmpty)
            sentences.Add($"Not stated, so not judged: {string.Join(", ", notStated)}.");
        if (weakened > 0)
            sentences.Add($"{Phrase.Count(weakened, "shipped rule")} {Phrase.Verb(weakened, "is", "are")} weakened by house rules.");
        return string.Join(' ', sentences);
    }
}
