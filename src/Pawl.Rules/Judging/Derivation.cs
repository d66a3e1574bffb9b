using Pawl.Analysis.Core;
using Pawl.Specs.Text;

namespace Pawl.Rules.Judging;

/// <summary>Finds what the spec declares beneath a quantity.</summary>
internal static class Derivation
{
    /// <summary>As many inputs as a reader will look at.</summary>
    private const int MostDeclared = 32;

    private const int MostVisited = 512;

    /// <summary>The declared value nearest to the quantity, or the fallback.</summary>
    public static SourceSpan NearestDeclared(Quantity? quantity, SourceSpan fallback) =>
        quantity?.NearestDeclared?.Origin is Origin.Declared declared ? declared.Span : fallback;

    /// <summary>
    /// The place that an engineer would change first: the nearest declared value in the variant's own file, beneath the measured
    /// value or else beneath its limits; failing that in the files that it extends; failing that anywhere beneath the measured
    /// value, such as a catalogue.
    /// </summary>
    public static SourceSpan Governing(Finding finding, string own, HashSet<string> extended)
    {
        SourceSpan? inherited = null, anywhere = null;
        foreach (var quantity in (ReadOnlySpan<Quantity?>)[finding.Measured, finding.AtLeast, finding.AtMost])
        {
            foreach (var found in DeclaredBeneath(quantity))
            {
                var span = ((Origin.Declared)found.Origin).Span;
                if (span.File == own)
                    return span;
                if (extended.Contains(span.File))
                    inherited ??= span;
                else if (quantity == finding.Measured)
                    anywhere ??= span;
            }
        }

        return inherited ?? anywhere ?? finding.Subject.Span;
    }

    /// <summary>Whether a quantity, or one beneath it, is one that is looked for.</summary>
    public static bool IsBeneath(Quantity? root, Func<Quantity, bool> isWanted)
    {
        if (root is null)
            return false;
        var seen = new HashSet<Quantity>(ReferenceEqualityComparer.Instance) { root };
        var queue = new Queue<Quantity>();
        queue.Enqueue(root);
        while (queue.TryDequeue(out var next))
        {
            if (isWanted(next))
                return true;
            foreach (var input in next.Inputs)
            {
                if (seen.Count < MostVisited && seen.Add(input))
                    queue.Enqueue(input);
            }
        }

        return false;
    }

    /// <summary>Declared values beneath a quantity, nearest first, each once.</summary>
    public static ImmutableArray<Quantity> DeclaredBeneath(Quantity? root)
    {
        if (root is null)
            return [];
        var found = ImmutableArray.CreateBuilder<Quantity>();
        var seen = new HashSet<Quantity>(ReferenceEqualityComparer.Instance) { root };
        var queue = new Queue<Quantity>();
        queue.Enqueue(root);
        while (queue.TryDequeue(out var next) && found.Count < MostDeclared)
        {
            if (next.Origin is Origin.Declared)
                found.Add(next);
            foreach (var input in next.Inputs)
            {
                if (seen.Count < MostVisited && seen.Add(input))
                    queue.Enqueue(input);
            }
        }

        return found.ToImmutable();
    }
}
