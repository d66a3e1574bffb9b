using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Rules;

/// <summary>What is known of a concession: whether it says something true, is needed, and holds.</summary>
public static class ConcessionQuantities
{
    private const string Findings = "the findings of this judgement";

    private static readonly Unit Day = new("d", Dimension.OfTime, 86_400);

    public static readonly QuantityKind Rule = new()
    {
        Name = "rule",
        Title = "Rule that is conceded",
        ValueKind = ValueKind.Text,
        Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Subject = new()
    {
        Name = "subject",
        Title = "Subject that it is conceded for",
        ValueKind = ValueKind.Text,
        Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind KnownRule = new()
    {
        Name = "known_rule",
        Title = "The rule is in force",
        ValueKind = ValueKind.Truth,
        Formula = "a rule of that id is in a pack",
        Symbols = ["rule"],
        Source = "the rule packs",
    };

    public static readonly QuantityKind KnownSubject = new()
    {
        Name = "known_subject",
        Title = "The rule is put to the subject",
        ValueKind = ValueKind.Truth,
        Formula = "a subject of that path exists, and the rule is put to its kind",
        Symbols = ["subject"],
        Source = Findings,
    };

    public static readonly QuantityKind Concedable = new()
    {
        Name = "concedable",
        Title = "The rule may be conceded",
        ValueKind = ValueKind.Truth,
        Formula = "the rule does not say that it is not concedable",
        Symbols = ["rule"],
        Source = "the rule packs",
    };

    public static readonly QuantityKind Needed = new()
    {
        Name = "needed",
        Title = "The rule fails there",
        ValueKind = ValueKind.Truth,
        Formula = "the rule fails on the subject, and no earlier concession covers it",
        Symbols = ["rule", "subject"],
        Source = Findings,
    };

    public static readonly QuantityKind Expires = new()
    {
        Name = "expires",
        Title = "Last day on which it holds",
        ValueKind = ValueKind.Text,
        Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind DaysLeft = new()
    {
        Name = "days_left",
        Title = "Days left",
        Unit = Day,
        Scale = 86_400,
        Formula = "last day on which it holds − day of the judgement",
        Symbols = ["expires"],
        Source = "calendar",
        Note = "zero on the last day, which is still covered",
    };

    public static readonly QuantityKind WorstMargin = new()
    {
        Name = "worst_margin",
        Title = "Worst margin that is accepted",
        Unit = Units.Percent,
        Certainty = Certainty.Declared,
        Scale = 0.01,
    };

    public static readonly QuantityKind MarginExcess = new()
    {
        Name = "margin_excess",
        Title = "Margin above the worst that is accepted",
        Unit = Units.Percent,
        Scale = 0.01,
        Formula = "margin of the finding − worst margin accepted",
        Symbols = ["worst_margin"],
        Source = Findings,
        Note = "a rule of words or truth values has no margin; broken, it counts as −100 %",
    };

    public static readonly ImmutableArray<QuantityKind> All =
    [
        Rule, Subject, KnownRule, KnownSubject, Concedable, Needed, Expires, DaysLeft, WorstMargin, MarginExcess,
    ];

    /// <summary>A concession that the spec declares, as a thing that rules speak of.</summary>
    public static readonly SubjectKind Kind = new("concession", "Concession", "Concessions", All);
}
