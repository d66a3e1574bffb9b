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
    [Range(Limits.LeastDash, Limits.GreatestDash)]
    [YamlKey("as568")]
    public Stated<int>? As568 { get; init; }

    [Display(Name = "Inside diameter", Description = "Of the free ring, with its tolerance.")]
    [Measures(nameof(Dimension.OfLength), Example = "88.49 mm ±0.61")]
    public Stated<Toleranced>? Inside { get; init; }

    [Display(Name = "Cord", Description = "Diameter of the cord, with its tolerance.")]
    [Measures(nameof(Dimension.OfLength), Example = "3.53 mm ±0.10")]
    public Stated<Toleranced>? Cord { get; init; }

    [Display(Name = "Elastomer", Description = "Code of ISO 1629.")]
    [OneOf("NBR", "HNBR", "FKM", "FFKM", "EPDM", "VMQ", "FVMQ", "ACM")]
    public Stated<string>? Elastomer { get; init; }

    [Display(Name = "Hardness", Description = "In IRHD; absent: 70.")]
    [Range(Limits.LeastIrhd, Limits.GreatestIrhd)]
    public Stated<double>? Hardness { get; init; }

    [Display(Name = "Gland", Description = "plug: groove in the inner part; bore: groove in the outer part; face-inside and face-outside: groove in a face, pressure from inside or outside.")]
    [OneOf("plug", "bore", "face-inside", "face-outside")]
    public required Stated<string> Gland { get; init; }

    [Display(Name = "Motion", Description = "static, reciprocating, or rotating; absent: static.")]
    [OneOf("static", "reciprocating", "rotating")]
    public Stated<string>? Motion { get; init; }

    [Display(Name = "Bore", Description = "Diameter of the outer part where it guides the inner one, with its tolerance.")]
    [Measures(nameof(Dimension.OfLength), Example = "95 mm H8")]
    public Stated<Toleranced>? Bore { get; init; }

    [Display(Name = "Plug", Description = "Diameter of the inner part where it is guided, with its tolerance.")]
    [Measures(nameof(Dimension.OfLength), Example = "95 mm f7")]
    public Stated<Toleranced>? Plug { get; init; }

    [Display(Name = "Groove", Description = "Diameter of the groove's bottom, with its tolerance; of a face groove the diameter of the wall that the ring leans on.")]
    [Measures(nameof(Dimension.OfLength), Example = "89.4 mm h9")]
    public Stated<Toleranced>? Groove { get; init; }

    [Display(Name = "Depth", Description = "Depth of a face groove, with its tolerance.")]
    [Measures(nameof(Dimension.OfLength), Example = "2.75 mm ±0.05")]
    public Stated<Toleranced>? Depth { get; init; }

    [Display(Name = "Width", Description = "Width of the groove, with its tolerance.")]
    [Measures(nameof(Dimension.OfLength), Example = "4.8 mm +0.2/0")]
    public Stated<Toleranced>? Width { get; init; }

    [Display(Name = "Land", Description = "Axial length of the part that the groove is cut into.")]
    [Measures(nameof(Dimension.OfLength), Example = "12 mm")]
    public Stated<Amount>? Land { get; init; }

    [Display(Name = "Eccentricity", Description = "Greatest radial offset of the two parts where something else guides them; absent: they may touch.")]
    [Measures(nameof(Dimension.OfLength), Example = "0.02 mm")]
    public Stated<Amount>? Eccentricity { get; init; }

    [Display(Name = "Lead-in", Description = "Chamfer over which the ring slides at assembly.")]
    public LeadInSpec? LeadIn { get; init; }

    [Display(Name = "Surface", Description = "Ra of the surface that the ring seals on.")]
    [Measures(nameof(Dimension.OfLength), Example = "1.6 µm")]
    public Stated<Amount>? Surface { get; init; }

    [Display(Name = "Pressure", Description = "Greatest gauge pressure; absent: that of the vented housing, 0.")]
    [Measures(nameof(Dimension.OfStress), Example = "0.03 MPa")]
    public Stated<Amount>? Pressure { get; init; }

    [Display(Name = "Swell", Description = "Greatest swell of the elastomer in the oil, by volume; absent: 10 %.")]
    [Measures(nameof(Dimension.Ratio), Example = "5 %")]
    public Stated<Amount>? Swell { get; init; }

    [Display(Name = "Speed", Description = "Sliding speed of a moving ring.")]
    [Measures(nameof(Dimension.OfSpeed), Example = "0.1 m/s")]
    public Stated<Amount>? Speed { get; init; }
}

/// <summary>A chamfer at assembly.</summary>
public sealed record LeadInSpec
{
    [Display(Name = "Angle", Description = "From the axis.")]
    [Measures(nameof(Dimension.OfAngle), Example = "20°")]
    public required Stated<Amount> Angle { get; init; }

    [Display(Name = "Length", Description = "Along the axis.")]
    [Measures(nameof(Dimension.OfLength), Example = "2.5 mm")]
    public required Stated<Amount> Length { get; init; }
}

/// <summary>A radial lip seal on its shaft.</summary>
public sealed record LipSealSpec
{
    [NotAKey]
    public required Stated<string> Name { get; init; }

    [Display(Name = "Shaft", Description = "The body that turns in the lip.")]
    [Refers]
    public required Stated<string> Shaft { get; init; }

    [Display(Name = "Housing", Description = "The body that holds the seal.")]
    [Refers]
    public required Stated<string> Housing { get; init; }

    [Display(Name = "Diameter", Description = "Of the shaft under the lip, with its tolerance.")]
    [Measures(nameof(Dimension.OfLength), Example = "40 mm h11")]
    public Stated<Toleranced>? Diameter { get; init; }

    [Display(Name = "Bore", Description = "Of the housing, with its tolerance.")]
    [Measures(nameof(Dimension.OfLength), Example = "52 mm H8")]
    public Stated<Toleranced>? Bore { get; init; }

    [Display(Name = "Elastomer", Description = "Code of ISO 1629, or PTFE.")]
    [OneOf("NBR", "HNBR", "ACM", "FKM", "VMQ", "PTFE")]
    public Stated<string>? Elastomer { get; init; }

    [Display(Name = "Shaft hardness", Description = "Under the lip, as a window in HRC, HV or HBW.")]
    [Example("58..62 HRC")]
    public Stated<Hardness>? Hardness { get; init; }

    [Display(Name = "Shaft surface", Description = "Ra under the lip, with its window.")]
    [Measures(nameof(Dimension.OfLength), Example = "0.4 µm ±0.2")]
    public Stated<Toleranced>? Surface { get; init; }

    [Display(Name = "Free of lead", Description = "Whether the shaft is plunge-ground, without a thread of the wheel.")]
    public Stated<bool>? LeadFree { get; init; }

    [Display(Name = "Runout", Description = "Of the shaft under the lip, full reading.")]
    [Measures(nameof(Dimension.OfLength), Example = "0.05 mm")]
    public Stated<Amount>? Runout { get; init; }

    [Display(Name = "Lip towards", Description = "The side that the spring of the lip faces.")]
    [OneOf("oil", "outside")]
    public Stated<string>? Towards { get; init; }

    [Display(Name = "Greatest pressure", Description = "What its maker permits; absent: common practice by speed.")]
    [Measures(nameof(Dimension.OfStress), Example = "0.05 MPa")]
    public Stated<Amount>? GreatestPressure { get; init; }
}

/// <summary>How the gearbox is lubricated and cooled.</summary>
public sealed record LubricationSpec
{
    [Display(Name = "Supply", Description = "How oil reaches the meshes and bearings.")]
    [OneOf("splash", "jet", "grease")]
    public Stated<string>? Supply { get; init; }

    [Display(Name = "Cleanliness", Description = "Code of ISO 4406, or in words after ISO 281.")]
    [OneOf("-/13/10", "-/15/12", "-/17/14", "-/19/16", "-/21/18", "high", "normal", "slight", "typical", "severe")]
    public Stated<string>? Cleanliness { get; init; }

    [Display(Name = "Additives against wear", Description = "Whether the oil has proven additives of extreme pressure.")]
    public Stated<bool>? ExtremePressure { get; init; }

    [Display(Name = "Attitude", Description = "How the common axis lies.")]
    [OneOf("horizontal", "vertical")]
    public Stated<string>? Attitude { get; init; }

    [Display(Name = "Ambient", Description = "Warmest air around the housing.")]
    [Measures(nameof(Dimension.OfTemperature), Example = "35 °C")]
    public Stated<Amount>? Ambient { get; init; }

    [Display(Name = "Cooling area", Description = "Surface of the housing in free air.")]
    [Measures(nameof(Dimension.OfArea), Example = "0.18 m²")]
    public Stated<Amount>? CoolingArea { get; init; }

    [Display(Name = "Heat transfer", Description = "From the housing to the air; absent: 15 W/(m²·K), calm air.")]
    [Measures(nameof(Dimension.OfHeatTransfer), Example = "20 W/(m²·K)")]
    public Stated<Amount>? HeatTransfer { get; init; }

    [Display(Name = "Other losses", Description = "Churning and seals, where known; absent: not counted.")]
    [Measures(nameof(Dimension.OfPower), Example = "25 W")]
    public Stated<Amount>? OtherLosses { get; init; }

    [Display(Name = "Free volume", Description = "Of the inside of the housing without its parts.")]
    [Measures(nameof(Dimension.OfVolume), Example = "1.4 L")]
    public Stated<Amount>? FreeVolume { get; init; }

    [Display(Name = "Fill", Description = "Oil in the housing.")]
    [Measures(nameof(Dimension.OfVolume), Example = "0.6 L")]
    public Stated<Amount>? Fill { get; init; }

    [Display(Name = "Ports", Description = "Openings for service.")]
    public PortsSpec? Ports { get; init; }
}

/// <summary>Openings for service.</summary>
public sealed record PortsSpec
{
    [Display(Name = "Fill", Description = "An opening to fill.")]
    public Stated<bool>? Fill { get; init; }

    [Display(Name = "Drain", Description = "An opening at the lowest place.")]
    public Stated<bool>? Drain { get; init; }

    [Display(Name = "Vent", Description = "A breather at the highest place.")]
    public Stated<bool>? Vent { get; init; }

    [Display(Name = "Level", Description = "A mark or plug for the level.")]
    public Stated<bool>? Level { get; init; }
}
