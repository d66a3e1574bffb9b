using System.ComponentModel.DataAnnotations;
using Pawl.Quantities;
using Pawl.Specs.Text;

namespace Pawl.Specs.Model;

/// <summary>Parallel keys between a shaft and a hub.</summary>
public sealed record ParallelKeySpec
{
    [NotAKey]
    public required Stated<string> Name { get; init; }

    [Display(Name = "Carries", Description = "The body whose external torque the keys carry.")]
    [Refers(Declared.Body)]
    public Stated<string>? Carries { get; init; }

    [Display(Name = "Torque", Description = "Torque with all overloads, where it is not that of a body.")]
    [Measures(nameof(Dimension.OfTorque), AmountRange.NotNegative, Example = "120 N·m")]
    public Stated<Amount>? Torque { get; init; }

    [Display(Name = "Diameter", Description = "Diameter of the shaft with its tolerance.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "30 mm k6")]
    public required Stated<Toleranced> Diameter { get; init; }

    [Display(Name = "Count", Description = "Number of keys, one or two; absent: one.")]
    [Range(1, 2)]
    public Stated<int>? Count { get; init; }

    [Display(Name = "Ends", Description = "Form of the ends by DIN 6885-1: round (A), square (B), one-round (C).")]
    [OneOf("round", "square", "one-round")]
    public required Stated<string> Ends { get; init; }

    [Display(Name = "Length", Description = "Length of the key with its ends, as far as both keyways hold it.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "28 mm")]
    public required Stated<Toleranced> Length { get; init; }

    [Display(Name = "Width", Description = "Width b; absent: DIN 6885-1 by the diameter.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "8 mm h9")]
    public Stated<Toleranced>? Width { get; init; }

    [Display(Name = "Height", Description = "Height h; absent: DIN 6885-1 by the diameter.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "7 mm h11")]
    public Stated<Toleranced>? Height { get; init; }

    [Display(Name = "Depth in the shaft", Description = "Depth t_1 of the keyway in the shaft; absent: DIN 6885-1 by the diameter.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "4 mm +0.2/0")]
    public Stated<Toleranced>? ShaftDepth { get; init; }

    [Display(Name = "Chamfer", Description = "Maximum chamfer of the edges of the key and of the keyways; absent: DIN 6885-1 by the diameter.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "0.4 mm")]
    public Stated<Amount>? Chamfer { get; init; }

    [Display(Name = "Fit in the shaft", Description = "Class of the width of the keyway in the shaft.")]
    [OneOf("P9", "N9", "H9")]
    public Stated<string>? ShaftFit { get; init; }

    [Display(Name = "Fit in the hub", Description = "Class of the width of the keyway in the hub.")]
    [OneOf("P9", "JS9", "D10")]
    public Stated<string>? HubFit { get; init; }

    [Display(Name = "Yield of the key", Description = "Yield of the key.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "400 MPa")]
    public Stated<Amount>? KeyYield { get; init; }

    [Display(Name = "Yield of the shaft", Description = "Yield of the shaft.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "700 MPa")]
    public Stated<Amount>? ShaftYield { get; init; }

    [Display(Name = "Yield of the hub", Description = "Yield of the hub.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "350 MPa")]
    public Stated<Amount>? HubYield { get; init; }

    [Display(Name = "Outside of the hub", Description = "Outside diameter of the hub over the key.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "52 mm")]
    public Stated<Toleranced>? HubOutside { get; init; }

    [Display(Name = "Depth in the hub", Description = "Depth t_2 of the keyway in the hub beyond the shaft; absent: DIN 6885-1 by the diameter.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "3.3 mm +0.2/0")]
    public Stated<Toleranced>? HubDepth { get; init; }

    [Display(Name = "Hub held by", Description = "What holds the hub along the shaft; absent: nothing. clamped: between shoulder and nut or end plate.")]
    [OneOf("none", "clamped", "retaining ring", "press fit", "set screw")]
    public Stated<string>? HubHeld { get; init; }

    [Display(Name = "Reversal factor", Description = "Share f_w of the permitted pressure that is left where the torque reverses; absent: 0.7 there, else 1.")]
    [Range(Limits.MinShare, 1)]
    public Stated<double>? ReversalFactor { get; init; }
}
