using Pawl.Rules.Expressions;
using Pawl.Rules.Limits;
using Pawl.Rules.Packs;

namespace Pawl.Rules.Judging;

/// <summary>A rule's expressions, ready to be put to a subject. Immutable; threads may share it.</summary>
internal sealed class RuleProgram
{
    /// <summary>What was written, for an override to start from.</summary>
    public required RuleSyntax Draft { get; init; }

    public required Measure Measure { get; init; }

    public Condition? When { get; init; }

    public ImmutableArray<QuantityPath> WhenPaths { get; init; } = [];

    /// <summary>What to say when the condition does not hold. Made once, so that judging makes no text.</summary>
    public ImmutableArray<string> WhenDenied { get; init; } = [];

    public Limit? AtLeast { get; init; }

    public Limit? AtMost { get; init; }

    /// <summary>The two limits are one value that the measure must have.</summary>
    public bool IsEqual { get; init; }

    /// <summary>The text that names neighbours which would do.</summary>
    public QuantityPath? Suggest { get; init; }

    /// <summary>What a text or truth value must be.</summary>
    public Demand? Demand { get; init; }
}
