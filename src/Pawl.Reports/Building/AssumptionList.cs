using Pawl.Analysis.Core;
using Pawl.Reports.Records;
using Pawl.Rules;

namespace Pawl.Reports.Building;

/// <summary>Every default that stands in for a silent spec, and the rules whose verdict rests on it.</summary>
internal static class AssumptionList
{
    private static readonly HashSet<Quantity> None = new(ReferenceEqualityComparer.Instance);

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
        var list = ImmutableArray.CreateBuilder<AssumptionRecord>(assumed.Count);
        foreach (var quantity in assumed)
        {
            var term = quantities.Term(quantity);
            list.Add(new()
            {
                Quantity = term.Quantity!,
                Title = quantity.Kind.Title,
                Value = term.Value,
                Basis = term.Basis!,
                Rules = rules.TryGetValue(quantity, out var resting) ? [.. resting] : [],
            });
        }

        return list.MoveToImmutable();
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

        // Most quantities rest on what one of their inputs rests on: they share its set.
        found = quantity.Origin is Origin.Assumed ? new(ReferenceEqualityComparer.Instance) { quantity } : None;
        var isShared = found == None;
        foreach (var input in quantity.Inputs)
        {
            var more = Beneath(input, known);
            if (more.Count == 0 || more == found || (more.Count <= found.Count && more.IsSubsetOf(found)))
                continue;
            if (found.Count == 0)
            {
                (found, isShared) = (more, true);
                continue;
            }

            if (isShared)
                (found, isShared) = (new(found, ReferenceEqualityComparer.Instance), false);
            found.UnionWith(more);
        }

        known.Add(quantity, found);
        return found;
    }
}
