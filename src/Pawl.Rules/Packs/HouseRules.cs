using Pawl.Specs.Text;

namespace Pawl.Rules.Packs;

/// <summary>Adds the rules of house packs to the shipped ones, and puts their overrides in place.</summary>
internal sealed class HouseRules(RuleSet shipped, List<Diagnostic> diagnostics)
{
    private readonly Dictionary<string, int> _places = new(StringComparer.Ordinal);
    private readonly List<Rule> _rules = [.. shipped.Rules];

    public RuleSet With(List<PackDraft> packs)
    {
        for (var i = 0; i < _rules.Count; i++)
            _places.Add(_rules[i].Id, i);

        packs.Sort((a, b) => string.CompareOrdinal(a.Name.Value, b.Name.Value));
        var read = shipped.Packs.ToBuilder();
        foreach (var pack in packs)
        {
            if (read.FirstOrDefault(p => p.Name == pack.Name.Value) is { } other)
            {
                diagnostics.Add(RuleDiagnostics.Error(
                    RuleCodes.DuplicatePack, pack.Name.Span, $"A pack called `{pack.Name.Value}` is already in {other.Path}.",
                    "Give it another name."));
            }

            read.Add(pack.Read);
            foreach (var draft in pack.Rules)
                Add(draft);
        }

        // Overrides come last, so that one may stand in a pack before the rule; only shipped rules can be overridden.
        foreach (var pack in packs)
        {
            foreach (var change in pack.Overrides)
                Override(change);
        }

        return new() { Rules = [.. _rules], Packs = read.ToImmutable() };
    }

    private void Add(RuleDraft draft)
    {
        if (_places.TryGetValue(draft.Id.Value, out var place))
        {
            diagnostics.Add(RuleDiagnostics.DuplicateId(draft.Span, draft.Id.Value, _rules[place].Span));
        }
        else if (RuleBuilder.Build(draft, diagnostics) is { } rule)
        {
            _places.Add(rule.Id, _rules.Count);
            _rules.Add(rule);
        }
    }

    private void Override(RuleOverride change)
    {
        if (!_places.TryGetValue(change.Id.Value, out var place) || place >= shipped.Rules.Length)
        {
            diagnostics.Add(RuleDiagnostics.UnknownRule(change.Id.Span, change.Id.Value, shipped.Rules.Select(r => r.Id)));
            return;
        }

        var rule = _rules[place];
        if (rule.Shipped is not null)
        {
            diagnostics.Add(RuleDiagnostics.Error(
                RuleCodes.DuplicateId, change.Id.Span, $"`{rule.Id}` is overridden twice; the first stands at {rule.Span}.",
                "Keep one of them."));
            return;
        }

        if (RuleBuilder.Build(change.On(rule.Program!.Draft), diagnostics) is { } changed)
            _rules[place] = changed with { Shipped = rule, OverriddenBy = change.Pack, OverrideReason = change.Reason };
    }
}
