using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports;

/// <summary>What a run judged, in one line: the last of its text.</summary>
public sealed class Totals
{
    private readonly HashSet<string> _rules = new(StringComparer.Ordinal);
    private readonly HashSet<string> _weakened = new(StringComparer.Ordinal);
    private readonly int[] _verdicts = new int[Enum.GetValues<VerdictWord>().Length];
    private int _known;
    private CountsRecord _counts = new() { Conforms = 0, Fails = 0, UnderConcession = 0, NotEvaluated = 0, NotApplicable = 0 };

    /// <summary>Specs seen, those that could not be read included.</summary>
    public int Specs { get; private set; }

    /// <summary>Specs that could not be read or analysed.</summary>
    public int Unreadable { get; private set; }

    /// <summary>Rules in force in at least one spec.</summary>
    public int Rules => _rules.Count;

    /// <summary>Outcomes over all specs.</summary>
    public CountsRecord Counts => _counts;

    public void Add(ConformanceRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        foreach (var rule in record.Rules)
            _rules.Add(rule.Id);
        foreach (var deviation in record.Deviations)
        {
            if (deviation.IsWeakening)
                _weakened.Add(deviation.Rule);
        }

        Add(record.Verdict, record.Coverage.Overall);
    }

    /// <summary>Counts a spec whose rules do not matter to the line.</summary>
    internal void Add(VerdictRecord verdict, CountsRecord more)
    {
        Specs++;
        _known += verdict.KnownFindings;
        _verdicts[(int)verdict.Word]++;
        _counts = new()
        {
            Conforms = _counts.Conforms + more.Conforms,
            Fails = _counts.Fails + more.Fails,
            UnderConcession = _counts.UnderConcession + more.UnderConcession,
            NotEvaluated = _counts.NotEvaluated + more.NotEvaluated,
            NotApplicable = _counts.NotApplicable + more.NotApplicable,
        };
    }

    /// <summary>Counts a spec that could not be judged at all.</summary>
    public void AddUnreadable()
    {
        Specs++;
        Unreadable++;
    }

    /// <summary>The totals as one line.</summary>
    public void Write(TextWriter to)
    {
        ArgumentNullException.ThrowIfNull(to);
        List<string> specs = [];
        Say(specs, _verdicts[(int)VerdictWord.DoesNotConform], "does not conform", "do not conform");
        Say(specs, _verdicts[(int)VerdictWord.Incomplete], "is incomplete", "are incomplete");
        Say(specs, _verdicts[(int)VerdictWord.ConformsUnderConcession], "conforms under concession", "conform under concession");
        Say(specs, _verdicts[(int)VerdictWord.Conforms], "conforms", "conform");
        Say(specs, _verdicts[(int)VerdictWord.NotJudged] + Unreadable, "is not judged", "are not judged");
        var by = specs.Count == 0 ? "" : $" ({string.Join(", ", specs)})";
        var weakened = _weakened.Count == 0 ? "" : $" ({Phrase.Whole(_weakened.Count)} weakened by house rules)";
        var known = _known == 0 ? "" : $" ({Phrase.Whole(_known)} of them {Phrase.Verb(_known, "a known finding", "known findings")} in the baseline)";
        var rules = Rules == 0 ? "" : $"{Phrase.Count(Rules, "rule")}{weakened}, ";
        new Lines(to).Write($"{Phrase.Count(Specs, "spec")}{by}, {rules}"
            + $"{Phrase.Count(_counts.All, "evaluation")}: {Phrase.Whole(_counts.Conforms)} conform, {Phrase.Whole(_counts.Fails)} fail{known}, "
            + $"{Phrase.Whole(_counts.UnderConcession)} under concession, {Phrase.Whole(_counts.NotEvaluated)} not evaluated, "
            + $"{Phrase.Whole(_counts.NotApplicable)} not applicable");
    }

    private static void Say(List<string> parts, int number, string one, string many)
    {
        if (number > 0)
            parts.Add($"{Phrase.Whole(number)} {Phrase.Verb(number, one, many)}");
    }
}
