using Pawl.Analysis;
using Pawl.Analysis.Core;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Rules;

/// <summary>Where a rule's number comes from, the method apart from the limit.</summary>
/// <param name="Method">How the value is computed: a standard and its part, "closed form".</param>
/// <param name="Limit">Where the limit comes from: a standard, "common practice, no source", "the spec".</param>
/// <param name="Certainty">published, memory, common-practice or closed-form: how sure the limit is.</param>
public sealed record RuleSource(string Method, string Limit, Certainty Certainty);

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

    public required string Why { get; init; }

    public required string Mend { get; init; }

    /// <summary>Whether a concession may cover it.</summary>
    public bool Concedable { get; init; } = true;

    /// <summary>Where it is declared.</summary>
    public required SourceSpan Span { get; init; }

    /// <summary>What the shipped pack says, when a house pack overrides it; null otherwise.</summary>
    public Rule? Shipped { get; init; }
}

/// <summary>What came of putting one rule to one subject.</summary>
public enum Outcome
{
    Conforms,
    Fails,
    UnderConcession,
    NotEvaluated,
    NotApplicable,
}

/// <summary>One rule put to one subject.</summary>
public sealed record Finding
{
    public required Rule Rule { get; init; }

    public required Subject Subject { get; init; }

    public required Outcome Outcome { get; init; }

    /// <summary>The measured quantity with its derivation; null when it could not be formed or does not apply.</summary>
    public Quantity? Measured { get; init; }

    /// <summary>The limits as quantities with their derivation; a limit that is absent is null.</summary>
    public Quantity? AtLeast { get; init; }

    public Quantity? AtMost { get; init; }

    /// <summary>Words permitted or text demanded, for text and truth measures.</summary>
    public ImmutableArray<string> OneOf { get; init; } = [];

    /// <summary>Signed, dimensionless; at the worst case; null when there is none. 0 is on the limit, negative fails.</summary>
    public double? Margin { get; init; }

    /// <summary>Why it is not evaluated.</summary>
    public ImmutableArray<string> Reasons { get; init; } = [];

    /// <summary>The concession that covers it.</summary>
    public ConcessionSpec? Concession { get; init; }

    /// <summary>The place in the spec that governs the value.</summary>
    public required SourceSpan Span { get; init; }

    /// <summary>The toleranced or declared inputs beneath the measured value, for related locations.</summary>
    public ImmutableArray<Quantity> Governing { get; init; } = [];
}

/// <summary>How much of what applies was evaluated.</summary>
public sealed record Coverage(int Conforms, int Fails, int UnderConcession, int NotEvaluated, int NotApplicable)
{
    public int Applicable => Conforms + Fails + UnderConcession + NotEvaluated;

    public int Evaluated => Conforms + Fails + UnderConcession;
}

/// <summary>The judgement of one spec by one set of rules on one day.</summary>
public sealed record Judgement
{
    public required GearboxAnalysis Analysis { get; init; }

    public required RuleSet Rules { get; init; }

    public required DateOnly AsOf { get; init; }

    /// <summary>Every rule put to every subject of its kind, by pack, rule and subject in order.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    public required Coverage Coverage { get; init; }
}

/// <summary>The rules in force: shipped packs and house packs, checked.</summary>
public sealed record RuleSet
{
    public required ImmutableArray<Rule> Rules { get; init; }

    /// <summary>Packs by name with the hash of the file each came from.</summary>
    public required ImmutableArray<PackRead> Packs { get; init; }
}

/// <summary>A rule pack that was read.</summary>
/// <param name="Name">Name of the pack.</param>
/// <param name="Path">File, from the project root; <c>shipped:</c> in front for those inside the tool.</param>
/// <param name="Version">The pack's own version.</param>
/// <param name="Sha256">Hash of the file.</param>
public sealed record PackRead(string Name, string Path, string Version, string Sha256);
