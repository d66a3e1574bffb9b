using Pawl.Specs.Text;

namespace Pawl.Rules;

/// <summary>Keeps account over a run of which house rules had anything to judge.</summary>
/// <remarks>
/// Watched are the rules that house packs add and the shipped ones whose condition they change. That a shipped rule finds no
/// subject is in order: a range without seals has none for the rules on seals.
/// </remarks>
public sealed class RuleUse
{
    private readonly List<Rule> _idle;

    public RuleUse(RuleSet rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        _idle = [.. rules.Rules.Where(IsWatched)];
    }

    /// <summary>Whether there is anything left to look for.</summary>
    public bool IsOpen => _idle.Count > 0;

    /// <summary>Notes a rule that applied to a subject.</summary>
    public void Applied(string id) => _idle.RemoveAll(rule => rule.Id == id);

    /// <summary>A warning for each rule that applied to nothing, in the order of the rules.</summary>
    public ImmutableArray<Diagnostic> Warnings => [.. _idle.Select(RuleDiagnostics.AppliedToNothing)];

    private static bool IsWatched(Rule rule) =>
        rule.Shipped is null ? rule.IsOfHouse : rule.Deviation?.Changes.Any(change => change.What == "when") ?? false;
}
