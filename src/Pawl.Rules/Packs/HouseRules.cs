using System.Globalization;
using Pawl.Rules.Judging;
using Pawl.Specs.Text;

namespace Pawl.Rules.Packs;

/// <summary>Adds the rules of house packs to the shipped ones, and puts their overrides in place.</summary>
internal sealed class HouseRules(RuleSet shipped, List<Diagnostic> diagnostics)
{
    // Margins of examples are written to three significant digits.
    private const double Slack = 0.005;
    private const double MinSlack = 0.0005;

    private readonly Dictionary<string, int> _places = new(StringComparer.Ordinal);
    private readonly List<Rule> _rules = [.. shipped.Rules];

    public RuleSet With(List<PackSyntax> packs)
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

        if (packs.Exists(static pack => pack.Rules.Any(static draft => !draft.Explains.IsEmpty)))
            ExplainsCheck.Check(_rules, diagnostics.Add);
        return new() { Rules = [.. _rules], Packs = read.ToImmutable() };
    }

    private void Add(RuleSyntax draft)
    {
        if (_places.TryGetValue(draft.Id.Value, out var place))
        {
            diagnostics.Add(RuleDiagnostics.DuplicateId(draft.Span, draft.Id.Value, _rules[place].Span));
        }
        else if (RuleBuilder.Build(draft, diagnostics) is { } rule)
        {
            _places.Add(rule.Id, _rules.Count);
            _rules.Add(rule);
            IdleCheck.Check(rule, draft, diagnostics.Add);
            foreach (var example in rule.Examples)
                Try(rule, example);
        }
    }

    // An example is the author's own proof; the shipped ones are proved by the tests.
    private void Try(Rule rule, RuleExample example)
    {
        var finding = RuleEvaluator.Put(rule, ExampleReader.Read(rule.AppliesTo, example, _ => { }));
        if (finding.Outcome != example.Outcome)
            Wrong($"is said to give `{Word(example.Outcome)}`, but gives `{Word(finding.Outcome)}`");
        else if (example.Margin is { } said && (finding.Margin is not { } margin || Math.Abs(margin - said) > Math.Max(MinSlack, Math.Abs(said) * Slack)))
            Wrong(finding.Margin is { } found ? string.Create(CultureInfo.InvariantCulture, $"is said to have the margin {said:G4}, but has {found:G4}") : "has no margin");

        void Wrong(string how) => diagnostics.Add(RuleDiagnostics.Error(
            RuleCodes.WrongExample, example.Span, $"The example of `{rule.Id}` {how}.", "Work it again by hand, then correct the example or the rule."));
    }

    private static string Word(Outcome outcome) => outcome switch
    {
        Outcome.Conforms => "conforms",
        Outcome.Fails => "fails",
        Outcome.NotApplicable => "not applicable",
        Outcome.NotEvaluated => "not evaluated",
        _ => "under concession",
    };

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

        if (Substance.LackOfReason(change.Reason.Value, rule.Id, rule.Title) is { } lack)
            diagnostics.Add(RuleDiagnostics.ThinReason(change.Reason, rule.Id, lack));

        var draft = change.On(rule.Program!.Draft);
        if (RuleBuilder.Build(draft, diagnostics) is not { } house)
            return;
        var deviation = new Deviation
        {
            Pack = change.Pack,
            Reason = change.Reason.Value,
            ApprovedBy = change.ApprovedBy.Value,
            Changes = Comparison.Of(rule, house),
            Span = change.Id.Span,
        };
        _rules[place] = house with { Shipped = rule, Deviation = deviation };
        IdleCheck.Check(house, draft, diagnostics.Add);
        if (deviation.Changes.IsEmpty)
            diagnostics.Add(RuleDiagnostics.IdleOverride(change.Id.Span, rule.Id));
        else if (deviation.IsWeakening)
            diagnostics.Add(rule.Concedable ? RuleDiagnostics.Weakened(deviation, rule.Id) : RuleDiagnostics.CannotWeaken(deviation, rule));
    }
}
