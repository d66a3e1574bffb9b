using System.ComponentModel.DataAnnotations;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Rules.Schema;

/// <summary>The keys of a rule pack, for the schema. The reader itself works on the tree.</summary>
public sealed record RulePackFile
{
    [Display(Name = "Pack", Description = "Name of the pack, unlike that of any other.")]
    [Refers]
    public required Stated<string> Pack { get; init; }

    [Display(Name = "Version", Description = "The pack's own version, three numbers: 1.0.0.")]
    public required Stated<string> Version { get; init; }

    [Display(Name = "Title", Description = "What the rules are about.")]
    public required Stated<string> Title { get; init; }

    [Display(Name = "Rules", Description = "In the order in which a designer meets them.")]
    public required ImmutableArray<RuleEntry> Rules { get; init; }
}

/// <summary>One rule, or the override of a shipped one.</summary>
public sealed record RuleEntry
{
    [Display(Name = "Id", Description = "A domain and a name in small letters: mesh/tip-clearance.")]
    public required Stated<string> Id { get; init; }

    [Display(Name = "Override", Description = "Changes limits, severity or condition of the shipped rule of this id; wants a reason and an approver.")]
    public Stated<bool>? Override { get; init; }

    [Display(Name = "Reason", Description = "Why this house differs from the shipped pack, in a sentence.")]
    public Stated<string>? Reason { get; init; }

    [Display(Name = "Approved by", Description = "Who agreed to the override.")]
    public Stated<string>? ApprovedBy { get; init; }

    [Display(Name = "Title", Description = "What holds when the rule is kept.")]
    public Stated<string>? Title { get; init; }

    [Display(Name = "Applies to", Description = "The kind of subject that the rule is put to.")]
    public Stated<string>? AppliesTo { get; init; }

    [Display(Name = "When", Description = "A condition; without one the rule is put to every subject of its kind. Holds when it may hold within the tolerances. In an override it takes the place of the shipped one; `true` drops that.")]
    public Stated<string>? When { get; init; }

    [Display(Name = "Measure", Description = "A quantity of the subject, of a related one (gear.module), or an expression of them.")]
    public Stated<string>? Measure { get; init; }

    [Display(Name = "At least", Description = "Minimum permitted value: an amount, a quantity, an expression, or a table {by: …}.")]
    public Stated<string>? AtLeast { get; init; }

    [Display(Name = "At most", Description = "Maximum permitted value: an amount, a quantity, an expression, or a table {by: …}.")]
    public Stated<string>? AtMost { get; init; }

    [Display(Name = "Equals", Description = "The value, text or truth value that the measure must have.")]
    public Stated<string>? EqualTo { get; init; }

    [Display(Name = "One of", Description = "The texts that the measure may have.")]
    public Stated<string>? OneOf { get; init; }

    [Display(Name = "Severity", Description = "How bad a failure is.")]
    [OneOf("error", "warning", "note")]
    public Stated<string>? Severity { get; init; }

    [Display(Name = "Source", Description = "Where the method and the number come from.")]
    public SourceEntry? Source { get; init; }

    [Display(Name = "Why", Description = "The failure that the rule keeps away, in one sentence.")]
    public Stated<string>? Why { get; init; }

    [Display(Name = "Mend", Description = "What to change in the spec, in one sentence.")]
    public Stated<string>? Mend { get; init; }

    [Display(Name = "Concedable", Description = "Whether a concession may cover it and a house may weaken it; true unless stated.")]
    public Stated<bool>? Concedable { get; init; }

    [Display(Name = "Plausibility", Description = "Whether the limits are a window of what occurs, so that a failure names the likely slip; false unless stated.")]
    public Stated<bool>? Plausibility { get; init; }

    [Display(Name = "Explains", Description = "Ids of rules whose failures on the same thing, or on one related to it, follow from a failure of this one and are listed under it; \"*\" for whatever the values that it compares govern.")]
    public ImmutableArray<Stated<string>> Explains { get; init; } = [];

    [Display(Name = "Suggest", Description = "A text quantity of the subject that names neighbours which would do; a failure shows it.")]
    public Stated<string>? Suggest { get; init; }

    [Display(Name = "Examples", Description = "Cases worked by hand.")]
    public ImmutableArray<ExampleEntry> Examples { get; init; } = [];
}

/// <summary>Where a rule's numbers come from.</summary>
public sealed record SourceEntry
{
    [Display(Name = "Method", Description = "How the value is computed: a standard and its part, or closed form.")]
    public required Stated<string> Method { get; init; }

    [Display(Name = "Limit", Description = "Where the limit comes from: a standard; closed form; the spec; common practice, no source.")]
    public required Stated<string> Limit { get; init; }

    [Display(Name = "Certainty", Description = "How sure the limit is. Without it, memory, unless the limit says what it is.")]
    [OneOf("closed-form", "published", "memory", "common-practice", "declared")]
    public Stated<string>? Certainty { get; init; }
}

/// <summary>A subject in a few numbers and what the rule says of it.</summary>
public sealed record ExampleEntry
{
    [Display(Name = "Given", Description = "Quantities by path, with their values.")]
    public required Stated<string> Given { get; init; }

    [Display(Name = "Outcome", Description = "What the rule says.")]
    [OneOf("conforms", "fails", "not applicable")]
    public required Stated<string> Outcome { get; init; }

    [Display(Name = "Margin", Description = "The margin, worked by hand.")]
    [Range(-1e9, 1e9)]
    public Stated<double>? Margin { get; init; }
}
