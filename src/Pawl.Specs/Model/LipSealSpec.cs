using System.ComponentModel.DataAnnotations;
using Pawl.Quantities;
using Pawl.Specs.Text;

namespace Pawl.Specs.Model;

/// <summary>A radial lip seal on its shaft.</summary>
public sealed record LipSealSpec
{
    [NotAKey]
    public required Stated<string> Name { get; init; }

    [Display(Name = "Shaft", Description = "The body that turns in the lip.")]
    [Refers(Declared.Body)]
    public required Stated<string> Shaft { get; init; }

    [Display(Name = "Housing", Description = "The body that holds the seal.")]
    [Refers(Declared.Body)]
    public required Stated<string> Housing { get; init; }

    [Display(Name = "At", Description = "Section of a shaft that the lip runs on: shafts.output.seal_seat. Absent: that of the nearest size.")]
    [Example("shafts.output.seal_seat")]
    public Stated<string>? At { get; init; }

    [Display(Name = "Diameter", Description = "Of the shaft under the lip, with its tolerance; absent: that of the section that `at` names.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "40 mm h11")]
    public Stated<Toleranced>? Diameter { get; init; }

    [Display(Name = "Bore", Description = "Of the housing, with its tolerance.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "52 mm H8")]
    public Stated<Toleranced>? Bore { get; init; }

    [Display(Name = "Elastomer", Description = "Code of ISO 1629.")]
    [OneOf("NBR", "HNBR", "ACM", "FKM", "VMQ")]
    public Stated<string>? Elastomer { get; init; }

    [Display(Name = "Shaft hardness", Description = "Under the lip, as a window in HRC, HV or HBW.")]
    [Example("58..62 HRC")]
    public Stated<Hardness>? Hardness { get; init; }

    [Display(Name = "Shaft surface", Description = "Ra under the lip, with its window.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "0.4 µm ±0.2")]
    public Stated<Toleranced>? RoughnessRa { get; init; }

    [Display(Name = "Free of lead", Description = "Whether the shaft is plunge-ground, without a thread of the wheel.")]
    public Stated<bool>? TwistFree { get; init; }

    [Display(Name = "Runout", Description = "Of the shaft under the lip, full reading.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "0.05 mm")]
    public Stated<Amount>? Runout { get; init; }

    [Display(Name = "Offset", Description = "Radial offset of the shaft from the housing bore at rest, full reading; absent: not judged.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "0.08 mm")]
    public Stated<Amount>? Offset { get; init; }

    [Display(Name = "Lip towards", Description = "The side that the spring of the lip faces.")]
    [OneOf("oil", "outside")]
    public Stated<string>? LipFaces { get; init; }

    [Display(Name = "Maximum pressure", Description = "What its maker permits; absent: common practice by speed.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "0.05 MPa")]
    public Stated<Amount>? MaxPressure { get; init; }

    [Display(Name = "Maximum suction", Description = "Pressure from outside that its maker permits; absent: common practice.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "10 kPa")]
    public Stated<Amount>? MaxSuction { get; init; }

    [Display(Name = "Maximum speed", Description = "Surface speed that its maker permits; absent: common practice by elastomer.")]
    [Measures(nameof(Dimension.OfSpeed), AmountRange.Positive, Example = "14 m/s")]
    public Stated<Amount>? MaxSpeed { get; init; }

    [Display(Name = "Pressure", Description = "Maximum gauge pressure at the lip; absent: that of the housing.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.NotNegative, Example = "0.02 MPa")]
    public Stated<Amount>? Pressure { get; init; }

    [Display(Name = "Lead-in", Description = "Chamfer of the shaft end over which the lip slides at assembly.")]
    public LeadInSpec? LeadIn { get; init; }

    [Display(Name = "Loss", Description = "Friction of the lip in continuous service, as its maker states it; absent: not counted.")]
    [Measures(nameof(Dimension.OfPower), AmountRange.NotNegative, Example = "12 W")]
    public Stated<Amount>? Loss { get; init; }
}
