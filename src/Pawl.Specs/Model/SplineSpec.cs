using System.ComponentModel.DataAnnotations;
using Pawl.Quantities;
using Pawl.Specs.Text;

namespace Pawl.Specs.Model;

/// <summary>An involute spline that joins a shaft and a hub.</summary>
public sealed record SplineSpec
{
    [NotAKey]
    public required Stated<string> Name { get; init; }

    [Display(Name = "Body", Description = "The body whose torque the spline carries.")]
    [Refers(Declared.Body)]
    public required Stated<string> Body { get; init; }

    [Display(Name = "System", Description = "Standard, side fit: iso-4156 or ansi-b92.1.")]
    [OneOf("iso-4156", "ansi-b92.1")]
    public required Stated<string> System { get; init; }

    [Display(Name = "Module", Description = "m. Instead of the diametral pitch.")]
    [Measures(nameof(Dimension.OfLength), Example = "1.25 mm", Min = Limits.MinModule, Max = Limits.MaxModule, Unit = nameof(Units.Millimetre))]
    public Stated<Amount>? Module { get; init; }

    [Display(Name = "Diametral pitch", Description = "Teeth per inch of pitch diameter: the 16 of 16/32.")]
    [Range(Limits.MinDiametralPitch, Limits.MaxDiametralPitch)]
    public Stated<double>? DiametralPitch { get; init; }

    [Display(Name = "Pressure angle", Description = "30°, 37.5° or 45°.")]
    [Measures(nameof(Dimension.OfAngle), AmountRange.Positive, Example = "30°")]
    public required Stated<Amount> PressureAngle { get; init; }

    [Display(Name = "Root", Description = "flat or fillet.")]
    [OneOf("flat", "fillet")]
    public required Stated<string> Root { get; init; }

    [Display(Name = "Length", Description = "In engagement, less chamfers and runout.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "22 mm")]
    public Stated<Toleranced>? Length { get; init; }

    [Display(Name = "Chamfers", Description = "What chamfers take of the height of the flanks; absent: nothing.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "0.2 mm")]
    public Stated<Amount>? Chamfers { get; init; }

    [Display(Name = "Floating", Description = "Whether the parts rock or slide in the spline; absent: they are clamped.")]
    public Stated<bool>? Floating { get; init; }

    [Display(Name = "Crowned", Description = "Whether the flanks are crowned.")]
    public Stated<bool>? Crowned { get; init; }

    [Display(Name = "Misalignment", Description = "Maximum angle between the two axes, as a share: 0.001 or 0.1 %; absent: none.")]
    [Measures(nameof(Dimension.Ratio), AmountRange.NotNegative, Example = "0.1 %")]
    public Stated<Amount>? Misalignment { get; init; }

    [Display(Name = "Lubrication", Description = "oil, grease or dry.")]
    [OneOf("oil", "grease", "dry")]
    public Stated<string>? Lubrication { get; init; }

    [Display(Name = "Starts", Description = "Starts and stops of the torque in the service life.")]
    [Range(Limits.FewestStarts, Limits.MostStarts)]
    public Stated<double>? Starts { get; init; }

    [Display(Name = "Shaft", Description = "The part with external teeth.")]
    public required SplineShaftSpec Shaft { get; init; }

    [Display(Name = "Hub", Description = "The part with internal teeth: coupler, gear, flange.")]
    public required SplineHubSpec Hub { get; init; }
}

/// <summary>The external side of a spline.</summary>
public sealed record SplineShaftSpec
{
    [Display(Name = "Teeth", Description = "z.")]
    [Range(Limits.FewestTeeth, Limits.MostTeeth)]
    public required Stated<int> Teeth { get; init; }

    [Display(Name = "Class", Description = "Tolerance class of ISO 4156, 4 to 7.")]
    [Range(Limits.FinestSplineClass, Limits.CoarsestSplineClass)]
    public Stated<int>? Class { get; init; }

    [Display(Name = "Fit", Description = "Letter of ISO 4156 for the tooth thickness.")]
    [OneOf("d", "e", "f", "h", "js", "k")]
    public Stated<string>? Fit { get; init; }

    [Display(Name = "Thickness", Description = "Limits of the effective tooth thickness at the pitch circle, where the drawing states them.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "1.96 mm -0.02/-0.05")]
    public Stated<Toleranced>? Thickness { get; init; }

    [Display(Name = "Minor diameter", Description = "In the bottom of the teeth, least; absent: that of the standard.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "27.2 mm")]
    public Stated<Amount>? Minor { get; init; }

    [Display(Name = "Bore", Description = "Bore under the spline; absent: solid.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "8 mm")]
    public Stated<Toleranced>? Bore { get; init; }

    [Display(Name = "Hardness", Description = "Of the flanks, as a window in HRC, HV or HBW.")]
    [Example("58..62 HRC")]
    public Stated<Hardness>? Hardness { get; init; }

    [Display(Name = "Yield strength", Description = "Of the core under the teeth.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "700 MPa")]
    public Stated<Amount>? Yield { get; init; }
}

/// <summary>The internal side of a spline.</summary>
public sealed record SplineHubSpec
{
    [Display(Name = "Teeth", Description = "z; as many as the shaft has.")]
    [Range(Limits.FewestTeeth, Limits.MostTeeth)]
    public required Stated<int> Teeth { get; init; }

    [Display(Name = "Class", Description = "Tolerance class of ISO 4156, 4 to 7.")]
    [Range(Limits.FinestSplineClass, Limits.CoarsestSplineClass)]
    public Stated<int>? Class { get; init; }

    [Display(Name = "Space", Description = "Limits of the effective space width at the pitch circle, where the drawing states them.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "1.96 mm +0.04/0")]
    public Stated<Toleranced>? Space { get; init; }

    [Display(Name = "Outside diameter", Description = "Of the wall about the spline.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "44 mm")]
    public Stated<Toleranced>? Outside { get; init; }

    [Display(Name = "Material", Description = "Id of a material in the catalogue; absent: steel of 7850 kg/m³.")]
    [Refers(Declared.Material)]
    public Stated<string>? Material { get; init; }

    [Display(Name = "Hardness", Description = "Of the flanks, as a window in HRC, HV or HBW.")]
    [Example("50..56 HRC")]
    public Stated<Hardness>? Hardness { get; init; }

    [Display(Name = "Yield strength", Description = "Of the wall about the spline.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "650 MPa")]
    public Stated<Amount>? Yield { get; init; }
}
