using Pawl.Reports.Records;

namespace Pawl.Reports.Building;

/// <summary>The verdict on a variant, worded once.</summary>
internal static class Verdicts
{
    public static VerdictRecord Of(ImmutableArray<FindingRecord> findings, CountsRecord counts, int weakened)
    {
        var errors = 0;
        foreach (var finding in findings)
        {
            if (finding is { Outcome: OutcomeWord.Fails, Severity: SeverityWord.Error })
                errors++;
        }

        var word = counts.Evaluated == 0 ? VerdictWord.NotJudged
            : errors > 0 ? VerdictWord.Fails
            : counts.UnderConcession > 0 ? VerdictWord.ConformsUnderConcession
            : VerdictWord.Conforms;
        return new()
        {
            Word = word,
            Complete = word != VerdictWord.NotJudged && counts.NotEvaluated == 0,
            WeakenedRules = weakened,
            Statement = Statement(word, errors, counts, weakened),
        };
    }

    private static string Statement(VerdictWord word, int errors, CountsRecord counts, int weakened)
    {
        List<string> sentences = [];
        if (word == VerdictWord.NotJudged)
            sentences.Add("No check was evaluated.");
        else if (errors > 0)
            sentences.Add($"{Phrase.Count(errors, "check")} of {Phrase.Whole(counts.Evaluated)} evaluated {Phrase.Verb(errors, "fails", "fail")} at severity error.");
        else
            sentences.Add($"None of {Phrase.Count(counts.Evaluated, "evaluated check")} fails at severity error.");

        var lesser = counts.Fails - errors;
        if (lesser > 0)
            sentences.Add($"{Phrase.Count(lesser, "check")} {Phrase.Verb(lesser, "fails", "fail")} at severity warning or note.");
        if (counts.UnderConcession > 0)
            sentences.Add($"{Phrase.Count(counts.UnderConcession, "check")} {Phrase.Verb(counts.UnderConcession, "stands", "stand")} under concession.");
        if (counts.NotEvaluated > 0)
            sentences.Add($"{Phrase.Count(counts.NotEvaluated, "check")} that {Phrase.Verb(counts.NotEvaluated, "applies is", "apply are")} not evaluated.");
        if (weakened > 0)
            sentences.Add($"{Phrase.Count(weakened, "shipped rule")} {Phrase.Verb(weakened, "is", "are")} weakened by house rules.");
        return string.Join(' ', sentences);
    }
}
