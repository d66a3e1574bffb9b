using Pawl.Analysis.Core;
using Pawl.Specs.Text;

namespace Pawl.Rules.Expressions;

/// <summary>Finds the quantity that a dotted path names.</summary>
internal static class Paths
{
    private const int MostSteps = 4;

    /// <summary>The path, or null with a complaint.</summary>
    public static QuantityPath? Find(SubjectKind subject, string path, SourceSpan span, Action<Diagnostic> report)
    {
        var steps = path.Split('.');
        if (steps.Length > MostSteps)
        {
            report(RuleDiagnostics.Error(
                RuleCodes.UnknownRole, span, $"`{path}` goes over more than {MostSteps - 1} relations.", null));
            return null;
        }

        var kind = subject;
        for (var i = 0; i < steps.Length - 1; i++)
        {
            if (kind.Related(steps[i]) is not { } related)
            {
                report(RuleDiagnostics.UnknownRole(span, kind, steps[i]));
                return null;
            }

            kind = related;
        }

        if (kind.Find(steps[^1]) is { } quantity)
            return new(path, [.. steps[..^1]], quantity, subject);
        report(RuleDiagnostics.UnknownQuantity(span, kind, steps[^1]));
        return null;
    }

    /// <summary>The path if it names something, without complaint.</summary>
    public static QuantityPath? TryFind(SubjectKind subject, string path) => Find(subject, path, default, static _ => { });
}
