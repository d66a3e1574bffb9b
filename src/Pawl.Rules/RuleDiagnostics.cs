using Pawl.Analysis.Core;
using Pawl.Quantities;
using Pawl.Rules.Expressions;
using Pawl.Specs.Text;

namespace Pawl.Rules;

/// <summary>Every complaint about a rule pack, worded once.</summary>
internal static class RuleDiagnostics
{
    // What changed may stand at the end of a condition or a table.
    private const int MostOfAChange = 200;

    public static Diagnostic Error(string code, SourceSpan span, string message, string? hint = null) =>
        new(code, Severity.Error, span, message, hint);

    public static Diagnostic Expression(SourceSpan span, ExpressionError error) => Error(error.Code, span, error.Message, error.Hint);

    public static Diagnostic Dimension(SourceSpan span, string what, Dimension left, Dimension right) =>
        Error(
            RuleCodes.DimensionMismatch, span, $"{what} {WithArticle(left.Name)} with {WithArticle(right.Name)}.",
            right == Quantities.Dimension.Ratio ? $"Give {WithArticle(left.Name)} with its unit{Fitting(left)}." : $"Give {WithArticle(left.Name)}{Fitting(left)}.");

    public static Diagnostic UnknownSubject(SourceSpan span, string found) =>
        Error(RuleCodes.UnknownSubject, span, $"No subject is called `{Short(found)}`.", Hint(found, JudgedKinds.All.Select(k => k.Name)));

    public static Diagnostic UnknownQuantity(SourceSpan span, SubjectKind kind, string found)
    {
        var names = kind.Quantities.Select(q => q.Name);
        foreach (var (role, related) in kind.Relations)
        {
            if (related.Find(found) is not null)
                return Error(RuleCodes.UnknownQuantity, span, $"A {kind.Name} has no quantity `{Short(found)}`.", $"Did you mean `{role}.{found}`?");
        }

        return Error(RuleCodes.UnknownQuantity, span, $"A {kind.Name} has no quantity `{Short(found)}`.", Hint(found, names));
    }

    public static Diagnostic UnknownRole(SourceSpan span, SubjectKind kind, string found)
    {
        var roles = kind.Relations.Select(r => r.Key).ToArray();
        return Error(
            RuleCodes.UnknownRole, span, $"A {kind.Name} is not related to a `{Short(found)}`.",
            roles.Length == 0 ? null : Hint(found, roles));
    }

    public static Diagnostic UnknownFunction(SourceSpan span, string found) =>
        Error(RuleCodes.UnknownFunction, span, $"There is no function `{Short(found)}`.", Hint(found, Functions.Names));

    public static Diagnostic UnknownRule(SourceSpan span, string found, IEnumerable<string> ids) =>
        Error(
            RuleCodes.UnknownRule, span, $"No shipped rule is called `{Short(found)}`, so there is nothing to override.",
            Nearest.To(found, ids) is { } nearest ? $"Did you mean `{nearest}`?" : "Remove `override: true` to add a rule.");

    public static Diagnostic UnknownExplained(SourceSpan span, string rule, string found, IEnumerable<string> ids) =>
        Error(
            RuleCodes.UnknownRule, span, $"`{rule}` is said to explain `{Short(found)}`, but no rule is called so.",
            Nearest.To(found, ids) is { } nearest ? $"Did you mean `{nearest}`?" : "Take ids of rules, or `*` for whatever the compared values govern.");

    public static Diagnostic MalformedId(SourceSpan span, string found) =>
        Error(
            RuleCodes.MalformedId, span, $"`{Short(found)}` is no id of a rule.",
            "An id is a domain and a name in small letters, digits and hyphens: mesh/tip-clearance.");

    public static Diagnostic DuplicateId(SourceSpan span, string id, SourceSpan first) =>
        Error(
            RuleCodes.DuplicateId, span, $"The rule `{id}` is declared twice; the first stands at {first}.",
            "Give it another id, or write `override: true` and a reason to change the limits of a shipped rule.");

    public static Diagnostic Missing(string code, SourceSpan span, string id, string key, string what) =>
        Error(code, span, $"The rule `{Short(id)}` lacks `{key}`.", what);

    public static Diagnostic ThinReason(Stated<string> reason, string id, string lack) =>
        Error(
            RuleCodes.ThinReason, reason.Span, $"The reason to override `{id}` {lack}: `{Short(reason.Value)}`.",
            $"Say in a sentence, {Packs.Substance.FewestWords} words at least, what is different here: the use, the material, a test, an agreement.");

    public static Diagnostic IdleOverride(SourceSpan span, string id) =>
        new(
            RuleCodes.IdleOverride, Severity.Warning, span, $"The override of `{id}` changes nothing: limit, severity and condition are as shipped.",
            "Remove it, or correct what it should change.");

    public static Diagnostic Weakened(Deviation deviation, string id) =>
        new(
            RuleCodes.Weakened, Severity.Note, deviation.Span,
            $"The shipped rule `{id}` is weakened: {Weakenings(deviation)}; approved by {Short(deviation.ApprovedBy)}.", $"Reason given: {Short(deviation.Reason, MostOfAChange)}");

    public static Diagnostic CannotWeaken(Deviation deviation, Rule shipped) =>
        Error(
            RuleCodes.CannotWeaken, deviation.Span,
            $"The rule `{shipped.Id}` cannot be weakened: {Weakenings(deviation)}. {shipped.Why}",
            "A rule that no concession may cover can be tightened only. Keep what is shipped, or change the design.");

    private static string Weakenings(Deviation deviation) => string.Join("; ", deviation.Changes
        .Where(change => change.Effect != DeviationEffect.Tightened)
        .Select(change => $"{change.What} `{Short(change.House, MostOfAChange)}` in place of `{Short(change.Shipped, MostOfAChange)}`{(change.Effect == DeviationEffect.NotComparable ? ", which cannot be compared" : "")}"));

    public static Diagnostic UnknownWord(SourceSpan span, string path, string found, ImmutableArray<string> words) =>
        new(RuleCodes.UnknownWord, Severity.Warning, span, $"`{path}` is never `{Short(found)}`.", Hint(found, words));

    public static Diagnostic AppliedToNothing(Rule rule) =>
        new(
            RuleCodes.AppliedToNothing, Severity.Warning, rule.Span,
            $"The {(rule.Shipped is null ? "house" : "overridden")} rule `{rule.Id}` applied to nothing in the specs judged: no {rule.AppliesTo.Name} {(rule.When is null ? "" : $"met `{Short(rule.When, MostOfAChange)}` and ")}had what it measures.",
            "Check `applies_to`, `when` and `measure`, or judge a spec that it is for.");

    public static string Short(string text, int most = 60) =>
        text.Length <= most && text.AsSpan().IndexOfAny('\n', '\r', '`') < 0
            ? text
            : $"{(text.Length <= most ? text : text[..(most - 1)] + "…").Replace('\n', ' ').Replace('\r', ' ').Replace('`', '´')}";

    internal static string WithArticle(string noun) =>
        noun.Length > 0 && "aeiou".Contains(noun[0], StringComparison.Ordinal) ? $"an {noun}" : $"a {noun}";

    private static string Fitting(Dimension dimension)
    {
        var units = Units.Fitting(dimension);
        return units.IsEmpty ? "" : $": {string.Join(", ", units.Select(u => u.Symbol))}";
    }

    private static string Hint(string found, IEnumerable<string> names)
    {
        var known = names as IReadOnlyCollection<string> ?? [.. names];
        return Nearest.To(found, known) is { } nearest ? $"Did you mean `{nearest}`?" : $"Known here: {string.Join(", ", known)}.";
    }
}
