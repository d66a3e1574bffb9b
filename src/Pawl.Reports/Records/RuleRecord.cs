using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;

namespace Pawl.Reports.Records;

/// <summary>A rule in force.</summary>
public sealed record RuleRecord
{
    [Display(Name = "Id", Description = "Stable identifier, domain/kebab-name.")]
    public required string Id { get; init; }

    [Display(Name = "Title", Description = "What it demands.")]
    public required string Title { get; init; }

    [Display(Name = "Pack", Description = "The pack that declares it.")]
    public required string Pack { get; init; }

    [Display(Name = "Applies to", Description = "The kind of subject.")]
    public required string AppliesTo { get; init; }

    [Display(Name = "When", Description = "The condition as written; absent: always.")]
    public string? When { get; init; }

    [Display(Name = "Measure", Description = "The measured expression as written.")]
    public required string Measure { get; init; }

    [Display(Name = "Limit", Description = "The limits as written.")]
    public required string Limit { get; init; }

    [Display(Name = "Severity", Description = "How bad a failure is.")]
    public required SeverityWord Severity { get; init; }

    [Display(Name = "Source", Description = "Where the number comes from.")]
    public required SourceRecord Source { get; init; }

    [Display(Name = "Why", Description = "The failure that it guards against.")]
    public required string Why { get; init; }

    [Display(Name = "Mend", Description = "What to change when it fails.")]
    public required string Mend { get; init; }

    [Display(Name = "Concedable", Description = "Whether a concession may cover it.")]
    public required bool Concedable { get; init; }

    [Display(Name = "Explains", Description = "Rules whose failures follow from a failure of this one; \"*\": whatever the values that it compares govern.")]
    public ImmutableArray<string> Explains { get; init => field = value.IsDefault ? [] : value; } = [];

    [Display(Name = "Place", Description = "Where it is declared.")]
    public required PlaceRecord Place { get; init; }

    [Display(Name = "Shipped", Description = "What the shipped pack says where a house pack says otherwise.")]
    public ShippedRecord? Shipped { get; init; }
}

/// <summary>Where a rule's number comes from, the method apart from the limit.</summary>
public sealed record SourceRecord
{
    [Display(Name = "Method", Description = "How the value is computed.")]
    public required string Method { get; init; }

    [Display(Name = "Limit", Description = "Where the limit comes from.")]
    public required string Limit { get; init; }

    [Display(Name = "Certainty", Description = "How sure the limit is.")]
    public required CertaintyWord Certainty { get; init; }
}

/// <summary>What the shipped pack says of a rule that a house pack overrides.</summary>
public sealed record ShippedRecord
{
    [Display(Name = "Overridden by", Description = "The house pack that overrides it.")]
    public string OverriddenBy { get; init => field = value ?? ""; } = "";

    [Display(Name = "Reason", Description = "Why the house pack overrides it.")]
    public string Reason { get; init => field = value ?? ""; } = "";

    [Display(Name = "Approved by", Description = "Who agreed to the override.")]
    public string ApprovedBy { get; init => field = value ?? ""; } = "";

    [Display(Name = "When", Description = "The condition as shipped; absent: always.")]
    public string? When { get; init; }

    [Display(Name = "Measure", Description = "The measured expression as shipped.")]
    public required string Measure { get; init; }

    [Display(Name = "Limit", Description = "The limits as shipped.")]
    public required string Limit { get; init; }

    [Display(Name = "Severity", Description = "The severity as shipped.")]
    public required SeverityWord Severity { get; init; }

    [Display(Name = "Source", Description = "The source as shipped.")]
    public required SourceRecord Source { get; init; }

    [Display(Name = "Concedable", Description = "Whether a concession may cover it as shipped.")]
    public required bool Concedable { get; init; }
}

/// <summary>One thing that a house pack changes in a shipped rule.</summary>
public sealed record DeviationRecord
{
    [Display(Name = "Rule", Description = "Id of the rule.")]
    public required string Rule { get; init; }

    [Display(Name = "What", Description = "What is changed: severity, limit or when.")]
    public required string What { get; init; }

    [Display(Name = "Effect", Description = "What the change does to the rule. One that cannot be compared counts as weakened.")]
    public required EffectWord Effect { get; init; }

    [Display(Name = "Shipped", Description = "As the shipped pack says.")]
    public required string Shipped { get; init; }

    [Display(Name = "House", Description = "As the house pack says; this is in force.")]
    public required string House { get; init; }

    [Display(Name = "Pack", Description = "The house pack.")]
    public required string Pack { get; init; }

    [Display(Name = "Reason", Description = "Why the house differs.")]
    public required string Reason { get; init; }

    [Display(Name = "Approved by", Description = "Who agreed to it.")]
    public required string ApprovedBy { get; init; }

    [Display(Name = "Place", Description = "Where the override stands.")]
    public required PlaceRecord Place { get; init; }

    [JsonIgnore]
    public bool IsWeakening => Effect != EffectWord.Tightened;
}
