using System.ComponentModel.DataAnnotations;
using Pawl.Quantities;
using Pawl.Specs.Text;

namespace Pawl.Specs.Model;

/// <summary>Findings that are known and not mended yet. It permits nothing, and only shrinks.</summary>
public sealed record BaselineFile
{
    [Display(Name = "Format version", Description = "Version of the baseline format. This build reads 1.")]
    [Range(Limits.Format, Limits.Format)]
    public required Stated<int> Pawl { get; init; }

    [Display(Name = "Findings", Description = "The findings that are known.")]
    public ImmutableArray<KnownFindingSpec> Findings { get; init; } = [];
}

/// <summary>A finding that is known.</summary>
public sealed record KnownFindingSpec
{
    [NotAKey]
    public required SourceSpan Span { get; init; }

    [Display(Name = "Spec", Description = "The spec file, from the project root: specs/r180.yaml.")]
    public required Stated<string> Spec { get; init; }

    [Display(Name = "Rule", Description = "Id of the rule that fails.")]
    public required Stated<string> Rule { get; init; }

    [Display(Name = "Subject", Description = "Path of the subject, as findings print it: meshes.input_sun~long.")]
    public required Stated<string> Subject { get; init; }

    [Display(Name = "Worst margin", Description = "The margin that the finding had, a negative share of the limit; a worse one fails. Absent where the rule has no margin: it is broken as a whole.")]
    [Measures(nameof(Dimension.Ratio), AmountRange.NotPositive, Example = "-5 %")]
    public Stated<Amount>? WorstMargin { get; init; }
}
