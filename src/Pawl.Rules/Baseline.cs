using Pawl.Rules.Judging;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Rules;

/// <summary>That a finding is listed in the baseline.</summary>
/// <param name="WorstMargin">The margin that it had; null for one without.</param>
/// <param name="Holds">Whether it is no worse than that.</param>
/// <param name="Span">Where it is listed.</param>
public sealed record Known(double? WorstMargin, bool Holds, SourceSpan Span);

/// <summary>A finding that the baseline lists and that does not fail.</summary>
/// <param name="Entry">As listed.</param>
/// <param name="Reason">What is so instead.</param>
/// <param name="IsGone">Whether it is mended; false where it is not evaluated, so that nobody knows.</param>
public sealed record Unneeded(KnownFindingSpec Entry, string Reason, bool IsGone);

/// <summary>Known findings, put to judgements. It changes no outcome and no verdict: it tells what is new from what is known.</summary>
public sealed class Baseline
{
    private readonly Dictionary<string, Dictionary<FindingName, KnownFindingSpec>> _bySpec = new(StringComparer.Ordinal);

    /// <param name="path">The file, from the project root.</param>
    /// <param name="file">Its content. Of entries that repeat one, the first counts.</param>
    public Baseline(string path, BaselineFile file)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(file);
        (Path, File) = (path, file);
        foreach (var entry in file.Findings)
        {
            if (!_bySpec.TryGetValue(entry.Spec.Value, out var known))
                _bySpec.Add(entry.Spec.Value, known = []);
            known.TryAdd(NameOf(entry), entry);
        }
    }

    /// <summary>The file, from the project root.</summary>
    public string Path { get; }

    /// <summary>Its content.</summary>
    public BaselineFile File { get; }

    /// <summary>The finding that an entry lists.</summary>
    public static FindingName NameOf(KnownFindingSpec entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return new(entry.Rule.Value, entry.Subject.Value);
    }

    /// <summary>The judgement with its known findings marked.</summary>
    public Judgement Apply(Judgement judgement)
    {
        ArgumentNullException.ThrowIfNull(judgement);
        if (!_bySpec.TryGetValue(judgement.Analysis.Spec.File, out var known))
            return judgement with { Baseline = this };

        var open = new Dictionary<FindingName, KnownFindingSpec>(known);
        var findings = judgement.Findings.ToBuilder();
        var unneeded = new Dictionary<FindingName, Unneeded>();
        for (var i = 0; i < findings.Count; i++)
        {
            var finding = findings[i];
            var name = new FindingName(finding.Rule.Id, finding.Subject.Path);
            if (!open.Remove(name, out var entry))
                continue;
            if (finding.Outcome == Outcome.Fails)
                findings[i] = finding with { Known = Mark(finding, entry) };
            else
                unneeded.Add(name, new(entry, Words(finding.Outcome), finding.Outcome != Outcome.NotEvaluated));
        }

        foreach (var (name, entry) in open)
            unneeded.Add(name, new(entry, "no such rule is put to such a subject", IsGone: true));
        return judgement with
        {
            Baseline = this,
            Findings = findings.MoveToImmutable(),
            Unneeded = [.. unneeded.Values.OrderBy(each => each.Entry.Span.Start.Line).ThenBy(each => each.Entry.Span.Start.Column)],
        };
    }

    private static Known Mark(Finding finding, KnownFindingSpec entry)
    {
        double? worst = entry.WorstMargin?.Value.Coherent;
        var holds = (finding.Margin, worst) switch
        {
            // A word or a truth value is broken as a whole: it cannot get worse.
            (null, _) => true,
            (_, null) => false,
            ({ } margin, { } listed) => Margins.Snap(margin - listed) >= 0,
        };
        return new(worst, holds, entry.Span);
    }

    private static string Words(Outcome outcome) => outcome switch
    {
        Outcome.Conforms => "it conforms",
        Outcome.UnderConcession => "it is under concession",
        Outcome.NotEvaluated => "it is not evaluated",
        _ => "the rule does not apply",
    };
}
