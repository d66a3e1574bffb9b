using System.ComponentModel.DataAnnotations;
using Pawl.Quantities;
using Pawl.Specs.Text;

namespace Pawl.Specs.Model;

/// <summary>An O-ring in its gland.</summary>
public sealed record ORingSpec
{
    [NotAKey]
    public required Stated<string> Name { get; init; }

    [Display(Name = "Size", Description = "Dash number of ISO 3601-1 (AS568), such as 238. Instead of inside and cord.")]
    [Range(Limits.MinDash, Limits.MaxDash)]
    [YamlKey("as568")]
    public Stated<int>? As568 { get; init; }

    [Display(Name = "Inside diameter", Description = "Of the free ring, with its tolerance.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "88.49 mm ±0.61")]
    public Stated<Toleranced>? Inside { get; init; }

    [Display(Name = "Cord", Description = "Diameter of the cord, with its tolerance.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "3.53 mm ±0.10")]
    public Stated<Toleranced>? Cord { get; init; }

    [Display(Name = "Elastomer", Description = "Code of ISO 1629.")]
    [OneOf("NBR", "HNBR", "FKM", "FFKM", "EPDM", "VMQ", "FVMQ", "ACM")]
    public Stated<string>? Elastomer { get; init; }

    [Display(Name = "Hardness", Description = "In IRHD; absent: 70.")]
    [Range(Limits.MinIrhd, Limits.MaxIrhd)]
    public Stated<double>? Hardness { get; init; }

    [Display(Name = "Gland", Description = "plug: groove in the inner part; bore: groove in the outer part; face-inside and face-outside: groove in a face, pressure from inside or outside.")]
    [OneOf("plug", "bore", "face-inside", "face-outside")]
    public required Stated<string> Gland { get; init; }

    [Display(Name = "Motion", Description = "static, reciprocating, or rotating; absent: static.")]
    [OneOf("static", "reciprocating", "rotating")]
    public Stated<string>? Motion { get; init; }

    [Display(Name = "Bore", Description = "Diameter of the outer part where it guides the inner one, with its tolerance.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "95 mm H8")]
    public Stated<Toleranced>? Bore { get; init; }

    [Display(Name = "Plug", Description = "Diameter of the inner part where it is guided, with its tolerance.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "95 mm f7")]
    public Stated<Toleranced>? Plug { get; init; }

    [Display(Name = "Groove", Description = "Diameter of the groove's bottom, with its tolerance; of a face groove the diameter of the wall that the ring leans on.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "89.4 mm h9")]
    public Stated<Toleranced>? Groove { get; init; }

    [Display(Name = "Depth", Description = "Depth of a face groove, with its tolerance.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "2.75 mm ±0.05")]
    public Stated<Toleranced>? Depth { get; init; }

    [Display(Name = "Width", Description = "Width of the groove, with its tolerance.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "4.8 mm +0.2/0")]
    public Stated<Toleranced>? Width { get; init; }

    [Display(Name = "Land", Description = "Axial length of the part that the groove is cut into.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "12 mm")]
    public Stated<Amount>? Land { get; init; }

    [Display(Name = "Eccentricity", Description = "Maximum radial offset of the two parts where something else guides them; absent: they may touch.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "0.02 mm")]
    public Stated<Amount>? Eccentricity { get; init; }

    [Display(Name = "Lead-in", Description = "Chamfer over which the ring slides at assembly.")]
    public LeadInSpec? LeadIn { get; init; }

    [Display(Name = "Surface", Description = "Ra of the surface that the ring seals on.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "1.6 µm")]
    public Stated<Amount>? RoughnessRa { get; init; }

    [Display(Name = "Pressure", Description = "Maximum gauge pressure; absent: that of the vented housing, 0.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.NotNegative, Example = "0.03 MPa")]
    public Stated<Amount>? Pressure { get; init; }

    [Display(Name = "Back-up rings", Description = "Harder rings beside the O-ring in its groove, which close the gap; absent: none.")]
    [OneOf("none", "one", "two")]
    public Stated<string>? BackUpRings { get; init; }

    [Display(Name = "Back-up thickness", Description = "Thickness of one back-up ring along the groove, with its tolerance; it takes room from the O-ring.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "1.4 mm ±0.1")]
    public Stated<Toleranced>? BackUpThickness { get; init; }

    [Display(Name = "Back-up side", Description = "Side of the O-ring on which a single back-up ring lies.")]
    [OneOf("low-pressure", "high-pressure")]
    public Stated<string>? BackUpSide { get; init; }

    [Display(Name = "Pressure from", Description = "one: the pressure always comes from the same side, also when absent; both: it alternates.")]
    [OneOf("one", "both")]
    public Stated<string>? PressureFrom { get; init; }

    [Display(Name = "Swell", Description = "Maximum swell of the elastomer in the oil, by volume; absent: 10 %.")]
    [Measures(nameof(Dimension.Ratio), AmountRange.NotNegative, Example = "5 %")]
    public Stated<Amount>? Swell { get; init; }

    [Display(Name = "Speed", Description = "Sliding speed of a moving ring.")]
    [Measures(nameof(Dimension.OfSpeed), AmountRange.NotNegative, Example = "0.1 m/s")]
    public Stated<Amount>? Speed { get; init; }
}

/// <summary>A chamfer at assembly.</summary>
public sealed record LeadInSpec
{
    [Display(Name = "Angle", Description = "From the axis.")]
    [Measures(nameof(Dimension.OfAngle), AmountRange.Positive, Example = "20°")]
    public required Stated<Amount> Angle { get; init; }

    [Display(Name = "Length", Description = "Along the axis.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "2.5 mm")]
    public required Stated<Amount> Length { get; init; }
}
