using Pawl.Analysis.Core;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Rules.Packs;

/// <summary>A rule as a pack states it, before its expressions are read.</summary>
internal sealed record RuleSyntax
{
    public required Stated<string> Id { get; init; }

    public required string Title { get; init; }

    public required string Pack { get; init; }

    public required SubjectKind AppliesTo { get; init; }

    public YamlScalar? When { get; init; }

    public required YamlScalar Measure { get; init; }

    public YamlNode? AtLeast { get; init; }

    public YamlNode? AtMost { get; init; }

    public YamlNode? EqualTo { get; init; }

    public YamlNode? OneOf { get; init; }

    public required Severity Severity { get; init; }

    public required RuleSource Source { get; init; }

    public required string Why { get; init; }

    public required string Mend { get; init; }

    public bool Concedable { get; init; } = true;

    public bool Plausibility { get; init; }

    public ImmutableArray<Stated<string>> Explains { get; init; } = [];

    public YamlScalar? Suggest { get; init; }

    public ImmutableArray<RuleExample> Examples { get; init; } = [];

    /// <summary>Where the rule stands: its id.</summary>
    public SourceSpan Span => Id.Span;

    public bool HasLimit => AtLeast is not null || AtMost is not null || EqualTo is not null || OneOf is not null;
}

/// <summary>What a house pack changes in a shipped rule.</summary>
internal sealed record RuleOverride
{
    public required Stated<string> Id { get; init; }

    public required string Pack { get; init; }

    public required Stated<string> Reason { get; init; }

    public required Stated<string> ApprovedBy { get; init; }

    /// <summary>The condition in place of the shipped one; `true` drops it.</summary>
    public YamlScalar? When { get; init; }

    public YamlNode? AtLeast { get; init; }

    public YamlNode? AtMost { get; init; }

    public YamlNode? EqualTo { get; init; }

    public YamlNode? OneOf { get; init; }

    public Severity? Severity { get; init; }

    /// <summary>The shipped rule with the changes in it.</summary>
    public RuleSyntax On(RuleSyntax shipped)
    {
        // A window keeps the side that the house leaves alone; a limit of another sort replaces the shipped one.
        var isWindow = AtLeast is not null || AtMost is not null;
        var isExact = EqualTo is not null || OneOf is not null;
        return shipped with
        {
            Id = Id,
            When = When is null ? shipped.When : When is { IsQuoted: false, Value: "true" } ? null : When,
            AtLeast = AtLeast ?? (isExact ? null : shipped.AtLeast),
            AtMost = AtMost ?? (isExact ? null : shipped.AtMost),
            EqualTo = EqualTo ?? (isWindow || OneOf is not null ? null : shipped.EqualTo),
            OneOf = OneOf ?? (isWindow || EqualTo is not null ? null : shipped.OneOf),
            Severity = Severity ?? shipped.Severity,
        };
    }
}

/// <summary>A pack as read.</summary>
internal sealed record PackSyntax(Stated<string> Name, PackRead Read, ImmutableArray<RuleSyntax> Rules, ImmutableArray<RuleOverride> Overrides);
