using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;

namespace Pawl.Reports.Records;

/// <summary>How much of what applies was evaluated, overall and by domain.</summary>
public sealed record CoverageRecord
{
    [Display(Name = "Overall", Description = "Counts over all domains.")]
    public required CountsRecord Overall { get; init; }

    [Display(Name = "Domains", Description = "Counts of each part of the report, in its order.")]
    public required ImmutableArray<DomainRecord> Domains { get; init; }
}

/// <summary>Counts of one domain.</summary>
public sealed record DomainRecord
{
    [Display(Name = "Domain", Description = "Part of the report: Train, Assembly, Gears, Meshes.")]
    public required string Domain { get; init; }

    [Display(Name = "Counts", Description = "Counts of the domain.")]
    public required CountsRecord Counts { get; init; }

    [Display(Name = "Worst margin", Description = "The least margin of an evaluated rule in the domain; absent when none has a margin.")]
    public double? WorstMargin { get; init; }

    [Display(Name = "Worst absolute margin", Description = "The worst margin as a distance, where its limit is zero.")]
    public ValueRecord? WorstAbsoluteMargin { get; init; }

    [Display(Name = "Worst margin of errors", Description = "The least margin of an evaluated rule of severity error; absent when none has a margin.")]
    public double? WorstErrorMargin { get; init; }

    [Display(Name = "Worst absolute margin of errors", Description = "The worst margin of errors as a distance, where its limit is zero.")]
    public ValueRecord? WorstErrorAbsoluteMargin { get; init; }

    [Display(Name = "Failing errors", Description = "Checks of severity error that fail.")]
    public int FailingErrors { get; init; }
}

/// <summary>How often each outcome occurs.</summary>
public sealed record CountsRecord
{
    [Display(Name = "Conforms", Description = "Checks that conform.")]
    public required int Conforms { get; init; }

    [Display(Name = "Fails", Description = "Checks that fail, at any severity.")]
    public required int Fails { get; init; }

    [Display(Name = "Under concession", Description = "Checks that fail and are conceded.")]
    public required int UnderConcession { get; init; }

    [Display(Name = "Not evaluated", Description = "Checks that apply and could not be evaluated.")]
    public required int NotEvaluated { get; init; }

    [Display(Name = "Not applicable", Description = "Checks whose condition does not hold.")]
    public required int NotApplicable { get; init; }

    [JsonIgnore]
    public int Evaluated => Conforms + Fails + UnderConcession;

    [JsonIgnore]
    public int Applicable => Evaluated + NotEvaluated;

    [JsonIgnore]
    public int All => Applicable + NotApplicable;
}
