using System.Diagnostics.CodeAnalysis;

namespace Pawl.Mechanics.Bearings;

/// <summary>A support between two rigid bodies of one axis; the ground is no body.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Inner">The body on the one side; null: the ground.</param>
/// <param name="Outer">The body on the other side; null: the ground.</param>
/// <param name="Position">Where its line of force meets the axis, mm.</param>
public sealed record BodySupport(string Name, string? Inner, string? Outer, double Position);

/// <summary>Rigid bodies of one axis, each on two supports, some of which sit in another body.</summary>
/// <remarks>
/// A body is solved as soon as all but two of the forces on it are known; what it presses on its supports loads the bodies behind
/// them.<br/>
/// Source: statics.<br/>
/// Valid for: supports that bear no moment. More supports need the stiffness of the shafts, fewer do not hold.
/// </remarks>
public sealed class SupportedBodies
{
    private readonly ImmutableArray<BodySupport> _supports;
    private readonly List<(string Body, BodySupport First, BodySupport Second)> _order = [];
    private readonly Dictionary<string, string> _reasons = new(StringComparer.Ordinal);

    /// <param name="bodies">Every body but the ground.</param>
    /// <param name="supports">Every support.</param>
    public SupportedBodies(IReadOnlyCollection<string> bodies, ImmutableArray<BodySupport> supports)
    {
        ArgumentNullException.ThrowIfNull(bodies);
        _supports = supports;
        var left = new List<string>(bodies);
        var known = new HashSet<BodySupport>();
        while (left.Find(body => Unknown(body, known).Length == 2) is { } next)
        {
            var own = Unknown(next, known);
            _order.Add((next, own[0], own[1]));
            known.UnionWith(own);
            left.Remove(next);
        }

        foreach (var body in left)
            Refuse(body, Unknown(body, known).Length);
    }

    /// <summary>The supports that hold a body, in the order of solution.</summary>
    public IEnumerable<(string Body, BodySupport First, BodySupport Second)> Order => _order;

    /// <summary>Whether a body is held; else why not.</summary>
    public bool Holds(string body, [NotNullWhen(false)] out string? reason) => !_reasons.TryGetValue(body, out reason);

    /// <summary>The body that a support holds; null when that is not determined.</summary>
    public string? HeldBy(BodySupport support)
    {
        foreach (var (body, first, second) in _order)
        {
            if (first == support || second == support)
                return body;
        }

        return null;
    }

    /// <summary>Forces of the supports on the bodies that they hold, N; axial forces are left out.</summary>
    public IReadOnlyDictionary<BodySupport, Reaction> Solve(IReadOnlyDictionary<string, IReadOnlyList<ShaftLoad>> loads)
    {
        ArgumentNullException.ThrowIfNull(loads);
        var found = new Dictionary<BodySupport, Reaction>();
        foreach (var (body, first, second) in _order)
        {
            var on = new List<ShaftLoad>();
            foreach (var load in loads.GetValueOrDefault(body, []))
                on.Add(load with { Axial = 0 });
            foreach (var support in _supports)
            {
                // What holds another body presses on this one with the opposite of what it does there.
                if (found.TryGetValue(support, out var reaction) && (support.Inner == body || support.Outer == body))
                    on.Add(new(support.Position, -reaction.X, -reaction.Y));
            }

            var both = ShaftReactions.Of([new(first.Position, false), new(second.Position, false)], on);
            found[first] = both[0];
            found[second] = both[1];
        }

        return found;
    }

    private ImmutableArray<BodySupport> Unknown(string body, HashSet<BodySupport> known) =>
        [.. _supports.Where(support => (support.Inner == body || support.Outer == body) && !known.Contains(support))];

    private void Refuse(string body, int supports)
    {
        _reasons[body] = supports switch
        {
            0 => $"nothing holds {body}",
            1 => $"{body} is not held: one bearing is left for it, two are needed",
            _ => FormattableString.Invariant($"{supports} bearings hold {body}: their loads need the stiffness of the shaft, which is not computed"),
        };

        // Whoever leans on a body that is not held is not held either.
        foreach (var support in _supports)
        {
            if (support.Inner != body && support.Outer != body)
                continue;
            var other = support.Inner == body ? support.Outer : support.Inner;
            if (other is not null && supports < 2)
                _reasons.TryAdd(other, $"{other} leans on {body}, which is not held");
        }
    }
}
