using Pawl.Specs.Text;

namespace Pawl.Rules.Packs;

/// <summary>Finds ids in <c>explains</c> that no rule has; only when all packs are read can that be told.</summary>
internal static class ExplainsCheck
{
    public static void Check(IEnumerable<Rule> rules, Action<Diagnostic> report)
    {
        var all = rules as IReadOnlyCollection<Rule> ?? [.. rules];
        HashSet<string> ids = [.. all.Select(static rule => rule.Id)];
        foreach (var rule in all)
        {
            foreach (var id in rule.Program!.Draft.Explains)
            {
                if (id.Value != Rule.Everything && !ids.Contains(id.Value))
                    report(RuleDiagnostics.UnknownExplained(id.Span, rule.Id, id.Value, ids));
            }
        }
    }
}
