using Pawl.Analysis;
using Pawl.Analysis.Seals;
using Pawl.Cli.Checking;
using Pawl.Rules;
using Pawl.Specs.Model;

namespace Pawl.Cli.Sizing;

/// <summary>Sizes as they were judged, best first.</summary>
/// <param name="Sizes">All of them.</param>
/// <param name="Alike">What rules say that say the same of every size; the worst margin first, what is not evaluated last.</param>
internal sealed record SizeList(ImmutableArray<JudgedSize> Sizes, ImmutableArray<Finding> Alike)
{
    /// <summary>Rules that could be judged of no size, for the same reasons.</summary>
    public IEnumerable<Finding> Open => Alike.Where(f => f.Outcome == Outcome.NotEvaluated);

    public IEnumerable<JudgedSize> Fitting => Sizes.Where(size => size.Fits);

    public IEnumerable<JudgedSize> Failing => Sizes.Where(size => !size.Fits);
}

/// <summary>Puts all sizes into one spec, computes it and has the rules judge it, as <c>pawl check</c> would.</summary>
internal sealed class SizeJudge(Engine engine, RuleSet rules, DateOnly asOf)
{
    public SizeList Of(GearboxSpec spec, ImmutableArray<Candidate> candidates)
    {
        var put = candidates.Where(c => c.Spec is not null).Select((c, i) => c with { Spec = c.Spec! with { Name = Named(c.Spec, $"{i + 1}") } }).ToArray();

        // What a concession covers does not conform; a size is better chosen that does.
        var judged = engine.Judge(
            engine.Analyse(spec with { ORings = new([.. put.Select(c => c.Spec!)], r => r.Name.Value), Concessions = [] }), rules, asOf);
        var findings = judged.Findings.Where(f => f.Subject.Kind == SubjectKinds.ORing).ToLookup(f => f.Subject.Path, StringComparer.Ordinal);
        var subjects = judged.Analysis.Subjects.Where(s => s.Kind == SubjectKinds.ORing).ToDictionary(s => s.Path, StringComparer.Ordinal);
        ImmutableArray<Finding> FindingsOf(Candidate c) => [.. findings[Path(c)].Select(f => f with { Reasons = [.. f.Reasons.Select(c.Plainly)] })];

        var alike = Alike([.. put.Where(c => subjects[Path(c)][ORings.Squeeze].IsEvaluated).Select(c => FindingsOf(c).ToDictionary(f => f.Rule.Id, StringComparer.Ordinal))]);
        var ids = alike.Select(finding => finding.Rule.Id).ToHashSet(StringComparer.Ordinal);
        var sizes = put
            .Select(c => new JudgedSize(c, subjects[Path(c)], FindingsOf(c), ids))
            .Concat(candidates.Where(c => c.Spec is null).Select(c => new JudgedSize(c, null, [], ids)))
            .ToList();

        // A stable order: equals stay in the order of the table.
        return new([.. sizes.Order(Comparer<JudgedSize>.Create(JudgedSize.Compare))], alike);
    }

    private static Specs.Text.Stated<string> Named(ORingSpec spec, string serial) => spec.Name with { Value = $"{spec.Name.Value} {serial}" };

    private static string Path(Candidate candidate) => $"o_rings.{candidate.Spec!.Name.Value}";

    // Of a single size nobody can tell what depends on it; but what waits, waits for an input.
    private static ImmutableArray<Finding> Alike(Dictionary<string, Finding>[] bySize) => bySize.Length == 0 ? [] :
    [
        .. bySize[0].Values
            .Where(first => first.Outcome == Outcome.NotEvaluated || (bySize.Length > 1 && (first.Margin is not null || first.Outcome == Outcome.Fails)))
            .Where(first => Array.TrueForAll(bySize, size => size.TryGetValue(first.Rule.Id, out var other) && IsAlike(first, other)))
            .OrderBy(first => first.Margin ?? (first.Outcome == Outcome.Fails ? double.NegativeInfinity : double.PositiveInfinity)),
    ];

    private static bool IsAlike(Finding a, Finding b) =>
        a.Outcome == b.Outcome && a.Margin.Equals(b.Margin) && a.Reasons.SequenceEqual(b.Reasons) && a.Measured?.Value == b.Measured?.Value && a.Measured?.Text == b.Measured?.Text;
}
