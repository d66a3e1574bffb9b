using System.ComponentModel.DataAnnotations;

namespace Pawl.Reports.Records;

/// <summary>One rule put to one subject.</summary>
public sealed record FindingRecord
{
    [Display(Name = "Rule", Description = "Id of the rule.")]
    public required string Rule { get; init; }

    [Display(Name = "Subject", Description = "Path of the subject.")]
    public required string Subject { get; init; }

    [Display(Name = "Domain", Description = "Part of the report that the subject belongs to.")]
    public required string Domain { get; init; }

    [Display(Name = "Title", Description = "What the rule demands.")]
    public required string Title { get; init; }

    [Display(Name = "Outcome", Description = "What came of it.")]
    public required OutcomeWord Outcome { get; init; }

    [Display(Name = "Severity", Description = "How bad a failure of the rule is.")]
    public required SeverityWord Severity { get; init; }

    [Display(Name = "Measured", Description = "The measured value.")]
    public MeasureRecord? Measured { get; init; }

    [Display(Name = "At least", Description = "The lower limit.")]
    public MeasureRecord? AtLeast { get; init; }

    [Display(Name = "At most", Description = "The upper limit.")]
    public MeasureRecord? AtMost { get; init; }

    [Display(Name = "One of", Description = "The words that are permitted.")]
    public ImmutableArray<string> OneOf { get; init => field = value.IsDefault ? [] : value; } = [];

    [Display(Name = "Margin", Description = "Signed share of the limit at the worst case: 0 is on the limit, negative fails.")]
    public double? Margin { get; init; }

    [Display(Name = "Absolute margin", Description = "Signed distance from a limit of zero, where a share of the limit says nothing; the margin is then a share of the scale of the quantity.")]
    public ValueRecord? AbsoluteMargin { get; init; }

    [Display(Name = "Worst", Description = "The end of the measured value that the margin is taken at, in the unit of the value; absent without tolerances, and where no one end governs.")]
    public double? Worst { get; init; }

    [Display(Name = "Place", Description = "The place in the spec that governs the value.")]
    public required PlaceRecord Place { get; init; }

    [Display(Name = "Reasons", Description = "Why it is not evaluated or does not apply; of a failed concession, what was meant perhaps.")]
    public ImmutableArray<string> Reasons { get; init => field = value.IsDefault ? [] : value; } = [];

    [Display(Name = "Suggestion", Description = "Neighbours of what fails that would do.")]
    public string? Suggestion { get; init; }

    [Display(Name = "Follows from", Description = "The failure that this one follows from; absent of a cause.")]
    public CauseRecord? FollowsFrom { get; init; }

    [Display(Name = "Concession", Description = "The permission that covers it.")]
    public ConcessionRecord? Concession { get; init; }

    [Display(Name = "Known", Description = "Its entry in the baseline; absent when it is not listed.")]
    public KnownRecord? Known { get; init; }

    [Display(Name = "Governing", Description = "Declared inputs beneath the value.")]
    public ImmutableArray<TermRecord> Governing { get; init => field = value.IsDefault ? [] : value; } = [];
}

/// <summary>The failure that another follows from.</summary>
public sealed record CauseRecord
{
    [Display(Name = "Rule", Description = "Id of the rule.")]
    public required string Rule { get; init; }

    [Display(Name = "Subject", Description = "Path of the subject.")]
    public required string Subject { get; init; }
}

/// <summary>A measured value or a limit, with its derivation when it is more than a quantity of a subject.</summary>
public sealed record MeasureRecord
{
    [Display(Name = "Quantity", Description = "The quantity of a subject that it is: subject.quantity.")]
    public string? Quantity { get; init; }

    [Display(Name = "Expression", Description = "The expression, when it is no plain quantity.")]
    public string? Expression { get; init; }

    [Display(Name = "Value", Description = "The value.")]
    public required ValueRecord Value { get; init; }

    [Display(Name = "Terms", Description = "What the expression was given.")]
    public ImmutableArray<TermRecord> Terms { get; init => field = value.IsDefault ? [] : value; } = [];
}

/// <summary>Permission to use what does not conform.</summary>
public sealed record ConcessionRecord
{
    [Display(Name = "Reason", Description = "Why the deviation may be used.")]
    public required string Reason { get; init; }

    [Display(Name = "Approved by", Description = "Who permits it.")]
    public required string ApprovedBy { get; init; }

    [Display(Name = "Expires", Description = "Last day on which it holds, year-month-day.")]
    public required DateOnly Expires { get; init; }

    [Display(Name = "Worst margin", Description = "The worst margin that is accepted, as a ratio.")]
    public required double WorstMargin { get; init; }

    [Display(Name = "Variants", Description = "Variants that it names; none: the variant of its file.")]
    public ImmutableArray<string> Variants { get; init => field = value.IsDefault ? [] : value; } = [];

    [Display(Name = "Place", Description = "Where it is written.")]
    public required PlaceRecord Place { get; init; }
}

/// <summary>That a finding is listed in the baseline. It fails all the same.</summary>
public sealed record KnownRecord
{
    [Display(Name = "Worst margin", Description = "The margin that is listed, as a ratio; absent where there is none.")]
    public double? WorstMargin { get; init; }

    [Display(Name = "Holds", Description = "Whether the finding is no worse than listed.")]
    public required bool Holds { get; init; }

    [Display(Name = "Place", Description = "Where it is listed.")]
    public required PlaceRecord Place { get; init; }
}

/// <summary>The known findings that a judgement was held against.</summary>
public sealed record BaselineRecord
{
    [Display(Name = "Path", Description = "The file, from the project root.")]
    public required string Path { get; init; }

    [Display(Name = "Known", Description = "Findings that are listed and no worse than listed.")]
    public required int Known { get; init; }

    [Display(Name = "Worse", Description = "Findings that are worse than listed.")]
    public required int Worse { get; init; }

    [Display(Name = "Unneeded", Description = "Entries for this spec that nothing fails for.")]
    public ImmutableArray<UnneededRecord> Unneeded { get; init => field = value.IsDefault ? [] : value; } = [];
}

/// <summary>An entry of the baseline that nothing fails for.</summary>
public sealed record UnneededRecord
{
    [Display(Name = "Rule", Description = "Id of the rule.")]
    public required string Rule { get; init; }

    [Display(Name = "Subject", Description = "Path of the subject.")]
    public required string Subject { get; init; }

    [Display(Name = "Reason", Description = "What is so instead.")]
    public required string Reason { get; init; }

    [Display(Name = "Gone", Description = "Whether the entry is to be removed; not where the check is not evaluated.")]
    public required bool IsGone { get; init; }

    [Display(Name = "Place", Description = "Where it is listed.")]
    public required PlaceRecord Place { get; init; }
}

/// <summary>A reason why checks are not evaluated.</summary>
public sealed record WaitRecord
{
    [Display(Name = "Reason", Description = "What is missing, or out of range.")]
    public required string Reason { get; init; }

    [Display(Name = "Checks", Description = "Checks that it holds up, alone or with other reasons.")]
    public required int Checks { get; init; }

    [Display(Name = "Alone", Description = "Checks that nothing else holds up.")]
    public required int Alone { get; init; }

    [Display(Name = "Rules", Description = "Rules that it holds up.")]
    public required ImmutableArray<string> Rules { get; init; }
}
