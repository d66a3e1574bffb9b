using System.ComponentModel.DataAnnotations;
using Pawl.Quantities;
using Pawl.Specs.Text;

namespace Pawl.Specs.Model;

/// <summary>A hole and the shaft in it.</summary>
public sealed record FitSpec
{
    [NotAKey]
    public required Stated<string> Name { get; init; }

    [Display(Name = "Size", Description = "Diameter with the classes of both parts. Instead of hole and shaft.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "25 mm H7/g6", AllowsFit = true)]
    public Stated<Toleranced>? Size { get; init; }

    [Display(Name = "Hole", Description = "Diameter of the hole, with its tolerance.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "25 mm H7")]
    public Stated<Toleranced>? Hole { get; init; }

    [Display(Name = "Shaft", Description = "Diameter of the shaft, with its tolerance.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "25 mm g6")]
    public Stated<Toleranced>? Shaft { get; init; }

    [Display(Name = "Function", Description = "slide: moves along or turns by hand; locate: goes together by hand or with light blows and keeps its place, as a dowel does; press: holds by its overlap; register: centres one part on another.")]
    [OneOf("slide", "locate", "press", "register")]
    public required Stated<string> Function { get; init; }

    [Display(Name = "Part with the hole", Description = "Its name; that of a body of the train stands for it.")]
    [Refers]
    public Stated<string>? HolePart { get; init; }

    [Display(Name = "Planet pin", Description = "Name of the planet pin that is the shaft of the fit.")]
    [Refers(Declared.Anything)]
    public Stated<string>? Pin { get; init; }

    [Display(Name = "Part with the shaft", Description = "Its name; that of a body of the train stands for it.")]
    [Refers]
    public Stated<string>? ShaftPart { get; init; }

    [Display(Name = "Material of the hole", Description = "Id of a material in the catalogue; absent: that of the body, else steel.")]
    [Refers(Declared.Material)]
    public Stated<string>? HoleMaterial { get; init; }

    [Display(Name = "Material of the shaft", Description = "Id of a material in the catalogue; absent: that of the body, else steel.")]
    [Refers(Declared.Material)]
    public Stated<string>? ShaftMaterial { get; init; }

    [Display(Name = "Running temperature of the hole", Description = "Of the part with the hole in continuous service; absent: that of the oil.")]
    [Measures(nameof(Dimension.OfTemperature), Example = "70 °C")]
    public Stated<Amount>? HoleRunning { get; init; }

    [Display(Name = "Running temperature of the shaft", Description = "Of the part with the shaft in continuous service; absent: that of the oil.")]
    [Measures(nameof(Dimension.OfTemperature), Example = "85 °C")]
    public Stated<Amount>? ShaftRunning { get; init; }

    [Display(Name = "Minimum clearance", Description = "Minimum play of the diameters required at any temperature; absent: 0 of a slide.")]
    [Measures(nameof(Dimension.OfLength), Example = "5 µm")]
    public Stated<Amount>? MinClearance { get; init; }

    [Display(Name = "Maximum clearance", Description = "Maximum play of the diameters that is borne at any temperature.")]
    [Measures(nameof(Dimension.OfLength), Example = "60 µm")]
    public Stated<Amount>? MaxClearance { get; init; }

    [Display(Name = "Length", Description = "Length over which the parts touch.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "20 mm")]
    public Stated<Toleranced>? Length { get; init; }

    [Display(Name = "Shaft bore", Description = "Bore of a hollow shaft; absent: solid.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "8 mm")]
    public Stated<Toleranced>? ShaftBore { get; init; }

    [Display(Name = "Hub outside", Description = "Outside diameter of the part with the hole.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "40 mm")]
    public Stated<Toleranced>? HubOutside { get; init; }

    [Display(Name = "Roughness of the hole", Description = "Rz; absent: 6.3 µm.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "6.3 µm")]
    public Stated<Amount>? HoleRz { get; init; }

    [Display(Name = "Roughness of the shaft", Description = "Rz; absent: 4 µm.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "4 µm")]
    public Stated<Amount>? ShaftRz { get; init; }

    [Display(Name = "Minimum friction", Description = "Minimum coefficient of friction of the joint, counted on when it carries.")]
    [Range(Limits.MinFriction, Limits.MaxFriction)]
    public Stated<double>? MinFriction { get; init; }

    [Display(Name = "Maximum friction", Description = "Maximum coefficient of friction, met when it is pressed together.")]
    [Range(Limits.MinFriction, Limits.MaxFriction)]
    public Stated<double>? MaxFriction { get; init; }

    [Display(Name = "Carries the torque of", Description = "Body whose external torque goes through the joint.")]
    [Refers(Declared.Body)]
    public Stated<string>? Carries { get; init; }

    [Display(Name = "Torque", Description = "Torque through the joint, without the application factor. Instead of a body whose torque it carries.")]
    [Measures(nameof(Dimension.OfTorque), AmountRange.NotNegative, Example = "45 N·m")]
    public Stated<Amount>? Torque { get; init; }

    [Display(Name = "Axial force", Description = "Maximum axial force through the joint; absent: none.")]
    [Measures(nameof(Dimension.OfForce), AmountRange.NotNegative, Example = "200 N")]
    public Stated<Amount>? AxialForce { get; init; }

    [Display(Name = "Slip safety", Description = "Minimum safety against slip required; absent: 1.5.")]
    [Range(Limits.MinSafety, Limits.MaxSafety)]
    public Stated<double>? SlipSafety { get; init; }

    [Display(Name = "Speed", Description = "Maximum speed of the joint; absent: that of the body.")]
    [Measures(nameof(Dimension.OfAngularSpeed), AmountRange.NotNegative, Example = "3000 rpm")]
    public Stated<Amount>? Speed { get; init; }

    [Display(Name = "Yield strength of the hub", Description = "R_e or R_p0.2 of the part with the hole.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "650 MPa")]
    public Stated<Amount>? HubYield { get; init; }

    [Display(Name = "Yield strength of the shaft", Description = "R_e or R_p0.2 of the part with the shaft.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "750 MPa")]
    public Stated<Amount>? ShaftYield { get; init; }

    [Display(Name = "Joined", Description = "warm: the hub is heated, or pressed at 20 °C; absent: pressed.")]
    [OneOf("warm", "pressed")]
    public Stated<string>? Joined { get; init; }

    [Display(Name = "Maximum joining temperature", Description = "What the hub stands when it is heated: below its tempering, or what its seals stand.")]
    [Measures(nameof(Dimension.OfTemperature), Example = "150 °C")]
    public Stated<Amount>? MaxJoining { get; init; }

    [Display(Name = "Maximum press force", Description = "Force of the press at hand.")]
    [Measures(nameof(Dimension.OfForce), AmountRange.Positive, Example = "50 kN")]
    public Stated<Amount>? MaxPressForce { get; init; }
}

/// <summary>How parts centre one another, link by link.</summary>
public sealed record CentringSpec
{
    [NotAKey]
    public required Stated<string> Name { get; init; }

    [Display(Name = "From", Description = "The part that the chain starts at, such as the housing.")]
    [Refers]
    public required Stated<string> From { get; init; }

    [Display(Name = "To", Description = "The part that must run true to it, such as the one with the sun.")]
    [Refers]
    public required Stated<string> To { get; init; }

    [Display(Name = "Links", Description = "In the order of the chain; each leads from one part to the next, or stays in one.")]
    [Count(1, 50, "one link or more, at most 50")]
    public required ImmutableArray<CentringLinkSpec> Links { get; init; }

    [Display(Name = "Limit", Description = "Maximum eccentricity that is borne; absent: what the mesh has of backlash above the least required.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "0.04 mm")]
    public Stated<Amount>? Limit { get; init; }

    [Display(Name = "Mesh", Description = "The two gears of the mesh that the eccentricity closes.")]
    [Refers]
    [Count(2, 2, "two gears")]
    public ImmutableArray<Stated<string>> Mesh { get; init; } = [];
}

/// <summary>One link of a chain that centres: a fit, two dowels, a bearing, or a run-out within a part.</summary>
[OnlySound]
public sealed record CentringLinkSpec
{
    [NotAKey]
    public required SourceSpan Span { get; init; }

    [Display(Name = "Fit", Description = "Name of a fit that joins two parts.")]
    [Refers]
    public Stated<string>? Fit { get; init; }

    [Display(Name = "Bearing", Description = "Name of a bearing between its shaft and its housing.")]
    [Refers]
    public Stated<string>? Bearing { get; init; }

    [Display(Name = "Dowels", Description = "Two dowels that join two parts.")]
    public DowelsSpec? Dowels { get; init; }

    [Display(Name = "Run-out", Description = "Run-out of one seat of a part against its other, as an indicator shows it.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "0.02 mm")]
    public Stated<Amount>? Runout { get; init; }

    [Display(Name = "Of", Description = "The part whose run-out it is.")]
    [Refers]
    public Stated<string>? Of { get; init; }
}

/// <summary>Two dowels that are all the location there is.</summary>
public sealed record DowelsSpec
{
    [Display(Name = "First", Description = "Fit of the first dowel in its hole.")]
    [Refers]
    public required Stated<string> First { get; init; }

    [Display(Name = "Second", Description = "Fit of the second dowel in its hole; absent: as the first.")]
    [Refers]
    public Stated<string>? Second { get; init; }

    [Display(Name = "Distance", Description = "Distance of the dowels.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "120 mm")]
    public required Stated<Amount> Distance { get; init; }

    [Display(Name = "Along", Description = "Place of the axis along the line of the dowels, from the first; absent: midway.")]
    [Measures(nameof(Dimension.OfLength), Example = "60 mm")]
    public Stated<Amount>? Along { get; init; }

    [Display(Name = "Aside", Description = "Distance of the axis from that line; absent: on it.")]
    [Measures(nameof(Dimension.OfLength), Example = "5 mm")]
    public Stated<Amount>? Aside { get; init; }
}
