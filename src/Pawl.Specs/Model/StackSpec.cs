using System.ComponentModel.DataAnnotations;
using Pawl.Quantities;
using Pawl.Specs.Text;

namespace Pawl.Specs.Model;

/// <summary>A chain of sizes that ends in a gap: end play, float.</summary>
public sealed record StackSpec
{
    [NotAKey]
    public required Stated<string> Name { get; init; }

    [Display(Name = "From", Description = "The face where the gap begins, at its lower end along the axis.")]
    [Refers]
    public Stated<string>? From { get; init; }

    [Display(Name = "To", Description = "The face where the gap ends, at its upper end.")]
    [Refers]
    public Stated<string>? To { get; init; }

    [Display(Name = "Contributors", Description = "The sizes of the loop by name.")]
    public required Named<ContributorSpec> Contributors { get; init; }

    [Display(Name = "Window", Description = "The gap allowed at 20 °C; what shims are chosen for.")]
    public required GapWindowSpec Window { get; init; }

    [Display(Name = "Preload", Description = "Whether a gap below zero in service is meant.")]
    public Stated<bool>? Preloaded { get; init; }

    [Display(Name = "Maximum in service", Description = "Maximum gap that is borne at any temperature of service.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "0.15 mm")]
    public Stated<Amount>? MaxInService { get; init; }

    [Display(Name = "Method", Description = "worst-case, also when absent: any parts within their limits; statistical: the root of the sum of squares, which asks for proven processes.")]
    [OneOf("worst-case", "statistical")]
    public Stated<string>? Method { get; init; }

    [Display(Name = "Warm-up", Description = "Temperatures of the two sides while the one is ahead of the other.")]
    public WarmUpSpec? WarmUp { get; init; }

    [Display(Name = "Seed", Description = "What the random parts begin with; absent: 1.")]
    [Range(Limits.MinSeed, Limits.MaxSeed)]
    public Stated<int>? Seed { get; init; }

    [Display(Name = "Draws", Description = "Assemblies put together from random parts; absent: 20000.")]
    [Range(Limits.FewestDraws, Limits.MostDraws)]
    public Stated<int>? Draws { get; init; }

    [Display(Name = "Shims", Description = "The pack that brings the gap into its window.")]
    public ShimmingSpec? Shims { get; init; }
}

/// <summary>One size in a chain.</summary>
public sealed record ContributorSpec
{
    [NotAKey]
    public required Stated<string> Name { get; init; }

    [Display(Name = "Size", Description = "The size with its tolerance.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "18 mm 0/-0.12")]
    public required Stated<Toleranced> Size { get; init; }

    [Display(Name = "From", Description = "The face at its lower end along the axis.")]
    [Refers]
    public Stated<string>? From { get; init; }

    [Display(Name = "To", Description = "The face at its upper end along the axis.")]
    [Refers]
    public Stated<string>? To { get; init; }

    [Display(Name = "Coefficient", Description = "1 opens the gap, -1 closes it; another size for cones and angles. Absent: by the faces.")]
    [Range(Limits.MinCoefficient, Limits.MaxCoefficient)]
    public Stated<double>? Coefficient { get; init; }

    [Display(Name = "Distribution", Description = "How sizes lie between the limits; absent: normal.")]
    [OneOf("normal", "uniform", "triangular")]
    public Stated<string>? Distribution { get; init; }

    [Display(Name = "Capability", Description = "C_p of its process; absent: 1, the limits at three sigma, not proven.")]
    [Range(Limits.MinCapability, Limits.MaxCapability)]
    public Stated<double>? Capability { get; init; }

    [Display(Name = "Part", Description = "The body of the train that it belongs to: gives the material.")]
    [Refers(Declared.Body)]
    public Stated<string>? Part { get; init; }

    [Display(Name = "Material", Description = "Id of a material in the catalogue; absent: that of the body, else steel.")]
    [Refers(Declared.Material)]
    public Stated<string>? Material { get; init; }

    [Display(Name = "Expansion", Description = "Linear expansion, instead of a material.")]
    [Measures(nameof(Dimension.OfThermalExpansion), AmountRange.NotNegative, Example = "23 µm/(m·K)")]
    public Stated<Amount>? Expansion { get; init; }

    [Display(Name = "Running temperature", Description = "In continuous service; absent: that of the oil.")]
    [Measures(nameof(Dimension.OfTemperature), Example = "75 °C")]
    public Stated<Amount>? Running { get; init; }

    [Display(Name = "Side", Description = "shaft or housing: which of the temperatures of the warm-up it takes.")]
    [OneOf("shaft", "housing")]
    public Stated<string>? Side { get; init; }
}

/// <summary>Least and greatest gap.</summary>
public sealed record GapWindowSpec
{
    [Display(Name = "Minimum", Description = "Lower end; below zero: preload.")]
    [Measures(nameof(Dimension.OfLength), Example = "0 mm")]
    public required Stated<Amount> Min { get; init; }

    [Display(Name = "Maximum", Description = "Upper end.")]
    [Measures(nameof(Dimension.OfLength), Example = "0.025 mm")]
    public required Stated<Amount> Max { get; init; }
}

/// <summary>Temperatures while a gearbox warms up.</summary>
public sealed record WarmUpSpec
{
    [Display(Name = "Shaft", Description = "Of the side of the shaft.")]
    [Measures(nameof(Dimension.OfTemperature), Example = "70 °C")]
    public required Stated<Amount> Shaft { get; init; }

    [Display(Name = "Housing", Description = "Of the side of the housing.")]
    [Measures(nameof(Dimension.OfTemperature), Example = "45 °C")]
    public required Stated<Amount> Housing { get; init; }
}

/// <summary>The pack of shims of a stack.</summary>
public sealed record ShimmingSpec
{
    [Display(Name = "Stock", Description = "Name of a list under shims.")]
    [Refers]
    public required Stated<string> Stock { get; init; }

    [Display(Name = "Effect", Description = "fills: the pack takes from the gap; lifts: it adds to it, as under a cover that closes the gap.")]
    [OneOf("fills", "lifts")]
    public required Stated<string> Effect { get; init; }

    [Display(Name = "Maximum", Description = "Most shims in a pack; absent: 4.")]
    [Range(Limits.FewestShims, Limits.MostShims)]
    public Stated<int>? PackLimit { get; init; }

    [Display(Name = "Target", Description = "The gap required; absent: the middle of the window.")]
    [Measures(nameof(Dimension.OfLength), Example = "0 mm")]
    public Stated<Amount>? Target { get; init; }

    [Display(Name = "Measured gap", Description = "Gap of one assembly without shims, measured at 20 °C; below zero for an overlap.")]
    [Measures(nameof(Dimension.OfLength), Example = "0.44 mm")]
    public Stated<Amount>? MeasuredGap { get; init; }

    [Display(Name = "Uncertainty", Description = "What the measurement may be wrong by, to either side; absent: 0.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "5 µm")]
    public Stated<Amount>? Uncertainty { get; init; }
}

/// <summary>A list of shims at hand.</summary>
public sealed record ShimListSpec
{
    [NotAKey]
    public required Stated<string> Name { get; init; }

    [Display(Name = "Sheets", Description = "The shims, kind by kind.")]
    [Count(1, 30, "one kind of shim or more, at most 30")]
    public required ImmutableArray<ShimSpec> Sheets { get; init; }
}

/// <summary>One kind of shim.</summary>
public sealed record ShimSpec
{
    [NotAKey]
    public required SourceSpan Span { get; init; }

    [Display(Name = "Thickness", Description = "Nominal or measured.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "0.10 mm")]
    public required Stated<Amount> Thickness { get; init; }

    [Display(Name = "Tolerance", Description = "What it may differ, to either side; absent: measured.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "0.002 mm")]
    public Stated<Amount>? Tolerance { get; init; }

    [Display(Name = "Count", Description = "How many there are for one assembly; absent: enough.")]
    [Range(Limits.FewestShims, Limits.MostShimsAtHand)]
    public Stated<int>? Count { get; init; }
}
