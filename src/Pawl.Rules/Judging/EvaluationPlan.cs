using System.Runtime.InteropServices;
using Pawl.Analysis.Core;

namespace Pawl.Rules.Judging;

/// <summary>One place for every rule and every subject of its kind, in the order of the findings.</summary>
internal sealed class EvaluationPlan
{
    private static readonly List<Subject> None = [];

    private readonly Dictionary<SubjectKind, List<Subject>> _byKind = [];
    private readonly int[] _offsets;
    private readonly Finding[] _findings;

    public EvaluationPlan(ImmutableArray<Rule> rules, ImmutableArray<Subject> subjects, int concessions)
    {
        Rules = rules;
        foreach (var subject in subjects)
        {
            if (!_byKind.TryGetValue(subject.Kind, out var list))
                _byKind.Add(subject.Kind, list = []);
            list.Add(subject);
        }

        _offsets = new int[rules.Length];
        var total = 0;
        for (var i = 0; i < rules.Length; i++)
        {
            _offsets[i] = total;
            total += IsOnConcessions(rules[i]) ? concessions : SubjectsOf(rules[i].AppliesTo).Count;
        }

        _findings = new Finding[total];
    }

    public ImmutableArray<Rule> Rules { get; }

    /// <summary>All findings; complete after both rounds.</summary>
    public ImmutableArray<Finding> Findings => ImmutableCollectionsMarshal.AsImmutableArray(_findings);

    public static bool IsOnConcessions(Rule rule) => rule.AppliesTo == ConcessionQuantities.Kind;

    public List<Subject> SubjectsOf(SubjectKind kind) => _byKind.GetValueOrDefault(kind, None);

    /// <summary>The finding of a rule on a subject, by their places.</summary>
    public ref Finding At(int rule, int subject) => ref _findings[_offsets[rule] + subject];

    /// <summary>The first round: everything but the concessions.</summary>
    public void JudgeDesign()
    {
        for (var i = 0; i < Rules.Length; i++)
        {
            var rule = Rules[i];
            if (IsOnConcessions(rule))
                continue;
            var at = _offsets[i];
            foreach (var subject in SubjectsOf(rule.AppliesTo))
                _findings[at++] = RuleEvaluator.Put(rule, subject);
        }
    }

    /// <summary>Points every failure at the value that an engineer would change first, at neighbours that would do, and at its cause.</summary>
    /// <param name="own">The variant's own file.</param>
    public void Place(string own)
    {
        HashSet<string>? extended = null;
        for (var i = 0; i < _findings.Length; i++)
        {
            var finding = _findings[i];
            if (finding.Outcome is not (Outcome.Fails or Outcome.UnderConcession) || finding.Rule.AppliesTo == ConcessionQuantities.Kind)
                continue;
            extended ??= [.. _byKind.Values.SelectMany(list => list).Select(subject => subject.Span.File)];
            var suggestion = finding.Rule.Program!.Suggest?.Find(finding.Subject);
            _findings[i] = finding with
            {
                Span = Derivation.Governing(finding, own, extended),
                Suggestion = suggestion is { IsEvaluated: true, Text.Length: > 0 } ? suggestion : null,
            };
        }

        Causes.Trace(_findings);
    }

    /// <summary>The second round: the concessions themselves.</summary>
    public void JudgeConcessions(ImmutableArray<ConcessionCase> cases)
    {
        if (cases.IsEmpty)
            return;
        for (var i = 0; i < Rules.Length; i++)
        {
            var rule = Rules[i];
            if (!IsOnConcessions(rule))
                continue;
            for (var k = 0; k < cases.Length; k++)
            {
                var finding = RuleEvaluator.Put(rule, cases[k].Subject);
                At(i, k) = finding.Outcome == Outcome.Fails && !cases[k].Hints.IsEmpty ? finding with { Reasons = cases[k].Hints } : finding;
            }
        }
    }
}
