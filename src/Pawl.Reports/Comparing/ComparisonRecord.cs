using System.ComponentModel.DataAnnotations;
using Pawl.Reports.Records;

namespace Pawl.Reports.Comparing;

/// <summary>What a change does to every check, as one document. Every output is rendered from it alone.</summary>
public sealed record ComparisonRecord
{
    /// <summary>The version of the format that this build writes.</summary>
    public const int CurrentFormat = 1;

    [Display(Name = "Format", Description = "Version of the format.")]
    public required int Format { get; init; }

    [Display(Name = "Tool", Description = "What made the comparison.")]
    public required ToolRecord Tool { get; init; }

    [Display(Name = "Base", Description = "What is compared with.")]
    public required SideRecord Base { get; init; }

    [Display(Name = "Head", Description = "What is compared.")]
    public required SideRecord Head { get; init; }

    [Display(Name = "Variants", Description = "Every spec that is not the same on both sides, the gravest first.")]
    public required ImmutableArray<VariantChange> Variants { get; init; }

    [Display(Name = "Unchanged", Description = "Specs of which every file has the same bytes on both sides; they are not judged again.")]
    public required int Unchanged { get; init; }

    [Display(Name = "Changes", Description = "Declared values that differ, the one with the gravest effects first.")]
    public required ImmutableArray<ValueChange> Changes { get; init; }

    [Display(Name = "Effects", Description = "Checks that came out otherwise, the gravest first.")]
    public required ImmutableArray<Effect> Effects { get; init; }

    [Display(Name = "Rules", Description = "Rules that were added, removed or changed.")]
    public required ImmutableArray<RuleChange> Rules { get; init; }

    [Display(Name = "Concessions", Description = "Concessions that came, went or changed.")]
    public required ImmutableArray<ConcessionChange> Concessions { get; init; }

    [Display(Name = "Subjects", Description = "Things that were added or removed.")]
    public required ImmutableArray<SubjectChange> Subjects { get; init; }

    [Display(Name = "Quantities", Description = "Computed and assumed quantities that moved, the one that moved most first.")]
    public required ImmutableArray<QuantityChange> Quantities { get; init; }

    [Display(Name = "Breaches", Description = "Thresholds that the change exceeds; empty when none is.")]
    public ImmutableArray<Breach> Breaches { get; init => field = value.IsDefault ? [] : value; } = [];

    /// <summary>The comparison as JSON: indented, line feeds, snake case, one order of keys.</summary>
    public string ToJson() => ComparisonJson.Write(this);
}

/// <summary>One side of a comparison.</summary>
public sealed record SideRecord
{
    [Display(Name = "Name", Description = "As it was asked for.")]
    public required string Name { get; init; }

    [Display(Name = "Commit", Description = "The commit in full, of a git revision.")]
    public string Commit { get; init => field = value ?? ""; } = "";

    [Display(Name = "Tool version", Description = "The version of the tool that judged it, where a record says so.")]
    public string ToolVersion { get; init => field = value ?? ""; } = "";
}

/// <summary>A spec that is not the same on both sides.</summary>
public sealed record VariantChange
{
    [Display(Name = "Variant", Description = "Its name here: the variant, with the family where two have the same.")]
    public required string Variant { get; init; }

    [Display(Name = "Presence", Description = "On which sides it is.")]
    public required PresenceWord Presence { get; init; }

    [Display(Name = "Base file", Description = "Its file in the base.")]
    public string? BaseFile { get; init; }

    [Display(Name = "Head file", Description = "Its file in the head.")]
    public string? HeadFile { get; init; }

    [Display(Name = "Base verdict", Description = "The verdict in the base; absent when it is not there or cannot be judged.")]
    public VerdictWord? BaseVerdict { get; init; }

    [Display(Name = "Head verdict", Description = "The verdict in the head; absent when it is not there.")]
    public VerdictWord? HeadVerdict { get; init; }

    [Display(Name = "Base counts", Description = "Outcomes in the base.")]
    public CountsRecord? BaseCounts { get; init; }

    [Display(Name = "Head counts", Description = "Outcomes in the head.")]
    public CountsRecord? HeadCounts { get; init; }

    [Display(Name = "Worse", Description = "Whether the verdict is a worse word than before.")]
    public bool IsWorse { get; init; }
}

/// <summary>A declared value that differs. One place in a file that many variants share is one change.</summary>
public sealed record ValueChange
{
    [Display(Name = "Path", Description = "Keys from the top of the spec, joined by points; of a catalogue value: subject.quantity.")]
    public required string Path { get; init; }

    [Display(Name = "Base", Description = "As written in the base; absent: not stated there.")]
    public InputRecord? Base { get; init; }

    [Display(Name = "Head", Description = "As written in the head; absent: no longer stated.")]
    public InputRecord? Head { get; init; }

    [Display(Name = "Variants", Description = "Variants that it reaches.")]
    public required ImmutableArray<string> Variants { get; init; }
}

/// <summary>A check that came out otherwise, in the variants in which one cause did it.</summary>
public sealed record Effect
{
    [Display(Name = "Kind", Description = "What became of it.")]
    public required EffectKind Kind { get; init; }

    [Display(Name = "Rule", Description = "Id of the rule.")]
    public required string Rule { get; init; }

    [Display(Name = "Subject", Description = "Path of the subject.")]
    public required string Subject { get; init; }

    [Display(Name = "Title", Description = "What the rule demands.")]
    public required string Title { get; init; }

    [Display(Name = "Severity", Description = "How bad a failure of the rule is.")]
    public required SeverityWord Severity { get; init; }

    [Display(Name = "Causes", Description = "Numbers, from 0, of the changes beneath it; the one with the fewest effects first.")]
    public ImmutableArray<int> Causes { get; init => field = value.IsDefault ? [] : value; } = [];

    [Display(Name = "Governing place", Description = "The place that governs the value: in the head, or in the base when it is gone.")]
    public required PlaceRecord Place { get; init; }

    [Display(Name = "Variants", Description = "What became of it in each variant.")]
    public required ImmutableArray<VariantEffect> Variants { get; init; }

    /// <summary>The greatest loss over the variants; null without one.</summary>
    internal double? Lost => Variants.Max(static v => v.Lost);
}

/// <summary>What became of a check in one variant.</summary>
public sealed record VariantEffect
{
    [Display(Name = "Variant", Description = "Name of the variant here.")]
    public required string Variant { get; init; }

    [Display(Name = "Base", Description = "The finding in the base, without its derivation.")]
    public FindingRecord? Base { get; init; }

    [Display(Name = "Head", Description = "The finding in the head, without its derivation.")]
    public FindingRecord? Head { get; init; }

    [Display(Name = "Lost", Description = "Share of the margin of the base that is lost; negative: gained. Of a base on its limit any loss is 1.")]
    public double? Lost { get; init; }
}

/// <summary>A rule that is not the same on both sides.</summary>
public sealed record RuleChange
{
    [Display(Name = "Rule", Description = "Id of the rule.")]
    public required string Rule { get; init; }

    [Display(Name = "What", Description = "What differs: rule, when, measure, limit, severity, concedable.")]
    public required string What { get; init; }

    [Display(Name = "Base", Description = "In the base; absent: not there.")]
    public string? Base { get; init; }

    [Display(Name = "Head", Description = "In the head; absent: not there.")]
    public string? Head { get; init; }

    [Display(Name = "Place", Description = "Where the rule stands: in the head, or in the base when it is gone.")]
    public required PlaceRecord Place { get; init; }
}

/// <summary>A concession that is not the same on both sides.</summary>
public sealed record ConcessionChange
{
    [Display(Name = "Rule", Description = "The rule that it concedes.")]
    public required string Rule { get; init; }

    [Display(Name = "Subject", Description = "The subject that it concedes it to.")]
    public required string Subject { get; init; }

    [Display(Name = "Base", Description = "What it says in the base; absent: not there.")]
    public string? Base { get; init; }

    [Display(Name = "Head", Description = "What it says in the head; absent: not there.")]
    public string? Head { get; init; }

    [Display(Name = "Place", Description = "Where it stands: in the head, or in the base when it is gone.")]
    public required PlaceRecord Place { get; init; }

    [Display(Name = "Variants", Description = "Variants that it reaches.")]
    public required ImmutableArray<string> Variants { get; init; }
}

/// <summary>A thing that is on one side only.</summary>
public sealed record SubjectChange
{
    [Display(Name = "Subject", Description = "Its path.")]
    public required string Subject { get; init; }

    [Display(Name = "Kind", Description = "What sort of thing, in words.")]
    public required string Kind { get; init; }

    [Display(Name = "Presence", Description = "On which side it is.")]
    public required PresenceWord Presence { get; init; }

    [Display(Name = "Place", Description = "Where it is declared.")]
    public required PlaceRecord Place { get; init; }

    [Display(Name = "Variants", Description = "Variants that it belongs to.")]
    public required ImmutableArray<string> Variants { get; init; }
}

/// <summary>A quantity that moved.</summary>
public sealed record QuantityChange
{
    [Display(Name = "Quantity", Description = "subject.quantity.")]
    public required string Quantity { get; init; }

    [Display(Name = "Title", Description = "Term of the standard, with its symbol.")]
    public required string Title { get; init; }

    [Display(Name = "Variants", Description = "The values in each variant.")]
    public required ImmutableArray<MovedValue> Variants { get; init; }

    internal double Most => Variants.Max(static v => Math.Abs(v.Share ?? double.PositiveInfinity));
}

/// <summary>A quantity of one variant on both sides.</summary>
public sealed record MovedValue
{
    [Display(Name = "Variant", Description = "Name of the variant here.")]
    public required string Variant { get; init; }

    [Display(Name = "Base", Description = "The value in the base.")]
    public required ValueRecord Base { get; init; }

    [Display(Name = "Head", Description = "The value in the head.")]
    public required ValueRecord Head { get; init; }

    [Display(Name = "Share", Description = "How far the nominal moved, as a share of that of the base; absent of a text, and where the base is zero or one side has no number.")]
    public double? Share { get; init; }
}

/// <summary>A threshold that the change exceeds.</summary>
public sealed record Breach
{
    [Display(Name = "Threshold", Description = "Which one.")]
    public required ThresholdWord Threshold { get; init; }

    [Display(Name = "Statement", Description = "What exceeds it.")]
    public required string Statement { get; init; }
}
