using Pawl.Analysis.Core;
using Pawl.Specs.Text;

namespace Pawl.Rules.Expressions;

/// <summary>Finds the quantity that a dotted path names.</summary>
internal static class Paths
{
    private const int MaxSteps = 4;

    /// <summary>The path, or null with a complaint.</summary>
    public static QuantityPath? Find(SubjectKind subject, string path, SourceSpan span, Action<Diagnostic> report)
    {
        if (TryFind(subject, path) is { } found)
            return found;

        var steps = path.Split('.');
        if (steps.Length > MaxSteps)
        {
            report(RuleDiagnostics.Error(
                RuleCodes.UnknownRole, span, $"`{path}` goes over more than {MaxSteps - 1} relations.", null));
            return null;
        }

        var kind = subject;
        foreach (var role in steps.AsSpan()[..^1])
        {
            if (kind.Related(role) is not { } related)
            {
                report(RuleDiagnostics.UnknownRole(span, kind, role));
                return null;
            }

            kind = related;
        }

        report(RuleDiagnostics.UnknownQuantity(span, kind, steps[^1]));
        return null;
    }

    /// <summary>The path if it names something, without complaint.</summary>
    public static QuantityPath? TryFind(SubjectKind subject, string path)
    {
        var steps = path.Split('.');
        if (steps.Length > MaxSteps)
            return null;
        var kind = subject;
        foreach (var role in steps.AsSpan()[..^1])
        {
            if (kind.Related(role) is not { } related)
                return null;
            kind = related;
        }

        return kind.Find(steps[^1]) is { } quantity ? new(path, [.. steps[..^1]], quantity, subject) : null;
    }
}
