using System.ComponentModel.DataAnnotations;
using Pawl.Quantities;
using Pawl.Specs.Text;

namespace Pawl.Specs.Model;

/// <summary>A shaft: what a body is along its axis.</summary>
public sealed record ShaftSpec
{
    [NotAKey]
    public required Stated<string> Name { get; init; }

    [Display(Name = "Body", Description = "The body whose torque and loads the shaft bears.")]
    [Refers(Declared.Body)]
    public required Stated<string> Body { get; init; }

    [Display(Name = "From", Description = "Where its first section begins along the common axis, from the datum of the gears.")]
    [Measures(nameof(Dimension.OfLength), Example = "-80 mm")]
    public Stated<Amount>? From { get; init; }

    [Display(Name = "Material", Description = "Id of a material in the catalogue: elasticity and density.")]
    [Refers(Declared.Material)]
    public Stated<string>? Material { get; init; }

    [Display(Name = "Tensile strength", Description = "σ_B of the part as made; of a test bar of 16 mm where heat_treated_diameter is stated.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "1000 MPa")]
    public Stated<Amount>? Tensile { get; init; }

    [Display(Name = "Yield strength", Description = "σ_S, stated as the tensile strength.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "800 MPa")]
    public Stated<Amount>? Yield { get; init; }

    [Display(Name = "Steel", Description = "tempered, also when absent; case-hardened: a hard case at the notches, strengths then those of the core.")]
    [OneOf("tempered", "case-hardened")]
    public Stated<string>? Steel { get; init; }

    [Display(Name = "Heat-treated diameter", Description = "Diameter at the heat treatment, where the strengths are those of a test bar; thick parts get less of them.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "45 mm")]
    public Stated<Amount>? HeatTreatedDiameter { get; init; }

    [Display(Name = "Static safety", Description = "Minimum safety against yield at the peak torque; absent: 1.5.")]
    [Range(Limits.MinSafety, Limits.MaxSafety)]
    public Stated<double>? StaticSafety { get; init; }

    [Display(Name = "Fatigue safety", Description = "Minimum safety against fatigue; absent: 1.5.")]
    [Range(Limits.MinSafety, Limits.MaxSafety)]
    public Stated<double>? FatigueSafety { get; init; }

    [Display(Name = "Maximum wind-up", Description = "Maximum twist over the sections that carry torque, at the rated torque.")]
    [Measures(nameof(Dimension.OfAngle), AmountRange.Positive, Example = "10′")]
    public Stated<Amount>? MaxWindUp { get; init; }

    [Display(Name = "Sections", Description = "Sections by name, in the order in which they follow along the axis.")]
    public Named<ShaftSectionSpec> Sections { get; init; } = Named<ShaftSectionSpec>.Empty;
}

/// <summary>A length of a shaft with one diameter.</summary>
public sealed record ShaftSectionSpec
{
    [NotAKey]
    public required Stated<string> Name { get; init; }

    [Display(Name = "Length", Description = "Along the axis.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "18 mm")]
    public required Stated<Amount> Length { get; init; }

    [Display(Name = "Outside", Description = "Outside diameter, with its tolerance.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "40 mm k5")]
    public required Stated<Toleranced> Outside { get; init; }

    [Display(Name = "Bore", Description = "Bore of a hollow shaft, with its tolerance; absent: solid.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "12 mm")]
    public Stated<Toleranced>? Bore { get; init; }

    [Display(Name = "Roughness", Description = "Rz of the surface where the stress is greatest.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "6.3 µm")]
    public Stated<Amount>? Roughness { get; init; }

    [Display(Name = "Carries torque", Description = "false beyond the last gear or coupling; absent: true.")]
    public Stated<bool>? CarriesTorque { get; init; }

    [Display(Name = "At", Description = "Place of the notch along the common axis; absent: where the section is bent most.")]
    [Measures(nameof(Dimension.OfLength), Example = "-26 mm")]
    public Stated<Amount>? At { get; init; }

    [Display(Name = "Notch", Description = "What weakens the section; absent: none.")]
    public NotchSpec? Notch { get; init; }
}

/// <summary>A notch of a shaft.</summary>
public sealed record NotchSpec
{
    [Display(Name = "Kind", Description = "shoulder: fillet to a larger diameter; round-groove; square-groove: of a retaining ring or O-ring; keyway; pressed-hub: end of a press fit; spline.")]
    [OneOf("shoulder", "round-groove", "square-groove", "keyway", "pressed-hub", "spline")]
    public required Stated<string> Kind { get; init; }

    [Display(Name = "Large", Description = "Diameter beyond a shoulder.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "46 mm")]
    public Stated<Amount>? Large { get; init; }

    [Display(Name = "Bottom", Description = "Diameter in the bottom of a groove or of the teeth of a spline, with its tolerance.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "37.5 mm h12")]
    public Stated<Toleranced>? Bottom { get; init; }

    [Display(Name = "Radius", Description = "Minimum radius of the fillet, of a round groove, or in the corners of a square one.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "0.8 mm")]
    public Stated<Amount>? Radius { get; init; }

    [Display(Name = "Width", Description = "Width of a square groove.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "1.85 mm")]
    public Stated<Amount>? Width { get; init; }

    [Display(Name = "Keys", Description = "Keys about the shaft; absent: 1.")]
    [Range(Limits.FewestKeys, Limits.MostKeys)]
    public Stated<int>? Keys { get; init; }
}
