using Pawl.Analysis.Core;
using Pawl.Quantities;
using Pawl.Rules.Expressions;
using Pawl.Specs.Text;

namespace Pawl.Rules;

/// <summary>Every complaint about a rule pack, worded once.</summary>
internal static class RuleDiagnostics
{
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

    public static string Short(string text) =>
        text.Length <= 60 && text.AsSpan().IndexOfAny('\n', '\r', '`') < 0
            ? text
            : $"{(text.Length <= 60 ? text : text[..59] + "…").Replace('\n', ' ').Replace('\r', ' ').Replace('`', '´')}";

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
