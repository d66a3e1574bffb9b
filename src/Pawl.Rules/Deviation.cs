using Pawl.Specs.Text;

namespace Pawl.Rules;

/// <summary>What a change of a shipped rule does to it.</summary>
public enum DeviationEffect
{
    /// <summary>Whatever the house passes, the shipped rule passes too.</summary>
    Tightened,

    /// <summary>The house passes what the shipped rule refuses.</summary>
    Weakened,

    /// <summary>Neither can be shown. For safety it counts as weakened.</summary>
    NotComparable,
}

/// <summary>One thing that a house pack changes in a shipped rule.</summary>
/// <param name="What"><c>severity</c>, <c>limit</c> or <c>when</c>.</param>
/// <param name="Effect">What it does to the rule.</param>
/// <param name="Shipped">As the shipped pack says.</param>
/// <param name="House">As the house pack says.</param>
public sealed record RuleChange(string What, DeviationEffect Effect, string Shipped, string House);

/// <summary>How the rule in force differs from the shipped one, why, and who agreed to it.</summary>
public sealed record Deviation
{
    /// <summary>The house pack that overrides the rule.</summary>
    public required string Pack { get; init; }

    /// <summary>Why this house differs.</summary>
    public required string Reason { get; init; }

    /// <summary>Who agreed to it.</summary>
    public required string ApprovedBy { get; init; }

    /// <summary>What differs: severity, limit, condition, in this order. Empty when the house pack says what the shipped one says.</summary>
    public required ImmutableArray<RuleChange> Changes { get; init; }

    /// <summary>Where the override stands.</summary>
    public required SourceSpan Span { get; init; }

    /// <summary>Whether the rule counts as weakened: it may pass what the shipped rule refuses.</summary>
    public bool IsWeakening => Changes.Any(change => change.Effect != DeviationEffect.Tightened);
}
