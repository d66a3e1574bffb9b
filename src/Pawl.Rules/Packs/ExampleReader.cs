using Pawl.Analysis.Core;
using Pawl.Quantities;
using Pawl.Rules.Expressions;
using Pawl.Specs.Text;

namespace Pawl.Rules.Packs;

/// <summary>Reads the values of an example: each of the kind and dimension of its quantity.</summary>
internal static class ExampleReader
{
    /// <summary>The subject that the example describes, with those that it is related to. Complaints go to <paramref name="report"/>.</summary>
    public static Subject Read(SubjectKind kind, RuleExample example, Action<Diagnostic> report)
    {
        var subject = new Subject(kind, "example", example.Span);
        foreach (var (path, stated) in example.Given)
        {
            if (Paths.Find(kind, path, stated.Span, report) is not { } found)
                continue;
            if (ValueOf(found.Kind, stated, report) is { } quantity)
                Owner(subject, path).Add(quantity);
        }

        return subject;
    }

    private static Quantity? ValueOf(QuantityKind kind, Stated<string> stated, Action<Diagnostic> report)
    {
        var origin = new Origin.Declared(stated.Span, stated.Text);
        switch (kind.ValueKind)
        {
            case ValueKind.Text:
                return Quantity.OfText(kind, origin, stated.Value, []);
            case ValueKind.Truth when stated.Value is "true" or "false":
                return Quantity.OfTruth(kind, origin, stated.Value == "true", []);
            case ValueKind.Number when Amount.TryParse(stated.Value, out var amount, out _) && amount.Dimension == kind.Dimension:
                return Quantity.Leaf(kind, origin, Extent.Exactly(amount.Coherent), 0);
            default:
                var expected = kind.ValueKind == ValueKind.Truth ? "true or false" : RuleDiagnostics.WithArticle(kind.Dimension.Name);
                report(RuleDiagnostics.Error(
                    RuleCodes.MalformedExample, stated.Span,
                    $"`{RuleDiagnostics.Short(stated.Value)}` is no value of {kind.Name}, which is {expected}."));
                return null;
        }
    }

    private static Subject Owner(Subject subject, string path)
    {
        var steps = path.Split('.');
        foreach (var role in steps[..^1])
        {
            if (!subject.Related.TryGetValue(role, out var related))
            {
                related = new(subject.Kind.Related(role)!, $"{subject.Path}.{role}", subject.Span);
                subject.Relate(role, related);
            }

            subject = related;
        }

        return subject;
    }
}
