using Pawl.Analysis.Core;

namespace Pawl.Rules.Expressions;

/// <summary>A quantity of a subject, or of one that it is related to: <c>module</c>, <c>gear.module</c>.</summary>
internal sealed class QuantityPath(string text, ImmutableArray<string> roles, QuantityKind kind, SubjectKind from, bool isNominal = false)
{
    public string Text { get; } = text;

    public QuantityKind Kind { get; } = kind;

    /// <summary>What to say when a subject has no such quantity. Made once, so that judging makes no text.</summary>
    public ImmutableArray<string> Absence { get; } = [$"the {from.Title.ToLowerInvariant()} has no {text}"];

    public Quantity? Find(Subject subject)
    {
        foreach (var role in roles)
        {
            if (!subject.Related.TryGetValue(role, out var related))
                return null;
            subject = related;
        }

        var quantity = subject.Find(Kind);
        return isNominal && quantity is not null ? Quantity.Computed(Kind, quantity.Value.Nominal, [quantity]) : quantity;
    }

    /// <summary>The same quantity with every tolerance at its nominal.</summary>
    public QuantityPath AtNominal() => new($"nominal({Text})", roles, Kind, from, isNominal: true);
}
