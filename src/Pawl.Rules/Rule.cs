using Pawl.Analysis.Core;
using Pawl.Rules.Judging;
using Pawl.Specs.Text;

namespace Pawl.Rules;

/// <summary>One rule, as data.</summary>
public sealed record Rule
{
    /// <summary>Stable identifier, <c>domain/kebab-name</c>.</summary>
    public required string Id { get; init; }

    public required string Title { get; init; }

    /// <summary>The pack that declares it: <c>mesh</c>.</summary>
    public required string Pack { get; init; }

    public required SubjectKind AppliesTo { get; init; }

    /// <summary>The condition as written, or null: it applies to every subject of its kind.</summary>
    public string? When { get; init; }

    /// <summary>The measured expression as written.</summary>
    public required string Measure { get; init; }

    /// <summary>The limits as written, for people: <c>at least 0.15 * module</c>.</summary>
    public required string LimitText { get; init; }

    public required Severity Severity { get; init; }

    public required RuleSource Source { get; init; }

    /// <summary>The failure that the rule keeps away.</summary>
    public required string Why { get; init; }

    /// <summary>What to change in the spec.</summary>
    public required string Mend { get; init; }

    /// <summary>Whether a concession may cover it.</summary>
    public bool Concedable { get; init; } = true;

    /// <summary>Whether its limits are a window of what occurs: a failure names the likely slip of the pen.</summary>
    public bool Plausibility { get; init; }

    /// <summary>Ids of the rules whose failures on the same thing follow from a failure of this one; <see cref="Everything"/> for all that its values govern.</summary>
    public ImmutableArray<string> Explains { get; init; } = [];

    /// <summary>In <see cref="Explains"/>: whatever is governed by one of the declared values that the rule compares.</summary>
    public const string Everything = "*";

    /// <summary>The text quantity that names neighbours which would do, as written; null when there is none.</summary>
    public string? Suggest { get; init; }

    /// <summary>Cases worked by hand, as the pack gives them.</summary>
    public ImmutableArray<RuleExample> Examples { get; init; } = [];

    /// <summary>Where it is declared; for an overridden rule, where the override stands.</summary>
    public required SourceSpan Span { get; init; }

    /// <summary>Whether a house pack declares it, rather than one inside the tool; also where that overrides a shipped one.</summary>
    public bool IsOfHouse => !Span.File.StartsWith("shipped:", StringComparison.Ordinal);

    /// <summary>What the shipped pack says, when a house pack overrides it; null otherwise.</summary>
    public Rule? Shipped { get; init; }

    /// <summary>How a house pack changes it, why, and who agreed; null when it is in force as its pack says.</summary>
    public Deviation? Deviation { get; init; }

    /// <summary>Its expressions, ready to be put to a subject.</summary>
    internal RuleProgram? Program { get; init; }

    public override string ToString() => Id;
}
