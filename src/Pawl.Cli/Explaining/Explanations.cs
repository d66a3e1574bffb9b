using System.Globalization;
using Pawl.Analysis.Core;
using Pawl.Cli.Output;
using Pawl.Mechanics.Seals;
using Pawl.Mechanics.Tables;
using Pawl.Quantities;
using Pawl.Rules;
using Pawl.Specs.Model;

namespace Pawl.Cli.Explaining;

/// <summary>Words for rules, quantities, subjects and diagnostics, from what the layers know of themselves.</summary>
internal static class Explanations
{
    public static Explanation Of(Rule rule)
    {
        var facts = new List<Fact>
        {
            new("severity", DiagnosticWriter.Word(rule.Severity)),
            new("applies_to", rule.When is null ? $"every {rule.AppliesTo.Name}" : $"every {rule.AppliesTo.Name} when {rule.When}"),
            new("measures", rule.Measure),
            new("limit", rule.LimitText),
        };
        if (rule.Shipped is { } shipped)
            facts.Add(new("shipped_limit", $"{shipped.LimitText} ({DiagnosticWriter.Word(shipped.Severity)}); a house pack overrides it"));
        if (rule.Deviation is { } deviation)
        {
            foreach (var change in deviation.Changes)
                facts.Add(new("deviation", $"{change.What}: {change.House}, shipped {change.Shipped}; {Word(change.Effect)}"));
            facts.Add(new("reason", deviation.Reason));
            facts.Add(new("approved_by", deviation.ApprovedBy));
        }

        facts.Add(new("source_of_method", rule.Source.Method));
        facts.Add(new("source_of_limit", With(rule.Source.Limit, rule.Source.Certainty)));
        facts.Add(new("why", rule.Why));
        facts.Add(new("mend", rule.Mend));
        if (!rule.Explains.IsEmpty)
            facts.Add(new("explains", string.Join(", ", rule.Explains.Select(static id => id == Rule.Everything ? "whatever the values that it compares govern" : id))));
        facts.Add(new("concession", rule.Concedable ? "A concession may cover it." : "It cannot be conceded, and a house rule can tighten it only."));
        facts.Add(new("declared_in", rule.Span.ToString()));
        return new("rule", rule.Id, rule.Title, [.. facts]);
    }

    public static Explanation Of(QuantityKind quantity, RuleSet? rules)
    {
        var facts = new List<Fact> { new("subject", quantity.Of.Name) };
        if (quantity.Symbol.Length > 0)
            facts.Add(new("symbol", quantity.Symbol));
        facts.Add(new("value", quantity.ValueKind switch
        {
            ValueKind.Text => "a word",
            ValueKind.Truth => "true or false",
            _ when quantity.Dimension == Dimension.Ratio => "a number without a unit",
            _ => $"a {quantity.Dimension.Name}, reported in {quantity.Unit.Symbol}",
        }));
        if (quantity.ValueKind == ValueKind.Number && !quantity.Dimension.IsPoint)
            facts.Add(new("scale", $"{Formatting.Significant(quantity.Unit.FromCoherent(quantity.Scale), 4)} {quantity.Unit.Symbol}".TrimEnd() + ": a margin to a limit of zero is a share of it, in records and concessions"));
        if (quantity.Formula.Length > 0)
            facts.Add(new("formula", quantity.Formula));
        if (quantity.Source.Length > 0)
            facts.Add(new("source", With(quantity.Source, quantity.Certainty)));
        if (quantity.Note.Length > 0)
            facts.Add(new("note", quantity.Note));
        if (rules is not null && RulesThatMeasure(quantity, rules) is { Length: > 0 } measuring)
            facts.Add(new("rules", measuring));
        return new("quantity", quantity.ToString(), quantity.Title, [.. facts]);
    }

    public static Explanation Of(SubjectKind kind, RuleSet? rules)
    {
        var facts = new List<Fact>
        {
            new("domain", kind.Domain),
            new("quantities", string.Join(", ", kind.Quantities.Select(q => q.Name))),
        };
        var relations = string.Join(", ", kind.Relations.Select(r => $"{r.Key} ({r.Value.Name})"));
        if (relations.Length > 0)
            facts.Add(new("related", relations));
        if (rules is not null)
            facts.Add(new("rules", string.Join(", ", rules.Rules.Where(r => r.AppliesTo == kind).Select(r => r.Id))));
        return new("subject", kind.Name, kind.Title, [.. facts.Where(f => f.Text.Length > 0)]);
    }

    public static Explanation Of(MaterialSpec steel)
    {
        var facts = new List<Fact> { new("id", $"material: {steel.Name.Value}") };
        if (steel.Carbon is { } carbon)
            facts.Add(new("carbon", $"{carbon.Min.Text} to {carbon.Max.Text}"));
        foreach (var treatment in steel.Treatments.Entries)
        {
            facts.Add(new(treatment.Name.Value.Replace('-', '_'), string.Join("; ", ((string?[])
            [
                $"class {treatment.Class.Value} of ISO 6336-5",
                treatment.SurfaceHardness is { } surface ? $"surface {surface.Text}" : null,
                treatment.CoreHardness is { } core ? $"core {core.Text}" : null,
                treatment.Tempering is { } tempering ? $"tempered at {tempering.Min.Text} to {tempering.Max.Text}" : null,
            ]).OfType<string>())));
        }

        facts.Add(new("source", $"{steel.Source.Value} ({(steel.Certainty.Value == "memory" ? Word(Certainty.Memory) : steel.Certainty.Value)})"));
        return new("steel", steel.Name.Value, steel.Title.Value, [.. facts]);
    }

    /// <summary>One size of O-ring, with its tolerances.</summary>
    public static Explanation Of(ORing size)
    {
        var table = StandardTable.Read(ORingTable.TableId);
        return new("size", $"as568{size.Dash}", $"O-ring of {Both(size.InsideDiameter)} by {Both(size.Cord)}",
        [
            new("id", $"as568: {size.Dash[1..].TrimStart('0')}"),
            new("inside_diameter", $"{Both(size.InsideDiameter)} ±{Both(size.InsideDeviation)}"),
            new("cord", $"{Both(size.Cord)} ±{Both(size.CordDeviation)}"),
            new("outside_diameter", $"{Both(size.OutsideDiameter)}, free"),
            new("source", table.Source),
            new("certainty", table.Certainty),
            new("glands", "Which sizes fit a gland: `pawl o-ring --help`."),
        ]);
    }

    /// <summary>All sizes of O-rings as one entry of the list.</summary>
    public static Explanation OfSizes()
    {
        var table = StandardTable.Read(ORingTable.TableId);
        return new("size", "as568", table.Title,
        [
            .. ORingTable.All.GroupBy(size => size.Cord).Select(cord => new Fact(
                "cord", $"{Both(cord.Key)}: {cord.Count()} sizes, {cord.First().Dash} to {cord.Last().Dash}, inside {Both(cord.First().InsideDiameter)} to {Both(cord.Last().InsideDiameter)}")),
            new("source", table.Source),
            new("certainty", table.Certainty),
            new("one", "`pawl explain as568-238` tells one size."),
        ]);
    }

    private static string Both(double length) =>
        $"{Formatting.Significant(Math.Round(length, 2), 9)} mm ({Formatting.Significant(Math.Round(length / ORing.Inch, 3), 9)} in)";

    public static Explanation OfDiagnostic(string code, string meaning, string mend) =>
        new("diagnostic", code, meaning, [new("mend", mend)]);

    private static string RulesThatMeasure(QuantityKind quantity, RuleSet rules) =>
        string.Join(", ", rules.Rules.Where(r => r.AppliesTo == quantity.Of && r.Measure == quantity.Name).Select(r => r.Id));

    // A source that is itself a word of certainty need not be told twice.
    private static string With(string source, Certainty certainty) =>
        source == Word(certainty) ? source : $"{source} ({Word(certainty)})";

    private static string Word(DeviationEffect effect) => effect switch
    {
        DeviationEffect.Tightened => "tightened",
        DeviationEffect.Weakened => "weakened",
        _ => "not comparable, counts as weakened",
    };

    private static string Word(Certainty certainty) => certainty switch
    {
        Certainty.ClosedForm => "closed form",
        Certainty.Published => "published, read in the source",
        Certainty.Memory => "from memory of the source",
        Certainty.CommonPractice => "common practice, no source",
        _ => certainty.ToString().ToLower(CultureInfo.InvariantCulture),
    };
}
