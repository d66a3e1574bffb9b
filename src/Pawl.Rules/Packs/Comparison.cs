using Pawl.Rules.Expressions;
using Pawl.Rules.Limits;
using Pawl.Specs.Text;

namespace Pawl.Rules.Packs;

/// <summary>How an overridden rule differs from the shipped one.</summary>
internal static class Comparison
{
    // Far below what decides a verdict; 30 mm and 3 cm are one limit.
    private const double Same = 1e-12;

    /// <summary>What differs, in the order severity, limit, condition.</summary>
    public static ImmutableArray<RuleChange> Of(Rule shipped, Rule house)
    {
        var changes = ImmutableArray.CreateBuilder<RuleChange>(3);
        if (shipped.Severity != house.Severity)
        {
            changes.Add(new(
                "severity", house.Severity < shipped.Severity ? DeviationEffect.Weakened : DeviationEffect.Tightened,
                Word(shipped.Severity), Word(house.Severity)));
        }

        if (OfLimits(shipped, house) is { } limit)
            changes.Add(new("limit", limit, shipped.LimitText, house.LimitText));
        if (OfConditions(shipped, house) is { } condition)
            changes.Add(new("when", condition, shipped.When ?? "always", house.When ?? "always"));
        return changes.DrainToImmutable();
    }

    public static string Word(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "note",
    };

    private static DeviationEffect? OfConditions(Rule shipped, Rule house)
    {
        if (shipped.When == house.When)
            return null;
        if (house.When is null)
            return DeviationEffect.Tightened;
        if (shipped.When is null)
            return DeviationEffect.Weakened;

        var (before, now) = (ExpressionParser.Parse(shipped.When, out _)!, ExpressionParser.Parse(house.When, out _)!);
        if (SyntaxText.Of(before) == SyntaxText.Of(now))
            return null;
        return (CaseTable.Implies(house.AppliesTo, before, now), CaseTable.Implies(house.AppliesTo, now, before)) switch
        {
            (true, true) => null,
            (true, false) => DeviationEffect.Tightened,
            (false, true) => DeviationEffect.Weakened,
            _ => DeviationEffect.NotComparable,
        };
    }

    private static DeviationEffect? OfLimits(Rule shipped, Rule house)
    {
        var (before, now) = (shipped.Program!, house.Program!);
        if (before.Demand is not null || now.Demand is not null)
            return OfDemands(before.Demand, now.Demand);
        return Together(
            OfBounds(before.AtLeast, now.AtLeast, upper: false),
            OfBounds(before.IsEqual ? before.AtLeast : before.AtMost, now.IsEqual ? now.AtLeast : now.AtMost, upper: true));
    }

    private static DeviationEffect? OfBounds(Limit? before, Limit? now, bool upper)
    {
        switch (before, now)
        {
            case (null, null):
                return null;
            case (null, _):
                return DeviationEffect.Tightened;
            case (_, null):
                return DeviationEffect.Weakened;
            case (Limit.Simple { Constant: { } a }, Limit.Simple { Constant: { } b }):
                var shift = upper ? a - b : b - a;
                return Math.Abs(shift) <= Same * Math.Max(Math.Abs(a), Math.Abs(b)) ? null
                    : shift > 0 ? DeviationEffect.Tightened
                    : DeviationEffect.Weakened;
            case (Limit.Simple a, Limit.Simple b):
                return Text(a) == Text(b) ? null : DeviationEffect.NotComparable;
            case (Limit.ByCategory a, Limit.ByCategory b):
                return OfTables(a.Table, b.Table, (x, y) => OfBounds(x, y, upper));
            case (Limit.ByCategory a, _):
                return OfTable(a.Table, x => OfBounds(x, now, upper));
            case (_, Limit.ByCategory b):
                return InTable(b.Table, y => OfBounds(before, y, upper));
            default:
                return DeviationEffect.NotComparable;
        }
    }

    private static string Text(Limit.Simple limit) => SyntaxText.Of(limit.Written.Value);

    private static DeviationEffect? OfDemands(Demand? before, Demand? now)
    {
        switch (before, now)
        {
            case (null, null):
                return null;
            case (null, _):
                return DeviationEffect.Tightened;
            case (_, null):
                return DeviationEffect.Weakened;
            case (Demand.Words a, Demand.Words b):
                return b.Permitted.Any(word => !a.Permitted.Contains(word)) ? DeviationEffect.Weakened
                    : a.Permitted.Any(word => !b.Permitted.Contains(word)) ? DeviationEffect.Tightened
                    : null;
            case (Demand.SameAs a, Demand.SameAs b) when a.Path.Text == b.Path.Text:
                return null;
            case (Demand.ByCategory a, Demand.ByCategory b):
                return OfTables(a.Table, b.Table, OfDemands);
            case (Demand.ByCategory a, _):
                return OfTable(a.Table, x => OfDemands(x, now));
            case (_, Demand.ByCategory b):
                return InTable(b.Table, y => OfDemands(before, y));
            default:
                return DeviationEffect.NotComparable;
        }
    }

    /// <summary>Two tables by the same quantity, category by category; one that neither names has the limit of `default`.</summary>
    private static DeviationEffect? OfTables<T>(Table<T> before, Table<T> now, Func<T?, T?, DeviationEffect?> compare)
        where T : class
    {
        if (before.By.Text != now.By.Text)
            return DeviationEffect.NotComparable;
        var effect = compare(before.Otherwise, now.Otherwise);
        foreach (var category in before.Branches.Keys.Union(now.Branches.Keys))
        {
            effect = Together(effect, compare(
                before.Branches.GetValueOrDefault(category, before.Otherwise!), now.Branches.GetValueOrDefault(category, now.Otherwise!)));
        }

        return effect;
    }

    /// <summary>One limit in place of a table: it is held against every row, and reaches also what the table leaves out.</summary>
    private static DeviationEffect? OfTable<T>(Table<T> before, Func<T, DeviationEffect?> compare)
        where T : class
    {
        DeviationEffect? effect = DeviationEffect.Tightened;
        foreach (var row in before.Branches.Values)
            effect = Together(effect, compare(row));
        return before.Otherwise is { } otherwise ? Together(effect, compare(otherwise)) : effect;
    }

    /// <summary>A table in place of one limit: a subject that lacks the quantity by which it goes is no longer judged.</summary>
    private static DeviationEffect? InTable<T>(Table<T> now, Func<T, DeviationEffect?> compare)
        where T : class
    {
        DeviationEffect? effect = DeviationEffect.NotComparable;
        foreach (var row in now.Branches.Values)
            effect = Together(effect, compare(row));
        return now.Otherwise is { } otherwise ? Together(effect, compare(otherwise)) : DeviationEffect.Weakened;
    }

    private static DeviationEffect? Together(DeviationEffect? a, DeviationEffect? b) =>
        a == DeviationEffect.Weakened || b == DeviationEffect.Weakened ? DeviationEffect.Weakened
        : a == DeviationEffect.NotComparable || b == DeviationEffect.NotComparable ? DeviationEffect.NotComparable
        : a ?? b;
}
