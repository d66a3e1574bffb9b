using Pawl.Analysis.Core;
using Pawl.Reports.Records;
using Pawl.Rules;

namespace Pawl.Reports.Building;

/// <summary>Every default that stands in for a silent spec, and the rules whose verdict rests on it.</summary>
internal static class AssumptionLedger
{
    public static ImmutableArray<AssumptionRecord> Of(
        ImmutableArray<Subject> subjects, ImmutableArray<Finding> findings, QuantityWriter quantities)
    {
        List<Quantity> assumed = [];
        foreach (var subject in subjects)
        {
            foreach (var quantity in subject.Quantities)
            {
                if (quantity.Origin is Origin.Assumed)
                    assumed.Add(quantity);
            }
        }

        if (assumed.Count == 0)
            return [];

        var rules = RulesResting(findings);
        var ledger = ImmutableArray.CreateBuilder<AssumptionRecord>(assumed.Count);
        foreach (var quantity in assumed)
        {
            var term = quantities.Term(quantity);
            ledger.Add(new()
            {
                Quantity = term.Quantity!,
                Title = quantity.Kind.Title,
                Value = term.Value,
                Basis = term.Basis!,
                Rules = rules.TryGetValue(quantity, out var resting) ? [.. resting] : [],
            });
        }

        return ledger.MoveToImmutable();
    }

    private static Dictionary<Quantity, List<string>> RulesResting(ImmutableArray<Finding> findings)
    {
        var rules = new Dictionary<Quantity, List<string>>(ReferenceEqualityComparer.Instance);
        var beneath = new Dictionary<Quantity, HashSet<Quantity>>(ReferenceEqualityComparer.Instance);
        foreach (var finding in findings)
        {
            if (finding.Outcome is Outcome.NotApplicable)
                continue;
            foreach (var quantity in (ReadOnlySpan<Quantity?>)[finding.Measured, finding.AtLeast, finding.AtMost])
            {
                if (quantity is null)
                    continue;
                foreach (var assumption in Beneath(quantity, beneath))
                {
                    if (!rules.TryGetValue(assumption, out var resting))
                        rules.Add(assumption, resting = []);
                    if (!resting.Contains(finding.Rule.Id))
                        resting.Add(finding.Rule.Id);
                }
            }
        }

        return rules;
    }

    private static HashSet<Quantity> Beneath(Quantity quantity, Dictionary<Quantity, HashSet<Quantity>> known)
    {
        if (known.TryGetValue(quantity, out var found))
            return found;

        found = new(ReferenceEqualityComparer.Instance);
        if (quantity.Origin is Origin.Assumed)
            found.Add(quantity);
        foreach (var input in quantity.Inputs)
            found.UnionWith(Beneath(input, known));
        known.Add(quantity, found);
        return found;
    }
}
